package filling

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math"
	"math/rand"
	"os"
	"os/exec"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/alloy"
	"pourwright/calc/form"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/solve"
	"pourwright/calc/working"
	"pourwright/calc/working/stepcheck"
)

const (
	mm  = quantity.Millimetre
	cm  = quantity.Centimetre
	cm2 = quantity.SquareCentimetre
)

func some[T any](v T) quantity.Opt[T] { return quantity.Some(v) }

func degC(v float64) quantity.Temperature { return quantity.From[quantity.Temperature](v, "degC") }

func run1(t testing.TB, in Input) (Output, *working.Paper) {
	t.Helper()
	return stepcheck.Run(t, Fill, in)
}

func codes(p *working.Paper) map[string]working.Level { return stepcheck.Levels(p) }

// ghosh is A. Ghosh and A. K. Mallik's mould of 50 × 25 × 15 cm with a gate of
// 5 cm², the metal in the basin as high as the mould over its bottom gate.
func ghosh() Input {
	return Input{Alloy: alloy.CodeGreyIron, Slices: []Slice{{Height: 15 * cm, Area: 50 * 25 * cm2}}, Level: 15 * cm,
		Ingates: []Ingate{{Area: 5 * cm2}}, Discharge: some(quantity.Number(1))}
}

// stepped is a mould with three levels of ingates behind a choke.
func stepped() Input {
	return Input{Alloy: alloy.CodeGreyIron,
		Slices: []Slice{{Height: 10 * cm, Area: 500 * cm2}, {Height: 10 * cm, Area: 300 * cm2, Top: some(100 * cm2)}, {Height: 10 * cm, Area: 400 * cm2}},
		Level:  40 * cm, Choke: some(4 * cm2),
		Ingates:         []Ingate{{Area: 3 * cm2}, {Area: 3 * cm2, Height: some(10 * cm)}, {Area: 4 * cm2, Height: some(20 * cm)}},
		Surfaces:        []Surface{{Area: 400 * cm2, Height: some(30 * cm)}, {Area: 200 * cm2, Height: some(10 * cm)}, {Name: "runner", Area: 50 * cm2, By: some(ByGating)}},
		PourTemperature: some(degC(1400)), Thin: some(12 * mm), Sand: some(mouldstuff.GreenSand), Wall: some(15 * mm)}
}

func TestPublished(t *testing.T) {
	t.Run("Ghosh and Mallik, ch. 2: top gate 21.86 s", func(t *testing.T) {
		in := ghosh()
		in.Level, in.Ingates[0].Height = 30*cm, some(15*cm)
		out, _ := run1(t, in)
		require.InDelta(t, 21.86, float64(out.FillTime), 0.005)
	})
	t.Run("Ghosh and Mallik, ch. 2: bottom gate 43.71 s", func(t *testing.T) {
		out, _ := run1(t, ghosh())
		// The book cuts off; its own figures give 43.719.
		require.InDelta(t, 43.71, float64(out.FillTime), 0.01)
		require.InEpsilon(t, float64(out.Closed.V), float64(out.FillTime), 1e-9)
	})
	t.Run("Ghosh and Mallik, ch. 2: filled up to the level of the basin, bottom takes twice as long as top", func(t *testing.T) {
		in := ghosh()
		bottom, _ := run1(t, in)
		in.Level, in.Ingates[0].Height = 30*cm, some(15*cm)
		top, _ := run1(t, in)
		require.InEpsilon(t, 2, float64(bottom.FillTime)/float64(top.FillTime), 1e-9)
	})
	t.Run("Groover, example 10.2: 20 cm, 2.5 cm², 1560 cm³, 3.15 s", func(t *testing.T) {
		out, _ := run1(t, Input{Alloy: alloy.CodeAluminium, Slices: []Slice{{Height: 10 * cm, Area: 156 * cm2}}, Level: 30 * cm,
			Ingates: []Ingate{{Area: 2.5 * cm2, Height: some(10 * cm)}}, Discharge: some(quantity.Number(1))})
		require.InDelta(t, 3.15, float64(out.FillTime), 0.005)
		require.InDelta(t, 495, quantity.In(out.FlowStart, "cm³/s"), 0.5)
	})
	t.Run("GATE 2005: 20 cm, 1 cm², 1000 cm³, 5.05 s", func(t *testing.T) {
		out, _ := run1(t, Input{Alloy: alloy.CodeAluminium, Slices: []Slice{{Height: 10 * cm, Area: 100 * cm2}}, Level: 30 * cm,
			Ingates: []Ingate{{Area: 1 * cm2, Height: some(10 * cm)}}, Discharge: some(quantity.Number(1))})
		require.InDelta(t, 5.05, float64(out.FillTime), 0.005)
	})
}

