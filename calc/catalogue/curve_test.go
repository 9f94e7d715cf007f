package catalogue

import (
	"encoding/json"
	"fmt"
	"math"
	"math/rand"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/plan"
	"pourwright/calc/quantity"
	"pourwright/calc/reply"
)

// curveReply is the part of a curve's reply that these tests look at.
type curveReply struct {
	OK       bool
	Broken   string
	Faults   []struct{ Field, Label, Text string }
	Answered bool
	Vary     string
	Answer   string
	X        bounded
	Y        axis
	Sliders  []slider
	Cases    []drawn
	Figures  []figured
	Steps    []json.RawMessage
}

func traced(t testing.TB, options string, q any) curveReply {
	t.Helper()
	text, err := json.Marshal(q)
	require.NoError(t, err)
	var r curveReply
	require.NoError(t, json.Unmarshal(Call("curve", []byte(options), text), &r))
	require.Empty(t, r.Broken, "%s", text)
	return r
}

// law traces an answer and requires it to go as a power of the input.
func law(t *testing.T, power, within float64, q CurveRequest) {
	t.Helper()
	r := traced(t, "", q)
	require.True(t, r.OK, "%v", r.Faults)
	require.Len(t, r.Cases[0].Runs, 1)
	run := r.Cases[0].Runs[0]
	require.Greater(t, len(run), 20)
	first := run[0]
	for _, p := range run[1:] {
		require.InEpsilon(t, first[1]*math.Pow(p[0]/first[0], power), p[1], within, "at %v %s", p[0], r.X.Unit)
	}
}

func one(input string) []json.RawMessage { return []json.RawMessage{json.RawMessage(input)} }

func TestCurvesFollowTheLaws(t *testing.T) {
	t.Run("N. Chvorinov 1940 (from memory): freezing time as the square of the modulus", func(t *testing.T) {
		law(t, 2, 1e-4, CurveRequest{Calculator: "freeze", Cases: one(`{"basis":"constant","constant":"1.2 min/cm²","shape":"modulus","modulus":"10 mm"}`), Vary: "modulus", Answer: "time"})
		law(t, 2, 1e-4, CurveRequest{Calculator: "freeze", Cases: one(`{"basis":"lists","alloy":"grey-iron","sand":"green-sand","shape":"plate","thickness":"20 mm"}`), Vary: "thickness", Answer: "time"})
	})
	t.Run("Torricelli: speed as the square root of the head", func(t *testing.T) {
		law(t, 0.5, 1e-4, CurveRequest{Calculator: "sprue", Cases: one(`{"height":"200 mm","base_area":"4 cm²","volume":"2 L"}`), Vary: "height", Answer: "speed"})
	})
	t.Run("Archimedes: lift on a flat face as its depth", func(t *testing.T) {
		law(t, 1, 1e-4, CurveRequest{Calculator: "lift", Cases: one(`{"alloy":"grey-iron","surfaces":[{"area":"1000 cm²","depth":"200 mm"}]}`), Vary: "surfaces[0].depth", Answer: "static"})
	})
	t.Run("Francis: flow over a straight lip as the power 3/2 of the head", func(t *testing.T) {
		law(t, 1.5, 1e-4, CurveRequest{Calculator: "weir", Cases: one(`{"lip":{"form":"flat","width":"60 mm"},"head":"12 mm"}`), Vary: "head", Answer: "flow"})
	})
}

// Twice the thickness freezes four times slower: two cases side by side say so.
func TestTwoCases(t *testing.T) {
	r := traced(t, `{"working":true}`, CurveRequest{Calculator: "freeze", Vary: "thickness", Answer: "time", Cases: []json.RawMessage{
		json.RawMessage(`{"basis":"constant","constant":"1.2 min/cm²","shape":"plate","thickness":"20 mm"}`),
		json.RawMessage(`{"basis":"constant","constant":"1.2 min/cm²","shape":"plate","thickness":"40 mm"}`)}})
	require.True(t, r.OK)
	at := slices.IndexFunc(r.Figures, func(f figured) bool { return f.Path == "time" })
	f := r.Figures[at]
	require.Equal(t, []string{"72 s", "4 min 48 s"}, f.Texts)
	require.Equal(t, "4", f.Times)
	require.Equal(t, "+3 min 36 s", f.Difference)
	require.NotNil(t, f.Step)
	require.Less(t, *f.Step, len(r.Steps))
	require.Equal(t, r.Cases[0].Runs, r.Cases[1].Runs, "the same law over the same stretch")
	require.Equal(t, 2*r.Cases[0].Now[0], r.Cases[1].Now[0])
}

