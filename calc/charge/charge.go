// Package charge blends a charge of stock at the least cost so that the melt
// comes out within the limits set for its elements, or says which limits
// cannot be kept, by how much, and what stock would help. Fixed shares, the
// shop's charge sheet, are blended as they stand. It also reckons what is
// added to the melt afterwards: ferrosilicon, carburiser, inoculant, phosphor
// copper.
//
// The blend is a linear programme. It is exact for the figures put in and
// knows nothing of what they leave out: a lot that differs from its analysis,
// a piece that does not dissolve, a hot hour that burns off zinc. Break a
// sample, analyse it, and correct.
package charge

import (
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// Input is the melt that is wanted and the stock there is.
type Input struct {
	// Melt is the mass of liquid metal wanted, before additions.
	Melt quantity.Mass `json:"melt" label:"Metal to melt" hint:"Liquid metal wanted, with spill and pigs" min:"10 g" max:"50 t" link:"weight"`
	// Materials are the stock.
	Materials []Material `json:"materials" label:"Stock" hint:"One entry for each pile in the yard" min:"1" max:"40"`
	// Limits are those of the melt.
	Limits []Limit `json:"limits" label:"Limits of the melt" hint:"From the order, the standard, or the ingot's card" max:"20"`

	// Furnace picks the usual changes in melting.
	Furnace quantity.Opt[string] `json:"furnace" label:"Usual change in melting" part:"Melting" hint:"Your own changes below go before these" default:"none" choices:"none:None|cupola:Cupola, iron|induction:Induction furnace with acid lining, iron|crucible:Crucible furnace, iron"`
	// Changes are the shop's own changes in melting.
	Changes []Change `json:"changes" label:"Own changes in melting" hint:"What your own heats gained or lost, analysis before and after" max:"20"`

	// Additions go into the melt or the ladle.
	Additions []Addition `json:"additions" label:"Additions to the melt" hint:"What goes into ladle or bath after melting" part:"Additions" max:"20"`
}

// Material is one kind of stock.
type Material struct {
	// Name of the material on the yard.
	Name string `json:"name" label:"Name" hint:"Such as returns, bay 2"`
	// Stuff takes a typical analysis.
	Stuff quantity.Opt[Stuff] `json:"stuff" label:"Typical material" hint:"For its typical analysis; figures of your own below go before it"`
	// Analysis is the material's own.
	Analysis []Part `json:"analysis" label:"Analysis" hint:"From the seller's card or your own spectrometer" max:"20"`
	// Price of a kilogram; left out, the material costs nothing.
	Price quantity.Opt[quantity.Price] `json:"price" label:"Price" hint:"From the bill; left empty for returns that cost nothing" min:"0 per kg" max:"100000 per kg"`
	// OnHand is how much there is; left out, as much as is wanted.
	OnHand quantity.Opt[quantity.Mass] `json:"on_hand" label:"On hand" hint:"Weigh the pile; left empty where you can get as much as you like" min:"0 kg" max:"1000 t"`
	// Least and Most bound the material's share of the charge by mass.
	Least quantity.Opt[quantity.Ratio] `json:"least" label:"At least, of the charge" hint:"What you must use up" default:"0 %" min:"0 %" max:"100 %"`
	Most  quantity.Opt[quantity.Ratio] `json:"most" label:"At most, of the charge" hint:"What you dare to use; the same as the least fixes the share" default:"100 %" min:"0 %" max:"100 %"`
	// Yield is the share of the material that becomes melt.
	Yield quantity.Opt[quantity.Ratio] `json:"yield" label:"Metal yield" hint:"Weigh a melt of it alone: metal tapped over charge" default:"100 %" min:"10 %" max:"100 %"`
}

// Part is one element of a material.
type Part struct {
	// Element by its symbol.
	Element Element `json:"element" label:"Element" hint:"One line for each that matters"`
	// Amount as a share by mass.
	Amount quantity.Opt[quantity.Ratio] `json:"amount" label:"Content" hint:"From the card, the bag or the spectrometer" min:"0 %" max:"100 %"`
	// Recovery is the share of the element that reaches the melt.
	Recovery quantity.Opt[quantity.Ratio] `json:"recovery" label:"Recovery" hint:"Share of the element that reaches the melt; leave empty for all of it, or for that of the typical material" min:"0 %" max:"100 %"`
}

// Limit bounds an element of the melt.
type Limit struct {
	// Element by its symbol.
	Element Element `json:"element" label:"Element" hint:"One line for each that is limited"`
	// Least and Most, as shares of the melt by mass; one may be left out.
	Least quantity.Opt[quantity.Ratio] `json:"least" label:"At least" hint:"From the order or the standard; either may stay empty" min:"0 %" max:"100 %"`
	Most  quantity.Opt[quantity.Ratio] `json:"most" label:"At most" hint:"From the order or the standard; either may stay empty" min:"0 %" max:"100 %"`
}

// Change is what melting does to an element.
type Change struct {
	// Element by its symbol.
	Element Element `json:"element" label:"Element" hint:"The one that changes"`
	// Gain is a share of the element in the charge; a loss is negative.
	Gain quantity.Opt[quantity.Ratio] `json:"gain" label:"Gain or loss, of the element" hint:"A loss with a minus: -10 % of the silicon" default:"0 %" min:"-100 %" max:"100 %"`
	// PickUp is a share of the melt.
	PickUp quantity.Opt[quantity.Ratio] `json:"pick_up" label:"Pick-up, of the melt" hint:"In points of the analysis: 0.15 % of carbon from the coke" default:"0 %" min:"-5 %" max:"5 %"`
}

// Output is the charge.
type Output struct {
	Kept            bool                         `json:"kept" label:"Every limit is kept"`
	Melt            quantity.Mass                `json:"melt" label:"Metal melted" step:"M"`
	Charge          quantity.Mass                `json:"charge" label:"Charge" step:"M_c"`
	Loss            quantity.Mass                `json:"loss" label:"Lost to slag and dross" step:"M_l"`
	Cost            quantity.Opt[quantity.Money] `json:"cost" label:"Cost of the charge" step:"C" hint:"In the currency of your prices"`
	CostPerKilogram quantity.Opt[quantity.Price] `json:"cost_per_kilogram" label:"Cost of the melt" step:"C_kg"`
	Largest         quantity.Opt[quantity.Mass]  `json:"largest" label:"Most that this stock can make within the limits" step:"M_max" hint:"Not known where the stock has no end"`
	Materials       []Used                       `json:"materials"`
	Elements        []Content                    `json:"elements"`
	Additions       []Added                      `json:"additions"`
}

// Used is what is charged of one material.
type Used struct {
	Name     string                       `json:"name" label:"Material"`
	Mass     quantity.Mass                `json:"mass" label:"To charge" step:"m"`
	Share    quantity.Ratio               `json:"share" label:"Share of the charge" step:"x"`
	Cost     quantity.Opt[quantity.Money] `json:"cost" label:"Cost" step:"c"`
	Left     quantity.Opt[quantity.Mass]  `json:"left" label:"Left on hand" step:"m_left"`
	Worth    quantity.Opt[quantity.Price] `json:"worth" label:"Worth in this blend" step:"p_w" hint:"What a further kilogram saves elsewhere: buy below it. Holds for small amounts"`
	Standing working.Text                 `json:"standing" label:"Why so much"`
}

// Content is an element of the melt.
type Content struct {
	Element string                       `json:"element" label:"Element"`
	Charged quantity.Ratio               `json:"charged" label:"From the charge" step:"w" hint:"What is recovered of the element, before the change in melting"`
	Melt    quantity.Ratio               `json:"melt" label:"In the melt" step:"c"`
	Least   quantity.Opt[quantity.Ratio] `json:"least" label:"At least"`
	Most    quantity.Opt[quantity.Ratio] `json:"most" label:"At most"`
	Missed  quantity.Opt[quantity.Ratio] `json:"missed" label:"Limit missed by" step:"d"`
	Dearer  quantity.Opt[quantity.Money] `json:"dearer" label:"Cost of holding it 0.1 % further inside" step:"C_t" hint:"For the whole charge, from where it stands; holds for small steps"`
	With    quantity.Opt[quantity.Ratio] `json:"with" label:"With the additions" step:"c_a"`
}

// Blend works out the charge.
//
// The melt is the sum of the materials' masses times their yields. What is
// lost has the analysis of the rest. An element's share of the melt is what is
// recovered of it from all materials, changed by the gain or loss in melting,
// plus the pick-up; by how much these make the melt heavier or lighter is not
// counted.
//
// Where the limits cannot all be kept, the blend that comes nearest is given,
// with a stop for each limit that is missed. Nearest is the least sum of
// misses in points of the analysis, where that of a limit over 1 % is divided
// by the limit in per cent. Where the stock is too small for the melt, as much
// is blended as it can make.
//
// Refused: shares that cannot come to the whole, analyses over 100 %, elements
// named twice, and stock of which nothing can be charged.
func Blend(in Input, p *working.Paper) (Output, error) {
	in, faults := form.Ready(in)
	if len(faults) == 0 {
		faults = check(in)
	}
	if err := faults.Err(); err != nil {
		return Output{}, err
	}
	j := newJob(in, p)
	if err := j.blend().Err(); err != nil {
		return Output{}, err
	}
	j.answer()
	return j.out, nil
}
