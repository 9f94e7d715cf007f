package cooling

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/alloy"
	"pourwright/calc/form"
	"pourwright/calc/freeze"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/reply"
	"pourwright/calc/working"
)

func question(r *rand.Rand) Input {
	all, sands := alloy.All(), mouldstuff.Sands()
	a := all[r.Intn(len(all))]
	in := Input{Shape: freeze.Stated, Modulus: quantity.Length(math.Exp(-8 + 7*r.Float64())), Alloy: a.Code, Sand: sands[r.Intn(len(sands))].Code}
	maybe := func() bool { return r.Intn(2) == 0 }
	if maybe() {
		in.PourTemperature = some(a.Liquidus.V + quantity.Temperature(1+250*r.Float64()))
	}
	if maybe() || a.Family == alloy.Zinc || a.Family == alloy.Tin {
		in.Shakeout = some(celsius(60) + quantity.Temperature(r.Float64())*(a.Solidus.V-100-celsius(60)))
	}
	if maybe() {
		in.Constant = some(quantity.FreezingConstant(1e6 * math.Exp(3*r.Float64()-0.5)))
	}
	if maybe() {
		in.Stress = some("prone")
	}
	if maybe() {
		in.SandThickness = some(quantity.Length(0.01 + r.Float64()))
		in.OpenAfter = some(quantity.Time(math.Exp(12 * r.Float64())))
	}
	return in
}

func TestAnyQuestion(t *testing.T) {
	r := rand.New(rand.NewSource(7))
	for range 250 {
		in := question(r)
		out, _ := run(t, in)
		require.Less(t, float64(out.FreezingHigh), float64(out.TimeHigh))
		require.LessOrEqual(t, float64(out.TimeLow), float64(out.Time)*1.001)
		require.LessOrEqual(t, float64(out.Time), float64(out.TimeHigh)*1.001)
		require.LessOrEqual(t, float64(out.Earliest), float64(out.Recommended)*1.001)
		require.Less(t, float64(out.Freezing), float64(out.Earliest))
		for _, s := range out.Curves {
			for i := 1; i < len(s.Points); i++ {
				require.Greater(t, s.Points[i].X, s.Points[i-1].X)
				require.LessOrEqual(t, s.Points[i].Y, s.Points[i-1].Y)
			}
		}
		blank, err := Shakeout(in, nil)
		require.NoError(t, err)
		blank.Curves = out.Curves
		require.Equal(t, out, blank, "no answer hangs on the paper")

		// Twice the modulus, four times the time.
		if in.Modulus < 0.2 {
			double := in
			double.Modulus *= 2
			again, _ := run(t, double)
			require.InEpsilon(t, 4*float64(out.Time), float64(again.Time), 1e-9)
		}
		// Colder takes longer.
		colder := in
		colder.Shakeout = some(out.RecommendedTemperature - 15)
		if again, err := Shakeout(colder, nil); err == nil {
			require.Greater(t, again.Time, out.Time)
			require.Greater(t, again.TimeHigh, out.TimeHigh)
		}
		// Hotter metal is never colder later, unless the constant is settled.
		if in.PourTemperature.Known() && !in.Constant.Known() {
			hotter := in
			hotter.PourTemperature.V += 20
			again, _ := run(t, hotter)
			require.GreaterOrEqual(t, float64(again.Time), float64(out.Time)*(1-1e-6))
		}
		// Opened when the time says, the casting is at the temperature said.
		at := in
		at.OpenAfter = some(out.Time)
		if out.Time < 60*24*3600 {
			again, _ := run(t, at)
			require.InDelta(t, out.RecommendedTemperature.SI(), again.Open.V.SI(), 1)
		}
	}
}

// FuzzShakeout feeds whatever JSON there is: the answer is faults or finite
// numbers, never a panic. The writer panics on a number that is not finite.
func FuzzShakeout(f *testing.F) {
	f.Add([]byte(`{"shape":"plate","thickness":"25 mm","alloy":"grey-iron","sand":"green-sand","pour_temperature":"1350 °C","sand_thickness":"50 mm","open_after":"2 h","stress":"prone"}`))
	f.Add([]byte(`{"shape":"modulus","modulus":"0.5 m","basis":"figures","density":"25000","latent":"10 kJ/kg","solidus":"2500 °C","heat_solid":"5000","conductivity":"1","mould_conductivity":"0.05","mould_density":"100","mould_heat":"100","shakeout":"60 °C","mould_temperature":"-40 °C","change_heat":"200"}`))
	f.Add([]byte(`{"shape":"sphere","diameter":"0.5 mm","basis":"figures","density":"500","latent":"2000 kJ/kg","solidus":"130 °C","heat_solid":"50","conductivity":"1000","mould_conductivity":"5","mould_density":"5000","mould_heat":"4000","shakeout":"30 °C","mould_temperature":"-40 °C","open_after":"60 d"}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		in, _ := form.Decode[Input](data, quantity.US)
		p := &working.Paper{}
		out, err := Shakeout(in, p)
		if err != nil {
			return
		}
		w := &reply.Writer{System: quantity.US, Working: true}
		w.Answers(out, p)
		w.Findings(p.Findings)
		w.Steps(p.Steps)
	})
}
