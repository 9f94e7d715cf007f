package alloy

import (
	"pourwright/calc/quantity"
	"pourwright/calc/source"
)

// The works that print contraction tables. They give the allowance on the
// casting's size: pattern = casting × (1 + share).
var (
	raoTable   = source.Rao.Memory("table 3.1")
	heineTable = source.Heine.Memory("ch. 2, after the AFS Cast Metals Handbook")
	guideTable = source.EN12890.Memory("guide values in the style of the European pattern standards; the standard itself was not opened")
	dooleyText = source.Dooley.Seen("ch. XXXI, art. 426")
	shopFigure = source.Practice("working figure chosen between the published tables, because none of them splits the metal out")
)

// mmPerM is a row in mm per m.
func mmPerM(upToMM, v float64) Contraction {
	s := quantity.From[quantity.Ratio](v, "mm/m")
	return Contraction{UpTo: quantity.From[quantity.Length](upToMM, "mm"), Free: s, Restrained: s}
}

// inPerFt is a row in inches per foot, free and cored.
func inPerFt(upToIn, free, cored float64) Contraction {
	return Contraction{
		UpTo:       quantity.From[quantity.Length](upToIn, "in"),
		Free:       quantity.From[quantity.Ratio](free, "in/ft"),
		Restrained: quantity.From[quantity.Ratio](cored, "in/ft"),
	}
}

// spanning adds the range that a source prints, in the unit it prints it in.
func (c Contraction) spanning(low, high float64, unit string) Contraction {
	c.Low, c.High = quantity.From[quantity.Ratio](low, unit), quantity.From[quantity.Ratio](high, unit)
	return c
}

// between is a row of which the source prints the range only.
func between(low, high float64, unit string) Contraction {
	s := quantity.From[quantity.Ratio]((low+high)/2, unit)
	return Contraction{Free: s, Restrained: s}.spanning(low, high, unit)
}

func rao(metal string, rows ...Contraction) ContractionTable {
	return ContractionTable{metal, "mm", rows, raoTable}
}

// heine is a table by size for open and for cored work. Where the two kinds
// change at different sizes, each change makes a row.
func heine(metal string, rows ...Contraction) ContractionTable {
	return ContractionTable{metal, "in", rows, heineTable}
}

func guide(metal string, v, low, high float64) ContractionTable {
	return ContractionTable{metal, "mm", []Contraction{mmPerM(0, 10*v).spanning(low, high, "%")}, guideTable}
}

func dooley(metal string, v float64) ContractionTable {
	return ContractionTable{metal, "in", []Contraction{inPerFt(0, v, v)}, dooleyText}
}

// shop is our working figure, free and restrained, in per cent.
func shop(metal string, free, restrained, low, high float64) ContractionTable {
	row := Contraction{Free: quantity.From[quantity.Ratio](free, "%"), Restrained: quantity.From[quantity.Ratio](restrained, "%")}
	return ContractionTable{metal, "mm", []Contraction{row.spanning(low, high, "%")}, shopFigure}
}

var (
	// Heine's bronze is any bronze: 1/8 to 1/4 in per ft.
	heineBronze = heine("bronze of any kind", between(1.0/8, 1.0/4, "in/ft"))
	raoBronze   = rao("bronze of any kind", between(15.5, 22, "mm/m"))
	heineBrass  = heine("brass", inPerFt(0, 3.0/16, 3.0/16))
	// In the cored column, aluminium over 48 in is 1/8 down to 1/16 in per ft.
	heineAluminium = heine("aluminium",
		inPerFt(24, 5.0/32, 5.0/32),
		inPerFt(48, 5.0/32, 9.0/64),
		inPerFt(72, 9.0/64, 1.0/8).spanning(1.0/16, 9.0/64, "in/ft"),
		inPerFt(0, 1.0/8, 1.0/8).spanning(1.0/16, 1.0/8, "in/ft"))
	raoAluminium = rao("aluminium", mmPerM(0, 13))
)

