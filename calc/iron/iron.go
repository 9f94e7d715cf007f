// Package iron reads a grey iron from its analysis: carbon equivalent, degree
// of saturation, liquidus and eutectic, the manganese that the sulphur wants,
// how far the iron runs, how strong it is by wall, and whether a wall is likely
// to chill.
//
// Where the trade has several formulas they stand side by side with their
// sources, and the answer is their span. They were fitted to plain grey irons
// without much alloying; the strength depends on inoculation and cooling as
// much as on the analysis, and for chill there is no safe formula at all:
// break a wedge.
package iron

import (
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// Input is the analysis and what is to be cast of it.
type Input struct {
	// Carbon, in all its forms.
	Carbon quantity.Ratio `json:"carbon" label:"Carbon" hint:"Total carbon, by the analysis" min:"1.8 %" max:"4.6 %"`
	// Silicon after inoculation, if that is analysed.
	Silicon quantity.Ratio `json:"silicon" label:"Silicon" hint:"By the analysis, or the last heat's from the same charge" min:"0.05 %" max:"5 %"`
	// The rest of the analysis; what is left out counts as none.
	Manganese  quantity.Opt[quantity.Ratio] `json:"manganese" label:"Manganese" hint:"By the analysis" min:"0 %" max:"3 %"`
	Phosphorus quantity.Opt[quantity.Ratio] `json:"phosphorus" label:"Phosphorus" hint:"By the analysis; little in steel and pig, more in old stove plate" min:"0 %" max:"2 %"`
	Sulphur    quantity.Opt[quantity.Ratio] `json:"sulphur" label:"Sulphur" hint:"By the analysis; cupola iron has most" min:"0 %" max:"0.5 %"`
	Nickel     quantity.Opt[quantity.Ratio] `json:"nickel" label:"Nickel" hint:"By the analysis, if it was asked for" min:"0 %" max:"3 %"`
	Chromium   quantity.Opt[quantity.Ratio] `json:"chromium" label:"Chromium" hint:"By the analysis, if it was asked for" min:"0 %" max:"2 %"`

	// Wall is the wall that must come right.
	Wall quantity.Opt[quantity.Length] `json:"wall" label:"Ruling wall" part:"Casting" link:"metal" hint:"Measure away from bosses; the thinnest for chill, the one under load for strength" min:"1 mm" max:"500 mm"`
	// PourTemperature is the metal's temperature as it leaves the lip.
	PourTemperature quantity.Opt[quantity.Temperature] `json:"pour_temperature" label:"Pouring temperature" link:"metal" hint:"At the lip of the ladle" min:"1150 °C" max:"1600 °C"`
	// Grade is the strength that is wanted.
	Grade quantity.Opt[string] `json:"grade" label:"Grade wanted" hint:"EN 1561: the strength in N/mm² of a separately cast bar of 30 mm" choices:"150:GJL-150|200:GJL-200|250:GJL-250|300:GJL-300|350:GJL-350"`
	// Matrix picks the margin of manganese over what sulphur binds.
	Matrix quantity.Opt[string] `json:"matrix" label:"Manganese margin" hint:"What the casting is to be: soft, usual, or strong" default:"grey" choices:"ferritic:Ferritic iron, 0.15 %|grey:Grey iron, 0.3 %|pearlitic:Pearlitic iron, 0.35 %"`
}

// Output is what the analysis says.
type Output struct {
	Kind        string          `json:"kind" label:"The iron is"`
	CE          quantity.Ratio  `json:"ce" label:"Carbon equivalent" step:"CE" hint:"C + (Si + P)/3"`
	CEL         quantity.Ratio  `json:"cel" label:"Carbon equivalent for the liquidus" step:"CEL" hint:"C + Si/4 + P/2"`
	Saturation  quantity.Number `json:"saturation" label:"Degree of saturation" step:"S_c" hint:"1 is the eutectic"`
	Equivalents []Reading       `json:"equivalents"`
	Saturations []Degree        `json:"saturations"`
	Liquiduses  []Liquidus      `json:"liquiduses"`

	LiquidusLow   quantity.Opt[quantity.Temperature] `json:"liquidus_low" label:"Liquidus, lowest of the formulas" step:"T_low"`
	LiquidusHigh  quantity.Opt[quantity.Temperature] `json:"liquidus_high" label:"Liquidus, highest of the formulas" step:"T_high"`
	Eutectic      quantity.Temperature               `json:"eutectic" label:"Graphite eutectic" step:"T_E" hint:"In equilibrium; a real iron undercools below it"`
	WhiteEutectic quantity.Temperature               `json:"white_eutectic" label:"White eutectic" step:"T_W" hint:"An iron that undercools to here freezes white"`
	Range         quantity.Opt[quantity.TempDiff]    `json:"range" label:"Freezing range" step:"Delta_f" hint:"From the highest liquidus to the graphite eutectic"`
	Superheat     quantity.Opt[quantity.TempDiff]    `json:"superheat" label:"Superheat when poured" step:"Delta_T" hint:"Over the highest liquidus"`
	PourLow       quantity.Temperature               `json:"pour_low" label:"Usual pouring temperature, from" step:"T_1"`
	PourHigh      quantity.Temperature               `json:"pour_high" label:"Usual pouring temperature, to" step:"T_2"`

	ManganeseNeeded quantity.Opt[quantity.Ratio] `json:"manganese_needed" label:"Manganese that the sulphur wants" step:"Mn_n"`
	ManganeseShort  quantity.Opt[quantity.Ratio] `json:"manganese_short" label:"Manganese short" step:"Mn_s"`
	Ferromanganese  quantity.Opt[quantity.Ratio] `json:"ferromanganese" label:"Ferromanganese to make it up" step:"F" hint:"Share of the melt; 78 % Mn, of which 85 % reaches the melt"`

	Spiral   quantity.Opt[quantity.Length] `json:"spiral" label:"Fluidity spiral" step:"L"`
	Fluidity quantity.Opt[quantity.Number] `json:"fluidity" label:"Fluidity factor K" step:"K" hint:"Spiral over 40 in; it goes into the pouring time"`

	Strengths    []Strength                      `json:"strengths"`
	StrengthLow  quantity.Opt[quantity.Pressure] `json:"strength_low" label:"Tensile strength in a 30 mm bar, lowest" step:"R_low"`
	StrengthHigh quantity.Opt[quantity.Pressure] `json:"strength_high" label:"Tensile strength in a 30 mm bar, highest" step:"R_high"`
	Reaches      string                          `json:"reaches" label:"Grade that it reaches"`
	Grades       []Grade                         `json:"grades"`
	CarbonWanted quantity.Opt[quantity.Ratio]    `json:"carbon_wanted" label:"Carbon for the grade wanted" step:"C_g" hint:"At the same silicon and phosphorus, by the lowest formula"`

	LeastCE quantity.Opt[quantity.Ratio] `json:"least_ce" label:"Carbon equivalent to keep the wall grey" step:"CE_w" hint:"A guide of the trade, not a safe limit"`
}

// Reading is a carbon equivalent by one formula.
type Reading struct {
	Name  string         `json:"name" label:"Formula"`
	Value quantity.Ratio `json:"value" label:"Carbon equivalent" step:"E"`
}

// Degree is a degree of saturation by one formula.
type Degree struct {
	Name  string          `json:"name" label:"Formula"`
	Value quantity.Number `json:"value" label:"Degree of saturation" step:"S"`
}

// Liquidus is one by one formula.
type Liquidus struct {
	Name  string               `json:"name" label:"Formula"`
	Value quantity.Temperature `json:"value" label:"Liquidus" step:"T_L"`
}

// Strength is an estimate by one formula.
type Strength struct {
	Name  string            `json:"name" label:"Formula"`
	Value quantity.Pressure `json:"value" label:"Tensile strength, 30 mm bar" step:"R_m"`
}

// Grade is what a grade of EN 1561 may be expected to have in the wall.
type Grade struct {
	Name     string                          `json:"name" label:"Grade"`
	Expected quantity.Opt[quantity.Pressure] `json:"expected" label:"Expected in the wall" step:"R_w"`
}

// Assess reads the analysis.
//
// The strength and the liquidus belong to irons below the eutectic and are
// left out above it. Elements that are not given count as none.
func Assess(in Input, p *working.Paper) (Output, error) {
	in, faults := form.Ready(in)
	if err := faults.Err(); err != nil {
		return Output{}, err
	}
	j := &job{in: in, p: p}
	j.read()
	j.equivalents()
	j.saturations()
	j.temperatures()
	j.balance()
	j.spiral()
	j.strength()
	j.wall()
	j.remark()
	return j.out, nil
}
