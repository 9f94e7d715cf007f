package core_test

import (
	"encoding/json"
	"fmt"
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/alloy"
	"pourwright/calc/core"
	"pourwright/calc/flow"
	"pourwright/calc/form"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/reply"
	"pourwright/calc/shape"
	"pourwright/calc/working"
	"pourwright/calc/working/stepcheck"
)

const (
	mm  = quantity.Millimetre
	cm  = quantity.Centimetre
	cm2 = quantity.SquareCentimetre
	cm3 = quantity.CubicCentimetre
)

func some[T any](v T) quantity.Opt[T] { return quantity.Some(v) }

// hold runs a question, proves its steps, and checks that the answers do not
// depend on the paper.
func hold(t testing.TB, in core.Input) (core.Output, *working.Paper) {
	t.Helper()
	return stepcheck.Run(t, core.Hold, in)
}

func codes(p *working.Paper) []string { return stepcheck.Codes(p) }

func finding(t testing.TB, p *working.Paper, code string) working.Finding {
	t.Helper()
	return stepcheck.Finding(t, p, code)
}

// perCM3 is a weight in N/cm³, as the Indian texts print densities.
func perCM3(n float64) quantity.Density { return quantity.Density(n * 1e6 / flow.Gravity) }

// bore is the core of P. N. Rao's cast-iron pipe, 10 cm across and 180 cm long.
func bore() core.Core {
	return core.Core{
		Name: "bore", By: some(core.FromSolids), Solids: []shape.Solid{{Form: shape.Cylinder, Diameter: 10 * cm, Height: 180 * cm}},
		Density: some(perCM3(0.0165)), Vent: core.OpenVent,
	}
}

func pipe(cores ...core.Core) core.Input {
	return core.Input{Alloy: alloy.CodeGreyIron, Density: some(perCM3(0.0771)), Cores: cores}
}

func TestPublished(t *testing.T) {
	t.Run("P. N. Rao, cast-iron pipe (seen): the core of 14137.2 cm³ lifts with 856.7 N", func(t *testing.T) {
		out, p := hold(t, pipe(bore()))
		require.InDelta(t, 14137.2, quantity.In(out.Cores[0].Volume, "cm^3"), 0.05)
		require.InDelta(t, 856.7, float64(out.Lift), 0.05)
		require.InDelta(t, 856.7, float64(out.ToCope), 0.05)
		finding(t, p, "core-floats")
	})
	t.Run("GATE (seen): core 100 dia × 100 mm, 2600 and 1600 kg/m³, 7.7 N", func(t *testing.T) {
		out, _ := hold(t, core.Input{Alloy: alloy.CodeAlSi, Density: some(quantity.Density(2600)), Cores: []core.Core{{
			By: some(core.FromSolids), Solids: []shape.Solid{{Form: shape.Cylinder, Diameter: 100 * mm, Height: 100 * mm}}, Density: some(quantity.Density(1600)), Vent: core.OpenVent}}})
		require.InDelta(t, 7.7, float64(out.Lift), 0.05)
	})
	// With 5 psi, 350 gf/cm² and 3.5 N/cm² the books mean the same strength.
	for text, area := range map[string]float64{"5 psi": 1, "3.5 N/cm²": 3.5 / 3.4474, "350 gf/cm²": 3.4323 / 3.4474} {
		t.Run("bearing strength of green sand, P. N. Rao ch. 3 and Heine, Loper and Rosenthal, from memory: "+text, func(t *testing.T) {
			c := bore()
			c.Prints = []core.Print{{Area: 100 * cm2}}
			out, _ := hold(t, pipe(c))
			require.InEpsilon(t, 344.74*area, float64(out.Cores[0].PrintHold), 0.02)
		})
	}
	t.Run("P. N. Rao, upright core wider than its print (from memory): (π/4)(D₁² − D²) h ρ g − V ρ_c g", func(t *testing.T) {
		c := core.Core{
			By: some(core.FromSolids), Solids: []shape.Solid{{Form: shape.Cylinder, Diameter: 20 * cm, Height: 30 * cm}}, Density: some(perCM3(0.0165)), Vent: core.OpenVent,
			Stand: some(core.Upright), FootArea: quantity.Area(math.Pi / 4 * 0.0144), FootDepth: 50 * cm,
			HeadArea: some(quantity.Area(math.Pi / 4 * 0.04)), HeadDepth: some(20 * cm),
		}
		out, _ := hold(t, pipe(c))
		want := math.Pi/4*(20*20-12*12)*50*0.0771 - math.Pi/4*20*20*30*0.0165
		require.InDelta(t, want, float64(out.Lift), 1e-6)
	})
	t.Run("Samuels and Beckermann (seen), gas of 1 % binder: 5.5 cm³/g cool is 23.7 cm³/g at 898 °C", func(t *testing.T) {
		in := pipe(bore())
		in.PourTime, in.GasTemperature = some(quantity.Time(10)), some(quantity.From[quantity.Temperature](898, "degC"))
		in.Cores[0].Gas = some(quantity.Number(0.01 * 0.82 / 33.3 * 22414)) // 82 % of the binder, 33.3 g/mol
		out, _ := hold(t, in)
		cool := quantity.In(out.Cores[0].GasVolume.V, "cm^3")
		hot := quantity.In(out.Cores[0].GasFlow.V, "cm^3/s") * 10
		require.InDelta(t, 5.5, float64(in.Cores[0].Gas.V), 0.05)
		require.InDelta(t, 23.7, hot/cool*float64(in.Cores[0].Gas.V), 0.05)
	})
	t.Run("P. N. Rao (from memory): 29 mm² of chaplet for each newton", func(t *testing.T) {
		out, _ := hold(t, pipe(bore()))
		require.InDelta(t, 29*856.71, quantity.In(out.Cores[0].ChapletArea, "mm^2"), 0.5)
	})
}

