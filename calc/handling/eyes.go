package handling

import (
	"math"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// filters is the infrared filter for looking into a source: scale number 4-n
// up to a temperature of the source, °C.
var filters = []struct{ upTo, scale float64 }{
	{1050, 1.2}, {1070, 1.4}, {1090, 1.7}, {1110, 2}, {1140, 2.5}, {1210, 3},
	{1290, 4}, {1390, 5}, {1500, 6}, {1650, 7}, {1800, 8},
}

// filter is the row of the table that covers the metal: the n of the scale
// number 4-n, and the temperature that the row reaches to. The table ends at
// 1800 °C, above every pouring temperature that the form lets through.
func filter(pourAt quantity.Temperature, p *working.Paper) (scale quantity.Number, upTo quantity.Temperature) {
	// The rounding of °C to K and back must not push 1050 °C into the next row.
	t := math.Round(quantity.In(pourAt, "°C")*1e6) / 1e6
	row := filters[len(filters)-1]
	for _, f := range filters {
		if t <= f.upTo {
			row = f
			break
		}
	}
	from := source.EN171.Memory("annex, scale numbers by source temperature")
	p.Lookup("T_t", "top of the row", row.upTo, "degC", from, "")
	upTo = celsius(p.Step("T_f", "filter good up to", row.upTo, "degC", "T_t", from))
	p.Lookup("n_t", "infrared filter in the table", row.scale, "1", from, "sources up to "+quantity.FormatIn(upTo, "°C"))
	return quantity.Number(p.Step("n_f", "infrared filter, scale number 4-", row.scale, "1", "n_t", from)), upTo
}
