package catalogue

import (
	"pourwright/calc/core"
	"pourwright/calc/feed"
	"pourwright/calc/freeze"
	"pourwright/calc/handling"
	"pourwright/calc/ladle"
	"pourwright/calc/lift"
	"pourwright/calc/lifting"
	"pourwright/calc/metal"
	"pourwright/calc/mould"
	"pourwright/calc/pattern"
	"pourwright/calc/pour"
	"pourwright/calc/sprue"
	"pourwright/calc/weight"
	"pourwright/calc/weir"
)

// all is every calculator, in the order of the work.
var all = []Calculator{
	wholePlan(),
	entry("metal", "Metal and temperature", "The metal's densities, freezing range and heat with their sources, and the temperature to pour it at.", metal.Describe),
	entry("pattern", "Pattern", "What to make the pattern or core box, size by size: machining stock, tolerance, contraction, rapping and draft.", pattern.Size),
	entry("weight", "Weight, risers and metal to melt", "What a mould takes: the casting's weight, its risers by modulus and by feed volume, the gating, and the metal to pour, to melt and to charge.", weight.Weigh),
	entry("feed", "Feeding: sections, hot spots and risers", "How the casting freezes section by section, where it is cut off from its feed, and the risers it wants by every rule side by side.", feed.Plan),
	entry("core", "Cores", "What lifts each core and what holds it, the vent its gas wants, what it weighs, and the hollows that stay closed.", core.Hold),
	entry("mould", "Mould", "The sand in cope and drag, the sand round the casting, and the head over it.", mould.Lay),
	entry("pour", "Gating and pouring time", "The metal's rules for the pouring time side by side, the window that freezing, ingates, vents and lift leave, and a time inside it.", pour.Window),
	entry("ladle", "Ladle: tilt and flow", "What the ladle holds, what is left at each tilt, how fast to tilt it, and what it weighs to carry.", ladle.Tip),
	entry("lifting", "Cold lifts", "The revised NIOSH lifting equation for moulds, ingots and flasks: cold loads only.", lifting.Limit),
	entry("handling", "Safe handling", "What to make sure of before, during and after this pour, the hold points to answer, and who decides.", handling.List),
	entry("freeze", "Freezing time of a section", "How long a section takes to freeze: Chvorinov's rule as a band from the heat of metal and sand, or with your own constant, beside the exact solutions.", freeze.Reckon),
	entry("sprue", "Sprue and gate", "How fast and how much metal runs down a sprue, how long it takes to fill through a top, parting or bottom gate, and the taper that keeps air out.", sprue.Run),
	entry("lift", "Lift on the cope", "How hard the metal pushes on each cope surface and core, and the weights that hold the cope down.", lift.Balance),
	entry("weir", "Flow over a lip", "How much runs over a spout, notch or weir under a head, or the head that a flow needs.", weir.Flow),
}