// tapered is the exact time through a bottom gate, k = C A √(2g), into a slice
// whose area is α + β y, up to y.
func tapered(alpha, beta, k, H, y float64) float64 {
	return ((alpha+beta*H)*2*(math.Sqrt(H)-math.Sqrt(H-y)) - beta*2/3*(math.Pow(H, 1.5)-math.Pow(H-y, 1.5))) / k
}

func TestTaperedClosedForm(t *testing.T) {
	in := ghosh()
	in.Slices = []Slice{{Height: 20 * cm, Area: 800 * cm2, Top: some(300 * cm2)}}
	in.Level, in.Choke = 25*cm, some(3*cm2)
	out, _ := run1(t, in)
	want := tapered(0.08, (0.03-0.08)/0.2, 3e-4*math.Sqrt(2*9.81), 0.25, 0.2)
	require.InEpsilon(t, want, float64(out.FillTime), 1e-10)
}

// TestOrder halves the step on a smooth piece whose course is known: an even
// slice under a top gate, where the level rises evenly and s = √(H − y) does
// not. The error falls by 2⁵ over the whole way, and so does, for one step,
// the difference of the pair from which the step is chosen.
func TestOrder(t *testing.T) {
	m := &model{g: 9.81, H: 0.3, slices: []slice{{0, 0.2, 0.03, 0.03, 0}}, gates: []gate{{0.2, 5e-4, 5e-4}}}
	q, _ := m.flow(m.H, 0)
	const to = 0.19
	whole := m.slices[0].volume(to) / q
	lastWrong, lastPair := 0.0, 0.0
	for n := 4; n <= 64; n *= 2 {
		x, pair := state{s: math.Sqrt(m.H), b: m.H}, 0.0
		for i := range n {
			next, err := m.step(x, whole/float64(n), m.slices[0], full)
			if i == n/2 {
				pair = math.Abs(err.s)
			}
			x = next
		}
		wrong := math.Abs(m.level(x) - to)
		if n >= 8 {
			t.Logf("%d steps: level wrong by %.1e m, order %.2f; pair apart by %.1e, order %.2f", n, wrong, math.Log2(lastWrong/wrong), pair, math.Log2(lastPair/pair))
			require.InDelta(t, 5, math.Log2(lastWrong/wrong), 0.35)
		}
		if n >= 32 {
			require.InDelta(t, 5, math.Log2(lastPair/pair), 0.35)
		}
		lastWrong, lastPair = wrong, pair
	}
}

// TestQuadrature takes another road: with a full basin time is the integral of
// A/Q over the level, piece by piece.
func TestQuadrature(t *testing.T) {
	r := rand.New(rand.NewSource(3))
	for range 60 {
		in := random(r)
		in.LadleFlow, in.Level = quantity.Opt[quantity.MassFlow]{}, in.Level*1.05
		p := &working.Paper{}
		in, faults := form.Ready(in)
		require.NoError(t, faults.Err())
		f := &filling{in: in, p: p}
		f.a, _ = alloy.Find(in.Alloy)
		f.build()
		sum, y0 := 0.0, 0.0
		for _, stop := range f.m.stops() {
			s := f.m.sliceAt(y0)
			const parts = 400
			for i := range parts {
				lo, hi := y0+(stop-y0)*float64(i)/parts, y0+(stop-y0)*float64(i+1)/parts
				sum += solve.Integral(func(y float64) float64 { q, _ := f.m.flow(f.m.H, y); return s.area(y) / q }, lo, hi)
			}
			y0 = stop
		}
		runs := f.m.march()
		require.InEpsilon(t, sum, runs[len(runs)-1].t1, 1e-6)
	}
}

// scipy looks for a Python that has SciPy.
func scipy(t *testing.T) string {
	for _, name := range []string{"/usr/bin/python3", "python3"} {
		if exec.Command(name, "-c", "import scipy").Run() == nil {
			return name
		}
	}
	if os.Getenv("CI") != "" {
		t.Fatal("SciPy is missing: apt-get install python3-scipy")
	}
	t.Skip("NOT CHECKED: no filling was compared with SciPy's integrators, which are missing: apt-get install python3-scipy")
	return ""
}

