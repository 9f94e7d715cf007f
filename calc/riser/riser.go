// Package riser holds what more than one calculator needs to know of risers:
// what their form comes to, how much of themselves they can give, and how much
// later than the section they must freeze.
package riser

import (
	"math"

	"pourwright/calc/alloy"
	"pourwright/calc/figure"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// The rules, each with its standing.
var (
	// ModulusRule is the series section, neck, riser.
	ModulusRule = source.Wlodawer.Memory("moduli of section, neck and riser as 1 : 1.1 : 1.2")
	// FeedRule is the balance of feed metal.
	FeedRule = source.Campbell.Memory("feed balance: efficiency × riser = shrinkage × (riser + casting)")
	// Geometry of the riser's body.
	Geometry = source.Derived("solid geometry of a cylinder, or of a cylinder and a half ball; the foot of a riser that stands on the casting does not cool")
	// Seat is the rule that what a riser covers does not cool.
	Seat = source.Ghosh.Seen("sample problem 2.9: a top riser takes its seat off the cooled surface")
)

// Coefficients are a riser's volume over the cube of its diameter, and its
// modulus over its diameter, for a height of h diameters; they stand on the
// paper as c_V and c_M, and h must be there.
//
// Cylinder: V = π/4·D²H, cooled A = πDH + π/4·D² at the top, and as much again
// under a riser at the side. With a half ball at one end and whole height H:
// V = π/4·D²(H − D/2) + π/12·D³, cooled A = πD(H − D/2) + π/2·D², and π/4·D²
// more under, or over, a riser at the side. The neck's small face is counted
// as cooled. A dome needs h of 0.5 or more; the caller checks.
func Coefficients(p *working.Paper, h float64, side, domed bool) (cV, cM float64) {
	const volume, modulus = "volume over the cube of the diameter", "modulus over the diameter"
	if domed {
		cV = p.Step("c_V", volume, math.Pi*(h/4-1.0/24), "1", "pi * (h / 4 - 1 / 24)", Geometry)
		if side {
			return cV, p.Step("c_M", modulus, (h/4-1.0/24)/(h+0.25), "1", "(h / 4 - 1 / 24) / (h + 0.25)", Geometry)
		}
		return cV, p.Step("c_M", modulus, (h/4-1.0/24)/h, "1", "(h / 4 - 1 / 24) / h", Geometry)
	}
	cV = p.Step("c_V", volume, math.Pi/4*h, "1", "pi / 4 * h", Geometry)
	if side {
		return cV, p.Step("c_M", modulus, h/(2+4*h), "1", "h / (2 + 4 * h)", Geometry)
	}
	return cV, p.Step("c_M", modulus, h/(1+4*h), "1", "h / (1 + 4 * h)", Geometry)
}

// Factor is how many times the section's modulus a riser is given.
func Factor(f alloy.Family) figure.Of[quantity.Number] {
	if f == alloy.DuctileIron {
		return figure.New[quantity.Number](1.1, 1.0, 1.2, "", source.Wlodawer.Memory("riser factor over 1.1 for ductile iron"), "irons that expand are also fed with less")
	}
	return figure.New[quantity.Number](1.2, 1.1, 1.4, "", ModulusRule, "1.4 and more where a section of another thickness lies between")
}

// Efficiency is the share of a riser that it can give before its pipe reaches
// the casting: in plain sand, or in an insulating sleeve.
func Efficiency(sleeve bool) figure.Of[quantity.Ratio] {
	if sleeve {
		return figure.New[quantity.Ratio](33, 25, 35, "%", source.Brown.Memory("sleeved feeders"), "ask the seller of the sleeve")
	}
	return figure.New[quantity.Ratio](14, 14, 20, "%", source.Campbell.Memory("plain cylinder in sand 14 %, half ball 20 %"), "the figure of the plain cylinder also for a domed one, to be safe")
}

// LowProportion and HighProportion bound height over diameter of the risers
// that the efficiencies were found on.
const (
	LowProportion  = quantity.Number(0.5)
	HighProportion = quantity.Number(2)
)
