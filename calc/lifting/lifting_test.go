package lifting

import (
	"encoding/json"
	"fmt"
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/working"
	"pourwright/calc/working/stepcheck"
)

func at(reach, height, twist float64, unit string) Place {
	return Place{quantity.From[quantity.Length](reach, unit), quantity.Some(quantity.From[quantity.Length](height, unit)), quantity.Some(quantity.From[quantity.Angle](twist, "deg"))}
}

// punch is example 1 of the manual, loading punch press stock.
func punch() Input {
	return Input{What: Ingot, Load: quantity.From[quantity.Mass](44, "lb"), Scope: true,
		Origin: at(23, 15, 0, "in"), Destination: at(23, 63, 0, "in"),
		Lifts: 0.2, Duration: Short, Coupling: Fair,
		System: quantity.Some(USForm), Rounding: quantity.Some(AsPrinted)}
}

func work(t *testing.T, in Input) (Output, *working.Paper) {
	t.Helper()
	return stepcheck.Run(t, Limit, in)
}

func pounds(m quantity.Mass) float64 { return quantity.In(m, "lb") }

// Example 1 of the NIOSH manual, loading punch press stock: printed are limits
// of 16.3 lb at the origin and 14.5 lb at the destination.
func Example() {
	in := Input{What: Ingot, Load: quantity.From[quantity.Mass](44, "lb"), Scope: true,
		Origin: at(23, 15, 0, "in"), Destination: at(23, 63, 0, "in"),
		Lifts: 0.2, Duration: Short, Coupling: Fair,
		System: quantity.Some(USForm), Rounding: quantity.Some(AsPrinted)}
	out, err := Limit(in, nil)
	fmt.Println(quantity.FormatIn(out.Origin.Limit, "lb"), quantity.FormatIn(out.Destination.Limit, "lb"), err)
	// Output: 16.3 lb 14.5 lb <nil>
}

func TestManual(t *testing.T) {
	t.Run("NIOSH 94-110, example 1, pp. 33-37 (answers from memory), as printed", func(t *testing.T) {
		out, _ := work(t, punch())
		require.InDelta(t, 0.44, float64(out.Origin.HM), 1e-12)
		require.InDelta(t, 0.89, float64(out.Origin.VM), 1e-12)
		require.InDelta(t, 0.75, float64(out.Destination.VM), 1e-12)
		require.InDelta(t, 0.86, float64(out.Origin.DM), 1e-12)
		require.InDelta(t, 0.95, float64(out.Origin.CM), 1e-12)
		require.InDelta(t, 1.00, float64(out.Destination.CM), 1e-12)
		require.InDelta(t, 16.3, pounds(out.Origin.Limit), 0.05)
		require.InDelta(t, 14.5, pounds(out.Destination.Limit), 0.05)
		require.InDelta(t, 2.7, float64(out.Origin.Index.V), 0.05)
		require.InDelta(t, 3.0, float64(out.Destination.Index.V), 0.05)
	})
	t.Run("NIOSH 94-110, example 1, at full precision: within the rounding of the printed multipliers", func(t *testing.T) {
		in := punch()
		in.Rounding = quantity.Some(FullPrecision)
		out, _ := work(t, in)
		// Half the last digit, but for HM at 23 in, where the manual prints .44 for
		// 10/23 = .4348.
		require.InDelta(t, 0.44, float64(out.Origin.HM), 0.0053)
		require.InDelta(t, 0.89, float64(out.Origin.VM), 0.005)
		require.InDelta(t, 0.75, float64(out.Destination.VM), 0.005)
		require.InDelta(t, 0.86, float64(out.Origin.DM), 0.005)
		// The three roundings together may move the limit by as much.
		slack := 0.0053/0.44 + 0.005/0.89 + 0.005/0.86
		require.InDelta(t, 16.3, pounds(out.Origin.Limit), 16.3*slack+0.05)
		require.InDelta(t, 14.5, pounds(out.Destination.Limit), 14.5*(0.0053/0.44+0.005/0.75+0.005/0.86)+0.05)
	})
	t.Run("NIOSH 94-110, example 2, loading bags into a hopper (from memory)", func(t *testing.T) {
		in := punch()
		in.Load = quantity.From[quantity.Mass](40, "lb")
		in.Origin, in.Destination = at(18, 15, 45, "in"), at(10, 36, 0, "in")
		out, _ := work(t, in)
		require.InDelta(t, 18.9, pounds(out.Origin.Limit), 0.05)
		require.InDelta(t, 2.1, float64(out.Origin.Index.V), 0.05)
	})
	t.Run("NIOSH 94-110, the load constant: everything best gives 23 kg", func(t *testing.T) {
		in := punch()
		in.System, in.Rounding = quantity.Some(MetricForm), quantity.Some(FullPrecision)
		in.Origin, in.Destination = at(25, 75, 0, "cm"), at(25, 75, 0, "cm")
		out, _ := work(t, in)
		require.InDelta(t, 23, float64(out.Limit), 1e-12)
	})
	t.Run("NIOSH 94-110, p. 29: DM at 130 cm is printed .86", func(t *testing.T) {
		in := punch()
		in.System = quantity.Some(MetricForm)
		in.Origin, in.Destination = at(25, 20, 0, "cm"), at(25, 150, 0, "cm")
		out, _ := work(t, in)
		require.InDelta(t, 0.86, float64(out.Origin.DM), 1e-12)
	})
}

