package form

import (
	"fmt"
	"reflect"
	"strings"

	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// Reading is an input as it was read: what DecodeSpread returns.
type Reading[T any] struct {
	In      T
	Spreads []Spread
	Faults  Faults
}

// Origin is where the value on one side of a difference comes from.
type Origin string

// The origins of a value.
const (
	Typed   Origin = "given"   // typed in, and understood
	Unread  Origin = "unread"  // typed in, and not understood
	Default Origin = "default" // left blank: the printed default stands
	Blank   Origin = "blank"   // left blank, and nothing stands for it
)

// Side is a field in one of two inputs.
type Side struct {
	// Path is the field's JSON path there; empty where the input has no such
	// list item.
	Path   string
	Origin Origin
	// Text is what stands there, for reading; empty where it is blank.
	Text working.Text
	// SI is the value of a quantity or count, Half its plus and minus.
	SI, Half float64
	// Word is the value of a choice, and of a tick: yes or no.
	Word string
}

// Difference is a field in which two inputs of one form differ.
type Difference struct {
	// Label is the field's name, Place the groups and list items it stands in,
	// from the outside in.
	Label string
	Place []string
	A, B  Side

	at *field
}

// Named is what a choice's value is called on screen.
func (d Difference) Named(value string) string {
	if d.at == nil {
		return value
	}
	return choiceLabel(d.at, value)
}

// Differences lists, in the order of the form, the fields that were filled in
// in at least one of two inputs and do not hold the same. A field that does not
// count, or was left blank, holds its default. Items of lists are paired by
// what their first field calls them where that tells all of them apart, and by
// their place otherwise.
func Differences[T any](a, b Reading[T]) []Difference {
	d := differ{halves: [2]map[string]float64{{}, {}}, unread: [2]map[string]string{{}, {}}}
	for i, r := range []Reading[T]{a, b} {
		for _, s := range r.Spreads {
			d.halves[i][s.Field] = s.Half
		}
		for _, f := range r.Faults {
			d.unread[i][f.Field] = f.Value
		}
	}
	s := schemaOf(reflect.TypeFor[T]())
	d.group(s, [2]reflect.Value{addressable(a.In), addressable(b.In)}, [2]string{}, nil)
	return d.out
}

func addressable(in any) reflect.Value {
	v := reflect.New(reflect.TypeOf(in)).Elem()
	v.Set(reflect.ValueOf(in))
	return v
}

type differ struct {
	halves [2]map[string]float64
	unread [2]map[string]string
	out    []Difference
}

// group walks the same group of both; a value that is not valid stands for a
// list item that one of them does not have.
func (d *differ) group(s *schema, vs [2]reflect.Value, paths [2]string, place []string) {
	for i := range s.fields {
		f := &s.fields[i]
		var at [2]reflect.Value
		var here [2]string
		any := false
		for side, v := range vs {
			if !v.IsValid() {
				continue
			}
			here[side] = join(paths[side], f.key)
			if counts(v, s, f) {
				at[side] = v.Field(f.index)
				any = true
			}
		}
		switch {
		case !any:
		case f.sort == Group:
			d.group(f.elem, at, here, append(place[:len(place):len(place)], f.label))
		case f.sort == List:
			d.list(f, at, here, place)
		default:
			d.leaf(f, at, here, place)
		}
	}
}

func (d *differ) list(f *field, vs [2]reflect.Value, paths [2]string, place []string) {
	for _, pair := range pairs(f.elem, vs) {
		var at [2]reflect.Value
		var here [2]string
		name := ""
		for side, n := range pair {
			if n < 0 {
				continue
			}
			at[side] = vs[side].Index(n)
			here[side] = fmt.Sprintf("%s[%d]", paths[side], n)
			if name == "" {
				if name = called(f.elem, at[side]); name == "" {
					name = fmt.Sprint(n + 1)
				}
			}
		}
		if pair[0] >= 0 && pair[1] >= 0 {
			d.group(f.elem, at, here, append(place[:len(place):len(place)], f.label, name))
			continue
		}
		row := Difference{Label: name, Place: append(place[:len(place):len(place)], f.label)}
		for side, to := range []*Side{&row.A, &row.B} {
			to.Path, to.Origin = here[side], Blank
			if pair[side] >= 0 {
				to.Origin, to.Text = Typed, d.whole(f.elem, at, here, name)
			}
		}
		d.out = append(d.out, row)
	}
}

// whole is all that was typed into a list item that only one input has, but
// for its name.
func (d *differ) whole(s *schema, vs [2]reflect.Value, paths [2]string, name string) working.Text {
	inside := differ{halves: d.halves, unread: d.unread}
	inside.group(s, vs, paths, nil)
	var parts []any
	for _, row := range inside.out {
		for _, side := range []Side{row.A, row.B} {
			if side.Path != "" && side.Origin != Blank && side.Text.String() != name {
				parts = append(parts, side.Text)
			}
		}
	}
	if len(parts) == 0 {
		return working.Say("not filled in")
	}
	return working.Say("%v"+strings.Repeat(", %v", len(parts)-1), parts...)
}

// pairs says which items of two lists belong together; -1 for one that the
// other list does not have.
func pairs(s *schema, vs [2]reflect.Value) [][2]int {
	var n [2]int
	named := true
	var at [2]map[string]int
	for side, v := range vs {
		at[side] = map[string]int{}
		if !v.IsValid() {
			continue
		}
		n[side] = v.Len()
		for i := range v.Len() {
			name := called(s, v.Index(i))
			if _, twice := at[side][name]; twice || name == "" {
				named = false
			}
			at[side][name] = i
		}
	}
	var out [][2]int
	if !named {
		for i := range max(n[0], n[1]) {
			pair := [2]int{-1, -1}
			for side := range pair {
				if i < n[side] {
					pair[side] = i
				}
			}
			out = append(out, pair)
		}
		return out
	}
	for i := range n[0] {
		pair := [2]int{i, -1}
		if j, ok := at[1][called(s, vs[0].Index(i))]; ok {
			pair[1] = j
		}
		out = append(out, pair)
	}
	for j := range n[1] {
		if _, ok := at[0][called(s, vs[1].Index(j))]; !ok {
			out = append(out, [2]int{-1, j})
		}
	}
	return out
}

// called is what the first field of a list item calls it, where that field
// holds words or a choice.
func called(s *schema, v reflect.Value) string {
	f := &s.fields[0]
	if f.sort != Words && f.sort != Choice {
		return ""
	}
	inner, known := open(v.Field(f.index), f)
	if !known {
		return ""
	}
	return choiceLabel(f, inner.String())
}

func choiceLabel(f *field, value string) string {
	for _, c := range f.choices {
		if c.Value == value {
			return c.Label
		}
	}
	return value
}

func (d *differ) leaf(f *field, vs [2]reflect.Value, paths [2]string, place []string) {
	var sides [2]Side
	var values [2]any
	var halves [2]float64
	for side, v := range vs {
		halves[side] = d.halves[side][paths[side]]
		sides[side], values[side] = held(f, v, halves[side])
		sides[side].Path = paths[side]
		if text, ok := d.unread[side][paths[side]]; ok && v.IsValid() {
			sides[side].Origin, sides[side].Text, values[side] = Unread, working.Say("%v", text), text
		}
	}
	typed := func(o Origin) bool { return o == Typed || o == Unread }
	if !typed(sides[0].Origin) && !typed(sides[1].Origin) || values[0] == values[1] && halves[0] == halves[1] {
		return
	}
	d.out = append(d.out, Difference{f.label, place, sides[0], sides[1], f})
}

// held is what a field holds: what was typed, or its default.
func held(f *field, v reflect.Value, half float64) (Side, any) {
	if !v.IsValid() {
		return Side{Origin: Blank}, nil
	}
	inner, known := open(v, f)
	origin := Typed
	switch {
	case f.opt && !known:
		if f.def == "" {
			return Side{Origin: Blank}, nil
		}
		own := reflect.New(v.Type()).Elem()
		inner, _ = open(own, f)
		setDefault(own, inner, f)
		origin = Default
	case f.sort == Tick && !inner.Bool():
		origin = Default // a tick that was never set is no
	case !f.opt && inner.IsZero():
		return Side{Origin: Blank}, nil
	}
	side := Side{Origin: origin, Half: half}
	switch f.sort {
	case Quantity:
		side.SI = inner.Float()
		q := quantity.Value(f.kind, side.SI)
		side.Text = working.Say("%v", q)
		if half > 0 {
			side.Text = working.Say("%v ± %v", q, quantity.Gap(f.kind, half))
		}
	case Count:
		side.SI = float64(inner.Int())
		side.Text = working.Say("%v", inner.Int())
	case Tick:
		side.Word = map[bool]string{true: "yes", false: "no"}[inner.Bool()]
		side.Text = working.Say("%v", side.Word)
	default:
		side.Word = inner.String()
		side.Text = working.Say("%v", choiceLabel(f, inner.String()))
	}
	return side, inner.Interface()
}
