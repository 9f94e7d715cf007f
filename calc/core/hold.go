package core

import (
	"math"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

var (
	archimedes = source.Derived("Archimedes' principle, less the push that is missing where no metal touches the core")
	spreading  = source.Practice("the whole lift is passed on, unless the core is held down in the drag alone")
)

// hold sets the lift against prints and chaplets.
func (w *one) hold(n float64) {
	p, c := w.p, w.c
	w.u = working.GiveOpt(p, "u", "part under the metal", c.Drowned, "1")
	var push float64
	if c.Stand.V == Upright {
		ab, db := p.Give("a_b", "section at the lower print", c.FootArea, "cm^2"), p.Give("d_b", "depth of the lower print", c.FootDepth, "cm")
		at, dt := working.GiveOpt(p, "a_t", "section at the upper print", c.HeadArea, "cm^2"), working.GiveOpt(p, "d_t", "depth of the upper print", c.HeadDepth, "cm")
		push = p.StepNote("F_B", "upward push of the metal", w.rho*w.g*(w.u*w.V-ab*db+at*dt)*1e-6, "N", "rho_m * g * (u * V - a_b * d_b + a_t * d_t)", archimedes,
			"no metal under its foot; where the answer is below zero the metal presses it down")
	} else {
		push = p.Step("F_B", "upward push of the metal", w.rho*w.g*w.u*w.V*1e-6, "N", "rho_m * g * u * V", upthrust)
	}
	m := float64(w.out.Mass)
	G := p.Step("G", "weight of the core with its prints", m*w.g, "N", "m_1 * g", definition)
	w.lift = p.Step("F_L", "lift of one core", math.Max(push-G, 0), "N", "max(F_B - G, 0 * G)", upthrust)
	sink := p.Step("F_D", "load downward, mould full", math.Max(G-push, 0), "N", "max(G - F_B, 0 * G)", upthrust)

	up := w.sum("A_up", "print area that bears the lift", "cm^2", func(pr Print) (float64, bool) { return quantity.In(pr.Area, "cm^2"), pr.Hold.V.up() })
	P := p.Step("P", "what these prints bear", w.sigma*up*0.1, "N", "sigma * A_up", bearingRule)
	Aw := p.Step("A_w", "print area wanted", w.lift/w.sigma*10, "cm^2", "F_L / sigma", bearingRule)
	w.left = p.Step("U", "lift that the prints leave over", math.Max(w.lift-P, 0), "N", "max(F_L - P, 0 * P)", bearingRule)

	// Before the metal comes the core stands on its own weight; a push downward
	// adds to it.
	load := p.Step("F_R", "most that presses down", math.Max(G, sink), "N", "max(G, F_D)", definition)
	down := w.sum("A_dn", "print area that carries its weight", "cm^2", func(pr Print) (float64, bool) { return quantity.In(pr.Area, "cm^2"), pr.Hold.V.down() })
	Ar := p.Step("A_r", "area wanted to carry it", load/w.sigma*10, "cm^2", "F_R / sigma", bearingRule)
	w.rests = math.Max(load-w.sigma*down*0.1, 0)

	passes, formula := w.lift, "F_L"
	if w.heldInDrag() {
		passes, formula = 0, "0 * F_L"
	}
	Fk := p.Step("F_k", "passed to the cope", passes, "N", formula, spreading)

	w.out.Push, w.out.Weight, w.out.Lift, w.out.Sink = quantity.Force(push), quantity.Force(G), quantity.Force(w.lift), quantity.Force(sink)
	w.out.PrintArea, w.out.PrintHold, w.out.PrintWanted, w.out.Unsupported = cm2(up), quantity.Force(P), cm2(Aw), quantity.Force(w.left)
	w.out.RestArea, w.out.RestWanted, w.out.Passes = cm2(down), cm2(Ar), quantity.Force(Fk)
	w.chaplets()
	w.add("F", "lift", p.Step("F_n", "lift of all alike", n*w.lift, "N", "n * F_L", definition), "N")
	w.add("K", "lift passed to the cope", p.Step("F_kn", "passed to the cope by all alike", n*Fk, "N", "n * F_k", definition), "N")
}

// heldInDrag reports that nothing of the lift reaches the cope.
func (w *one) heldInDrag() bool {
	tied := false
	for _, pr := range w.c.Prints {
		switch pr.Hold.V {
		case Parting, InCope:
			return false
		case Tied:
			tied = true
		}
	}
	return tied && w.c.ChapletCount.V == 0
}

// chaplets counts what the prints leave over, by bearing area and by the
// user's own load.
func (w *one) chaplets() {
	p, c := w.p, w.c
	each := p.Const("k_ch", "chaplet area for each newton", 29, "mm^2/N", bearingRule)
	A := p.StepNote("A_ch", "chaplet area wanted", math.Max(each*w.left/100, w.left/w.sigma*10), "cm^2", "max(k_ch * U, U / sigma)", bearingRule,
		"the rule of thumb, or the sand's own strength where that is less")
	w.out.ChapletArea = cm2(A)
	var exact float64
	switch {
	case c.ChapletArea.Known() && c.ChapletLoad.Known():
		a, l := w.chapletArea(), p.Give("l_ch", "your own load on one chaplet", c.ChapletLoad.V, "N")
		exact = p.Step("x_ch", "chaplets, before rounding up", math.Max(A/a, w.left/l), "1", "max(A_ch / a_ch, U / l_ch)", bearingRule)
	case c.ChapletArea.Known():
		exact = p.Step("x_ch", "chaplets, before rounding up", A/w.chapletArea(), "1", "A_ch / a_ch", bearingRule)
	default:
		return
	}
	count := p.Step("n_ch", "chaplets wanted", math.Max(math.Ceil(exact-1e-9), 0), "1", "max(ceil(x_ch - 1e-9), 0)", definition)
	w.out.Chaplets = quantity.Some(quantity.Number(count))
}

func (w *one) chapletArea() float64 {
	return w.p.Give("a_ch", "bearing area of one chaplet", w.c.ChapletArea.V, "cm^2")
}
