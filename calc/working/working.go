// Package working holds what a calculator shows of its sums: every step with
// its formula, the values put in, where each came from, and the source; and
// the findings, plain sentences that say what is wrong and what to change.
//
// A calculator fills a Paper while it computes. The formula stands once,
// beside the Go expression that ran, as a Go expression in the trade's own
// symbols; package stepcheck proves in the tests that the two agree in value
// and dimension.
package working

import (
	"fmt"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
)

// Origin says where a value put into a step came from.
type Origin string

// The origins of a value.
const (
	Given    Origin = "given"   // typed by the user, or handed in
	Default  Origin = "default" // a printed default that nobody changed
	Constant Origin = "constant"
	Table    Origin = "table"  // looked up
	Result   Origin = "result" // the result of an earlier step
)

// Value is a number with its symbol and unit, as a step shows it.
type Value struct {
	// Symbol in the formula: a Go identifier such as rho_m.
	Symbol string
	// What it is, in words.
	What string
	// Value in Unit.
	Value float64
	// Unit in ASCII: "kg/m^3", "s/kg^0.5"; "" or "1" for none.
	Unit string
	// Origin tells where it came from.
	Origin Origin
	// Source of a constant or a table value.
	Source source.Ref
	// Note says more: the rows a table value lies between, the branch taken.
	Note string
}

// Step is one line of the working.
type Step struct {
	// Part is the JSON path of the list item that the step belongs to, such as
	// "dimensions[2]"; empty for the calculator's own steps.
	Part string
	// Result of the line.
	Result Value
	// Formula is a Go expression over the symbols of Inputs; empty where the
	// answer comes by Method.
	Formula string
	// Method says how an answer that no single expression gives was found:
	// the equation, the way of solving it, the error bound.
	Method string
	// Inputs are the values the formula was evaluated with.
	Inputs []Value
	// Source of the formula.
	Source source.Ref
	// Note records a branch taken and why.
	Note string
}

// Place is what a step is found by: the list item it belongs to, as in Step,
// and the symbol of its result.
type Place struct{ Part, Symbol string }

// Paper is the sheet that a calculator works on: its steps in order and its
// findings. A nil Paper works too and records nothing, for runs that only want
// the answer.
type Paper struct {
	// Brief keeps of every step only its place, for replies that leave the
	// working out.
	Brief bool
	// Bare keeps the findings alone, for runs that want many answers with what is
	// to be minded in each, and no pictures.
	Bare     bool
	Places   []Place
	Steps    []Step
	Findings []Finding

	known []Value
	part  string
	root  *Paper
	// Faults lists formulas that use a symbol nobody has given: our own
	// mistakes, which the tests refuse.
	Faults []string
}

// Within reports whether the other paper of the same sums holds all that p
// would.
func (p *Paper) Within(other *Paper) bool {
	switch {
	case p == nil || other == nil:
		return p == nil
	case p.Bare:
		return true
	case p.Brief:
		return !other.Bare
	}
	return !other.Brief && !other.Bare
}

// Draws reports whether somebody will look at pictures of the answers.
func (p *Paper) Draws() bool { return p != nil && !p.Bare }

// Sub returns a paper for one item of a list, whose symbols do not disturb
// those of its neighbours. It knows what p knows; its steps and findings are
// kept by p, under the item's JSON path ("dimensions[2]").
func (p *Paper) Sub(part string) *Paper {
	if p == nil {
		return nil
	}
	return &Paper{Brief: p.Brief, Bare: p.Bare, part: part, root: p.home(), known: append([]Value(nil), p.known...)}
}

// blank reports a paper on which no values are kept.
func (p *Paper) blank() bool { return p == nil || p.Brief || p.Bare }

func (p *Paper) home() *Paper {
	if p.root != nil {
		return p.root
	}
	return p
}

func (p *Paper) set(v Value) float64 {
	if p.blank() {
		return v.Value
	}
	for i := range p.known {
		if p.known[i].Symbol == v.Symbol {
			p.known[i] = v
			return v.Value
		}
	}
	p.known = append(p.known, v)
	return v.Value
}

// Give puts a quantity on the paper under a symbol and returns its number in
// the unit (an ASCII unit name of its kind).
func (p *Paper) Give(symbol, what string, q quantity.Any, unit string) float64 {
	return p.set(Value{Symbol: symbol, What: what, Value: quantity.In(q, unit), Unit: unit, Origin: Given})
}

// GiveOpt is Give for a value that may be a default, and then says so.
func GiveOpt[T quantity.Of](p *Paper, symbol, what string, o quantity.Opt[T], unit string) float64 {
	origin := Given
	if o.State == quantity.Defaulted {
		origin = Default
	}
	return p.set(Value{Symbol: symbol, What: what, Value: quantity.In(o.V, unit), Unit: unit, Origin: origin})
}

