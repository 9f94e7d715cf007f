package ladleheat

import (
	"math"

	"pourwright/calc/soak"
	"pourwright/calc/solve"
)

// sigma is the Stefan-Boltzmann constant, W/(m²·K⁴), exact in the SI of 2019.
const sigma = 5.670374419e-8

// pot is metal in a ladle or a crucible, in SI units and kelvin.
type pot struct {
	mass, heat        float64 // kg, J/(kg·K)
	left              float64 // share of the mass left at the end
	transfer, pouring float64 // s; the mass falls evenly in the second
	radiating         float64 // ε A of the top
	ambient           float64
	side, base        float64 // wetted wall at the full mass, m²
	effusivity        float64 // of the lining; 0 for a crucible
	preheat           float64
	// A crucible keeps heat with the metal and sheds it from its outside.
	extra     float64 // J/K
	conducts  float64 // k/w of its wall, W/(m²·K); 0 for a lined ladle
	emits     float64 // emissivity of its outside
	outerSide float64 // m²
	outerBase float64
}

// standing is the same pot with nothing poured from it.
func (p pot) standing() *pot {
	p.left = 1
	return &p
}

// massAt is the mass left at a time after the ladle was filled.
func (p *pot) massAt(t float64) float64 {
	if p.left == 1 || t <= p.transfer {
		return p.mass
	}
	poured := min((t-p.transfer)/p.pouring, 1)
	return p.mass * (1 - poured*(1-p.left))
}

// course is the metal's temperature from the ladle filled, in straight runs,
// and where the heat went, J.
type course struct {
	at, temperature  []float64
	top, wall, outer float64
	held             float64 // given by what the metal lost, J
	face             soak.Face
	taken            float64 // by each area of the lining, over its effusivity
	effusivity       float64
	preheat          float64
}

// end is the temperature at the end of the course, time when that is.
func (c *course) end() float64  { return c.temperature[len(c.temperature)-1] }
func (c *course) time() float64 { return c.at[len(c.at)-1] }

// slope is how the temperature changes at the end, K/s, by the parabola through
// the last two steps.
func (c *course) slope() float64 {
	n := len(c.at) - 1
	before, last := c.at[n-1]-c.at[n-2], c.at[n]-c.at[n-1]
	earlier, later := (c.temperature[n-1]-c.temperature[n-2])/before, (c.temperature[n]-c.temperature[n-1])/last
	return later + (later-earlier)*last/(before+last)
}

// newCourse has room for the steps that most courses take.
func newCourse() *course {
	const room = steps + 2
	return &course{at: make([]float64, 0, room), temperature: make([]float64, 0, room)}
}

// fill begins the course with the ladle filled at T (K); what it was before is
// gone, its room is used again.
func (c *course) fill(p *pot, T float64) {
	*c = course{at: append(c.at[:0], 0), temperature: append(c.temperature[:0], T), face: c.face, effusivity: p.effusivity, preheat: p.preheat}
	c.face.Begin(T-p.preheat, 0)
}

// run cools the metal from T (K) until the time end in n steps, which lie close
// at first, as the lining takes its heat with a root of time, and close again
// at the end, where little metal is left. The beginning of the pour is always
// the end of a step.
func (p *pot) run(T, end float64, n int) *course {
	c := newCourse()
	c.run(p, T, end, n)
	return c
}

func (c *course) run(p *pot, T, end float64, n int) {
	c.fill(p, T)
	for i := 1; i <= n; i++ {
		share := float64(i) / float64(n)
		t := end * share * share * (3 - 2*share)
		if p.transfer > c.time()*(1+1e-9) && p.transfer < t*(1-1e-9) {
			c.add(p.step(c, p.transfer))
		}
		c.add(p.step(c, t))
	}
}

// twice is a course in the finer and in the coarser steps.
type twice struct{ fine, coarse *course }

func newTwice() twice { return twice{newCourse(), newCourse()} }

// ending runs both and is the temperature at the time t, K, by Richardson's
// extrapolation, and the difference of the two as the bound.
func (c twice) ending(p *pot, T, t float64) (end, bound float64) {
	c.coarse.run(p, T, t, steps/2)
	c.fine.run(p, T, t, steps)
	a, b := c.coarse.end(), c.fine.end()
	return b + (b-a)/3, math.Abs(b - a)
}

// part is one step of a course.
type part struct {
	t, temperature         float64
	top, wall, outer, held float64
	taken                  float64
}

