package handling

import "pourwright/calc/source"

// after are the items on shakeout and cleaning.
func (w pour) after() []Item {
	out := []Item{
		{Code: "shakeout", Group: After, Risk: Injury,
			Text:   say("Leave the mould shut until its shakeout time."),
			Why:    say("The last metal to freeze sits in the middle and in the risers."),
			Source: source.Practice("shakeout by time, not by patience")},
		{Code: "silica", Group: After, Risk: Health, Law: federal,
			Text:   say("Shake out and sweep without raising dust: extraction or a vacuum with a fine filter, and a fitted P100 mask."),
			Why:    say("Quartz dust scars the lungs; the limit is 0.05 mg/m³, and bronze foundries have been found over it."),
			Source: source.NIOSHHHE.Seen("silica in a bronze foundry")},
	}
	if w.Cleaning {
		out = append(out, Item{Code: "noise", Group: After, Risk: Health, Law: federal,
			Text:   say("Wear ear and eye protection to fettle, and change hands and tasks often."),
			Why:    say("From 85 dBA on, hearing goes; grinders and chisels shake the fingers numb."),
			Source: source.OSHA.Memory("1910.95")})
	}
	return out
}

// firstAid are the items to read before they are needed.
func (w pour) firstAid() []Item {
	out := []Item{
		{Code: "burn-water", Group: FirstAid, Risk: Life, Law: local,
			Text:   say("Cool a burn under cool running water for 20 minutes, at once or within 3 hours."),
			Why:    say("Older advice says 10 minutes; longer is better. Have the tap or a full barrel ready before the pour."),
			Source: source.BurnAid.Seen("cooling")},
		{Code: "burn-cover", Group: FirstAid, Risk: Life, Law: local,
			Text:   say("Take off rings and loose clothing, leave metal and cloth that stick, cover with film, keep the person warm; no ice, no cream."),
			Why:    say("Pulling takes the skin with it."),
			Source: source.BurnAid.Seen("dressing")},
		{Code: "call", Group: FirstAid, Risk: Life, Law: local,
			Text:   say("Call the emergency number for a large burn, or one on face, hands or airway; hang number and address by the door."),
			Why:    say("A burn looks smaller at first than it is."),
			Source: source.BurnAid.Seen("when to call")},
		{Code: "gassed", Group: FirstAid, Risk: Life, Law: local,
			Text:   say("Headache, giddiness or nausea: all out into the air, count heads, call for help."),
			Why:    say("Carbon monoxide fells the helper who goes back in."),
			Source: source.Practice("carbon monoxide")},
		{Code: "heat-ill", Group: FirstAid, Risk: Life, Law: local,
			Text:   say("Confusion or collapse in the heat: call for help and cool the person with water at once."),
			Why:    say("Heat stroke can kill before help comes."),
			Source: source.NIOSHHeat.Memory("heat stroke")},
	}
	if w.metals.zinc.Known() || w.Charge == coated || w.Charge == unknown {
		out = append(out, Item{Code: "fume-fever", Group: FirstAid, Risk: Health, Law: local,
			Text:   say("Chills or fever 2 to 12 hours after zinc fume: rest in clean air, and tell a doctor that it was zinc."),
			Why:    say("It feels like influenza and mostly passes; trouble with breathing does not wait."),
			Source: source.NIOSHZinc.Seen("metal fume fever")})
	}
	return out
}
