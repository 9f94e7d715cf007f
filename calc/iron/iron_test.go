package iron_test

import (
	"fmt"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/form"
	"pourwright/calc/iron"
	"pourwright/calc/quantity"
	"pourwright/calc/reply"
	"pourwright/calc/working"
	"pourwright/calc/working/stepcheck"
)

func read(t *testing.T, text string) iron.Input {
	t.Helper()
	in, faults := form.Decode[iron.Input]([]byte(text), quantity.Metric)
	require.Empty(t, faults)
	return in
}

// solve answers and proves the working.
func solve(t *testing.T, in iron.Input) (iron.Output, *working.Paper) {
	t.Helper()
	return stepcheck.Run(t, iron.Assess, in)
}

func levels(p *working.Paper) map[string]working.Level { return stepcheck.Levels(p) }

// TestFormulas holds the iron of 3.4 % C, 2.0 % Si and 0.05 % P worked by hand
// from formulas that were seen: the arithmetic is ours, so it is no evidence
// for the sources, only against a slip of the pen.
func TestFormulas(t *testing.T) {
	out, _ := solve(t, read(t, `{"carbon":"3.4 %","silicon":"2 %","phosphorus":"0.05 %","manganese":"0.6 %","sulphur":"0.08 %"}`))
	require.InDelta(t, 4.083, quantity.In(out.CE, "%"), 0.0005)
	require.InDelta(t, 3.925, quantity.In(out.CEL, "%"), 0.0005)
	require.InDelta(t, 0.9375, float64(out.Saturation), 0.00005)
	for i, want := range []float64{1177, 1182, 1183, 1195} {
		require.InDelta(t, want, quantity.In(out.Liquiduses[i].Value, "degC"), 0.5, out.Liquiduses[i].Name)
	}
	for i, want := range []float64{250, 245} {
		require.InDelta(t, want, quantity.In(out.Strengths[i].Value, "MPa"), 0.5, out.Strengths[i].Name)
	}
	require.Equal(t, "hypo-eutectic", out.Kind)
	require.Equal(t, "GJL-200", out.Reaches)
	for s, want := range map[string]float64{"0.05 %": 0.385, "0.08 %": 0.436, "0.12 %": 0.504} {
		out, _ := solve(t, read(t, `{"carbon":"3.4 %","silicon":"2 %","sulphur":"`+s+`"}`))
		require.InDelta(t, want, quantity.In(out.ManganeseNeeded.V, "%"), 1e-9)
	}
	t.Run("Porter and Rosenthal's spiral as they write it, in inches and °F", func(t *testing.T) {
		out, _ := solve(t, read(t, `{"carbon":"3.3 %","silicon":"2 %","phosphorus":"0.1 %","pour_temperature":"2600 °F"}`))
		require.InDelta(t, 14.9*3.85+0.05*2600-155, quantity.In(out.Spiral.V, "in"), 1e-9)
		require.InDelta(t, 0.81, float64(out.Fluidity.V), 0.005)
	})
	t.Run("what is short is made up by the ferromanganese", func(t *testing.T) {
		out, _ := solve(t, read(t, `{"carbon":"3.4 %","silicon":"2 %","sulphur":"0.1 %","manganese":"0.3 %"}`))
		require.InDelta(t, 0.17, quantity.In(out.ManganeseShort.V, "%"), 1e-9)
		require.InDelta(t, 0.17, quantity.In(out.Ferromanganese.V, "%")*0.78*0.85, 1e-9)
	})
	t.Run("carbon for a grade makes the grade", func(t *testing.T) {
		in := read(t, `{"carbon":"3.4 %","silicon":"2 %","phosphorus":"0.1 %","grade":"300"}`)
		out, _ := solve(t, in)
		in.Carbon = out.CarbonWanted.V
		again, _ := solve(t, in)
		require.InDelta(t, 300, quantity.In(again.StrengthLow.V, "MPa"), 1e-9)
	})
}

// TestWallRows: each row of the standard's table is over one thickness and up
// to the next.
func TestWallRows(t *testing.T) {
	for wall, want := range map[string]float64{"2.6 mm": 180, "5 mm": 180, "5.1 mm": 155, "20 mm": 130, "20.1 mm": 110, "150 mm": 80} {
		out, _ := solve(t, read(t, `{"carbon":"3.4 %","silicon":"2 %","wall":"`+wall+`"}`))
		require.InDelta(t, want, quantity.In(out.Grades[0].Expected.V, "MPa"), 1e-9, wall)
	}
	for _, wall := range []string{"2.5 mm", "151 mm"} {
		out, _ := solve(t, read(t, `{"carbon":"3.4 %","silicon":"2 %","wall":"`+wall+`"}`))
		require.False(t, out.Grades[0].Expected.Known(), wall)
	}
}

