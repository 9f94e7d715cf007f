package catalogue

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/reply"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

func asked(t *testing.T, name, options, input string) map[string]any {
	t.Helper()
	var out map[string]any
	require.NoError(t, json.Unmarshal(Call(name, []byte(options), []byte(input)), &out))
	return out
}

func TestList(t *testing.T) {
	for _, units := range []string{"metric", "us"} {
		var l struct {
			OK          bool
			Calculators []struct {
				Name, Title, About string
				Fields             []form.Field
			}
		}
		require.NoError(t, json.Unmarshal(Call("list", []byte(`{"units":"`+units+`"}`), nil), &l))
		require.True(t, l.OK)
		require.Len(t, l.Calculators, len(All()))
		for i, c := range l.Calculators {
			require.Equal(t, All()[i].Name, c.Name)
			require.NotEmpty(t, c.Title)
			require.True(t, strings.HasSuffix(c.About, "."), c.About)
			require.NotEmpty(t, c.Fields)
		}
	}
}

func TestRead(t *testing.T) {
	require.Equal(t, map[string]any{"ok": true, "keep": "16 1/2 in", "shown": "16.5 in"},
		asked(t, "read", `{"units":"us"}`, `{"kind":"length","unit":"in","text":"16 1/2"}`))
	require.Equal(t, map[string]any{"ok": true, "keep": "10.5 mm/m", "shown": "1.05 %"},
		asked(t, "read", ``, `{"kind":"share","unit":"mm/m","text":"10.5"}`))
	bad := asked(t, "read", `{}`, `{"kind":"length","text":"1,200"}`)
	require.Equal(t, false, bad["ok"])
	fault := bad["faults"].([]any)[0].(map[string]any)
	require.Contains(t, fault["text"], "1,200 could mean 1.200 or 1200")
}

// What only our own page can get wrong is our bug, and is said as one.
func TestBroken(t *testing.T) {
	for _, row := range []struct{ name, options, input, says string }{
		{"no-such", "", "{}", "there is no calculator"},
		{"", "", "", "there is no calculator"},
		{"list", "{", "", "options cannot be read"},
		{"list", `{"units":"imperial"}`, "", "neither metric nor us"},
		{"list", `{"unit":"us"}`, "", "unknown field"},
		{"list", `[]`, "", "options cannot be read"},
		{"read", "", "", "question cannot be read"},
		{"read", "", "{", "question cannot be read"},
		{"read", "", `{"kinds":"length"}`, "unknown field"},
	} {
		out := asked(t, row.name, row.options, row.input)
		require.Equal(t, false, out["ok"], row.name)
		require.Contains(t, out["broken"], row.says)
	}
}

// A calculator that panics, or lets out what is not a number, is broken too:
// the caller gets a reply all the same.
func TestPanicsAreBroken(t *testing.T) {
	type in struct {
		A quantity.Length `json:"a" label:"A"`
	}
	type out struct {
		B quantity.Length `json:"b" label:"B"`
	}
	for says, calc := range map[string]func(in, *working.Paper) (out, error){
		"index out of range":  func(in, *working.Paper) (out, error) { return out{quantity.Length([]float64{}[len(all)])}, nil },
		"not a finite number": func(i in, _ *working.Paper) (out, error) { return out{i.A / (i.A - i.A)}, nil },
		"in the working is not a finite": func(i in, p *working.Paper) (out, error) {
			p.Step("x", "x", float64(i.A/(i.A-i.A)), "m", "a", source.Practice("x"))
			return out{}, nil
		},
	} {
		c := entry("c", "C", "C.", calc)
		got := guarded(func() []byte {
			w := &reply.Writer{Working: true}
			c.run(new(Desk), w, []byte(`{"a":"1 m"}`))
			return w.Bytes()
		})
		require.Contains(t, string(got), `"broken"`)
		require.Contains(t, string(got), says)
	}
}

// Every calculator on nothing, on rubbish and on a wrong field.
func TestEveryCalculatorOnRubbish(t *testing.T) {
	for _, c := range All() {
		for _, input := range []string{"", "{", "[]", "7", `"x"`, "null", "{}", `{"no_such_field":1}`, `{} {}`} {
			out := asked(t, c.Name, "", input)
			require.NotContains(t, out, "broken", "%s %s: %v", c.Name, input, out)
			switch {
			case input == "null", input == "{}":
			case c.Name == "plan", (c.Name == "spread" || c.Name == "furnace") && strings.HasPrefix(input, `{"no`): // which answer what they can
			default:
				require.Equal(t, false, out["ok"], "%s %s", c.Name, input)
				require.NotEmpty(t, out["faults"])
			}
		}
	}
}

// The words and ranges of every form hold together.
func TestForms(t *testing.T) {
	for _, c := range All() {
		require.Regexp(t, `^[a-z]+$`, c.Name)
		checkFields(t, c.Name, c.Fields(quantity.Metric), c.Fields(quantity.US))
	}
}

