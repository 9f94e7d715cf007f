package ladleheat

import (
	"pourwright/calc/alloy"
	"pourwright/calc/figure"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
)

var (
	stefan     = source.BIPM.Memory("Stefan-Boltzmann constant, exact since 2019")
	duhamel    = source.Carslaw.Memory("ch. II and XII: Duhamel's sum for a stirred body against a thick wall")
	definition = source.Derived("definition")
	geometry   = source.Derived("geometry")
	balance    = source.Derived("balance of heat")
	ownFigure  = source.Own("your own figure")
)

// The drop in tapping, from the furnace into the ladle.
var (
	dropFrom     = source.Practice("drop in tapping, as remembered in foundries")
	ironDrop     = diff(45, 30, 60, "iron into a preheated ladle")
	ironColdDrop = diff(100, 80, 120, "iron into a small ladle that is not hot")
	steelDrop    = diff(55, 30, 80, "steel")
	copperDrop   = diff(35, 20, 50, "bronze")
	lightDrop    = diff(17.5, 10, 25, "aluminium; zinc and tin alloys are taken like it")
	noDrop       = diff(0, 0, 0, "the metal stays in its crucible")
)

func diff(v, low, high float64, note string) figure.Of[quantity.TempDiff] {
	return figure.New[quantity.TempDiff](v, low, high, "K", dropFrom, note)
}

// redHot is what the lining should reach for iron, steel and copper alloys:
// dull red is 600 to 800 °C.
const redHot = 600

func usualDrop(a *alloy.Alloy, vessel string, preheat float64) figure.Of[quantity.TempDiff] {
	switch {
	case vessel == crucible:
		return noDrop
	case a.Family == alloy.GreyIron || a.Family == alloy.DuctileIron:
		if preheat < redHot {
			return ironColdDrop
		}
		return ironDrop
	case a.Family == alloy.Steel:
		return steelDrop
	case a.Family == alloy.Copper:
		return copperDrop
	}
	return lightDrop
}

// usualPreheat is the lining's temperature where none is stated.
func usualPreheat(a *alloy.Alloy) figure.Of[quantity.Temperature] {
	celsius := func(v, low, high float64, note string) figure.Of[quantity.Temperature] {
		return figure.New[quantity.Temperature](v, low, high, "degC", source.Practice("preheat of ladles"), note)
	}
	switch a.Family {
	case alloy.Aluminium:
		return celsius(400, 200, 500, "well over 150 to 200 °C, right through")
	case alloy.Zinc:
		return celsius(300, 200, 350, "well over 150 to 200 °C, right through")
	case alloy.Tin:
		return celsius(200, 150, 220, "over 150 to 200 °C, right through")
	}
	return celsius(800, 600, 800, "dull red is 600 to 800 °C; a flame in the ladle until just before tapping")
}

// The lining's figures are known only within a factor, and with them its
// effusivity.
const (
	liningLeast = 0.7
	liningMost  = 1.4
)

// coveredEmissivity is what a lid or a cover leaves of a top's emissivity.
var coveredEmissivity = figure.New[quantity.Ratio](0.1, 0, 0, "of 1", source.Practice("effective emissivity of a covered top"), "")

// The wall of a crucible of clay-graphite or silicon carbide.
var (
	crucibleFrom         = source.Practice("estimate for clay-graphite and silicon carbide crucibles, no source")
	crucibleConductivity = figure.New[quantity.Conductivity](20, 0, 0, "W/(m*K)", crucibleFrom, "")
	crucibleDensity      = figure.New[quantity.Density](2000, 0, 0, "kg/m^3", crucibleFrom, "")
	crucibleHeat         = figure.New[quantity.SpecificHeat](1100, 0, 0, "J/(kg*K)", crucibleFrom, "")
	crucibleEmissivity   = figure.New[quantity.Ratio](0.85, 0, 0, "of 1", crucibleFrom, "")
)

// mostTap is the hottest that any furnace of the shop is asked for.
var mostTap = quantity.From[quantity.Temperature](1800, "degC")
