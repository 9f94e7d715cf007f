package feed

import (
	"fmt"
	"math"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

var circles = source.Heuvers.Memory("circle inscribed in the section; its size by plane geometry")

// circle puts d_c, the largest circle that fits into a junction of walls T_1
// and T_2 with inner fillets of radius r_f, on the paper, in mm.
//
// L, outer corner sharp: the circle touches both outer faces and the fillet,
// whose centre lies at (T_2 + r_f, T_1 + r_f) from the outer corner; so does a
// circle of radius r about (r, r) when
//
//	r = T_1 + T_2 + 3 r_f − √(2 (T_1 + 2 r_f)(T_2 + 2 r_f)).
//
// T: it touches the far face of the wall that runs through, T_1, and both
// fillets:
//
//	2 r = [(T_1 + r_f)² + (T_2/2 + r_f)² − r_f²] / (T_1 + 2 r_f).
//
// X: it touches all four fillets:
//
//	r = √((T_1/2 + r_f)² + (T_2/2 + r_f)²) − r_f.
//
// In an L or T of very unequal walls the circle would touch the fillet beyond
// its end: then none is larger than the thicker wall's own.
func circle(p *working.Paper, j Junction, T1, T2, f float64) float64 {
	const what = "largest circle in the junction"
	heavier := math.Max(T1, T2)
	alone := func() float64 {
		return p.StepNote("d_c", what, heavier, "mm", "max(T_1, T_2)", circles, "the walls are so unequal that none is larger than the thicker one's own")
	}
	switch j {
	case L:
		r := T1 + T2 + 3*f - math.Sqrt(2*(T1+2*f)*(T2+2*f))
		if r > math.Min(T1, T2)+f {
			return alone()
		}
		return p.Step("d_c", what, 2*r, "mm", "2 * (T_1 + T_2 + 3 * r_f - sqrt(2 * (T_1 + 2 * r_f) * (T_2 + 2 * r_f)))", circles)
	case T:
		d := ((T1+f)*(T1+f) + (T2/2+f)*(T2/2+f) - f*f) / (T1 + 2*f)
		if d > 2*(T1+f) {
			return alone()
		}
		return p.Step("d_c", what, d, "mm", "(pow(T_1 + r_f, 2) + pow(T_2 / 2 + r_f, 2) - pow(r_f, 2)) / (T_1 + 2 * r_f)", circles)
	}
	r := math.Sqrt((T1/2+f)*(T1/2+f)+(T2/2+f)*(T2/2+f)) - f
	return p.Step("d_c", what, 2*r, "mm", "2 * (sqrt(pow(T_1 / 2 + r_f, 2) + pow(T_2 / 2 + r_f, 2)) - r_f)", circles)
}

// spot is the hot spot of a joint.
type spot struct {
	known bool
	name  string
	M     float64 // cm
	up    int     // section through which it is fed
	path  string
	p     *working.Paper
}

// joints finds the hot spots.
func (f *feeding) joints() {
	for k, j := range f.in.Joints {
		one, other := f.links.joints[k][0], f.links.joints[k][1]
		path := fmt.Sprintf("joints[%d]", k)
		s := spot{path: path, name: "junction of " + f.bodies[one].name + " and " + f.bodies[other].name}
		out := JointAnswer{Name: f.bodies[one].name + " – " + f.bodies[other].name}
		if j.Junction.V != Flush {
			p := f.p.Sub(path)
			T1, T2 := p.Give("T_1", "wall of "+f.bodies[one].name, wall(f.in.Sections[one]), "mm"), p.Give("T_2", "wall of "+f.bodies[other].name, wall(f.in.Sections[other]), "mm")
			d := circle(p, j.Junction.V, T1, T2, working.GiveOpt(p, "r_f", "fillet", j.Fillet, "mm"))
			heavy, symbol, T := one, "T_1", T1
			if T2 > T1 {
				heavy, symbol, T = other, "T_2", T2
			}
			r := p.Step("r_c", "circle over the thicker wall", d/T, "1", "d_c / "+symbol, circles)
			Mw := p.Carry("M_w", "modulus of "+f.bodies[heavy].name, f.bodies[heavy].M, "cm")
			s.M = p.Step("M", "modulus of the hot spot", r*Mw, "cm", "r_c * M_w", source.Practice("modulus of a junction from its circle, half the circle between plates"))
			s.known, s.up, s.p = true, f.upstream(one, other), p
			out.Circle, out.Ratio, out.Modulus = quantity.Some(quantity.From[quantity.Length](d, "mm")), quantity.Some(quantity.Number(r)), quantity.Some(cm(s.M))
			out.Time, _, _ = f.times(p, "M", s.M)
			out.From = f.bodies[s.up].name
			if r := f.links.stands[k]; r >= 0 {
				out.From = riserName(f.in.Risers[r], r)
			}
		}
		f.spots = append(f.spots, s)
		f.out.Joints = append(f.out.Joints, out)
	}
}

// upstream is the section of two through which their junction is fed: the one
// that feeds the other, or else the one that freezes later.
func (f *feeding) upstream(one, other int) int {
	switch {
	case f.links.from[other] == origin{section, one}:
		return one
	case f.links.from[one] == origin{section, other}:
		return other
	case f.bodies[other].Mo > f.bodies[one].Mo:
		return other
	}
	return one
}
