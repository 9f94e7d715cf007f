package flow

import (
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// DropShare is the part of its excess over the mould that metal loses in short
// sand runners, unless the user knows: iron 14 K, bronze 11, aluminium 7.
const DropShare = 0.01

// PutDrop puts T_g on the paper, the temperature that the metal loses on its
// way through sprue and runners, K: the user's own, or by DropShare. It needs
// T_p, the pouring temperature, and T_0, that of the mould, there, both in °C.
func PutDrop(p *working.Paper, own quantity.Opt[quantity.TempDiff], Tp, T0 float64) float64 {
	if own.Known() {
		return working.GiveOpt(p, "T_g", "loss in sprue and runners", own, "K")
	}
	from := source.Practice("5 to 30 °C in short sand runners")
	p.Const("r_g", "share of its excess over the mould that the metal loses in sprue and runners", DropShare, "1", from)
	return p.Step("T_g", "loss in sprue and runners", DropShare*(Tp-T0), "K", "r_g * (T_p - T_0)", from)
}
