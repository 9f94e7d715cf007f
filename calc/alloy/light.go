package alloy

import "pourwright/calc/source"

var (
	aluTension    = tension(0.914, 0, 0, iida, "clean aluminium, oxide skin apart")
	aluEmissivity = share(0.2, 0.05, 0.4, emissivity, "clean melt 0.05 to 0.1, under dross 0.2 to 0.4")
	aluIngate     = speed(0.5, 0.25, 0.5, campbell, "0.50 m/s by calculation for aluminium; it forms films, so slower is better")
	aluMeltLoss   = percent(3, 1, 5, loss, "as dross")
	aluWall       = millimetres(4, 3, 5, walls, "1/8 in at the least, 3/16 in is better")
	aluPourThin   = pouring(700, 760, pourBands, "defects were seen to grow over 750 °C")
	aluPourThick  = pouring(670, 730, pourBands, "a German handbook goes down to 620 °C for thick walls")
)

// alSiMg is A356: 7 % Si, 0.35 % Mg.
var alSiMg = &Alloy{
	Code: CodeAlSiMg, Name: "Al-Si-Mg A356", Family: Aluminium,
	DensitySolid:  density(2680, 2670, 2690, source.MakeItFrom.Seen("A356.0"), ""),
	DensityLiquid: density(2400, 2400, 2420, mills, ""),
	Solidus:       celsius(557, 540, 567, source.MakeItFrom.Seen("A356.0"), "the last eutectic may freeze as low as 540 °C"),
	Liquidus:      celsius(613, 610, 615, source.MakeItFrom.Seen("A356.0"), ""),
	Latent:        latent(425, 389, 430, mills, "a property list has 389 kJ/kg, seen, which is less than pure aluminium"),
	HeatSolid:     heat(1030, 960, 1100, mills, ""),
	HeatLiquid:    heat(1160, 1080, 1160, mills, ""),
	Conductivity:  conductivity(157, 150, 167, mills, ""),

	SurfaceTension: aluTension,
	Viscosity:      viscosity(1.25, 1.1, 1.4, viscous, ""),
	Emissivity:     aluEmissivity,

	PourThin:      aluPourThin,
	PourThick:     aluPourThick,
	MinWall:       aluWall,
	IngateSpeed:   aluIngate,
	FeedShrinkage: percent(5.75, 5, 6.5, feeding, ""),
	MeltLoss:      aluMeltLoss,

	Contractions: aluminiumSiliconContraction,
	Hazards:      Hazards{Aluminium: true, Zinc: 0.001, Source: source.AluAssoc.Memory("A356.0")},
}

// alSiCu is 319: 6 % Si, 3.5 % Cu.
var alSiCu = &Alloy{
	Code: CodeAlSiCu, Name: "Al-Si-Cu 319", Family: Aluminium,
	DensitySolid:  density(2790, 0, 0, mills, "taken like LM4"),
	DensityLiquid: density(2490, 2490, 2500, mills, "taken like LM4"),
	Solidus:       celsius(516, 515, 540, source.ASM15.Memory("319.0"), "a database rounds it to 540 °C; LM4 525 °C"),
	Liquidus:      celsius(604, 600, 625, source.ASM15.Memory("319.0"), "LM4 625 °C"),
	Latent:        latent(392, 389, 395, mills, "taken like LM4"),
	HeatSolid:     heat(1020, 960, 1080, mills, ""),
	HeatLiquid:    heat(1130, 1080, 1130, mills, ""),
	Conductivity:  conductivity(130, 120, 140, mills, "109 W/(m·K) when cold"),

	SurfaceTension: aluTension,
	Viscosity:      viscosity(1.2, 1.1, 1.3, viscous, ""),
	Emissivity:     aluEmissivity,

	PourThin:      aluPourThin,
	PourThick:     aluPourThick,
	MinWall:       aluWall,
	IngateSpeed:   aluIngate,
	FeedShrinkage: percent(5.5, 5, 6, feeding, ""),
	MeltLoss:      aluMeltLoss,

	Contractions: aluminiumSiliconContraction,
	Hazards:      Hazards{Aluminium: true, Zinc: 0.01, Source: source.AluAssoc.Memory("319.0")},
}

// alSi is 413: 12 % Si, near the eutectic.
var alSi = &Alloy{
	Code: CodeAlSi, Name: "Al-Si 413 (12 % Si)", Family: Aluminium,
	DensitySolid:  density(2660, 2650, 2660, source.MatWeb.Seen("413.0"), ""),
	DensityLiquid: density(2450, 2400, 2450, mills, ""),
	Solidus:       celsius(574, 574, 580, source.ASM15.Memory("413.0"), "a database rounds it to 580 °C"),
	Liquidus:      celsius(582, 582, 590, source.ASM15.Memory("413.0"), "a database rounds it to 590 °C"),
	Latent:        latent(480, 389, 570, mills, "389 in one list, 570 by mixture in another"),
	HeatSolid:     heat(1035, 970, 1100, mills, ""),
	HeatLiquid:    heat(1150, 1080, 1150, mills, ""),
	Conductivity:  conductivity(140, 121, 140, mills, "121 W/(m·K) when cold"),

	SurfaceTension: aluTension,
	Viscosity:      viscosity(1.1, 0, 0, viscous, ""),
	Emissivity:     aluEmissivity,

	PourThin:      aluPourThin,
	PourThick:     aluPourThick,
	MinWall:       aluWall,
	IngateSpeed:   aluIngate,
	FeedShrinkage: percent(4.5, 4, 5, feeding, ""),
	MeltLoss:      aluMeltLoss,

	Contractions: aluminiumSiliconContraction,
	Hazards:      Hazards{Aluminium: true, Zinc: 0.005, Source: source.AluAssoc.Memory("413.0")},
}

// aluminium is the commercially pure metal.
var aluminium = &Alloy{
	Code: CodeAluminium, Name: "Aluminium, pure", Family: Aluminium,
	DensitySolid:  density(2700, 0, 0, valencia, ""),
	DensityLiquid: density(2377, 2370, 2377, assael, ""),
	Solidus:       celsius(660.3, 0, 0, valencia, "fixed point"),
	Liquidus:      celsius(660.3, 0, 0, valencia, "fixed point"),
	Latent:        latent(397, 0, 0, valencia, ""),
	HeatSolid:     heat(1080, 1080, 1180, valencia, "mean over its cooling; 1180 J/(kg·K) near the melting point"),
	HeatLiquid:    heat(1180, 1177, 1180, valencia, ""),
	Conductivity:  conductivity(210, 0, 0, valencia, ""),

	SurfaceTension: aluTension,
	Viscosity:      viscosity(1.34, 0, 0, assaelMu, ""),
	Emissivity:     aluEmissivity,

	PourThin:      pouring(720, 760, source.Practice("taken from the aluminium-silicon alloys, raised for the higher melting point"), "defects were seen to grow over 750 °C"),
	PourThick:     pouring(690, 730, source.Practice("taken from the aluminium-silicon alloys, raised for the higher melting point"), ""),
	MinWall:       aluWall,
	IngateSpeed:   aluIngate,
	FeedShrinkage: percent(7.5, 7, 8, feeding, ""),
	MeltLoss:      aluMeltLoss,

	Contractions: pureAluminiumContraction,
	Hazards:      Hazards{Aluminium: true, Source: source.AluAssoc.Memory("1xx.x")},
}
