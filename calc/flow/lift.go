package flow

import (
	"math"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

var upthrust = source.Rao.Memory("ch. 4, forces acting on the moulding flasks")

// SurfaceLift is the upward push of metal, N, on one cope surface of projected
// area A (cm²) at depth d (mm) below the metal's free surface. It needs rho_m
// (kg/m³), g, A and d on the paper and puts F there.
//
// The area is that of the surface seen from above; upright walls count for
// nothing. Hydrostatics: the push of a standing liquid, without the surge when
// the mould fills.
func SurfaceLift(p *working.Paper, rho, g, areaCM2, depthMM float64) float64 {
	return p.Step("F", "lift on the surface", rho*g*areaCM2*1e-4*depthMM*1e-3, "N", "rho_m * g * A * d", upthrust)
}

// Lift is what pushes a cope up and what holds it down.
type Lift struct {
	// Metal is the lift on the cope's surfaces, F_m; Core what cores pass on
	// to the cope, F_c.
	Metal, Core quantity.Force
	// Surge is the factor on Metal while the mould fills, k_s.
	Surge quantity.Opt[quantity.Number]
	// Cope is the mass of the cope with its flask, m_k; may be unknown.
	Cope quantity.Opt[quantity.Mass]
	// Weights on the cope, m_w, and the force of its clamps, F_k.
	Weights quantity.Opt[quantity.Mass]
	Clamps  quantity.Opt[quantity.Force]
}

// Held is the balance of a Lift.
type Held struct {
	// Static is the push with the mould full and at rest, Surged while it fills.
	Static, Surged quantity.Force
	// Together is what cope, weights and clamps must come to, as a mass.
	Together quantity.Mass
	// Net is what the cope leaves of the static push, Needed and NeededSurge
	// the weights still to be put on; unknown with the cope's mass.
	Net                 quantity.Opt[quantity.Force]
	Needed, NeededSurge quantity.Opt[quantity.Mass]
}

// Hold balances a lift on the paper and finds what is wrong: stop where even
// the metal at rest lifts the cope, mind where the surge does. It needs g there,
// and F_sum, the sum of the surface lifts.
//
// The surge factor, 1.5 by custom and up to 2 for fast and large pours, stands
// for the blow when the rising metal meets the cope; it is not derived from
// anything. Core lift does not surge. An upthrust that only just equals the
// weight lets metal into the joint, so the answer is a least, not an aim.
func Hold(p *working.Paper, l Lift) Held {
	Fm := p.Step("F_m", "lift on the cope, metal at rest", float64(l.Metal), "N", "F_sum", upthrust)
	Fc := p.Give("F_c", "lift that cores pass on to the cope", l.Core, "N")
	ks := working.GiveOpt(p, "k_s", "surge factor", l.Surge, "1")
	Fs := p.Step("F_s", "lift, mould full and at rest", Fm+Fc, "N", "F_m + F_c", upthrust)
	Fu := p.Step("F_u", "lift with the surge", ks*Fm+Fc, "N", "k_s * F_m + F_c", source.Practice("surge factor of 1.3 to 1.5, up to 2 for fast and large pours"))
	out := Held{Static: quantity.Force(Fs), Surged: quantity.Force(Fu)}
	g := Gravity
	out.Together = quantity.Mass(p.Step("m_t", "cope, weights and clamps together", Fu/g, "kg", "F_u / g", upthrust))
	if !l.Cope.Known() {
		return out
	}
	mk := working.GiveOpt(p, "m_k", "mass of the cope", l.Cope, "kg")
	mw := working.GiveOpt(p, "m_w", "weights on the cope", l.Weights, "kg")
	Fk := working.GiveOpt(p, "F_k", "force of the clamps", l.Clamps, "N")
	G := p.Step("G", "force that holds the cope down", (mk+mw)*g+Fk, "N", "(m_k + m_w) * g + F_k", upthrust)
	net := p.Step("F_n", "lift left over", math.Max(Fs-G, 0*G), "N", "max(F_s - G, 0 * G)", upthrust)
	need := p.Step("m_n", "weights still wanted, metal at rest", math.Max((Fs-G)/g, 0), "kg", "max((F_s - G) / g, 0 * m_k)", upthrust)
	surge := p.Step("m_u", "weights still wanted, with the surge", math.Max((Fu-G)/g, 0), "kg", "max((F_u - G) / g, 0 * m_k)", upthrust)
	out.Net = quantity.Some(quantity.Force(net))
	out.Needed, out.NeededSurge = quantity.Some(quantity.Mass(need)), quantity.Some(quantity.Mass(surge))
	switch {
	case Fs > G:
		p.Find(working.Finding{Level: working.Stop, Code: "cope-floats", Field: "weights", Source: upthrust,
			Text: working.Say("The metal lifts with %v, the cope is held with only %v: it floats, and metal runs out at the joint.", out.Static, quantity.Force(G)),
			Do:   working.Say("Put on %v more, which covers the surge too, or clamp the cope to the drag.", out.NeededSurge.V)})
	case Fu > G:
		p.Find(working.Finding{Level: working.Mind, Code: "cope-surge", Field: "weights", Source: source.Practice("surge factor"),
			Text: working.Say("At rest the cope holds, but with the surge of the filling mould the lift is %v against %v.", out.Surged, quantity.Force(G)),
			Do:   working.Say("Put on %v more, or clamp the cope to the drag.", out.NeededSurge.V)})
	}
	return out
}
