package alloy

import "pourwright/calc/source"

var (
	ironTension    = tension(1.872, 0.9, 1.872, iida, "clean iron; sulphur and oxygen can halve it")
	ironEmissivity = share(0.45, 0.28, 0.95, emissivity, "clean melt 0.28 to 0.45, under slag or oxide 0.8 to 0.95")
)

// greyIron is a plain grey iron of 3.3 % C and 2 % Si, CE about 4.0.
var greyIron = &Alloy{
	Code: CodeGreyIron, Name: "Grey iron", Family: GreyIron,
	DensitySolid:  density(7150, 7000, 7300, valencia, "lighter the more graphite"),
	DensityLiquid: density(6950, 6900, 7000, valencia, ""),
	Solidus:       celsius(1150, 1140, 1153, valencia, "stable eutectic; it sinks where the iron undercools or freezes white"),
	Liquidus:      celsius(1200, 1150, 1240, valencia, "for 3.3 % C and 2 % Si; it follows the analysis, down to the eutectic"),
	Latent:        latent(240, 200, 280, valencia, ""),
	HeatSolid:     heat(800, 750, 850, valencia, ""),
	HeatLiquid:    heat(900, 850, 950, valencia, ""),
	Conductivity:  conductivity(30, 25, 35, valencia, "about 46 W/(m·K) when cold"),

	SurfaceTension: ironTension,
	Viscosity:      viscosity(5.5, 5, 6, viscous, ""),
	Emissivity:     ironEmissivity,

	PourThin:      pouring(1360, 1450, pourBands, "walls under 10 mm"),
	PourThick:     pouring(1250, 1300, pourBands, "walls over 40 mm"),
	MinWall:       millimetres(4, 3, 8, walls, "3 to 5 mm in small castings, 6 to 8 mm in large ones"),
	IngateSpeed:   speed(0.5, 0.45, 1.0, campbell, "0.45 m/s by calculation for iron; grey iron is often run at up to 1 m/s without harm (common practice, no source)"),
	FeedShrinkage: percent(1, -1, 3, feeding, "graphite expands as it grows: from needing feed to pushing the mould, by CE, pouring temperature and mould rigidity"),
	MeltLoss:      percent(2, 1, 6, loss, "1 to 3 % in an induction furnace, 3 to 6 % in a cupola"),

	Contractions: greyIronContraction,
	Hazards:      Hazards{Iron: true, Source: source.Practice("plain iron, no zinc or lead but from scrap")},
}

// ductileIron is a ferritic to pearlitic nodular iron of 3.6 % C and 2.5 % Si.
var ductileIron = &Alloy{
	Code: CodeDuctileIron, Name: "Ductile iron", Family: DuctileIron,
	DensitySolid:  density(7100, 7050, 7200, valencia, ""),
	DensityLiquid: density(6900, 6850, 6950, valencia, ""),
	Solidus:       celsius(1140, 1130, 1150, valencia, ""),
	Liquidus:      celsius(1160, 1155, 1170, valencia, "it follows the analysis"),
	Latent:        latent(220, 200, 250, valencia, ""),
	HeatSolid:     heat(750, 700, 800, valencia, ""),
	HeatLiquid:    heat(900, 850, 950, valencia, ""),
	Conductivity:  conductivity(28, 25, 32, valencia, ""),

	SurfaceTension: ironTension,
	Viscosity:      viscosity(6, 5, 7, viscous, ""),
	Emissivity:     ironEmissivity,

	PourThin:      pouring(1365, 1430, pourBands, "upper half of the band 1300 to 1430 °C"),
	PourThick:     pouring(1300, 1365, pourBands, "lower half of the band 1300 to 1430 °C"),
	MinWall:       millimetres(5, 4, 6, walls, ""),
	IngateSpeed:   speed(0.5, 0.45, 0.5, campbell, "0.45 m/s by calculation for iron; magnesium in it makes films, so the freedom of grey iron does not hold"),
	FeedShrinkage: percent(1.5, -2, 5, feeding, "widest scatter of all: mould rigidity, modulus and pouring temperature decide"),
	MeltLoss:      percent(2, 1, 6, loss, "1 to 3 % in an induction furnace, 3 to 6 % in a cupola"),

	Contractions: ductileIronContraction,
	Hazards:      Hazards{Iron: true, Magnesium: true, Source: source.Practice("iron treated with a magnesium alloy")},
}

// carbonSteel is a plain cast steel of 0.2 to 0.3 % C.
var carbonSteel = &Alloy{
	Code: CodeCarbonSteel, Name: "Carbon steel, 0.2–0.3 % C", Family: Steel,
	DensitySolid:  density(7850, 7800, 7870, valencia, ""),
	DensityLiquid: density(7000, 6900, 7035, valencia, ""),
	Solidus:       celsius(1475, 1460, 1490, valencia, "sources print 1460 to 1490 °C"),
	Liquidus:      celsius(1515, 1505, 1520, valencia, ""),
	Latent:        latent(266, 260, 272, valencia, ""),
	HeatSolid:     heat(675, 650, 700, valencia, ""),
	HeatLiquid:    heat(820, 800, 825, valencia, ""),
	Conductivity:  conductivity(31, 30, 33, valencia, ""),

	SurfaceTension: ironTension,
	Viscosity:      viscosity(6, 5.5, 6.5, viscous, ""),
	Emissivity:     ironEmissivity,

	PourThin:      pouring(1600, 1650, pourBands, "upper half of the band 1550 to 1650 °C"),
	PourThick:     pouring(1550, 1600, pourBands, "lower half of the band 1550 to 1650 °C"),
	MinWall:       millimetres(6, 5, 8, walls, "3/16 in at the least, 1/4 in is better"),
	IngateSpeed:   speed(0.5, 0.45, 0.5, campbell, "0.45 m/s by calculation for iron"),
	FeedShrinkage: percent(5, 4, 6, feeding, ""),
	MeltLoss:      percent(3, 0.75, 6, source.DOEMelt.Memory("melting losses over all metals"), "no figure for steel alone"),

	Contractions: carbonSteelContraction,
	Hazards:      Hazards{Iron: true, Source: source.Practice("plain steel, no zinc or lead but from scrap")},
}
