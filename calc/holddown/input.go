package holddown

import (
	"pourwright/calc/alloy"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
)

// Input is the mould from outside. Places on the cope are measured inside the
// flask, x along its length from the left end, y along its width from the near
// side.
type Input struct {
	// Alloy gives the liquid density, unless Density does.
	Alloy   quantity.Opt[alloy.Code]       `json:"alloy" label:"Metal" part:"What lifts the cope" link:"metal" hint:"Leave empty if you state a density"`
	Density quantity.Opt[quantity.Density] `json:"density" label:"Own density of the liquid metal" link:"metal" hint:"Only to go before the list; the solid's density errs on the safe side" min:"500 kg/m³" max:"20000 kg/m³"`
	// Surfaces of the cope that metal presses on.
	Surfaces []Surface `json:"surfaces" label:"Cope surfaces" link:"mould" hint:"One for each level: casting, runners in the cope, open risers' shoulders" max:"60"`
	// Cores whose lift the cope holds.
	Cores    []Core                        `json:"cores" label:"Cores" hint:"Those whose lift the cope has to hold" max:"60"`
	CoreLift quantity.Opt[quantity.Force]  `json:"core_lift" label:"Further lift of cores" link:"core" hint:"Only what reaches the cope; taken in the middle" default:"0 N" min:"0 N" max:"5000 kN"`
	Surge    quantity.Opt[quantity.Number] `json:"surge" label:"Surge factor" hint:"1.5 by custom, up to 2 for fast and large pours" default:"1.5" min:"1" max:"3"`

	// The flask and what is in it.
	FlaskLength quantity.Opt[quantity.Length]  `json:"flask_length" label:"Flask length, inside" part:"Flask" link:"mould" hint:"Measure inside the flask" min:"50 mm" max:"20 m"`
	FlaskWidth  quantity.Opt[quantity.Length]  `json:"flask_width" label:"Flask width, inside" link:"mould" hint:"Measure inside the flask" min:"50 mm" max:"20 m"`
	CopeHeight  quantity.Opt[quantity.Length]  `json:"cope_height" label:"Cope height" link:"mould" hint:"Parting line to the top of the sand" min:"10 mm" max:"5 m"`
	DragHeight  quantity.Opt[quantity.Length]  `json:"drag_height" label:"Drag height" link:"mould" hint:"Parting line to the bottom board" min:"10 mm" max:"5 m"`
	Sand        quantity.Opt[mouldstuff.Sand]  `json:"sand" label:"Mould material" link:"mould" hint:"For its density; or state your own"`
	SandDensity quantity.Opt[quantity.Density] `json:"sand_density" label:"Own density of the rammed sand" link:"mould" hint:"Weigh a rammed box of known volume" min:"500 kg/m³" max:"4000 kg/m³"`

	// What holds the cope down.
	CopeMass  quantity.Opt[quantity.Mass]  `json:"cope_mass" label:"Sand in the cope" part:"What holds it down" link:"mould" hint:"Leave empty to reckon it from the flask" min:"0 kg" max:"50 t"`
	FrameMass quantity.Opt[quantity.Mass]  `json:"frame_mass" label:"Frame of the cope" hint:"Weigh the flask itself with its bars" default:"0 kg" min:"0 kg" max:"50 t"`
	Weights   []Weight                     `json:"weights" label:"Weights on the cope" link:"pour" hint:"Already laid on, or meant to be" max:"40"`
	Clamps    []Clamp                      `json:"clamps" label:"Clamps and bolts" hint:"Between cope and drag, with what one of them may hold" max:"40"`
	ClampLoad quantity.Opt[quantity.Force] `json:"clamp_load" label:"Load allowed on one clamp" hint:"What its maker allows, or you have tried; for how many more are wanted" min:"1 N" max:"1000 kN"`

	// The side of the mould.
	WallLength quantity.Opt[quantity.Length] `json:"wall_length" label:"Length of the casting's side" part:"Side of the mould" hint:"Rule along the flask's wall, of an upright face" min:"1 mm" max:"20 m"`
	WallHeight quantity.Opt[quantity.Length] `json:"wall_height" label:"Height of that side" hint:"Rule from its top to its bottom" min:"1 mm" max:"5 m"`
	WallTop    quantity.Opt[quantity.Length] `json:"wall_top" label:"Depth of its top under the metal level" hint:"0 at the level itself" default:"0 mm" min:"0 mm" max:"10 m"`

	// The casting, for the box.
	CastingLength quantity.Opt[quantity.Length] `json:"casting_length" label:"Casting length, from above" part:"Box for the casting" link:"mould" hint:"All castings of the mould together, with the space between them" min:"2 mm" max:"10 m"`
	CastingWidth  quantity.Opt[quantity.Length] `json:"casting_width" label:"Casting width, from above" link:"mould" hint:"All castings of the mould together, with the space between them" min:"2 mm" max:"10 m"`
	Above         quantity.Opt[quantity.Length] `json:"above" label:"Casting above the parting" link:"mould" hint:"Rule from the parting up, with its risers" default:"0 mm" min:"0 mm" max:"3 m"`
	Below         quantity.Opt[quantity.Length] `json:"below" label:"Casting below the parting" link:"mould" hint:"Rule from the parting down" default:"0 mm" min:"0 mm" max:"3 m"`
	CastingMass   quantity.Opt[quantity.Mass]   `json:"casting_mass" label:"Mass of the castings" link:"weight" hint:"Of all castings of the mould" min:"1 g" max:"20 t"`
	SprueWidth    quantity.Opt[quantity.Length] `json:"sprue_width" label:"Width of the sprue" link:"gating" hint:"Calipers at its top, if it stands between the casting and the end of the flask" min:"2 mm" max:"1 m"`

	// What the sand takes.
	MetalVolume   quantity.Opt[quantity.Volume]   `json:"metal_volume" label:"Volume of metal in the mould" part:"Sand and binder" link:"weight" hint:"Castings, risers and gating together: metal over density" min:"0 cm³" max:"10 m³"`
	MetalMass     quantity.Opt[quantity.Mass]     `json:"metal_mass" label:"Mass of that metal" link:"weight" hint:"Weighed, or metal to pour; for sand to metal" min:"1 g" max:"50 t"`
	Binder        quantity.Opt[mouldstuff.Binder] `json:"binder" label:"Binder" link:"mould" hint:"What holds the sand together"`
	BinderShare   quantity.Opt[quantity.Ratio]    `json:"binder_share" label:"Own share of binder" hint:"As you mix it, on the sand by weight" min:"0 %" max:"20 %"`
	HardenerShare quantity.Opt[quantity.Ratio]    `json:"hardener_share" label:"Own share of hardener" hint:"As you mix it, on the binder by weight" min:"0 %" max:"100 %"`
	Moisture      quantity.Opt[quantity.Ratio]    `json:"moisture" label:"Moisture of the sand" link:"mould" hint:"Leave empty for the usual" min:"0 %" max:"20 %"`
}

