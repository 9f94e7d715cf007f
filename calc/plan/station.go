package plan

import (
	"reflect"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// State is how a station stands.
type State string

// The states of a station, from nothing there to nothing wrong.
const (
	Blank State = "blank" // nothing of its own filled in, and not enough from elsewhere
	Needs State = "needs" // begun; more is wanted
	Fault State = "fault" // a value is not understood or out of range
	Stops State = "stop"  // do not pour like this
	Minds State = "mind"  // answered, with something to mind
	Fine  State = "fine"  // answered, nothing to mind
)

// Linked is a field that another station filled.
type Linked struct {
	// Field is the JSON path in the plan: "ladle.metal".
	Field string
	// From is the station that gave the value, Label what it is called there.
	From, Label string
	// Value as it was put in: a quantity.Any or plain words.
	Value any
}

// text is the value, for reading.
func (l Linked) text(system quantity.System) string {
	q, ok := l.Value.(quantity.Any)
	if !ok {
		return l.Value.(string)
	}
	if !quantity.Finite(q.SI()) {
		panic("plan: what goes into " + l.Field + " is not a finite number")
	}
	return quantity.Format(q, system)
}

// Station is one part of the plan with what it answers.
type Station struct {
	// Key and Title name it.
	Key, Title string
	State      State
	// In is the calculator's input struct, with what other stations filled.
	In any
	// Out is the calculator's output struct; nil while there is no answer.
	Out any
	// Paper holds the working and the findings.
	Paper *working.Paper
	// Faults are values that cannot be used; Needs, what is not filled in yet.
	Faults, Needs form.Faults
	// Linked are the fields filled from elsewhere.
	Linked []Linked

	memory memory
	shown  *shown
	// linked says that somebody asks where a value came from.
	linked bool
}

// memory keeps what each station last made of its input, so that a plan that
// is worked through many times with little changed works out only what hangs
// on the change.
type memory map[string]recalled

type recalled struct {
	in, out any
	err     error
	paper   *working.Paper
	shown   *shown
}

// shown is a station's answers and findings as they were last written.
type shown struct {
	system            quantity.System
	answers, findings string
}

// Result is a plan worked through.
type Result struct {
	Stations []*Station
	// Title is the plan's own title.
	Title string
	// Document are faults of the document that belong to no station.
	Document form.Faults

	doc Document
	got answers
}

// Station finds a station by its key; nil where there is none.
func (r *Result) Station(key string) *Station {
	for _, s := range r.Stations {
		if s.Key == key {
			return s
		}
	}
	return nil
}

// run is a plan being worked through, into its result.
type run struct {
	*Result
	// decoded are the faults of reading the document, by station.
	decoded map[string]form.Faults
	// paper gives each station what it works on.
	paper  func(key string) *working.Paper
	memory memory
	// rulingOnly leaves out the stations that no ruling answer hangs on, and
	// where values came from.
	rulingOnly bool
}

// begin opens a station.
func (r *run) begin(key, title string) *Station {
	s := &Station{Key: key, Title: title, Faults: r.decoded[key], Paper: r.paper(key), memory: r.memory, linked: !r.rulingOnly}
	r.Stations = append(r.Stations, s)
	return s
}

// fill puts a value from another station into a field that was left blank, and
// remembers where it came from. A field that could not be read is not filled:
// its owner meant to say something.
func fill[T comparable](s *Station, field *T, name string, value T, known bool, from, label string) {
	var zero T
	if !known || *field != zero || s.unread(name) {
		return
	}
	*field = value
	link(s, name, value, from, label)
}

// fillOpt is fill for a field that may be left out.
func fillOpt[T comparable](s *Station, field *quantity.Opt[T], name string, value T, known bool, from, label string) {
	if !known || field.Known() || s.unread(name) {
		return
	}
	*field = quantity.Some(value)
	link(s, name, value, from, label)
}

// link remembers where a value came from.
func link[T any](s *Station, name string, value T, from, label string) {
	if s.linked {
		s.Linked = append(s.Linked, Linked{s.Key + "." + name, from, label, valueOf(value)})
	}
}

func valueOf(v any) any {
	if q, ok := v.(quantity.Any); ok {
		return q
	}
	if b, ok := v.(bool); ok {
		return map[bool]string{true: "yes", false: "no"}[b]
	}
	return reflect.ValueOf(v).String()
}

func (s *Station) unread(name string) bool {
	for _, f := range s.Faults {
		if f.Field == s.Key+"."+name {
			return true
		}
	}
	return false
}

// calculate runs a station's calculator on its filled input and settles its
// state. begun says whether the user has put anything into the station.
func calculate[In, Out any](s *Station, begun bool, in In, calc func(In, *working.Paper) (Out, error)) (out Out, ok bool) {
	s.In = in
	answer, err := remembered(s, in, calc)
	if err != nil {
		faults, isFaults := err.(form.Faults)
		if !isFaults {
			panic(err) // a calculator returns faults or nothing
		}
		for _, f := range faults {
			f.Field = s.Key + "." + f.Field
			switch {
			case s.unread(f.Field[len(s.Key)+1:]):
			case f.Missing:
				s.Needs = append(s.Needs, f)
			default:
				s.Faults = append(s.Faults, f)
			}
		}
	}
	switch {
	case len(s.Faults) > 0:
		s.State = Fault
	case len(s.Needs) > 0 && !begun:
		s.State = Blank
	case len(s.Needs) > 0:
		s.State = Needs
	default:
		ok = true
	}
	if !ok {
		// Half an answer would be taken for a whole one.
		s.shown = nil
		if s.Paper != nil {
			s.Paper = &working.Paper{}
		}
		var none Out
		return none, false
	}
	s.Out = answer
	s.settle()
	return answer.(Out), true
}

// remembered is calc, or what it came to last time on the same input; an Out.
func remembered[In, Out any](s *Station, in In, calc func(In, *working.Paper) (Out, error)) (any, error) {
	if last, ok := s.memory[s.Key]; ok && s.Paper.Within(last.paper) && reflect.DeepEqual(last.in, s.In) {
		s.Paper, s.shown = last.paper, last.shown
		return last.out, last.err
	}
	out, err := calc(in, s.Paper)
	answer := any(out)
	if s.memory != nil {
		s.shown = &shown{}
		s.memory[s.Key] = recalled{s.In, answer, err, s.Paper, s.shown}
	}
	return answer, err
}

// clone copies a document as deep as its lists go, for one whose list items are
// changed in place: what is remembered of a station must not change with them.
func clone[T any](in T) T {
	v := reflect.ValueOf(&in).Elem()
	cloneLists(v)
	return in
}

func cloneLists(v reflect.Value) {
	switch v.Kind() {
	case reflect.Struct:
		for i := range v.NumField() {
			if v.Field(i).CanSet() {
				cloneLists(v.Field(i))
			}
		}
	case reflect.Slice:
		if v.Len() == 0 {
			return
		}
		own := reflect.MakeSlice(v.Type(), v.Len(), v.Len())
		reflect.Copy(own, v)
		v.Set(own)
		for i := range v.Len() {
			cloneLists(v.Index(i))
		}
	}
}

// settle takes the state from the worst finding.
func (s *Station) settle() {
	s.State = Fine
	if s.Paper == nil {
		return
	}
	switch worst, _ := working.Worst(s.Paper.Findings); worst {
	case working.Stop:
		s.State = Stops
	case working.Mind:
		s.State = Minds
	}
}

// filled reports whether a section has anything in it.
func filled(section any) bool { return !reflect.ValueOf(section).IsZero() }
