// Package reply writes a calculator's answers as the JSON that a door hands
// out: every number with its label, its text in the reader's units and a
// pointer to the step that made it. The struct tags of an output are json,
// label, hint, step (the symbol of the step whose result the field is) and
// inches (the parts of an inch that a length is worked to: its reader in US
// units gets the nearest of them as well).
package reply

import (
	"encoding/json"
	"fmt"
	"math"
	"reflect"
	"slices"
	"strconv"
	"sync"
	"unicode/utf8"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// Writer appends JSON for one reader: a unit system, whether the working is
// wanted, and of a plan, of which station alone (of all where it is empty), and
// which stations in full (all where Full is nil).
type Writer struct {
	System  quantity.System
	Working bool
	Station string
	Full    []string
	buf     []byte
	steps   map[working.Place]int
}

// Reuse lets the writer write over an older writer's bytes, which nobody wants
// any more. Call it first.
func (w *Writer) Reuse(room []byte) { w.buf = room[:0] }

// Bytes is what has been written.
func (w *Writer) Bytes() []byte { return w.buf }

// StepsOf reports whether the steps of a plan's station are wanted.
func (w *Writer) StepsOf(station string) bool {
	return w.Working && (w.Station == "" || w.Station == station)
}

// FullyOf reports whether a plan's station is wanted in full.
func (w *Writer) FullyOf(station string) bool {
	return w.Full == nil || slices.Contains(w.Full, station)
}

// Aside returns what write appends, instead of appending it.
func (w *Writer) Aside(write func()) string {
	before := len(w.buf)
	write()
	text := string(w.buf[before:])
	w.buf = w.buf[:before]
	return text
}

// Raw appends JSON text as it stands.
func (w *Writer) Raw(s string) {
	if w.buf == nil {
		w.buf = make([]byte, 0, 1<<18) // the reply of a whole plan fits
	}
	w.buf = append(w.buf, s...)
}

// Text appends a JSON string.
func (w *Writer) Text(s string) {
	if plainText(s) {
		w.buf = append(w.buf, '"')
		w.buf = append(w.buf, s...)
		w.buf = append(w.buf, '"')
		return
	}
	b, err := json.Marshal(s)
	if err != nil {
		panic(err) // a string always marshals
	}
	w.buf = append(w.buf, b...)
}

// plainText reports whether a string stands in JSON as it is.
func plainText(s string) bool {
	beyond := false // ASCII
	for i := range len(s) {
		c := s[i]
		if c < ' ' || c == '"' || c == '\\' || c == 0x7f {
			return false
		}
		beyond = beyond || c >= utf8.RuneSelf
	}
	return !beyond || utf8.ValidString(s)
}

// Key appends an object's key, after a comma unless it is the first.
func (w *Writer) Key(name string) {
	w.part()
	w.Text(name)
	w.Raw(":")
}

// Pair appends a key and its text.
func (w *Writer) Pair(name, text string) {
	w.Key(name)
	w.Text(text)
}

// part begins another part of an object, after a comma unless it is the first.
func (w *Writer) part() {
	if n := len(w.buf); n > 0 && w.buf[n-1] != '{' {
		w.buf = append(w.buf, ',')
	}
}

// Next begins another item of a list, after a comma unless it is the first.
func (w *Writer) Next() {
	if n := len(w.buf); n > 0 && w.buf[n-1] != '[' {
		w.Raw(",")
	}
}

// Number appends a JSON number. It panics on NaN and infinities, which the
// doors turn into their third reply: our bug.
func (w *Writer) Number(v float64) {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		panic("reply: a result is not a finite number")
	}
	w.buf = strconv.AppendFloat(w.buf, v, 'g', -1, 64)
}

