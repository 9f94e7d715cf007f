package feed

import (
	"fmt"
	"strings"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// origin is what feeds a section: a riser, another section, or nothing.
type origin struct {
	what feeder
	i    int
}

type feeder int

const (
	nothing feeder = iota
	section
	riserFeeds
)

func sectionName(s Section, i int) string {
	if n := strings.TrimSpace(s.Name); n != "" {
		return n
	}
	return fmt.Sprintf("section %d", i+1)
}

func riserName(r Riser, i int) string {
	if n := strings.TrimSpace(r.Name); n != "" {
		return n
	}
	return fmt.Sprintf("riser %d", i+1)
}

// names finds sections and risers by what they are called; letter case and
// spaces about a name do not count.
type names struct {
	of   map[string]origin
	list []string
}

func key(name string) string { return strings.ToLower(strings.TrimSpace(name)) }

func newNames(in Input) (names, form.Faults) {
	n := names{of: map[string]origin{}}
	var faults form.Faults
	put := func(name, field, label string, o origin) {
		if _, twice := n.of[key(name)]; twice {
			faults = append(faults, form.Fault{Field: field, Label: label, Value: name,
				Why: working.Say("there is another “%v”; sections and risers need names of their own", name)})
			return
		}
		n.of[key(name)] = o
		n.list = append(n.list, name)
	}
	for i, s := range in.Sections {
		put(sectionName(s, i), fmt.Sprintf("sections[%d].name", i), "Name", origin{section, i})
	}
	for i, r := range in.Risers {
		put(riserName(r, i), fmt.Sprintf("risers[%d].name", i), "Name", origin{riserFeeds, i})
	}
	return n, faults
}

// find looks a name up and says what is wrong where it is not of the kind.
func (n names) find(name, field, label string, want feeder) (origin, form.Faults) {
	o, ok := n.of[key(name)]
	if ok && (want == nothing || o.what == want) {
		return o, nil
	}
	return origin{}, form.Faults{{Field: field, Label: label, Value: name, Why: working.Say("there is no %v “%v”; there are %v", map[feeder]string{nothing: "section or riser", section: "section", riserFeeds: "riser"}[want], name, strings.Join(n.list, ", "))}}
}

// links is how sections, joints and risers refer to each other.
type links struct {
	from   []origin // of each section
	joints [][2]int // sections of each joint
	stands []int    // riser on each joint, -1 for none
	root   []origin // of each section: riser at the end of its way, or nothing
}

// link resolves every name and refuses circles.
func link(in Input) (links, form.Faults) {
	n, faults := newNames(in)
	if len(faults) > 0 {
		return links{}, faults
	}
	var l links
	look := func(name, field, label string, want feeder) origin {
		o, fs := n.find(name, field, label, want)
		faults = append(faults, fs...)
		return o
	}
	for i, s := range in.Sections {
		var o origin
		if strings.TrimSpace(s.FeedsFrom) != "" {
			o = look(s.FeedsFrom, fmt.Sprintf("sections[%d].feeds_from", i), "Fed from", nothing)
		}
		l.from = append(l.from, o)
	}
	for k, j := range in.Joints {
		path := fmt.Sprintf("joints[%d]", k)
		one, other := look(j.One, path+".one", "Section", section), look(j.Other, path+".other", "Touches", section)
		if len(faults) == 0 && one == other {
			faults = append(faults, form.Fault{Field: path + ".other", Label: "Touches", Value: j.Other, Why: working.Say("a section cannot touch itself; name another one")})
		}
		stands := -1
		if j.Junction.V != Flush && strings.TrimSpace(j.Riser) != "" {
			stands = look(j.Riser, path+".riser", "Riser on the junction", riserFeeds).i
		}
		l.joints, l.stands = append(l.joints, [2]int{one.i, other.i}), append(l.stands, stands)
	}
	if len(faults) > 0 {
		return links{}, faults
	}
	for i, s := range in.Sections {
		at := l.from[i]
		for range in.Sections {
			if at.what != section {
				break
			}
			at = l.from[at.i]
		}
		if at.what == section {
			faults = append(faults, form.Fault{Field: fmt.Sprintf("sections[%d].feeds_from", i), Label: "Fed from", Value: s.FeedsFrom,
				Why: working.Say("this way of feeding goes round in a circle and never comes to a riser")})
		}
		l.root = append(l.root, at)
	}
	return l, faults
}

// mismatched finds what is in range but does not go together.
func mismatched(in Input, l links) form.Faults {
	var out form.Faults
	for i, s := range in.Sections {
		if s.Kind == Tube && s.Inner >= s.Diameter-2*thinnest {
			out = append(out, form.Fault{Field: fmt.Sprintf("sections[%d].inner", i), Label: "Bore", Value: quantity.Text(s.Inner),
				Why: working.Say("a bore of %v leaves no wall in a tube of %v; it must be under %v", s.Inner, s.Diameter, s.Diameter-2*thinnest)})
		}
	}
	for k, j := range in.Joints {
		if j.Junction.V == Flush {
			continue
		}
		for _, i := range l.joints[k] {
			if wall(in.Sections[i]) == 0 {
				out = append(out, form.Fault{Field: fmt.Sprintf("joints[%d].junction", k), Label: "Junction of walls", Value: string(j.Junction.V),
					Why: working.Say("%v has no wall thickness for the circle in the corner; choose none, or give its wall", sectionName(in.Sections[i], i))})
			}
		}
	}
	for i, r := range in.Risers {
		out = append(out, riserFaults(r, fmt.Sprintf("risers[%d]", i))...)
		if !feedsAny(l, i) {
			out = append(out, form.Fault{Field: fmt.Sprintf("risers[%d].name", i), Label: "Name", Value: r.Name, Missing: true,
				Why: working.Say("nothing is fed from %v yet; name it as the source of the section on which it stands", riserName(r, i))})
		}
	}
	return out
}

func feedsAny(l links, riser int) bool {
	for _, o := range l.root {
		if o == (origin{riserFeeds, riser}) {
			return true
		}
	}
	return false
}

func riserFaults(r Riser, path string) (out form.Faults) {
	if r.Shape.V == StatedRiser {
		return nil
	}
	if r.Height.Known() && !r.Diameter.Known() {
		out = append(out, form.Fault{Field: path + ".diameter", Label: "Own diameter, to check", Missing: true,
			Why: working.Say("a height was given without a diameter; give both, or leave both to be sized")})
	}
	if r.Shape.V != Domed {
		return out
	}
	if h := r.Height; h.Known() && r.Diameter.Known() && h.V < r.Diameter.V/2 {
		out = append(out, form.Fault{Field: path + ".height", Label: "Own height, to check", Value: quantity.Text(h.V),
			Why: working.Say("%v is less than the half ball alone, which is half the diameter; it must be at least %v", h.V, r.Diameter.V/2)})
	} else if !h.Known() && r.Ratio.V < 0.5 {
		out = append(out, form.Fault{Field: path + ".ratio", Label: "Height over diameter", Value: quantity.Text(r.Ratio.V),
			Why: working.Say("%v is less than the half ball alone; it must be at least 0.5 for this shape", r.Ratio.V)})
	}
	return out
}

// thinnest is the least wall of a tube: far below any casting, far above the
// rounding of the sums.
const thinnest = 0.1 * quantity.Millimetre
