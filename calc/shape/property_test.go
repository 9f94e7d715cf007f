package shape_test

import (
	"fmt"
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/shape"
)

// anySolid draws a sound solid of the form; every length is scaled by size.
func anySolid(r *rand.Rand, f shape.Form, size float64) shape.Solid {
	long := func(low, high float64) quantity.Length {
		return quantity.Length(size * (low + (high-low)*r.Float64()))
	}
	s := shape.Solid{Form: f, Length: long(0.1, 1), Width: long(0.1, 1), Thickness: long(0.1, 1), Height: long(0.1, 1), Diameter: long(0.5, 1), Sides: 3 + r.Intn(10), Flats: long(0.1, 1)}
	s.Inner = s.Diameter * quantity.Length(0.1+0.8*r.Float64())
	s.Section = s.Diameter * quantity.Length(0.1+0.8*r.Float64())
	s.TopDiameter = quantity.Some(long(0, 1))
	s.ThinEnd = quantity.Some(long(0, 1))
	n, shift := 3+r.Intn(12), 1.1
	for i := range n {
		// A star about a middle never crosses itself.
		sin, cos := math.Sincos(2 * math.Pi * (float64(i) + 0.8*r.Float64()) / float64(n))
		q := size * (0.2 + 0.8*r.Float64())
		s.Points = append(s.Points, shape.Point{X: quantity.Some(quantity.Length(shift*size + q*cos)), Y: quantity.Some(quantity.Length(q * sin))})
	}
	if n < 5 {
		// A star of few points may not hold its middle; it is sound all the same.
		s.Points = s.Points[:3]
	}
	return s
}

func forms() []shape.Form {
	var out []shape.Form
	for _, c := range shape.Form("").Choices() {
		out = append(out, shape.Form(c[0]))
	}
	return out
}

func TestScaling(t *testing.T) {
	r := rand.New(rand.NewSource(1))
	for _, f := range forms() {
		for range 50 {
			at := r.Int63()
			k := 0.2 + 5*r.Float64()
			a := measure(t, anySolid(rand.New(rand.NewSource(at)), f, 0.3))
			b := measure(t, anySolid(rand.New(rand.NewSource(at)), f, 0.3*k))
			require.InEpsilon(t, k*k*k, float64(b.Volume/a.Volume), 1e-9, f)
			require.InEpsilon(t, k*k, float64(b.Area/a.Area), 1e-9, f)
			require.InEpsilon(t, k, float64(b.Modulus/a.Modulus), 1e-9, f)
		}
	}
}

// TestNoSolidBeatsTheBall holds every form to the isoperimetric inequality,
// A³ ≥ 36π V².
func TestNoSolidBeatsTheBall(t *testing.T) {
	r := rand.New(rand.NewSource(2))
	for _, f := range forms() {
		for range 200 {
			m := measure(t, anySolid(r, f, 0.4))
			require.Positive(t, float64(m.Volume), f)
			require.Positive(t, float64(m.Modulus), f)
			V, A := float64(m.Volume), float64(m.Area)
			require.GreaterOrEqual(t, A*A*A*(1+1e-9), 36*math.Pi*V*V, f)
		}
	}
}

// TestAgainstMesh measures every form a second way: the drawn section is
// revolved, or pushed through the depth, into flat triangles, and their volume
// (by the divergence theorem) and surface summed.
func TestAgainstMesh(t *testing.T) {
	r := rand.New(rand.NewSource(3))
	for _, f := range forms() {
		for i := range 10 {
			s, faults := form.Ready(anySolid(r, f, 0.3))
			require.NoError(t, faults.Err())
			m := measure(t, s)
			V, A := meshed(s)
			// The chords of a drawn arc cost up to a hundredth.
			within := map[shape.Form]float64{shape.Sphere: 1e-2, shape.Cap: 1e-2, shape.Torus: 1e-2}[f]
			within = max(within, 2e-4)
			require.InEpsilon(t, V, float64(m.Volume), within, "volume of %s %d", f, i)
			require.InEpsilon(t, A, float64(m.Area), within, "surface of %s %d", f, i)
		}
	}
}

type spot3 struct{ x, y, z float64 }