// TestRoundTheCore integrates the pressure of the metal over the skin of a
// round core lying down, and standing in its prints: the second road to the
// lift.
func TestRoundTheCore(t *testing.T) {
	const R, L, rho, head = 0.05, 0.4, 6950.0, 0.3 // m; head over the axis
	push := 0.0
	const n = 20000
	for i := range n {
		th := 2 * math.Pi * (float64(i) + 0.5) / n
		push += rho * flow.Gravity * (head - R*math.Sin(th)) * -math.Sin(th) * R * L * 2 * math.Pi / n
	}
	in := core.Input{Alloy: alloy.CodeGreyIron, Cores: []core.Core{{By: some(core.FromSolids), Solids: []shape.Solid{{Form: shape.Cylinder, Diameter: 2 * R, Height: L}}, Vent: core.OpenVent}}}
	out, _ := hold(t, in)
	require.InEpsilon(t, push, float64(out.Cores[0].Push), 1e-9)

	// Upright, a cone frustum: pressure on its skin alone, foot and head in
	// prints.
	const r1, r2, H, top = 0.03, 0.06, 0.2, 0.1
	push = 0
	for i := range n {
		z := H * (float64(i) + 0.5) / n // above the foot
		r := r1 + (r2-r1)*z/H
		push += rho * flow.Gravity * (top + H - z) * 2 * math.Pi * r * (r2 - r1) / H * H / n
	}
	in.Cores[0] = core.Core{
		By: some(core.FromSolids), Solids: []shape.Solid{{Form: shape.Frustum, Diameter: 2 * r1, TopDiameter: some(quantity.Length(2 * r2)), Height: H}}, Vent: core.OpenVent,
		Stand: some(core.Upright), FootArea: quantity.Area(math.Pi * r1 * r1), FootDepth: top + H, HeadArea: some(quantity.Area(math.Pi * r2 * r2)), HeadDepth: some(quantity.Length(top)),
	}
	out, _ = hold(t, in)
	require.InEpsilon(t, push, float64(out.Cores[0].Push), 1e-6)
}

