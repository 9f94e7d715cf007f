package plan

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/quantity"
	"pourwright/calc/reply"
	"pourwright/calc/working/stepcheck"
)

func open(t testing.TB, name string) []byte {
	data, err := os.ReadFile(filepath.Join("../../testdata", name))
	require.NoError(t, err)
	return data
}

func work(t testing.TB, data []byte) *Result {
	doc, faults := Read(data, quantity.Metric)
	return Work(doc, faults)
}

// alter sets one value of a plan file, at a path of names.
func alter(t testing.TB, data []byte, value any, path ...string) []byte {
	var tree map[string]any
	require.NoError(t, json.Unmarshal(data, &tree))
	at := tree
	for _, name := range path[:len(path)-1] {
		next, ok := at[name].(map[string]any)
		require.True(t, ok, "%v", path)
		at = next
	}
	at[path[len(path)-1]] = value
	out, err := json.Marshal(tree)
	require.NoError(t, err)
	return out
}

// TestExamples: the three example plans answer in every station that they fill
// in, with nothing to stop the pour, and every step shown is what ran.
func TestExamples(t *testing.T) {
	for _, name := range []string{"relief", "bracket", "bench-end"} {
		t.Run(name, func(t *testing.T) {
			r := work(t, open(t, "plans/"+name+".pour.json"))
			require.Empty(t, r.Faults())
			for _, s := range r.Stations {
				require.Empty(t, stepcheck.Paper(s.Paper), s.Key)
				if s.State == Blank {
					require.Nil(t, s.Out)
					continue
				}
				require.Contains(t, []State{Fine, Minds}, s.State, s.Key)
				require.NotNil(t, s.Out)
			}
			for _, c := range r.Card() {
				require.False(t, c.Text.IsZero(), c.Label)
			}
		})
	}
}

// TestLinks: what is blank is filled from the other stations, what is typed
// goes before it.
func TestLinks(t *testing.T) {
	data := open(t, "plans/bench-end.pour.json")
	r := work(t, data)
	linked := map[string]string{}
	for _, s := range r.Stations {
		for _, l := range s.Linked {
			linked[l.Field] = l.From
		}
	}
	for field, from := range map[string]string{
		"weight.alloy": "metal", "pattern.alloy": "metal", "pattern.sand": "mould", "mould.casting_mass": "weight",
		"pour.poured_mass": "weight", "pour.sprue_height": "mould", "pour.surfaces": "mould", "pour.pour_temperature": "metal",
		"ladle.metal": "weight", "ladle.pour_time": "pour", "handling.metal": "ladle", "handling.carried": "ladle", "handling.hoist": "ladle",
	} {
		require.Equal(t, from, linked[field], field)
	}
	require.Equal(t, r.got.weight.Poured+3, r.got.ladle.Metal, "the ladle holds what the mould takes and the heel")

	own := work(t, alter(t, data, "51 kg", "ladle", "metal"))
	require.InDelta(t, 54, float64(own.got.ladle.Metal), 1e-9)
	for _, l := range own.Station("ladle").Linked {
		require.NotEqual(t, "ladle.metal", l.Field)
	}
}

// TestFaultSilences: a value that cannot be read leaves its station without an
// answer, names itself, and does not disturb the stations that do not need it.
func TestFaultSilences(t *testing.T) {
	data := open(t, "plans/relief.pour.json")
	for name, c := range map[string]struct {
		value   any
		path    []string
		station string
		says    string
	}{
		"not a length":     {"12 blah", []string{"mould", "cope_height"}, "mould", "12 blah"},
		"out of range":     {"9 km", []string{"pour", "thin_wall"}, "pour", "9"},
		"thousands":        {"1,200 kg", []string{"pour", "weights"}, "pour", "1,200"},
		"unknown choice":   {"unobtainium", []string{"metal", "alloy"}, "metal", "unobtainium"},
		"unknown field":    {"x", []string{"ladle", "colour"}, "ladle", "no field"},
		"colder than melt": {"700 °C", []string{"metal", "pour_temperature"}, "metal", "700 °C"},
	} {
		t.Run(name, func(t *testing.T) {
			r := work(t, alter(t, data, c.value, c.path...))
			s := r.Station(c.station)
			require.Equal(t, Fault, s.State)
			require.Nil(t, s.Out)
			require.NotEmpty(t, s.Faults)
			require.Equal(t, strings.Join(c.path, "."), s.Faults[0].Field)
			require.Contains(t, s.Faults[0].Value+" "+s.Faults[0].Why.String(), c.says)
			if name != "unknown choice" {
				require.NotNil(t, r.Station("pattern").Out, "the pattern needs none of it but the metal's name")
			}
		})
	}
}

