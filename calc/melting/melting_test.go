package melting_test

import (
	"fmt"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/alloy"
	"pourwright/calc/form"
	"pourwright/calc/melting"
	"pourwright/calc/quantity"
	"pourwright/calc/reply"
	"pourwright/calc/working"
	"pourwright/calc/working/stepcheck"
)

func read(t *testing.T, text string) melting.Input {
	t.Helper()
	in, faults := form.Decode[melting.Input]([]byte(text), quantity.Metric)
	require.Empty(t, faults)
	return in
}

// solve answers and proves the working.
func solve(t *testing.T, in melting.Input) (melting.Output, *working.Paper) {
	t.Helper()
	return stepcheck.Run(t, melting.Heat, in)
}

const groover = `{"mass":"7500 kg","figures":"own","melting_point":"800 °C","heat_solid":"0.33 J/gK","heat_liquid":"0.29 J/gK","latent":"160 J/g","start":"25 °C","superheat":"100 K"}`

func TestPublished(t *testing.T) {
	t.Run("Groover, ex. 10.1 (from memory): 3335 × 10⁶ J", func(t *testing.T) {
		out, _ := solve(t, read(t, groover))
		require.InDelta(t, 3335e6, float64(out.Heat), 1e6)
	})
	t.Run("Groover, problem 10.1 (from memory): 19,082,756 J", func(t *testing.T) {
		out, _ := solve(t, read(t, `{"mass":"17812.7 g","figures":"own","melting_point":"660 °C","heat_solid":"0.88 J/gK","heat_liquid":"0.88 J/gK","latent":"389.3 J/g","start":"25 °C","tap":"800 °C"}`))
		require.InDelta(t, 19082756, float64(out.Heat), 500)
	})
	t.Run("Groover, problem 10.2 (from memory): 58,265 Btu", func(t *testing.T) {
		out, _ := solve(t, read(t, `{"mass":"213.84 lb","figures":"own","melting_point":"1981 °F","heat_solid":"0.093 Btu/lbF","heat_liquid":"0.090 Btu/lbF","latent":"80 Btu/lb","start":"75 °F","tap":"2150 °F"}`))
		require.InDelta(t, 58265, quantity.In(out.Heat, "Btu"), 5)
	})
}

// TestHeatRegression holds values of our own.
func TestHeatRegression(t *testing.T) {
	t.Run("20 kg of aluminium at 720 °C over propane at 12 %", func(t *testing.T) {
		out, _ := solve(t, read(t, `{"mass":"20 kg","alloy":"aluminium","start":"25 °C","tap":"720 °C","efficiency":"12 %"}`))
		require.InDelta(t, 4.07, float64(out.FuelLow.V), 0.2)
		require.Equal(t, out.FuelLow, out.FuelHigh)
	})
	t.Run("first melt, burner by its fuel, natural gas by volume", func(t *testing.T) {
		a, _ := solve(t, read(t, `{"mass":"20 kg","alloy":"aluminium","efficiency":"10 %","fuel_rate":"4 kg/h"}`))
		b, _ := solve(t, read(t, `{"mass":"20 kg","alloy":"aluminium","efficiency":"10 %","fuel_rate":"4 kg/h","first_heat":true,"lining":"50 %"}`))
		require.InEpsilon(t, 1.5*float64(a.EnergyLow), float64(b.EnergyLow), 1e-12)
		require.InEpsilon(t, 1.5*float64(a.TimeLow.V), float64(b.TimeLow.V), 1e-12)
		require.InEpsilon(t, float64(a.FuelLow.V)/4*3600, float64(a.TimeLow.V), 1e-12)
		g, _ := solve(t, read(t, `{"mass":"20 kg","alloy":"aluminium","efficiency":"10 %","fuel":"natural-gas"}`))
		require.InEpsilon(t, float64(g.EnergyLow)/35e6, float64(g.FuelVolumeLow.V), 1e-12)
		require.False(t, g.FuelLow.Known())
	})
	t.Run("own heating value", func(t *testing.T) {
		out, _ := solve(t, read(t, `{"mass":"500 kg","alloy":"grey-iron","furnace":"cupola","efficiency":"45 %","heating_value":"30 MJ/kg"}`))
		require.InEpsilon(t, float64(out.EnergyHigh)/30e6, float64(out.FuelHigh.V), 1e-12)
		require.Equal(t, "Foundry coke", out.Fuel)
	})
}

