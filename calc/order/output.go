package order

import (
	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// Output is the order, and whether it works.
type Output struct {
	Moulds []Poured `json:"moulds"`

	Worst quantity.TempDiff `json:"worst" label:"Worst mould too cold by" step:"v" hint:"0 where every mould is poured inside its window"`
	Total quantity.TempDiff `json:"total" label:"Cold in all" step:"v_t" hint:"Over all the moulds that are poured too cold"`
	// InHand is how much the mould that is worst off has to spare.
	InHand quantity.Opt[quantity.TempDiff] `json:"in_hand" label:"Least in hand" step:"v_h" hint:"Above its coldest, in the mould that is worst off"`
	Proved bool                            `json:"proved" label:"Best of all orders, proved"`
	Bound  quantity.TempDiff               `json:"bound" label:"No order can do better than" step:"v_b"`

	Start     quantity.Temperature               `json:"start" label:"In the ladle as pouring begins" step:"T_0"`
	StartLow  quantity.Opt[quantity.Temperature] `json:"start_low" label:"Works from" step:"T_lo" hint:"In the ladle as pouring begins; colder than this no order works"`
	StartHigh quantity.Opt[quantity.Temperature] `json:"start_high" label:"Works without waiting up to" step:"T_hi" hint:"In this order; hotter metal has to wait"`
	TapLow    quantity.Opt[quantity.Temperature] `json:"tap_low" label:"Tap from" step:"T_tlo"`
	TapHigh   quantity.Opt[quantity.Temperature] `json:"tap_high" label:"Tap up to, without waiting" step:"T_thi"`

	Finish   quantity.Time     `json:"finish" label:"Last mould full after" step:"t_f"`
	Waiting  quantity.Time     `json:"waiting" label:"Waiting in all" step:"t_w"`
	Mass     quantity.Mass     `json:"mass" label:"Metal for all the moulds" step:"m"`
	Constant quantity.Time     `json:"time_constant" label:"Time constant of the loss" step:"tau"`
	Ladles   quantity.Opt[int] `json:"ladles" label:"Ladles or reheats needed" hint:"Each filled at the same temperature; blank where a mould cannot be poured from any"`

	Curves []working.Series `json:"curves"`
}

// Poured is one mould, in the order of pouring.
type Poured struct {
	Name   string               `json:"name" label:"Mould"`
	Place  int                  `json:"place" label:"Poured as number"`
	Listed int                  `json:"listed" label:"Number in your list"`
	Wait   quantity.Time        `json:"wait" label:"Wait before it" step:"w"`
	Begin  quantity.Time        `json:"begin" label:"Begin after" step:"t_b"`
	End    quantity.Time        `json:"end" label:"Full after" step:"t_e"`
	Hot    quantity.Temperature `json:"hot" label:"Metal as it is begun" step:"T_b"`
	Cold   quantity.Temperature `json:"cold" label:"Metal as it is full" step:"T_e"`
	Low    quantity.Temperature `json:"low" label:"Coldest to pour" step:"T_c"`
	High   quantity.Temperature `json:"high" label:"Hottest to pour" step:"T_h"`
	Short  quantity.TempDiff    `json:"short" label:"Too cold by" step:"v"`
	Ladle  quantity.Opt[int]    `json:"ladle" label:"From ladle" hint:"Where one ladle is not enough"`
}
