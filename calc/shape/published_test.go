package shape_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/shape"
	"pourwright/calc/working"
	"pourwright/calc/working/stepcheck"
)

const mm = quantity.Millimetre

// measure runs the checks a calculator runs, and proves the steps.
func measure(t *testing.T, s shape.Solid) shape.Measured {
	t.Helper()
	ready, faults := form.Ready(s)
	require.NoError(t, faults.Err())
	require.NoError(t, ready.Faults("solids[0]").Err())
	p := &working.Paper{}
	m := ready.Measure(p)
	require.Empty(t, stepcheck.Paper(p))
	require.Equal(t, m, ready.Measure(nil), "with and without paper")
	return m
}

func profile(xy ...float64) []shape.Point {
	var out []shape.Point
	for i := 0; i+1 < len(xy); i += 2 {
		out = append(out, shape.Point{X: quantity.Some(quantity.Length(xy[i]) * mm), Y: quantity.Some(quantity.Length(xy[i+1]) * mm)})
	}
	return out
}

func cm3(m shape.Measured) float64 { return quantity.In(m.Volume, "cm^3") }
func cm2(m shape.Measured) float64 { return quantity.In(m.Area, "cm^2") }

func TestPublished(t *testing.T) {
	t.Run("Archimedes, On the Sphere and Cylinder I, 34: ball to its cylinder as 2 to 3, in volume and in surface", func(t *testing.T) {
		ball := measure(t, shape.Solid{Form: shape.Sphere, Diameter: 84 * mm})
		round := measure(t, shape.Solid{Form: shape.Cylinder, Diameter: 84 * mm, Height: 84 * mm})
		require.InEpsilon(t, 2.0/3, cm3(ball)/cm3(round), 1e-12)
		require.InEpsilon(t, 2.0/3, cm2(ball)/cm2(round), 1e-12)
	})
	t.Run("Archimedes, On the Sphere and Cylinder I, 42: the curved surface of a cap is a circle of the chord from pole to rim", func(t *testing.T) {
		// Foot radius 30 mm, height 40 mm: chord 50 mm. The flat face is added.
		c := measure(t, shape.Solid{Form: shape.Cap, Diameter: 60 * mm, Height: 40 * mm})
		require.InEpsilon(t, math.Pi*(25+9), cm2(c), 1e-12)
	})
	t.Run("Euclid, Elements XII, 10: a cone is a third of its cylinder", func(t *testing.T) {
		cone := measure(t, shape.Solid{Form: shape.Frustum, Diameter: 70 * mm, Height: 120 * mm})
		round := measure(t, shape.Solid{Form: shape.Cylinder, Diameter: 70 * mm, Height: 120 * mm})
		require.InEpsilon(t, 1.0/3, cm3(cone)/cm3(round), 1e-12)
	})
	t.Run("Pappus, Collection VII: a ring is its section times the way of its centre", func(t *testing.T) {
		ring := measure(t, shape.Solid{Form: shape.Torus, Diameter: 200 * mm, Section: 30 * mm})
		require.InEpsilon(t, math.Pi*1.5*1.5*math.Pi*20, cm3(ring), 1e-12)
		require.InEpsilon(t, math.Pi*3*math.Pi*20, cm2(ring), 1e-12)
		// A turned square of side 30 mm about the same circle.
		square := measure(t, shape.Solid{Form: shape.Turned, Points: profile(85, 0, 115, 0, 115, 30, 85, 30)})
		require.InEpsilon(t, 9*math.Pi*20, cm3(square), 1e-12)
		require.InEpsilon(t, 12*math.Pi*20, cm2(square), 1e-12)
	})
	t.Run("G. Pick, 1899: lattice area from inner and border points", func(t *testing.T) {
		// (0,0) (6,0) (6,2) (2,2) (2,5) (0,5), in cm: 18 cm² = 8 + 22/2 - 1.
		o := measure(t, shape.Solid{Form: shape.Outline, Height: 10 * mm, Points: profile(0, 0, 60, 0, 60, 20, 20, 20, 20, 50, 0, 50)})
		require.InDelta(t, 18, cm3(o), 1e-12)
	})
	t.Run("P. N. Rao, cast-iron pipe core of 10 cm by 180 cm: 14137.2 cm³ (seen)", func(t *testing.T) {
		require.InDelta(t, 14137.2, cm3(measure(t, shape.Solid{Form: shape.Cylinder, Diameter: 100 * mm, Height: 1800 * mm})), 0.05)
	})
	t.Run("EN 10220 (from memory): tube 60.3 × 2.9 mm weighs 4.11 kg/m at 7.85 kg/dm³", func(t *testing.T) {
		tube := measure(t, shape.Solid{Form: shape.Tube, Diameter: 60.3 * mm, Inner: 54.5 * mm, Height: 1000 * mm})
		require.InDelta(t, 4.11, float64(tube.Volume)*7850, 0.005)
	})
	t.Run("EN 10061 (from memory): hexagon bar of 22 mm weighs 3.29 kg/m at 7.85 kg/dm³", func(t *testing.T) {
		bar := measure(t, shape.Solid{Form: shape.Prism, Sides: 6, Flats: 22 * mm, Height: 1000 * mm})
		require.InDelta(t, 3.29, float64(bar.Volume)*7850, 0.005)
	})
	t.Run("Groover, riser example in ch. 10 (from memory): plate 7.5 × 12.5 × 2.0 cm has 187.5 cm³ and 267.5 cm²", func(t *testing.T) {
		plate := measure(t, shape.Solid{Form: shape.Plate, Length: 125 * mm, Width: 75 * mm, Thickness: 20 * mm})
		require.InDelta(t, 187.5, cm3(plate), 0.05)
		require.InDelta(t, 267.5, cm2(plate), 0.05)
	})
	t.Run("Wlodawer (from memory): a square bar tends to a/4, a plate to T/2, a tube wall to t/2, or t when its bore is dead", func(t *testing.T) {
		long := 20 * quantity.Metre
		require.InEpsilon(t, 10, float64(measure(t, shape.Solid{Form: shape.Bar, Length: long, Width: 40 * mm, Height: 40 * mm}).Modulus/mm), 2e-3)
		require.InEpsilon(t, 10, float64(measure(t, shape.Solid{Form: shape.Plate, Length: long, Width: long, Thickness: 20 * mm}).Modulus/mm), 3e-3)
		tube := shape.Solid{Form: shape.Tube, Diameter: 2000 * mm, Inner: 1980 * mm, Height: long}
		require.InEpsilon(t, 5, float64(measure(t, tube).Modulus/mm), 3e-3)
		tube.Bore = quantity.Some(quantity.Ratio(0))
		// (OD² - ID²) / (4 OD)
		require.InEpsilon(t, (2000.0*2000-1980*1980)/8000, float64(measure(t, tube).Modulus/mm), 3e-3)
	})
}
