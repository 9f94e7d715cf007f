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
	for i, s := range r.Stations {
		if i > 0 {
			w.Raw(",")
		}
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
	w.Key("key")
	w.Text(s.Key)
	w.Key("title")
	w.Text(s.Title)
	w.Key("state")
	w.Text(string(s.State))
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
	w.Key("faults")
	w.Faults(s.Faults)
	w.Key("needs")
	w.Faults(s.Needs)
	w.Key("findings")
	w.Raw(known.findings)
	w.Key("linked")
	w.Raw("[")
	for i, l := range s.Linked {
		if i > 0 {
			w.Raw(",")
		}
		w.Raw("{")
		w.Key("field")
		w.Text(l.Field)
		w.Key("from")
		w.Text(l.From)
		w.Key("label")
		w.Text(l.Label)
		w.Key("text")
		w.Text(l.text(w.System))
		w.Raw("}")
	}
	w.Raw("]")
	if w.StepsOf(s.Key) {
		w.Key("steps")
		w.Steps(s.Paper.Steps)
	}
	w.Raw("}")
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
	for i, c := range r.Card() {
		if i > 0 {
			w.Raw(",")
		}
		w.Raw("{")
		w.Key("key")
		w.Text(c.Key)
		w.Key("label")
		w.Text(c.Label)
		w.Key("station")
		w.Text(c.Station)
		w.Key("answer")
		w.Text(c.Answer)
		w.Key("state")
		w.Text(string(c.State))
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
	for i, v := range d.Box {
		if i > 0 {
			w.Raw(",")
		}
		mm(w, v)
	}
	w.Raw("]")
	w.Key("scale")
	w.Raw(strconv.FormatBool(d.Scale))
	w.Key("parts")
	w.Raw("[")
	for i, p := range d.Parts {
		if i > 0 {
			w.Raw(",")
		}
		p.write(w)
	}
	w.Raw("]")
	w.Key("setting")
	d.Setting.write(w)
	w.Raw("}")
}

func (p Part) write(w *reply.Writer) {
	w.Raw("{")
	w.Key("id")
	w.Text(p.ID)
	w.Key("label")
	w.Text(p.Label)
	w.Key("station")
	w.Text(p.Station)
	w.Key("state")
	w.Text(string(p.State))
	w.Key("at")
	point(w, p.At)
	w.Key("text")
	w.Text(p.Text.In(w.System))
	w.Key("shapes")
	w.Raw("[")
	for i, s := range p.Shapes {
		if i > 0 {
			w.Raw(",")
		}
		w.Raw("{")
		w.Key("tone")
		w.Text(s.Tone)
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
func mm(w *reply.Writer, v float64) {
	w.Number(float64(int(v*1e5+0.5*sign(v))) / 100)
}

func sign(v float64) float64 {
	if v < 0 {
		return -1
	}
	return 1
}
