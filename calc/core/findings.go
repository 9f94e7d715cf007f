package core

import (
	"pourwright/calc/alloy"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// enough lets a print that was made as large as wanted pass.
const enough = 1e-6

// remarks are the findings on one core.
func (w *one) remarks() {
	w.liftRemarks()
	w.restRemarks()
	w.ventRemarks()
	w.blowRemarks()
	if w.c.Closed {
		w.p.Find(working.Finding{Level: working.Mind, Code: "closed-hollow", Field: w.path + ".closed", Source: source.Practice("closed hollows burst when they are heated"),
			Text: working.Say("A hollow of %v stays closed in the casting. Damp sand, a wet filling or water that gets in bursts it when it is welded, patinated with a torch or melted again.", w.out.Hollow),
			Do:   working.Say("Empty and dry it, leave a hole to the air, and mark the casting.")})
	}
}

// liftRemarks say what the lift still wants.
func (w *one) liftRemarks() {
	p, c, o := w.p, w.c, w.out
	if w.i == 0 && w.in.Mould.V == mouldstuff.GreenSand && w.in.Bearing.V > usual {
		w.holding.p.Find(working.Finding{Level: working.Mind, Code: "bearing-high", Field: "bearing", Source: bearingRule,
			Text: working.Say("You reckon with %v on the prints; for green sand the books allow %v.", w.in.Bearing.V, usual),
			Do:   working.Say("Keep to %v unless you have tried your sand.", usual)})
	}
	if w.left <= enough*w.lift || w.lift == 0 {
		return
	}
	prints := working.Say("Make the prints that hold it down %v together, or take up %v with chaplets of %v bearing area in all.", o.PrintWanted, o.Unsupported, o.ChapletArea)
	switch {
	case c.ChapletCount.V == 0 && o.PrintArea == 0:
		p.Find(working.Finding{Level: working.Stop, Code: "core-floats", Field: w.path + ".prints", Source: upthrust, Do: prints,
			Text: working.Say("Nothing holds %v down, and the metal lifts it with %v.", o.Name, o.Lift)})
	case c.ChapletCount.V == 0:
		p.Find(working.Finding{Level: working.Stop, Code: "print-small", Field: w.path + ".prints", Source: bearingRule, Do: prints,
			Text: working.Say("The prints of %v bear %v at %v, and the metal lifts it with %v: they are %v together and %v is wanted.", o.Name, o.PrintHold, w.in.Bearing.V, o.Lift, o.PrintArea, o.PrintWanted)})
	case !o.Chaplets.Known():
		p.Find(working.Finding{Level: working.Stop, Code: "chaplets-unknown", Field: w.path + ".chaplet_area", Source: bearingRule,
			Text: working.Say("The prints of %v leave %v over, and the bearing area of its chaplets is not known; %v of it are wanted.", o.Name, o.Unsupported, o.ChapletArea),
			Do:   working.Say("Measure the smaller head of one chaplet and give its area, or make the prints %v together.", o.PrintWanted)})
	case quantity.Number(c.ChapletCount.V) < o.Chaplets.V:
		p.Find(working.Finding{Level: working.Stop, Code: "chaplets-short", Field: w.path + ".chaplet_count", Source: bearingRule,
			Text: working.Say("The prints of %v leave %v over, which wants %v chaplets of the size given; there are %v.", o.Name, o.Unsupported, o.Chaplets.V, c.ChapletCount.V),
			Do:   working.Say("Set %v, or make the prints %v together.", o.Chaplets.V, o.PrintWanted)})
	default:
		p.Find(working.Finding{Level: working.Note, Code: "chaplets-carry", Field: w.path + ".chaplet_load", Source: bearingRule,
			Text: working.Say("Chaplets take up %v of the lift of %v. By bearing area they are enough; what one stands in hot metal no source tells.", o.Unsupported, o.Name),
			Do:   working.Say("Chaplets of %v.", chapletMetal(w.a.Family))})
	}
}

// chapletMetal is what chaplets are made of for a metal, by custom.
func chapletMetal(f alloy.Family) string {
	const clean = ", bright, dry and free of rust and grease: a damp one blows"
	switch f {
	case alloy.GreyIron, alloy.DuctileIron:
		return "mild steel, tinned or coppered" + clean
	case alloy.Steel:
		return "bright mild steel" + clean
	case alloy.Copper:
		return "copper or of the casting metal itself" + clean
	case alloy.Aluminium:
		return "aluminium" + clean
	}
	return "the casting metal itself" + clean
}

// restRemarks say what carries the core's own weight.
func (w *one) restRemarks() {
	o := w.out
	load := max(o.Weight, o.Sink)
	if w.rests <= enough*float64(load) {
		return
	}
	do := working.Say("Give it %v of print that it rests on, or set chaplets under it.", o.RestWanted)
	if o.RestArea == 0 {
		w.p.Find(working.Finding{Level: working.Mind, Code: "core-unsupported", Field: w.path + ".prints", Source: bearingRule, Do: do,
			Text: working.Say("No print carries the %v of %v before the metal comes.", load, o.Name)})
		return
	}
	w.p.Find(working.Finding{Level: working.Mind, Code: "core-sags", Field: w.path + ".prints", Source: bearingRule, Do: do,
		Text: working.Say("%v presses down with %v on %v of print; at %v the sand wants %v.", working.Capital(o.Name), load, o.RestArea, w.in.Bearing.V, o.RestWanted)})
}

// ventRemarks are on the way out for the gas.
func (w *one) ventRemarks() {
	p, c, o := w.p, w.c, w.out
	vents := source.Practice("every core is vented through a print to the outside air")
	if c.Vent == NoVent {
		do := working.Say("Run a vent from its middle through a print to the outside air and keep metal out of it.")
		if o.VentWanted.Known() {
			do = working.Say("Run a vent from its middle through a print to the outside air and keep metal out of it: %v or more, as one hole %v across.", o.VentWanted.V, o.VentDiameter.V)
		}
		p.Find(working.Finding{Level: working.Stop, Code: "no-vent", Field: w.path + ".vent", Source: vents, Do: do,
			Text: working.Say("The gas of %v has no way out but through the metal: it blows.", o.Name)})
	}
	switch w.gasWhy {
	case "time":
		p.Find(working.Finding{Level: working.Note, Code: "gas-no-time", Field: "pour_time", Source: charles,
			Text: working.Say("Without the pouring time no gas flow and no vent area can be reckoned.")})
	case "figure":
		p.Find(working.Finding{Level: working.Note, Code: "gas-unknown", Field: w.path + ".gas", Source: vents,
			Text: working.Say("No gas figure is known for the material and binder of %v; steam from damp counts too.", o.Name),
			Do:   working.Say("Dry it well, vent it as freely as you can, or give a figure from a core-gas test.")})
	case "cold":
		p.Find(working.Finding{Level: working.Note, Code: "gas-cold", Field: w.path + ".gas", Source: source.Samuels.Seen("gas by temperature"),
			Text: working.Say("At %v the metal is too cold for the gas figures, which are for binder burnt at %v and over.", quantity.From[quantity.Temperature](w.Tm, "degC"), quantity.From[quantity.Temperature](750, "degC")),
			Do:   working.Say("Vent it all the same; damp makes steam at any of these temperatures.")})
	}
	if c.Vent != OpenVent || !o.VentWanted.Known() {
		return
	}
	switch {
	case !c.VentArea.Known():
		p.Find(working.Finding{Level: working.Note, Code: "vent-wanted", Field: w.path + ".vent_area", Source: ventSpeed,
			Text: working.Say("%v wants about %v of vent, and %v at the high end of what its binder gives.", working.Capital(o.Name), o.VentWanted.V, o.VentHigh.V),
			Do:   working.Say("Give the section of the vents it has.")})
	case c.VentArea.V < o.VentWanted.V*(1-enough):
		p.Find(working.Finding{Level: working.Mind, Code: "vent-small", Field: w.path + ".vent_area", Source: ventSpeed,
			Text: working.Say("The vents of %v are %v together and about %v is wanted.", o.Name, c.VentArea.V, o.VentWanted.V),
			Do:   working.Say("Open them to %v, or to %v to be on the safe side of the binder's range.", o.VentWanted.V, o.VentHigh.V)})
	}
}

// blowRemarks compare the gas with the metal over it.
func (w *one) blowRemarks() {
	p, o := w.p, w.out
	if !o.GasHigh.Known() {
		return
	}
	physics := source.Derived("a core blows when its gas presses harder than the metal over its highest point")
	if !o.Head.Known() {
		p.Find(working.Finding{Level: working.Note, Code: "top-depth-unknown", Field: w.path + ".top_depth", Source: physics,
			Text: working.Say("Gas in %v may reach %v to %v; whether the metal holds it back depends on how deep its top lies.", o.Name, o.GasLow.V, o.GasHigh.V),
			Do:   working.Say("Give the depth of metal over its highest point.")})
		return
	}
	do := working.Say("Open the vents, bring one nearer to the skin, use a coarser sand or less binder, or raise the head over it.")
	switch head := o.Head.V; {
	case o.GasLow.V >= head:
		p.Find(working.Finding{Level: working.Stop, Code: "gas-blows", Field: w.path + ".vent_area", Source: physics, Do: do,
			Text: working.Say("Gas in %v builds up to %v or more, and the metal over its top holds back only %v: it blows.", o.Name, o.GasLow.V, head)})
	case o.GasHigh.V >= head:
		p.Find(working.Finding{Level: working.Mind, Code: "gas-may-blow", Field: w.path + ".vent_area", Source: physics, Do: do,
			Text: working.Say("Gas in %v may build up to between %v and %v, and the metal over its top holds back %v: it may blow.", o.Name, o.GasLow.V, o.GasHigh.V, head)})
	}
}
