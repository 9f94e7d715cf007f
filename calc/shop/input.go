package shop

import "pourwright/calc/quantity"

// Input is what is wanted, how the shop does, and what things cost.
type Input struct {
	// Good is N.
	Good int `json:"good" label:"Good castings wanted" hint:"From the order" part:"Castings" min:"1" max:"1000"`
	// PerMould is the castings in a mould.
	PerMould quantity.Opt[int] `json:"per_mould" label:"Castings in a mould" hint:"Count them on the pattern plate" default:"1" min:"1" max:"100"`
	// Scrap is the shop's scrap rate for this casting.
	Scrap quantity.Opt[quantity.Ratio] `json:"scrap" label:"Scrap rate" hint:"Of this casting or ones like it: bad ones over all that were poured" min:"0 %" max:"95 %"`
	// Certainty of getting enough.
	Certainty quantity.Opt[quantity.Ratio] `json:"certainty" label:"Certainty wanted" hint:"Of having enough good castings from these moulds" default:"95 %" min:"50 %" max:"99.99 %"`

	// Metal poured into a mould.
	Metal quantity.Opt[quantity.Mass] `json:"metal" label:"Metal poured per mould" link:"weight" part:"Metal and sand" hint:"With risers and gates" min:"1 g" max:"30 t"`
	// Loss in melting.
	Loss quantity.Opt[quantity.Ratio] `json:"loss" label:"Melting loss" link:"weight" hint:"Share of the charge that burns off or goes with the slag" default:"0 %" min:"0 %" max:"30 %"`
	// Casting is one casting, fettled.
	Casting quantity.Opt[quantity.Mass] `json:"casting" label:"Weight of a casting" link:"weight" hint:"Fettled; the rest of the metal comes back as returns" min:"1 g" max:"30 t"`
	// Sand of a mould, and the share used again.
	Sand   quantity.Opt[quantity.Mass]  `json:"sand" label:"Sand per mould" hint:"Weigh a rammed mould, or its sand" link:"mould" min:"1 g" max:"100 t"`
	Reused quantity.Opt[quantity.Ratio] `json:"reused" label:"Sand used again" hint:"Share that goes back into moulds" default:"0 %" min:"0 %" max:"100 %"`

	// Prices, in the user's own money.
	MetalPrice  quantity.Opt[quantity.Price] `json:"metal_price" label:"Price of the metal" part:"Prices" hint:"From the bill, as charged" min:"0 per kg" max:"1000000 per kg"`
	Returns     quantity.Opt[quantity.Ratio] `json:"returns" label:"Returns are worth" hint:"Risers, gates and scrap, as a share of the metal's price" default:"0 %" min:"0 %" max:"100 %"`
	SandPrice   quantity.Opt[quantity.Price] `json:"sand_price" label:"Price of the sand" hint:"From the bill, with its binder" min:"0 per kg" max:"100000 per kg"`
	MouldCost   quantity.Opt[quantity.Money] `json:"mould_cost" label:"Other cost of each mould" hint:"Moulding, cores, filters, fettling" min:"0" max:"10000000"`
	HeatCost    quantity.Opt[quantity.Money] `json:"heat_cost" label:"Cost of the whole pour" hint:"Fuel, crew, lining: what does not grow with the moulds" min:"0" max:"100000000"`
	PatternCost quantity.Opt[quantity.Money] `json:"pattern_cost" label:"Pattern to be paid by this order" hint:"From the pattern maker's bill; nothing if it is paid for" min:"0" max:"100000000"`
}
