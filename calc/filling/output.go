package filling

import (
	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// Output is the filling. Times count from when metal first leaves the
// ingates.
type Output struct {
	FillTime quantity.Time               `json:"fill_time" label:"Time to fill the mould" step:"t_fill"`
	Closed   quantity.Opt[quantity.Time] `json:"closed_time" label:"The same by the closed form" step:"t_x" hint:"Where there is one: ingates at one level, even slices, a full basin"`
	ByRule   quantity.Opt[quantity.Time] `json:"time_by_rule" label:"The same by the trade's head" step:"t_H" hint:"As if the cavity were even"`
	Volume   quantity.Volume             `json:"volume" label:"Volume of the cavity" step:"V"`
	Mass     quantity.Mass               `json:"mass" label:"Metal in it" step:"m_V"`

	FlowStart quantity.VolumeFlow `json:"flow_start" label:"Flow at the start" step:"Q_0"`
	FlowEnd   quantity.VolumeFlow `json:"flow_end" label:"Flow at the end" step:"Q_e"`
	FlowMean  quantity.VolumeFlow `json:"flow_mean" label:"Flow, on average" step:"Q_m"`
	RateStart quantity.MassFlow   `json:"rate_start" label:"Flow at the start, by mass" step:"q_0"`

	RiseMost    quantity.Speed `json:"rise_most" label:"Fastest rise of the level" step:"v_hi"`
	RiseMostAt  quantity.Time  `json:"rise_most_at" label:"Fastest rise after" step:"t_v_hi"`
	RiseLeast   quantity.Speed `json:"rise_least" label:"Slowest rise of the level" step:"v_lo"`
	RiseLeastAt quantity.Time  `json:"rise_least_at" label:"Slowest rise after" step:"t_v_lo"`

	IngateMost   quantity.Speed                `json:"ingate_most" label:"Fastest at an ingate" step:"v_g"`
	IngateMostAt quantity.Time                 `json:"ingate_most_at" label:"Fastest at an ingate after" step:"t_v_g"`
	IngateWhich  string                        `json:"ingate_which" label:"Which ingate"`
	Landing      quantity.Opt[quantity.Speed]  `json:"landing" label:"Falling metal lands with" step:"v_d"`
	Gates        []Gate                        `json:"gates"`
	BasinLeast   quantity.Opt[quantity.Length] `json:"basin_least" label:"Least depth of metal in the basin" step:"h_b_lo"`
	BasinDry     quantity.Opt[quantity.Time]   `json:"basin_dry" label:"Basin runs empty after" step:"t_dry"`

	Faces       []Face                       `json:"surfaces"`
	LiftFilling quantity.Opt[quantity.Force] `json:"lift_filling" label:"Lift just before the mould is full" step:"F_f"`
	LiftFull    quantity.Opt[quantity.Force] `json:"lift_full" label:"Lift, mould full and at rest" step:"F_s"`
	LiftSurged  quantity.Opt[quantity.Force] `json:"lift_surged" label:"Lift with the surge" step:"F_u"`

	FrontArrives quantity.Opt[quantity.Temperature] `json:"front_arrives" label:"Metal comes to the wall at" step:"T_a"`
	FrontEnd     quantity.Opt[quantity.Temperature] `json:"front_end" label:"Front when the mould is full, likely" step:"T_e"`
	FrontWorst   quantity.Opt[quantity.Temperature] `json:"front_worst" label:"Front when the mould is full, at the worst" step:"T_e_lo"`
	FrontBest    quantity.Opt[quantity.Temperature] `json:"front_best" label:"Front when the mould is full, at best" step:"T_e_hi"`
	FrontFreezes quantity.Opt[quantity.Time]        `json:"front_liquidus" label:"Front comes to its liquidus after, likely" step:"t_liq"`
	FrontLatent  quantity.Opt[quantity.Ratio]       `json:"front_latent" label:"Latent heat gone from the front when the mould is full, likely" step:"x_L"`

	Balance quantity.Number  `json:"balance" label:"Metal in less metal there, of the whole" step:"x_V"`
	Steps   int              `json:"steps" label:"Steps of the integration"`
	Moments []Moment         `json:"moments"`
	Curves  []working.Series `json:"curves"`
}

// Gate is what one level of ingates does.
type Gate struct {
	Name   string                      `json:"name" label:"Ingate"`
	Runs   quantity.Opt[quantity.Time] `json:"runs" label:"Begins to run after" step:"t_g"`
	Most   quantity.Speed              `json:"most" label:"Fastest" step:"v_j"`
	Passed quantity.Volume             `json:"passed" label:"Metal that comes through it" step:"V_j"`
}

// Face is what one face of the cope is pressed with.
type Face struct {
	Name    string                      `json:"name" label:"Surface"`
	Touched quantity.Opt[quantity.Time] `json:"touched" label:"Metal comes to it after" step:"t_s"`
	Lift    quantity.Force              `json:"lift" label:"Lift, mould full and at rest" step:"F"`
}

// Moment is a change in the course of the filling.
type Moment struct {
	Time  quantity.Time   `json:"time" label:"After"`
	What  string          `json:"what" label:"What happens"`
	Level quantity.Length `json:"level" label:"Level in the cavity"`
}
