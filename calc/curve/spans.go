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
	first := -1
	for i := 0; i <= len(samples); i++ {
		holds := false
		if i < len(samples) {
			_, holds = is(samples[i])
		}
		switch {
		case holds && first < 0:
			first = i
		case !holds && first >= 0:
			out = append(out, stretch(samples, first, i, near, is))
			first = -1
		}
	}
	if len(out) == 1 && out[0].From == samples[0].X && out[0].To == samples[len(samples)-1].X {
		out[0].Throughout = true
	}
	return out
}

// stretch is the one of the samples from first to before end. Its sentence is
// that of the setting nearest to near that lies a little inside: at the very
// edge what is too much and what is allowed read the same.
func stretch(samples []Sample, first, end int, near float64, is func(Sample) (Span, bool)) Span {
	from, to := samples[first].X, samples[end-1].X
	if first > 0 {
		from = (samples[first-1].X + from) / 2
	}
	if end < len(samples) {
		to = (to + samples[end].X) / 2
	}
	inside := math.Min((to-from)/4, (samples[len(samples)-1].X-samples[0].X)/50)
	best, least := samples[first], math.Inf(1)
	for _, s := range samples[first:end] {
		away := math.Abs(s.X - near)
		if first > 0 && s.X-from < inside || end < len(samples) && to-s.X < inside {
			away += 1e6 * (to - from) // only where there is no other
		}
		if away < least {
			best, least = s, away
		}
	}
	span, _ := is(best)
	span.From, span.To = from, to
	return span
}
