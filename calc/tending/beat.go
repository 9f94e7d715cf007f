package tending

import (
	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// quickest is the shortest mean time between two beats that a pourer can
// follow: a hundred to the minute. Common practice, no source.
const quickest = 0.6

// tip draws the tilt against the time since the flow began, and lays the beats
// on it: one at the beginning, and one each time that the ladle should have
// been tipped on by the same few degrees.
func (m *Poured) tip(points []Tilt) {
	m.Tilt = series("Tilt", "Tilt of the ladle", quantity.Angle(0).Kind())
	m.Beats = series("Beats", "Tilt of the ladle", quantity.Angle(0).Kind())
	if len(points) < 2 {
		return
	}
	for _, s := range points {
		m.Tilt.Points = append(m.Tilt.Points, working.Point{X: float64(s.At.V), Y: float64(s.Tilt.V)})
	}
	first, last := m.Tilt.Points[0], m.Tilt.Points[len(points)-1]
	if !(last.Y > first.Y) {
		return
	}
	step := quantity.Angle(0)
	for _, degrees := range []float64{1, 2, 3, 5, 10, 15, 30, 45, 90} {
		step = quantity.From[quantity.Angle](degrees, "deg")
		if (last.X-first.X)*float64(step)/(last.Y-first.Y) >= quickest {
			break
		}
	}
	m.Beat = quantity.Some(step)
	m.Beats.Points = append(m.Beats.Points, first)
	want := first.Y + float64(step)
	for i := 1; i < len(points); i++ {
		a, b := m.Tilt.Points[i-1], m.Tilt.Points[i]
		for want <= b.Y {
			m.Beats.Points = append(m.Beats.Points, working.Point{X: between(want, a.Y, b.Y, a.X, b.X), Y: want})
			want += float64(step)
		}
	}
}
