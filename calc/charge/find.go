package charge

import (
	"fmt"
	"strings"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// find says what is wrong with the charge and what to change.
func (j *job) find() {
	j.findShort()
	j.findMissed()
	j.findSilent()
	j.findTypical()
	j.findPrices()
	j.findEdge()
	j.findAdded()
}

func (j *job) findShort() {
	if j.t == 1 {
		return
	}
	j.p.Find(working.Finding{Level: working.Stop, Code: "stock-short", Field: "materials", Source: balance,
		Text: working.Say("The stock makes only %v of the %v wanted, in the shares asked for: %v short.", kg(j.melt), j.in.Melt, j.in.Melt-kg(j.melt)),
		Do:   working.Say("Get more stock, or melt %v.", kg(j.melt))})
}

// findMissed names each limit that no blend keeps, and what would help.
func (j *job) findMissed() {
	if len(j.miss) == 0 {
		return
	}
	do := j.help()
	for _, m := range j.miss {
		l := j.in.Limits[m.limit]
		side, at, field := "under its least", l.Least.V, "least"
		if m.high {
			side, at, field = "over its most", l.Most.V, "most"
		}
		content := quantity.Ratio(0)
		for _, e := range j.out.Elements {
			if e.Element == l.Element.name() {
				content = e.Melt
			}
		}
		j.p.Find(working.Finding{Level: working.Stop, Code: "limit-missed", Field: fmt.Sprintf("limits[%d].%s", m.limit, field), Source: leastOf,
			Text: working.Say("No blend of this stock keeps every limit. In the one that comes nearest, %v is %v, which is %v %s of %v.", strings.ToLower(l.Element.name()), content, share(m.by), side, at),
			Do:   do})
	}
}

// help is what would bring the melt inside its limits.
func (j *job) help() working.Text {
	if most := j.out.Largest; most.Known() && most.V > none*j.in.Melt {
		return working.Say("Melt %v at most, or get more: %v", most.V, j.shopping())
	}
	return j.shopping()
}

// shopping is the least further stock that would help: more of the same, or
// else typical materials of the kind.
func (j *job) shopping() working.Text {
	empty := j.mix(nil, nil)
	if own, _, ok := j.m.more(empty); ok {
		if text := j.list(own, j.stock); !text.IsZero() {
			return text
		}
	}
	var others []stock
	var yields, most []float64
	for _, t := range typicals {
		if t.family != j.family() || !j.aimed(t) {
			continue
		}
		others = append(others, stock{name: t.name, parts: t.parts, own: make([]bool, len(t.parts))})
		yields, most = append(yields, 1), append(most, t.most)
	}
	offer := j.mix(others, yields)
	offer.most = most
	own, other, ok := j.m.more(offer)
	if !ok {
		return working.Say("Widen the limit: neither more of this stock nor any typical material of the kind brings the melt inside.")
	}
	return j.list(append(own, other...), append(append([]stock(nil), j.stock...), others...))
}

// aimed keeps from suggesting a material for one element that puts in plenty
// of another which nobody has limited.
func (j *job) aimed(t typical) bool {
	base := map[string]Element{irons: "Fe", coppers: "Cu", aluminium: "Al"}[t.family]
	for _, p := range t.parts {
		limited := p.element == base || p.content.V < 0.05
		for _, l := range j.in.Limits {
			limited = limited || l.Element == p.element
		}
		if !limited {
			return false
		}
	}
	return true
}

// list writes amounts out, for each kilogram wanted, leaving out the slivers.
func (j *job) list(amounts []float64, of []stock) working.Text {
	var items []any
	for i, x := range amounts {
		if x > 1e-5 {
			items = append(items, working.Say("%v of %s", kg(x*float64(j.in.Melt)), spoken(of[i].name)))
		}
	}
	if len(items) == 0 {
		return working.Text{}
	}
	format := "%v" + strings.Repeat(", %v", max(len(items)-2, 0))
	if len(items) > 1 {
		format += " and %v"
	}
	text := working.Say(format, items...)
	return working.Say("With %v more on hand, every limit can be kept.", text)
}

// spoken is a name as it stands inside a sentence: steel scrap, but A356 ingot.
func spoken(name string) string {
	if len(name) > 1 && name[0] >= 'A' && name[0] <= 'Z' && name[1] >= 'a' && name[1] <= 'z' {
		return strings.ToLower(name[:1]) + name[1:]
	}
	return name
}

// family guesses the melt from what the stock and the limits name.
func (j *job) family() string {
	for _, m := range j.in.Materials {
		if m.Stuff.Known() {
			return m.Stuff.V.find().family
		}
	}
	for _, l := range j.in.Limits {
		if l.Element == "C" {
			return irons
		}
	}
	for _, s := range j.stock {
		for _, p := range s.parts {
			switch {
			case p.element == "C":
				return irons
			case p.element == "Cu" && p.content.V > 0.4 || p.element == "Sn" || p.element == "Pb":
				return coppers
			}
		}
	}
	return aluminium
}

// findSilent warns of limits on elements that analyses say nothing of.
func (j *job) findSilent() {
	for i, l := range j.in.Limits {
		var silent []string
		for k, s := range j.stock {
			if _, said := s.brings(l.Element); !said && j.x[k] > 0 && j.in.Materials[k].Stuff.State == quantity.Unknown {
				silent = append(silent, s.name)
			}
		}
		if len(silent) == 0 {
			continue
		}
		j.p.Find(working.Finding{Level: working.Mind, Code: "content-unknown", Field: fmt.Sprintf("limits[%d]", i), Source: source.Practice("what an analysis leaves out is counted as none"),
			Text: working.Say("%v has a limit, but the analysis of %v leaves it out; it is counted as none there.", l.Element.name(), strings.Join(silent, ", ")),
			Do:   working.Say("Have it analysed, or put 0 %% in if it is known to hold none.")})
	}
}

func (j *job) findTypical() {
	var names []string
	for i, s := range j.stock {
		if j.x[i] == 0 {
			continue
		}
		for _, own := range s.own {
			if !own {
				names = append(names, s.name)
				break
			}
		}
	}
	if len(names) == 0 {
		return
	}
	j.p.Find(working.Finding{Level: working.Note, Code: "typical-analysis", Field: "materials", Source: yard,
		Text: working.Say("A typical analysis stands in for %v; the lot in the yard differs.", strings.Join(names, ", ")),
		Do:   working.Say("Put in the analysis of your own lot before a melt that matters, and analyse a sample of the melt.")})
}

func (j *job) findPrices() {
	if !j.valued {
		j.p.Find(working.Finding{Level: working.Note, Code: "no-prices", Field: "materials", Source: leastOf,
			Text: working.Say("No material has a price, so the least weight is charged, and where several blends weigh the same, the one with more of what stands first in the list."),
			Do:   working.Say("Put prices in for the cheapest blend.")})
		return
	}
	var free []string
	for i, m := range j.in.Materials {
		if !m.Price.Known() {
			free = append(free, j.stock[i].name)
		}
	}
	if len(free) > 0 {
		j.p.Find(working.Finding{Level: working.Note, Code: "price-missing", Field: "materials", Source: leastOf,
			Text: working.Say("Without a price, %v costs nothing here and goes in first.", strings.Join(free, ", ")),
			Do:   working.Say("Give it what you could sell it for.")})
	}
}

// findEdge reminds that the cheapest blend leans on its limits.
func (j *job) findEdge() {
	var at []string
	for _, l := range j.in.Limits {
		for _, e := range j.out.Elements {
			if e.Element != l.Element.name() || e.Missed.Known() {
				continue
			}
			near := func(o quantity.Opt[quantity.Ratio]) bool {
				return o.Known() && o.V > 0 && float64(max(o.V-e.Melt, e.Melt-o.V)) < 1e-5*float64(o.V)
			}
			if near(l.Least) || near(l.Most) {
				at = append(at, strings.ToLower(e.Element))
			}
		}
	}
	if len(at) == 0 {
		return
	}
	j.p.Find(working.Finding{Level: working.Note, Code: "at-the-limit", Field: "limits", Source: leastOf,
		Text: working.Say("This blend leans on the limit of %v; any error of the analyses puts the melt outside.", strings.Join(at, ", ")),
		Do:   working.Say("Set the limits inside those of the specification by as much as your analyses scatter.")})
}

// findAdded warns of additions that carry an element over its limit.
func (j *job) findAdded() {
	for i, l := range j.in.Limits {
		for _, e := range j.out.Elements {
			if e.Element != l.Element.name() || !e.With.Known() || !l.Most.Known() || float64(e.With.V) <= float64(l.Most.V)*(1+trifle)+1e-9 {
				continue
			}
			j.p.Find(working.Finding{Level: working.Mind, Code: "addition-over", Field: fmt.Sprintf("limits[%d].most", i), Source: balance,
				Text: working.Say("With the additions, %v comes to %v, %v over its most of %v.", strings.ToLower(e.Element), e.With.V, e.With.V-l.Most.V, l.Most.V),
				Do:   working.Say("Lower the most of the charge by the rise of the additions, so that they have room.")})
		}
	}
}
