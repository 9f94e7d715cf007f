package form

import (
	"fmt"
	"math"
	"reflect"
	"strconv"

	"pourwright/calc/quantity"
)

// Slot is a field with a number in it that can be moved: a quantity or a count
// that counts and has a value, given or default.
type Slot struct {
	// Field is the JSON path, Label its name on screen, with the name or number
	// of the list item that it belongs to.
	Field, Label string
	// Kind of quantity; a count's is the plain number.
	Kind *quantity.Kind
	// Entry is the unit of a system that the field is typed in where that is not
	// the kind's own; empty otherwise.
	Entry [2]string
	// Whole is set for a count.
	Whole bool
	// Min and Max are the field's range in SI; nil where it has no such end.
	Min, Max *float64
	// Value in SI, and whether it is the printed default.
	Value   float64
	Default bool

	set func(float64)
}

// Set puts an SI value into the field; a count is rounded.
func (s Slot) Set(v float64) { s.set(v) }

// Slots lists the fields of a decoded input that can be moved, in their order;
// in must be a pointer to the struct. They write into that struct.
func Slots(in any) []Slot {
	v := reflect.ValueOf(in).Elem()
	return slots(nil, v, schemaOf(v.Type()), "", "")
}

func slots(out []Slot, v reflect.Value, s *schema, path, owner string) []Slot {
	for i := range s.fields {
		f := &s.fields[i]
		if !counts(v, s, f) {
			continue
		}
		here := join(path, f.key)
		fv := v.Field(f.index)
		inner, known := open(fv, f)
		switch f.sort {
		case Group:
			out = slots(out, inner, f.elem, here, named(f.label, owner))
		case List:
			for n := range inner.Len() {
				item := inner.Index(n)
				out = slots(out, item, f.elem, fmt.Sprintf("%s[%d]", here, n), itemName(item, f, n))
			}
		case Quantity, Count:
			if slot, ok := slotOf(fv, inner, f, known); ok {
				slot.Field, slot.Label = here, named(f.label, owner)
				out = append(out, slot)
			}
		}
	}
	return out
}

func slotOf(fv, inner reflect.Value, f *field, known bool) (Slot, bool) {
	s := Slot{Kind: f.kind, Whole: f.sort == Count, Min: f.min, Max: f.max}
	if f.sort == Quantity && (f.entry[0] != f.kind.Metric || f.entry[1] != f.kind.US) {
		s.Entry = f.entry
	}
	if s.Whole {
		s.Kind = quantity.Number(0).Kind()
	}
	switch {
	case known && s.Whole:
		s.Value = float64(inner.Int())
	case known:
		s.Value = inner.Float()
	case f.def == "":
		return s, false
	case s.Whole:
		n, err := strconv.Atoi(f.def)
		if err != nil {
			panic(fmt.Sprintf("form: default of %s: %v", f.key, err))
		}
		s.Value, s.Default = float64(n), true
	default:
		s.Value, s.Default = f.defSI, true
	}
	if !f.opt && s.Value == 0 {
		return s, false // not given
	}
	s.set = func(v float64) {
		if s.Whole {
			inner.SetInt(int64(math.Round(v)))
		} else {
			inner.SetFloat(v)
		}
		if f.opt {
			quantity.SetOptState(fv, quantity.Given)
		}
	}
	return s, true
}

func named(label, owner string) string {
	if owner == "" {
		return label
	}
	return label + ", " + owner
}

// itemName is what an item of a list is called: its name, where it has one.
func itemName(item reflect.Value, f *field, n int) string {
	if name := f.elem.byKey["name"]; name != nil && name.sort == Words {
		if inner, _ := open(item.Field(name.index), name); inner.String() != "" {
			return inner.String()
		}
	}
	return fmt.Sprintf("%s %d", f.label, n+1)
}
