package quantity

import (
	"math"
	"reflect"
	"testing"

	"github.com/stretchr/testify/require"
)

// What people type in a shop, and what it is. The conversions are the exact
// legal ones (BIPM, The International System of Units; 1 in = 25.4 mm).
func TestParse(t *testing.T) {
	type row struct {
		text   string
		system System
		want   float64 // SI
	}
	table := map[*Kind][]row{
		lengthKind: {
			{"420", Metric, 0.42},
			{"420", US, 420 * 0.0254},
			{"420 mm", US, 0.42},
			{" 420mm ", Metric, 0.42},
			{"420 MM", Metric, 0.42},
			{"12,5 cm", Metric, 0.125},
			{"0,125 cm", Metric, 0.00125},
			{".5 in", Metric, 0.0127},
			{"16.5 in", Metric, 16.5 * 0.0254},
			{"16 1/2 in", Metric, 16.5 * 0.0254},
			{"16-1/2 in", Metric, 16.5 * 0.0254},
			{"16½ in", Metric, 16.5 * 0.0254},
			{"16 ½ in", Metric, 16.5 * 0.0254},
			{"½ in", Metric, 0.0127},
			{"1/2", US, 0.0127},
			{"3/8 in.", Metric, 0.009525},
			{"3⁄8 in", Metric, 0.009525},
			{`5' 3 1/2"`, Metric, 63.5 * 0.0254},
			{`5' 3-1/2"`, US, 63.5 * 0.0254},
			{"5′ 3½″", US, 63.5 * 0.0254},
			{"5’ 3 1/2”", US, 63.5 * 0.0254},
			{"5' 3 1/2''", US, 63.5 * 0.0254},
			{`5'3"`, US, 63 * 0.0254},
			{`5'-3"`, US, 63 * 0.0254},
			{`5'-3 1/2"`, US, 63.5 * 0.0254},
			{`5'-3-1/2"`, US, 63.5 * 0.0254},
			{"5ft3in", US, 63 * 0.0254},
			{"5 ft. 3 in.", US, 63 * 0.0254},
			{"5 feet 3 inches", US, 63 * 0.0254},
			{"2 m 5 cm", Metric, 2.05},
			{"1e3 mm", Metric, 1},
			{"1.5E-1m", Metric, 0.15},
			{"−3 mm", Metric, -0.003},
			{"-1/2 in", Metric, -0.0127},
			{"+3 mm", Metric, 0.003},
			{"0", Metric, 0},
			{"420\u00a0mm", Metric, 0.42},
		},
		areaKind:        {{"6.5", Metric, 6.5e-4}, {"650 mm2", Metric, 6.5e-4}, {"650 mm²", Metric, 6.5e-4}, {"1 sq in", Metric, 6.4516e-4}, {"2 in^2", US, 2 * 6.4516e-4}},
		volumeKind:      {{"1560 cc", Metric, 1.56e-3}, {"1.5 L", Metric, 1.5e-3}, {"2 in3", US, 2 * 1.6387064e-5}},
		massKind:        {{"23.4", Metric, 23.4}, {"2 lb 3 oz", US, 35 * 0.45359237 / 16}, {"51.5 lbs", US, 51.5 * 0.45359237}, {"1.2 t", Metric, 1200}, {"450 g", Metric, 0.45}},
		timeKind:        {{"12", Metric, 12}, {"4 min 20 s", Metric, 260}, {"1 h 30 min", Metric, 5400}, {"1.5 hr", US, 5400}, {"2 days", US, 172800}},
		temperatureKind: {{"1380 °C", Metric, 1653.15}, {"1380", Metric, 1653.15}, {"2150 °F", Metric, (2150 + 459.67) * 5 / 9}, {"2150", US, (2150 + 459.67) * 5 / 9}, {"2150F", US, (2150 + 459.67) * 5 / 9}, {"2150 deg f", US, (2150 + 459.67) * 5 / 9}, {"-20 C", Metric, 253.15}, {"300 K", US, 300}},
		tempDiffKind:    {{"90 °F", Metric, 50}, {"90", US, 50}, {"50", Metric, 50}, {"50 °C", US, 50}, {"50 K", US, 50}},
		ratioKind:       {{"5", Metric, 0.05}, {"5 %", US, 0.05}, {"10.5 mm/m", Metric, 0.0105}, {"1/8 in/ft", Metric, 1.0 / 96}, {"0.05 of 1", Metric, 0.05}},
		angleKind:       {{"90°", Metric, math.Pi / 2}, {"1.5 deg", US, math.Pi / 120}},
		speedKind:       {{"0.5", Metric, 0.5}, {"50 cm/s", US, 0.5}, {"20 in/sec", Metric, 0.508}},
		densityKind:     {{"7.2 g/cc", Metric, 7200}, {"7200", Metric, 7200}, {"450 lb/ft3", Metric, 450 * 0.45359237 / 0.028316846592}},
		pressureKind:    {{"5 psi", Metric, 34473.78646584168}, {"3.5 N/cm2", Metric, 35000}, {"200 MPa", Metric, 2e8}},
		effusivityKind:  {{"1100", Metric, 1100}, {"1100 W·s½/(m²·K)", Metric, 1100}, {"1100 W*s^0.5/(m^2*K)", Metric, 1100}},
		energyKind:      {{"5 mj", Metric, 0}, {"5 MJ", Metric, 5e6}, {"5 kj", Metric, 5e3}},
		numberKind:      {{"4.26", Metric, 4.26}, {"1/3", US, 1.0 / 3}},
	}
	for kind, rows := range table {
		for _, row := range rows {
			t.Run(kind.Name+" "+row.text, func(t *testing.T) {
				got, err := ParseKind(kind, row.text, row.system, "")
				if row.want == 0 && row.text != "0" {
					require.Error(t, err)
					return
				}
				require.NoError(t, err)
				require.InDelta(t, row.want, got, 1e-12*math.Abs(row.want))
			})
		}
	}
}

