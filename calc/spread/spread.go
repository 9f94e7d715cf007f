// Package spread asks how far an answer may stray when its inputs are only
// known within a plus or minus, and which inputs are to blame.
//
// The inputs are drawn from a quasi-random sequence, shifted by a seeded
// random vector, so the same question gives the same answer. Each stated ± is
// taken as two standard deviations of a normal spread about the value. The
// likely span of an answer is its 5 to 95 % range over the draws. The blame is
// shared by variance: least squares fit the answer with the first three
// Hermite polynomials of each input alone (a polynomial chaos without cross
// terms), and an input's share is the variance of its own part of the fit;
// what no input explains alone is left over as working together.
package spread

import (
	"math"

	"golang.org/x/exp/stats"
	"gonum.org/v1/gonum/mat"
)

// Draws is how many times a model of k inputs is run: fewer for few inputs,
// which the sequence covers sooner. Powers of two, since it is evenest there.
func Draws(k int) int {
	if k <= 4 {
		return 128
	}
	return 256
}

// Answer is how one answer spreads.
type Answer struct {
	// Low, Middle and High are the 5, 50 and 95 % points.
	Low, Middle, High float64
	// Share of the variance that each input explains alone, 0 to 1, in the
	// order of the inputs; all zero where the answer does not stray.
	Share []float64
	// Together is the share that no input explains alone.
	Together float64
	// Lost is the share of draws in which the model had no answer. Their
	// answers are left out of the rest.
	Lost float64
}

// Over runs a model of k inputs and returns how each of its answers spreads.
// The model gets standard normal deviates (0 is the stated value, ±2 the
// stated plus and minus) and returns its answers, NaN where it has none; it is
// called Draws(k) times, always with the same deviates for the same seed and k.
// k must lie between 1 and MaxInputs.
func Over(k int, seed uint64, model func(z []float64) []float64) []Answer {
	points := normal(k, Draws(k), seed)
	var runs [][]float64
	for _, z := range points {
		runs = append(runs, model(z))
	}
	out := make([]Answer, len(runs[0]))
	for j := range out {
		out[j] = summarise(k, points, runs, j)
	}
	return out
}

func summarise(k int, points [][]float64, runs [][]float64, j int) Answer {
	var ys []float64
	var zs [][]float64
	for i, run := range runs {
		if y := run[j]; !math.IsNaN(y) && !math.IsInf(y, 0) {
			ys, zs = append(ys, y), append(zs, points[i])
		}
	}
	a := Answer{Share: make([]float64, k), Lost: 1 - float64(len(ys))/float64(len(runs))}
	if len(ys) < 2 {
		a.Low, a.Middle, a.High = math.NaN(), math.NaN(), math.NaN()
		return a
	}
	q := stats.Quantiles(ys, 0.05, 0.5, 0.95)
	a.Low, a.Middle, a.High = q[0], q[1], q[2]
	mean, variance := stats.MeanAndStdDev(ys)
	variance *= variance
	// An answer that strays by less than rounding has nobody to blame.
	if !(variance > 1e-18*mean*mean) {
		return a
	}
	parts, rest := explained(ys, zs, k)
	whole := rest
	for _, v := range parts {
		whole += v
	}
	for i, v := range parts {
		a.Share[i] = v / whole
	}
	a.Together = rest / whole
	return a
}

// terms are the orthonormal Hermite polynomials used: z, (z²−1)/√2, (z³−3z)/√6.
const terms = 3

// explained is the variance of each input's own part of the fit, and of what
// the fit leaves. With too few answers for a fit nobody is blamed.
func explained(ys []float64, zs [][]float64, k int) (parts []float64, rest float64) {
	out := make([]float64, k)
	n, m := len(ys), 1+terms*k
	if n < 2*m {
		return out, 1
	}
	basis := mat.NewDense(n, m, nil)
	for r, z := range zs {
		basis.Set(r, 0, 1)
		for i, x := range z {
			basis.Set(r, 1+terms*i, x)
			basis.Set(r, 2+terms*i, (x*x-1)/math.Sqrt2)
			basis.Set(r, 3+terms*i, (x*x*x-3*x)/math.Sqrt(6))
		}
	}
	var fit mat.VecDense
	if err := fit.SolveVec(basis, mat.NewVecDense(n, ys)); err != nil {
		return out, 1 // the draws left do not tell the inputs apart
	}
	part := make([]float64, n)
	for i := range k {
		for r := range n {
			part[r] = 0
			for c := 1 + terms*i; c < 1+terms*(i+1); c++ {
				part[r] += fit.AtVec(c) * basis.At(r, c)
			}
		}
		_, sd := stats.MeanAndStdDev(part)
		out[i] = sd * sd
	}
	for r, y := range ys {
		miss := y - mat.Dot(basis.RowView(r), &fit)
		rest += miss * miss / float64(n)
	}
	return out, rest
}
