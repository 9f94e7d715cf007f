package lifting

import (
	"math"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// Limit works out the recommended weight limit and the lifting index at both
// ends of a lift. A mould or an ingot is set down with care, so the end of the
// lift counts as much as its start.
func Limit(in Input, p *working.Paper) (Output, error) {
	in, faults := form.Ready(in)
	faults = append(faults, outside(in)...)
	if err := faults.Err(); err != nil {
		return Output{}, err
	}
	l := &lift{in: in, p: p, c: metricForm}
	if in.System.V == USForm {
		l.c = usForm
	}
	out := l.work()
	l.find(out)
	return out, nil
}

// outside refuses what the equation does not cover.
func outside(in Input) form.Faults {
	var faults form.Faults
	add := func(field, label, value string, why working.Text, missing bool) {
		faults = append(faults, form.Fault{Field: field, Label: label, Value: value, Why: why, Missing: missing})
	}
	switch in.What {
	case Liquid:
		add("what", "What is lifted", string(in.What), working.Say("the lifting equation does not cover loads that slop, least of all liquid metal; see the ladle's own weight and hang it from a hoist"), false)
	case Hot:
		add("what", "What is lifted", string(in.What), working.Say("the lifting equation covers cold loads at 19 to 26 °C, not hot ones; let it cool, or use tongs and a hoist"), false)
	}
	if !in.Scope {
		add("scope", "All of this is so", "", working.Say("not confirmed yet; where any of it is not so, the equation does not cover the lift"), true)
	}
	metric := in.System.V == MetricForm
	for _, end := range []struct {
		path, label string
		place       Place
	}{{"origin", "Where the lift starts", in.Origin}, {"destination", "Where the load is set down", in.Destination}} {
		if !end.place.Height.Known() {
			add(end.path+".height", "Height of the hands", "", working.Say("not filled in yet"), true)
		}
		far, top := quantity.From[quantity.Length](metricForm.far, "cm"), quantity.From[quantity.Length](metricForm.top, "cm")
		if metric && end.place.Reach > far && end.place.Reach <= 25*quantity.Inch {
			add(end.path+".reach", "Reach", quantity.Text(end.place.Reach), working.Say("%v is out of range; in the metric form it must be at most %v", end.place.Reach, far), false)
		}
		if h := end.place.Height; metric && h.Known() && h.V > top && h.V <= 70*quantity.Inch {
			add(end.path+".height", "Height of the hands", quantity.Text(h.V), working.Say("%v is out of range; in the metric form it must be at most %v", h.V, top), false)
		}
	}
	return faults
}

// lift is a lift being worked through, in the units of the form chosen.
type lift struct {
	in Input
	p  *working.Paper
	c  constants
}

func (l *lift) work() Output {
	p, c := l.p, l.c
	var out Output
	p.Give("L_w", "weight of the load", l.in.Load, c.mass)
	p.Const("LC", "load constant", c.load, c.mass, formulas)
	p.Const("H_0", "least reach", c.reach, c.length, formulas)
	p.Const("V_0", "height of the knuckles", c.knuckle, c.length, formulas)
	p.Const("k_v", "loss by height", c.perHeight, "1/"+c.length, formulas)
	p.Const("D_0", "least distance", c.travel, c.length, formulas)
	p.Const("k_d", "distance constant", c.perTravel, c.length, formulas)
	p.Const("k_a", "loss by twist", 0.0032, "1/deg", formulas)
	start := p.Give("V_1", "height of the hands at the start", l.in.Origin.Height.V, c.length)
	end := p.Give("V_2", "height of the hands at the end", l.in.Destination.Height.V, c.length)
	D := p.Step("D", "travel, up or down", math.Abs(end-start), c.length, "abs(V_2 - V_1)", formulas)
	out.Travel = quantity.From[quantity.Length](D, c.length)
	De := p.Step("D_e", "distance that counts", math.Max(c.travel, D), c.length, "max(D_0, D)", formulas)
	dm := l.rounded(p, "DM", "distance multiplier", 0.82+c.perTravel/De, "0.82 + k_d / D_e", formulas, c.printedDistance, De)
	fm := l.frequency(start >= c.knuckle)
	out.Origin = l.end(p.Sub("origin"), l.in.Origin, dm, fm)
	out.Destination = l.end(p.Sub("destination"), l.in.Destination, dm, fm)
	worse := out.Origin
	if out.Destination.Limit < worse.Limit {
		worse = out.Destination
	}
	limit := quantity.In(worse.Limit, c.mass)
	out.Limit = quantity.From[quantity.Mass](p.Solve("RWL_m", "recommended weight limit", limit, c.mass, "the lesser of the limits at the two ends of the lift", nil, formulas), c.mass)
	if worse.Index.Known() {
		out.Index = quantity.Some(quantity.Number(p.Solve("LI_m", "lifting index", float64(worse.Index.V), "1", "the greater of the indices at the two ends of the lift", nil, formulas)))
	}
	return out
}

// frequency puts the frequency multiplier on the paper: by the height of the
// hands at the start of the lift, for both its ends; between the rows of the
// table in proportion.
func (l *lift) frequency(high bool) float64 {
	p := l.p
	F := p.Give("F", "lifts a minute", l.in.Lifts, "")
	where := "hands below the knuckles at the start"
	if high {
		where = "hands at or above the knuckles at the start"
	}
	for i, row := range frequencyTable {
		if F > row.lifts {
			continue
		}
		fm := row.at(l.in.Duration, high)
		if i == 0 || F == row.lifts {
			p.Lookup("FM_b", "frequency multiplier in the table", fm, "1", frequency, "row "+row.description+", "+where)
			return p.Step("FM", "frequency multiplier", fm, "1", "FM_b", frequency)
		}
		before := frequencyTable[i-1]
		a := p.Lookup("FM_a", "frequency multiplier in the row before", before.at(l.in.Duration, high), "1", frequency, "row "+before.description+", "+where)
		p.Lookup("FM_b", "frequency multiplier in the row after", fm, "1", frequency, "row "+row.description+", "+where)
		p.Const("F_a", "lifts in the row before", before.lifts, "1", frequency)
		p.Const("F_b", "lifts in the row after", row.lifts, "1", frequency)
		return l.rounded(p, "FM", "frequency multiplier", a+(fm-a)*(F-before.lifts)/(row.lifts-before.lifts),
			"FM_a + (FM_b - FM_a) * (F - F_a) / (F_b - F_a)", source.NIOSHLift.Seen("p. 7, in proportion between the rows"), nil, 0)
	}
	panic("lifting: the form let too many lifts through")
}

// end puts one end of the lift on the paper.
func (l *lift) end(p *working.Paper, at Place, dm, fm float64) End {
	c := l.c
	H := p.Give("H", "reach", at.Reach, c.length)
	He := p.Step("H_e", "reach that counts", math.Max(c.reach, H), c.length, "max(H_0, H)", formulas)
	V := p.Give("V", "height of the hands", at.Height.V, c.length)
	A := working.GiveOpt(p, "A", "twist", at.Twist, "deg")
	hm := l.rounded(p, "HM", "horizontal multiplier", c.reach/He, "H_0 / H_e", formulas, c.printedReach, He)
	vm := l.rounded(p, "VM", "vertical multiplier", 1-c.perHeight*math.Abs(V-c.knuckle), "1 - k_v * abs(V - V_0)", formulas, nil, 0)
	am := l.rounded(p, "AM", "asymmetric multiplier", 1-0.0032*A, "1 - k_a * A", formulas, nil, 0)
	hold, note := l.in.Coupling, "by hold and height of the hands"
	if l.in.Gloves {
		hold, note = Poor, "gloves count as a poor hold"
	}
	p.Lookup("CM_t", "coupling multiplier in the table", coupling(hold, V >= c.knuckle), "1", couplings, note)
	cm := p.Step("CM", "coupling multiplier", coupling(hold, V >= c.knuckle), "1", "CM_t", couplings)
	rwl := l.tenth(p, "RWL", "recommended weight limit", c.load*hm*vm*dm*am*fm*cm, "LC * HM * VM * DM * AM * FM * CM")
	e := End{HM: quantity.Number(hm), VM: quantity.Number(vm), DM: quantity.Number(dm), AM: quantity.Number(am), FM: quantity.Number(fm), CM: quantity.Number(cm),
		Limit: quantity.From[quantity.Mass](rwl, c.mass)}
	if rwl > 0 {
		e.Index = quantity.Some(quantity.Number(p.Step("LI", "lifting index", quantity.In(l.in.Load, c.mass)/rwl, "1", "L_w / RWL", index)))
	}
	return e
}

// rounded puts a multiplier on the paper: at full precision, or as the manual's
// examples carry it, to two decimals, with the cells that the manual prints
// otherwise than its formula gives. at is the value that those cells go by.
func (l *lift) rounded(p *working.Paper, symbol, what string, value float64, formula string, from source.Ref, cells map[float64]float64, at float64) float64 {
	if l.in.Rounding.V == FullPrecision {
		return p.Step(symbol, what, value, "1", formula, from)
	}
	x := p.Step(symbol+"_f", what+", in full", value, "1", formula, from)
	for cell, v := range cells {
		if math.Abs(at-cell) < 1e-6 {
			p.Lookup(symbol+"_p", what+" as printed", v, "1", printed, "the manual's table differs from its formula here")
			return p.Step(symbol, what, v, "1", symbol+"_p", printed)
		}
	}
	return p.Step(symbol, what, math.Floor(100*x+0.5)/100, "1", "floor(100 * "+symbol+"_f + 0.5) / 100", printed)
}

// tenth puts the weight limit on the paper, to one decimal where the manual's
// rounding is asked for.
func (l *lift) tenth(p *working.Paper, symbol, what string, value float64, formula string) float64 {
	if l.in.Rounding.V == FullPrecision {
		return p.Step(symbol, what, value, l.c.mass, formula, formulas)
	}
	x := p.Step(symbol+"_f", what+", in full", value, l.c.mass, formula, formulas)
	p.Const("u_w", "unit of weight", 1, l.c.mass, printed)
	return p.Step(symbol, what, math.Floor(10*x+0.5)/10, l.c.mass, "floor(10 * "+symbol+"_f / u_w + 0.5) / 10 * u_w", printed)
}
