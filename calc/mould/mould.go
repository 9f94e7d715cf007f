// Package mould answers what the mould is made of and how it is laid out: the
// sand in cope and drag, the sand between casting and flask, the metal's head,
// and what the cope weighs to hold the metal down.
package mould

import (
	"pourwright/calc/form"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// Input is the mould. Heights are measured from the parting line.
type Input struct {
	// Sand is the mould material.
	Sand mouldstuff.Sand `json:"sand" label:"Mould material" hint:"What the face against the metal is made of"`
	// Binder holds it together.
	Binder mouldstuff.Binder `json:"binder" label:"Binder" hint:"What holds the sand together"`
	// Moisture of the sand as moulded.
	Moisture quantity.Opt[quantity.Ratio] `json:"moisture" label:"Moisture of the sand" hint:"Weigh 100 g, dry it, weigh it again" min:"0 %" max:"20 %"`

	// CopeHeight and DragHeight are the heights of the two half moulds.
	CopeHeight quantity.Length `json:"cope_height" label:"Cope height" part:"Flask" hint:"Rule inside the flask, parting line to the top" min:"20 mm" max:"3 m"`
	DragHeight quantity.Length `json:"drag_height" label:"Drag height" hint:"Rule inside the flask, parting line to the bottom board" min:"20 mm" max:"3 m"`
	// FlaskLength and FlaskWidth are the inside of the flask.
	FlaskLength quantity.Length `json:"flask_length" label:"Flask length, inside" hint:"Measure inside the flask" min:"50 mm" max:"10 m"`
	FlaskWidth  quantity.Length `json:"flask_width" label:"Flask width, inside" hint:"Measure inside the flask" min:"50 mm" max:"10 m"`
	// BasinHeight is the pouring basin's metal level above the top of the cope.
	BasinHeight quantity.Opt[quantity.Length] `json:"basin_height" label:"Basin level above the cope" hint:"How far the metal in the pouring basin stands above the top of the cope" default:"0 mm" min:"0 mm" max:"1 m"`

	// Above and Below are the casting's heights over and under the parting line.
	Above quantity.Opt[quantity.Length] `json:"above" label:"Casting above the parting" part:"Casting in the mould" hint:"Height of the casting that lies in the cope; 0 if all is in the drag" min:"0 mm" max:"3 m"`
	Below quantity.Opt[quantity.Length] `json:"below" label:"Casting below the parting" hint:"Height of the casting that lies in the drag; 0 if all is in the cope" min:"0 mm" max:"3 m"`
	// CastingLength and CastingWidth are the casting seen from above.
	CastingLength quantity.Length `json:"casting_length" label:"Casting length, from above" hint:"All castings of the mould together, with the space between them" min:"2 mm" max:"10 m"`
	CastingWidth  quantity.Length `json:"casting_width" label:"Casting width, from above" hint:"All castings of the mould together, with the space between them" min:"2 mm" max:"10 m"`
	// Projected is the area of casting, seen from above, that presses on the cope.
	Projected quantity.Opt[quantity.Area] `json:"projected" label:"Area under the cope" hint:"Casting and runners seen from above; if you leave it empty, length times width is taken, which is never too little" min:"0.05 cm²" max:"100 m²"`
	// CastingVolume is the metal volume of all castings in the mould.
	CastingVolume quantity.Opt[quantity.Volume] `json:"casting_volume" label:"Volume of the castings" link:"weight" hint:"Metal volume of all castings of the mould: mass over density" min:"0.1 cm³" max:"10 m³"`
	// CastingMass is their mass, for the table of sand thickness.
	CastingMass quantity.Opt[quantity.Mass] `json:"casting_mass" label:"Mass of the castings" link:"weight" hint:"Weigh all castings of the mould" min:"1 g" max:"20 t"`
	// SandDensity is the user's own rammed density.
	SandDensity quantity.Opt[quantity.Density] `json:"sand_density" label:"Own density of the rammed sand" part:"Your own figures" hint:"Weigh a rammed box of known volume" min:"800 kg/m³" max:"4000 kg/m³"`
}

// Output is what the other stations use and the moulder rams.
type Output struct {
	Head         quantity.Length               `json:"head" label:"Head over the parting" step:"h" hint:"Metal level in the basin above the parting line"`
	CavityHeight quantity.Length               `json:"cavity_height" label:"Height of the casting in the mould" step:"c"`
	TopHead      quantity.Length               `json:"top_head" label:"Head over the top of the casting" step:"h_t"`
	Area         quantity.Area                 `json:"area" label:"Area under the cope" step:"A_p"`
	CopeMass     quantity.Mass                 `json:"cope_mass" label:"Sand in the cope" step:"m_cope" hint:"Without the flask's own weight, which you may add as weights"`
	DragMass     quantity.Mass                 `json:"drag_mass" label:"Sand in the drag" step:"m_drag"`
	SandMass     quantity.Mass                 `json:"sand_mass" label:"Sand to ram" step:"m_sand"`
	SandToMetal  quantity.Opt[quantity.Number] `json:"sand_to_metal" label:"Sand to metal, by mass" step:"r_sm"`
	Top          quantity.Length               `json:"top" label:"Sand over the casting" step:"s_top"`
	Bottom       quantity.Length               `json:"bottom" label:"Sand under the casting" step:"s_bottom"`
	Side         quantity.Length               `json:"side" label:"Sand beside the casting" step:"s_side" hint:"The thinner of length and width"`
}

// Lay works out the layout. A casting that stands out of its flask, or a
// basin lower than the casting's top, is refused: metal would run out.
func Lay(in Input, p *working.Paper) (Output, error) {
	in, faults := form.Ready(in)
	faults = append(faults, layout(in)...)
	if err := faults.Err(); err != nil {
		return Output{}, err
	}
	var out Output
	hc := p.Give("h_c", "cope height", in.CopeHeight, "m")
	hd := p.Give("h_d", "drag height", in.DragHeight, "m")
	L := p.Give("L_f", "flask length", in.FlaskLength, "m")
	W := p.Give("W_f", "flask width", in.FlaskWidth, "m")
	hb := working.GiveOpt(p, "h_b", "basin level above the cope", in.BasinHeight, "m")
	above := working.GiveOpt(p, "p", "casting above the parting", in.Above, "m")
	below := working.GiveOpt(p, "d", "casting below the parting", in.Below, "m")
	l := p.Give("l", "casting length from above", in.CastingLength, "m")
	w := p.Give("w", "casting width from above", in.CastingWidth, "m")

	geometry := source.Derived("geometry of the flask")
	h := p.Step("h", "head over the parting", hc+hb, "m", "h_c + h_b", geometry)
	c := p.Step("c", "height of the casting in the mould", above+below, "m", "p + d", geometry)
	ht := p.Step("h_t", "head over the top of the casting", h-above, "m", "h - p", geometry)
	out.Head, out.CavityHeight, out.TopHead = quantity.Length(h), quantity.Length(c), quantity.Length(ht)
	top := p.Step("s_top", "sand over the casting", hc-above, "m", "h_c - p", geometry)
	bottom := p.Step("s_bottom", "sand under the casting", hd-below, "m", "h_d - d", geometry)
	side := p.Step("s_side", "sand beside the casting", min(L-l, W-w)/2, "m", "min(L_f - l, W_f - w) / 2", geometry)
	out.Top, out.Bottom, out.Side = quantity.Length(top), quantity.Length(bottom), quantity.Length(side)

	if in.Projected.Known() {
		A := working.GiveOpt(p, "A_own", "area you state", in.Projected, "m^2")
		out.Area = quantity.Area(p.Step("A_p", "area under the cope", A, "m^2", "A_own", geometry))
	} else {
		out.Area = quantity.Area(p.StepNote("A_p", "area under the cope", l*w, "m^2", "l * w", geometry, "the box round the casting, which is never too little"))
	}
	sand(in, &out, L*W, p)
	cover(in, out, p)
	return out, nil
}

func layout(in Input) form.Faults {
	var faults form.Faults
	add := func(field, label string, value quantity.Length, why working.Text) {
		faults = append(faults, form.Fault{Field: field, Label: label, Value: quantity.Text(value), Why: why})
	}
	if !in.Above.Known() {
		faults = append(faults, form.Fault{Field: "above", Label: "Casting above the parting", Missing: true, Why: working.Say("not filled in yet")})
	}
	if !in.Below.Known() {
		faults = append(faults, form.Fault{Field: "below", Label: "Casting below the parting", Missing: true, Why: working.Say("not filled in yet")})
	}
	if in.Above.Known() && in.Below.Known() && in.Above.V+in.Below.V <= 0 {
		add("above", "Casting above the parting", in.Above.V, working.Say("the casting cannot have no height above and none below the parting; give at least one"))
	}
	if in.CopeHeight > 0 && in.Above.V >= in.CopeHeight {
		add("above", "Casting above the parting", in.Above.V, working.Say("%v stands out of a cope of %v; it must be less than the cope height", in.Above.V, in.CopeHeight))
	}
	if in.DragHeight > 0 && in.Below.V >= in.DragHeight {
		add("below", "Casting below the parting", in.Below.V, working.Say("%v stands out of a drag of %v; it must be less than the drag height", in.Below.V, in.DragHeight))
	}
	if in.FlaskLength > 0 && in.CastingLength >= in.FlaskLength {
		add("casting_length", "Casting length, from above", in.CastingLength, working.Say("%v does not fit a flask of %v; it must be less", in.CastingLength, in.FlaskLength))
	}
	if in.FlaskWidth > 0 && in.CastingWidth >= in.FlaskWidth {
		add("casting_width", "Casting width, from above", in.CastingWidth, working.Say("%v does not fit a flask of %v; it must be less", in.CastingWidth, in.FlaskWidth))
	}
	plan := quantity.Area(float64(in.FlaskLength) * float64(in.FlaskWidth))
	if in.Projected.Known() && plan > 0 && in.Projected.V > plan {
		faults = append(faults, form.Fault{Field: "projected", Label: "Area under the cope", Value: quantity.Text(in.Projected.V),
			Why: working.Say("%v is more than the whole flask, %v", in.Projected.V, plan)})
	}
	room := quantity.Volume(float64(in.CastingLength) * float64(in.CastingWidth) * float64(in.Above.V+in.Below.V))
	if in.CastingVolume.Known() && room > 0 && in.CastingVolume.V > room*1.001 {
		faults = append(faults, form.Fault{Field: "casting_volume", Label: "Volume of the castings", Value: quantity.Text(in.CastingVolume.V),
			Why: working.Say("%v does not fit the box that you give for the castings, %v (length, width and height); check both", in.CastingVolume.V, room)})
	}
	return faults
}
