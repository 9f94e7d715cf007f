package plan

import (
	"math"
	"reflect"
	"slices"
	"strings"
	"sync"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/reply"
	"pourwright/calc/spread"
	"pourwright/calc/working"
)

// Spreading is how the ruling answers of a plan stray with the inputs that
// carry a plus and minus.
type Spreading struct {
	// Inputs that carry one.
	Inputs []Straying
	// Left counts inputs beyond those that can stray at once.
	Left int
	// Answers that move.
	Answers []Spanned
}

// Straying is an input with its plus and minus.
type Straying struct {
	Station, Field, Label string
	Text                  working.Text
}

// Spanned is an answer with its likely span and what drives it.
type Spanned struct {
	Station, Answer, Label string
	// Low, Middle and High are the 5, 50 and 95 % points.
	Low, Middle, High quantity.Any
	// Drivers are the inputs that explain most of its variance, most first.
	Drivers []Driver
	// Lost is the share of draws in which the plan had no such answer.
	Lost quantity.Ratio
}

// Driver is an input and the share of an answer's variance that it explains
// alone.
type Driver struct {
	Field, Label string
	Share        quantity.Ratio
}

// drivers is how many inputs are named for an answer.
const drivers = 3

// least is the smallest share of variance that is worth naming.
const least = 0.02

// ruling are the answers whose span is asked for, as station and JSON name.
var ruling = [][2]string{
	{"weight", "mass"}, {"weight", "poured"}, {"weight", "charge"}, {"pour", "reckoned"}, {"pour", "shortest"}, {"pour", "longest"},
	{"pour", "weights_surged"}, {"pour", "ingate_speed"}, {"ladle", "carried"}, {"ladleheat", "tap_needed"}, {"ladleheat", "end"},
	{"cooling", "recommended"}, {"cores", "lift"}, {"melting", "fuel_high"}, {"charge", "cost"}, {"shop", "cost"},
}

// Spread works the plan through with every input that carries a plus and minus
// straying inside it.
func Spread(doc Document, decoded form.Faults, inputs []form.Spread) Spreading {
	var out Spreading
	for i, in := range inputs {
		station, _, _ := strings.Cut(in.Field, ".")
		if i >= spread.MaxInputs {
			out.Left++
			continue
		}
		out.Inputs = append(out.Inputs, Straying{station, in.Field, in.Label,
			working.Say("%v ± %v", quantity.Value(in.Kind, in.Middle), quantity.Gap(in.Kind, in.Half))})
	}
	if len(out.Inputs) == 0 {
		return out
	}
	inputs = inputs[:len(out.Inputs)]
	fields := make([]*outField, len(ruling))
	set := make([]func(float64), len(inputs))
	bind := func() {
		for i, in := range inputs {
			set[i] = in.Setter(&doc)
		}
	}
	bind()
	inList := slices.ContainsFunc(inputs, func(in form.Spread) bool { return strings.Contains(in.Field, "[") })
	m := memory{}
	answers := spread.Over(len(inputs), 1, func(z []float64) []float64 {
		if inList {
			doc = clone(doc)
			bind()
		}
		for i, in := range inputs {
			set[i](in.Within(in.Middle + in.Half/2*z[i]))
		}
		return draw(doc, decoded, m, fields)
	})
	for j, a := range answers {
		if a.Lost == 1 || !(a.High > a.Low) {
			continue
		}
		f := fields[j]
		s := Spanned{Station: ruling[j][0], Answer: ruling[j][1], Label: f.label,
			Low: quantity.Value(f.kind, a.Low), Middle: quantity.Value(f.kind, a.Middle), High: quantity.Value(f.kind, a.High), Lost: quantity.Ratio(a.Lost)}
		s.Drivers = named(inputs, a.Share)
		out.Answers = append(out.Answers, s)
	}
	return out
}

// draw works one draw through and gathers the ruling answers, NaN for one that
// is not there; their fields are noted as they are met.
func draw(doc Document, decoded form.Faults, m memory, fields []*outField) []float64 {
	r := rulingAgain(doc, decoded, m)
	out := make([]float64, len(ruling))
	for j, where := range ruling {
		out[j] = math.NaN()
		s := r.Station(where[0])
		if s.Out == nil {
			continue
		}
		if fields[j] == nil {
			fields[j] = fieldOf(reflect.TypeOf(s.Out), where[1])
		}
		if v, ok := fields[j].si(s.Out); ok {
			out[j] = v
		}
	}
	return out
}

