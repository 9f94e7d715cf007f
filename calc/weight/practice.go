package weight

import (
	"pourwright/calc/alloy"
	"pourwright/calc/figure"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
)

var proportions = source.Practice("risers stand between half and twice as high as wide")

// gatingShare is the usual weight of cup, sprue, runners and ingates over the
// weight of the castings.
func gatingShare(f alloy.Family) figure.Of[quantity.Ratio] {
	from := source.Practice("usual weight of the gating over that of the castings")
	const note = "small castings take the upper end, heavy ones the lower"
	switch f {
	case alloy.GreyIron:
		return figure.New[quantity.Ratio](10, 5, 20, "%", from, note)
	case alloy.DuctileIron, alloy.Steel:
		return figure.New[quantity.Ratio](12, 6, 25, "%", from, note)
	case alloy.Aluminium:
		return figure.New[quantity.Ratio](20, 10, 40, "%", from, note)
	}
	return figure.New[quantity.Ratio](15, 8, 30, "%", from, note)
}

// usualYield bounds what castings over metal poured usually comes to.
var usualYield = figure.New[quantity.Ratio](60, 40, 85, "%", source.Practice("usual yield of sand castings"), "")