// independent is a mould as testdata/fill.py reads it, SI.
type independent struct {
	Slices    [][3]float64 `json:"slices"`
	Gates     [][2]float64 `json:"gates"`
	Choke     float64      `json:"choke"`
	Discharge float64      `json:"discharge"`
	Level     float64      `json:"level"`
	Ladle     float64      `json:"ladle"`
	Basin     float64      `json:"basin"`
	Floor     float64      `json:"floor"`
	Step      float64      `json:"step"`
}

// Every course against an independent program: SciPy's DOP853 (Debian package
// python3-scipy) on the same physics, written anew in testdata/fill.py.
func TestFillingAgainstSciPy(t *testing.T) {
	python := scipy(t)
	r := rand.New(rand.NewSource(5))
	var cases []independent
	var ours []Output
	var halves []float64
	for i := range 40 {
		in := random(r)
		in.Level *= 1.05 // a root that ends in nothing is not for a plain integrator
		switch i % 4 {
		case 0:
			in.LadleFlow = quantity.Opt[quantity.MassFlow]{}
		case 1:
			in.BasinArea = quantity.Opt[quantity.Area]{}
		}
		in, faults := form.Ready(in)
		require.NoError(t, faults.Err())
		f := &filling{in: in}
		f.a, _ = alloy.Find(in.Alloy)
		f.build()
		c := independent{Choke: float64(in.Choke.V), Discharge: float64(in.Discharge.V), Level: f.m.H, Ladle: f.m.ladle, Basin: f.m.basin, Floor: f.m.floor}
		for _, s := range in.Slices {
			c.Slices = append(c.Slices, [3]float64{float64(s.Height), float64(s.Area), float64(s.Top.Or(s.Area))})
		}
		for _, g := range f.m.gates {
			c.Gates = append(c.Gates, [2]float64{g.z, g.a})
		}
		out, _ := run1(t, in)
		c.Step = float64(out.FillTime) / 50
		if c.Basin > 0 {
			c.Step = float64(out.FillTime) / 1000 // its rates have corners
		}
		f.runs = f.m.march()
		cases, ours, halves = append(cases, c), append(ours, out), append(halves, f.levelAt(float64(out.FillTime)/2))
	}
	question, err := json.Marshal(cases)
	require.NoError(t, err)
	cmd := exec.Command(python, "testdata/fill.py")
	cmd.Stdin = bytes.NewReader(question)
	cmd.Stderr = os.Stderr
	answer, err := cmd.Output()
	require.NoError(t, err)
	var theirs []struct{ Time, Half, Basin float64 }
	require.NoError(t, json.Unmarshal(answer, &theirs))
	require.Len(t, theirs, len(cases))
	moving := 0
	for i, c := range cases {
		within := 1e-7
		if c.Basin > 0 {
			within = 3e-5
			moving++
		}
		require.InEpsilon(t, theirs[i].Time, float64(ours[i].FillTime), within, "case %d: %+v", i, c)
		require.InEpsilon(t, theirs[i].Half, halves[i], math.Max(10*within, 2e-5), "case %d, half time: %+v", i, c)
	}
	require.Greater(t, moving, 8)
}

func TestCourse(t *testing.T) {
	in := stepped()
	out, p := run1(t, in)
	require.Empty(t, codes(p)["ladle-slow"])
	passed := 0.0
	for _, g := range out.Gates {
		require.True(t, g.Runs.Known())
		passed += float64(g.Passed)
	}
	require.InEpsilon(t, float64(out.Volume), passed, 2e-3)
	require.Greater(t, out.Gates[2].Runs.V, quantity.Time(1), "the highest ingate waits")
	require.InDelta(t, 0, float64(out.Gates[1].Runs.V), 1e-12, "the second begins at once: the runner stands higher")
	require.Greater(t, out.LiftFull.V, out.LiftFilling.V)
	require.Equal(t, quantity.Time(0), out.Faces[2].Touched.V)
	require.InEpsilon(t, float64(out.FillTime), float64(out.Faces[0].Touched.V), 1e-9)

	// What the ladle cannot give the basin lacks.
	in.LadleFlow, in.BasinArea, in.BasinDepth = some(quantity.MassFlow(3)), some(150*cm2), some(8*cm)
	slow, p := run1(t, in)
	require.Equal(t, working.Mind, codes(p)["basin-dry"])
	require.True(t, slow.BasinDry.Known())
	require.Greater(t, slow.FillTime, out.FillTime)
	in.LadleFlow = some(quantity.MassFlow(4.2))
	some42, p := run1(t, in)
	require.Contains(t, codes(p), "ladle-slow")
	require.Greater(t, float64(some42.BasinLeast.V), 0.0)
	in.LadleFlow = some(quantity.MassFlow(60))
	again, p := run1(t, in)
	require.NotContains(t, codes(p), "ladle-slow")
	require.InEpsilon(t, float64(out.FillTime), float64(again.FillTime), 1e-9)
	// A basin that settles far quicker than the mould fills follows at once.
	in.LadleFlow, in.BasinArea = some(quantity.MassFlow(3)), some(4*cm2)
	in.Slices[0].Height, in.Level, in.Slices[0].Area = 2, 2.4, 2
	for i := range in.Ingates {
		in.Ingates[i].Height = some(quantity.Length(i) * 0.7)
	}
	in.Surfaces = nil
	_, p = run1(t, in)
	require.Contains(t, codes(p), "basin-at-once")
}

