package reply

import (
	"reflect"
	"slices"
	"strconv"
	"strings"

	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// Leaf is one number among the answers of a calculator.
type Leaf struct {
	// Path is its JSON path, such as "moulds[0].cold"; Label its name, with the
	// name or number of the list item that it belongs to.
	Path, Label string
	// Value is the number; nil where it is not known.
	Value quantity.Any

	step, item string
}

// Leaves lists the numbers of an output struct, in order.
func Leaves(out any) []Leaf {
	v := reflect.ValueOf(out)
	return leaves(nil, v, fieldsOf(v.Type()), "", "")
}

func leaves(list []Leaf, v reflect.Value, all []tagged, path, owner string) []Leaf {
	for i := range all {
		f := &all[i]
		here := join(path, f.key)
		inner, known := f.unwrap(v.Field(f.index))
		switch {
		case f.series, f.bars:
		case f.list && f.kind == reflect.Struct:
			for n := range inner.Len() {
				item := inner.Index(n)
				list = leaves(list, item, f.fields, here+"["+strconv.Itoa(n)+"]", nameOf(item, f, n))
			}
		case f.list:
		case f.kind == reflect.Struct:
			list = leaves(list, inner, f.fields, here, owner)
		default:
			value, ok := number(inner)
			if !ok {
				continue
			}
			leaf := Leaf{Path: here, Label: f.label, step: f.step, item: path}
			if owner != "" {
				leaf.Label += ", " + owner
			}
			if known {
				leaf.Value = value
			}
			list = append(list, leaf)
		}
	}
	return list
}

// At finds one number among the answers by its path; false where there is none
// or it is not known.
func At(out any, path string) (quantity.Any, bool) {
	v := reflect.ValueOf(out)
	all := fieldsOf(v.Type())
	for _, part := range strings.Split(path, ".") {
		key, index, listed := strings.Cut(strings.TrimSuffix(part, "]"), "[")
		at := slices.IndexFunc(all, func(f tagged) bool { return f.key == key })
		if at < 0 || all[at].series || all[at].bars || all[at].list != listed {
			return nil, false
		}
		inner, known := all[at].unwrap(v.Field(all[at].index))
		if !known {
			return nil, false
		}
		if listed {
			n, err := strconv.Atoi(index)
			if err != nil || n < 0 || n >= inner.Len() {
				return nil, false
			}
			inner = inner.Index(n)
		}
		v, all = inner, all[at].fields
	}
	return number(v)
}

// StepOf is the place among the steps of a full paper of the one that made a
// number; -1 where there is none.
func StepOf(leaf Leaf, paper *working.Paper) int {
	if leaf.step == "" {
		return -1
	}
	for _, part := range []string{leaf.Path, leaf.item, ""} {
		for i := len(paper.Steps) - 1; i >= 0; i-- {
			if s := paper.Steps[i]; s.Part == part && s.Result.Symbol == leaf.step {
				return i
			}
		}
	}
	return -1
}

func (f *tagged) unwrap(v reflect.Value) (inner reflect.Value, known bool) {
	if !f.opt {
		return v, true
	}
	return quantity.OptValue(v)
}

// number is a quantity, or a count as a plain number.
func number(v reflect.Value) (quantity.Any, bool) {
	if q, ok := v.Interface().(quantity.Any); ok {
		return q, true
	}
	if v.Kind() == reflect.Int {
		return quantity.Number(v.Int()), true
	}
	return nil, false
}

// nameOf is what an item of a list is called: its name, where it has one.
func nameOf(item reflect.Value, list *tagged, n int) string {
	for i := range list.fields {
		if f := &list.fields[i]; f.key == "name" {
			if name := item.Field(f.index); name.Kind() == reflect.String && name.String() != "" {
				return name.String()
			}
		}
	}
	return strings.ReplaceAll(list.key, "_", " ") + " " + strconv.Itoa(n+1)
}
