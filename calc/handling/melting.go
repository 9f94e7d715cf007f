package handling

import (
	"pourwright/calc/alloy"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// charging are the items on what goes into the furnace.
func (w pour) charging() []Item {
	out := []Item{
		{Code: "charge-dry", Group: Charging, Risk: Life, Hold: true,
			Text:   say("Look at every piece: dry, free of rust, drained and cut open where it was closed; warm it before it goes in."),
			Why:    say("Wet scrap is the commonest cause of metal thrown from a furnace."),
			Source: source.HSE.Seen("charge materials"), Law: local},
		{Code: "scrap", Group: Charging, Risk: Life, Hold: true, Text: w.scrapText(),
			Why:    say("Beryllium, cadmium and lead poison; magnesium burns; closed vessels burst."),
			Source: source.HSE.Seen("every piece looked at")},
	}
	if w.Charge == beryllium {
		out = append(out, Item{Code: "beryllium", Group: Charging, Risk: Life, Hold: true, Law: federal,
			Text:   say("Do not melt this charge: give the beryllium copper to a works that is equipped for it."),
			Why:    say("The limit is 0.2 µg/m³ of air; the harm to the lungs does not heal."),
			Source: source.OSHA.Memory("1910.1024")})
	}
	if w.Charge == coated || w.Charge == unknown {
		out = append(out, Item{Code: "coated", Group: Charging, Risk: Health, Law: local,
			Text:   say("Strip paint, oil, plating and galvanising before the piece is charged."),
			Why:    say("They go off as zinc, cadmium and lead fume."),
			Source: source.Practice("clean scrap only")})
	}
	if w.metal.Hazards.Aluminium {
		out = append(out, Item{Code: "rust-flux", Group: Charging, Risk: Life,
			Text:   say("Keep rust, damp flux and bare rusty tools out of aluminium; coat the tools and warm the flux."),
			Why:    say("Aluminium takes the oxygen from rust with a white heat; salt flux draws water."),
			Source: source.MoltenAl.Memory("tools, rust and fluxes")})
	}
	if w.mayBurn() {
		out = append(out, Item{Code: "magnesium", Group: Furnace, Risk: Life, Law: local,
			Text:   say("Have Class D powder open beside the metal; no water, damp sand, carbon dioxide or halon on burning magnesium."),
			Why:    say("Magnesium burns on in all of them, and makes hydrogen of water."),
			Source: source.NFPA.Memory("484")})
	}
	return out
}

// mayBurn is a melt that is treated with magnesium or may hold it by mistake.
func (w pour) mayBurn() bool {
	return w.metal.Hazards.Magnesium || w.metal.Hazards.Aluminium && w.Charge == unknown
}

func (w pour) scrapText() working.Text {
	switch w.Charge {
	case unknown, beryllium:
		return say("Take out every piece that nobody can name; have the rest tested before it is melted.")
	case coated:
		return say("Sort the scrap piece by piece; leave out whatever still carries a coat.")
	}
	return say("Charge only what you can name.")
}

// furnace are the items on the melt itself.
func (w pour) furnace() []Item {
	out := []Item{{Code: "eyes", Group: Furnace, Risk: Injury, Law: local,
		Text:   say("Look into the metal through an infrared filter of about 4-%v, good up to %v; walk with it up.", w.filter, w.upTo),
		Why:    say("The glare harms the eye slowly; too dark a filter trips you at once. U.S. shops wear shade 1.5 to 3 to pour and 3 to 5 to peep."),
		Source: source.EN171.Memory("filters by source temperature")}}
	if w.metal.Hazards.Iron {
		out = append(out, Item{Code: "slag", Group: Furnace, Risk: Injury,
			Text:   say("Skim slag with a hot, dry bar into a dry, hot box."),
			Why:    say("Slag stays liquid under its crust and spits on damp."),
			Source: source.Practice("slag handled like metal")})
	}
	if w.metal.Hazards.Aluminium {
		out = append(out,
			Item{Code: "no-glow", Group: Furnace, Risk: Injury,
				Text:   say("Trust the pyrometer: at %v aluminium looks cold.", w.PourAt),
				Why:    say("It shows no red in daylight until far too hot."),
				Source: source.MoltenAl.Memory("invisible heat")},
			Item{Code: "degas", Group: Furnace, Risk: Health, Law: local,
				Text:   say("Degas and flux with dry agents, in moving air."),
				Why:    say("Damp gives hydrogen; chlorine tablets give hydrogen chloride."),
				Source: source.MoltenAl.Memory("fluxing and degassing")},
			Item{Code: "dross", Group: After, Risk: Injury,
				Text:   say("Spread dross to cool, and keep it dry."),
				Why:    say("Hot dross burns on by itself, and damp dross gives off hydrogen and ammonia."),
				Source: source.MoltenAl.Memory("dross")})
	}
	if w.metals.zinc.Known() {
		text := say("Keep out of the white fume: the ladle holds up to %v of zinc, which boils at %v, and you pour at %v.", w.metals.zinc.V, zincBoils, w.PourAt)
		if w.PourAt < zincBoils {
			text = say("Hold the melt well under %v, where its %v of zinc would boil.", zincBoils, w.metals.zinc.V)
		}
		out = append(out, Item{Code: "zinc", Group: Furnace, Risk: Health, Text: text, Law: federal,
			Why:    say("A gram of burnt zinc brings %v of air to the limit of 5 mg/m³; fever can follow from less.", w.metals.air.V),
			Source: source.NIOSHZinc.Seen("exposure and metal fume fever")})
	}
	if w.metals.lead.Known() {
		out = append(out, Item{Code: "lead-fume", Group: Furnace, Risk: Health, Law: federal,
			Text:   say("Keep lead out of the mouth: no food or smoke here, wash, leave the clothes; the ladle holds up to %v of it.", w.metals.lead.V),
			Why:    say("The limit is 50 µg/m³; blood tests are called for from 30 where it goes on. Dust taken home harms children."),
			Source: source.OSHA.Memory("1910.1025")})
	}
	if w.metal.Family == alloy.Tin {
		out = append(out, Item{Code: "old-pewter", Group: Charging, Risk: Health,
			Text:   say("Melt no old pewter or solder of unknown make."),
			Why:    say("Both can be rich in lead."),
			Source: source.Practice("new lead-free metal only")})
	}
	return out
}