func TestFindings(t *testing.T) {
	for name, c := range map[string]struct {
		code  string
		level working.Level
		spoil func(in *Input)
	}{
		"fast ingates": {"ingate-fast", working.Mind, func(*Input) {}},
		"falls":        {"metal-falls", working.Mind, func(in *Input) { in.Ingates = []Ingate{{Area: 4 * cm2, Height: some(30 * cm)}} }},
		"gates rule":   {"ingates-rule", working.Note, func(in *Input) { in.Choke = some(40 * cm2) }},
		"own rise":     {"rise-slow", working.Mind, func(in *Input) { in.Rise = some(quantity.Speed(0.1)) }},
		"iron by wall": {"rise-slow", working.Mind, func(in *Input) { in.Wall = some(3 * mm) }},
		"bronze by wall": {"rise-slow", working.Note, func(in *Input) {
			in.Wall, in.Alloy, in.PourTemperature = some(3*mm), alloy.CodeTinBronze, some(degC(1180))
		}},
		"no head left":     {"head-gone", working.Mind, func(in *Input) { in.Level = 30.2 * cm }},
		"rule is off":      {"rule-off", working.Note, func(in *Input) { in.Level, in.Ingates = 30.2*cm, in.Ingates[:1] }},
		"lift":             {"lift-jumps", working.Note, func(*Input) {}},
		"front":            {"front-trend", working.Note, func(*Input) {}},
		"front not known":  {"front-unknown", working.Note, func(in *Input) { in.Thin = quantity.Opt[quantity.Length]{} }},
		"thin wall stops":  {"front-stops", working.Mind, func(in *Input) { in.Thin = some(5 * mm) }},
		"likely stops":     {"front-stops", working.Mind, func(in *Input) { in.Thin = some(5.9 * mm) }},
		"arrives cold":     {"arrives-cold", working.Mind, func(in *Input) { in.Drop, in.PourTemperature = some(quantity.TempDiff(120)), some(degC(1260)) }},
		"ladle too slow":   {"basin-dry", working.Mind, func(in *Input) { in.LadleFlow = some(quantity.MassFlow(2)) }},
		"ladle a bit slow": {"ladle-slow", working.Mind, func(in *Input) { in.LadleFlow, in.BasinDepth = some(quantity.MassFlow(4.6)), some(12*cm) }},
	} {
		t.Run(name, func(t *testing.T) {
			in := stepped()
			c.spoil(&in)
			_, p := run1(t, in)
			level, found := codes(p)[c.code]
			require.True(t, found, "%v", codes(p))
			require.Equal(t, c.level, level)
			for _, f := range p.Findings {
				require.False(t, f.Source.IsZero(), f.Code)
				require.True(t, f.Level == working.Note || !f.Do.IsZero(), f.Code)
			}
		})
	}
}

