// Package ladle answers how a tipped ladle lets its metal go: what it holds,
// the tilt at which metal reaches the lip, the tilt against time that gives a
// constant flow, what is left at any tilt, how fast the stream lands, and what
// the filled ladle weighs on those who carry it.
//
// Sources: the volume of a tipped cylinder or cone is exact geometry
// (Archimedes' hoof and its relations, see vessel); the head over the lip is
// that of a weir (any hydraulics handbook); the flow against tilt is the
// quasi-steady balance used in published models of tilting ladles. The weights
// are compared with UK guidance for cold loads, for want of any for hot ones.
//
// Limits: a round ladle, tipped from 0 to 90° about the lip, slowly enough for
// the surface to stay level; no slag, no teapot spout, no bottom pour.
package ladle

import (
	"pourwright/calc/alloy"
	"pourwright/calc/flow"
	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// Fill says how much metal is in the ladle.
type Fill string

// How a ladle is filled.
const (
	FillForPour   Fill = "pour"
	FillStated    Fill = "stated"
	FillFreeboard Fill = "freeboard"
)

// Choices lists the ways of filling for a form.
func (Fill) Choices() [][2]string {
	return [][2]string{
		{string(FillForPour), "What the mould takes, and the heel"},
		{string(FillStated), "A stated amount"},
		{string(FillFreeboard), "Up to the freeboard"},
	}
}

// Shape is the inside of the ladle.
type Shape string

// The shapes.
const (
	Cylinder Shape = "cylinder"
	Cone     Shape = "cone"
)

// Choices lists the shapes for a form.
func (Shape) Choices() [][2]string {
	return [][2]string{{string(Cone), "Truncated cone"}, {string(Cylinder), "Cylinder"}}
}

// Pace is how the wanted flow is stated.
type Pace string

// The ways to state the flow.
const (
	PaceByTime Pace = "time"
	PaceByFlow Pace = "flow"
)

// Choices lists the ways to state the flow for a form.
func (Pace) Choices() [][2]string {
	return [][2]string{{string(PaceByTime), "By the pouring time"}, {string(PaceByFlow), "By the flow"}}
}

// Tare is how the weight of the empty ladle is known.
type Tare string

// The ways to know the tare.
const (
	TareWeighed   Tare = "weighed"
	TareThickness Tare = "thickness"
)

// Choices lists the ways to know the tare for a form.
func (Tare) Choices() [][2]string {
	return [][2]string{{string(TareWeighed), "Weighed"}, {string(TareThickness), "Worked out from the thicknesses"}}
}

// Carry is what bears the ladle.
type Carry string

// What may bear the ladle.
const (
	ByHand  Carry = "hand"
	ByHoist Carry = "hoist"
)

// Choices lists what may bear the ladle for a form.
func (Carry) Choices() [][2]string {
	return [][2]string{{string(ByHand), "People, by hand"}, {string(ByHoist), "A hoist, gantry or trolley"}}
}

// Input is the ladle, its metal and the pour wanted of it.
type Input struct {
	// Alloy gives the density of the liquid metal.
	Alloy quantity.Opt[alloy.Code] `json:"alloy" label:"Metal" hint:"For its density" link:"metal"`
	// Density goes before the alloy's.
	Density quantity.Opt[quantity.Density] `json:"density" label:"Own density, liquid" hint:"Leave empty to use the metal's own" min:"500 kg/m³" max:"20000 kg/m³"`
	// Metal is what the mould takes, W.
	Metal quantity.Mass `json:"metal" label:"Metal the mould takes" hint:"Casting, risers, runners, sprue and basin together" link:"weight" min:"0.05 kg" max:"50 t"`
	// Fill says how much is in the ladle.
	Fill quantity.Opt[Fill] `json:"fill" label:"Metal in the ladle" hint:"Enough for this mould, filled to the freeboard, or an amount of your own" default:"pour"`
	// InLadle is the metal in the ladle.
	InLadle quantity.Mass `json:"in_ladle" label:"Amount in the ladle" hint:"On the crane scale, or by charges counted" when:"fill=stated" min:"0.05 kg" max:"50 t"`
	// Heel is what stays in the ladle.
	Heel quantity.Opt[quantity.Mass] `json:"heel" label:"Metal to leave in the ladle" hint:"To pig afterwards; it keeps the slag and the last cold metal out of the mould" when:"fill=pour" default:"0 kg" min:"0 kg" max:"20 t"`

	// Shape of the inside.
	Shape quantity.Opt[Shape] `json:"shape" label:"Inside shape" hint:"Look inside: straight down, or wider at the top" part:"The ladle" default:"cone"`
	// Top is the inside diameter at the level of the lip.
	Top quantity.Length `json:"top" label:"Inside diameter at the lip" hint:"Inside calipers across the lining, not the shell" min:"40 mm" max:"3 m"`
	// Bottom is the inside diameter at the base.
	Bottom quantity.Length `json:"bottom" label:"Inside diameter at the base" hint:"Of the lining, down at the floor: inside calipers" when:"shape=cone" min:"20 mm" max:"3 m"`
	// Depth from the lip's lowest point to the base.
	Depth quantity.Length `json:"depth" label:"Inside depth to the lip" hint:"Rule from the lowest point of the lip straight down to the base" min:"40 mm" max:"4 m"`
	// Freeboard is the distance wanted from the metal up to the lip.
	Freeboard quantity.Opt[quantity.Length] `json:"freeboard" label:"Freeboard wanted" hint:"From the metal up to the lip while the ladle stands; left empty, a tenth of the depth. Many shops keep 50 to 75 mm" min:"0 mm" max:"1 m"`
	// Lip is the edge the metal leaves over.
	Lip flow.Lip `json:"lip" label:"Lip" hint:"What the metal runs over" part:"Lip"`

	// Pace says how the flow is stated.
	Pace quantity.Opt[Pace] `json:"pace" label:"Flow wanted" hint:"From the pouring time, or a flow of your own" part:"The pour" default:"time"`
	// PourTime is the time the mould is to fill in.
	PourTime quantity.Time `json:"pour_time" label:"Pouring time" hint:"The time you mean to fill the mould in" link:"pour" when:"pace=time" min:"0.5 s" max:"1 h"`
	// Flow is the flow wanted.
	Flow quantity.MassFlow `json:"flow" label:"Flow" hint:"Weigh a timed pour" when:"pace=flow" min:"0.001 kg/s" max:"500 kg/s"`
	// LipHeight is the drop of the stream.
	LipHeight quantity.Opt[quantity.Length] `json:"lip_height" label:"Lip above the basin" hint:"While you pour; 50 to 100 mm is good practice" min:"0 mm" max:"3 m"`
	// Tilt to look at.
	Tilt quantity.Opt[quantity.Angle] `json:"tilt" label:"Tilt to look at" hint:"How much is left in the ladle at this tilt" min:"0°" max:"90°"`

	// Tare says how the empty weight is known.
	Tare quantity.Opt[Tare] `json:"tare" label:"Weight of the empty ladle" hint:"On the scale, or reckoned from its walls" part:"The weight to carry" default:"weighed"`
	// Shell is the mass of the empty steel ladle.
	Shell quantity.Opt[quantity.Mass] `json:"shell" label:"Shell" hint:"Steel ladle without its lining; with the lining if they were weighed together, and the lining then 0" when:"tare=weighed" min:"0 kg" max:"20 t"`
	// Lining is the mass of the lining.
	Lining quantity.Opt[quantity.Mass] `json:"lining" label:"Lining" hint:"Lined less unlined on the scale" when:"tare=weighed" min:"0 kg" max:"20 t"`
	// LiningThickness of wall and floor.
	LiningThickness quantity.Length `json:"lining_thickness" label:"Thickness of the lining" hint:"Rule at the rim; wall and floor alike" when:"tare=thickness" min:"1 mm" max:"500 mm"`
	// LiningDensity of the dried lining.
	LiningDensity quantity.Density `json:"lining_density" label:"Density of the lining" hint:"From the maker's sheet: about 600 to 1000 kg/m³ for light insulating lining, 1900 to 2900 kg/m³ for dense castable" when:"tare=thickness" min:"200 kg/m³" max:"4500 kg/m³"`
	// ShellThickness of the steel.
	ShellThickness quantity.Length `json:"shell_thickness" label:"Thickness of the steel shell" hint:"Calipers at the rim" when:"tare=thickness" min:"0.5 mm" max:"80 mm"`
	// Shank is everything else that is carried.
	Shank quantity.Opt[quantity.Mass] `json:"shank" label:"Shank, bail and tools" hint:"Weigh all that hangs on the same hands or hook" min:"0 kg" max:"5 t"`
	// Carry says what bears the ladle.
	Carry quantity.Opt[Carry] `json:"carry" label:"Carried by" hint:"Hands on a shank, or a hoist" default:"hand"`
	// Crew is how many carry.
	Crew quantity.Opt[int] `json:"crew" label:"People who carry it" hint:"Only those with their hands on the shank" when:"carry=hand" default:"2" min:"1" max:"8"`
}

// Output is what the ladle holds, how to tip it, and what it weighs. Answers
// that do not exist, because the ladle is overfull or the lip cannot pass the
// flow, are not known; the findings say why.
type Output struct {
	Density quantity.Density `json:"density" label:"Density of the liquid metal" step:"rho_l"`

	Brim       quantity.Volume               `json:"brim" label:"Holds to the lip" step:"V_b"`
	BrimMass   quantity.Mass                 `json:"brim_mass" label:"Metal to the lip" step:"M_b"`
	Holds      quantity.Volume               `json:"holds" label:"Holds with the freeboard" step:"V_f"`
	HoldsMass  quantity.Mass                 `json:"holds_mass" label:"Metal with the freeboard" step:"M_f"`
	Ladles     quantity.Opt[quantity.Number] `json:"ladles" label:"Ladles of this size for the mould" step:"N"`
	Metal      quantity.Mass                 `json:"metal" label:"Metal in the ladle" step:"M"`
	MetalSpace quantity.Volume               `json:"metal_volume" label:"Volume of the metal" step:"V_m"`
	Level      quantity.Opt[quantity.Length] `json:"level" label:"Level above the base" hint:"While the ladle stands upright" step:"z_m"`
	Freeboard  quantity.Opt[quantity.Length] `json:"freeboard" label:"Freeboard" step:"f_b"`
	Surface    quantity.Opt[quantity.Area]   `json:"surface" label:"Free surface" hint:"While the ladle stands upright" step:"A_0"`
	Left       quantity.Mass                 `json:"left" label:"Metal left after the pour" step:"M_h"`

	Flow        quantity.MassFlow                   `json:"flow" label:"Flow wanted" step:"q_m"`
	VolumeFlow  quantity.VolumeFlow                 `json:"volume_flow" label:"Flow wanted, by volume" step:"q"`
	Head        quantity.Length                     `json:"head" label:"Head over the lip" step:"h"`
	LipSpeed    quantity.Speed                      `json:"lip_speed" label:"Speed at the lip" step:"v_0"`
	StreamSpeed quantity.Opt[quantity.Speed]        `json:"stream_speed" label:"Speed at the basin" step:"v_b"`
	BaseTilt    quantity.Angle                      `json:"base_tilt" label:"Tilt at which the base begins to show" step:"theta_b"`
	EmptyTilt   quantity.Angle                      `json:"empty_tilt" label:"Tilt at which the ladle is empty" hint:"90° for a ladle that does not widen upwards" step:"theta_x"`
	LipTilt     quantity.Opt[quantity.Angle]        `json:"lip_tilt" label:"Tilt at which metal reaches the lip" step:"theta_0"`
	StartTilt   quantity.Opt[quantity.Angle]        `json:"start_tilt" label:"Tilt at which the flow wanted runs" step:"theta_1"`
	EndTilt     quantity.Opt[quantity.Angle]        `json:"end_tilt" label:"Tilt at the end of the pour" step:"theta_e"`
	PourTime    quantity.Opt[quantity.Time]         `json:"pour_time" label:"Time of the pour" step:"t_e"`
	RateSlow    quantity.Opt[quantity.AngularSpeed] `json:"rate_slow" label:"Slowest tilt rate" hint:"Until 95 % is poured" step:"omega_s"`
	RateFast    quantity.Opt[quantity.AngularSpeed] `json:"rate_fast" label:"Fastest tilt rate" hint:"Until 95 % is poured" step:"omega_f"`
	EvenRate    quantity.Opt[quantity.AngularSpeed] `json:"even_rate" label:"Even tilt rate, for comparison" step:"omega_c"`
	EvenLeast   quantity.Opt[quantity.MassFlow]     `json:"even_least" label:"Least flow at the even rate" hint:"Until 95 % is poured" step:"q_1"`
	EvenMost    quantity.Opt[quantity.MassFlow]     `json:"even_most" label:"Most flow at the even rate" hint:"Until 95 % is poured" step:"q_2"`
	Marks       []Mark                              `json:"marks"`

	TiltLeft     quantity.Opt[quantity.Volume] `json:"tilt_left" label:"Left at the tilt looked at" step:"V_l"`
	TiltLeftMass quantity.Opt[quantity.Mass]   `json:"tilt_left_mass" label:"Metal left at the tilt looked at" step:"M_l"`

	Shell      quantity.Opt[quantity.Mass] `json:"shell" label:"Shell" step:"M_s"`
	Lining     quantity.Opt[quantity.Mass] `json:"lining" label:"Lining" step:"M_r"`
	Carried    quantity.Opt[quantity.Mass] `json:"carried" label:"Carried weight" hint:"Metal, shell, lining, shank and tools" step:"M_c"`
	AtLeast    quantity.Mass               `json:"at_least" label:"Carried weight, at least" hint:"What is known of it" step:"M_c"`
	PerPerson  quantity.Opt[quantity.Mass] `json:"per_person" label:"For each person, at least" step:"M_p"`
	GuideMen   quantity.Opt[quantity.Mass] `json:"guide_men" label:"Guideline for a cold load, men" hint:"A comparison only: filled ladles of hot metal lie outside all guidance on manual handling" step:"G_m"`
	GuideWomen quantity.Opt[quantity.Mass] `json:"guide_women" label:"Guideline for a cold load, women" hint:"A comparison only: filled ladles of hot metal lie outside all guidance on manual handling" step:"G_w"`

	TiltChart []working.Series `json:"tilt_chart"`
	FlowChart []working.Series `json:"flow_chart"`
	LeftChart []working.Series `json:"left_chart"`
}

// Mark is one moment of the pour at the flow wanted.
type Mark struct {
	Poured quantity.Ratio                      `json:"poured" label:"Poured" step:"s"`
	Time   quantity.Time                       `json:"time" label:"Time" step:"t"`
	Tilt   quantity.Angle                      `json:"tilt" label:"Tilt" step:"theta"`
	Left   quantity.Mass                       `json:"left" label:"Left in the ladle" step:"M_i"`
	Rate   quantity.Opt[quantity.AngularSpeed] `json:"rate" label:"Tilt rate" step:"omega"`
}
