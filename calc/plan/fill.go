package plan

import (
	"pourwright/calc/filling"
	"pourwright/calc/flow"
	"pourwright/calc/gating"
	"pourwright/calc/holddown"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
)

// gating lays out basin, sprue, runners and ingates for the time that the pour
// is reckoned with.
func (r *run) gating() {
	s := r.begin("gating", "Gating laid out")
	in := r.doc.Gating
	begun := filled(in)
	fill(s, &in.Alloy, "alloy", r.doc.Metal.Alloy, r.alloyKnown(), "metal", alloyLabel)
	fillOpt(s, &in.Density, "density", r.got.metal.DensityLiquid, r.ownLiquid(), "metal", "Own density, liquid")
	if !in.Flow.Known() {
		fillOpt(s, &in.Poured, "poured_mass", r.got.weight.Poured, r.got.hasWeight, "weight", "Metal to pour")
		fillOpt(s, &in.Time, "pour_time", r.got.pour.Reckoned.V, r.got.hasPour && r.got.pour.Reckoned.Known(), "pour", "Time reckoned with")
	}
	fillOpt(s, &in.Gate, "gate", r.doc.Pour.Gate.V, r.doc.Pour.Gate.Known(), "pour", "Ingates at")
	fillOpt(s, &in.IngateSpeed, "ingate_speed", r.doc.Pour.IngateSpeed.V, r.doc.Pour.IngateSpeed.Known() && r.got.hasPour, "pour", "Own limit of the ingate speed")
	if r.got.hasMould {
		at := in.Gate.Or(flow.Parting)
		head, label := r.headOver(at)
		fill(s, &in.Height, "sprue_height", head, true, "mould", label)
		fill(s, &in.Cavity, "cavity_height", r.got.mould.CavityHeight, at != flow.Top, "mould", "Height of the casting in the mould")
		fillOpt(s, &in.Cope, "cope_height", r.doc.Mould.Above.V, at == flow.Parting, "mould", "Casting above the parting")
		fillOpt(s, &in.BasinDepth, "basin_depth", r.doc.Mould.BasinHeight.V, r.doc.Mould.BasinHeight.V > 0, "mould", "Basin level above the cope")
	}
	r.got.gating, r.got.hasGating = calculate(s, begun, in, gating.Size)
}

// headOver is the metal's head over ingates at a place, and what it is called.
func (r *run) headOver(at flow.Position) (quantity.Length, string) {
	m := r.got.mould
	switch at {
	case flow.Bottom:
		return m.Head + r.doc.Mould.Below.V, "Head over the bottom of the casting"
	case flow.Top:
		return m.TopHead, "Head over the top of the casting"
	}
	return m.Head, "Head over the parting"
}

func (r *run) filling() {
	s := r.begin("filling", "The filling, second by second")
	in := r.doc.Filling
	begun := filled(in)
	fill(s, &in.Alloy, "alloy", r.doc.Metal.Alloy, r.alloyKnown(), "metal", alloyLabel)
	fillOpt(s, &in.Density, "density", r.got.metal.DensityLiquid, r.ownLiquid(), "metal", "Own density, liquid")
	fill(s, &in.Level, "basin_level", r.got.mould.Head+r.doc.Mould.Below.V, r.got.hasMould, "mould", "Head over the bottom of the casting")
	g := r.got.gating
	if r.got.hasGating && !in.Discharge.Known() {
		// The gating's discharge belongs to its choke; neither goes without the other.
		fillOpt(s, &in.Discharge, "discharge", g.Discharge, !in.Choke.Known(), "gating", "Discharge coefficient")
		fillOpt(s, &in.Choke, "choke_area", g.Choke, true, "gating", "Choke")
	}
	p := r.doc.Pour
	fillOpt(s, &in.Wall, "wall", r.doc.Metal.Wall.V, r.doc.Metal.Wall.Known() && r.got.hasMetal, "metal", "Usual wall")
	fillOpt(s, &in.Limit, "ingate_speed", p.IngateSpeed.V, p.IngateSpeed.Known() && r.got.hasPour, "pour", "Own limit of the ingate speed")
	fillOpt(s, &in.Rise, "rise_speed", p.Rise.V, p.Rise.Known() && r.got.hasPour, "pour", "Own least rise of the level")
	fillOpt(s, &in.Thin, "thin_wall", p.Thin, p.Thin > 0 && r.got.hasPour, "pour", "Thinnest wall")
	fillOpt(s, &in.PourTemperature, "pour_temperature", r.got.metal.PourTemperature, r.got.hasMetal, "metal", "Pouring temperature")
	if _, ok := mouldstuff.FindSand(r.doc.Mould.Sand); ok {
		fillOpt(s, &in.Sand, "sand", r.doc.Mould.Sand, true, "mould", "Mould material")
	}
	calculate(s, begun, in, filling.Fill)
}

