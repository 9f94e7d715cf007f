package gating

import (
	"math"

	"pourwright/calc/flow"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// metal puts the metal and the flow on the paper.
func (z *sizing) metal() {
	p, in, a := z.p, z.in, z.a
	z.g = p.Number("g", "acceleration of free fall", float64(in.Gravity.V), "m/s^2")
	if in.Density.Known() {
		z.rho = working.GiveOpt(p, "rho_m", "density of the liquid metal", in.Density, "kg/m^3")
	} else {
		z.rho = p.Lookup("rho_m", "density of the liquid metal", float64(a.DensityLiquid.V), "kg/m^3", a.DensityLiquid.Source, a.DensityLiquid.Note)
	}
	if in.Viscosity.Known() {
		own := working.GiveOpt(p, "mu_own", "your own viscosity", in.Viscosity, "Pa*s")
		z.mu = p.Step("mu_m", "viscosity of the metal", own, "Pa*s", "mu_own", source.Own("your own figure goes before the table's"))
	} else {
		table := p.Lookup("mu_t", "viscosity in the table", float64(a.Viscosity.V), "Pa*s", a.Viscosity.Source, a.Viscosity.Note)
		z.mu = p.Step("mu_m", "viscosity of the metal", table, "Pa*s", "mu_t", a.Viscosity.Source)
	}
	z.out.Viscosity = quantity.Viscosity(z.mu)
	if in.Flow.Known() {
		own := working.GiveOpt(p, "Q_own", "flow, as stated", in.Flow, "L/s")
		z.Q = p.Step("Q", "flow, on average", own, "L/s", "Q_own", source.Own("your own figure")) / 1000
	} else {
		W, t := working.GiveOpt(p, "W", "metal poured", in.Poured, "kg"), working.GiveOpt(p, "t_w", "pouring time", in.Time, "s")
		z.Q = p.Step("Q", "flow, on average", W/z.rho/t*1000, "L/s", "W / rho_m / t_w", continuity) / 1000
	}
	q := p.Step("q_m", "pouring rate", z.Q*z.rho, "kg/s", "Q * rho_m", continuity)
	z.out.Flow, z.out.FlowRate = quantity.VolumeFlow(z.Q), quantity.MassFlow(q)
}

// heads puts the effective heads on the paper.
func (z *sizing) heads() {
	p, in := z.p, z.in
	h := p.Give("h", "metal level above the ingates", in.Height, "mm")
	rule, exact := h, h
	if in.Gate.V == flow.Top {
		rule = p.Step("H", "effective head of a top gate", h, "mm", "h", source.Rao.Memory("ch. 4, effective sprue height"))
		exact = p.Step("H_x", "effective head, exact", h, "mm", "h", source.Derived("a top gate keeps its full head"))
	} else {
		c := p.Give("c", "height of the cavity", in.Cavity, "mm")
		cp := p.Number("c_p", "height of cavity above the ingates", in.Gate.V.CopePart(c, quantity.In(in.Cope.V, "mm")), "mm")
		rule, exact = flow.Heads(p, h, c, cp)
	}
	z.h, z.H = h/1000, exact/1000
	z.out.Head, z.out.ExactHead = quantity.From[quantity.Length](rule, "mm"), quantity.From[quantity.Length](exact, "mm")
	z.out.StartFlow = quantity.From[quantity.VolumeFlow](p.Step("Q_0", "flow while the mould is empty", z.Q*1000*math.Sqrt(z.h/z.H), "L/s", "Q * sqrt(h / H_x)", source.Derived("flow goes as the root of the head")), "L/s")
}

// topTooNarrow refuses a top of the sprue that would not pass the flow though
// the whole head drove it: then nothing below it can be the choke.
func (z *sizing) topTooNarrow() form.Faults {
	top := z.in.SprueTop
	if !top.Known() || z.in.Untapered || z.in.Discharge.Known() {
		return nil
	}
	least := quantity.Area(z.Q * math.Sqrt((1+z.entry(nil))/(2*z.g*z.H)))
	if top.V >= least {
		return nil
	}
	return form.Faults{{Field: "sprue_top", Label: "Area at its top, if it is there already", Value: quantity.Text(top.V),
		Why: working.Say("%v does not pass %v even under the whole head; it must be at least %v", top.V, z.out.Flow, least)}}
}

// ratio settles the areas over the choke.
func (z *sizing) ratio() {
	p, in := z.p, z.in
	switch {
	case !in.Ratio.Known():
		l, exact := listFor(z.a)
		z.shares = suggested(l)
		if exact {
			z.put("list for " + l.metal + ", the row that slows the metal most")
		} else {
			z.put("the books have no list for this metal; that for " + l.metal + " is taken, the row that slows the metal most")
		}
	case in.Ratio.V == OwnRatio:
		z.shares = shares{OwnRatio, float64(in.Sprue), float64(in.Runner), float64(in.Gates)}
		p.Give("k_s", "sprue foot, in the ratio", in.Sprue, "1")
		p.Give("k_r", "runners, in the ratio", in.Runner, "1")
		p.Give("k_g", "ingates, in the ratio", in.Gates, "1")
	default:
		z.shares = find(in.Ratio.V)
		z.put("the ratio that you chose")
	}
	s := z.shares
	least := p.Step("k_c", "smallest share of the ratio", s.least(), "1", "min(k_s, k_r, k_g)", source.Derived("the choke is the narrowest section"))
	z.s = p.Step("a_s", "sprue foot over the choke", s.sprue/least, "1", "k_s / k_c", ratioOf)
	z.r = p.Step("a_r", "runners over the choke", s.runner/least, "1", "k_r / k_c", ratioOf)
	z.gt = p.Step("a_g", "ingates over the choke", s.gates/least, "1", "k_g / k_c", ratioOf)
	z.own = in.Choke.V == InRunner
	text := func(v float64) string { return quantity.FormatNumber(v, 4, 3) }
	z.out.Ratio = text(s.sprue) + " : " + text(s.runner) + " : " + text(s.gates)
	z.out.Kind = "unpressurised"
	if s.pressurised() {
		z.out.Kind = "pressurised"
	}
	z.out.ChokeAt = map[int]string{atSprue: "foot of the sprue", atRunner: "runner", atGates: "ingates", atOwn: "choke of its own where the runner begins"}[z.chokeAt()]
}

func (z *sizing) put(note string) {
	z.p.Lookup("k_s", "sprue foot, in the ratio", z.shares.sprue, "1", ratioSource, note)
	z.p.Lookup("k_r", "runners, in the ratio", z.shares.runner, "1", ratioSource, note)
	z.p.Lookup("k_g", "ingates, in the ratio", z.shares.gates, "1", ratioSource, note)
}

// Where the choke is; of sections alike the first.
const (
	atSprue = iota
	atOwn
	atRunner
	atGates
)

func (z *sizing) chokeAt() int {
	switch {
	case z.own:
		return atOwn
	case z.s == 1:
		return atSprue
	case z.r == 1:
		return atRunner
	}
	return atGates
}
