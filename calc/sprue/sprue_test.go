package sprue

import (
	"fmt"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/flow"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/working"
	"pourwright/calc/working/stepcheck"
)

const (
	cm  = quantity.Centimetre
	mm  = quantity.Millimetre
	cm2 = quantity.SquareCentimetre
)

func run(t *testing.T, in Input) (Output, *working.Paper) {
	t.Helper()
	return stepcheck.Run(t, Run, in)
}

func some[T any](v T) quantity.Opt[T] { return quantity.Some(v) }

func TestPublished(t *testing.T) {
	t.Run("Groover, FMM example 10.2: 20 cm, 2.5 cm², 1560 cm³", func(t *testing.T) {
		out, _ := run(t, Input{Height: 20 * cm, BaseArea: some(2.5 * cm2), Volume: some(quantity.Volume(1560e-6))})
		require.InDelta(t, 1.981, float64(out.Speed), 0.0005)
		require.InDelta(t, 495e-6, float64(out.Flow.V), 0.5e-6)
		require.InDelta(t, 3.15, float64(out.Time.V), 0.005)
	})
	t.Run("Groover, ch. 10 problem: 175 mm, 400 mm², 0.001 m³", func(t *testing.T) {
		out, _ := run(t, Input{Height: 175 * mm, BaseArea: some(4 * cm2), Volume: some(quantity.Volume(1e-3))})
		require.InDelta(t, 1.853, float64(out.Speed), 0.0005)
		require.InDelta(t, 7.41e-4, float64(out.Flow.V), 0.005e-4)
		require.InDelta(t, 1.35, float64(out.Time.V), 0.005)
	})
	t.Run("Groover, ch. 10 problem: 1 L/s, 175 mm: foot 540 mm²", func(t *testing.T) {
		out, _ := run(t, Input{Height: 175 * mm, Flow: some(quantity.LitrePerSecond), TopArea: some(8 * cm2)})
		require.InDelta(t, 540e-6, float64(out.Base.V), 0.5e-6)
	})
	t.Run("GATE 2011: 10 mm bore, 250 mm, cube of 100 mm", func(t *testing.T) {
		out, _ := run(t, Input{Height: 250 * mm, BaseArea: some(quantity.Area(78.5398e-6)), Volume: some(quantity.Volume(1e-3))})
		require.InDelta(t, 5.75, float64(out.Time.V), 0.005)
	})
	t.Run("GATE 2007: 650 mm² at the top, 6.5·10⁵ mm³/s, 200 mm, g 10: 290.7 mm² at the foot", func(t *testing.T) {
		out, _ := run(t, Input{Height: 200 * mm, Flow: some(quantity.VolumeFlow(650e-6)), TopArea: some(quantity.Area(650e-6)), Gravity: some(quantity.Number(10))})
		require.InDelta(t, 290.7e-6, float64(out.Fall.V), 0.05e-6)
	})
	t.Run("Ghosh & Mallik, example 2.1: mould 50 × 25 × 15 cm, gate 5 cm², head 15 cm", func(t *testing.T) {
		in := Input{Height: 15 * cm, BaseArea: some(5 * cm2), Volume: some(quantity.Volume(18750e-6))}
		out, _ := run(t, in)
		require.InDelta(t, 21.86, float64(out.Time.V), 0.005)
		in.Gate, in.CavityHeight = some(flow.Bottom), 15*cm
		bottom, _ := run(t, in)
		// The book doubles a rounded figure and prints 43.71.
		require.InDelta(t, 43.71, float64(bottom.Time.V), 0.01)
		require.InDelta(t, 2, float64(bottom.Time.V/out.Time.V), 1e-9, "a bottom gate to the brim takes exactly twice as long")
	})
}

func TestTaperAndFindings(t *testing.T) {
	in := Input{Height: 400 * mm, BasinDepth: some(100 * mm), TopArea: some(8 * cm2), BaseArea: some(4 * cm2)}
	out, p := run(t, in)
	require.InDelta(t, 2, float64(out.Taper.V), 1e-12)
	require.Len(t, p.Findings, 1)
	require.Equal(t, "sprue-fast", p.Findings[0].Code)
	in.BaseArea = some(5 * cm2)
	_, p = run(t, in)
	require.Equal(t, "sprue-sucks-air", p.Findings[1].Code)
	require.Contains(t, p.Findings[1].Do.String(), "400 mm²")
}

