package catalogue

import (
	"bytes"
	"encoding/json"
	"math/rand"
	"os"
	"path/filepath"
	"slices"
	"sort"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/quantity"
	"pourwright/calc/reply"
	"pourwright/calc/working"
	"pourwright/calc/working/stepcheck"
)

// draws is how many random inputs each calculator is put to; half are made
// from its form alone, half by changing an input that is known to be good.
const draws = 400

// question is one input to a calculator, and where it comes from.
type question struct {
	from  string
	input []byte
}

// outcome is what a question came to.
type outcome struct {
	question
	reply  []byte
	papers []*working.Paper
}

// corpus is every question there is for each calculator, answered: the checks
// and example plans of testdata, and the random ones.
var corpus = sync.OnceValue(func() map[string][]outcome {
	known := map[string][]question{}
	files, err := filepath.Glob("../../testdata/checks/*.json")
	if err != nil {
		panic(err)
	}
	for _, file := range files {
		var checks []struct {
			Source, Calculator, Plan string
			Input                    json.RawMessage
		}
		load(file, &checks)
		for _, c := range checks {
			if c.Plan != "" {
				continue // a whole plan, below
			}
			known[c.Calculator] = append(known[c.Calculator], question{filepath.Base(file) + ": " + c.Source, c.Input})
		}
	}
	plans, err := filepath.Glob("../../testdata/p*/*.json") // plans, published
	if err != nil {
		panic(err)
	}
	sections := map[string][]question{} // a section of a plan is its calculator's input, but may lean on the others
	for _, file := range plans {
		var whole json.RawMessage
		load(file, &whole)
		known["plan"] = append(known["plan"], question{filepath.Base(file), whole})
		var parts map[string]json.RawMessage
		load(file, &parts)
		for name, part := range parts {
			sections[name] = append(sections[name], question{"", part})
		}
	}
	// Corners are inputs for the branches that no check and no luck reaches.
	var corners []struct {
		Why, Calculator string
		Input           json.RawMessage
	}
	load("testdata/corners.json", &corners)
	for _, c := range corners {
		known[c.Calculator] = append(known[c.Calculator], question{c.Why, c.Input})
	}
	out := map[string][]outcome{}
	for _, c := range all {
		alike := append(slices.Clone(known[c.Name]), sections[c.Name]...)
		for _, q := range append(known[c.Name], random(c, alike)...) {
			out[c.Name] = append(out[c.Name], answer(c, q))
		}
	}
	return out
})

func load(file string, to any) {
	text, err := os.ReadFile(file)
	if err == nil {
		err = json.Unmarshal(text, to)
	}
	if err != nil {
		panic(file + ": " + err.Error())
	}
}

// random makes questions from a calculator's form, and by changing ones that
// are alike to good ones.
func random(c Calculator, alike []question) []question {
	g := generator{rand.New(rand.NewSource(1)), quantity.Metric}
	fields := c.Fields(quantity.Metric)
	var out []question
	for i := range draws {
		from, tree := "random", g.group(fields)
		if i%2 == 1 && len(alike) > 0 {
			var good map[string]any
			if err := json.Unmarshal(alike[g.Intn(len(alike))].input, &good); err != nil {
				panic(err)
			}
			from, tree = "altered", g.mutate(good, fields)
		}
		out = append(out, question{from, encode(tree)})
	}
	return out
}

// answer runs a calculator as Call does, and keeps its papers.
func answer(c Calculator, q question) (o outcome) {
	o.question = q
	w := &reply.Writer{System: quantity.Metric, Working: true}
	defer func() {
		if r := recover(); r != nil {
			o.reply = Call(c.Name, []byte(`{"working":true}`), q.input)
		}
	}()
	o.papers = c.run(new(Desk), w, q.input)
	o.reply = bytes.Clone(w.Bytes()) // without the room to spare
	return o
}

// Whatever is asked, inside the ranges of the form, a calculator answers or
// names faults: it is never broken, and no sentence has a hole in it.
func TestNeverBroken(t *testing.T) {
	for name, outcomes := range corpus() {
		t.Run(name, func(t *testing.T) {
			good := 0
			for _, o := range outcomes {
				var r struct {
					OK     bool
					Broken string
					Faults []struct{ Field, Label, Text string }
				}
				require.NoError(t, json.Unmarshal(o.reply, &r), "%s\n%s\n%s", o.from, o.input, o.reply)
				require.Empty(t, r.Broken, "%s\n%s", o.from, o.input)
				require.NotContains(t, string(o.reply), "%!", "%s\n%s", o.from, o.input)
				require.NotContains(t, string(o.reply), "NaN", "%s\n%s", o.from, o.input)
				if r.OK {
					good++
					continue
				}
				require.Contains(t, []string{"random", "altered"}, o.from, "%s\n%s", o.input, o.reply)
				require.NotEmpty(t, r.Faults, string(o.reply))
				for _, f := range r.Faults {
					require.NotEmpty(t, f.Label, string(o.reply))
					require.NotEmpty(t, f.Text, string(o.reply))
				}
			}
			t.Logf("%d of %d answered", good, len(outcomes))
			require.Greater(t, good, len(outcomes)/20, "hardly any random input is answered")
		})
	}
}

// Every step on every paper evaluates, with units, to what was computed.
func TestEveryStepChecks(t *testing.T) {
	for name, outcomes := range corpus() {
		t.Run(name, func(t *testing.T) {
			for _, o := range outcomes {
				for _, p := range o.papers {
					require.Empty(t, stepcheck.Paper(p), "%s\n%s", o.from, o.input)
				}
			}
		})
	}
}

// Every finding names its rule, says what is wrong, and, where it is more than
// a note, what to do.
func TestFindingsAreWhole(t *testing.T) {
	for name, outcomes := range corpus() {
		t.Run(name, func(t *testing.T) {
			for _, o := range outcomes {
				for _, p := range o.papers {
					for _, f := range p.Findings {
						require.Regexp(t, `^[a-z0-9]+(-[a-z0-9]+)*$`, f.Code)
						require.NotEmpty(t, f.Text.String(), f.Code)
						require.NotContains(t, f.Text.String()+f.Do.String(), "!", f.Code)
						require.False(t, f.Source.IsZero(), "%s names no source", f.Code)
						if f.Level > working.Note {
							require.NotEmpty(t, f.Do.String(), "%s does not say what to do", f.Code)
						}
					}
				}
			}
		})
	}
}

// Every formula in the code was reached by the corpus, and so was checked.
func TestEveryFormulaReached(t *testing.T) {
	reached := map[string]bool{}
	for _, outcomes := range corpus() {
		for _, o := range outcomes {
			for _, p := range o.papers {
				for _, s := range p.Steps {
					reached[s.Formula] = true
				}
			}
		}
	}
	var texts []string
	for text := range reached {
		texts = append(texts, text)
	}
	sort.Strings(texts)
	var missing []string
	for _, f := range formulasInCode(t, ".") {
		if !f.reached(texts) {
			missing = append(missing, f.String())
		}
	}
	require.Empty(t, missing, "%d formulas were never reached by a check, an example plan or a random input:\n%s", len(missing), strings.Join(missing, "\n"))
}
