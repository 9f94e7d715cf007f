package plan

import (
	"pourwright/calc/alloy"
	"pourwright/calc/charge"
	"pourwright/calc/iron"
	"pourwright/calc/ladleheat"
	"pourwright/calc/melting"
	"pourwright/calc/order"
	"pourwright/calc/shop"
)

func (r *run) iron() {
	s := r.begin("iron", "Iron by its analysis")
	in := r.doc.Iron
	begun := filled(in)
	fillOpt(s, &in.Wall, "wall", r.doc.Metal.Wall.V, r.doc.Metal.Wall.Known() && r.got.hasMetal, "metal", "Usual wall")
	fillOpt(s, &in.PourTemperature, "pour_temperature", r.got.metal.PourTemperature, r.got.hasMetal && r.doc.Metal.Alloy == alloy.CodeGreyIron, "metal", "Pouring temperature")
	r.got.iron, r.got.hasIron = calculate(s, begun, in, iron.Assess)
}

func (r *run) charge() {
	s := r.begin("charge", "Charge")
	in := r.doc.Charge
	begun := filled(in)
	fill(s, &in.Melt, "melt", r.got.weight.Melt, r.got.hasWeight, "weight", "Metal to melt")
	calculate(s, begun, in, charge.Blend)
}

func (r *run) melting() {
	s := r.begin("melting", "Heat, fuel and time to melt")
	in := r.doc.Melting
	begun := filled(in)
	fill(s, &in.Mass, "mass", r.got.weight.Charge, r.got.hasWeight, "weight", "Charge to weigh out")
	fill(s, &in.Alloy, "alloy", r.doc.Metal.Alloy, r.alloyKnown(), "metal", alloyLabel)
	if !in.Superheat.Known() {
		fillOpt(s, &in.Tap, "tap", r.got.heat.TapNeeded.V, r.got.hasHeat && r.got.heat.TapNeeded.Known(), "ladleheat", "Tap at")
	}
	calculate(s, begun, in, melting.Heat)
}

func (r *run) ladleHeat() {
	s := r.begin("ladleheat", "Heat in the ladle")
	in := r.doc.LadleHeat
	begun := filled(in)
	fill(s, &in.Alloy, "alloy", r.doc.Metal.Alloy, r.alloyKnown(), "metal", alloyLabel)
	// The pour is reckoned with metal at the pouring temperature, so that is what
	// the last of it should still have.
	m := r.got.metal
	fillOpt(s, &in.WindowLow, "window_low", m.PourTemperature, r.got.hasMetal, "metal", "Pouring temperature")
	fillOpt(s, &in.WindowHigh, "window_high", m.PourHigh, r.got.hasMetal && m.PourHigh > m.PourTemperature, "metal", "Usual pouring temperature, to")
	fillOpt(s, &in.Pouring, "pouring", r.got.pour.Reckoned.V, r.got.hasPour && r.got.pour.Reckoned.Known(), "pour", "Time reckoned with")
	fill(s, &in.Mass, "mass", r.got.ladle.Metal, r.got.hasLadle, "ladle", "Metal in the ladle")
	fill(s, &in.Mass, "mass", r.got.weight.Poured, r.got.hasWeight, "weight", "Metal to pour")
	fillOpt(s, &in.Diameter, "diameter", r.doc.Ladle.Top, r.got.hasLadle, "ladle", "Inside diameter at the lip")
	r.got.heat, r.got.hasHeat = calculate(s, begun, in, ladleheat.Lose)
}

func (r *run) order() {
	s := r.begin("order", "Order of pouring")
	in := r.doc.Order
	begun := filled(in)
	fillOpt(s, &in.Alloy, "alloy", r.doc.Metal.Alloy, r.alloyKnown(), "metal", alloyLabel)
	h := r.got.heat
	fillOpt(s, &in.Start, "start", h.Start, r.got.hasHeat, "ladleheat", "As pouring begins")
	fill(s, &in.Constant, "time_constant", h.Constant.V, r.got.hasHeat && h.Constant.Known(), "ladleheat", "Time constant of the loss")
	fillOpt(s, &in.Capacity, "capacity", r.got.ladle.HoldsMass, r.got.hasLadle, "ladle", "Metal with the freeboard")
	r.got.order, r.got.hasOrder = calculate(s, begun, in, order.Find)
}

func (r *run) shop() {
	s := r.begin("shop", "How many to pour")
	in := r.doc.Shop
	begun := filled(in)
	w := r.got.weight
	fillOpt(s, &in.PerMould, "per_mould", r.doc.Weight.Castings.V, r.got.hasWeight && r.doc.Weight.Castings.Known(), "weight", "Castings in the mould")
	fillOpt(s, &in.Metal, "metal", w.Poured, r.got.hasWeight, "weight", "Metal to pour")
	fillOpt(s, &in.Casting, "casting", w.Mass, r.got.hasWeight, "weight", "Weight of one casting")
	fillOpt(s, &in.Loss, "loss", r.doc.Weight.MeltLoss.V, r.got.hasWeight && r.doc.Weight.MeltLoss.Known(), "weight", "Own melting loss")
	fillOpt(s, &in.Sand, "sand", r.got.mould.SandMass, r.got.hasMould, "mould", "Sand to ram")
	calculate(s, begun, in, shop.Plan)
}
