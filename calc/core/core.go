package core

import (
	"fmt"
	"strings"

	"pourwright/calc/alloy"
	"pourwright/calc/flow"
	"pourwright/calc/form"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

var (
	definition = source.Derived("definition")
	adding     = source.Derived("sum over the cores")
	ownFigure  = source.Own("your own figure goes before the table's")
	upthrust   = source.Rao.Memory("ch. 4, lift of a core: the metal it displaces less its own weight")
)

// holding is one question on its way to the answer.
type holding struct {
	in  Input
	out Output
	p   *working.Paper
	a   *alloy.Alloy

	// rho in kg/m³, g in m/s², sigma in kPa, v in m/s; T in °C, t in s.
	rho, g, sigma, v, Tm, Tg, t float64
	sums                        map[string]*sum
}

// sum is a total over the cores on its way.
type sum struct {
	value float64
	names []string
}

// Hold works out what holds the cores of a mould, what vents them, and what
// they weigh.
//
// Refused: a bearing strength over 200 kPa in green sand, which crushes there;
// an upright core whose upper print lies below its lower one, or sticks out of
// metal that is said to cover it; solids that take away more than they add.
// Without the pouring time no gas flow is reckoned; without the depth of a
// core's top its gas pressure is compared with nothing.
func Hold(in Input, p *working.Paper) (Output, error) {
	in, faults := form.Ready(in)
	if len(faults) == 0 {
		faults = mismatched(in)
	}
	if err := faults.Err(); err != nil {
		return Output{}, err
	}
	a, ok := alloy.Find(in.Alloy)
	if !ok {
		panic("core: the form let an unknown alloy through")
	}
	h := &holding{in: in, p: p, a: a, sums: map[string]*sum{}}
	h.put()
	for i, c := range in.Cores {
		h.core(i, c)
	}
	h.out.Lift = quantity.Force(h.total("F", "F_all", "lift of all cores", "N"))
	h.out.ToCope = quantity.Force(h.total("K", "F_cope", "lift passed to the cope", "N"))
	h.out.CoresVolume = cm3(h.total("V", "V_all", "volume of all cores in the casting", "cm^3"))
	h.out.CoresMass = quantity.Mass(h.total("m", "m_all", "weight of all cores", "kg"))
	h.out.BinderMass = quantity.Mass(h.total("b", "m_binder", "binder in all cores", "kg"))
	h.out.SandMass = quantity.Mass(p.Step("m_sand", "core sand", float64(h.out.CoresMass-h.out.BinderMass), "kg", "m_all - m_binder", definition))
	h.out.HollowVolume = cm3(h.total("h", "V_hollow", "closed hollows left in the casting", "cm^3"))
	h.out.FillerMass = quantity.Mass(h.total("f", "m_filler", "filling in the closed hollows", "kg"))
	return h.out, nil
}

// put lays on the paper what all cores share.
func (h *holding) put() {
	p, in := h.p, h.in
	if in.Density.Known() {
		h.rho = p.Give("rho_m", "your own density of the liquid metal", in.Density.V, "kg/m^3")
	} else {
		d := h.a.DensityLiquid
		h.rho = p.Lookup("rho_m", "density of the liquid metal", float64(d.V), "kg/m^3", d.Source, d.Note)
	}
	h.g = flow.PutGravity(p)
	h.sigma = working.GiveOpt(p, "sigma", "bearing strength of the mould sand", in.Bearing, "kPa")
	h.v = working.GiveOpt(p, "v", "gas speed in the vents", in.VentSpeed, "m/s")
	h.Tg = working.GiveOpt(p, "T_g", "gas temperature in the vents", in.GasTemperature, "degC")
	if in.PourTemperature.Known() {
		h.Tm = p.Give("T_m", "pouring temperature", in.PourTemperature.V, "degC")
	} else {
		t := h.a.PourThin
		h.Tm = p.Lookup("T_m", "pouring temperature, usual for light walls", quantity.In(t.V, "degC"), "degC", t.Source, t.Note)
	}
	if in.PourTime.Known() {
		h.t = p.Give("t", "pouring time", in.PourTime.V, "s")
	}
}

// core works out one entry.
func (h *holding) core(i int, c Core) {
	path := fmt.Sprintf("cores[%d]", i)
	p := h.p.Sub(path)
	w := &one{holding: h, p: p, c: c, path: path, i: i}
	w.out.Name = title(c, i)
	n := p.Number("n", "how many alike", float64(c.Count.V), "1")
	w.body()
	w.masses(n)
	w.hold(n)
	w.vent()
	w.hollow(n)
	w.remarks()
	h.out.Cores = append(h.out.Cores, w.out)
}

// one is a core on its way. V in cm³, A in cm², forces in N.
type one struct {
	*holding
	p    *working.Paper
	c    Core
	path string
	i    int
	out  CoreAnswer

	V, A   float64 // body; A is 0 where it is not known
	rhoK   float64
	u      float64 // part drowned
	lift   float64
	left   float64 // lift that the prints leave over
	rests  float64 // weight that the prints leave over
	sand   *mouldstuff.SandKind
	gasWhy string // why no gas is reckoned
}

// add carries a result of one core into a total.
func (w *one) add(key, what string, v float64, unit string) {
	s := w.sums[key]
	if s == nil {
		s = &sum{}
		w.sums[key] = s
	}
	name := fmt.Sprintf("%s_%d", key, w.i+1)
	s.value += w.holding.p.Carry(name, what+" of "+w.out.Name, v, unit)
	s.names = append(s.names, name)
}

func (h *holding) total(key, symbol, what, unit string) float64 {
	s := h.sums[key]
	if s == nil {
		return h.p.Number(symbol, what+", none", 0, unit)
	}
	return h.p.Step(symbol, what, s.value, unit, strings.Join(s.names, " + "), adding)
}

func title(c Core, i int) string {
	if c.Name != "" {
		return c.Name
	}
	return fmt.Sprintf("core %d", i+1)
}

func cm2(v float64) quantity.Area   { return quantity.From[quantity.Area](v, "cm^2") }
func cm3(v float64) quantity.Volume { return quantity.From[quantity.Volume](v, "cm^3") }