func TestFaults(t *testing.T) {
	for name, c := range map[string]struct {
		field string
		spoil func(in *Input)
	}{
		"cavity over the basin":  {"basin_level", func(in *Input) { in.Level = 25 * cm }},
		"ingate over the basin":  {"ingates[1].height", func(in *Input) { in.Ingates[1].Height = some(41 * cm) }},
		"ingate over the cavity": {"ingates[2].height", func(in *Input) { in.Ingates[2].Height = some(31 * cm) }},
		"surface over the basin": {"surfaces[0].height", func(in *Input) { in.Surfaces[0].Height = some(50 * cm) }},
		"basin like a straw":     {"basin_area", func(in *Input) { in.BasinArea = some(2 * cm2) }},
		"basin without a floor":  {"basin_depth", func(in *Input) { in.BasinDepth = some(40 * cm) }},
		"cold metal":             {"pour_temperature", func(in *Input) { in.PourTemperature = some(degC(1190)) }},
		"burning metal":          {"pour_temperature", func(in *Input) { in.PourTemperature = some(degC(1700)) }},
		"hot mould": {"mould_temperature", func(in *Input) {
			in.Alloy, in.PourTemperature, in.MouldTemperature = alloy.CodeAlSiMg, some(degC(720)), some(degC(550))
		}},
		"no slices": {"slices", func(in *Input) { in.Slices = nil }},
	} {
		t.Run(name, func(t *testing.T) {
			in := stepped()
			c.spoil(&in)
			_, err := Fill(in, nil)
			var faults form.Faults
			require.ErrorAs(t, err, &faults)
			require.Equal(t, c.field, faults[0].Field)
		})
	}
}

func random(r *rand.Rand) Input {
	all := alloy.All()
	in := Input{Alloy: all[r.Intn(len(all))].Code, Discharge: some(quantity.Number(0.3 + 0.7*r.Float64()))}
	top := 0.0
	for range 1 + r.Intn(4) {
		s := Slice{Height: quantity.Length(0.01 + 0.2*r.Float64()), Area: quantity.Area(math.Exp(math.Log(0.002) + r.Float64()*math.Log(100)))}
		if r.Intn(2) == 0 {
			s.Top = some(s.Area * quantity.Area(0.2+2*r.Float64()))
		}
		in.Slices = append(in.Slices, s)
		top += float64(s.Height)
	}
	in.Level = quantity.Length(top * (1 + 1.5*r.Float64()*r.Float64()))
	for range 1 + r.Intn(3) {
		in.Ingates = append(in.Ingates, Ingate{Area: quantity.Area(1e-4 + 2e-3*r.Float64()), Height: some(quantity.Length(top * []float64{0, 0, r.Float64() * 0.9}[r.Intn(3)]))})
	}
	if r.Intn(2) == 0 {
		in.Choke = some(quantity.Area(5e-5 + 1e-3*r.Float64()))
	}
	if r.Intn(2) == 0 {
		in.LadleFlow = some(quantity.MassFlow(math.Exp(math.Log(0.3) + r.Float64()*math.Log(60))))
		in.BasinArea, in.BasinDepth = some(quantity.Area(0.004+0.03*r.Float64())), some(in.Level*quantity.Length(0.05+0.4*r.Float64()))
		if least := narrowest(in); in.BasinArea.V < least {
			in.BasinArea.V = 2 * least
		}
	}
	for range r.Intn(3) {
		in.Surfaces = append(in.Surfaces, Surface{Area: quantity.Area(0.001 + 0.1*r.Float64()), Height: some(in.Level * quantity.Length(r.Float64())), By: some([]Pressed{ByCavity, ByGating}[r.Intn(2)])})
	}
	return in
}

func TestProperties(t *testing.T) {
	r := rand.New(rand.NewSource(7))
	dry := 0
	for range 250 {
		in := random(r)
		out, _ := run1(t, in)
		blank, err := Fill(in, nil)
		require.NoError(t, err)
		require.Equal(t, out, blank, "the paper changes nothing")
		require.LessOrEqual(t, float64(out.Balance), 1e-6, "metal in is metal there")
		if out.Closed.Known() {
			require.InEpsilon(t, float64(out.Closed.V), float64(out.FillTime), 1e-8)
		}
		if out.BasinDry.Known() {
			dry++
		}
		level := out.Curves[0].Points
		require.Less(t, len(level), 400)
		for i, k := range level {
			require.True(t, quantity.Finite(k.Y) && k.Y >= 0)
			if i > 0 {
				require.GreaterOrEqual(t, k.Y, level[i-1].Y-1e-12, "the level never sinks")
				require.GreaterOrEqual(t, k.X, level[i-1].X)
			}
		}
		for i := 1; i < len(out.Moments); i++ {
			require.GreaterOrEqual(t, out.Moments[i].Time, out.Moments[i-1].Time)
		}
		require.GreaterOrEqual(t, float64(out.RiseMost), float64(out.RiseLeast))
		if out.LiftFull.Known() {
			require.GreaterOrEqual(t, float64(out.LiftFull.V), float64(out.LiftFilling.V)*(1-1e-9))
		}

		higher := in
		higher.Level *= 1.1
		again, _ := run1(t, higher)
		require.LessOrEqual(t, float64(again.FillTime), float64(out.FillTime)*(1+1e-9), "more head never fills slower")
		wider := in
		wider.Ingates = append([]Ingate(nil), in.Ingates...)
		for i := range wider.Ingates {
			wider.Ingates[i].Area *= 1.2
		}
		if wider.Choke.Known() {
			wider.Choke.V *= 1.2
		}
		wider.BasinArea.V *= 1.2
		again, _ = run1(t, wider)
		require.LessOrEqual(t, float64(again.FillTime), float64(out.FillTime)*(1+1e-9), "a wider way never fills slower")
		// Everything four times as long, and sixteen times as wide, takes twice as
		// long; the ladle gives 32 times as much.
		if in.Level < 1 && in.BasinDepth.V < 0.25 {
			again, _ = run1(t, scaled(in, 4))
			require.InEpsilon(t, 2*float64(out.FillTime), float64(again.FillTime), 1e-7)
		}
		// A slice cut in two of even area is the same slice.
		if s := in.Slices[0]; !s.Top.Known() && s.Height > mm {
			split := in
			half := s
			half.Height /= 2
			split.Slices = append([]Slice{half, half}, in.Slices[1:]...)
			again, _ = run1(t, split)
			require.InEpsilon(t, float64(out.FillTime), float64(again.FillTime), 1e-8)
		}
	}
	require.Positive(t, dry)
}

