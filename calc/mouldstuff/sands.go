package mouldstuff

import (
	"pourwright/calc/source"
)

var (
	asm      = source.ASM15.Memory("moulding materials")
	flemings = source.Flemings.Memory("ch. 1, properties of mould materials")
	poirier  = source.Poirier.Memory("properties of mould materials")
	wide     = source.ASM15.Memory("moulding materials, weakly remembered: a range rather than a figure")
	dry      = percent(0, 0, 0, source.Practice("must be dry when the metal comes"), "")

	// drySilica is the handbook's dry silica sand, which also stands for
	// silicate and oil sand, of which no own figures are known.
	silicaConductivity = conductivity(0.61, 0.52, 0.87, flemings, "for dry silica sand; one handbook prints it a hundred times too small, by a slip of units")
	silicaDensity      = density(1500, 1500, 1650, flemings, "hand tamped 1500 to 1600 kg/m³; texts reckon cores at 1600 to 1650 kg/m³")
	silicaHeat         = heat(1131, 1131, 1170, flemings)
)

var sands = []*SandKind{
	{
		Code: GreenSand, Name: "Green sand",
		Density:      density(1600, 1400, 1700, asm, "rammed; usually 1500 to 1650 kg/m³"),
		Conductivity: conductivity(0.9, 0.6, 1.2, wide, "apparent: the water in it carries heat and takes it up"),
		Heat:         heat(1200, 1100, 1300, wide),
		Water:        percent(3.5, 2.5, 5, asm, "3 to 4.5 % for iron, 4 to 6 % in some shops for copper alloys and aluminium"),
		Binders:      []Binder{Clay},
		bLow:         1100, bHigh: 1500,
	},
	{
		Code: ResinSand, Name: "Resin-bonded silica sand",
		Density:      density(1550, 1500, 1600, asm, "hand tamped"),
		Conductivity: conductivity(0.65, 0.55, 0.8, wide, ""),
		Heat:         heat(1110, 1050, 1170, wide),
		Water:        dry,
		Binders:      []Binder{Furan, PhenolicUrethane, AlkalinePhenolic},
		bLow:         950, bHigh: 1200,
	},
	{
		Code: SilicateSand, Name: "Sodium silicate sand",
		Density:      silicaDensity,
		Conductivity: silicaConductivity,
		Heat:         silicaHeat,
		Water:        dry,
		Binders:      []Binder{SilicateCO2, SilicateEster},
		bLow:         987, bHigh: 1273,
	},
	{
		Code: OilSand, Name: "Oil sand, baked",
		Density:      silicaDensity,
		Conductivity: silicaConductivity,
		Heat:         silicaHeat,
		Water:        dry,
		Binders:      []Binder{Oil},
		bLow:         987, bHigh: 1273,
	},
	{
		Code: OlivineSand, Name: "Olivine sand, resin-bonded",
		Density:      density(1800, 1700, 2000, asm, "rammed 1800 to 2000 kg/m³"),
		Conductivity: conductivity(0.70, 0.49, 0.96, source.Derived("diffusivity 3 to 4 · 10⁻⁷ m²/s, seen, × density × specific heat"), ""),
		Heat:         heat(1110, 960, 1260, source.Practice("as sellers of olivine print it")),
		Water:        dry,
		Binders:      []Binder{Furan, PhenolicUrethane, AlkalinePhenolic, SilicateCO2, SilicateEster},
		bLow:         1100, bHigh: 1250,
	},
	{
		Code: ChromiteSand, Name: "Chromite sand, resin-bonded",
		Density:      density(2700, 2500, 2900, asm, ""),
		Conductivity: conductivity(0.85, 0.64, 1.10, source.Derived("diffusivity 3 to 4 · 10⁻⁷ m²/s, seen, × density × specific heat"), ""),
		Heat:         heat(900, 850, 950, wide),
		Water:        dry,
		Binders:      []Binder{Furan, PhenolicUrethane, AlkalinePhenolic, SilicateCO2, SilicateEster},
		bLow:         1400, bHigh: 1600,
	},
	{
		Code: ZirconSand, Name: "Zircon sand, resin-bonded",
		Density:      density(2720, 2600, 2900, poirier, ""),
		Conductivity: conductivity(1.04, 1.04, 1.7, poirier, "another source gives twice the diffusivity"),
		Heat:         heat(840, 670, 1000, poirier),
		Water:        dry,
		Binders:      []Binder{Furan, PhenolicUrethane, AlkalinePhenolic, SilicateCO2, SilicateEster},
		bLow:         1541, bHigh: 2000,
	},
	{
		Code: Plaster, Name: "Plaster, dried",
		Density:      density(1110, 1100, 1120, flemings, ""),
		Conductivity: conductivity(0.35, 0, 0, flemings, "dried; wet plaster differs, and must never meet metal"),
		Heat:         heat(838, 838, 840, flemings),
		Water:        dry,
		Binders:      []Binder{NoBinder},
		bLow:         568, bHigh: 574,
	},
	{
		Code: Investment, Name: "Block investment (mullite), burnt out",
		Density:      density(1650, 1600, 1700, flemings, ""),
		Conductivity: conductivity(0.38, 0, 0, flemings, ""),
		Heat:         heat(794, 750, 838, flemings),
		Water:        dry,
		Binders:      []Binder{NoBinder},
		bLow:         675, bHigh: 736,
	},
}
