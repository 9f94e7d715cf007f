package ladle

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"
)

// bySlices is the defining integral of the metal left, by slices of depth: the
// second route to every closed form.
func bySlices(v vessel, tilt float64, n int) float64 {
	sum := 0.0
	for i := range n {
		d := (float64(i) + 0.5) / float64(n) * v.depth
		r, x := v.top-v.taper*d, v.top-d/math.Tan(tilt)
		sum += segment(r, x)
	}
	return sum * v.depth / float64(n)
}

// segment is the area of a circle of radius r beyond a chord at x.
func segment(r, x float64) float64 {
	switch {
	case x <= -r:
		return math.Pi * r * r
	case x >= r:
		return 0
	}
	return r*r*math.Acos(x/r) - x*math.Sqrt((r-x)*(r+x))
}

func deg(x float64) float64 { return x * math.Pi / 180 }

func TestHoof(t *testing.T) {
	t.Run("Archimedes, The Method, proposition 11: a plane through a diameter of the base cuts off 2/3 R² h", func(t *testing.T) {
		for _, h := range []float64{0.05, 0.1, 0.37, 2} {
			v := shaped(0.2, 0.2, h)
			require.InEpsilon(t, 2.0/3*0.1*0.1*h, v.left(math.Atan2(h, 0.1)), 1e-12)
		}
	})
	t.Run("symmetry: a cylinder as deep as it is wide is half full at 45°", func(t *testing.T) {
		v := shaped(0.2, 0.2, 0.2)
		require.InEpsilon(t, v.brim()/2, v.left(math.Pi/4), 1e-12)
	})
	t.Run("Heron: frustum π h (R² + R r + r²)/3", func(t *testing.T) {
		require.InEpsilon(t, math.Pi*0.2*(0.1*0.1+0.1*0.08+0.08*0.08)/3, shaped(0.2, 0.16, 0.2).left(0), 1e-12)
	})
}

func TestFactSheetPoints(t *testing.T) {
	cylinder := shaped(0.2, 0.2, 0.2)
	for tilt, litres := range map[float64]float64{0: 6.2832, 15: 5.4414, 30: 4.4694, 45: 3.1416, 60: 1.6170, 75: 0.5564, 85: 0.1083} {
		require.InDelta(t, litres, 1000*cylinder.left(deg(tilt)), 0.00005, "cylinder at %v°", tilt)
	}
	cone := shaped(0.2, 0.16, 0.2)
	for tilt, litres := range map[float64]float64{0: 5.1103, 5: 4.8390, 15: 4.3013, 30: 3.4432, 40: 2.7750, 45: 2.3884, 60: 1.1300, 75: 0.2599, 85: 0} {
		require.InDelta(t, litres, 1000*cone.left(deg(tilt)), 0.00005, "cone at %v°", tilt)
	}
	require.InDelta(t, 48.01, cone.shows*180/math.Pi, 0.005)
	require.InDelta(t, 84.29, cone.empties*180/math.Pi, 0.005)
	for tilt, rate := range map[float64]float64{30: 0.07311, 45: 0.10966, 60: 0.08629, 75: 0.05569} {
		require.InDelta(t, rate, 1000*cylinder.sweep(deg(tilt))*math.Pi/180, 0.000005, "cylinder at %v°", tilt)
	}
}

// randomVessel covers cylinders, ladles that widen upwards and crucibles that
// narrow upwards.
func randomVessel(rng *rand.Rand) vessel {
	top := 0.05 + rng.Float64()
	depth := top * (0.2 + 3*rng.Float64())
	switch rng.Intn(4) {
	case 0:
		return shaped(top, top, depth)
	case 1:
		return shaped(top, top*(1+(rng.Float64()-0.5)*1e-4), depth)
	}
	return shaped(top, top*(0.2+1.8*rng.Float64()), depth)
}

func TestLeftAgainstSlices(t *testing.T) {
	rng := rand.New(rand.NewSource(3))
	for range 300 {
		v := randomVessel(rng)
		tilt := 1e-3 + (math.Pi/2-2e-3)*rng.Float64()
		want := bySlices(v, tilt, 20000)
		require.InDelta(t, want, v.left(tilt), 3e-7*v.brim(), "%+v at %v", v, tilt)
	}
}

