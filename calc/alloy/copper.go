package alloy

import "pourwright/calc/source"

var (
	copperTension    = tension(1.285, 0, 0, iida, "clean copper")
	copperEmissivity = share(0.5, 0.15, 0.8, emissivity, "clean melt 0.1 to 0.2, oxidised copper alloys 0.6 to 0.8")
	copperIngate     = speed(0.5, 0.4, 0.5, campbell, "0.40 m/s by calculation for copper")
	copperMeltLoss   = percent(2, 1, 3, loss, "")
	copperPouring    = source.CDA.Memory("pouring temperatures, light and heavy castings")
)

// siliconBronze is UNS C87300: 95 Cu, 4 Si, 1 Mn.
var siliconBronze = &Alloy{
	Code: CodeSiliconBronze, Name: "Silicon bronze C87300", Family: Copper,
	DensitySolid:  density(8360, 8300, 8530, cdaSeen, "0.302 lb/in³ on the data sheet"),
	DensityLiquid: density(7700, 0, 0, likeness, ""),
	Solidus:       celsius(821, 0, 0, cdaSeen, "1510 °F"),
	Liquidus:      celsius(971, 916, 971, cdaSeen, "1780 °F on the data sheet of C87300; another list has 916 °C, which is that of C87500"),
	Latent:        latent(220, 210, 230, likeness, ""),
	HeatSolid:     heat(430, 420, 430, likeness, ""),
	HeatLiquid:    heat(485, 470, 500, likeness, ""),
	Conductivity:  conductivity(38, 30, 50, likeness, "28 W/(m·K) when cold"),

	SurfaceTension: copperTension,
	Viscosity:      viscosity(3.5, 3, 4, viscous, ""),
	Emissivity:     copperEmissivity,

	PourThin:      pouring(1095, 1175, copperPouring, ""),
	PourThick:     pouring(1010, 1095, copperPouring, ""),
	MinWall:       millimetres(3.5, 2.5, 5, walls, "as for brass and tin bronze"),
	IngateSpeed:   copperIngate,
	FeedShrinkage: percent(5.5, 5, 6, feeding, ""),
	MeltLoss:      copperMeltLoss,

	Contractions: siliconBronzeContraction,
	Hazards:      Hazards{Zinc: 0.0025, Lead: 0.0009, Source: cda},
}

// tinBronze is UNS C90300: 88 Cu, 8 Sn, 4 Zn.
var tinBronze = &Alloy{
	Code: CodeTinBronze, Name: "Tin bronze C90300", Family: Copper,
	DensitySolid:  density(8800, 0, 0, cdaSeen, ""),
	DensityLiquid: density(8000, 0, 0, likeness, ""),
	Solidus:       celsius(854, 0, 0, cdaSeen, ""),
	Liquidus:      celsius(1000, 0, 0, cdaSeen, ""),
	Latent:        latent(195, 190, 200, likeness, ""),
	HeatSolid:     heat(420, 377, 430, likeness, "377 J/(kg·K) when cold, seen"),
	HeatLiquid:    heat(470, 460, 490, likeness, ""),
	Conductivity:  conductivity(100, 80, 120, likeness, "74.8 W/(m·K) when cold, seen"),

	SurfaceTension: copperTension,
	Viscosity:      viscosity(4.5, 4, 5, viscous, ""),
	Emissivity:     copperEmissivity,

	PourThin:      pouring(1150, 1260, copperPouring, ""),
	PourThick:     pouring(1040, 1150, copperPouring, ""),
	MinWall:       millimetres(3.5, 2.5, 5, walls, ""),
	IngateSpeed:   copperIngate,
	FeedShrinkage: percent(5.5, 5, 6, feeding, "long freezing: fine porosity is spread through it whatever the riser"),
	MeltLoss:      copperMeltLoss,

	Contractions: tinBronzeContraction,
	Hazards:      Hazards{Zinc: 0.05, Lead: 0.003, Source: cda},
}

// tinBronze905 is UNS C90500: 88 Cu, 10 Sn, 2 Zn, the old Admiralty gunmetal.
var tinBronze905 = &Alloy{
	Code: CodeTinBronze905, Name: "Tin bronze C90500 (88-10-2)", Family: Copper,
	DensitySolid:  density(8720, 0, 0, cdaSeen, "0.315 lb/in³ on the data sheet"),
	DensityLiquid: density(7950, 0, 0, likeness, ""),
	Solidus:       celsius(854, 0, 0, cdaSeen, "1570 °F"),
	Liquidus:      celsius(999, 0, 0, cdaSeen, "1830 °F"),
	Latent:        latent(195, 190, 200, likeness, ""),
	HeatSolid:     heat(420, 377, 430, likeness, ""),
	HeatLiquid:    heat(470, 460, 490, likeness, ""),
	Conductivity:  conductivity(100, 80, 120, likeness, "taken like C90300; 74.8 W/(m·K) when cold, seen"),

	SurfaceTension: copperTension,
	Viscosity:      viscosity(4.5, 4, 5, viscous, ""),
	Emissivity:     copperEmissivity,

	PourThin:      pouring(1150, 1260, copperPouring, "taken like C90300"),
	PourThick:     pouring(1040, 1150, copperPouring, "taken like C90300"),
	MinWall:       millimetres(3.5, 2.5, 5, walls, ""),
	IngateSpeed:   copperIngate,
	FeedShrinkage: percent(5.5, 5, 6, feeding, "long freezing: fine porosity is spread through it whatever the riser"),
	MeltLoss:      copperMeltLoss,

	Contractions: tinBronzeContraction,
	Hazards:      Hazards{Zinc: 0.03, Lead: 0.003, Source: cda},
}