func TestFindings(t *testing.T) {
	block := func(change func(*core.Input, *core.Core)) *working.Paper {
		c := core.Core{Name: "block", Volume: 1000 * cm3, Surface: some(600 * cm2), Vent: core.OpenVent, VentArea: some(20 * cm2), TopDepth: some(300 * mm),
			Prints: []core.Print{{Area: 60 * cm2, Count: some(4)}}}
		in := core.Input{Alloy: alloy.CodeGreyIron, PourTime: some(quantity.Time(20))}
		change(&in, &c)
		in.Cores = []core.Core{c}
		_, p := hold(t, in)
		return p
	}
	require.Empty(t, codes(block(func(*core.Input, *core.Core) {})), "a core that is well held and vented has nothing to say")
	for code, change := range map[string]func(*core.Input, *core.Core){
		"core-floats":      func(_ *core.Input, c *core.Core) { c.Prints = []core.Print{{Area: 60 * cm2, Hold: some(core.InDrag)}} },
		"print-small":      func(_ *core.Input, c *core.Core) { c.Prints[0].Count = some(1); c.Prints[0].Area = 10 * cm2 },
		"chaplets-unknown": func(_ *core.Input, c *core.Core) { c.Prints[0].Area = 1 * cm2; c.ChapletCount = some(3) },
		"chaplets-short": func(_ *core.Input, c *core.Core) {
			c.Prints[0].Area = 1 * cm2
			c.ChapletCount, c.ChapletArea = some(3), some(1*cm2)
		},
		"chaplets-carry": func(_ *core.Input, c *core.Core) {
			c.Prints[0].Area = 1 * cm2
			c.ChapletCount, c.ChapletArea = some(30), some(6*cm2)
		},
		"core-unsupported": func(_ *core.Input, c *core.Core) { c.Prints[0].Hold = some(core.InCope) },
		"core-sags": func(_ *core.Input, c *core.Core) {
			c.Prints = append(c.Prints, core.Print{Area: 60 * cm2})
			c.Prints[0].Hold = some(core.InCope)
			c.Prints[1].Area = 2 * cm2
		},
		"no-vent":           func(_ *core.Input, c *core.Core) { c.Vent = core.NoVent },
		"vent-small":        func(_ *core.Input, c *core.Core) { c.VentArea = some(1 * cm2) },
		"vent-wanted":       func(_ *core.Input, c *core.Core) { c.VentArea = quantity.Opt[quantity.Area]{} },
		"gas-no-time":       func(in *core.Input, _ *core.Core) { in.PourTime = quantity.Opt[quantity.Time]{} },
		"gas-unknown":       func(_ *core.Input, c *core.Core) { c.Sand = some(mouldstuff.GreenSand) },
		"gas-cold":          func(in *core.Input, c *core.Core) { in.Alloy = alloy.CodePewter },
		"top-depth-unknown": func(_ *core.Input, c *core.Core) { c.TopDepth = quantity.Opt[quantity.Length]{} },
		"gas-blows":         func(_ *core.Input, c *core.Core) { c.TopDepth = some(1 * mm) },
		"gas-may-blow":      func(_ *core.Input, c *core.Core) { c.TopDepth = some(12 * mm) },
		"bearing-high":      func(in *core.Input, _ *core.Core) { in.Bearing = some(50 * quantity.Kilopascal) },
		"closed-hollow":     func(_ *core.Input, c *core.Core) { c.Closed = true },
	} {
		t.Run(code, func(t *testing.T) {
			f := finding(t, block(change), code)
			require.NotContains(t, f.Text.String(), "%!")
			require.NotContains(t, f.Do.String(), "%!")
			require.False(t, f.Source.IsZero())
		})
	}
	require.Equal(t, working.Stop, finding(t, block(func(_ *core.Input, c *core.Core) { c.Vent = core.NoVent }), "no-vent").Level)
	require.Equal(t, working.Stop, finding(t, block(func(_ *core.Input, c *core.Core) { c.Prints[0].Area = 1 * cm2 }), "print-small").Level)
	f := finding(t, block(func(_ *core.Input, c *core.Core) { c.Prints[0].Area = 3 * cm2 }), "print-small")
	require.Equal(t, "The prints of block bear 42 N at 35 kPa, and the metal lifts it with 53 N: they are 12 cm² together and 15.1 cm² is wanted.", f.Text.String())
	require.Equal(t, "Make the prints that hold it down 15.1 cm² together, or take up 11 N with chaplets of 318 mm² bearing area in all.", f.Do.String())
}

func TestHollow(t *testing.T) {
	c := core.Core{Volume: 4000 * cm3, Count: some(2), Vent: core.OpenVent, Closed: true, Filler: some(quantity.Density(1500)), FillShare: some(quantity.Ratio(0.5)), Binder: some(mouldstuff.Furan)}
	out, _ := hold(t, core.Input{Alloy: alloy.CodeSiliconBronze, Cores: []core.Core{c, {Volume: 500 * cm3, Vent: core.OpenVent}}})
	require.InDelta(t, 8e-3, float64(out.HollowVolume), 1e-12)
	require.InDelta(t, 6, float64(out.FillerMass), 1e-9)
	require.InDelta(t, 8.5e-3, float64(out.CoresVolume), 1e-12)
	require.InDelta(t, float64(out.CoresMass), float64(out.SandMass+out.BinderMass), 1e-12)
	require.InDelta(t, 12.4*0.0105/1.0105, float64(out.Cores[0].Binder), 1e-9, "12.4 kg of cores with 1.05 % of furan on the sand")
}

