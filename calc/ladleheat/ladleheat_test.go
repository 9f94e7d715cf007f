package ladleheat

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/alloy"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/soak"
	"pourwright/calc/working"
	"pourwright/calc/working/stepcheck"
)

func celsius(v float64) quantity.Temperature { return quantity.From[quantity.Temperature](v, "degC") }

func some[T any](v T) quantity.Opt[T] { return quantity.Some(v) }

func run(t *testing.T, in Input) (Output, *working.Paper) {
	t.Helper()
	return stepcheck.Prove(t, Lose, in)
}

// iron is a ladle of grey iron, tapped at 1445 °C with a drop of 45 K.
func iron(kg float64) Input {
	return Input{Alloy: alloy.CodeGreyIron, Mass: quantity.Mass(kg), Tap: some(celsius(1445)), Pouring: some(quantity.Time(90))}
}

func TestStirredBody(t *testing.T) {
	k := pot{mass: 40, heat: 850, left: 1, ambient: 293, side: 0.1, base: 0.03, effusivity: 1549, preheat: 1073}
	k.mass = 4
	for x, y := range map[float64]float64{0.1: 0.8964569800, 0.25: 0.7703465477, 0.5: 0.6156903442, 1: 0.4275835762, 2: 0.2553956763, 3: 0.1790011512} {
		t.Run("Carslaw and Jaeger, table of e^(x²) erfc x", func(t *testing.T) {
			require.InDelta(t, y, soak.Stirred(x), 5e-11)
			time := math.Pow(x*k.mass*k.heat/(k.effusivity*(k.side+k.base)), 2)
			got, bound := k.ending(1673, time)
			require.InDelta(t, 1073+600*y, got, 0.05)
			require.LessOrEqual(t, math.Abs(1073+600*y-got), bound)
			back, bound, ok := k.holds(1673, 1073+600*y)
			require.True(t, ok)
			require.InEpsilon(t, time, back, 1e-4)
			require.LessOrEqual(t, math.Abs(time-back), bound+1e-6)
		})
	}
}

// TestEarly: at first the lining takes its heat as the root of time.
func TestEarly(t *testing.T) {
	k := pot{mass: 400, heat: 850, left: 1, ambient: 293, side: 0.1, base: 0.03, effusivity: 1549, preheat: 1073}
	for _, seconds := range []float64{1, 4, 16} {
		end, _ := k.ending(1673, seconds)
		require.InEpsilon(t, 2/math.SqrtPi*k.effusivity*0.13*600*math.Sqrt(seconds)/(k.mass*k.heat), 1673-end, 0.01)
	}
}

// cooledTo is the time in which a body that only radiates comes down from T0 to
// T, by the closed form that the texts on heat transfer print.
func cooledTo(T0, T, Ta, rate float64) float64 {
	f := func(T float64) float64 { return math.Log((T+Ta)/(T-Ta)) + 2*math.Atan(T/Ta) }
	return (f(T) - f(T0)) / (4 * Ta * Ta * Ta * rate)
}

func TestRadiationAlone(t *testing.T) {
	k := pot{mass: 25, heat: 900, left: 1, radiating: 0.01, ambient: 293.15}
	rate := k.radiating * sigma / (k.mass * k.heat)
	t.Run("Incropera and DeWitt, eq. 5.18, radiation to large surroundings", func(t *testing.T) {
		for _, T := range []float64{1600, 1500, 1300, 1000} {
			time := cooledTo(1673.15, T, 293.15, rate)
			got, bound := k.ending(1673.15, time)
			require.InDelta(t, T, got, 0.02)
			require.LessOrEqual(t, math.Abs(T-got), bound+1e-9)
			if back, _, ok := k.holds(1673.15, T); ok {
				require.InEpsilon(t, time, back, 1e-4)
			} else {
				require.Greater(t, time, longest)
			}
		}
	})
	t.Run("Stefan's law into the cold: 1/T³ grows evenly", func(t *testing.T) {
		k.ambient = 0
		for _, seconds := range []float64{60, 600, 3600} {
			got, _ := k.ending(1673.15, seconds)
			require.InDelta(t, math.Pow(math.Pow(1673.15, -3)+3*rate*seconds, -1.0/3), got, 0.02)
		}
	})
	t.Run("Stefan's law while the mass falls evenly", func(t *testing.T) {
		k.left, k.transfer, k.pouring = 0.1, 30, 170
		before := math.Pow(1673.15, -3) + 3*rate*30
		got, bound := k.ending(1673.15, 200)
		require.InDelta(t, math.Pow(before+3*rate*170/0.9*math.Log(10), -1.0/3), got, 0.05)
		require.Less(t, bound, 0.5)
	})
}

