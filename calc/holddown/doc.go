// Package holddown answers what holds a mould together: the lift on the cope
// and where it acts, the weights, clamps or bolts against it and where to put
// them so that no corner opens, the push of the metal on the side of the
// mould, the box for a casting, and the sand, binder, hardener and water in it.
//
// # Lift and corners
//
// A surface of area A seen from above at the depth d under the metal's level is
// pressed up with ρ g A d, while the mould fills with the surge factor over
// that; a drowned core with what it displaces, less its weight. Against it
// stand the weight of the cope, the weights on it and the force of the clamps.
// What is left over, N, must press the cope on the drag; and it must do so at
// every corner.
//
// The joint is taken as four like springs at the corners of the flask, the
// cope as stiff. With the moments M_x and M_y of all forces about the middle
// of a flask L by W, down counted as positive, the corners press with
//
//	R = N/4 ± M_x/(2 L) ± M_y/(2 W),
//
// and none opens while |M_x|/L + |M_y|/W ≤ N/2. The least single weight w that
// closes all corners, laid on where it helps most, can take away at most w L/2
// of M_x and w W/2 of M_y. With a = 2|M_x|/L and b = 2|M_y|/W that is
//
//	max(0, a − w) + max(0, b − w) ≤ N + w,
//	w = max((a + b − N)/3, (a − N)/2, (b − N)/2, −N, 0),
//
// at M_x/w and M_y/w from the middle to the side that opens, or at the edge of
// the flask where that is nearer. Real joints and flasks are less even: the
// answer is a least, not an aim.
//
// # Side
//
// Metal standing against an upright face b wide and a high, whose top lies d
// under its level, pushes with ρ g b a (d + a/2), at the depth
// d + a/2 + a²/(12 (d + a/2)).
//
// # Limits
//
// The surge factor is custom, not physics. Sand that gives way is not reckoned
// with: a mould can burst though nothing here warns of it. Where no position
// is given a force is taken in the middle.
package holddown
