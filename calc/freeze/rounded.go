package freeze

import (
	"math"

	"pourwright/calc/source"
	"pourwright/calc/working"
)

// Rounded is the freezing time, s, of a sphere or a long round bar, which heat
// leaves into sand that widens outward. It needs on the paper M (mm), R (mm),
// n (1 for a long round bar, 2 for a sphere), b, k_m (W/(m·K)), rho_m, H, T_e
// and T_0. It puts t_r there.
//
// With the mould's face at T_e,
//
//	M = (T_e − T_0)/(ρ_m H) · [ (2/√π) b √t + n k_m t/(2R) ],
//
// a quadratic in √t. For the sphere this is exact in a mould without end; for
// the bar it holds while the heated layer is thin against the bar. The plain
// rule of equal V/A makes chunky shapes freeze too slowly.
func Rounded(p *working.Paper, M, R, n, b, km, rho, H, Te, T0 float64) float64 {
	from := source.AdamsTay.Memory("sphere and cylinder; also Poirier and Geiger, ch. 10")
	q := p.Step("B", "heat that the metal gives per area of mould and degree", rho*H*M/1000/(Te-T0), "J/(m^2*K)", "rho_m * H * M / (T_e - T_0)", from)
	root := p.Step("r_t", "root of the freezing time", 2*q/(2*b/math.Sqrt(math.Pi)+math.Sqrt(4*b*b/math.Pi+2*n*km*q/(R/1000))), "s^0.5",
		"2 * B / (2 * b / sqrt(pi) + sqrt(4 * pow(b, 2) / pi + 2 * n * k_m * B / R))", from)
	return p.Step("t_r", "freezing time of the round shape", root*root, "s", "pow(r_t, 2)", from)
}
