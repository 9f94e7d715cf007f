package soak

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestStirred(t *testing.T) {
	for x, want := range map[float64]float64{0: 1, 0.1: 0.8964569800, 0.25: 0.7703465477, 0.5: 0.6156903442, 1: 0.4275835762, 2: 0.2553956763, 3: 0.1790011512} {
		t.Run("Carslaw and Jaeger, table of e^(x²) erfc x", func(t *testing.T) {
			require.InDelta(t, want, Stirred(x), 5e-11)
		})
	}
	require.InEpsilon(t, Stirred(24.999999), Stirred(25.000001), 1e-6)
	require.InEpsilon(t, 1/(1e6*math.SqrtPi), Stirred(1e6), 1e-9)
}

// TestStep: a face that steps and stays takes 2 ΔT √(t/π).
func TestStep(t *testing.T) {
	f := Step(100, 0)
	for _, at := range []float64{0.5, 1, 40} {
		require.InDelta(t, 200*math.Sqrt(at/math.Pi), f.Taken(at, 0), 1e-10)
		require.InDelta(t, 100/math.Sqrt(math.Pi*at), f.Flux(at, 0), 1e-10)
	}
}

// TestRamp: a face that rises evenly from nothing takes (4/3) s t √(t/π)
// (Carslaw and Jaeger, sect. 2.5), however the ramp is cut up.
func TestRamp(t *testing.T) {
	whole, parts := Step(0, 0), Step(0, 0)
	whole.To(10, 30)
	for i := 1; i <= 7; i++ {
		parts.To(10*float64(i)/7, 30*float64(i)/7)
	}
	want := 4.0 / 3 * 3 * 10 * math.Sqrt(10/math.Pi)
	require.InDelta(t, want, whole.Taken(10, whole.Runs()), 1e-10)
	require.InDelta(t, want, parts.Taken(10, parts.Runs()), 1e-10)
	require.InDelta(t, 2*3*math.Sqrt(10/math.Pi), parts.Flux(10, parts.Runs()), 1e-10)
	require.InDelta(t, want, 30*Next(0, 10), 1e-10)
	require.Equal(t, 30.0, parts.Theta())
	require.Equal(t, 10.0, parts.Time())
}

// TestFluxIsTheSlope of what is taken, for a face that runs up and down.
func TestFluxIsTheSlope(t *testing.T) {
	f := Step(5, 1)
	for i, theta := range []float64{4, 9, -3, 2} {
		f.To(2+float64(i), theta)
	}
	for _, at := range []float64{6, 9, 50} {
		const d = 1e-4
		require.InDelta(t, (f.Taken(at+d, 4)-f.Taken(at, 4))/d, f.Flux(at+d/2, 4), 1e-5)
	}
}
