package tending

import "pourwright/calc/source"

const local = "The person in charge and your local code go before this card."

const inDoubt = "In doubt: call STOP, bring the ladle upright, set it down on dry sand."

// cards say what to do when something goes wrong, the commonest first. They
// remind; they cannot see the shop.
func cards() []Card {
	return []Card{
		{Code: "stop", Title: "Signal: STOP", Law: local,
			Steps: []string{
				"Anybody may give it. Shout STOP; hold both arms out level, palms down, and swing them.",
				"Pourer: bring the ladle upright smoothly, and stay where you are.",
				"When the way is clear, set down on dry sand.",
				"Nobody begins again until the person in charge says so.",
			},
			Source: source.OSHABuild.Memory("subpart CC, appendix A: emergency stop; agree on it at the dry run")},
		{Code: "ran-short", Title: "Ran short", Law: local,
			Steps: []string{
				"Pour what runs clean; do not scrape slag after it.",
				"Once the stream has broken, leave the mould. New metal does not join old, and may be thrown back.",
				"Pig what is left. Keep away from the open sprue.",
				"Mark the mould as short, and leave it shut until its shakeout time.",
			},
			Source: source.Practice("a mould that is short of metal")},
		{Code: "run-out", Title: "Run-out at the joint", Law: local,
			Steps: []string{
				"Call STOP. Stop pouring; take the ladle back over dry sand.",
				"All away from the joint. Watch your feet and your way out.",
				"Bank it with dry sand from a shovel, if the way back is free. Never with hand or foot, never with water.",
				"Do not pour this mould again. Take no weight off it until it is solid.",
			},
			Source: source.Practice("run-outs")},
		{Code: "boil", Title: "Boil in the mould", Law: local,
			Steps: []string{
				"Call STOP and stop pouring at once. Turn your face away and step back.",
				"Set the ladle down on dry sand, well away.",
				"Keep everybody away until the mould is still.",
				"Do not pour it again. Look for damp and for shut vents before the next mould.",
			},
			Source: source.HSE.Seen("water under molten metal can explode")},
		{Code: "cold-metal", Title: "Cold metal", Law: local,
			Steps: []string{
				"Do not pour it into a mould that wants it hotter.",
				"Pour it into hot, dry pig moulds while it still runs. Do not let it set in the ladle.",
				"Back into the furnace only if there is room, nothing is damp, and the person in charge says so.",
				"Write the reading down; read the furnace before you tap again.",
			},
			Source: source.Practice("metal too cold to pour")},
		{Code: "slag", Title: "Slag is coming", Law: local,
			Steps: []string{
				"Hold it back with a hot, dry skimmer.",
				"Keep the basin full: slag floats while it is, and goes down when it is not.",
				"If some went down, finish the mould without a break, and mark it.",
				"Skim before the next mould.",
			},
			Source: source.Practice("slag is held back and floated off")},
		{Code: "fire", Title: "Fire", Law: local,
			Steps: []string{
				"Call STOP. Set the ladle down on dry sand if you can; all others out.",
				"Burning metal: dry sand or Class D powder. No water on metal.",
				"What burns round it: the ABC extinguisher, with a way out behind you.",
				"Not out at once: leave, shut off the fuel if it is on the way, call the fire service.",
			},
			Source: source.OSHA.Memory("1910.157")},
		{Code: "burn", Title: "Somebody is burnt", Law: local,
			Steps: []string{
				"Call STOP. Bring the ladle to rest before you help.",
				"Cool the burn under cool running water for 20 minutes.",
				"Take off rings and loose clothing; leave what sticks. Cover with film. No ice, no cream.",
				"Large, or on face, hands or airway: call the emergency number.",
			},
			Source: source.BurnAid.Seen("cooling, dressing and when to call")},
	}
}