func TestFaults(t *testing.T) {
	for field, change := range map[string]func(*core.Input){
		"bearing":             func(in *core.Input) { in.Bearing = some(343 * quantity.Kilopascal) },
		"cores[0].head_depth": func(in *core.Input) { in.Cores[0].HeadArea, in.Cores[0].HeadDepth = some(10*cm2), some(60*cm) },
		"cores[0].head_area": func(in *core.Input) {
			in.Cores[0].HeadArea, in.Cores[0].Drowned = some(10*cm2), some(quantity.Ratio(0.5))
		},
		"cores[0].vent": func(in *core.Input) { in.Cores[0].Vent = "" },
		"cores[0].solids": func(in *core.Input) {
			in.Cores[0].By, in.Cores[0].Solids = some(core.FromSolids), []shape.Solid{{Form: shape.Sphere, Diameter: 0.1}, {Form: shape.Sphere, Diameter: 0.1, Role: some(shape.Take)}}
		},
	} {
		t.Run(field, func(t *testing.T) {
			in := core.Input{Alloy: alloy.CodeGreyIron, Cores: []core.Core{{Volume: 100 * cm3, Vent: core.OpenVent, Stand: some(core.Upright), FootArea: 10 * cm2, FootDepth: 50 * cm}}}
			change(&in)
			_, err := core.Hold(in, nil)
			var faults form.Faults
			require.ErrorAs(t, err, &faults)
			require.Equal(t, field, faults[0].Field)
		})
	}
	// Hard sand may carry more than green sand.
	in := core.Input{Alloy: alloy.CodeGreyIron, Mould: some(mouldstuff.ResinSand), Bearing: some(343 * quantity.Kilopascal), Cores: []core.Core{{Volume: 100 * cm3, Vent: core.OpenVent}}}
	_, err := core.Hold(in, nil)
	require.NoError(t, err)
}

func anyCore(r *rand.Rand) core.Core {
	sands := mouldstuff.Sands()
	c := core.Core{Count: some(1 + r.Intn(4)), Sand: some(sands[r.Intn(len(sands))].Code), Vent: core.OpenVent, Drowned: some(quantity.Ratio(0.2 + 0.8*r.Float64())),
		TopDepth: some(quantity.Length(0.3 * r.Float64())), Permeability: some(quantity.Number(20 + 200*r.Float64())), VentArea: some(quantity.Area(1e-5 + 1e-3*r.Float64()))}
	if r.Intn(2) == 0 {
		c.By, c.Solids = some(core.FromSolids), []shape.Solid{{Form: shape.Cylinder, Diameter: quantity.Length(0.02 + 0.2*r.Float64()), Height: quantity.Length(0.02 + 0.5*r.Float64())}}
		if r.Intn(2) == 0 {
			c.Solids = append(c.Solids, shape.Solid{Form: shape.Cylinder, Role: some(shape.Take), Diameter: 0.01, Height: 0.01})
		}
	} else {
		c.Volume = quantity.Volume(1e-6 + 0.01*r.Float64())
		if r.Intn(2) == 0 {
			c.Surface = some(quantity.Area(6 * math.Cbrt(float64(c.Volume)*float64(c.Volume))))
		}
	}
	if r.Intn(4) == 0 {
		c.Stand, c.FootArea, c.FootDepth = some(core.Upright), quantity.Area(1e-4+1e-3*r.Float64()), quantity.Length(0.1+0.5*r.Float64())
	}
	for range r.Intn(4) {
		c.Prints = append(c.Prints, core.Print{Hold: some([]core.Bears{core.Parting, core.InCope, core.InDrag, core.Tied}[r.Intn(4)]), Area: quantity.Area(1e-5 + 5e-3*r.Float64()), Volume: some(quantity.Volume(1e-4 * r.Float64()))})
	}
	if r.Intn(3) == 0 {
		c.Vent = core.NoVent
	}
	if r.Intn(3) == 0 {
		c.ChapletCount, c.ChapletArea, c.ChapletLoad = some(r.Intn(9)), some(quantity.Area(1e-5+1e-3*r.Float64())), some(quantity.Force(10+100*r.Float64()))
	}
	if r.Intn(3) == 0 {
		c.Closed, c.Filler = true, some(quantity.Density(20+3000*r.Float64()))
	}
	return c
}

