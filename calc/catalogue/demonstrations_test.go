package catalogue

import (
	"encoding/json"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/quantity"
)

// lesson is a demonstration, or an opening of a calculator in class.
type lesson struct {
	Title, Question, Told, Source string
	Calculator                    string
	Input                         json.RawMessage
	Example, Station              string
	Demonstration                 string
	Vary, Answer, From, To        string
	Sliders                       []string
	Start, Then                   map[string]string
	Claim                         struct{ Times, Within, More string }
}

func demonstrations(t *testing.T) map[string]lesson {
	t.Helper()
	files, err := filepath.Glob("../../testdata/demonstrations/*.json")
	require.NoError(t, err)
	require.GreaterOrEqual(t, len(files), 5)
	out := map[string]lesson{}
	for _, file := range files {
		var l lesson
		load(file, &l)
		out[filepath.Base(file)] = l
	}
	return out
}

// begins is what a lesson is opened with: the calculator and its input.
func (l lesson) begins(t *testing.T) (string, any) {
	t.Helper()
	text, name := []byte(l.Input), l.Calculator
	if l.Example != "" {
		var err error
		text, err = os.ReadFile("../../testdata/plans/" + l.Example)
		require.NoError(t, err)
	}
	if l.Station != "" {
		var r struct {
			OK         bool
			Calculator string
			Input      json.RawMessage
		}
		require.NoError(t, json.Unmarshal(Call("station", nil, encode(map[string]any{"plan": json.RawMessage(text), "station": l.Station})), &r))
		require.True(t, r.OK)
		text, name = r.Input, r.Calculator
	}
	var tree any
	require.NoError(t, json.Unmarshal(text, &tree))
	return name, tree
}

// with puts texts into an input.
func with(t *testing.T, tree any, texts map[string]string) json.RawMessage {
	t.Helper()
	var own any
	require.NoError(t, json.Unmarshal(encode(tree), &own))
	for path, text := range texts {
		at := own
		steps := strings.FieldsFunc(path, func(r rune) bool { return strings.ContainsRune(".[]", r) })
		for i, step := range steps {
			switch here := at.(type) {
			case map[string]any:
				if i == len(steps)-1 {
					here[step] = text
				}
				at = here[step]
			case []any:
				n, err := strconv.Atoi(step)
				require.NoError(t, err)
				at = here[n]
			}
		}
	}
	return encode(own)
}

// What a demonstration says is what the calculators answer: so many times as
// much, or at least so much more.
func TestDemonstrations(t *testing.T) {
	for name, l := range demonstrations(t) {
		t.Run(name+" "+l.Source, func(t *testing.T) {
			require.NotEmpty(t, l.Title)
			require.True(t, strings.HasSuffix(l.Question, "?"), l.Question)
			require.Equal(t, 2, strings.Count(l.Told+" ", ". "), "two sentences: %s", l.Told)
			require.NotContains(t, l.Question+l.Told, "!")
			calculator, tree := l.begins(t)
			before := with(t, tree, l.Start)
			var moved any
			require.NoError(t, json.Unmarshal(before, &moved))
			after := with(t, moved, l.Then)
			r := traced(t, "", CurveRequest{Calculator: calculator, Cases: []json.RawMessage{before, after}, Base: before, Vary: l.Vary, Answer: l.Answer, From: l.From, To: l.To})
			require.True(t, r.OK, "%v", r.Faults)
			require.True(t, r.Answered)
			for _, c := range r.Cases {
				require.NotEmpty(t, c.Runs)
				require.NotNil(t, c.Now)
				require.True(t, c.Now[0] >= r.X.Low && c.Now[0] <= r.X.High, "both cases stand on the chart")
			}
			for _, s := range l.Sliders {
				require.True(t, slices.ContainsFunc(r.Sliders, func(x slider) bool { return x.Field == s }), s)
			}
			a, b := r.Cases[0].Now[1], r.Cases[1].Now[1]
			if l.Claim.Times != "" {
				require.InEpsilon(t, number(l.Claim.Times), b/a, number(l.Claim.Within))
				return
			}
			more, err := quantity.Parse[quantity.TempDiff](l.Claim.More, quantity.Metric)
			require.NoError(t, err)
			require.Greater(t, b-a, quantity.In(more, "K"))
		})
	}
}

// In the demonstration of two moulds the plaque goes first though it is listed
// second; poured last, it would be colder than it may be in the ladle that is
// just hot enough for the better order, by the even decay of the ladle (Newton's
// law of cooling).
func TestThinMouldGoesFirst(t *testing.T) {
	l := demonstrations(t)["3-thin-first.json"]
	_, tree := l.begins(t)
	input := with(t, tree, l.Then)
	type mould struct{ Listed, Cold, Low struct{ Value, SI float64 } }
	var r struct {
		Answers struct {
			Moulds   []mould
			StartLow struct{ SI float64 } `json:"start_low"`
		}
	}
	require.NoError(t, json.Unmarshal(Call("order", nil, input), &r))
	require.Equal(t, 2.0, r.Answers.Moulds[0].Listed.Value)
	// The order turned round: the heavy mould's 14 s, the 40 s on the way, and the
	// plaque's own 8 s.
	var late any
	require.NoError(t, json.Unmarshal([]byte(`{"alloy":"silicon-bronze","time_constant":"25 min","moulds":[{"name":"All three","mass":"4 kg","pouring":"62 s","wall":"6 mm"}],"start":"`+
		quantity.Text(quantity.Temperature(r.Answers.StartLow.SI))+`"}`), &late))
	var alone struct{ Answers struct{ Moulds []mould } }
	require.NoError(t, json.Unmarshal(Call("order", nil, encode(late)), &alone))
	m := alone.Answers.Moulds[0]
	require.Less(t, m.Cold.SI, m.Low.SI-20, "more than 20 K too cold")
}

// Every calculator with an answer to follow opens in class, filled in, on a
// curve of one run at least.
func TestOpenings(t *testing.T) {
	var openings map[string]lesson
	load("../../testdata/openings.json", &openings)
	for _, c := range All() {
		if c.open == nil || c.Name == "plan" {
			continue
		}
		t.Run(c.Name, func(t *testing.T) {
			l, ok := openings[c.Name]
			require.True(t, ok, "testdata/openings.json does not say how it opens in class")
			if l.Demonstration != "" {
				l = demonstrations(t)[l.Demonstration]
			}
			name, tree := l.begins(t)
			require.True(t, name == c.Name || name == "")
			r := traced(t, `{"working":true}`, CurveRequest{Calculator: c.Name, Cases: []json.RawMessage{encode(tree)}, Vary: l.Vary, Answer: l.Answer, From: l.From, To: l.To, Rank: true})
			require.True(t, r.OK, "%v", r.Faults)
			require.True(t, r.Answered)
			require.NotEmpty(t, r.Cases[0].Runs)
			first := r.Cases[0].Runs[0][0][1]
			require.True(t, slices.ContainsFunc(r.Cases[0].Runs[0], func(p [2]float64) bool { return p[1] != first }), "%s does not move %s", l.Vary, l.Answer)
			at := slices.IndexFunc(r.Figures, func(f figured) bool { return f.Path == l.Answer })
			require.NotNil(t, r.Figures[at].Step, "the watched answer has a formula to show")
		})
	}
}