// named are the inputs that explain most, most first.
func named(inputs []form.Spread, shares []float64) []Driver {
	var out []Driver
	taken := make([]bool, len(shares))
	for range drivers {
		best := -1
		for i, share := range shares {
			if !taken[i] && share >= least && (best < 0 || share > shares[best]) {
				best = i
			}
		}
		if best < 0 {
			break
		}
		taken[best] = true
		out = append(out, Driver{inputs[best].Field, inputs[best].Label, quantity.Ratio(shares[best])})
	}
	return out
}

// outField is a quantity among the fields of an output.
type outField struct {
	index int
	opt   bool
	kind  *quantity.Kind
	label string
}

// fieldOf finds it by its JSON name; nil where there is no such quantity.
func fieldOf(out reflect.Type, name string) *outField {
	key := outName{out, name}
	if f, ok := outFields.Load(key); ok {
		return f.(*outField)
	}
	f := findField(out, name)
	outFields.Store(key, f)
	return f
}

type outName struct {
	out  reflect.Type
	name string
}

var outFields sync.Map // outName → *outField, each looked for once

func findField(out reflect.Type, name string) *outField {
	for i := range out.NumField() {
		f := out.Field(i)
		if f.Tag.Get("json") != name {
			continue
		}
		inner, opt := quantity.OptOf(f.Type)
		if !opt {
			inner = f.Type
		}
		q, ok := reflect.Zero(inner).Interface().(quantity.Any)
		if !ok {
			return nil
		}
		return &outField{i, opt, q.Kind(), f.Tag.Get("label")}
	}
	return nil
}

// si is its value in an output; ok is false where it is not known.
func (f *outField) si(out any) (v float64, ok bool) {
	field := reflect.ValueOf(out).Field(f.index)
	if !f.opt {
		return field.Float(), true
	}
	inner, known := quantity.OptValue(field)
	return inner.Float(), known
}

// answer finds an output field by its JSON name; ok is false where it is not a
// quantity or not known.
func answer(out any, name string) (q quantity.Any, label string, ok bool) {
	f := fieldOf(reflect.TypeOf(out), name)
	if f == nil {
		return nil, "", false
	}
	v, ok := f.si(out)
	if !ok {
		return nil, "", false
	}
	return quantity.Value(f.kind, v), f.label, true
}

// Write appends the spreading as the door's JSON.
func (s Spreading) Write(w *reply.Writer) {
	w.Raw(`{"ok":true,"inputs":[`)
	for _, in := range s.Inputs {
		w.Next()
		w.Raw("{")
		w.Pair("station", in.Station)
		w.Pair("field", in.Field)
		w.Pair("label", in.Label)
		w.Pair("text", in.Text.In(w.System))
		w.Raw("}")
	}
	w.Raw(`],"left":`)
	w.Number(float64(s.Left))
	w.Key("draws")
	w.Number(float64(spread.Draws(len(s.Inputs))))
	w.Key("answers")
	w.Raw("[")
	for _, a := range s.Answers {
		w.Next()
		a.write(w)
	}
	w.Raw("]}")
}

func (a Spanned) write(w *reply.Writer) {
	w.Raw("{")
	for _, part := range [][2]string{
		{"station", a.Station}, {"answer", a.Answer}, {"label", a.Label},
		{"low", quantity.Format(a.Low, w.System)}, {"middle", quantity.Format(a.Middle, w.System)}, {"high", quantity.Format(a.High, w.System)},
	} {
		w.Key(part[0])
		w.Text(part[1])
	}
	w.Key("si")
	w.Raw("[")
	for _, q := range []quantity.Any{a.Low, a.Middle, a.High} {
		w.Next()
		w.Number(q.SI())
	}
	w.Raw("]")
	if a.Lost > 0 {
		w.Pair("lost", quantity.Format(a.Lost, w.System))
	}
	w.Key("drivers")
	w.Raw("[")
	for _, d := range a.Drivers {
		w.Next()
		w.Raw("{")
		w.Pair("field", d.Field)
		w.Pair("label", d.Label)
		w.Pair("share", quantity.Format(quantity.Ratio(math.Round(float64(d.Share)*100)/100), w.System))
		w.Raw("}")
	}
	w.Raw("]}")
}
