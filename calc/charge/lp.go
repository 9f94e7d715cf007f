package charge

import (
	"errors"
	"fmt"
	"math"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/optimize/convex/lp"
)

// row is one condition of a linear programme: a·x ≥ b.
type row struct {
	a []float64
	b float64
}

// optimum is the answer of a linear programme: the quantities, and of each row
// its price, by how much the cost grows for each unit that its b grows.
type optimum struct {
	x     []float64
	price []float64
}

// minimise finds the x ≥ 0 of least cost·x that meets every row; false where
// none does. No cost may be below zero.
//
// What is handed to the simplex method is the dual programme, max b·y with
// Aᵀy ≤ cost and y ≥ 0. It has one row for each material only, and y = 0 is a
// corner of it to start from because no cost is below zero; so no first phase
// is needed, and a dual without bound means that the rows cannot all be met.
//
// The costs are moved apart by parts in 10⁸, so that no two corners tie and
// the method cannot go round in circles. The answer does not carry that
// disturbance: it is worked out again from the rows that are tight at the
// corner, and the prices from the costs as they are. Where two answers cost
// the same to within parts in 10⁷, the one that uses the earlier columns comes.
//
// Where no x meets every row, rounding may keep the dual's endless way from
// being seen as such, and the method runs into a wall instead. So a failure of
// every attempt comes as no answer too; whoever must know whether there is one
// asks for the least miss, a programme that always has one (see mix.closest).
func minimise(cost []float64, rows []row) (optimum, bool) {
	kept, scale, possible := prepare(rows)
	if !possible {
		return optimum{}, false
	}
	for try := range 4 {
		o, ok, err := attempt(cost, rows, kept, scale, try)
		if err == nil {
			return o, ok
		}
	}
	return optimum{}, false
}

// prepare picks the rows that say something and the scale that brings the
// largest coefficient of each to 1.
func prepare(rows []row) (kept []int, scale []float64, possible bool) {
	scale = make([]float64, len(rows))
	for i, r := range rows {
		largest, says := 0.0, r.b > 0
		for _, a := range r.a {
			largest = math.Max(largest, math.Abs(a))
			says = says || a < 0
		}
		switch {
		case largest == 0 && r.b > 0:
			return nil, nil, false
		case largest == 0 || !says:
			continue
		}
		scale[i] = 1 / largest
		kept = append(kept, i)
	}
	return kept, scale, true
}

var errCorner = errors.New("the answer is no clean corner")

// attempt is one run of the simplex method; later tries move the costs further
// apart and elsewhere.
func attempt(cost []float64, rows []row, kept []int, scale []float64, try int) (o optimum, ok bool, err error) {
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("%v", r)
		}
	}()
	n, m := len(cost), len(kept)
	largest := 0.0
	for _, c := range cost {
		largest = math.Max(largest, c)
	}
	if largest == 0 {
		largest = 1
	}
	step := 1e-8 * math.Pow(10, float64(try))
	a := mat.NewDense(n, m+n, nil)
	aim := make([]float64, m+n)
	right := make([]float64, n)
	start := make([]int, n)
	for j := range n {
		_, part := math.Modf(float64(j+1) * (math.Phi + float64(try)))
		right[j] = cost[j]/largest + step*(1+float64(j)+0.5*part)
		a.Set(j, m+j, 1)
		start[j] = m + j
		for k, i := range kept {
			a.Set(j, k, rows[i].a[j]*scale[i])
		}
	}
	for k, i := range kept {
		aim[k] = -rows[i].b * scale[i]
	}
	left := 50*n*(m+n) + 20000*n
	_, z, err := lp.Simplex(aim, counted{a, &left}, right, 1e-10, start)
	switch {
	case errors.Is(err, lp.ErrUnbounded):
		return optimum{}, false, nil
	case err != nil:
		return optimum{}, false, err
	}
	return corner(cost, rows, kept, scale, a, aim, z)
}

// corner works the answer out from the basis: the columns of the dual that are
// not zero name the rows that are tight and the materials that are left out.
func corner(cost []float64, rows []row, kept []int, scale []float64, a *mat.Dense, aim, z []float64) (optimum, bool, error) {
	n, m := len(cost), len(kept)
	var basis []int
	for k, v := range z {
		if v != 0 {
			basis = append(basis, k)
		}
	}
	if len(basis) != n {
		return optimum{}, false, errCorner
	}
	b := mat.NewDense(n, n, nil)
	d := mat.NewVecDense(n, nil)
	for c, k := range basis {
		b.SetCol(c, mat.Col(nil, k, a))
		d.SetVec(c, -aim[k])
	}
	var lu mat.LU
	lu.Factorize(b)
	var x, y mat.VecDense
	if err := lu.SolveVecTo(&x, true, d); err != nil {
		return optimum{}, false, err
	}
	if err := lu.SolveVecTo(&y, false, mat.NewVecDense(n, append([]float64(nil), cost...))); err != nil {
		return optimum{}, false, err
	}
	o := optimum{x: make([]float64, n), price: make([]float64, len(rows))}
	for j := range n {
		o.x[j] = x.AtVec(j)
		if o.x[j] < -1e-7 {
			return optimum{}, false, errCorner
		}
		o.x[j] = math.Max(o.x[j], 0)
	}
	for c, k := range basis {
		if k < m {
			o.price[kept[k]] = math.Max(y.AtVec(c), 0) * scale[kept[k]]
		}
	}
	for _, i := range kept {
		if (dot(rows[i].a, o.x)-rows[i].b)*scale[i] < -1e-7 {
			return optimum{}, false, errCorner
		}
	}
	return o, true, nil
}

// counted is a matrix that may be looked at only so often: the simplex method
// reads a column of it at every step, so a run that would never end does.
type counted struct {
	m    *mat.Dense
	left *int
}

func (c counted) Dims() (int, int) { return c.m.Dims() }

func (c counted) At(i, j int) float64 {
	if *c.left--; *c.left < 0 {
		panic("the simplex method does not come to an end")
	}
	return c.m.At(i, j)
}

func (c counted) T() mat.Matrix { return mat.Transpose{Matrix: c} }

func dot(a, b []float64) float64 {
	s := 0.0
	for i := range a {
		s += a[i] * b[i]
	}
	return s
}
