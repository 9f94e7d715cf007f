package cooling

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/alloy"
	"pourwright/calc/form"
	"pourwright/calc/freeze"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/soak"
	"pourwright/calc/working"
	"pourwright/calc/working/stepcheck"
)

const mm = quantity.Millimetre

func celsius(v float64) quantity.Temperature { return quantity.From[quantity.Temperature](v, "degC") }

func some[T any](v T) quantity.Opt[T] { return quantity.Some(v) }

func run(t *testing.T, in Input) (Output, *working.Paper) {
	t.Helper()
	return stepcheck.Prove(t, Shakeout, in)
}

// oracle is the iron plate of the worked figures: 25 mm, effusivity 1017.
func oracle(latent, shakeout float64) Input {
	return Input{
		Shape: freeze.Plate, Thickness: 25 * mm, Basis: some(fromFigures),
		Density: 7000, Latent: quantity.SpecificEnergy(latent), Solidus: celsius(1150), HeatSolid: 750, Conductivity: 30,
		MouldConductivity: 0.61, MouldDensity: 1500, MouldHeat: 1017 * 1017 / 0.61 / 1500,
		Shakeout: some(celsius(shakeout)),
	}
}

func TestPublished(t *testing.T) {
	t.Run("Chvorinov with the heat of metal and sand, plate 25 mm: 262.26 s", func(t *testing.T) {
		out, _ := run(t, oracle(240e3, 600))
		require.InDelta(t, 262.26, float64(out.Freezing), 0.005)
	})
	t.Run("Carslaw and Jaeger ch. XII, the same plate in fresh sand to 600 °C: 2237 s", func(t *testing.T) {
		out, _ := run(t, oracle(240e3, 600))
		require.InDelta(t, 2237, float64(out.Fresh), 0.5)
	})
	for x, y := range map[float64]float64{0.1: 0.8964569800, 0.25: 0.7703465477, 0.5: 0.6156903442, 1: 0.4275835762, 2: 0.2553956763, 3: 0.1790011512} {
		t.Run("Carslaw and Jaeger, table of e^(x²) erfc x", func(t *testing.T) {
			out, _ := run(t, oracle(240e3, 20+1130*y))
			// By the table the plate is at y of the way when b √t/(ρ c M) is x.
			require.InEpsilon(t, math.Pow(x*7000*750*0.0125/1017, 2), float64(out.Fresh), 1e-8)
		})
	}
	t.Run("the worked steps of 8, 4 and 2 s: 5108, 5121, 5128 s, running to 5134 s", func(t *testing.T) {
		var got []float64
		for i, dt := range []float64{8, 4, 2} {
			got = append(got, bySteps(dt))
			require.InDelta(t, []float64{5108, 5121, 5128}[i], got[i], 0.6)
		}
		limit := 2*got[2] - got[1] // the steps are of the first order
		require.InDelta(t, 5134, limit, 0.5)
		// Those steps begin at 264 s, the first multiple of 8 s after freezing.
		// Frozen at 264 s, this calculator gives their limit.
		late, _ := run(t, oracle(240e3*math.Sqrt(264/262.2585634726), 600))
		require.InDelta(t, 264, float64(late.Freezing), 0.001)
		require.InDelta(t, limit, float64(late.Time), 2)
	})
}

// bySteps cools the plate in even steps, explicitly, from the first multiple of
// 8 s after it froze: the scheme of the worked figures.
func bySteps(dt float64) float64 {
	const b, per = 1017, 7000 * 750 * 0.0125
	start := 264.0
	at, slopes := []float64{start}, []float64{}
	T := 1150.0
	for {
		t := at[len(at)-1]
		q := 1130 / math.Sqrt(t)
		for j, s := range slopes {
			q += s * 2 * (math.Sqrt(t-at[j]) - math.Sqrt(t-at[j+1]))
		}
		s := -b / math.SqrtPi * q / per
		if T+s*dt <= 600 {
			return t + (600-T)/s
		}
		T += s * dt
		slopes, at = append(slopes, s), append(at, t+dt)
	}
}

// exactly is the closed form for one specific heat: the temperature drop is an
// integral over the answer of a stirred body. With 1 + s = z sin² φ it is
// smooth.
func exactly(stefan, z float64) float64 {
	beta, root := math.SqrtPi/2/stefan, math.Sqrt(z)
	from := math.Asin(1 / root)
	const n = 4000
	step, sum := (math.Pi/2-from)/n, 0.0
	for i := range n {
		cos := math.Cos(from + (float64(i)+0.5)*step)
		sum += 2 * root * cos * soak.Stirred(beta*root*cos) * step
	}
	return 1 - beta/math.SqrtPi*sum
}