// TestOrder: halving the step quarters the error.
func TestOrder(t *testing.T) {
	k := pot{mass: 25, heat: 900, left: 0.1, transfer: 40, pouring: 160, radiating: 0.01, ambient: 293.15, side: 0.09, base: 0.02, effusivity: 1549, preheat: 1073}
	fine, finer := k.run(1673, 200, 1000).end(), k.run(1673, 200, 2000).end()
	exact := finer + (finer-fine)/3
	last := 0.0
	for _, n := range []int{16, 32, 64, 128} {
		wrong := k.run(1673, 200, n).end() - exact
		if last != 0 {
			require.InDelta(t, 4, last/wrong, 1)
		}
		last = wrong
	}
	got, bound := k.ending(1673, 200)
	require.InDelta(t, exact, got, 0.05)
	require.LessOrEqual(t, math.Abs(got-exact), bound)
}

// TestHeatBalance adds up the heat along another road: what is left in the
// ladle, what went out with the stream, and the flux at the walls by the
// half-way values of a fine division.
func TestHeatBalance(t *testing.T) {
	k := pot{mass: 25, heat: 900, left: 0.1, transfer: 40, pouring: 160, radiating: 0.01, ambient: 293.15, side: 0.09, base: 0.02, effusivity: 1549, preheat: 1073}
	c := k.run(1673, 200, steps)
	stored := k.mass*k.heat*1673 - k.massAt(200)*k.heat*c.end()
	stream, wall, top := 0.0, 0.0, 0.0
	const n = 100
	for i := 1; i < len(c.at); i++ {
		run := c.at[i] - c.at[i-1]
		for s := range n {
			// Close at the beginning of each run, where the flux bends.
			share := math.Pow((float64(s)+0.5)/n, 2)
			dt := run * (math.Pow(float64(s+1)/n, 2) - math.Pow(float64(s)/n, 2))
			t := c.at[i-1] + share*run
			T := c.temperature[i-1] + share*(c.temperature[i]-c.temperature[i-1])
			if t > k.transfer {
				stream += k.mass * 0.9 / k.pouring * dt * k.heat * T
			}
			top += k.radiating * sigma * (quad(T) - quad(k.ambient)) * dt
			// The flux at t from the runs so far and this one.
			q := (1673 - k.preheat) / math.Sqrt(t)
			for j := 1; j <= i; j++ {
				slope := (c.temperature[j] - c.temperature[j-1]) / (c.at[j] - c.at[j-1])
				q += 2 * slope * (math.Sqrt(t-c.at[j-1]) - math.Sqrt(math.Max(t-c.at[j], 0)))
			}
			wall += k.effusivity / math.SqrtPi * q * (k.base + k.side*k.massAt(t)/k.mass) * dt
		}
	}
	require.InEpsilon(t, stored-stream, wall+top, 0.001)
	require.InEpsilon(t, stored-stream, c.wall+c.top, 1e-5)
}

// TestOwnRows are the rows of our own worked table, metal as deep as wide, with
// the figures it was worked with.
func TestOwnRowsRegression(t *testing.T) {
	for _, c := range []struct {
		kg, top, wall      float64
		T, Tp, rho, c, eps float64
	}{
		{25, 12.3, 18.6, 1400, 800, 6900, 850, 0.45},
		{100, 7.7, 11.7, 1400, 800, 6900, 850, 0.45},
		{500, 4.5, 6.9, 1400, 800, 6900, 850, 0.45},
		{1000, 3.6, 5.4, 1400, 800, 6900, 850, 0.45},
		{5000, 2.1, 3.2, 1400, 800, 6900, 850, 0.45},
	} {
		D := math.Cbrt(4 * c.kg / (math.Pi * c.rho))
		k := pot{mass: c.kg, heat: c.c, left: 1, radiating: c.eps * math.Pi / 4 * D * D, ambient: 293.15, base: math.Pi / 4 * D * D, side: math.Pi * D * D, effusivity: math.Sqrt(1.2 * 2e6), preheat: c.Tp + 273.15}
		j := &job{in: Input{Vessel: some(lined)}}
		j.first(k, c.T+273.15)
		require.InDelta(t, c.top, float64(j.out.TopFirst.V), 0.06)
		require.InDelta(t, c.wall, float64(j.out.WallFirst.V), 0.06)
	}
}

// The rates that foundries report, wide as they are.
func TestReportedRates(t *testing.T) {
	for _, c := range []struct {
		name      string
		in        Input
		low, high float64
	}{
		{"common practice: hand ladle of 25 kg iron, 15 to 40 K/min", iron(25), 15, 40},
		{"common practice: 100 kg iron, 8 to 20 K/min", iron(100), 8, 20},
		{"common practice: 250 kg iron, 8 to 20 K/min", iron(250), 8, 20},
		{"common practice: 500 kg iron, 5 to 12 K/min", iron(500), 5, 12},
	} {
		t.Run(c.name, func(t *testing.T) {
			out, _ := run(t, c.in)
			require.GreaterOrEqual(t, float64(out.PerMinute), c.low)
			require.LessOrEqual(t, float64(out.PerMinute), c.high)
		})
	}
	t.Run("a text on hot metal: 100 to 200 kW/m² from an open top", func(t *testing.T) {
		out, _ := run(t, iron(100))
		require.InDelta(t, 150, quantity.In(out.TopFlux.V, "kW/m²"), 50)
	})
}

