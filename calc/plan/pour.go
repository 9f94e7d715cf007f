package plan

import (
	"pourwright/calc/alloy"
	"pourwright/calc/flow"
	"pourwright/calc/ladle"
	"pourwright/calc/lifting"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/pour"
)

func (r *run) pour() {
	s := r.begin("pour", "Gating and pouring time")
	in := r.doc.Pour
	begun := filled(in)
	fill(s, &in.Alloy, "alloy", r.doc.Metal.Alloy, r.alloyKnown(), "metal", alloyLabel)
	fill(s, &in.PourTemperature, "pour_temperature", r.got.metal.PourTemperature, r.got.hasMetal, "metal", "Pouring temperature")
	fill(s, &in.Wall, "wall", r.doc.Metal.Wall.V, r.doc.Metal.Wall.Known() && r.got.hasMetal, "metal", "Usual wall")
	fillOpt(s, &in.Density, "density", r.got.metal.DensityLiquid, r.ownLiquid(), "metal", "Own density, liquid")
	w := r.got.weight
	fill(s, &in.Poured, "poured_mass", w.Poured, r.got.hasWeight, "weight", "Metal to pour")
	fillOpt(s, &in.Casting, "casting_mass", w.CastingsMass, r.got.hasWeight, "weight", "Weight of all castings")
	if _, ok := mouldstuff.FindSand(r.doc.Mould.Sand); ok {
		fill(s, &in.Sand, "sand", r.doc.Mould.Sand, true, "mould", "Mould material")
	}
	fillOpt(s, &in.CoreLift, "core_lift", r.got.cores.ToCope, r.got.hasCores, "cores", "Lift passed to the cope")
	if k := r.got.iron.Fluidity; r.got.hasIron && k.Known() && r.doc.Metal.Alloy == alloy.CodeGreyIron && in.Fluidity.Or(pour.ByFactor) == pour.ByFactor {
		fillOpt(s, &in.Factor, "fluidity_factor", k.V, true, "iron", "Fluidity factor K")
	}
	if r.got.hasMould {
		r.linkMould(s, &in)
	}
	r.got.pour, r.got.hasPour = calculate(s, begun, in, pour.Window)
}

// ownLiquid says that the plan has its own density of the liquid metal.
func (r *run) ownLiquid() bool { return r.got.hasMetal && r.doc.Metal.DensityLiquid.Known() }

// linkMould hands the layout of the mould to the pour: heads as they are for
// the ingates' place, the casting's top as the surface that lifts, the sand in
// the cope as what holds it down.
func (r *run) linkMould(s *Station, in *pour.Input) {
	m, above := r.got.mould, r.doc.Mould.Above.V
	head, label := r.headOver(in.Gate.Or(flow.Parting))
	fillOpt(s, &in.Height, "sprue_height", head, true, "mould", label)
	fillOpt(s, &in.Cavity, "cavity_height", m.CavityHeight, true, "mould", "Height of the casting in the mould")
	if in.Gate.Or(flow.Parting) == flow.Parting {
		fillOpt(s, &in.Cope, "cope_height", above, true, "mould", "Casting above the parting")
	}
	fillOpt(s, &in.CopeMass, "cope_mass", m.CopeMass, true, "mould", "Sand in the cope")
	if len(in.Surfaces) == 0 && !s.unread("surfaces") {
		in.Surfaces = []pour.Surface{{Area: m.Area, Depth: m.TopHead}}
		link(s, "surfaces", m.Area, "mould", "Area under the cope, at the top of the casting")
	}
}

// linkPourTime hands the time of the pour to the ladle, if the ladle is asked
// to pour in a time.
func (r *run) linkPourTime(s *Station, in *ladle.Input) {
	if r.got.hasPour && in.Pace.Or(ladle.PaceByTime) == ladle.PaceByTime {
		fill(s, &in.PourTime, "pour_time", r.got.pour.Reckoned.V, r.got.pour.Reckoned.Known(), "pour", "Time reckoned with")
	}
}

func (r *run) lifting() {
	s := r.begin("lifting", "Cold lifts")
	in := r.doc.Lifting
	begun := filled(in)
	calculate(s, begun, in, lifting.Limit)
}
