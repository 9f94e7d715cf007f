package order

import (
	"fmt"
	"math"

	"pourwright/calc/alloy"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

var (
	decay   = source.Derived("even decay of the ladle's temperature")
	rule    = source.Derived("release by the hottest, due by the coldest")
	ownWord = source.Own("your own figure")
)

// job is one question being answered.
type job struct {
	in    Input
	p     *working.Paper
	out   Output
	l     line
	names []string
	found []int // the order, indices into the list
}

// Find answers in which order to pour the moulds.
//
// Refused: a mould without a window, its own or the metal's; a window without
// width, or within 50 K of the surroundings; a second reading that is not below
// the first; a start within 50 K of the surroundings.
func Find(in Input, p *working.Paper) (Output, error) {
	in, faults := form.Ready(in)
	if err := faults.Err(); err != nil {
		return Output{}, err
	}
	j := &job{in: in, p: p}
	if err := j.consistent().Err(); err != nil {
		return Output{}, err
	}
	j.law()
	j.start()
	var bound float64
	j.found, j.out.Proved, bound = j.l.best()
	j.pours()
	j.whole(bound)
	j.warn()
	return j.out, nil
}

// path is the JSON path of a field of a mould.
func path(i int, field string) string { return fmt.Sprintf("moulds[%d].%s", i, field) }

// nearest is how near to the surroundings a temperature may come.
const nearest = 50

// consistent checks what one field alone cannot tell, and settles the windows.
func (j *job) consistent() form.Faults {
	var faults form.Faults
	in := j.in
	add := func(field, label string, q quantity.Any, why working.Text) {
		faults = append(faults, form.Fault{Field: field, Label: label, Value: quantity.Text(q), Why: why})
	}
	cold := in.Surroundings.V + nearest
	for i, m := range in.Moulds {
		low, high := m.Low.V, m.High.V
		if !m.Low.Known() || !m.High.Known() {
			if !in.Alloy.Known() {
				field, label := "low", "Coldest to pour"
				if m.Low.Known() {
					field, label = "high", "Hottest to pour"
				}
				faults = append(faults, form.Fault{Field: path(i, field), Label: label, Missing: true, Why: working.Say("wanted, or the metal, for its usual range")})
				continue
			}
			a, ok := alloy.Find(in.Alloy.V)
			if !ok {
				panic("order: the form let an unknown metal through")
			}
			usual := a.PourFor(m.Wall)
			low, high = m.Low.Or(usual.Low), m.High.Or(usual.High)
		}
		switch {
		case low < cold:
			add(path(i, "low"), "Coldest to pour", low, working.Say("%v is too near to the surroundings at %v; it must be %v or above", low, in.Surroundings.V, cold))
		case high <= low:
			add(path(i, "high"), "Hottest to pour", high, working.Say("the hottest to pour, %v, must be above the coldest, %v", high, low))
		}
		if m.Shortest.Known() && m.Longest.Known() && m.Longest.V <= m.Shortest.V {
			add(path(i, "longest"), "Longest pouring time", m.Longest.V, working.Say("the longest, %v, must be over the shortest, %v", m.Longest.V, m.Shortest.V))
		}
		j.l.pours = append(j.l.pours, pour{takes: float64(m.Pouring), low: float64(low), high: float64(high), mass: float64(m.Mass)})
		name := m.Name
		if name == "" {
			name = fmt.Sprintf("Mould %d", i+1)
		}
		j.names = append(j.names, name)
	}
	if in.Start.Known() && in.Start.V < cold {
		add("start", "In the ladle as pouring begins", in.Start.V, working.Say("%v is too near to the surroundings at %v; it must be %v or above", in.Start.V, in.Surroundings.V, cold))
	}
	if in.Basis.V == byReadings {
		if in.Second >= in.First {
			add("second", "Second reading", in.Second, working.Say("%v is not below the first reading of %v; the metal must have cooled between them", in.Second, in.First))
		} else if in.Second < cold {
			add("second", "Second reading", in.Second, working.Say("%v is too near to the surroundings at %v; it must be %v or above", in.Second, in.Surroundings.V, cold))
		}
	}
	return faults
}

// law puts the cooling of the ladle on the paper.
func (j *job) law() {
	p, in := j.p, j.in
	Ta := working.GiveOpt(p, "T_a", "surroundings", in.Surroundings, "degC")
	var tau float64
	if in.Basis.V == byReadings {
		first := p.Give("T_1", "first reading", in.First, "degC")
		second := p.Give("T_2", "second reading", in.Second, "degC")
		between := p.Give("t_r", "time between the readings", in.Between, "s")
		tau = p.Step("tau", "time constant of the loss", between/math.Log((first-Ta)/(second-Ta)), "s", "t_r / ln((T_1 - T_a) / (T_2 - T_a))", decay)
	} else {
		own := p.Give("tau_own", "time constant as stated", in.Constant, "s")
		tau = p.Step("tau", "time constant of the loss", own, "s", "tau_own", ownWord)
	}
	j.l.step = working.GiveOpt(p, "t_c", "time from one mould to the next", in.Step, "s")
	j.l.metal = cooling{ambient: float64(in.Surroundings.V), tau: tau}
	j.out.Constant = quantity.Time(tau)
}

// start settles the temperature in the ladle, and the least that works.
func (j *job) start() {
	p, l := j.p, &j.l
	celsius := func(T float64) float64 { return T - 273.15 }
	hottest := 0.0
	for _, m := range l.pours {
		hottest = math.Max(hottest, m.high)
	}
	l.metal.start = float64(j.in.Start.Or(quantity.Temperature(hottest)))
	reference := p.Number("T_ref", "temperature at which the clock is set to 0", celsius(l.metal.start), "degC")
	latest := j.latest()
	if !math.IsInf(latest, -1) {
		used := []string{"T_a", "tau", "t_c", "T_ref"}
		t := p.Solve("t_lo", "latest that the first mould may be begun, by that clock", latest, "s",
			j.latestMethod(), used, rule)
		low := p.Step("T_lo", "coldest in the ladle that works", celsius(l.metal.ambient)+(reference-celsius(l.metal.ambient))*math.Exp(-t/l.metal.tau), "degC", "T_a + (T_ref - T_a) * exp(-t_lo / tau)", decay)
		j.out.StartLow = quantity.Some(quantity.From[quantity.Temperature](low, "degC"))
	}
	switch {
	case j.in.Start.Known():
		own := working.GiveOpt(p, "T_own", "in the ladle as pouring begins, yours", j.in.Start, "degC")
		p.Step("T_0", "in the ladle as pouring begins", own, "degC", "T_own", ownWord)
	case j.out.StartLow.Known():
		// Half-way between the least that works and the most that needs no
		// waiting, if that is more.
		low := float64(j.out.StartLow.V)
		l.metal.start = low
		order, _, _ := l.best()
		high := math.Max(j.unwaited(order), low)
		most := p.Solve("T_mid", "hottest that needs no waiting, in the order best for the coldest that works", celsius(high), "degC", "least over the moulds of T_a + (T_h − T_a) e^{t/τ}, t being when it is begun", []string{"T_a", "tau", "t_c", "T_lo"}, decay)
		p.StepNote("T_0", "in the ladle as pouring begins", (celsius(low)+most)/2, "degC", "(T_lo + T_mid) / 2", ownMiddle, "no temperature is stated, so the middle of what works is taken")
		l.metal.start = (low + high) / 2
	default:
		p.StepNote("T_0", "in the ladle as pouring begins", reference, "degC", "T_ref", ownMiddle, "no temperature works, so the hottest of the moulds is taken")
	}
	j.out.Start = quantity.Temperature(l.metal.start)
}

var ownMiddle = source.Practice("taken until you state your own")

// latest is the latest, on the metal's clock, that pouring may begin with all
// inside their windows: over all orders, or over twelve in that of the rule.
func (j *job) latest() float64 {
	if len(j.l.pours) <= exactUpTo {
		all := j.l.latest()
		return all[len(all)-1]
	}
	return j.l.inOrder(j.l.byRule())
}

func (j *job) latestMethod() string {
	if len(j.l.pours) <= exactUpTo {
		return "from the last mould back, each begun so that it is full by its coldest and the next can begin in time; the best over all orders"
	}
	return "from the last mould back, each begun so that it is full by its coldest and the next can begin in time; in the order of the rule"
}

// unwaited is the hottest start, K, from which the order needs no waiting.
func (j *job) unwaited(order []int) float64 {
	most, begin := math.Inf(1), 0.0
	for _, i := range order {
		m := j.l.pours[i]
		most = math.Min(most, j.l.metal.ambient+(m.high-j.l.metal.ambient)*math.Exp(begin/j.l.metal.tau))
		begin += m.takes + j.l.step
	}
	return most
}

// pours lays out the moulds in their order.
func (j *job) pours() {
	l := j.l
	celsius := quantity.From[quantity.Temperature]
	Ta, T0, tau := l.metal.ambient-273.15, l.metal.start-273.15, l.metal.tau
	j.p.Number("t_0", "first pour begins", 0, "s")
	j.p.Number("v_0", "inside the window", 0, "K")
	before := 0.0
	for n, i := range j.found {
		m := l.pours[i]
		p := j.p.Sub(fmt.Sprintf("moulds[%d]", n))
		low := p.Give("T_c", "coldest to pour", quantity.Temperature(m.low), "degC")
		high := p.Give("T_h", "hottest to pour", quantity.Temperature(m.high), "degC")
		takes := p.Give("t_p", "pouring time", j.in.Moulds[i].Pouring, "s")
		step := 0.0
		if n > 0 {
			step = l.step
		}
		p.Carry("t_v", "end of the pour before", before, "s")
		p.Number("t_g", "time from the mould before; 0 for the first", step, "s")
		ready := p.Step("t_y", "ladle at the mould", before+step, "s", "t_v + t_g", source.Derived("sum"))
		release := p.Step("t_h", "metal down to the hottest to pour", math.Max(tau*math.Log((T0-Ta)/(high-Ta)), 0), "s", "max(tau * ln((T_0 - T_a) / (T_h - T_a)), t_0)", decay)
		begin := p.Step("t_b", "begin", math.Max(ready, release), "s", "max(t_y, t_h)", rule)
		end := p.Step("t_e", "full", begin+takes, "s", "t_b + t_p", source.Derived("sum"))
		hot := p.Step("T_b", "metal as it is begun", Ta+(T0-Ta)*math.Exp(-begin/tau), "degC", "T_a + (T_0 - T_a) * exp(-t_b / tau)", decay)
		cold := p.Step("T_e", "metal as it is full", Ta+(T0-Ta)*math.Exp(-end/tau), "degC", "T_a + (T_0 - T_a) * exp(-t_e / tau)", decay)
		short := p.Step("v", "too cold by", math.Max(low-cold, 0), "K", "max(T_c - T_e, v_0)", source.Derived("definition"))
		wait := p.Step("w", "wait", begin-ready, "s", "t_b - t_y", source.Derived("definition"))
		j.out.Moulds = append(j.out.Moulds, Poured{
			Name: j.names[i], Place: n + 1, Listed: i + 1, Wait: quantity.Time(wait), Begin: quantity.Time(begin), End: quantity.Time(end),
			Hot: celsius(hot, "degC"), Cold: celsius(cold, "degC"), Low: quantity.Temperature(m.low), High: quantity.Temperature(m.high), Short: quantity.TempDiff(short),
		})
		before = end
		j.out.Waiting += quantity.Time(wait)
		j.out.Mass += j.in.Moulds[i].Mass
	}
}

// whole sums the order up.
func (j *job) whole(bound float64) {
	p, out, l := j.p, &j.out, j.l
	worst, total, end := l.judge(j.found)
	method := "over all sets of moulds poured, keeping every pair of time and cold that no other beats; exact"
	if !out.Proved {
		method = "of the moulds that may be begun, the one whose coldest is hottest; then pairs exchanged while that helps"
	}
	used := []string{"T_a", "T_0", "tau", "t_c"}
	out.Worst = quantity.TempDiff(p.Solve("v", "worst mould too cold by", math.Max(worst, 0), "K", method, used, rule))
	out.Total = quantity.TempDiff(p.Solve("v_t", "cold in all", total, "K", "sum over the moulds, least among the orders with that worst", used, rule))
	if worst < 0 {
		out.InHand = quantity.Some(quantity.TempDiff(p.Solve("v_h", "least in hand", -worst, "K", method, used, rule)))
	}
	out.Bound = quantity.TempDiff(p.Solve("v_b", "no order can do better than", math.Max(bound, 0), "K", "the worst of the best order where it is proved; else that of pours that may be broken off, each time the ready mould that is due first", used, source.Derived("Jackson's rule with breaks")))
	out.Finish = quantity.Time(p.Solve("t_f", "last mould full after", end, "s", "end of the last pour", used, source.Derived("sum")))
	out.Waiting = quantity.Time(p.Solve("t_w", "waiting in all", float64(out.Waiting), "s", "sum over the moulds", used, source.Derived("sum")))
	out.Mass = quantity.Mass(p.Solve("m", "metal for all the moulds", float64(out.Mass), "kg", "sum over the moulds", nil, source.Derived("sum")))
	if out.StartLow.Known() {
		high := math.Max(j.unwaited(j.found), float64(out.StartLow.V))
		T := p.Solve("T_hi", "hottest in the ladle that needs no waiting, in this order", high-273.15, "degC", "least over the moulds of T_a + (T_h − T_a) e^{t/τ}, t being when it is begun; not under the coldest that works", []string{"T_a", "tau", "t_c", "T_lo"}, decay)
		out.StartHigh = quantity.Some(quantity.From[quantity.Temperature](T, "degC"))
		if j.in.Before.Known() {
			d := working.GiveOpt(p, "d", "lost from furnace to first pour", j.in.Before, "K")
			low := p.Step("T_tlo", "tap from", quantity.In(out.StartLow.V, "degC")+d, "degC", "T_lo + d", source.Derived("sum"))
			most := p.Step("T_thi", "tap up to", T+d, "degC", "T_hi + d", source.Derived("sum"))
			out.TapLow, out.TapHigh = quantity.Some(quantity.From[quantity.Temperature](low, "degC")), quantity.Some(quantity.From[quantity.Temperature](most, "degC"))
		}
	}
	capacity := math.Inf(1)
	if j.in.Capacity.Known() {
		capacity = float64(j.in.Capacity.V)
	}
	if shares := l.share(j.found, capacity); shares != nil {
		most := 0
		for n, i := range j.found {
			most = max(most, shares[i])
			out.Moulds[n].Ladle = quantity.Some(shares[i])
		}
		out.Ladles = quantity.Some(most)
	}
	if p.Draws() {
		j.curves(end)
	}
}

// curves are the metal as it cools, over the window of each mould in its turn.
func (j *job) curves(end float64) {
	metal := working.Series{Label: "Metal in the ladle, and the window of each mould", X: working.Axis{Label: "Time from the first pour", Kind: j.out.Finish.Kind()}, Y: working.Axis{Label: "Temperature in the ladle", Kind: j.out.Start.Kind()}}
	const points = 40
	for i := range points + 1 {
		t := end * float64(i) / points
		metal.Points = append(metal.Points, working.Point{X: t, Y: j.l.metal.at(t)})
	}
	for _, m := range j.out.Moulds {
		metal.Bands = append(metal.Bands, working.Band{Label: m.Name, Upright: true, Low: float64(m.Low), High: float64(m.High), From: float64(m.Begin), To: float64(m.End)})
	}
	j.out.Curves = append(j.out.Curves, metal)
}