// What must be refused, and the words that must tell why.
func TestParseRefuses(t *testing.T) {
	for _, row := range []struct {
		kind *Kind
		text string
		says string
	}{
		{lengthKind, "1,200", "1,200 could mean 1.200 or 1200"},
		{lengthKind, "1,200 mm", "1,200 could mean 1.200 or 1200"},
		{lengthKind, "1,200,000", "commas cannot group thousands"},
		{lengthKind, "1,200.5", "commas cannot group thousands"},
		{lengthKind, "1.200,5", "commas cannot group thousands"},
		{lengthKind, "1 200 mm", "two numbers stand side by side"},
		{lengthKind, "", "a length is wanted here"},
		{lengthKind, "   ", "a length is wanted here"},
		{areaKind, "", "an area is wanted here"},
		{lengthKind, "wide", "no number where one should stand; write a number with mm, cm, m, in or ft"},
		{lengthKind, "mm", "no number"},
		{lengthKind, "12 furlongs", "“furlongs” is not a unit of it"},
		{lengthKind, "12 kg", "“kg” is not a unit of it"},
		{lengthKind, "12 mm2", "“mm2” is not a unit of it"},
		{areaKind, "12 mm", "“12 mm” cannot be read as an area"},
		{lengthKind, `3" 5'`, "its parts do not go together"},
		{lengthKind, `5' -3"`, "is not a unit of it"},
		{lengthKind, `-5' 3"`, "its parts do not go together"},
		{lengthKind, "5' 3", "a unit is missing"},
		{lengthKind, "5 3 in", "two numbers stand side by side"},
		{lengthKind, "1/0 in", "cannot divide by zero"},
		{lengthKind, "1.5/2 in", "a fraction needs whole numbers"},
		{lengthKind, "3/ in", "a fraction needs whole numbers"},
		{lengthKind, "1 3/2 in", "two numbers stand side by side"},
		{lengthKind, "1..5 mm", "1..5 is not a number"},
		{lengthKind, "NaN", "no number"},
		{lengthKind, "Inf mm", "no number"},
		{lengthKind, "1e999 mm", "is not a number"},
		{volumeKind, "1e307 ft3", "it is out of all range"},
		{temperatureKind, "1380°", "“°” is not a unit of it; write a number with °C, °F or K"},
		{temperatureKind, "1000 °C 300 °F", "its parts do not go together"},
		{energyKind, "5 mJ", "“mJ” is not a unit of it"},
		{pressureKind, "5 mPa", "“mPa” is not a unit of it"},
		{surfaceTensionKind, "5 MN/m", "“MN/m” is not a unit of it"},
		{ratioKind, "5 1", "two numbers stand side by side"},
		{numberKind, "5 mm", "“mm” is not a unit of it; write a plain number"},
		{lengthKind, "1234567890123456789012345678901234567890123456789012345678901234567890½½½½½½½½ mm", "it is too long"},
	} {
		t.Run(row.kind.Name+" "+row.text, func(t *testing.T) {
			_, err := ParseKind(row.kind, row.text, Metric, "")
			require.ErrorContains(t, err, row.says)
		})
	}
}

// A bare number is taken in the unit that the field asks for, if it asks.
func TestParseEntryUnit(t *testing.T) {
	v, err := ParseKind(ratioKind, "10.5", Metric, "mm/m")
	require.NoError(t, err)
	require.InDelta(t, 0.0105, v, 1e-15)
	v, err = ParseKind(ratioKind, "10.5 %", Metric, "mm/m")
	require.NoError(t, err)
	require.InDelta(t, 0.105, v, 1e-15)
}

func TestTypedValues(t *testing.T) {
	l, err := Parse[Length](`16 1/2"`, Metric)
	require.NoError(t, err)
	require.InDelta(t, 419.1, In(l, "mm"), 1e-9)
	require.InDelta(t, 16.5, In(16.5*Inch, "in"), 1e-12)
	require.Equal(t, 420*Millimetre, From[Length](420, "mm"))
	require.Panics(t, func() { In(l, "kg") })
	require.Panics(t, func() { From[Length](1, "furlong") })
}

