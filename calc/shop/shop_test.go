package shop

import (
	"fmt"
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/mathext"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/reply"
	"pourwright/calc/working"
	"pourwright/calc/working/stepcheck"
)

func some[T any](v T) quantity.Opt[T] { return quantity.Some(v) }

func run(t *testing.T, in Input) (Output, *working.Paper) {
	t.Helper()
	return stepcheck.Run(t, Plan, in)
}

func ask(good int, scrap, certainty float64) Input {
	return Input{Good: good, Scrap: some(quantity.Ratio(scrap)), Certainty: some(quantity.Ratio(certainty))}
}

func TestPublished(t *testing.T) {
	t.Run("S. S. Wilks, sample sizes of 95 % cover at 95 % confidence, orders 1 to 10", func(t *testing.T) {
		for i, n := range []int{59, 93, 124, 153, 181, 208, 234, 260, 286, 311} {
			out, _ := run(t, ask(i+1, 0.95, 0.95))
			require.Equal(t, n, out.Moulds)
		}
	})
	t.Run("success runs: tests without a failure for 90 % at 90 %, 95 % and 99 %", func(t *testing.T) {
		for c, n := range map[float64]int{0.90: 22, 0.95: 29, 0.99: 44} {
			out, _ := run(t, ask(1, 0.90, c))
			require.Equal(t, n, out.Moulds)
		}
	})
	// Cumulative chances of at most x bad ones out of n, as every table of the
	// binomial distribution prints them.
	for _, c := range []struct {
		n, x    int
		s, want float64
	}{
		{5, 0, 0.2, 0.3277}, {5, 1, 0.2, 0.7373}, {5, 2, 0.2, 0.9421},
		{10, 0, 0.1, 0.3487}, {10, 1, 0.1, 0.7361}, {10, 2, 0.1, 0.9298}, {10, 3, 0.1, 0.9872},
		{15, 1, 0.1, 0.5490}, {15, 2, 0.1, 0.8159}, {15, 3, 0.1, 0.9444},
		{20, 0, 0.05, 0.3585}, {20, 1, 0.05, 0.7358}, {20, 2, 0.05, 0.9245}, {20, 3, 0.05, 0.9841},
	} {
		t.Run(fmt.Sprintf("tables of the binomial distribution, n = %d, p = %v, x = %d", c.n, c.s, c.x), func(t *testing.T) {
			require.InDelta(t, c.want, chance(c.n-c.x, c.n, 1-c.s), 0.00005)
		})
	}
}

// TestAgainstBeta compares with the regularised incomplete beta function of
// gonum, an independent library: P = I_p(N, n − N + 1).
func TestAgainstBeta(t *testing.T) {
	r := rand.New(rand.NewSource(2))
	for range 1500 {
		good, p, c := 1+r.Intn(200), 0.05+0.949*r.Float64(), 0.5+0.4999*r.Float64()
		n, got, fewer := enough(good, p, c)
		beta := func(n int) float64 {
			if n < good {
				return 0
			}
			return mathext.RegIncBeta(float64(good), float64(n-good+1), p)
		}
		require.InDelta(t, beta(n), got, 1e-9)
		require.InDelta(t, beta(n-1), fewer, 1e-9)
		require.GreaterOrEqual(t, beta(n), c-1e-9)
		require.Less(t, beta(n-1), c+1e-9)
		require.InDelta(t, got, chance(good, n, p), 1e-12)
	}
	for _, c := range []struct {
		good, n      int
		p, at, fewer float64
	}{{10, 13, 0.9, 0.9658, 0.8891}, {20, 23, 0.95, 0.9742, 0.9052}, {5, 9, 0.8, 0.9804, 0.9437}} {
		n, at, fewer := enough(c.good, c.p, 0.95)
		require.Equal(t, c.n, n)
		require.InDelta(t, c.at, at, 0.00005)
		require.InDelta(t, c.fewer, fewer, 0.00005)
	}
}

// TestBySumming compares with the plain sum of the binomial chances.
func TestBySumming(t *testing.T) {
	for n := 1; n <= 20; n++ {
		for good := 1; good <= n; good++ {
			for _, p := range []float64{0.1, 0.5, 0.93} {
				sum := 0.0
				for k := good; k <= n; k++ {
					c := 1.0
					for i := range k {
						c = c * float64(n-i) / float64(i+1)
					}
					sum += c * math.Pow(p, float64(k)) * math.Pow(1-p, float64(n-k))
				}
				require.InDelta(t, sum, chance(good, n, p), 1e-12)
			}
		}
	}
}

func TestMaterialsAndCost(t *testing.T) {
	in := ask(10, 0.1, 0.95)
	in.Metal, in.Casting, in.Sand = some(quantity.Mass(12)), some(quantity.Mass(7)), some(quantity.Mass(60))
	in.Loss, in.Reused, in.Returns = some(quantity.Ratio(0.04)), some(quantity.Ratio(0.9)), some(quantity.Ratio(0.5))
	in.MetalPrice, in.SandPrice = some(quantity.Price(2)), some(quantity.Price(0.1))
	in.MouldCost, in.HeatCost, in.PatternCost = some(quantity.Money(5)), some(quantity.Money(80)), some(quantity.Money(40))
	out, _ := run(t, in)
	require.Equal(t, 13, out.Moulds)
	require.InDelta(t, 156, float64(out.Metal.V), 1e-9)
	require.InDelta(t, 162.5, float64(out.Charge.V), 1e-9)
	require.InDelta(t, 86, float64(out.Back.V), 1e-9)
	require.InDelta(t, 78, float64(out.NewSand.V), 1e-9)
	require.InDelta(t, 325-86+7.8+65+80+40, float64(out.Cost.V), 1e-9)
	require.InDelta(t, 43.18, float64(out.PerGood.V), 1e-9)
	// Ten moulds: 125 kg charged, 50 kg back.
	require.InDelta(t, (250-50+6+50+80+40)/10.0, float64(out.PerGood.V-out.ScrapFor.V), 1e-9)
}

