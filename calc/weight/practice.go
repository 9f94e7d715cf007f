package weight

import (
	"pourwright/calc/alloy"
	"pourwright/calc/figure"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
)

// The rules of risering, each with its standing.
var (
	modulusRule = source.Wlodawer.Memory("moduli of section, neck and riser as 1 : 1.1 : 1.2")
	feedRule    = source.Campbell.Memory("feed balance: efficiency × riser = shrinkage × (riser + casting)")
	proportions = source.Practice("risers stand between half and twice as high as wide")
)

// riserFactor is how much later than the section a riser is made to freeze.
func riserFactor(f alloy.Family) figure.Of[quantity.Number] {
	if f == alloy.DuctileIron {
		return figure.New[quantity.Number](1.1, 1.0, 1.2, "", source.Wlodawer.Memory("riser factor over 1.1 for ductile iron"), "irons that expand are also fed with less")
	}
	return figure.New[quantity.Number](1.2, 1.1, 1.4, "", modulusRule, "1.4 and more where a section of another thickness lies between")
}

// efficiency is the share of a riser that it can give before its pipe reaches
// the casting.
func efficiency(c Cover) figure.Of[quantity.Ratio] {
	if c == Sleeve {
		return figure.New[quantity.Ratio](33, 25, 35, "%", source.Brown.Memory("sleeved feeders"), "ask the seller of the sleeve")
	}
	return figure.New[quantity.Ratio](14, 14, 20, "%", source.Campbell.Memory("plain cylinder in sand 14 %, half ball 20 %"), "the figure of the plain cylinder also for a domed one, to be safe")
}

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
