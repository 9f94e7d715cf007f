package weight

import (
	"fmt"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/shape"
	"pourwright/calc/working"
)

// missing names what is wanted for the route and the risers but stands in no
// field that the form could ask for by itself.
func missing(in Input) form.Faults {
	var out form.Faults
	want := func(field, label, why string) {
		out = append(out, form.Fault{Field: field, Label: label, Why: working.Say("%v", why), Missing: true})
	}
	switch in.Route.Or(FromSolids) {
	case FromSolids:
		if len(in.Solids) == 0 {
			want("solids", "Solids", "nothing here yet; put the casting together from plain solids, or choose another way to find its weight")
		}
	case FromPattern:
		made := in.PatternMake.Or(SolidMake)
		switch {
		case in.PatternDensity.Known():
		case made != SolidMake:
			want("pattern_density", "Measured density of the pattern", "the weight of a hollow or printed pattern does not tell its size; give its whole weight over the volume it displaces, or drown it instead of weighing it")
		case !in.PatternStuff.Known():
			want("pattern_stuff", "Pattern material", "not chosen yet; choose one, or give the density you measured")
		}
	case DrownedPattern, DrownedCasting:
		if !in.DisplacedMass.Known() && !in.DisplacedVolume.Known() {
			want("displaced_mass", "Weight of the water displaced", "not filled in yet; give it, or the volume displaced")
		}
	}
	for i, r := range in.Risers {
		if !in.Modulus.Known() && !r.Modulus.Known() && len(in.Solids) == 0 {
			want(fmt.Sprintf("risers[%d].modulus", i), "Own modulus of what it feeds", "not known; give it, or the solids that make up the casting")
		}
		if r.Height.Known() && !r.Diameter.Known() {
			want(fmt.Sprintf("risers[%d].diameter", i), "Own diameter, to check", "a height was given without a diameter; give both, or leave both to be sized")
		}
	}
	g := in.Gating
	switch g.By.Or(ByShare) {
	case ByWeight:
		if !g.Mass.Known() {
			want("gating.mass", "Weight of the gating", "not filled in yet")
		}
	case BySize:
		sprue := (g.SprueTop.V > 0 || g.SprueBottom.V > 0) && g.SprueHeight.V > 0
		runner := g.RunnerArea.V > 0 && g.RunnerLength.V > 0
		gates := g.GateArea.V > 0 && g.GateLength.V > 0
		if !sprue && !runner && !gates && !(g.Rest.V > 0) {
			want("gating.sprue_bottom", "Sprue, area at the foot", "no part of the gating has both an area and a length yet")
		}
	}
	return out
}

// mismatched finds single fields that are in range but do not go together.
func mismatched(in Input) form.Faults {
	out := shape.AllFaults(in.Solids, "solids")
	if (in.Route.V == DrownedPattern || in.Route.V == DrownedCasting) && in.DisplacedMass.Known() && in.DisplacedVolume.Known() {
		out = append(out, form.Fault{Field: "displaced_volume", Label: "Or the volume displaced", Value: quantity.Text(in.DisplacedVolume.V),
			Why: working.Say("the weight of the water, %v, is given too; leave one of the two empty", in.DisplacedMass.V)})
	}
	if in.Route.V == FromPattern && in.PrintsMass.V >= in.PatternMass {
		out = append(out, form.Fault{Field: "prints_mass", Label: "Weight of the core prints in it", Value: quantity.Text(in.PrintsMass.V),
			Why: working.Say("%v is the whole weight of the pattern, %v, or more; give only the part that is prints", in.PrintsMass.V, in.PatternMass)})
	}
	for i, r := range in.Risers {
		path := fmt.Sprintf("risers[%d]", i)
		if r.Place.V == Top && r.Seat.V > 0 && (in.Modulus.Known() || r.Modulus.Known() || len(in.Solids) == 0) {
			out = append(out, form.Fault{Field: path + ".seat", Label: "Casting surface they cover", Value: quantity.Text(r.Seat.V),
				Why: working.Say("it can only be taken off the solids, and your own modulus stands in their place; leave it empty, and let your modulus allow for it")})
		}
		if r.Shape.V != Domed {
			continue
		}
		if h := r.Height; h.Known() && h.V < r.Diameter.V/2 {
			out = append(out, form.Fault{Field: path + ".height", Label: "Own height, to check", Value: quantity.Text(h.V),
				Why: working.Say("%v is less than the half ball alone, which is half the diameter; it must be at least %v", h.V, r.Diameter.V/2)})
		} else if !h.Known() && r.Ratio.V < 0.5 {
			out = append(out, form.Fault{Field: path + ".ratio", Label: "Height over diameter", Value: quantity.Text(r.Ratio.V),
				Why: working.Say("%v is less than the half ball alone; it must be at least 0.5 for this shape", r.Ratio.V)})
		}
	}
	return out
}
