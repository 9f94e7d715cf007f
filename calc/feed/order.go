package feed

import (
	"cmp"
	"slices"
	"strings"

	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// order lists everything that freezes, first to last.
func (f *feeding) order() {
	type turn struct {
		Turn
		set func(rank int)
	}
	var all []turn
	for i := range f.out.Sections {
		s := &f.out.Sections[i]
		all = append(all, turn{Turn{Name: s.Name, What: "section", Modulus: s.Freezes, Time: s.Time}, func(rank int) { s.Rank = rank }})
	}
	for k := range f.out.Joints {
		if j := &f.out.Joints[k]; j.Modulus.Known() {
			all = append(all, turn{Turn{Name: j.Name, What: "junction", Modulus: j.Modulus.V, Time: j.Time}, func(rank int) { j.Rank = rank }})
		}
	}
	for _, r := range f.out.Risers {
		all = append(all, turn{Turn{Name: r.Name, What: "riser", Modulus: r.Modulus, Time: r.Time}, func(int) {}})
	}
	slices.SortStableFunc(all, func(a, b turn) int { return cmp.Compare(a.Modulus, b.Modulus) })
	chart := working.Bars{Label: "Order of freezing", Axis: working.Axis{Label: "Modulus", Kind: quantity.Length(0).Kind()}}
	if f.timed {
		chart.Axis = working.Axis{Label: "Freezing time", Kind: quantity.Time(0).Kind()}
	}
	for i, t := range all {
		t.Rank = i + 1
		t.set(t.Rank)
		f.out.Order = append(f.out.Order, t.Turn)
		until := t.Modulus.SI()
		if f.timed {
			until = t.Time.V.SI()
		}
		chart.Rows = append(chart.Rows, working.Bar{Name: t.Name, Kind: t.What, To: until})
	}
	f.out.Chart = chart
}

// paths says how each section is fed and what on its way freezes first.
func (f *feeding) paths() {
	for i, b := range f.bodies {
		out := &f.out.Sections[i]
		steps, first := f.way(i)
		switch root := f.links.root[i]; root.what {
		case riserFeeds:
			steps = append(steps, f.out.Risers[root.i].Name)
		default:
			steps = append(steps, "nothing")
		}
		out.Path = strings.Join(steps, ", then ")
		if first >= 0 {
			y := f.bodies[first]
			My := b.p.Carry("M_y", "modulus of "+y.name+", on its way the first to freeze", y.Mo, "cm")
			g := b.p.Step("g_P", "way of feeding over section", My/b.Mo, "1", "M_y / M_o", chvorinov)
			out.Margin = quantity.Some(quantity.Number(g))
		}
	}
}

// way is the names of the sections between a section and its riser, and which
// of them freezes first; -1 where it is fed straight from a riser or not at
// all.
func (f *feeding) way(i int) (names []string, first int) {
	first = -1
	for at := f.links.from[i]; at.what == section; at = f.links.from[at.i] {
		names = append(names, f.bodies[at.i].name)
		if first < 0 || f.bodies[at.i].Mo < f.bodies[first].Mo {
			first = at.i
		}
	}
	return names, first
}
