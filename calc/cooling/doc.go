// Package cooling says when a casting may be shaken out: how long it takes to
// freeze, how it then cools in the sand, and what opening the mould early does.
//
// # The model
//
// The casting is a body of volume over cooled surface M, at one temperature all
// through (its Biot number is checked). The mould is thick sand of effusivity b
// behind a flat face. While the metal freezes, the face stands at the effective
// freezing temperature T_e, for the time t_f of Chvorinov's rule (see package
// freeze). From then on the face is as hot as the metal, and
//
//	ρ M dT/dt · (c_s + heat of the change near 730 °C) = −q(t),
//	q(t) = (b/√π) { (T_e − T_0)/√t + ∫ T′(τ)/√(t − τ) dτ }
//
// (Duhamel; Carslaw and Jaeger, ch. II and XII). The heat that the sand took
// while the metal froze is still in it and slows all that follows: a formula
// for the same casting in fresh sand makes the time to 600 °C of an iron plate
// 2.3 times too short. Both are given. With one c_s the equation has a closed
// form,
//
//	T_e − T = (β (T_e − T_0)/√π) ∫₀^{t−t_f} e^{β²u} erfc(β√u) du/√(t − u),  β = b/(ρ c_s M),
//
// which the tests hold the steps to.
//
// # What it leaves out
//
// Water: wet sand boils it off and draws heat faster, so green sand is on the
// safe side. The end of the sand: where heat reaches the flask or a neighbour
// the casting cools more slowly than here, and a finding says so. The shape:
// corners and round shapes shed heat into widening sand and cool sooner. Gas
// and air moving through the sand, and the gap that opens as the metal shrinks.
//
// Temperatures for shaking out are common practice without a source; a shop's
// own thermometer on the first casting of a kind comes before all of this.
package cooling
