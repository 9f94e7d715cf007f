package freeze

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/alloy"
	"pourwright/calc/form"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/working"
	"pourwright/calc/working/stepcheck"
)

func run(t *testing.T, in Input) (Output, *working.Paper) {
	t.Helper()
	return stepcheck.Run(t, Reckon, in)
}

const (
	mm = quantity.Millimetre
	cm = quantity.Centimetre
)

func measuredBy(c quantity.FreezingConstant, in Input) Input {
	in.Basis, in.Constant = quantity.Some(FromConstant), c
	return in
}

func TestPublished(t *testing.T) {
	minutes := func(o Output) float64 { return quantity.In(o.Time, "min") }
	t.Run("Groover, FMM ch. 10, riser example: C of a plate 7.5 × 12.5 × 2 cm that froze in 1.6 min, and its riser", func(t *testing.T) {
		plate, _ := run(t, measuredBy(quantity.MinutePerSquareCentimetre, Input{Shape: Block, Length: 12.5 * cm, Width: 7.5 * cm, Thickness: 2 * cm}))
		out, _ := run(t, Input{Basis: quantity.Some(FromTimed), TimedTime: 96, TimedModulus: plate.Modulus, Shape: Cylinder, Diameter: 4.7 * cm, Height: quantity.Some(4.7 * cm)})
		require.InDelta(t, 3.26, quantity.In(out.Constant.V, "min/cm^2"), 0.005)
		require.InDelta(t, 2.0, minutes(out), 0.05)
	})
	t.Run("Groover, problem: steel plate 30 × 10 × 2 cm, C 4.0 min/cm², n 2", func(t *testing.T) {
		out, _ := run(t, measuredBy(4*quantity.MinutePerSquareCentimetre, Input{Shape: Block, Length: 30 * cm, Width: 10 * cm, Thickness: 2 * cm}))
		require.InDelta(t, 2.49, minutes(out), 0.005)
	})
	t.Run("Groover, problem: the same with n 1.9", func(t *testing.T) {
		in := measuredBy(4*quantity.MinutePerSquareCentimetre, Input{Shape: Block, Length: 30 * cm, Width: 10 * cm, Thickness: 2 * cm, Exponent: quantity.Some(quantity.Number(1.9))})
		out, _ := run(t, in)
		require.InDelta(t, 2.55, minutes(out), 0.005)
		require.False(t, out.Constant.Known(), "its unit is no longer a time per area")
	})
	t.Run("Groover, problem: aluminium disc D 500, 20 mm, C 2.0 s/mm²", func(t *testing.T) {
		out, _ := run(t, measuredBy(2*quantity.SecondPerSquareMillimetre, Input{Shape: Cylinder, Diameter: 500 * mm, Height: quantity.Some(20 * mm)}))
		require.InDelta(t, 171.5, float64(out.Time), 0.05)
	})
	t.Run("Groover, problem: sphere, cylinder and cube of 10 cm, C 3.5 min/cm²", func(t *testing.T) {
		for _, in := range []Input{
			{Shape: Sphere, Diameter: 10 * cm},
			{Shape: Cylinder, Diameter: 10 * cm, Height: quantity.Some(10 * cm)},
			{Shape: Block, Length: 10 * cm, Width: 10 * cm, Thickness: 10 * cm},
		} {
			out, _ := run(t, measuredBy(3.5*quantity.MinutePerSquareCentimetre, in))
			require.InDelta(t, 9.72, minutes(out), 0.005)
		}
	})
	t.Run("Kalpakjian & Schmid, example 10.1: equal volumes", func(t *testing.T) {
		one := measuredBy(quantity.MinutePerSquareCentimetre, Input{Shape: Sphere, Diameter: quantity.Length(math.Cbrt(6/math.Pi)) * cm})
		out, _ := run(t, one)
		require.InDelta(t, 0.043, minutes(out), 0.0005)
		d := quantity.Length(math.Cbrt(4/math.Pi)) * cm
		out, _ = run(t, measuredBy(quantity.MinutePerSquareCentimetre, Input{Shape: Cylinder, Diameter: d, Height: quantity.Some(d)}))
		require.InDelta(t, 0.033, minutes(out), 0.0005)
		out, _ = run(t, measuredBy(quantity.MinutePerSquareCentimetre, Input{Shape: Block, Length: cm, Width: cm, Thickness: cm}))
		require.InDelta(t, 0.028, minutes(out), 0.0005)
	})
	t.Run("textbook riser: cube 30 mm in 4 min gives 0.16 min/mm²", func(t *testing.T) {
		out, _ := run(t, Input{Basis: quantity.Some(FromTimed), TimedTime: 240, TimedModulus: 5 * mm, Shape: Stated, Modulus: 5 * mm})
		require.InDelta(t, 0.16, quantity.In(out.Constant.V, "min/mm^2"), 0.005)
	})
	t.Run("Ghosh & Mallik, problem 2.5: iron slab of 10 cm and sphere of 10 cm in sand", func(t *testing.T) {
		slab, _ := run(t, figures(Input{Shape: Plate, Thickness: 100 * mm}))
		require.InDelta(t, 0.6713, quantity.In(slab.Time, "h"), 0.00005)
		ball, _ := run(t, figures(Input{Shape: Sphere, Diameter: 100 * mm}))
		// The book rounds its β from 1.7485 to 1.75, which takes 0.17 % off the time.
		require.InDelta(t, 0.0545, quantity.In(ball.Rounded.V, "h"), 0.0001)
	})
}

