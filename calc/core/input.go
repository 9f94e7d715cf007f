// Package core answers what holds a core in its place and what lets its gas
// out: the lift of the metal, the bearing of its prints on the sand, chaplets,
// the vent that its binder wants, what it weighs, and what a hollow that stays
// closed weighs when it is filled.
//
// # Lift
//
// Metal all round a core pushes it up with the weight of the metal it
// displaces (Archimedes), ρ_m g u V for the part u of its volume V that is
// drowned. A core that stands upright in a print has no metal under its foot:
// the push ρ_m g d_b a_b that the metal would have there, at the depth d_b of
// the print, is missing; where its head goes through into the cope, the push
// ρ_m g d_t a_t on that section from above is missing too. So
//
//	F = ρ_m g (u V − a_b d_b + a_t d_t),
//
// which for a plain round core through the whole casting is P. N. Rao's ring,
// (π/4)(D₁² − D²) h ρ_m g. Less the weight of the core with its prints, it is
// the load on whatever holds the core down.
//
// # Gas
//
// How much gas a core makes while the mould fills, and at what pressure, is
// known only within a factor of some three; see gas.go. A vent area is given
// to plan by. Nothing here says that a core is safe from blowing.
package core

import (
	"pourwright/calc/alloy"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/shape"
)

// Input is the cores of one mould and what they lie in.
type Input struct {
	// Alloy is the casting metal.
	Alloy alloy.Code `json:"alloy" label:"Metal" part:"Metal and mould" link:"metal" hint:"What is stamped on the ingot, or the nearest to it"`
	// Density of the liquid, before the list's.
	Density quantity.Opt[quantity.Density] `json:"density" label:"Own density of the liquid metal" hint:"Only to go before the list; the solid's density errs on the safe side" min:"1000 kg/m³" max:"20000 kg/m³"`
	// PourTemperature of the metal as it meets the cores.
	PourTemperature quantity.Opt[quantity.Temperature] `json:"pour_temperature" label:"Pouring temperature" link:"metal" hint:"Thermometer in the ladle; left empty, the metal's usual for light walls" min:"150 °C" max:"1800 °C"`
	// PourTime is how long the cores give gas while the metal is still open.
	PourTime quantity.Opt[quantity.Time] `json:"pour_time" label:"Pouring time" link:"pour" hint:"The gas of this time has to get out while the metal is still liquid" min:"0.5 s" max:"30 min"`
	// Mould is the sand that the prints lie in.
	Mould quantity.Opt[mouldstuff.Sand] `json:"mould" label:"Mould material" link:"mould" hint:"What the prints lie in" default:"green-sand"`
	// Bearing is what that sand carries.
	Bearing quantity.Opt[quantity.Pressure] `json:"bearing" label:"Bearing strength of the mould sand" hint:"35 kPa is 3.5 N/cm², 5 psi or 350 gf/cm² for green sand; more only for hard sand that you have tried. A book that prints 350 N/cm² has slipped a hundredfold" default:"35 kPa" min:"2 kPa" max:"500 kPa"`
	// VentSpeed is how fast the gas may run through a vent.
	VentSpeed quantity.Opt[quantity.Speed] `json:"vent_speed" label:"Gas speed in the vents" hint:"1 to 1.9 m/s was measured in the vents of furan cores" default:"2 m/s" min:"0.2 m/s" max:"30 m/s"`
	// GasTemperature in the vent.
	GasTemperature quantity.Opt[quantity.Temperature] `json:"gas_temperature" label:"Gas temperature in the vents" hint:"As it leaves the hot skin of the core; the hotter, the more room it wants" default:"900 °C" min:"0 °C" max:"1500 °C"`
	// Cores of the mould.
	Cores []Core `json:"cores" label:"Cores" part:"Cores" hint:"One entry for cores that are alike" min:"1" max:"40"`
}

