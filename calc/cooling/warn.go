package cooling

import (
	"pourwright/calc/alloy"
	"pourwright/calc/freeze"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// warn says what early shakeout does and how far the answer may be trusted.
func (j *job) warn() {
	p, in, out, d := j.p, j.in, &j.out, j.d
	if in.Shakeout.Known() {
		j.early(in.Shakeout.V, in.Shakeout.V, "shakeout", working.Say("shaken out at %v", in.Shakeout.V))
	}
	if in.OpenAfter.Known() {
		j.opening()
	}
	if out.Biot > 0.1 {
		p.Find(working.Finding{Level: working.Mind, Code: "not-alike-inside", Field: "shape", Source: source.Carslaw.Memory("lumped bodies hold for a Biot number under 0.1"),
			Text: working.Say("The Biot number is %v, over 0.1: the heart of the casting stays hotter than these times tell.", out.Biot),
			Do:   working.Say("Wait longer than %v, and go by a thermocouple in the thickest part.", out.Recommended)})
	}
	j.enoughSand()
	if d.wet {
		p.Find(working.Finding{Level: working.Note, Code: "wet-sand", Field: "sand", Source: source.Practice("water boils off at 100 °C and carries heat away"),
			Text: working.Say("The water in green sand is not counted; boiling it off cools the casting sooner than this.")})
	}
	if in.Shape == freeze.Sphere || in.Shape == freeze.Cylinder {
		p.Find(working.Finding{Level: working.Note, Code: "round-cools-sooner", Field: "shape", Source: source.Adams.Seen("the plain rule compares only like shapes"),
			Text: working.Say("Heat spreads from a round shape into more and more sand; it cools sooner than this.")})
	}
	if d.code == alloy.CodeAluminiumBronze {
		p.Find(working.Finding{Level: working.Note, Code: "aluminium-bronze-slow", Field: "shakeout", Source: source.Practice("duplex aluminium bronze, as remembered"),
			Text: working.Say("Slow cooling through about 565 °C makes aluminium bronze brittle; some shops shake it out early on purpose, or heat-treat it afterwards."),
			Do:   working.Say("Ask for the toughness that is wanted before you choose to wait or to shake out early.")})
	}
	band := working.Say("Time one casting of this kind, and enter your own freezing constant.")
	if in.Constant.Known() {
		band = working.Say("Measure the casting at shakeout, and keep the figure with the pattern.")
	}
	p.Find(working.Finding{Level: working.Note, Code: "cooling-band", Field: "constant", Source: source.Practice("handbook data of metal and sand differ"),
		Text: working.Say("The casting comes down to %v somewhere between %v and %v; metal and sand are not known better than that.", out.RecommendedTemperature, out.TimeLow, out.TimeHigh), Do: band})
	if !in.PourTemperature.Known() {
		p.Find(working.Finding{Level: working.Note, Code: "superheat-left-out", Field: "pour_temperature", Source: flemings,
			Text: working.Say("No pouring temperature is given, so no superheat is counted; the casting takes longer than this.")})
	}
}

// early says what shaking out at the temperatures likely and most does. when
// goes on from "Where it is".
func (j *job) early(likely, most quantity.Temperature, field string, when working.Text) {
	h, usual := habits[j.d.family]
	if !usual {
		return
	}
	limit, sure := h.temperatures(j.in.Stress.V == "prone")
	change := quantity.From[quantity.Temperature](changeAt, "degC")
	switch {
	case ferrous(j.d.family) && likely > change:
		j.p.Find(working.Finding{Level: working.Stop, Code: "above-the-change", Field: field, Source: limit.Source,
			Text: working.Say("Where it is %v, the casting goes through its change near %v in open air: it comes out hard, stressed and perhaps cracked.", when, change),
			Do:   working.Say("Leave it in the sand down to %v, unless a heat treatment straight from the mould is planned.", sure.V)})
	case most > limit.V:
		j.p.Find(working.Finding{Level: working.Mind, Code: "shaken-out-hot", Field: field, Source: limit.Source,
			Text: working.Say("Where it is %v, the casting is hotter than the usual %v: thin parts then cool faster than thick ones, which bends it and leaves stress in it.", when, limit.V),
			Do:   working.Say("Leave it in the sand down to %v.", sure.V)})
	}
}

// opening judges the time at which the mould is to be opened.
func (j *job) opening() {
	out := &j.out
	if j.in.OpenAfter.V < out.FreezingHigh {
		j.p.Find(working.Finding{Level: working.Stop, Code: "open-before-solid", Field: "open_after", Source: chvorinov,
			Text: working.Say("After %v the casting may still be liquid: freezing takes between %v and %v.", j.in.OpenAfter.V, out.FreezingLow, out.FreezingHigh),
			Do:   working.Say("Leave the mould shut for %v.", out.Recommended)})
		return
	}
	j.early(out.Open.V, out.OpenHigh.V, "open_after", working.Say("opened after %v and still at %v, or at most %v", j.in.OpenAfter.V, out.Open.V, out.OpenHigh.V))
}

// enoughSand warns where heat reaches the end of the sand.
func (j *job) enoughSand() {
	out := &j.out
	if !out.Warmed.Known() {
		return
	}
	if out.Mixed.V > out.RecommendedTemperature {
		j.p.Find(working.Finding{Level: working.Mind, Code: "sand-cannot-cool-it", Field: "sand_thickness", Source: source.Derived("balance of heat"),
			Text: working.Say("%v of sand is too little to cool the casting: with its sand it settles at %v, above the %v wanted, and only the flask sheds the rest.", j.in.SandThickness.V, out.Mixed.V, out.RecommendedTemperature),
			Do:   working.Say("Give it more sand, or wait longer than %v and measure.", out.Recommended)})
		return
	}
	if out.Warmed.V > 0.1 {
		j.p.Find(working.Finding{Level: working.Mind, Code: "sand-warmed-through", Field: "sand_thickness", Source: source.Carslaw.Memory("ch. II, face at one temperature"),
			Text: working.Say("By then the heat has gone through %v of sand; its far side feels %v of the heat at the casting. Beside another hot casting it takes longer than this.", j.in.SandThickness.V, out.Warmed.V),
			Do:   working.Say("Give it more sand, or wait longer than %v and measure.", out.Recommended)})
	}
}