func TestAgainstClosedForm(t *testing.T) {
	for _, stefan := range []float64{0.1, 0.7, 2, 3.53125, 8} {
		m := body{stefan: stefan}
		for _, y := range []float64{0.9, 0.5, 0.2, 0.05} {
			r := reckoning{freezing: 1, coarse: march(m, y, math.Inf(1), 2*fineStep), fine: march(m, y, math.Inf(1), fineStep)}
			z, bound := r.time(y)
			require.InDelta(t, y, exactly(stefan, z), 2e-4*y)
			// The bound is a bound.
			slope := (exactly(stefan, z*1.0001) - exactly(stefan, z)) / (z * 0.0001)
			require.LessOrEqual(t, math.Abs((exactly(stefan, z)-y)/slope), bound)
		}
	}
}

// TestOrder: halving the step quarters the error.
func TestOrder(t *testing.T) {
	m := body{stefan: 750 * 1130 / 240e3}
	y := 580.0 / 1130
	const exact = 5123.137454716 / 262.258563473 // by the closed form
	require.InDelta(t, y, exactly(m.stefan, exact), 1e-6)
	last := 0.0
	for _, step := range []float64{0.08, 0.04, 0.02, 0.01} {
		wrong := exact - march(m, y, math.Inf(1), step).when(y)
		if last != 0 {
			require.InDelta(t, 4, last/wrong, 0.3)
		}
		last = wrong
	}
}

// TestAgainstConduction cools the plate against sand that is solved cell by
// cell, with the change near 730 °C in it: another road to the same time.
func TestAgainstConduction(t *testing.T) {
	m := body{stefan: 3.5, change: 0.35, upper: 0.65, lower: 0.61}
	// Sand of unit effusivity and diffusivity, cells that widen outward. The
	// heat of freezing is then 2/√π.
	const n = 80
	var width, middle [n]float64
	x, w := 0.0, 0.06
	for i := range n {
		width[i], middle[i] = w, x+w/2
		x += w
		w *= 1.05
	}
	var T, next [n]float64
	heat := 2 / math.SqrtPi
	face, given, z := 1.0, 0.0, 0.0
	dt := 0.2 * width[0] * width[0]
	for face > 0.3 {
		flux := (face - T[0]) / middle[0]
		for i := range n {
			in, out := flux, 0.0
			if i > 0 {
				in = (T[i-1] - T[i]) / (middle[i] - middle[i-1])
			}
			if i < n-1 {
				out = (T[i] - T[i+1]) / (middle[i+1] - middle[i])
			}
			next[i] = T[i] + dt*(in-out)/width[i]
		}
		T = next
		z += dt
		given += flux * dt
		if over := given/heat - 1; over > 0 {
			face = cooledBy(m, over)
		}
	}
	tr := march(m, 0.29, math.Inf(1), fineStep)
	require.InEpsilon(t, z, tr.when(face), 0.01)
}

// cooledBy is the θ at which the metal has given g.
func cooledBy(m body, g float64) float64 {
	lo, hi := 0.0, 1.0
	for range 60 {
		mid := (lo + hi) / 2
		if m.given(mid) > g {
			lo = mid
		} else {
			hi = mid
		}
	}
	return hi
}

// TestHeatBalance adds up the flux into the sand, step by step and finely, and
// compares it with the heat that the metal gave.
func TestHeatBalance(t *testing.T) {
	m := body{stefan: 3, change: 0.3, upper: 0.65, lower: 0.61}
	tr := march(m, 0.2, math.Inf(1), fineStep)
	flux := func(z float64) float64 { // in heats of freezing, per freezing time
		q := 1 / math.Sqrt(z)
		for j := 1; j < len(tr.at) && tr.at[j-1] < z; j++ {
			s := (tr.theta[j] - tr.theta[j-1]) / (tr.at[j] - tr.at[j-1])
			q += 2 * s * (math.Sqrt(z-tr.at[j-1]) - math.Sqrt(math.Max(z-tr.at[j], 0)))
		}
		return q / 2
	}
	sum := 1.0 // until z = 1
	for i := 1; i < len(tr.at); i++ {
		const n = 20
		dz := (tr.at[i] - tr.at[i-1]) / n
		for k := range n {
			sum += dz * flux(tr.at[i-1]+(float64(k)+0.5)*dz)
		}
	}
	require.InEpsilon(t, 1+m.given(tr.theta[len(tr.theta)-1]), sum, 0.001)
}

// TestLate: long after, the sand has all the heat, as if it had been let go at
// once in a plane (Carslaw and Jaeger, ch. II): θ = Q/(b √(π t)).
func TestLate(t *testing.T) {
	m := body{stefan: 2, change: 0.3, upper: 0.65, lower: 0.61}
	tr := march(m, 0.002, math.Inf(1), fineStep)
	z := tr.when(0.002)
	// In heats of freezing the plane source of Q = 1 + St + e gives 2 Q/(π √z).
	require.InEpsilon(t, 2*(1+2+0.3)/(math.Pi*math.Sqrt(z)), 0.002, 0.01)
}

func listed(code alloy.Code, sand mouldstuff.Sand) Input {
	return Input{Shape: freeze.Plate, Thickness: 25 * mm, Alloy: code, Sand: sand}
}