func TestFaults(t *testing.T) {
	for _, c := range []struct {
		field string
		in    Input
	}{
		{"height", Input{}},
		{"basin_depth", Input{Height: 100 * mm, BasinDepth: some(100 * mm)}},
		{"cavity_height", Input{Height: 100 * mm, Gate: some(flow.Bottom), CavityHeight: 101 * mm}},
		{"cope_height", Input{Height: 100 * mm, Gate: some(flow.Parting), CavityHeight: 50 * mm, CopeHeight: some(60 * mm)}},
		{"cope_height", Input{Height: 100 * mm, Gate: some(flow.Parting), CavityHeight: 200 * mm, CopeHeight: some(110 * mm)}},
		{"cavity_height", Input{Height: 100 * mm, Gate: some(flow.Bottom)}},
	} {
		_, err := Run(c.in, nil)
		var faults form.Faults
		require.ErrorAs(t, err, &faults)
		require.Equal(t, c.field, faults[0].Field)
	}
}

func random(r *rand.Rand) Input {
	in := Input{Height: quantity.Length(0.01 + 2*r.Float64()), Gate: some([]flow.Position{flow.Top, flow.Parting, flow.Bottom}[r.Intn(3)])}
	in.CavityHeight = quantity.Length((0.1 + 0.9*r.Float64()) * float64(in.Height))
	in.CopeHeight = some(quantity.Length(r.Float64()) * in.CavityHeight)
	in.BaseArea = some(quantity.Area(1e-5 + 0.1*r.Float64()))
	in.TopArea = some(quantity.Area(1e-5 + 0.1*r.Float64()))
	in.Volume = some(quantity.Volume(1e-6 + r.Float64()))
	in.Flow = some(quantity.VolumeFlow(1e-6 + 0.1*r.Float64()))
	in.BasinDepth = some(quantity.Length(0.002 + 0.9*r.Float64()*min(float64(in.Height)-0.004, 1)))
	in.Discharge = some(quantity.Number(0.2 + 0.8*r.Float64()))
	return in
}

func TestProperties(t *testing.T) {
	r := rand.New(rand.NewSource(3))
	for range 300 {
		in := random(r)
		out, _ := run(t, in)
		require.GreaterOrEqual(t, float64(out.Time.V), float64(out.Rule.V)*(1-1e-12), "the trade's head never promises a longer fill than the exact one")
		require.GreaterOrEqual(t, float64(out.Base.V)*float64(in.Discharge.V)*(1+1e-12), float64(out.Fall.V), "metal already moving needs less area")
		blank, err := Run(in, nil)
		require.NoError(t, err)
		require.Equal(t, out, blank)
		higher := in
		higher.Height *= 1.1
		again, _ := run(t, higher)
		require.Less(t, again.Time.V, out.Time.V, "more head never slows a sprue")
		double := in
		double.Volume.V *= 2
		if double.Volume.V <= 10 {
			again, _ = run(t, double)
			require.InEpsilon(t, 2*float64(out.Time.V), float64(again.Time.V), 1e-12)
		}
	}
}

func FuzzRun(f *testing.F) {
	f.Add(int64(1), 0.2, 0.1, 0.05)
	f.Fuzz(func(t *testing.T, draw int64, h, c, cp float64) {
		in := random(rand.New(rand.NewSource(draw)))
		in.Height, in.CavityHeight, in.CopeHeight = quantity.Length(h), quantity.Length(c), some(quantity.Length(cp))
		p := &working.Paper{}
		out, err := Run(in, p)
		if err != nil {
			require.IsType(t, form.Faults{}, err)
			return
		}
		require.Empty(t, stepcheck.Paper(p))
		require.True(t, quantity.Finite(float64(out.Time.V)) && out.Time.V > 0)
	})
}

// Groover's example 10.2: 198.1 cm/s, 495 cm³/s, 3.15 s.
func ExampleRun() {
	out, err := Run(Input{Height: 20 * cm, BaseArea: some(2.5 * cm2), Volume: some(quantity.Volume(1560e-6))}, nil)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f cm/s, %.0f cm³/s, %.2f s\n", quantity.In(out.Speed, "cm/s"), quantity.In(out.Flow.V, "cm^3/s"), float64(out.Time.V))
	// Output: 198.1 cm/s, 495 cm³/s, 3.15 s
}
