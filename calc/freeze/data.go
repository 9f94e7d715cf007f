package freeze

import (
	"math"

	"pourwright/calc/alloy"
	"pourwright/calc/figure"
	"pourwright/calc/form"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// data is the heat of metal and mould, from the lists or from the user.
type data struct {
	metal             Metal
	effusivity        figure.Of[quantity.Effusivity]
	mouldConductivity figure.Of[quantity.Conductivity]
	// For the exact solutions; zero values where not known.
	solidHeat        figure.Of[quantity.SpecificHeat]
	conductivity     figure.Of[quantity.Conductivity]
	meltConductivity figure.Of[quantity.Conductivity]
}

func dataOf(in Input) data {
	if in.Basis.V != FromFigures {
		a, ok := alloy.Find(in.Alloy)
		if !ok {
			panic("freeze: the form let an unknown alloy through")
		}
		s, ok := mouldstuff.FindSand(in.Sand)
		if !ok {
			panic("freeze: the form let an unknown sand through")
		}
		return data{metal: MetalOf(a), effusivity: s.Effusivity(), mouldConductivity: s.Conductivity, solidHeat: a.HeatSolid, conductivity: a.Conductivity}
	}
	k, rho, c := float64(in.MouldConductivity), float64(in.MouldDensity), float64(in.MouldHeat)
	return data{
		metal: Metal{
			Density: own(in.Density), Latent: own(in.Latent), HeatLiquid: own(in.HeatLiquid.V),
			Solidus: own(in.Solidus), Liquidus: own(in.Liquidus.Or(in.Solidus)),
		},
		effusivity:        own(quantity.Effusivity(math.Sqrt(k * rho * c))),
		mouldConductivity: own(in.MouldConductivity),
		solidHeat:         own(in.HeatSolid.V), conductivity: own(in.Conductivity.V), meltConductivity: own(in.MeltConductivity.V),
	}
}

func own[T quantity.Of](v T) figure.Of[T] {
	return figure.Of[T]{V: v, Source: source.Own("your own figure")}
}

// consistent checks what one field alone cannot tell.
func consistent(in Input) form.Faults {
	if in.Basis.V == FromConstant || in.Basis.V == FromTimed {
		return nil
	}
	var faults form.Faults
	d := dataOf(in)
	solidus, liquidus := d.metal.Solidus.V, d.metal.Liquidus.V
	if liquidus < solidus {
		faults = append(faults, form.Fault{Field: "liquidus", Label: "Liquidus", Value: quantity.Text(liquidus),
			Why: working.Say("%v lies below the solidus of %v; it must be at or above it", liquidus, solidus)})
	}
	if in.PourTemperature.Known() && in.PourTemperature.V <= liquidus {
		faults = append(faults, form.Fault{Field: "pour_temperature", Label: "Pouring temperature", Value: quantity.Text(in.PourTemperature.V),
			Why: working.Say("%v is not above the liquidus of %v; metal that cold is not liquid", in.PourTemperature.V, liquidus)})
	}
	if in.PourTemperature.Known() && in.Basis.V == FromFigures && !in.HeatLiquid.Known() {
		faults = append(faults, form.Fault{Field: "heat_liquid", Label: "Specific heat of the melt", Missing: true,
			Why: working.Say("wanted, because the metal is poured with superheat")})
	}
	// Closer than this the rule divides by next to nothing, and the mould no
	// longer freezes the metal in any useful time.
	const margin = 50
	if float64(in.MouldTemperature.V) > float64(solidus)-margin {
		faults = append(faults, form.Fault{Field: "mould_temperature", Label: "Mould temperature", Value: quantity.Text(in.MouldTemperature.V),
			Why: working.Say("%v is too near to the solidus of %v for the metal to freeze by the mould; it must be %v or below", in.MouldTemperature.V, solidus, solidus-margin)})
	}
	return faults
}