func (c *course) add(s part) {
	c.at, c.temperature = append(c.at, s.t), append(c.temperature, s.temperature)
	c.top, c.wall, c.outer, c.held = c.top+s.top, c.wall+s.wall, c.outer+s.outer, c.held+s.held
	c.taken = s.taken
	if c.effusivity > 0 {
		c.face.To(s.t, s.temperature-c.preheat)
	}
}

// step goes on from the end of the course to the time t. The heat that metal
// and crucible lose is what top, lining and outside take meanwhile, with the
// temperature a straight line over the step; the one unknown, the temperature
// at its end, comes by Newton's rule on a falling function.
func (p *pot) step(c *course, t float64) part {
	t0, T0 := c.time(), c.end()
	dt := t - t0
	m0, m1 := p.massAt(t0), p.massAt(t)
	mean := (m0 + m1) / 2
	full := mean / p.mass
	area := p.effusivity * (p.base + p.side*full)
	before, each := 0.0, 0.0
	if area > 0 {
		before = c.face.Taken(t, c.face.Runs()) - c.taken
		each = soak.Next(t0, t)
	}
	outer := 0.0
	if p.conducts > 0 {
		outer = p.outerBase + p.outerSide*full
	}
	keeps := mean*p.heat + p.extra
	cold := quad(p.ambient)
	out0, _ := p.shed(T0)
	T := T0
	for range 50 {
		fourth, slope := meanFourth(T0, T)
		out, outSlope := p.shed(T)
		f := keeps*(T0-T) - p.radiating*sigma*dt*(fourth-cold) - area*(before+(T-T0)*each) - outer*dt*(out0+out)/2
		df := -keeps - p.radiating*sigma*dt*slope - area*each - outer*dt*outSlope/2
		move := f / df
		T -= move
		// The rule squares the error: after this move it is below 1e-11 of T.
		if math.Abs(move) < 1e-6*T0 {
			break
		}
	}
	fourth, _ := meanFourth(T0, T)
	out, _ := p.shed(T)
	return part{
		t: t, temperature: T,
		top:   p.radiating * sigma * dt * (fourth - cold),
		wall:  area * (before + (T-T0)*each),
		outer: outer * dt * (out0 + out) / 2,
		held:  keeps * (T0 - T),
		taken: c.taken + before + (T-T0)*each,
	}
}

// stand cools the standing metal from T down to T1 and says when it is there,
// in steps that lie at growing times; false where it is not there by last.
func (p *pot) stand(T, T1, last, step float64) (float64, bool) {
	p = p.standing()
	c := newCourse()
	c.fill(p, T)
	const scale = 5 // s
	for i := 1; ; i++ {
		sinh := math.Sinh(float64(i) * step)
		next := p.step(c, scale*sinh*sinh)
		if next.temperature <= T1 {
			before := c.time()
			return solve.Root(func(t float64) float64 {
				if t == before {
					return c.end() - T1
				}
				return p.step(c, t).temperature - T1
			}, before, next.t, 1e-9*next.t), true
		}
		if next.t > last {
			return 0, false
		}
		c.add(next)
	}
}

// meanFourth is the mean of T⁴ along a straight line from a to b, and its slope
// with b.
func meanFourth(a, b float64) (mean, slope float64) {
	mean = (a*a*a*a + a*a*a*b + a*a*b*b + a*b*b*b + b*b*b*b) / 5
	slope = (a*a*a + 2*a*a*b + 3*a*b*b + 4*b*b*b) / 5
	return mean, slope
}

func quad(x float64) float64 { return x * x * x * x }

// shed is what each area of a crucible's outside loses, W/m², when the metal is
// at T, and its slope: what comes through the wall is what the outside, colder
// than the metal, radiates.
func (p *pot) shed(T float64) (q, slope float64) {
	if p.conducts == 0 {
		return 0, 0
	}
	outside := T
	for range 50 {
		f := p.emits*sigma*(quad(outside)-quad(p.ambient)) - p.conducts*(T-outside)
		move := f / (4*p.emits*sigma*outside*outside*outside + p.conducts)
		outside -= move
		if math.Abs(move) < 1e-11*T {
			break
		}
	}
	gains := 4 * p.emits * sigma * outside * outside * outside
	return p.conducts * (T - outside), p.conducts * gains / (gains + p.conducts)
}

// flux is what each area of the lining takes at the end of the i-th step, W/m².
func (c *course) flux(i int) float64 {
	if c.effusivity == 0 {
		return 0
	}
	return c.effusivity * c.face.Flux(c.at[i], i)
}
