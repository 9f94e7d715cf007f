package flow

import (
	"math"

	"pourwright/calc/source"
	"pourwright/calc/working"
)

// Position is where the ingates meet the cavity.
type Position string

// The positions of the ingates.
const (
	Top     Position = "top"
	Parting Position = "parting"
	Bottom  Position = "bottom"
)

// Choices lists the positions for a form.
func (Position) Choices() [][2]string {
	return [][2]string{
		{string(Top), "Top of the cavity"},
		{string(Parting), "Parting line, part of the cavity above it"},
		{string(Bottom), "Bottom of the cavity"},
	}
}

// CopePart is the height of cavity above the ingates: none for a top gate,
// all of it for a bottom gate, and for a gate at the parting whatever stands
// in the cope.
func (at Position) CopePart(cavity, inCope float64) float64 {
	switch at {
	case Top:
		return 0
	case Bottom:
		return cavity
	}
	return inCope
}

// Heads returns the effective metal heads of the trade's rule and of the exact
// filling time. It needs on the paper h, the height of metal in the basin
// above the ingates, c, the height of the cavity, and c_p, the part of it
// above the ingates; all in mm. It puts H and H_x there.
//
// The rule: H = h − c_p²/(2c), which is h for a top gate and h − c/2 for a
// bottom gate.
//
// The exact head is the constant one that would fill the cavity in the same
// time. A cavity of even plan area A fills through an ingate a: the part
// below the gate under the full head h, the part above against the metal
// already risen, so
//
//	t = A/(a√(2g)) · [ (c − c_p)/√h + 2(√h − √(h − c_p)) ],
//
// and a constant head H_x gives t = A c/(a√(2g H_x)). The exact head is never
// above the rule's, and the two part company when the metal nearly reaches the
// level of the basin: the rule then promises a fill that is too quick.
//
// Holds for c > 0 and 0 ≤ c_p ≤ c, c_p < h; the caller checks.
func Heads(p *working.Paper, h, c, cp float64) (rule, exact float64) {
	rule = p.Step("H", "effective head, trade rule", h-cp*cp/(2*c), "mm", "h - pow(c_p, 2) / (2 * c)", source.Rao.Memory("ch. 4, effective sprue height"))
	root := p.Step("r_H", "root of the exact head", c/((c-cp)/math.Sqrt(h)+2*(math.Sqrt(h)-math.Sqrt(h-cp))), "mm^0.5",
		"c / ((c - c_p) / sqrt(h) + 2 * (sqrt(h) - sqrt(h - c_p)))", source.Derived("equal filling time of an even cavity"))
	exact = p.Step("H_x", "effective head, exact", root*root, "mm", "pow(r_H, 2)", source.Derived("equal filling time of an even cavity"))
	return rule, exact
}
