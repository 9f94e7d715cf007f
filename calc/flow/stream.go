package flow

import (
	"math"

	"pourwright/calc/source"
	"pourwright/calc/working"
)

// Speed is the speed of a free stream under a head h (mm), v in m/s. It needs
// h and g on the paper.
func Speed(p *working.Paper, h, g float64) float64 {
	return p.Step("v", "speed at the foot", math.Sqrt(2*g*h/1000), "m/s", "sqrt(2 * g * h)", source.Groover.Memory("ch. 10, Bernoulli"))
}

// TaperByHeads is the ratio of the areas at the top and the foot of a sprue
// that the free stream just fills: A_top/A_foot = √(h_t/h_c), with h_t the
// height of metal above the foot and h_c that above the sprue's top, both in
// mm and on the paper. h_c must be above 0.
func TaperByHeads(p *working.Paper, ht, hc float64) float64 {
	return p.Step("r_t", "area at the top of the sprue over area at its foot", math.Sqrt(ht/hc), "1", "sqrt(h_t / h_c)", source.Groover.Memory("ch. 10, continuity"))
}

// ChokeArea is the choke, cm², that lets a mass through in a time under an
// effective head. It needs on the paper W (kg), rho_m (kg/m³), t_w (s), C_d
// and g, and the head under the symbol head, in mm. The result goes there as
// symbol.
//
// C_d lies between 0.7 and 0.9 where it covers the sprue and runners only;
// tables of 0.25 to 0.6 count the mould's back pressure too. The two families
// do not mix.
func ChokeArea(p *working.Paper, symbol, what, head string, W, rho, t, cd, g, headMM float64) float64 {
	return p.Step(symbol, what, W/(rho*t*cd*math.Sqrt(2*g*headMM/1000))*1e4, "cm^2",
		"W / (rho_m * t_w * C_d * sqrt(2 * g * "+head+"))", source.Rao.Memory("ch. 4, choke area"))
}

// ChokeTime is the time, s, that a choke A_c (cm²) takes to pass W (kg). It
// needs W, rho_m, A_c, C_d, g and the head on the paper.
func ChokeTime(p *working.Paper, symbol, what, head string, W, rho, areaCM2, cd, g, headMM float64) float64 {
	return p.Step(symbol, what, W/(rho*areaCM2*1e-4*cd*math.Sqrt(2*g*headMM/1000)), "s",
		"W / (rho_m * A_c * C_d * sqrt(2 * g * "+head+"))", source.Rao.Memory("ch. 4, choke area"))
}
