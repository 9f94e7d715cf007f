package gating

import (
	"fmt"
	"math"
	"strings"

	"pourwright/calc/alloy"
	"pourwright/calc/flow"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/solve"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

var (
	continuity = source.Derived("continuity")
	geometry   = source.Derived("geometry of the section")
	ratioOf    = source.Derived("area of the choke times the share of the ratio")
)

// wellArea and wellDepth are the usual well: five times the sprue's foot in
// area, twice the runner in depth.
const (
	wellArea  = 5
	wellDepth = 2
)

var wellSource = source.ASM15.Memory("sprue well; also P. N. Rao. Campbell argues against enlarged wells")

// basinWidths is how many widths of the sprue's top the metal should stand
// over it, so that no whirl draws air in; 2.5 to 4 by custom.
const basinWidths = 3

var basinSource = source.Practice("metal 2.5 to 4 sprue widths deep hinders the whirl")

// sizing is one gating being worked out. SI.
type sizing struct {
	in  Input
	a   *alloy.Alloy
	p   *working.Paper
	out Output

	shares        shares
	s, r, gt      float64 // areas over the choke's
	own           bool    // a choke of its own in the runner
	Q, rho, mu, g float64
	h, H          float64 // full and effective head
	way           way
}

// way is what follows from one size of the choke.
type way struct {
	Ac, As, Ar, Ag, At        float64
	ds, hc, Ls, ht, et        float64
	vt, vs, vc, vr, vg        float64
	wr, hr, tg, wg            float64
	Ds, Dr, Dg                float64
	Res, Rer, Reg, fs, fr, fg float64
	sumUp, sum                float64 // Σ e v² up to the choke, and in all with the exit
	up                        int     // how many of the losses lie before the choke
	losses                    []Loss
	names                     []string // symbols of their heads
	K                         float64
}

// Size works out the gating; see the package comment.
//
// Refused: a cavity that stands above the metal in the basin, a basin as deep
// as the whole head, a top of the sprue that would not pass the flow, own
// numbers that contradict each other. The Reynolds
// numbers and friction factors are those of the flow on average.
func Size(in Input, p *working.Paper) (Output, error) {
	in, faults := form.Ready(in)
	if len(faults) == 0 {
		faults = consistent(in)
	}
	if err := faults.Err(); err != nil {
		return Output{}, err
	}
	a, ok := alloy.Find(in.Alloy)
	if !ok {
		panic("gating: the form let an unknown alloy through")
	}
	z := &sizing{in: in, a: a, p: p}
	z.metal()
	z.heads()
	if err := z.topTooNarrow().Err(); err != nil {
		return Output{}, err
	}
	z.ratio()
	z.choke()
	z.answer()
	z.find()
	return z.out, nil
}

// consistent checks what one field alone cannot tell.
func consistent(in Input) (faults form.Faults) {
	add := func(field, label string, value quantity.Any, why working.Text) {
		faults = append(faults, form.Fault{Field: field, Label: label, Value: quantity.Text(value), Why: why})
	}
	if !in.Flow.Known() {
		if !in.Poured.Known() {
			faults = append(faults, form.Fault{Field: "poured_mass", Label: "Metal poured", Missing: true, Why: working.Say("wanted for the flow, unless you state a flow of your own")})
		}
		if !in.Time.Known() {
			faults = append(faults, form.Fault{Field: "pour_time", Label: "Pouring time", Missing: true, Why: working.Say("wanted for the flow, unless you state a flow of your own")})
		}
	}
	if in.Gate.V == flow.Parting && in.Cope.V > in.Cavity {
		add("cope_height", "Cavity above the ingates", in.Cope.V, working.Say("it is part of the cavity's height of %v and cannot be more", in.Cavity))
	} else if in.Gate.V != flow.Top {
		if above := quantity.Length(in.Gate.V.CopePart(float64(in.Cavity), float64(in.Cope.V))); above >= in.Height {
			add("sprue_height", "Metal level above the ingates", in.Height, working.Say("the cavity stands %v above the ingates; the metal level must be higher than that, or the mould cannot fill", above))
		}
	}
	if in.BasinDepth.Known() && in.BasinDepth.V >= in.Height {
		add("basin_depth", "Depth of metal in the basin", in.BasinDepth.V, working.Say("it is part of the %v above the ingates and must be less", in.Height))
	}
	return faults
}

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
		z.mu = p.Step("mu_m", "viscosity of the metal", own, "Pa*s", "mu_own", source.Practice("your own figure goes before the table's"))
	} else {
		table := p.Lookup("mu_t", "viscosity in the table", float64(a.Viscosity.V), "Pa*s", a.Viscosity.Source, a.Viscosity.Note)
		z.mu = p.Step("mu_m", "viscosity of the metal", table, "Pa*s", "mu_t", a.Viscosity.Source)
	}
	z.out.Viscosity = quantity.Viscosity(z.mu)
	if in.Flow.Known() {
		own := working.GiveOpt(p, "Q_own", "flow, as stated", in.Flow, "L/s")
		z.Q = p.Step("Q", "flow, on average", own, "L/s", "Q_own", source.Practice("your own figure")) / 1000
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

// choke finds the area of the choke that passes the flow under the effective
// head, and lays the whole way out by it.
func (z *sizing) choke() {
	p := z.p
	ideal := z.Q / math.Sqrt(2*z.g*z.H)
	p.Step("A_i", "choke without losses", ideal*1e4, "cm^2", "Q / sqrt(2 * g * H_x)", source.Groover.Memory("ch. 10, Bernoulli"))
	z.out.ChokeIdeal = quantity.Area(ideal)
	if z.in.Discharge.Known() {
		C := working.GiveOpt(p, "C_own", "your own discharge coefficient", z.in.Discharge, "1")
		Ac := p.Step("A_c", "area of the choke", z.Q/(C*math.Sqrt(2*z.g*z.H))*1e4, "cm^2", "Q / (C_own * sqrt(2 * g * H_x))", source.Rao.Memory("ch. 4, choke area")) / 1e4
		z.way = z.lay(p, Ac)
		return
	}
	// The full losses of a way of any size are bounded, so that the choke never
	// grows past some tens of the ideal one.
	left := func(Ac float64) float64 {
		w := z.lay(nil, Ac)
		return w.vc*w.vc*w.K - 2*z.g*z.H
	}
	high := 2 * ideal
	for left(high) > 0 {
		high *= 2
	}
	Ac := solve.Root(left, ideal, high, 1e-15*ideal)
	p.Solve("A_c", "area of the choke", Ac*1e4, "cm^2",
		"the area at which the losses of the flow take up the effective head: K v_c² = 2 g H_x with v_c = Q/A_c, K by the list of losses. Root by bisection and interpolation to 15 digits",
		[]string{"Q", "g", "H_x", "a_s", "a_r", "a_g", "rho_m", "mu_m"}, energy)
	z.way = z.lay(p, Ac)
	account(p, &z.way, z.g)
}

// The shorthands below keep areas in cm² and lengths in mm on the paper and
// hand them on in SI.

func putArea(p *working.Paper, symbol, what, formula string, m2 float64, from source.Ref) float64 {
	p.Step(symbol, what, m2*1e4, "cm^2", formula, from)
	return m2
}

func putLength(p *working.Paper, symbol, what, formula string, m float64, from source.Ref) float64 {
	p.Step(symbol, what, m*1e3, "mm", formula, from)
	return m
}

func putSpeed(p *working.Paper, symbol, what, formula string, v float64, from source.Ref) float64 {
	return p.Step(symbol, what, v, "m/s", formula, from)
}

// lay works out the whole way for one size of the choke. With a nil paper it
// only computes.
func (z *sizing) lay(p *working.Paper, Ac float64) way {
	w := way{Ac: Ac}
	in := z.in
	w.As = putArea(p, "A_s", "sprue, area at its foot", "a_s * A_c", z.s*Ac, ratioOf)
	w.Ar = putArea(p, "A_r", "runners, all together", "a_r * A_c", z.r*Ac, ratioOf)
	w.Ag = putArea(p, "A_g", "ingates, all together", "a_g * A_c", z.gt*Ac, ratioOf)
	z.sprue(p, &w)

	w.vc = putSpeed(p, "v_c", "speed in the choke", "Q / A_c", z.Q/Ac, continuity)
	w.vt = putSpeed(p, "v_t", "speed at the top of the sprue", "Q / A_t", z.Q/w.At, continuity)
	w.vs = putSpeed(p, "v_s", "speed at the foot of the sprue", "Q / A_s", z.Q/w.As, continuity)
	w.vr = putSpeed(p, "v_r", "speed in the runners", "Q / A_r", z.Q/w.Ar, continuity)
	w.vg = putSpeed(p, "v_g", "speed at the ingates", "Q / A_g", z.Q/w.Ag, continuity)

	m := p.Number("m", "runners", float64(in.Runners.V), "1")
	kr := working.GiveOpt(p, "c_r", "height over width of a runner", in.RunnerForm, "1")
	w.wr = putLength(p, "w_r", "runner, width", "sqrt(A_r / (m * c_r))", math.Sqrt(w.Ar/(m*kr)), geometry)
	w.hr = putLength(p, "h_r", "runner, height", "c_r * w_r", kr*w.wr, geometry)
	n := p.Number("n", "ingates", float64(in.Ingates.V*in.Levels.V), "1")
	kg := working.GiveOpt(p, "c_g", "width over thickness of an ingate", in.IngateForm, "1")
	putArea(p, "A_1", "area of one ingate", "A_g / n", w.Ag/n, geometry)
	w.tg = putLength(p, "t_g", "ingate, thickness", "sqrt(A_1 / c_g)", math.Sqrt(w.Ag/n/kg), geometry)
	w.wg = putLength(p, "w_g", "ingate, width", "c_g * t_g", kg*w.tg, geometry)

	bars := source.Derived("four times area over wetted edge")
	w.Ds = putLength(p, "D_s", "sprue, hydraulic diameter at its foot", "d_s", w.ds, source.Derived("of a round or square section its width"))
	w.Dr = putLength(p, "D_r", "runner, hydraulic diameter", "2 * w_r * h_r / (w_r + h_r)", 2*w.wr*w.hr/(w.wr+w.hr), bars)
	w.Dg = putLength(p, "D_g", "ingate, hydraulic diameter", "2 * w_g * t_g / (w_g + t_g)", 2*w.wg*w.tg/(w.wg+w.tg), bars)
	reynolds := source.Rao.Seen("formula sheet")
	w.Res = p.Step("Re_s", "Reynolds number at the foot of the sprue", z.rho*w.vs*w.Ds/z.mu, "1", "rho_m * v_s * D_s / mu_m", reynolds)
	w.Rer = p.Step("Re_r", "Reynolds number in the runners", z.rho*w.vr*w.Dr/z.mu, "1", "rho_m * v_r * D_r / mu_m", reynolds)
	w.Reg = p.Step("Re_g", "Reynolds number at the ingates", z.rho*w.vg*w.Dg/z.mu, "1", "rho_m * v_g * D_g / mu_m", reynolds)
	w.fs = p.Step("f_s", "friction factor in the sprue", friction(w.Res), "1", "max(16 / Re_s, 0.079 * pow(Re_s, -0.25))", fanning)
	w.fr = p.Step("f_r", "friction factor in the runners", friction(w.Rer), "1", "max(16 / Re_r, 0.079 * pow(Re_r, -0.25))", fanning)
	w.fg = p.Step("f_g", "friction factor in the ingates", friction(w.Reg), "1", "max(16 / Re_g, 0.079 * pow(Re_g, -0.25))", fanning)
	z.losses(p, &w)
	return w
}

// sprue sizes basin and sprue by the foot.
func (z *sizing) sprue(p *working.Paper, w *way) {
	in := z.in
	w.et = z.entry(p)
	if in.Form.V == Square {
		w.ds = putLength(p, "d_s", "sprue, side at its foot", "sqrt(A_s)", math.Sqrt(w.As), geometry)
	} else {
		w.ds = putLength(p, "d_s", "sprue, diameter at its foot", "sqrt(4 * A_s / pi)", math.Sqrt(4*w.As/math.Pi), geometry)
	}
	switch {
	case in.BasinDepth.Known():
		p.Give("h_own", "depth of metal in the basin, as stated", in.BasinDepth.V, "mm")
		w.hc = putLength(p, "h_c", "depth of metal in the basin", "h_own", float64(in.BasinDepth.V), source.Practice("your own figure"))
	case in.Untapered:
		w.hc = putLength(p, "h_c", "depth of metal in the basin", "min(3 * d_s, h / 2)", math.Min(basinWidths*w.ds, z.h/2), basinSource)
	default:
		// h_c = 3 d_t with d_t = d_s (h/h_c)^¼ by the stream's own taper.
		w.hc = putLength(p, "h_c", "depth of metal in the basin", "min(pow(3 * d_s, 0.8) * pow(h, 0.2), h / 2)", math.Min(math.Pow(basinWidths*w.ds, 0.8)*math.Pow(z.h, 0.2), z.h/2), basinSource)
	}
	if in.SprueLength.Known() {
		p.Give("L_own", "length of the sprue, as stated", in.SprueLength.V, "mm")
		w.Ls = putLength(p, "L_s", "length of the sprue", "L_own", float64(in.SprueLength.V), source.Practice("your own figure"))
	} else {
		w.Ls = putLength(p, "L_s", "length of the sprue", "h - h_c", z.h-w.hc, source.Derived("its foot taken level with the ingates"))
	}
	w.ht = putLength(p, "h_t", "metal level above the sprue's foot", "h_c + L_s", w.hc+w.Ls, geometry)
	r := p.Step("r_w", "taper of the falling stream, areas top over foot", math.Sqrt(w.ht/w.hc), "1", "sqrt(h_t / h_c)", source.Groover.Memory("ch. 10, continuity"))
	switch {
	case in.Untapered:
		w.At = putArea(p, "A_t", "sprue, area at its top", "A_s", w.As, source.Derived("no taper"))
	case in.SprueTop.Known():
		p.Give("A_own", "area at the top of the sprue, as stated", in.SprueTop.V, "cm^2")
		w.At = putArea(p, "A_t", "sprue, area at its top", "A_own", float64(in.SprueTop.V), source.Practice("your own figure"))
	default:
		Aq := putArea(p, "A_q", "top of the sprue that the entry does not make suck", "Q_0 * sqrt((1 + e_t) / (2 * g * h_c))", float64(z.out.StartFlow)*math.Sqrt((1+w.et)/(2*z.g*w.hc)), energy)
		w.At = putArea(p, "A_t", "sprue, area at its top", "max(r_w * A_s, A_q)", math.Max(r*w.As, Aq), source.Groover.Memory("ch. 10, continuity; wider where the loss at the entry wants it"))
	}
}

// entry puts the loss at the entry on the paper.
func (z *sizing) entry(p *working.Paper) float64 {
	switch {
	case z.in.Discharge.Known():
		return p.Number("e_t", "loss at the entry, in your coefficient", 0, "1")
	case z.in.Entry.V == Sharp:
		return p.Const("e_t", "loss of a sharp entry", 0.505, "1", mouthpiece)
	}
	c := p.Const("c_v", "velocity coefficient of a bell mouth", 0.96, "1", mouthpiece)
	return p.Step("e_t", "loss of a rounded entry", 1/(c*c)-1, "1", "1 / pow(c_v, 2) - 1", mouthpiece)
}

// losses takes the toll of the whole way and settles K.
func (z *sizing) losses(p *working.Paper, w *way) {
	in, at := z.in, z.chokeAt()
	t := &toll{p: p, g: z.g}
	p.Const("e_x", "speed head counted once", 1, "1", energy)
	if in.Discharge.Known() {
		C := float64(in.Discharge.V)
		t.take("Lost by your coefficient", 1/(C*C)-1, "1 / pow(C_own, 2) - 1", "v_c", w.vc, source.Practice("your own figure"))
		t.take("Speed in the choke", 1, "e_x", "v_c", w.vc, energy)
		w.K = p.Step("K", "losses on the speed of the choke", 1/(C*C), "1", "1 / pow(C_own, 2)", source.Practice("your own figure"))
		w.sum, w.losses = t.sum, t.out
		return
	}
	t.take("Entry into the sprue", w.et, "e_t", "v_t", w.vt, mouthpiece)
	if in.Untapered {
		t.take("Friction in the sprue", 4*w.fs*w.Ls/w.Ds, "4 * f_s * L_s / D_s", "v_s", w.vs, fanning)
	} else {
		t.take("Friction in the sprue", 4*w.fs/w.Ds*4/9*w.ht*(1-math.Pow(w.hc/w.ht, 2.25)), "4 * f_s / D_s * 4 / 9 * h_t * (1 - pow(h_c / h_t, 2.25))", "v_s", w.vs, source.Derived("friction along the stream's own taper"))
	}
	t.fittings(in.Fittings, InSprue, "v_s", w.vs)
	if at == atSprue {
		w.sumUp, w.up = t.sum, len(t.names)
	}
	z.foot(p, w, t)
	if at == atOwn {
		w.sumUp, w.up = t.sum, len(t.names)
		t.between("the runner", "A_c", "A_r", w.Ac, w.Ar, "v_c", "v_r", w.vc, w.vr)
	}
	if at == atRunner {
		w.sumUp, w.up = t.sum, len(t.names)
	}
	if in.RunnerLength.Known() {
		L := working.GiveOpt(p, "L_r", "length of one runner", in.RunnerLength, "m")
		t.take("Friction in the runner", 4*w.fr*L/w.Dr, "4 * f_r * L_r / D_r", "v_r", w.vr, fanning)
	}
	t.fittings(in.Fittings, InARunner, "v_r", w.vr)
	if in.Branch.V == Turning {
		p.Const("theta_q", "quarter turn", 90, "deg", source.Derived("a right angle"))
		t.take("Turn into the ingates", elbow(math.Pi/2), "0.9457 * pow(sin(theta_q / 2), 2) + 2.047 * pow(sin(theta_q / 2), 4)", "v_g", w.vg, weisbachElbow)
	}
	t.between("the ingates", "A_r", "A_g", w.Ar, w.Ag, "v_r", "v_g", w.vr, w.vg)
	if in.IngateLength.Known() {
		L := working.GiveOpt(p, "L_g", "length of an ingate", in.IngateLength, "m")
		t.take("Friction in the ingates", 4*w.fg*L/w.Dg, "4 * f_g * L_g / D_g", "v_g", w.vg, fanning)
	}
	t.fittings(in.Fittings, InAnIngate, "v_g", w.vg)
	if at == atGates {
		w.sumUp, w.up = t.sum, len(t.names)
	}
	t.take("Speed into the mould", 1, "e_x", "v_g", w.vg, energy)
	w.sum = t.sum
	w.K = math.Max(1+w.sumUp/(w.vc*w.vc), w.sum/(w.vc*w.vc))
	w.losses, w.names = t.out, t.names
}

// foot takes the way from the sprue's foot into the runner or its choke.
func (z *sizing) foot(p *working.Paper, w *way, t *toll) {
	next, area, speed, v, to := "A_r", w.Ar, "v_r", w.vr, "the runner"
	if z.own {
		next, area, speed, v, to = "A_c", w.Ac, "v_c", w.vc, "the choke"
	}
	if !z.in.Well.V {
		p.Const("theta_q", "quarter turn", 90, "deg", source.Derived("a right angle"))
		t.take("Turn at the foot of the sprue", elbow(math.Pi/2), "0.9457 * pow(sin(theta_q / 2), 2) + 2.047 * pow(sin(theta_q / 2), 4)", speed, v, weisbachElbow)
		t.between(to, "A_s", next, w.As, area, "v_s", speed, w.vs, v)
		return
	}
	p.Const("k_w", "well over the sprue's foot, in area", wellArea, "1", wellSource)
	Aw := putArea(p, "A_w", "area of the well", "k_w * A_s", wellArea*w.As, wellSource)
	vw := putSpeed(p, "v_w", "speed in the well", "Q / A_w", z.Q/Aw, continuity)
	t.between("the well", "A_s", "A_w", w.As, Aw, "v_s", "v_w", w.vs, vw)
	t.between(to, "A_w", next, Aw, area, "v_w", speed, vw, v)
}

// account puts K on the paper: the free jet of the choke or the whole way,
// whichever lets less through, and what is then left over.
func account(p *working.Paper, w *way, g float64) {
	Ku := p.Step("K_u", "losses up to the choke, on its speed", w.sumUp/(w.vc*w.vc), "1", "("+strings.Join(w.names[:w.up], " + ")+") * 2 * g / pow(v_c, 2)", energy)
	Kt := p.Step("K_t", "the whole way run full, on the speed of the choke", w.sum/(w.vc*w.vc), "1", "("+strings.Join(w.names, " + ")+") * 2 * g / pow(v_c, 2)", energy)
	note := "the whole way runs full"
	if 1+Ku > Kt {
		note = "the choke's free jet brings less than the way behind it could carry"
	}
	p.StepNote("K", "losses on the speed of the choke", w.K, "1", "max(1 + K_u, K_t)", energy, note)
	if 1+Ku > Kt {
		sub := p.Sub(fmt.Sprintf("losses[%d]", len(w.losses)))
		rest := sub.Step("h_l", "head of the jet that the way behind the choke does not use up", (1+Ku-Kt)*w.vc*w.vc/(2*g)*1000, "mm", "(1 + K_u - K_t) * pow(v_c, 2) / (2 * g)", energy)
		w.losses = append(w.losses, Loss{Name: "Spent by the free jet behind the choke", Head: quantity.From[quantity.Length](rest, "mm")})
	}
}
