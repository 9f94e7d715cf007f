package plan

import (
	"strings"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/reply"
)

// Write appends the comparison as the door's JSON.
func (c Comparison) Write(w *reply.Writer) {
	w.Raw(`{"ok":true,"titles":[`)
	w.Text(c.Titles[0])
	w.Raw(",")
	w.Text(c.Titles[1])
	w.Raw("]")
	w.Key("sections")
	w.Raw("[")
	for _, s := range c.Sections {
		w.Next()
		s.write(w)
	}
	w.Raw("]}")
}

func (c Compared) write(w *reply.Writer) {
	w.Raw("{")
	w.Pair("key", c.Key)
	w.Pair("title", c.Title)
	if c.States[0] != "" {
		w.Key("states")
		w.Raw("[")
		w.Text(string(c.States[0]))
		w.Raw(",")
		w.Text(string(c.States[1]))
		w.Raw("]")
	}
	w.Key("inputs")
	w.Raw("[")
	for _, d := range c.Inputs {
		w.Next()
		d.write(w)
	}
	w.Raw("]")
	w.Key("answers")
	w.Raw("[")
	for _, d := range c.Answers {
		w.Next()
		writeAnswer(w, d)
	}
	w.Raw("]")
	w.Key("only")
	w.Raw("[")
	w.Findings(c.Only[0])
	w.Raw(",")
	w.Findings(c.Only[1])
	w.Raw("]}")
}

// write appends an input that differs: on each side the text and where it
// comes from.
func (d InputDiffers) write(w *reply.Writer) {
	w.Raw("{")
	writePlace(w, d.Place, d.Label)
	for i, side := range []form.Side{d.A, d.B} {
		w.Key([]string{"a", "b"}[i])
		w.Raw("{")
		if side.Path != "" {
			w.Pair("path", side.Path)
		}
		w.Key("origin")
		l := d.Links[i]
		switch {
		case side.Path == "":
			w.Text("none")
		case l != nil:
			w.Text("linked")
			w.Pair("from", l.From)
		default:
			w.Text(string(side.Origin))
		}
		w.Key("text")
		switch {
		case l == nil:
			w.Text(side.Text.In(w.System))
		default:
			w.Text(d.Named(l.text(w.System)))
		}
		w.Raw("}")
	}
	w.Raw("}")
}

func writePlace(w *reply.Writer, place []string, label string) {
	w.Pair("label", label)
	if len(place) > 0 {
		w.Pair("place", strings.Join(place, ", "))
	}
}

func writeAnswer(w *reply.Writer, d reply.Difference) {
	w.Raw("{")
	w.Pair("key", d.Key)
	writePlace(w, d.Place, d.Label)
	for i, side := range []reply.Side{d.A, d.B} {
		w.Key([]string{"a", "b"}[i])
		w.Raw("{")
		if side.Path != "" {
			w.Pair("path", side.Path)
		}
		w.Pair("text", side.Text.In(w.System))
		w.Raw("}")
	}
	if d.Gap != nil {
		w.Pair("gap", signed(gapText(d.Gap, w.System)))
	}
	if d.Share.Known() {
		w.Pair("share", signed(quantity.Format(d.Share.V, w.System)))
	}
	w.Raw("}")
}

// gapText writes a difference of two answers; that of two shares is in points,
// lest it be taken for a share of a share.
func gapText(gap quantity.Any, system quantity.System) string {
	text := quantity.Format(gap, system)
	if number, ok := strings.CutSuffix(text, " %"); ok {
		return number + " points"
	}
	return text
}

// signed writes the sign of a difference, whichever it is.
func signed(text string) string {
	if rest, ok := strings.CutPrefix(text, "-"); ok {
		return "−" + rest
	}
	return "+" + text
}
