package curve

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

func smooth(f func(float64) float64) func(float64) Sample {
	return func(x float64) Sample { return Sample{X: x, Y: f(x), Known: true} }
}

// farthest is how far the polygon of a curve stands off it, of its height.
func farthest(samples []Sample, f func(float64) float64) float64 {
	low, high, worst := math.Inf(1), math.Inf(-1), 0.0
	for i := range len(samples) - 1 {
		a, b := samples[i], samples[i+1]
		low, high = math.Min(low, a.Y), math.Max(high, a.Y)
		for s := 0.0; s <= 1; s += 1.0 / 16 {
			worst = math.Max(worst, math.Abs(f(a.X*(1-s)+b.X*s)-(a.Y*(1-s)+b.Y*s)))
		}
	}
	return worst / (high - low)
}

// Points stand where the curve bends: of the same number set evenly the polygon
// is several times as far off.
func TestPointsGoWhereItBends(t *testing.T) {
	f := func(x float64) float64 { return math.Exp(-40 * x) }
	own := Trace(smooth(f), 0, 1, 60, false)
	require.Len(t, own, 60)
	var even []Sample
	for i := range 60 {
		even = append(even, smooth(f)(float64(i)/59))
	}
	require.Less(t, farthest(own, f), farthest(even, f)/4)
	require.Less(t, farthest(own, f), 0.005)
}

// An edge is found to a five-hundredth of the stretch.
func TestEdgesAreFound(t *testing.T) {
	code := working.Finding{Level: working.Stop, Code: "hot", Text: working.Say("too hot"), Do: working.Say("wait")}
	g := rand.New(rand.NewSource(1))
	for range 200 {
		a := 0.1 + 0.3*g.Float64()
		b := a + 0.1 + 0.4*g.Float64()
		samples := Trace(func(x float64) Sample {
			switch {
			case x < a:
				return Sample{X: x, Refused: working.Say("below %v", quantity.Number(x))}
			case x > b:
				return Sample{X: x, Y: x * x, Known: true, Findings: []working.Finding{code}}
			}
			return Sample{X: x, Y: x * x, Known: true}
		}, 0, 1, 80, false)
		spans := Spans(samples, 0)
		require.Len(t, spans, 2)
		require.True(t, spans[0].Refused)
		require.Zero(t, spans[0].From)
		require.InDelta(t, a, spans[0].To, 1.0/500)
		require.Equal(t, "below 0", spans[0].Text.String(), "as it is nearest to the setting asked about")
		require.Equal(t, working.Stop, spans[1].Level)
		require.InDelta(t, b, spans[1].From, 1.0/500)
		require.Equal(t, 1.0, spans[1].To)
		require.False(t, spans[1].Throughout)
		runs := Runs(samples)
		require.Len(t, runs, 1)
		require.GreaterOrEqual(t, runs[0][0].X, a)
	}
}

func TestThroughoutIsNoEdge(t *testing.T) {
	mind := working.Finding{Level: working.Mind, Code: "wide", Text: working.Say("wide")}
	samples := Trace(func(x float64) Sample { return Sample{X: x, Y: x, Known: true, Findings: []working.Finding{mind}} }, 2, 5, 20, false)
	spans := Spans(samples, 3)
	require.Len(t, spans, 1)
	require.True(t, spans[0].Throughout)
}

func TestCountsMoveInWholes(t *testing.T) {
	samples := Trace(smooth(func(x float64) float64 { return x }), 0.5, 12.2, 80, true)
	require.Len(t, samples, 12)
	for i, s := range samples {
		require.Equal(t, float64(i+1), s.X)
	}
	require.LessOrEqual(t, len(Trace(smooth(math.Sqrt), 0, 5000, 80, true)), 80)
}

// Whatever the calculator does, the points are in order, as many as asked for
// at the most, ends included, and every span lies inside the stretch.
func TestTraceHolds(t *testing.T) {
	g := rand.New(rand.NewSource(2))
	for range 300 {
		low := g.NormFloat64() * 100
		high := low + math.Exp(6*g.NormFloat64())
		n := 2 + g.Intn(120)
		looked := 0
		samples := Trace(func(x float64) Sample {
			looked++
			s := Sample{X: x, Known: g.Intn(4) > 0, Y: g.NormFloat64()}
			if !s.Known {
				s.Refused = working.Say("no")
			}
			for range g.Intn(3) {
				s.Findings = append(s.Findings, working.Finding{Level: working.Level(1 + g.Intn(2)), Code: string(rune('a' + g.Intn(3)))})
			}
			return s
		}, low, high, n, false)
		require.Equal(t, looked, len(samples))
		require.LessOrEqual(t, len(samples), max(n, Fewest))
		require.Equal(t, low, samples[0].X)
		require.Equal(t, high, samples[len(samples)-1].X)
		for i := range len(samples) - 1 {
			require.Less(t, samples[i].X, samples[i+1].X)
		}
		for _, s := range Spans(samples, low) {
			require.LessOrEqual(t, s.From, s.To)
			require.GreaterOrEqual(t, s.From, low)
			require.LessOrEqual(t, s.To, high)
		}
	}
}

func TestReach(t *testing.T) {
	length := quantity.Length(0).Kind()
	num := func(v float64) *float64 { return &v }
	for _, row := range []struct {
		name   string
		slot   form.Slot
		system quantity.System
		want   Reach
	}{
		{"a wall", form.Slot{Kind: length, Value: 0.02, Min: num(0.0005), Max: num(2)}, quantity.Metric, Reach{"mm", 8, 50, 0.5}},
		{"a wall in inches", form.Slot{Kind: length, Value: 0.0254, Min: num(0.0005), Max: num(2)}, quantity.US, Reach{"in", 0.4, 2.5, 0.05}},
		{"near the end of its field", form.Slot{Kind: length, Value: 1.8, Min: num(0.0005), Max: num(2)}, quantity.Metric, Reach{"mm", 720, 2077, 20}},
		{"a pouring temperature", form.Slot{Kind: quantity.Temperature(0).Kind(), Value: 1150 + 273.15, Min: num(400), Max: num(2100)}, quantity.Metric, Reach{"°C", 920, 1380, 5}},
		{"a share with nothing in it", form.Slot{Kind: quantity.Ratio(0).Kind(), Value: 0, Min: num(0), Max: num(0.5)}, quantity.Metric, Reach{"%", 0, 50, 0.5}},
		{"a count", form.Slot{Kind: quantity.Number(0).Kind(), Whole: true, Value: 3, Min: num(1), Max: num(20)}, quantity.Metric, Reach{"", 1, 8, 1}},
		{"a contraction in its own unit", form.Slot{Kind: quantity.Ratio(0).Kind(), Entry: [2]string{"mm/m", "in/ft"}, Value: 0.0125, Min: num(0), Max: num(0.05)}, quantity.Metric, Reach{"mm/m", 5, 31.4, 0.5}},
	} {
		got := ReachOf(row.slot, row.system)
		require.Equal(t, row.want.Unit, got.Unit, row.name)
		require.InDelta(t, row.want.Low, got.Low, 1e-9, row.name)
		require.InDelta(t, row.want.High, got.High, got.Step+1e-9, row.name)
		require.InDelta(t, row.want.Step, got.Step, 1e-9, row.name)
	}
}
