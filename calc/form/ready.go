package form

import (
	"fmt"
	"reflect"
	"strconv"

	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// Ready fills the defaults of an input struct and checks every field that
// counts: present where it must be, finite, inside its range. It returns every
// fault, never only the first; NaN always fails. Each calculator calls it
// first.
func Ready[T any](in T) (T, Faults) {
	v := reflect.ValueOf(&in).Elem()
	var faults Faults
	ready(v, schemaOf(v.Type()), nil, &faults)
	return in, faults
}

func ready(v reflect.Value, s *schema, at *place, faults *Faults) {
	// A list that is shared with the caller must not be written to.
	for i := range s.fields {
		f := &s.fields[i]
		fv := v.Field(f.index)
		if !counts(v, s, f) {
			continue
		}
		inner, known := open(fv, f)
		if f.opt && !known {
			if f.def == "" {
				continue
			}
			setDefault(fv, inner, f)
		}
		check(inner, f, at, faults)
	}
}

// open returns the value inside an Opt and whether it is known; for any other
// field, the field itself.
func open(fv reflect.Value, f *field) (reflect.Value, bool) {
	if !f.opt {
		return fv, true
	}
	return quantity.OptValue(fv)
}

func setDefault(fv, inner reflect.Value, f *field) {
	switch f.sort {
	case Quantity:
		inner.SetFloat(f.defSI)
	case Count:
		n, err := strconv.Atoi(f.def)
		if err != nil {
			panic(fmt.Sprintf("form: default of %s: %v", f.key, err))
		}
		inner.SetInt(int64(n))
	case Tick:
		inner.SetBool(f.def == "yes")
	default:
		inner.SetString(f.def)
	}
	quantity.SetOptState(fv, quantity.Defaulted)
}

// counts reports whether the field's condition holds.
func counts(v reflect.Value, s *schema, f *field) bool {
	if f.when == nil {
		return true
	}
	other := s.byKey[f.when.key]
	if other == nil {
		panic("form: no field " + f.when.key + " beside " + f.key)
	}
	inner, known := open(v.Field(other.index), other)
	is := ""
	switch {
	case !known:
		is = other.def
	case inner.Kind() == reflect.Bool:
		is = map[bool]string{true: "yes", false: "no"}[inner.Bool()]
	default:
		is = inner.String()
	}
	for _, want := range f.when.values {
		if is == want {
			return counts(v, s, other)
		}
	}
	return false
}

func check(v reflect.Value, f *field, at *place, faults *Faults) {
	add := func(value string, why working.Text, missing bool) {
		*faults = append(*faults, Fault{at.path(f), f.label, value, why, missing})
	}
	switch f.sort {
	case Quantity:
		checkQuantity(v, f, add)
	case Count:
		n := float64(v.Int())
		if n == 0 && !f.opt {
			add("", working.Say("not filled in yet"), true)
			return
		}
		if f.min != nil && n < *f.min || f.max != nil && n > *f.max {
			add(strconv.Itoa(int(n)), working.Say("%v is out of range; it must %v", int(n), countRange(f)), false)
		}
	case Choice:
		if v.String() == "" && !f.opt {
			add("", working.Say("not chosen yet"), true)
			return
		}
		for _, c := range f.choices {
			if c.Value == v.String() {
				return
			}
		}
		add(v.String(), working.Say("“%v” is not one of the choices: %v", v.String(), choiceList(f)), false)
	case Words:
		if v.String() == "" && f.need {
			add("", working.Say("not filled in yet"), true)
		}
		limit := 200.0
		if f.max != nil {
			limit = *f.max
		}
		if n := len([]rune(v.String())); float64(n) > limit {
			add("", working.Say("%v letters are too many; at most %v", n, int(limit)), false)
		}
	case Group:
		ready(v, f.elem, &place{above: at, of: f}, faults)
	case List:
		n := float64(v.Len())
		if f.min != nil && n < *f.min {
			add("", working.Say("nothing here yet; at least %v wanted", int(*f.min)), true)
		}
		if f.max != nil && n > *f.max {
			add("", working.Say("%v entries are too many; at most %v", int(n), int(*f.max)), false)
			return
		}
		own := reflect.MakeSlice(v.Type(), v.Len(), v.Len())
		reflect.Copy(own, v)
		if v.Len() > 0 {
			v.Set(own)
		}
		for i := range v.Len() {
			ready(v.Index(i), f.elem, &place{above: at, of: f, index: i}, faults)
		}
	}
}

func checkQuantity(v reflect.Value, f *field, add func(string, working.Text, bool)) {
	x := v.Float()
	if x == 0 && !f.opt {
		add("", working.Say("not filled in yet"), true)
		return
	}
	if !quantity.Finite(x) {
		add("", working.Say("this is not a finite number"), false)
		return
	}
	for _, bound := range []struct {
		at      *float64
		outside bool
	}{{f.min, f.min != nil && x < *f.min}, {f.max, f.max != nil && x > *f.max}} {
		if bound.outside {
			q := v.Interface().(quantity.Any)
			add(quantity.Text(q), working.Say("%v is out of range; it must %v", apart(q, quantity.Value(f.kind, *bound.at)), rangeText(f)), false)
		}
	}
}

// apart is q to be shown beside a bound that it misses: in full where rounding
// would make the two look alike.
func apart(q, bound quantity.Any) any {
	for _, system := range []quantity.System{quantity.Metric, quantity.US} {
		if quantity.Format(q, system) == quantity.Format(bound, system) {
			return quantity.Text(q)
		}
	}
	return q
}

func rangeText(f *field) working.Text {
	return between(f, func(v float64) any { return quantity.Value(f.kind, v) })
}

func countRange(f *field) working.Text {
	if f.min == nil && f.max == nil {
		return working.Say("be 1 or more")
	}
	return between(f, func(v float64) any { return int(v) })
}

// between says the field's range, of which at least one end is set.
func between(f *field, show func(float64) any) working.Text {
	switch {
	case f.min == nil:
		return working.Say("be at most %v", show(*f.max))
	case f.max == nil:
		return working.Say("be at least %v", show(*f.min))
	}
	return working.Say("lie between %v and %v", show(*f.min), show(*f.max))
}

func choiceList(f *field) string {
	s := ""
	for i, c := range f.choices {
		if i > 0 {
			s += ", "
		}
		s += c.Value
	}
	return s
}

// place is where fields stand in an input: in the group of, or in an item of that
// list, which stands above. nil is the input itself. Most are never written out.
type place struct {
	above *place
	of    *field
	index int
}

// path writes out where one of the fields is found, such as "dimensions[2].size".
func (p *place) path(f *field) string { return join(p.String(), f.key) }

func (p *place) String() string {
	switch {
	case p == nil:
		return ""
	case p.of.sort == List:
		return p.above.path(p.of) + "[" + strconv.Itoa(p.index) + "]"
	}
	return p.above.path(p.of)
}

func join(path, key string) string {
	if path == "" {
		return key
	}
	return path + "." + key
}
