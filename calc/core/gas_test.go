package core

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"
)

// Abramowitz and Stegun, Handbook of Mathematical Functions, table 7.1: erf x.
func TestReach(t *testing.T) {
	for x, erf := range map[float64]float64{0.1: 0.1124629160, 0.5: 0.5204998778, 1: 0.8427007929, 1.5: 0.9661051465} {
		t.Run(fmt.Sprintf("Abramowitz and Stegun table 7.1, erf %g", x), func(t *testing.T) {
			require.InDelta(t, x, reach(20+1000*(1-erf), 20, 1020), 1e-8)
		})
	}
}

// TestReachByConduction follows the heat into the wall step by step: the second
// road to the depth that is hotter than 510 °C.
func TestReachByConduction(t *testing.T) {
	const alpha, dx, Tm, T0 = 3.8e-7, 1e-4, 1405.0, 20.0
	const dt = 0.4 * dx * dx / alpha
	T := make([]float64, 400)
	for i := range T {
		T[i] = T0
	}
	T[0] = Tm
	next := append([]float64(nil), T...)
	now := 0.0
	for now < 20 {
		for i := 1; i < len(T)-1; i++ {
			next[i] = T[i] + 0.4*(T[i-1]-2*T[i]+T[i+1])
		}
		T, next = next, T
		T[0], next[0] = Tm, Tm
		now += dt
	}
	i := 0
	for T[i] > gasesAt {
		i++
	}
	depth := dx * (float64(i-1) + (T[i-1]-gasesAt)/(T[i-1]-T[i]))
	require.InEpsilon(t, depth, 2*reach(gasesAt, T0, Tm)*math.Sqrt(alpha*now), 1e-3)
}

// The permeability test passes 2000 cm³ of air through a specimen of 2 in by 2
// in; at a pressure of 10 gf/cm² and in one minute its number is 50.1 (P. N.
// Rao, ch. 3, 501.28/(p T), from memory).
func TestPermeabilityUnit(t *testing.T) {
	const flow, section, height = 2000e-6 / 60, math.Pi / 4 * 0.0508 * 0.0508, 0.0508
	number := flow * height / (10 * 98.0665 * section) / afsUnit
	require.InDelta(t, 501.28/10, number, 0.01)
}
