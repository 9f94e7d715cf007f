package weight_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/alloy"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/shape"
	"pourwright/calc/weight"
	"pourwright/calc/working"
	"pourwright/calc/working/stepcheck"
)

const (
	mm = quantity.Millimetre
	kg = quantity.Kilogram
)

func some[T any](v T) quantity.Opt[T] { return quantity.Some(v) }

// weigh runs a question, proves its steps, and checks that the answers do not
// depend on the paper.
func weigh(t testing.TB, in weight.Input) (weight.Output, *working.Paper) {
	t.Helper()
	return stepcheck.Run(t, weight.Weigh, in)
}

func codes(p *working.Paper) []string { return stepcheck.Codes(p) }

func finding(t testing.TB, p *working.Paper, code string) working.Finding {
	t.Helper()
	return stepcheck.Finding(t, p, code)
}

func box(a, b, c quantity.Length) shape.Solid {
	return shape.Solid{Form: shape.Plate, Length: a, Width: b, Thickness: c}
}

// TestPublished are the worked examples of books; more stand in
// testdata/checks/weight.json and run through the door.
func TestPublished(t *testing.T) {
	t.Run("Groover, riser example in ch. 10 (from memory): 4.7 cm", func(t *testing.T) {
		out, _ := weigh(t, weight.Input{
			Alloy: alloy.CodeCarbonSteel, Solids: []shape.Solid{box(125*mm, 75*mm, 20*mm)},
			Shrinkage: some(quantity.Ratio(0)), RiserFactor: some(quantity.Number(math.Sqrt(2.0 / 1.6))),
			Risers: []weight.Riser{{Place: some(weight.Side)}},
		})
		require.InDelta(t, 4.7, quantity.In(out.Risers[0].Diameter, "cm"), 0.05)
	})
	t.Run("Ghosh and Mallik, sample problem 2.9 (seen): aluminium cube of 15 cm", func(t *testing.T) {
		in := weight.Input{
			Alloy: alloy.CodeAluminium, Solids: []shape.Solid{box(150*mm, 150*mm, 150*mm)},
			Shrinkage: some(6.5 * quantity.Percent), RiserFactor: some(quantity.Number(1)),
			// Three times the shrinkage of the casting: a third, over the riser's own.
			Risers: []weight.Riser{{Place: some(weight.Side), Efficiency: some(quantity.Ratio(1.0/3 + 0.065))}},
		}
		out, _ := weigh(t, in)
		require.InDelta(t, 658, quantity.In(out.Risers[0].VolumeWanted, "cm^3"), 0.5)
		require.InDelta(t, 15, quantity.In(out.Risers[0].Diameter, "cm"), 0.05)
		in.Risers[0].Place, in.Risers[0].Ratio, in.Risers[0].Seat = some(weight.Top), some(quantity.Number(0.5)), some(225*quantity.SquareCentimetre)
		out, _ = weigh(t, in)
		require.InDelta(t, 18, quantity.In(out.Risers[0].Diameter, "cm"), 0.05)
		require.InDelta(t, 9, quantity.In(out.Risers[0].Height, "cm"), 0.05)
		require.InDelta(t, 2290, quantity.In(out.Risers[0].Volume, "cm^3"), 0.5)
	})
	t.Run("P. N. Rao, riser examples (from memory): steel slab 25 × 25 × 5 cm, side riser 12.86 cm", func(t *testing.T) {
		out, _ := weigh(t, weight.Input{Alloy: alloy.CodeCarbonSteel, Solids: []shape.Solid{box(250*mm, 250*mm, 50*mm)}, Risers: []weight.Riser{{Place: some(weight.Side)}}})
		require.InDelta(t, 12.86, quantity.In(out.Risers[0].ByModulus, "cm"), 0.005)
	})
	t.Run("J. Campbell, feed balance (from memory): 7 % at 14 % wants a riser as large as the casting", func(t *testing.T) {
		out, _ := weigh(t, weight.Input{Alloy: alloy.CodeAluminium, Solids: []shape.Solid{box(100*mm, 100*mm, 100*mm)}, Shrinkage: some(7 * quantity.Percent), Risers: []weight.Riser{{}}})
		require.InEpsilon(t, 1, float64(out.Risers[0].VolumeWanted/out.Volume), 1e-9)
	})
	t.Run("R. C. Creese (from memory): the side riser of least volume has H = D, the top riser H = D/2", func(t *testing.T) {
		for place, best := range map[weight.Place]float64{weight.Side: 1, weight.Top: 0.5} {
			volume := func(ratio float64) float64 {
				out, _ := weigh(t, weight.Input{
					Alloy: alloy.CodeCarbonSteel, Solids: []shape.Solid{box(100*mm, 100*mm, 40*mm)}, Shrinkage: some(quantity.Ratio(0)),
					Risers: []weight.Riser{{Place: some(place), Ratio: some(quantity.Number(ratio))}},
				})
				return float64(out.Risers[0].Volume)
			}
			require.Less(t, volume(best), volume(best*1.02))
			require.Less(t, volume(best), volume(best/1.02))
		}
	})
}

