package handling

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/alloy"
	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// The subtest names are the citations; all from memory unless said. The
// allowance is half the last printed digit.

func TestSteamPublished(t *testing.T) {
	for _, c := range []struct {
		source       string
		at           float64 // °F
		pick         func(Output) quantity.Number
		want, within float64
	}{
		{"Y. A. Cengel and M. A. Boles, Thermodynamics, table A-4: 1.6720 over 0.001043 m3/kg at 100 C", 1300, func(o Output) quantity.Number { return o.SteamBoiling }, 1.6720 / 0.001043, 0.8},
		{"fire-service texts (IFSTA, Essentials): water expands 1700 times at 212 F", 1300, func(o Output) quantity.Number { return o.SteamCold }, 1700, 50},
		{"fire-service texts (IFSTA, Essentials): 4200 times at 1200 F", 1200, func(o Output) quantity.Number { return o.SteamHot }, 4200, 50},
		{"fire-service texts (IFSTA, Essentials): 2400 times at 500 F", 500, func(o Output) quantity.Number { return o.SteamHot }, 2400, 50},
	} {
		t.Run(c.source, func(t *testing.T) {
			in := bracket()
			in.PourAt = quantity.From[quantity.Temperature](c.at, "°F")
			out, _ := list(t, in)
			require.InDelta(t, c.want, float64(c.pick(out)), c.within)
		})
	}
}

func TestRadiationPublished(t *testing.T) {
	in := class()
	in.Alloy, in.Emissivity = alloy.CodeCarbonSteel, quantity.Some(quantity.Ratio(1))
	in.LadleMouth, in.SpectatorDistance = quantity.Some(quantity.Metre), quantity.Some[quantity.Distance](0.5)
	t.Run("F. P. Incropera and D. P. DeWitt, Fundamentals of Heat and Mass Transfer, ch. 12: 9.07e5 W/m2 at 2000 K", func(t *testing.T) {
		in.PourAt = 2000
		out, _ := list(t, in)
		require.InDelta(t, 9.07e5, float64(out.Surface), 500)
	})
	t.Run("black-body tables: 56.70 kW/m2 at 1000 K", func(t *testing.T) {
		in.PourAt = 1000
		out, _ := list(t, in)
		require.InDelta(t, 56.70e3, float64(out.Surface), 5)
	})
	t.Run("J. R. Howell, configuration factors: a disc seen from one radius away fills half", func(t *testing.T) {
		in.PourAt = 1000
		out, _ := list(t, in)
		require.InDelta(t, 0.5, float64(out.AtSpectators.V)/float64(out.Surface), 1e-12)
	})
}

func TestFilterPublished(t *testing.T) {
	for _, c := range []struct{ at, scale float64 }{
		{1050, 1.2}, {1051, 1.4}, {1070, 1.4}, {1090, 1.7}, {1110, 2}, {1140, 2.5}, {1210, 3}, {1290, 4}, {1390, 5}, {1500, 6}, {1650, 7}, {1651, 8},
	} {
		t.Run(fmt.Sprintf("EN 171, infrared filter 4-%g at %g C", c.scale, c.at), func(t *testing.T) {
			in := bracket()
			in.PourAt = degC(c.at)
			out, _ := list(t, in)
			require.Equal(t, c.scale, float64(out.Filter))
		})
	}
}

func TestHeatPublished(t *testing.T) {
	for _, c := range []struct {
		source string
		work   string
		used   bool
		want   float64
		within float64
	}{
		{"ACGIH screening, light work, limit, to the half degree", "light", true, 31, 0.25},
		{"ACGIH screening, moderate work, limit, to the half degree", "moderate", true, 28, 0.25},
		{"ACGIH screening, light work, action limit, to the half degree", "light", false, 28, 0.25},
		{"ACGIH screening, moderate work, action limit, to the half degree", "moderate", false, 25, 0.25},
		{"NIOSH 2016-106, recommended limit at 415 W", "heavy", true, 26.6, 0.05},
		{"NIOSH 2016-106, recommended limit at 520 W", "very-heavy", true, 25.5, 0.05},
		{"NIOSH 2016-106, alert limit at 415 W", "heavy", false, 23.0, 0.05},
		{"NIOSH 2016-106, alert limit at 520 W", "very-heavy", false, 21.6, 0.05},
	} {
		t.Run(c.source, func(t *testing.T) {
			in := bracket()
			in.WetBulb, in.Globe, in.Air = quantity.Some(degC(25)), quantity.Some(degC(45)), quantity.Some(degC(33))
			in.Work, in.Acclimatised = quantity.Some(c.work), c.used
			out, _ := list(t, in)
			require.InDelta(t, c.want, quantity.In(out.HeatLimit.V, "°C"), c.within)
			require.InDelta(t, 29.8, quantity.In(out.WBGT.V, "°C"), 1e-9, "NIOSH 2016-106: 0.7, 0.2 and 0.1 of 25, 45 and 33")
			in.Place, in.Extraction = indoors, true
			out, _ = list(t, in)
			require.InDelta(t, 31.0, quantity.In(out.WBGT.V, "°C"), 1e-9, "NIOSH 2016-106: 0.7 and 0.3 of 25 and 45")
		})
	}
}

// Example is the heat index of NIOSH 2016-106 for a day of 25 °C natural wet
// bulb, 45 °C globe and 33 °C air, without and with the sun.
func Example() {
	in := bracket()
	in.WetBulb, in.Globe, in.Air = quantity.Some(degC(25)), quantity.Some(degC(45)), quantity.Some(degC(33))
	for _, place := range []string{indoors, outdoors} {
		in.Place = place
		out, err := List(in, &working.Paper{})
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%s %.1f °C, %d hold points still open\n", place, quantity.In(out.WBGT.V, "°C"), out.OpenHolds)
	}
	fmt.Println(Standing)
	// Output:
	// indoors 31.0 °C, 19 hold points still open
	// outdoors 29.8 °C, 18 hold points still open
	// This list never says that a pour is safe. Local codes, and a licensed or experienced person on the spot, decide.
}
