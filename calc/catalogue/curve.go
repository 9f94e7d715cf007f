package catalogue

import (
	"encoding/json"
	"fmt"
	"math"
	"slices"
	"strings"

	"pourwright/calc/curve"
	"pourwright/calc/form"
	"pourwright/calc/plan"
	"pourwright/calc/quantity"
	"pourwright/calc/reply"
	"pourwright/calc/working"
)

// CurveRequest asks how one answer of a calculator goes with one of its
// inputs.
type CurveRequest struct {
	// Calculator is a name of the catalogue. For "plan" the paths below begin
	// with the station's key.
	Calculator string `json:"calculator"`
	// Cases are one or two inputs to the calculator; the last is the live one,
	// from which an input and an answer not named are chosen.
	Cases []json.RawMessage `json:"cases"`
	// Base is the input that stretches are laid round, so that they stand still
	// while the live case moves; the live one where it is left out.
	Base json.RawMessage `json:"base"`
	// Vary is the path of the input to move, Answer that of the answer to watch.
	Vary   string `json:"vary"`
	Answer string `json:"answer"`
	// From and To bound the stretch, as texts with a unit; empty for its own.
	From string `json:"from"`
	To   string `json:"to"`
	// Points is how many settings to look at; 80 where it is 0.
	Points int `json:"points"`
	// Rank asks which inputs the answer hangs on.
	Rank bool `json:"rank"`
}

// usual is how many settings are looked at where nobody says.
const usual = 80

// opened is one input to a calculator, ready to be moved and worked out again.
type opened struct {
	slots []form.Slot
	// work works it out as it stands; a fault of reading the named field is left
	// out, for its value has been put in.
	work func(moved string, full bool) worked
}

// worked is what an input came to: one part, or of a plan every station.
type worked []part

type part struct {
	prefix, title string
	out           any // nil where there is no answer
	paper         *working.Paper
	faults        form.Faults
}

// openCalculator is opened for a calculator of its own.
func openCalculator[In, Out any](calc func(In, *working.Paper) (Out, error)) func([]byte, quantity.System) opened {
	return func(data []byte, system quantity.System) opened {
		in, decoded := form.Decode[In](data, system)
		return opened{form.Slots(&in), func(moved string, full bool) worked {
			p := part{paper: paperFor(full), faults: without(decoded, moved)}
			out, err := calc(in, p.paper)
			if err != nil {
				ready, ok := err.(form.Faults)
				if !ok {
					panic(err)
				}
				p.faults = form.Merge(p.faults, ready)
			}
			if len(p.faults) == 0 {
				p.out = out
			}
			return worked{p}
		}}
	}
}

// openPlan is opened for a whole plan.
func openPlan(data []byte, system quantity.System) opened {
	doc, decoded := plan.Read(data, system)
	glance := plan.Glances()
	return opened{form.Slots(&doc), func(moved string, full bool) worked {
		look := glance
		if full {
			look = plan.Work
		}
		r := look(doc, without(decoded, moved))
		var out worked
		for _, s := range r.Stations {
			out = append(out, part{s.Key + ".", s.Title, s.Out, s.Paper, slices.Concat(s.Faults, s.Needs)})
		}
		return out
	}}
}

func paperFor(full bool) *working.Paper {
	if full {
		return &working.Paper{}
	}
	return &working.Paper{Bare: true}
}

func without(faults form.Faults, field string) form.Faults {
	return slices.DeleteFunc(slices.Clone(faults), func(f form.Fault) bool { return f.Field == field })
}

// of is the part that an answer belongs to, and the answer's path in it.
func (w worked) of(answer string) (part, string) {
	for _, p := range w {
		if rest, ok := strings.CutPrefix(answer, p.prefix); ok {
			return p, rest
		}
	}
	return part{}, ""
}

