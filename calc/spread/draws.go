package spread

import "math"

// MaxInputs is the most inputs that are let stray at once.
const MaxInputs = 21

// direction is a row of the table of direction numbers for Sobol' sequences: a
// primitive polynomial by its degree and inner bits, and the first odd numbers
// (S. Joe and F. Y. Kuo, Constructing Sobol sequences with better
// two-dimensional projections, SIAM J. Sci. Comput. 30, 2008; from memory, the
// evenness of what comes out is tested).
type direction struct {
	degree, inner uint
	first         []uint32
}

var directions = [MaxInputs - 1]direction{
	{1, 0, []uint32{1}},
	{2, 1, []uint32{1, 3}},
	{3, 1, []uint32{1, 3, 1}},
	{3, 2, []uint32{1, 1, 1}},
	{4, 1, []uint32{1, 1, 3, 3}},
	{4, 4, []uint32{1, 3, 5, 13}},
	{5, 2, []uint32{1, 1, 5, 5, 17}},
	{5, 4, []uint32{1, 1, 5, 5, 5}},
	{5, 7, []uint32{1, 1, 7, 11, 19}},
	{5, 11, []uint32{1, 1, 5, 1, 1}},
	{5, 13, []uint32{1, 1, 1, 3, 11}},
	{5, 14, []uint32{1, 3, 5, 5, 31}},
	{6, 1, []uint32{1, 3, 3, 9, 7, 49}},
	{6, 13, []uint32{1, 1, 1, 15, 21, 21}},
	{6, 16, []uint32{1, 3, 1, 13, 27, 49}},
	{6, 19, []uint32{1, 1, 1, 15, 7, 5}},
	{6, 22, []uint32{1, 3, 1, 15, 13, 25}},
	{6, 25, []uint32{1, 1, 5, 5, 19, 61}},
	{7, 1, []uint32{1, 3, 7, 11, 23, 15, 103}},
	{7, 4, []uint32{1, 3, 7, 13, 13, 15, 69}},
}

// bits of a draw; 2^bits points are all different.
const bits = 30

// normal draws n points of k standard normal deviates: a Sobol' sequence,
// shifted digit by digit by a random number of the seed, and put through the
// inverse of the normal distribution.
func normal(k, n int, seed uint64) [][]float64 {
	columns := make([][bits]uint32, k)
	at := make([]uint32, k)
	for i := range k {
		columns[i] = column(i)
		seed, at[i] = next(seed)
	}
	out := make([][]float64, n)
	for j := range out {
		out[j] = make([]float64, k)
		for i := range k {
			u := (float64(at[i]) + 0.5) / (1 << bits)
			out[j][i] = math.Sqrt2 * math.Erfinv(2*u-1)
			at[i] ^= columns[i][trailingOnes(uint(j))]
		}
	}
	return out
}

// column gives the direction numbers of one input, scaled to whole draws.
func column(input int) [bits]uint32 {
	var v [bits]uint32
	if input == 0 {
		for b := range v {
			v[b] = 1 << (bits - 1 - b)
		}
		return v
	}
	d := directions[input-1]
	s := int(d.degree)
	for b := range v {
		if b < s {
			v[b] = d.first[b] << (bits - 1 - b)
			continue
		}
		v[b] = v[b-s] ^ v[b-s]>>s
		for q := 1; q < s; q++ {
			if d.inner>>(s-1-q)&1 == 1 {
				v[b] ^= v[b-q]
			}
		}
	}
	return v
}

// trailingOnes is the place of the lowest zero bit of j: the digit that the
// next point of the sequence changes.
func trailingOnes(j uint) int {
	n := 0
	for j&1 == 1 {
		j >>= 1
		n++
	}
	return n
}

// next is one step of the splitmix64 generator, and bits of it.
func next(seed uint64) (uint64, uint32) {
	seed += 0x9e3779b97f4a7c15
	z := seed
	z = (z ^ z>>30) * 0xbf58476d1ce4e5b9
	z = (z ^ z>>27) * 0x94d049bb133111eb
	z ^= z >> 31
	return seed, uint32(z >> (64 - bits))
}
