package plan

import (
	"slices"

	"pourwright/calc/alloy"
	"pourwright/calc/core"
	"pourwright/calc/gating"
	"pourwright/calc/handling"
	"pourwright/calc/iron"
	"pourwright/calc/ladle"
	"pourwright/calc/ladleheat"
	"pourwright/calc/metal"
	"pourwright/calc/mould"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/order"
	"pourwright/calc/pattern"
	"pourwright/calc/pour"
	"pourwright/calc/weight"
)

// answers are what the stations have answered so far; ok tells whether one has.
type answers struct {
	metal    metal.Output
	hasMetal bool

	pattern    pattern.Output
	hasPattern bool

	weight    weight.Output
	hasWeight bool

	mould    mould.Output
	hasMould bool

	pour    pour.Output
	hasPour bool

	ladle    ladle.Output
	hasLadle bool

	iron    iron.Output
	hasIron bool

	gating    gating.Output
	hasGating bool

	cores    core.Output
	hasCores bool

	heat    ladleheat.Output
	hasHeat bool

	order    order.Output
	hasOrder bool
}

// work runs the stations in the order of the work, each with what the ones
// before it have answered.
func (r *run) work() {
	r.metal()
	r.iron()
	r.pattern()
	r.weight()
	r.feeding()
	r.mould()
	r.coreLift()
	r.pour()
	r.cores()
	if !r.rulingOnly {
		r.gating()
		r.filling()
		r.holdDown()
	}
	r.ladle()
	r.ladleHeat()
	r.charge()
	r.melting()
	r.cooling()
	r.shop()
	if !r.rulingOnly {
		r.order()
		r.lifting()
		r.handling()
	}
	slices.SortStableFunc(r.Stations, func(a, b *Station) int { return slices.Index(shownOrder, a.Key) - slices.Index(shownOrder, b.Key) })
}

// shownOrder is the order in which the stations stand on the screen: that of
// the work, which is not quite that of the sums.
var shownOrder = []string{
	"metal", "iron", "pattern", "cores", "weight", "feeding", "mould", "pour", "gating", "filling", "holddown", "charge", "melting",
	"ladle", "ladleheat", "order", "cooling", "shop", "lifting", "handling",
}

const alloyLabel = "Metal"

// alloyKnown says whether the plan's metal can be handed on.
func (r *run) alloyKnown() bool {
	_, ok := alloy.Find(r.doc.Metal.Alloy)
	return ok
}

func (r *run) metal() {
	s := r.begin("metal", "Metal and temperature")
	in := r.doc.Metal
	r.got.metal, r.got.hasMetal = calculate(s, filled(in), in, metal.Describe)
}

func (r *run) pattern() {
	s := r.begin("pattern", "Pattern and contraction")
	in := r.doc.Pattern
	begun := filled(in)
	fill(s, &in.Alloy, "alloy", r.doc.Metal.Alloy, r.alloyKnown(), "metal", alloyLabel)
	if binder, ok := mouldstuff.FindBinder(r.doc.Mould.Binder); ok {
		sand := "chemical"
		if binder.Code == mouldstuff.Clay {
			sand = "clay"
		}
		fillOpt(s, &in.Sand, "sand", sand, true, "mould", "Binder")
	}
	r.got.pattern, r.got.hasPattern = calculate(s, begun, in, pattern.Size)
}

func (r *run) weight() {
	s := r.begin("weight", "Weight, risers and metal to melt")
	in := r.doc.Weight
	begun := filled(in)
	fill(s, &in.Alloy, "alloy", r.doc.Metal.Alloy, r.alloyKnown(), "metal", alloyLabel)
	fillOpt(s, &in.Density, "density", r.doc.Metal.Density.V, r.doc.Metal.Density.Known() && r.got.hasMetal, "metal", "Own density, solid")
	fillOpt(s, &in.Contraction, "contraction", r.got.pattern.Contraction, r.got.hasPattern, "pattern", "Contraction")
	if binder, ok := mouldstuff.FindBinder(r.doc.Mould.Binder); ok {
		wall := weight.Rigid
		if binder.Code == mouldstuff.Clay {
			wall = weight.Green
		}
		fillOpt(s, &in.Wall, "wall", wall, true, "mould", "Binder")
	}
	r.got.weight, r.got.hasWeight = calculate(s, begun, in, weight.Weigh)
}

func (r *run) mould() {
	s := r.begin("mould", "Mould")
	in := r.doc.Mould
	begun := filled(in)
	w := r.got.weight
	fillOpt(s, &in.CastingVolume, "casting_volume", w.CastingsVolume, r.got.hasWeight, "weight", "Volume of all castings")
	fillOpt(s, &in.CastingMass, "casting_mass", w.CastingsMass, r.got.hasWeight, "weight", "Weight of all castings")
	r.got.mould, r.got.hasMould = calculate(s, begun, in, mould.Lay)
}

func (r *run) ladle() {
	s := r.begin("ladle", "Ladle")
	begun := filled(r.doc.Ladle)
	r.got.ladle, r.got.hasLadle = calculate(s, begun, r.ladleInput(s), ladle.Tip)
}

// ladleInput is the ladle with what the other stations know of it.
func (r *run) ladleInput(s *Station) ladle.Input {
	in := r.doc.Ladle
	fillOpt(s, &in.Alloy, "alloy", r.doc.Metal.Alloy, r.alloyKnown(), "metal", alloyLabel)
	fillOpt(s, &in.Density, "density", r.got.metal.DensityLiquid, r.ownLiquid(), "metal", "Own density, liquid")
	fill(s, &in.Metal, "metal", r.got.weight.Poured, r.got.hasWeight, "weight", "Metal to pour")
	r.linkPourTime(s, &in)
	return in
}

func (r *run) handling() {
	s := r.begin("handling", "Safe handling")
	in := r.doc.Handling
	begun := filled(in)
	fill(s, &in.Alloy, "alloy", r.doc.Metal.Alloy, r.alloyKnown(), "metal", alloyLabel)
	fill(s, &in.PourAt, "pour_at", r.got.metal.PourTemperature, r.got.hasMetal, "metal", "Pouring temperature")
	switch {
	case r.got.hasLadle:
		fill(s, &in.Metal, "metal", r.got.ladle.Metal, true, "ladle", "Metal in the ladle")
	default:
		fill(s, &in.Metal, "metal", r.got.weight.Poured, r.got.hasWeight, "weight", "Metal to pour")
	}
	m := r.doc.Mould
	if _, ok := mouldstuff.FindSand(m.Sand); ok {
		fill(s, &in.Mould, "mould", m.Sand, true, "mould", "Mould material")
	}
	if _, ok := mouldstuff.FindBinder(m.Binder); ok {
		fillOpt(s, &in.Binder, "binder", m.Binder, true, "mould", "Binder")
	}
	fillOpt(s, &in.Moisture, "moisture", m.Moisture.V, m.Moisture.Known() && r.got.hasMould, "mould", "Moisture of the sand")
	if r.got.hasLadle {
		l := r.got.ladle
		fillOpt(s, &in.Carried, "carried", l.Carried.V, l.Carried.Known(), "ladle", "Carried weight")
		fill(s, &in.Hoist, "hoist", true, r.doc.Ladle.Carry.Or(ladle.ByHand) == ladle.ByHoist, "ladle", "Carried by")
		fillOpt(s, &in.LadleMouth, "ladle_mouth", r.doc.Ladle.Top, r.doc.Ladle.Top > 0, "ladle", "Inside diameter at the lip")
	}
	_, _ = calculate(s, begun, in, handling.List)
}
