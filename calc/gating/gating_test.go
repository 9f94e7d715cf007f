package gating

import (
	"fmt"
	"math"
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
	mm  = quantity.Millimetre
	mm2 = quantity.SquareMillimetre
)

func some[T any](v T) quantity.Opt[T] { return quantity.Some(v) }

func run(t *testing.T, in Input) (Output, *working.Paper) {
	t.Helper()
	return stepcheck.Run(t, Size, in)
}

func codes(p *working.Paper) map[string]working.Level { return stepcheck.Levels(p) }

// iron is 30 kg of grey iron in 12 s at the parting.
func iron() Input {
	return Input{
		Alloy: alloy.CodeGreyIron, Poured: some(quantity.Mass(30)), Time: some(quantity.Time(12)),
		Height: 200 * mm, Cavity: 100 * mm, Cope: some(50 * mm), RunnerLength: some(300 * mm), IngateLength: some(30 * mm),
	}
}

func TestPublished(t *testing.T) {
	t.Run("Groover, ch. 10 problem: 1 L/s, 175 mm, foot of 540 mm²", func(t *testing.T) {
		out, _ := run(t, Input{Alloy: alloy.CodeAluminium, Flow: some(quantity.LitrePerSecond), Height: 175 * mm, Gate: some(flow.Top), Discharge: some(quantity.Number(1))})
		require.InDelta(t, 540, quantity.In(out.ChokeIdeal, "mm²"), 0.5)
		require.InDelta(t, 540, quantity.In(out.Choke, "mm²"), 0.5)
	})
	t.Run("GATE 2007: 650 mm² at the top, 6.5e5 mm³/s, 200 mm, g 10 m/s², foot of 290.7 mm²", func(t *testing.T) {
		out, _ := run(t, Input{Alloy: alloy.CodeAluminium, Flow: some(0.65 * quantity.LitrePerSecond), Height: 300 * mm, Gate: some(flow.Top), SprueLength: some(200 * mm),
			SprueTop: some(650 * mm2), Gravity: some(quantity.Number(10))})
		require.InDelta(t, 290.7, quantity.In(out.FallFoot.V, "mm²"), 0.05)
	})
	t.Run("Rao, ch. 4: parting gate, h 200, p 50, c 100, head 187.5 mm", func(t *testing.T) {
		out, _ := run(t, iron())
		require.InDelta(t, 187.5, quantity.In(out.Head, "mm"), 0.05)
	})
	t.Run("Torricelli and continuity: basin 50 of 200 mm, the sprue's top twice its foot", func(t *testing.T) {
		in := iron()
		in.BasinDepth, in.Entry = some(50*mm), some(Rounded)
		out, _ := run(t, in)
		require.InDelta(t, 2, float64(out.Taper), 1e-12)
	})
}

// loss is the coefficient of one fitting as the door gives it.
func loss(t *testing.T, f Fitting) float64 {
	in := iron()
	in.Fittings = []Fitting{f}
	out, _ := run(t, in)
	name := f.Name
	for _, l := range out.Losses {
		if l.Name == name {
			return float64(l.Coefficient.V)
		}
	}
	t.Fatalf("no loss %s in %v", name, out.Losses)
	return 0
}

// J. Weisbach's tables as hydraulics texts reprint them, from memory.
func TestWeisbach(t *testing.T) {
	for _, c := range []struct{ angle, zeta, within float64 }{
		{40, 0.139, 0.0005}, {60, 0.364, 0.0005}, {80, 0.740, 0.0005},
		{90, 0.984, 0.001}, // 0.9846: the table cuts the last digit off
		{100, 1.260, 0.0005}, {110, 1.556, 0.0005}, {120, 1.861, 0.0005}, {130, 2.158, 0.0005}, {140, 2.431, 0.0005},
	} {
		t.Run(fmt.Sprintf("Weisbach, elbow of %v°, from memory", c.angle), func(t *testing.T) {
			e := loss(t, Fitting{Name: "elbow", Place: InARunner, Fit: Elbow, Angle: some(quantity.Angle(c.angle) * quantity.Degree)})
			require.InDelta(t, c.zeta, e, c.within)
		})
	}
	for i, zeta := range []float64{0.131, 0.138, 0.158, 0.206, 0.294, 0.440, 0.661, 0.977, 1.408, 1.978} {
		r := float64(i+1) / 10
		t.Run(fmt.Sprintf("Weisbach, quarter bend with d/2R %.1f, from memory", r), func(t *testing.T) {
			e := loss(t, Fitting{Name: "bend", Place: InSprue, Fit: Bend, Radius: some(quantity.Number(r))})
			require.InDelta(t, zeta, e, 0.0006)
		})
	}
}

