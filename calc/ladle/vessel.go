package ladle

import (
	"math"

	"pourwright/calc/solve"
)

// vessel is the inside of a ladle: a cylinder or a truncated cone, tipped about
// a level axis across the lip. All in metres and radians.
//
// Stand at the lip and measure the depth v straight down the wall's side of
// the axis, so that v = 0 in the plane of the lip and v = L at the base. The
// radius there is R_t − m v, with the taper m = (R_t − R_b)/L. Tipped by θ the
// level surface through the lip is the plane that at the depth v stands
// x = R_t − v cot θ from the axis, so the metal left is the sum over v of the
// circle's segments beyond x:
//
//	V(θ) = ∫ Seg(R_t − m v, R_t − v cot θ) dv,  Seg(r, x) = r² acos(x/r) − x √(r² − x²)
//	                                                     = r² (φ − sin φ cos φ),  x = r cos φ.
//
// For this integral there are closed forms. A pyramid-like body with its tip at
// the apex of the cone has a third of base times height, and the cone's own
// wall passes through the apex and adds nothing; so the metal is the difference
// of two such bodies, one on its free surface and one on the wetted base. The
// free surface is a conic; projected on the lip's plane it has the area P, and
//
//	V = (R_t (1 − q) P − R_b S_b)/(3 m),  q = m tan θ.
//
// While the base is covered the surface is a whole ellipse and S_b the whole
// base. Once the base shows, both are segments. Where the mouth is narrower
// than the base and the tilt steep the surface is a hyperbola, and P comes of
// an integral.
type vessel struct {
	top, bottom float64 // radii
	depth       float64
	taper       float64 // m
	// shows is the tilt at which the base begins to show.
	shows float64
	// empties is the tilt at which the last metal is gone: when the wall under
	// the lip lies level. A ladle that does not widen upwards is not empty before
	// it lies flat, and one that narrows upwards not even then.
	empties float64
}

// leastTaper is the taper under which a truncated cone is reckoned as a
// cylinder of its mean radius: a thousandth of a millimetre in a metre, below
// which the closed form for the cone loses digits.
const leastTaper = 1e-6

// shaped makes the vessel of two diameters and a depth.
func shaped(top, bottom, depth float64) vessel {
	v := vessel{top: top / 2, bottom: bottom / 2, depth: depth, taper: (top - bottom) / 2 / depth}
	if math.Abs(v.taper) < leastTaper {
		mean := (v.top + v.bottom) / 2
		v = vessel{top: mean, bottom: mean, depth: depth}
	}
	v.shows = math.Atan2(v.depth, v.top+v.bottom)
	v.empties = math.Pi/2 - math.Atan(math.Max(v.taper, 0))
	return v
}

// brim is the whole inside volume.
func (v vessel) brim() float64 { return v.upTo(v.depth) }

// upTo is the volume of an upright ladle filled to a level above its base.
func (v vessel) upTo(level float64) float64 {
	r := v.bottom + v.taper*level
	return math.Pi * level * (v.bottom*v.bottom + v.bottom*r + r*r) / 3
}

// level is the height that a volume fills upright.
func (v vessel) level(volume float64) float64 {
	if v.taper == 0 {
		return volume / (math.Pi * v.top * v.top)
	}
	return (math.Cbrt(v.bottom*v.bottom*v.bottom+3*v.taper*volume/math.Pi) - v.bottom) / v.taper
}

// dry says that nothing is left at a tilt.
func (v vessel) dry(tilt float64) bool { return v.taper >= 0 && tilt >= v.empties }

// left is the volume below the level of the lip at a tilt from 0 to 90°.
func (v vessel) left(tilt float64) float64 {
	if v.dry(tilt) {
		return 0
	}
	tan := math.Tan(tilt)
	if tilt <= v.shows {
		if v.taper == 0 {
			return math.Pi * v.top * v.top * (v.depth - v.top*tan)
		}
		q := v.taper * tan
		return math.Pi * (cube(v.top)*math.Pow((1-q)/(1+q), 1.5) - cube(v.bottom)) / (3 * v.taper)
	}
	kappa := 1 / tan
	base := wetted(v.depth * (kappa - v.taper) / v.bottom)
	if v.taper == 0 {
		sin, cos := math.Sincos(base)
		return math.Max(0, cube(v.top)*(2*cube(sin)/3-cos*lune(base))/kappa)
	}
	return math.Max(0, (v.top*(kappa-v.taper)*v.chords(kappa)-cube(v.bottom)*lune(base))/(3*v.taper))
}

