package ladleheat

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/alloy"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/reply"
	"pourwright/calc/working"
)

func question(r *rand.Rand) Input {
	all := alloy.All()
	a := all[r.Intn(len(all))]
	in := Input{Alloy: a.Code, Mass: quantity.Mass(math.Exp(-1 + 10*r.Float64())), Transfer: some(quantity.Time(5 + 200*r.Float64()))}
	maybe := func() bool { return r.Intn(2) == 0 }
	if maybe() {
		in.Tap = some(min(a.Liquidus.V+quantity.Temperature(80+300*r.Float64()), celsius(1750)))
	}
	if maybe() {
		in.Pouring = some(quantity.Time(5 + 400*r.Float64()))
	}
	if maybe() {
		in.Vessel = some(crucible)
	}
	if maybe() {
		in.Cover = some([]string{open, covered, ownTop}[r.Intn(3)])
	}
	if maybe() {
		in.Left = some(quantity.Ratio(0.05 + 0.95*r.Float64()))
	}
	if maybe() {
		in.LiningConductivity = some(quantity.Conductivity(2 * r.Float64()))
	}
	if r.Intn(5) == 0 {
		in.Basis, in.First, in.Between = some(byReadings), a.Liquidus.V+200, quantity.Time(10+300*r.Float64())
		in.Second = in.First - quantity.Temperature(1+50*r.Float64())
	}
	return in
}

func TestAnyQuestion(t *testing.T) {
	r := rand.New(rand.NewSource(11))
	for range 250 {
		in := question(r)
		out, _ := run(t, in)
		require.LessOrEqual(t, out.Start, out.Filled)
		require.GreaterOrEqual(t, float64(out.PerMinute), 0.0)
		if out.End.Known() {
			require.LessOrEqual(t, float64(out.End.V), float64(out.Start)+1e-6)
			require.LessOrEqual(t, float64(out.EndLow.V), float64(out.End.V)+1e-6)
			require.LessOrEqual(t, float64(out.End.V), float64(out.EndHigh.V)+1e-6)
		}
		if out.Unmatched.Known() {
			require.Less(t, float64(out.Unmatched.V), 0.001)
		}
		if out.HoldsLow.Known() && out.Holds.Known() {
			require.LessOrEqual(t, float64(out.HoldsLow.V), float64(out.Holds.V)*1.001)
		}
		blank, err := Lose(in, nil)
		require.NoError(t, err)
		blank.Curves = out.Curves
		require.Equal(t, out, blank, "no answer hangs on the paper")

		// Tapped at what is needed, the last mould gets just that.
		if out.TapNeeded.Known() {
			at := in
			at.Tap = out.TapNeeded
			again, _ := run(t, at)
			require.InDelta(t, float64(out.Low), float64(again.End.V), 0.01)
		}
		// Hotter tap never shortens the time that the metal is fit to pour.
		hotter := in
		hotter.Tap = some(out.Filled + quantity.Temperature(out.Drop) + 10)
		again, err := Lose(hotter, nil)
		if err == nil && out.Holds.Known() && again.Holds.Known() {
			require.Greater(t, again.Holds.V, out.Holds.V)
		}
		same := in
		same.Tap = some(out.Filled + quantity.Temperature(out.Drop))
		if in.Basis.Or(byModel) == byModel && same.Tap.V < celsius(1700) {
			slower(t, same, out)
		}
	}
}

// slower insulates the ladle in each way: it never cools faster for it.
func slower(t *testing.T, in Input, out Output) {
	for _, better := range []func(*Input){
		func(in *Input) { in.Cover, in.CoverShare = some(ownTop), some(quantity.Ratio(0.05)) },
		func(in *Input) { in.LiningConductivity = some(in.LiningConductivity.Or(1.2) / 2) },
		func(in *Input) {
			in.Wall = some(quantity.Length(0.02))
			in.Emissivity = some(quantity.Ratio(0.01))
		},
		func(in *Input) {
			if in.Preheat = some(out.Low - 10); in.Alloy != alloy.CodePewter {
				in.Drop = some(out.Drop)
			}
		},
	} {
		warmer := in
		if warmer.Cover.Or(open) != open {
			warmer.Cover = some(open)
		}
		plain, err := Lose(warmer, nil)
		require.NoError(t, err)
		warmer.Drop = some(plain.Drop)
		better(&warmer)
		again, err := Lose(warmer, nil)
		require.NoError(t, err)
		require.GreaterOrEqual(t, float64(again.Start), float64(plain.Start)-1e-6)
		if plain.End.Known() {
			require.GreaterOrEqual(t, float64(again.End.V), float64(plain.End.V)-1e-6)
		}
		if plain.Holds.Known() && again.Holds.Known() {
			require.GreaterOrEqual(t, float64(again.Holds.V), float64(plain.Holds.V)*(1-1e-6))
		}
	}
}

// FuzzLose feeds whatever JSON there is: the answer is faults or finite
// numbers, never a panic. The writer panics on a number that is not finite.
func FuzzLose(f *testing.F) {
	f.Add([]byte(`{"alloy":"grey-iron","mass":"100 kg","tap":"1440 °C","pouring":"90 s","cover":"covered","preheat":"700 °C","diameter":"300 mm"}`))
	f.Add([]byte(`{"alloy":"pewter","mass":"0.1 kg","pouring":"4 h","transfer":"4 h","left":"5 %","vessel":"crucible","wall":"3 mm","emissivity":"100 %","surroundings":"-40 °C"}`))
	f.Add([]byte(`{"alloy":"carbon-steel","basis":"readings","first":"1600 °C","second":"1599.999 °C","between":"6 h","pouring":"1 s"}`))
	f.Add([]byte(`{"alloy":"grey-iron","mass":"30 t","lining_conductivity":"0","cover":"own","cover_share":"0 %","pouring":"4 h","drop":"0 K"}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		in, _ := form.Decode[Input](data, quantity.US)
		p := &working.Paper{}
		out, err := Lose(in, p)
		if err != nil {
			return
		}
		w := &reply.Writer{System: quantity.US, Working: true}
		w.Answers(out, p)
		w.Findings(p.Findings)
		w.Steps(p.Steps)
	})
}
