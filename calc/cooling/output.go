package cooling

import (
	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// Output is when the casting may come out. Times are counted from the end of
// the pour.
type Output struct {
	Recommended            quantity.Time        `json:"recommended" label:"Shake out after" step:"t_hi" hint:"Cold enough even at the slow end of what metal and sand may do"`
	RecommendedTemperature quantity.Temperature `json:"recommended_temperature" label:"Shakeout temperature" step:"T_x"`
	Earliest               quantity.Time        `json:"earliest" label:"Earliest shakeout" step:"t_e" hint:"Most likely at the most that is usual; measure before you trust it"`
	EarliestTemperature    quantity.Temperature `json:"earliest_temperature" label:"Most at shakeout" step:"T_y"`

	Time     quantity.Time `json:"time" label:"Most likely time to the shakeout temperature" step:"t"`
	TimeLow  quantity.Time `json:"time_low" label:"Time to it, at least" step:"t_lo"`
	TimeHigh quantity.Time `json:"time_high" label:"Time to it, at most" step:"t_hi"`
	// Fresh is the time by the formula for fresh sand.
	Fresh quantity.Time `json:"fresh" label:"Time by the formula for fresh sand" step:"t_n" hint:"Too short: it forgets the heat that the sand took while the metal froze"`

	Freezing     quantity.Time `json:"freezing" label:"Freezing time" step:"t_f"`
	FreezingLow  quantity.Time `json:"freezing_low" label:"Freezing time, at least" step:"t_f_lo"`
	FreezingHigh quantity.Time `json:"freezing_high" label:"Freezing time, at most" step:"t_f_hi"`

	Open     quantity.Opt[quantity.Temperature] `json:"open" label:"Casting when the mould is opened" step:"T_o" hint:"Most likely"`
	OpenHigh quantity.Opt[quantity.Temperature] `json:"open_high" label:"Casting when the mould is opened, at most" step:"T_o_hi"`

	Modulus    quantity.Length                    `json:"modulus" label:"Modulus" step:"M"`
	Constant   quantity.FreezingConstant          `json:"constant" label:"Freezing constant" step:"C"`
	Effective  quantity.Temperature               `json:"effective" label:"Effective freezing temperature" step:"T_e"`
	Effusivity quantity.Effusivity                `json:"effusivity" label:"Heat effusivity of the mould" step:"b"`
	Biot       quantity.Number                    `json:"biot" label:"Biot number" step:"Bi" hint:"Below 0.1 the casting is as good as alike in temperature all through"`
	Warmed     quantity.Opt[quantity.Ratio]       `json:"warmed" label:"Heat felt at the end of the sand" step:"w_s" hint:"Of the heat at the face, by the time of shakeout"`
	Mixed      quantity.Opt[quantity.Temperature] `json:"mixed" label:"Casting and its sand, if nothing were lost" step:"T_q"`

	Curves []working.Series `json:"curves"`
}
