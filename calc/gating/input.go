package gating

import (
	"pourwright/calc/alloy"
	"pourwright/calc/flow"
	"pourwright/calc/quantity"
)

// ChokeAt is where the narrowest section is.
type ChokeAt string

// The places of the choke.
const (
	Narrowest ChokeAt = "narrowest"
	InRunner  ChokeAt = "runner"
)

// Choices lists the places for a form.
func (ChokeAt) Choices() [][2]string {
	return [][2]string{{string(Narrowest), "The narrowest section of the ratio"}, {string(InRunner), "A choke of its own where the runner begins"}}
}

// Entry is the edge between basin and sprue.
type Entry string

// The edges.
const (
	Sharp   Entry = "sharp"
	Rounded Entry = "rounded"
)

// Choices lists the edges for a form.
func (Entry) Choices() [][2]string {
	return [][2]string{{string(Sharp), "Sharp edge"}, {string(Rounded), "Well rounded"}}
}

// Form is the cross-section of the sprue.
type Form string

// The cross-sections.
const (
	Round  Form = "round"
	Square Form = "square"
)

// Choices lists the cross-sections for a form.
func (Form) Choices() [][2]string {
	return [][2]string{{string(Round), "Round"}, {string(Square), "Square"}}
}

// Branch is how the ingates leave the runner.
type Branch string

// The branches.
const (
	Turning  Branch = "turn"
	Straight Branch = "straight"
)

// Choices lists the branches for a form.
func (Branch) Choices() [][2]string {
	return [][2]string{{string(Turning), "Square off the runner"}, {string(Straight), "In line with the runner"}}
}

// Place is the stretch of the way that a fitting stands in.
type Place string

// The stretches.
const (
	InSprue    Place = "sprue"
	InARunner  Place = "runner"
	InAnIngate Place = "ingate"
)

// Choices lists the stretches for a form.
func (Place) Choices() [][2]string {
	return [][2]string{{string(InSprue), "In the sprue"}, {string(InARunner), "In the runner"}, {string(InAnIngate), "In the ingate"}}
}

// Fit is the sort of a fitting.
type Fit string

// The sorts.
const (
	Elbow   Fit = "elbow"
	Bend    Fit = "bend"
	OwnLoss Fit = "own"
)

// Choices lists the sorts for a form.
func (Fit) Choices() [][2]string {
	return [][2]string{{string(Elbow), "Sharp corner"}, {string(Bend), "Rounded bend"}, {string(OwnLoss), "Own loss coefficient"}}
}