// Hundredths appends a JSON number rounded to two decimals, in a fraction of the
// time that Number takes. Like that it panics on NaN and infinities.
func (w *Writer) Hundredths(v float64) {
	if !quantity.Finite(v) {
		panic("reply: a result is not a finite number")
	}
	n := int64(math.Round(math.Abs(v) * 100))
	if v < 0 && n > 0 {
		w.buf = append(w.buf, '-')
	}
	w.buf = strconv.AppendInt(w.buf, n/100, 10)
	if tens, ones := n/10%10, n%10; ones > 0 {
		w.buf = append(w.buf, '.', byte('0'+tens), byte('0'+ones))
	} else if tens > 0 {
		w.buf = append(w.buf, '.', byte('0'+tens))
	}
}

// Answers appends the answers of one calculator: the fields of an output
// struct, in order, as an object of leaves.
func (w *Writer) Answers(out any, paper *working.Paper) {
	w.steps = nil
	if paper != nil {
		w.steps = make(map[working.Place]int, len(paper.Places))
		for i, place := range paper.Places {
			w.steps[place] = i // the last step with its symbol
		}
	}
	v := reflect.ValueOf(out)
	w.object(v, fieldsOf(v.Type()), "")
}

// tagged is what the tags and the type of an output field say, read once for
// each type.
type tagged struct {
	index            int
	key, step, label string
	// name opens the field in JSON, leaf its leaf: the label and the hint.
	name, leaf string
	parts      int // of an inch that the length is worked to, or 0
	opt        bool
	kind       reflect.Kind   // of the value, or of the items of a list
	quantity   *quantity.Kind // where it is a quantity
	list       bool
	series     bool
	bars       bool
	fields     []tagged // of the value, or of the items
}

var fields sync.Map // reflect.Type → []tagged

func fieldsOf(t reflect.Type) []tagged {
	if f, ok := fields.Load(t); ok {
		return f.([]tagged)
	}
	var out []tagged
	for i := range t.NumField() {
		tag := t.Field(i).Tag
		key := tag.Get("json")
		if key == "" || key == "-" {
			continue
		}
		f := tagged{index: i, key: key, step: tag.Get("step"), label: tag.Get("label")}
		text := &Writer{}
		text.Text(key)
		f.name = string(text.buf) + ":"
		text = &Writer{buf: []byte("{")} // begun, so that it takes no room for a whole plan
		for _, say := range [][2]string{{"label", tag.Get("label")}, {"hint", tag.Get("hint")}} {
			if say[1] != "" {
				text.Key(say[0])
				text.Text(say[1])
			}
		}
		f.leaf = string(text.buf)
		if parts := tag.Get("inches"); parts != "" {
			var err error
			if f.parts, err = strconv.Atoi(parts); err != nil {
				panic("reply: the tag inches of " + key + " is no number")
			}
		}
		f.shape(t.Field(i).Type)
		out = append(out, f)
	}
	fields.Store(t, out)
	return out
}

var (
	seriesType = reflect.TypeFor[working.Series]()
	barsType   = reflect.TypeFor[working.Bars]()
	textTypes  = []reflect.Type{reflect.TypeFor[working.Text](), reflect.TypeFor[source.Ref]()}
)

// shape notes what kind of value a type holds.
func (f *tagged) shape(t reflect.Type) {
	if inner, ok := quantity.OptOf(t); ok {
		f.opt = true
		t = inner
	}
	if t.Kind() == reflect.Slice {
		f.list = true
		t = t.Elem()
	}
	f.series, f.bars = t == seriesType, t == barsType
	f.kind = t.Kind()
	if q, ok := reflect.Zero(t).Interface().(quantity.Any); ok {
		f.quantity = q.Kind()
	}
	if slices.Contains(textTypes, t) {
		f.kind = reflect.String
	}
	if f.kind == reflect.Struct && !f.series && !f.bars {
		f.fields = fieldsOf(t)
	}
}

func (w *Writer) object(v reflect.Value, all []tagged, path string) {
	w.Raw("{")
	for i := range all {
		f := &all[i]
		w.part()
		w.Raw(f.name)
		w.value(v.Field(f.index), f, path)
	}
	w.Raw("}")
}

