// Package weir answers how much runs over a lip under a head, or what head a
// flow needs: the sums behind a ladle's spout, and those of the notches that
// water is measured with.
//
// Source: the weir formulas of any hydraulics handbook; Encyclopaedia
// Britannica (1911), "Hydraulics". Limits: steady flow, deep and still liquid
// behind the lip, no surface tension.
package weir

import (
	"pourwright/calc/alloy"
	"pourwright/calc/flow"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// Wanted says which of head and flow is asked for.
type Wanted string

// What may be wanted.
const (
	FlowWanted Wanted = "flow"
	HeadWanted Wanted = "head"
)

// Choices lists what may be wanted for a form.
func (Wanted) Choices() [][2]string {
	return [][2]string{{string(FlowWanted), "The flow under a head"}, {string(HeadWanted), "The head for a flow"}}
}

// Input is a lip and the head or the flow over it.
type Input struct {
	// Lip is the edge.
	Lip flow.Lip `json:"lip" label:"Lip" hint:"What it runs over"`
	// Wanted is what to work out.
	Wanted quantity.Opt[Wanted] `json:"wanted" label:"Wanted" hint:"Which of the two you do not know" default:"flow"`
	// Head over the lowest point of the lip.
	Head quantity.Length `json:"head" label:"Head over the lip" hint:"From the lowest point of the lip up to the still surface behind it" when:"wanted=flow" min:"0.1 mm" max:"2 m"`
	// Flow over the lip.
	Flow quantity.VolumeFlow `json:"flow" label:"Flow" hint:"Weigh or measure what runs in a timed while" when:"wanted=head" min:"0.01 cm³/s" max:"10 m³/s"`
	// Alloy gives the density for the flow by mass.
	Alloy quantity.Opt[alloy.Code] `json:"alloy" label:"Metal" hint:"For the flow by mass; leave empty for water and the like" link:"metal"`
}

// Output is head and flow together.
type Output struct {
	Flow     quantity.VolumeFlow             `json:"flow" label:"Flow" step:"q"`
	Head     quantity.Length                 `json:"head" label:"Head over the lip" step:"h"`
	MassFlow quantity.Opt[quantity.MassFlow] `json:"mass_flow" label:"Flow by mass" step:"q_m"`
	Section  quantity.Area                   `json:"section" label:"Section of the stream at the lip" step:"A_l"`
	Surface  quantity.Length                 `json:"surface" label:"Width of the surface at the lip" step:"w_l"`
	Speed    quantity.Speed                  `json:"speed" label:"Mean speed at the lip" step:"v_0"`
	Charts   []working.Series                `json:"charts"`
}

// Flow works out the flow over a lip, or the head that it needs.
func Flow(in Input, p *working.Paper) (Output, error) {
	in, faults := form.Ready(in)
	if err := faults.Err(); err != nil {
		return Output{}, err
	}
	var out Output
	if in.Wanted.V == HeadWanted {
		p.Give("q", "flow", in.Flow, "L/s")
		out.Flow, out.Head = in.Flow, in.Lip.PutHead(p, in.Flow)
	} else {
		p.Give("h", "head over the lip", in.Head, "mm")
		out.Head, out.Flow = in.Head, in.Lip.PutFlow(p, in.Head)
	}
	out.Section, out.Surface, out.Speed = in.Lip.PutStream(p, out.Flow, out.Head)
	if in.Alloy.Known() {
		metal, ok := alloy.Find(in.Alloy.V)
		if !ok {
			panic("weir: the form let an unknown alloy through")
		}
		rho := p.Lookup("rho_l", "density of the liquid metal", quantity.In(metal.DensityLiquid.V, "kg/m^3"), "kg/m^3", metal.DensityLiquid.Source, "")
		out.MassFlow = quantity.Some(quantity.From[quantity.MassFlow](p.Step("q_m", "flow by mass", rho*float64(out.Flow), "kg/s", "rho_l * q", source.Derived("mass of a volume")), "kg/s"))
	}
	in.Lip.Find(p, out.Flow, out.Head, "lip")
	out.Charts = chart(in.Lip, out.Head)
	return out, nil
}

// chart draws the flow against the head, to half as much head again.
func chart(lip flow.Lip, head quantity.Length) []working.Series {
	const points = 60
	s := working.Series{Label: "Flow over the lip",
		X: working.Axis{Label: "Head over the lip", Kind: head.Kind()},
		Y: working.Axis{Label: "Flow", Kind: quantity.VolumeFlow(0).Kind()}}
	for i := range points + 1 {
		h := 1.5 * head * quantity.Length(i) / points
		s.Points = append(s.Points, working.Point{X: float64(h), Y: float64(lip.Flow(h))})
	}
	return []working.Series{s}
}
