package weight

import (
	"math"

	"pourwright/calc/alloy"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/riser"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// enough lets a riser that was sized to the figure pass its own check.
const enough = 1 - 1e-9

// remarks are the findings on the mould as a whole.
func (w *weighing) remarks() {
	w.patternRemarks()
	w.crossCheck()
	if len(w.in.Risers) == 0 {
		w.noRiser()
	} else {
		w.feedRemarks()
	}
	if y := w.out.Yield; y < usualYield.Low || y > usualYield.High {
		do := working.Say("Look again at gating and risers before you melt.")
		if y > usualYield.High {
			do = working.Say("Check that cup, sprue and runners are in it; a mould that runs short is lost.")
		}
		w.p.Find(working.Finding{Level: working.Note, Code: "yield-unusual", Field: "gating", Source: usualYield.Source,
			Text: working.Say("%v of the metal poured becomes casting; usual is %v to %v.", y, usualYield.Low, usualYield.High), Do: do})
	}
}

func (w *weighing) patternRemarks() {
	if w.in.Route.V != FromPattern {
		return
	}
	if w.in.PatternDensity.Known() {
		if w.in.PatternMake.V != SolidMake {
			w.p.Find(working.Finding{Level: working.Mind, Code: "pattern-hollow", Field: "pattern_density", Source: source.Derived("weight over displaced volume"),
				Text: working.Say("The pattern is hollow or printed, so %v must be its whole weight over the volume it displaces, not the density of its stuff.", w.in.PatternDensity.V),
				Do:   working.Say("If you have not drowned it, do so and give the water instead.")})
		}
		return
	}
	kind, _ := mouldstuff.FindPattern(w.in.PatternStuff.V)
	low, high := kind.Density.Span()
	if spread := (high - low) / 2 / kind.Density.V; spread >= 0.1 {
		w.p.Find(working.Finding{Level: working.Mind, Code: "pattern-density-guess", Field: "pattern_density", Source: kind.Density.Source,
			Text: working.Say("%v weighs anything from %v to %v, so the casting may weigh from %v to %v.", kind.Name, low, high, w.out.MassLow, w.out.MassHigh),
			Do:   working.Say("Weigh a block of it of known size and give its density.")})
	}
}

// crossCheck compares the solids with another route.
func (w *weighing) crossCheck() {
	if w.in.Route.V == FromSolids || !w.sections.known {
		return
	}
	const allowed = 0.1
	off := w.p.Step("d_s", "solids against the other way", w.sections.mass/w.m-1, "1", "m_s / m - 1", definition)
	if math.Abs(off) <= allowed {
		return
	}
	more := "more"
	if off < 0 {
		more = "less"
	}
	w.p.Find(working.Finding{Level: working.Mind, Code: "mass-check", Field: "solids", Source: source.Practice("two ways should agree within a tenth"),
		Text: working.Say("By the solids one casting weighs %v, by the other way %v: the solids come to %v %v.", w.out.SolidsMass.V, w.out.Mass, share(math.Abs(off)), more),
		Do:   working.Say("Look for a solid that is missing or counted twice, for core prints, and for a hollow in the pattern.")})
}

func (w *weighing) noRiser() {
	if w.isIron() || w.beta == 0 {
		w.ironRemarks()
		return
	}
	lack := w.p.Step("V_lack", "feed that one casting wants", w.beta*w.V, "cm^3", "beta * V", riser.FeedRule)
	w.p.Find(working.Finding{Level: working.Note, Code: "no-riser", Field: "risers", Source: riser.FeedRule,
		Text: working.Say("There is no riser, and %v shrinks by %v: each casting wants %v of feed metal. Thin even walls get it through the gate; a heavy section pipes.", w.a.Name, share(w.beta), cm3(lack)),
		Do:   working.Say("Add a riser on the heaviest section, or chill it.")})
}

// longFreezing is the freezing range from which copper alloys no longer feed
// over a distance.
const longFreezing = quantity.TempDiff(110)

// feedRemarks are the findings on how the metal feeds.
func (w *weighing) feedRemarks() {
	w.ironRemarks()
	if span := quantity.TempDiff(w.a.Liquidus.V - w.a.Solidus.V); w.a.Family == alloy.Copper && span >= longFreezing {
		w.p.Find(working.Finding{Level: working.Note, Code: "long-freezing", Source: source.CDA.Memory("copper alloys by freezing range: wide from 110 °C"),
			Text: working.Say("%v freezes over %v, so fine porosity stays spread through the casting whatever the riser.", w.a.Name, span),
			Do:   working.Say("Chill the heavy sections, pour no hotter than the walls need, and do not expect a pressure-tight heavy wall from risers alone.")})
	}
	if w.sections.hollowed && !w.in.Modulus.Known() {
		w.p.Find(working.Finding{Level: working.Note, Code: "hollow-not-in-modulus", Field: "modulus", Source: riser.ModulusRule,
			Text: working.Say("The modulus to feed, %v, is that of %v as if nothing were taken out of it.", w.out.Modulus.V, w.sections.name),
			Do:   working.Say("Where a bore or hollow lies in it, build it as a tube or give your own modulus.")})
	}
	if k := w.in.RiserFactor; k.Known() && k.V < 1 && !w.isIron() {
		w.p.Find(working.Finding{Level: working.Mind, Code: "riser-factor-low", Field: "riser_factor", Source: riser.ModulusRule,
			Text: working.Say("A factor of %v makes the risers freeze before the section they feed.", k.V),
			Do:   working.Say("Use 1.2.")})
	}
}

// ironRemarks say on what condition an iron feeds itself.
func (w *weighing) ironRemarks() {
	if !w.isIron() {
		return
	}
	rigid := source.ASM15.Memory("risers for irons: feeding by graphite expansion in a rigid mould, after S. I. Karsay; the necks weakly remembered")
	t := w.a.FeedShrinkage
	if w.beta == 0 && w.in.Wall.V == Green {
		w.p.Find(working.Finding{Level: working.Mind, Code: "iron-green-sand", Field: "shrinkage", Source: rigid,
			Text: working.Say("Counting on the iron to feed itself wants a mould that does not yield, and green sand yields: the wall moves and the casting shrinks after all."),
			Do:   working.Say("Use hard sand, clamped or weighted, or feed %v.", t.High)})
		return
	}
	w.p.Find(working.Finding{Level: working.Note, Code: "iron-expansion", Field: "shrinkage", Source: rigid,
		Text: working.Say("As graphite grows, %v wants anything from %v to %v of feed. It feeds itself only if all of these hold: a rigid mould, a modulus of 25 mm or more, a pour no hotter than about %v, a carbon equivalent of 4.2 or more, and gates that freeze early.", w.a.Name, t.Low, t.High, quantity.From[quantity.Temperature](1350, "degC")),
		Do:   working.Say("Where one of them fails, feed it; necks of 0.6 to 0.8 of the section's modulus then close as the expansion sets in.")})
}

// riserRemarks are the findings on one riser.
func (w *weighing) riserRemarks(p *working.Paper, r Riser, path string, out RiserAnswer, h float64) {
	wanted := max(out.ByModulus, out.ByVolume)
	bigger := working.Say("Make it at least %v across and %v high.", wanted, wanted*quantity.Length(h))
	if r.Diameter.Known() && float64(out.ModulusMargin) < enough {
		p.Find(working.Finding{Level: working.Stop, Code: "riser-small-modulus", Field: path + ".diameter", Source: riser.ModulusRule, Do: bigger,
			Text: working.Say("The modulus of %v is %v and %v is wanted to feed a section of %v: it freezes too soon.", out.Name, out.Modulus, out.ModulusWanted, out.ModulusFed)})
	}
	if g := out.FeedMargin; r.Diameter.Known() && g.Known() && float64(g.V) < enough {
		p.Find(working.Finding{Level: working.Stop, Code: "riser-small-feed", Field: path + ".diameter", Source: riser.FeedRule, Do: bigger,
			Text: working.Say("%v holds %v and %v is wanted to feed %v: its pipe runs into the casting.", working.Capital(out.Name), out.Volume, out.VolumeWanted, out.Fed)})
	}
	if q := quantity.Number(h); q < riser.LowProportion || q > riser.HighProportion {
		field := path + ".ratio"
		if r.Height.Known() {
			field = path + ".height"
		}
		p.Find(working.Finding{Level: working.Mind, Code: "riser-proportion", Field: field, Source: proportions,
			Text: working.Say("%v stands %v times as high as wide; the figures used here are for %v to %v times.", working.Capital(out.Name), q, riser.LowProportion, riser.HighProportion),
			Do:   working.Say("Keep between %v and %v of its height.", riser.LowProportion, riser.HighProportion)})
	}
	if r.Cover.V == Blind {
		p.Find(working.Finding{Level: working.Note, Code: "blind-vent", Field: path + ".cover", Source: source.Practice("blind risers need air on the metal, or they do not feed"),
			Text: working.Say("A blind riser only feeds while air can press on its metal."),
			Do:   working.Say("Put a pencil core or a sharp sand wedge through its top, a tenth to a fifth of its diameter, about %v to %v.", out.Diameter/10, out.Diameter/5)})
	}
	if r.Cover.V == Sleeve && (r.Extension.State == quantity.Defaulted || !r.Efficiency.Known()) {
		p.Find(working.Finding{Level: working.Mind, Code: "sleeve-figures", Field: path + ".extension", Source: source.Brown.Memory("sleeved feeders"),
			Text: working.Say("Sleeves differ from maker to maker; a modulus extension of %v and the efficiency shown in the working are only usual.", r.Extension.V),
			Do:   working.Say("Take the figures from the sleeve's own sheet.")})
	}
	w.seatRemark(p, r, path, out)
}

// seatRemark shows what a top riser's own foot does to the modulus where the
// user has not taken it off.
func (w *weighing) seatRemark(p *working.Paper, r Riser, path string, out RiserAnswer) {
	if r.Place.V != Top || r.Seat.Known() || r.Modulus.Known() || w.in.Modulus.Known() {
		return
	}
	s, D := w.sections, quantity.In(out.Diameter, "cm")
	foot := p.Step("A_foot", "foot of the riser, at most half the section's surface", math.Min(math.Pi/4*D*D, s.Ag/2), "cm^2", "min(pi / 4 * pow(D, 2), A_g / 2)", riser.Geometry)
	M := p.Step("M_foot", "modulus with the foot covered", s.Vg/(s.Ag-foot), "cm", "V_g / (A_g - A_foot)", riser.Seat)
	if M <= 1.05*quantity.In(out.ModulusFed, "cm") {
		return
	}
	p.Find(working.Finding{Level: working.Note, Code: "seat-not-counted", Field: path + ".seat", Source: source.Ghosh.Seen("sample problem 2.9"),
		Text: working.Say("Standing on %v this riser covers up to %v of its surface, and the modulus to feed rises from %v to %v.", s.name, cm2(foot), out.ModulusFed, cm(M)),
		Do:   working.Say("Give the surface that is covered, %v, and size the riser again.", cm2(foot))})
}
