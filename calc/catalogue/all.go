package catalogue

import (
	"pourwright/calc/freeze"
	"pourwright/calc/pattern"
)

// all is every calculator, in the order of the work.
var all = []Calculator{
	entry("pattern", "Pattern", "What to make the pattern or core box, size by size: machining stock, tolerance, contraction, rapping and draft.", pattern.Size),
	entry("freeze", "Freezing time of a section", "How long a section takes to freeze: Chvorinov's rule as a band from the heat of metal and sand, or with your own constant, beside the exact solutions.", freeze.Reckon),
}
