package filling

import (
	"fmt"
	"math"
	"sort"
	"strings"

	"pourwright/calc/flow"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

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
