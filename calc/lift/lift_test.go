package lift

import (
	"fmt"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/alloy"
	"pourwright/calc/flow"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/working"
	"pourwright/calc/working/stepcheck"
)

const (
	cm  = quantity.Centimetre
	cm2 = quantity.SquareCentimetre
)

func some[T any](v T) quantity.Opt[T] { return quantity.Some(v) }

func run(t *testing.T, in Input) (Output, *working.Paper) {
	t.Helper()
	return stepcheck.Run(t, Balance, in)
}

// perCM3 is a weight in N/cm³, as the Indian texts print densities.
func perCM3(n float64) quantity.Density { return quantity.Density(n * 1e6 / flow.Gravity) }

// pipe is P. N. Rao's cast-iron pipe: OD 12.5, ID 10, length 180, head 20 cm,
// flask 200 × 25 × 20 cm.
func pipe() Input {
	return Input{
		Density:   some(perCM3(0.0771)),
		Surfaces:  []Surface{{Name: "pipe", Area: 12.5 * 180 * cm2, Depth: 20 * cm}},
		Cores:     []Core{{Name: "bore", Volume: quantity.Volume(14137.2e-6), Density: some(perCM3(0.0165))}},
		BoxLength: some(200 * cm), BoxWidth: some(25 * cm), BoxHeight: some(20 * cm), BoxDensity: some(perCM3(0.0165)),
	}
}

func TestPublished(t *testing.T) {
	t.Run("Rao, ch. 4, cast-iron pipe", func(t *testing.T) {
		out, p := run(t, pipe())
		require.InDelta(t, 856.7, float64(out.Cores[0].Lift), 0.05)
		require.InDelta(t, 3469.5, float64(out.CopeLift), 0.05)
		// The book prints 4326.7, a slip in its own sum of 856.7 + 3469.5.
		require.InDelta(t, 4326.2, float64(out.Static), 0.05)
		require.InDelta(t, 1650, float64(out.SandWeight.V), 0.5)
		require.InDelta(t, 2676.2, float64(out.Net.V), 0.05)
		require.Equal(t, "cope-floats", p.Findings[len(p.Findings)-1].Code)
	})
	t.Run("GATE: core 100 dia × 100 mm, 2600 and 1600 kg/m³, 7.7 N", func(t *testing.T) {
		out, _ := run(t, Input{Density: some(quantity.Density(2600)), Cores: []Core{{Volume: quantity.Volume(785.398e-6), Density: some(quantity.Density(1600))}}})
		require.InDelta(t, 7.7, float64(out.CoreLift), 0.05)
	})
}

// TestGATE1991Regression is our own reading of an examination question whose
// printed answer was not seen: block all in the drag, head of the cope.
func TestGATE1991Regression(t *testing.T) {
	out, _ := run(t, Input{
		Density:   some(quantity.Density(78e3 / flow.Gravity)),
		Surfaces:  []Surface{{Area: 150 * cm2, Depth: 5 * cm}},
		BoxLength: some(30 * cm), BoxWidth: some(20 * cm), BoxHeight: some(5 * cm), BoxDensity: some(quantity.Density(16e3 / flow.Gravity)),
	})
	require.InDelta(t, 58.5, float64(out.CopeLift), 1e-9)
	require.InDelta(t, 48, float64(out.SandWeight.V), 1e-9)
	require.InDelta(t, 10.5, float64(out.Net.V), 1e-9)
}

func TestHeldAndSurge(t *testing.T) {
	in := pipe()
	in.Cope = some(quantity.Mass(450)) // 4414 N, over 4326 N at rest
	out, p := run(t, in)
	require.Equal(t, []string{"cope-surge"}, codes(p))
	require.Zero(t, float64(out.Needed.V))
	in.Weights = out.NeededSurge
	_, p = run(t, in)
	require.Empty(t, p.Findings, "the weights it asks for are enough")
	in = pipe()
	in.BoxLength, in.BoxWidth, in.BoxHeight = quantity.Opt[quantity.Length]{}, quantity.Opt[quantity.Length]{}, quantity.Opt[quantity.Length]{}
	out, p = run(t, in)
	require.Equal(t, []string{"cope-unknown"}, codes(p))
	require.False(t, out.Net.Known())
	require.Positive(t, float64(out.Together))
}

func codes(p *working.Paper) []string { return stepcheck.Codes(p) }

func TestFaults(t *testing.T) {
	_, err := Balance(Input{BoxLength: some(20 * cm)}, nil)
	var faults form.Faults
	require.ErrorAs(t, err, &faults)
	require.Len(t, faults, 3)
}

func random(r *rand.Rand) Input {
	all := alloy.All()
	in := Input{Alloy: some(all[r.Intn(len(all))].Code), Cope: some(quantity.Mass(500 * r.Float64())), Weights: some(quantity.Mass(200 * r.Float64())), Surge: some(quantity.Number(1 + r.Float64()))}
	for range 1 + r.Intn(4) {
		in.Surfaces = append(in.Surfaces, Surface{Area: quantity.Area(1e-5 + r.Float64()), Depth: quantity.Length(0.001 + r.Float64())})
	}
	for range r.Intn(3) {
		in.Cores = append(in.Cores, Core{Volume: quantity.Volume(1e-6 + 0.1*r.Float64()), Density: some(quantity.Density(300 + 5000*r.Float64()))})
	}
	return in
}

func TestProperties(t *testing.T) {
	r := rand.New(rand.NewSource(4))
	for range 300 {
		in := random(r)
		out, _ := run(t, in)
		require.GreaterOrEqual(t, out.Surged, out.Static)
		require.GreaterOrEqual(t, out.NeededSurge.V, out.Needed.V)
		require.GreaterOrEqual(t, float64(out.CoreLift), 0.0)
		blank, err := Balance(in, nil)
		require.NoError(t, err)
		require.Equal(t, out, blank)
		// Halving a surface into two of the same depth changes nothing.
		split := in
		half := in.Surfaces[0]
		half.Area /= 2
		if half.Area > 6e-6 {
			split.Surfaces = append([]Surface{half, half}, in.Surfaces[1:]...)
			again, _ := run(t, split)
			require.InEpsilon(t, float64(out.CopeLift), float64(again.CopeLift), 1e-12)
		}
	}
}

func FuzzBalance(f *testing.F) {
	f.Add(int64(1), 0.2, 0.1, 100.0)
	f.Fuzz(func(t *testing.T, draw int64, area, depth, cope float64) {
		in := random(rand.New(rand.NewSource(draw)))
		in.Surfaces[0] = Surface{Area: quantity.Area(area), Depth: quantity.Length(depth)}
		in.Cope = some(quantity.Mass(cope))
		p := &working.Paper{}
		out, err := Balance(in, p)
		if err != nil {
			require.IsType(t, form.Faults{}, err)
			return
		}
		require.Empty(t, stepcheck.Paper(p))
		require.True(t, quantity.Finite(float64(out.Surged)) && out.Static > 0)
	})
}

// P. N. Rao's pipe: core lift 856.7 N, cope lift 3469.5 N.
func ExampleBalance() {
	out, err := Balance(pipe(), nil)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("core %.1f N, cope %.1f N\n", float64(out.CoreLift), float64(out.CopeLift))
	// Output: core 856.7 N, cope 3469.5 N
}