func TestSeveralInAMould(t *testing.T) {
	in := ask(10, 0.1, 0.95)
	in.PerMould = some(4)
	out, p := run(t, in)
	require.Equal(t, 13, out.Least)
	require.Equal(t, 4, out.Moulds)
	require.Equal(t, 16, out.Castings)
	require.Equal(t, 5, out.Together) // three whole moulds: 0.9185 of five is not, 0.99144 is
	require.InDelta(t, mathext.RegIncBeta(3, 3, 0.9), chance(3, 5, 0.9), 1e-12)
	require.Equal(t, "defects-come-together", p.Findings[0].Code)
	require.Contains(t, p.Findings[0].Text.String(), "5 moulds, not 4")
}

func TestFindings(t *testing.T) {
	_, p := run(t, ask(10, 0, 0.95))
	require.Equal(t, "no-scrap", p.Findings[0].Code)
	in := ask(10, 0.4, 0.95)
	in.MouldCost = some(quantity.Money(5))
	_, p = run(t, in)
	require.Equal(t, "much-scrap", p.Findings[1].Code)
	_, p = run(t, ask(10, 0.25, 0.95))
	require.Contains(t, p.Findings[1].Text.String(), "one casting in four")
}

func TestFaults(t *testing.T) {
	_, err := Plan(Input{}, nil)
	var faults form.Faults
	require.ErrorAs(t, err, &faults)
	require.Len(t, faults, 2)
	require.True(t, faults.Missing())
	in := ask(10, 0.1, 0.95)
	in.PerMould, in.Metal, in.Casting = some(2), some(quantity.Mass(12)), some(quantity.Mass(7))
	_, err = Plan(in, nil)
	require.ErrorAs(t, err, &faults)
	require.Equal(t, "casting", faults[0].Field)
}

func TestProperties(t *testing.T) {
	r := rand.New(rand.NewSource(4))
	for range 300 {
		in := ask(1+r.Intn(300), 0.95*r.Float64(), 0.5+0.499*r.Float64())
		in.PerMould = some(1 + r.Intn(6))
		in.Metal, in.MetalPrice, in.HeatCost = some(quantity.Mass(1+50*r.Float64())), some(quantity.Price(5*r.Float64())), some(quantity.Money(100*r.Float64()))
		out, _ := run(t, in)
		require.GreaterOrEqual(t, float64(out.Reached), float64(in.Certainty.V)-1e-9)
		require.LessOrEqual(t, float64(out.Reached), 1.0)
		if out.Fewer.Known() {
			require.Less(t, out.Fewer.V, in.Certainty.V)
		}
		require.GreaterOrEqual(t, float64(out.ScrapFor.V), -1e-9)
		blank, err := Plan(in, nil)
		require.NoError(t, err)
		require.Equal(t, out, blank, "no answer hangs on the paper")
		more := func(change func(*Input)) {
			again := in
			change(&again)
			b, _ := run(t, again)
			require.GreaterOrEqual(t, b.Moulds, out.Moulds)
			require.GreaterOrEqual(t, b.Together, out.Together)
			require.GreaterOrEqual(t, float64(b.Metal.V), float64(out.Metal.V)-1e-9)
		}
		more(func(in *Input) { in.Certainty.V += (0.9999 - in.Certainty.V) * quantity.Ratio(r.Float64()) })
		more(func(in *Input) { in.Scrap.V += (0.95 - in.Scrap.V) * quantity.Ratio(r.Float64()) })
		more(func(in *Input) { in.Good++ })
	}
}

// FuzzPlan feeds whatever JSON there is: the answer is faults or finite
// numbers, never a panic. The writer panics on a number that is not finite.
func FuzzPlan(f *testing.F) {
	f.Add([]byte(`{"good":10,"scrap":"10 %","metal":"12 kg","casting":"7 kg","sand":"60 kg","metal_price":"2 per kg","mould_cost":"5","heat_cost":"80"}`))
	f.Add([]byte(`{"good":1000,"scrap":"95 %","certainty":"99.99 %","per_mould":100,"metal":"30 t","loss":"30 %","metal_price":"1000000 per kg","returns":"100 %","casting":"1 g"}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		in, _ := form.Decode[Input](data, quantity.US)
		p := &working.Paper{}
		out, err := Plan(in, p)
		if err != nil {
			return
		}
		w := &reply.Writer{System: quantity.US, Working: true}
		w.Answers(out, p)
		w.Findings(p.Findings)
		w.Steps(p.Steps)
	})
}

func BenchmarkPlan(b *testing.B) {
	in := ask(100, 0.1, 0.95)
	for b.Loop() {
		if _, err := Plan(in, nil); err != nil {
			b.Fatal(err)
		}
	}
}

// Ten good castings at one in ten scrap.
func ExamplePlan() {
	out, err := Plan(Input{Good: 10, Scrap: quantity.Some(10 * quantity.Percent)}, nil)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(out.Moulds, "moulds, certain to", out.Reached)
	// Output: 13 moulds, certain to 96.6 %
}