// Blasius, from memory: Darcy's factor of a smooth pipe at Re 10⁵ is 0.0178,
// four times Fanning's; laminar flow has 64/Re.
func TestFriction(t *testing.T) {
	require.InDelta(t, 0.0178, 4*friction(1e5), 0.00005)
	require.InDelta(t, 64.0/1000, 4*friction(1000), 1e-12)
	last := math.Inf(1)
	for re := 1.0; re < 1e7; re *= 1.01 {
		require.Less(t, friction(re), last, "falls without a jump")
		last = friction(re)
	}
}

// Borda and Carnot: a sudden doubling of the area loses a quarter of the speed
// head, into a wide room all of it.
func TestBorda(t *testing.T) {
	require.Equal(t, 0.25, wide(1, 2))
	require.InDelta(t, 1, wide(1, 1e9), 1e-8)
	in := iron()
	in.Ratio, in.Sprue, in.Runner, in.Gates, in.Well = some(OwnRatio), 1, 2, 2, some(false)
	out, _ := run(t, in)
	require.Equal(t, "Widens into the runner", out.Losses[3].Name)
	require.InDelta(t, 0.25, float64(out.Losses[3].Coefficient.V), 1e-12)
}

func TestSuggested(t *testing.T) {
	for code, want := range map[alloy.Code]string{
		alloy.CodeGreyIron: "1 : 4 : 4", alloy.CodeDuctileIron: "1.15 : 1.1 : 1", alloy.CodeCarbonSteel: "1 : 3 : 3", alloy.CodeAlSiMg: "1 : 6 : 6",
		alloy.CodeAluminiumBronze: "1 : 2.88 : 4.8", alloy.CodeTinBronze: "1 : 1 : 3", alloy.CodePewter: "1 : 6 : 6",
	} {
		in := iron()
		in.Alloy = code
		out, _ := run(t, in)
		require.Equal(t, want, out.Ratio, code)
	}
	seen := map[Ratio]bool{}
	for _, l := range lists {
		for _, r := range l.ratios {
			seen[find(r).code] = true
		}
	}
	require.Len(t, seen, len(series), "every series belongs to a metal")
}

