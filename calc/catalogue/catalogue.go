// Package catalogue is the one list of calculators: name, title, typed input,
// typed output, function. The WASM door, the shell's eval, the site's forms
// and the docs all read it. Adding a calculator is one package and one line
// here.
package catalogue

import (
	"bytes"
	"encoding/json"
	"fmt"
	"reflect"

	"pourwright/calc/form"
	"pourwright/calc/plan"
	"pourwright/calc/quantity"
	"pourwright/calc/reply"
	"pourwright/calc/working"
)

// Calculator is one entry.
type Calculator struct {
	// Name is what the doors call it by.
	Name string
	// Title is its name on screen.
	Title string
	// About says in a sentence what it answers.
	About string

	input reflect.Type
	// run writes the reply and returns the papers that were worked on, for the
	// step check of the tests.
	run func(d *Desk, w *reply.Writer, input []byte) []*working.Paper
	// open readies an input to be moved and worked out again and again; nil
	// where there is no single answer to follow.
	open func(input []byte, system quantity.System) opened
}

// entry makes a Calculator of a typed function.
func entry[In, Out any](name, title, about string, calc func(In, *working.Paper) (Out, error)) Calculator {
	return Calculator{
		Name: name, Title: title, About: about,
		input: reflect.TypeFor[In](),
		open:  openCalculator(calc),
		run: func(_ *Desk, w *reply.Writer, input []byte) []*working.Paper {
			in, decoded := form.Decode[In](input, w.System)
			paper := &working.Paper{Brief: !w.Working}
			out, err := calc(in, paper)
			faults := decoded
			if err != nil {
				ready, ok := err.(form.Faults)
				if !ok {
					panic(err)
				}
				faults = form.Merge(decoded, ready)
			}
			if len(faults) > 0 {
				refuse(w, faults)
				return []*working.Paper{paper}
			}
			w.Raw(`{"ok":true,"answers":`)
			w.Answers(out, paper)
			w.Key("findings")
			w.Findings(paper.Findings)
			if w.Working {
				w.Key("steps")
				w.Steps(paper.Steps)
			}
			w.Raw("}")
			return []*working.Paper{paper}
		},
	}
}

// refuse writes the second reply.
func refuse(w *reply.Writer, faults form.Faults) {
	w.Raw(`{"ok":false,"faults":`)
	w.Faults(faults)
	w.Raw("}")
}

// Options are what a caller may ask of any call.
type Options struct {
	// Units is "metric" (the default) or "us".
	Units string `json:"units"`
	// Working asks for the steps.
	Working bool `json:"working"`
	// Station, of a plan, asks for the steps of that station alone.
	Station string `json:"station"`
	// Full, of a plan, are the stations to tell in full; of the others come the
	// state, the faults and what is wanted alone, without the answers, the findings
	// and where values came from. Where it is nil, all come in full.
	Full []string `json:"full"`
	// Currency is the sign or code to show amounts of money with, such as € or
	// SEK; none where it is empty.
	Currency string `json:"currency"`
}

// Desk answers the calls of one caller after another. It remembers the last
// plan it worked on, so that an edit is answered sooner; what it answers does
// not depend on that. The zero Desk is ready.
type Desk struct {
	plans plan.Desk
	room  []byte // of the last answer
}

// Call is Desk.Call at a desk of its own.
func Call(name string, options, input []byte) []byte { return new(Desk).Call(name, options, input) }

// Call answers one call of a door: the name of a calculator, the options and
// the input as JSON, out comes JSON in one of three shapes:
//
//	{"ok":true, …}                  the answers
//	{"ok":false,"faults":[…]}       what is wrong with the input, all of it
//	{"ok":false,"broken":"…"}       our own bug; nothing of the caller's is lost
//
// The names are those of the calculators and of asides. The answer is good until
// the next call at the same desk, which is written in its place.
func (d *Desk) Call(name string, options, input []byte) []byte {
	return guarded(func() []byte {
		var o Options
		if len(options) > 0 {
			if err := strictly(options, &o); err != nil {
				return broken("the options cannot be read: " + err.Error())
			}
		}
		return inCurrency(d.call(name, o, input), o.Currency)
	})
}

