package tending

import (
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// The states of a mould.
const (
	ahead   = "ahead"
	pouring = "pouring"
	full    = "full"
)

// Output is how the pour stands. Times are counted from the first ladle full.
type Output struct {
	Now       quantity.Time                      `json:"now" label:"Moment looked at" step:"t_n"`
	Metal     quantity.Opt[quantity.Temperature] `json:"metal" label:"Metal now" step:"T_n"`
	Model     quantity.Opt[quantity.Temperature] `json:"model" label:"The same by the ladle's course alone" step:"M_n"`
	PerMinute quantity.Opt[quantity.TempDiff]    `json:"per_minute" label:"Lost in the next minute" step:"d_m"`
	Read      quantity.Opt[quantity.Temperature] `json:"read" label:"Latest reading"`
	ReadAt    quantity.Opt[quantity.Time]        `json:"read_at" label:"Read at"`
	Off       quantity.Opt[quantity.TempDiff]    `json:"off" label:"Reading over the course" step:"d_r" hint:"Below zero where the metal is colder than the course says"`
	Freezing  bool                               `json:"freezing" label:"Under its liquidus by now"`
	FreezesAt quantity.Opt[quantity.Time]        `json:"freezes_at" label:"Begins to freeze in the ladle at" step:"t_z"`
	Tap       quantity.Opt[quantity.Temperature] `json:"tap" label:"Tap at"`
	Ladles    int                                `json:"ladles" label:"Ladles filled"`
	FullAt    quantity.Opt[quantity.Time]        `json:"full_at" label:"Ladle last full at" step:"f_n"`
	Closed    bool                               `json:"closed" label:"Record closed"`

	Moulds []Poured `json:"moulds"`
	// Next is the timetable from now on if nothing else happens.
	Next []Step `json:"next"`
	// Wanted is what the plan does not say.
	Wanted []Wanted `json:"wanted"`
	// Course is the metal from the ladle last full, against seconds since
	// tapping.
	Course  working.Series `json:"course"`
	Trouble []Card         `json:"trouble"`
	InDoubt string         `json:"in_doubt" label:"In doubt"`
}

// Poured is one mould: its window, and how it was poured.
type Poured struct {
	Name   string `json:"name" label:"Mould"`
	Number int    `json:"number" label:"Number"`
	Ladle  int    `json:"ladle" label:"From ladle"`
	State  string `json:"state" label:"State"`

	Low     quantity.Opt[quantity.Temperature] `json:"low" label:"Coldest to pour" step:"T_c"`
	High    quantity.Opt[quantity.Temperature] `json:"high" label:"Hottest to pour" step:"T_h"`
	Opens   quantity.Opt[quantity.Time]        `json:"opens" label:"May be begun from" step:"t_o"`
	BeginBy quantity.Opt[quantity.Time]        `json:"begin_by" label:"Begin by" step:"t_x" hint:"To be full at its coldest"`
	FullBy  quantity.Opt[quantity.Time]        `json:"full_by" label:"Full by" step:"t_c"`
	// Cold says that its window was over as the ladle was full.
	Cold bool `json:"cold" label:"Too cold from the first"`

	Target   quantity.Opt[quantity.Time] `json:"target" label:"Pouring time to aim for" step:"t_p"`
	Shortest quantity.Opt[quantity.Time] `json:"shortest" label:"Shortest" step:"t_s"`
	Longest  quantity.Opt[quantity.Time] `json:"longest" label:"Longest" step:"t_l"`
	Utmost   quantity.Opt[quantity.Time] `json:"utmost" label:"Longest, at the utmost"`

	Begun  quantity.Opt[quantity.Time]        `json:"begun" label:"Begun at" step:"t_b"`
	Ended  quantity.Opt[quantity.Time]        `json:"ended" label:"Full at" step:"t_e"`
	Took   quantity.Opt[quantity.Time]        `json:"took" label:"Poured in" step:"t_w"`
	Hot    quantity.Opt[quantity.Temperature] `json:"hot" label:"Metal as it was begun" step:"T_b"`
	AtEnd  quantity.Opt[quantity.Temperature] `json:"at_end" label:"Metal as it was full" step:"T_e"`
	Judged working.Text                       `json:"judged" label:"Against its time"`
	// Fits is early, good, late, or empty where that cannot be said.
	Fits string `json:"fits" label:"Early or late"`

	Lip quantity.Opt[quantity.Angle] `json:"lip_tilt" label:"Tilt at which metal reaches the lip"`
	// Beat is how far to tip at each beat.
	Beat  quantity.Opt[quantity.Angle] `json:"beat" label:"Tip at each beat by"`
	Tilt  working.Series               `json:"tilt"`
	Beats working.Series               `json:"beats"`
}

// Step is a line of the timetable: what to do from a moment on.
type Step struct {
	From  quantity.Time     `json:"from" label:"From"`
	Do    working.Text      `json:"do" label:"Do"`
	Level string            `json:"level" label:"Level"`
	Mould quantity.Opt[int] `json:"mould" label:"Mould"`
}

// Wanted is something that the plan does not say, and the calculator that
// would.
type Wanted struct {
	Text    string `json:"text" label:"Not known"`
	Station string `json:"station" label:"Filled in at"`
}

// Card says what to do when something goes wrong.
type Card struct {
	Code  string `json:"code"`
	Title string `json:"title" label:"Trouble"`
	// Steps in their order.
	Steps  []string   `json:"steps" label:"Do"`
	Source source.Ref `json:"source" label:"Source"`
	// Law says where a local code goes before it.
	Law string `json:"law" label:"Law"`
}
