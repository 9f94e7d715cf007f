package form

import (
	"math"
	"reflect"
	"strconv"
	"strings"

	"pourwright/calc/quantity"
)

// Spread is a field that was given with a plus and minus.
type Spread struct {
	// Field is the JSON path, Label its name on screen.
	Field, Label string
	// Kind of quantity.
	Kind *quantity.Kind
	// Middle and Half are the value and its plus and minus, in SI.
	Middle, Half float64

	at *field
}

// Within keeps a value inside the field's range.
func (s Spread) Within(si float64) float64 {
	if s.at.min != nil {
		si = math.Max(si, *s.at.min)
	}
	if s.at.max != nil {
		si = math.Min(si, *s.at.max)
	}
	return si
}

// Setter returns a function that puts an SI value into the field of a decoded
// input; in must be a pointer to the struct that DecodeSpread filled.
func (s Spread) Setter(in any) func(si float64) {
	v := reflect.ValueOf(in).Elem()
	schema := schemaOf(v.Type())
	var inner reflect.Value
	for _, part := range strings.Split(s.Field, ".") {
		key, index, listed := strings.Cut(part, "[")
		f := schema.byKey[key]
		inner, _ = open(v.Field(f.index), f)
		if listed {
			n, err := strconv.Atoi(strings.TrimSuffix(index, "]"))
			if err != nil {
				panic(err) // the path was written by the decoder
			}
			inner = inner.Index(n)
		}
		v, schema = inner, f.elem
	}
	return func(si float64) { inner.SetFloat(si) }
}
