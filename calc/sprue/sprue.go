// Package sprue answers how metal runs down a sprue and into a mould: its
// speed and flow, the time to fill through a top, parting or bottom gate, and
// the taper that keeps air out.
package sprue

import (
	"math"

	"pourwright/calc/flow"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// Input is a sprue, and the mould behind it.
type Input struct {
	// Height is the metal's height above the foot.
	Height quantity.Length `json:"height" label:"Height of the sprue" part:"Sprue" hint:"Metal level in the basin down to the foot or the gate" min:"5 mm" max:"5 m"`
	// BaseArea is the narrowest section at the foot, the choke.
	BaseArea quantity.Opt[quantity.Area] `json:"base_area" label:"Area at the foot" hint:"Calipers on the narrowest section, which sets the flow" min:"0.05 cm²" max:"5000 cm²"`
	// TopArea is the section under the basin.
	TopArea quantity.Opt[quantity.Area] `json:"top_area" label:"Area at the top" hint:"Calipers just under the basin" min:"0.05 cm²" max:"5000 cm²"`
	// BasinDepth is the depth of metal above the top section.
	BasinDepth quantity.Opt[quantity.Length] `json:"basin_depth" label:"Depth of metal in the basin" hint:"Metal level down to the top of the sprue" min:"1 mm" max:"1 m"`
	// Flow is the flow wanted.
	Flow quantity.Opt[quantity.VolumeFlow] `json:"flow" label:"Flow that you want" hint:"Mass over the time you want, over density; for the area at the foot" min:"0.1 cm³/s" max:"1000 L/s"`
	// Discharge is the share of the frictionless flow.
	Discharge quantity.Opt[quantity.Number] `json:"discharge" label:"Discharge coefficient" hint:"1 is the textbook stream without friction; 0.85 to 0.9 tapered sprue, 0.7 to 0.75 straight" default:"1" min:"0.2" max:"1"`
	// Gravity for those who reckon with 10.
	Gravity quantity.Opt[quantity.Number] `json:"gravity" label:"Free fall, m/s²" hint:"9.81; exam papers also take 10" default:"9.81" min:"9.7" max:"10"`

	// Volume of the mould, Gate its place, and the cavity's heights.
	Volume       quantity.Opt[quantity.Volume] `json:"volume" label:"Volume of the mould" part:"Mould" hint:"Castings, risers and gating: metal over density" min:"0.1 cm³" max:"10 m³"`
	Gate         quantity.Opt[flow.Position]   `json:"gate" label:"Gate" hint:"Where the metal enters the cavity" default:"top"`
	CavityHeight quantity.Length               `json:"cavity_height" label:"Height of the cavity" when:"gate=bottom|parting" hint:"As it stands in the mould" min:"1 mm" max:"5 m"`
	CopeHeight   quantity.Opt[quantity.Length] `json:"cope_height" label:"Cavity above the gate" when:"gate=parting" hint:"The part of its height in the cope" default:"0 mm" min:"0 mm" max:"5 m"`
}

// Output is the stream.
type Output struct {
	Speed quantity.Speed                    `json:"speed" label:"Speed at the foot" step:"v" hint:"Without friction"`
	Flow  quantity.Opt[quantity.VolumeFlow] `json:"flow" label:"Flow" step:"Q"`
	Head  quantity.Length                   `json:"head" label:"Effective head, trade rule" step:"H"`
	Exact quantity.Length                   `json:"exact_head" label:"Effective head, exact" step:"H_x"`
	Time  quantity.Opt[quantity.Time]       `json:"time" label:"Time to fill" step:"t" hint:"With the exact head"`
	Rule  quantity.Opt[quantity.Time]       `json:"time_by_rule" label:"Time to fill by the trade's head" step:"t_H"`
	Base  quantity.Opt[quantity.Area]       `json:"base_for_flow" label:"Area at the foot for the flow" step:"A_Q" hint:"Metal taken as starting from rest"`
	Fall  quantity.Opt[quantity.Area]       `json:"base_for_fall" label:"Area at the foot that a falling stream fills" step:"A_f" hint:"Metal that already moves at the top"`
	Taper quantity.Opt[quantity.Number]     `json:"taper" label:"Area at the top over area at the foot" step:"r_t" hint:"Less lets the stream draw in air"`
}

// Run follows the metal down. The basin is kept full; the cavity has an even
// plan area, and air leaves it freely. Refused: a cavity that stands higher
// than the metal in the basin.
func Run(in Input, p *working.Paper) (Output, error) {
	in, faults := form.Ready(in)
	if len(faults) == 0 {
		faults = consistent(in)
	}
	if err := faults.Err(); err != nil {
		return Output{}, err
	}
	h := p.Give("h", "height of the metal above the foot", in.Height, "mm")
	g := p.Number("g", "acceleration of free fall", float64(in.Gravity.V), "m/s^2")
	cd := working.GiveOpt(p, "C_d", "discharge coefficient", in.Discharge, "1")
	out := Output{Speed: quantity.Speed(flow.Speed(p, h, g))}
	v := float64(out.Speed)
	rule, exact := heads(in, p, h)
	out.Head, out.Exact = quantity.From[quantity.Length](rule, "mm"), quantity.From[quantity.Length](exact, "mm")
	bernoulli := source.Groover.Memory("ch. 10, fluid flow")
	if in.BaseArea.Known() {
		A := working.GiveOpt(p, "A_b", "area at the foot", in.BaseArea, "cm^2")
		Q := p.Step("Q", "flow, mould still empty", cd*A*1e-4*v*1000, "L/s", "C_d * A_b * v", bernoulli)
		out.Flow = quantity.Some(quantity.From[quantity.VolumeFlow](Q, "L/s"))
		if in.Volume.Known() {
			V := working.GiveOpt(p, "V", "volume of the mould", in.Volume, "cm^3")
			t := p.Step("t", "time to fill", V*1e-6/(cd*A*1e-4*math.Sqrt(2*g*exact/1000)), "s", "V / (C_d * A_b * sqrt(2 * g * H_x))", source.Ghosh.Memory("ch. 2, gating"))
			tH := p.Step("t_H", "time to fill by the trade's head", V*1e-6/(cd*A*1e-4*math.Sqrt(2*g*rule/1000)), "s", "V / (C_d * A_b * sqrt(2 * g * H))", source.Rao.Memory("ch. 4"))
			out.Time, out.Rule = quantity.Some(quantity.Time(t)), quantity.Some(quantity.Time(tH))
		}
		fast(out.Speed, p)
	}
	if in.Flow.Known() {
		Q := working.GiveOpt(p, "Q_w", "flow wanted", in.Flow, "L/s")
		A := p.Step("A_Q", "area at the foot for the flow", Q/1000/(cd*v)*1e4, "cm^2", "Q_w / (C_d * v)", bernoulli)
		out.Base = quantity.Some(quantity.From[quantity.Area](A, "cm^2"))
		if in.TopArea.Known() {
			At := working.GiveOpt(p, "A_t", "area at the top", in.TopArea, "cm^2")
			v1 := p.Step("v_t", "speed at the top", Q/1000/(At*1e-4), "m/s", "Q_w / A_t", bernoulli)
			v2 := p.Step("v_f", "speed at the foot of the falling stream", math.Sqrt(v1*v1+2*g*h/1000), "m/s", "sqrt(pow(v_t, 2) + 2 * g * h)", bernoulli)
			Af := p.Step("A_f", "area at the foot that the falling stream fills", Q/1000/v2*1e4, "cm^2", "Q_w / v_f", bernoulli)
			out.Fall = quantity.Some(quantity.From[quantity.Area](Af, "cm^2"))
		}
	}
	taper(in, &out, h, p)
	return out, nil
}

func heads(in Input, p *working.Paper, h float64) (rule, exact float64) {
	if in.Gate.V == flow.Top {
		rule = p.Step("H", "effective head of a top gate", h, "mm", "h", source.Rao.Memory("ch. 4, effective sprue height"))
		return rule, p.Step("H_x", "effective head, exact", h, "mm", "h", source.Derived("a top gate keeps its full head"))
	}
	c := p.Give("c", "height of the cavity", in.CavityHeight, "mm")
	cp := in.Gate.V.CopePart(c, quantity.In(in.CopeHeight.V, "mm"))
	p.Number("c_p", "height of cavity above the gate", cp, "mm")
	return flow.Heads(p, h, c, cp)
}

func taper(in Input, out *Output, h float64, p *working.Paper) {
	if !in.BasinDepth.Known() {
		return
	}
	p.Step("h_t", "height of the metal above the foot", h, "mm", "h", source.Derived("same height"))
	hc := working.GiveOpt(p, "h_c", "depth of metal in the basin", in.BasinDepth, "mm")
	r := flow.TaperByHeads(p, h, hc)
	out.Taper = quantity.Some(quantity.Number(r))
	if !in.TopArea.Known() || !in.BaseArea.Known() {
		return
	}
	most := quantity.Area(float64(in.TopArea.V) / r)
	if in.BaseArea.V > most*(1+1e-9) {
		p.Find(working.Finding{Level: working.Mind, Code: "sprue-sucks-air", Field: "base_area", Source: source.Groover.Memory("ch. 10, continuity"),
			Text: working.Say("The stream narrows as it falls; %v at the foot is more than it fills, and the gap draws in air.", in.BaseArea.V),
			Do:   working.Say("Narrow the foot to %v, or widen the top.", most)})
	}
}

// fast reminds that every real sprue is faster than the ingate may be.
func fast(v quantity.Speed, p *working.Paper) {
	const limit = 0.5 * quantity.MetrePerSecond
	if v > limit {
		p.Find(working.Finding{Level: working.Note, Code: "sprue-fast", Source: source.Campbell.Memory("critical velocity at the ingate"),
			Text: working.Say("Metal leaves the foot at %v; at the ingates it should have slowed to about %v.", v, limit),
			Do:   working.Say("Give the ingates together at least %v times the area of the foot, and make sure that they run full.", quantity.Number(v/limit))})
	}
}

func consistent(in Input) (faults form.Faults) {
	if in.BasinDepth.Known() && in.BasinDepth.V >= in.Height {
		faults = append(faults, form.Fault{Field: "basin_depth", Label: "Depth of metal in the basin", Value: quantity.Text(in.BasinDepth.V),
			Why: working.Say("it is part of the height of %v and must be less", in.Height)})
	}
	if in.Gate.V == flow.Top {
		return faults
	}
	above := in.Gate.V.CopePart(float64(in.CavityHeight), float64(in.CopeHeight.V))
	if above > float64(in.CavityHeight) {
		faults = append(faults, form.Fault{Field: "cope_height", Label: "Cavity above the gate", Value: quantity.Text(in.CopeHeight.V),
			Why: working.Say("it is part of the cavity's height of %v and cannot be more", in.CavityHeight)})
	}
	if above > float64(in.Height) {
		field := "cavity_height"
		if in.Gate.V == flow.Parting {
			field = "cope_height"
		}
		faults = append(faults, form.Fault{Field: field, Label: "Cavity above the gate", Value: quantity.Text(quantity.Length(above)),
			Why: working.Say("the cavity stands %v above the gate, higher than the metal's %v; it cannot fill", quantity.Length(above), in.Height)})
	}
	return faults
}