// Core is one core, or several alike.
type Core struct {
	// Name is what the user calls it.
	Name string `json:"name" label:"Name" max:"60" hint:"What is written on it, or its place"`
	// Count is how many alike.
	Count quantity.Opt[int] `json:"count" label:"How many" hint:"Count them in the mould, all alike" default:"1" min:"1" max:"500"`
	// By says how its volume is found.
	By quantity.Opt[By] `json:"by" label:"How its volume is found" hint:"Filling the core box with sand or water from a measuring jug is as good as any sum" default:"stated"`
	// Volume of the body.
	Volume quantity.Volume `json:"volume" label:"Volume in the casting" when:"by=stated" hint:"From the core box with sand or water from a jug, without the prints" min:"0.1 cm³" max:"20 m³"`
	// Surface of the body against the metal.
	Surface quantity.Opt[quantity.Area] `json:"surface" label:"Surface against the metal" when:"by=stated" hint:"For the gas; left empty, the whole core is taken to burn" min:"0.1 cm²" max:"100 m²"`
	// Solids put the body together.
	Solids []shape.Solid `json:"solids" label:"Solids" when:"by=solids" hint:"Plain bodies that make up the core without its prints" min:"1" max:"40"`
	// Drowned is the part of the body under the metal's level.
	Drowned quantity.Opt[quantity.Ratio] `json:"drowned" label:"Part under the metal" hint:"Share of its volume below the metal when the mould is full" default:"100 %" min:"1 %" max:"100 %"`

	// Sand and Density of the core.
	Sand    quantity.Opt[mouldstuff.Sand]  `json:"sand" label:"Core material" hint:"What the core is made of" default:"resin-sand"`
	Density quantity.Opt[quantity.Density] `json:"density" label:"Own density of the core" hint:"Weigh one; books reckon silica cores at 1600 to 1650 kg/m³" min:"200 kg/m³" max:"8000 kg/m³"`

	// Stand says whether metal gets under it.
	Stand quantity.Opt[Stand] `json:"stand" label:"How it lies" hint:"An upright core has no metal under its foot, and is lifted less" default:"surrounded"`
	// FootArea and FootDepth are where an upright core enters its lower print.
	FootArea  quantity.Area   `json:"foot_area" label:"Section at the lower print" when:"stand=upright" hint:"Length times breadth where the core leaves the metal downward" min:"0.1 cm²" max:"20 m²"`
	FootDepth quantity.Length `json:"foot_depth" label:"Depth of the lower print" when:"stand=upright" hint:"From the metal level in basin or open riser down to that section" min:"1 mm" max:"10 m"`
	// HeadArea and HeadDepth are where it goes through into the cope.
	HeadArea  quantity.Opt[quantity.Area]   `json:"head_area" label:"Section at the upper print" when:"stand=upright" hint:"0 where the metal covers its head" default:"0 cm²" min:"0 cm²" max:"20 m²"`
	HeadDepth quantity.Opt[quantity.Length] `json:"head_depth" label:"Depth of the upper print" when:"stand=upright" hint:"From the metal level down to that section" default:"0 mm" min:"0 mm" max:"10 m"`

	// Prints hold it.
	Prints []Print `json:"prints" label:"Prints" hint:"One entry for prints that are alike" max:"20"`

	// ChapletCount, ChapletArea and ChapletLoad are what chaplets there are.
	ChapletCount quantity.Opt[int]            `json:"chaplet_count" label:"Chaplets above it" hint:"Count them between this core and the cope" default:"0" min:"0" max:"500"`
	ChapletArea  quantity.Opt[quantity.Area]  `json:"chaplet_area" label:"Bearing area of one chaplet" hint:"Length times breadth of its smaller head" min:"5 mm²" max:"500 cm²"`
	ChapletLoad  quantity.Opt[quantity.Force] `json:"chaplet_load" label:"Own load on one chaplet" hint:"What its maker allows in hot metal; no figure is known here" min:"1 N" max:"100 kN"`

	// Binder and its share.
	Binder      quantity.Opt[mouldstuff.Binder] `json:"binder" label:"Binder" hint:"Left empty, the usual one of the core material"`
	BinderShare quantity.Opt[quantity.Ratio]    `json:"binder_share" label:"Own share of binder" hint:"As you mix it, on the sand by weight" min:"0 %" max:"20 %"`
	// Gas is the user's own figure.
	Gas quantity.Opt[quantity.Number] `json:"gas" label:"Own gas figure, cm³ per gram" hint:"Of cool gas, from the seller's core-gas test" min:"0.1" max:"100"`
	// Vent says whether gas gets out.
	Vent Vent `json:"vent" label:"Way out for its gas" hint:"From inside the core, through a print, to the outside air"`
	// VentArea of the open vents.
	VentArea quantity.Opt[quantity.Area] `json:"vent_area" label:"Section of its vents" when:"vent=open" hint:"All together, where they are narrowest" min:"1 mm²" max:"1 m²"`
	// VentDistance is how far gas seeps through sand.
	VentDistance quantity.Opt[quantity.Length] `json:"vent_distance" label:"Skin to the nearest vent" when:"vent=open" hint:"Through the sand; left empty, twice volume over surface, which is the radius of a round core" min:"1 mm" max:"2 m"`
	// Permeability of the core sand.
	Permeability quantity.Opt[quantity.Number] `json:"permeability" label:"Permeability of the core, AFS" when:"vent=open" hint:"AFS number; core sands run from 60 to 250" default:"100" min:"1" max:"2000"`
	// TopDepth is where gas would break out first.
	TopDepth quantity.Opt[quantity.Length] `json:"top_depth" label:"Metal over its highest point" hint:"From the metal level in basin or open riser down to the top of the core; the least over which gas must not bubble" min:"0 mm" max:"10 m"`

	// Closed says that the hollow stays closed in the casting.
	Closed bool `json:"closed" label:"Its hollow stays closed" hint:"The core's hollow is closed off or filled in the finished casting"`
	// Filler and FillShare are what is put into it.
	Filler    quantity.Opt[quantity.Density] `json:"filler" label:"Density of the filling" when:"closed=yes" hint:"As it lies in the hollow; left empty, the hollow stays empty" min:"5 kg/m³" max:"12000 kg/m³"`
	FillShare quantity.Opt[quantity.Ratio]   `json:"fill_share" label:"Part that is filled" hint:"From the drawing, or pour the filling in from a measure" when:"closed=yes" default:"100 %" min:"0 %" max:"100 %"`
}

