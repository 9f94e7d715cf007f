package handling

import (
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// pouring are the items on the lift, the way and the stream.
func (w pour) pouring() []Item {
	out := []Item{
		{Code: "stop-signs", Group: Pouring, Risk: Life,
			Text:   say("Stop for a boiling sprue, a run-out, a crack, an alarm or a blocked way, and set down on dry sand."),
			Why:    say("A spoilt casting is the cheapest way out."),
			Source: source.Practice("signs to stop at")},
		{Code: "ladle-mass", Group: Pouring, Risk: Injury, Hold: true, Text: w.massText(), Law: local,
			Why:    say("Shell and lining are often as heavy as the metal, and they are carried too."),
			Source: source.Practice("shank for two over 10 kg, hoist over 25 kg for a pair")},
		{Code: "ladle-full", Group: Pouring, Risk: Injury,
			Text:   say("Leave the top tenth of the ladle empty, and 50 mm (2 in) at least."),
			Why:    say("A full ladle slops at the first step."),
			Source: source.Practice("freeboard of ladles")},
		{Code: "pour-low", Group: Pouring, Risk: Injury, Text: w.lowText(),
			Why:    say("The further metal falls, the further it splashes."),
			Source: source.Practice("short fall, short way")},
		{Code: "stand-clear", Group: Pouring, Risk: Injury,
			Text:   say("Keep faces and feet out of line with sprue, vents and parting."),
			Why:    say("Those are the three places where metal comes out."),
			Source: source.Practice("where to stand")},
		{Code: "run-out", Group: Pouring, Risk: Injury,
			Text:   say("Bank a run-out with dry sand from a shovel, never with hand or foot."),
			Why:    say("Metal fills a boot before it can be kicked off."),
			Source: source.Practice("run-outs")},
	}
	if w.load.heft > handPair || w.Hoist {
		out = append(out, Item{Code: "hoist", Group: Pouring, Risk: Injury, Hold: true, Law: federal,
			Text:   say("Look over hoist, hook latch, bail and trunnions before this pour, and lift over nobody."),
			Why:    say("The whole %v hangs on the weakest of them.", w.load.heft),
			Source: source.OSHA.Memory("1910.179 and 1910.184")})
	}
	return out
}

func (w pour) massText() working.Text {
	m := w.load.heft
	switch {
	case w.Hoist && w.load.weighed:
		return say("See that the hoist or trolley is made for %v and more.", m)
	case w.Hoist:
		return say("Weigh the lined ladle, add the %v of metal, and see that the hoist or trolley is made for it.", m)
	case m > handPair && w.load.weighed:
		return say("Move the %v ladle by hoist, gantry or trolley, not by hand.", m)
	case m > handPair:
		return say("Weigh the lined ladle; with %v of metal it goes by hoist, gantry or trolley.", m)
	case !w.load.weighed:
		return say("Weigh the lined ladle and add the %v of metal; over %v together use a shank for two, over %v a hoist.", m, onePerson, handPair)
	case m > onePerson:
		return say("Carry the %v ladle on a shank for two, %v each.", m, w.load.each.V)
	}
	return say("Carry the %v ladle with tongs or a shank that fit it, and a second person beside you.", m)
}

func (w pour) lowText() working.Text {
	switch {
	case !w.LipHeight.Known():
		return say("Bring the lip as low over the mould as it goes, and take the shortest way.")
	case w.LipHeight.V > highLip:
		return say("Lower the mould: the lip is %v above the floor and should be under %v.", w.LipHeight.V, highLip)
	}
	return say("Keep the lip, %v above the floor, as low over the mould as it goes.", w.LipHeight.V)
}
