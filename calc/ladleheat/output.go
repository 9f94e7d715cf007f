package ladleheat

import (
	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// Output is how the metal cools. Times are counted from the ladle filled.
type Output struct {
	TapNeeded     quantity.Opt[quantity.Temperature] `json:"tap_needed" label:"Tap at" step:"T_n" hint:"So that the last mould is filled at the coldest that may be poured"`
	TapNeededHigh quantity.Opt[quantity.Temperature] `json:"tap_needed_high" label:"Tap at, with the worst of drop and losses" step:"T_n_hi"`
	Drop          quantity.TempDiff                  `json:"drop" label:"Drop in tapping" step:"d"`

	Filled  quantity.Temperature               `json:"filled" label:"In the ladle as it is filled" step:"T_f"`
	Start   quantity.Temperature               `json:"start" label:"As pouring begins" step:"T_s"`
	End     quantity.Opt[quantity.Temperature] `json:"end" label:"As the last mould is full" step:"T_e"`
	EndLow  quantity.Opt[quantity.Temperature] `json:"end_low" label:"As the last mould is full, at the least" step:"T_e_lo"`
	EndHigh quantity.Opt[quantity.Temperature] `json:"end_high" label:"As the last mould is full, at the most" step:"T_e_hi"`
	Low     quantity.Temperature               `json:"window_low" label:"Coldest to pour" step:"T_c"`
	High    quantity.Temperature               `json:"window_high" label:"Hottest to pour" step:"T_h"`

	Wait     quantity.Opt[quantity.Time] `json:"wait" label:"Falls to the hottest to pour after" step:"t_w" hint:"Standing in the ladle; blank where it is below from the first"`
	Holds    quantity.Opt[quantity.Time] `json:"holds" label:"Stays hot enough for" step:"t_h" hint:"Standing in the ladle, none poured"`
	HoldsLow quantity.Opt[quantity.Time] `json:"holds_low" label:"Stays hot enough for, at the least" step:"t_h_lo"`

	PerMinute quantity.TempDiff           `json:"per_minute" label:"Lost in a minute, as pouring begins" step:"d_m"`
	Constant  quantity.Opt[quantity.Time] `json:"time_constant" label:"Time constant of the loss" step:"tau" hint:"Of an even decay that loses as much; for the order of pouring"`

	TopFirst  quantity.Opt[quantity.TempDiff] `json:"top_first" label:"Lost in a minute by the top, ladle just filled" step:"d_t"`
	WallFirst quantity.Opt[quantity.TempDiff] `json:"wall_first" label:"Lost in a minute into the lining, mean of the first five" step:"d_w"`
	TopFlux   quantity.Opt[quantity.HeatFlux] `json:"top_flux" label:"Radiated by the top" step:"j_t"`
	TopHeat   quantity.Opt[quantity.Energy]   `json:"top_heat" label:"Heat lost by the top, in all" step:"Q_t"`
	WallHeat  quantity.Opt[quantity.Energy]   `json:"wall_heat" label:"Heat lost into the lining, in all" step:"Q_w"`
	Unmatched quantity.Opt[quantity.Ratio]    `json:"unmatched" label:"Heat balance open by" step:"x_u" hint:"Of the heat lost; the measure of the steps taken"`
	Outside   quantity.Opt[quantity.Energy]   `json:"outside" label:"Heat lost from the outside of the crucible, in all" step:"Q_o"`
	Depth     quantity.Opt[quantity.Length]   `json:"depth" label:"Depth of the metal" step:"h"`
	Wide      quantity.Opt[quantity.Length]   `json:"diameter" label:"Inside diameter" step:"D"`

	Curves []working.Series `json:"curves"`
}
