package quantity

import (
	"math"
	"math/rand"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestFormat(t *testing.T) {
	for _, row := range []struct {
		q          Any
		metric, us string
	}{
		{420 * Millimetre, "420 mm", "16.535 in"},
		{24.125 * Inch, "612.8 mm", "24.125 in"},
		{Inch / 8, "3.17 mm", "0.125 in"},
		{1.8 * Metre, "1800 mm", "70.866 in"},
		{12 * Metre, "12 m", "39.37 ft"},
		{0.05 * Millimetre, "0.05 mm", "0.002 in"},
		{6.5 * SquareCentimetre, "650 mm²", "1.01 in²"},
		{0.25 * SquareMetre, "2500 cm²", "2.69 ft²"},
		{1560 * CubicCentimetre, "1.56 L", "95.2 in³"},
		{0.4 * CubicCentimetre, "400 mm³", "0.024 in³"},
		{23.4 * Kilogram, "23.4 kg", "51.6 lb"},
		{450 * Gram, "450 g", "15.9 oz"},
		{1234 * Kilogram, "1234 kg", "2721 lb"},
		{Density(7200), "7200 kg/m³", "0.2601 lb/in³"},
		{Density(2420), "2420 kg/m³", "0.0874 lb/in³"},
		{Density(1600), "1600 kg/m³", "99.88 lb/ft³"},
		{Temperature(1653.15), "1380 °C", "2516 °F"},
		{Temperature(0), "-273 °C", "-460 °F"},
		{TempDiff(50), "50 °C", "90 °F"},
		{0.75 * Degree, "0.75°", "0.75°"},
		{Ratio(0.0104), "1.04 %", "1.04 %"},
		{Number(4.257), "4.26", "4.26"},
		{Number(-0.0001), "-0.0001", "-0.0001"},
		{Speed(0.5), "0.5 m/s", "1.64 ft/s"},
		{Speed(0.012), "12 mm/s", "0.472 in/s"},
		{Force(2676.2), "2676 N", "602 lbf"},
		{Pressure(34474), "34.5 kPa", "5 psi"},
		{VolumeFlow(495e-6), "0.495 L/s", "30.2 in³/s"},
		{MassFlow(0.057), "57 g/s", "0.126 lb/s"},
		{Energy(3335e6), "3335 MJ", "3160970 Btu"},
		{Energy(3e10), "30000 MJ", "2.84 × 10⁷ Btu"},
		{FreezingConstant(3.26 * 60e4), "3.26 min/cm²", "21 min/in²"},
		{3.15 * Second, "3.15 s", "3.15 s"},
		{21.86 * Second, "21.9 s", "21.9 s"},
		{119.6 * Second, "2 min", "2 min"},
		{260 * Second, "4 min 20 s", "4 min 20 s"},
		{5400 * Second, "1 h 30 min", "1 h 30 min"},
		{3 * 86400 * Second, "3 days", "3 days"},
		{-260 * Second, "-4 min 20 s", "-4 min 20 s"},
		{Distance(7.5), "7.5 m", "24.6 ft"},
		{Length(math.NaN()), "not known", "not known"},
		{Time(math.NaN()), "not known", "not known"},
		{Mass(math.Inf(1)), "not known", "not known"},
		{Length(1e307), "1 × 10³⁰⁷ m", "not known"},
	} {
		require.Equal(t, row.metric, Format(row.q, Metric))
		require.Equal(t, row.us, Format(row.q, US))
	}
	require.Equal(t, "16.535 in", FormatIn(420*Millimetre, "in"))
	require.Equal(t, "420 mm", (420 * Millimetre).String())
}

func TestFormatNumber(t *testing.T) {
	for _, row := range []struct {
		x                float64
		digits, decimals int
		want             string
	}{
		{0, 3, 2, "0"},
		{1000, 3, 2, "1000"},
		{123456, 3, 2, "123456"},
		{99.96, 3, 2, "100"},
		{0.0144, 3, 2, "0.014"},
		{0.00009, 3, 2, "9 × 10⁻⁵"},
		{1.2e7, 3, 2, "1.2 × 10⁷"},
		{-1.2e-7, 3, 2, "-1.2 × 10⁻⁷"},
		{0.4, 0, 0, "0"},
		{-0.4, 0, 0, "0"},
		{1179.6, 0, 0, "1180"},
	} {
		require.Equal(t, row.want, FormatNumber(row.x, row.digits, row.decimals))
	}
}

// Whatever the value, the text is a number with a unit or "not known": never
// NaN, never an infinity, never empty.
func TestFormatNeverShowsNaN(t *testing.T) {
	r := rand.New(rand.NewSource(2))
	for _, k := range Kinds() {
		for range 2000 {
			v := math.Float64frombits(r.Uint64())
			for _, system := range []System{Metric, US} {
				text := Format(value{k, v}, system)
				require.NotContains(t, text, "NaN")
				require.NotContains(t, text, "Inf")
				require.NotEmpty(t, text)
				if !Finite(v) {
					require.Equal(t, "not known", text)
				}
			}
		}
	}
}

// A larger value is never shown smaller, also where the unit changes; and what
// is shown lies within five per cent of what is.
func TestFormatIsMonotoneAndClose(t *testing.T) {
	for _, k := range Kinds() {
		for _, system := range []System{Metric, US} {
			last := math.Inf(-1)
			from, to := shopSizes(k)
			for si := from; si < to; si *= 1.003 {
				text := Format(value{k, si}, system)
				if strings.Contains(text, "×") {
					break
				}
				shown, err := ParseKind(k, text, system, "")
				require.NoError(t, err, text)
				require.GreaterOrEqual(t, shown, last*(1-1e-12), "%s %v %s", k.Name, si, text)
				last = shown
				if k == temperatureKind {
					require.InDelta(t, si, shown, 0.51, text)
				} else {
					require.InEpsilon(t, si, shown, 0.05, "%s %s", k.Name, text)
				}
			}
		}
	}
}

// shopSizes spans three thousandths to three hundred thousand of the kind's
// metric entry unit, which holds everything that a foundry meets.
func shopSizes(k *Kind) (from, to float64) {
	u := k.mustUnit(k.Metric)
	if k == temperatureKind {
		return 250, 3000
	}
	return u.to(0.011), u.to(3e5)
}

func TestAxis(t *testing.T) {
	require.Equal(t, "s", AxisUnit(timeKind, 200, Metric))
	require.Equal(t, "min", AxisUnit(timeKind, 2000, Metric))
	require.Equal(t, "h", AxisUnit(timeKind, 20000, Metric))
	require.Equal(t, "mm", AxisUnit(lengthKind, 0.4, Metric))
	require.Equal(t, "in", AxisUnit(lengthKind, 0.4, US))
	require.InDelta(t, 20, InUnit(timeKind, 1200, "min"), 1e-12)
}
