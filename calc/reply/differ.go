package reply

import (
	"fmt"
	"math"
	"reflect"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// Side is an answer in one of two outputs.
type Side struct {
	// Path is its JSON path there, empty where the output has no such list item.
	Path string
	// Text is the answer for reading; empty where it is not known.
	Text working.Text
}

// Difference is an answer in which two outputs of one calculator differ.
type Difference struct {
	// Key is the answer's name in the output: that of the list, where it belongs
	// to one.
	Key string
	// Label is the answer's name on screen, Place the lists and groups it stands
	// in, from the outside in.
	Label string
	Place []string
	A, B  Side
	// Gap is B less A, for quantities and counts that both have; nil otherwise.
	Gap quantity.Any
	// Share is the gap over A's size; unknown where A is nothing, and for
	// temperatures and shares, of which a share says nothing.
	Share quantity.Opt[quantity.Ratio]
}

// alike is how close two numbers must be to be the same answer: nearer than
// that, only the order of the sums differs.
const alike = 1e-12

// Differences lists the answers, in their order, that two outputs of one
// calculator do not share. Either may be nil: a station without an answer.
// Curves are left out; their figures follow from the rest.
func Differences(a, b any) []Difference {
	var d answerDiffer
	var vs [2]reflect.Value
	var t reflect.Type
	for side, out := range []any{a, b} {
		if out != nil {
			vs[side] = reflect.ValueOf(out)
			t = vs[side].Type()
		}
	}
	if t != nil {
		d.object(fieldsOf(t), vs, [2]string{}, "", nil)
	}
	return d.out
}

type answerDiffer struct{ out []Difference }

func (d *answerDiffer) object(all []tagged, vs [2]reflect.Value, paths [2]string, key string, place []string) {
	for i := range all {
		f := &all[i]
		var at [2]reflect.Value
		var here [2]string
		for side, v := range vs {
			if !v.IsValid() {
				continue
			}
			here[side] = join(paths[side], f.key)
			if inner, known := f.unwrap(v.Field(f.index)); known {
				at[side] = inner
			}
		}
		top := key
		if top == "" {
			top = f.key
		}
		d.value(f, at, here, top, place)
	}
}

func (d *answerDiffer) value(f *tagged, vs [2]reflect.Value, paths [2]string, key string, place []string) {
	name := f.label
	if name == "" {
		name = words(f.key)
	}
	under := append(place[:len(place):len(place)], name)
	switch {
	case f.series, !vs[0].IsValid() && !vs[1].IsValid():
	case f.list && f.kind == reflect.Struct:
		d.list(f.fields, vs, paths, key, under)
	case f.kind == reflect.Struct:
		d.object(f.fields, vs, paths, key, under)
	default:
		d.leaf(name, vs, paths, key, place)
	}
}

func (d *answerDiffer) list(fields []tagged, vs [2]reflect.Value, paths [2]string, key string, place []string) {
	var n [2]int
	for side, v := range vs {
		if v.IsValid() {
			n[side] = v.Len()
		}
	}
	names := [2][]string{itemNames(fields, vs[0]), itemNames(fields, vs[1])}
	one := func(i, j int) {
		var at [2]reflect.Value
		var here [2]string
		name := ""
		for side, k := range []int{i, j} {
			if k < 0 {
				continue
			}
			at[side] = vs[side].Index(k)
			here[side] = fmt.Sprintf("%s[%d]", paths[side], k)
			if name == "" {
				name = fmt.Sprint(k + 1)
				if names[side] != nil {
					name = names[side][k]
				}
			}
		}
		d.object(fields, at, here, key, append(place[:len(place):len(place)], name))
	}
	if n[0] > 0 && names[0] == nil || n[1] > 0 && names[1] == nil {
		for i := range max(n[0], n[1]) {
			one(within(i, n[0]), within(i, n[1]))
		}
		return
	}
	other := map[string]int{}
	for j, name := range names[1] {
		other[name] = j
	}
	for i, name := range names[0] {
		j, ok := other[name]
		if !ok {
			j = -1
		}
		delete(other, name)
		one(i, j)
	}
	for j, name := range names[1] {
		if _, ok := other[name]; ok {
			one(-1, j)
		}
	}
}

func within(i, n int) int {
	if i < n {
		return i
	}
	return -1
}

// itemNames are what the first field of each item of a list calls it; nil
// where that does not tell them apart.
func itemNames(fields []tagged, v reflect.Value) []string {
	if f := fields[0]; !v.IsValid() || f.opt || f.list || f.kind != reflect.String {
		return nil
	}
	names := make([]string, v.Len())
	seen := map[string]bool{"": true}
	for i := range names {
		names[i] = shown(v.Index(i).Field(fields[0].index)).String()
		if seen[names[i]] {
			return nil
		}
		seen[names[i]] = true
	}
	return names
}

func (d *answerDiffer) leaf(label string, vs [2]reflect.Value, paths [2]string, key string, place []string) {
	row := Difference{Key: key, Label: label, Place: place}
	var si [2]float64
	var kind *quantity.Kind
	for side, to := range []*Side{&row.A, &row.B} {
		to.Path = paths[side]
		v := vs[side]
		if !v.IsValid() {
			continue
		}
		if q, ok := v.Interface().(quantity.Any); ok {
			kind, si[side] = q.Kind(), q.SI()
			to.Text = working.Say("%v", q)
		} else {
			if v.Kind() == reflect.Int {
				si[side] = float64(v.Int())
			}
			to.Text = shown(v)
		}
	}
	both := vs[0].IsValid() && vs[1].IsValid()
	if both {
		counted := vs[0].Kind() == reflect.Int
		switch {
		case kind != nil || counted:
			gap := si[1] - si[0]
			if math.Abs(gap) <= alike*max(math.Abs(si[0]), math.Abs(si[1])) {
				return
			}
			if counted {
				var number quantity.Number
				kind = number.Kind()
			}
			row.Gap = quantity.Gap(kind, gap)
			if quantity.Scales(kind) && si[0] != 0 && quantity.Finite(gap/math.Abs(si[0])) {
				row.Share = quantity.Some(quantity.Ratio(gap / math.Abs(si[0])))
			}
		case row.A.Text.String() == row.B.Text.String():
			return
		}
	}
	d.out = append(d.out, row)
}

// shown is a leaf that is no quantity, for reading.
func shown(v reflect.Value) working.Text {
	switch x := v.Interface().(type) {
	case working.Text:
		return x
	case source.Ref:
		return working.Say("%v", x.String())
	}
	switch v.Kind() {
	case reflect.Bool:
		return working.Say("%v", map[bool]string{true: "yes", false: "no"}[v.Bool()])
	case reflect.Slice:
		format := ""
		var parts []any
		for i := range v.Len() {
			if i > 0 {
				format += ", "
			}
			format += "%v"
			if q, ok := v.Index(i).Interface().(quantity.Any); ok {
				parts = append(parts, q)
			} else {
				parts = append(parts, shown(v.Index(i)))
			}
		}
		return working.Say(format, parts...)
	}
	return working.Say("%v", v.Interface())
}

// words is a JSON name as a person reads it: "At origin".
func words(key string) string {
	out := []byte(key)
	for i, c := range out {
		if c == '_' {
			out[i] = ' '
		}
	}
	return working.Capital(string(out))
}
