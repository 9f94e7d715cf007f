package feed

import (
	"math"

	"pourwright/calc/alloy"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
)

var (
	pelliniRule  = source.Pellini.Memory("plates 4.5 T with an end, 4 T between risers, 50 mm more for a chill; bars 6 √T in inches; measured from the riser's edge")
	guidance     = source.ASM15.Memory("feeding distances, guidance only")
	copperReach  = source.ASM15.Memory("feeding distances of copper alloys, guidance only")
	longFreezing = source.CDA.Memory("copper alloys by freezing range: wide from 110 °C")
)

// flatReach is the feeding distance of plates, in thicknesses, for metals
// other than steel; ok is false where no figure is known.
func flatReach(a *alloy.Alloy) (low, high float64, from source.Ref, ok bool) {
	switch {
	case a.Family == alloy.GreyIron:
		return 10, 10, guidance, true
	case a.Family == alloy.DuctileIron:
		return 6, 7, guidance, true
	case a.Code == alloy.CodeAlSi, a.Code == alloy.CodeAluminium:
		return 5, 8, guidance, true
	case a.Code == alloy.CodeAlSiMg, a.Code == alloy.CodeAlSiCu:
		return 2, 4, guidance, true
	case a.Code == alloy.CodeAluminiumBronze:
		return 5.5, 8, copperReach, true
	}
	return 0, 0, source.Ref{}, false
}

// reaches works out how far each section can be fed.
func (f *feeding) reaches() {
	for i, s := range f.in.Sections {
		T := wall(s)
		if s.Kind == Cylinder {
			T = s.Diameter
		}
		if T == 0 {
			continue
		}
		b := f.bodies[i]
		b.p.Give("T_w", "wall that feed runs along", T, "mm")
		low, high, ok := f.reach(b, s, quantity.In(T, "mm"))
		if !ok {
			continue
		}
		out := &f.out.Sections[i]
		out.Reach, out.Far = quantity.Some(quantity.From[quantity.Length](low, "mm")), quantity.Some(quantity.From[quantity.Length](high, "mm"))
	}
}

// reach puts x_f and x_hi, mm, on a section's paper.
func (f *feeding) reach(b *body, s Section, T float64) (low, high float64, ok bool) {
	p := b.p
	const what, most = "feeding distance", "feeding distance, at most"
	bar := s.Kind == Bar || s.Kind == Cylinder
	if f.a.Family == alloy.Steel {
		chill := p.Const("x_c", "what a chill adds on a plate", 50, "mm", pelliniRule)
		p.Const("i_n", "one inch, the unit of the rule for bars", 25.4, "mm", pelliniRule)
		one := func(v float64, formula string) (float64, float64, bool) {
			x := p.Step("x_f", what, v, "mm", formula, pelliniRule)
			return x, p.Step("x_hi", most, x, "mm", "x_f", pelliniRule), true
		}
		switch {
		case bar && s.Beyond.V == NextRiser:
			return p.Step("x_f", what, T, "mm", "T_w", pelliniRule), p.StepNote("x_hi", most, 4*T, "mm", "4 * T_w", pelliniRule, "texts differ from 1 to 4 times the thickness"), true
		case bar && s.EndChill:
			return one(6*math.Sqrt(T*25.4)+T, "6 * sqrt(T_w * i_n) + T_w")
		case bar:
			return one(6*math.Sqrt(T*25.4), "6 * sqrt(T_w * i_n)")
		case s.Beyond.V == NextRiser && s.EndChill:
			return one(9*T+2*chill, "9 * T_w + 2 * x_c")
		case s.Beyond.V == NextRiser:
			return one(4*T, "4 * T_w")
		case s.EndChill:
			return one(4.5*T+chill, "4.5 * T_w + x_c")
		}
		return one(4.5*T, "4.5 * T_w")
	}
	if s.Beyond.V == NextRiser {
		return 0, 0, false
	}
	if bar {
		if f.a.Code != alloy.CodeAluminiumBronze {
			return 0, 0, false
		}
		p.Const("i_n", "one inch, the unit of the rule for bars", 25.4, "mm", copperReach)
		x := p.Step("x_f", what, 8*math.Sqrt(T*25.4), "mm", "8 * sqrt(T_w * i_n)", copperReach)
		return x, p.Step("x_hi", most, x, "mm", "x_f", copperReach), true
	}
	l, h, from, ok := flatReach(f.a)
	if !ok {
		return 0, 0, false
	}
	l, h = p.Lookup("f_lo", "thicknesses that it feeds", l, "1", from, ""), p.Lookup("f_hi", "thicknesses that it feeds, at most", h, "1", from, "")
	return p.Step("x_f", what, l*T, "mm", "f_lo * T_w", from), p.Step("x_hi", most, h*T, "mm", "f_hi * T_w", from), true
}

// spreadsPores reports a metal that freezes over so wide a range that fine
// porosity stays in it whatever the riser.
func spreadsPores(a *alloy.Alloy) bool {
	return a.Family == alloy.Copper && quantity.TempDiff(a.Liquidus.V-a.Solidus.V) >= 110
}
