package ladleheat

import (
	"math"

	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// chartPoints is how many steps a curve has.
const chartPoints = 40

func curve(label string) working.Series {
	return working.Series{
		Label: label,
		X:     working.Axis{Label: "Time from the ladle filled", Kind: quantity.Time(0).Kind()},
		Y:     working.Axis{Label: "Temperature of the metal", Kind: quantity.Temperature(0).Kind()},
	}
}

// span is how long the chart of a standing ladle runs: past the last mould, and
// past the time that the metal stays hot enough, if that is not far off.
func (j *job) span() float64 {
	span := math.Max(1.2*j.finish(), 300)
	if j.out.Holds.Known() {
		span = math.Max(span, math.Min(1.2*float64(j.out.Holds.V), 4*span))
	}
	return span
}

// bands are the window of temperature and, where it is known, the time in
// which the moulds are poured.
func (j *job) bands() []working.Band {
	bands := []working.Band{{Label: "Fit to pour", Upright: true, Low: j.out.Low.SI(), High: j.out.High.SI()}}
	if j.in.Pouring.Known() && j.finish() > float64(j.in.Transfer.V) {
		bands = append(bands, working.Band{Label: "Pouring", Low: float64(j.in.Transfer.V), High: j.finish()})
	}
	return bands
}
