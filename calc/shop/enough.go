package shop

import "math"

// slack lets a certainty that is reached to the last few digits count.
const slack = 1e-12

// enough is the least n for which at least good out of n are good with the
// certainty, each with the chance p; and the chance at n and at n − 1. good is
// at least 1 and p above 0.
//
// The chance that the good-th good one is the n-th made is summed over n. It is
// kept as a logarithm, for it may begin far below the smallest number there is.
func enough(good int, p, certainty float64) (n int, chance, fewer float64) {
	if p == 1 {
		return good, 1, 0
	}
	logTerm := float64(good) * math.Log(p)
	logBad := math.Log1p(-p)
	sum, lost := 0.0, 0.0
	for n = good; ; n++ {
		// Kahan's sum.
		add := math.Exp(logTerm) - lost
		next := sum + add
		lost = (next - sum) - add
		fewer, sum = sum, next
		if sum >= certainty-slack {
			return n, math.Min(sum, 1), fewer
		}
		logTerm += math.Log(float64(n)/float64(n+1-good)) + logBad
	}
}

// chance is the chance of at least good out of n.
func chance(good, n int, p float64) float64 {
	if p == 1 {
		return 1
	}
	logTerm, sum := float64(good)*math.Log(p), 0.0
	for k := good; k <= n; k++ {
		sum += math.Exp(logTerm)
		logTerm += math.Log(float64(k)/float64(k+1-good)) + math.Log1p(-p)
	}
	return math.Min(sum, 1)
}
