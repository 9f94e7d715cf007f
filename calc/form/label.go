package form

import (
	"reflect"
	"strings"
)

// Label is the name on screen of the field at a JSON path of an input, such as
// "solids[2].length"; ok is false where there is no such field.
func Label[T any](path string) (label string, ok bool) {
	f := at(reflect.TypeFor[T](), path)
	if f == nil {
		return "", false
	}
	return f.label, true
}

func at(t reflect.Type, path string) *field {
	s := schemaOf(t)
	var f *field
	for _, part := range strings.Split(path, ".") {
		if s == nil {
			return nil
		}
		key, _, _ := strings.Cut(part, "[")
		if f = s.byKey[key]; f == nil {
			return nil
		}
		s = f.elem
	}
	return f
}
