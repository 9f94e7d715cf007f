package feed

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

// one is a riser on its way. Lengths in cm.
type one struct {
	*feeding
	p    *working.Paper
	r    Riser
	i    int
	path string
	out  RiserAnswer

	Vz, Az, Mc float64
	ruling     int // section with the largest modulus among those it feeds
	x, eta     float64
	h          float64 // height over diameter
	cV, cM     float64
	D          float64
}

// risers sizes or checks every riser.
func (f *feeding) risers() form.Faults {
	var faults form.Faults
	var terms []string
	total := 0.0
	for i, r := range f.in.Risers {
		path := fmt.Sprintf("risers[%d]", i)
		w := &one{feeding: f, p: f.p.Sub(path), r: r, i: i, path: path}
		w.out.Name = riserName(r, i)
		w.domain()
		if fs := w.wants(); len(fs) > 0 {
			faults = append(faults, fs...)
			continue
		}
		w.body()
		w.neck()
		seen(w.p, f.a.Family, r.Cover.V, &w.out)
		w.out.Time, _, _ = f.times(w.p, "M_r", quantity.In(w.out.Modulus, "cm"))
		f.out.Risers = append(f.out.Risers, w.out)
		f.sized = append(f.sized, w)
		name := fmt.Sprintf("V_r%d", i+1)
		total += f.p.Carry(name, "volume of "+w.out.Name, quantity.In(w.out.Volume, "cm^3"), "cm^3")
		terms = append(terms, name)
	}
	if len(faults) > 0 {
		return faults
	}
	if terms == nil {
		f.p.Number("V_R", "volume of all risers, none", 0, "cm^3")
	} else {
		f.p.Step("V_R", "volume of all risers", total, "cm^3", strings.Join(terms, " + "), source.Derived("sum over the risers"))
	}
	f.out.Feeders = cm3(total)
	return nil
}

// domain adds up what the riser feeds and finds what it must outlast.
func (w *one) domain() {
	p := w.p
	N := p.Number("N", "castings that it feeds", float64(w.r.Castings.V), "1")
	var feeds, volumes, surfaces, moduli []string
	V, A := 0.0, 0.0
	w.ruling = -1
	put := func(symbol, name string, M float64) bool {
		p.Carry(symbol, "modulus of "+name, M, "cm")
		moduli = append(moduli, symbol)
		if M <= w.Mc {
			return false
		}
		w.Mc, w.out.Ruling = M, name
		return true
	}
	for i, b := range w.bodies {
		if w.links.root[i] != (origin{riserFeeds, w.i}) {
			continue
		}
		k := fmt.Sprint(i + 1)
		n := p.Number("n_"+k, "how many of "+b.name, b.n, "1")
		V += n * p.Carry("V_"+k, "volume of "+b.name, b.V, "cm^3")
		A += n * p.Carry("A_"+k, "cooled surface of "+b.name, b.Ac, "cm^2")
		if put("M_"+k, b.name, b.Mo) {
			w.ruling = i
		}
		feeds, volumes, surfaces = append(feeds, b.name), append(volumes, "n_"+k+" * V_"+k), append(surfaces, "n_"+k+" * A_"+k)
	}
	for k, s := range w.spots {
		if s.known && w.links.stands[k] == w.i {
			put(fmt.Sprintf("M_j%d", k+1), s.name, s.M)
		}
	}
	sum := source.Derived("sum over what it feeds")
	w.Vz = p.Step("V_z", "volume that it feeds", N*V, "cm^3", "N * ("+strings.Join(volumes, " + ")+")", sum)
	w.Az = p.Step("A_z", "cooled surface of that", N*A, "cm^2", "N * ("+strings.Join(surfaces, " + ")+")", sum)
	largest := strings.Join(moduli, ", ")
	if len(moduli) > 1 {
		largest = "max(" + largest + ")"
	}
	p.StepNote("M_c", "modulus to outlast", w.Mc, "cm", largest, riser.ModulusRule, "ruled by "+w.out.Ruling)
	w.out.Feeds, w.out.Fed, w.out.Cooling, w.out.ModulusFed = strings.Join(feeds, ", "), cm3(w.Vz), cm2(w.Az), cm(w.Mc)
}

