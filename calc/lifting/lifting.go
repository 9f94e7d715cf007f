// Package lifting answers whether one person may lift a cold load by hand: a
// closed mould, a flask, an ingot, a box of sand. It is the revised NIOSH
// lifting equation with its limits.
//
// Source: NIOSH, Applications Manual for the Revised NIOSH Lifting Equation,
// Pub. 94-110, revised 2021. The multipliers' formulas and the limits were
// read in a text that transcribes the manual; the tables of the frequency and
// coupling multipliers are from memory, with the cells confirmed elsewhere
// named at the table.
//
// The equation is for one person standing, two hands, a smooth lift of a load
// that keeps still, on a firm floor at 19 to 26 °C. It does not cover carrying,
// team lifts, heat, or anything that slops. A ladle, a crucible and anything
// hot are refused.
package lifting

import (
	"pourwright/calc/quantity"
)

// What is being lifted.
type What string

// The loads. The last two are on the list so that they can be refused.
const (
	Mould   What = "mould"
	Flask   What = "flask"
	Ingot   What = "ingot"
	Sand    What = "sand"
	Casting What = "casting"
	Hot     What = "hot"
	Liquid  What = "liquid"
)

// Choices lists the loads for a form.
func (What) Choices() [][2]string {
	return [][2]string{
		{string(Mould), "Closed mould, cold"},
		{string(Flask), "Flask, pattern or core box"},
		{string(Ingot), "Ingots or scrap, cold"},
		{string(Sand), "Sand or binder in a bag or box"},
		{string(Casting), "Casting, cold"},
		{string(Hot), "Anything hot"},
		{string(Liquid), "Liquid metal"},
	}
}

// Duration is how long the lifting goes on.
type Duration string

// The durations of the manual's table.
const (
	Short    Duration = "short"
	Moderate Duration = "moderate"
	Long     Duration = "long"
)

// Choices lists the durations for a form.
func (Duration) Choices() [][2]string {
	return [][2]string{
		{string(Short), "Up to 1 hour, then lighter work"},
		{string(Moderate), "1 to 2 hours, then lighter work"},
		{string(Long), "2 to 8 hours"},
	}
}

// Coupling is how well the hands hold the load.
type Coupling string

// The classes of coupling.
const (
	Good Coupling = "good"
	Fair Coupling = "fair"
	Poor Coupling = "poor"
)

// Choices lists the couplings for a form.
func (Coupling) Choices() [][2]string {
	return [][2]string{
		{string(Good), "Good: handles or cut-outs that the hand closes round"},
		{string(Fair), "Fair: poor handles, or fingers bent under a box"},
		{string(Poor), "Poor: no hold, sagging, sharp or slippery"},
	}
}

// System is which of the manual's two forms is used. They differ by about two
// per cent, for the manual rounds its constants in each.
type System string

// The two forms of the equation.
const (
	MetricForm System = "metric"
	USForm     System = "us"
)

// Choices lists the forms of the equation for a form.
func (System) Choices() [][2]string {
	return [][2]string{{string(MetricForm), "Metric: 23 kg, centimetres"}, {string(USForm), "US: 51 lb, inches"}}
}

// Rounding is how the multipliers are carried.
type Rounding string

// The ways to carry the multipliers.
const (
	FullPrecision Rounding = "full"
	AsPrinted     Rounding = "printed"
)

// Choices lists the ways of rounding for a form.
func (Rounding) Choices() [][2]string {
	return [][2]string{{string(FullPrecision), "Full precision"}, {string(AsPrinted), "Two decimals, as the manual's examples"}}
}

// Input is one lift.
type Input struct {
	// What is lifted.
	What What `json:"what" label:"What is lifted" hint:"Cold things only"`
	// Load is its mass.
	Load quantity.Mass `json:"load" label:"Weight of the load" hint:"Weigh the heaviest that is lifted" min:"0.1 kg" max:"200 kg"`
	// Scope confirms that the equation applies.
	Scope bool `json:"scope" label:"All of this is so" hint:"One person, both hands, standing with room to move; a smooth lift of a load that keeps still; a firm floor with good grip; no more than a step or two; 19 to 26 °C"`
	// Origin is where the lift starts.
	Origin Place `json:"origin" label:"Where the lift starts" hint:"Measure where the hands take hold" part:"The lift"`
	// Destination is where it ends.
	Destination Place `json:"destination" label:"Where the load is set down" hint:"Measure where the hands let go"`
	// Lifts a minute, on average over 15 minutes.
	Lifts quantity.Number `json:"lifts" label:"Lifts a minute" hint:"Averaged over a quarter of an hour; 0.2 is one in five minutes" min:"0.001" max:"15"`
	// Duration of the lifting.
	Duration Duration `json:"duration" label:"How long the lifting goes on" hint:"By the clock, with the rests between"`
	// Coupling of hands and load.
	Coupling Coupling `json:"coupling" label:"Hold" hint:"How the hands hold it: handles, edges, or nothing to grip"`
	// Gloves make the coupling poor.
	Gloves bool `json:"gloves" label:"Gloves are needed" hint:"Tick if it is rough, sharp or warm"`
	// System is the form of the equation.
	System quantity.Opt[System] `json:"form" label:"Form of the equation" hint:"The manual's two forms differ by about two per cent" part:"The equation" default:"metric"`
	// Rounding of the multipliers.
	Rounding quantity.Opt[Rounding] `json:"rounding" label:"Multipliers" hint:"In full, or as the manual's tables print them" default:"full"`
}

// Place is one end of the lift.
type Place struct {
	// Reach is H.
	Reach quantity.Length `json:"reach" label:"Reach" hint:"Tape on the floor: between the ankles to below the hands" min:"50 mm" max:"635 mm"`
	// Height is V.
	Height quantity.Opt[quantity.Length] `json:"height" label:"Height of the hands" hint:"Tape from the floor that the feet stand on" min:"0 mm" max:"1778 mm"`
	// Twist is A.
	Twist quantity.Opt[quantity.Angle] `json:"twist" label:"Twist" hint:"How far the load lies to the side of straight ahead" default:"0°" min:"0°" max:"135°"`
}

// Output is the recommended weight limit and the lifting index.
type Output struct {
	Limit       quantity.Mass                 `json:"limit" label:"Recommended weight limit" hint:"The lesser of the two ends" step:"RWL_m"`
	Index       quantity.Opt[quantity.Number] `json:"index" label:"Lifting index" hint:"Load over limit: at most 1 is the goal, over 3 is a danger to nearly all" step:"LI_m"`
	Travel      quantity.Length               `json:"travel" label:"Travel, up or down" step:"D"`
	Origin      End                           `json:"origin"`
	Destination End                           `json:"destination"`
}

// End is the equation at one end of the lift.
type End struct {
	HM    quantity.Number               `json:"hm" label:"Horizontal multiplier" step:"HM"`
	VM    quantity.Number               `json:"vm" label:"Vertical multiplier" step:"VM"`
	DM    quantity.Number               `json:"dm" label:"Distance multiplier" step:"DM"`
	AM    quantity.Number               `json:"am" label:"Asymmetric multiplier" step:"AM"`
	FM    quantity.Number               `json:"fm" label:"Frequency multiplier" step:"FM"`
	CM    quantity.Number               `json:"cm" label:"Coupling multiplier" step:"CM"`
	Limit quantity.Mass                 `json:"limit" label:"Recommended weight limit" step:"RWL"`
	Index quantity.Opt[quantity.Number] `json:"index" label:"Lifting index" step:"LI"`
}