// Where the calculator refuses, the curve breaks off and says why; where it has
// something to mind that is not so everywhere, the stretch is named.
func TestRefusalsAndWarnings(t *testing.T) {
	r := traced(t, "", CurveRequest{Calculator: "freeze", Vary: "thickness", Answer: "time", From: "1 mm", To: "2.5 m",
		Cases: one(`{"basis":"constant","constant":"1.2 min/cm²","shape":"plate","thickness":"200 mm"}`)})
	spans := r.Cases[0].Spans
	require.NotEmpty(t, spans)
	require.Equal(t, "refused", spans[0].State)
	require.Contains(t, spans[0].Text, "out of range")
	require.InDelta(t, 2000, spans[0].From, 2500.0/512, "the field ends at 2 m")
	require.InDelta(t, 2500, spans[0].To, 1e-9)
	require.Contains(t, spans[0].Ends, "above 2")
	last := r.Cases[0].Runs[0]
	require.Less(t, last[len(last)-1][0], spans[0].From+1e-9)

	// At 1340 °C and a thin wall the window closes as the metal gets colder.
	var input map[string]json.RawMessage
	text, err := os.ReadFile("../../testdata/plans/relief.pour.json")
	require.NoError(t, err)
	require.NoError(t, json.Unmarshal(Call("station", nil, encode(map[string]any{"plan": json.RawMessage(text), "station": "pour"})), &input))
	r = traced(t, "", CurveRequest{Calculator: "pour", Vary: "ingate_area", Answer: "longest", From: "0.5 cm²", To: "20 cm²", Cases: one(string(input["input"]))})
	stops := slices.DeleteFunc(slices.Clone(r.Cases[0].Spans), func(s spanned) bool { return s.State != "stop" })
	require.NotEmpty(t, stops, "gates so small that the mould cannot be filled in time")
	require.False(t, stops[0].Throughout)
	require.NotEmpty(t, stops[0].Do)
}

// A stretch stands still while the value inside it moves.
func TestBaseHoldsTheStretch(t *testing.T) {
	base := `{"basis":"constant","constant":"1.2 min/cm²","shape":"plate","thickness":"20 mm"}`
	r := traced(t, "", CurveRequest{Calculator: "freeze", Base: json.RawMessage(base), Vary: "thickness", Cases: one(strings.Replace(base, "20 mm", "40 mm", 1))})
	s := r.Sliders[0]
	require.Equal(t, []any{8.0, 50.0, 40.0, "mm"}, []any{s.Low, s.High, s.Value, s.Unit})
	r = traced(t, "", CurveRequest{Calculator: "freeze", Base: json.RawMessage(base), Vary: "thickness", Cases: one(strings.Replace(base, "20 mm", "400 mm", 1))})
	require.Greater(t, r.Sliders[0].High, 400.0, "unless the value has gone outside it")
	r = traced(t, "", CurveRequest{Calculator: "freeze", Base: json.RawMessage(base), Vary: "thickness", From: "10 mm", To: "60 mm", Cases: one(strings.Replace(base, "20 mm", "70 mm", 1))})
	require.Equal(t, 10.0, r.X.Low)
	require.Greater(t, r.X.High, 70.0, "of a named stretch too")
}

func TestRanking(t *testing.T) {
	r := traced(t, "", CurveRequest{Calculator: "sprue", Answer: "speed", Rank: true, Cases: one(`{"height":"200 mm","base_area":"4 cm²"}`)})
	effect := map[string]float64{}
	for _, s := range r.Sliders {
		effect[s.Field] = *s.Effect
	}
	require.Greater(t, effect["height"], 0.05)
	require.Zero(t, effect["base_area"], "the speed does not hang on it")
}