func TestTables(t *testing.T) {
	for _, c := range []struct {
		name     string
		lifts    float64
		duration Duration
		height   float64
		want     float64
	}{
		{"NIOSH 94-110, example 4: 3 a minute up to 1 h", 3, Short, 20, 0.88},
		{"CCOHS page: 10 a minute, 2 to 8 h, from 75 cm", 10, Long, 80, 0.13},
		{"NIOSH 94-110, table 5: 12 a minute below 75 cm is not zero", 12, Short, 20, 0.37},
		{"NIOSH 94-110, table 5: 13 a minute below 75 cm is zero", 13, Short, 20, 0},
		{"NIOSH 94-110, table 5: 0.2 or fewer", 0.1, Long, 20, 0.85},
		{"NIOSH 94-110, p. 7: between rows in proportion", 3.5, Short, 20, 0.86},
		{"NIOSH 94-110, p. 7: between rows in proportion", 0.35, Moderate, 20, 0.935},
	} {
		t.Run(c.name, func(t *testing.T) {
			in := punch()
			in.System, in.Rounding = quantity.Some(MetricForm), quantity.Some(FullPrecision)
			in.Lifts, in.Duration = quantity.Number(c.lifts), c.duration
			in.Origin, in.Destination = at(30, c.height, 0, "cm"), at(30, 90, 0, "cm")
			out, p := work(t, in)
			require.InDelta(t, c.want, float64(out.Origin.FM), 1e-9)
			require.Equal(t, out.Origin.FM, out.Destination.FM, "by the height at the start")
			if c.want == 0 {
				require.False(t, out.Index.Known())
				require.Equal(t, "lifts-too-often", p.Findings[0].Code)
			}
		})
	}
	for i := 1; i < len(frequencyTable); i++ {
		for _, d := range []Duration{Short, Moderate, Long} {
			for _, high := range []bool{false, true} {
				require.LessOrEqual(t, frequencyTable[i].at(d, high), frequencyTable[i-1].at(d, high))
			}
			require.LessOrEqual(t, frequencyTable[i].at(d, false), frequencyTable[i].at(d, true))
		}
		require.LessOrEqual(t, frequencyTable[i].at(Long, true), frequencyTable[i].at(Moderate, true))
		require.LessOrEqual(t, frequencyTable[i].at(Moderate, true), frequencyTable[i].at(Short, true))
	}
}

func TestFaults(t *testing.T) {
	_, err := Limit(Input{}, nil)
	var faults form.Faults
	require.ErrorAs(t, err, &faults)
	require.True(t, faults.Missing())
	for name, change := range map[string]func(*Input){
		"what":               func(in *Input) { in.What = Liquid },
		"origin.reach":       func(in *Input) { in.Origin.Reach = 0.64 },
		"destination.height": func(in *Input) { in.Destination.Height = quantity.Some[quantity.Length](1.8) },
		"origin.twist":       func(in *Input) { in.Origin.Twist = quantity.Some(136 * quantity.Degree) },
		"lifts":              func(in *Input) { in.Lifts = 16 },
		"load":               func(in *Input) { in.Load = quantity.Mass(math.NaN()) },
		"destination.reach":  func(in *Input) { in.System = quantity.Some(MetricForm); in.Destination.Reach = 0.632 },
		"origin.height": func(in *Input) {
			in.System = quantity.Some(MetricForm)
			in.Origin.Height = quantity.Some[quantity.Length](1.76)
		},
	} {
		in := punch()
		change(&in)
		_, err := Limit(in, nil)
		require.ErrorAs(t, err, &faults, name)
		require.Equal(t, name, faults[0].Field)
		require.False(t, faults[0].Missing)
	}
	in := punch()
	in.What = Hot
	_, err = Limit(in, nil)
	require.ErrorContains(t, err, "cold loads")
	in = punch()
	in.Scope = false
	_, err = Limit(in, nil)
	require.ErrorAs(t, err, &faults)
	require.True(t, faults.Missing())
}

