package pour

import (
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// Output is the pouring time, its window, and what follows from it.
type Output struct {
	Time      quantity.Opt[quantity.Time] `json:"time" label:"Recommended pouring time" step:"t_rec"`
	LimitedBy string                      `json:"limited_by" label:"Decided by"`
	ByRule    quantity.Time               `json:"by_rule" label:"Time by the metal's rule" step:"t_r"`

	// The window: the usual ends and the utmost ones.
	Shortest       quantity.Opt[quantity.Time] `json:"shortest" label:"Shortest" step:"t_s"`
	ShortestUtmost quantity.Opt[quantity.Time] `json:"shortest_utmost" label:"Shortest, at the utmost" step:"t_s_lo"`
	LongestWorst   quantity.Time               `json:"longest_worst" label:"Longest for the thin wall, at the worst" step:"t_n_lo" hint:"With every doubtful figure at its bad end"`
	Longest        quantity.Time               `json:"longest" label:"Longest" step:"t_l"`
	LongestUtmost  quantity.Time               `json:"longest_utmost" label:"Longest, at the utmost" step:"t_l_hi"`

	Chart  working.Bars `json:"chart"`
	Rules  []Rule       `json:"rules"`
	Limits []Limit      `json:"limits"`

	// At the time reckoned with: the chosen one, or else the recommended.
	Reckoned    quantity.Opt[quantity.Time]       `json:"reckoned" label:"Time reckoned with" step:"t_w" hint:"The one you chose, or else the recommended"`
	FlowRate    quantity.Opt[quantity.MassFlow]   `json:"flow_rate" label:"Pouring rate" step:"q_m"`
	VolumeFlow  quantity.Opt[quantity.VolumeFlow] `json:"volume_flow" label:"Flow" step:"Q"`
	IngateSpeed quantity.Opt[quantity.Speed]      `json:"ingate_speed" label:"Speed at the ingates" step:"v_g"`
	IngatesFor  quantity.Opt[quantity.Area]       `json:"ingates_wanted" label:"Ingates wanted, all together" step:"A_gw" hint:"For the speed limit at this time"`
	RiseSpeed   quantity.Opt[quantity.Speed]      `json:"rise_speed" label:"Rise of the level, on average" step:"v_u"`
	VentSpeed   quantity.Opt[quantity.Speed]      `json:"vent_speed" label:"Air in the vents" step:"v_v"`
	FrontSpeed  quantity.Opt[quantity.Speed]      `json:"front_speed" label:"Front in the thin wall, at least" step:"v_f" hint:"To reach its end in its share of the time"`

	Superheat quantity.TempDiff `json:"superheat" label:"Superheat at the wall" step:"Delta_T"`
	LifeLow   quantity.Time     `json:"life_low" label:"Thin wall stays fluid, at least" step:"t_f_lo"`
	Life      quantity.Time     `json:"life" label:"Thin wall stays fluid, likely" step:"t_f"`
	LifeHigh  quantity.Time     `json:"life_high" label:"Thin wall stays fluid, at most" step:"t_f_hi"`
	RunLow    quantity.Length   `json:"run_low" label:"How far it runs at the speed limit, at the worst" step:"L_lo"`
	Runs      quantity.Length   `json:"run" label:"How far it runs at the speed limit" step:"L_r"`
	RunHigh   quantity.Length   `json:"run_high" label:"How far it runs at the speed limit, at the utmost" step:"L_hi"`

	Factor quantity.Opt[quantity.Number] `json:"fluidity_factor" label:"Fluidity factor" step:"K"`
	Spiral quantity.Opt[quantity.Length] `json:"spiral" label:"Fluidity spiral" step:"L_s"`

	Head       quantity.Opt[quantity.Length] `json:"head" label:"Effective head, trade rule" step:"H"`
	ExactHead  quantity.Opt[quantity.Length] `json:"exact_head" label:"Effective head, exact" step:"H_x"`
	SprueSpeed quantity.Opt[quantity.Speed]  `json:"sprue_speed" label:"Speed at the foot of the sprue" step:"v"`
	Choke      quantity.Opt[quantity.Area]   `json:"choke" label:"Choke by the trade's head" step:"A_cr"`
	ExactChoke quantity.Opt[quantity.Area]   `json:"exact_choke" label:"Choke by the exact head" step:"A_cx" hint:"Never smaller; the better of the two where the cavity rises near the basin"`
	Taper      quantity.Opt[quantity.Number] `json:"taper" label:"Area at the top of the sprue over its foot" step:"r_t"`
	ChokeTime  quantity.Opt[quantity.Time]   `json:"choke_time" label:"Time that your choke gives" step:"t_cx" hint:"By the exact head"`
	ChokeRule  quantity.Opt[quantity.Time]   `json:"choke_time_by_rule" label:"The same by the trade's head" step:"t_cr"`

	Surfaces      []Pushed                     `json:"surfaces"`
	LiftStatic    quantity.Opt[quantity.Force] `json:"lift_static" label:"Lift, mould full and at rest" step:"F_s"`
	LiftSurged    quantity.Opt[quantity.Force] `json:"lift_surged" label:"Lift with the surge" step:"F_u"`
	Together      quantity.Opt[quantity.Mass]  `json:"hold_together" label:"Cope and weights together, at least" step:"m_t"`
	WeightsStatic quantity.Opt[quantity.Mass]  `json:"weights_static" label:"Weights still wanted, metal at rest" step:"m_n"`
	WeightsSurged quantity.Opt[quantity.Mass]  `json:"weights_surged" label:"Weights still wanted, with the surge" step:"m_u"`
}

// Rule is one of the trade's rules.
type Rule struct {
	Name    string                      `json:"name" label:"Rule"`
	Time    quantity.Opt[quantity.Time] `json:"time" label:"Time" step:"t"`
	Low     quantity.Opt[quantity.Time] `json:"low" label:"From" step:"t_lo"`
	High    quantity.Opt[quantity.Time] `json:"high" label:"To" step:"t_hi"`
	Within  string                      `json:"within" label:"Good for"`
	InRange bool                        `json:"in_range" label:"Within what it was made for"`
	Used    bool                        `json:"used" label:"Used for the recommended time"`
	Source  source.Ref                  `json:"source" label:"Source"`
}

// Limit is one end of the window.
type Limit struct {
	Name   string                      `json:"name" label:"Limit"`
	Side   string                      `json:"side" label:"Side"`
	Usual  quantity.Opt[quantity.Time] `json:"usual" label:"Limit" step:"t_1"`
	Utmost quantity.Opt[quantity.Time] `json:"utmost" label:"Limit, at the utmost" step:"t_2"`
	Why    string                      `json:"why" label:"Remark"`
}

// Pushed is the lift on one surface.
type Pushed struct {
	Lift quantity.Force `json:"lift" label:"Lift" step:"F"`
}
