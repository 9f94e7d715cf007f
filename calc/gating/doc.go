// Package gating sizes the way of the metal into the mould: basin, sprue,
// well, runners and ingates for a flow that is wanted, with the losses on the
// way, and says how fast the metal is in each.
//
// # Sizes
//
// A gating ratio gives the areas of sprue foot, runners and ingates, each all
// together, over one another. The smallest is the choke A_c; the ratio may
// also stand behind a choke of its own in the runner. What sets the flow is
// the energy on the way: with e_i the losses and v_i the speed each is taken
// on,
//
//	2 g H = Σ e_i v_i² + v_g²      (the whole way runs full),
//	2 g H = Σ e_i v_i² + v_c²      (up to the choke, whose jet is free).
//
// Sand lets air through, so that no stretch of the way can hold a pressure
// below the air's: where the way behind the choke could carry more than the
// choke's free jet brings, the jet decides, and what is behind it runs part
// empty. So the smaller of the two flows holds, K = max(1 + K_u, K_t) on the
// speed of the choke, and
//
//	A_c = (Q/√(2 g H)) √K,
//
// solved for A_c, since friction depends on the size. 1/√K is the discharge
// coefficient that the books guess at 0.7 to 0.9.
//
// H is the constant head that fills an even cavity in the same time (see
// flow.Heads); when the mould is still empty the full head h drives more, by
// √(h/H), and the speeds at the start are the greatest.
//
// # Losses
//
// Friction by Fanning, 4 f L/D, f the larger of 16/Re and Blasius' 0.079
// Re^-0.25: smooth walls; sand grains as coarse as a hundredth of the width
// double it. In a tapered sprue the metal is slow at first; with the stream's
// own taper v² grows as the depth z and D falls as its fourth root, so that
//
//	∫ (4 f/D) v² dz = (4 f/D_s) v_s² · (4/9) h_t (1 − (h_c/h_t)^(9/4)),
//
// the friction of a shorter straight pipe. Elbows and bends by Weisbach's
// formulas, widenings by Borda and Carnot, narrowings by ½(1 − A₂/A₁). Fittings
// that stand close together lose less than their sum: the sum errs on the side
// of a choke too large.
//
// # Limits
//
// The basin is kept full. Filters are not reckoned with. A ratio says nothing
// about speed: the speeds are always shown, and the ingates are held against
// the critical speed of the metal.
package gating