// Input is the flow that is wanted and the mould that it goes into.
type Input struct {
	// Alloy is the metal, with its own figures before the list's.
	Alloy     alloy.Code                       `json:"alloy" label:"Metal" part:"Metal and flow" link:"metal" hint:"What is stamped on the ingot, or the nearest to it"`
	Density   quantity.Opt[quantity.Density]   `json:"density" label:"Own density, liquid" link:"metal" hint:"Leave empty to use the metal's own" min:"500 kg/m³" max:"20000 kg/m³"`
	Viscosity quantity.Opt[quantity.Viscosity] `json:"viscosity" label:"Own viscosity, liquid" hint:"Leave empty to use the metal's own; it matters little" min:"0.1 mPa·s" max:"100 mPa·s"`
	// Poured and Time give the flow, unless Flow does.
	Poured quantity.Opt[quantity.Mass]       `json:"poured_mass" label:"Metal poured" link:"weight" hint:"Castings, risers and runners of one mould together" min:"10 g" max:"50 t"`
	Time   quantity.Opt[quantity.Time]       `json:"pour_time" label:"Pouring time" link:"pour" hint:"The time you mean to fill the mould in" min:"0.1 s" max:"1 h"`
	Flow   quantity.Opt[quantity.VolumeFlow] `json:"flow" label:"Own flow" hint:"Only to go before mass over time" min:"0.1 cm³/s" max:"500 L/s"`

	// Gate is where the ingates meet the cavity.
	Gate   quantity.Opt[flow.Position]   `json:"gate" label:"Ingates at" part:"Heads" hint:"Where the metal enters the cavity" default:"parting"`
	Height quantity.Length               `json:"sprue_height" label:"Metal level above the ingates" link:"mould" hint:"Rule from the level in the basin down to the ingates" min:"10 mm" max:"5 m"`
	Cavity quantity.Length               `json:"cavity_height" label:"Height of the cavity" when:"gate=parting|bottom" link:"mould" hint:"Rule over the casting as it stands in the mould" min:"1 mm" max:"5 m"`
	Cope   quantity.Opt[quantity.Length] `json:"cope_height" label:"Cavity above the ingates" when:"gate=parting" link:"mould" hint:"The part of its height in the cope; 0 if all is in the drag" default:"0 mm" min:"0 mm" max:"5 m"`

	// Ratio of the areas, with the user's own numbers.
	Ratio  quantity.Opt[Ratio]   `json:"ratio" label:"Gating ratio" part:"Ratio" hint:"Sprue foot : runners : ingates. Leave empty for the one of the metal's list that slows the metal most"`
	Sprue  quantity.Number       `json:"sprue_share" label:"Share of the sprue foot" hint:"Sprue foot, as in 1 : 2 : 2" when:"ratio=own" min:"0.1" max:"20"`
	Runner quantity.Number       `json:"runner_share" label:"Share of the runners" when:"ratio=own" hint:"All runners together, against the sprue foot" min:"0.1" max:"20"`
	Gates  quantity.Number       `json:"gate_share" label:"Share of the ingates" when:"ratio=own" hint:"All ingates together, against the sprue foot" min:"0.1" max:"20"`
	Choke  quantity.Opt[ChokeAt] `json:"choke" label:"Choke" hint:"With a choke of its own the smallest share of the ratio is as wide as the choke" default:"narrowest"`

	// BasinDepth, BasinTime and Entry of the basin.
	BasinDepth quantity.Opt[quantity.Length] `json:"basin_depth" label:"Depth of metal in the basin" part:"Basin and sprue" link:"mould" hint:"Metal level down to the top of the sprue; leave empty for three widths of the sprue there" min:"5 mm" max:"1 m"`
	BasinTime  quantity.Opt[quantity.Time]   `json:"basin_time" label:"Basin holds the flow of" hint:"By custom 1 to 2 s" default:"1.5 s" min:"0.2 s" max:"20 s"`
	Entry      quantity.Opt[Entry]           `json:"entry" label:"Edge between basin and sprue" hint:"A rounded edge loses less" default:"sharp"`
	// The sprue.
	Form        quantity.Opt[Form]            `json:"sprue_form" label:"Cross-section of the sprue" hint:"Metal spins less in a square one" default:"round"`
	Untapered   bool                          `json:"untapered" label:"Sprue without taper" hint:"As wide at its foot as at its top"`
	SprueLength quantity.Opt[quantity.Length] `json:"sprue_length" label:"Length of the sprue" hint:"From the floor of the basin to its foot; leave empty if the foot is level with the ingates" min:"5 mm" max:"5 m"`
	SprueTop    quantity.Opt[quantity.Area]   `json:"sprue_top" label:"Area at its top, if it is there already" when:"untapered=no" hint:"Leave empty for the taper that the stream just fills" min:"0.05 cm²" max:"20000 cm²"`
	// The well.
	Well quantity.Opt[bool] `json:"well" label:"Well under the sprue" hint:"Five times the foot in area, twice the runner in depth" default:"yes"`

	// The runners.
	Runners      quantity.Opt[int]             `json:"runners" label:"Runners" part:"Runners and ingates" hint:"Count those that leave the foot of the sprue" default:"1" min:"1" max:"12"`
	RunnerLength quantity.Opt[quantity.Length] `json:"runner_length" label:"Length of one runner" hint:"To its last ingate; left empty, its friction is not counted" min:"1 mm" max:"20 m"`
	RunnerForm   quantity.Opt[quantity.Number] `json:"runner_form" label:"Height over width of a runner" hint:"1 is square" default:"1" min:"0.1" max:"5"`
	// The ingates.
	Ingates      quantity.Opt[int]             `json:"ingates" label:"Ingates at one level" hint:"Count them in all runners together" default:"2" min:"1" max:"60"`
	Levels       quantity.Opt[int]             `json:"levels" label:"Levels of ingates" hint:"More than one is a stepped gate: the lowest carry the whole flow at first" default:"1" min:"1" max:"12"`
	IngateLength quantity.Opt[quantity.Length] `json:"ingate_length" label:"Length of an ingate" hint:"Left empty, its friction is not counted" min:"1 mm" max:"5 m"`
	IngateForm   quantity.Opt[quantity.Number] `json:"ingate_form" label:"Width over thickness of an ingate" hint:"Thin ingates break off clean and slow the metal at their edges" default:"4" min:"1" max:"40"`
	Branch       quantity.Opt[Branch]          `json:"branch" label:"Ingates leave the runner" hint:"As seen from above" default:"turn"`
	IngateSpeed  quantity.Opt[quantity.Speed]  `json:"ingate_speed" label:"Own limit of the ingate speed" link:"pour" hint:"Leave empty for the metal's usual limit" min:"0.05 m/s" max:"3 m/s"`

	// Fittings besides those that every way has.
	Fittings []Fitting `json:"fittings" label:"Further turns" part:"Losses" hint:"Corners and bends that the list of losses does not have yet" max:"20"`
	// Discharge takes the place of the losses.
	Discharge quantity.Opt[quantity.Number] `json:"discharge" label:"Own discharge coefficient" hint:"Takes the place of the losses; 0.7 to 0.9 by custom, 1 without friction. Leave empty to reckon them" min:"0.2" max:"1"`
	// Gravity for those who reckon with 10.
	Gravity quantity.Opt[quantity.Number] `json:"gravity" label:"Free fall, m/s²" hint:"9.81; exam papers also take 10" default:"9.81" min:"9.7" max:"10"`
}

// Fitting is one turn, or several alike, that a metal particle meets one after
// the other.
type Fitting struct {
	Name   string                        `json:"name" label:"Name" max:"60" hint:"What you call it, such as dogleg"`
	Place  Place                         `json:"place" label:"Where" hint:"The speed there is what counts"`
	Fit    Fit                           `json:"fit" label:"What it is" hint:"A corner loses several times as much as a bend"`
	Angle  quantity.Opt[quantity.Angle]  `json:"angle" label:"Turned through" hint:"A straight way is 0°, a square corner 90°" when:"fit=elbow|bend" default:"90°" min:"5°" max:"150°"`
	Radius quantity.Opt[quantity.Number] `json:"radius" label:"Half the width over the bend's radius" when:"fit=bend" hint:"0.5 is a bend about as tight as it is wide" default:"0.5" min:"0.02" max:"1"`
	Loss   quantity.Number               `json:"loss" label:"Loss coefficient" when:"fit=own" hint:"From a book of pipe losses, on the speed head there" min:"0.01" max:"50"`
	Count  quantity.Opt[int]             `json:"count" label:"How many" hint:"Count them, one after the other" default:"1" min:"1" max:"20"`
}
