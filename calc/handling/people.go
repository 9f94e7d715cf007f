package handling

import (
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// people are the items on crew, onlookers, clothing and heat.
func (w pour) people() []Item {
	out := []Item{
		{Code: "crew", Group: Before, Risk: Life, Hold: true, Text: w.crewText(),
			Why:    say("Somebody must have both hands free to help."),
			Source: source.Practice("two people for any filled crucible, three over 20 kg")},
		{Code: "lead", Group: Before, Risk: Life, Hold: true, Text: w.leadText(), Law: local,
			Why:    say("One voice gives the orders; training comes before protective clothing."),
			Source: source.HSE.Seen("trained operators")},
		{Code: "dry-run", Group: Before, Risk: Injury, Hold: true,
			Text:   say("Walk the whole pour with the cold, empty ladle; agree on LIFT, SET DOWN and STOP."),
			Why:    say("What blocks the way shows while nothing is hot."),
			Source: source.Practice("a rehearsal with the cold ladle")},
		{Code: "spectators", Group: Before, Risk: Injury, Hold: w.Spectators, Text: w.spectatorText(),
			Why:    say("Bare skin bears the open ladle's heat from %v; splash flies further.", w.radiant.distance),
			Source: source.Practice("the radiant distance, and never under 3 m for splash")},
		{Code: "clothes", Group: Before, Risk: Injury, Hold: true, Law: local,
			Text:   say("Dress all within reach of splash: face shield over glasses, wool, leather or flame-resistant cotton, dry gloves, trousers outside the boots; nothing synthetic."),
			Why:    say("Synthetics melt into the skin, cuffs and pockets hold metal, wet leather scalds."),
			Source: source.OSHA.Memory("1910.132 to 1910.138")},
		{Code: "heat", Group: Before, Risk: Health, Text: w.heatText(), Law: local,
			Why:    say("Heat takes the judgement before the strength."),
			Source: source.NIOSHHeat.Memory("limits by work and clothing; water breaks")},
		{Code: "respirator", Group: Before, Risk: Health, Law: federal,
			Text:   say("Wear a fitted respirator on top of extraction, never in its place; a paper mask stops neither gas nor fume."),
			Why:    say("One that leaks at the beard or has the wrong filter does nothing."),
			Source: source.OSHA.Memory("1910.134")},
		{Code: "cold-lift", Group: Before, Risk: Health,
			Text:   say("Check lifts of cold moulds, flasks and ingots on the lifting sheet; it covers neither hot metal nor carrying."),
			Why:    say("The lifting equation leaves out liquids, heat and walking with a load."),
			Source: source.NIOSHLift.Seen("scope, p. 6")},
	}
	if w.hot() {
		out = append(out, Item{Code: "aluminised", Group: Before, Risk: Injury, Law: local,
			Text:   say("Add an aluminised coat, leggings and spats: the metal's face gives off %v.", w.radiant.surface),
			Why:    say("At this heat plain cloth chars; ISO 11612 grades clothing for iron splash by the letter E."),
			Source: source.ISO11612.Memory("molten metal splash")})
	}
	return out
}

// hot is the heat of iron and steel, whatever the metal.
func (w pour) hot() bool {
	return w.metal.Hazards.Iron || w.PourAt > quantity.From[quantity.Temperature](1300, "°C")
}

func (w pour) crewText() working.Text {
	switch {
	case w.Crew < 2:
		return say("Find a second person; nobody pours alone.")
	case w.Crew == 2 && w.load.heft > thirdHand:
		return say("Find a third person: two carry %v, one skims and keeps the way clear.", w.load.heft)
	case w.Crew == 2:
		return say("Share the tasks between two: one leads and pours; one skims, keeps the way clear and watches for fire.")
	}
	return say("Give each of the %v people a task: lead, pour, skim, keep time, watch for fire, hold the line.", w.Crew)
}

func (w pour) leadText() working.Text {
	if w.Lead {
		return say("Let the trained person lead; anybody may call STOP.")
	}
	return say("Find a person who has led pours of this metal, and let that person lead.")
}

func (w pour) spectatorText() working.Text {
	switch {
	case !w.Spectators:
		return say("Let nobody in without a task; whoever comes stays %v back.", w.radiant.standoff)
	case w.radiant.standoff < roomy:
		return say("Hold spectators, in face shields, behind a line at %v from the ladle; at %v where there is room.", w.radiant.standoff, roomy)
	}
	return say("Hold spectators, in face shields, behind a line at %v from the ladle.", w.radiant.standoff)
}

// roomy is the distance that the trade likes for onlookers where it can.
const roomy quantity.Distance = 5

func (w pour) heatText() working.Text {
	const drink = "a cup (250 mL, 8 fl oz)"
	if !w.heat.Known() {
		return say("Drink %v every 15 to 20 minutes in the heat; borrow a heat-stress meter for a warm day.", drink)
	}
	h := w.heat.V
	if h.clothed > h.limit {
		return say("Rest in the cool in every hour and drink %v every 15 to 20 minutes: the heat is %v wet-bulb globe, %v with clothing, over this crew's %v.", drink, h.wbgt, h.clothed, h.limit)
	}
	return say("Drink %v every 15 to 20 minutes; the heat is %v wet-bulb globe, %v with clothing, within this crew's %v.", drink, h.wbgt, h.clothed, h.limit)
}