// curves answers a CurveRequest.
func curves(w *reply.Writer, input []byte) {
	var q CurveRequest
	if err := strictly(input, &q); err != nil {
		panic("the question cannot be read: " + err.Error())
	}
	at := slices.IndexFunc(all, func(c Calculator) bool { return c.Name == q.Calculator })
	if at < 0 || all[at].open == nil {
		panic(fmt.Sprintf("there are no curves of %q", q.Calculator))
	}
	if len(q.Cases) == 0 || len(q.Cases) > 2 {
		panic("one or two cases are wanted")
	}
	s := &sheet{q: q, system: w.System, full: w.Working}
	for _, c := range q.Cases {
		s.cases = append(s.cases, all[at].open(c, w.System))
	}
	live := s.cases[len(s.cases)-1]
	s.base = live.slots
	if len(q.Base) > 0 {
		s.base = all[at].open(q.Base, w.System).slots
	}
	if faults := s.choose(live); len(faults) > 0 {
		refuse(w, faults)
		return
	}
	s.write(w)
}

// sheet is one CurveRequest being answered.
type sheet struct {
	q      CurveRequest
	system quantity.System
	full   bool
	cases  []opened
	base   []form.Slot
	now    []worked // what each case came to as it stands
	vary   string
	answer string
	reach  map[string]curve.Reach
}

// choose settles which input moves, and over what stretch, and which answer is
// watched.
func (s *sheet) choose(live opened) form.Faults {
	for _, c := range s.cases {
		s.now = append(s.now, c.work("", s.full))
	}
	last := s.now[len(s.now)-1]
	s.answer = s.q.Answer
	if s.answer == "" {
		for _, p := range last {
			if p.out == nil {
				continue
			}
			for _, leaf := range reply.Leaves(p.out) {
				if leaf.Value != nil && s.answer == "" {
					s.answer = p.prefix + leaf.Path
				}
			}
		}
	}
	s.reach = map[string]curve.Reach{}
	for _, slot := range live.slots {
		s.reach[slot.Field] = s.reachOf(slot)
	}
	s.vary = s.q.Vary
	if s.vary == "" && len(live.slots) > 0 {
		s.vary = live.slots[0].Field
	}
	at := slices.IndexFunc(live.slots, func(slot form.Slot) bool { return slot.Field == s.vary })
	if at < 0 {
		if s.q.Vary == "" {
			return nil // nothing is filled in that could move
		}
		return form.Faults{{Field: "vary", Label: "Input to move", Value: s.vary, Why: working.Say("there is no number of this name to move; fill it in first")}}
	}
	return s.bound(live.slots[at])
}

// reachOf is the stretch of an input: laid round its value in the base, unless
// it has gone outside that.
func (s *sheet) reachOf(slot form.Slot) curve.Reach {
	for _, b := range s.base {
		if b.Field != slot.Field {
			continue
		}
		r := curve.ReachOf(b, s.system)
		if v := quantity.InUnit(slot.Kind, slot.Value, r.Unit); v >= r.Low-r.Step/2 && v <= r.High+r.Step/2 {
			return r
		}
	}
	return curve.ReachOf(slot, s.system)
}

// bound takes the ends of the stretch that the caller named; a value that has
// gone beyond one of them pushes it out.
func (s *sheet) bound(slot form.Slot) form.Faults {
	r := s.reach[slot.Field]
	var faults form.Faults
	for _, end := range []struct {
		label, text string
		to          *float64
	}{{"From", s.q.From, &r.Low}, {"To", s.q.To, &r.High}} {
		if end.text == "" {
			continue
		}
		v, err := quantity.ParseKind(slot.Kind, end.text, s.system, slot.Entry[s.system])
		if err != nil {
			faults = append(faults, form.Fault{Field: strings.ToLower(end.label), Label: end.label, Value: end.text, Why: working.Say("%v", err)})
			continue
		}
		*end.to = quantity.InUnit(slot.Kind, v, r.Unit)
	}
	if len(faults) == 0 && !(r.High > r.Low) {
		faults = form.Faults{{Field: "to", Label: "To", Value: s.q.To, Why: working.Say("it must lie above the beginning of the stretch")}}
	}
	own := curve.ReachOf(slot, s.system)
	if v := quantity.InUnit(slot.Kind, slot.Value, r.Unit); v < r.Low {
		r.Low = quantity.InUnit(slot.Kind, inSI(slot.Kind, own.Low, own.Unit), r.Unit)
	} else if v > r.High {
		r.High = quantity.InUnit(slot.Kind, inSI(slot.Kind, own.High, own.Unit), r.Unit)
	}
	s.reach[slot.Field] = r
	return faults
}

