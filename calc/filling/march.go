package filling

import (
	"math"

	"pourwright/calc/solve"
)

// state is what is carried along: s = √(H − y), the basin's level b, the
// volumes that have run in through the ingates and out of the ladle.
type state struct{ s, b, in, out float64 }

func (x state) plus(h float64, d state) state {
	return state{x.s + h*d.s, x.b + h*d.b, x.in + h*d.in, x.out + h*d.out}
}

// level is y.
func (m *model) level(x state) float64 { return m.H - x.s*x.s }

// rate is dx/dt in a slice under a mode. At s = 0 the flow goes as s, so that
// their ratio is taken just beside it.
func (m *model) rate(x state, in slice, by mode) (d state, q float64) {
	s := math.Max(math.Abs(x.s), 1e-9*math.Sqrt(m.H))
	y := m.H - s*s
	switch by {
	case full:
		q, _ = m.driven(m.H, y, s*s)
		d.out = q
	case part:
		q, _ = m.driven(x.b, y, s*s-(m.H-x.b))
		d.out, d.b = m.ladle, (m.ladle-q)/m.basin
	case byLadle:
		q = m.ladle
		d.out = m.ladle
	}
	d.in = q
	d.s = -q / (2 * s * in.area(y))
	return d, q
}

// step takes one step of Dormand and Prince's pair and gives the new state by
// the fifth order with the fourth's difference from it.
func (m *model) step(x state, h float64, in slice, by mode) (next, err state) {
	var k [7]state
	for i := range k {
		at := x
		for j := range i {
			at = at.plus(h*pairA[i][j], k[j])
		}
		k[i], _ = m.rate(at, in, by)
		if i == 6 {
			next = at
		}
	}
	for i, e := range pairE {
		err = err.plus(h*e, k[i])
	}
	return next, err
}

// pairA are the weights of the stages; the last row is the step itself. pairE
// is the fifth order less the fourth. Dormand and Prince (1980).
var (
	pairA = [7][6]float64{
		{},
		{1.0 / 5},
		{3.0 / 40, 9.0 / 40},
		{44.0 / 45, -56.0 / 15, 32.0 / 9},
		{19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729},
		{9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656},
		{35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84},
	}
	pairE = [7]float64{71.0 / 57600, 0, -71.0 / 16695, 71.0 / 1920, -17253.0 / 339200, 22.0 / 525, -1.0 / 40}
)

// run is one accepted step: its ends with the rates there.
type run struct {
	t0, t1 float64
	x0, x1 state
	d0, d1 state
	in     slice
	by     mode
	piece  int // counts the smooth pieces
}

// at interpolates inside the step by the cubic through its ends and slopes.
func (r run) at(t float64) state {
	h := r.t1 - r.t0
	if h <= 0 {
		return r.x1
	}
	u := (t - r.t0) / h
	a, b := (1+2*u)*(1-u)*(1-u), u*u*(3-2*u)
	c, e := u*(1-u)*(1-u)*h, -u*u*(1-u)*h
	mix := func(x0, x1, d0, d1 float64) float64 { return a*x0 + b*x1 + c*d0 + e*d1 }
	return state{mix(r.x0.s, r.x1.s, r.d0.s, r.d1.s), mix(r.x0.b, r.x1.b, r.d0.b, r.d1.b), mix(r.x0.in, r.x1.in, r.d0.in, r.d1.in), mix(r.x0.out, r.x1.out, r.d0.out, r.d1.out)}
}

const (
	// stepError is the most that one step may be wrong, of the whole.
	stepError = 1e-12
	// slack is by how much, of the whole, a change of mode may come late.
	slack = 1e-9
	// mostSteps bounds the march; a mould takes some tens to hundreds.
	mostSteps = 20000
)

