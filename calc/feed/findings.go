package feed

import (
	"fmt"
	"math"
	"strings"

	"pourwright/calc/alloy"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// enough lets equal moduli, and a riser that was sized to the figure, pass.
const enough = 1 - 1e-9

// even is how far above its section the way of feeding should lie for the
// order to be sure.
const even = quantity.Number(1.1)

var evenRule = source.Practice("moduli should rise by a tenth from section to section toward the riser")

// remarks are all findings.
func (f *feeding) remarks() {
	f.metalRemarks()
	for i := range f.bodies {
		f.sectionRemarks(i)
	}
	for k := range f.spots {
		f.junctionRemarks(k)
	}
	for _, w := range f.sized {
		w.remarks()
	}
}

// metalRemarks are on how the metal feeds as such.
func (f *feeding) metalRemarks() {
	p := f.p
	if spreadsPores(f.a) {
		p.Find(working.Finding{Level: working.Note, Code: "long-freezing", Source: longFreezing,
			Text: working.Say("%v freezes over %v, so fine porosity stays spread through the casting whatever the riser, and no feeding distance holds.", f.a.Name, quantity.TempDiff(f.a.Liquidus.V-f.a.Solidus.V)),
			Do:   working.Say("Chill the heavy sections, pour no hotter than the walls need, and do not expect a pressure-tight heavy wall from risers alone.")})
	}
	if f.beta == 0 && !f.isIron() {
		p.Find(working.Finding{Level: working.Mind, Code: "shrinkage-zero", Field: "shrinkage", Source: f.a.FeedShrinkage.Source,
			Text: working.Say("You reckon with no shrinkage, but %v shrinks by %v before it is solid.", f.a.Name, f.a.FeedShrinkage.V),
			Do:   working.Say("Leave the field empty.")})
	}
	if !f.isIron() {
		return
	}
	var fail working.Text
	for _, c := range f.out.Conditions {
		switch {
		case c.State == "yes":
		case fail.IsZero():
			fail = c.Name
		default:
			fail = working.Say("%v; %v", fail, c.Name)
		}
	}
	switch {
	case f.out.SelfFeeding:
		p.Find(working.Finding{Level: working.Mind, Code: "iron-feeds-itself", Field: "wall", Source: karsay,
			Text: working.Say("All four conditions for graphite to feed %v hold, so no riser is asked for. That also wants good inoculation, a quick fill, and many thin gates that freeze early.", strings.ToLower(f.a.Name)),
			Do:   working.Say("Cut up the first casting before you rely on it.")})
	case f.beta == 0:
		p.Find(working.Finding{Level: working.Mind, Code: "iron-unproven", Field: "shrinkage", Source: karsay,
			Text: working.Say("You count on the iron to feed itself, and these conditions for it do not hold or are not known: %v.", fail),
			Do:   working.Say("Keep to it only where castings cut up have shown it; else leave the shrinkage empty and feed it.")})
	default:
		p.Find(working.Finding{Level: working.Note, Code: "iron-fed", Field: "wall", Source: karsay,
			Text: working.Say("Graphite is not counted on to feed this casting, as these conditions do not hold or are not known: %v. It is fed for %v.", fail, share(f.beta)),
			Do:   working.Say("If your castings of this iron are sound without feed, give a shrinkage of 0 %%.")})
	}
}

// sectionRemarks are on how one section is fed.
func (f *feeding) sectionRemarks(i int) {
	if f.beta == 0 {
		return
	}
	b, s, out := f.bodies[i], f.in.Sections[i], f.out.Sections[i]
	from := f.links.from[i]
	if from.what == nothing {
		b.p.Find(working.Finding{Level: working.Stop, Code: "not-fed", Field: b.path + ".feeds_from", Source: source.Campbell.Memory("every section that shrinks has to be fed"),
			Text: working.Say("Nothing feeds %v, and it shrinks by %v: %v of metal is missing in each.", b.name, share(f.beta), cm3(f.beta*b.V)),
			Do:   working.Say("Set a riser on it, or name the section through which feed comes; a gate that stays open long enough may be entered as a feeder with its own modulus.")})
		return
	}
	f.pathRemark(i)
	if from.what == section && s.Kind != Stated && !f.touch(i, from.i) {
		b.p.Find(working.Finding{Level: working.Mind, Code: "contact-missing", Field: "joints", Source: chvorinov,
			Text: working.Say("%v is fed through %v, but no contact between them is given, so the joined face counts as cooled on both and the moduli come out too small.", working.Capital(b.name), f.bodies[from.i].name),
			Do:   working.Say("Add the place where they touch, with its area.")})
	}
	if from.what == riserFeeds {
		f.seatRemark(i, from.i)
	}
	f.reachRemark(b, s, out)
}

// pathRemark says where the way of feeding freezes before the section does.
func (f *feeding) pathRemark(i int) {
	b, out := f.bodies[i], f.out.Sections[i]
	if !out.Margin.Known() {
		return
	}
	_, first := f.way(i)
	y := f.bodies[first]
	switch {
	case float64(out.Margin.V) < enough:
		thicken := working.Say("Bring the modulus of %v up to %v", y.name, cm(b.Mo))
		if T, ok := f.thickness(first, b.Mo); ok {
			thicken = working.Say("Thicken %v from %v to about %v, which brings its modulus up to %v", y.name, f.in.Sections[first].Thickness, T, cm(b.Mo))
		}
		text := working.Say("%v freezes after %v, through which it is fed: modulus %v against %v.", working.Capital(b.name), y.name, cm(b.Mo), cm(y.Mo))
		if f.timed {
			text = working.Say("%v freezes after %v, through which it is fed: about %v against %v, modulus %v against %v.", working.Capital(b.name), y.name, out.Time.V, f.out.Sections[first].Time.V, cm(b.Mo), cm(y.Mo))
		}
		b.p.Find(working.Finding{Level: working.Stop, Code: "path-freezes-first", Field: fmt.Sprintf("sections[%d]", first), Source: chvorinov, Text: text,
			Do: working.Say("%v; or chill or lighten %v until its modulus is under %v; or set a riser on it.", thicken, b.name, cm(y.Mo))})
	case out.Margin.V < even*enough:
		b.p.Find(working.Finding{Level: working.Note, Code: "path-even", Field: fmt.Sprintf("sections[%d]", first), Source: evenRule,
			Text: working.Say("%v and %v, through which it is fed, freeze nearly together: feed then comes only as far as the feeding distance.", working.Capital(b.name), y.name),
			Do:   working.Say("Let the modulus of %v be %v or more, or give the way to feed.", y.name, cm(float64(even)*b.Mo))})
	}
}

// thickness is that of a plate which has modulus M, in cm, with its length,
// width and joined faces as they are: L w T = M (2 L w + 2 (L + w) T − A_j)
// solved for T. ok is false for other forms, and for plates so small that no
// thickness will do.
func (f *feeding) thickness(i int, M float64) (T quantity.Length, ok bool) {
	s := f.in.Sections[i]
	if s.Kind != Plate || s.Chilled.Known() {
		return 0, false
	}
	L, w, joined := quantity.In(s.Length, "cm"), quantity.In(s.Width, "cm"), quantity.In(f.out.Sections[i].Joined.V, "cm^2")
	t := M * (2*L*w - joined) / (L*w - 2*M*(L+w))
	if !(t > 0) || t > min(L, w) {
		return 0, false
	}
	return cm(t), true
}

// touch reports that a joint between two sections is given.
func (f *feeding) touch(i, j int) bool {
	for _, pair := range f.links.joints {
		if pair == [2]int{i, j} || pair == [2]int{j, i} {
			return true
		}
	}
	return false
}

// seatRemark shows what a top riser's own foot does to the modulus where the
// user has not taken it off.
func (f *feeding) seatRemark(i, r int) {
	s, b, rise := f.in.Sections[i], f.bodies[i], f.out.Risers[r]
	if f.in.Risers[r].Place.V != Top || s.Kind == Stated || s.Covered.V > 0 || s.Chilled.Known() || !rise.Diameter.Known() {
		return
	}
	D := quantity.In(rise.Diameter.V, "cm")
	b.p.Carry("D_r", "diameter of "+rise.Name, D, "cm")
	foot := b.p.Step("A_foot", "foot of the riser, at most half the cooled surface", math.Min(math.Pi/4*D*D, b.Ac/2), "cm^2", "min(pi / 4 * pow(D_r, 2), A_c / 2)", geometry)
	M := b.p.Step("M_foot", "modulus with the foot covered", b.V/(b.Ac-foot), "cm", "V / (A_c - A_foot)", source.Ghosh.Seen("sample problem 2.9: a top riser takes its seat off the cooled surface"))
	if M <= 1.05*b.M {
		return
	}
	b.p.Find(working.Finding{Level: working.Note, Code: "seat-not-counted", Field: b.path + ".covered", Source: source.Ghosh.Seen("sample problem 2.9"),
		Text: working.Say("Standing on %v, %v covers up to %v of its surface, and its modulus rises from %v to %v.", b.name, rise.Name, cm2(foot), cm(b.M), cm(M)),
		Do:   working.Say("Give the surface that is covered, %v, and size the riser again.", cm2(foot))})
}

// reachRemark compares the way to feed with the feeding distance.
func (f *feeding) reachRemark(b *body, s Section, out SectionAnswer) {
	if !s.Reach.Known() {
		return
	}
	field := b.path + ".reach"
	if !out.Reach.Known() {
		if !spreadsPores(f.a) {
			b.p.Find(working.Finding{Level: working.Note, Code: "reach-unknown", Field: field, Source: guidance,
				Text: working.Say("No feeding distance is known for %v in a section like %v.", f.a.Name, b.name)})
		}
		return
	}
	from := guidance
	if f.a.Family == alloy.Steel {
		from = pelliniRule
	}
	do := working.Say("Bring a riser nearer or set a second one, or let the wall grow toward the riser.")
	if !s.EndChill {
		do = working.Say("Bring a riser nearer or set a second one, chill the far end, or let the wall grow toward the riser.")
	}
	switch {
	case s.Reach.V > out.Far.V*quantity.Length(1+1e-9):
		b.p.Find(working.Finding{Level: working.Mind, Code: "reach-far", Field: field, Source: from, Do: do,
			Text: working.Say("Feed has to go %v in %v, and it comes about %v: expect porosity in the middle of the wall beyond that.", s.Reach.V, b.name, out.Far.V)})
	case s.Reach.V > out.Reach.V*quantity.Length(1+1e-9):
		b.p.Find(working.Finding{Level: working.Note, Code: "reach-doubtful", Field: field, Source: from, Do: do,
			Text: working.Say("Feed has to go %v in %v; figures for how far it comes run from %v to %v.", s.Reach.V, b.name, out.Reach.V, out.Far.V)})
	}
}

// junctionRemarks say where a corner is cut off from its feed.
func (f *feeding) junctionRemarks(k int) {
	s, j := f.spots[k], f.in.Joints[k]
	if f.beta == 0 || !s.known || f.links.stands[k] >= 0 {
		return
	}
	T1, T2 := wall(f.in.Sections[f.links.joints[k][0]]), wall(f.in.Sections[f.links.joints[k][1]])
	if j.Junction.V == T && T2 <= T1/2 {
		return // such a wall cools the other like a fin (J. Campbell)
	}
	first := s.up
	if _, way := f.way(s.up); way >= 0 && f.bodies[way].Mo < f.bodies[first].Mo {
		first = way
	}
	y := f.bodies[first]
	if y.Mo >= s.M*enough {
		return
	}
	do := map[Junction]working.Text{
		L: working.Say("Round the outer corner to the wall and the fillet together, %v, which leaves no more metal in the corner than in the wall; or chill it, or set a riser on it.", max(T1, T2)+j.Fillet.V),
		T: working.Say("Thin the wall that ends there to %v, which then cools the other, or chill the far face, or set a riser on it.", T1/2),
		X: working.Say("Stagger the walls so that they meet as two T junctions, put a core through the crossing, or set a riser on it."),
	}[j.Junction.V]
	s.p.Find(working.Finding{Level: working.Mind, Code: "junction-hot", Field: s.path + ".junction", Source: circles, Do: do,
		Text: working.Say("The %v holds a circle of %v, %v times the heavier wall, and freezes after %v, through which it is fed: expect a shrinkage hole or a sink there.", s.name, f.out.Joints[k].Circle.V, f.out.Joints[k].Ratio.V, y.name)})
}