func anyInput(r *rand.Rand) core.Input {
	all := alloy.All()
	in := core.Input{Alloy: all[r.Intn(len(all))].Code}
	if r.Intn(4) > 0 {
		in.PourTime = some(quantity.Time(2 + 60*r.Float64()))
	}
	for range 1 + r.Intn(4) {
		in.Cores = append(in.Cores, anyCore(r))
	}
	return in
}

// worst is the gravest level of a core's findings, and -1 without any.
func worst(p *working.Paper) int {
	if l, ok := working.Worst(p.Findings); ok {
		return int(l)
	}
	return -1
}

func count(p *working.Paper, level working.Level) (n int) {
	for _, f := range p.Findings {
		if f.Level == level {
			n++
		}
	}
	return n
}

// TestBetterNeverWorse improves one thing at a time.
func TestBetterNeverWorse(t *testing.T) {
	r := rand.New(rand.NewSource(1))
	for range 400 {
		in := anyInput(r)
		before, p := hold(t, in)
		for name, better := range map[string]func(*core.Core){
			"vent": func(c *core.Core) {
				if c.Vent == core.OpenVent {
					c.VentArea.V *= 2
				} else {
					c.Vent = core.OpenVent
					c.VentArea = some(quantity.Area(1))
					c.VentDistance = some(1 * mm)
					c.Permeability = some(quantity.Number(2000))
				}
			},
			"prints": func(c *core.Core) {
				c.Prints = append([]core.Print{}, c.Prints...)
				for i := range c.Prints {
					c.Prints[i].Area *= 2
				}
			},
			"chaplets": func(c *core.Core) { c.ChapletCount.V++ },
		} {
			after := in
			after.Cores = append([]core.Core{}, in.Cores...)
			if name == "chaplets" && !after.Cores[0].ChapletCount.Known() {
				continue
			}
			better(&after.Cores[0])
			out, q := hold(t, after)
			require.LessOrEqual(t, count(q, working.Stop), count(p, working.Stop), name)
			require.LessOrEqual(t, worst(q), max(worst(p), int(working.Mind)), name)
			a, b := before.Cores[0], out.Cores[0]
			require.LessOrEqual(t, b.Unsupported, a.Unsupported, name)
			if name != "chaplets" {
				require.LessOrEqual(t, b.ChapletArea, a.ChapletArea, name)
			}
			if a.GasHigh.Known() {
				require.LessOrEqual(t, b.GasHigh.V, a.GasHigh.V, name)
				require.LessOrEqual(t, b.GasLow.V, b.GasHigh.V, name)
			}
			require.InEpsilon(t, float64(before.CoresVolume), float64(out.CoresVolume), 1e-12)
		}
	}
}

// TestScale makes everything k times as large: lifts by the cube, print areas
// by the cube, for the strength of the sand stays.
func TestScale(t *testing.T) {
	const k = 1.9
	a, _ := hold(t, pipe(bore()))
	c := bore()
	c.Solids = []shape.Solid{{Form: shape.Cylinder, Diameter: k * 10 * cm, Height: k * 180 * cm}}
	b, _ := hold(t, pipe(c))
	require.InEpsilon(t, k*k*k, float64(b.Lift/a.Lift), 1e-12)
	require.InEpsilon(t, k*k*k, float64(b.Cores[0].PrintWanted/a.Cores[0].PrintWanted), 1e-12)
	require.InEpsilon(t, k*k*k, float64(b.CoresMass/a.CoresMass), 1e-12)
}

// TestSumsAndSigns: totals are the sums of the entries, nothing is negative,
// and what holds the core down is never both kinds of load at once.
func TestSumsAndSigns(t *testing.T) {
	r := rand.New(rand.NewSource(2))
	for range 300 {
		in := anyInput(r)
		out, _ := hold(t, in)
		lift, volume, mass := 0.0, 0.0, 0.0
		for i, c := range out.Cores {
			n := float64(in.Cores[i].Count.Or(1))
			lift += n * float64(c.Lift)
			volume += n * float64(c.Volume)
			mass += float64(c.MassAll)
			require.False(t, c.Lift > 0 && c.Sink > 0)
			require.InDelta(t, float64(c.Push-c.Weight), float64(c.Lift-c.Sink), 1e-6)
			require.LessOrEqual(t, c.Unsupported, c.Lift)
			for _, v := range []float64{float64(c.Lift), float64(c.Sink), float64(c.Binder), float64(c.PrintWanted), float64(c.ChapletArea), float64(c.GasFlow.V), float64(c.VentHigh.V), float64(c.Hollow), float64(c.Filler)} {
				require.True(t, quantity.Finite(v) && v >= 0)
			}
			require.LessOrEqual(t, c.VentWanted.V, c.VentHigh.V)
			require.LessOrEqual(t, c.Passes, c.Lift)
		}
		require.InDelta(t, lift, float64(out.Lift), 1e-9*(1+lift))
		require.InEpsilon(t, volume, float64(out.CoresVolume), 1e-9)
		require.InEpsilon(t, mass, float64(out.CoresMass), 1e-9)
		require.LessOrEqual(t, out.ToCope, out.Lift)
		require.GreaterOrEqual(t, float64(out.SandMass), 0.0)
	}
}

