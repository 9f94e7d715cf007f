// Package form reads the question that a calculator asks: a Go struct whose
// field tags carry, once, the JSON name, label, range, default and hint. From
// it come the decoder that understands what people type, the check that names
// every fault at once, and the description that the site builds its fields
// from.
//
// Tags: json, label, hint, min, max, default (Opt fields), choices
// ("value:Label|value:Label"; a string type with a Choices method needs none),
// when ("route=solids|stated": the field counts only then), unit
// ("mm/m,in/ft": entry units, metric and US), link (what fills the field in a
// plan while it is left blank), part (a heading above it), need ("yes" on a
// string that must not be empty).
//
// A quantity, count or choice that is not an Opt must be given: its zero value
// means not given. An Opt may be left out.
package form

import (
	"fmt"
	"reflect"
	"strconv"
	"strings"
	"sync"

	"pourwright/calc/quantity"
)

// Sort is what a field holds.
type Sort string

// The sorts of a field.
const (
	Quantity Sort = "quantity"
	Count    Sort = "count"
	Choice   Sort = "choice"
	Words    Sort = "words"
	Tick     Sort = "tick"
	Group    Sort = "group"
	List     Sort = "list"
)

// option is one of a choice's values.
type option struct{ Value, Label string }

type field struct {
	index            int
	sort             Sort
	key, label, hint string
	part, link       string
	kind             *quantity.Kind
	opt              bool
	need             bool
	min, max         *float64
	def              string
	defSI            float64
	choices          []option
	entry            [2]string
	when             *condition
	elem             *schema
}

type condition struct {
	key    string
	values []string
}

type schema struct {
	typ    reflect.Type
	fields []field
	byKey  map[string]*field
}

var schemas sync.Map // reflect.Type → *schema: what the tags say, read once.

func schemaOf(t reflect.Type) *schema {
	if s, ok := schemas.Load(t); ok {
		return s.(*schema)
	}
	s := &schema{typ: t, byKey: map[string]*field{}}
	for i := range t.NumField() {
		f := t.Field(i)
		if !f.IsExported() {
			continue
		}
		s.fields = append(s.fields, readField(t, f, i))
	}
	for i := range s.fields {
		s.byKey[s.fields[i].key] = &s.fields[i]
	}
	schemas.Store(t, s)
	return s
}

// chooser is a string type that knows its own choices, such as an alloy code.
type chooser interface{ Choices() [][2]string }

var anyType = reflect.TypeFor[quantity.Any]()

func readField(t reflect.Type, f reflect.StructField, index int) field {
	bad := func(why string, of any) {
		panic(fmt.Sprintf("form: %s.%s: %s %v", t, f.Name, why, of))
	}
	out := field{index: index, label: f.Tag.Get("label"), hint: f.Tag.Get("hint"), part: f.Tag.Get("part"), link: f.Tag.Get("link"), def: f.Tag.Get("default"), need: f.Tag.Get("need") == "yes"}
	out.key, _, _ = strings.Cut(f.Tag.Get("json"), ",")
	if out.key == "" {
		bad("has no json name:", f.Tag)
	}
	inner, opt := quantity.OptOf(f.Type)
	if !opt {
		inner = f.Type
	}
	out.opt = opt
	for _, c := range strings.Split(f.Tag.Get("choices"), "|") {
		if value, label, ok := strings.Cut(c, ":"); ok {
			out.choices = append(out.choices, option{value, label})
		}
	}
	if c, ok := reflect.Zero(inner).Interface().(chooser); ok {
		for _, pair := range c.Choices() {
			out.choices = append(out.choices, option{pair[0], pair[1]})
		}
	}
	if w := f.Tag.Get("when"); w != "" {
		key, values, ok := strings.Cut(w, "=")
		if !ok {
			bad("has a when without =:", w)
		}
		out.when = &condition{key, strings.Split(values, "|")}
	}
	switch {
	case inner.Implements(anyType):
		out.sort = Quantity
		out.kind = reflect.Zero(inner).Interface().(quantity.Any).Kind()
		if u := f.Tag.Get("unit"); u != "" {
			metric, us, ok := strings.Cut(u, ",")
			if !ok {
				us = metric
			}
			out.entry = [2]string{metric, us}
		} else {
			out.entry = [2]string{out.kind.Metric, out.kind.US}
		}
	case inner.Kind() == reflect.Int:
		out.sort = Count
	case inner.Kind() == reflect.Bool:
		out.sort = Tick
	case inner.Kind() == reflect.String && out.choices != nil:
		out.sort = Choice
	case inner.Kind() == reflect.String:
		out.sort = Words
	case inner.Kind() == reflect.Struct:
		out.sort, out.elem = Group, schemaOf(inner)
	case inner.Kind() == reflect.Slice && inner.Elem().Kind() == reflect.Struct:
		out.sort, out.elem = List, schemaOf(inner.Elem())
	default:
		bad("has a type that no form can show:", f.Type)
	}
	for _, b := range []struct {
		tag string
		to  **float64
	}{{"min", &out.min}, {"max", &out.max}} {
		text := f.Tag.Get(b.tag)
		if text == "" {
			continue
		}
		var v float64
		var err error
		if out.sort == Quantity {
			v, err = quantity.ParseKind(out.kind, text, quantity.Metric, "")
		} else {
			v, err = strconv.ParseFloat(text, 64)
		}
		if err != nil {
			bad("bound:", err)
		}
		*b.to = &v
	}
	if out.sort == Quantity && out.def != "" {
		si, err := quantity.ParseKind(out.kind, out.def, quantity.Metric, "")
		if err != nil {
			bad("default:", err)
		}
		out.defSI = si
	}
	return out
}