// Number puts a bare number (a count, a share) on the paper.
func (p *Paper) Number(symbol, what string, v float64, unit string) float64 {
	return p.set(Value{Symbol: symbol, What: what, Value: v, Unit: unit, Origin: Given})
}

// Const puts a constant with its source on the paper.
func (p *Paper) Const(symbol, what string, v float64, unit string, from source.Ref) float64 {
	return p.set(Value{Symbol: symbol, What: what, Value: v, Unit: unit, Origin: Constant, Source: from})
}

// Lookup puts a table value on the paper with its source and the place in the
// table it was read at.
func (p *Paper) Lookup(symbol, what string, v float64, unit string, from source.Ref, note string) float64 {
	return p.set(Value{Symbol: symbol, What: what, Value: v, Unit: unit, Origin: Table, Source: from, Note: note})
}

// Carry puts the result of a list item's own paper on p, under a symbol of p's
// own, so that a total over the items can be a formula.
func (p *Paper) Carry(symbol, what string, v float64, unit string) float64 {
	return p.set(Value{Symbol: symbol, What: what, Value: v, Unit: unit, Origin: Result})
}

// Step records that value, in unit, came of formula over the symbols already
// on the paper, and puts the result there under its own symbol. It returns
// value, so that the Go expression stands in the call.
func (p *Paper) Step(symbol, what string, value float64, unit, formula string, from source.Ref) float64 {
	return p.StepNote(symbol, what, value, unit, formula, from, "")
}

// StepNote is Step with a note: the branch taken and why.
func (p *Paper) StepNote(symbol, what string, value float64, unit, formula string, from source.Ref, note string) float64 {
	if p.blank() {
		return p.place(symbol, value)
	}
	s := Step{Formula: formula, Source: from, Note: note}
	for _, name := range symbolsOf(formula) {
		s.Inputs = append(s.Inputs, p.find(name, formula))
	}
	return p.record(s, symbol, what, value, unit)
}

// Solve records an answer found by a method rather than by one expression:
// an integral, a root, a sum over parts. The symbols it used are named.
func (p *Paper) Solve(symbol, what string, value float64, unit, method string, used []string, from source.Ref) float64 {
	if p.blank() {
		return p.place(symbol, value)
	}
	s := Step{Method: method, Source: from}
	for _, name := range used {
		s.Inputs = append(s.Inputs, p.find(name, method))
	}
	return p.record(s, symbol, what, value, unit)
}

// Word writes out the method of an answer, on a paper that keeps it.
func (p *Paper) Word(format string, args ...any) string {
	if p.blank() {
		return ""
	}
	return fmt.Sprintf(format, args...)
}

func (p *Paper) record(s Step, symbol, what string, value float64, unit string) float64 {
	s.Result = Value{Symbol: symbol, What: what, Value: value, Unit: unit, Origin: Result}
	s.Part = p.part
	home := p.home()
	home.Steps = append(home.Steps, s)
	p.place(symbol, value)
	return p.set(s.Result)
}

// place notes where the next step stands.
func (p *Paper) place(symbol string, value float64) float64 {
	if p.Draws() {
		home := p.home()
		if home.Places == nil {
			home.Places = make([]Place, 0, 48) // as many as most need
		}
		home.Places = append(home.Places, Place{p.part, symbol})
	}
	return value
}

func (p *Paper) find(name, where string) Value {
	for _, v := range p.known {
		if v.Symbol == name {
			return v
		}
	}
	home := p.home()
	home.Faults = append(home.Faults, name+" in "+where)
	return Value{Symbol: name}
}

// symbolsOf lists the identifiers of a formula that are not function names, in
// order of first use.
func symbolsOf(formula string) []string {
	var names []string
	for i := 0; i < len(formula); {
		c := formula[i]
		if !letter(c) {
			i++
			continue
		}
		if i > 0 && (digit(formula[i-1]) || formula[i-1] == '.') {
			i++ // the exponent of a number such as 1e3
			continue
		}
		j := i
		for j < len(formula) && (letter(formula[j]) || digit(formula[j])) {
			j++
		}
		name := formula[i:j]
		if (j == len(formula) || formula[j] != '(') && name != "pi" && !contains(names, name) {
			names = append(names, name)
		}
		i = j
	}
	return names
}

func letter(c byte) bool { return c == '_' || c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' }
func digit(c byte) bool  { return c >= '0' && c <= '9' }

func contains(names []string, name string) bool {
	for _, n := range names {
		if n == name {
			return true
		}
	}
	return false
}