// trace follows the answer of a case over the stretch; there is no curve where
// the case has no such input.
func (s *sheet) trace(c opened) (samples []curve.Sample, slot form.Slot, ok bool) {
	at := slices.IndexFunc(c.slots, func(slot form.Slot) bool { return slot.Field == s.vary })
	if at < 0 || s.answer == "" {
		return nil, form.Slot{}, false
	}
	slot = c.slots[at]
	n := s.q.Points
	if n <= 0 {
		n = usual
	}
	r := s.reach[s.vary]
	samples = curve.Trace(func(x float64) curve.Sample {
		slot.Set(x)
		return s.sample(x, c.work(s.vary, false))
	}, inSI(slot.Kind, r.Low, r.Unit), inSI(slot.Kind, r.High, r.Unit), n, slot.Whole)
	slot.Set(slot.Value)
	return samples, slot, true
}

// sample reads the watched answer out of what a setting came to.
func (s *sheet) sample(x float64, w worked) curve.Sample {
	p, path := w.of(s.answer)
	out := curve.Sample{X: x}
	if p.out == nil {
		out.Refused = refusal(p.faults, s.vary)
		return out
	}
	for _, f := range p.paper.Findings {
		if f.Level > working.Note {
			out.Findings = append(out.Findings, f)
		}
	}
	if v, ok := reply.At(p.out, path); ok {
		if !quantity.Finite(v.SI()) {
			panic("an answer on a curve is not a finite number")
		}
		out.Y, out.Known = v.SI(), true
	}
	return out
}

// refusal is the fault to show of several: that of the input that moves, where
// there is one.
func refusal(faults form.Faults, moved string) working.Text {
	for _, f := range faults {
		if f.Field == moved {
			return f.Why
		}
	}
	if len(faults) > 0 {
		return working.Say("%v: %v", faults[0].Label, faults[0].Why)
	}
	return working.Say("There is no answer here, for another part of the plan has none.")
}

// inSI is the way back from a unit: units are linear, offsets and all.
func inSI(k *quantity.Kind, v float64, unit string) float64 {
	zero, one := quantity.InUnit(k, 0, unit), quantity.InUnit(k, 1, unit)
	return (v - zero) / (one - zero)
}

// effects is how far the watched answer goes, as a share of its size, when
// each input alone is moved a tenth of its stretch either way; -1 where the
// answer comes or goes.
func (s *sheet) effects(c opened) []float64 {
	out := make([]float64, len(c.slots))
	for i, slot := range c.slots {
		r := s.reach[slot.Field]
		low, high := inSI(slot.Kind, r.Low, r.Unit), inSI(slot.Kind, r.High, r.Unit)
		by := (high - low) / 10
		if slot.Whole {
			by = 1
		}
		var y [2]float64
		known := 0
		for j, x := range []float64{math.Max(slot.Value-by, low), math.Min(slot.Value+by, high)} {
			slot.Set(x)
			if a := s.sample(x, c.work(slot.Field, false)); a.Known {
				y[j] = a.Y
				known++
			}
		}
		slot.Set(slot.Value)
		if size := math.Max(math.Abs(y[0]), math.Abs(y[1])); known == 2 && size > 0 {
			out[i] = math.Abs(y[1]-y[0]) / size
		} else if known == 1 {
			out[i] = 1
		}
	}
	return out
}
