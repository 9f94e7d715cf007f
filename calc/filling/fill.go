package filling

import (
	"fmt"
	"math"
	"sort"
	"strings"

	"pourwright/calc/alloy"
	"pourwright/calc/flow"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

var (
	torricelli = source.Ghosh.Memory("ch. 2, gating: rise of the metal over the gate")
	geometry   = source.Derived("geometry of the slices")
	continuity = source.Derived("continuity")
	upthrust   = source.Rao.Memory("ch. 4, forces acting on the moulding flasks")
	course     = source.Derived("course of the filling")
)

// filling is one mould being filled.
type filling struct {
	in    Input
	a     *alloy.Alloy
	p     *working.Paper
	out   Output
	m     *model
	order []int // of the ingates, from the lowest up
	rho   float64
	takes float64 // flow that the way takes at the start, basin full
	runs  []run
	track []point
	chill chill
}

// Fill follows the filling; see the package comment.
//
// Refused: a cavity or an ingate that stands higher than the metal in the
// basin, which could not fill; an ingate above the cavity; a basin smaller
// than the choke; metal that is not liquid.
func Fill(in Input, p *working.Paper) (Output, error) {
	in, faults := form.Ready(in)
	if len(faults) == 0 {
		faults = consistent(in)
	}
	if err := faults.Err(); err != nil {
		return Output{}, err
	}
	a, ok := alloy.Find(in.Alloy)
	if !ok {
		panic("filling: the form let an unknown alloy through")
	}
	f := &filling{in: in, a: a, p: p}
	f.build()
	f.runs = f.m.march()
	f.track = f.m.track(f.runs)
	f.totals()
	f.extremes()
	f.lift()
	f.front()
	f.moments()
	f.curves()
	f.find()
	return f.out, nil
}

func height(in Input) quantity.Length {
	sum := quantity.Length(0)
	for _, s := range in.Slices {
		sum += s.Height
	}
	return sum
}

// consistent checks what one field alone cannot tell.
func consistent(in Input) (faults form.Faults) {
	add := func(field, label string, value quantity.Any, why working.Text) {
		faults = append(faults, form.Fault{Field: field, Label: label, Value: quantity.Text(value), Why: why})
	}
	top := height(in)
	if top > in.Level*(1+1e-12) {
		add("basin_level", "Metal level over the bottom of the cavity", in.Level, working.Say("the cavity stands %v high, over the level of the metal; it cannot fill", top))
	}
	for i, g := range in.Ingates {
		path := fmt.Sprintf("ingates[%d].height", i)
		switch {
		case g.Height.V >= in.Level*(1-1e-9):
			add(path, "Height over the bottom of the cavity", g.Height.V, working.Say("no metal runs through an ingate as high as the basin's level of %v; it must be lower", in.Level))
		case g.Height.V > top*(1+1e-12):
			add(path, "Height over the bottom of the cavity", g.Height.V, working.Say("the cavity ends at %v; the ingate must not stand higher", top))
		}
	}
	for i, s := range in.Surfaces {
		if s.Height.V > in.Level {
			add(fmt.Sprintf("surfaces[%d].height", i), "Height over the bottom of the cavity", s.Height.V, working.Say("metal does not rise over the basin's level of %v", in.Level))
		}
	}
	least := narrowest(in)
	if in.BasinArea.Known() && in.BasinArea.V < least {
		add("basin_area", "Area of the basin", in.BasinArea.V, working.Say("the narrowest section under it is %v; a basin is wider", least))
	}
	if in.BasinDepth.Known() && in.BasinDepth.V >= in.Level {
		add("basin_depth", "Depth of metal in the basin", in.BasinDepth.V, working.Say("it is part of the %v over the bottom of the cavity and must be less", in.Level))
	}
	return append(faults, coldFaults(in)...)
}

// narrowest is the choke, or the ingates where they are narrower.
func narrowest(in Input) quantity.Area {
	sum := quantity.Area(0)
	for _, g := range in.Ingates {
		sum += g.Area
	}
	return min(sum, in.Choke.Or(sum))
}

// tooQuick is how often the basin's level could settle while the mould fills
// before it is taken to follow at once: its course then is that of the flow,
// and steps small enough to follow it would have no end.
const tooQuick = 400

// basinMoves says that the level in the basin is worth following by itself:
// the ladle feeds it, it is wide enough to be slow, and it lies over the
// cavity, as on top of a cope. Where the cavity reaches up past its floor the
// two would rise as one, within the thickness of the head that is left.
func (m *model) basinMoves(area float64) bool {
	// The level settles as Q/(2 h A_b), with h the head over the gate.
	head := math.Max(m.floor-m.gates[0].z, m.H/100)
	return m.ladle > 0 && m.floor >= m.top() && m.volume()/(2*head*area) < tooQuick
}

// build puts the mould on the paper and into the model.
func (f *filling) build() {
	p, in := f.p, f.in
	g := flow.PutGravity(p)
	if in.Density.Known() {
		f.rho = working.GiveOpt(p, "rho_m", "density of the liquid metal", in.Density, "kg/m^3")
	} else {
		f.rho = p.Lookup("rho_m", "density of the liquid metal", float64(f.a.DensityLiquid.V), "kg/m^3", f.a.DensityLiquid.Source, f.a.DensityLiquid.Note)
	}
	H := p.Give("h_f", "metal level over the bottom of the cavity", in.Level, "m")
	m := &model{g: g, H: H}
	f.m = m
	f.slices()
	C := working.GiveOpt(p, "C_d", "discharge coefficient", in.Discharge, "1")
	f.gates(C)
	f.way(C)
	if in.LadleFlow.Known() {
		q := working.GiveOpt(p, "q_l", "flow that the ladle gives", in.LadleFlow, "kg/s")
		m.ladle = p.Step("Q_l", "flow that the ladle gives, by volume", q/f.rho*1000, "L/s", "q_l / rho_m", continuity) / 1000
	}
	depth := H / 10
	if in.BasinDepth.Known() {
		depth = float64(in.BasinDepth.V)
	}
	m.floor = H - depth
	if in.BasinArea.Known() && m.basinMoves(float64(in.BasinArea.V)) {
		m.basin = float64(in.BasinArea.V)
	}
}

// slices stacks the cavity.
func (f *filling) slices() {
	z, v := 0.0, 0.0
	var names []string
	for i, s := range f.in.Slices {
		sub := f.p.Sub(fmt.Sprintf("slices[%d]", i))
		h := sub.Give("h_i", "height of the slice", s.Height, "m")
		a := sub.Give("A_i", "plan area at its foot", s.Area, "m^2")
		b := sub.Give("B_i", "plan area at its top", s.Top.Or(s.Area), "m^2")
		V := sub.Step("V_i", "volume of the slice", h*(a+b)/2*1e6, "cm^3", "h_i * (A_i + B_i) / 2", geometry) / 1e6
		symbol := fmt.Sprintf("V_%d", i+1)
		f.p.Carry(symbol, fmt.Sprintf("volume of slice %d", i+1), V*1e6, "cm^3")
		names = append(names, symbol)
		f.m.slices = append(f.m.slices, slice{z, z + h, a, b, v})
		z, v = z+h, v+V
	}
	f.out.Volume = quantity.Volume(f.p.Step("V", "volume of the cavity", v*1e6, "cm^3", strings.Join(names, " + "), geometry) / 1e6)
	f.out.Mass = quantity.Mass(f.p.Step("m_V", "metal in it", v*f.rho, "kg", "V * rho_m", source.Derived("definition of density")))
	f.p.Number("c", "height of the cavity", z, "m")
}

// gates orders the ingates from the lowest up.
func (f *filling) gates(C float64) {
	for i := range f.in.Ingates {
		f.order = append(f.order, i)
	}
	sort.SliceStable(f.order, func(i, j int) bool {
		return f.in.Ingates[f.order[i]].Height.V < f.in.Ingates[f.order[j]].Height.V
	})
	for _, i := range f.order {
		g := f.in.Ingates[i]
		// An ingate just at the top, reached along another sum, is at the top.
		z := math.Min(float64(g.Height.V), f.m.top())
		f.m.gates = append(f.m.gates, gate{z, float64(g.Area), C * float64(g.Area)})
	}
}

// way settles the resistances of what is before the ingates and of the whole.
func (f *filling) way(C float64) {
	p, in := f.p, f.in
	var names []string
	sum, low := 0.0, 0.0
	var lowest []string
	for _, i := range f.order {
		symbol := fmt.Sprintf("a_%d", i+1)
		a := p.Give(symbol, fmt.Sprintf("area of the ingates of entry %d", i+1), in.Ingates[i].Area, "cm^2")
		names = append(names, symbol)
		sum += a
		if f.m.gates[len(names)-1].z == f.m.gates[0].z {
			lowest = append(lowest, symbol)
			low += a
		}
	}
	Ag := p.Step("A_g", "ingates, all together", sum, "cm^2", strings.Join(names, " + "), source.Derived("sum"))
	p.Step("A_1", "lowest ingates", low, "cm^2", strings.Join(lowest, " + "), source.Derived("sum"))
	from := source.Derived("resistances one after the other: the ingates' part of that of the whole way")
	Am := Ag
	if in.Choke.Known() {
		Ac := working.GiveOpt(p, "A_c", "choke", in.Choke, "cm^2")
		Am = p.Step("A_m", "narrowest section of the way", math.Min(Ac, Ag), "cm^2", "min(A_c, A_g)", from)
	} else {
		p.Step("A_m", "narrowest section of the way", Ag, "cm^2", "A_g", from)
	}
	if Am < Ag {
		f.m.before = (1/(Am*Am) - 1/(Ag*Ag)) / (C * C) * 1e8
		p.Step("R", "resistance before the ingates", f.m.before, "1/m^4", "(1 / pow(A_m, 2) - 1 / pow(A_g, 2)) / pow(C_d, 2)", from)
	} else {
		p.Step("R", "resistance before the ingates", 0, "1/m^4", "0 / pow(A_m, 2)", from)
	}
	p.Number("z_1", "height of the lowest ingates", f.m.gates[0].z, "m")
	start := 0.0
	if q, pz := f.m.flow(f.m.H, 0); len(f.m.gates) == len(lowest) || pz <= f.m.gates[len(lowest)].z {
		start = p.Step("Q_w", "flow that the way takes at the start, basin full", q*1000, "L/s", "sqrt(2 * g * (h_f - z_1) / (R + 1 / pow(C_d * A_1, 2)))", torricelli)
	} else {
		start = p.Solve("Q_w", "flow that the way takes at the start, basin full", q*1000, "L/s",
			"several levels of ingates run from the start: Q = √(2 g (h_f − p)/R) = Σ C a_j √(2 g (p − z_j)), a root for the level p that the runner stands at", []string{"g", "h_f", "C_d", "R"}, torricelli)
	}
	f.takes = start / 1000
}

// flat says that the cavity is so low that metal crosses it rather than rises
// in it.
func (f *filling) flat() bool {
	return f.in.Wall.Known() && f.m.top() < flow.Flatness*float64(f.in.Wall.V)
}

// oneLevel says that all ingates are at one height.
func (f *filling) oneLevel() bool {
	return f.m.gates[len(f.m.gates)-1].z == f.m.gates[0].z
}

// totals are the time and the flows.
func (f *filling) totals() {
	p, m, o := f.p, f.m, &f.out
	last := f.runs[len(f.runs)-1]
	used := []string{"g", "h_f", "V", "C_d", "R"}
	if m.ladle > 0 {
		used = append(used, "Q_l")
	}
	t := p.Solve("t_fill", "time to fill the mould", last.t1, "s", fmt.Sprintf(
		"dy/dt = Q(y)/A(y) from the bottom to the top, Q by the heads of basin, runner and cavity. Dormand and Prince's pair of orders 5 and 4 on √(h_f − y), %d steps each wrong by less than 10^-12 of the whole, ending at every slice and at every ingate that drowns or begins to run", len(f.runs)),
		used, torricelli)
	o.FillTime, o.Steps = quantity.Time(t), len(f.runs)
	o.FlowMean = quantity.From[quantity.VolumeFlow](p.Step("Q_m", "flow, on average", m.volume()/t*1000, "L/s", "V / t_fill", continuity), "L/s")
	if f.runs[0].by == byLadle {
		o.FlowStart = quantity.VolumeFlow(p.Step("Q_0", "flow at the start, what the ladle gives", m.ladle*1000, "L/s", "Q_l", continuity) / 1000)
	} else {
		o.FlowStart = quantity.VolumeFlow(p.Step("Q_0", "flow at the start", f.takes*1000, "L/s", "Q_w", continuity) / 1000)
	}
	o.RateStart = quantity.MassFlow(p.Step("q_0", "flow at the start, by mass", float64(o.FlowStart)*f.rho, "kg/s", "Q_0 * rho_m", continuity))
	end := f.track[len(f.track)-1].q
	o.FlowEnd = quantity.VolumeFlow(p.Solve("Q_e", "flow at the end", end*1000, "L/s", "the flow with the level at the top of the cavity", []string{"t_fill"}, course) / 1000)
	gap := math.Abs(last.x1.in-m.volume()) / m.volume()
	if m.ladle > 0 && m.basin > 0 {
		gap = math.Max(gap, math.Abs(last.x1.out-last.x1.in-m.basin*(last.x1.b-m.H))/m.volume())
	}
	o.Balance = quantity.Number(p.Solve("x_V", "metal in less metal there, of the whole", gap, "1", "the flow added up over the time against the volume of the slices, and the ladle's against both and the basin's", []string{"V", "t_fill"}, source.Derived("metal is neither made nor lost")))
	f.closedForm()
	f.byRule()
}

// closedForm adds up the textbook's times of even slices under a full basin:
// below the ingates with the whole head, above them against the metal risen.
func (f *filling) closedForm() {
	p, m := f.p, f.m
	if !f.oneLevel() || m.ladle > 0 {
		return
	}
	for _, s := range m.slices {
		if s.a0 != s.a1 {
			return
		}
	}
	z := m.gates[0].z
	Am := 1 / math.Sqrt(m.before+1/sq(f.sumCA()))
	p.Step("A_q", "choke times its discharge coefficient", Am*1e4, "cm^2", "C_d * A_m", torricelli)
	var names []string
	sum := 0.0
	for i, s := range m.slices {
		sub := p.Sub(fmt.Sprintf("slices[%d]", i))
		sub.Number("A_i", "plan area of the slice", s.a0, "m^2")
		y0, y1 := sub.Number("y_0", "foot of the slice", s.z0, "m"), sub.Number("y_1", "top of the slice", s.z1, "m")
		below := math.Max(math.Min(y1, z)-math.Min(y0, z), 0)
		above := math.Sqrt(math.Max(m.H-math.Max(y0, z), 0)) - math.Sqrt(math.Max(m.H-math.Max(y1, z), 0))
		t := s.a0 / (Am * math.Sqrt(2*m.g)) * (below/math.Sqrt(m.H-z) + 2*above)
		sub.Step("t_i", "time to fill the slice", t, "s",
			"A_i / (A_q * sqrt(2 * g)) * ((min(y_1, z_1) - min(y_0, z_1)) / sqrt(h_f - z_1) + 2 * (sqrt(max(h_f - max(y_0, z_1), 0 * h_f)) - sqrt(max(h_f - max(y_1, z_1), 0 * h_f))))", torricelli)
		symbol := fmt.Sprintf("t_%d", i+1)
		p.Carry(symbol, fmt.Sprintf("time to fill slice %d", i+1), t, "s")
		names = append(names, symbol)
		sum += t
	}
	f.out.Closed = quantity.Some(quantity.Time(p.Step("t_x", "time to fill by the closed form", sum, "s", strings.Join(names, " + "), torricelli)))
}

func sq(x float64) float64 { return x * x }

// sumCA is C times the area of all the ingates.
func (f *filling) sumCA() float64 {
	sum := 0.0
	for _, g := range f.m.gates {
		sum += g.ca
	}
	return sum
}

// byRule is the time by the trade's effective head.
func (f *filling) byRule() {
	p, m := f.p, f.m
	if !f.oneLevel() || m.ladle > 0 {
		return
	}
	z, c := m.gates[0].z, m.top()
	h := p.Step("h", "metal level above the ingates", (m.H-z)*1000, "mm", "h_f - z_1", geometry)
	cp := p.Step("c_p", "height of cavity above the ingates", (c-z)*1000, "mm", "c - z_1", geometry)
	if !(cp < h*(1-1e-12)) {
		return // the rule's head would be half of what is left of nothing
	}
	rule, _ := flow.Heads(p, h, c*1000, cp)
	A := f.sumCA()
	if m.before > 0 {
		A = 1 / math.Sqrt(m.before+1/sq(A))
	}
	t := p.Step("t_H", "time to fill by the trade's head", m.volume()/(A*math.Sqrt(2*m.g*rule/1000)), "s", "V / (C_d * A_m * sqrt(2 * g * H))", source.Rao.Memory("ch. 4, choke area"))
	f.out.ByRule = quantity.Some(quantity.Time(t))
}

// name is what an ingate is called.
func (f *filling) name(order int) string {
	i := f.order[order]
	if n := f.in.Ingates[i].Name; n != "" {
		return n
	}
	return fmt.Sprintf("Ingate %d", i+1)
}

// extremes are the fastest and slowest and when they come.
func (f *filling) extremes() {
	p, o, m := f.p, &f.out, f.m
	most, least := f.track[0], f.track[0]
	fastest, at, which := -1.0, 0.0, 0
	gates := make([]Gate, len(m.gates))
	runs := make([]float64, len(m.gates))
	for i := range runs {
		runs[i] = -1
	}
	for i, k := range f.track {
		if k.rise > most.rise {
			most = k
		}
		if k.rise < least.rise {
			least = k
		}
		for j, g := range m.gates {
			v := m.speed(g, k.p, k.y)
			if v > fastest {
				fastest, at, which = v, k.t, j
			}
			gates[j].Most = max(gates[j].Most, quantity.Speed(v))
			if v > 0 && runs[j] < 0 {
				runs[j] = k.t
			}
			if i > 0 {
				before := f.track[i-1]
				gates[j].Passed += quantity.Volume((v + m.speed(g, before.p, before.y)) / 2 * g.a * (k.t - before.t))
			}
		}
	}
	put := func(symbol, what string, v float64, unit string) float64 {
		return p.Solve(symbol, what, v, unit, "read off the course of the filling at the points of the curves", []string{"t_fill"}, course)
	}
	o.RiseMost = quantity.From[quantity.Speed](put("v_hi", "fastest rise of the level", most.rise*1000, "mm/s"), "mm/s")
	o.RiseMostAt = quantity.Time(put("t_v_hi", "when it rises fastest", most.t, "s"))
	o.RiseLeast = quantity.From[quantity.Speed](put("v_lo", "slowest rise of the level", least.rise*1000, "mm/s"), "mm/s")
	o.RiseLeastAt = quantity.Time(put("t_v_lo", "when it rises slowest", least.t, "s"))
	o.IngateMost = quantity.Speed(put("v_g", "fastest at an ingate", fastest, "m/s"))
	o.IngateMostAt = quantity.Time(put("t_v_g", "when that is", at, "s"))
	o.IngateWhich = f.name(which)
	o.Gates = make([]Gate, len(gates))
	for j, g := range gates {
		i := f.order[j]
		sub := p.Sub(fmt.Sprintf("gates[%d]", i))
		read := func(symbol, what string, v float64, unit string) float64 {
			return sub.Solve(symbol, what, v, unit, "read off the course of the filling at the points of the curves", []string{"t_fill"}, course)
		}
		g.Name = f.name(j)
		if runs[j] >= 0 {
			g.Runs = quantity.Some(quantity.Time(read("t_g", "begins to run", runs[j], "s")))
		}
		g.Most = quantity.Speed(read("v_j", "fastest in it", float64(g.Most), "m/s"))
		g.Passed = quantity.Volume(read("V_j", "metal that comes through it", float64(g.Passed)*1e6, "cm^3") / 1e6)
		o.Gates[i] = g
	}
	f.landing()
	f.basin()
}

// landing is the speed of metal that falls from the lowest ingate to the
// bottom, before there is a pool.
func (f *filling) landing() {
	m := f.m
	z := m.gates[0].z
	if z <= 0 {
		return
	}
	v1 := f.p.Solve("v_1", "speed at the lowest ingate, at the start", m.speed(m.gates[0], f.track[0].p, 0), "m/s", "the lowest ingate's share of the flow over its area", []string{"Q_0", "A_1"}, continuity)
	v := f.p.Step("v_d", "speed with which falling metal lands", math.Sqrt(v1*v1+2*m.g*z), "m/s", "sqrt(pow(v_1, 2) + 2 * g * z_1)", source.Groover.Memory("ch. 10, Bernoulli"))
	f.out.Landing = quantity.Some(quantity.Speed(v))
}

// basin is what becomes of the basin's level while the ladle feeds it.
func (f *filling) basin() {
	m, o, p := f.m, &f.out, f.p
	if m.ladle == 0 {
		return
	}
	least, dry := m.H, -1.0
	for _, k := range f.track {
		b := math.Max(k.b, m.floor)
		least = math.Min(least, b)
		if dry < 0 && k.b <= m.floor*(1+1e-9) {
			dry = k.t
		}
	}
	o.BasinLeast = quantity.Some(quantity.Length(p.Solve("h_b_lo", "least depth of metal in the basin", math.Max(least-m.floor, 0)*1000, "mm", "read off the course of the filling at the points of the curves", []string{"t_fill"}, course) / 1000))
	if dry >= 0 {
		o.BasinDry = quantity.Some(quantity.Time(p.Solve("t_dry", "when the basin is first empty", dry, "s", "read off the course of the filling at the points of the curves", []string{"t_fill"}, course)))
	}
}