func checkFields(t *testing.T, path string, fields, us []form.Field) {
	t.Helper()
	seen := map[string]form.Field{}
	for i, f := range fields {
		at := path + "." + f.Key
		require.Regexp(t, `^[a-z][a-z0-9_]*$`, f.Key, at)
		require.NotContains(t, seen, f.Key, at)
		require.NotEmpty(t, f.Label, at)
		require.NotContains(t, f.Label+f.Hint+f.Part+f.Link, "!", at)
		require.Equal(t, f.Key, us[i].Key, at)
		if f.Sort == form.Quantity {
			k := kindOf(f)
			if f.Min != "" && f.Max != "" {
				require.Less(t, parse(k, f.Min), parse(k, f.Max), at)
			}
			if f.Default != "" {
				v := parse(k, f.Default)
				require.True(t, f.Min == "" || v >= parse(k, f.Min), at)
				require.True(t, f.Max == "" || v <= parse(k, f.Max), at)
			}
			require.True(t, f.Max != "", "%s has no upper bound, so an answer could overflow", at)
			require.True(t, f.Min != "", "%s has no lower bound, so it could be negative", at)
			if !f.Optional {
				require.Greater(t, parse(k, f.Min), 0.0, "%s must be given, so zero cannot be in its range", at)
			}
		}
		if f.Sort == form.Choice {
			values := map[string]bool{}
			for _, c := range f.Choices {
				require.NotEmpty(t, c.Label, at)
				require.False(t, values[c.Value], "%s: %s twice", at, c.Value)
				values[c.Value] = true
			}
			require.True(t, f.Default == "" || values[f.Default], "%s: default %s", at, f.Default)
		}
		seen[f.Key] = f
		checkFields(t, at, f.Fields, us[i].Fields)
	}
	for _, f := range fields {
		if f.When == nil {
			continue
		}
		other, ok := seen[f.When.Key]
		require.True(t, ok, "%s.%s counts by %s, which is not there", path, f.Key, f.When.Key)
		for _, v := range f.When.Values {
			known := other.Sort == form.Tick && (v == "yes" || v == "no")
			for _, c := range other.Choices {
				known = known || c.Value == v
			}
			require.True(t, known, "%s.%s counts by %s = %s, which cannot be", path, f.Key, f.When.Key, v)
		}
	}
}

// Every answer of every reply is labelled, and a pointer to a step points into
// the steps; the same question in the other units has the same answers.
func TestAnswers(t *testing.T) {
	for name, outcomes := range corpus() {
		t.Run(name, func(t *testing.T) {
			for i, o := range outcomes {
				var r struct {
					OK       bool
					Answers  any
					Steps    []any
					Stations []struct {
						Answers any
						Steps   []any
					}
				}
				require.NoError(t, json.Unmarshal(o.reply, &r))
				if !r.OK {
					continue
				}
				checkAnswers(t, name, r.Answers, len(r.Steps))
				for _, s := range r.Stations {
					checkAnswers(t, name, s.Answers, len(s.Steps))
				}
				if i%10 == 0 && o.from == "random" { // whose values all carry their units
					us := Call(name, []byte(`{"units":"us"}`), o.input)
					require.Equal(t, sizes(t, o.reply), sizes(t, us), "%s", o.input)
				}
			}
		})
	}
}

func checkAnswers(t *testing.T, path string, tree any, steps int) {
	t.Helper()
	switch tree := tree.(type) {
	case map[string]any:
		if text, ok := tree["text"].(string); ok {
			if !strings.HasSuffix(path, ".code") { // which is for programs
				require.NotEmpty(t, tree["label"], "%s has no label", path)
			}
			if n, ok := tree["step"].(float64); ok {
				require.Less(t, int(n), steps, path)
			}
			if tree["si"] != nil {
				require.NotEqual(t, "not known", text, path)
			}
			return
		}
		if tree["points"] != nil {
			require.NotEmpty(t, tree["label"], path)
			require.NotEmpty(t, tree["xLabel"], path)
			require.NotEmpty(t, tree["yLabel"], path)
			return
		}
		for key, v := range tree {
			checkAnswers(t, path+"."+key, v, steps)
		}
	case []any:
		for _, v := range tree {
			checkAnswers(t, path+"[]", v, steps)
		}
	}
}

// sizes collects every SI value of a reply by its path.
func sizes(t *testing.T, text []byte) map[string]float64 {
	t.Helper()
	var r any
	require.NoError(t, json.Unmarshal(text, &r))
	out := map[string]float64{}
	collect(out, "", r)
	return out
}

func collect(out map[string]float64, path string, tree any) {
	switch tree := tree.(type) {
	case map[string]any:
		if si, ok := tree["si"].(float64); ok {
			out[path] = si
		}
		for key, v := range tree {
			collect(out, path+"."+key, v)
		}
	case []any:
		for i, v := range tree {
			collect(out, fmt.Sprintf("%s[%d]", path, i), v)
		}
	}
}

func FuzzCall(f *testing.F) {
	for _, c := range append(All(), Calculator{Name: "list"}, Calculator{Name: "read"}) {
		for _, input := range []string{"", "{}", "null", `{"kind":"length","text":"1 m"}`, `{"alloy":"grey-iron"}`, `[[]]`} {
			f.Add(c.Name, "", []byte(input))
			f.Add(c.Name, `{"units":"us","working":true}`, []byte(input))
		}
	}
	for _, outcomes := range corpus() {
		for _, o := range outcomes[:min(len(outcomes), 3)] {
			f.Add("plan", "", o.input)
		}
	}
	f.Fuzz(func(t *testing.T, name, options string, input []byte) {
		var r struct {
			OK     *bool
			Broken string
			Faults []any
		}
		require.NoError(t, json.Unmarshal(Call(name, []byte(options), input), &r))
		require.NotNil(t, r.OK)
		require.True(t, *r.OK || r.Broken != "" || len(r.Faults) > 0)
		for _, c := range All() {
			if c.Name == name && r.Broken != "" {
				require.Regexp(t, "options|units", r.Broken, "%s", input)
			}
		}
	})
}

func BenchmarkCall(b *testing.B) {
	for _, row := range []struct{ name, input string }{
		{"list", ""},
		{"read", `{"kind":"length","unit":"in","text":"16 1/2"}`},
	} {
		b.Run(row.name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				Call(row.name, nil, []byte(row.input))
			}
		})
	}
}
