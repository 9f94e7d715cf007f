package quantity

import (
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestInchFraction(t *testing.T) {
	for want, inches := range map[string]float64{"0 in": 0, "3/8 in": 0.375, "30 11/64 in": 30.171, "1 in": 0.9999, "12 1/8 in": 12.125, "1/64 in": 0.0101, "-2 1/2 in": -2.5} {
		require.Equal(t, want, InchFraction(Length(inches)*Inch, 64))
	}
	require.Equal(t, "5 3/16 in", InchFraction(From[Length](5.2, "in"), 16))
}

// What is written reads back as a length within half a part of the first.
func TestInchFractionReadsBack(t *testing.T) {
	r := rand.New(rand.NewSource(64))
	for range 2000 {
		l := Length(r.Float64()*3) * Metre
		back, err := Parse[Length](InchFraction(l, 64), US)
		require.NoError(t, err)
		require.InDelta(t, float64(l), float64(back), float64(Inch)/128+1e-12)
	}
}