// march fills the mould from its bottom to its top.
func (m *model) march() []run {
	var out []run
	x := state{s: math.Sqrt(m.H), b: m.H}
	t, piece := 0.0, 0
	h := math.Inf(1)
	for _, stop := range m.stops() {
		goal := math.Sqrt(math.Max(m.H-stop, 0))
		in := m.sliceAt(m.level(x))
		for x.s > goal {
			if len(out) > mostSteps {
				panic("filling: the march does not end")
			}
			by := m.rules(x.b, m.level(x))
			d, _ := m.rate(x, in, by)
			// No further than half as far again as the stop seems to be.
			h = math.Min(h, 1.5*(x.s-goal)/-d.s)
			next, err := m.step(x, h, in, by)
			wrong := m.weigh(err)
			if wrong > 1 {
				h *= math.Max(0.9*math.Pow(wrong, -0.2), 0.2)
				continue
			}
			grown := h * math.Min(0.9*math.Pow(math.Max(wrong, 1e-6), -0.2), 5)
			cut, reached, turned := m.cut(x, next, h, goal, in, by)
			if cut < h {
				next, _ = m.step(x, cut, in, by)
			} else {
				h = grown
			}
			if reached {
				next.s = goal
			}
			m.settle(&next, by, turned)
			e, _ := m.rate(next, in, by)
			out = append(out, run{t, t + cut, x, next, d, e, in, by, piece})
			t, x = t+cut, next
			if turned {
				piece++
			}
		}
		piece++
	}
	return out
}

// weigh is the error of a step over what is allowed.
func (m *model) weigh(err state) float64 {
	worst := math.Abs(err.s) / math.Sqrt(m.H)
	for _, e := range []float64{err.b / m.H, err.in / m.volume(), err.out / m.volume()} {
		worst = math.Max(worst, math.Abs(e))
	}
	return worst / stepError
}

// cut shortens a step of length h from x to next so that it ends where the
// level reaches its stop, or where the mode changes or another ingate begins
// to run, whichever is first.
func (m *model) cut(x, next state, h, goal float64, in slice, by mode) (cut float64, reached, turned bool) {
	cut = h
	find := func(passed func(state) float64) float64 {
		return solve.Root(func(h float64) float64 {
			at, _ := m.step(x, h, in, by)
			return passed(at)
		}, 0, cut, 1e-15*cut)
	}
	end := next
	shorten := func(passed func(state) float64) {
		cut = find(passed)
		end, _ = m.step(x, cut, in, by)
	}
	if next.s <= goal {
		shorten(func(at state) float64 { return goal - at.s })
		reached = true
	}
	for _, passed := range m.turns(x, by) {
		if passed(end) > 0 {
			shorten(passed)
			reached, turned = false, true
		}
	}
	return cut, reached, turned
}

// turns are the things that end a mode, each positive once it has happened.
func (m *model) turns(x state, by mode) []func(state) float64 {
	takes := func(b float64, at state) float64 { q, _ := m.flow(b, m.level(at)); return q }
	var out []func(state) float64
	switch {
	case by == full && m.ladle > 0:
		out = append(out, func(at state) float64 { return takes(m.H, at)/m.ladle - 1 - slack })
	case by == byLadle && m.basin == 0:
		out = append(out, func(at state) float64 { return 1 - slack - takes(m.H, at)/m.ladle })
	case by == byLadle:
		out = append(out, func(at state) float64 { return 1 - slack - takes(m.floor, at)/m.ladle })
	case by == part:
		out = append(out,
			func(at state) float64 { return (at.b-m.H)/m.H - slack },
			func(at state) float64 { return (m.floor-at.b)/m.H - slack })
	}
	if by == byLadle || len(m.gates) == 1 {
		return out
	}
	_, p := m.flow(m.head(x, by), m.level(x))
	for _, g := range m.gates {
		if z := g.z; z > p*(1+slack) {
			return append(out, func(at state) float64 {
				_, p := m.flow(m.head(at, by), m.level(at))
				return (p-z)/m.H - slack
			})
		}
	}
	return out
}

// head is the basin's level under a mode.
func (m *model) head(x state, by mode) float64 {
	if by == part {
		return x.b
	}
	return m.H
}

// settle puts the basin exactly where its mode has ended.
func (m *model) settle(x *state, by mode, turned bool) {
	if !turned || by != part {
		return
	}
	switch {
	case x.b > m.H:
		x.b = m.H
	case x.b < m.floor:
		x.b = m.floor
	}
}