// A temperature and a difference of temperatures are not the same thing: 90 °F
// on the thermometer is 32 °C, 90 °F hotter is 50 °C hotter.
func TestTemperatureAndDifference(t *testing.T) {
	point, err := Parse[Temperature]("90 °F", US)
	require.NoError(t, err)
	require.InDelta(t, 305.372, float64(point), 0.001)
	require.Equal(t, "32 °C", Format(point, Metric))
	diff, err := Parse[TempDiff]("90 °F", US)
	require.NoError(t, err)
	require.InDelta(t, 50, float64(diff), 1e-12)
	require.Equal(t, "50 °C", Format(diff, Metric))
	require.Equal(t, "90 °F", Format(diff, US))
}

func TestSystem(t *testing.T) {
	for text, want := range map[string]System{"": Metric, "metric": Metric, "us": US} {
		got, ok := ParseSystem(text)
		require.True(t, ok)
		require.Equal(t, want, got)
	}
	_, ok := ParseSystem("imperial")
	require.False(t, ok)
	require.Equal(t, "us", US.String())
	require.Equal(t, "metric", Metric.String())
}

// Every name of every unit is understood, and no name stands for two units.
func TestUnitNamesAreClear(t *testing.T) {
	for _, k := range Kinds() {
		seen := map[string]string{}
		for _, u := range k.Units {
			for _, name := range append([]string{u.Symbol}, u.names...) {
				require.Empty(t, seen[name], "%s: %q", k.Name, name)
				seen[name] = "seen " + u.Symbol
				if name == "1" || name == "" {
					continue // for the paper, not for typing
				}
				v, err := ParseKind(k, "3 "+name, Metric, "")
				require.NoError(t, err, "%s in %q", k.Name, name)
				require.Equal(t, u.to(3), v, "%s in %q", k.Name, name)
			}
		}
		for _, name := range []string{k.Metric, k.US, k.Canonical} {
			_, ok := k.byName[name]
			require.True(t, ok, "%s: %q", k.Name, name)
		}
		for _, ladder := range [][]rung{k.metric, k.us} {
			for i, r := range ladder {
				_, ok := k.byName[r.unit]
				require.True(t, ok, "%s: %q", k.Name, r.unit)
				require.True(t, i == 0 || r.below > ladder[i-1].below, k.Name)
			}
			if k != timeKind {
				require.True(t, math.IsInf(ladder[len(ladder)-1].below, 1), k.Name)
			}
		}
	}
}

func TestOpt(t *testing.T) {
	var o Opt[Length]
	require.False(t, o.Known())
	require.True(t, o.IsZero())
	require.Equal(t, Metre, o.Or(Metre))
	o = Some(Inch)
	require.True(t, o.Known())
	require.Equal(t, Inch, o.Or(Metre))
	inner, ok := OptOf(reflect.TypeOf(o))
	require.True(t, ok)
	require.Equal(t, reflect.TypeFor[Length](), inner)
	_, ok = OptOf(inner)
	require.False(t, ok)
	v, known := OptValue(reflect.ValueOf(&o).Elem())
	require.True(t, known)
	v.SetFloat(float64(Foot))
	SetOptState(reflect.ValueOf(&o).Elem(), Defaulted)
	require.Equal(t, Foot, o.V)
	require.Equal(t, Defaulted, o.State)
	require.True(t, o.Known())
}

func TestRead(t *testing.T) {
	for _, row := range []struct {
		kind, text, entry string
		system            System
		keep, shown       string
	}{
		{"length", "420", "", Metric, "420 mm", "420 mm"},
		{"length", "16 1/2", "", US, "16 1/2 in", "16.5 in"},
		{"length", `5' 3 1/2"`, "", US, `5' 3 1/2"`, "63.5 in"},
		{"length", "½", "", US, "½ in", "0.5 in"},
		{"length", " 12,5 cm ", "", Metric, "12,5 cm", "125 mm"},
		{"share", "10.5", "mm/m", Metric, "10.5 mm/m", "1.05 %"},
		{"share", "1/8", "in/ft", US, "1/8 in/ft", "1.04 %"},
		{"number", "4.26", "", Metric, "4.26", "4.26"},
		{"temperature", "2150", "", US, "2150 °F", "2150 °F"},
	} {
		keep, shown, err := Read(row.kind, row.text, row.entry, row.system)
		require.NoError(t, err, row.text)
		require.Equal(t, row.keep, keep)
		require.Equal(t, row.shown, shown)
		// What is kept means the same when it is read under the other system.
		k := kindNamed(t, row.kind)
		first, err := ParseKind(k, row.text, row.system, row.entry)
		require.NoError(t, err)
		again, err := ParseKind(k, keep, 1-row.system, "")
		require.NoError(t, err)
		require.Equal(t, first, again)
	}
	_, _, err := Read("length", "wide", "", Metric)
	require.ErrorContains(t, err, "wide")
	_, _, err = Read("length", "5", "kg", Metric)
	require.ErrorContains(t, err, "kg")
	_, _, err = Read("width", "5", "", Metric)
	require.ErrorContains(t, err, "width")
}

func kindNamed(t *testing.T, name string) *Kind {
	t.Helper()
	for _, k := range Kinds() {
		if k.Name == name {
			return k
		}
	}
	t.Fatalf("no kind %q", name)
	return nil
}
