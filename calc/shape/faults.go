package shape

import (
	"fmt"
	"math"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// thinnest is the least wall of a tube and the least mean width of an outline:
// far below any casting, far above the rounding of the sums.
const thinnest = 0.1 * quantity.Millimetre

// Faults checks what the dimensions of a solid must be to each other, once
// form.Ready has found each of them in range. path is the solid's own place in
// the input ("solids[2]").
func (s Solid) Faults(path string) form.Faults {
	switch s.Form {
	case Tube:
		if s.Diameter-s.Inner < 2*thinnest {
			return form.Faults{{Field: path + ".inner", Label: "Bore", Value: quantity.Text(s.Inner),
				Why: working.Say("a bore of %v leaves no wall in a tube of %v; it must be under %v", s.Inner, s.Diameter, s.Diameter-2*thinnest)}}
		}
	case Torus:
		if s.Section > s.Diameter {
			return form.Faults{{Field: path + ".section", Label: "Diameter of the section", Value: quantity.Text(s.Section),
				Why: working.Say("a section of %v overlaps itself on a ring of %v; it must be at most as large as the ring", s.Section, s.Diameter)}}
		}
	case Outline, Turned:
		return s.profileFaults(path + ".points")
	}
	return nil
}

// AllFaults is Faults for a list of solids found at path.
func AllFaults(solids []Solid, path string) form.Faults {
	var out form.Faults
	for i, s := range solids {
		out = append(out, s.Faults(fmt.Sprintf("%s[%d]", path, i))...)
	}
	return out
}

func (s Solid) profileFaults(path string) form.Faults {
	at := func(i int, label string, why working.Text) form.Fault {
		return form.Fault{Field: fmt.Sprintf("%s[%d]", path, i), Label: fmt.Sprintf("%s %d", label, i+1), Why: why}
	}
	var out form.Faults
	c := corners(s.Points)
	if s.Form == Turned {
		for i, p := range s.Points {
			if p.X.V < 0 {
				f := at(i, "Corner", working.Say("corner %v lies at %v, on the far side of the axis; a turned profile is drawn on one side only, radius 0 or more", i+1, p.X.V))
				f.Field += ".x"
				out = append(out, f)
			}
		}
	}
	n := len(c)
	for i := range c {
		if c[i] == c[(i+1)%n] {
			out = append(out, at((i+1)%n, "Corner", working.Say("corner %v is the same point as corner %v; leave one of them out", (i+1)%n+1, i+1)))
		}
	}
	if len(out) > 0 {
		return out
	}
	if i, j, crossed := firstCrossing(c); crossed {
		return form.Faults{at(i, "Corner", working.Say("the edge from corner %v to corner %v meets the edge from corner %v to corner %v; give the corners in order round the outline, so that no edges cross or touch",
			i+1, (i+1)%n+1, j+1, (j+1)%n+1))}
	}
	if enclosed(c) < quantity.In(thinnest, "cm")*girth(c)/2 {
		return form.Faults{{Field: path, Label: "Corners in order", Why: working.Say("the corners enclose no section to speak of; its mean width must be at least %v", thinnest)}}
	}
	return nil
}

// firstCrossing finds two edges, i before j, that share a point they should
// not: any point for edges apart, more than their common corner for
// neighbours.
func firstCrossing(c []corner) (i, j int, crossed bool) {
	n := len(c)
	for i := range c {
		a, b := c[i], c[(i+1)%n]
		for j := i + 1; j < n; j++ {
			p, q := c[j], c[(j+1)%n]
			switch {
			case j == i+1:
				crossed = foldsBack(a, b, q)
			case (j+1)%n == i:
				crossed = foldsBack(p, a, b)
			default:
				crossed = meet(a, b, p, q)
			}
			if crossed {
				return i, j, true
			}
		}
	}
	return 0, 0, false
}

// foldsBack reports that the edge b c runs back along a b.
func foldsBack(a, b, c corner) bool {
	dot := (b.x-a.x)*(c.x-b.x) + (b.y-a.y)*(c.y-b.y)
	return side(a, b, c) == 0 && dot < 0
}

// meet reports that the segments a b and p q have a point in common.
func meet(a, b, p, q corner) bool {
	d1, d2, d3, d4 := side(a, b, p), side(a, b, q), side(p, q, a), side(p, q, b)
	if d1*d2 < 0 && d3*d4 < 0 {
		return true
	}
	return d1 == 0 && within(a, b, p) || d2 == 0 && within(a, b, q) || d3 == 0 && within(p, q, a) || d4 == 0 && within(p, q, b)
}

// side is the sign of cross, zero where rounding could decide it.
func side(a, b, c corner) int {
	v := cross(a, b, c)
	size := math.Hypot(b.x-a.x, b.y-a.y) * math.Hypot(c.x-a.x, c.y-a.y)
	switch {
	case math.Abs(v) <= 1e-12*size:
		return 0
	case v > 0:
		return 1
	}
	return -1
}

// within reports that p, known to lie on the line a b, lies between them.
func within(a, b, p corner) bool {
	return math.Min(a.x, b.x) <= p.x && p.x <= math.Max(a.x, b.x) && math.Min(a.y, b.y) <= p.y && p.y <= math.Max(a.y, b.y)
}
