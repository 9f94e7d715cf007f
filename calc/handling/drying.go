package handling

import (
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// water are the items that keep water from the metal, the gravest of all.
func (w pour) water() []Item {
	drop := quantity.From[quantity.Volume](1, "cm³")
	moisture, from := w.moistureLimit()
	if w.Mould != mouldstuff.GreenSand {
		from = source.HSE.Seen("moulds, ladles and implements dried")
	}
	return []Item{
		{Code: "weather", Group: Before, Risk: Life, Hold: true, Text: w.weatherText(),
			Why:    say("Metal that lands on water throws itself about."),
			Source: source.HSE.Seen("no water in the building, dry and level floors")},
		{Code: "dry-tools", Group: Before, Risk: Life, Hold: true,
			Text:   say("Heat skimmer, tongs, thermocouple and pig moulds through, well above the boiling point of water."),
			Why:    say("%v of water makes %v of steam at its boiling point, and %v at this metal's %v.", drop, times(drop, w.steam.cold), times(drop, w.steam.hot), w.PourAt),
			Source: source.HSE.Seen("moulds, ladles and implements dried")},
		{Code: "mould-dry", Group: Before, Risk: Life, Hold: true, Text: w.dryText(moisture),
			Why:    say("Water behind the metal's face becomes %v times its volume of steam.", w.steam.cold),
			Source: from},
		{Code: "pigs", Group: Before, Risk: Life, Hold: true,
			Text:   say("Set out hot, dry pig moulds for the whole %v before the lift.", w.Metal),
			Why:    say("A pour that is stopped leaves all the metal over."),
			Source: source.Practice("pig moulds for the whole heat")},
		{Code: "ladle-hot", Group: Pouring, Risk: Life, Hold: true, Text: w.preheatText(),
			Why:    say("A lining that is dry to the hand still holds water."),
			Source: source.Practice("preheat of ladles")},
		{Code: "leftover", Group: After, Risk: Life,
			Text:   say("Empty the ladle into the pigs at once; warm a skull through before it is melted again."),
			Why:    say("A cold skull takes up damp and spits in the next heat."),
			Source: source.HSE.Seen("charge inspected, prepared and dried")},
		{Code: "no-quench", Group: After, Risk: Life,
			Text:   say("Put no water on casting, mould, skull or slag until all are cold."),
			Why:    say("Heavy parts stay liquid under a black skin."),
			Source: source.Practice("nothing hot is hosed down")},
	}
}

func times(v quantity.Volume, ratio quantity.Number) quantity.Volume {
	return quantity.Volume(float64(v) * float64(ratio))
}

func (w pour) weatherText() working.Text {
	switch {
	case w.Ground == wet:
		return say("Put the pour off until the ground is dry and will stay so.")
	case w.Place == outdoors:
		return say("Call the pour off at the first rain, snow or gusting wind; keep a dry cover by the mould.")
	}
	return say("Look that no roof, tap, hose or drain can wet the floor.")
}

// moistureLimit is the least of the limits of the binders that the mould may
// have; of silicate none is known. The answer is not known where no binder of
// the mould has one.
func (w pour) moistureLimit() (quantity.Opt[quantity.Ratio], source.Ref) {
	var out quantity.Opt[quantity.Ratio]
	from := source.Practice("hardened and dried right through")
	for _, b := range w.binders {
		l := b.MoistureLimit
		if l.Source.IsZero() || out.Known() && l.V >= out.V {
			continue
		}
		out, from = quantity.Some(l.V), l.Source
	}
	return out, from
}

func (w pour) dryText(limit quantity.Opt[quantity.Ratio]) working.Text {
	switch w.Mould {
	case mouldstuff.Plaster, mouldstuff.Investment:
		return say("Burn the mould out until nothing more leaves it; pour before it has cooled.")
	case mouldstuff.OilSand:
		return say("Bake the mould dry right through before you close it.")
	case mouldstuff.SilicateSand:
		return say("Harden and dry the mould through; silicate takes up water from the air again.")
	case mouldstuff.GreenSand:
		if limit.Known() && w.Moisture.Known() {
			return say("Keep the sand's water at or under %v; yours has %v.", limit.V, w.Moisture.V)
		}
		if limit.Known() {
			return say("Weigh a sample of the sand, dry it and weigh it again; it may lose %v at most.", limit.V)
		}
	}
	return say("Let the mould harden right through, dry or burn off the wash, and let no dew settle in it.")
}

func (w pour) preheatText() working.Text {
	if w.PourAt >= quantity.From[quantity.Temperature](900, "°C") {
		return say("Heat the ladle until it is dull red inside, 600 to 800 °C (1100 to 1500 °F).")
	}
	return say("Heat ladle and tools above 150 to 200 °C (300 to 400 °F), right through.")
}
