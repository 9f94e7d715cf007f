package ladle

import (
	"math"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

var archimedes = source.Archimedes.Seen("the hoof, and cuts of the cylinder like it")

// look answers how much is left at the tilt that was asked for.
func (j *job) look() {
	if !j.in.Tilt.Known() {
		return
	}
	p := j.p.Sub("")
	working.GiveOpt(p, "theta", "tilt looked at", j.in.Tilt, "deg")
	j.putLeft(p, float64(j.in.Tilt.V))
	left := math.Min(j.volume, j.vessel.left(float64(j.in.Tilt.V)))
	V := p.Step("V_l", "left at the tilt looked at", 1000*left, "L", "min(V_m, V_s)", source.Derived("the ladle pours down to the level of the lip"))
	M := p.Step("M_l", "metal left at the tilt looked at", j.rho*left, "kg", "rho_l * V_l", massOf)
	j.out.TiltLeft, j.out.TiltLeftMass = some(quantity.Volume(V/1000)), some(quantity.Mass(M))
}

// putLeft puts V_s on the paper, the volume below the level of the lip at a
// tilt, with the closed form that holds there. It needs theta on the paper.
func (j *job) putLeft(p *working.Paper, tilt float64) {
	v := j.vessel
	litres := 1000 * v.left(tilt)
	const what = "volume below the level of the lip"
	if v.dry(tilt) {
		p.StepNote("V_s", what, 0, "L", "0 * V_b", geometry, "the ladle is empty at this tilt")
		return
	}
	if tilt <= v.shows {
		if v.taper == 0 {
			p.StepNote("V_s", what, litres, "L", "pi * pow(R_t, 2) * (L - R_t * tan(theta))", archimedes, "the base is covered")
			return
		}
		p.Step("k_t", "taper times the tangent of the tilt", v.taper*math.Tan(tilt), "1", "m * tan(theta)", definition)
		p.StepNote("V_s", what, litres, "L", "pi * (pow(R_t, 3) * pow((1 - k_t) / (1 + k_t), 1.5) - pow(R_b, 3)) / (3 * m)", geometry,
			"the base is covered: an oblique cone on the surface, less the cone below the base")
		return
	}
	kappa := 1 / math.Tan(tilt)
	p.Step("c_t", "cotangent of the tilt", kappa, "1", "1 / tan(theta)", definition)
	base := wetted(v.depth * (kappa - v.taper) / v.bottom)
	p.Step("phi_b", "half the angle of the wetted base", base, "rad", "2 * asin(sqrt(min(1, max(0, L * (c_t - m) / (2 * R_b)))))", geometry)
	if v.taper == 0 {
		p.StepNote("V_s", what, litres, "L", "pow(R_t, 3) * (2 * pow(sin(phi_b), 3) / 3 - cos(phi_b) * (phi_b - sin(phi_b) * cos(phi_b))) / c_t", archimedes, "the base shows: a hoof")
		return
	}
	if v.steep(kappa) {
		p.Solve("K", "surface over its slope", 1e4*v.chords(kappa), "cm^2",
			"K = ∫ 2 √(v (c_t − m)(2 R_t − v (c_t + m))) dv over the depth, the surface being nearly a parabola or a hyperbola; Gauss-Legendre rule of 16 points after v = L s², error below 1 in 10^10",
			[]string{"c_t", "m", "R_t", "L"}, geometry)
	} else {
		p.Step("phi_a", "half the angle of the surface's arc", wetted(v.depth*(kappa+v.taper)/v.top), "rad", "2 * asin(sqrt(min(1, L * (c_t + m) / (2 * R_t))))", geometry)
		p.Step("K", "surface over its slope", 1e4*v.chords(kappa), "cm^2",
			"sqrt((c_t - m) * (c_t + m)) * pow(R_t / (c_t + m), 2) * (phi_a - sin(phi_a) * cos(phi_a))", geometry)
	}
	p.StepNote("V_s", what, litres, "L", "max(0 * V_b, (R_t * (c_t - m) * K - pow(R_b, 3) * (phi_b - sin(phi_b) * cos(phi_b))) / (3 * m))", geometry,
		"the base shows: a cone on the surface, less a cone on the wetted base, both with the tip of the ladle's own cone")
}

// leftChart draws the metal left against the tilt.
func (j *job) leftChart(fits bool) {
	const points = 90
	s := working.Series{Label: "Left in the ladle",
		X: working.Axis{Label: "Tilt", Kind: quantity.Angle(0).Kind()},
		Y: working.Axis{Label: "Volume left", Kind: quantity.Volume(0).Kind()}}
	for i := range points + 1 {
		tilt := j.vessel.empties * float64(i) / points
		left := j.vessel.left(tilt)
		if fits {
			left = math.Min(left, j.volume)
		}
		s.Points = append(s.Points, working.Point{X: tilt, Y: left})
	}
	j.out.LeftChart = []working.Series{s}
}