func TestFindings(t *testing.T) {
	for name, c := range map[string]struct {
		code  string
		level working.Level
		spoil func(in *Input)
	}{
		"pressurised iron":        {"ingate-fast", working.Stop, func(in *Input) { in.Ratio = some(Ratio("4:3:2")) }},
		"own limit":               {"ingate-fast", working.Mind, func(in *Input) { in.IngateSpeed = some(quantity.Speed(0.43)) }},
		"grey iron goes faster":   {"grey-iron-speed", working.Note, func(in *Input) { in.Ratio = some(Ratio("1:2:2")) }},
		"stepped":                 {"lowest-ingates-fast", working.Mind, func(in *Input) { in.Levels, in.Gate = some(3), some(flow.Bottom) }},
		"straight sprue":          {"sprue-sucks-air", working.Mind, func(in *Input) { in.Untapered = true; in.BasinDepth = some(40 * mm) }},
		"narrow top":              {"sprue-sucks-air", working.Mind, func(in *Input) { in.SprueTop = some(250 * mm2) }},
		"rounded, barely tapered": {"sprue-foot-wide", working.Mind, func(in *Input) { in.SprueTop, in.BasinDepth, in.Entry = some(330*mm2), some(90*mm), some(Rounded) }},
		"a jet into a wide way":   {"way-not-full", working.Mind, func(in *Input) { in.Choke, in.Ratio = some(InRunner), some(Ratio("1:2:4")) }},
		"a little of a jet":       {"way-not-full", working.Note, func(*Input) {}},
		"shallow basin":           {"basin-shallow", working.Mind, func(in *Input) { in.BasinDepth = some(20 * mm) }},
		"another metal's ratio":   {"ratio-of-another-metal", working.Note, func(in *Input) { in.Ratio = some(Ratio("1:6:6")) }},
		"no list":                 {"ratio-not-listed", working.Note, func(in *Input) { in.Alloy = alloy.CodePewter }},
		"other family":            {"discharge-family", working.Note, func(in *Input) { in.Discharge = some(quantity.Number(0.4)) }},
		"lengths unknown":         {"friction-not-counted", working.Note, func(in *Input) { in.RunnerLength = quantity.Opt[quantity.Length]{} }},
		"long runner":             {"friction-smooth", working.Note, func(in *Input) { in.RunnerLength, in.Ratio = some(quantity.Length(6)), some(Ratio("1:1:1")) }},
		"far too many turns":      {"losses-unusual", working.Mind, func(in *Input) { in.Fittings = []Fitting{{Place: InSprue, Fit: OwnLoss, Loss: 9}} }},
		"hyperbola":               {"sprue-sides-straight", working.Note, func(in *Input) { in.BasinDepth, in.Entry = some(30*mm), some(Rounded) }},
		"one thick ingate": {"ingate-reynolds", working.Mind, func(in *Input) {
			in.Ingates, in.IngateForm, in.Poured = some(1), some(quantity.Number(1)), some(quantity.Mass(60))
		}},
		"always": {"ratio-not-speed", working.Note, func(*Input) {}},
	} {
		t.Run(name, func(t *testing.T) {
			in := iron()
			c.spoil(&in)
			_, p := run(t, in)
			level, found := codes(p)[c.code]
			require.True(t, found, "%v", codes(p))
			require.Equal(t, c.level, level)
			for _, f := range p.Findings {
				require.False(t, f.Source.IsZero(), f.Code)
				require.True(t, f.Level == working.Note || !f.Do.IsZero(), f.Code)
			}
		})
	}
	_, p := run(t, iron())
	for code, level := range codes(p) {
		require.Equal(t, working.Note, level, "the suggested gating has nothing to mind: %s", code)
	}
}

// TestDoAsTold: what a finding says to do makes it go away.
func TestDoAsTold(t *testing.T) {
	in := iron()
	in.Untapered, in.BasinDepth = true, some(40*mm)
	out, p := run(t, in)
	require.Contains(t, codes(p), "sprue-sucks-air")
	in.Untapered = false
	in.SprueTop = some(quantity.Area(float64(out.StartFlow) * math.Sqrt(1.505/(2*9.81*0.04)) * 1.000001))
	_, p = run(t, in)
	require.NotContains(t, codes(p), "sprue-sucks-air")
}

func TestFaults(t *testing.T) {
	for name, c := range map[string]struct {
		field string
		spoil func(in *Input)
	}{
		"no flow":         {"poured_mass", func(in *Input) { in.Poured = quantity.Opt[quantity.Mass]{} }},
		"no time":         {"pour_time", func(in *Input) { in.Time = quantity.Opt[quantity.Time]{} }},
		"cope too high":   {"cope_height", func(in *Input) { in.Cope = some(110 * mm) }},
		"cavity too high": {"sprue_height", func(in *Input) { in.Gate, in.Cavity = some(flow.Bottom), 200*mm }},
		"basin too deep":  {"basin_depth", func(in *Input) { in.BasinDepth = some(200 * mm) }},
		"top too narrow":  {"sprue_top", func(in *Input) { in.SprueTop = some(150 * mm2) }},
		"own ratio":       {"sprue_share", func(in *Input) { in.Ratio = some(OwnRatio) }},
		"nothing":         {"alloy", func(in *Input) { *in = Input{} }},
	} {
		t.Run(name, func(t *testing.T) {
			in := iron()
			c.spoil(&in)
			_, err := Size(in, nil)
			var faults form.Faults
			require.ErrorAs(t, err, &faults)
			require.Equal(t, c.field, faults[0].Field)
		})
	}
}

