package ladleheat

import (
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// warn says whether the metal lasts, and how far the answer may be trusted.
func (j *job) warn() {
	j.lasts()
	j.hot()
	if j.in.Basis.V == byReadings {
		return
	}
	if j.in.Vessel.V == crucible {
		j.p.Find(working.Finding{Level: working.Mind, Code: "crucible-estimate", Field: "basis", Source: crucibleFrom,
			Text: working.Say("What a crucible sheds all round is an estimate; nobody has measured yours."),
			Do:   working.Say("Take two readings of the thermometer in the lifted crucible, and enter them in place of the reckoning.")})
	} else {
		j.dry()
		j.trust()
	}
}

// lasts judges the end of the pour.
func (j *job) lasts() {
	p, out := j.p, &j.out
	liquidus := j.metal.Liquidus.V
	if !out.End.Known() {
		return
	}
	if !out.TapNeeded.Known() {
		p.Find(working.Finding{Level: working.Stop, Code: "no-tap-is-enough", Field: "pouring", Source: balance,
			Text: working.Say("No tapping temperature up to %v keeps the last mould at %v.", mostTap, out.Low),
			Do:   j.instead()})
	}
	short := quantity.TempDiff(out.Low - out.End.V)
	switch {
	case out.End.V < liquidus:
		p.Find(working.Finding{Level: working.Stop, Code: "freezes-in-the-ladle", Field: "tap", Source: balance,
			Text: working.Say("By the last mould the metal is at %v, below its liquidus of %v: it sets in the ladle.", out.End.V, liquidus),
			Do:   j.hotter()})
	case short > 0.5:
		p.Find(working.Finding{Level: working.Stop, Code: "goes-cold", Field: "tap", Source: balance,
			Text: working.Say("By the last mould the metal is at %v, %v colder than the %v it may be poured at.", out.End.V, short, out.Low),
			Do:   j.hotter()})
	case out.EndLow.V < out.Low-0.5:
		p.Find(working.Finding{Level: working.Mind, Code: "may-go-cold", Field: "tap", Source: balance,
			Text: working.Say("With the worst of drop and losses the last mould gets metal at %v, %v colder than it may be.", out.EndLow.V, quantity.TempDiff(out.Low-out.EndLow.V)),
			Do:   j.surer()})
	}
}

// hotter is what to do about cold metal.
func (j *job) hotter() working.Text {
	if !j.out.TapNeeded.Known() {
		return j.instead()
	}
	if j.tooHotFirst() {
		return working.Say("Tap at %v only if the first mould can take metal that hot; else %v", j.out.TapNeeded.V, j.insteadLower())
	}
	return working.Say("Tap at %v.", j.out.TapNeeded.V)
}

func (j *job) surer() working.Text {
	if j.out.TapNeededHigh.Known() {
		return working.Say("Measure the metal in the ladle, or tap at up to %v.", j.out.TapNeededHigh.V)
	}
	return working.Say("Measure the metal in the ladle before the last mould.")
}

// instead is what helps where hotter metal does not.
func (j *job) instead() working.Text { return working.Say("Do not tap hotter: %v", j.insteadLower()) }

func (j *job) insteadLower() working.Text {
	if j.in.Basis.V == byModel && j.in.Vessel.V == lined && j.in.Cover.V == open {
		return working.Say("cover the ladle, heat its lining, pour faster, or use a second ladle.")
	}
	return working.Say("pour faster, or use a second ladle or a reheat.")
}

// tooHotFirst says that metal tapped as hot as needed begins to pour above the
// window.
func (j *job) tooHotFirst() bool {
	loss := j.out.Filled - j.out.Start
	return j.out.TapNeeded.V-quantity.Temperature(j.out.Drop)-loss > j.out.High
}

// hot judges the beginning of the pour.
func (j *job) hot() {
	p, out := j.p, &j.out
	if out.Start <= out.High+0.5 {
		return
	}
	over := quantity.TempDiff(out.Start - out.High)
	if !j.in.Tap.Known() {
		p.Find(working.Finding{Level: working.Mind, Code: "window-too-narrow", Field: "pouring", Source: balance,
			Text: working.Say("To keep the last mould at %v the first must be poured at %v, %v hotter than it may be.", out.Low, out.Start, over),
			Do:   j.instead()})
		return
	}
	do := working.Say("Let it stand before you pour.")
	if out.Wait.Known() {
		do = working.Say("Let it stand for %v after it is in the ladle, and measure.", out.Wait.V)
	}
	p.Find(working.Finding{Level: working.Mind, Code: "starts-hot", Field: "tap", Source: balance,
		Text: working.Say("Pouring begins at %v, %v hotter than the %v that the first mould may have.", out.Start, over, out.High), Do: do})
}

// dry warns of a lining that is not hot enough to be dry, or to keep the metal.
func (j *job) dry() {
	damp := quantity.From[quantity.Temperature](150, "degC")
	red := quantity.From[quantity.Temperature](redHot, "degC")
	preheat := j.preheat.V
	switch {
	case preheat < damp:
		j.p.Find(working.Finding{Level: working.Stop, Code: "lining-may-be-damp", Field: "preheat", Source: source.Practice("preheat of ladles"),
			Text: working.Say("A lining at %v may hold water, and water under metal throws it out of the ladle.", preheat),
			Do:   working.Say("Heat the lining right through, well above %v to %v at the least, and let whoever answers for the pour look at it.", damp, quantity.From[quantity.Temperature](200, "degC"))})
	case j.out.Low > red+300 && preheat < red:
		j.p.Find(working.Finding{Level: working.Mind, Code: "lining-not-red", Field: "preheat", Source: source.Practice("preheat of ladles"),
			Text: working.Say("A lining at %v takes much of the heat; for this metal it should be dull red, %v or more.", preheat, red),
			Do:   working.Say("Keep a flame in the ladle until just before it is filled.")})
	}
}

// trust says how the model stands against the few rates that are printed.
func (j *job) trust() {
	ton := quantity.From[quantity.Mass](1000, "kg")
	level := working.Note
	text := working.Say("The lining's heat is known within a factor of two at best; the model lies among the rates that foundries report for ladles of 25 to 500 kg.")
	if j.in.Mass >= ton {
		level = working.Mind
		text = working.Say("For ladles of %v and more the model loses two to three times as much as the few printed rates say.", ton)
	}
	j.p.Find(working.Finding{Level: level, Code: "not-measured", Field: "basis", Source: source.Practice("loss rates of ladles as reported"),
		Text: text,
		Do:   working.Say("Take two readings of the thermometer in your own ladle, and enter them in place of the reckoning.")})
}
