package tending

import "pourwright/calc/quantity"

// What happened: the values of Event.What.
const (
	tapped  = "tapped"
	reading = "reading"
	start   = "start"
	stop    = "stop"
	closed  = "closed"
)

// Record is what happened at a pour, as it was tapped in.
type Record struct {
	Events []Event `json:"events" label:"What happened" max:"400"`
}

// Event is one thing that happened.
type Event struct {
	// What it was.
	What string `json:"what" label:"What" choices:"tapped:Ladle full|reading:Temperature read|start:Pour begun|stop:Pour ended|remark:Remark|trouble:Trouble|hold:Hold point|clock:Clock of the device|closed:Record closed"`
	// At is the time since the ladle was first full.
	At quantity.Opt[quantity.Time] `json:"at" label:"Since tapping" hint:"From the first ladle full" min:"0 s" max:"24 h"`
	// Clock is the time of day by the clock of the device.
	Clock string `json:"clock" label:"Time of day" max:"40"`
	// Mould is its number in the plan's list, Name what it was called.
	Mould quantity.Opt[int] `json:"mould" label:"Mould" hint:"Its number in the list of moulds" min:"1" max:"40"`
	Name  string            `json:"name" label:"Name of the mould" max:"60"`
	// Temperature that was read.
	Temperature quantity.Opt[quantity.Temperature] `json:"temperature" label:"Temperature" when:"what=reading" min:"-40 °C" max:"1900 °C"`
	// Note is a remark, a reason, the trouble.
	Note string `json:"note" label:"Note" max:"300"`
	// Struck events do not count; they stay to be read.
	Struck bool `json:"struck" label:"Struck out" hint:"Tapped by mistake"`
}

// Input is the pour: what happened, and what the plan knows of it.
type Input struct {
	// Events in the order in which they were tapped in.
	Events []Event `json:"events" label:"What happened" max:"400"`
	// Now is the moment to look at.
	Now quantity.Opt[quantity.Time] `json:"now" label:"Moment to look at" hint:"Since tapping; leave empty for the moment of the latest thing that happened" min:"0 s" max:"24 h"`

	// Tap is the temperature to tap at.
	Tap quantity.Opt[quantity.Temperature] `json:"tap" label:"Tap at" part:"Metal" link:"ladleheat" min:"150 °C" max:"1800 °C"`
	// Liquidus is where the metal begins to freeze, and the course to say nothing.
	Liquidus quantity.Opt[quantity.Temperature] `json:"liquidus" label:"Liquidus" link:"metal" hint:"Below it the metal is freezing, and no longer falls as reckoned" min:"100 °C" max:"1700 °C"`
	// Course is the metal in the ladle from the moment it is full.
	Course []Point `json:"course" label:"Course of the metal in the ladle" link:"ladleheat" max:"200"`
	// Constant is τ of the loss.
	Constant quantity.Opt[quantity.Time] `json:"time_constant" label:"Time constant of the loss" link:"ladleheat" hint:"For the time after the course ends" min:"60 s" max:"10000 h"`
	// Surroundings of the ladle.
	Surroundings quantity.Opt[quantity.Temperature] `json:"surroundings" label:"Surroundings" link:"ladleheat" default:"20 °C" min:"-40 °C" max:"600 °C"`

	// Moulds in the order of pouring.
	Moulds []Mould `json:"moulds" label:"Moulds, in the order of pouring" link:"order" max:"40"`
}

// Point is one point of the metal's course.
type Point struct {
	At          quantity.Opt[quantity.Time] `json:"at" label:"Since the ladle was full" min:"0 s" max:"24 h"`
	Temperature quantity.Temperature        `json:"temperature" label:"Temperature of the metal" min:"-40 °C" max:"1900 °C"`
}

// Mould is one mould.
type Mould struct {
	// Name of the mould.
	Name string `json:"name" label:"Name" hint:"As chalked on the flask" max:"120"`
	// Number by which the events name it.
	Number quantity.Opt[int] `json:"number" label:"Number" hint:"By which the record names it; leave empty for its place in this list" min:"1" max:"40"`
	// Ladle that it is poured from.
	Ladle quantity.Opt[int] `json:"ladle" label:"From ladle" default:"1" min:"1" max:"40"`
	// Low and High are its window of temperature.
	Low  quantity.Opt[quantity.Temperature] `json:"low" label:"Coldest to pour" min:"-40 °C" max:"1900 °C"`
	High quantity.Opt[quantity.Temperature] `json:"high" label:"Hottest to pour" min:"-40 °C" max:"1900 °C"`
	// Target is the pouring time to aim for, Shortest and Longest its band,
	// Utmost the time after which it will not fill.
	Target   quantity.Opt[quantity.Time] `json:"target" label:"Pouring time to aim for" link:"pour" min:"0.1 s" max:"1 h"`
	Shortest quantity.Opt[quantity.Time] `json:"shortest" label:"Shortest" link:"pour" min:"0.01 s" max:"2 h"`
	Longest  quantity.Opt[quantity.Time] `json:"longest" label:"Longest" link:"pour" min:"0.01 s" max:"2 h"`
	Utmost   quantity.Opt[quantity.Time] `json:"utmost" label:"Longest, at the utmost" link:"pour" min:"0.01 s" max:"24 h"`
	// Lip is the tilt at which metal reaches the lip, Tilt what it should be
	// from the moment the wanted flow runs.
	Lip  quantity.Opt[quantity.Angle] `json:"lip_tilt" label:"Tilt at which metal reaches the lip" link:"ladle" min:"0°" max:"90°"`
	Tilt []Tilt                       `json:"tilt" label:"Tilt against time" link:"ladle" max:"200"`
}

// Tilt is one point of the tilt against time.
type Tilt struct {
	At   quantity.Opt[quantity.Time]  `json:"at" label:"Since the flow began" min:"0 s" max:"2 h"`
	Tilt quantity.Opt[quantity.Angle] `json:"tilt" label:"Tilt" min:"0°" max:"90°"`
}