// The tables of each metal, the one to use first at the head: the published
// table that splits the metal by size, then the one that names it, then our
// own figure where no table does. The European guide values never lead, as the
// standard was not opened.
var (
	greyIronContraction = []ContractionTable{
		heine("grey iron",
			inPerFt(24, 1.0/8, 1.0/8),
			inPerFt(36, 1.0/10, 1.0/10),
			inPerFt(48, 1.0/10, 1.0/12),
			inPerFt(0, 1.0/12, 1.0/12)),
		rao("grey iron", mmPerM(600, 10.5), mmPerM(1200, 8.5), mmPerM(0, 7)),
		guide("flake graphite iron", 1.0, 0.5, 1.3),
		shop("grey iron", 1.0, 0.75, 0.7, 1.05),
		dooley("cast iron", 3.0/32),
	}
	ductileIronContraction = []ContractionTable{
		rao("ductile iron", between(8.3, 10.4, "mm/m")),
		guide("ductile iron, not annealed", 1.2, 0.8, 2.0),
		shop("ductile iron; 0.5 to 0.8 % in a rigid mould", 0.9, 0.9, 0, 1.04),
	}
	carbonSteelContraction = []ContractionTable{
		heine("cast steel",
			inPerFt(18, 1.0/4, 1.0/4),
			inPerFt(24, 1.0/4, 3.0/16),
			inPerFt(48, 3.0/16, 3.0/16),
			inPerFt(66, 3.0/16, 5.0/32),
			inPerFt(72, 3.0/16, 1.0/8),
			inPerFt(0, 5.0/32, 1.0/8)),
		rao("plain carbon steel", mmPerM(600, 21), mmPerM(1800, 16), mmPerM(0, 13)),
		guide("cast steel", 2.0, 1.5, 2.5),
		shop("carbon and low-alloy steel", 2.0, 1.3, 1.04, 2.1),
		dooley("steel", 3.0/16),
	}
	siliconBronzeContraction = []ContractionTable{
		shop("silicon bronze; art bronze is often made to 1/4 in per ft", 1.8, 1.8, 1.3, 2.1),
		raoBronze, heineBronze, dooley("bronze", 5.0/32),
	}
	tinBronzeContraction = []ContractionTable{
		shop("tin bronze", 1.4, 1.4, 0.8, 2.0),
		guide("tin bronze", 1.5, 0.8, 2.0),
		raoBronze, heineBronze, dooley("bronze", 5.0/32),
	}
	gunmetalContraction = []ContractionTable{
		rao("gunmetal", between(10, 16, "mm/m")),
		guide("red brass and gunmetal", 1.3, 0.8, 1.6),
		shop("tin bronze and gunmetal", 1.4, 1.4, 0.8, 2.0),
		heineBronze, dooley("bronze", 5.0/32),
	}
	aluminiumBronzeContraction = []ContractionTable{
		rao("aluminium bronze", between(20, 23, "mm/m")),
		guide("aluminium bronze", 2.1, 1.9, 2.3),
		shop("aluminium and manganese bronze", 2.1, 2.1, 1.8, 2.3),
		heineBronze,
	}
	yellowBrassContraction = []ContractionTable{
		heineBrass,
		rao("brass", mmPerM(0, 15.5)),
		guide("brass", 1.2, 0.8, 1.8),
		shop("yellow and red brass", 1.5, 1.5, 1.2, 1.8),
		dooley("yellow brass", 7.0/32),
	}
	aluminiumSiliconContraction = []ContractionTable{
		heineAluminium, raoAluminium,
		guide("aluminium alloys", 1.2, 0.8, 1.5),
		shop("aluminium-silicon; the more silicon, the less", 1.2, 1.2, 1.0, 1.3),
		dooley("aluminium", 7.0/32),
	}
	pureAluminiumContraction = []ContractionTable{
		heineAluminium, raoAluminium,
		shop("pure aluminium, Al-Cu and Al-Mg", 1.45, 1.45, 1.3, 1.7),
		dooley("aluminium", 7.0/32),
	}
	zincContraction = []ContractionTable{
		shop("zinc alloys", 1.3, 1.3, 1.1, 1.5),
		guide("zinc alloys", 1.3, 1.1, 1.5),
		rao("zinc, unalloyed", mmPerM(0, 24)),
		dooley("zinc, unalloyed", 7.0/32),
	}
	pewterContraction = []ContractionTable{
		shop("pewter and tin alloys; measure your own", 0.6, 0.6, 0.4, 2.0),
		guide("white metal", 0.5, 0.4, 0.6),
		rao("white metal", mmPerM(0, 6)),
		dooley("tin, unalloyed", 3.0/16),
	}
)
