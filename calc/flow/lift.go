package flow

import (
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// SurfaceLift is the upward push of metal, N, on one cope surface of projected
// area A (cm²) at depth d (mm) below the metal's free surface. It needs rho_m
// (kg/m³), g, A and d on the paper and puts F there.
//
// The area is that of the surface seen from above; upright walls count for
// nothing. Hydrostatics: the push of a standing liquid, without the surge when
// the mould fills.
func SurfaceLift(p *working.Paper, rho, g, areaCM2, depthMM float64) float64 {
	return p.Step("F", "lift on the surface", rho*g*areaCM2*1e-4*depthMM*1e-3, "N", "rho_m * g * A * d", source.Rao.Memory("ch. 4, forces acting on the moulding flasks"))
}
