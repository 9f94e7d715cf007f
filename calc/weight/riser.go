package weight

import (
	"fmt"
	"math"
	"strings"

	"pourwright/calc/alloy"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/riser"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// isIron reports a graphitic iron, which expands as it freezes.
func (w *weighing) isIron() bool {
	return w.a.Family == alloy.GreyIron || w.a.Family == alloy.DuctileIron
}

// risers sizes or checks every riser and adds up their weights.
func (w *weighing) risers() form.Faults {
	w.shrinkage()
	if own := w.in.Modulus; own.Known() {
		M := w.p.Give("M_own", "your own modulus to feed", own.V, "cm")
		w.p.Step("M_g", "modulus to feed", M, "cm", "M_own", ownFigure)
		w.out.Modulus, w.out.ModulusOf = own, "your own figure"
	}
	if own := w.in.RiserFactor; own.Known() {
		w.p.Give("k", "modulus of the riser over that of the section", own.V, "1")
	} else {
		f := riser.Factor(w.a.Family)
		w.p.Lookup("k", "modulus of the riser over that of the section", float64(f.V), "1", f.Source, f.Note)
	}
	working.GiveOpt(w.p, "k_n", "modulus of the neck over that of the section", w.in.NeckFactor, "1")

	shares, faults := w.shares()
	if len(faults) > 0 {
		return faults
	}
	var symbols []string
	for i, r := range w.in.Risers {
		mass, fs := w.riser(i, r, shares[i])
		if faults = append(faults, fs...); len(fs) > 0 {
			continue
		}
		symbol := fmt.Sprintf("m_r%d", i+1)
		w.p.Carry(symbol, "weight of "+title(r, i), mass, "kg")
		symbols = append(symbols, symbol)
		w.mr += mass
	}
	if len(faults) > 0 {
		return faults
	}
	if len(symbols) == 0 {
		w.p.Number("m_r", "risers, none", 0, "kg")
	} else {
		w.p.Step("m_r", "weight of all risers", w.mr, "kg", strings.Join(symbols, " + "), adding)
	}
	w.out.RisersMass = kg(w.mr)
	return nil
}

func title(r Riser, i int) string {
	if r.Name != "" {
		return r.Name
	}
	return fmt.Sprintf("riser %d", i+1)
}

// shrinkage is the feed that the metal wants: the user's figure, or the
// table's. Of an iron in a mould that yields, the upper end of the table's
// range is taken: the wall gives way and the casting has to be topped up.
func (w *weighing) shrinkage() {
	table := w.a.FeedShrinkage
	switch {
	case w.in.Shrinkage.Known():
		own := w.p.Give("beta_own", "your own feed shrinkage", w.in.Shrinkage.V, "1")
		w.beta = w.p.Step("beta", "feed shrinkage", own, "1", "beta_own", ownFigure)
	case w.isIron() && w.in.Wall.V == Green:
		_, high := table.Span()
		t := w.p.Lookup("beta_t", "feed shrinkage, upper end", float64(high), "1", table.Source, table.Note)
		w.beta = w.p.StepNote("beta", "feed shrinkage", t, "1", "beta_t", table.Source, "upper end of the range, as a green-sand wall yields to the iron's expansion")
	default:
		t := w.p.Lookup("beta_t", "feed shrinkage in the table", float64(table.V), "1", table.Source, table.Note)
		w.beta = w.p.Step("beta", "feed shrinkage", t, "1", "beta_t", table.Source)
	}
	w.out.Shrinkage = share(w.beta)
}

// shares is what each riser feeds, in castings: its own figure, or an equal
// part of what the others leave.
func (w *weighing) shares() ([]float64, form.Faults) {
	given, equal := 0.0, 0.0
	for _, r := range w.in.Risers {
		if r.Feeds.Known() {
			given += float64(r.Feeds.V) * float64(r.Count.V)
		} else {
			equal += float64(r.Count.V)
		}
	}
	w.p.Number("phi_g", "castings fed by risers whose share is given", given, "1")
	w.p.Number("n_e", "risers that share the rest", equal, "1")
	out := make([]float64, len(w.in.Risers))
	for i, r := range w.in.Risers {
		switch {
		case r.Feeds.Known():
			out[i] = float64(r.Feeds.V)
		case given >= w.N*(1-1e-9):
			return nil, form.Faults{{Field: fmt.Sprintf("risers[%d].feeds", i), Label: "Feeds, of one casting", Missing: true,
				Why: working.Say("the other risers already feed all of %v; say what share of a casting this one feeds", plural(w.N, "casting"))}}
		default:
			out[i] = (w.N - given) / equal
		}
	}
	if equal == 0 && len(out) > 0 && given < w.N*0.99 {
		w.p.Find(working.Finding{Level: working.Mind, Code: "feeds-short", Field: "risers[0].feeds", Source: riser.FeedRule,
			Text: working.Say("By the shares you give, the risers feed %v of the castings in the mould; nothing feeds the rest.", share(given/w.N)),
			Do:   working.Say("Raise the shares until they come to 100 %%, or add a riser.")})
	}
	return out, nil
}

func plural(n float64, word string) string {
	if n == 1 {
		return fmt.Sprintf("1 %s", word)
	}
	return fmt.Sprintf("%g %ss", n, word)
}

// riser sizes or checks one entry on its own paper and returns the mass of all
// alike.
func (w *weighing) riser(i int, r Riser, phi float64) (mass float64, faults form.Faults) {
	path := fmt.Sprintf("risers[%d]", i)
	p := w.p.Sub(path)
	out := RiserAnswer{Name: title(r, i), Place: placeText(r.Place.V)}

	if r.Feeds.Known() {
		p.Give("phi", "castings that each of them feeds", r.Feeds.V, "1")
	} else {
		p.Step("phi", "castings that each of them feeds", phi, "1", "(N - phi_g) / n_e", source.Derived("equal shares"))
	}
	Vz := p.Step("V_z", "volume that each feeds", phi*w.V, "cm^3", "phi * V", definition)
	Mc, faults := w.fedModulus(p, r, path)
	if len(faults) > 0 {
		return 0, faults
	}
	k, kn := w.factor(), float64(w.in.NeckFactor.V)
	Mw := p.Step("M_w", "modulus wanted of the riser", k*Mc, "cm", "k * M_c", riser.ModulusRule)
	eta := w.efficiency(p, r)
	if !(eta > w.beta) {
		return 0, form.Faults{{Field: path + ".efficiency", Label: "Own feed efficiency", Value: quantity.Text(share(eta)),
			Why: working.Say("a riser that gives %v of itself while the metal shrinks by %v cannot even feed itself, however large; use a sleeve, whose efficiency is higher", share(eta), share(w.beta))}}
	}
	Vf := p.Step("V_f", "riser volume wanted for feed metal", w.beta*Vz/(eta-w.beta), "cm^3", "beta * V_z / (eta - beta)", riser.FeedRule)

	x := 1.0
	if r.Cover.V == Sleeve {
		x = working.GiveOpt(p, "x", "modulus extension by the sleeve", r.Extension, "1")
	}
	h := proportion(p, r)
	cV, cM := riser.Coefficients(p, h, r.Place.V == Side, r.Shape.V == Domed)
	perDiameter := "c_M"
	if r.Cover.V == Sleeve {
		perDiameter = "(x * c_M)"
	}
	DM := p.Step("D_M", "diameter by modulus", Mw/(x*cM), "cm", "M_w / "+perDiameter, riser.ModulusRule)
	DV := p.Step("D_V", "diameter by feed volume", math.Cbrt(Vf/cV), "cm", "cbrt(V_f / c_V)", riser.FeedRule)
	out.Governs = "modulus"
	if DV > DM {
		out.Governs = "feed volume"
	}
	var D float64
	if r.Diameter.Known() {
		p.Give("D_own", "your own diameter", r.Diameter.V, "cm")
		D = p.Step("D", "diameter", quantity.In(r.Diameter.V, "cm"), "cm", "D_own", ownFigure)
	} else {
		D = p.StepNote("D", "diameter", math.Max(DM, DV), "cm", "max(D_M, D_V)", riser.ModulusRule, "ruled by the "+out.Governs)
	}
	H := p.Step("H", "height", h*D, "cm", "h * D", definition)
	Vr := p.Step("V_r", "volume of the riser", cV*math.Pow(D, 3), "cm^3", "c_V * pow(D, 3)", riser.Geometry)
	Mr := p.Step("M_r", "modulus of the riser", x*cM*D, "cm", perDiameter+" * D", riser.Geometry)
	gM := p.Step("g_M", "modulus, times what is wanted", Mr/Mw, "1", "M_r / M_w", definition)
	if w.beta > 0 {
		gV := p.Step("g_V", "feed metal, times what is wanted", eta*Vr/(w.beta*(Vr+Vz)), "1", "eta * V_r / (beta * (V_r + V_z))", riser.FeedRule)
		out.FeedMargin = quantity.Some(number(gV))
	}
	Mn := p.Step("M_n", "modulus of the neck", kn*Mc, "cm", "k_n * M_c", riser.ModulusRule)
	if r.Place.V == Side {
		out.NeckDiameter = quantity.Some(cm(p.Step("D_n", "diameter of a long round neck", 4*Mn, "cm", "4 * M_n", source.Derived("a long rod has a quarter of its diameter for modulus"))))
	}
	m1 := p.Step("m_1", "weight of one riser", w.rho*Vr*1e-6, "kg", "rho * V_r", definition)
	n := p.Number("n", "how many alike", float64(r.Count.V), "1")
	mass = p.Step("m_n", "weight of all of them", n*m1, "kg", "n * m_1", definition)

	out.Fed, out.VolumeWanted, out.Volume = cm3(Vz), cm3(Vf), cm3(Vr)
	out.ModulusFed, out.ModulusWanted, out.Modulus, out.NeckModulus = cm(Mc), cm(Mw), cm(Mr), cm(Mn)
	out.ByModulus, out.ByVolume, out.Diameter, out.Height = cm(DM), cm(DV), cm(D), cm(H)
	out.Mass, out.MassAll, out.ModulusMargin = kg(m1), kg(mass), number(gM)
	w.out.Risers = append(w.out.Risers, out)
	w.riserRemarks(p, r, path, out, h)
	return mass, nil
}

func (w *weighing) factor() float64 {
	if own := w.in.RiserFactor; own.Known() {
		return float64(own.V)
	}
	return float64(riser.Factor(w.a.Family).V)
}

// fedModulus is that of the section a riser feeds: its own figure, or the
// casting's, less the surface that the risers cover.
func (w *weighing) fedModulus(p *working.Paper, r Riser, path string) (float64, form.Faults) {
	if own := r.Modulus; own.Known() {
		M := p.Give("M_z", "your own modulus of what it feeds", own.V, "cm")
		return p.Step("M_c", "modulus to feed", M, "cm", "M_z", ownFigure), nil
	}
	if r.Place.V == Top && r.Seat.V > 0 {
		seat := p.Give("A_seat", "casting surface that the risers cover", r.Seat.V, "cm^2")
		s := w.sections
		if seat > 0.9*s.Ag {
			return 0, form.Faults{{Field: path + ".seat", Label: "Casting surface they cover", Value: quantity.Text(r.Seat.V),
				Why: working.Say("%v is most of the cooled surface of %v, %v; it must be at most %v", r.Seat.V, s.name, cm2(s.Ag), cm2(0.9*s.Ag))}}
		}
		return p.Step("M_c", "modulus to feed, without the surface under the risers", s.Vg/(s.Ag-seat), "cm", "V_g / (A_g - A_seat)", riser.Seat), nil
	}
	M := quantity.In(w.out.Modulus.V, "cm")
	return p.Step("M_c", "modulus to feed", M, "cm", "M_g", riser.ModulusRule), nil
}

func (w *weighing) efficiency(p *working.Paper, r Riser) float64 {
	if own := r.Efficiency; own.Known() {
		return p.Give("eta", "share of the riser that it can give", own.V, "1")
	}
	f := riser.Efficiency(r.Cover.V == Sleeve)
	return p.Lookup("eta", "share of the riser that it can give", float64(f.V), "1", f.Source, f.Note)
}

func placeText(place Place) string {
	if place == Side {
		return "side"
	}
	return "top"
}