func (w *Writer) value(v reflect.Value, f *tagged, path string) {
	v, known := f.unwrap(v)
	switch {
	case f.series && f.list:
		chart := v.Interface().([]working.Series)
		w.Raw("[")
		for _, s := range chart {
			w.Next()
			w.series(s, chart)
		}
		w.Raw("]")
	case f.series:
		s := v.Interface().(working.Series)
		w.series(s, []working.Series{s})
	case f.bars:
		w.bars(v.Interface().(working.Bars))
	case f.list && f.kind == reflect.Struct:
		here := join(path, f.key)
		w.Raw("[")
		for i := range v.Len() {
			w.Next()
			w.object(v.Index(i), f.fields, here+"["+strconv.Itoa(i)+"]")
		}
		w.Raw("]")
	case f.list:
		w.Raw("[")
		for i := range v.Len() {
			w.Next()
			w.leaf(v.Index(i), f, path, known)
		}
		w.Raw("]")
	case f.kind == reflect.Struct:
		w.object(v, f.fields, join(path, f.key))
	default:
		w.leaf(v, f, path, known)
	}
}

func join(path, key string) string {
	if path == "" {
		return key
	}
	return path + "." + key
}

func (w *Writer) leaf(v reflect.Value, f *tagged, path string, known bool) {
	w.Raw(f.leaf)
	if !known {
		w.Pair("text", "not known")
		w.Key("unknown")
		w.Raw("true}")
		return
	}
	if f.quantity != nil {
		si := v.Float()
		w.part()
		w.Raw(`"si":`)
		w.Number(si)
		w.Raw(`,"text":"`)
		w.buf = append(quantity.Append(w.buf, f.quantity, si, w.System), '"') // which has nothing to escape
		if f.parts > 0 && w.System == quantity.US {
			w.Pair("fraction", quantity.InchFraction(quantity.Length(si), f.parts))
		}
	} else {
		w.plain(v)
	}
	if f.step != "" {
		for _, part := range []string{join(path, f.key), path, ""} {
			if n, ok := w.steps[working.Place{Part: part, Symbol: f.step}]; ok {
				w.Raw(`,"step":`)
				w.Raw(strconv.Itoa(n))
				break
			}
		}
	}
	w.Raw("}")
}

func (w *Writer) plain(v reflect.Value) {
	switch x := v.Interface().(type) {
	case working.Text:
		w.Pair("text", x.In(w.System))
		return
	case source.Ref:
		w.Pair("text", x.String())
		return
	}
	switch v.Kind() {
	case reflect.Int:
		w.Key("value")
		w.Number(float64(v.Int()))
		w.Pair("text", strconv.Itoa(int(v.Int())))
	case reflect.Bool:
		w.Key("value")
		w.Raw(strconv.FormatBool(v.Bool()))
		w.Pair("text", map[bool]string{true: "yes", false: "no"}[v.Bool()])
	case reflect.String:
		w.Pair("text", v.String())
	default:
		panic(fmt.Sprintf("reply: cannot show a %s", v.Type()))
	}
}

// series writes one of the curves of a chart; those with the same two axes are
// drawn together, and so share their units.
func (w *Writer) series(s working.Series, chart []working.Series) {
	x, y := 0.0, 0.0
	for i := range chart {
		if other := &chart[i]; other.X == s.X && other.Y == s.Y {
			for _, p := range other.Points {
				x, y = math.Max(x, math.Abs(p.X)), math.Max(y, math.Abs(p.Y))
			}
		}
	}
	xScale, xUnit := axisScale(s.X.Kind, x, w.System)
	yScale, yUnit := axisScale(s.Y.Kind, y, w.System)
	w.Raw("{")
	w.Pair("label", s.Label)
	w.Pair("xLabel", s.X.Label)
	w.Pair("xUnit", xUnit)
	w.Pair("yLabel", s.Y.Label)
	w.Pair("yUnit", yUnit)
	if len(s.Bands) > 0 {
		w.bands(s.Bands, xScale, yScale)
	}
	w.Key("points")
	w.Raw("[")
	for i, p := range s.Points {
		if i > 0 {
			w.buf = append(w.buf, ',')
		}
		w.buf = append(w.buf, '[')
		w.rounded(xScale(p.X))
		w.buf = append(w.buf, ',')
		w.rounded(yScale(p.Y))
		w.buf = append(w.buf, ']')
	}
	w.Raw("]}")
}