func scaled(in Input, k float64) Input {
	area := func(a quantity.Area) quantity.Area { return a * quantity.Area(k*k) }
	out := in
	out.Level *= quantity.Length(k)
	out.Slices = append([]Slice(nil), in.Slices...)
	for i := range out.Slices {
		s := &out.Slices[i]
		s.Height, s.Area, s.Top.V = s.Height*quantity.Length(k), area(s.Area), area(s.Top.V)
	}
	out.Ingates = append([]Ingate(nil), in.Ingates...)
	for i := range out.Ingates {
		g := &out.Ingates[i]
		g.Area, g.Height.V = area(g.Area), g.Height.V*quantity.Length(k)
	}
	out.Choke.V, out.BasinArea.V = area(in.Choke.V), area(in.BasinArea.V)
	out.BasinDepth.V *= quantity.Length(k)
	out.LadleFlow.V *= quantity.MassFlow(k * k * math.Sqrt(k))
	out.Surfaces = nil
	return out
}

// TestLiftRegression: three faces of the stepped mould when it is full.
func TestLiftRegression(t *testing.T) {
	out, _ := run1(t, stepped())
	require.InDelta(t, 6950*9.81*(0.04*0.1+0.02*0.3+0.005*0.4), float64(out.LiftFull.V), 1e-6)
	require.InDelta(t, 17.3936, float64(out.FillTime), 0.0001)
}

func FuzzFill(f *testing.F) {
	f.Add(int64(1), 0.4, 0.05, 5e-4, 3.0, 0.01)
	f.Add(int64(9), 0.01, 100.0, 5e-6, 5000.0, 20.0)
	f.Add(int64(12), 6.0, 5e-6, 0.5, 5e-4, 1e-4)
	f.Fuzz(func(t *testing.T, draw int64, level, area, choke, ladle, basin float64) {
		in := random(rand.New(rand.NewSource(draw)))
		in.Level, in.Slices[0].Area, in.Choke = quantity.Length(level), quantity.Area(area), some(quantity.Area(choke))
		in.LadleFlow, in.BasinArea = some(quantity.MassFlow(ladle)), some(quantity.Area(basin))
		p := &working.Paper{}
		out, err := Fill(in, p)
		if err != nil {
			require.IsType(t, form.Faults{}, err)
			return
		}
		require.Empty(t, stepcheck.Paper(p))
		require.True(t, quantity.Finite(float64(out.FillTime)) && out.FillTime > 0)
		require.LessOrEqual(t, float64(out.Balance), 1e-6)
	})
}

func BenchmarkFill(b *testing.B) {
	basin := stepped()
	basin.LadleFlow, basin.BasinArea, basin.BasinDepth = some(quantity.MassFlow(4.2)), some(150*cm2), some(8*cm)
	for name, in := range map[string]Input{"bottom": ghosh(), "stepped": stepped(), "ladle": basin} {
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if _, err := Fill(in, nil); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

// A. Ghosh and A. K. Mallik's mould fills in 43.7 s through its bottom gate.
func ExampleFill() {
	out, err := Fill(ghosh(), nil)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f s\n", float64(out.FillTime))
	// Output: 43.7 s
}
