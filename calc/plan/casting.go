package plan

import (
	"pourwright/calc/cooling"
	"pourwright/calc/core"
	"pourwright/calc/feed"
	"pourwright/calc/freeze"
	"pourwright/calc/mouldstuff"
)

// coreInput is the cores with what the other stations know of them.
func (r *run) coreInput(s *Station) core.Input {
	in := r.doc.Cores
	fill(s, &in.Alloy, "alloy", r.doc.Metal.Alloy, r.alloyKnown(), "metal", alloyLabel)
	fillOpt(s, &in.Density, "density", r.got.metal.DensityLiquid, r.ownLiquid(), "metal", "Own density, liquid")
	fillOpt(s, &in.PourTemperature, "pour_temperature", r.got.metal.PourTemperature, r.got.hasMetal, "metal", "Pouring temperature")
	if _, ok := mouldstuff.FindSand(r.doc.Mould.Sand); ok {
		fillOpt(s, &in.Mould, "mould", r.doc.Mould.Sand, true, "mould", "Mould material")
	}
	return in
}

// coreLift works the cores out ahead of the pour, for the lift that they pass
// to the cope. That does not hang on the pouring time; the vents do, and are
// worked out by cores, after it.
func (r *run) coreLift() {
	if !filled(r.doc.Cores) || len(r.decoded["cores"]) > 0 {
		return
	}
	if out, err := core.Hold(r.coreInput(&Station{Key: "cores"}), nil); err == nil {
		r.got.cores, r.got.hasCores = out, true
	}
}

func (r *run) cores() {
	s := r.begin("cores", "Cores")
	in := r.coreInput(s)
	fillOpt(s, &in.PourTime, "pour_time", r.got.pour.Reckoned.V, r.got.hasPour && r.got.pour.Reckoned.Known(), "pour", "Time reckoned with")
	r.got.cores, r.got.hasCores = calculate(s, filled(r.doc.Cores), in, core.Hold)
}

func (r *run) feeding() {
	s := r.begin("feeding", "Feeding and hot spots")
	in := r.doc.Feeding
	begun := filled(in)
	fill(s, &in.Alloy, "alloy", r.doc.Metal.Alloy, r.alloyKnown(), "metal", alloyLabel)
	fillOpt(s, &in.PourTemperature, "pour_temperature", r.got.metal.PourTemperature, r.got.hasMetal, "metal", "Pouring temperature")
	fillOpt(s, &in.CarbonEquivalent, "carbon_equivalent", r.got.iron.CE, r.got.hasIron, "iron", "Carbon equivalent")
	if binder, ok := mouldstuff.FindBinder(r.doc.Mould.Binder); ok {
		wall := feed.Rigid
		if binder.Code == mouldstuff.Clay {
			wall = feed.Green
		}
		fillOpt(s, &in.Wall, "wall", wall, true, "mould", "Binder")
	}
	if _, ok := mouldstuff.FindSand(r.doc.Mould.Sand); ok {
		fillOpt(s, &in.Sand, "sand", r.doc.Mould.Sand, true, "mould", "Mould material")
	}
	calculate(s, begun, in, feed.Plan)
}

// cooling takes the modulus that the risers were sized for as the heaviest
// section, while the user names no other, and the thinnest of the sand round
// the casting.
func (r *run) cooling() {
	s := r.begin("cooling", "Cooling and shakeout")
	in := r.doc.Cooling
	begun := filled(in)
	fill(s, &in.Alloy, "alloy", r.doc.Metal.Alloy, r.alloyKnown(), "metal", alloyLabel)
	if _, ok := mouldstuff.FindSand(r.doc.Mould.Sand); ok {
		fill(s, &in.Sand, "sand", r.doc.Mould.Sand, true, "mould", "Mould material")
	}
	fillOpt(s, &in.PourTemperature, "pour_temperature", r.got.metal.PourTemperature, r.got.hasMetal, "metal", "Pouring temperature")
	fillOpt(s, &in.Constant, "constant", r.doc.Pour.FreezingConstant.V, r.doc.Pour.FreezingConstant.Known() && r.got.hasPour, "pour", "Own freezing constant")
	if w := r.got.weight; r.got.hasWeight && w.Modulus.Known() && in.Shape == "" {
		fill(s, &in.Shape, "shape", freeze.Stated, true, "weight", "Modulus to feed")
		fill(s, &in.Modulus, "modulus", w.Modulus.V, true, "weight", "Modulus to feed")
	}
	if m := r.got.mould; r.got.hasMould {
		fillOpt(s, &in.SandThickness, "sand_thickness", min(m.Top, m.Bottom, m.Side), m.Top > 0 && m.Bottom > 0 && m.Side > 0, "mould", "Least sand round the casting")
	}
	calculate(s, begun, in, cooling.Shakeout)
}