// TestRiserModulusMeetsTheSolid measures sized risers a second way, as the
// solids of package shape.
func TestRiserModulusMeetsTheSolid(t *testing.T) {
	for _, c := range []struct {
		shape weight.RiserShape
		place weight.Place
	}{{weight.RoundRiser, weight.Side}, {weight.RoundRiser, weight.Top}, {weight.Domed, weight.Side}, {weight.Domed, weight.Top}} {
		t.Run(fmt.Sprint(c), func(t *testing.T) {
			out, _ := weigh(t, weight.Input{
				Alloy: alloy.CodeAlSiMg, Solids: []shape.Solid{box(200*mm, 120*mm, 40*mm)},
				Risers: []weight.Riser{{Place: some(c.place), Shape: some(c.shape), Ratio: some(quantity.Number(1.3))}},
			})
			r := out.Risers[0]
			body, _ := form.Ready(shape.Solid{Form: shape.Cylinder, Diameter: r.Diameter, Height: r.Height})
			V, A := float64(body.Volume()), float64(body.Area())
			D := float64(r.Diameter)
			if c.shape == weight.Domed {
				foot, _ := form.Ready(shape.Solid{Form: shape.Cylinder, Diameter: r.Diameter, Height: r.Height - r.Diameter/2})
				dome, _ := form.Ready(shape.Solid{Form: shape.Cap, Diameter: r.Diameter, Height: r.Diameter / 2})
				V = float64(foot.Volume() + dome.Volume())
				A = float64(foot.Area()+dome.Area()) - math.Pi/2*D*D
			}
			if c.place == weight.Top {
				A -= math.Pi / 4 * D * D
			}
			require.InEpsilon(t, V, float64(r.Volume), 1e-9)
			require.InEpsilon(t, V/A, float64(r.Modulus), 1e-9)
		})
	}
}

// TestWater holds Kell's formula to the CRC Handbook's column, kg/m³ by °C,
// from memory.
func TestWater(t *testing.T) {
	for celsius, want := range map[float64]float64{4: 999.97, 10: 999.70, 15: 999.10, 20: 998.21, 25: 997.05, 30: 995.65, 40: 992.22, 50: 988.03, 60: 983.20} {
		t.Run(fmt.Sprintf("CRC Handbook of Chemistry and Physics, water at %g °C", celsius), func(t *testing.T) {
			out, _ := weigh(t, weight.Input{
				Alloy: alloy.CodeAluminium, Route: some(weight.DrownedCasting), DisplacedMass: some(quantity.Mass(1)),
				WaterTemperature: some(quantity.From[quantity.Temperature](celsius, "degC")),
			})
			require.InDelta(t, want, 1/float64(out.Volume), 0.0101)
		})
	}
}

func Example() {
	in := weight.Input{
		Alloy:       alloy.CodeCarbonSteel,
		Solids:      []shape.Solid{box(125*mm, 75*mm, 20*mm)},
		Shrinkage:   some(quantity.Ratio(0)),
		RiserFactor: some(quantity.Number(math.Sqrt(2.0 / 1.6))),
		Risers:      []weight.Riser{{Place: some(weight.Side)}},
	}
	out, err := weight.Weigh(in, nil)
	if err != nil {
		panic(err)
	}
	fmt.Println("modulus", out.Modulus.V)
	fmt.Println("riser", out.Risers[0].Diameter)
	// Output:
	// modulus 7.01 mm
	// riser 47 mm
}
