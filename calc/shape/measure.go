package shape

import (
	"math"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// Measured is what one solid comes to, whatever its count and role.
type Measured struct {
	// Volume of the solid.
	Volume quantity.Volume
	// Area is its whole surface.
	Area quantity.Area
	// Cooling is the part of the surface that cools: without what is joined,
	// and with the bore of a tube counted for what it gives.
	Cooling quantity.Area
	// Modulus is Volume over Cooling.
	Modulus quantity.Length
}

var (
	geometry = source.Derived("solid geometry")
	pappus   = source.Derived("theorem of Pappus and Guldin, edge by edge")
	shoelace = source.Derived("surveyor's area formula, corner by corner")
	modulus  = source.Chvorinov.Memory("modulus V/A, cooled surface only")
)

// Measure works out one solid on the paper of its list item, in cm. The
// symbols V, A, A_c and M are the results. The solid must have come through
// form.Ready and Faults without a fault.
func (s Solid) Measure(p *working.Paper) Measured {
	V, A := s.volumeAndArea(p)
	Ac := s.cooling(p, A)
	M := p.Step("M", "modulus", V/Ac, "cm", "V / A_c", modulus)
	return Measured{
		Volume:  quantity.From[quantity.Volume](V, "cm^3"),
		Area:    quantity.From[quantity.Area](A, "cm^2"),
		Cooling: quantity.From[quantity.Area](Ac, "cm^2"),
		Modulus: quantity.From[quantity.Length](M, "cm"),
	}
}

// Volume of one solid.
func (s Solid) Volume() quantity.Volume { return s.Measure(nil).Volume }

// Area is the whole surface of one solid.
func (s Solid) Area() quantity.Area { return s.Measure(nil).Area }

// Cooling is the surface of one solid that cools.
func (s Solid) Cooling() quantity.Area { return s.Measure(nil).Cooling }

func (s Solid) cooling(p *working.Paper, A float64) float64 {
	f := working.GiveOpt(p, "f_j", "share of the surface that does not cool", s.Joined, "1")
	if s.Form != Tube {
		return p.Step("A_c", "cooled surface", A*(1-f), "cm^2", "A * (1 - f_j)", geometry)
	}
	d, H := quantity.In(s.Inner, "cm"), quantity.In(s.Height, "cm")
	fb := working.GiveOpt(p, "f_b", "share of full cooling by the bore", s.Bore, "1")
	Ab := p.Step("A_b", "surface of the bore", math.Pi*d*H, "cm^2", "pi * d * H", geometry)
	return p.Step("A_c", "cooled surface", (A-(1-fb)*Ab)*(1-f), "cm^2", "(A - (1 - f_b) * A_b) * (1 - f_j)", geometry)
}

func (s Solid) volumeAndArea(p *working.Paper) (V, A float64) {
	switch s.Form {
	case Plate:
		return box(p, s.Length, s.Width, s.Thickness)
	case Bar:
		return box(p, s.Length, s.Width, s.Height)
	case Cylinder:
		return s.cylinder(p)
	case Tube:
		return s.tube(p)
	case Frustum:
		return s.frustum(p)
	case Sphere:
		return s.sphere(p)
	case Cap:
		return s.cap(p)
	case Torus:
		return s.torus(p)
	case Wedge:
		return s.wedge(p)
	case Prism:
		return s.prism(p)
	case Outline:
		return s.outline(p)
	case Turned:
		return s.turned(p)
	}
	panic("shape: no form " + string(s.Form)) // form.Ready has refused it
}

func volume(p *working.Paper, V float64, formula string) float64 {
	return p.Step("V", "volume", V, "cm^3", formula, geometry)
}

func area(p *working.Paper, A float64, formula string) float64 {
	return p.Step("A", "surface", A, "cm^2", formula, geometry)
}

func box(p *working.Paper, length, width, thickness quantity.Length) (V, A float64) {
	L := p.Give("L", "length", length, "cm")
	w := p.Give("w", "width", width, "cm")
	T := p.Give("T", "thickness", thickness, "cm")
	return volume(p, L*w*T, "L * w * T"), area(p, 2*(L*w+L*T+w*T), "2 * (L*w + L*T + w*T)")
}

func (s Solid) cylinder(p *working.Paper) (V, A float64) {
	D := p.Give("D", "diameter", s.Diameter, "cm")
	H := p.Give("H", "height", s.Height, "cm")
	return volume(p, math.Pi/4*D*D*H, "pi / 4 * pow(D, 2) * H"),
		area(p, math.Pi*D*H+math.Pi/2*D*D, "pi * D * H + pi / 2 * pow(D, 2)")
}

func (s Solid) tube(p *working.Paper) (V, A float64) {
	D := p.Give("D", "outside diameter", s.Diameter, "cm")
	d := p.Give("d", "bore", s.Inner, "cm")
	H := p.Give("H", "length", s.Height, "cm")
	return volume(p, math.Pi/4*(D-d)*(D+d)*H, "pi / 4 * (D - d) * (D + d) * H"),
		area(p, math.Pi*(D+d)*H+math.Pi/2*(D-d)*(D+d), "pi * (D + d) * H + pi / 2 * (D - d) * (D + d)")
}

func (s Solid) frustum(p *working.Paper) (V, A float64) {
	D1 := p.Give("D_1", "diameter of the foot", s.Diameter, "cm")
	D2 := working.GiveOpt(p, "D_2", "diameter of the other end", s.TopDiameter, "cm")
	H := p.Give("H", "height", s.Height, "cm")
	V = volume(p, math.Pi/12*H*(D1*D1+D1*D2+D2*D2), "pi / 12 * H * (pow(D_1, 2) + D_1*D_2 + pow(D_2, 2))")
	e := p.Step("e", "slant height", math.Sqrt(H*H+(D1-D2)*(D1-D2)/4), "cm", "sqrt(pow(H, 2) + pow(D_1 - D_2, 2) / 4)", geometry)
	A = area(p, math.Pi/2*(D1+D2)*e+math.Pi/4*(D1*D1+D2*D2), "pi / 2 * (D_1 + D_2) * e + pi / 4 * (pow(D_1, 2) + pow(D_2, 2))")
	return V, A
}

func (s Solid) sphere(p *working.Paper) (V, A float64) {
	D := p.Give("D", "diameter", s.Diameter, "cm")
	return volume(p, math.Pi/6*D*D*D, "pi / 6 * pow(D, 3)"), area(p, math.Pi*D*D, "pi * pow(D, 2)")
}

// cap is the part of a ball cut off by a plane: foot diameter D, height h, which
// may be more than half the ball.
func (s Solid) cap(p *working.Paper) (V, A float64) {
	D := p.Give("D", "diameter of the flat face", s.Diameter, "cm")
	h := p.Give("h", "height", s.Height, "cm")
	return volume(p, math.Pi/6*h*(0.75*D*D+h*h), "pi / 6 * h * (0.75 * pow(D, 2) + pow(h, 2))"),
		area(p, math.Pi*(D*D/2+h*h), "pi * (pow(D, 2) / 2 + pow(h, 2))")
}

func (s Solid) torus(p *working.Paper) (V, A float64) {
	D := p.Give("D", "diameter of the ring, through the middle of the section", s.Diameter, "cm")
	d := p.Give("d", "diameter of the section", s.Section, "cm")
	return p.Step("V", "volume", math.Pi*math.Pi/4*D*d*d, "cm^3", "pow(pi, 2) / 4 * D * pow(d, 2)", pappus),
		p.Step("A", "surface", math.Pi*math.Pi*D*d, "cm^2", "pow(pi, 2) * D * d", pappus)
}

// wedge has a flat foot and two upright ends of different height.
func (s Solid) wedge(p *working.Paper) (V, A float64) {
	L := p.Give("L", "length", s.Length, "cm")
	w := p.Give("w", "width", s.Width, "cm")
	h1 := p.Give("h_1", "height at the thick end", s.Height, "cm")
	h2 := working.GiveOpt(p, "h_2", "height at the thin end", s.ThinEnd, "cm")
	V = volume(p, L*w*(h1+h2)/2, "L * w * (h_1 + h_2) / 2")
	e := p.Step("e", "length of the slope", math.Sqrt(L*L+(h1-h2)*(h1-h2)), "cm", "sqrt(pow(L, 2) + pow(h_1 - h_2, 2))", geometry)
	A = area(p, w*(L+e+h1+h2)+L*(h1+h2), "w * (L + e + h_1 + h_2) + L * (h_1 + h_2)")
	return V, A
}

func (s Solid) prism(p *working.Paper) (V, A float64) {
	n := p.Number("n_s", "sides", float64(s.Sides), "1")
	f := p.Give("f", "across flats", s.Flats, "cm")
	H := p.Give("H", "length", s.Height, "cm")
	S := p.Step("S", "section", n/4*f*f*math.Tan(math.Pi/n), "cm^2", "n_s / 4 * pow(f, 2) * tan(pi / n_s)", geometry)
	U := p.Step("U", "girth", n*f*math.Tan(math.Pi/n), "cm", "n_s * f * tan(pi / n_s)", geometry)
	return volume(p, S*H, "S * H"), area(p, 2*S+U*H, "2 * S + U * H")
}
