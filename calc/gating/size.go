package gating

import (
	"math"

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

// Size works out the gating; see the package comment.
//
// Refused: a cavity that stands above the metal in the basin, a basin as deep
// as the whole head, a top of the sprue that would not pass the flow, own
// numbers that contradict each other. The Reynolds numbers and friction factors
// are those of the flow on average.
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
