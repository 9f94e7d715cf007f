// Package plan links the calculators into one pour: one document, each station
// filled from the others where the user left a field blank, and everything
// that is wrong, missing or worth minding said in one place.
//
// What the plan does not know stays unknown: it says what it still needs, and
// a station with a fault gives no answer at all.
package plan

import (
	"slices"
	"strconv"
	"strings"

	"pourwright/calc/charge"
	"pourwright/calc/cooling"
	"pourwright/calc/core"
	"pourwright/calc/feed"
	"pourwright/calc/filling"
	"pourwright/calc/form"
	"pourwright/calc/gating"
	"pourwright/calc/handling"
	"pourwright/calc/holddown"
	"pourwright/calc/iron"
	"pourwright/calc/ladle"
	"pourwright/calc/ladleheat"
	"pourwright/calc/lifting"
	"pourwright/calc/melting"
	"pourwright/calc/metal"
	"pourwright/calc/mould"
	"pourwright/calc/order"
	"pourwright/calc/pattern"
	"pourwright/calc/pour"
	"pourwright/calc/quantity"
	"pourwright/calc/shop"
	"pourwright/calc/tending"
	"pourwright/calc/weight"
	"pourwright/calc/working"
)

// Format is the version of the document that this release writes. Every
// older one opens for ever.
const Format = 1

// Document is a plan as it is saved. A section is the input of its
// calculator; what is blank there is filled from the other sections.
type Document struct {
	Format quantity.Opt[int] `json:"format" label:"Format" default:"1" min:"1" max:"1" hint:"Set by the page that wrote the file"`
	Title  string            `json:"title" label:"Name of the plan" max:"120" hint:"What is being cast, and for whom"`
	Note   string            `json:"note" label:"Notes" max:"4000" hint:"Anything the crew should know"`

	Metal   metal.Input   `json:"metal" label:"Metal and temperature"`
	Pattern pattern.Input `json:"pattern" label:"Pattern and contraction"`
	Weight  weight.Input  `json:"weight" label:"Weight, risers and metal to melt"`
	Mould   mould.Input   `json:"mould" label:"Mould"`
	Pour    pour.Input    `json:"pour" label:"Gating and pouring time"`
	Ladle   ladle.Input   `json:"ladle" label:"Ladle"`
	Lifting lifting.Input `json:"lifting" label:"Cold lifts"`

	Iron      iron.Input      `json:"iron" label:"Iron by its analysis"`
	Cores     core.Input      `json:"cores" label:"Cores"`
	Feeding   feed.Input      `json:"feeding" label:"Feeding and hot spots"`
	Gating    gating.Input    `json:"gating" label:"Gating laid out"`
	Filling   filling.Input   `json:"filling" label:"The filling, second by second"`
	HoldDown  holddown.Input  `json:"holddown" label:"Holding the cope down"`
	Charge    charge.Input    `json:"charge" label:"Charge"`
	Melting   melting.Input   `json:"melting" label:"Heat, fuel and time to melt"`
	LadleHeat ladleheat.Input `json:"ladleheat" label:"Heat in the ladle"`
	Order     order.Input     `json:"order" label:"Order of pouring"`
	Cooling   cooling.Input   `json:"cooling" label:"Cooling and shakeout"`
	Shop      shop.Input      `json:"shop" label:"How many to pour"`

	Handling handling.Input `json:"handling" label:"Safe handling"`

	Record tending.Record `json:"record" label:"Record of the pour"`
}

// Read reads a document. Its faults are those of reading; everything that
// could be read is in the document all the same.
func Read(data []byte, system quantity.System) (Document, form.Faults) {
	return form.Decode[Document](data, system)
}

// ReadSpread is Read, and also returns the inputs that carry a plus and minus.
func ReadSpread(data []byte, system quantity.System) (Document, []form.Spread, form.Faults) {
	return form.DecodeSpread[Document](data, system)
}

// Work works a plan through. decoded are the faults of Read. It never fails:
// what cannot be answered says why in its station.
func Work(doc Document, decoded form.Faults) *Result {
	return start(doc, decoded, nil, func(string) *working.Paper { return &working.Paper{} }).through()
}

// Answer is Work without the working and the findings, for callers that want
// many plans' answers fast.
func Answer(doc Document, decoded form.Faults) *Result {
	return start(doc, decoded, nil, noPaper).through()
}

// rulingAgain is Answer for the stations that the ruling answers hang on; what
// has not changed since the last time with the same memory is not worked out
// again.
func rulingAgain(doc Document, decoded form.Faults, m memory) *Result {
	r := start(doc, decoded, m, noPaper)
	r.rulingOnly = true
	return r.through()
}

func noPaper(string) *working.Paper { return nil }

// Desk is where one plan after another is worked through. It keeps what every
// station last came to, so that after an edit only what hangs on it is worked
// out and written again. One at a time may use it.
type Desk struct {
	read   form.Memory
	memory memory
}

// Read is Read, of no more than has changed since the last document.
func (d *Desk) Read(data []byte, system quantity.System) (Document, form.Faults) {
	return form.DecodeWith[Document](&d.read, data, system)
}

// Work is Work, with the steps of those stations alone that steps names.
func (d *Desk) Work(doc Document, decoded form.Faults, steps func(station string) bool) *Result {
	return d.start(doc, decoded, steps).through()
}

func (d *Desk) start(doc Document, decoded form.Faults, steps func(station string) bool) *run {
	if d.memory == nil {
		d.memory = memory{}
	}
	return start(doc, decoded, d.memory, func(key string) *working.Paper { return &working.Paper{Brief: !steps(key)} })
}

// Glances returns a way of working plans that differ little from one another
// through, with their findings but without the working and the pictures. A
// station whose input has not changed since the last time is not worked out
// again.
func Glances() func(Document, form.Faults) *Result {
	m := memory{}
	return func(doc Document, decoded form.Faults) *Result {
		return start(clone(doc), decoded, m, func(string) *working.Paper { return &working.Paper{Bare: true} }).through()
	}
}

func start(doc Document, decoded form.Faults, m memory, paper func(key string) *working.Paper) *run {
	r := &run{Result: &Result{Title: doc.Title, doc: doc}, decoded: map[string]form.Faults{}, memory: m, paper: paper}
	for _, f := range decoded {
		r.decoded[f.Section()] = append(r.decoded[f.Section()], f)
	}
	return r
}

// through runs every station and gathers what belongs to none of them.
func (r *run) through() *Result {
	r.work()
	out := r.Result
	for key, faults := range r.decoded {
		if out.Station(key) == nil {
			out.Document = append(out.Document, faults...)
		}
	}
	slices.SortFunc(out.Document, func(a, b form.Fault) int { return strings.Compare(a.Field, b.Field) })
	if f := r.doc.Format; f.Known() && f.V != Format {
		out.Document = append(out.Document, form.Fault{Field: "format", Label: "Format", Value: strconv.Itoa(f.V),
			Why: working.Say("this plan is of format %v and this release reads format %v; open it with a newer release", f.V, Format)})
	}
	return out
}
