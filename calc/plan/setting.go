package plan

import (
	"strconv"

	"pourwright/calc/holddown"
	"pourwright/calc/quantity"
	"pourwright/calc/reply"
	"pourwright/calc/working"
)

// Setting is what a moulder measures by when he sets the mould up: dimensions
// on the section, the box, and the cope seen from above with what lies on it.
type Setting struct {
	Dimensions []Dimension
	Box        []Given
	// Length and Width of the flask inside, metres; Marks on its cope.
	Length, Width float64
	Marks         []Mark
}

// Dimension is a dimension line of the section, in the drawing's metres. The
// line itself runs beside what it measures, at Line: a y where it measures
// along, an x where it measures up.
type Dimension struct {
	Text     working.Text
	From, To [2]float64
	Line     float64
}

// Given is an input of the mould.
type Given struct {
	Key, Label string
	Value      quantity.Length
}

// Mark is a place on the cope, from its left end and its near side.
type Mark struct {
	// Kind is lift, weight, clamp or closing.
	Kind  string
	Text  working.Text
	Along quantity.Length
	Over  quantity.Length
}

// setting gathers the dimensions; nil where the mould is not laid out yet, for
// a sketch has none.
func (r *Result) setting(s scene, castLeft, castRight float64) *Setting {
	if !s.known {
		return nil
	}
	m := r.doc.Mould
	out := &Setting{Length: s.flask, Width: float64(m.FlaskWidth)}
	for _, g := range []Given{
		{"flask_length", "Flask, length inside", m.FlaskLength}, {"flask_width", "Flask, width inside", m.FlaskWidth},
		{"cope_height", "Cope, height", m.CopeHeight}, {"drag_height", "Drag, height", m.DragHeight},
		{"above", "Casting above the parting", m.Above.V}, {"below", "Casting below the parting", m.Below.V},
		{"basin_height", "Basin over the cope", m.BasinHeight.V},
	} {
		if g.Value > 0 {
			out.Box = append(out.Box, g)
		}
	}
	along := func(q quantity.Length, x0, x1, y, line float64) {
		out.Dimensions = append(out.Dimensions, Dimension{working.Say("%v", q), [2]float64{x0, y}, [2]float64{x1, y}, line})
	}
	up := func(q quantity.Length, x, y0, y1, line float64) {
		if q > 0 {
			out.Dimensions = append(out.Dimensions, Dimension{working.Say("%v", q), [2]float64{x, y0}, [2]float64{x, y1}, line})
		}
	}
	step := 0.07 * s.flask // between dimension lines
	along(m.CastingLength, castLeft, castRight, -s.below, -s.drag-step)
	along(m.FlaskLength, 0, s.flask, -s.drag, -s.drag-2*step)
	up(m.CopeHeight, s.flask, 0, s.cope, s.flask+step)
	up(m.DragHeight, s.flask, -s.drag, 0, s.flask+step)
	if r.got.hasMould {
		in := castRight - 0.12*(castRight-castLeft)
		up(r.got.mould.Top, in, s.above, s.cope, in)
		up(r.got.mould.Bottom, in, -s.drag, -s.below, in)
		if s.gate == "parting" {
			up(r.got.mould.Head, 0, 0, s.cope+float64(m.BasinHeight.V), -step)
		}
	}
	r.mark(out)
	return out
}

// mark places what lies on the cope; what has no place of its own is taken in
// the middle, as the station does.
func (r *Result) mark(s *Setting) {
	middle := [2]quantity.Length{quantity.Length(s.Length / 2), quantity.Length(s.Width / 2)}
	add := func(kind string, text working.Text, x, y quantity.Opt[quantity.Length]) {
		s.Marks = append(s.Marks, Mark{kind, text, x.Or(middle[0]), y.Or(middle[1])})
	}
	out, ok := r.Station("holddown").Out.(holddown.Output)
	if !ok {
		return
	}
	if out.LiftX.Known() && out.LiftY.Known() {
		add("lift", working.Say("%v", out.Surged), out.LiftX, out.LiftY)
	}
	in := r.doc.HoldDown
	for _, w := range in.Weights {
		add("weight", working.Say("%v", w.Mass), w.X, w.Y)
	}
	if w := r.doc.Pour.Weights; len(in.Weights) == 0 && w.V > 0 {
		add("weight", working.Say("%v", w.V), quantity.Opt[quantity.Length]{}, quantity.Opt[quantity.Length]{})
	}
	for _, c := range in.Clamps {
		add("clamp", working.Say("%v × %v", c.Count.Or(1), c.Load), c.X, c.Y)
	}
	if out.Closing.V > 0 && out.ClosingX.Known() && out.ClosingY.Known() {
		add("closing", working.Say("%v", out.Closing.V), out.ClosingX, out.ClosingY)
	}
}

func (s *Setting) write(w *reply.Writer) {
	if s == nil {
		w.Raw("null")
		return
	}
	list := func(key string, n int, one func(i int)) {
		w.Key(key)
		w.Raw("[")
		for i := range n {
			w.Next()
			w.Raw("{")
			one(i)
			w.Raw("}")
		}
		w.Raw("]")
	}
	text := func(key, text string) {
		w.Key(key)
		w.Text(text)
	}
	length := func(key string, v float64) {
		w.Key(key)
		mm(w, v)
	}
	w.Raw("{")
	length("length", s.Length)
	length("width", s.Width)
	list("dimensions", len(s.Dimensions), func(i int) {
		d := s.Dimensions[i]
		text("text", d.Text.In(w.System))
		w.Key("from")
		point(w, d.From)
		w.Key("to")
		point(w, d.To)
		length("line", d.Line)
		w.Key("along")
		w.Raw(strconv.FormatBool(d.From[1] == d.To[1]))
	})
	list("box", len(s.Box), func(i int) {
		text("key", s.Box[i].Key)
		text("label", s.Box[i].Label)
		text("text", quantity.Format(s.Box[i].Value, w.System))
	})
	list("marks", len(s.Marks), func(i int) {
		m := s.Marks[i]
		text("kind", m.Kind)
		text("text", m.Text.In(w.System))
		length("x", float64(m.Along))
		length("y", float64(m.Over))
		text("along", quantity.Format(m.Along, w.System))
		text("over", quantity.Format(m.Over, w.System))
	})
	w.Raw("}")
}