// figures is the iron and the sand of Ghosh and Mallik's problem 2.5.
func figures(in Input) Input {
	in.Basis = quantity.Some(FromFigures)
	in.Density, in.Latent, in.Solidus = 7850, 272e3, quantity.From[quantity.Temperature](1540, "degC")
	in.MouldConductivity, in.MouldDensity, in.MouldHeat = 0.8655, 1600, 1170
	in.MouldTemperature = quantity.Some(quantity.From[quantity.Temperature](28, "degC"))
	in.Conductivity, in.HeatSolid = quantity.Some[quantity.Conductivity](83), quantity.Some[quantity.SpecificHeat](670)
	return in
}

func listed(a alloy.Code, pour float64) Input {
	return Input{Shape: Plate, Thickness: 20 * mm, Alloy: a, Sand: mouldstuff.SilicateSand, PourTemperature: quantity.Some(quantity.From[quantity.Temperature](pour, "degC"))}
}

// TestAgreesWithClassics compares the band with published shop figures.
func TestAgreesWithClassics(t *testing.T) {
	t.Run("Chvorinov 1940, as in Wlodawer: steel in dry sand, about 2.1 min/cm², lies in the band", func(t *testing.T) {
		out, _ := run(t, listed(alloy.CodeCarbonSteel, 1595))
		require.LessOrEqual(t, quantity.In(out.ConstantLow.V, "min/cm^2"), 2.1)
		require.GreaterOrEqual(t, quantity.In(out.ConstantHigh.V, "min/cm^2"), 2.1)
	})
	t.Run("published shop figures of 2 to 6 min/cm² meet the band of each metal", func(t *testing.T) {
		for _, a := range alloy.All() {
			out, _ := run(t, listed(a.Code, quantity.In(a.PourThin.V, "degC")))
			require.Less(t, quantity.In(out.ConstantLow.V, "min/cm^2"), 6.0, a.Name)
			require.Greater(t, quantity.In(out.ConstantHigh.V, "min/cm^2"), 2.0, a.Name)
		}
	})
}

