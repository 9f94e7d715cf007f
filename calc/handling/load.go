package handling

import (
	"pourwright/calc/alloy"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// Where hand carrying changes, by the whole mass carried.
const (
	onePerson = 10 * quantity.Kilogram // over this, a shank for two
	thirdHand = 20 * quantity.Kilogram // over this, a third in the crew
	handPair  = 25 * quantity.Kilogram // over this, a hoist or a trolley
	highLip   = 1.2 * quantity.Metre   // about the elbow of a standing person
)

// load is what is lifted, and the sand to keep against a spill.
type load struct {
	heft      quantity.Mass // as carried, or the metal alone where that is all we know
	weighed   bool          // heft has the ladle in it
	each      quantity.Opt[quantity.Mass]
	spillSand quantity.Volume
}

// lift works out what each of two carries, and sand of half as much again as
// the liquid metal takes up.
func lift(in Input, a *alloy.Alloy, p *working.Paper) load {
	out := load{heft: in.Metal}
	W := p.Give("W", "metal in the ladle", in.Metal, "kg")
	rho := p.Lookup("rho_l", "density of the liquid metal", quantity.In(a.DensityLiquid.V, "kg/m^3"), "kg/m^3", a.DensityLiquid.Source, "")
	k := p.Const("k_s", "sand per volume of metal", 1.5, "1", source.Practice("half as much again as could spill"))
	out.spillSand = quantity.From[quantity.Volume](p.Step("V_s", "dry sand at hand", k*W/rho*1000, "L", "k_s * W / rho_l", source.Practice("half as much again as could spill")), "L")
	if in.Carried.Known() {
		out.heft, out.weighed = in.Carried.V, true
		m := p.Give("m_c", "ladle as carried", in.Carried.V, "kg")
		out.each = quantity.Some(quantity.From[quantity.Mass](p.Step("m_2", "carried by each of two", m/2, "kg", "m_c / 2", source.Derived("shared evenly; the one at the bowl carries more")), "kg"))
	}
	return out
}
