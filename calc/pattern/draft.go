package pattern

import (
	"math"

	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// draft works out the taper of the drawn faces and the size at their other
// end.
//
// Draft that adds metal holds the nominal size where the casting would
// otherwise come out too thin: an outside size deep in the mould, an inside
// size at the parting. Draft that takes metal off holds it at the other end. A
// wall is either a rib, with two outside faces, or stands between two pockets,
// with two inside faces; one that has an outside face on one hand and an inside
// face on the other leans as a whole and keeps its thickness.
func (j *job) draft(i int, d Dimension, P float64, out *Sized, p *working.Paper) {
	if d.Kind.V == step || !d.DraftHeight.Known() {
		return
	}
	hollow := d.Kind.V == inside || d.Kind.V == wall && d.DraftFace.V == inside
	smooth, adds := j.in.Stuff.V == "metal", j.in.DraftWay.V == "add"
	angle, note, ok := mouldstuff.Draft(d.DraftHeight.V, smooth, hollow)
	face := map[bool]string{false: "outside", true: "inside"}[hollow]
	stuff := map[bool]string{false: "wooden", true: "metal or plastic"}[smooth]
	if !ok {
		p.Find(working.Finding{Level: working.Note, Code: "draft-none", Field: path(i, "draft_height"), Source: mouldstuff.DraftSource,
			Text: working.Say("%v: the table has no draft for %v faces %v high on a %v pattern.", labelled(i, d), face, d.DraftHeight.V, stuff),
			Do:   working.Say("Take the draft from a pattern of that height that draws well.")})
		return
	}
	h := p.Give("h", "height of the drawn faces", d.DraftHeight.V, "mm")
	phi := p.Lookup("phi", "draft per side", quantity.In(angle, "deg"), "deg", mouldstuff.DraftSource, stuff+" pattern, "+face+" faces, "+note)
	y := p.Step("y", "taper per side", h*math.Tan(phi*math.Pi/180), "mm", "h * tan(phi)", source.Derived("trigonometry"))
	out.Draft, out.Taper = quantity.Some(angle), known(y)
	out.Ends = "pattern size at the parting, other end deep in the mould"
	if adds != hollow {
		out.Ends = "pattern size deep in the mould, other end at the parting"
	}
	// Metal added makes outside sizes and walls larger at the other end and
	// hollows smaller; metal taken off, the other way round.
	sides := source.Derived("two sides, each with its taper")
	if adds != (d.Kind.V == inside) {
		out.FarEnd = known(p.Step("P_e", "pattern at the other end", P+2*y, "mm", "P + 2 * y", sides))
		return
	}
	far := p.Step("P_e", "pattern at the other end", P-2*y, "mm", "P - 2 * y", sides)
	if far <= 0 {
		p.Find(working.Finding{Level: working.Stop, Code: "draft-closes", Field: path(i, "draft_height"), Source: mouldstuff.DraftSource,
			Text: working.Say("%v: with %v of draft on each side the two faces meet before the full height of %v.", labelled(i, d), angle, d.DraftHeight.V),
			Do:   working.Say("Make it with a core, or draw it from both sides.")})
		return
	}
	out.FarEnd = known(far)
}
