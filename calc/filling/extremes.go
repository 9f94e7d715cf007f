package filling

import (
	"fmt"
	"math"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
)

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
