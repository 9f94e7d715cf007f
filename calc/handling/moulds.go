package handling

import (
	"strings"

	"pourwright/calc/mouldstuff"
	"pourwright/calc/source"
)

// mouldItems are the items on mould, cores, binders and what stays of the
// pattern.
func (w pour) mouldItems() []Item {
	out := []Item{
		{Code: "mould-held", Group: Before, Risk: Injury, Hold: true,
			Text:   say("Weight or clamp the mould before the lift; take nothing off until the metal is solid."),
			Why:    say("The metal lifts the cope and runs out at the parting."),
			Source: source.HSE.Seen("moulds made so that they neither throw metal out nor leak")},
		{Code: "vents", Group: Before, Risk: Injury,
			Text:   say("Open every vent of the mould and look through it."),
			Why:    say("Gas that finds no way out comes back through the metal."),
			Source: source.Practice("vented moulds")},
	}
	if w.Cores {
		out = append(out, Item{Code: "core-vents", Group: Before, Risk: Injury, Hold: true,
			Text:   say("Lead the gas of every core out through its print, and keep metal from running into the vent."),
			Why:    say("A core shut in blows."),
			Source: source.Practice("each core vented through its print")})
	}
	out = append(out, w.binderItems()...)
	if fumes := w.fumes(); len(fumes) > 0 {
		names := make([]string, len(fumes))
		for i, f := range fumes {
			names[i] = string(f)
		}
		text := say("Keep the extraction on until the moulds have stopped smoking.")
		if w.Place == outdoors {
			text = say("Keep away from the moulds until they have stopped smoking.")
		}
		out = append(out, Item{Code: "mould-smoke", Group: After, Risk: Health, Text: text, Law: local,
			Why:    say("Mould and cores can give off %v.", strings.Join(names, ", ")),
			Source: w.fumeSource()})
	}
	if w.gives(mouldstuff.CarbonMonoxide) || w.burnsOut() {
		out = append(out, Item{Code: "mould-gas", Group: Pouring, Risk: Injury,
			Text:   say("Light the gas at the vents as the mould fills, and keep faces away."),
			Why:    say("Gas that gathers goes off all at once."),
			Source: source.Practice("gas lit at the vents")})
	}
	switch w.Left.V {
	case foam:
		out = append(out, Item{Code: "foam", Group: Pouring, Risk: Life, Law: local,
			Text:   say("Pour foam only outdoors or under extraction, without a break; expect flame and soot at the sprue."),
			Why:    say("It burns to styrene, benzene and carbon monoxide, and a stopped stream lets the gas blow back."),
			Source: source.NIOSHFoundry.Memory("burnt foam")})
	case wax:
		out = append(out, Item{Code: "wax", Group: Before, Risk: Life, Hold: true, Law: local,
			Text:   say("Melt and burn all the wax out first, outdoors or under extraction."),
			Why:    say("Wax left in the mould boils under the metal and burns at the sprue."),
			Source: source.NIOSHFoundry.Memory("burnt wax")})
	}
	return out
}

func (w pour) fumeSource() source.Ref {
	for _, b := range append(w.binders[:len(w.binders):len(w.binders)], w.cores...) {
		if len(b.Fumes) > 0 {
			return b.FumeSource
		}
	}
	return source.Practice("burnt binder")
}

// binderItems are those on mixing and hardening, one a binder.
func (w pour) binderItems() []Item {
	var out []Item
	add := func(code, text, why string, from source.Ref, binders ...mouldstuff.Binder) {
		if w.has(binders...) {
			out = append(out, Item{Code: code, Group: Before, Risk: Health, Text: say("%v", text), Why: say("%v", why), Source: from, Law: local})
		}
	}
	add("binder-furan", "Mix furan sand in moving air, in goggles; never put acid straight into resin.",
		"Acid and resin together boil over; the fume is furfuryl alcohol and formaldehyde.",
		source.NIOSHFoundry.Memory("furan binders"), mouldstuff.Furan)
	add("binder-urethane", "Keep urethane resin off the skin and its vapour out of the lungs; whoever wheezes stops for good.",
		"Isocyanate sensitises: later a trace is enough.",
		source.NIOSHFoundry.Memory("phenolic urethane binders"), mouldstuff.PhenolicUrethane)
	add("binder-phenolic", "Wear goggles and gloves with alkaline phenolic resin, and mix it in moving air.",
		"It burns like lye and gives off phenol and formaldehyde.",
		source.NIOSHFoundry.Memory("phenolic binders"), mouldstuff.AlkalinePhenolic)
	add("binder-silicate", "Wear goggles with water glass; gas with carbon dioxide in moving air, never in a pit.",
		"Water glass is a strong alkali; carbon dioxide gathers low and stifles.",
		source.NIOSHFoundry.Memory("silicate binders"), mouldstuff.SilicateCO2, mouldstuff.SilicateEster)
	add("binder-oil", "Bake oil sand under extraction, in an oven that cannot overheat.",
		"The smoke has acrolein in it and stings the eyes.",
		source.Practice("smoke of drying oils"), mouldstuff.Oil)
	return out
}
