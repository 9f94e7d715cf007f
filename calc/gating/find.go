package gating

import (
	"math"

	"pourwright/calc/alloy"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// severe is the Reynolds number over which the trade's books call a stream
// severely turbulent.
const severe = 20000

var reynoldsBands = source.ASM15.Memory("below 2000 laminar, to 20 000 turbulent under a whole skin, over it severe; also P. N. Rao")

// find says what is wrong with the way.
func (z *sizing) find() {
	z.ingates()
	z.jet()
	z.air()
	z.basinFinding()
	z.notes()
}

// ingates holds the speed at the ingates against the limit.
func (z *sizing) ingates() {
	o, p := &z.out, z.p
	from := z.a.IngateSpeed.Source
	most := o.IngateLimit
	if z.in.IngateSpeed.Known() {
		from = source.Own("your own limit")
	} else if _, high := z.a.IngateSpeed.Span(); high > most {
		most = high
	}
	do := working.Say("Give the ingates %v in all, spread over more of them, and leave the choke as it is.", o.IngatesWanted)
	if z.chokeAt() == atGates {
		do = working.Say("Move the choke to the foot of the sprue with a ratio such as 1 : 2 : 4, and give the ingates %v in all, spread over more of them.", o.IngatesWanted)
	}
	stepped := z.in.Levels.V > 1
	switch {
	case o.IngateStart <= o.IngateLimit:
	case o.IngateSpeed > most:
		p.Find(working.Finding{Level: working.Stop, Code: "ingate-fast", Field: "ratio", Source: from,
			Text: working.Say("The metal comes out of the ingates at %v, at the start at %v; over %v it sprays and folds in its skin, and at the utmost %v is got away with.", o.IngateSpeed, o.IngateStart, o.IngateLimit, most), Do: do})
	case stepped:
		p.Find(working.Finding{Level: working.Mind, Code: "lowest-ingates-fast", Field: "levels", Source: from,
			Text: working.Say("Until the metal has risen to the next level the lowest ingates carry the whole flow, at %v; the limit is %v.", o.IngateStart, o.IngateLimit), Do: do})
	default:
		p.Find(working.Finding{Level: working.Mind, Code: "ingate-fast", Field: "ratio", Source: from,
			Text: working.Say("The metal comes out of the ingates at %v, at the start at %v; over %v it sprays and folds in its skin.", o.IngateSpeed, o.IngateStart, o.IngateLimit), Do: do})
	}
	gate := o.Channels[len(o.Channels)-1]
	if gate.Reynolds > severe {
		p.Find(working.Finding{Level: working.Mind, Code: "ingate-reynolds", Field: "ingates", Source: reynoldsBands,
			Text: working.Say("The Reynolds number at the ingates is %v; over %v the stream tears its skin.", gate.Reynolds, quantity.Number(severe)),
			Do:   working.Say("Make more and thinner ingates, or slow the metal.")})
	}
	if z.in.IngateSpeed.Known() || z.a.Family != alloy.GreyIron || o.IngateStart <= o.IngateLimit {
		return
	}
	p.Find(working.Finding{Level: working.Note, Code: "grey-iron-speed", Source: z.a.IngateSpeed.Source,
		Text: working.Say("Grey iron is often run at up to %v at the ingates without harm; %v is the careful limit.", z.a.IngateSpeed.High, z.a.IngateSpeed.V)})
}

// jet says where the way behind the choke does not run full.
func (z *sizing) jet() {
	o := &z.out
	if o.RunsFull {
		return
	}
	level := working.Note
	if spent := o.Losses[len(o.Losses)-1].Head; spent > o.ExactHead/5 {
		level = working.Mind
	}
	z.p.Find(working.Finding{Level: level, Code: "way-not-full", Field: "ratio", Source: energy,
		Text: working.Say("The choke's jet of %v brings less than runners and ingates could carry. They run part empty at first, and the metal in them is faster than said here and takes air along.", quantity.Speed(z.way.vc)),
		Do:   working.Say("Narrow the runners, lay them in the drag with the ingates in the cope so that they fill before the ingates run, or turn the metal once more behind the choke.")})
}

// air says where the sprue draws in air.
func (z *sizing) air() {
	o, p, w := &z.out, z.p, z.way
	if o.TopPressure.Known() {
		field := "sprue_top"
		if z.in.Untapered {
			field = "untapered"
		}
		wanted := quantity.Area(putArea(p, "A_tw", "area at the top of the sprue without suction", "Q_0 * sqrt((1 + e_t) / (2 * g * h_c))", float64(o.StartFlow)*math.Sqrt((1+w.et)/(2*z.g*w.hc)), energy))
		p.Find(working.Finding{Level: working.Mind, Code: "sprue-sucks-air", Field: field, Source: energy,
			Text: working.Say("At its top the sprue sucks with %v of metal at the start, and sand lets air in.", o.TopPressure.V),
			Do:   working.Say("Taper the sprue from %v at its top to %v at its foot, or make the basin deeper.", wanted, o.SprueFoot)})
	}
	if o.FallFoot.Known() && o.SprueFoot > o.FallFoot.V*quantity.Area(1+1e-9) && !o.TopPressure.Known() {
		p.Find(working.Finding{Level: working.Mind, Code: "sprue-foot-wide", Field: "sprue_top", Source: source.Groover.Memory("ch. 10, continuity"),
			Text: working.Say("The stream that starts from your top narrows to %v as it falls; %v at the foot is more than it fills while nothing backs it up, and the gap draws in air.", o.FallFoot.V, o.SprueFoot),
			Do:   working.Say("Widen the top to %v.", quantity.Area(float64(o.SprueFoot)*float64(o.TaperWanted)))})
	}
	if o.Excess.Known() && o.Excess.V > 0.1 {
		p.Find(working.Finding{Level: working.Note, Code: "sprue-sides-straight", Source: source.Derived("greatest ratio of a straight side to the stream of free fall"),
			Text: working.Say("A sprue with straight sides from %v to %v is up to %v wider than the stream part of the way down; sides that curve in with it leave no gap.", o.SprueTopSize, o.SprueFootSize, o.Excess.V)})
	}
}

// basinFinding minds a shallow basin.
func (z *sizing) basinFinding() {
	o := &z.out
	if deep := o.BasinDepth / o.SprueTopSize; deep < 2.5-1e-9 {
		z.p.Find(working.Finding{Level: working.Mind, Code: "basin-shallow", Field: "basin_depth", Source: basinSource,
			Text: working.Say("The metal stands only %v sprue widths deep in the basin; a whirl draws air and slag down the sprue.", quantity.Number(deep)),
			Do:   working.Say("Fill the basin %v deep, or stop the sprue until the basin is full.", 3*o.SprueTopSize)})
	}
}

// notes says what the figures do not say.
func (z *sizing) notes() {
	o, p := &z.out, z.p
	p.Find(working.Finding{Level: working.Note, Code: "ratio-not-speed", Source: ratioSource,
		Text: working.Say("The ratio %v says nothing of speed. At this flow it gives %v in the choke, %v in the runners and %v at the ingates.", o.Ratio, quantity.Speed(z.way.vc), quantity.Speed(z.way.vr), quantity.Speed(z.way.vg))})
	l, exact := listFor(z.a)
	switch {
	case z.in.Ratio.V == OwnRatio:
	case !exact:
		p.Find(working.Finding{Level: working.Note, Code: "ratio-not-listed", Source: ratioSource,
			Text: working.Say("The books print no ratios for %v; those for %v stand in.", z.a.Name, l.metal)})
	case z.in.Ratio.Known() && !l.has(z.in.Ratio.V):
		p.Find(working.Finding{Level: working.Note, Code: "ratio-of-another-metal", Field: "ratio", Source: ratioSource,
			Text: working.Say("The books print %v for other metals than %v.", o.Ratio, z.a.Name)})
	}
	if z.in.Discharge.Known() {
		if z.in.Discharge.V < 0.65 {
			p.Find(working.Finding{Level: working.Note, Code: "discharge-family", Field: "discharge", Source: source.Dubitskii.Memory("coefficients with back pressure, weakly remembered"),
				Text: working.Say("A discharge coefficient of %v comes from the tables that count the back pressure of the mould; those of 0.7 to 0.9 count sprue and runners only. Do not mix the two.", z.in.Discharge.V)})
		}
		return
	}
	if !z.in.RunnerLength.Known() || !z.in.IngateLength.Known() {
		p.Find(working.Finding{Level: working.Note, Code: "friction-not-counted", Field: "runner_length", Source: fanning,
			Text: working.Say("The friction of runners or ingates is not counted, as their lengths are not given; in short ones it matters little.")})
	}
	if C := o.Discharge; C < 0.4 || C > 0.95 {
		p.Find(working.Finding{Level: working.Mind, Code: "losses-unusual", Field: "fittings", Source: source.Practice("discharge coefficients of 0.7 to 0.9 for sprue and runners, 0.35 to 0.6 with the mould's back pressure"),
			Text: working.Say("The losses come to a discharge coefficient of %v; sprues and runners that work have 0.4 to 0.95.", C),
			Do:   working.Say("Look through the list of losses for one that is too large or missing.")})
	}
	if f := z.roughness(); f > 0.15 {
		p.Find(working.Finding{Level: working.Note, Code: "friction-smooth", Source: fanning,
			Text: working.Say("Friction takes %v of the head, reckoned with smooth walls; rough sand may double it.", f)})
	}
}

// roughness is the share of the head that friction takes.
func (z *sizing) roughness() quantity.Ratio {
	sum := 0.0
	for _, l := range z.out.Losses {
		if len(l.Name) >= 8 && l.Name[:8] == "Friction" {
			sum += float64(l.Head)
		}
	}
	return quantity.Ratio(sum / z.H)
}