func TestCurveOfThePlan(t *testing.T) {
	text, err := os.ReadFile("../../testdata/plans/bench-end.pour.json")
	require.NoError(t, err)
	r := traced(t, "", CurveRequest{Calculator: "plan", Cases: one(string(text)), Vary: "mould.basin_height", Answer: "pour.weights_surged", From: "20 mm", To: "300 mm", Points: 30})
	require.True(t, r.OK, "%v", r.Faults)
	require.Equal(t, "mm", r.X.Unit)
	run := r.Cases[0].Runs[0]
	for i := range run[1:] {
		require.GreaterOrEqual(t, run[i+1][1], run[i][1], "a higher basin never lifts less")
	}
	// What the glances of a plan remember is what a whole plan answers.
	doc, faults := plan.Read(text, quantity.Metric)
	require.Empty(t, faults)
	glance := plan.Glances()
	for range 2 {
		whole, glanced := plan.Work(doc, nil), glance(doc, nil)
		for i, s := range whole.Stations {
			require.Equal(t, s.Paper.Findings, glanced.Stations[i].Paper.Findings, s.Key)
			require.Empty(t, glanced.Stations[i].Paper.Steps)
			require.Equal(t, s.State, glanced.Stations[i].State)
		}
		doc.Mould.BasinHeight.V += 0.01
	}
}

func TestCurveFaults(t *testing.T) {
	freeze := one(`{"basis":"constant","constant":"1.2 min/cm²","shape":"plate","thickness":"20 mm"}`)
	for _, row := range []struct {
		q    CurveRequest
		says string
	}{
		{CurveRequest{Calculator: "freeze", Cases: freeze, Vary: "width"}, "no number of this name"},
		{CurveRequest{Calculator: "freeze", Cases: freeze, Vary: "thickness", From: "1 kg"}, "cannot be read"},
		{CurveRequest{Calculator: "freeze", Cases: freeze, Vary: "thickness", From: "90 mm", To: "20 mm"}, "above the beginning"},
	} {
		r := traced(t, "", row.q)
		require.False(t, r.OK)
		require.Contains(t, r.Faults[0].Text, row.says)
	}
	for _, bad := range []string{`{"calculator":"spread","cases":[{}]}`, `{"calculator":"none","cases":[{}]}`, `{"calculator":"freeze","cases":[]}`, `{"calculator":"freeze","cases":[{},{},{}]}`, `[]`, ``} {
		require.Contains(t, asked(t, "curve", "", bad), "broken", bad)
	}
	// An input in which nothing is filled in has no curve, and says what it wants.
	r := traced(t, "", CurveRequest{Calculator: "freeze", Cases: one(`{}`)})
	require.True(t, r.OK)
	require.False(t, r.Answered)
	require.NotEmpty(t, r.Faults)
}

// A station of a plan, handed to its calculator, answers what it answers in the
// plan.
func TestStations(t *testing.T) {
	for _, file := range []string{"relief", "bracket", "bench-end"} {
		text, err := os.ReadFile("../../testdata/plans/" + file + ".pour.json")
		require.NoError(t, err)
		doc, _ := plan.Read(text, quantity.Metric)
		for _, s := range plan.Work(doc, nil).Stations {
			var got struct {
				OK         bool
				Calculator string
				Input      json.RawMessage
			}
			require.NoError(t, json.Unmarshal(Call("station", nil, encode(map[string]any{"plan": json.RawMessage(text), "station": s.Key})), &got))
			require.True(t, got.OK, s.Key)
			if s.Out == nil {
				continue
			}
			var r struct {
				OK      bool
				Answers any
			}
			answer := Call(got.Calculator, nil, got.Input)
			require.NoError(t, json.Unmarshal(answer, &r))
			require.True(t, r.OK, "%s %s: %s", file, s.Key, answer)
			alone := map[string]float64{}
			collect(alone, "", r.Answers)
			for _, leaf := range reply.Leaves(s.Out) {
				if want, ok := alone["."+leaf.Path]; ok { // else a count
					require.InDelta(t, want, leaf.Value.SI(), 1e-9*math.Abs(want), "%s %s %s", file, s.Key, leaf.Path)
				}
			}
		}
	}
	require.Contains(t, asked(t, "station", "", `{"plan":{},"station":"none"}`), "broken")
}

