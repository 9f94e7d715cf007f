package ladleheat

import (
	"math"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// measured answers from two readings of the thermometer: an even decay.
func (j *job) measured() {
	p, in := j.p, j.in
	j.begin()
	decay := source.Derived("even decay through two readings")
	Ta := quantity.In(in.Surroundings.V, "degC")
	first := p.Give("T_1", "first reading", in.First, "degC")
	second := p.Give("T_2", "second reading", in.Second, "degC")
	between := p.Give("t_r", "time between the readings", in.Between, "s")
	tau := p.Step("tau", "time constant of the loss", between/math.Log((first-Ta)/(second-Ta)), "s", "t_r / ln((T_1 - T_a) / (T_2 - T_a))", decay)
	j.out.Constant = quantity.Some(quantity.Time(tau))
	after := func(T, t float64) float64 { return Ta + (T-Ta)*math.Exp(-t/tau) }
	low, high := quantity.In(j.out.Low, "degC"), quantity.In(j.out.High, "degC")
	wait, finish := float64(in.Transfer.V), j.finish()
	celsius := quantity.From[quantity.Temperature]
	_, dropMost := j.drop.Span()
	if in.Pouring.Known() {
		lift := math.Exp(finish / tau)
		if T := celsius(Ta+(low-Ta)*lift+float64(dropMost), "degC"); T <= mostTap {
			need := p.Step("T_n", "tapping temperature needed", Ta+(low-Ta)*lift+float64(j.drop.V), "degC", "T_a + (T_c - T_a) * exp(t_x / tau) + d", decay)
			j.out.TapNeeded = quantity.Some(celsius(need, "degC"))
			worst := p.Step("T_n_hi", "tapping temperature needed, with the worst of drop and losses", Ta+(low-Ta)*lift+float64(dropMost), "degC", "T_a + (T_c - T_a) * exp(t_x / tau) + d_hi", decay)
			j.out.TapNeededHigh = quantity.Some(celsius(worst, "degC"))
		}
	}
	filled := j.fill() - 273.15
	start := p.Step("T_s", "as pouring begins", after(filled, wait), "degC", "T_a + (T_f - T_a) * exp(-t_1 / tau)", decay)
	j.out.Start = celsius(start, "degC")
	if in.Pouring.Known() {
		least, most := j.drop.Span()
		less, more := filled-float64(most-j.drop.V), filled+float64(j.drop.V-least)
		end := p.Step("T_e", "as the last mould is full", after(filled, finish), "degC", "T_a + (T_f - T_a) * exp(-t_x / tau)", decay)
		endLow := p.Step("T_e_lo", "as the last mould is full, at the least", after(less, finish), "degC", "T_a + (T_f - (d_hi - d) - T_a) * exp(-t_x / tau)", decay)
		endHigh := p.Step("T_e_hi", "as the last mould is full, at the most", after(more, finish), "degC", "T_a + (T_f + (d - d_lo) - T_a) * exp(-t_x / tau)", decay)
		j.out.End, j.out.EndLow, j.out.EndHigh = quantity.Some(celsius(end, "degC")), quantity.Some(celsius(endLow, "degC")), quantity.Some(celsius(endHigh, "degC"))
	}
	p.Const("t_m", "one minute", 1, "min", definition)
	loss := p.Step("d_m", "lost in a minute, as pouring begins", (start-Ta)*(1-math.Exp(-60/tau)), "K", "(T_s - T_a) * (1 - exp(-t_m / tau))", decay)
	j.out.PerMinute = quantity.TempDiff(loss)
	if filled > low {
		t := p.Step("t_h", "stays hot enough for", tau*math.Log((filled-Ta)/(low-Ta)), "s", "tau * ln((T_f - T_a) / (T_c - T_a))", decay)
		j.out.Holds = quantity.Some(quantity.Time(t))
		p.Step("t_h_lo", "stays hot enough for, at the least", t, "s", "t_h", source.Practice("a measured loss is taken as it is"))
		j.out.HoldsLow = j.out.Holds
	}
	if filled > high {
		t := p.Step("t_w", "falls to the hottest to pour after", tau*math.Log((filled-Ta)/(high-Ta)), "s", "tau * ln((T_f - T_a) / (T_h - T_a))", decay)
		j.out.Wait = quantity.Some(quantity.Time(t))
	}
	if !p.Draws() {
		return
	}
	span := j.span()
	s := curve("By your readings")
	for i := range chartPoints + 1 {
		t := span * float64(i) / chartPoints
		s.Points = append(s.Points, working.Point{X: t, Y: celsius(after(filled, t), "degC").SI()})
	}
	s.Bands = j.bands()
	j.out.Curves = []working.Series{s}
}
