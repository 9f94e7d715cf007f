package feed

import (
	"fmt"
	"strings"

	"pourwright/calc/alloy"
	"pourwright/calc/form"
	"pourwright/calc/freeze"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/riser"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// feeding is one question on its way to the answer.
type feeding struct {
	in    Input
	out   Output
	p     *working.Paper
	a     *alloy.Alloy
	links links

	// C, Clow and Chigh are freezing constants in s/mm², where timed.
	timed          bool
	C, Clow, Chigh float64
	beta, k, kn    float64
	bodies         []*body
	spots          []spot
	sized          []*one
}

// Plan works out how the casting freezes and whether it is fed.
//
// Refused: names that nothing or two things bear, ways of feeding that go
// round in a circle, sections of which next to nothing cools, a riser that
// nothing is fed from or that can give no more than it shrinks by itself,
// metal at or below its liquidus, a mould as hot as the metal freezes.
func Plan(in Input, p *working.Paper) (Output, error) {
	in, faults := form.Ready(in)
	var l links
	if len(faults) == 0 {
		l, faults = link(in)
	}
	if len(faults) == 0 {
		faults = mismatched(in, l)
	}
	a, _ := alloy.Find(in.Alloy)
	if len(faults) == 0 {
		faults = cold(in, a)
	}
	if err := faults.Err(); err != nil {
		return Output{}, err
	}
	f := &feeding{in: in, p: p, a: a, links: l}
	f.out.Metal = a.Name
	f.constants()
	if err := f.sections().Err(); err != nil {
		return Output{}, err
	}
	f.whole()
	f.joints()
	f.graphite()
	f.shrinkage()
	f.factors()
	if err := f.risers().Err(); err != nil {
		return Output{}, err
	}
	f.order()
	f.paths()
	f.reaches()
	f.remarks()
	return f.out, nil
}

// cold refuses metal that is not liquid and moulds that do not freeze it.
func cold(in Input, a *alloy.Alloy) (out form.Faults) {
	if t := in.PourTemperature; t.Known() && t.V <= a.Liquidus.V {
		out = append(out, form.Fault{Field: "pour_temperature", Label: "Pouring temperature", Value: quantity.Text(t.V),
			Why: working.Say("%v is not above the liquidus of %v; metal that cold is not liquid", t.V, a.Liquidus.V)})
	}
	const margin = 50
	if in.Sand.Known() && !in.Constant.Known() && float64(in.MouldTemperature.V) > float64(a.Solidus.V)-margin {
		out = append(out, form.Fault{Field: "mould_temperature", Label: "Mould temperature", Value: quantity.Text(in.MouldTemperature.V),
			Why: working.Say("%v is too near to the solidus of %v for the metal to freeze by the mould; it must be %v or below", in.MouldTemperature.V, a.Solidus.V, a.Solidus.V-margin)})
	}
	return out
}

// constants puts the freezing constant on the paper, where one is known.
func (f *feeding) constants() {
	p, in := f.p, f.in
	switch {
	case in.Constant.Known():
		own := p.Give("C_own", "your own freezing constant", in.Constant.V, "s/mm^2")
		f.C = p.Step("C", "freezing constant", own, "s/mm^2", "C_own", ownFigure)
		f.Clow = p.Step("C_lo", "freezing constant, low end", own, "s/mm^2", "C", ownFigure)
		f.Chigh = p.Step("C_hi", "freezing constant, high end", own, "s/mm^2", "C", ownFigure)
	case in.Sand.Known():
		s, ok := mouldstuff.FindSand(in.Sand.V)
		if !ok {
			panic("feed: the form let an unknown sand through")
		}
		m := freeze.MetalOf(f.a)
		m.Put(p)
		b, bLow, bHigh := freeze.PutEffusivity(p, s.Effusivity())
		Te := freeze.PutEffective(p, m)
		T0 := working.GiveOpt(p, "T_0", "mould temperature", in.MouldTemperature, "degC")
		u := working.GiveOpt(p, "u", "share of the superheat counted", in.Counted, "1")
		Delta := 0.0
		if in.PourTemperature.Known() {
			Tp := p.Give("T_p", "pouring temperature", in.PourTemperature.V, "degC")
			Delta = p.Step("Delta_T", "superheat", Tp-quantity.In(m.Liquidus.V, "degC"), "K", "T_p - T_L", definition)
		} else {
			p.Number("Delta_T", "superheat, none counted as no pouring temperature is given", 0, "K")
		}
		c := freeze.Constant(p, m, Te, T0, Delta, u, b, bLow, bHigh)
		f.C, f.Clow, f.Chigh = quantity.In(c.Mid, "s/mm^2"), quantity.In(c.Low, "s/mm^2"), quantity.In(c.High, "s/mm^2")
	default:
		return
	}
	f.timed = true
	c := func(v float64) quantity.Opt[quantity.FreezingConstant] {
		return quantity.Some(quantity.From[quantity.FreezingConstant](v, "s/mm^2"))
	}
	f.out.Constant, f.out.ConstantLow, f.out.ConstantHigh = c(f.C), c(f.Clow), c(f.Chigh)
}

// whole adds the sections up.
func (f *feeding) whole() {
	var volumes, surfaces []string
	V, A := 0.0, 0.0
	for i, b := range f.bodies {
		k := fmt.Sprint(i + 1)
		n := f.p.Number("n_"+k, "how many of "+b.name, b.n, "1")
		V += n * f.p.Carry("V_"+k, "volume of "+b.name, b.V, "cm^3")
		A += n * f.p.Carry("A_"+k, "cooled surface of "+b.name, b.Ac, "cm^2")
		volumes, surfaces = append(volumes, "n_"+k+" * V_"+k), append(surfaces, "n_"+k+" * A_"+k)
	}
	sum := source.Derived("sum over the sections")
	f.out.Volume = cm3(f.p.Step("V_all", "volume of one casting", V, "cm^3", strings.Join(volumes, " + "), sum))
	f.out.Cooling = cm2(f.p.Step("A_all", "cooled surface of one casting", A, "cm^2", strings.Join(surfaces, " + "), sum))
}

// factors puts the moduli of riser and neck over that of the section on the
// paper.
func (f *feeding) factors() {
	if own := f.in.RiserFactor; own.Known() {
		f.k = f.p.Give("k", "modulus of the riser over that of the section", own.V, "1")
	} else {
		r := riser.Factor(f.a.Family)
		f.k = f.p.Lookup("k", "modulus of the riser over that of the section", float64(r.V), "1", r.Source, r.Note)
	}
	f.kn = working.GiveOpt(f.p, "k_n", "modulus of the neck over that of the section", f.in.NeckFactor, "1")
}
