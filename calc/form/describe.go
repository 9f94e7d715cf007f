package form

import (
	"reflect"

	"pourwright/calc/quantity"
)

// Field describes one input field for a screen.
type Field struct {
	Key      string   `json:"key"`
	Sort     Sort     `json:"sort"`
	Label    string   `json:"label"`
	Hint     string   `json:"hint,omitempty"`
	Part     string   `json:"part,omitempty"`
	Link     string   `json:"link,omitempty"`
	Kind     string   `json:"kind,omitempty"`
	Unit     string   `json:"unit,omitempty"`
	Min      string   `json:"min,omitempty"`
	Max      string   `json:"max,omitempty"`
	Default  string   `json:"default,omitempty"`
	Optional bool     `json:"optional,omitempty"`
	Choices  []Option `json:"choices,omitempty"`
	When     *When    `json:"when,omitempty"`
	Fields   []Field  `json:"fields,omitempty"`
}

// Option is one value of a choice and its label.
type Option struct {
	Value string `json:"value"`
	Label string `json:"label"`
}

// When says which values of a neighbouring field make this one count.
type When struct {
	Key    string   `json:"key"`
	Values []string `json:"values"`
}

// Describe lists the fields of an input struct type for a screen, with ranges,
// defaults and entry units written in the system.
func Describe(t reflect.Type, system quantity.System) []Field {
	s := schemaOf(t)
	out := make([]Field, 0, len(s.fields))
	for i := range s.fields {
		f := &s.fields[i]
		d := Field{Key: f.key, Sort: f.sort, Label: f.label, Hint: f.hint, Part: f.part, Link: f.link, Default: f.def, Optional: f.opt || f.sort == Words && !f.need || f.sort == Tick || f.sort == List && f.min == nil}
		for _, c := range f.choices {
			d.Choices = append(d.Choices, Option(c))
		}
		if f.when != nil {
			d.When = &When{f.when.key, f.when.values}
		}
		if f.elem != nil {
			d.Fields = Describe(f.elem.typ, system)
		}
		switch f.sort {
		case Quantity:
			d.Kind, d.Unit = f.kind.Name, f.entry[system]
			if f.min != nil {
				d.Min = quantity.Format(quantity.Value(f.kind, *f.min), system)
			}
			if f.max != nil {
				d.Max = quantity.Format(quantity.Value(f.kind, *f.max), system)
			}
			if f.def != "" {
				d.Default = quantity.Format(quantity.Value(f.kind, f.defSI), system)
			}
		case Count, List:
			if f.min != nil {
				d.Min = quantity.Format(quantity.Number(*f.min), system)
			}
			if f.max != nil {
				d.Max = quantity.Format(quantity.Number(*f.max), system)
			}
		}
		out = append(out, d)
	}
	return out
}
