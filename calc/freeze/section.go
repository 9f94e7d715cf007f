package freeze

import (
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// Modulus puts the modulus M, mm, of the section on the paper and returns it.
// It reads nothing of the input but the shape and its sizes, which must have
// passed form.Ready. All faces named by the shape cool; for a face that does
// not, state the modulus.
func Modulus(in Input, p *working.Paper) float64 {
	exact := source.Derived("geometry, all faces cooling")
	const what = "modulus, volume over cooled surface"
	switch in.Shape {
	case Plate:
		T := p.Give("T", "thickness", in.Thickness, "mm")
		return p.Step("M", what, T/2, "mm", "T / 2", exact)
	case Block:
		T := p.Give("T", "thickness", in.Thickness, "mm")
		l := p.Give("l", "length", in.Length, "mm")
		w := p.Give("w", "width", in.Width, "mm")
		return p.Step("M", what, l*w*T/(2*(l*w+l*T+w*T)), "mm", "l * w * T / (2 * (l * w + l * T + w * T))", exact)
	case Bar:
		a := p.Give("a", "breadth", in.Breadth, "mm")
		d := p.Give("d", "depth", in.Depth, "mm")
		return p.Step("M", what, a*d/(2*(a+d)), "mm", "a * d / (2 * (a + d))", exact)
	case Cylinder:
		D := p.Give("D", "diameter", in.Diameter, "mm")
		if !in.Height.Known() {
			return p.Step("M", what, D/4, "mm", "D / 4", exact)
		}
		l := working.GiveOpt(p, "l", "height", in.Height, "mm")
		return p.Step("M", what, D*l/(2*(D+2*l)), "mm", "D * l / (2 * (D + 2 * l))", exact)
	case Sphere:
		D := p.Give("D", "diameter", in.Diameter, "mm")
		return p.Step("M", what, D/6, "mm", "D / 6", exact)
	}
	own := p.Give("M_own", "modulus as stated", in.Modulus, "mm")
	return p.Step("M", what, own, "mm", "M_own", source.Own("your own figure"))
}

// round is the radius (mm) and the number of a shape for which Rounded holds.
func round(in Input) (R, n float64, ok bool) {
	switch {
	case in.Shape == Sphere:
		return float64(in.Diameter) * 500, 2, true
	case in.Shape == Cylinder && !in.Height.Known():
		return float64(in.Diameter) * 500, 1, true
	}
	return 0, 0, false
}