func codes(p *working.Paper) map[string]working.Level { return stepcheck.Levels(p) }

func TestFindings(t *testing.T) {
	in := listed(alloy.CodeGreyIron, mouldstuff.GreenSand)
	_, p := run(t, in)
	require.Equal(t, map[string]working.Level{"wet-sand": working.Note, "cooling-band": working.Note, "superheat-left-out": working.Note}, codes(p))
	in.Shakeout = some(celsius(760))
	_, p = run(t, in)
	require.Equal(t, working.Stop, codes(p)["above-the-change"])
	in.Shakeout = some(celsius(720))
	_, p = run(t, in)
	require.Equal(t, working.Mind, codes(p)["shaken-out-hot"])
	in.Stress, in.Shakeout = some("prone"), some(celsius(550))
	_, p = run(t, in)
	require.Equal(t, working.Mind, codes(p)["shaken-out-hot"])

	in = listed(alloy.CodeGreyIron, mouldstuff.ResinSand)
	in.OpenAfter = some(quantity.Time(60))
	out, p := run(t, in)
	require.Equal(t, working.Stop, codes(p)["open-before-solid"])
	require.Equal(t, out.Effective, out.Open.V)
	in.OpenAfter = some(20 * quantity.Minute)
	_, p = run(t, in)
	require.Equal(t, working.Stop, codes(p)["above-the-change"])
	in.OpenAfter = some(quantity.Time(30 * 3600))
	_, p = run(t, in)
	require.NotContains(t, codes(p), "shaken-out-hot")

	in = listed(alloy.CodeAluminiumBronze, mouldstuff.ResinSand)
	in.SandThickness = some(30 * mm)
	_, p = run(t, in)
	require.Contains(t, codes(p), "aluminium-bronze-slow")
	require.Equal(t, working.Mind, codes(p)["sand-cannot-cool-it"])
	in.SandThickness = some(80 * mm)
	_, p = run(t, in)
	require.Equal(t, working.Mind, codes(p)["sand-warmed-through"])
	in.SandThickness = some(500 * mm)
	_, p = run(t, in)
	require.NotContains(t, codes(p), "sand-warmed-through")
	in.Constant = some(quantity.FreezingConstant(1e8))
	in.Shape, in.Diameter = freeze.Sphere, 100*mm
	_, p = run(t, in)
	require.Equal(t, working.Mind, codes(p)["constant-outside-band"])
	require.Contains(t, codes(p), "round-cools-sooner")

	in = oracle(240e3, 600)
	in.Conductivity = 2
	_, p = run(t, in)
	require.Equal(t, working.Mind, codes(p)["not-alike-inside"])
}

func TestFaults(t *testing.T) {
	bad := func(in Input, field string) {
		t.Helper()
		_, err := Shakeout(in, nil)
		var faults form.Faults
		require.ErrorAs(t, err, &faults)
		require.Equal(t, field, faults[0].Field)
	}
	bad(Input{}, "shape")
	in := listed(alloy.CodeGreyIron, mouldstuff.GreenSand)
	in.PourTemperature = some(celsius(1190))
	bad(in, "pour_temperature")
	in = listed(alloy.CodeGreyIron, mouldstuff.GreenSand)
	in.Shakeout = some(celsius(1060))
	bad(in, "shakeout")
	in.Shakeout = some(celsius(45))
	bad(in, "shakeout")
	bad(listed(alloy.CodePewter, mouldstuff.Plaster), "shakeout")
	in = listed(alloy.CodeSiliconBronze, mouldstuff.Investment)
	in.MouldTemperature = some(celsius(500))
	bad(in, "mould_temperature")
	in.MouldTemperature = some(celsius(800))
	bad(in, "mould_temperature")
	in = listed(alloy.CodeAlSi, mouldstuff.GreenSand)
	in.ChangeHeat = some(quantity.SpecificEnergy(80e3))
	bad(in, "change_heat")
	in = oracle(240e3, 600)
	in.Liquidus = some(celsius(1100))
	bad(in, "liquidus")
	in = oracle(240e3, 600)
	in.PourTemperature = some(celsius(1300))
	bad(in, "heat_liquid")
}

func TestShakeoutRegression(t *testing.T) {
	in := listed(alloy.CodeGreyIron, mouldstuff.GreenSand)
	in.PourTemperature = some(celsius(1350))
	out, _ := run(t, in)
	require.InEpsilon(t, 4080, float64(out.Time), 0.01)
	require.InEpsilon(t, 7260, float64(out.Recommended), 0.01)
	out, _ = run(t, oracle(240e3, 600))
	require.InDelta(t, 5123.14, float64(out.Time), 0.5)
}

func BenchmarkShakeout(b *testing.B) {
	in := listed(alloy.CodeGreyIron, mouldstuff.GreenSand)
	for b.Loop() {
		if _, err := Shakeout(in, &working.Paper{}); err != nil {
			b.Fatal(err)
		}
	}
}
