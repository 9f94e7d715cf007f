package core

import (
	"fmt"
	"strings"

	"pourwright/calc/form"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/shape"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// crush is where green sand fails whatever its ramming; soft sand at a quarter
// of it.
const crush = 200 * quantity.Kilopascal

// usual is the bearing strength of green sand that the books reckon with.
const usual = 35 * quantity.Kilopascal

var bearingRule = source.Rao.Memory("ch. 3, core prints: 3.5 N/cm² of print, and 29 mm² of chaplet for each newton left over")

// mismatched finds single fields that are in range but do not go together.
func mismatched(in Input) form.Faults {
	var out form.Faults
	if in.Mould.V == mouldstuff.GreenSand && in.Bearing.V > crush {
		out = append(out, form.Fault{Field: "bearing", Label: "Bearing strength of the mould sand", Value: quantity.Text(in.Bearing.V),
			Why: working.Say("green sand crushes at %v to %v, and %v was given; it must be at most %v, and the books reckon with %v", crush/4, crush, in.Bearing.V, crush, usual)})
	}
	for i, c := range in.Cores {
		path := fmt.Sprintf("cores[%d]", i)
		if c.By.V == FromSolids {
			fs := shape.AllFaults(c.Solids, path+".solids")
			if len(fs) == 0 {
				fs = emptied(c.Solids, path+".solids")
			}
			out = append(out, fs...)
		}
		if c.Stand.V == Upright && c.HeadArea.V > 0 {
			switch {
			case c.HeadDepth.V >= c.FootDepth:
				out = append(out, form.Fault{Field: path + ".head_depth", Label: "Depth of the upper print", Value: quantity.Text(c.HeadDepth.V),
					Why: working.Say("%v is not above the lower print at %v; it must be less", c.HeadDepth.V, c.FootDepth)})
			case c.Drowned.V < 1:
				out = append(out, form.Fault{Field: path + ".head_area", Label: "Section at the upper print", Value: quantity.Text(c.HeadArea.V),
					Why: working.Say("a core of which only %v is under the metal has no section in an upper print under the metal; it must be 0", c.Drowned.V)})
			}
		}
	}
	return out
}

// emptied refuses solids that leave no core.
func emptied(solids []shape.Solid, path string) form.Faults {
	left, added := 0.0, 0.0
	for _, s := range solids {
		v := float64(s.HowMany()) * float64(s.Volume())
		if s.Taken() {
			left -= v
		} else {
			left, added = left+v, added+v
		}
	}
	if left > 1e-9*added {
		return nil
	}
	return form.Faults{{Field: path, Label: "Solids",
		Why: working.Say("%v is taken away and only %v is there to take it from; no core is left", quantity.Volume(added-left), quantity.Volume(added))}}
}

// body finds the volume of the core without prints, and its surface.
func (w *one) body() {
	const volume, surface = "volume in the casting, without prints", "surface against the metal"
	p, c := w.p, w.c
	if c.By.V == Stated {
		V := p.Give("V_own", "volume, stated", c.Volume, "cm^3")
		w.V = p.Step("V", volume, V, "cm^3", "V_own", ownFigure)
		if c.Surface.Known() {
			A := p.Give("A_own", "surface, stated", c.Surface.V, "cm^2")
			w.A = p.Step("A", surface, A, "cm^2", "A_own", ownFigure)
		}
	} else {
		var volumes, surfaces []string
		for i, s := range c.Solids {
			m := s.Measure(w.holding.p.Sub(fmt.Sprintf("%s.solids[%d]", w.path, i)))
			k := fmt.Sprint(i + 1)
			n := p.Number("n_"+k, "how many of "+s.Title(), float64(s.HowMany()), "1")
			V := p.Carry("V_"+k, "volume of "+s.Title(), quantity.In(m.Volume, "cm^3"), "cm^3")
			term := "n_" + k + " * V_" + k
			if s.Taken() {
				w.V -= n * V
				volumes = append(volumes, "- "+term)
				continue
			}
			w.V += n * V
			w.A += n * p.Carry("A_"+k, "surface of "+s.Title(), quantity.In(m.Cooling, "cm^2"), "cm^2")
			volumes, surfaces = append(volumes, "+ "+term), append(surfaces, "n_"+k+" * A_"+k)
		}
		p.Step("V", volume, w.V, "cm^3", strings.TrimPrefix(strings.Join(volumes, " "), "+ "), source.Derived("sum over the solids"))
		p.StepNote("A", surface, w.A, "cm^2", strings.Join(surfaces, " + "), source.Derived("sum over the solids"), "without the walls of what is taken away")
	}
	w.out.Volume = cm3(w.V)
}

// masses finds the weights of core and binder.
func (w *one) masses(n float64) {
	p, c := w.p, w.c
	s, ok := mouldstuff.FindSand(c.Sand.V)
	if !ok {
		panic("core: the form let an unknown sand through")
	}
	w.sand = s
	if c.Density.Known() {
		w.rhoK = p.Give("rho_k", "your own density of the core", c.Density.V, "kg/m^3")
	} else {
		d := s.Density
		w.rhoK = p.Lookup("rho_k", "density of "+s.Name, float64(d.V), "kg/m^3", d.Source, d.Note)
	}
	prints := w.sum("V_p", "volume of the prints", "cm^3", func(p Print) (float64, bool) { return quantity.In(p.Volume.V, "cm^3"), p.Volume.V > 0 })
	m := p.Step("m_1", "weight of one core with its prints", w.rhoK*(w.V+prints)*1e-6, "kg", "rho_k * (V + V_p)", definition)
	mn := p.Step("m_n", "weight of all alike", n*m, "kg", "n * m_1", definition)
	Vn := p.Step("V_n", "volume of all alike", n*w.V, "cm^3", "n * V", definition)
	share := 0.0
	switch {
	case c.BinderShare.Known():
		share = p.Give("s_b", "your own share of binder on the sand", c.BinderShare.V, "1")
	case w.binder() != nil:
		f := w.binder().Share
		share = p.Lookup("s_b", "share of binder on the sand, "+w.binder().Name, float64(f.V), "1", f.Source, f.Note)
	default:
		share = p.Number("s_b", "share of binder, none", 0, "1")
	}
	b := p.Step("m_b", "binder in all alike", mn*share/(1+share), "kg", "m_n * s_b / (1 + s_b)", source.Derived("binder is reckoned on the sand alone"))
	w.out.Density, w.out.Mass, w.out.MassAll, w.out.Binder = quantity.Density(w.rhoK), quantity.Mass(m), quantity.Mass(mn), quantity.Mass(b)
	w.add("V", "volume", Vn, "cm^3")
	w.add("m", "weight", mn, "kg")
	w.add("b", "binder", b, "kg")
}

// binder is the one chosen, or the usual one of the material; nil where it
// has none.
func (w *one) binder() *mouldstuff.BinderKind {
	code := w.c.Binder.V
	if !w.c.Binder.Known() {
		if len(w.sand.Binders) == 0 {
			return nil
		}
		code = w.sand.Binders[0]
	}
	b, ok := mouldstuff.FindBinder(code)
	if !ok {
		panic("core: the form let an unknown binder through")
	}
	return b
}

// sum adds up a figure over the prints that have it.
func (w *one) sum(symbol, what, unit string, of func(Print) (float64, bool)) float64 {
	var terms []string
	sum := 0.0
	for i, pr := range w.c.Prints {
		v, ok := of(pr)
		if !ok {
			continue
		}
		n, each := fmt.Sprintf("k_%d", i+1), fmt.Sprintf("%s%d", symbol, i+1)
		sum += w.p.Number(n, fmt.Sprintf("how many prints of entry %d", i+1), float64(pr.Count.V), "1") *
			w.p.Number(each, fmt.Sprintf("%s, one of entry %d", what, i+1), v, unit)
		terms = append(terms, n+" * "+each)
	}
	if terms == nil {
		return w.p.Number(symbol, what+", none", 0, unit)
	}
	return w.p.Step(symbol, what, sum, unit, strings.Join(terms, " + "), source.Derived("sum over the prints"))
}

// hollow is what stays closed in the casting and what fills it.
func (w *one) hollow(n float64) {
	if !w.c.Closed {
		return
	}
	p := w.p
	V := p.Step("V_h", "closed hollow, all alike", n*w.u*w.V, "cm^3", "n * u * V", definition)
	w.out.Hollow = cm3(V)
	w.add("h", "closed hollow", V, "cm^3")
	if !w.c.Filler.Known() {
		return
	}
	rho := p.Give("rho_f", "density of the filling", w.c.Filler.V, "kg/m^3")
	part := working.GiveOpt(p, "s_f", "part that is filled", w.c.FillShare, "1")
	m := p.Step("m_f", "filling in it, all alike", rho*part*V*1e-6, "kg", "rho_f * s_f * V_h", definition)
	w.out.Filler = quantity.Mass(m)
	w.add("f", "filling", m, "kg")
}