// holdDown takes the weights of the pour's sheet as lying in the middle of the
// cope while the user does not say where each lies.
func (r *run) holdDown() {
	s := r.begin("holddown", "Holding the cope down")
	in := r.doc.HoldDown
	begun := filled(in)
	fillOpt(s, &in.Alloy, "alloy", r.doc.Metal.Alloy, r.alloyKnown(), "metal", alloyLabel)
	fillOpt(s, &in.Density, "density", r.got.metal.DensityLiquid, r.ownLiquid(), "metal", "Own density, liquid")
	if len(in.Cores) == 0 {
		fillOpt(s, &in.CoreLift, "core_lift", r.got.cores.ToCope, r.got.hasCores, "cores", "Lift passed to the cope")
	}
	if len(in.Weights) == 0 && !s.unread("weights") && r.got.hasPour && r.doc.Pour.Weights.V > 0 {
		in.Weights = []holddown.Weight{{Mass: r.doc.Pour.Weights.V}}
		link(s, "weights", r.doc.Pour.Weights.V, "pour", "Weights on the cope")
	}
	if r.got.hasMould {
		r.holdDownMould(s, &in)
	}
	w := r.got.weight
	fillOpt(s, &in.CastingMass, "casting_mass", w.CastingsMass, r.got.hasWeight, "weight", "Weight of all castings")
	fillOpt(s, &in.MetalVolume, "metal_volume", w.PouredVolume, r.got.hasWeight, "weight", "Metal to pour, liquid volume")
	fillOpt(s, &in.MetalMass, "metal_mass", w.Poured, r.got.hasWeight, "weight", "Metal to pour")
	calculate(s, begun, in, holddown.Hold)
}

func (r *run) holdDownMould(s *Station, in *holddown.Input) {
	m, doc := r.got.mould, r.doc.Mould
	if len(in.Surfaces) == 0 && !s.unread("surfaces") {
		in.Surfaces = []holddown.Surface{{Area: m.Area, Depth: m.TopHead}}
		link(s, "surfaces", m.Area, "mould", "Area under the cope, at the top of the casting")
	}
	fillOpt(s, &in.FlaskLength, "flask_length", doc.FlaskLength, true, "mould", "Flask length, inside")
	fillOpt(s, &in.FlaskWidth, "flask_width", doc.FlaskWidth, true, "mould", "Flask width, inside")
	fillOpt(s, &in.CopeHeight, "cope_height", doc.CopeHeight, true, "mould", "Cope height")
	fillOpt(s, &in.DragHeight, "drag_height", doc.DragHeight, true, "mould", "Drag height")
	fillOpt(s, &in.Sand, "sand", doc.Sand, true, "mould", "Mould material")
	fillOpt(s, &in.SandDensity, "sand_density", doc.SandDensity.V, doc.SandDensity.Known(), "mould", "Own density of the rammed sand")
	fillOpt(s, &in.CopeMass, "cope_mass", m.CopeMass, true, "mould", "Sand in the cope")
	fillOpt(s, &in.CastingLength, "casting_length", doc.CastingLength, true, "mould", "Casting length, from above")
	fillOpt(s, &in.CastingWidth, "casting_width", doc.CastingWidth, true, "mould", "Casting width, from above")
	fillOpt(s, &in.Above, "above", doc.Above.V, true, "mould", "Casting above the parting")
	fillOpt(s, &in.Below, "below", doc.Below.V, true, "mould", "Casting below the parting")
	fillOpt(s, &in.Binder, "binder", doc.Binder, true, "mould", "Binder")
	fillOpt(s, &in.Moisture, "moisture", doc.Moisture.V, doc.Moisture.Known(), "mould", "Moisture of the sand")
}
