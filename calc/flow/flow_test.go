package flow

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/quantity"
	"pourwright/calc/working"
	"pourwright/calc/working/stepcheck"
)

func heads(t *testing.T, h, c, cp float64) (rule, exact float64) {
	t.Helper()
	p := &working.Paper{}
	p.Give("h", "head", quantity.From[quantity.Length](h, "mm"), "mm")
	p.Give("c", "cavity", quantity.From[quantity.Length](c, "mm"), "mm")
	p.Give("c_p", "in the cope", quantity.From[quantity.Length](cp, "mm"), "mm")
	rule, exact = Heads(p, h, c, cp)
	require.Empty(t, stepcheck.Paper(p))
	return rule, exact
}

func TestHeads(t *testing.T) {
	t.Run("Rao, ch. 4: parting gate, h 200, p 50, c 100 gives 187.5", func(t *testing.T) {
		rule, _ := heads(t, 200, 100, 50)
		require.InDelta(t, 187.5, rule, 0.05)
	})
	t.Run("the limits of the parting rule are the top and the bottom gate", func(t *testing.T) {
		rule, exact := heads(t, 200, 100, Top.CopePart(100, 30))
		require.Equal(t, 200.0, rule)
		require.InDelta(t, 200, exact, 1e-9)
		rule, exact = heads(t, 200, 100, Bottom.CopePart(100, 30))
		require.Equal(t, 150.0, rule)
		require.InDelta(t, math.Pow((math.Sqrt(200)+math.Sqrt(100))/2, 2), exact, 1e-9)
		require.Equal(t, 30.0, Parting.CopePart(100, 30))
	})
}

// TestExactHead fills the cavity in small steps, another road to the time.
func TestExactHead(t *testing.T) {
	r := rand.New(rand.NewSource(2))
	for range 200 {
		c := 10 + 500*r.Float64()
		cp := c * r.Float64()
		h := cp + 5 + 300*r.Float64()
		rule, exact := heads(t, h, c, cp)
		require.LessOrEqual(t, exact, rule*(1+1e-12), "the trade rule is never under the exact head")
		require.Greater(t, exact, 0.0)
		require.LessOrEqual(t, exact, h*(1+1e-12))
		const n = 4000
		sum := (c - cp) / math.Sqrt(h)
		for i := range n {
			z := cp * (float64(i) + 0.5) / n
			sum += cp / n / math.Sqrt(h-z)
		}
		require.InEpsilon(t, math.Pow(c/sum, 2), exact, 1e-3)
		higher, higherX := heads(t, h+10, c, cp)
		require.Greater(t, higher, rule)
		require.Greater(t, higherX, exact)
	}
}

func TestChokeThereAndBack(t *testing.T) {
	area := ChokeArea(nil, "A", "", "H", 30, 6900, 12, 0.8, Gravity, 180)
	require.InDelta(t, 12, ChokeTime(nil, "t", "", "H", 30, 6900, area, 0.8, Gravity, 180), 1e-9)
	// More head never slows a choke.
	require.Less(t, ChokeTime(nil, "t", "", "H", 30, 6900, area, 0.8, Gravity, 200), 12.0)
}

func TestSpeed(t *testing.T) {
	t.Run("Groover, FMM example 10.2: 20 cm gives 198.1 cm/s", func(t *testing.T) {
		require.InDelta(t, 1.981, Speed(nil, 200, Gravity), 0.0005)
	})
}
