package charge

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/mat"
)

// corners is the slow way: every choice of n tight rows is solved, and the
// cheapest corner that meets all rows is the answer. It is exact where the
// best blend is a corner, which it is for costs above zero.
func corners(cost []float64, rows []row) (float64, bool) {
	n := len(cost)
	all := append([]row(nil), rows...)
	for j := range n {
		a := make([]float64, n)
		a[j] = 1
		all = append(all, row{a, 0})
	}
	best := math.Inf(1)
	pick := make([]int, n)
	var try func(k, from int)
	try = func(k, from int) {
		if k < n {
			for i := from; i < len(all); i++ {
				pick[k] = i
				try(k+1, i+1)
			}
			return
		}
		a, b := mat.NewDense(n, n, nil), mat.NewVecDense(n, nil)
		for r, i := range pick {
			a.SetRow(r, all[i].a)
			b.SetVec(r, all[i].b)
		}
		var x mat.VecDense
		if x.SolveVec(a, b) != nil {
			return
		}
		for _, r := range all {
			if dot(r.a, x.RawVector().Data) < r.b-1e-9 {
				return
			}
		}
		best = math.Min(best, dot(cost, x.RawVector().Data))
	}
	try(0, 0)
	return best, !math.IsInf(best, 1)
}

// anyProgramme is a random one of the charge's shape; small whole numbers make
// ties, repeated and contradicting rows common.
func anyProgramme(r *rand.Rand, n, m int) ([]float64, []row) {
	whole := r.Intn(2) == 0
	draw := func() float64 {
		if whole {
			return float64(r.Intn(7) - 3)
		}
		return r.NormFloat64()
	}
	cost := make([]float64, n)
	for j := range cost {
		cost[j] = math.Abs(draw())
	}
	rows := make([]row, m)
	for i := range rows {
		rows[i] = row{make([]float64, n), 0}
		for j := range n {
			rows[i].a[j] = draw()
		}
		if r.Intn(3) == 0 {
			rows[i].b = draw()
		}
		if i > 0 && r.Intn(8) == 0 {
			rows[i] = rows[i-1]
		}
		if i > 0 && r.Intn(8) == 0 {
			for j := range n {
				rows[i].a[j] = -rows[i-1].a[j]
			}
			rows[i].b = -rows[i-1].b
		}
	}
	mass := row{make([]float64, n), 1}
	for j := range n {
		mass.a[j] = 1
	}
	return cost, append(rows, mass)
}

func TestMinimiseAgainstEveryCorner(t *testing.T) {
	r := rand.New(rand.NewSource(1))
	solved := 0
	for range 3000 {
		n := 1 + r.Intn(3)
		cost, rows := anyProgramme(r, n, r.Intn(6))
		want, possible := corners(cost, rows)
		o, ok := minimise(cost, rows)
		require.Equal(t, possible, ok, "%v %v", cost, rows)
		if !ok {
			continue
		}
		solved++
		require.InDelta(t, want, dot(cost, o.x), 1e-6*math.Max(1, want))
	}
	require.Greater(t, solved, 1000)
}

// TestNoCheaperBlend: the prices of the rows prove the answer. What they come
// to is a cost that no blend can go below (weak duality), and the answer is
// there.
func TestNoCheaperBlend(t *testing.T) {
	r := rand.New(rand.NewSource(2))
	solved := 0
	for range 3000 {
		n := 1 + r.Intn(25)
		cost, rows := anyProgramme(r, n, r.Intn(25))
		o, ok := minimise(cost, rows)
		if !ok {
			continue
		}
		solved++
		bottom, largest := 0.0, 1.0
		for _, c := range cost {
			largest = math.Max(largest, c)
		}
		use := make([]float64, n)
		for i, y := range o.price {
			require.GreaterOrEqual(t, y, 0.0)
			bottom += y * rows[i].b
			for j, a := range rows[i].a {
				use[j] += y * a
			}
		}
		for j := range n {
			require.GreaterOrEqual(t, o.x[j], 0.0)
			require.LessOrEqual(t, use[j], cost[j]+1e-5*largest)
		}
		total := dot(cost, o.x)
		require.InDelta(t, total, bottom, 1e-5*math.Max(largest, total))
		for _, row := range rows {
			require.GreaterOrEqual(t, dot(row.a, o.x), row.b-1e-6*math.Max(1, dot(o.x, o.x)))
		}
	}
	require.Greater(t, solved, 300)
}

// TestEndless: a matrix that is read too often stops the run.
func TestEndless(t *testing.T) {
	left := 3
	c := counted{mat.NewDense(2, 2, nil), &left}
	require.Panics(t, func() {
		for range 10 {
			c.T().At(0, 1)
		}
	})
}
