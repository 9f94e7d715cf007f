package charge_test

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/charge"
	"pourwright/calc/quantity"
	"pourwright/calc/working"
	"pourwright/calc/working/stepcheck"
)

func some[T any](v T) quantity.Opt[T] { return quantity.Some(v) }

func share(v float64) quantity.Ratio { return quantity.Ratio(v) }

var melts = [][]charge.Element{{"C", "Si", "Mn", "P", "S", "Cr"}, {"Cu", "Sn", "Zn", "Pb", "Ni"}, {"Al", "Si", "Mg", "Cu", "Fe"}}

// question makes a random charge of up to 15 materials and 6 limits. The
// limits are set round a blend that exists, in some cases less wide than the
// stock needs, so that both answers are common.
func question(r *rand.Rand) charge.Input {
	in := charge.Input{Melt: quantity.Mass(math.Exp(r.Float64() * 7))}
	melt := melts[r.Intn(len(melts))]
	n := 1 + r.Intn(15)
	centre := make([]float64, len(melt))
	for range n {
		m := charge.Material{Price: some(quantity.Price(math.Round(r.Float64()*500) / 100))}
		weight := r.Float64()
		for k, e := range melt {
			a := r.Float64() * r.Float64() * 0.2
			m.Analysis = append(m.Analysis, charge.Part{Element: e, Amount: some(share(a))})
			if r.Intn(5) == 0 {
				m.Analysis[k].Recovery = some(share(0.5 + r.Float64()/2))
			}
			centre[k] += weight * a / float64(n) * 2
		}
		if r.Intn(3) == 0 {
			m.OnHand = some(quantity.Mass(float64(in.Melt) * r.Float64() * 1.5))
		}
		if r.Intn(8) == 0 {
			m.Least = some(share(r.Float64() / float64(n)))
		}
		if r.Intn(4) == 0 {
			m.Most = some(share(0.1 + r.Float64()))
			m.Most.V = min(m.Most.V, 1)
			m.Most.V = max(m.Most.V, m.Least.V)
		}
		if r.Intn(4) == 0 {
			m.Yield = some(share(0.8 + r.Float64()/5))
		}
		in.Materials = append(in.Materials, m)
	}
	for k, e := range melt {
		if r.Intn(4) == 0 {
			continue
		}
		l := charge.Limit{Element: e}
		width := r.Float64() * 0.8
		switch r.Intn(3) {
		case 0:
			l.Least = some(share(centre[k] * (1 - width)))
		case 1:
			l.Most = some(share(centre[k] * (1 + width)))
		default:
			l.Least, l.Most = some(share(centre[k]*(1-width))), some(share(centre[k]*(1+width)))
		}
		in.Limits = append(in.Limits, l)
		if r.Intn(4) == 0 {
			in.Changes = append(in.Changes, charge.Change{Element: e, Gain: some(share(r.Float64()/2 - 0.3)), PickUp: some(share(r.Float64() / 200))})
		}
	}
	return in
}

func TestAnyQuestion(t *testing.T) {
	r := rand.New(rand.NewSource(1))
	answered := 0
	for range 700 {
		in := question(r)
		p := &working.Paper{}
		out, err := charge.Blend(in, p)
		if err != nil {
			continue
		}
		answered++
		require.Empty(t, stepcheck.Paper(p))
		// Mass balance: the melt is what the materials yield, and the charge
		// is melt and loss.
		charged, melted, shares, cost := 0.0, 0.0, 0.0, 0.0
		for i, m := range out.Materials {
			q := in.Materials[i]
			require.GreaterOrEqual(t, float64(m.Mass), 0.0)
			charged += float64(m.Mass)
			melted += float64(m.Mass) * q.Yield.Or(1).SI()
			shares += float64(m.Share)
			cost += float64(m.Mass) * float64(q.Price.V)
			if q.OnHand.Known() {
				require.LessOrEqual(t, float64(m.Mass), float64(q.OnHand.V)*(1+1e-6)+1e-9*float64(in.Melt))
			}
			require.GreaterOrEqual(t, float64(m.Share), q.Least.V.SI()-1e-6)
			require.LessOrEqual(t, float64(m.Share), q.Most.Or(1).SI()+1e-6)
		}
		require.InEpsilon(t, melted, float64(out.Melt), 1e-12)
		require.InEpsilon(t, charged, float64(out.Charge), 1e-12)
		require.InDelta(t, charged-melted, float64(out.Loss), 1e-12*charged)
		require.InDelta(t, 1, shares, 1e-12)
		require.InEpsilon(t, 1+cost, 1+float64(out.Cost.V), 1e-12)
		require.LessOrEqual(t, float64(out.Melt), float64(in.Melt)*(1+1e-12))
		// Element balance, from the masses alone.
		for k, e := range out.Elements {
			require.False(t, math.IsNaN(float64(e.Melt)))
			require.GreaterOrEqual(t, float64(e.Melt), 0.0)
			sum := 0.0
			for i, m := range in.Materials {
				for _, a := range m.Analysis {
					if name(a.Element) == e.Element {
						sum += float64(out.Materials[i].Mass) * m.Yield.Or(1).SI() * a.Amount.V.SI() * a.Recovery.Or(1).SI()
					}
				}
			}
			require.InDelta(t, sum, float64(e.Charged)*float64(out.Melt), 1e-12*charged, k)
			if out.Kept && e.Least.Known() {
				require.GreaterOrEqual(t, float64(e.Melt), float64(e.Least.V)*(1-1e-5))
			}
			if out.Kept && e.Most.Known() {
				require.LessOrEqual(t, float64(e.Melt), float64(e.Most.V)*(1+1e-5)+1e-9)
			}
		}
		missed := 0
		for _, f := range p.Findings {
			if f.Code == "limit-missed" {
				missed++
				require.Equal(t, working.Stop, f.Level)
				require.False(t, f.Do.IsZero())
			}
			require.NotContains(t, f.Text.In(quantity.US)+f.Do.In(quantity.US), "%!")
		}
		require.Equal(t, out.Kept, missed == 0)
	}
	require.Greater(t, answered, 500)
}

