package catalogue

import (
	"pourwright/calc/charge"
	"pourwright/calc/cooling"
	"pourwright/calc/core"
	"pourwright/calc/feed"
	"pourwright/calc/filling"
	"pourwright/calc/freeze"
	"pourwright/calc/gating"
	"pourwright/calc/handling"
	"pourwright/calc/holddown"
	"pourwright/calc/iron"
	"pourwright/calc/ladle"
	"pourwright/calc/ladleheat"
	"pourwright/calc/lift"
	"pourwright/calc/lifting"
	"pourwright/calc/melting"
	"pourwright/calc/metal"
	"pourwright/calc/mould"
	"pourwright/calc/order"
	"pourwright/calc/pattern"
	"pourwright/calc/pour"
	"pourwright/calc/rule"
	"pourwright/calc/shop"
	"pourwright/calc/sprue"
	"pourwright/calc/tending"
	"pourwright/calc/weight"
	"pourwright/calc/weir"
)

// all is every calculator, in the order of the work.
var all = []Calculator{
	wholePlan(),
	planSpread(),
	furnaceSide(),
	entry("metal", "Metal and temperature", "The metal's densities, freezing range and heat with their sources, and the temperature to pour it at.", metal.Describe),
	entry("pattern", "Pattern", "What to make the pattern or core box, size by size: machining stock, tolerance, contraction, rapping and draft.", pattern.Size),
	entry("rule", "Contraction rule", "A rule longer than true by what the metal contracts, set out for paper: every line, the strips to join, and a check length to measure the print by.", rule.Set),
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
	entry("charge", "Charge: least-cost blend", "What to charge of the stock there is so that the melt keeps its limits at the least cost, what stands in the way where it cannot, and what to add to the melt.", charge.Blend),
	entry("ladleheat", "Ladle: heat lost", "How the metal cools in its ladle or crucible, how long it stays fit to pour, and how hot to tap it for the last mould.", ladleheat.Lose),
	entry("order", "Order of pouring", "In which order to pour several moulds from one ladle, each inside its own temperatures, and when it takes a reheat or a second ladle.", order.Find),
	entry("cooling", "Cooling and shakeout", "How long the casting freezes and cools in the sand, when it may be shaken out, and what opening the mould early does.", cooling.Shakeout),
	entry("shop", "How many to pour", "How many moulds to pour for enough good castings at your scrap rate, the metal and sand for them, and what a good casting costs.", shop.Plan),
	entry("iron", "Grey iron from its analysis", "Carbon equivalent, liquidus, manganese for the sulphur, fluidity, strength by wall and chill of a grey iron, by the trade's formulas side by side.", iron.Assess),
	entry("melting", "Heat, fuel and time to melt", "The heat that a charge takes, the energy or fuel that the furnace wants for it, and how long it takes at a given power.", melting.Heat),
	entry("gating", "Gating: basin, sprue, well, runners, ingates", "The way of the metal for the flow you want: every section by the ratio, the losses on the way, and how fast the metal is in each.", gating.Size),
	entry("filling", "The filling, second by second", "How the level, the flow, the rise, the speed at the ingates and the lift go while the mould fills, and whether the ladle keeps the basin full.", filling.Fill),
	entry("holddown", "Holding the cope down", "The lift and where it acts, the weights and clamps that keep every corner shut, the push on the side of the mould, the box, and the sand and binder in it.", holddown.Hold),
	entry("tending", "The pour as it runs", "From what has happened so far: the metal now, how long each mould can still be poured, how its time stands, what to do next.", tending.Tend),
}