// axisScale puts a whole axis in the one unit that suits its largest value.
func axisScale(k *quantity.Kind, largest float64, system quantity.System) (func(float64) float64, string) {
	unit := quantity.AxisUnit(k, largest, system)
	return quantity.Scale(k, unit), unit
}

// rounded appends a number with as many digits as a chart can show.
func (w *Writer) rounded(v float64) {
	if !quantity.Finite(v) {
		panic("reply: a point of a chart is not a finite number")
	}
	w.buf = strconv.AppendFloat(w.buf, v, 'g', 6, 64)
}

// Faults appends a list of faults.
func (w *Writer) Faults(faults form.Faults) {
	w.Raw("[")
	for _, f := range faults {
		w.Next()
		w.Raw("{")
		w.Pair("field", f.Field)
		w.Pair("label", f.Label)
		if f.Value != "" {
			w.Pair("value", f.Value)
		}
		w.Pair("text", f.Why.In(w.System))
		if f.Missing {
			w.Key("missing")
			w.Raw("true")
		}
		w.Raw("}")
	}
	w.Raw("]")
}

// Findings appends a list of findings.
func (w *Writer) Findings(findings []working.Finding) { w.FindingsOf(findings, nil) }

// FindingsOf is Findings with the station of each, where station is not nil.
func (w *Writer) FindingsOf(findings []working.Finding, station func(i int) string) {
	w.Raw("[")
	for i, f := range findings {
		w.Next()
		w.Raw("{")
		if station != nil {
			w.Pair("station", station(i))
		}
		w.Pair("level", f.Level.String())
		w.Pair("code", f.Code)
		w.Pair("text", f.Text.In(w.System))
		if !f.Do.IsZero() {
			w.Pair("do", f.Do.In(w.System))
		}
		if f.Field != "" {
			w.Pair("field", f.Field)
		}
		if f.Part != "" {
			w.Pair("part", f.Part)
		}
		if !f.Source.IsZero() {
			w.Pair("source", f.Source.String())
		}
		w.Raw("}")
	}
	w.Raw("]")
}

// Steps appends the working: each step with its formula typeset and its
// values put in.
func (w *Writer) Steps(steps []working.Step) {
	w.Raw("[")
	for _, s := range steps {
		w.Next()
		w.Raw("{")
		if s.Part != "" {
			w.Pair("part", s.Part)
		}
		w.Key("result")
		w.stepValue(s.Result)
		if s.Formula != "" {
			w.Pair("formula", s.Formula)
			w.Key("math")
			w.Raw(working.Typeset(s))
		}
		if s.Method != "" {
			w.Pair("method", s.Method)
		}
		w.Key("inputs")
		w.Raw("[")
		for _, in := range s.Inputs {
			w.Next()
			w.stepValue(in)
		}
		w.Raw("]")
		w.Pair("source", s.Source.String())
		if s.Note != "" {
			w.Pair("note", s.Note)
		}
		w.Raw("}")
	}
	w.Raw("]")
}

func (w *Writer) stepValue(v working.Value) {
	if !quantity.Finite(v.Value) {
		panic("reply: " + v.Symbol + " in the working is not a finite number")
	}
	w.Raw("{")
	w.Pair("symbol", v.Symbol)
	w.Key("mark")
	w.Raw(working.TypesetSymbol(v.Symbol))
	w.Pair("what", v.What)
	w.Pair("text", v.String())
	w.Pair("origin", string(v.Origin))
	if !v.Source.IsZero() {
		w.Pair("source", v.Source.String())
	}
	if v.Note != "" {
		w.Pair("note", v.Note)
	}
	w.Raw("}")
}
