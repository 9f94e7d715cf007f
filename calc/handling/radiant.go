package handling

import (
	"math"

	"pourwright/calc/alloy"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

const (
	stefanBoltzmann = 5.670374419e-8 // W/(m²·K⁴)
	bareSkin        = 2.0            // kW/m²: bare skin bears no more for some minutes
	leastStandoff   = 3.0            // m: splash reaches further than a small ladle's heat
)

// radiant is the heat that the open ladle throws.
type radiant struct {
	surface  quantity.HeatFlux               // leaving the metal's surface
	distance quantity.Distance               // where it has fallen to what bare skin bears
	standoff quantity.Distance               // the same, never under 3 m
	at       quantity.Opt[quantity.HeatFlux] // at the spectators, where their distance is known
	mouth    quantity.Opt[quantity.Length]   // of the ladle, estimated where it is not given
}

// glow takes the metal's surface for a grey disc that faces the onlooker on
// its axis, the worst that a ladle's mouth can do: q = ε σ T⁴ r²/(d² + r²).
// It covers bare skin in full view and nothing else: no splash, no flame or
// gas, no reflected heat, no clothing. Where the mouth is not given it is
// taken as that of a round pot as deep as it is wide, filled by the metal.
func glow(in Input, a *alloy.Alloy, p *working.Paper) radiant {
	var out radiant
	var D float64
	if in.LadleMouth.Known() {
		D = working.GiveOpt(p, "D", "ladle mouth", in.LadleMouth, "m")
	} else {
		W := p.Give("W", "metal poured", in.Metal, "kg")
		rho := p.Lookup("rho_l", "density of the liquid metal", quantity.In(a.DensityLiquid.V, "kg/m^3"), "kg/m^3", a.DensityLiquid.Source, "")
		D = p.StepNote("D", "ladle mouth", math.Cbrt(4*W/(math.Pi*rho)), "m", "cbrt(4 * W / (pi * rho_l))", source.Derived("a round pot as deep as it is wide, full"), "no ladle mouth is given")
		out.mouth = quantity.Some(quantity.From[quantity.Length](D, "m"))
	}
	disc := source.ViewFactors.Memory("small face on the axis of a disc")
	r := p.Step("r", "half the ladle mouth", D/2, "m", "D / 2", source.Derived("definition"))
	eps := working.GiveOpt(p, "epsilon", "emissivity of the metal's surface", in.Emissivity, "1")
	sigma := p.Const("sigma", "Stefan-Boltzmann constant", stefanBoltzmann, "W/(m^2*K^4)", source.BIPM.Memory("from the defining constants"))
	T := p.Give("T", "pouring temperature", in.PourAt, "K")
	E := p.Step("E", "heat leaving the metal's surface", eps*sigma*math.Pow(T, 4)/1000, "kW/m^2", "epsilon * sigma * pow(T, 4)", source.SFPE.Memory("radiation of a grey surface"))
	q0 := p.Const("q_0", "most that bare skin bears for some minutes", bareSkin, "kW/m^2", source.SFPE.Memory("pain of bare skin"))
	d := p.Step("d_q", "distance where bare skin just bears it", r*math.Sqrt(math.Max(E/q0-1, 0)), "m", "r * sqrt(max(E / q_0 - 1, 0))", disc)
	d0 := p.Const("d_0", "least distance, for splash", leastStandoff, "m", source.Practice("splash reaches further than a small ladle's heat"))
	out.surface = quantity.From[quantity.HeatFlux](E, "kW/m²")
	out.distance = quantity.Distance(d)
	out.standoff = quantity.Distance(p.Step("d_s", "stand-off of spectators", math.Max(d, d0), "m", "max(d_q, d_0)", source.Practice("the greater of the two")))
	if in.Spectators && in.SpectatorDistance.Known() {
		s := working.GiveOpt(p, "s", "distance of the spectators", in.SpectatorDistance, "m")
		q := p.Step("q_s", "radiant heat at the spectators", E*r*r/(s*s+r*r), "kW/m^2", "E * pow(r, 2) / (pow(s, 2) + pow(r, 2))", disc)
		out.at = quantity.Some(quantity.From[quantity.HeatFlux](q, "kW/m²"))
	}
	return out
}