// Every calculator, whatever stands in its input: the points are finite and in
// order, the spans lie inside the stretch, and the point of now is what the
// calculator itself answers.
func TestCurveOfEveryCalculator(t *testing.T) {
	g := generator{rand.New(rand.NewSource(3)), quantity.Metric}
	for _, c := range All() {
		if c.open == nil {
			continue
		}
		t.Run(c.Name, func(t *testing.T) {
			outcomes := corpus()[c.Name]
			n, drawn := 16, 0
			if c.Name == "plan" {
				n = 4
			}
			for i := range n {
				o := outcomes[g.Intn(len(outcomes))]
				if i < 3 {
					o = outcomes[i%len(outcomes)] // which are answered
				}
				units := []string{"metric", "us"}[g.Intn(2)]
				options := fmt.Sprintf(`{"units":%q}`, units)
				first := traced(t, options, CurveRequest{Calculator: c.Name, Cases: one(string(o.input)), Points: 5})
				if !first.OK || len(first.Sliders) == 0 {
					continue
				}
				q := CurveRequest{Calculator: c.Name, Cases: one(string(o.input)), Points: 25, Rank: i == 0 && c.Name != "plan"}
				q.Vary = first.Sliders[g.Intn(len(first.Sliders))].Field
				if len(first.Figures) > 0 {
					q.Answer = first.Figures[g.Intn(len(first.Figures))].Path
				}
				r := traced(t, options, q)
				require.True(t, r.OK, "%v", r.Faults)
				checkCurve(t, r, q, options)
				if len(r.Cases[0].Runs) > 0 {
					drawn++
				}
			}
			require.Positive(t, drawn)
		})
	}
}

func checkCurve(t *testing.T, r curveReply, q CurveRequest, options string) {
	t.Helper()
	for _, s := range r.Sliders {
		require.Less(t, s.Low, s.High, "%s %+v", q.Calculator, s)
		require.Positive(t, s.Step, "%s %+v", q.Calculator, s)
		require.LessOrEqual(t, s.Low-s.Step, s.Value, "%s %+v", q.Calculator, s)
		require.GreaterOrEqual(t, s.High+s.Step, s.Value, "%s %+v", q.Calculator, s)
		require.LessOrEqual(t, (s.High-s.Low)/s.Step, 1e6)
	}
	c := r.Cases[0]
	last := math.Inf(-1)
	for _, run := range c.Runs {
		for _, p := range run {
			require.True(t, quantity.Finite(p[0]) && quantity.Finite(p[1]))
			require.GreaterOrEqual(t, p[0], last)
			last = p[0]
		}
	}
	for _, s := range c.Spans {
		require.LessOrEqual(t, s.From, s.To)
		require.GreaterOrEqual(t, s.From, r.X.Low-1e-6*math.Abs(r.X.Low))
		require.LessOrEqual(t, s.To, r.X.High+1e-6*math.Abs(r.X.High))
		require.NotEmpty(t, s.Text)
		require.NotContains(t, s.Text, "%!")
	}
	if c.Now == nil || q.Calculator == "plan" {
		return
	}
	sizes := map[string]any{}
	require.NoError(t, json.Unmarshal(Call(q.Calculator, []byte(options), q.Cases[0]), &sizes))
	si := map[string]float64{}
	collect(si, "", sizes["answers"])
	if want, ok := si["."+q.Answer]; ok { // else a count
		for _, f := range r.Figures {
			if f.Path == q.Answer {
				require.Contains(t, string(Call(q.Calculator, []byte(options), q.Cases[0])), fmt.Sprintf("%q", f.Texts[0]), "%v", want)
			}
		}
	}
}

func FuzzCurve(f *testing.F) {
	f.Add(`{"calculator":"freeze","cases":[{"shape":"plate","thickness":"20 mm"}],"vary":"thickness","answer":"time"}`)
	f.Add(`{"calculator":"order","cases":[{"moulds":[{"mass":"3 kg","pouring":"5 s","wall":"6 mm"}]},{}],"points":7,"rank":true}`)
	f.Add(`{"calculator":"plan","cases":[{"metal":{"alloy":"grey-iron"}}],"vary":"metal.wall","from":"1 mm","to":"2"}`)
	f.Fuzz(func(t *testing.T, q string) {
		var r curveReply
		require.NoError(t, json.Unmarshal(Call("curve", nil, []byte(q)), &r))
		require.True(t, r.OK || r.Broken != "" || len(r.Faults) > 0)
		if r.Broken != "" {
			require.Regexp(t, "question cannot be read|no curves of|one or two cases", r.Broken, q)
		}
	})
}

// BenchmarkCurve is one move of a slider, by calculator.
func BenchmarkCurve(b *testing.B) {
	for _, c := range All() {
		if c.open == nil {
			continue
		}
		for _, o := range corpus()[c.Name] {
			var r curveReply
			q := encode(CurveRequest{Calculator: c.Name, Cases: one(string(o.input)), Points: 80})
			if json.Unmarshal(Call("curve", nil, q), &r) != nil || !r.Answered || len(r.Sliders) == 0 {
				continue
			}
			b.Run(c.Name, func(b *testing.B) {
				for b.Loop() {
					Call("curve", nil, q)
				}
			})
			break
		}
	}
}
