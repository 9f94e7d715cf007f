package filling

import (
	"fmt"
	"math"
	"strings"

	"pourwright/calc/flow"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
)

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
	o.Balance = quantity.Number(p.Solve("x_V", "metal in less metal there, of the whole", residue(gap), "1", "the flow added up over the time against the volume of the slices, and the ladle's against both and the basin's", []string{"V", "t_fill"}, source.Derived("metal is neither made nor lost")))
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

// residue drops what is only the rounding of the arithmetic, which is not the
// same on every machine.
func residue(gap float64) float64 { return math.Round(gap*1e9) / 1e9 }