// Print is one print, or several alike.
type Print struct {
	// Hold says what it bears against.
	Hold quantity.Opt[Bears] `json:"hold" label:"Where it lies" hint:"What the print presses on when the metal lifts the core" default:"parting"`
	// Count is how many alike.
	Count quantity.Opt[int] `json:"count" label:"How many" hint:"Count them, all alike" default:"1" min:"1" max:"100"`
	// Area of one, seen from above.
	Area quantity.Area `json:"area" label:"Bearing area of one" hint:"Length times breadth, seen from above" min:"0.05 cm²" max:"10 m²"`
	// Volume of one, whose weight holds the core down.
	Volume quantity.Opt[quantity.Volume] `json:"volume" label:"Volume of one" hint:"Fill the print's part of the box from a jug; its weight helps to hold the core down" default:"0 cm³" min:"0 cm³" max:"5 m³"`
}

// By is a way to find a core's volume.
type By string

// The ways.
const (
	Stated     By = "stated"
	FromSolids By = "solids"
)

// Choices lists the ways for a form.
func (By) Choices() [][2]string {
	return [][2]string{{string(Stated), "Known already"}, {string(FromSolids), "Put together from solids"}}
}

// Stand is how a core lies in the metal.
type Stand string

// The stands.
const (
	Surrounded Stand = "surrounded"
	Upright    Stand = "upright"
)

// Choices lists the stands for a form.
func (Stand) Choices() [][2]string {
	return [][2]string{{string(Surrounded), "Metal above and below it"}, {string(Upright), "Upright, its foot in a print"}}
}

// Bears is what a print bears against.
type Bears string

// The places of a print.
const (
	Parting Bears = "parting"
	InCope  Bears = "cope"
	InDrag  Bears = "drag"
	Tied    Bears = "tied"
)

// Choices lists the places for a form.
func (Bears) Choices() [][2]string {
	return [][2]string{
		{string(Parting), "At the parting, between drag and cope"},
		{string(InCope), "In the cope, above the core"},
		{string(InDrag), "Stands in the drag, free to rise"},
		{string(Tied), "Held down in the drag: under its sand, wired or bolted"},
	}
}

// up says that the print holds the core against the lift, down that it
// carries the core's weight.
func (b Bears) up() bool   { return b != InDrag }
func (b Bears) down() bool { return b != InCope }

// Vent is whether the gas of a core has a way out.
type Vent string

// The vents.
const (
	OpenVent Vent = "open"
	NoVent   Vent = "none"
)

// Choices lists the vents for a form.
func (Vent) Choices() [][2]string {
	return [][2]string{{string(OpenVent), "Vented through a print to the air"}, {string(NoVent), "None"}}
}
