package charge

import (
	"fmt"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// overWhole is how far an analysis may come over 100 %, since its figures are
// rounded, and how far shares that make a whole may miss it.
const (
	overWhole = 0.005
	nearWhole = 1e-9
)

// check finds what single fields cannot show.
func check(in Input) form.Faults {
	var faults form.Faults
	add := func(field, label, value string, why working.Text) {
		faults = append(faults, form.Fault{Field: field, Label: label, Value: value, Why: why})
	}
	missing := func(field, label string) {
		faults = append(faults, form.Fault{Field: field, Label: label, Why: working.Say("not filled in yet"), Missing: true})
	}
	twice := func(path, label string, seen map[Element]bool, e Element) {
		if seen[e] {
			add(path+".element", label, string(e), working.Say("%v stands here twice; put it in once", e.name()))
		}
		seen[e] = true
	}
	least, most := 0.0, 0.0
	for i, m := range in.Materials {
		path, name := fmt.Sprintf("materials[%d]", i), m.label(i)
		if len(m.Analysis) == 0 && !m.Stuff.Known() {
			missing(path+".analysis", name+", analysis")
		}
		sum, seen := 0.0, map[Element]bool{}
		for k, a := range m.Analysis {
			at := fmt.Sprintf("%s.analysis[%d]", path, k)
			twice(at, name+", analysis", seen, a.Element)
			if !a.Amount.Known() {
				missing(at+".amount", name+", "+a.Element.name())
			}
			sum += float64(a.Amount.V)
		}
		if sum > 1+overWhole {
			add(path+".analysis", name+", analysis", quantity.Text(quantity.Ratio(sum)), working.Say("its elements come to %v; they must come to %v at most", quantity.Ratio(sum), quantity.Ratio(1)))
		}
		if m.Least.V > m.Most.V {
			add(path+".least", name+", at least", quantity.Text(m.Least.V), working.Say("%v is over the most, %v; it must be at most that", m.Least.V, m.Most.V))
		}
		least, most = least+float64(m.Least.V), most+float64(m.Most.V)
	}
	if least > 1+nearWhole {
		add("materials", "Stock", "", working.Say("the least shares come to %v of the charge; they must come to %v at most", quantity.Ratio(least), quantity.Ratio(1)))
	}
	if most < 1-nearWhole {
		add("materials", "Stock", "", working.Say("the most shares come to only %v of the charge; they must come to %v at least", quantity.Ratio(most), quantity.Ratio(1)))
	}
	seen := map[Element]bool{}
	for i, l := range in.Limits {
		path, name := fmt.Sprintf("limits[%d]", i), l.Element.name()
		twice(path, "Limits of the melt", seen, l.Element)
		switch {
		case !l.Least.Known() && !l.Most.Known():
			missing(path+".most", name+", at most")
		case l.Least.Known() && l.Most.Known() && l.Least.V > l.Most.V:
			add(path+".least", name+", at least", quantity.Text(l.Least.V), working.Say("%v is over the most, %v; it must be at most that", l.Least.V, l.Most.V))
		}
	}
	seen = map[Element]bool{}
	for i, c := range in.Changes {
		twice(fmt.Sprintf("changes[%d]", i), "Own changes in melting", seen, c.Element)
	}
	return append(faults, checkAdditions(in.Additions)...)
}

// label is what a material is called.
func (m Material) label(i int) string {
	switch {
	case m.Name != "":
		return m.Name
	case m.Stuff.Known():
		return m.Stuff.V.find().name
	}
	return fmt.Sprintf("Material %d", i+1)
}