func TestReadings(t *testing.T) {
	in := Input{Alloy: alloy.CodeGreyIron, Basis: some(byReadings), First: celsius(1400), Second: celsius(1380), Between: 90, Tap: some(celsius(1445)), Pouring: some(quantity.Time(90)), Transfer: some(quantity.Time(90))}
	out, _ := run(t, in)
	// 1400 °C filled; 90 s on it reads as the second reading, 90 s later again
	// in the same proportion.
	require.InDelta(t, 1380, quantity.In(out.Start, "degC"), 1e-9)
	require.InDelta(t, 20+1360*1360/1380.0, quantity.In(out.End.V, "degC"), 1e-9)
	require.InDelta(t, 90/math.Log(1380.0/1360), float64(out.Constant.V), 1e-9)
	in.Tap = out.TapNeeded
	out, _ = run(t, in)
	require.InDelta(t, float64(out.Low), float64(out.End.V), 1e-9)
}

func codes(p *working.Paper) map[string]working.Level { return stepcheck.Levels(p) }

func TestFindings(t *testing.T) {
	_, p := run(t, iron(100))
	require.Equal(t, map[string]working.Level{"not-measured": working.Note}, codes(p))

	in := iron(20)
	in.Tap = some(celsius(1345))
	out, p := run(t, in)
	require.Equal(t, working.Stop, codes(p)["goes-cold"])
	in.Tap = out.TapNeeded
	_, p = run(t, in)
	require.NotContains(t, codes(p), "goes-cold")
	require.Equal(t, working.Mind, codes(p)["may-go-cold"])

	in = iron(5)
	in.Tap, in.Pouring = some(celsius(1300)), some(quantity.Time(300))
	_, p = run(t, in)
	require.Equal(t, working.Stop, codes(p)["freezes-in-the-ladle"])
	in.Tap, in.Pouring = quantity.Opt[quantity.Temperature]{}, some(quantity.Time(900))
	_, p = run(t, in)
	require.Equal(t, working.Stop, codes(p)["no-tap-is-enough"])

	in = iron(1500)
	in.Tap = some(celsius(1550))
	out, p = run(t, in)
	require.Equal(t, working.Mind, codes(p)["starts-hot"])
	require.Equal(t, working.Mind, codes(p)["not-measured"])
	require.True(t, out.Wait.Known())
	in.Transfer = out.Wait
	_, p = run(t, in)
	require.NotContains(t, codes(p), "starts-hot")

	in = iron(30)
	in.Tap = quantity.Opt[quantity.Temperature]{}
	in.WindowLow, in.WindowHigh, in.Pouring = some(celsius(1300)), some(celsius(1350)), some(quantity.Time(240))
	_, p = run(t, in)
	require.Equal(t, working.Mind, codes(p)["window-too-narrow"])

	in = iron(100)
	in.Preheat = some(celsius(20))
	_, p = run(t, in)
	require.Equal(t, working.Stop, codes(p)["lining-may-be-damp"])
	in.Preheat = some(celsius(400))
	_, p = run(t, in)
	require.Equal(t, working.Mind, codes(p)["lining-not-red"])

	in = Input{Alloy: alloy.CodeSiliconBronze, Mass: 20, Vessel: some(crucible), Pouring: some(quantity.Time(60))}
	_, p = run(t, in)
	require.Equal(t, working.Mind, codes(p)["crucible-estimate"])
}

func TestFaults(t *testing.T) {
	bad := func(in Input, field string) {
		t.Helper()
		_, err := Lose(in, nil)
		var faults form.Faults
		require.ErrorAs(t, err, &faults)
		require.Equal(t, field, faults[0].Field)
	}
	bad(Input{}, "alloy")
	in := iron(100)
	in.Tap = some(celsius(1190))
	bad(in, "tap")
	in = iron(100)
	in.WindowLow = some(celsius(1190))
	bad(in, "window_low")
	in.WindowLow = some(celsius(1460))
	bad(in, "window_low")
	in.WindowLow, in.WindowHigh = some(celsius(1300)), some(celsius(1290))
	bad(in, "window_high")
	in = Input{Alloy: alloy.CodePewter, Mass: 1, Surroundings: some(celsius(260))}
	bad(in, "surroundings")
	in = iron(100)
	in.Preheat = some(celsius(1300))
	bad(in, "preheat")
	in = iron(100)
	in.Diameter = some(quantity.Length(2))
	bad(in, "diameter")
	in = Input{Alloy: alloy.CodeGreyIron, Basis: some(byReadings), First: celsius(1400), Second: celsius(1400), Between: 90}
	bad(in, "second")
	in.Second, in.Surroundings = celsius(300), some(celsius(280))
	bad(in, "second")
}

func BenchmarkLose(b *testing.B) {
	in := iron(100)
	for b.Loop() {
		if _, err := Lose(in, &working.Paper{}); err != nil {
			b.Fatal(err)
		}
	}
}