// TestUnknownStaysUnknown: an empty plan has no answers, no faults and no
// invented numbers; it says what it needs.
func TestUnknownStaysUnknown(t *testing.T) {
	r := work(t, []byte(`{}`))
	require.Empty(t, r.Faults())
	for _, s := range r.Stations {
		require.Equal(t, Blank, s.State, s.Key)
		require.Nil(t, s.Out)
		require.NotEmpty(t, s.Needs, s.Key)
	}
	for _, c := range r.Card() {
		require.True(t, c.Text.IsZero(), c.Label)
	}
}

func TestDocumentFaults(t *testing.T) {
	require.Contains(t, work(t, []byte(`{"format":2}`)).Faults()[0].In(quantity.Metric), "newer release")
	require.Equal(t, "kiln", work(t, []byte(`{"kiln":{}}`)).Faults()[0].Field)
	require.NotEmpty(t, work(t, []byte(`not json`)).Faults())
	require.NotEmpty(t, work(t, []byte(`[1]`)).Faults())
}

// TestDrawing: with and without a layout, every part lies inside the box, and
// casting and sprue inside the flask.
func TestDrawing(t *testing.T) {
	for _, data := range [][]byte{[]byte(`{}`), open(t, "plans/relief.pour.json"), open(t, "plans/bench-end.pour.json"), open(t, "published/pipe.pour.json")} {
		d := work(t, data).drawing()
		var flask [4]float64
		for _, p := range d.Parts {
			if p.ID == "cope" {
				flask = bounds([]Part{{Shapes: p.Shapes[:1]}}, 0)
			}
		}
		for _, p := range d.Parts {
			require.NotEmpty(t, p.Shapes, p.ID)
			require.NotEmpty(t, p.Label)
			b := bounds([]Part{p}, 0)
			require.GreaterOrEqual(t, b[0], d.Box[0], p.ID)
			require.LessOrEqual(t, b[2], d.Box[2], p.ID)
			require.GreaterOrEqual(t, b[1], d.Box[1], p.ID)
			require.LessOrEqual(t, b[3], d.Box[3], p.ID)
			if p.ID == "casting" {
				require.Greater(t, b[0], flask[0])
				require.Less(t, b[2], flask[2])
			}
		}
	}
}

// TestRegressionCard holds the pour cards of the examples as they read, in
// both systems. They are our own numbers and no evidence.
func TestRegressionCard(t *testing.T) {
	for _, name := range []string{"relief", "bracket", "bench-end"} {
		r := work(t, open(t, "plans/"+name+".pour.json"))
		var lines []string
		for _, system := range []quantity.System{quantity.Metric, quantity.US} {
			for _, c := range r.Card() {
				lines = append(lines, c.Label+": "+c.Text.In(system))
			}
		}
		file := "../../testdata/golden/" + name + ".card.txt"
		got := strings.Join(lines, "\n") + "\n"
		if os.Getenv("UPDATE_GOLDEN") != "" && os.Getenv("CI") == "" {
			require.NoError(t, os.MkdirAll(filepath.Dir(file), 0o755))
			require.NoError(t, os.WriteFile(file, []byte(got), 0o644))
		}
		want, err := os.ReadFile(file)
		require.NoError(t, err)
		require.Equal(t, string(want), got, "run with UPDATE_GOLDEN=1 if the change is meant")
	}
}

// FuzzPlan: whatever is typed, the plan answers and its reply is JSON.
func FuzzPlan(f *testing.F) {
	for _, name := range []string{"relief", "bracket", "bench-end"} {
		f.Add(open(f, "plans/"+name+".pour.json"))
	}
	f.Add([]byte(`{"pour":{"thin_wall":"-0"},"mould":{"above":"1e308 m"}}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		w := &reply.Writer{System: quantity.US, Working: true}
		work(t, data).Write(w)
		require.True(t, json.Valid(w.Bytes()))
	})
}
