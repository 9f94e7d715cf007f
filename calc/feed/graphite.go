package feed

import (
	"pourwright/calc/alloy"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// The four conditions for graphite to feed an iron. The source gives a carbon
// equivalent of 4.2 to 4.3 %; the safer is taken.
const (
	leastModulus = 25 * quantity.Millimetre
	leastCE      = 4.3 * quantity.Percent
)

var (
	hottest   = quantity.From[quantity.Temperature](1350, "degC")
	karsay    = source.Karsay.Memory("riserless irons: rigid mould, least modulus 25 mm, poured at 1350 °C or under, carbon equivalent 4.2 to 4.3 %")
	greenSand = "upper end of the range, as a green-sand wall yields to the iron's expansion"
)

func (f *feeding) isIron() bool {
	return f.a.Family == alloy.GreyIron || f.a.Family == alloy.DuctileIron
}

// graphite tries the four conditions. It needs the sections' moduli.
func (f *feeding) graphite() {
	if !f.isIron() {
		return
	}
	all := true
	put := func(name working.Text, state string, is working.Text) {
		all = all && state == "yes"
		f.out.Conditions = append(f.out.Conditions, Condition{name, state, is})
	}
	yes := func(ok bool) string {
		if ok {
			return "yes"
		}
		return "no"
	}
	rigid := f.in.Wall.V == Rigid
	put(working.Say("a mould that does not yield (hard sand, clamped or weighted)"), yes(rigid), working.Say("%v", map[bool]string{true: "hard sand", false: "green sand, which yields"}[rigid]))
	least := f.bodies[0]
	for _, b := range f.bodies {
		if b.M < least.M {
			least = b
		}
	}
	put(working.Say("a least modulus of %v or more", leastModulus), yes(cm(least.M) >= leastModulus*(1-1e-9)), working.Say("%v in %v", cm(least.M), least.name))
	cool, rich := working.Say("poured at %v or under", hottest), working.Say("a carbon equivalent of %v or more", leastCE)
	if t := f.in.PourTemperature; t.Known() {
		put(cool, yes(t.V <= hottest), working.Say("%v", t.V))
	} else {
		put(cool, "not known", working.Say("not filled in"))
	}
	if ce := f.in.CarbonEquivalent; ce.Known() {
		put(rich, yes(ce.V >= leastCE*(1-1e-9)), working.Say("%v", ce.V))
	} else {
		put(rich, "not known", working.Say("not filled in"))
	}
	f.out.SelfFeeding = all
}

// shrinkage is the feed that the metal wants: the user's figure; none of an
// iron that feeds itself; of an iron in green sand the upper end of its range;
// else the table's.
func (f *feeding) shrinkage() {
	p, table := f.p, f.a.FeedShrinkage
	_, high := table.Span()
	switch {
	case f.in.Shrinkage.Known():
		own := p.Give("beta_own", "your own feed shrinkage", f.in.Shrinkage.V, "1")
		f.beta = p.Step("beta", "feed shrinkage", own, "1", "beta_own", ownFigure)
	case f.out.SelfFeeding:
		none := p.Const("beta_t", "feed shrinkage of an iron that feeds itself", 0, "1", karsay)
		f.beta = p.StepNote("beta", "feed shrinkage", none, "1", "beta_t", karsay, "all four conditions hold")
	case f.isIron() && f.in.Wall.V == Green:
		t := p.Lookup("beta_t", "feed shrinkage, upper end", float64(high), "1", table.Source, table.Note)
		f.beta = p.StepNote("beta", "feed shrinkage", t, "1", "beta_t", table.Source, greenSand)
	default:
		t := p.Lookup("beta_t", "feed shrinkage in the table", float64(table.V), "1", table.Source, table.Note)
		f.beta = p.Step("beta", "feed shrinkage", t, "1", "beta_t", table.Source)
	}
	f.out.Shrinkage = share(f.beta)
}
