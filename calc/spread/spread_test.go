package spread

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestPublished compares the shares of variance with closed forms: textbook
// cases of variance-based sensitivity (A. Saltelli et al., Global Sensitivity
// Analysis: The Primer, 2008, ch. 1 and 4, the linear and the product model;
// from memory), for normal inputs.
func TestPublished(t *testing.T) {
	t.Run("Saltelli et al. 2008, linear model Y = Σ a Z: share a² over Σ a²", func(t *testing.T) {
		a := []float64{1, 2, 3, 0}
		got := Over(4, 1, func(z []float64) []float64 {
			return []float64{7 + a[0]*z[0] + a[1]*z[1] + a[2]*z[2]}
		})[0]
		for i, want := range []float64{1.0 / 14, 4.0 / 14, 9.0 / 14, 0} {
			require.InDelta(t, want, got.Share[i], 0.02)
		}
		sd := math.Sqrt(14)
		require.InDelta(t, 7-1.645*sd, got.Low, 0.1*sd)
		require.InDelta(t, 7, got.Middle, 0.2)
		require.InDelta(t, 7+1.645*sd, got.High, 0.1*sd)
		require.InDelta(t, 0, got.Together, 0.02)
	})
	t.Run("Saltelli et al. 2008, product of centred inputs: all of it together", func(t *testing.T) {
		got := Over(2, 1, func(z []float64) []float64 { return []float64{z[0] * z[1]} })[0]
		require.Less(t, got.Share[0]+got.Share[1], 0.1)
		require.Greater(t, got.Together, 0.9)
	})
	t.Run("lognormal: 5 and 95 % points of exp(0.2 Z) are exp(∓0.2·1.6449)", func(t *testing.T) {
		got := Over(1, 3, func(z []float64) []float64 { return []float64{math.Exp(0.2 * z[0])} })[0]
		require.InDelta(t, math.Exp(-0.2*1.6449), got.Low, 0.01)
		require.InDelta(t, math.Exp(0.2*1.6449), got.High, 0.02)
		require.InDelta(t, 1, got.Share[0], 0.01)
	})
}

// TestSecondRoute: the shares of a curved model agree with a brute-force
// estimate of the variance of the conditional mean on a dense grid.
func TestSecondRoute(t *testing.T) {
	f := func(a, b, c float64) float64 { return math.Exp(0.3*a) * (2 + b + 0.2*b*b) / (3 + 0.3*c) }
	got := Over(3, 5, func(z []float64) []float64 { return []float64{f(z[0], z[1], z[2])} })[0]
	const n = 40
	at := make([]float64, n)
	for i := range at {
		at[i] = math.Sqrt2 * math.Erfinv(2*(float64(i)+0.5)/n-1)
	}
	mean, square := 0.0, 0.0
	cond := [3][n]float64{}
	for i, a := range at {
		for j, b := range at {
			for k, c := range at {
				y := f(a, b, c) / (n * n * n)
				mean += y
				square += y * f(a, b, c)
				cond[0][i] += y * n
				cond[1][j] += y * n
				cond[2][k] += y * n
			}
		}
	}
	for i := range 3 {
		v := 0.0
		for _, m := range cond[i] {
			v += (m - mean) * (m - mean) / n
		}
		require.InDelta(t, v/(square-mean*mean), got.Share[i], 0.03)
	}
}

func TestSteadyAndSound(t *testing.T) {
	model := func(z []float64) []float64 { return []float64{z[0] + z[1], 4, math.NaN(), math.Sqrt(z[0])} }
	a, b := Over(2, 9, model), Over(2, 9, model)
	require.Equal(t, a[0], b[0], "the same seed gives the same answer")
	require.NotEqual(t, a[0].Low, Over(2, 10, model)[0].Low)
	require.Equal(t, 4.0, a[1].Low)
	require.Equal(t, []float64{0, 0}, a[1].Share)
	require.Equal(t, 1.0, a[2].Lost)
	require.InDelta(t, 0.5, a[3].Lost, 0.05)
	for _, x := range a {
		sum := x.Together
		for _, s := range x.Share {
			require.GreaterOrEqual(t, s, 0.0)
			sum += s
		}
		require.LessOrEqual(t, sum, 1+1e-9)
	}
}

// TestEvenness: the draws have the mean, the spread and the independence of
// standard normals, up to MaxInputs at once.
func TestEvenness(t *testing.T) {
	for _, k := range []int{1, 3, 8, MaxInputs} {
		n := float64(Draws(k))
		p := normal(k, Draws(k), 1)
		for i := range k {
			m, v := 0.0, 0.0
			for _, z := range p {
				m += z[i] / n
				v += z[i] * z[i] / n
			}
			require.InDelta(t, 0, m, 0.1)
			require.InDelta(t, 1, v, 0.12)
			for j := range i {
				c := 0.0
				for _, z := range p {
					c += z[i] * z[j] / n
				}
				require.InDelta(t, 0, c, 0.25, "%d %d of %d", i, j, k)
			}
		}
	}
}
