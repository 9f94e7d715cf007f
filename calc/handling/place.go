package handling

import (
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// placeItems are the items on the place, the floor, the air and the fuel.
func (w pour) placeItems() []Item {
	out := []Item{
		{Code: "crucible", Group: Before, Risk: Life, Hold: true,
			Text:   say("Look crucible and ladle over for cracks, thin places and loose lining; break up a cracked one."),
			Why:    say("One that lets go empties itself over whoever carries it."),
			Source: source.HSE.Seen("regular inspection of furnaces and ladles")},
		{Code: "metal-fire", Group: Before, Risk: Life, Hold: true, Law: local,
			Text:   say("Keep dry sand or Class D powder for metal and ABC extinguishers for what stands round it; no water on metal."),
			Why:    say("Water on a metal fire makes steam and hydrogen."),
			Source: source.OSHA.Memory("1910.157")},
		{Code: "chlorine", Group: Before, Risk: Life,
			Text:   say("Keep chlorinated cleaners, and parts washed in them, out of the shop."),
			Why:    say("At a flame their vapour turns to phosgene."),
			Source: source.OSHA.Memory("1910.1000 table Z-1, phosgene 0.1 ppm"), Law: federal},
		{Code: "floor", Group: Before, Risk: Injury, Hold: true, Text: w.floorText(),
			Why:    w.floorWhy(),
			Source: source.Practice("a bed of dry sand under everything hot")},
		{Code: "path", Group: Before, Risk: Injury, Hold: true,
			Text:   say("Clear a dry, level way from furnace to mould, and two ways out."),
			Why:    say("Nobody can look at the floor while carrying metal."),
			Source: source.HSE.Seen("level floors, clear passages")},
		{Code: "spill-sand", Group: Before, Risk: Injury,
			Text:   say("Keep %v of dry sand and a dry shovel beside the pour.", w.load.spillSand),
			Why:    say("That covers all the metal and half as much again."),
			Source: source.Practice("half as much again as could spill")},
		w.fuel(),
		{Code: "furnace-watch", Group: Furnace, Risk: Life,
			Text:   say("Never leave a lit furnace."),
			Why:    say("Flame failure, a boil-over and a cracked crucible give no warning."),
			Source: source.Practice("somebody always stands by the furnace")},
		{Code: "shut-down", Group: After, Risk: Life, Law: local,
			Text:   w.shutText(),
			Why:    say("Most fires show when everybody has gone."),
			Source: source.Practice("a fire watch of an hour")},
	}
	if w.Place == indoors {
		text := say("Run the extraction before the furnace is lit; hang a carbon monoxide alarm that reads low levels.")
		if !w.Extraction {
			text = say("Fit extraction over furnace and mould, and a carbon monoxide alarm that reads low levels.")
		}
		out = append(out, Item{Code: "air-indoors", Group: Before, Risk: Life, Hold: true, Text: text, Law: federal,
			Why:    say("Flames, moulds and hot linings all give carbon monoxide; the limit is 50 ppm over eight hours."),
			Source: source.OSHA.Memory("1910.1000 table Z-1")})
	} else {
		out = append(out, Item{Code: "upwind", Group: Pouring, Risk: Health,
			Text:   say("Stand upwind of furnace and mould, and keep spectators there too."),
			Why:    say("Open air thins fume only where it is not blown at you."),
			Source: source.Practice("work upwind")})
	}
	return out
}

func (w pour) floorText() working.Text {
	const cover = "50 to 75 mm (2 to 3 in)"
	switch w.Floor {
	case concrete:
		return say("Cover the concrete under furnace, way and mould with %v of dry sand; more is better.", cover)
	case steel:
		return say("Lay dry sand over the plates, and look that no water stands on or under them.")
	case earth:
		return say("Lay %v of dry sand over the earth.", cover)
	case wood:
		return say("Move the pour off the wood, to a bed of dry sand.")
	}
	return say("Turn the sand bed over; it must be dry to its full depth.")
}

func (w pour) floorWhy() working.Text {
	switch w.Floor {
	case concrete:
		return say("Concrete holds water and bursts under hot metal.")
	case steel:
		return say("Metal runs far on plate, and plate hides water.")
	case earth:
		return say("Earth is damp under a dry crust.")
	case wood:
		return say("A floor that burns cannot catch a spill.")
	}
	return say("Sand catches a spill only while it is dry.")
}

// fuel is the item on the furnace's own supply.
func (w pour) fuel() Item {
	i := Item{Code: "fuel", Group: Before, Risk: Life, Hold: true, Law: local, Source: source.NFPA.Memory("fuel supply and lighting")}
	switch w.Melt {
	case propane:
		i.Text = say("Stand the cylinder upright, chained and away from the heat; soap every joint; show all which valve shuts it.")
		i.Why = say("Propane runs along the floor and lights far from the leak.")
	case oil:
		i.Text = say("Look tank, line and burner over for drips; let a hot furnace air out before you light it again.")
		i.Why = say("Oil on hot brick makes vapour that goes off at the next flame.")
	case electric:
		i.Text = say("Look over lining, earth and isolator; switch off before a tool goes into the metal.")
		i.Why = say("The tool joins the metal to your hands.")
	default:
		i.Text = say("Keep people out of the stack gas; keep the sand under tap hole and drop dry.")
		i.Why = say("Carbon monoxide is the main hazard at a coke furnace.")
		i.Source = source.NIOSHControl.Seen("melting")
	}
	return i
}

func (w pour) shutText() working.Text {
	switch w.Melt {
	case propane:
		return say("Shut the gas at the cylinder, then keep a fire watch for an hour.")
	case oil:
		return say("Shut the oil at the tank, then keep a fire watch for an hour.")
	case electric:
		return say("Isolate the furnace, then keep a fire watch for an hour.")
	}
	return say("Drop or drown in dry sand what still burns, then keep a fire watch for an hour.")
}
