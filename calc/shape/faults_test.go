package shape_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/shape"
)

func TestFaults(t *testing.T) {
	for _, c := range []struct {
		name  string
		solid shape.Solid
		field string
		says  string
	}{
		{"bore as wide as the tube", shape.Solid{Form: shape.Tube, Diameter: 50 * mm, Inner: 50 * mm, Height: 10 * mm}, "s.inner", "a bore of 50 mm leaves no wall in a tube of 50 mm; it must be under 49.8 mm"},
		{"ring fatter than itself", shape.Solid{Form: shape.Torus, Diameter: 50 * mm, Section: 60 * mm}, "s.section", "a section of 60 mm overlaps itself on a ring of 50 mm; it must be at most as large as the ring"},
		{"bow tie", shape.Solid{Form: shape.Outline, Height: 10 * mm, Points: profile(0, 0, 10, 10, 10, 0, 0, 10)}, "s.points[0]", "the edge from corner 1 to corner 2 meets the edge from corner 3 to corner 4; give the corners in order round the outline, so that no edges cross or touch"},
		{"spike", shape.Solid{Form: shape.Outline, Height: 10 * mm, Points: profile(0, 0, 50, 0, 30, 0, 30, 20)}, "s.points[0]", "the edge from corner 1 to corner 2 meets the edge from corner 2 to corner 3; give the corners in order round the outline, so that no edges cross or touch"},
		{"closing spike", shape.Solid{Form: shape.Outline, Height: 10 * mm, Points: profile(0, 0, 30, 0, 30, 20, 40, 0)}, "s.points[0]", "the edge from corner 1 to corner 2 meets the edge from corner 4 to corner 1; give the corners in order round the outline, so that no edges cross or touch"},
		{"touching waist", shape.Solid{Form: shape.Outline, Height: 10 * mm, Points: profile(0, 0, 20, 0, 10, 10, 20, 20, 0, 20, 10, 10)}, "s.points[1]", "the edge from corner 2 to corner 3 meets the edge from corner 5 to corner 6; give the corners in order round the outline, so that no edges cross or touch"},
		{"twice the same", shape.Solid{Form: shape.Outline, Height: 10 * mm, Points: profile(0, 0, 20, 0, 20, 0, 20, 20)}, "s.points[2]", "corner 3 is the same point as corner 2; leave one of them out"},
		{"past the axis", shape.Solid{Form: shape.Turned, Points: profile(-1, 0, 20, 0, 20, 20)}, "s.points[0].x", "corner 1 lies at -1 mm, on the far side of the axis; a turned profile is drawn on one side only, radius 0 or more"},
		{"sliver", shape.Solid{Form: shape.Outline, Height: 10 * mm, Points: profile(0, 0, 1000, 0, 500, 0.01)}, "s.points", "the corners enclose no section to speak of; its mean width must be at least 0.1 mm"},
	} {
		t.Run(c.name, func(t *testing.T) {
			s, faults := form.Ready(c.solid)
			require.NoError(t, faults.Err())
			got := s.Faults("s")
			require.Len(t, got, 1)
			require.Equal(t, c.field, got[0].Field)
			require.Equal(t, c.says, got[0].Why.String())
		})
	}
	require.Len(t, shape.AllFaults([]shape.Solid{{Form: shape.Plate}, {Form: shape.Torus, Diameter: 1, Section: 2}}, "solids"), 1)
}

func TestNotCountedFieldsAreIgnored(t *testing.T) {
	nan := quantity.Length(math.NaN())
	ball := shape.Solid{Form: shape.Sphere, Diameter: 0.1, Length: nan, Width: -1, Inner: 5, Points: profile(1, 1), Sides: -3, Bore: quantity.Some(quantity.Ratio(math.Inf(1)))}
	m := measure(t, ball)
	require.InEpsilon(t, 0.1/6, float64(m.Modulus), 1e-12)
}

func TestMissing(t *testing.T) {
	for _, f := range forms() {
		_, faults := form.Ready(shape.Solid{Form: f})
		require.True(t, faults.Missing(), f)
	}
	_, faults := form.Ready(shape.Solid{})
	require.True(t, faults.Missing())
}

func FuzzMeasure(f *testing.F) {
	f.Add(0, 1.0, 2.0, 3.0, 4.0, 0.0, 0.0, 1.0, 1.0, 2.0, 0.5)
	f.Add(11, 0.1, 0.2, 0.3, 0.4, 0.0, 0.0, 1.0, 1.0, 1.0, -1.0)
	f.Fuzz(func(t *testing.T, kind int, a, b, c, d, x1, y1, x2, y2, x3, y3 float64) {
		all := forms()
		s := shape.Solid{Form: all[((kind%len(all))+len(all))%len(all)],
			Length: quantity.Length(a), Width: quantity.Length(b), Thickness: quantity.Length(c), Height: quantity.Length(d), Diameter: quantity.Length(a), Inner: quantity.Length(b), Section: quantity.Length(c),
			TopDiameter: quantity.Some(quantity.Length(b)), ThinEnd: quantity.Some(quantity.Length(c)), Sides: kind, Flats: quantity.Length(b), Joined: quantity.Some(quantity.Ratio(x1)), Bore: quantity.Some(quantity.Ratio(y1)),
			Points: profile(1000*x1, 1000*y1, 1000*x2, 1000*y2, 1000*x3, 1000*y3, 1000*a, 1000*b)}
		s, faults := form.Ready(s)
		if len(faults) > 0 || len(s.Faults("s")) > 0 {
			return
		}
		m := s.Measure(nil)
		for _, v := range []float64{float64(m.Volume), float64(m.Area), float64(m.Cooling), float64(m.Modulus)} {
			if !quantity.Finite(v) || v <= 0 {
				t.Fatalf("%+v of %+v", m, s)
			}
		}
		x, y, z := s.Box()
		if !(x > 0 && y > 0 && z > 0) {
			t.Fatalf("box %v %v %v", x, y, z)
		}
	})
}
