package plan

import (
	"slices"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/reply"
	"pourwright/calc/working"
)

// Comparison is how two plans differ.
type Comparison struct {
	// Titles are those of the two plans.
	Titles [2]string
	// Sections in which they differ, in the order of the work; the plan's own
	// title and notes come first, under the key "plan".
	Sections []Compared
}

// Compared is a section in which two plans differ.
type Compared struct {
	Key, Title string
	// States of the station in either plan.
	States [2]State
	// Inputs that were filled in and differ; Answers that differ.
	Inputs  []InputDiffers
	Answers []reply.Difference
	// Only are the findings that stand in one of the two alone.
	Only [2][]working.Finding
}

// InputDiffers is an input that differs, and where a blank in it gets its value.
type InputDiffers struct {
	form.Difference
	// Links are what fills the field in either plan; nil where nothing does.
	Links [2]*Linked
}

// Draft is a plan as it was read: what ReadSpread returns.
type Draft = form.Reading[Document]

// ReadDraft reads a plan for comparing.
func ReadDraft(data []byte, system quantity.System) Draft {
	doc, spreads, faults := ReadSpread(data, system)
	return Draft{In: doc, Spreads: spreads, Faults: faults}
}

// Compare works both plans through and lists what differs: each input, each
// answer, and the findings that only one of them has. A plan compared with
// itself has no sections.
func Compare(a, b Draft) Comparison {
	worked := [2]*Result{Work(a.In, a.Faults), Work(b.In, b.Faults)}
	out := Comparison{Titles: [2]string{a.In.Title, b.In.Title}}
	inputs := map[string][]InputDiffers{}
	for _, d := range form.Differences(a, b) {
		row := InputDiffers{Difference: d}
		key := sectionOf(d)
		for i, side := range []form.Side{d.A, d.B} {
			if side.Origin == form.Default || side.Origin == form.Blank {
				row.Links[i] = worked[i].link(key, side.Path)
			}
		}
		if len(row.Place) > 0 && key != "plan" {
			row.Place = row.Place[1:] // the section's own name
		}
		if !row.same() {
			inputs[key] = append(inputs[key], row)
		}
	}
	own := Compared{Key: "plan", Title: "The plan", Inputs: inputs["plan"]}
	if len(own.Inputs) > 0 {
		out.Sections = append(out.Sections, own)
	}
	for i, s := range worked[0].Stations {
		t := worked[1].Stations[i]
		c := Compared{
			Key: s.Key, Title: s.Title, States: [2]State{s.State, t.State},
			Inputs: inputs[s.Key], Answers: reply.Differences(s.Out, t.Out),
			Only: [2][]working.Finding{only(s, t), only(t, s)},
		}
		if len(c.Inputs)+len(c.Answers)+len(c.Only[0])+len(c.Only[1]) > 0 || c.States[0] != c.States[1] {
			out.Sections = append(out.Sections, c)
		}
	}
	return out
}

// sectionOf is the section of the document that a difference stands in: "plan"
// for the document's own title and notes.
func sectionOf(d form.Difference) string {
	if len(d.Place) == 0 {
		return "plan"
	}
	path := d.A.Path
	if path == "" {
		path = d.B.Path
	}
	return form.Fault{Field: path}.Section()
}

// link finds what another station filled a field with.
func (r *Result) link(station, field string) *Linked {
	s := r.Station(station)
	if s == nil || field == "" {
		return nil
	}
	for i := range s.Linked {
		if s.Linked[i].Field == field {
			return &s.Linked[i]
		}
	}
	return nil
}

// same reports whether the value that fills a blank on one side is the one that
// was typed on the other.
func (d InputDiffers) same() bool {
	sides := [2]form.Side{d.A, d.B}
	for i, l := range d.Links {
		typed := sides[1-i]
		if l == nil || typed.Origin != form.Typed {
			continue
		}
		if q, ok := l.Value.(quantity.Any); ok {
			return q.SI() == typed.SI && typed.Half == 0
		}
		return l.Value == typed.Word
	}
	return false
}

// only are the findings of one station that the other does not have. A finding
// is known by its rule and place: its figures may differ.
func only(s, other *Station) []working.Finding {
	key := func(f working.Finding) [4]string { return [4]string{f.Level.String(), f.Code, f.Field, f.Part} }
	left := map[[4]string]int{}
	for _, f := range other.Paper.Findings {
		left[key(f)]++
	}
	var out []working.Finding
	for _, f := range s.Paper.Findings {
		if left[key(f)]--; left[key(f)] < 0 {
			out = append(out, f)
		}
	}
	slices.SortStableFunc(out, func(a, b working.Finding) int { return int(b.Level - a.Level) })
	return out
}
