package form

import (
	"encoding/json"
	"reflect"

	"pourwright/calc/quantity"
)

// Encode writes an input struct as the JSON that Decode reads back to the
// same: what is known and counts, quantities as text with their unit. What is
// left out is not written.
func Encode(in any) []byte {
	v := reflect.ValueOf(in)
	own := reflect.New(v.Type()).Elem()
	own.Set(v)
	b, err := json.Marshal(tree(own, schemaOf(v.Type())))
	if err != nil {
		panic(err) // texts, numbers and ticks always marshal
	}
	return b
}

func tree(v reflect.Value, s *schema) map[string]any {
	out := map[string]any{}
	for i := range s.fields {
		f := &s.fields[i]
		inner, known := open(v.Field(f.index), f)
		if !known || !counts(v, s, f) || !f.opt && inner.IsZero() {
			continue
		}
		switch f.sort {
		case Group:
			out[f.key] = tree(inner, f.elem)
		case List:
			items := make([]any, inner.Len())
			for n := range items {
				items[n] = tree(inner.Index(n), f.elem)
			}
			out[f.key] = items
		case Quantity:
			out[f.key] = quantity.Text(quantity.Value(f.kind, inner.Float()))
		case Count:
			out[f.key] = inner.Int()
		case Tick:
			out[f.key] = inner.Bool()
		default:
			out[f.key] = inner.String()
		}
	}
	return out
}