func TestFindings(t *testing.T) {
	code := func(change func(*Input)) (string, string) {
		in := punch()
		change(&in)
		_, p := work(t, in)
		return p.Findings[0].Level.String() + " " + p.Findings[0].Code, p.Findings[0].Do.String()
	}
	got, do := code(func(*Input) {})
	require.Equal(t, "stop lifting-index-over-3", got)
	require.Contains(t, do, "Bring the load in to a reach of 254 mm and lighten it to")
	got, _ = code(func(in *Input) { in.Load = 10 })
	require.Equal(t, "mind lifting-index-over-1", got)
	got, _ = code(func(in *Input) { in.Load = 2 })
	require.Equal(t, "note one-person-cold", got)
	got, _ = code(func(in *Input) { in.Load = 2; in.Gloves = true })
	require.Equal(t, "note gloves-poor-hold", got)

	// Doing as told puts the index to 1.
	in := punch()
	in.Rounding = quantity.Some(FullPrecision)
	in.Load = 8
	out, _ := work(t, in)
	in.Destination.Reach /= quantity.Length(out.Index.V)
	out, _ = work(t, in)
	require.InDelta(t, 1, float64(out.Destination.Index.V), 1e-9)
}

func random(rng *rand.Rand) Input {
	return Input{What: Mould, Load: quantity.Mass(1 + 40*rng.Float64()), Scope: true,
		Origin:      at(25+38*rng.Float64(), 175*rng.Float64(), 135*rng.Float64(), "cm"),
		Destination: at(25+38*rng.Float64(), 175*rng.Float64(), 135*rng.Float64(), "cm"),
		Lifts:       quantity.Number(0.1 + 14.9*rng.Float64()), Duration: []Duration{Short, Moderate, Long}[rng.Intn(3)],
		Coupling: []Coupling{Good, Fair, Poor}[rng.Intn(3)], Gloves: rng.Intn(4) == 0,
		System: quantity.Some([]System{MetricForm, USForm}[rng.Intn(2)]), Rounding: quantity.Some([]Rounding{FullPrecision, AsPrinted}[rng.Intn(2)])}
}

func TestProperties(t *testing.T) {
	rng := rand.New(rand.NewSource(8))
	for range 600 {
		in := random(rng)
		out, _ := work(t, in)
		require.GreaterOrEqual(t, out.Limit, quantity.Mass(0))
		require.LessOrEqual(t, float64(out.Limit), 23.2)
		if in.Rounding.V == AsPrinted {
			continue
		}
		// A longer reach, more twist, more lifts never allow more.
		worse := in
		worse.Origin.Reach = min(0.63, worse.Origin.Reach*1.05)
		worse.Destination.Reach = min(0.63, worse.Destination.Reach*1.05)
		worse.Origin.Twist.V = min(135*quantity.Degree, worse.Origin.Twist.V*1.1)
		worse.Lifts = min(15, worse.Lifts*1.1)
		more, _ := work(t, worse)
		require.LessOrEqual(t, float64(more.Limit), float64(out.Limit)*(1+1e-12))
		// The two forms agree within the manual's rounding of its constants.
		other := in
		other.System = quantity.Some(map[System]System{MetricForm: USForm, USForm: MetricForm}[in.System.V])
		same := func(v quantity.Length) bool { return math.Abs(float64(v)-0.756) > 0.007 }
		if same(in.Origin.Height.V) && same(in.Destination.Height.V) {
			two, _ := work(t, other)
			require.InDelta(t, float64(out.Limit), float64(two.Limit), 0.04*float64(out.Limit)+1e-9)
		}
		// Twice the load, twice the index.
		twice := in
		twice.Load *= 2
		double, _ := work(t, twice)
		require.InDelta(t, 2*float64(out.Index.V), float64(double.Index.V), 1e-9*float64(double.Index.V))
	}
}

func FuzzLimit(f *testing.F) {
	f.Add(20.0, 0.4, 0.5, 30.0, 0.3, 1.1, 2.0, uint8(0), true, false)
	f.Add(20.0, 0.4, 0.5, 30.0, 0.3, 1.1, 8.9999999999, uint8(5), false, true)
	f.Fuzz(func(t *testing.T, load, reach1, height1, twist, reach2, height2, lifts float64, pick uint8, us, full bool) {
		in := punch()
		in.Load, in.Lifts = quantity.Mass(load), quantity.Number(lifts)
		in.Origin, in.Destination = at(reach1, height1, twist, "m"), at(reach2, height2, 0, "m")
		in.Duration = []Duration{Short, Moderate, Long}[pick%3]
		if !us {
			in.System = quantity.Some(MetricForm)
		}
		if full {
			in.Rounding = quantity.Some(FullPrecision)
		}
		p := &working.Paper{}
		out, err := Limit(in, p)
		if err != nil {
			return
		}
		require.Empty(t, stepcheck.Paper(p))
		_, err = json.Marshal(out)
		require.NoError(t, err)
		require.GreaterOrEqual(t, out.Limit, quantity.Mass(0))
	})
}