// gunmetal is UNS C83600: 85 Cu, 5 Sn, 5 Pb, 5 Zn, leaded red brass.
var gunmetal = &Alloy{
	Code: CodeGunmetal, Name: "Gunmetal C83600 (85-5-5-5, leaded)", Family: Copper,
	DensitySolid:  density(8830, 0, 0, cda, ""),
	DensityLiquid: density(7950, 7950, 8000, likeness, ""),
	Solidus:       celsius(854, 0, 0, cda, ""),
	Liquidus:      celsius(1010, 0, 0, cda, ""),
	Latent:        latent(185, 180, 190, likeness, ""),
	HeatSolid:     heat(420, 380, 430, likeness, ""),
	HeatLiquid:    heat(460, 460, 480, likeness, ""),
	Conductivity:  conductivity(80, 72, 115, likeness, "72 W/(m·K) when cold"),

	SurfaceTension: copperTension,
	Viscosity:      viscosity(4, 0, 0, viscous, ""),
	Emissivity:     copperEmissivity,

	PourThin:      pouring(1150, 1290, copperPouring, "other bands end at 1230 °C"),
	PourThick:     pouring(1065, 1175, copperPouring, ""),
	MinWall:       millimetres(3.5, 2.5, 5, walls, ""),
	IngateSpeed:   copperIngate,
	FeedShrinkage: percent(5.5, 5, 6, feeding, "long freezing: fine porosity is spread through it whatever the riser"),
	MeltLoss:      copperMeltLoss,

	Contractions: gunmetalContraction,
	Hazards:      Hazards{Zinc: 0.06, Lead: 0.06, Source: cda},
}

// aluminiumBronze is UNS C95400: 85 Cu, 11 Al, 4 Fe.
var aluminiumBronze = &Alloy{
	Code: CodeAluminiumBronze, Name: "Aluminium bronze C95400", Family: Copper,
	DensitySolid:  density(7450, 0, 0, cda, ""),
	DensityLiquid: density(6900, 0, 0, likeness, ""),
	Solidus:       celsius(1027, 0, 0, source.MakeItFrom.Seen("C95400"), ""),
	Liquidus:      celsius(1038, 0, 0, source.MakeItFrom.Seen("C95400"), ""),
	Latent:        latent(230, 0, 0, source.MakeItFrom.Seen("C95400, an estimate there"), ""),
	HeatSolid:     heat(480, 440, 480, likeness, "440 J/(kg·K) when cold, seen"),
	HeatLiquid:    heat(500, 500, 560, likeness, ""),
	Conductivity:  conductivity(65, 59, 65, likeness, "59 W/(m·K) when cold, seen"),

	SurfaceTension: copperTension,
	Viscosity:      viscosity(5.5, 5, 6, viscous, ""),
	Emissivity:     copperEmissivity,

	PourThin:      pouring(1150, 1230, copperPouring, ""),
	PourThick:     pouring(1090, 1175, copperPouring, ""),
	MinWall:       millimetres(5, 4, 6, walls, ""),
	IngateSpeed:   speed(0.4, 0.25, 0.5, campbell, "forms a strong oxide film: keep to the lower end"),
	FeedShrinkage: percent(4.5, 4, 5, feeding, ""),
	MeltLoss:      copperMeltLoss,

	Contractions: aluminiumBronzeContraction,
	Hazards:      Hazards{Source: cda},
}

// yellowBrass is UNS C85700: 63 Cu, 35 Zn, 1 Pb, 1 Sn.
var yellowBrass = &Alloy{
	Code: CodeYellowBrass, Name: "Yellow brass C85700 (leaded)", Family: Copper,
	DensitySolid:  density(8410, 0, 0, cda, ""),
	DensityLiquid: density(7600, 7600, 7700, likeness, ""),
	Solidus:       celsius(913, 0, 0, cda, ""),
	Liquidus:      celsius(941, 0, 0, cda, ""),
	Latent:        latent(180, 170, 190, likeness, ""),
	HeatSolid:     heat(430, 420, 430, likeness, ""),
	HeatLiquid:    heat(490, 0, 0, likeness, ""),
	Conductivity:  conductivity(100, 84, 120, likeness, "84 W/(m·K) when cold"),

	SurfaceTension: copperTension,
	Viscosity:      viscosity(3.5, 3, 4, viscous, ""),
	Emissivity:     copperEmissivity,

	PourThin:      pouring(1065, 1150, copperPouring, "zinc boils at 907 °C when pure: the hotter, the more it fumes; other bands are 980 to 1100 °C"),
	PourThick:     pouring(1010, 1095, copperPouring, "other bands are 980 to 1100 °C"),
	MinWall:       millimetres(3.5, 2.5, 5, walls, ""),
	IngateSpeed:   copperIngate,
	FeedShrinkage: percent(5.5, 5, 6, feeding, ""),
	MeltLoss:      percent(3, 1, 5, loss, "1 to 3 % as dross, and 1 to 5 % of the zinc as fume"),

	Contractions: yellowBrassContraction,
	Hazards:      Hazards{Zinc: 0.4, Lead: 0.015, Source: cda},
}
