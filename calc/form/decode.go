package form

import (
	"bytes"
	"encoding/json"
	"io"
	"maps"
	"math"
	"reflect"
	"slices"
	"strconv"
	"strings"

	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// Decode reads JSON into an input struct. Quantities are text with a unit, or
// a bare number taken in the field's entry unit under the system. A value that
// cannot be read leaves its field not given and is named among the faults,
// unless the field does not count; the rest is read all the same. Unknown
// names are faults too. Call Ready next: Decode checks no ranges and fills no
// defaults.
func Decode[T any](data []byte, system quantity.System) (T, Faults) {
	in, _, faults := DecodeSpread[T](data, system)
	return in, faults
}

// DecodeSpread is Decode, and also returns the fields that carry a plus and
// minus.
func DecodeSpread[T any](data []byte, system quantity.System) (T, []Spread, Faults) {
	var in T
	var tree any
	d := json.NewDecoder(bytes.NewReader(data))
	d.UseNumber()
	if err := d.Decode(&tree); err != nil {
		return in, nil, Faults{{Label: "Input", Why: working.Say("this is not readable JSON: %v", err)}}
	}
	if _, err := d.Token(); err != io.EOF {
		return in, nil, Faults{{Label: "Input", Why: working.Say("there is more than one JSON value")}}
	}
	r := reader{system: system}
	v := reflect.ValueOf(&in).Elem()
	r.group(v, schemaOf(v.Type()), tree, nil, "Input")
	return in, r.spreads, r.faults
}

// Merge joins the faults of Decode with those of Ready: a field that could not
// be read, or that is part of one, is not also called missing.
func Merge(decoded, ready Faults) Faults {
	out := append(Faults{}, decoded...)
	for _, f := range ready {
		unread := slices.ContainsFunc(decoded, func(d Fault) bool { return within(f.Field, d.Field) })
		if !unread {
			out = append(out, f)
		}
	}
	return out
}

// within reports whether a field's path is, or lies below, another.
func within(path, above string) bool {
	rest, ok := strings.CutPrefix(path, above)
	return ok && (rest == "" || above == "" || rest[0] == '.' || rest[0] == '[')
}

type reader struct {
	system  quantity.System
	faults  Faults
	spreads []Spread
	half    float64 // of the quantity just read
}

func (r *reader) fault(path, label, value string, why working.Text) {
	r.faults = append(r.faults, Fault{Field: path, Label: label, Value: value, Why: why})
}

func (r *reader) group(v reflect.Value, s *schema, tree any, at *place, label string) {
	if tree == nil {
		return
	}
	object, ok := tree.(map[string]any)
	if !ok {
		r.fault(at.String(), label, short(tree), working.Say("named fields are wanted here, between { and }"))
		return
	}
	known, sound := 0, len(r.faults)
	for i := range s.fields {
		f := &s.fields[i]
		if sub, ok := object[f.key]; ok {
			known++
			r.field(v.Field(f.index), f, sub, at)
		}
	}
	if len(r.faults) > sound {
		r.dropUncounted(v, s, at)
	}
	if known < len(object) {
		r.nameStrangers(s, slices.Sorted(maps.Keys(object)), at)
	}
}

// dropUncounted drops the faults of fields that do not count: what stands there
// is not on the screen.
func (r *reader) dropUncounted(v reflect.Value, s *schema, at *place) {
	for i := range s.fields {
		if f := &s.fields[i]; !counts(v, s, f) {
			here := at.path(f)
			r.faults = slices.DeleteFunc(r.faults, func(x Fault) bool { return within(x.Field, here) })
		}
	}
}

// nameStrangers finds fault with every name that no field has.
func (r *reader) nameStrangers(s *schema, names []string, at *place) {
	for _, name := range names {
		if s.byKey[name] == nil {
			r.fault(join(at.String(), name), name, "", working.Say("there is no field of this name"))
		}
	}
}

func (r *reader) field(fv reflect.Value, f *field, tree any, at *place) {
	if tree == nil {
		return
	}
	inner, _ := open(fv, f)
	if f.sort == Group {
		r.group(inner, f.elem, tree, &place{above: at, of: f}, f.label)
		return
	}
	if f.sort == List {
		r.list(inner, f, tree, at)
		return
	}
	if text, ok := tree.(string); ok && strings.TrimSpace(text) == "" {
		return
	}
	r.half = 0
	if why := r.leaf(inner, f, tree); !why.IsZero() {
		inner.SetZero()
		r.fault(at.path(f), f.label, short(tree), why)
		return
	}
	if r.half > 0 {
		r.spreads = append(r.spreads, Spread{Field: at.path(f), Label: f.label, Kind: f.kind, Middle: inner.Float(), Half: r.half, at: f})
	}
	if f.opt {
		quantity.SetOptState(fv, quantity.Given)
	}
}

func (r *reader) list(v reflect.Value, f *field, tree any, at *place) {
	items, ok := tree.([]any)
	if !ok {
		r.fault(at.path(f), f.label, short(tree), working.Say("a list is wanted here, between [ and ]"))
		return
	}
	limit := 1000
	if f.max != nil {
		limit = int(*f.max)
	}
	if len(items) > limit {
		r.fault(at.path(f), f.label, "", working.Say("%v entries are too many; at most %v", len(items), limit))
		items = items[:limit]
	}
	v.Set(reflect.MakeSlice(v.Type(), len(items), len(items)))
	for i, item := range items {
		r.group(v.Index(i), f.elem, item, &place{above: at, of: f, index: i}, f.label)
	}
}

func (r *reader) leaf(v reflect.Value, f *field, tree any) working.Text {
	switch f.sort {
	case Quantity:
		var text string
		switch t := tree.(type) {
		case string:
			text = t
		case json.Number:
			text = t.String()
		default:
			return working.Say("a number with its unit is wanted here")
		}
		si, half, err := quantity.ParseSpread(f.kind, text, r.system, f.entry[r.system])
		if err != nil {
			return working.Say("%v", err)
		}
		r.half = half
		if si == 0 && !f.opt {
			return working.Say("%v is not allowed here; it must %v", strings.TrimSpace(text), aboveZero(f))
		}
		v.SetFloat(si)
	case Count:
		text := strings.TrimSpace(short(tree))
		n, err := strconv.ParseFloat(text, 64)
		if err != nil || n != math.Trunc(n) || math.Abs(n) > 1e6 {
			return working.Say("“%v” is not a whole number", text)
		}
		if n == 0 && !f.opt {
			return working.Say("0 is not allowed here; it must %v", countRange(f))
		}
		v.SetInt(int64(n))
	case Tick:
		switch t := tree.(type) {
		case bool:
			v.SetBool(t)
		case string:
			if t != "yes" && t != "no" {
				return working.Say("“%v” is neither yes nor no", t)
			}
			v.SetBool(t == "yes")
		default:
			return working.Say("yes or no is wanted here")
		}
	default:
		text, ok := tree.(string)
		if !ok {
			return working.Say("words are wanted here")
		}
		v.SetString(text)
	}
	return working.Text{}
}

func aboveZero(f *field) working.Text {
	if f.min != nil || f.max != nil {
		return rangeText(f)
	}
	return working.Say("not be zero")
}

// short is what stands in a field, as a fault shows it.
func short(tree any) string {
	text, ok := tree.(string)
	if !ok {
		b, err := json.Marshal(tree)
		if err != nil {
			panic(err) // it came from JSON
		}
		text = string(b)
	}
	if r := []rune(text); len(r) > 60 {
		return string(r[:60]) + "…"
	}
	return text
}
