package charge

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

var (
	balance = source.Derived("mass balance")
	leastOf = source.Derived("linear programme, solved by the simplex method on its dual")
)

const method = "the masses m_i that make the sum of m_i × price least while the melt has its mass and every limit, share and stock on hand is kept: a linear programme, by the simplex method on its dual; where no blend keeps every limit, the one with the least sum of misses"

// miss is a limit that is not kept.
type miss struct {
	limit int
	high  bool
	by    float64
}

func numbered(symbol string, i int) string { return symbol + "_" + strconv.Itoa(i+1) }

// answer writes the blend out.
func (j *job) answer() {
	p := j.p
	p.Give("M_w", "metal wanted", j.in.Melt, "kg")
	subs := make([]*working.Paper, len(j.stock))
	masses := make([]float64, len(j.stock))
	var used []int
	for i := range j.stock {
		subs[i] = p.Sub(fmt.Sprintf("materials[%d]", i))
		masses[i] = subs[i].Solve("m", "mass to charge", j.x[i]*float64(j.in.Melt), "kg", method, []string{"M_w"}, leastOf)
		if masses[i] > 0 {
			used = append(used, i)
			p.Carry(numbered("m", i), "mass of "+j.stock[i].name, masses[i], "kg")
			p.Number(numbered("y", i), "metal yield of "+j.stock[i].name, j.m.yield[i], "1")
		}
	}
	sum := func(of func(i int) string) string {
		terms := make([]string, len(used))
		for k, i := range used {
			terms[k] = of(i)
		}
		return strings.Join(terms, " + ")
	}
	charge, melt, loss := 0.0, 0.0, 0.0
	for _, i := range used {
		charge += masses[i]
		melt += masses[i] * j.m.yield[i]
		loss += masses[i] * (1 - j.m.yield[i])
	}
	p.Step("M_c", "mass of the charge", charge, "kg", sum(func(i int) string { return numbered("m", i) }), balance)
	j.melt = p.Step("M", "metal melted", melt, "kg", sum(func(i int) string { return numbered("m", i) + " * " + numbered("y", i) }), balance)
	p.Step("M_l", "lost to slag and dross", loss, "kg", sum(func(i int) string { return numbered("m", i) + " * (1 - " + numbered("y", i) + ")" }), balance)
	j.out.Melt, j.out.Charge, j.out.Loss = kg(melt), kg(charge), kg(loss)
	for i := range j.stock {
		j.out.Materials = append(j.out.Materials, j.used(i, masses[i], charge, subs[i]))
	}
	j.cost(used, sum)
	for i, a := range j.in.Additions {
		j.addition(i, a)
	}
	j.elements(used, masses)
	j.out.Kept = !j.missed
	if most := j.m.reach(noEnd, true); most < noEnd*(1-1e-6) {
		j.out.Largest = quantity.Some(kg(p.Solve("M_max", "most that this stock can make within the limits", most*float64(j.in.Melt), "kg",
			"the largest melt that keeps every limit, share and stock on hand: the same linear programme, for the mass", []string{"M_w"}, leastOf)))
	}
	j.find()
}

func (j *job) cost(used []int, sum func(func(int) string) string) {
	if !j.valued {
		return
	}
	C := 0.0
	for _, i := range used {
		C += j.p.Carry(numbered("c", i), "cost of "+j.stock[i].name, float64(j.out.Materials[i].Cost.V), "money")
	}
	j.p.Step("C", "cost of the charge", C, "money", sum(func(i int) string { return numbered("c", i) }), source.Derived("sum"))
	j.out.Cost = quantity.Some(quantity.Money(C))
	j.out.CostPerKilogram = quantity.Some(quantity.Price(j.p.Step("C_kg", "cost of a kilogram of melt", C/j.melt, "money/kg", "C / M", source.Derived("definition"))))
}

