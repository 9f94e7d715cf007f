package catalogue

import (
	"encoding/json"
	"math"
	"slices"
	"strconv"

	"pourwright/calc/curve"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/reply"
)

// The parts of a CurveRequest's reply. Numbers are in the unit beside them.
type (
	// slider is an input that can be moved.
	slider struct {
		Field   string  `json:"field"`
		Label   string  `json:"label"`
		Unit    string  `json:"unit"`
		Low     float64 `json:"low"`
		High    float64 `json:"high"`
		Step    float64 `json:"step"`
		Value   float64 `json:"value"`
		Text    string  `json:"text"`
		Default bool    `json:"default,omitempty"`
		Whole   bool    `json:"whole,omitempty"`
		// Effect is how far the answer goes with it, as a share of its size.
		Effect *float64 `json:"effect,omitempty"`
	}
	axis struct {
		Label string `json:"label"`
		Unit  string `json:"unit"`
	}
	bounded struct {
		axis
		Low  float64 `json:"low"`
		High float64 `json:"high"`
	}
	spanned struct {
		From       float64 `json:"from"`
		To         float64 `json:"to"`
		Text       string  `json:"text"`
		State      string  `json:"state"` // refused, stop, mind
		Do         string  `json:"do,omitempty"`
		Ends       string  `json:"ends"` // in words
		Throughout bool    `json:"throughout,omitempty"`
	}
	drawn struct {
		// Runs are the unbroken pieces of the curve.
		Runs [][][2]float64 `json:"runs"`
		// Now is the case as it stands; nil where it has no answer.
		Now   *[2]float64 `json:"now"`
		Spans []spanned   `json:"spans"`
	}
	// figured is an answer of every case, and how the last differs from the
	// first.
	figured struct {
		Path       string   `json:"path"`
		Label      string   `json:"label"`
		Part       string   `json:"part,omitempty"`
		Texts      []string `json:"texts"`
		Difference string   `json:"difference,omitempty"`
		Times      string   `json:"times,omitempty"`
		Step       *int     `json:"step,omitempty"`
	}
)

// write answers: the sliders, the axes, the curve of each case, the figures;
// faults, findings and, where they are wanted, the steps of the live case.
func (s *sheet) write(w *reply.Writer) {
	live := len(s.cases) - 1
	w.Raw(`{"ok":true,"answered":`)
	p, _ := s.now[live].of(s.answer)
	w.Raw(strconv.FormatBool(p.out != nil))
	marshal(w, "sliders", s.sliders(s.cases[live]))
	w.Pair("vary", s.vary)
	w.Pair("answer", s.answer)
	s.writeCurves(w)
	figures := s.figures()
	marshal(w, "figures", figures)
	var faults form.Faults
	for _, p := range s.now[live] {
		for _, f := range p.faults {
			if p.prefix == "" || !f.Missing {
				faults = append(faults, f)
			}
		}
	}
	w.Key("faults")
	w.Faults(faults)
	w.Key("findings")
	if p.paper == nil {
		w.Raw("[]")
	} else {
		w.Findings(p.paper.Findings)
	}
	if s.full && p.paper != nil {
		w.Key("steps")
		w.Steps(p.paper.Steps)
	}
	w.Raw("}")
}

func marshal(w *reply.Writer, key string, v any) {
	b, err := json.Marshal(v)
	if err != nil {
		panic(err) // a number that is not finite, which is our bug
	}
	w.Key(key)
	w.Raw(string(b))
}

func (s *sheet) sliders(c opened) []slider {
	var effects []float64
	if s.q.Rank && s.answer != "" {
		effects = s.effects(c)
	}
	out := []slider{}
	for i, slot := range c.slots {
		r := s.reach[slot.Field]
		v := slider{Field: slot.Field, Label: slot.Label, Unit: r.Unit, Low: tidy(r.Low), High: tidy(r.High), Step: tidy(r.Step),
			Value: tidy(quantity.InUnit(slot.Kind, slot.Value, r.Unit)), Text: quantity.Format(quantity.Value(slot.Kind, slot.Value), s.system),
			Default: slot.Default, Whole: slot.Whole}
		if effects != nil {
			v.Effect = &effects[i]
		}
		out = append(out, v)
	}
	return out
}

// writeCurves draws every case over the same stretch and in the same units.
func (s *sheet) writeCurves(w *reply.Writer) {
	r := s.reach[s.vary]
	x, y := bounded{axis{Unit: r.Unit}, tidy(r.Low), tidy(r.High)}, axis{}
	traced := make([][]curve.Sample, len(s.cases))
	var kind, of *quantity.Kind
	largest := 0.0
	for i, c := range s.cases {
		samples, slot, ok := s.trace(c)
		if !ok {
			continue
		}
		traced[i], x.Label, of = samples, slot.Label, slot.Kind
		for _, p := range samples {
			if p.Known {
				largest = math.Max(largest, math.Abs(p.Y))
			}
		}
	}
	for _, now := range s.now {
		p, path := now.of(s.answer)
		if p.out == nil {
			continue
		}
		if v, ok := reply.At(p.out, path); ok {
			kind = v.Kind()
			largest = math.Max(largest, math.Abs(v.SI()))
		}
		for _, leaf := range reply.Leaves(p.out) {
			if leaf.Path == path {
				y.Label = leaf.Label
			}
		}
	}
	if kind == nil {
		kind = s.kindOnCurve()
	}
	if kind != nil {
		y.Unit = quantity.AxisUnit(kind, largest, s.system)
	}
	cases := make([]drawn, len(s.cases))
	for i, samples := range traced {
		cases[i] = drawn{Runs: [][][2]float64{}, Spans: []spanned{}}
		if samples == nil || kind == nil {
			continue
		}
		point := func(px, py float64) [2]float64 {
			return [2]float64{tidy(quantity.InUnit(of, px, r.Unit)), tidy(quantity.InUnit(kind, py, y.Unit))}
		}
		for _, run := range curve.Runs(samples) {
			line := make([][2]float64, len(run))
			for j, p := range run {
				line[j] = point(p.X, p.Y)
			}
			cases[i].Runs = append(cases[i].Runs, line)
		}
		at := slices.IndexFunc(s.cases[i].slots, func(slot form.Slot) bool { return slot.Field == s.vary })
		value := s.cases[i].slots[at].Value
		if now := s.sample(value, s.now[i]); now.Known {
			here := point(value, now.Y)
			cases[i].Now = &here
		}
		cases[i].Spans = s.spans(samples, value, s.cases[i].slots[at], r)
	}
	marshal(w, "x", x)
	marshal(w, "y", y)
	marshal(w, "cases", cases)
}