func TestSweepIsTheSlopeOfLeft(t *testing.T) {
	rng := rand.New(rand.NewSource(4))
	for range 2000 {
		v := randomVessel(rng)
		tilt := 0.01 + 1.5*rng.Float64()
		const d = 1e-5
		want := (v.left(tilt-d) - v.left(tilt+d)) / (2 * d)
		require.InDelta(t, want, v.sweep(tilt), 2e-5*v.brim(), "%+v at %v, shows %v", v, tilt, v.shows)
	}
}

// TestSweepIsSurfaceTimesArm: the free surface turns about the lip, so the
// volume let go is its area times the distance of its centre from the lip.
func TestSweepIsSurfaceTimesArm(t *testing.T) {
	rng := rand.New(rand.NewSource(5))
	for range 100 {
		v := randomVessel(rng)
		tilt := 0.02 + 1.5*rng.Float64()
		kappa := 1 / math.Tan(tilt)
		const n = 20000
		area, moment := 0.0, 0.0
		for i := range n {
			d := (float64(i) + 0.5) / n * v.depth
			r, x := v.top-v.taper*d, v.top-d*kappa
			if r*r <= x*x {
				continue
			}
			// A strip of the surface, d/sin θ away from the lip along it.
			strip := 2 * math.Sqrt(r*r-x*x) * v.depth / n / math.Sin(tilt)
			area += strip
			moment += strip * d / math.Sin(tilt)
		}
		require.InDelta(t, area, v.surface(tilt), 1e-4*area+1e-9)
		require.InDelta(t, moment, v.sweep(tilt), 1e-4*moment+1e-9)
	}
}

func TestVesselProperties(t *testing.T) {
	rng := rand.New(rand.NewSource(6))
	for range 500 {
		v := randomVessel(rng)
		require.InEpsilon(t, v.brim(), v.left(0), 1e-9)
		last := v.brim()
		for i := range 200 {
			tilt := math.Pi / 2 * float64(i+1) / 200
			now := v.left(tilt)
			require.LessOrEqual(t, now, last+1e-12*v.brim(), "%+v at %v", v, tilt)
			require.GreaterOrEqual(t, now, 0.0)
			require.False(t, math.IsNaN(v.surface(tilt)) || math.IsNaN(v.sweep(tilt)))
			require.GreaterOrEqual(t, v.sweep(tilt), 0.0)
			last = now
		}
		switch {
		case v.taper >= 0:
			require.Zero(t, v.left(math.Pi/2))
		case v.taper < -1e-3:
			require.Positive(t, v.left(math.Pi/2), "what narrows upwards keeps some lying flat")
		}
		// No jump where the base begins to show.
		at := v.shows
		require.InDelta(t, v.left(at-1e-9), v.left(at+1e-9), 1e-7*v.brim())
		require.InEpsilon(t, v.surface(at-1e-9), v.surface(at+1e-9), 1e-4)
		// Twice the size holds eight times as much.
		twice := shaped(4*v.top, 4*v.bottom, 2*v.depth)
		tilt := 1.5 * rng.Float64()
		require.InDelta(t, 8*v.left(tilt), twice.left(tilt), 1e-8*twice.brim())
		// Level and volume are each other's inverse.
		z := v.depth * rng.Float64()
		require.InDelta(t, z, v.level(v.upTo(z)), 1e-8*v.depth)
	}
}

func TestConeBecomesCylinder(t *testing.T) {
	cylinder := shaped(0.3, 0.3, 0.4)
	for _, m := range []float64{1e-3, 1e-5, 1.1e-6, 1e-8} {
		for tilt := 0.0; tilt < 1.55; tilt += 0.05 {
			cone := shaped(0.3, 0.3-2*0.4*m, 0.4)
			require.InDelta(t, cylinder.left(tilt), cone.left(tilt), 3*m*cylinder.brim()+1e-9*cylinder.brim())
		}
	}
}