// surface is the area of the free surface at the level of the lip.
func (v vessel) surface(tilt float64) float64 {
	if tilt <= v.shows {
		q := v.taper * math.Tan(tilt)
		return math.Pi * v.top * v.top * math.Sqrt((1-q)/cube(1+q)) / math.Cos(tilt)
	}
	if v.dry(tilt) {
		return 0
	}
	kappa := 1 / math.Tan(tilt)
	return v.chords(kappa) * math.Sqrt(1+kappa*kappa)
}

// sweep is −dV/dθ, the volume let go for each radian of tilt: the free surface
// times the distance of its centre from the lip, for it turns about the lip.
func (v vessel) sweep(tilt float64) float64 {
	if tilt <= v.shows {
		q := v.taper * math.Tan(tilt)
		cos := math.Cos(tilt)
		return math.Pi * cube(v.top) * math.Sqrt(1-q*q) / cube(1+q) / (cos * cos)
	}
	if v.dry(tilt) {
		return 0
	}
	kappa := 1 / math.Tan(tilt)
	return v.moments(kappa) * (1 + kappa*kappa)
}

// chords is ∫ w dv over the depth, w the chord of the free surface at the depth
// v, once the base shows: (r − x)(r + x) = v f (2 R_t − v e), with e = κ + m and
// f = κ − m, κ = cot θ, so the chord is that of a circle of radius R_t/e drawn
// out by √(f e). Where e is small or below zero the chord has no such circle,
// and with v = L s² the integrand is smooth.
func (v vessel) chords(kappa float64) float64 {
	e, f := kappa+v.taper, math.Max(kappa-v.taper, 0)
	if v.steep(kappa) {
		return v.integral(e, f, false)
	}
	a := v.top / e
	return math.Sqrt(f*e) * a * a * lune(wetted(v.depth/a))
}

// moments is ∫ w v dv, in the same way.
func (v vessel) moments(kappa float64) float64 {
	e, f := kappa+v.taper, math.Max(kappa-v.taper, 0)
	if v.steep(kappa) {
		return v.integral(e, f, true)
	}
	a := v.top / e
	phi := wetted(v.depth / a)
	return math.Sqrt(f*e) * cube(a) * (lune(phi) - 2*cube(math.Sin(phi))/3)
}

// steep says that the free surface is nearly a parabola, or a hyperbola: its
// other end lies far outside the ladle, and the closed form loses digits.
func (v vessel) steep(kappa float64) bool { return (kappa+v.taper)*v.depth < 0.05*v.top }

// integral is chords, or moments, by the change of variable.
func (v vessel) integral(e, f float64, moments bool) float64 {
	scale := 4 * v.depth * math.Sqrt(f*v.depth)
	if moments {
		scale *= v.depth
	}
	return scale * solve.Integral(func(s float64) float64 {
		s2 := s * s
		y := s2 * math.Sqrt(2*v.top-e*v.depth*s2)
		if moments {
			y *= s2
		}
		return y
	}, 0, 1)
}

// slope is dA/dθ of the free surface, by the difference of two tilts.
func (v vessel) slope(tilt float64) float64 {
	const step = 1e-4
	low, high := math.Max(tilt-step, 0), math.Min(tilt+step, v.empties)
	return (v.surface(high) - v.surface(low)) / (high - low)
}

// wetted is half the angle that the wetted arc of a circle takes up, from the
// height of the segment over the radius: 0 for a dry circle, π for a full one.
// The half-angle form keeps its digits where the segment is a sliver.
func wetted(height float64) float64 {
	return 2 * math.Asin(math.Sqrt(math.Min(math.Max(height/2, 0), 1)))
}

// lune is the area of the segment of a unit circle with the half angle phi.
func lune(phi float64) float64 { return phi - math.Sin(phi)*math.Cos(phi) }

func cube(x float64) float64 { return x * x * x }
