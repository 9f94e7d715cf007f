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

// span is how long the chart runs: past the last mould, and past the time that
// the metal stays hot enough, if that is not far off.
func (j *job) span() float64 {
	span := math.Max(1.2*j.finish(), 300)
	if j.out.Holds.Known() {
		span = math.Max(span, math.Min(1.2*float64(j.out.Holds.V), 4*span))
	}
	return span
}

// edges are the window's two lines.
func (j *job) edges(span float64) []working.Series {
	high, low := curve("Hottest to pour"), curve("Coldest to pour")
	for _, t := range []float64{0, span} {
		high.Points = append(high.Points, working.Point{X: t, Y: j.out.High.SI()})
		low.Points = append(low.Points, working.Point{X: t, Y: j.out.Low.SI()})
	}
	return []working.Series{high, low}
}
