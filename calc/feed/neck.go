package feed

import (
	"math"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
)

var necks = source.ASM15Old.Memory("riser design, table of riser necks, for steel")

// neck sizes the neck by the rules for steel: round, or flat where a riser
// stands beside a plate.
//
//	side, general and on bars   D_N = 1.2 L_N + 0.1 D,  L_N ≤ D/2
//	side on a plate             H_N = 0.6 T to 0.8 T as L_N grows, W_N = 2.5 L_N + 0.18 D,  L_N ≤ D/3
//	top                         D_N = L_N + 0.2 D,  L_N ≤ D/2
func (w *one) neck() {
	if w.r.Shape.V == StatedRiser {
		return
	}
	p := w.p
	mm := func(v float64) quantity.Opt[quantity.Length] {
		return quantity.Some(quantity.From[quantity.Length](v, "mm"))
	}
	D := w.D * 10
	flat := w.r.Place.V == Side && w.ruling >= 0 && w.in.Sections[w.ruling].Kind == Plate
	longest, formula := D/2, "D / 2"
	if flat {
		longest, formula = D/3, "D / 3"
	}
	longest = p.Step("L_max", "neck, longest", longest, "mm", formula, necks)
	w.out.NeckLongest = mm(longest)
	if !w.r.NeckLength.Known() {
		return
	}
	L := p.Give("L_n", "length of the neck", w.r.NeckLength.V, "mm")
	switch {
	case flat:
		T := p.Give("T_p", "thickness of the plate", w.in.Sections[w.ruling].Thickness, "mm")
		H := p.StepNote("H_n", "neck, height", T*(0.6+0.2*math.Min(L/longest, 1)), "mm", "T_p * (0.6 + 0.2 * min(L_n / L_max, 1))", necks, "0.6 T to 0.8 T as the neck grows longer, taken as a straight line up to the longest")
		W := p.Step("W_n", "neck, width", 2.5*L+0.18*D, "mm", "2.5 * L_n + 0.18 * D", necks)
		w.out.NeckHeight, w.out.NeckWidth = mm(H), mm(W)
	case w.r.Place.V == Side:
		w.out.NeckDiameter = mm(p.Step("D_n", "neck, diameter", 1.2*L+0.1*D, "mm", "1.2 * L_n + 0.1 * D", necks))
	default:
		w.out.NeckDiameter = mm(p.Step("D_n", "neck, diameter", L+0.2*D, "mm", "L_n + 0.2 * D", necks))
	}
}
