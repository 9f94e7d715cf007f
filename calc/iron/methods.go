package iron

import "pourwright/calc/source"

// analysis is in per cent by mass.
type analysis struct{ C, Si, Mn, P, S, Ni, Cr float64 }

// reading is a formula for a carbon equivalent, per cent.
type reading struct {
	name, formula string
	of            func(a analysis) float64
	source        source.Ref
}

var readings = []reading{
	{"Classic, for the eutectic", "C + (Si + P) / 3", func(a analysis) float64 { return a.C + (a.Si+a.P)/3 },
		source.Heine.Memory("carbon equivalent")},
	{"BCIRA, for the liquidus", "C + Si / 4 + P / 2", func(a analysis) float64 { return a.C + a.Si/4 + a.P/2 },
		source.BCIRA.Memory("carbon equivalent liquidus")},
	{"Koriyama, for the liquidus", "C + 0.23 * Si - 0.03 * Mn + 0.32 * P + 0.64 * S + 0.02 * Ni + 0.06 * Cr",
		func(a analysis) float64 {
			return a.C + 0.23*a.Si - 0.03*a.Mn + 0.32*a.P + 0.64*a.S + 0.02*a.Ni + 0.06*a.Cr
		},
		source.Koriyama.Seen("carbon equivalent of the liquidus")},
}

// degree is a formula for the degree of saturation: carbon over the carbon of
// the eutectic at this silicon and phosphorus. C_E is the carbon of the plain
// iron-carbon eutectic, per cent.
type degree struct {
	name, formula string
	eutectic      float64
	of            func(a analysis, CE float64) float64
	source        source.Ref
}

var degrees = []degree{
	{"giesserei-praxis", "C / (C_E - 0.31 * Si - 0.27 * P)", 4.26,
		func(a analysis, e float64) float64 { return a.C / (e - 0.31*a.Si - 0.27*a.P) }, source.Giesserei.Seen("degree of saturation")},
	{"By thirds, eutectic at 4.23 %", "C / (C_E - (Si + P) / 3)", 4.23,
		func(a analysis, e float64) float64 { return a.C / (e - (a.Si+a.P)/3) }, source.Practice("a Japanese dictionary of foundry terms, seen")},
	{"By thirds, eutectic at 4.3 %", "C / (C_E - (Si + P) / 3)", 4.3,
		func(a analysis, e float64) float64 { return a.C / (e - (a.Si+a.P)/3) }, source.Heine.Memory("carbon equivalent 4.3 at the eutectic")},
	{"Phosphorus as a third", "C / (C_E - 0.31 * Si - 0.33 * P)", 4.26,
		func(a analysis, e float64) float64 { return a.C / (e - 0.31*a.Si - 0.33*a.P) }, source.Collaud.Memory("degree of saturation")},
}

// linear is a straight line in the carbon equivalent of the liquidus or the
// degree of saturation: start less fall times it.
type linear struct {
	name        string
	start, fall float64
	source      source.Ref
}

// liquiduses are lines in CEL, °C and K for each per cent, below the eutectic
// only. Koriyama's own stands beside them, in all its elements.
var liquiduses = []linear{
	{"BCIRA", 1664, 124, source.BCIRA.Memory("liquidus from the carbon equivalent")},
	{"Stefanescu", 1669, 124, source.Stefanescu.Memory("liquidus of cast iron, a variant")},
	{"Thermal analysis", 14.45 / 0.0089, 1 / 0.0089, source.BCIRA.Memory("thermal analysis: CEL = 14.45 − 0.0089 T")},
}

var koriyama = source.Koriyama.Seen("liquidus of cast iron")

// strengths are lines in the degree of saturation, MPa, for flake irons of
// normal strength in a bar of 30 mm, below the eutectic only.
var strengths = []linear{
	{"1000 − 800 Sc", 1000, 800, source.Giesserei.Seen("normal strength")},
	{"981 − 785 Sc", 981, 785, source.Giesserei.Seen("normal strength, in the older units")},
	{"1000 − 809 Sc", 1000, 809, source.Collaud.Memory("strength of grey iron from the degree of saturation")},
}

// The eutectic lies where the sources put it between these carbon equivalents.
const (
	eutecticLow  = 4.2
	eutecticHigh = 4.3
)

// Below and above these degrees of saturation no bars are known to stand
// behind the strength.
const leastSaturation = 0.75

// margins are what is wanted of manganese over that which sulphur binds, per
// cent.
var margins = map[string]float64{"ferritic": 0.15, "grey": 0.3, "pearlitic": 0.35}

// The manganese rule and the ferromanganese that makes up for want of it.
var (
	manganeseRule  = source.Heine.Memory("manganese for sulphur: 1.7 S + 0.3 %; 0.15 and 0.35 % are variants for ferritic and pearlitic iron")
	ferromanganese = source.Practice("high-carbon ferromanganese of 75 to 80 % Mn; 80 to 90 % of it reaches the melt, recalled")
)
