package form

import (
	"bytes"
	"encoding/json"
	"maps"
	"reflect"
	"slices"

	"pourwright/calc/quantity"
)

// Memory keeps what each group of an input was read as, so that an input that is
// read again with little changed is read only where it has changed. The zero
// Memory is ready; one at a time may use it.
type Memory struct {
	system quantity.System
	typ    reflect.Type
	groups map[string]readGroup
}

type readGroup struct {
	text   []byte
	value  reflect.Value
	faults Faults
}

// DecodeWith is Decode with a memory. The lists in what it returns are the
// memory's as well: they are not to be written to.
func DecodeWith[T any](m *Memory, data []byte, system quantity.System) (T, Faults) {
	var parts map[string]json.RawMessage
	if err := json.Unmarshal(data, &parts); err != nil || parts == nil {
		return Decode[T](data, system) // which says what is wrong
	}
	var in T
	v := reflect.ValueOf(&in).Elem()
	if m.groups == nil || m.system != system || m.typ != v.Type() {
		*m = Memory{system, v.Type(), map[string]readGroup{}}
	}
	s := schemaOf(v.Type())
	r := reader{system: system}
	for i := range s.fields {
		f := &s.fields[i]
		text, ok := parts[f.key]
		if !ok {
			continue
		}
		last := m.groups[f.key]
		if f.sort == Group && bytes.Equal(text, last.text) {
			v.Field(f.index).Set(last.value)
			r.faults = append(r.faults, last.faults...)
			continue
		}
		sound := len(r.faults)
		r.field(v.Field(f.index), f, parse(text), nil)
		if f.sort == Group {
			value := reflect.New(v.Field(f.index).Type()).Elem()
			value.Set(v.Field(f.index))
			m.groups[f.key] = readGroup{text, value, slices.Clone(r.faults[sound:])}
		}
	}
	r.dropUncounted(v, s, nil)
	r.nameStrangers(s, slices.Sorted(maps.Keys(parts)), nil)
	return in, r.faults
}

// parse reads JSON that is known to be sound, numbers as they are written.
func parse(text []byte) (tree any) {
	d := json.NewDecoder(bytes.NewReader(text))
	d.UseNumber()
	if err := d.Decode(&tree); err != nil {
		panic(err)
	}
	return tree
}