func TestFaults(t *testing.T) {
	bad := func(in Input, field string) {
		t.Helper()
		_, err := Reckon(in, nil)
		var faults form.Faults
		require.ErrorAs(t, err, &faults)
		require.Equal(t, field, faults[0].Field)
	}
	bad(listed(alloy.CodeGreyIron, 1150), "pour_temperature")
	in := listed(alloy.CodePewter, 320)
	in.MouldTemperature = quantity.Some(quantity.From[quantity.Temperature](240, "degC"))
	bad(in, "mould_temperature")
	in = figures(Input{Shape: Plate, Thickness: 10 * mm})
	in.Liquidus = quantity.Some(quantity.From[quantity.Temperature](1500, "degC"))
	bad(in, "liquidus")
	in = figures(Input{Shape: Plate, Thickness: 10 * mm})
	in.PourTemperature = quantity.Some(quantity.From[quantity.Temperature](1600, "degC"))
	bad(in, "heat_liquid")
	bad(Input{}, "shape")
}

func TestFindings(t *testing.T) {
	codes := stepcheck.Codes
	in := figures(Input{Shape: Sphere, Diameter: 100 * mm})
	_, p := run(t, in)
	require.ElementsMatch(t, []string{"freezing-band", "superheat-left-out", "round-freezes-sooner"}, codes(p))
	in.MouldConductivity, in.MouldDensity, in.MouldHeat = 398, 8960, 376
	_, p = run(t, in)
	require.Contains(t, codes(p), "mould-not-insulating")
	in = figures(Input{Shape: Plate, Thickness: 50 * mm})
	in.PourTemperature = quantity.Some(quantity.From[quantity.Temperature](1700, "degC"))
	in.HeatLiquid, in.MeltConductivity = quantity.Some[quantity.SpecificHeat](800), quantity.Some[quantity.Conductivity](40)
	out, p := run(t, in)
	require.Contains(t, codes(p), "never-freezes")
	require.False(t, out.Superheated.Time.Known())
	require.True(t, out.Moulded.Time.Known())
}

func TestProperties(t *testing.T) {
	r := rand.New(rand.NewSource(1))
	for range 300 {
		in := randomInput(r)
		out, p := run(t, in)
		require.LessOrEqual(t, out.TimeLow, out.Time)
		require.LessOrEqual(t, out.Time, out.TimeHigh)
		require.Positive(t, float64(out.Time))
		if out.Rounded.Known() {
			require.LessOrEqual(t, float64(out.Rounded.V), float64(out.Time)*(1+1e-12), "round shapes freeze sooner")
			require.Positive(t, float64(out.Rounded.V))
		}
		if out.Moulded.Time.Known() {
			require.Greater(t, out.Moulded.Time.V, out.Chilled.Time.V, "a held wall draws faster")
		}
		if out.Superheated.Time.Known() {
			require.Greater(t, out.Superheated.Time.V, out.Moulded.Time.V)
		}
		blank, err := Reckon(in, nil)
		require.NoError(t, err)
		require.Equal(t, out, blank, "no answer hangs on the paper")
		require.NotEmpty(t, p.Steps)

		// Twice the size, four times the time.
		if in.Shape == Stated && in.Exponent.Or(2) == 2 && in.Modulus < 0.4 {
			double := in
			double.Modulus *= 2
			again, _ := run(t, double)
			require.InEpsilon(t, 4*float64(out.Time), float64(again.Time), 1e-12)
		}
		// Hotter metal never freezes sooner.
		if in.PourTemperature.Known() && in.PourTemperature.V < 2900 {
			hotter := in
			hotter.PourTemperature.V += 10
			again, _ := run(t, hotter)
			require.GreaterOrEqual(t, again.Time, out.Time)
			require.Equal(t, again.TimeLow, out.TimeLow)
		}
	}
}