func random(r *rand.Rand) Input {
	all := alloy.All()
	in := Input{Alloy: all[r.Intn(len(all))].Code, Height: quantity.Length(0.05 + r.Float64()), Entry: some([]Entry{Sharp, Rounded}[r.Intn(2)]), Well: some(r.Intn(2) == 0)}
	in.Flow = some(quantity.VolumeFlow(math.Exp(math.Log(1e-6) + r.Float64()*math.Log(1e4))))
	in.Gate = some([]flow.Position{flow.Top, flow.Parting, flow.Bottom}[r.Intn(3)])
	in.Cavity = in.Height * quantity.Length(0.05+0.9*r.Float64())
	in.Cope = some(in.Cavity * quantity.Length(r.Float64()))
	if r.Intn(2) == 0 {
		in.Ratio = some(series[r.Intn(len(series))].code)
	} else {
		in.Ratio, in.Sprue, in.Runner, in.Gates = some(OwnRatio), quantity.Number(0.2+5*r.Float64()), quantity.Number(0.2+5*r.Float64()), quantity.Number(0.2+5*r.Float64())
	}
	if r.Intn(3) == 0 {
		in.Choke = some(InRunner)
	}
	if r.Intn(3) == 0 {
		in.BasinDepth = some(in.Height * quantity.Length(0.1+0.8*r.Float64()))
	}
	if r.Intn(2) == 0 {
		in.RunnerLength, in.IngateLength = some(quantity.Length(2*r.Float64()+0.01)), some(quantity.Length(0.3*r.Float64()+0.01))
	}
	in.Untapered = r.Intn(4) == 0
	if r.Intn(4) == 0 { // wide enough to pass the flow, narrow or wide for the rest
		in.SprueTop = some(quantity.Area(float64(in.Flow.V) / math.Sqrt(float64(in.Height)-float64(in.Cope.V)*0.999) * (1 + 3*r.Float64())))
	}
	in.Form = some([]Form{Round, Square}[r.Intn(2)])
	in.Runners, in.Ingates, in.Levels = some(1+r.Intn(4)), some(1+r.Intn(9)), some(1+r.Intn(3))
	for range r.Intn(3) {
		in.Fittings = append(in.Fittings, Fitting{Place: []Place{InSprue, InARunner, InAnIngate}[r.Intn(3)], Fit: []Fit{Elbow, Bend, OwnLoss}[r.Intn(3)], Loss: 0.4, Count: some(1 + r.Intn(2))})
	}
	return in
}

func TestProperties(t *testing.T) {
	r := rand.New(rand.NewSource(11))
	jets, full := 0, 0
	for range 400 {
		in := random(r)
		out, _ := run(t, in)
		blank, err := Size(in, nil)
		require.NoError(t, err)
		require.Equal(t, out, blank, "the paper changes nothing")

		// Energy: the heads that the way takes are the head that drives it.
		sum := 0.0
		for _, l := range out.Losses {
			require.GreaterOrEqual(t, float64(l.Head), 0.0, l.Name)
			sum += float64(l.Head)
		}
		require.InEpsilon(t, float64(out.ExactHead), sum, 1e-9)
		// Continuity in every stretch.
		for _, c := range out.Channels {
			require.InEpsilon(t, float64(out.Flow), float64(c.Area)*float64(c.Speed), 1e-12)
			require.GreaterOrEqual(t, float64(c.Start), float64(c.Speed)*(1-1e-12))
		}
		require.GreaterOrEqual(t, float64(out.Choke), float64(out.ChokeIdeal)*(1-1e-12))
		require.InEpsilon(t, float64(out.ChokeIdeal)/float64(out.Choke), float64(out.Discharge), 1e-9)
		require.LessOrEqual(t, float64(out.ExactHead), float64(out.Head)*(1+1e-12))
		if out.RunsFull {
			full++
		} else {
			jets++
		}

		higher := in
		higher.Height *= 1.1
		again, _ := run(t, higher)
		require.Less(t, float64(again.ChokeIdeal), float64(out.ChokeIdeal), "more head never wants a wider choke")
		if !in.BasinDepth.Known() { // which then is another share of the head
			require.Less(t, float64(again.Choke), float64(out.Choke)*1.0001)
		}
		more := in
		more.Flow.V *= 1.2
		again, _ = run(t, more)
		require.Greater(t, float64(again.Choke), float64(out.Choke), "more flow never wants a narrower choke")
		require.Greater(t, float64(again.Mass), float64(out.Mass))
		// More to lose never helps.
		turned := in
		turned.Fittings = append([]Fitting{{Place: InSprue, Fit: Elbow}}, in.Fittings...)
		again, _ = run(t, turned)
		require.GreaterOrEqual(t, float64(again.Choke), float64(out.Choke)*(1-1e-12))
		// Ten times thinner metal loses no more.
		thin := in
		thin.Viscosity = some(out.Viscosity / 10)
		again, _ = run(t, thin)
		require.LessOrEqual(t, float64(again.Choke), float64(out.Choke)*(1+1e-9))
	}
	require.Positive(t, jets)
	require.Positive(t, full)
}