// guarded turns a panic into the third reply.
func guarded(answer func() []byte) (out []byte) {
	defer func() {
		if r := recover(); r != nil {
			out = broken(fmt.Sprint(r))
		}
	}()
	return answer()
}

func (d *Desk) call(name string, o Options, input []byte) []byte {
	system, ok := quantity.ParseSystem(o.Units)
	if !ok {
		return broken(fmt.Sprintf("units %q are neither metric nor us", o.Units))
	}
	w := &reply.Writer{System: system, Working: o.Working, Station: o.Station, Full: o.Full}
	w.Reuse(d.room)
	defer func() { d.room = w.Bytes() }()
	if answer, ok := asides[name]; ok {
		answer(w, input)
		return w.Bytes()
	}
	for _, c := range all {
		if c.Name == name {
			c.run(d, w, input)
			return w.Bytes()
		}
	}
	return broken(fmt.Sprintf("there is no calculator %q", name))
}

// asides are what the door answers besides the calculators, by name.
var asides = map[string]func(w *reply.Writer, input []byte){
	"list":      list,      // all calculators with their fields
	"read":      read,      // one typed text, see ReadRequest
	"compare":   compare,   // how two plans differ, see CompareRequest
	"curve":     curves,    // how an answer goes with an input, see CurveRequest
	"station":   station,   // one station of a plan as its calculator's input, see StationRequest
	"brief":     brief,     // plans in a line each, see BriefRequest
	"ownfields": ownFields, // the fields of a shop's own figures
	"own":       own,       // those figures beside a plan, see OwnRequest
	"qr":        scanCode,  // a text as a QR code, see CodeRequest
}

// All lists the calculators in the order of the work.
func All() []Calculator { return append([]Calculator(nil), all...) }

// Fields describes the calculator's input.
func (c Calculator) Fields(system quantity.System) []form.Field {
	return form.Describe(c.input, system)
}

// strictly reads JSON and refuses names that it does not know.
func strictly(text []byte, to any) error {
	d := json.NewDecoder(bytes.NewReader(text))
	d.DisallowUnknownFields()
	return d.Decode(to)
}

func broken(why string) []byte {
	b, err := json.Marshal(map[string]any{"ok": false, "broken": why})
	if err != nil {
		panic(err) // a string always marshals
	}
	return b
}

func list(w *reply.Writer, _ []byte) {
	type item struct {
		Name   string       `json:"name"`
		Title  string       `json:"title"`
		About  string       `json:"about"`
		Fields []form.Field `json:"fields"`
	}
	var items []item
	for _, c := range all {
		items = append(items, item{c.Name, c.Title, c.About, c.Fields(w.System)})
	}
	b, err := json.Marshal(map[string]any{"ok": true, "calculators": items})
	if err != nil {
		panic(err)
	}
	w.Raw(string(b))
}

// ReadRequest asks how a typed text is understood: the kind of quantity by its
// name, and the unit that a bare number is taken in.
type ReadRequest struct {
	Kind string `json:"kind"`
	Unit string `json:"unit"`
	Text string `json:"text"`
}

// read answers with the text to keep (with its unit) and the value as shown.
func read(w *reply.Writer, input []byte) {
	var q ReadRequest
	if err := strictly(input, &q); err != nil {
		panic("the question cannot be read: " + err.Error())
	}
	kept, shown, err := quantity.Read(q.Kind, q.Text, q.Unit, w.System)
	if err != nil {
		w.Raw(`{"ok":false,"faults":[{"field":"","label":"","text":`)
		w.Text(err.Error())
		w.Raw("}]}")
		return
	}
	w.Raw(`{"ok":true,"keep":`)
	w.Text(kept)
	w.Pair("shown", shown)
	w.Raw("}")
}
