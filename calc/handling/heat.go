package handling

import (
	"math"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// stress is the heat load on the crew: the wet-bulb globe temperature, the
// same with what clothing adds, and the limits for the work.
type stress struct {
	wbgt, clothed      quantity.Temperature
	limit              quantity.Temperature // for this crew
	limitNew, limitOld quantity.Temperature // for people new to heat, and for people used to it
}

// metabolic is the body's heat at a class of work, W.
var metabolic = map[string]float64{"light": 180, "moderate": 300, "heavy": 415, "very-heavy": 520}

// clothingAdds is what clothing adds to the wet-bulb globe temperature, K. The
// figure for an aluminised coat is in doubt, somewhere from 3 to 11; it is
// taken at the safe end.
var clothingAdds = map[string]float64{"work": 0, "double": 3, "aluminised": 11, "vapour": 11}

// heatStress works out the wet-bulb globe temperature of the three readings
// and the limit for an hour's work: 56.7 − 11.5 log₁₀ M °C for people used to
// heat, 59.9 − 14.1 log₁₀ M for people who are not. The readings are those of
// the place where the crew stands, averaged over the hour.
func heatStress(in Input, p *working.Paper) stress {
	from := source.NIOSHHeat.Memory("recommended limits by metabolic heat")
	wet := working.GiveOpt(p, "T_nw", "natural wet bulb", in.WetBulb, "degC")
	globe := working.GiveOpt(p, "T_g", "globe", in.Globe, "degC")
	var w float64
	if in.Place == outdoors {
		air := working.GiveOpt(p, "T_a", "air", in.Air, "degC")
		w = p.Step("T_w", "wet-bulb globe temperature", 0.7*wet+0.2*globe+0.1*air, "degC", "0.7 * T_nw + 0.2 * T_g + 0.1 * T_a", source.NIOSHHeat.Memory("wet-bulb globe temperature in the sun"))
	} else {
		w = p.Step("T_w", "wet-bulb globe temperature", 0.7*wet+0.3*globe, "degC", "0.7 * T_nw + 0.3 * T_g", source.NIOSHHeat.Memory("wet-bulb globe temperature without sun"))
	}
	adds := p.Lookup("T_cl", "what clothing adds", clothingAdds[in.Clothing.V], "K", source.ACGIH.Memory("clothing adjustment"), "")
	clothed := p.Step("T_wc", "wet-bulb globe temperature with clothing", w+adds, "degC", "T_w + T_cl", source.ACGIH.Memory("clothing adjustment"))
	M := p.Lookup("M", "metabolic heat of the work", metabolic[in.Work.V], "W", source.NIOSHHeat.Memory("classes of work"), "")
	one := p.Const("M_1", "one watt", 1, "W", source.Derived("unit"))
	a := p.Const("a_r", "limit at one watt, used to heat", 56.7, "degC", from)
	b := p.Const("b_r", "fall of the limit, used to heat", 11.5, "K", from)
	c := p.Const("a_n", "limit at one watt, new to heat", 59.9, "degC", from)
	d := p.Const("b_n", "fall of the limit, new to heat", 14.1, "K", from)
	old := p.Step("T_r", "limit for people used to heat", a-b*math.Log10(M/one), "degC", "a_r - b_r * log10(M / M_1)", from)
	fresh := p.Step("T_n", "limit for people new to heat", c-d*math.Log10(M/one), "degC", "a_n - b_n * log10(M / M_1)", from)
	out := stress{
		wbgt: celsius(w), clothed: celsius(clothed),
		limitOld: celsius(old), limitNew: celsius(fresh),
	}
	if in.Acclimatised {
		out.limit = celsius(p.Step("T_lim", "limit for this crew", old, "degC", "T_r", from))
	} else {
		out.limit = celsius(p.Step("T_lim", "limit for this crew", fresh, "degC", "T_n", from))
	}
	return out
}

func celsius(t float64) quantity.Temperature { return quantity.From[quantity.Temperature](t, "°C") }
