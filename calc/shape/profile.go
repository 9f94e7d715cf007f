package shape

import (
	"fmt"
	"math"

	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// corner is a point in cm.
type corner struct{ x, y float64 }

// corners are the points in cm; a last point that repeats the first is left
// out, for people who close the outline themselves.
func corners(points []Point) []corner {
	out := make([]corner, 0, len(points))
	for _, p := range points {
		out = append(out, corner{quantity.In(p.X.V, "cm"), quantity.In(p.Y.V, "cm")})
	}
	if n := len(out); n > 3 && out[0] == out[n-1] {
		out = out[:n-1]
	}
	return out
}

// enclosed is the area inside the corners, by the surveyor's formula, taken
// about the first corner so that a far origin costs no digits.
func enclosed(c []corner) float64 {
	sum := 0.0
	for i := 1; i+1 < len(c); i++ {
		sum += cross(c[0], c[i], c[i+1])
	}
	return math.Abs(sum) / 2
}

func girth(c []corner) float64 {
	sum := 0.0
	for i, a := range c {
		b := c[(i+1)%len(c)]
		sum += math.Hypot(b.x-a.x, b.y-a.y)
	}
	return sum
}

func (s Solid) outline(p *working.Paper) (V, A float64) {
	c := corners(s.Points)
	H := p.Give("H", "thickness", s.Height, "cm")
	S := p.Solve("S", "area of the outline", enclosed(c), "cm^2",
		fmt.Sprintf("half the sum of x1·y2 − x2·y1 over the %d edges; exact", len(c)), nil, shoelace)
	U := p.Solve("U", "girth of the outline", girth(c), "cm", fmt.Sprintf("sum of the lengths of the %d edges; exact", len(c)), nil, geometry)
	return volume(p, S*H, "S * H"), area(p, 2*S+U*H, "2 * S + U * H")
}

// turned revolves the profile about x = 0. Each edge sweeps a frustum: volume
// between it and the axis pi/3 (r1² + r1 r2 + r2²)(z2 − z1), surface
// pi (r1 + r2) times the edge; signed, they add up to the body.
func (s Solid) turned(p *working.Paper) (V, A float64) {
	c := corners(s.Points)
	for i, a := range c {
		b := c[(i+1)%len(c)]
		V += math.Pi / 3 * (a.x*a.x + a.x*b.x + b.x*b.x) * (b.y - a.y)
		A += math.Pi * (a.x + b.x) * math.Hypot(b.x-a.x, b.y-a.y)
	}
	V = p.Solve("V", "volume", math.Abs(V), "cm^3",
		fmt.Sprintf("sum of π/3·(r1² + r1·r2 + r2²)·(z2 − z1) over the %d edges, each a frustum; exact", len(c)), nil, pappus)
	A = p.Solve("A", "surface", A, "cm^2",
		fmt.Sprintf("sum of π·(r1 + r2)·length over the %d edges, each a frustum; exact", len(c)), nil, pappus)
	return V, A
}

// cross is twice the signed area of the triangle a b c.
func cross(a, b, c corner) float64 {
	return (b.x-a.x)*(c.y-a.y) - (b.y-a.y)*(c.x-a.x)
}
