// Package shop says how many moulds to pour so that enough castings come out
// good, what metal and sand they take, and what a good casting costs.
//
// Each casting is good with the chance p = 1 − s, s being the shop's scrap rate,
// whatever becomes of the others. The chance of at least N good ones out of n is
// then binomial,
//
//	P(n) = Σ_{k=N}^{n} C(n, k) p^k (1 − p)^{n−k},
//
// and the answer is the least n for which P(n) reaches the certainty wanted. It
// is summed as the chance that the N-th good casting is the n-th made, which
// loses no digits: P(n) = P(n−1) + C(n−1, N−1) p^N (1 − p)^{n−N}.
//
// Castings do not fail one by one. They share a heat, a heap of sand, a core box
// and a morning, so that the reckoning is hopeful; the answer for moulds that
// are good or bad as a whole stands beside it.
package shop
