package pour

import (
	"pourwright/calc/alloy"
	"pourwright/calc/flow"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// hotter is how far above the usual pouring range metal is still reckoned
// with, K; beyond it something is mistyped, or about to hurt someone.
const hotter = 150

// colder is how far below the solidus the mould must be, K, for the metal to
// freeze by it in any useful time.
const colder = 50

// consistent checks what one field alone cannot tell.
func consistent(in Input) (faults form.Faults) {
	add := func(field, label string, value quantity.Any, why working.Text) {
		faults = append(faults, form.Fault{Field: field, Label: label, Value: quantity.Text(value), Why: why})
	}
	a, ok := alloy.Find(in.Alloy)
	if !ok {
		panic("pour: the form let an unknown alloy through")
	}
	most := max(a.PourThin.High, a.PourThick.High) + hotter
	switch {
	case in.PourTemperature <= a.Liquidus.V:
		add("pour_temperature", "Pouring temperature", in.PourTemperature, working.Say("%v is not above the liquidus of %v, %v; metal that cold is not liquid", in.PourTemperature, a.Name, a.Liquidus.V))
	case in.PourTemperature > most:
		add("pour_temperature", "Pouring temperature", in.PourTemperature, working.Say("%v is far hotter than %v is ever poured; it must be %v or below", in.PourTemperature, a.Name, most))
	}
	if coldest := a.Solidus.V - colder; in.MouldTemperature.V > coldest {
		add("mould_temperature", "Mould temperature", in.MouldTemperature.V, working.Say("%v is too near to the solidus of %v for the mould to freeze the metal; it must be %v or below", in.MouldTemperature.V, a.Solidus.V, coldest))
	}
	if in.Thin > in.Wall {
		add("thin_wall", "Thinnest wall", in.Thin, working.Say("%v is more than the mean wall of %v; it must be at most that", in.Thin, in.Wall))
	}
	if in.Weigh.V == ByCasting && !in.Casting.Known() {
		faults = append(faults, form.Fault{Field: "casting_mass", Label: "Castings alone", Why: working.Say("wanted, because the rules are to go by it"), Missing: true})
	}
	if in.Casting.Known() && in.Casting.V > in.Poured {
		add("casting_mass", "Castings alone", in.Casting.V, working.Say("%v is more than the %v poured", in.Casting.V, in.Poured))
	}
	if in.Gate.V == flow.Parting && in.Cope.Known() && in.Cavity.Known() && in.Cope.V > in.Cavity.V {
		add("cope_height", "Cavity above the ingates", in.Cope.V, working.Say("it is part of the cavity's height of %v and cannot be more", in.Cavity.V))
	} else if headKnown(in) && in.Gate.V != flow.Top {
		above := in.Gate.V.CopePart(float64(in.Cavity.V), float64(in.Cope.V))
		if above >= float64(in.Height.V) {
			add("sprue_height", "Metal level above the ingates", in.Height.V, working.Say("the cavity stands %v above the ingates; the metal level must be higher than that, or the mould cannot fill", quantity.Length(above)))
		}
	}
	if in.Basin.Known() && in.Height.Known() && in.Basin.V >= in.Height.V {
		add("basin_depth", "Depth of metal in the basin", in.Basin.V, working.Say("it is part of the %v above the ingates and must be less", in.Height.V))
	}
	return faults
}
