package metal

import (
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/alloy"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/working/stepcheck"
)

func celsius(v float64) quantity.Temperature { return quantity.From[quantity.Temperature](v, "degC") }

// TestHeatPublished compares the heat to melt and superheat with enthalpies of
// the pure metal (NIST-JANAF Shomate equations, constants from memory). The
// textbook sum with constant specific heats should come within 5 % of them.
func TestHeatPublished(t *testing.T) {
	for _, c := range []struct {
		source string
		alloy  alloy.Code
		at     float64 // °C
		kJ     float64
	}{
		{"NIST Shomate, pure aluminium at 720 °C", alloy.CodeAluminium, 720, 1134},
		{"NIST Shomate, pure aluminium at 750 °C", alloy.CodeAluminium, 750, 1169},
	} {
		t.Run(c.source, func(t *testing.T) {
			out, _ := stepcheck.Run(t, Describe, Input{Alloy: c.alloy, PourTemperature: quantity.Some(celsius(c.at))})
			require.InEpsilon(t, c.kJ*1000, float64(out.Heat), 0.05)
		})
	}
}

// TestEveryMetal: each alloy answers, at its own middle temperature, without
// fault; hotter metal always holds more heat.
func TestEveryMetal(t *testing.T) {
	for _, a := range alloy.All() {
		t.Run(string(a.Code), func(t *testing.T) {
			out, _ := stepcheck.Run(t, Describe, Input{Alloy: a.Code})
			require.Greater(t, out.PourTemperature, out.Liquidus)
			require.Positive(t, float64(out.Superheat))
			require.NotEmpty(t, out.Figures)
			hotter, err := Describe(Input{Alloy: a.Code, PourTemperature: quantity.Some(out.PourTemperature + 50)}, nil)
			require.NoError(t, err)
			require.Greater(t, hotter.Heat, out.Heat)
		})
	}
}

func TestWarnings(t *testing.T) {
	iron, _ := alloy.Find(alloy.CodeGreyIron)
	find := func(in Input) []string {
		_, p := stepcheck.Run(t, Describe, in)
		return stepcheck.Codes(p)
	}
	require.Equal(t, []string{"pour-hot"}, find(Input{Alloy: iron.Code, PourTemperature: quantity.Some(celsius(1600))}))
	require.Equal(t, []string{"pour-cold", "wall-thin"}, find(Input{Alloy: iron.Code, Wall: quantity.Some(1 * quantity.Millimetre), PourTemperature: quantity.Some(iron.Liquidus.V + 20)}))

	_, err := Describe(Input{Alloy: iron.Code, PourTemperature: quantity.Some(celsius(900))}, nil)
	faults, ok := err.(form.Faults)
	require.True(t, ok)
	require.Equal(t, "pour_temperature", faults[0].Field)
	require.Contains(t, faults[0].Why.String(), "900 °C")

	_, err = Describe(Input{}, nil)
	require.True(t, err.(form.Faults).Missing())
}
