package weight

import (
	"math"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

var riserGeometry = source.Derived("solid geometry of a cylinder, or of a cylinder and a half ball; the foot of a riser that stands on the casting does not cool")

// proportion is height over diameter: of the user's own sizes, or as asked for.
func proportion(p *working.Paper, r Riser) float64 {
	if !r.Height.Known() {
		return working.GiveOpt(p, "h", "height over diameter", r.Ratio, "1")
	}
	H := p.Give("H_own", "your own height", r.Height.V, "cm")
	D := p.Give("D_own", "your own diameter", r.Diameter.V, "cm")
	return p.Step("h", "height over diameter", H/D, "1", "H_own / D_own", definition)
}

// coefficients are the riser's volume over the cube of its diameter, and its
// modulus over its diameter.
//
// Cylinder: V = π/4·D²H, cooled A = πDH + π/4·D² at the top, and as much again
// under a side riser. With a half ball at one end and whole height H:
// V = π/4·D²(H − D/2) + π/12·D³, cooled A = πD(H − D/2) + π/2·D², and π/4·D²
// more under, or over, a side riser. The neck's small face is counted as
// cooled.
func coefficients(p *working.Paper, r Riser, h float64) (cV, cM float64) {
	const volume, modulus = "volume over the cube of the diameter", "modulus over the diameter"
	side := r.Place.V == Side
	if r.Shape.V == Domed {
		cV = p.Step("c_V", volume, math.Pi*(h/4-1.0/24), "1", "pi * (h / 4 - 1 / 24)", riserGeometry)
		if side {
			return cV, p.Step("c_M", modulus, (h/4-1.0/24)/(h+0.25), "1", "(h / 4 - 1 / 24) / (h + 0.25)", riserGeometry)
		}
		return cV, p.Step("c_M", modulus, (h/4-1.0/24)/h, "1", "(h / 4 - 1 / 24) / h", riserGeometry)
	}
	cV = p.Step("c_V", volume, math.Pi/4*h, "1", "pi / 4 * h", riserGeometry)
	if side {
		return cV, p.Step("c_M", modulus, h/(2+4*h), "1", "h / (2 + 4 * h)", riserGeometry)
	}
	return cV, p.Step("c_M", modulus, h/(1+4*h), "1", "h / (1 + 4 * h)", riserGeometry)
}

// lowProportion and highProportion bound the risers that the efficiencies were
// found on.
const (
	lowProportion  = quantity.Number(0.5)
	highProportion = quantity.Number(2)
)
