package alloy

import "pourwright/calc/source"

// za12 is the zinc foundry alloy with 11 % Al and 1 % Cu.
var za12 = &Alloy{
	Code: CodeZA12, Name: "Zinc-aluminium ZA-12", Family: Zinc,
	DensitySolid:  density(6030, 0, 0, source.ASM15.Memory("zinc alloys"), ""),
	DensityLiquid: density(5600, 5600, 5700, likeness, ""),
	Solidus:       celsius(377, 377, 380, source.ASM15.Memory("zinc alloys"), "a database rounds it to 380 °C, seen"),
	Liquidus:      celsius(432, 430, 432, source.ASM15.Memory("zinc alloys"), "a database rounds it to 430 °C, seen"),
	Latent:        latent(119, 118, 120, source.MakeItFrom.Seen("ZA-12: 120 kJ/kg"), ""),
	HeatSolid:     heat(480, 450, 480, likeness, "450 J/(kg·K) when cold, seen"),
	HeatLiquid:    heat(520, 510, 520, likeness, ""),
	Conductivity:  conductivity(115, 100, 120, likeness, "120 W/(m·K) when cold, seen"),

	SurfaceTension: tension(0.782, 0, 0, iida, "clean zinc"),
	Viscosity:      viscosity(3.5, 0, 0, viscous, ""),
	Emissivity:     share(0.2, 0.1, 0.3, emissivity, "oxidised zinc"),

	PourThin:      pouring(500, 550, pourBands, "upper half of the band 450 to 550 °C; another band is 430 to 600 °C"),
	PourThick:     pouring(450, 500, pourBands, "lower half of the band 450 to 550 °C"),
	MinWall:       millimetres(3, 0, 0, walls, ""),
	IngateSpeed:   speed(0.5, 0.37, 0.5, campbell, "0.37 m/s by calculation for zinc"),
	FeedShrinkage: percent(4.5, 4, 5, feeding, ""),
	MeltLoss:      percent(2, 0.75, 6, source.DOEMelt.Memory("melting losses over all metals"), "no figure for zinc alloys alone"),

	Contractions: zincContraction,
	Hazards:      Hazards{Zinc: 0.89, Source: source.ASTMB86.Memory("ZA-12")},
}

// pewter is the lead-free casting pewter with 92 % Sn, 6 to 7.5 % Sb and copper.
var pewter = &Alloy{
	Code: CodePewter, Name: "Pewter, lead-free (92 % Sn)", Family: Tin,
	DensitySolid:  density(7280, 7280, 7300, source.ASTMB560.Memory("weakly remembered"), ""),
	DensityLiquid: density(6950, 6900, 6950, likeness, ""),
	Solidus:       celsius(244, 240, 250, source.ASTMB560.Memory("weakly remembered"), "the 170 to 230 °C often quoted is for leaded pewter"),
	Liquidus:      celsius(295, 0, 0, source.ASTMB560.Memory("weakly remembered"), "of the copper-rich crystals; most of it is liquid at 250 °C"),
	Latent:        latent(61, 60, 63, likeness, ""),
	HeatSolid:     heat(240, 0, 0, likeness, ""),
	HeatLiquid:    heat(250, 0, 0, likeness, ""),
	Conductivity:  conductivity(55, 50, 60, likeness, ""),

	SurfaceTension: tension(0.544, 0, 0, source.Iida.Memory("tin at its melting point"), "clean tin"),
	Viscosity:      viscosity(1.8, 0, 0, viscous, ""),
	Emissivity:     share(0.2, 0.1, 0.3, source.Practice("taken like oxidised zinc"), ""),

	PourThin:      pouring(315, 340, source.Practice("upper half of the studio band 290 to 340 °C"), ""),
	PourThick:     pouring(297, 315, source.Practice("lower half of the studio band 290 to 340 °C, from the liquidus up"), ""),
	MinWall:       millimetres(1.5, 1, 2, source.Practice("studio practice"), ""),
	IngateSpeed:   speed(0.5, 0.33, 0.5, campbell, "0.33 m/s by calculation for tin"),
	FeedShrinkage: percent(2.5, 2, 3, feeding, ""),
	MeltLoss:      percent(2, 0.75, 6, source.DOEMelt.Memory("melting losses over all metals"), "no figure for pewter alone"),

	Contractions: pewterContraction,
	Hazards:      Hazards{Lead: 0.0005, Source: source.ASTMB560.Memory("lead limit")},
}
