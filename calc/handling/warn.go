package handling

import (
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// warn makes findings of what should not be poured as it stands. They look at
// the plan alone: a hold point answered yes takes none of them away.
func (w pour) warn(p *working.Paper) {
	w.warnPeople(p)
	w.warnWater(p)
	w.warnCharge(p)
	w.warnAir(p)
	w.warnLoad(p)
	w.warnHeat(p)
}

func (w pour) warnPeople(p *working.Paper) {
	crew := source.Practice("two people for any filled crucible, three over 20 kg")
	if w.Crew < 2 {
		p.Find(working.Finding{Level: working.Stop, Code: "alone", Field: "crew", Source: crew,
			Text: say("One person alone would pour %v.", w.Metal),
			Do:   say("Find a second person, and a third over %v.", thirdHand)})
	} else if w.Crew < 3 && w.load.heft > thirdHand {
		p.Find(working.Finding{Level: working.Mind, Code: "crew-small", Field: "crew", Source: crew,
			Text: say("Two people with %v leave nobody to skim and keep the way.", w.load.heft),
			Do:   say("Find a third person.")})
	}
	if !w.Lead {
		p.Find(working.Finding{Level: working.Stop, Code: "no-lead", Field: "trained_lead", Source: source.HSE.Seen("trained operators"),
			Text: say("Nobody who has led a pour of this metal leads this one."),
			Do:   say("Find a trained person to lead, or pour with a shop that has one.")})
	}
	if !w.Spectators {
		return
	}
	line := source.Practice("the radiant distance, and never under 3 m for splash")
	switch d := w.SpectatorDistance; {
	case !d.Known():
		p.Find(working.Finding{Level: working.Mind, Code: "spectators-unplaced", Field: "spectator_distance", Source: line,
			Text: say("It is not said how near the spectators stand."),
			Do:   say("Mark a line at %v or more.", w.radiant.standoff)})
	case d.V < w.radiant.standoff:
		p.Find(working.Finding{Level: working.Stop, Code: "spectators-near", Field: "spectator_distance", Source: line,
			Text: say("Spectators at %v stand nearer than %v and would take %v.", d.V, w.radiant.standoff, w.radiant.at.V),
			Do:   say("Move the line back to %v or more.", w.radiant.standoff)})
	}
}

func (w pour) warnWater(p *working.Paper) {
	if w.Ground == wet {
		p.Find(working.Finding{Level: working.Stop, Code: "wet-ground", Field: "ground", Source: source.HSE.Seen("no water in the building, dry and level floors"),
			Text: say("Rain or wet ground is expected; water under metal makes %v times its volume of steam.", w.steam.cold),
			Do:   say("Put the pour off, or move it where it is dry.")})
	}
	limit, from := w.moistureLimit()
	switch {
	case w.Moisture.Known() && limit.Known() && w.Moisture.V > limit.V:
		p.Find(working.Finding{Level: working.Stop, Code: "mould-damp", Field: "moisture", Source: from,
			Text: say("%v of water in the mould is over the limit of %v.", w.Moisture.V, limit.V),
			Do:   say("Dry it to %v or below before it is closed.", limit.V)})
	case w.Moisture.Known() && !limit.Known() && w.Moisture.V > 0:
		p.Find(working.Finding{Level: working.Mind, Code: "moisture-no-limit", Field: "moisture", Source: source.Practice("no limit is known for this binder"),
			Text: say("No limit of water is known for this mould; yours has %v.", w.Moisture.V),
			Do:   say("Dry it until it loses no more weight.")})
	case !w.Moisture.Known() && w.Mould == mouldstuff.GreenSand:
		p.Find(working.Finding{Level: working.Mind, Code: "moisture-unmeasured", Field: "moisture", Source: from,
			Text: say("The water in the green sand is not measured; it may have %v at most.", limit.V),
			Do:   say("Weigh a sample, dry it and weigh it again.")})
	}
	if !w.Fired {
		switch w.Mould {
		case mouldstuff.Plaster, mouldstuff.Investment, mouldstuff.OilSand:
			p.Find(working.Finding{Level: working.Stop, Code: "mould-unfired", Field: "fired", Source: from,
				Text: say("The mould is not said to be fired or baked; it holds water right through."),
				Do:   say("Fire it until nothing more leaves the vents, then say so here.")})
		}
	}
	if gypsum := quantity.From[quantity.Temperature](1200, "°C"); w.Mould == mouldstuff.Plaster && w.PourAt > gypsum {
		p.Find(working.Finding{Level: working.Mind, Code: "plaster-too-hot", Field: "mould", Source: source.Practice("gypsum breaks up above about 1200 °C"),
			Text: say("Plaster breaks up and gives off sulphur dioxide above about %v; you pour at %v.", gypsum, w.PourAt),
			Do:   say("Take sand, or an investment made for this heat.")})
	}
	switch w.Floor {
	case wood:
		p.Find(working.Finding{Level: working.Stop, Code: "wood-floor", Field: "floor", Source: source.Practice("no pouring over wood"),
			Text: say("A spill would land on wood and set it alight."),
			Do:   say("Move the pour to a bed of dry sand.")})
	case concrete, earth, steel:
		p.Find(working.Finding{Level: working.Mind, Code: "floor-bare", Field: "floor", Source: source.Practice("a bed of dry sand under everything hot"),
			Text: say("The floor is not covered. %v", w.floorWhy()),
			Do:   say("Lay dry sand over it, then say sand bed here.")})
	}
}

func (w pour) warnCharge(p *working.Paper) {
	switch w.Charge {
	case unknown:
		p.Find(working.Finding{Level: working.Stop, Code: "scrap-unknown", Field: "charge", Source: source.HSE.Seen("every piece looked at"),
			Text: say("Some of the scrap is of unknown alloy; it can hold lead, cadmium, beryllium or magnesium."),
			Do:   say("Take it out, or have it tested.")})
	case beryllium:
		p.Find(working.Finding{Level: working.Stop, Code: "beryllium", Field: "charge", Source: source.OSHA.Memory("1910.1024"),
			Text: say("The charge holds beryllium, whose limit in air is 0.2 µg/m³; the harm to the lungs does not heal."),
			Do:   say("Do not melt it; sell it to a works that is equipped for beryllium.")})
	case coated:
		p.Find(working.Finding{Level: working.Mind, Code: "scrap-coated", Field: "charge", Source: source.Practice("clean scrap only"),
			Text: say("Paint, plating and galvanising go off as fume."),
			Do:   say("Strip the scrap, then say so here.")})
	}
}

func (w pour) warnAir(p *working.Paper) {
	bare := w.Place == indoors && !w.Extraction
	co := source.OSHA.Memory("1910.1000 table Z-1, carbon monoxide 50 ppm")
	switch {
	case bare && w.burnsFuel():
		p.Find(working.Finding{Level: working.Stop, Code: "fuel-indoors", Field: "extraction", Source: co,
			Text: say("A furnace that burns fuel stands indoors without extraction; carbon monoxide gives no warning."),
			Do:   say("Draw its gas off, or move it outdoors.")})
	case bare:
		p.Find(working.Finding{Level: working.Mind, Code: "air-still", Field: "extraction", Source: co,
			Text: say("Nothing draws the fume of furnace and mould off."),
			Do:   say("Put a hood or fan over both, or pour outdoors.")})
	}
	if w.burnsOut() {
		f := working.Finding{Level: working.Mind, Code: "burn-out", Field: "left", Source: source.NIOSHFoundry.Memory("burnt foam and wax"),
			Text: say("The metal will burn out what is left of the pattern; that gives styrene, benzene, soot or burning wax."),
			Do:   say("Take the pattern out before the pour if it can be done.")}
		if bare {
			f.Level, f.Do = working.Stop, say("Pour outdoors or under extraction, or take the pattern out first.")
		}
		p.Find(f)
	}
	lead := source.OSHA.Memory("1910.1025")
	switch {
	case w.metals.lead.Known() && bare:
		p.Find(working.Finding{Level: working.Stop, Code: "lead-indoors", Field: "extraction", Source: lead,
			Text: say("Up to %v of lead in the ladle, indoors, without extraction.", w.metals.lead.V),
			Do:   say("Draw the fume off, pour outdoors, or take an alloy without lead.")})
	case w.metals.lead.Known():
		p.Find(working.Finding{Level: working.Mind, Code: "lead", Field: "alloy", Source: lead,
			Text: say("The ladle holds up to %v of lead.", w.metals.lead.V),
			Do:   say("Read the lead item to the crew, or take an alloy without lead.")})
	}
	if w.metals.zinc.Known() && w.PourAt > zincBoils {
		over := quantity.TempDiff(w.PourAt - zincBoils)
		p.Find(working.Finding{Level: working.Mind, Code: "zinc", Field: "pour_at", Source: source.NIOSHZinc.Seen("exposure and metal fume fever"),
			Text: say("You pour %v above the boiling point of zinc, and the ladle holds up to %v of it.", over, w.metals.zinc.V),
			Do:   say("Pour no hotter than the walls ask for, and draw the fume off.")})
	}
	if !w.Binder.Known() && len(w.binders) > 1 {
		p.Find(working.Finding{Level: working.Mind, Code: "binder-unsaid", Field: "binder", Source: source.Practice("cover what may be there"),
			Text: say("The binder is not said; the list covers all %v that go with this mould.", len(w.binders)),
			Do:   say("Say which it is.")})
	}
	if w.Cores && !w.CoreBinder.Known() {
		p.Find(working.Finding{Level: working.Mind, Code: "core-binder-unsaid", Field: "core_binder", Source: source.Practice("cover what may be there"),
			Text: say("The binder of the cores is not said; the list covers them all."),
			Do:   say("Say which it is.")})
	}
}

func (w pour) warnLoad(p *working.Paper) {
	rule := source.Practice("shank for two over 10 kg, hoist over 25 kg for a pair")
	if w.load.heft > handPair && !w.Hoist {
		p.Find(working.Finding{Level: working.Mind, Code: "carry-heavy", Field: "carried", Source: rule,
			Text: say("%v is more than two people should carry, %v.", w.load.heft, handPair),
			Do:   say("Move it by hoist, gantry or trolley, or pour from smaller ladles.")})
	}
	if !w.load.weighed {
		p.Find(working.Finding{Level: working.Mind, Code: "ladle-unweighed", Field: "carried", Source: rule,
			Text: say("Only the metal, %v, is known of what is carried.", w.Metal),
			Do:   say("Weigh the lined ladle and its shank and add them.")})
	}
	if w.LipHeight.Known() && w.LipHeight.V > highLip {
		p.Find(working.Finding{Level: working.Mind, Code: "lip-high", Field: "lip_height", Source: source.Practice("lip under the elbow"),
			Text: say("The lip is %v above the floor, over the %v of a standing person's elbow.", w.LipHeight.V, highLip),
			Do:   say("Set the mould lower.")})
	}
	if !w.LadleMouth.Known() {
		p.Find(working.Finding{Level: working.Note, Code: "mouth-estimated", Field: "ladle_mouth", Source: source.Derived("a round pot as deep as it is wide, full"),
			Text: say("The ladle mouth is taken as %v, from the mass of metal.", w.radiant.mouth.V)})
	}
}

func (w pour) warnHeat(p *working.Paper) {
	if !w.heat.Known() {
		w.warnReadings(p)
		return
	}
	h, from := w.heat.V, source.NIOSHHeat.Memory("recommended limits by metabolic heat")
	switch {
	case h.clothed > h.limitOld:
		p.Find(working.Finding{Level: working.Stop, Code: "heat-over", Field: "work", Source: from,
			Text: say("%v with clothing is over %v, the limit for an hour of this work even for people used to heat.", h.clothed, h.limitOld),
			Do:   say("Pour in the cool of the day, or cut the work short with rest in the shade.")})
	case h.clothed > h.limit:
		p.Find(working.Finding{Level: working.Mind, Code: "heat-new", Field: "acclimatised", Source: from,
			Text: say("%v with clothing is over %v, the limit for people new to heat.", h.clothed, h.limit),
			Do:   say("Rest in the cool in every hour, or let people used to heat do the carrying.")})
	}
	if w.WetBulb.V > w.Globe.V {
		p.Find(working.Finding{Level: working.Mind, Code: "readings-swapped", Field: "wet_bulb", Source: source.Practice("a wet bulb reads under the globe"),
			Text: say("The wet bulb reads %v, over the globe's %v.", w.WetBulb.V, w.Globe.V),
			Do:   say("Look whether the two are exchanged.")})
	}
}

// warnReadings says which heat-stress readings are wanting beside the others.
func (w pour) warnReadings(p *working.Paper) {
	if !w.WetBulb.Known() && !w.Globe.Known() && !w.Air.Known() {
		return
	}
	find := func(known bool, field, name string) {
		if known {
			return
		}
		p.Find(working.Finding{Level: working.Mind, Code: "readings-wanting", Field: field, Source: source.NIOSHHeat.Memory("wet-bulb globe temperature"),
			Text: say("The heat of the day cannot be worked out without the %v.", name),
			Do:   say("Read it off the meter, or clear the other readings.")})
	}
	find(w.WetBulb.Known(), "wet_bulb", "natural wet bulb")
	find(w.Globe.Known(), "globe", "globe")
	find(w.Air.Known() || w.Place == indoors, "air", "air in the shade")
}