func TestFindings(t *testing.T) {
	for _, c := range []struct {
		code  string
		level working.Level
		in    string
	}{
		{"efficiency-band", working.Note, `"alloy":"al-si"`},
		{"melted-hot", working.Mind, `"alloy":"al-si","tap":"900 °C"`},
		{"melted-cold", working.Mind, `"alloy":"al-si","tap":"620 °C"`},
		{"melt-long", working.Mind, `"alloy":"al-si","power":"1 kW"`},
		{"practice-differs", working.Mind, `"alloy":"grey-iron","furnace":"induction","efficiency":"30 %"`},
		{"fuel-gas", working.Note, `"alloy":"al-si"`},
	} {
		t.Run(c.code, func(t *testing.T) {
			_, p := solve(t, read(t, `{"mass":"20 kg",`+c.in+`}`))
			found := map[string]working.Level{}
			for _, f := range p.Findings {
				found[f.Code] = f.Level
				require.NotContains(t, f.Text.In(quantity.US)+f.Do.In(quantity.US), "%!")
			}
			require.Contains(t, found, c.code)
			require.Equal(t, c.level, found[c.code])
		})
	}
	t.Run("what is advised against a long melt ends it", func(t *testing.T) {
		out, p := solve(t, read(t, `{"mass":"20 kg","alloy":"al-si","furnace":"resistance","power":"2 kW"}`))
		require.Contains(t, p.Findings[len(p.Findings)-1].Do.String(), "Melt less")
		in := read(t, `{"mass":"20 kg","alloy":"al-si","furnace":"resistance"}`)
		in.Power = quantity.Some(quantity.Power(float64(out.EnergyLow) / (3 * 3600)))
		again, _ := solve(t, in)
		require.InEpsilon(t, 3*3600, float64(again.TimeLow.V), 1e-12)
	})
}

func TestFaults(t *testing.T) {
	for _, c := range []struct{ field, in string }{
		{"alloy", `{"mass":"1 kg"}`},
		{"melting_point", `{"mass":"1 kg","figures":"own","tap":"900 °C"}`},
		{"tap", `{"mass":"1 kg","figures":"own","melting_point":"800 °C","heat_solid":"0.33 J/gK","heat_liquid":"0.29 J/gK","latent":"160 J/g"}`},
		{"tap", `{"mass":"1 kg","alloy":"grey-iron","tap":"1100 °C"}`},
		{"start", `{"mass":"1 kg","alloy":"al-si","start":"600 °C"}`},
		{"superheat", `{"mass":"1 kg","alloy":"al-si","tap":"700 °C","superheat":"50 K"}`},
		{"fuel_rate", `{"mass":"1 kg","alloy":"al-si","power":"9 kW","fuel_rate":"1 kg/h"}`},
		{"fuel_rate", `{"mass":"1 kg","alloy":"al-si","fuel":"natural-gas","fuel_rate":"1 kg/h"}`},
		{"heating_value", `{"mass":"1 kg","alloy":"al-si","fuel":"natural-gas","heating_value":"50 MJ/kg"}`},
	} {
		_, err := melting.Heat(read(t, c.in), nil)
		var faults form.Faults
		require.ErrorAs(t, err, &faults)
		require.Equal(t, c.field, faults[0].Field)
		require.NotContains(t, faults.Error(), "%!")
	}
}

func pick[T any](r *rand.Rand, from []T) T { return from[r.Intn(len(from))] }

