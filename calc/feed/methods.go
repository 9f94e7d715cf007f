package feed

import (
	"fmt"
	"math"

	"pourwright/calc/alloy"
	"pourwright/calc/quantity"
	"pourwright/calc/solve"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// caineRow is one set of constants of Caine's curve X = a/(Y − b) + c, where X
// is A/V of the casting over that of the riser and Y the riser's volume over
// the casting's.
type caineRow struct {
	of      string
	a, b, c float64
	// rules says that the row counts for the governing diameter; one that does
	// not stands beside it for comparison.
	rules bool
	from  source.Ref
}

var (
	raoCaine   = source.Rao.Memory("ch. 5, constants of Caine's curve")
	otherCaine = source.Caine.Memory("constants as other texts print them for steel")
)

// caineRows are the rows for a metal. Of grey iron the table of P. N. Rao has
// two that do not agree; both stand, and the larger riser counts.
func caineRows(a *alloy.Alloy) []caineRow {
	ironBrass := caineRow{"cast iron, brass", 0.04, 0.017, 1, true, raoCaine}
	switch {
	case a.Family == alloy.Steel:
		return []caineRow{{"steel", 0.10, 0.03, 1, true, raoCaine}, {"steel, other texts", 0.12, 0.05, 1, false, otherCaine}}
	case a.Family == alloy.Aluminium:
		return []caineRow{{"aluminium", 0.10, 0.06, 1.08, true, raoCaine}}
	case a.Family == alloy.GreyIron:
		return []caineRow{ironBrass, {"grey cast iron", 0.33, 0.03, 1, true, raoCaine}}
	case a.Code == alloy.CodeYellowBrass:
		return []caineRow{ironBrass}
	case a.Code == alloy.CodeAluminiumBronze, a.Code == alloy.CodeSiliconBronze:
		return []caineRow{{"aluminium bronze, silicon bronze", 0.24, 0.017, 1, true, raoCaine}}
	}
	return nil
}

// caine finds the diameter at which the riser lies on Caine's curve. V_z, A_z,
// c_V and c_M are on the paper.
//
// X = (A_z/V_z) c_M D and Y = c_V D³/V_z both grow with D, so (X − c)(Y − b)
// passes a just once above where both factors are positive.
func caine(p *working.Paper, row caineRow, Vz, Az, cV, cM float64) CaineAnswer {
	a, b, c := p.Lookup("a", "Caine's a, "+row.of, row.a, "1", row.from, ""), p.Lookup("b", "Caine's b, "+row.of, row.b, "1", row.from, ""), p.Lookup("c", "Caine's c, "+row.of, row.c, "1", row.from, "")
	x := func(D float64) float64 { return Az / Vz * cM * D }
	y := func(D float64) float64 { return cV * D * D * D / Vz }
	low := math.Max(c*Vz/(Az*cM), math.Cbrt(b*Vz/cV))
	high := 2 * low
	over := func(D float64) float64 { return (x(D)-c)*(y(D)-b) - a }
	for over(high) <= 0 {
		high *= 2
	}
	D := p.Solve("D", "diameter on Caine's curve", solve.Root(over, low, high, 1e-12*low), "cm", "root of (X − c)(Y − b) = a in the diameter, bracketed, to twelve digits", []string{"V_z", "A_z", "c_V", "c_M", "a", "b", "c"}, row.from)
	X := p.Step("X", "freezing ratio, casting over riser", x(D), "1", "A_z / V_z * c_M * D", row.from)
	Y := p.Step("Y", "volume ratio, riser over casting", y(D), "1", "c_V * pow(D, 3) / V_z", row.from)
	return CaineAnswer{Constants: row.of, A: quantity.Number(a), B: quantity.Number(b), C: quantity.Number(c), Diameter: quantity.Some(cm(D)), X: quantity.Some(quantity.Number(X)), Y: quantity.Some(quantity.Number(Y))}
}

// nrl is the curve of riser volume over casting volume against the shape
// factor, read off textbook reproductions to 0.05.
var nrl = []struct{ S, y float64 }{
	{2, 1.05}, {4, 0.80}, {5, 0.72}, {6, 0.64}, {8, 0.54}, {10, 0.47}, {15, 0.35}, {20, 0.28}, {25, 0.25}, {30, 0.22},
}

var nrlCurve = source.Bishop.Memory("riser volume against shape factor, read off reproductions of the curve to 0.05")

// nrlRatio reads the curve at S, straight between its points. It needs S on
// the paper, between the ends of the table.
func nrlRatio(p *working.Paper, S float64) float64 {
	i := 1
	for i < len(nrl)-1 && S > nrl[i].S {
		i++
	}
	lo, hi := nrl[i-1], nrl[i]
	s1, y1 := p.Lookup("S_1", "shape factor, point below", lo.S, "1", nrlCurve, ""), p.Lookup("y_1", "riser over casting there", lo.y, "1", nrlCurve, "")
	s2, y2 := p.Lookup("S_2", "shape factor, point above", hi.S, "1", nrlCurve, ""), p.Lookup("y_2", "riser over casting there", hi.y, "1", nrlCurve, "")
	return p.StepNote("y_N", "riser over casting, NRL curve", y1+(y2-y1)*(S-s1)/(s2-s1), "1", "y_1 + (y_2 - y_1) * (S - S_1) / (S_2 - S_1)", nrlCurve, fmt.Sprintf("between the points at %g and %g", lo.S, hi.S))
}

// sfsaRatio is the power law fitted for steel; it departs from the NRL curve
// below a shape factor of 4. It needs S on the paper.
func sfsaRatio(p *working.Paper, S float64) float64 {
	from := source.SFSA.Memory("sec. 6, top riser, carbon and low-alloy steel")
	k, e := p.Const("k_S", "factor of the power law", 2.51, "1", from), p.Const("e_S", "its exponent", -0.74, "1", from)
	return p.Step("y_S", "riser over casting, SFSA 2001", k*math.Pow(S, e), "1", "k_S * pow(S, e_S)", from)
}

// covered is the table of Adams and Taylor: minutes that a riser 4 in across
// and 4 in high took to freeze.
var covered = map[string]map[Cover]float64{
	"steel":     {Open: 5.0, Sleeve: 7.5, Topped: 13.4, Both: 43.0},
	"copper":    {Open: 8.2, Sleeve: 15.1, Topped: 14.0, Both: 45.0},
	"aluminium": {Open: 12.3, Sleeve: 31.1, Topped: 14.3, Both: 45.6},
}

var adams = source.AdamsTay.Memory("risers 4 in by 4 in, open, sleeved, insulated on top and both; reproduced in Heine, Loper and Rosenthal")

// coveredMetal is the metal of that table which stands for a family; irons and
// low-melting metals have none.
func coveredMetal(f alloy.Family) string {
	return map[alloy.Family]string{alloy.Steel: "steel", alloy.Copper: "copper", alloy.Aluminium: "aluminium"}[f]
}

// seen puts what Adams and Taylor measured beside a riser.
func seen(p *working.Paper, f alloy.Family, c Cover, out *RiserAnswer) {
	row := covered[coveredMetal(f)]
	if row == nil || c == Blind {
		return
	}
	open := p.Lookup("t_o", "freezing time of an open riser, 4 in by 4 in", row[Open], "min", adams, "")
	with := p.Lookup("t_c", "freezing time of that riser so covered", row[c], "min", adams, "")
	t := p.Step("t_s", "a riser of 4 in so covered froze in", with, "min", "t_c", adams)
	x := p.Step("x_s", "modulus extension seen there", math.Sqrt(with/open), "1", "sqrt(t_c / t_o)", source.Derived("time goes with the square of the modulus"))
	out.SeenTime, out.SeenExtension = quantity.Some(quantity.From[quantity.Time](t, "min")), quantity.Some(quantity.Number(x))
}
