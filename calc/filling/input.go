package filling

import (
	"pourwright/calc/alloy"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
)

// Pressed is what metal presses on a surface of the cope.
type Pressed string

// The two sorts of surface.
const (
	ByCavity Pressed = "cavity"
	ByGating Pressed = "gating"
)

// Choices lists the sorts for a form.
func (Pressed) Choices() [][2]string {
	return [][2]string{{string(ByCavity), "The cavity, as its level rises past it"}, {string(ByGating), "The gating, with the basin's head from the start"}}
}

// Input is a mould and the way into it. Heights are from the bottom of the
// cavity.
type Input struct {
	// Alloy is the metal.
	Alloy   alloy.Code                     `json:"alloy" label:"Metal" part:"Metal" link:"metal" hint:"What is stamped on the ingot, or the nearest to it"`
	Density quantity.Opt[quantity.Density] `json:"density" label:"Own density, liquid" link:"metal" hint:"Leave empty to use the metal's own" min:"500 kg/m³" max:"20000 kg/m³"`

	// Slices of the cavity, from its bottom up.
	Slices []Slice `json:"slices" label:"Slices of the cavity" part:"Cavity" hint:"From the bottom up, open risers too; a new slice wherever the plan area changes" min:"1" max:"60"`

	// Level of a full basin.
	Level quantity.Length `json:"basin_level" label:"Metal level over the bottom of the cavity" part:"Basin and ladle" link:"mould" hint:"From the level of the full basin down to the lowest point of the cavity" min:"5 mm" max:"6 m"`
	// LadleFlow, BasinArea and BasinDepth where the basin is not simply kept full.
	LadleFlow  quantity.Opt[quantity.MassFlow] `json:"ladle_flow" label:"Flow that the ladle gives" link:"pour" hint:"Weigh a timed pour; left empty if the basin is kept full" min:"0.5 g/s" max:"5000 kg/s"`
	BasinArea  quantity.Opt[quantity.Area]     `json:"basin_area" label:"Area of the basin" hint:"Length times breadth of the metal's surface; left empty, the basin follows at once" min:"1 cm²" max:"20 m²"`
	BasinDepth quantity.Opt[quantity.Length]   `json:"basin_depth" label:"Depth of metal in the basin" link:"gating" hint:"Full, down to the top of the sprue; left empty, a tenth of the whole head" min:"2 mm" max:"1 m"`

	// Choke and Discharge of the way, and the ingates.
	Choke     quantity.Opt[quantity.Area]   `json:"choke_area" label:"Choke" part:"Gating" link:"gating" hint:"The narrowest section between basin and ingates; left empty, the ingates are the choke" min:"0.05 cm²" max:"5000 cm²"`
	Discharge quantity.Opt[quantity.Number] `json:"discharge" label:"Discharge coefficient" link:"gating" hint:"Of the whole way; 1 is the textbook's stream without friction" default:"0.8" min:"0.2" max:"1"`
	Ingates   []Ingate                      `json:"ingates" label:"Ingates" hint:"One entry for each level" min:"1" max:"20"`
	Limit     quantity.Opt[quantity.Speed]  `json:"ingate_speed" label:"Own limit of the ingate speed" link:"pour" hint:"Leave empty for the metal's usual limit" min:"0.05 m/s" max:"3 m/s"`

	// Wall and Rise for the laps.
	Wall quantity.Opt[quantity.Length] `json:"wall" label:"Mean wall" part:"Rise of the level" link:"pour" hint:"Measure with calipers, away from bosses and ribs" min:"1 mm" max:"500 mm"`
	Rise quantity.Opt[quantity.Speed]  `json:"rise_speed" label:"Own least rise of the level" link:"pour" hint:"Leave empty for the usual, by wall" unit:"mm/s,in/s" min:"0.5 mm/s" max:"500 mm/s"`

	// Surfaces of the cope.
	Surfaces []Surface                     `json:"surfaces" label:"Cope surfaces" part:"Lift" hint:"Faces of the cope that the metal comes to press on" max:"60"`
	Surge    quantity.Opt[quantity.Number] `json:"surge" label:"Surge factor" hint:"1.5 by custom, up to 2 for fast and large pours" default:"1.5" min:"1" max:"3"`

	// The front's temperature.
	PourTemperature  quantity.Opt[quantity.Temperature] `json:"pour_temperature" label:"Pouring temperature" part:"Temperature of the front" link:"metal" hint:"Thermometer in the ladle, at the lip" min:"150 °C" max:"1800 °C"`
	Drop             quantity.Opt[quantity.TempDiff]    `json:"gating_drop" label:"Loss in sprue and runners" link:"pour" hint:"5 to 30 °C in short sand runners; leave empty for 1 % of what the metal has over the mould" min:"0 K" max:"150 K"`
	Thin             quantity.Opt[quantity.Length]      `json:"thin_wall" label:"Thinnest wall" link:"pour" hint:"Calipers on the wall that the front has to run through" min:"0.5 mm" max:"500 mm"`
	Sand             quantity.Opt[mouldstuff.Sand]      `json:"sand" label:"Mould material" link:"mould" hint:"What the face against the metal is made of"`
	MouldTemperature quantity.Opt[quantity.Temperature] `json:"mould_temperature" label:"Mould temperature" hint:"As it stands before pouring: the shop's air, or a thermometer in the sand" default:"20 °C" min:"-40 °C" max:"1100 °C"`
}

// Slice is a part of the cavity's height.
type Slice struct {
	Name   string                      `json:"name" label:"Name" max:"60" hint:"Such as flange, web"`
	Height quantity.Length             `json:"height" label:"Height of the slice" hint:"Rule from its foot to its top" min:"0.2 mm" max:"5 m"`
	Area   quantity.Area               `json:"area" label:"Plan area" hint:"Length times breadth of the metal, seen from above at its foot" min:"0.05 cm²" max:"100 m²"`
	Top    quantity.Opt[quantity.Area] `json:"top_area" label:"Plan area at its top" hint:"Leave empty if it does not change" min:"0.05 cm²" max:"100 m²"`
}

// Ingate is one level of ingates.
type Ingate struct {
	Name   string                        `json:"name" label:"Name" max:"60" hint:"Such as lower, upper"`
	Height quantity.Opt[quantity.Length] `json:"height" label:"Height over the bottom of the cavity" hint:"0 for a bottom gate" default:"0 mm" min:"0 mm" max:"5 m"`
	Area   quantity.Area                 `json:"area" label:"Area at this level" hint:"Width times thickness of each at this level, summed" min:"0.02 cm²" max:"20000 cm²"`
}

// Surface is one face of the cope.
type Surface struct {
	Name   string                        `json:"name" label:"Name" max:"60" hint:"Such as flange, runner"`
	Area   quantity.Area                 `json:"area" label:"Area seen from above" hint:"Upright walls count for nothing" min:"0.05 cm²" max:"100 m²"`
	Height quantity.Opt[quantity.Length] `json:"height" label:"Height over the bottom of the cavity" hint:"Rule from the bottom of the cavity up to that face" default:"0 mm" min:"0 mm" max:"5 m"`
	By     quantity.Opt[Pressed]         `json:"pressed" label:"Part of" hint:"Runners in the cope are pressed on from the start" default:"cavity"`
}
