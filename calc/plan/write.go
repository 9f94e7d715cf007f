package plan

import (
	"slices"
	"strconv"

	"pourwright/calc/form"
	"pourwright/calc/reply"
	"pourwright/calc/working"
)

// Write appends the whole result as the door's JSON: the card of ruling
// numbers, every station, all findings with the worst first, the drawing.
func (r *Result) Write(w *reply.Writer) {
	w.Raw(`{"ok":true,"title":`)
	w.Text(r.Title)
	w.Key("faults")
	w.Faults(r.Faults())
	w.Key("card")
	r.writeCard(w)
	w.Key("stations")
	w.Raw("[")
	for _, s := range r.Stations {
		w.Next()
		s.write(w)
	}
	w.Raw("]")
	w.Key("findings")
	r.writeFindings(w)
	w.Key("drawing")
	r.drawing().write(w)
	w.Raw("}")
}

func (s *Station) write(w *reply.Writer) {
	w.Raw("{")
	w.Pair("key", s.Key)
	w.Pair("title", s.Title)
	w.Pair("state", string(s.State))
	w.Key("faults")
	w.Faults(s.Faults)
	w.Key("needs")
	w.Faults(s.Needs)
	if w.FullyOf(s.Key) {
		s.writeSheet(w)
	}
	w.Raw("}")
}

// writeSheet appends what stands on the station's own sheet alone.
func (s *Station) writeSheet(w *reply.Writer) {
	known := s.shown
	if known == nil {
		known = &shown{}
	}
	if known.answers == "" || known.system != w.System {
		known.system = w.System
		known.answers, known.findings = w.Aside(func() { s.writeAnswers(w) }), w.Aside(func() { w.Findings(s.Paper.Findings) })
	}
	w.Key("answers")
	w.Raw(known.answers)
	w.Key("findings")
	w.Raw(known.findings)
	w.Key("linked")
	w.Raw("[")
	for _, l := range s.Linked {
		w.Next()
		w.Raw("{")
		w.Pair("field", l.Field)
		w.Pair("from", l.From)
		w.Pair("label", l.Label)
		w.Pair("text", l.text(w.System))
		w.Raw("}")
	}
	w.Raw("]")
	if w.StepsOf(s.Key) {
		w.Key("steps")
		w.Steps(s.Paper.Steps)
	}
}

func (s *Station) writeAnswers(w *reply.Writer) {
	if s.Out == nil {
		w.Raw("null")
	} else {
		w.Answers(s.Out, s.Paper)
	}
}

// Faults are all faults: those of the document itself, then the stations'.
func (r *Result) Faults() form.Faults {
	all := append(form.Faults{}, r.Document...)
	for _, s := range r.Stations {
		all = append(all, s.Faults...)
	}
	return all
}

// Finding is a finding with the station it belongs to.
type Finding struct {
	Station string
	working.Finding
}

// Findings are all findings, the worst first, otherwise in the order of work.
func (r *Result) Findings() []Finding {
	var all []Finding
	for _, s := range r.Stations {
		for _, f := range s.Paper.Findings {
			all = append(all, Finding{s.Key, f})
		}
	}
	slices.SortStableFunc(all, func(a, b Finding) int { return int(b.Level - a.Level) })
	return all
}

func (r *Result) writeFindings(w *reply.Writer) {
	all := r.Findings()
	bare := make([]working.Finding, len(all))
	for i, f := range all {
		bare[i] = f.Finding
		if f.Field != "" {
			bare[i].Field = f.Station + "." + f.Field
		}
	}
	w.FindingsOf(bare, func(i int) string { return all[i].Station })
}

// Ruling is one number of the pour card.
type Ruling struct {
	// Key names it; Label is what the card calls it.
	Key, Label string
	// Station and Answer lead to where it comes from.
	Station, Answer string
	// Text is the number, unknown where it is empty.
	Text working.Text
	// State is the station's.
	State State
}

func (r *Result) writeCard(w *reply.Writer) {
	w.Raw("[")
	for _, c := range r.Card() {
		w.Next()
		w.Raw("{")
		w.Pair("key", c.Key)
		w.Pair("label", c.Label)
		w.Pair("station", c.Station)
		w.Pair("answer", c.Answer)
		w.Pair("state", string(c.State))
		w.Key("text")
		if c.Text.IsZero() {
			w.Text("not yet")
			w.Key("unknown")
			w.Raw("true")
		} else {
			w.Text(c.Text.In(w.System))
		}
		w.Raw("}")
	}
	w.Raw("]")
}

// Shape is one outline of the drawing, in metres, x to the right and y up
// from the parting line.
type Shape struct {
	// Tone is what it is made of: sand, metal, liquid, iron, core, air,
	// weight or line.
	Tone   string
	Points [][2]float64
	Closed bool
}

// Part is one thing in the drawing that can be touched.
type Part struct {
	ID, Label, Station string
	State              State
	Shapes             []Shape
	// At is where the leader of the label points.
	At [2]float64
	// Text is the value on the leader; may be empty.
	Text working.Text
}

// Drawing is the section through the mould, to scale.
type Drawing struct {
	// Box is left, bottom, right and top, in metres.
	Box   [4]float64
	Parts []Part
	// Scale says that it is to scale; without a layout it is only a sketch.
	Scale bool
	// Setting is what to set the mould up by; nil for a sketch.
	Setting *Setting
}

func (d Drawing) write(w *reply.Writer) {
	w.Raw("{")
	w.Key("box")
	w.Raw("[")
	for _, v := range d.Box {
		w.Next()
		mm(w, v)
	}
	w.Raw("]")
	w.Key("scale")
	w.Raw(strconv.FormatBool(d.Scale))
	w.Key("parts")
	w.Raw("[")
	for _, p := range d.Parts {
		w.Next()
		p.write(w)
	}
	w.Raw("]")
	w.Key("setting")
	d.Setting.write(w)
	w.Raw("}")
}

func (p Part) write(w *reply.Writer) {
	w.Raw("{")
	w.Pair("id", p.ID)
	w.Pair("label", p.Label)
	w.Pair("station", p.Station)
	w.Pair("state", string(p.State))
	w.Key("at")
	point(w, p.At)
	w.Pair("text", p.Text.In(w.System))
	w.Key("shapes")
	w.Raw("[")
	for _, s := range p.Shapes {
		w.Next()
		w.Raw("{")
		w.Pair("tone", s.Tone)
		w.Key("closed")
		w.Raw(strconv.FormatBool(s.Closed))
		w.Key("points")
		w.Raw("[")
		for j, at := range s.Points {
			if j > 0 {
				w.Raw(",")
			}
			point(w, at)
		}
		w.Raw("]}")
	}
	w.Raw("]}")
}

func point(w *reply.Writer, at [2]float64) {
	w.Raw("[")
	mm(w, at[0])
	w.Raw(",")
	mm(w, at[1])
	w.Raw("]")
}

// mm writes a length of the drawing in millimetres, to a hundredth.
func mm(w *reply.Writer, v float64) { w.Hundredths(v * 1000) }
