package curve

import (
	"math"

	"pourwright/calc/working"
)

// Span is a stretch of the input over which the calculator refuses, or finds
// something to mind.
type Span struct {
	// From and To in SI.
	From, To float64
	// Refused says that there is no answer; else Level is how much it matters.
	Refused bool
	Level   working.Level
	// Code of the finding.
	Code string
	// Text says what is wrong, and Do what to change, at the setting of the span
	// that is nearest to the one asked about.
	Text, Do working.Text
	// Throughout says that it holds at every setting that was looked at, and so
	// is no edge of a window.
	Throughout bool
}

// Spans lists the stretches of a curve, refusals first, then stops, then what
// is to be minded; notes are left out. near is the setting whose sentence is
// wanted.
func Spans(samples []Sample, near float64) []Span {
	spans := stretches(samples, near, func(s Sample) (Span, bool) {
		return Span{Refused: true, Text: s.Refused}, !s.Refused.IsZero()
	})
	for _, level := range []working.Level{working.Stop, working.Mind} {
		var seen []working.Finding
		for _, s := range samples {
			for _, f := range s.Findings {
				if f.Level != level || known(seen, f) {
					continue
				}
				seen = append(seen, f)
				spans = append(spans, stretches(samples, near, func(s Sample) (Span, bool) {
					for _, g := range s.Findings {
						if same(f, g) {
							return Span{Level: level, Code: f.Code, Text: g.Text, Do: g.Do}, true
						}
					}
					return Span{}, false
				})...)
			}
		}
	}
	return spans
}

func known(seen []working.Finding, f working.Finding) bool {
	for _, s := range seen {
		if same(s, f) {
			return true
		}
	}
	return false
}

// stretches finds the unbroken stretches where is holds; an end lies half way
// between the last setting inside and the first outside.
func stretches(samples []Sample, near float64, is func(Sample) (Span, bool)) []Span {
	var out []Span
	var nearest float64
	open := false
	for i, s := range samples {
		span, holds := is(s)
		if !holds {
			open = false
			continue
		}
		from, to := s.X, s.X
		if i > 0 {
			from = (samples[i-1].X + s.X) / 2
		}
		if i < len(samples)-1 {
			to = (s.X + samples[i+1].X) / 2
		}
		away := math.Abs(s.X - near)
		switch {
		case !open:
			span.From, span.To = from, to
			out, nearest, open = append(out, span), away, true
		case away < nearest:
			span.From, span.To = out[len(out)-1].From, to
			out[len(out)-1], nearest = span, away
		default:
			out[len(out)-1].To = to
		}
	}
	if len(out) == 1 && out[0].From == samples[0].X && out[0].To == samples[len(samples)-1].X {
		out[0].Throughout = true
	}
	return out
}
