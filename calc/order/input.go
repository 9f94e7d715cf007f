package order

import (
	"pourwright/calc/alloy"
	"pourwright/calc/quantity"
)

const (
	byConstant = "constant"
	byReadings = "readings"
)

// Input is the moulds and the ladle.
type Input struct {
	// Moulds to pour.
	Moulds []Mould `json:"moulds" label:"Moulds" hint:"One entry for each on the floor" min:"1" max:"40"`
	// Alloy gives the usual windows.
	Alloy quantity.Opt[alloy.Code] `json:"alloy" label:"Metal" link:"metal" hint:"For the usual window of a wall; not needed where every mould has its own"`

	// Start is the metal in the ladle as the first pour begins.
	Start quantity.Opt[quantity.Temperature] `json:"start" label:"In the ladle as pouring begins" part:"Ladle" link:"ladleheat" hint:"Leave empty to take the middle of what works" min:"150 °C" max:"1800 °C"`
	// Before is what is lost from the furnace until then.
	Before quantity.Opt[quantity.TempDiff] `json:"before" label:"Lost from furnace to first pour" link:"ladleheat" hint:"Drop in tapping and the time until pouring begins; leave empty to leave the tapping temperature open" min:"0 K" max:"400 K"`
	// Basis of the cooling.
	Basis quantity.Opt[string] `json:"basis" label:"Cooling of the ladle from" hint:"From the heat of the ladle, or two readings of it" default:"constant" choices:"constant:Its time constant|readings:Two thermometer readings"`
	// Constant is τ.
	Constant quantity.Time `json:"time_constant" label:"Time constant of the loss" when:"basis=constant" link:"ladleheat" hint:"The temperature over the surroundings, divided by what is lost in the same unit of time" min:"60 s" max:"10000 h"`
	// First and Second are readings of the ladle, Between the time between them.
	First   quantity.Temperature `json:"first" label:"First reading" hint:"Thermometer in the full ladle" when:"basis=readings" min:"150 °C" max:"1800 °C"`
	Second  quantity.Temperature `json:"second" label:"Second reading" when:"basis=readings" hint:"Thermometer in the same ladle, later" min:"150 °C" max:"1800 °C"`
	Between quantity.Time        `json:"between" label:"Time between the readings" hint:"Watch in hand; the longer, the better the rate is known" when:"basis=readings" min:"5 s" max:"6 h"`
	// Surroundings of the ladle.
	Surroundings quantity.Opt[quantity.Temperature] `json:"surroundings" label:"Surroundings" hint:"Thermometer in the shop" default:"20 °C" min:"-40 °C" max:"600 °C"`
	// Step is the time from one mould to the next.
	Step quantity.Opt[quantity.Time] `json:"step" label:"Time from one mould to the next" hint:"From the end of one pour to the beginning of the next" default:"10 s" min:"0 s" max:"1 h"`
	// Capacity of the ladle.
	Capacity quantity.Opt[quantity.Mass] `json:"capacity" label:"Metal the ladle holds" link:"ladle" hint:"Less what is left in it; leave empty if it holds enough" min:"0.1 kg" max:"30 t"`
}

// Mould is one mould.
type Mould struct {
	// Name of the mould.
	Name string `json:"name" label:"Name" hint:"As chalked on the flask" max:"60"`
	// Mass poured into it.
	Mass quantity.Mass `json:"mass" label:"Metal poured" hint:"Weigh casting, risers and gates of one like it" min:"1 g" max:"30 t"`
	// Pouring is its pouring time.
	Pouring quantity.Time `json:"pouring" label:"Pouring time" hint:"From its plan, or timed last time" min:"0.5 s" max:"1 h"`
	// Shortest and Longest are how quickly and how slowly it may be poured.
	Shortest quantity.Opt[quantity.Time] `json:"shortest" label:"Shortest pouring time" hint:"From its own plan, for the furnace side; leave empty if not known" min:"0.1 s" max:"1 h"`
	Longest  quantity.Opt[quantity.Time] `json:"longest" label:"Longest pouring time" hint:"From its own plan, for the furnace side; leave empty if not known" min:"0.5 s" max:"2 h"`
	// Wall that rules, for the usual window.
	Wall quantity.Opt[quantity.Length] `json:"wall" label:"Thinnest wall that must run" hint:"For the usual window, where it has none of its own" min:"1 mm" max:"500 mm"`
	// Low and High are its window.
	Low  quantity.Opt[quantity.Temperature] `json:"low" label:"Coldest to pour" hint:"At the lip; leave empty for the metal's usual range" min:"150 °C" max:"1800 °C"`
	High quantity.Opt[quantity.Temperature] `json:"high" label:"Hottest to pour" hint:"At the lip; leave empty for the metal's usual range" min:"150 °C" max:"1800 °C"`
}