// Surface is one level of the cope.
type Surface struct {
	Name  string                        `json:"name" label:"Name" max:"60" hint:"Such as flange, runner"`
	Area  quantity.Area                 `json:"area" label:"Area seen from above" hint:"Upright walls count for nothing" min:"0.05 cm²" max:"100 m²"`
	Depth quantity.Length               `json:"depth" label:"Depth under the metal level" hint:"From the level in the basin, or in the open riser if that is higher, down to the surface" min:"1 mm" max:"10 m"`
	X     quantity.Opt[quantity.Length] `json:"x" label:"Its middle, along the flask" hint:"From the left end; leave empty for the middle of the flask" min:"0 mm" max:"20 m"`
	Y     quantity.Opt[quantity.Length] `json:"y" label:"Its middle, across the flask" hint:"From the near side; leave empty for the middle of the flask" min:"0 mm" max:"20 m"`
}

// Core is one core that the cope holds.
type Core struct {
	Name    string                         `json:"name" label:"Name" max:"60" hint:"What you call it"`
	Lift    quantity.Opt[quantity.Force]   `json:"lift" label:"Its lift, if you know it" link:"core" hint:"What reaches the cope" min:"0 N" max:"5000 kN"`
	Volume  quantity.Opt[quantity.Volume]  `json:"volume" label:"Volume in the metal" hint:"Without the prints; to reckon the lift" min:"0.1 cm³" max:"20 m³"`
	Density quantity.Opt[quantity.Density] `json:"density" label:"Density of the core" hint:"Silica sand cores 1600 to 1650 kg/m³" default:"1600 kg/m³" min:"200 kg/m³" max:"8000 kg/m³"`
	X       quantity.Opt[quantity.Length]  `json:"x" label:"Its middle, along the flask" hint:"From the left end; leave empty for the middle of the flask" min:"0 mm" max:"20 m"`
	Y       quantity.Opt[quantity.Length]  `json:"y" label:"Its middle, across the flask" hint:"From the near side; leave empty for the middle of the flask" min:"0 mm" max:"20 m"`
}

// Weight is one weight on the cope.
type Weight struct {
	Name string                        `json:"name" label:"Name" max:"60" hint:"What is painted on it"`
	Mass quantity.Mass                 `json:"mass" label:"Mass" hint:"As weighed" min:"10 g" max:"50 t"`
	X    quantity.Opt[quantity.Length] `json:"x" label:"Its middle, along the flask" hint:"From the left end; leave empty for the middle of the flask" min:"0 mm" max:"20 m"`
	Y    quantity.Opt[quantity.Length] `json:"y" label:"Its middle, across the flask" hint:"From the near side; leave empty for the middle of the flask" min:"0 mm" max:"20 m"`
}

// Clamp is one clamp or bolt, or several together at one place.
type Clamp struct {
	Name  string                        `json:"name" label:"Name" max:"60" hint:"What you call it"`
	Load  quantity.Force                `json:"load" label:"Load allowed on one" hint:"What its maker allows, or you have tried" min:"1 N" max:"1000 kN"`
	Count quantity.Opt[int]             `json:"count" label:"How many here" hint:"Count those at this place" default:"1" min:"1" max:"40"`
	X     quantity.Opt[quantity.Length] `json:"x" label:"Its place, along the flask" hint:"From the left end; leave empty for the middle of the flask" min:"0 mm" max:"20 m"`
	Y     quantity.Opt[quantity.Length] `json:"y" label:"Its place, across the flask" hint:"From the near side; leave empty for the middle of the flask" min:"0 mm" max:"20 m"`
}
