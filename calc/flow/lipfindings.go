package flow

import (
	"math"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// metalStands is how high a pool of liquid metal stands by its surface tension
// alone: 8 mm for copper to 12.5 mm for aluminium.
const metalStands = 10 * quantity.Millimetre

// Find puts on the paper what there is to mind about a lip with a flow over
// it under its head: the lip too narrow, a notch outside the angles that were
// tested, a head that is too small to trust, and, while the coefficient is the
// default, what the doubt about it does to the head. Field is the JSON path of the lip in the
// caller's input.
func (l Lip) Find(p *working.Paper, flow quantity.VolumeFlow, head quantity.Length, field string) {
	l.findNarrow(p, flow, head, field)
	if l.Form == NotchLip && (l.Angle < 25*quantity.Degree || l.Angle > 100*quantity.Degree) {
		p.Find(working.Finding{Level: working.Mind, Code: "notch-angle", Field: field + ".angle", Source: source.USBR.Memory("ch. 7, V-notch weirs"),
			Text: working.Say("Notches were tested between %v and %v; this one has %v and the head is an extrapolation.", 25*quantity.Degree, 100*quantity.Degree, l.Angle),
			Do:   working.Say("Try it with water first, or take a notch of %v.", 90*quantity.Degree)})
	}
	if head < metalStands {
		p.Find(working.Finding{Level: working.Mind, Code: "head-small", Field: field, Source: source.Campbell.Memory("height of a sessile pool"),
			Text: working.Say("The head over the lip is only %v. A pool of metal stands about %v high by surface tension alone, so the stream starts late and all at once, and breaks off early.", head, metalStands),
			Do:   working.Say("Take a narrower lip, or tip a little further at the start than worked out here.")})
	}
	if l.Discharge.State != quantity.Defaulted {
		return
	}
	free := l
	free.Discharge = quantity.Some(quantity.Number(1))
	p.Find(working.Finding{Level: working.Note, Code: "lip-coefficient", Field: field + ".discharge", Source: source.Practice("discharge coefficients of ladle lips, 0.6 to 1"),
		Text: working.Say("The discharge coefficient of a lip is not well known: for this flow the head lies between %v at a coefficient of 1 and %v at %v.", free.Head(flow), head, l.Discharge.V),
		Do:   working.Say("Time a pour of a known mass at a steady tilt and put in your own coefficient.")})
}

// findNarrow minds a lip that is narrow for its flow. A flat lip wants to be
// at least three heads wide, the condition under which the formula was tested;
// a half round should not be full above its centre.
func (l Lip) findNarrow(p *working.Paper, flow quantity.VolumeFlow, head quantity.Length, field string) {
	q, cd, root := float64(flow), float64(l.Discharge.V), math.Sqrt(2*Gravity)
	switch {
	case l.Form == FlatLip && 3*head > l.Width:
		// Width three times its head: q = 2/3 C_d b √(2g) (b/3)^1.5.
		wide := quantity.Length(math.Pow(q*3*math.Pow(3, 1.5)/(2*cd*root), 0.4))
		p.Find(working.Finding{Level: working.Mind, Code: "lip-narrow", Field: field + ".width", Source: source.USBR.Memory("ch. 7, standard contracted weirs: crest at least three heads long"),
			Text: working.Say("The lip is narrow for the flow: the head of %v is more than a third of its width of %v, and the stream will be thick and hard to aim.", head, l.Width),
			Do:   working.Say("Make the lip %v wide, or pour more slowly.", wide)})
	case l.Form == RoundLip && head > l.Radius:
		// A half round that is just full: q grows with r^2.5.
		full := float64(l.Flow(l.Radius))
		wide := quantity.Length(float64(l.Radius) * math.Pow(q/full, 0.4))
		p.Find(working.Finding{Level: working.Mind, Code: "lip-narrow", Field: field + ".radius", Source: source.Practice("the stream stays inside the half round"),
			Text: working.Say("The lip is narrow for the flow: the head of %v stands above the half round of %v radius.", head, l.Radius),
			Do:   working.Say("Give the lip a radius of %v, or pour more slowly.", wide)})
	}
}
