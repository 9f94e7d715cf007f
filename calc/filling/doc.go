// Package filling follows the metal's level second by second while the mould
// fills: the flow, the rise, the speed at each ingate, the lift on the cope
// and, as a trend, the temperature of the front.
//
// # The model
//
// The cavity is a stack of slices whose plan area A is even or changes in
// proportion to the height. The metal stands at y over its bottom, in the
// basin at b. From the basin it comes through the narrowest section of the way
// and then through ingates at heights z_j with areas a_j. Let C be the
// discharge coefficient of the whole way, A_m the smaller of the choke and of
// the ingates together; of the whole resistance 1/(C A_m)² the ingates have
// 1/(C Σa)² and what is before them the rest, R. Between the two the metal
// would stand at p in a glass on the runner:
//
//	Q = √(2 g (b − p)/R) = Σ C a_j √(2 g (p − max(y, z_j)))  over ingates below p,
//	dy/dt = Q/A(y).
//
// With ingates all at one level that is the textbook's Q = C A_m √(2 g (b −
// max(y, z))); with several the higher ones begin to run by themselves when p
// has come up to them. The basin is kept full, or fed by the ladle at its own
// rate q: then A_b db/dt = q − Q while metal stands in it; a full basin stays
// full by the ladle holding back, from an empty one no more runs than the
// ladle brings. Where its area is not given, or is so small that it follows at
// once, the flow is the lesser of what the way takes and the ladle gives.
//
// # Method
//
// The unknown is not y but s = √(H − y), with H the height of a full basin: so
// the equation stays smooth to the end where the cavity reaches up to the level
// of the metal, ds/dt = −Q/(2 s A). Steps by Dormand and Prince's pair of
// orders 5 and 4, each with an error below 10^-12 of the whole; where a slice ends, an
// ingate drowns or begins to run, or the basin fills or runs empty, the step is
// cut to end there, by a root on its length. Metal in is held against metal
// there, which the method does not force.
//
// # Limits
//
// A quiet level: no waves, no momentum, no time to fill the sprue; the air
// leaves freely. Flat parts are crossed, not risen in, and the model knows
// nothing of where on them the metal is. The front's temperature is a trend
// with a band, not a simulation.
package filling