func name(e charge.Element) string {
	for _, c := range e.Choices() {
		if c[0] == string(e) {
			return c[1][:len(c[1])-len(c[0])-2]
		}
	}
	return ""
}

// kept answers questions until one keeps every limit.
func kept(r *rand.Rand) (charge.Input, charge.Output) {
	for {
		in := question(r)
		out, err := charge.Blend(in, nil)
		if err == nil && out.Kept && float64(out.Melt) > float64(in.Melt)*(1-1e-9) {
			return in, out
		}
	}
}

func blend(t *testing.T, in charge.Input) charge.Output {
	t.Helper()
	out, err := charge.Blend(in, nil)
	require.NoError(t, err)
	return out
}

func dearer(t *testing.T, a, b charge.Output) {
	t.Helper()
	require.GreaterOrEqual(t, float64(b.Cost.V), float64(a.Cost.V)-1e-6*(1+float64(a.Cost.V)))
}

func TestCheaperStockNeverCostsMore(t *testing.T) {
	r := rand.New(rand.NewSource(2))
	for range 150 {
		in, out := kept(r)
		i := r.Intn(len(in.Materials))
		in.Materials[i].Price.V *= quantity.Price(r.Float64())
		dearer(t, blend(t, in), out)
	}
}

func TestMoreStockNeverWorsens(t *testing.T) {
	r := rand.New(rand.NewSource(3))
	for range 150 {
		in, out := kept(r)
		other := question(r).Materials[0]
		other.Least = quantity.Opt[quantity.Ratio]{}
		in.Materials = append(append([]charge.Material(nil), in.Materials...), other)
		more := blend(t, in)
		require.True(t, more.Kept)
		dearer(t, more, out)
		if out.Largest.Known() && more.Largest.Known() {
			require.GreaterOrEqual(t, float64(more.Largest.V), float64(out.Largest.V)*(1-1e-5))
		}
	}
}

func TestTighterLimitNeverCostsLess(t *testing.T) {
	r := rand.New(rand.NewSource(4))
	tested := 0
	for range 300 {
		in, out := kept(r)
		if len(in.Limits) == 0 {
			continue
		}
		i := r.Intn(len(in.Limits))
		l := &in.Limits[i]
		if l.Least.Known() {
			l.Least.V *= 1.02
		} else {
			l.Most.V *= 0.98
		}
		if l.Most.Known() && l.Least.V > l.Most.V {
			continue
		}
		tight := blend(t, in)
		if tight.Kept {
			tested++
			dearer(t, out, tight)
		}
	}
	require.Greater(t, tested, 80)
}

// TestScale: twice the melt from twice the stock takes twice of everything.
func TestScale(t *testing.T) {
	r := rand.New(rand.NewSource(6))
	for range 200 {
		in := question(r)
		a, err := charge.Blend(in, nil)
		if err != nil {
			continue
		}
		const k = 8 // a power of two, so that not a bit moves
		in.Melt *= k
		in.Materials = append([]charge.Material(nil), in.Materials...)
		for i := range in.Materials {
			in.Materials[i].OnHand.V *= k
		}
		b := blend(t, in)
		require.Equal(t, a.Kept, b.Kept)
		require.InEpsilon(t, k*float64(a.Charge), float64(b.Charge), 1e-12)
		require.InDelta(t, k*float64(a.Cost.V), float64(b.Cost.V), 1e-9*(1+float64(b.Cost.V)))
		for i := range a.Materials {
			require.InDelta(t, k*float64(a.Materials[i].Mass), float64(b.Materials[i].Mass), 1e-9*float64(b.Charge))
		}
		for i := range a.Elements {
			require.InDelta(t, float64(a.Elements[i].Melt), float64(b.Elements[i].Melt), 1e-12)
		}
	}
}