// used answers for one material.
func (j *job) used(i int, m, charge float64, p *working.Paper) Used {
	in := j.in.Materials[i]
	out := Used{Name: j.stock[i].name, Mass: kg(m)}
	p.Carry("M_c", "mass of the charge", charge, "kg")
	out.Share = share(p.Step("x", "share of the charge", m/charge, "1", "m / M_c", source.Derived("definition")))
	if j.valued {
		price := p.Give("p", "price", in.Price.V, "money/kg")
		out.Cost = quantity.Some(quantity.Money(p.Step("c", "cost", m*price, "money", "m * p", source.Derived("definition"))))
	}
	if in.OnHand.Known() {
		h := p.Give("m_h", "on hand", in.OnHand.V, "kg")
		out.Left = quantity.Some(kg(p.Step("m_left", "left on hand", math.Max(h-m, 0), "kg", "max(m_h - m, 0 * m_h)", balance)))
	}
	out.Standing = j.standing(i, m, charge, p, &out)
	return out
}

// worth is what a further kilogram of a material saves of the others: the
// prices of all rows that it counts in, but for that of its own stock.
func (j *job) worth(i int) float64 {
	w := 0.0
	for k, r := range j.lines.rows {
		if k != j.lines.held[i] {
			w += r.a[i] * j.best.price[k]
		}
	}
	return w
}

// standing says why so much of a material is in the blend.
func (j *job) standing(i int, m, charge float64, p *working.Paper, out *Used) working.Text {
	in := j.in.Materials[i]
	at := func(a, b float64) bool { return math.Abs(a-b) <= 1e-6*charge }
	worth := 0.0
	if j.priced {
		if worth = j.worth(i); math.Abs(worth) < 1e-9 {
			worth = 0
		}
		if worth >= 0 {
			out.Worth = quantity.Some(quantity.Price(p.Solve("p_w", "worth in this blend", worth, "money/kg",
				"from the dual of the linear programme: the sum over all rows of the row's price times the material's coefficient in it", nil, leastOf)))
		}
	}
	switch {
	case in.Least.V == in.Most.V:
		return working.Say("The share is fixed.")
	case in.OnHand.Known() && m > 0 && at(m, float64(in.OnHand.V)):
		return working.Say("All that there is.")
	case in.Least.V > 0 && at(m, float64(in.Least.V)*charge):
		return working.Say("No more than its least share.")
	case in.Most.V < 1 && at(m, float64(in.Most.V)*charge):
		return working.Say("Its most share.")
	case m > 0 && j.missed:
		return working.Say("As much as brings the melt nearest its limits.")
	case m > 0:
		return working.Say("As much as the limits make best.")
	case out.Worth.Known() && float64(out.Worth.V) < float64(in.Price.V):
		return working.Say("Left out; it comes in at a price below %v.", out.Worth.V)
	case j.priced && worth < 0:
		return working.Say("Left out; it would not be wanted even for nothing.")
	case j.priced:
		return working.Say("Left out; a limit leaves it no room.")
	}
	return working.Say("Left out.")
}

// elements answers for all elements that a limit, a material in the charge or
// an addition names.
func (j *job) elements(used []int, masses []float64) {
	limits := map[Element]int{}
	named := map[Element]bool{}
	for i, l := range j.in.Limits {
		limits[l.Element] = i
		named[l.Element] = true
	}
	for _, i := range used {
		for _, p := range j.stock[i].parts {
			named[p.element] = true
		}
	}
	for e := range j.rises {
		named[e] = true
	}
	for _, known := range elements {
		e := Element(known[0])
		if !named[e] {
			continue
		}
		limit, limited := limits[e]
		if !limited {
			limit = -1
		}
		j.out.Elements = append(j.out.Elements, j.element(e, limit, used, masses))
	}
}

