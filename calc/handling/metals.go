package handling

import (
	"pourwright/calc/alloy"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// From these shares on the list speaks of zinc and of lead. Zinc shows as
// white fume well under the 5 % that the handbooks warn from.
const (
	zincMatters = 0.01
	leadMatters = 0.001
)

// zincBoils is the boiling point of zinc at one atmosphere.
var zincBoils = quantity.From[quantity.Temperature](907, "°C")

// metals are the masses of the metals in the ladle that harm when breathed.
type metals struct {
	zinc, lead quantity.Opt[quantity.Mass]
	air        quantity.Opt[quantity.Volume]
}

// fumes works out how much zinc and lead the ladle holds at the most that the
// alloy's specification allows, and how much air a gram of burnt zinc fills
// with oxide up to the eight-hour limit.
func fumes(in Input, a *alloy.Alloy, p *working.Paper) metals {
	var out metals
	W := p.Give("W", "metal in the ladle", in.Metal, "kg")
	if a.Hazards.Zinc >= zincMatters {
		w := p.Lookup("w_Zn", "zinc in the metal, at most", quantity.In(a.Hazards.Zinc, "1"), "1", a.Hazards.Source, "")
		out.zinc = quantity.Some(quantity.From[quantity.Mass](p.Step("m_Zn", "zinc in the ladle, at most", w*W, "kg", "w_Zn * W", source.Derived("share of the metal")), "kg"))
		oxide := p.Const("M_o", "atomic mass of zinc with its oxygen, to zinc alone", (65.38+15.999)/65.38, "1", source.Derived("atomic masses 65.38 and 15.999"))
		one := p.Const("m_1", "zinc burnt", 1, "g", source.Derived("one gram"))
		limit := p.Const("c_Zn", "eight-hour limit of zinc oxide", 5e-3, "g/m^3", source.OSHA.Seen("1910.1000 table Z-1"))
		out.air = quantity.Some(quantity.From[quantity.Volume](p.Step("V_Zn", "air spoilt to the limit", one*oxide/limit, "m^3", "m_1 * M_o / c_Zn", source.Derived("oxide formed over the limit")), "m³"))
	}
	if a.Hazards.Lead > leadMatters {
		w := p.Lookup("w_Pb", "lead in the metal, at most", quantity.In(a.Hazards.Lead, "1"), "1", a.Hazards.Source, "")
		out.lead = quantity.Some(quantity.From[quantity.Mass](p.Step("m_Pb", "lead in the ladle, at most", w*W, "kg", "w_Pb * W", source.Derived("share of the metal")), "kg"))
	}
	return out
}