// TestPricesOfLimits: a limit moved a little changes the cost by its price,
// and a material bought a little below its worth comes in, above it stays out.
func TestPricesOfLimits(t *testing.T) {
	r := rand.New(rand.NewSource(7))
	limits, worths := 0, 0
	for range 200 {
		in, out := kept(r)
		for i, e := range out.Elements {
			if !e.Dearer.Known() || e.Dearer.V < 0.01*out.Cost.V {
				continue
			}
			limit := -1
			for k, l := range in.Limits {
				if name(l.Element) == e.Element {
					limit = k
				}
			}
			changed := in
			changed.Limits = append([]charge.Limit(nil), in.Limits...)
			l := &changed.Limits[limit]
			const step = 1e-7
			if l.Least.Known() && math.Abs(float64(l.Least.V-e.Melt)) < 1e-8 {
				l.Least.V += step
			} else {
				l.Most.V -= step
			}
			if l.Least.Known() && l.Most.Known() && l.Least.V > l.Most.V {
				continue
			}
			tight := blend(t, changed)
			if !tight.Kept {
				continue
			}
			limits++
			want := float64(e.Dearer.V) * step / 0.001
			require.InDelta(t, want, float64(tight.Cost.V-out.Cost.V), 0.02*want+1e-6*float64(out.Cost.V), i)
		}
		for i, m := range out.Materials {
			if m.Mass > 0 || !m.Worth.Known() || in.Materials[i].OnHand.Known() && in.Materials[i].OnHand.V < 0.01*in.Melt || in.Materials[i].Most.Or(1) < 0.01 || m.Worth.V < 0.01 {
				continue
			}
			changed := in
			changed.Materials = append([]charge.Material(nil), in.Materials...)
			changed.Materials[i].Price.V = m.Worth.V * 1.01
			require.Zero(t, blend(t, changed).Materials[i].Mass)
			changed.Materials[i].Price.V = m.Worth.V * 0.98
			cheaper := blend(t, changed)
			dearer(t, cheaper, out)
			if cheaper.Materials[i].Mass > 0 {
				worths++
			}
		}
	}
	require.Greater(t, limits, 50)
	require.Greater(t, worths, 100)
}

// TestWhatTheStockMakes: the most that the stock makes within the limits can
// be made, and no more.
func TestWhatTheStockMakes(t *testing.T) {
	r := rand.New(rand.NewSource(8))
	tested := 0
	for range 300 {
		in := question(r)
		out, err := charge.Blend(in, nil)
		if err != nil || !out.Largest.Known() || out.Largest.V < max(0.001*in.Melt, 0.02) {
			continue
		}
		tested++
		in.Melt = out.Largest.V * 0.9999
		less := blend(t, in)
		require.True(t, less.Kept)
		require.InEpsilon(t, float64(in.Melt), float64(less.Melt), 1e-6)
		in.Melt = out.Largest.V * 1.01
		more := blend(t, in)
		require.False(t, more.Kept && float64(more.Melt) > float64(in.Melt)*(1-1e-6))
	}
	require.Greater(t, tested, 30)
}

// BenchmarkBlend is 15 materials and 10 limits, with all that the answer
// carries.
func BenchmarkBlend(b *testing.B) {
	r := rand.New(rand.NewSource(9))
	in := charge.Input{Melt: 100}
	names := []charge.Element{"C", "Si", "Mn", "P", "S", "Cr", "Ni", "Cu", "Mo", "Ti"}
	centre := make([]float64, len(names))
	for range 15 {
		m := charge.Material{Price: some(quantity.Price(r.Float64())), OnHand: some(quantity.Mass(30)), Most: some(share(0.6))}
		for k, e := range names {
			a := r.Float64() * 0.05
			m.Analysis = append(m.Analysis, charge.Part{Element: e, Amount: some(share(a))})
			centre[k] += a / 15
		}
		in.Materials = append(in.Materials, m)
	}
	for k, e := range names {
		in.Limits = append(in.Limits, charge.Limit{Element: e, Least: some(share(centre[k] * 0.9)), Most: some(share(centre[k] * 1.1))})
	}
	for b.Loop() {
		if out, err := charge.Blend(in, nil); err != nil || !out.Kept {
			b.Fatal(out.Kept, err)
		}
	}
}
