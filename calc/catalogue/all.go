package catalogue

import (
	"pourwright/calc/freeze"
	"pourwright/calc/handling"
	"pourwright/calc/pattern"
	"pourwright/calc/weight"
)

// all is every calculator, in the order of the work.
var all = []Calculator{
	entry("pattern", "Pattern", "What to make the pattern or core box, size by size: machining stock, tolerance, contraction, rapping and draft.", pattern.Size),
	entry("weight", "Weight, risers and metal to melt", "What a mould takes: the casting's weight, its risers by modulus and by feed volume, the gating, and the metal to pour, to melt and to charge.", weight.Weigh),
	entry("handling", "Safe handling", "What to make sure of before, during and after this pour, the hold points to answer, and who decides.", handling.List),
	entry("freeze", "Freezing time of a section", "How long a section takes to freeze: Chvorinov's rule as a band from the heat of metal and sand, or with your own constant, beside the exact solutions.", freeze.Reckon),
}
