package alloy

import (
	"pourwright/calc/figure"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
)

// all is every metal, in the order of the forms.
var all = []*Alloy{
	greyIron, ductileIron, carbonSteel,
	siliconBronze, tinBronze, tinBronze905, gunmetal, aluminiumBronze, yellowBrass,
	alSiMg, alSiCu, alSi, aluminium,
	za12, pewter,
}

// The places that many figures share.
var (
	valencia   = source.ASM15.Memory("Valencia and Quested, Thermophysical Properties, pp. 468–481")
	mills      = source.Mills.Memory("")
	cdaSeen    = source.CDA.Seen("data sheet of the alloy")
	cda        = source.CDA.Memory("data sheet of the alloy")
	likeness   = source.Practice("estimate by likeness and mixture, no measurement known")
	iida       = source.Iida.Memory("surface tension at the melting point, as tabulated by J. Campbell")
	assael     = source.Assael.Memory("density at the melting point")
	assaelMu   = source.Assael.Memory("viscosity at the melting point")
	viscous    = source.ASM15.Memory("Valencia and Quested; Mills, Recommended Values: viscosity of the melt near the liquidus")
	emissivity = source.ASM15.Memory("total emissivity of liquid metals, weakly remembered")
	walls      = source.DeGarmo.Memory("least section thickness in sand; ASM Handbook vol. 15 and P. N. Rao differ within the range")
	campbell   = source.Campbell.Memory("critical velocity at the ingate")
	pourBands  = source.ASM15.Memory("pouring temperatures; bands as in the Navy Foundry Manual, no table opened")
	feeding    = source.ASM15.Memory("feeding allowance by alloy, liquid and freezing contraction together")
	loss       = source.ASM15.Memory("melting losses; the US Department of Energy gives 0.75 to 6 % over all metals")
)

// The shorthands below name the unit that the tables of the trade print.

func density(v, low, high float64, from source.Ref, note string) Figure[quantity.Density] {
	return figure.New[quantity.Density](v, low, high, "kg/m^3", from, note)
}

func celsius(v, low, high float64, from source.Ref, note string) Figure[quantity.Temperature] {
	return figure.New[quantity.Temperature](v, low, high, "degC", from, note)
}

// pouring is a band of pouring temperatures, used at its middle.
func pouring(low, high float64, from source.Ref, note string) Figure[quantity.Temperature] {
	return celsius((low+high)/2, low, high, from, note)
}

func latent(v, low, high float64, from source.Ref, note string) Figure[quantity.SpecificEnergy] {
	return figure.New[quantity.SpecificEnergy](v, low, high, "kJ/kg", from, note)
}

func heat(v, low, high float64, from source.Ref, note string) Figure[quantity.SpecificHeat] {
	return figure.New[quantity.SpecificHeat](v, low, high, "J/(kg*K)", from, note)
}

func conductivity(v, low, high float64, from source.Ref, note string) Figure[quantity.Conductivity] {
	return figure.New[quantity.Conductivity](v, low, high, "W/(m*K)", from, note)
}

func tension(v, low, high float64, from source.Ref, note string) Figure[quantity.SurfaceTension] {
	return figure.New[quantity.SurfaceTension](v, low, high, "N/m", from, note)
}

// viscosity prints mPa·s, as the tables do.
func viscosity(v, low, high float64, from source.Ref, note string) Figure[quantity.Viscosity] {
	return figure.New[quantity.Viscosity](v, low, high, "mPa·s", from, note)
}

func millimetres(v, low, high float64, from source.Ref, note string) Figure[quantity.Length] {
	return figure.New[quantity.Length](v, low, high, "mm", from, note)
}

func speed(v, low, high float64, from source.Ref, note string) Figure[quantity.Speed] {
	return figure.New[quantity.Speed](v, low, high, "m/s", from, note)
}

func percent(v, low, high float64, from source.Ref, note string) Figure[quantity.Ratio] {
	return figure.New[quantity.Ratio](v, low, high, "%", from, note)
}

func share(v, low, high float64, from source.Ref, note string) Figure[quantity.Ratio] {
	return figure.New[quantity.Ratio](v, low, high, "of 1", from, note)
}
