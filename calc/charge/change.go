package charge

import (
	"pourwright/calc/figure"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
)

// change is what melting does to an element: a share of it lost or gained, and
// a pick-up as a share of the melt.
type change struct {
	element Element
	gain    figure.Of[quantity.Ratio]
	pickUp  figure.Of[quantity.Ratio]
}

var (
	cupolaSeen = source.Practice("usual change in a cupola, seen in a course text on charge calculations")
	furnaceWay = source.Practice("usual change in the furnace, recalled")
	noChange   = figure.New[quantity.Ratio](0, 0, 0, "%", source.Practice("no change in melting"), "")
)

func gains(e Element, v, low, high float64, from source.Ref) change {
	return change{e, figure.New[quantity.Ratio](v, low, high, "%", from, ""), noChange}
}

func picksUp(e Element, v, low, high float64, from source.Ref) change {
	return change{e, noChange, figure.New[quantity.Ratio](v, low, high, "%", from, "")}
}

// usualChanges are those of a furnace. They swing with coke, slag, lining and
// holding time; the shop's own, from its own analyses, go before them.
var usualChanges = map[string][]change{
	"none": nil,
	"cupola": {
		picksUp("C", 0.15, 0.1, 0.3, cupolaSeen), gains("Si", -10, -15, -10, cupolaSeen),
		gains("Mn", -20, -25, -15, cupolaSeen), picksUp("S", 0.04, 0.03, 0.05, cupolaSeen),
	},
	"induction": {
		picksUp("C", -0.05, -0.1, -0.02, furnaceWay), picksUp("Si", 0.1, 0.05, 0.15, furnaceWay), picksUp("Mn", -0.05, 0, 0, furnaceWay),
	},
	"crucible": {
		gains("C", -2.5, -5, 0, furnaceWay), gains("Si", -2.5, -5, 0, furnaceWay),
	},
}
