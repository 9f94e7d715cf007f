package cooling

import (
	"math"

	"pourwright/calc/alloy"
	"pourwright/calc/figure"
	"pourwright/calc/form"
	"pourwright/calc/freeze"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// data is the heat of metal and mould, from the lists or from the user.
type data struct {
	family       alloy.Family // empty for the user's own figures
	code         alloy.Code
	wet          bool
	metal        freeze.Metal
	heatSolid    figure.Of[quantity.SpecificHeat]
	conductivity figure.Of[quantity.Conductivity]
	change       figure.Of[quantity.SpecificEnergy]

	mouldConductivity figure.Of[quantity.Conductivity]
	mouldDensity      figure.Of[quantity.Density]
	mouldHeat         figure.Of[quantity.SpecificHeat]
	effusivity        figure.Of[quantity.Effusivity]
}

func dataOf(in Input) data {
	var d data
	if in.Basis.V == fromLists {
		a, ok := alloy.Find(in.Alloy)
		if !ok {
			panic("cooling: the form let an unknown alloy through")
		}
		s, ok := mouldstuff.FindSand(in.Sand)
		if !ok {
			panic("cooling: the form let an unknown sand through")
		}
		d = data{
			family: a.Family, code: a.Code, wet: s.Water.V > 0, metal: freeze.MetalOf(a), heatSolid: a.HeatSolid, conductivity: a.Conductivity,
			mouldConductivity: s.Conductivity, mouldDensity: s.Density, mouldHeat: s.Heat, effusivity: s.Effusivity(),
		}
		if ferrous(a.Family) {
			d.change = changeHeat
		}
	} else {
		k, rho, c := float64(in.MouldConductivity), float64(in.MouldDensity), float64(in.MouldHeat)
		d = data{
			metal: freeze.Metal{
				Density: own(in.Density), Latent: own(in.Latent), HeatLiquid: own(in.HeatLiquid.V),
				Solidus: own(in.Solidus), Liquidus: own(in.Liquidus.Or(in.Solidus)),
			},
			heatSolid: own(in.HeatSolid), conductivity: own(in.Conductivity),
			mouldConductivity: own(in.MouldConductivity), mouldDensity: own(in.MouldDensity), mouldHeat: own(in.MouldHeat),
			effusivity: own(quantity.Effusivity(math.Sqrt(k * rho * c))),
		}
	}
	if in.ChangeHeat.Known() {
		d.change = own(in.ChangeHeat.V)
	}
	return d
}

func own[T quantity.Of](v T) figure.Of[T] {
	return figure.Of[T]{V: v, Source: source.Own("your own figure")}
}

// The margins inside which the sums, or the shop, would be in danger.
const (
	belowSolidus = 100 // a casting shaken out nearer to its solidus may still be liquid at heart
	aboveMould   = 30  // nearer to the mould's own temperature the time runs away
	mouldBelow   = 50  // a mould nearer to the solidus does not freeze the metal
)

// consistent checks what one field alone cannot tell.
func consistent(in Input, d data) form.Faults {
	var faults form.Faults
	add := func(field, label string, t quantity.Temperature, why working.Text) {
		faults = append(faults, form.Fault{Field: field, Label: label, Value: quantity.Text(t), Why: why})
	}
	solidus, liquidus, mould := d.metal.Solidus.V, d.metal.Liquidus.V, in.MouldTemperature.V
	if liquidus < solidus {
		add("liquidus", "Liquidus", liquidus, working.Say("%v lies below the solidus of %v; it must be at or above it", liquidus, solidus))
	}
	if in.PourTemperature.Known() && in.PourTemperature.V <= liquidus {
		add("pour_temperature", "Pouring temperature", in.PourTemperature.V, working.Say("%v is not above the liquidus of %v; metal that cold is not liquid", in.PourTemperature.V, liquidus))
	}
	if in.PourTemperature.Known() && in.Basis.V == fromFigures && !in.HeatLiquid.Known() {
		faults = append(faults, form.Fault{Field: "heat_liquid", Label: "Specific heat of the melt", Missing: true,
			Why: working.Say("wanted, because the metal is poured with superheat")})
	}
	if mould > solidus-mouldBelow {
		add("mould_temperature", "Mould temperature", mould, working.Say("%v is too near to the solidus of %v for the mould to freeze the metal; it must be %v or below", mould, solidus, solidus-mouldBelow))
	}
	if d.change.V > 0 && quantity.In(solidus, "degC") < changeUpper+mouldBelow {
		faults = append(faults, form.Fault{Field: "change_heat", Label: "Heat of the change near 730 °C", Value: quantity.Text(d.change.V),
			Why: working.Say("the metal is solid only below %v, so it cannot change near 730 °C; leave this empty or 0", solidus)})
	}
	h, usual := habits[d.family]
	switch {
	case !in.Shakeout.Known() && !usual:
		faults = append(faults, form.Fault{Field: "shakeout", Label: "Own shakeout temperature", Missing: true,
			Why: working.Say("wanted, because no usual figure is known for this metal")})
	case in.Shakeout.Known() && in.Shakeout.V > solidus-belowSolidus:
		add("shakeout", "Own shakeout temperature", in.Shakeout.V, working.Say("%v is too near to the solidus of %v; the heart of the casting may still be liquid and run out. It must be %v or below", in.Shakeout.V, solidus, solidus-belowSolidus))
	case in.Shakeout.Known() && in.Shakeout.V < mould+aboveMould:
		add("shakeout", "Own shakeout temperature", in.Shakeout.V, working.Say("%v is too near to the mould's own %v for the time to mean anything; it must be %v or above", in.Shakeout.V, mould, mould+aboveMould))
	case !in.Shakeout.Known():
		if _, sure := h.temperatures(in.Stress.V == "prone"); sure.V < mould+aboveMould {
			add("mould_temperature", "Mould temperature", mould, working.Say("a mould at %v does not bring the casting down to the usual %v at shakeout; state your own shakeout temperature, at or above %v", mould, sure.V, mould+aboveMould))
		}
	}
	return faults
}