// TestAnotherRoad walks the energy line of a simple way by hand: a pressurised
// way without well, friction or turns but those it always has.
func TestAnotherRoad(t *testing.T) {
	in := iron()
	in.Ratio, in.Sprue, in.Runner, in.Gates = some(OwnRatio), 2, 1.5, 1
	in.Well, in.Branch, in.Viscosity = some(false), some(Straight), some(quantity.Viscosity(1e-4))
	in.RunnerLength, in.IngateLength = quantity.Opt[quantity.Length]{}, quantity.Opt[quantity.Length]{}
	out, _ := run(t, in)
	A := float64(out.Choke)
	Q := float64(out.Flow)
	v := func(share float64) float64 { return Q / (share * A) }
	top := Q / float64(out.SprueTop)
	D := float64(out.SprueFootSize)
	re := float64(out.FlowRate) / Q * v(2) * D / 1e-4
	hc, ht := float64(out.BasinDepth), float64(out.BasinDepth+out.SprueLength)
	// Friction along the stream's own taper, by steps.
	sprue, n := 0.0, 4000
	for i := range n {
		z := hc + (ht-hc)*(float64(i)+0.5)/float64(n)
		vz, dz := v(2)*math.Sqrt(z/ht), D*math.Pow(ht/z, 0.25)
		sprue += 4 * 0.079 * math.Pow(re, -0.25) * (ht - hc) / float64(n) / dz * vz * vz
	}
	e := 0.505*top*top + sprue + 0.9846*v(1.5)*v(1.5) + 0.5*(1-1.5/2)*v(1.5)*v(1.5) + 0.5*(1-1/1.5)*v(1)*v(1) + v(1)*v(1)
	require.InEpsilon(t, 2*9.81*float64(out.ExactHead), e, 1e-5)
}

func TestGatingRegression(t *testing.T) {
	out, _ := run(t, iron())
	require.InDelta(t, 210.5, quantity.In(out.Choke, "mm²"), 0.5)
	require.InDelta(t, 0.894, float64(out.Discharge), 0.0005)
	require.InDelta(t, 0.427, float64(out.IngateSpeed), 0.0005)
}

func FuzzSize(f *testing.F) {
	f.Add(int64(1), 0.001, 0.2, 0.05, 1e-3)
	f.Add(int64(2), 1e-7, 4.9, 0.9, 0.1)
	f.Fuzz(func(t *testing.T, draw int64, q, h, basin, mu float64) {
		in := random(rand.New(rand.NewSource(draw)))
		in.Flow, in.Height, in.BasinDepth, in.Viscosity = some(quantity.VolumeFlow(q)), quantity.Length(h), some(quantity.Length(basin)), some(quantity.Viscosity(mu))
		p := &working.Paper{}
		out, err := Size(in, p)
		if err != nil {
			require.IsType(t, form.Faults{}, err)
			return
		}
		require.Empty(t, stepcheck.Paper(p))
		require.True(t, quantity.Finite(float64(out.Mass)) && out.Choke > 0 && out.Discharge > 0)
	})
}

func BenchmarkSize(b *testing.B) {
	in := iron()
	for b.Loop() {
		if _, err := Size(in, nil); err != nil {
			b.Fatal(err)
		}
	}
}

// Groover's sprue of 175 mm that has to pass 1 L/s wants a foot of 540 mm².
func ExampleSize() {
	out, err := Size(Input{Alloy: alloy.CodeAluminium, Flow: some(quantity.LitrePerSecond), Height: 175 * mm, Gate: some(flow.Top), Discharge: some(quantity.Number(1))}, nil)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f mm²\n", quantity.In(out.SprueFoot, "mm²"))
	// Output: 540 mm²
}
