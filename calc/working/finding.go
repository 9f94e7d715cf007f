package working

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
)

// Level is how much a finding matters.
type Level int

const (
	// Note: worth knowing.
	Note Level = iota
	// Mind: go on only with open eyes.
	Mind
	// Stop: do not pour like this.
	Stop
)

// String is the level as a word: "note", "mind" or "stop".
func (l Level) String() string { return [...]string{"note", "mind", "stop"}[l] }

// Text is a sentence with quantities in it, kept apart so that each reader
// sees them in his own units. Build one with Say.
type Text struct {
	format string
	args   []any
}

// Say makes a Text; %v stands for each argument: a quantity or plain words.
func Say(format string, args ...any) Text { return Text{format, args} }

// In writes the sentence out in a unit system. It panics where a quantity in it
// is not a finite number, which is our bug.
func (t Text) In(system quantity.System) string {
	if !strings.Contains(t.format, "%") {
		return t.format
	}
	shown := make([]any, len(t.args))
	for i, a := range t.args {
		switch a := a.(type) {
		case quantity.Any:
			if !quantity.Finite(a.SI()) {
				panic("working: a quantity in “" + t.format + "” is not a finite number")
			}
			shown[i] = quantity.Format(a, system)
		case Text:
			shown[i] = a.In(system)
		default:
			shown[i] = a
		}
	}
	return fmt.Sprintf(t.format, shown...)
}

// String writes the sentence out in metric units.
func (t Text) String() string { return t.In(quantity.Metric) }

// IsZero reports an empty text.
func (t Text) IsZero() bool { return t.format == "" }

// Capital writes a name at the start of a sentence.
func Capital(name string) string {
	first, size := utf8.DecodeRuneInString(name)
	return string(unicode.ToUpper(first)) + name[size:]
}

// Finding is one plain sentence about the plan.
type Finding struct {
	// Level is note, mind or stop.
	Level Level
	// Code names the rule for tests and links, such as "wall-freezes-first".
	Code string
	// Text says what is wrong and by how much.
	Text Text
	// Do says what to change first, and to what; may be empty for a note.
	Do Text
	// Field is the JSON name of the input to change first, within the
	// calculator's own input ("gates.area"); may be empty.
	Field string
	// Source of the rule.
	Source source.Ref
	// Part is the JSON path of the list item it belongs to; set by Find.
	Part string
}

// Find adds a finding to the paper.
func (p *Paper) Find(f Finding) {
	if p == nil {
		return
	}
	f.Part = p.part
	home := p.home()
	home.Findings = append(home.Findings, f)
}

// Worst is the highest level among the findings, and whether there are any.
func Worst(findings []Finding) (Level, bool) {
	worst := Note
	for _, f := range findings {
		worst = max(worst, f.Level)
	}
	return worst, len(findings) > 0
}