// wants finds the modulus and the volume that the riser must have.
func (w *one) wants() form.Faults {
	p, r := w.p, w.r
	Mw := p.Step("M_w", "modulus wanted of the riser", w.k*w.Mc, "cm", "k * M_c", riser.ModulusRule)
	w.out.NeckModulus = cm(p.Step("M_n", "modulus of the neck", w.kn*w.Mc, "cm", "k_n * M_c", riser.ModulusRule))
	if r.Efficiency.Known() {
		w.eta = p.Give("eta", "share of the riser that it can give", r.Efficiency.V, "1")
	} else {
		f := riser.Efficiency(r.Cover.V.sleeved())
		w.eta = p.Lookup("eta", "share of the riser that it can give", float64(f.V), "1", f.Source, f.Note)
	}
	if !(w.eta > w.beta) {
		return form.Faults{{Field: w.path + ".efficiency", Label: "Own feed efficiency", Value: quantity.Text(share(w.eta)),
			Why: working.Say("a riser that gives %v of itself while the metal shrinks by %v cannot even feed itself, however large; use a sleeve, whose efficiency is higher", share(w.eta), share(w.beta))}}
	}
	Vf := p.Step("V_f", "riser volume wanted for feed metal", w.beta*w.Vz/(w.eta-w.beta), "cm^3", "beta * V_z / (eta - beta)", riser.FeedRule)
	w.x = w.extension()
	w.out.ModulusWanted, w.out.Efficiency, w.out.VolumeWanted = cm(Mw), share(w.eta), cm3(Vf)
	return nil
}

// extension is what the cover multiplies the modulus by.
func (w *one) extension() float64 {
	const what = "modulus extension by the cover"
	r := w.r
	switch {
	case r.Cover.V.plain():
		return w.p.Number("x", what+", none", 1, "1")
	case r.Extension.Known():
		return w.p.Give("x", what, r.Extension.V, "1")
	case r.Cover.V.sleeved():
		return w.p.Lookup("x", what, 1.1, "1", source.Brown.Memory("insulating sleeves 1.1 to 1.3"), "measured values run from about 1.07 to 1.27")
	}
	return w.p.Lookup("x", what, 1, "1", source.Practice("a cover on the top alone counts for nothing until you have tried it"), "")
}

// body sizes the riser by every rule, or takes the user's own size.
func (w *one) body() {
	p, r := w.p, w.r
	Mw, Vf := quantity.In(w.out.ModulusWanted, "cm"), quantity.In(w.out.VolumeWanted, "cm^3")
	var Vr, Mr float64
	if r.Shape.V == StatedRiser {
		Mo := p.Give("M_own", "modulus of the feeder, stated", r.Modulus, "cm")
		Vr = p.Step("V_r", "volume of the riser", p.Give("V_own", "volume of the feeder, stated", r.Volume, "cm^3"), "cm^3", "V_own", ownFigure)
		Mr = p.Step("M_r", "modulus of the riser", w.x*Mo, "cm", "x * M_own", riser.Geometry)
		w.out.Governs = "your own figures"
	} else {
		w.proportion()
		w.cV, w.cM = riser.Coefficients(p, w.h, r.Place.V == Side, r.Shape.V == Domed)
		w.size(Mw, Vf)
		H := p.Step("H", "height", w.h*w.D, "cm", "h * D", definition)
		Vr = p.Step("V_r", "volume of the riser", w.cV*math.Pow(w.D, 3), "cm^3", "c_V * pow(D, 3)", riser.Geometry)
		Mr = p.Step("M_r", "modulus of the riser", w.x*w.cM*w.D, "cm", "x * c_M * D", riser.Geometry)
		w.out.Diameter, w.out.Height = quantity.Some(cm(w.D)), quantity.Some(cm(H))
	}
	gM := p.Step("g_M", "modulus, times what is wanted", Mr/Mw, "1", "M_r / M_w", definition)
	if w.beta > 0 {
		gV := p.Step("g_V", "feed metal, times what is wanted", w.eta*Vr/(w.beta*(Vr+w.Vz)), "1", "eta * V_r / (beta * (V_r + V_z))", riser.FeedRule)
		w.out.FeedMargin = quantity.Some(quantity.Number(gV))
	}
	w.out.Volume, w.out.Modulus, w.out.ModulusMargin = cm3(Vr), cm(Mr), quantity.Number(gM)
}

// proportion is height over diameter: of the user's own sizes, or as asked for.
func (w *one) proportion() {
	if !w.r.Height.Known() {
		w.h = working.GiveOpt(w.p, "h", "height over diameter", w.r.Ratio, "1")
		return
	}
	H, D := w.p.Give("H_own", "your own height", w.r.Height.V, "cm"), w.p.Give("D_own", "your own diameter", w.r.Diameter.V, "cm")
	w.h = w.p.Step("h", "height over diameter", H/D, "1", "H_own / D_own", definition)
}