// TestRoundedMeetsPlain: a very large sphere in little time is a plate.
func TestRoundedMeetsPlain(t *testing.T) {
	for _, km := range []float64{1, 1e-3, 1e-6} {
		got := Rounded(nil, 10, 30, 2, 1000, km, 7000, 250e3, 1150, 20)
		plain := math.Pow(7000*250e3*0.01/1130*math.Sqrt(math.Pi)/2/1000, 2)
		require.LessOrEqual(t, got, plain)
		require.InEpsilon(t, plain, got, 1.0*km+1e-9)
	}
}

func randomInput(r *rand.Rand) Input {
	in := Input{
		Shape:     []Shape{Plate, Block, Bar, Cylinder, Sphere, Stated}[r.Intn(6)],
		Thickness: quantity.Length(0.001 + r.Float64()), Length: quantity.Length(0.001 + 10*r.Float64()), Width: quantity.Length(0.001 + r.Float64()),
		Breadth: quantity.Length(0.001 + r.Float64()), Depth: quantity.Length(0.001 + r.Float64()), Diameter: quantity.Length(0.001 + r.Float64()), Modulus: quantity.Length(0.001 + 0.5*r.Float64()),
		Basis: quantity.Some([]Basis{FromLists, FromFigures, FromConstant, FromTimed}[r.Intn(4)]),
	}
	if r.Intn(2) == 0 {
		in.Height = quantity.Some(quantity.Length(0.001 + r.Float64()))
	}
	all := alloy.All()
	a := all[r.Intn(len(all))]
	sands := mouldstuff.Sands()
	in.Alloy, in.Sand = a.Code, sands[r.Intn(len(sands))].Code
	if in.Basis.V == FromFigures {
		in.Density, in.Latent, in.Solidus = quantity.Density(1000+9000*r.Float64()), quantity.SpecificEnergy(50e3+500e3*r.Float64()), quantity.Temperature(500+1500*r.Float64())
		in.MouldConductivity, in.MouldDensity, in.MouldHeat = quantity.Conductivity(0.1+400*r.Float64()*r.Float64()), quantity.Density(500+8000*r.Float64()), quantity.SpecificHeat(300+900*r.Float64())
		in.HeatLiquid = quantity.Some(quantity.SpecificHeat(200 + 1000*r.Float64()))
		in.HeatSolid = quantity.Some(quantity.SpecificHeat(200 + 1000*r.Float64()))
		in.Conductivity = quantity.Some(quantity.Conductivity(5 + 400*r.Float64()))
		if r.Intn(2) == 0 {
			in.MeltConductivity = quantity.Some(quantity.Conductivity(5 + 200*r.Float64()))
		}
	}
	if r.Intn(3) > 0 {
		liquidus := a.Liquidus.V
		if in.Basis.V == FromFigures {
			liquidus = in.Solidus
		}
		in.PourTemperature = quantity.Some(liquidus + 1 + quantity.Temperature(200*r.Float64()))
	}
	in.Constant = quantity.FreezingConstant(1e4 + 1e8*r.Float64())
	in.TimedTime, in.TimedModulus = quantity.Time(1+1e4*r.Float64()), quantity.Length(0.001+0.2*r.Float64())
	if r.Intn(2) == 0 {
		in.Exponent = quantity.Some(quantity.Number(1 + r.Float64()))
	}
	return in
}

func FuzzReckon(f *testing.F) {
	f.Add(int64(1), 20.0, 1500.0, 0.5)
	f.Fuzz(func(t *testing.T, draw int64, T0, Tp, u float64) {
		in := randomInput(rand.New(rand.NewSource(draw)))
		in.MouldTemperature = quantity.Some(quantity.Temperature(T0))
		in.PourTemperature = quantity.Some(quantity.Temperature(Tp))
		in.Counted = quantity.Some(quantity.Ratio(u))
		p := &working.Paper{}
		out, err := Reckon(in, p)
		if err != nil {
			require.IsType(t, form.Faults{}, err)
			return
		}
		require.Empty(t, stepcheck.Paper(p))
		require.True(t, quantity.Finite(float64(out.TimeHigh)) && out.TimeLow > 0)
	})
}