func TestFindings(t *testing.T) {
	const plain = `"carbon":"3.4 %","silicon":"2 %","phosphorus":"0.05 %","manganese":"0.6 %","sulphur":"0.08 %"`
	for _, c := range []struct {
		code  string
		level working.Level
		in    string
	}{
		{"analysis-unusual", working.Mind, `"carbon":"2.2 %","silicon":"2 %"`},
		{"analysis-short", working.Note, `"carbon":"3.4 %","silicon":"2 %"`},
		{"hyper-eutectic", working.Mind, `"carbon":"3.9 %","silicon":"2.5 %"`},
		{"manganese-short", working.Mind, `"carbon":"3.4 %","silicon":"2 %","sulphur":"0.1 %","manganese":"0.3 %"`},
		{"manganese-plenty", working.Note, `"carbon":"3.4 %","silicon":"2 %","sulphur":"0.05 %","manganese":"1.2 %"`},
		{"pour-below-liquidus", working.Stop, plain + `,"pour_temperature":"1190 °C"`},
		{"pour-cold", working.Mind, plain + `,"pour_temperature":"1300 °C","wall":"6 mm"`},
		{"pour-hot", working.Mind, plain + `,"pour_temperature":"1480 °C"`},
		{"spiral-none", working.Mind, `"carbon":"2.2 %","silicon":"0.5 %","pour_temperature":"1280 °C"`},
		{"fluidity-unusual", working.Note, plain + `,"pour_temperature":"1220 °C"`},
		{"strength-unknown", working.Mind, `"carbon":"3.8 %","silicon":"2.2 %","grade":"150"`},
		{"strength-beyond", working.Mind, `"carbon":"2.6 %","silicon":"1.5 %"`},
		{"grade-missed", working.Mind, plain + `,"grade":"300"`},
		{"grade-close", working.Note, plain + `,"grade":"250"`},
		{"wall-outside", working.Note, plain + `,"grade":"300","wall":"6 mm"`},
		{"chill", working.Mind, plain + `,"wall":"4 mm"`},
		{"chill-wedge", working.Note, plain + `,"wall":"12 mm"`},
		{"sulphur-high", working.Mind, `"carbon":"3.4 %","silicon":"2 %","sulphur":"0.2 %"`},
		{"sulphur-low", working.Note, `"carbon":"3.4 %","silicon":"2 %","sulphur":"0.02 %"`},
		{"phosphide", working.Note, `"carbon":"3.4 %","silicon":"2 %","phosphorus":"0.4 %"`},
		{"chromium", working.Note, plain + `,"chromium":"0.3 %","wall":"8 mm"`},
	} {
		t.Run(c.code, func(t *testing.T) {
			_, p := solve(t, read(t, `{`+c.in+`}`))
			level, ok := levels(p)[c.code]
			require.True(t, ok, "%v", levels(p))
			require.Equal(t, c.level, level)
			for _, f := range p.Findings {
				require.NotContains(t, f.Text.In(quantity.US)+f.Do.In(quantity.US), "%!")
			}
		})
	}
	t.Run("none but the wedge on a sound iron", func(t *testing.T) {
		_, p := solve(t, read(t, `{`+plain+`,"wall":"15 mm","pour_temperature":"1340 °C","grade":"200"}`))
		require.Equal(t, map[string]working.Level{"chill-wedge": working.Note}, levels(p))
	})
	t.Run("what is advised helps", func(t *testing.T) {
		_, p := solve(t, read(t, `{`+plain+`,"wall":"4 mm"}`))
		for _, f := range p.Findings {
			if f.Code == "chill" {
				require.Contains(t, f.Do.String(), "Raise carbon to 3.52 %, or silicon to 2.35 %")
			}
		}
	})
}

func TestFaults(t *testing.T) {
	for field, in := range map[string]string{
		"carbon":           `{"carbon":"1 %","silicon":"2 %"}`,
		"silicon":          `{"carbon":"3 %"}`,
		"pour_temperature": `{"carbon":"3 %","silicon":"2 %","pour_temperature":"1100 °C"}`,
	} {
		_, err := iron.Assess(read(t, in), nil)
		var faults form.Faults
		require.ErrorAs(t, err, &faults)
		require.Equal(t, field, faults[0].Field)
	}
}

