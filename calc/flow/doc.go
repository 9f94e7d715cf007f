// Package flow holds the hydraulics and hydrostatics of liquid metal that more
// than one calculator needs: the speed under a head, effective heads by the
// place of the ingates, the choke, filling times, the taper of a sprue, and
// the lift of metal on a cope.
//
// Each function works on a paper that already carries the symbols named in
// its comment, in the units named there, and puts its own result on it. The
// metal is taken as a liquid without friction but for the discharge
// coefficient, the basin as kept full.
package flow

import (
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// Gravity is the acceleration of free fall, m/s², as the foundry texts print
// it. The sum of their examples comes out only with this figure; the standard
// value is 9.80665.
const Gravity = 9.81

// PutGravity puts g on the paper.
func PutGravity(p *working.Paper) float64 {
	return p.Const("g", "acceleration of free fall", Gravity, "m/s^2", source.Groover.Memory("ch. 10"))
}