// kindOnCurve is the kind of the answer where no case has it as it stands.
func (s *sheet) kindOnCurve() *quantity.Kind {
	for _, c := range s.cases {
		at := slices.IndexFunc(c.slots, func(slot form.Slot) bool { return slot.Field == s.vary })
		if at < 0 || s.answer == "" {
			continue
		}
		slot := c.slots[at]
		r := s.reach[s.vary]
		for f := 0.0; f <= 1; f += 1.0 / 8 {
			slot.Set(inSI(slot.Kind, r.Low*(1-f)+r.High*f, r.Unit))
			p, path := c.work(s.vary, false).of(s.answer)
			slot.Set(slot.Value)
			if p.out == nil {
				continue
			}
			if v, ok := reply.At(p.out, path); ok {
				return v.Kind()
			}
		}
	}
	return nil
}

func (s *sheet) spans(samples []curve.Sample, near float64, slot form.Slot, r curve.Reach) []spanned {
	out, kind := []spanned{}, slot.Kind
	for _, span := range curve.Spans(samples, near) {
		if span.Refused {
			span.From, span.To = atEnd(span.From, slot.Max, samples), atEnd(span.To, slot.Min, samples)
		}
		v := spanned{From: tidy(quantity.InUnit(kind, span.From, r.Unit)), To: tidy(quantity.InUnit(kind, span.To, r.Unit)),
			Text: span.Text.In(s.system), State: "refused", Do: span.Do.In(s.system), Throughout: span.Throughout}
		if !span.Refused {
			v.State = span.Level.String()
		}
		first, last := span.From <= samples[0].X, span.To >= samples[len(samples)-1].X
		v.Ends = ends(quantity.Format(quantity.Value(kind, span.From), s.system), quantity.Format(quantity.Value(kind, span.To), s.system), first, last)
		out = append(out, v)
	}
	return out
}

// atEnd is the end of the field's own range where a refusal that was found by
// looking begins or ends there.
func atEnd(x float64, end *float64, samples []curve.Sample) float64 {
	if end != nil && math.Abs(x-*end) < (samples[len(samples)-1].X-samples[0].X)/500 {
		return *end
	}
	return x
}

func ends(from, to string, first, last bool) string {
	switch {
	case first && last:
		return "everywhere"
	case first:
		return "below " + to
	case last:
		return "above " + from
	}
	return from + " to " + to
}

// figures are the numbers of every case side by side.
func (s *sheet) figures() []figured {
	live := len(s.cases) - 1
	out := []figured{}
	for _, p := range s.now[live] {
		if p.out == nil {
			continue
		}
		for _, leaf := range reply.Leaves(p.out) {
			f := figured{Path: p.prefix + leaf.Path, Label: leaf.Label, Part: p.title}
			values := make([]quantity.Any, len(s.cases))
			for i, now := range s.now {
				if q, rest := now.of(f.Path); q.out != nil {
					if v, ok := reply.At(q.out, rest); ok {
						values[i] = v
					}
				}
				f.Texts = append(f.Texts, text(values[i], s.system))
			}
			if values[live] == nil && values[0] == nil {
				continue
			}
			if live > 0 && values[0] != nil && values[live] != nil {
				f.Difference, f.Times = differs(values[0], values[live], s.system)
			}
			if s.full {
				if step := reply.StepOf(leaf, p.paper); step >= 0 {
					f.Step = &step
				}
			}
			out = append(out, f)
		}
	}
	return out
}

func text(v quantity.Any, system quantity.System) string {
	if v == nil {
		return "not known"
	}
	return quantity.Format(v, system)
}

// differs says how far b is from a, and how many times it is; the second only
// where that means something.
func differs(a, b quantity.Any, system quantity.System) (difference, times string) {
	d := b.SI() - a.SI()
	if math.Abs(d) <= 1e-12*math.Max(math.Abs(a.SI()), math.Abs(b.SI())) {
		return "the same", ""
	}
	sign := "+"
	if d < 0 {
		sign = "−"
	}
	difference = sign + quantity.FormatHalf(a.Kind(), math.Abs(d), system)
	if a.SI() > 0 && b.SI() > 0 && a.Kind() != quantity.Temperature(0).Kind() {
		times = quantity.FormatNumber(b.SI()/a.SI(), 3, 3)
	}
	return difference, times
}

// tidy keeps six digits of a number, as many as a screen can show.
func tidy(v float64) float64 {
	if v == 0 {
		return 0
	}
	p := math.Pow(10, 5-math.Floor(math.Log10(math.Abs(v))))
	if t := math.Round(v*p) / p; quantity.Finite(t) {
		return t
	}
	return v
}