func meshed(s shape.Solid) (V, A float64) {
	add := func(a, b, c spot3) {
		u, v := spot3{b.x - a.x, b.y - a.y, b.z - a.z}, spot3{c.x - a.x, c.y - a.y, c.z - a.z}
		n := spot3{u.y*v.z - u.z*v.y, u.z*v.x - u.x*v.z, u.x*v.y - u.y*v.x}
		V += (a.x*n.x + a.y*n.y + a.z*n.z) / 6
		A += math.Sqrt(n.x*n.x+n.y*n.y+n.z*n.z) / 2
	}
	switch s.Form {
	case shape.Plate, shape.Bar, shape.Wedge, shape.Outline:
		loop := s.SectionOutlines()[0]
		_, depth, _ := s.Box()
		return pushed(loop, float64(depth))
	case shape.Prism:
		// The section is drawn upright; the regular outline is set out here.
		var loop []shape.Spot
		R := float64(s.Flats) / 2 / math.Cos(math.Pi/float64(s.Sides))
		for i := range s.Sides {
			sin, cos := math.Sincos(2 * math.Pi * float64(i) / float64(s.Sides))
			loop = append(loop, shape.Spot{X: quantity.Length(R * cos), Y: quantity.Length(R * sin)})
		}
		return pushed(loop, float64(s.Height))
	}
	loops := s.SectionOutlines()
	loop := loops[len(loops)-1]
	const turns = 360
	for i, a := range loop {
		b := loop[(i+1)%len(loop)]
		r1, r2 := float64(a.X), float64(b.X)
		if len(loops) == 1 { // a full section: keep the half on this side of the axis
			r1, r2 = math.Max(r1, 0), math.Max(r2, 0)
		}
		for k := range turns {
			s1, c1 := math.Sincos(2 * math.Pi * float64(k) / turns)
			s2, c2 := math.Sincos(2 * math.Pi * float64(k+1) / turns)
			p, q := spot3{r1 * c1, r1 * s1, float64(a.Y)}, spot3{r1 * c2, r1 * s2, float64(a.Y)}
			u, v := spot3{r2 * c1, r2 * s1, float64(b.Y)}, spot3{r2 * c2, r2 * s2, float64(b.Y)}
			add(p, q, v)
			add(p, v, u)
		}
	}
	return math.Abs(V), A
}

// pushed is an outline through a depth: faces by cutting the loop into thin
// strips that are counted, not by the surveyor's formula.
func pushed(loop []shape.Spot, depth float64) (V, A float64) {
	low, high := math.Inf(1), math.Inf(-1)
	around := 0.0
	for i, a := range loop {
		b := loop[(i+1)%len(loop)]
		low, high = math.Min(low, float64(a.Y)), math.Max(high, float64(a.Y))
		around += math.Hypot(float64(b.X-a.X), float64(b.Y-a.Y))
	}
	const strips = 20000
	face := 0.0
	for k := range strips {
		y := low + (high-low)*(float64(k)+0.5)/strips
		var cuts []float64
		for i, a := range loop {
			b := loop[(i+1)%len(loop)]
			y1, y2 := float64(a.Y), float64(b.Y)
			if (y1 > y) != (y2 > y) {
				cuts = append(cuts, float64(a.X)+(y-y1)/(y2-y1)*float64(b.X-a.X))
			}
		}
		// The even-odd rule: every second gap is inside.
		for i := range cuts {
			for j := i + 1; j < len(cuts); j++ {
				if cuts[j] < cuts[i] {
					cuts[i], cuts[j] = cuts[j], cuts[i]
				}
			}
		}
		for i := 0; i+1 < len(cuts); i += 2 {
			face += (cuts[i+1] - cuts[i]) * (high - low) / strips
		}
	}
	return face * depth, 2*face + around*depth
}