// question makes a random analysis over the whole of the fields.
func question(r *rand.Rand) iron.Input {
	some := func(low, high float64) quantity.Opt[quantity.Ratio] {
		if r.Intn(4) == 0 {
			return quantity.Opt[quantity.Ratio]{}
		}
		return quantity.Some(quantity.From[quantity.Ratio](low+r.Float64()*(high-low), "%"))
	}
	in := iron.Input{
		Carbon: quantity.From[quantity.Ratio](1.8+r.Float64()*2.8, "%"), Silicon: quantity.From[quantity.Ratio](0.05+r.Float64()*4.9, "%"),
		Manganese: some(0, 3), Phosphorus: some(0, 2), Sulphur: some(0, 0.5), Nickel: some(0, 3), Chromium: some(0, 2),
	}
	if r.Intn(4) > 0 {
		in.Wall = quantity.Some(quantity.From[quantity.Length](1+r.Float64()*r.Float64()*499, "mm"))
	}
	if r.Intn(4) > 0 {
		in.PourTemperature = quantity.Some(quantity.From[quantity.Temperature](1150+r.Float64()*450, "degC"))
	}
	if r.Intn(2) == 0 {
		in.Grade = quantity.Some([]string{"150", "200", "250", "300", "350"}[r.Intn(5)])
	}
	return in
}

func TestAnyQuestion(t *testing.T) {
	r := rand.New(rand.NewSource(1))
	for range 1000 {
		in := question(r)
		out, p := solve(t, in)
		w := &reply.Writer{System: quantity.US, Working: true}
		w.Answers(out, p) // panics on what is not finite
		for _, v := range []float64{float64(out.CE), float64(out.CEL), float64(out.Saturation), float64(out.Spiral.V), float64(out.Superheat.V), float64(out.Range.V), float64(out.ManganeseShort.V), float64(out.StrengthLow.V), float64(out.CarbonWanted.V)} {
			require.GreaterOrEqual(t, v, 0.0)
		}
		if out.LiquidusLow.Known() {
			require.LessOrEqual(t, out.LiquidusLow.V, out.LiquidusHigh.V)
		}
		// More carbon: a higher equivalent, a lower liquidus, a longer spiral,
		// a weaker iron.
		richer := in
		richer.Carbon += 0.0005
		if richer.Carbon > 0.046 {
			continue
		}
		more, _ := solve(t, richer)
		require.Greater(t, more.CE, out.CE)
		require.Greater(t, more.Saturation, out.Saturation)
		if out.LiquidusHigh.Known() && more.LiquidusHigh.Known() {
			require.Less(t, more.LiquidusHigh.V, out.LiquidusHigh.V)
		}
		if out.Spiral.Known() && more.Spiral.Known() {
			require.Greater(t, more.Spiral.V, out.Spiral.V)
		}
		if out.StrengthLow.Known() && more.StrengthLow.Known() {
			require.Less(t, more.StrengthLow.V, out.StrengthLow.V)
		}
	}
}

// FuzzAssess feeds whatever JSON there is.
func FuzzAssess(f *testing.F) {
	f.Add([]byte(`{"carbon":"3.4 %","silicon":"2 %","phosphorus":"0.05 %","manganese":"0.6 %","sulphur":"0.08 %","wall":"8 mm","pour_temperature":"1350 °C","grade":"250"}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		in, _ := form.Decode[iron.Input](data, quantity.US)
		p := &working.Paper{}
		out, err := iron.Assess(in, p)
		if err != nil {
			return
		}
		w := &reply.Writer{System: quantity.US, Working: true}
		w.Answers(out, p)
		w.Findings(p.Findings)
		w.Steps(p.Steps)
	})
}

// ExampleAssess is the iron of the handbooks' sums, 3.4 % C and 2 % Si.
func ExampleAssess() {
	out, err := iron.Assess(iron.Input{Carbon: 3.4 * quantity.Percent, Silicon: 2 * quantity.Percent, Phosphorus: quantity.Some(0.05 * quantity.Percent)}, nil)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("CE %v, %s, liquidus %v to %v\n", out.CE, out.Kind, out.LiquidusLow.V, out.LiquidusHigh.V)
	// Output: CE 4.08 %, hypo-eutectic, liquidus 1177 °C to 1199 °C
}
