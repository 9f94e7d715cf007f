package filling

import (
	"math"
	"sort"

	"pourwright/calc/solve"
)

// slice is a part of the cavity, m and m²; v0 is the volume below it.
type slice struct{ z0, z1, a0, a1, v0 float64 }

// area at a height, carried on a little past its ends for the stages of a step.
func (s slice) area(y float64) float64 {
	a := s.a0 + (s.a1-s.a0)*(y-s.z0)/(s.z1-s.z0)
	if least := math.Min(s.a0, s.a1) / 2; a < least {
		return least
	}
	return a
}

// volume below a height inside the slice.
func (s slice) volume(y float64) float64 {
	d := y - s.z0
	return s.v0 + d*(s.a0+(s.a1-s.a0)*d/(s.z1-s.z0)/2)
}

// gate is a level of ingates: its height, area, and C times its area.
type gate struct{ z, a, ca float64 }

// model is the mould with its way, SI.
type model struct {
	g, H   float64 // H is the level of the full basin
	slices []slice
	gates  []gate  // from the lowest up, each at its own height
	before float64 // R, the resistance before the ingates, 1/m⁴

	ladle float64 // flow of the ladle; 0 where the basin is kept full
	basin float64 // area of the basin; 0 where it follows at once
	floor float64 // level of its floor
}

func (m *model) top() float64    { return m.slices[len(m.slices)-1].z1 }
func (m *model) volume() float64 { return m.slices[len(m.slices)-1].volume(m.top()) }

// drowned are C times the area of the gates under y, or of the lowest one, and
// the level that they run against; next is the first gate above.
func (m *model) drowned(y float64) (ca, against float64, next int) {
	against = math.Max(y, m.gates[0].z)
	for next = 0; next < len(m.gates) && m.gates[next].z <= against; next++ {
		ca += m.gates[next].ca
	}
	return ca, against, next
}

// flow is what runs from the basin at b into the cavity at y, m³/s, and p the
// level that the runner stands at.
func (m *model) flow(b, y float64) (q, p float64) { return m.driven(b, y, b-y) }

// driven is flow with the head b − y given apart, so that it keeps its digits
// where the two are nearly alike.
func (m *model) driven(b, y, head float64) (q, p float64) {
	ca, against, next := m.drowned(y)
	if against > y {
		head = b - against
	}
	if head <= 0 {
		return 0, b
	}
	q = math.Sqrt(2 * m.g * head / (m.before + 1/(ca*ca)))
	p = against + q*q/(2*m.g*ca*ca)
	if next == len(m.gates) || p <= m.gates[next].z {
		return q, p
	}
	if m.before == 0 {
		return m.through(b, y), b
	}
	// More gates run than the lowest: what comes falls with p, what leaves
	// rises.
	p = solve.Root(func(p float64) float64 {
		return math.Sqrt(2*m.g*math.Max(b-p, 0)/m.before) - m.through(p, y)
	}, m.gates[next].z, math.Min(p, b), 1e-15*m.H)
	return m.through(p, y), p
}

// through is what leaves the runner standing at p through all the gates.
func (m *model) through(p, y float64) float64 {
	sum := 0.0
	for _, g := range m.gates {
		if d := p - math.Max(y, g.z); d > 0 {
			sum += g.ca * math.Sqrt(2*m.g*d)
		}
	}
	return sum
}

// stands is the level that the runner stands at while q runs into the cavity
// at y.
func (m *model) stands(q, y float64) float64 {
	ca, against, next := m.drowned(y)
	p := against + q*q/(2*m.g*ca*ca)
	if next == len(m.gates) || p <= m.gates[next].z {
		return p
	}
	return solve.Root(func(p float64) float64 { return m.through(p, y) - q }, m.gates[next].z, p, 1e-15*m.H)
}

// stops are the levels at which the equation changes its form: ends of slices
// and ingates that drown.
func (m *model) stops() []float64 {
	var out []float64
	for _, s := range m.slices {
		out = append(out, s.z1)
	}
	for _, g := range m.gates {
		if g.z > 0 && g.z < m.top() {
			out = append(out, g.z)
		}
	}
	sort.Float64s(out)
	stops := out[:1]
	for _, y := range out[1:] {
		// The same height reached along two sums is one stop.
		if y > stops[len(stops)-1]*(1+1e-12) {
			stops = append(stops, y)
		}
	}
	return stops
}

// sliceAt is the slice that begins at, or holds, a level.
func (m *model) sliceAt(y float64) slice {
	for _, s := range m.slices {
		if y < s.z1*(1-1e-12) {
			return s
		}
	}
	return m.slices[len(m.slices)-1]
}

// mode is what rules the flow.
type mode int

const (
	// full: the basin is full, the way rules.
	full mode = iota
	// part: the basin's level moves.
	part
	// byLadle: no more runs than the ladle gives.
	byLadle
)

// rules picks the mode for levels of basin and cavity.
func (m *model) rules(b, y float64) mode {
	if m.ladle == 0 {
		return full
	}
	takes := func(b float64) float64 { q, _ := m.flow(b, y); return q }
	switch {
	case m.basin == 0 && takes(m.H) > m.ladle:
		return byLadle
	case m.basin == 0:
		return full
	case b >= m.H && takes(m.H) <= m.ladle:
		return full
	case b <= m.floor && takes(m.floor) >= m.ladle:
		return byLadle
	}
	return part
}