// rule is a method with its diameter.
type rule struct {
	name, symbol string
	D            float64
}

// size works out the diameter by every rule that holds for the riser; the
// largest governs, unless the user has his own.
func (w *one) size(Mw, Vf float64) {
	p := w.p
	DM := p.Step("D_M", "diameter by modulus", Mw/(w.x*w.cM), "cm", "M_w / (x * c_M)", riser.ModulusRule)
	DV := p.Step("D_V", "diameter by feed volume", math.Cbrt(Vf/w.cV), "cm", "cbrt(V_f / c_V)", riser.FeedRule)
	w.out.ByModulus, w.out.ByVolume = quantity.Some(cm(DM)), quantity.Some(cm(DV))
	rules := []rule{{"modulus", "D_M", DM}, {"feed volume", "D_V", DV}}
	if w.r.Cover.V.plain() {
		rules = append(rules, w.byCaine()...)
		if w.a.Family == alloy.Steel {
			rules = append(rules, w.byShape()...)
		}
	}
	best := rules[0]
	symbols := make([]string, len(rules))
	for i, r := range rules {
		symbols[i] = r.symbol
		if r.D > best.D {
			best = r
		}
	}
	w.out.Governs = best.name
	if w.r.Diameter.Known() {
		own := p.Give("D_own", "your own diameter", w.r.Diameter.V, "cm")
		w.D = p.Step("D", "diameter", own, "cm", "D_own", ownFigure)
		return
	}
	w.D = p.StepNote("D", "diameter", best.D, "cm", "max("+strings.Join(symbols, ", ")+")", riser.ModulusRule, "governed by "+best.name)
}

// byCaine is the largest diameter among the metal's rows that rule.
func (w *one) byCaine() []rule {
	var symbols []string
	largest := 0.0
	for k, row := range caineRows(w.a) {
		a := caine(w.p.Sub(fmt.Sprintf("%s.caine[%d]", w.path, k)), row, w.Vz, w.Az, w.cV, w.cM)
		w.out.Caine = append(w.out.Caine, a)
		if row.rules {
			symbol := fmt.Sprintf("D_C%d", k+1)
			largest = math.Max(largest, w.p.Carry(symbol, "diameter on Caine's curve for "+row.of, quantity.In(a.Diameter.V, "cm"), "cm"))
			symbols = append(symbols, symbol)
		}
	}
	if symbols == nil {
		return nil
	}
	formula := symbols[0]
	if len(symbols) > 1 {
		formula = "max(" + strings.Join(symbols, ", ") + ")"
	}
	D := w.p.Step("D_C", "diameter by Caine's curve", largest, "cm", formula, raoCaine)
	w.out.ByCaine = quantity.Some(cm(D))
	return []rule{{"Caine's curve", "D_C", D}}
}

// byShape is the diameter by the two shape-factor rules for steel.
func (w *one) byShape() []rule {
	if w.ruling < 0 {
		return nil
	}
	l, m, t, ok := sizes(w.in.Sections[w.ruling])
	if !ok {
		return nil
	}
	p := w.p
	S := p.Step("S", "shape factor of "+w.bodies[w.ruling].name, (p.Give("S_l", "its length", l, "cm")+p.Give("S_w", "its width", m, "cm"))/p.Give("S_t", "its thickness", t, "cm"), "1", "(S_l + S_w) / S_t", nrlCurve)
	w.out.ShapeFactor = quantity.Some(quantity.Number(S))
	if S < nrl[0].S*(1-1e-12) || S > nrl[len(nrl)-1].S {
		return nil
	}
	yN := nrlRatio(p, S)
	DN := p.Step("D_N", "diameter by the NRL curve", math.Cbrt(yN*w.Vz/w.cV), "cm", "cbrt(y_N * V_z / c_V)", nrlCurve)
	yS := sfsaRatio(p, S)
	DS := p.Step("D_S", "diameter by SFSA 2001", math.Cbrt(yS*w.Vz/w.cV), "cm", "cbrt(y_S * V_z / c_V)", source.SFSA.Memory("sec. 6"))
	w.out.NRLRatio, w.out.ByNRL = quantity.Some(quantity.Number(yN)), quantity.Some(cm(DN))
	w.out.SFSARatio, w.out.BySFSA = quantity.Some(quantity.Number(yS)), quantity.Some(cm(DS))
	return []rule{{"NRL shape factor", "D_N", DN}, {"SFSA shape factor", "D_S", DS}}
}
