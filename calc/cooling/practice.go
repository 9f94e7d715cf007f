package cooling

import (
	"pourwright/calc/alloy"
	"pourwright/calc/figure"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
)

// habit is at what temperature a family of metals is shaken out.
type habit struct {
	// most is the most that is usual, sure what serves nearly always; both for
	// simple castings and for those prone to stress.
	most, sure           float64
	proneMost, proneSure float64
	note                 string
}

// habits are common practice without a source. For zinc and tin alloys no
// usual figure is known.
var habits = map[alloy.Family]habit{
	alloy.GreyIron:    {700, 650, 500, 400, "irons below 650 to 700 °C, prone to stress below 500 to 550 °C or even 300 to 400 °C"},
	alloy.DuctileIron: {700, 650, 500, 400, "irons below 650 to 700 °C, prone to stress below 500 to 550 °C or even 300 to 400 °C"},
	alloy.Steel:       {500, 400, 400, 400, "steel below 400 to 500 °C, the lower end where prone to stress"},
	alloy.Copper:      {500, 400, 400, 400, "copper alloys below 400 to 500 °C, the lower end where prone to stress"},
	alloy.Aluminium:   {300, 250, 250, 250, "aluminium below 250 to 300 °C, the lower end where prone to stress"},
}

func (h habit) temperatures(prone bool) (most, sure figure.Of[quantity.Temperature]) {
	from := source.Practice("shakeout temperature: " + h.note)
	celsius := func(v float64) figure.Of[quantity.Temperature] {
		return figure.New[quantity.Temperature](v, 0, 0, "degC", from, "")
	}
	if prone {
		return celsius(h.proneMost), celsius(h.proneSure)
	}
	return celsius(h.most), celsius(h.sure)
}

// ferrous says that the metal changes near 730 °C.
func ferrous(f alloy.Family) bool {
	return f == alloy.GreyIron || f == alloy.DuctileIron || f == alloy.Steel
}

// The change of austenite to ferrite and carbide or graphite on cooling. The
// heat is shared out over a little band, since it does not come off at once.
const (
	changeAt    = 730.0 // °C
	changeUpper = 750.0
	changeLower = 710.0
)

var changeHeat = figure.New[quantity.SpecificEnergy](85, 80, 90, "kJ/kg",
	source.Practice("heat of the change near 730 °C in iron and steel, 80 to 90 kJ/kg as remembered"), "")
