// Package soak says how much heat a thick wall takes up behind a face whose
// temperature changes: Duhamel's sum for a solid without end behind a flat
// face (Carslaw and Jaeger, ch. II), with perfect contact at the face and the
// same stuff all through.
//
// A face that steps up by ΔT lets b ΔT/√(πt) into the wall, b = √(kρc) being
// its effusivity, so that the heat taken by time t is (2b/√π) ΔT √t per area.
// A face that steps by θ₀ at time 0 and then runs straight from point to point
// with the slopes s_j has let in
//
//	Q(t)/b = (2/√π) { θ₀ √t + ⅔ Σ s_j [ (t − t_{j−1})^{3/2} − (t − t_j)^{3/2} ] },
//
// which is exact for such a face; the only error left is that of drawing the
// face's course with straight lines, which falls as the square of the step.
package soak

import "math"

// Face is the course of a face's temperature over the wall's own temperature
// at the start. The zero Face is a wall that nothing has touched.
type Face struct {
	step    float64 // θ₀, taken at time 0 and held until began
	began   float64 // when the straight runs begin
	times   []float64
	slopes  []float64
	current float64
}

// Step makes a face that jumps by theta at time 0 and stays there until the
// time began.
func Step(theta, began float64) *Face {
	f := &Face{}
	f.Begin(theta, began)
	return f
}

// Begin makes the face one that Step makes, in the room that it has.
func (f *Face) Begin(theta, began float64) {
	const room = 64 // runs that most courses get by with
	if f.times == nil {
		f.times, f.slopes = make([]float64, 0, room), make([]float64, 0, room)
	}
	*f = Face{step: theta, began: began, current: theta, times: f.times[:0], slopes: f.slopes[:0]}
}

// To runs the face straight to theta at time t, which must lie after the last.
func (f *Face) To(t, theta float64) {
	f.slopes = append(f.slopes, (theta-f.current)/(t-f.Time()))
	f.times = append(f.times, t)
	f.current = theta
}

// Time is the last time that the course is known for, and Theta the face then.
func (f *Face) Time() float64 {
	if n := len(f.times); n > 0 {
		return f.times[n-1]
	}
	return f.began
}

// Theta is the face's temperature at Time, over the wall's own at the start.
func (f *Face) Theta() float64 { return f.current }

// Taken is Q/b, the heat taken by time t, per area and effusivity, from the
// first n runs of the course. t must not lie before the end of the n-th run.
func (f *Face) Taken(t float64, n int) float64 {
	runs := 0.0
	older := power(t - f.began)
	slopes := f.slopes[:n]
	for j, end := range f.times[:n] {
		newer := power(t - end)
		runs += slopes[j] * (older - newer)
		older = newer
	}
	return 2 / math.SqrtPi * (f.step*math.Sqrt(t) + 2.0/3*runs)
}

// Next is what a further run from the time before to t adds to Taken for each
// degree that the face moves in it.
func Next(before, t float64) float64 {
	return 2 / math.SqrtPi * 2 / 3 * math.Sqrt(t-before)
}

// Flux is q/b, the heat that goes in at time t per area, effusivity and time,
// from the first n runs. At time 0 it has no bound; t must be above 0 and not
// before the end of the n-th run.
func (f *Face) Flux(t float64, n int) float64 {
	sum := f.step / math.Sqrt(t)
	before := f.began
	for j := range n {
		sum += 2 * f.slopes[j] * (math.Sqrt(t-before) - math.Sqrt(math.Max(t-f.times[j], 0)))
		before = f.times[j]
	}
	return sum / math.SqrtPi
}

// Runs is the number of straight runs in the course so far.
func (f *Face) Runs() int { return len(f.times) }

// power is x^{3/2}; a time that rounding put before its run counts as none.
func power(x float64) float64 {
	if x <= 0 {
		return 0
	}
	return x * math.Sqrt(x)
}

// Stirred is (T − T₀)/(T_i − T₀) of a body, alike in temperature all through
// and hot by T_i − T₀, after a time in a thick wall at T₀:
//
//	e^{x²} erfc x,  x = b √t/(ρ c M),
//
// with M the body's volume over the area that touches the wall, and ρc its heat
// per volume (Carslaw and Jaeger, ch. XII). x must not be below 0.
func Stirred(x float64) float64 {
	if x < 25 {
		return math.Exp(x*x) * math.Erfc(x)
	}
	// Asymptotic series; at x = 25 the next term is below 1e-8.
	y := 1 / (2 * x * x)
	return (1 - y + 3*y*y) / (x * math.SqrtPi)
}