// question makes a random melt.
func question(r *rand.Rand) melting.Input {
	a := pick(r, alloy.All())
	in := melting.Input{Mass: quantity.Mass(0.02 + r.Float64()*1000), Alloy: a.Code, Furnace: quantity.Some(melting.Furnace(pick(r, melting.Furnace("").Choices())[0])), FirstHeat: r.Intn(2) == 0}
	in.Fuel = quantity.Some(melting.Fuel(pick(r, melting.Fuel("").Choices())[0]))
	switch r.Intn(3) {
	case 0:
		in.Tap = quantity.Some(min(a.Liquidus.V+quantity.Temperature(1+r.Float64()*400), 2273.15))
	case 1:
		in.Superheat = quantity.Some(quantity.TempDiff(1 + r.Float64()*599))
	}
	if r.Intn(2) == 0 {
		in.Efficiency = quantity.Some(quantity.Ratio(0.01 + r.Float64()*0.99))
	}
	if r.Intn(2) == 0 {
		in.Power = quantity.Some(quantity.Power(100 + r.Float64()*1e6))
	}
	return in
}

func TestAnyQuestion(t *testing.T) {
	r := rand.New(rand.NewSource(1))
	for range 1500 {
		in := question(r)
		out, p := solve(t, in)
		(&reply.Writer{Working: true}).Answers(out, p) // panics on what is not finite
		require.Positive(t, float64(out.HeatEach))
		require.GreaterOrEqual(t, out.HeatToGive, out.Heat)
		require.GreaterOrEqual(t, out.EnergyLow, out.HeatToGive)
		require.GreaterOrEqual(t, out.EnergyHigh, out.EnergyLow)
		require.GreaterOrEqual(t, out.TimeHigh.V, out.TimeLow.V)
		// Energy balance: what is put in, less what the furnace loses, is the
		// heat of metal and lining.
		require.InEpsilon(t, float64(out.HeatToGive), float64(out.EnergyLow)*float64(out.EfficiencyHigh), 1e-12)
		require.InEpsilon(t, float64(out.HeatToGive), float64(out.EnergyHigh)*float64(out.EfficiencyLow), 1e-12)

		hotter := in
		hotter.Superheat, hotter.Tap = quantity.Opt[quantity.TempDiff]{}, quantity.Some(out.Tap+1)
		if hotter.Tap.V < 2273.15 {
			more, _ := solve(t, hotter)
			require.Greater(t, more.EnergyLow, out.EnergyLow)
		}
		warmer := in
		warmer.Start = quantity.Some[quantity.Temperature](373.15)
		less, _ := solve(t, warmer)
		require.Less(t, less.EnergyHigh, out.EnergyHigh)
		larger := in
		larger.Mass *= 4
		four, _ := solve(t, larger)
		require.InEpsilon(t, 4*float64(out.EnergyLow), float64(four.EnergyLow), 1e-12)
		require.InDelta(t, 4*float64(out.FuelHigh.V), float64(four.FuelHigh.V), 1e-9*float64(four.FuelHigh.V))
		require.InDelta(t, 4*float64(out.TimeHigh.V), float64(four.TimeHigh.V), 1e-9*float64(four.TimeHigh.V))
	}
}

// FuzzHeat feeds whatever JSON there is.
func FuzzHeat(f *testing.F) {
	f.Add([]byte(groover))
	f.Add([]byte(`{"mass":"200 t","alloy":"carbon-steel","furnace":"cupola","fuel":"charcoal","fuel_rate":"0.05 kg/h","first_heat":true,"lining":"300 %","efficiency":"1 %"}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		in, _ := form.Decode[melting.Input](data, quantity.US)
		p := &working.Paper{}
		out, err := melting.Heat(in, p)
		if err != nil {
			return
		}
		w := &reply.Writer{System: quantity.US, Working: true}
		w.Answers(out, p)
		w.Findings(p.Findings)
		w.Steps(p.Steps)
	})
}

// ExampleHeat is the textbook's cubic metre of an alloy, heated 100 °C above
// its melting point of 800 °C.
func ExampleHeat() {
	out, err := melting.Heat(melting.Input{
		Mass: 7500 * quantity.Kilogram, Figures: quantity.Some("own"), MeltingPoint: quantity.From[quantity.Temperature](800, "degC"),
		HeatSolid: 330, HeatLiquid: 290, Latent: 160 * quantity.KilojoulePerKilogram,
		Start: quantity.Some(quantity.From[quantity.Temperature](25, "degC")), Superheat: quantity.Some[quantity.TempDiff](100),
	}, nil)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f MJ\n", quantity.In(out.Heat, "MJ"))
	// Output: 3336 MJ
}