// element works out one element of the melt.
func (j *job) element(e Element, limit int, used []int, masses []float64) Content {
	p := j.p.Sub(fmt.Sprintf("elements[%d]", len(j.out.Elements)))
	out := Content{Element: e.name()}
	var terms []string
	w := 0.0
	for _, i := range used {
		for k, part := range j.stock[i].parts {
			if part.element != e {
				continue
			}
			a := j.put(p, numbered("a", i), "content of "+j.stock[i].name, part.content.V, part.content.Source, part.content.Note, j.stock[i].own[k])
			r := j.put(p, numbered("r", i), "recovery from "+j.stock[i].name, part.recovery.V, part.recovery.Source, part.recovery.Note, false)
			w += masses[i] * j.m.yield[i] * a * r
			terms = append(terms, fmt.Sprintf("%s * %s * %s * %s", numbered("m", i), numbered("y", i), numbered("a", i), numbered("r", i)))
		}
	}
	if len(terms) == 0 {
		w = p.Step("w", "brought by the charge", 0, "1", "0", balance)
	} else {
		w = p.Step("w", "brought by the charge", w/j.melt, "1", "("+strings.Join(terms, " + ")+") / M", balance)
	}
	out.Charged = share(w)
	c := w
	if ch, ok := j.changes[e]; ok {
		k := p.Lookup("k", "gain or loss in melting", float64(ch.gain.V), "1", ch.gain.Source, "")
		u := p.Lookup("u", "pick-up in melting", float64(ch.pickUp.V), "1", ch.pickUp.Source, "")
		c = p.Step("c", "content of the melt", math.Max(w*(1+k)+u, 0), "1", "max(w * (1 + k) + u, 0)", source.Derived("the element's change in melting, never below nothing"))
	} else {
		c = p.Step("c", "content of the melt", c, "1", "w", source.Derived("no change in melting"))
	}
	out.Melt = share(c)
	if rises := j.rises[e]; len(rises) > 0 {
		terms := []string{"c"}
		with := c
		for i, r := range rises {
			with += p.Carry(numbered("r_a", i), "rise by an addition", r, "1")
			terms = append(terms, numbered("r_a", i))
		}
		out.With = quantity.Some(share(p.Step("c_a", "content with the additions", with, "1", strings.Join(terms, " + "), balance)))
	}
	if limit >= 0 {
		j.limit(e, limit, c, &out, p)
	}
	return out
}

// put puts a figure on the paper as given or as looked up.
func (j *job) put(p *working.Paper, symbol, what string, v quantity.Ratio, from source.Ref, note string, own bool) float64 {
	if own {
		return p.Give(symbol, what, v, "1")
	}
	return p.Lookup(symbol, what, float64(v), "1", from, note)
}

// limit holds the content against its limit.
func (j *job) limit(e Element, i int, c float64, out *Content, p *working.Paper) {
	l := j.in.Limits[i]
	out.Least, out.Most = l.Least, l.Most
	from := source.Derived("content against limit")
	if l.Least.Known() {
		low := p.Give("c_lo", "least content", l.Least.V, "1")
		if by := low - c; j.missed && by > allowed(trifle, low) {
			out.Missed = quantity.Some(share(p.Step("d", "limit missed by", by, "1", "c_lo - c", from)))
			j.miss = append(j.miss, miss{i, false, by})
		}
	}
	if l.Most.Known() {
		high := p.Give("c_hi", "most content", l.Most.V, "1")
		if by := c - high; j.missed && by > allowed(trifle, high) {
			out.Missed = quantity.Some(share(p.Step("d", "limit missed by", by, "1", "c - c_hi", from)))
			j.miss = append(j.miss, miss{i, true, by})
		}
	}
	if !j.priced {
		return
	}
	dearer := 0.0
	for b, lim := range j.m.bounds {
		if lim.limit == i && j.lines.bounds[b] >= 0 {
			dearer = math.Max(dearer, j.best.price[j.lines.bounds[b]])
		}
	}
	out.Dearer = quantity.Some(quantity.Money(p.Solve("C_t", "cost of 0.1 % further inside the limit", dearer*j.melt*0.001, "money",
		"from the dual of the linear programme: the price of the limit's row times the melt times 0.1 %", []string{"M"}, leastOf)))
}
