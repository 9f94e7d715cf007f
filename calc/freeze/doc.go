// Package freeze says how long metal takes to freeze in a mould: Chvorinov's
// rule with a constant worked out from the heat of metal and sand, or with the
// shop's own; the exact solutions of Neumann for a flat wall; the correction
// for spheres and round bars; and how long a thin stream stays fluid.
//
// # Chvorinov's rule from the heat of metal and sand
//
// A mould that takes heat far less readily than the metal gives it up has its
// face at the metal's freezing temperature T_e all through freezing. A thick
// mould at T_0 whose face jumps to T_e takes up, by time t and per area,
//
//	Q/A = (2/√π) b (T_e − T_0) √t,   b = √(k ρ c) of the mould,
//
// (Carslaw and Jaeger, ch. II). The metal must give up ρ_m V H, where
// H = L + c_l ΔT is its latent heat and the superheat it brought along. Set
// equal,
//
//	V/A = (2/√π) · b (T_e − T_0)/(ρ_m H) · √t,
//
// so t = C (V/A)² with C = (π/4) [ρ_m H/(T_e − T_0)]² / b². This is the form
// of Flemings, and of Poirier and Geiger.
//
// An alloy that gives off its latent heat evenly over a freezing range behaves
// as if it froze at one fifth of the way up from solidus to liquidus (Adams).
// Superheat enters as heat, c_l ΔT beside L; a factor 1 + (c ΔT/L)² that some
// copies print does not balance the heat.
//
// What the rule leaves out: the heat in the frozen shell (it makes the answer
// some 5 % short for iron and 1 % for aluminium in sand, against the exact
// solution), moisture, air gaps, and the shape (see Rounded). Superheat is
// partly lost while the mould fills. With defensible data the constant spreads
// by two or three to one, so it is given as a band, and one timed casting of
// your own beats it.
package freeze
