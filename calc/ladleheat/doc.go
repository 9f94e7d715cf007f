// Package ladleheat says how a ladle of metal loses its heat: from the open top
// and into the lining, how hot the metal is as pouring begins and as the last
// mould is full, how long it stays inside its pouring window, and how hot it
// must be tapped.
//
// # The model
//
// The metal is at one temperature T all through. Its top radiates, and each
// part of the lining that it wets takes heat like a wall without end at its
// preheat T_p, whose face is as hot as the metal:
//
//	m c dT/dt = −ε σ A_t (T⁴ − T_a⁴) − q(t) A_w,
//	q(t) = (b/√π) { (T(0) − T_p)/√t + ∫ T′(τ)/√(t − τ) dτ }
//
// with b = √(k ρ c) of the lining (Duhamel; Carslaw and Jaeger, ch. II and XII).
// While it is poured the mass falls evenly, and with it the wetted wall; what
// leaves takes its heat along and cools nothing. Without the top this is the
// stirred body of Carslaw and Jaeger, e^{x²} erfc x; without the wall it is
// Stefan's law with its T⁻³; the tests hold it to both.
//
// A crucible lifted out of its furnace is as hot as its metal and glows all
// round: it radiates from its outside through the resistance of its wall, and
// its own heat is kept with the metal's.
//
// # How far to trust it
//
// Not far. The lining takes more than the top and is known least: its heat
// figures are weak, it is seldom heated right through, and skulls and slag
// insulate it. Against the few rates that foundries print the model runs high
// for ladles of a tonne and more and lies among them from 25 to 500 kg. Two
// readings of the thermometer beat it, and then take its place:
//
//	T − T_a = (T_1 − T_a) e^{−t/τ},  τ = t/ln((T_1 − T_a)/(T_2 − T_a)).
package ladleheat
