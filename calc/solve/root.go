// Package solve finds the answers that no closed expression gives: the root of
// a function between two bounds, and a definite integral. Both are exact to
// the last few bits for the smooth functions met in the shop's sums; the bound
// stands at each function.
package solve

import "math"

// Root is the place between a and b where f passes through zero, to within
// tol on the argument, by Chandrupatla's mixture of bisection and inverse
// quadratic interpolation, which never leaves the bracket.
//
// Where f has the same sign at both ends there is no bracket: the end with the
// smaller |f| comes back, so that a root that rounding pushed just past an end
// is still found. f must be finite throughout.
func Root(f func(float64) float64, a, b, tol float64) float64 {
	fa, fb := f(a), f(b)
	if fa == 0 {
		return a
	}
	if fb == 0 || (fa > 0) == (fb > 0) {
		if fb != 0 && math.Abs(fa) < math.Abs(fb) {
			return a
		}
		return b
	}
	c, fc := a, fa
	t := 0.5
	for range 200 {
		x := a + t*(b-a)
		fx := f(x)
		if (fx > 0) == (fa > 0) {
			c, fc = a, fa
		} else {
			c, fc = b, fb
			b, fb = a, fa
		}
		a, fa = x, fx
		best := a
		if math.Abs(fb) < math.Abs(fa) {
			best = b
		}
		least := (tol + 2*epsilon*math.Abs(best)) / math.Abs(b-a) / 2
		if least > 0.5 || fa == 0 {
			return best
		}
		t = interpolate(a, b, c, fa, fb, fc)
		t = math.Min(math.Max(t, least), 1-least)
	}
	return a
}

// epsilon is the spacing of floating-point numbers at 1.
const epsilon = 0x1p-52

// interpolate is the fraction of the way from a to b for the next trial:
// by inverse quadratic interpolation where that is safe, else the middle.
func interpolate(a, b, c, fa, fb, fc float64) float64 {
	xi := (a - b) / (c - b)
	phi := (fa - fb) / (fc - fb)
	if phi*phi < xi && (1-phi)*(1-phi) < 1-xi {
		return fa/(fb-fa)*fc/(fb-fc) + (c-a)/(b-a)*fa/(fc-fa)*fb/(fc-fb)
	}
	return 0.5
}