// TestTurnedMeetsTheOthers turns the half sections of a cylinder, a tube, a
// frustum and a many-cornered ball.
func TestTurnedMeetsTheOthers(t *testing.T) {
	same := func(name string, a, b shape.Solid, within float64) {
		t.Run(name, func(t *testing.T) {
			one, two := measure(t, a), measure(t, b)
			require.InEpsilon(t, float64(one.Volume), float64(two.Volume), within)
			require.InEpsilon(t, float64(one.Area), float64(two.Area), within)
		})
	}
	same("cylinder", shape.Solid{Form: shape.Cylinder, Diameter: 80 * mm, Height: 50 * mm}, shape.Solid{Form: shape.Turned, Points: profile(0, 0, 40, 0, 40, 50, 0, 50)}, 1e-12)
	same("tube", shape.Solid{Form: shape.Tube, Diameter: 80 * mm, Inner: 60 * mm, Height: 50 * mm}, shape.Solid{Form: shape.Turned, Points: profile(30, 0, 30, 50, 40, 50, 40, 0)}, 1e-12)
	same("cone", shape.Solid{Form: shape.Frustum, Diameter: 80 * mm, TopDiameter: quantity.Some(20 * mm), Height: 50 * mm}, shape.Solid{Form: shape.Turned, Points: profile(0, -7, 40, -7, 10, 43, 0, 43, 0, -7)}, 1e-12)
	var half []float64
	for i := range 200 {
		sin, cos := math.Sincos(math.Pi * (float64(i)/199 - 0.5))
		half = append(half, 50*math.Max(cos, 0), 50*sin)
	}
	same("ball", shape.Solid{Form: shape.Sphere, Diameter: 100 * mm}, shape.Solid{Form: shape.Turned, Points: profile(half...)}, 2e-4)
	// The same from its foot up, 40 mm above the middle: foot diameter 60 mm.
	cut := []float64{0, 40}
	for i := range 150 {
		sin, cos := math.Sincos(math.Asin(0.8) + (math.Pi/2-math.Asin(0.8))*float64(i)/149)
		cut = append(cut, 50*math.Max(cos, 0), 50*sin)
	}
	same("cap", shape.Solid{Form: shape.Cap, Diameter: 60 * mm, Height: 10 * mm}, shape.Solid{Form: shape.Turned, Points: profile(cut...)}, 2e-4)
	same("square outline", shape.Solid{Form: shape.Bar, Length: 80 * mm, Width: 30 * mm, Height: 50 * mm}, shape.Solid{Form: shape.Outline, Height: 30 * mm, Points: profile(0, 0, 80, 0, 80, 50, 0, 50)}, 1e-12)
	same("wedge as a bar", shape.Solid{Form: shape.Bar, Length: 80 * mm, Width: 30 * mm, Height: 50 * mm}, shape.Solid{Form: shape.Wedge, Length: 80 * mm, Width: 30 * mm, Height: 50 * mm, ThinEnd: quantity.Some(50 * mm)}, 1e-12)
}

// TestSplit cuts solids in two: the halves hold what the whole held.
func TestSplit(t *testing.T) {
	r := rand.New(rand.NewSource(4))
	for range 100 {
		D1, D2, H, cut := 0.1+r.Float64(), r.Float64(), 0.1+r.Float64(), 0.05+0.9*r.Float64()
		mid := D1 + (D2-D1)*cut
		piece := func(a, b, h float64) shape.Measured {
			return measure(t, shape.Solid{Form: shape.Frustum, Diameter: quantity.Length(a), TopDiameter: quantity.Some(quantity.Length(b)), Height: quantity.Length(h)})
		}
		whole, low, high := piece(D1, D2, H), piece(D1, mid, H*cut), piece(mid, D2, H*(1-cut))
		require.InEpsilon(t, float64(whole.Volume), float64(low.Volume+high.Volume), 1e-9)
		require.InEpsilon(t, float64(whole.Area)+math.Pi/2*mid*mid, float64(low.Area+high.Area), 1e-9)
	}
}

func TestJoinedSurfaceRaisesTheModulus(t *testing.T) {
	for _, f := range forms() {
		s := anySolid(rand.New(rand.NewSource(5)), f, 0.3)
		free := measure(t, s)
		s.Joined = quantity.Some(20 * quantity.Percent)
		require.InEpsilon(t, 1.25, float64(measure(t, s).Modulus/free.Modulus), 1e-9, f)
	}
}

func TestDrawing(t *testing.T) {
	r := rand.New(rand.NewSource(6))
	for _, f := range forms() {
		for range 20 {
			s, faults := form.Ready(anySolid(r, f, 0.5))
			require.NoError(t, faults.Err())
			across, depth, up := s.Box()
			require.Positive(t, float64(depth))
			low, high, foot, top := 0.0, 0.0, math.Inf(1), math.Inf(-1)
			for _, loop := range s.SectionOutlines() {
				require.GreaterOrEqual(t, len(loop), 3)
				for _, p := range loop {
					low, high = math.Min(low, float64(p.X)), math.Max(high, float64(p.X))
					foot, top = math.Min(foot, float64(p.Y)), math.Max(top, float64(p.Y))
				}
			}
			require.InDelta(t, 0, foot, 2e-3, "%s stands on the ground", f)
			require.InDelta(t, float64(across), high-low, 1e-9, fmt.Sprint(f))
			require.InDelta(t, float64(up), top-foot, 1e-9, fmt.Sprint(f))
			require.InDelta(t, -low, high, 1e-9, "%s stands in the middle", f)
			require.LessOrEqual(t, float64(s.Volume()), float64(across)*float64(depth)*float64(up)*(1+5e-3), f)
		}
	}
}