// TestPrintsAsWanted are just large enough.
func TestPrintsAsWanted(t *testing.T) {
	out, _ := hold(t, pipe(bore()))
	c := bore()
	c.Prints = []core.Print{{Area: out.Cores[0].PrintWanted}}
	_, p := hold(t, pipe(c))
	require.NotContains(t, codes(p), "print-small")
	c.Prints[0].Area *= 0.999
	_, p = hold(t, pipe(c))
	require.Contains(t, codes(p), "print-small")
	c.ChapletArea = some(5 * cm2)
	out, _ = hold(t, pipe(c))
	c.ChapletCount = some(int(out.Cores[0].Chaplets.V))
	_, p = hold(t, pipe(c))
	require.Contains(t, codes(p), "chaplets-carry")
}

// TestHeldInDrag: a core wired down in the drag passes nothing to the cope.
func TestHeldInDrag(t *testing.T) {
	c := bore()
	c.Prints = []core.Print{{Hold: some(core.Tied), Area: 300 * cm2}}
	out, _ := hold(t, pipe(c))
	require.Zero(t, float64(out.ToCope))
	require.Positive(t, float64(out.Lift))
	c.Prints = append(c.Prints, core.Print{Hold: some(core.InCope), Area: 1 * cm2})
	out, _ = hold(t, pipe(c))
	require.Equal(t, out.Lift, out.ToCope)
}

// FuzzHold feeds whatever JSON there is: the answer is faults or finite
// numbers, never a panic. The writer panics on a number that is not finite.
func FuzzHold(f *testing.F) {
	f.Add([]byte(`{"alloy":"grey-iron","pour_time":"20 s","cores":[{"volume":"1 L","surface":"6 dm2","vent":"open","top_depth":"100 mm","prints":[{"area":"10 cm2"}],"chaplet_count":2,"chaplet_area":"2 cm2"}]}`))
	f.Add([]byte(`{"alloy":"al-si","pour_time":"0.5 s","bearing":"2 kPa","cores":[{"by":"solids","solids":[{"form":"tube","diameter":"100","inner":"50","height":"20"}],"vent":"none","stand":"upright","foot_area":"1 cm2","foot_depth":"10 m","closed":"yes","filler":"1 g/cm3"}]}`))
	f.Add([]byte(`{"alloy":"pewter","pour_temperature":"550 °C","gas_temperature":"0 °C","pour_time":"1 s","cores":[{"volume":"0.1 cm3","surface":"100 m2","gas":100,"vent":"open","vent_area":"1 mm2","permeability":1}]}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		in, _ := form.Decode[core.Input](data, quantity.US)
		p := &working.Paper{}
		out, err := core.Hold(in, p)
		if err != nil {
			require.IsType(t, form.Faults{}, err)
			return
		}
		w := &reply.Writer{System: quantity.US, Working: true}
		w.Answers(out, p)
		if !json.Valid(w.Bytes()) {
			t.Fatal("not JSON")
		}
		w.Findings(p.Findings)
		w.Steps(p.Steps)
	})
}

// P. N. Rao's cast-iron pipe: the core lifts with 856.7 N.
func ExampleHold() {
	out, err := core.Hold(pipe(bore()), nil)
	if err != nil {
		fmt.Println(err)
		return
	}
	c := out.Cores[0]
	fmt.Printf("%s of %.1f cm³ lifts with %.1f N and wants %v of print\n", c.Name, quantity.In(c.Volume, "cm^3"), float64(c.Lift), c.PrintWanted)
	// Output: bore of 14137.2 cm³ lifts with 856.7 N and wants 245 cm² of print
}
