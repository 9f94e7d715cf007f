package shop

import "pourwright/calc/quantity"

// Output is how many to pour, and what they take.
type Output struct {
	Moulds   int            `json:"moulds" label:"Moulds to pour" step:"n_m"`
	Castings int            `json:"castings" label:"Castings poured" step:"n_c"`
	Reached  quantity.Ratio `json:"reached" label:"Certainty with these" step:"P"`
	// Fewer is the certainty with one mould less.
	Fewer    quantity.Opt[quantity.Ratio] `json:"fewer" label:"Certainty with one mould less" step:"P_1"`
	Least    int                          `json:"least" label:"Least castings for the certainty" step:"n" hint:"Before they are made up to whole moulds"`
	Even     quantity.Number              `json:"even" label:"Castings by plain division" step:"n_0" hint:"Wanted over the share that is good; enough only about every other time"`
	Expected quantity.Number              `json:"expected" label:"Good ones to be expected" step:"g"`
	Together int                          `json:"together" label:"Moulds, if each is good or bad as a whole" step:"n_t"`

	Metal   quantity.Opt[quantity.Mass] `json:"metal" label:"Metal to pour" step:"m_p"`
	Charge  quantity.Opt[quantity.Mass] `json:"charge" label:"Metal to charge" step:"m_c"`
	Back    quantity.Opt[quantity.Mass] `json:"back" label:"Coming back as returns" step:"m_b" hint:"With as many good castings sold as are wanted"`
	Sand    quantity.Opt[quantity.Mass] `json:"sand" label:"Sand to prepare" step:"m_s"`
	NewSand quantity.Opt[quantity.Mass] `json:"new_sand" label:"Of it new" step:"m_n"`

	Cost     quantity.Opt[quantity.Money] `json:"cost" label:"Cost of it all" step:"K"`
	PerGood  quantity.Opt[quantity.Money] `json:"per_good" label:"Cost of a good casting" step:"k" hint:"Of those wanted; spare ones are not counted as sold"`
	ScrapFor quantity.Opt[quantity.Money] `json:"scrap_for" label:"Of it paid for scrap and certainty" step:"k_s" hint:"Against a shop that makes no scrap"`
}
