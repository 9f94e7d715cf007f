package filling

import (
	"math"

	"pourwright/calc/alloy"
	"pourwright/calc/flow"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// find says what is wrong with the filling.
func (f *filling) find() {
	f.ladleFindings()
	f.ingateFindings()
	f.riseFindings()
	f.headFindings()
	f.liftFindings()
	f.frontFindings()
}

// ladleFindings minds a ladle that does not keep the sprue full.
func (f *filling) ladleFindings() {
	m, o, p := f.m, &f.out, f.p
	if m.ladle == 0 {
		return
	}
	if f.in.BasinArea.Known() && m.basin == 0 {
		p.Find(working.Finding{Level: working.Note, Code: "basin-at-once", Field: "basin_area", Source: continuity,
			Text: working.Say("The level in the basin is taken to follow at once: the basin is small beside the mould, or the cavity reaches up past its floor.")})
	}
	takes := f.takes
	if takes <= m.ladle*(1+1e-6) {
		return
	}
	A := quantity.Area(p.Step("A_l", "choke that the ladle keeps full", float64(narrowest(f.in))*1e4*m.ladle/takes, "cm^2", "A_m * Q_l / Q_w", source.Derived("flow goes as the area")) / 1e4)
	do := working.Say("Pour with %v, or narrow the choke to %v.", quantity.MassFlow(takes*f.rho), A)
	if o.BasinDry.Known() && o.BasinDry.V == 0 {
		p.Find(working.Finding{Level: working.Mind, Code: "basin-dry", Field: "ladle_flow", Source: continuity,
			Text: working.Say("The way takes %v and the ladle gives %v: the basin never fills, and air and slag go down the sprue.", quantity.MassFlow(takes*f.rho), f.in.LadleFlow.V), Do: do})
		return
	}
	if o.BasinDry.Known() {
		p.Find(working.Finding{Level: working.Mind, Code: "basin-dry", Field: "ladle_flow", Source: continuity,
			Text: working.Say("The way takes %v and the ladle gives %v: the basin is empty after %v, and air and slag go down the sprue.", quantity.MassFlow(takes*f.rho), f.in.LadleFlow.V, o.BasinDry.V), Do: do})
		return
	}
	p.Find(working.Finding{Level: working.Mind, Code: "ladle-slow", Field: "ladle_flow", Source: continuity,
		Text: working.Say("The way takes %v at first and the ladle gives %v: the basin is not full, at the least %v deep.", quantity.MassFlow(takes*f.rho), f.in.LadleFlow.V, o.BasinLeast.V), Do: do})
}

// plunge is the speed over which falling metal takes air along, m/s; weakly
// known.
const plunge = 1.0

func (f *filling) ingateFindings() {
	o, p, a := &f.out, f.p, f.a
	limit, from := a.IngateSpeed.V, a.IngateSpeed.Source
	if f.in.Limit.Known() {
		limit, from = f.in.Limit.V, source.Own("your own limit")
	}
	if o.IngateMost > limit*(1+1e-9) {
		p.Find(working.Finding{Level: working.Mind, Code: "ingate-fast", Field: "ingates", Source: from,
			Text: working.Say("At %s the metal runs at up to %v, after %v; over %v it sprays and folds in its skin.", o.IngateWhich, o.IngateMost, o.IngateMostAt, limit),
			Do:   working.Say("Give these ingates %v times their area, behind a choke that leaves the flow as it is.", quantity.Number(math.Ceil(float64(o.IngateMost/limit)*100)/100))})
	}
	if o.Landing.Known() && o.Landing.V > plunge {
		p.Find(working.Finding{Level: working.Mind, Code: "metal-falls", Field: "ingates", Source: source.Practice("air goes along from 0.8 to 1 m/s, weakly known"),
			Text: working.Say("Until a pool covers the bottom, the metal falls and lands with %v; it splashes and takes air along.", o.Landing.V),
			Do:   working.Say("Let the metal in at the bottom of the cavity, or through stepped ingates.")})
	}
	if f.in.Choke.Known() && f.m.before == 0 {
		p.Find(working.Finding{Level: working.Note, Code: "ingates-rule", Field: "choke_area", Source: source.Derived("the narrowest section rules"),
			Text: working.Say("The ingates together are %v, no more than the choke's %v: they rule the flow.", narrowest(f.in), f.in.Choke.V)})
	}
}

// riseFindings hold the slowest rise against the least that the tables print.
func (f *filling) riseFindings() {
	o, p := &f.out, f.p
	at := quantity.Length(f.levelAt(float64(o.RiseLeastAt)))
	do := working.Say("Fill faster, by a wider choke with ingates to match, or tilt the mould so that the wide part fills up a slope.")
	if f.in.Rise.Known() {
		if least := f.in.Rise.V; o.RiseLeast < least {
			p.Find(working.Finding{Level: working.Mind, Code: "rise-slow", Field: "choke_area", Source: source.Own("your own least rise"),
				Text: working.Say("At a height of %v the level rises at only %v; you want %v.", at, o.RiseLeast, least), Do: do})
		}
		return
	}
	if !f.in.Wall.Known() || f.flat() {
		return
	}
	v, row, from := flow.LeastRise(f.a, quantity.In(f.in.Wall.V, "mm"))
	least := quantity.From[quantity.Speed](v, "mm/s")
	if o.RiseLeast >= least {
		return
	}
	level := working.Note
	if f.a.Family == alloy.GreyIron {
		level = working.Mind
	}
	p.Find(working.Finding{Level: level, Code: "rise-slow", Field: "choke_area", Source: from,
		Text: working.Say("At a height of %v the level rises at only %v; usual is %v or more (%s). Its skin may fold into laps there.", at, o.RiseLeast, least, row), Do: do})
}

// headFindings mind a cavity that reaches up near the level of the basin.
func (f *filling) headFindings() {
	o, p := &f.out, f.p
	top := quantity.Length(f.m.top())
	if left := f.in.Level - top; left < f.in.Level/50 {
		p.Find(working.Finding{Level: working.Mind, Code: "head-gone", Field: "basin_level", Source: torricelli,
			Text: working.Say("The cavity ends %v under the level of the basin: the last of it fills under hardly any head, and its edges stay round.", max(left, 0)),
			Do:   working.Say("Raise the basin, so that the metal stands well over the highest point of the cavity.")})
	}
	if o.ByRule.Known() && math.Abs(float64(o.FillTime/o.ByRule.V)-1) > 0.05 {
		p.Find(working.Finding{Level: working.Note, Code: "rule-off", Source: source.Rao.Memory("ch. 4, effective sprue height"),
			Text: working.Say("The trade's head gives %v; by the course of the filling it is %v, since the rule takes the cavity as even and its last part as quick.", o.ByRule.V, o.FillTime)})
	}
}

// liftFindings say how the lift comes on.
func (f *filling) liftFindings() {
	o := &f.out
	if !o.LiftFull.Known() {
		return
	}
	f.p.Find(working.Finding{Level: working.Note, Code: "lift-jumps", Source: upthrust,
		Text: working.Say("While the mould fills the lift on the cope comes to %v; at the moment it is full it jumps to %v, with the surge to %v. Clamp or weight the cope before the pour, not after.", o.LiftFilling.V, o.LiftFull.V, o.LiftSurged.V)})
}
