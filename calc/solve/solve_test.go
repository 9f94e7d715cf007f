package solve

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestRoot(t *testing.T) {
	require.InDelta(t, math.Sqrt2, Root(func(x float64) float64 { return x*x - 2 }, 0, 2, 1e-15), 1e-14)
	require.InDelta(t, math.Pi, Root(math.Sin, 3, 4, 1e-15), 1e-14)
	// A root of high order, where interpolation alone stalls.
	require.InDelta(t, 0.3, Root(func(x float64) float64 { return math.Pow(x-0.3, 9) }, -1, 1, 1e-9), 1e-8)
	// No bracket: the nearer end.
	require.Equal(t, 2.0, Root(func(x float64) float64 { return 6 - x*x }, 0, 2, 1e-9))
	require.Equal(t, 0.0, Root(func(x float64) float64 { return 1 + x }, 0, 2, 1e-9))
	require.Equal(t, 5.0, Root(func(x float64) float64 { return x - 5 }, 5, 9, 1e-9))
	require.Equal(t, 9.0, Root(func(x float64) float64 { return x - 9 }, 5, 9, 1e-9))
}

func TestRootStaysInside(t *testing.T) {
	rng := rand.New(rand.NewSource(1))
	for range 2000 {
		root, steep := rng.Float64()*10-5, math.Exp(rng.NormFloat64()*3)
		calls := 0
		f := func(x float64) float64 {
			calls++
			require.True(t, x >= -6 && x <= 6)
			return math.Tanh(steep*(x-root)) + 0.01*(x-root)
		}
		require.InDelta(t, root, Root(f, -6, 6, 1e-12), 1e-9)
		require.Less(t, calls, 120)
	}
}

func TestIntegral(t *testing.T) {
	require.InDelta(t, 2, Integral(math.Sin, 0, math.Pi), 1e-13)
	require.InDelta(t, math.E-1, Integral(math.Exp, 0, 1), 1e-14)
	// Exact for the 31st degree.
	require.InDelta(t, 1.0/31, Integral(func(x float64) float64 { return math.Pow(x, 30) }, 0, 1), 1e-15)
	require.InDelta(t, 0, Integral(func(x float64) float64 { return math.Pow(x, 31) }, -1, 1), 1e-15)
	sum := 0.0
	for _, n := range gauss16 {
		sum += 2 * n.weight
	}
	require.InDelta(t, 2, sum, 1e-15)
}
