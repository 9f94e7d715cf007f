package charge

import (
	"math"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// job is one charge on its way to the answer. Masses are in kg.
type job struct {
	in  Input
	out Output
	p   *working.Paper

	stock   []stock
	changes map[Element]change
	m       mix
	// valued says that there are prices, priced that they also have told what a
	// limit and a material are worth.
	valued, priced bool

	missed bool // whether a limit is, by more than a trifle

	t     float64   // of the melt wanted, what the stock reaches
	x     []float64 // kg of each material for each kg wanted
	best  optimum
	lines lines
	melt  float64
	rises map[Element][]float64
	miss  []miss
}

// stock is a material with its figures settled.
type stock struct {
	name  string
	parts []part
	// own tells of each part whether its content was given, not typical.
	own []bool
}

func kg(v float64) quantity.Mass     { return quantity.From[quantity.Mass](v, "kg") }
func share(v float64) quantity.Ratio { return quantity.From[quantity.Ratio](v, "of 1") }

func newJob(in Input, p *working.Paper) *job {
	j := &job{in: in, p: p, changes: map[Element]change{}, rises: map[Element][]float64{}}
	for i, m := range in.Materials {
		j.stock = append(j.stock, settle(i, m))
		j.valued = j.valued || m.Price.Known()
	}
	j.priced = j.valued
	for _, c := range usualChanges[in.Furnace.V] {
		j.changes[c.element] = c
	}
	for _, c := range in.Changes {
		own := source.Own("your own figure")
		j.changes[c.Element] = change{c.Element, per(quantity.In(c.Gain.V, "%"), 0, 0, own, ""), per(quantity.In(c.PickUp.V, "%"), 0, 0, own, "")}
	}
	yields := make([]float64, len(in.Materials))
	for i, m := range in.Materials {
		yields[i] = float64(m.Yield.V)
	}
	j.m = j.mix(j.stock, yields)
	for i, m := range in.Materials {
		j.m.least[i], j.m.most[i] = float64(m.Least.V), float64(m.Most.V)
		j.m.price[i] = float64(m.Price.V)
		if !j.valued {
			j.m.price[i] = 1
		}
		if m.OnHand.Known() {
			j.m.held[i] = float64(m.OnHand.V / in.Melt)
		}
	}
	return j
}

// settle puts a material's own figures over the typical ones.
func settle(i int, m Material) stock {
	s := stock{name: m.label(i)}
	if m.Stuff.Known() {
		s.parts = append(s.parts, m.Stuff.V.find().parts...)
		s.own = make([]bool, len(s.parts))
	}
own:
	for _, a := range m.Analysis {
		given := part{element: a.Element, content: per(quantity.In(a.Amount.V, "%"), 0, 0, source.Own("your own figure"), ""), recovery: allOfIt}
		if a.Recovery.Known() {
			given.recovery = per(quantity.In(a.Recovery.V, "%"), 0, 0, source.Own("your own figure"), "")
		}
		for k := range s.parts {
			if s.parts[k].element == a.Element {
				if !a.Recovery.Known() {
					given.recovery = s.parts[k].recovery
				}
				s.parts[k], s.own[k] = given, true
				continue own
			}
		}
		s.parts, s.own = append(s.parts, given), append(s.own, true)
	}
	return s
}

// brings is what a kilogram of its metal puts of an element into the melt, and
// whether anything is said of the element at all.
func (s stock) brings(e Element) (float64, bool) {
	for _, p := range s.parts {
		if p.element == e {
			return float64(p.content.V) * float64(p.recovery.V), true
		}
	}
	return 0, false
}

// mix makes the programme of some stock and its yields, with the job's limits
// and no bound else.
func (j *job) mix(of []stock, yield []float64) mix {
	n := len(of)
	m := mix{slack: rounding, yield: yield, price: make([]float64, n), held: make([]float64, n), least: make([]float64, n), most: make([]float64, n)}
	for i := range of {
		m.held[i], m.most[i] = math.Inf(1), 1
	}
	for i, l := range j.in.Limits {
		c := j.changes[l.Element]
		brings := make([]float64, n)
		for k, s := range of {
			a, _ := s.brings(l.Element)
			brings[k] = yield[k] * a * (1 + float64(c.gain.V))
		}
		if l.Least.Known() && l.Least.V > 0 {
			m.bounds = append(m.bounds, bound{i, false, brings, float64(l.Least.V - c.pickUp.V), float64(l.Least.V)})
		}
		if l.Most.Known() && l.Most.V < 1 {
			m.bounds = append(m.bounds, bound{i, true, brings, float64(l.Most.V - c.pickUp.V), float64(l.Most.V)})
		}
	}
	return m
}

const (
	// none is the share of the melt wanted under which there is nothing to
	// blend.
	none = 1e-6
	// sliver is the share of the charge that only rounding or a limit's
	// tolerance can have left in a blend.
	sliver = 1e-7
	// noEnd times the melt wanted counts as without end.
	noEnd = 1000.0
)

// blend finds the masses: the cheapest blend that keeps every limit; else the
// same for as much as the stock reaches; else the one that comes nearest. One
// that comes so near that nobody would call it a miss is looked for once more
// as the cheapest, so that it has its prices.
func (j *job) blend() form.Faults {
	j.t = 1
	solved := 1.0
	best, lines, ok := j.m.cheapest(solved)
	if !ok {
		reach := j.m.reach(1, false)
		if reach < none {
			return form.Faults{{Field: "materials", Label: "Stock", Why: working.Say("of what is on hand, nothing can be charged in the shares asked for; put in what is on hand, or lower the least shares")}}
		}
		if reach < 1-trifle {
			j.t = reach
		}
		solved = reach * (1 - 10*rounding)
		best, lines, ok = j.m.cheapest(solved)
	}
	if !ok {
		j.x = tidy(j.m.closest(solved), j.m.yield, j.t)
		if j.missed = j.misses(); j.missed {
			j.priced = false // there is no price of a limit that is not kept
			return nil
		}
		wider := j.m
		wider.slack = 2 * trifle
		if best, lines, ok = wider.cheapest(solved); !ok {
			j.priced = false
			return nil
		}
	}
	j.best, j.lines = best, lines
	j.x = tidy(best.x, j.m.yield, j.t)
	return nil
}

// misses reports whether the blend is outside a limit by more than a trifle.
func (j *job) misses() bool {
	melt := dot(j.x, j.m.yield)
	for _, b := range j.m.bounds {
		over := dot(j.x, b.brings)/melt - b.share
		if !b.high {
			over = -over
		}
		if over > allowed(trifle, b.scale) {
			return true
		}
	}
	return false
}

// tidy drops slivers and brings the melt to exactly t again.
func tidy(x, yield []float64, t float64) []float64 {
	all := 0.0
	for _, v := range x {
		all += v
	}
	out := make([]float64, len(x))
	melt := 0.0
	for i, v := range x {
		if v > sliver*all {
			out[i] = v
			melt += v * yield[i]
		}
	}
	for i := range out {
		out[i] *= t / melt
	}
	return out
}
