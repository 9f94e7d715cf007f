package reply

import (
	"encoding/json"
	"math"
	"math/rand"
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

type answers struct {
	Time    quantity.Time               `json:"time" label:"Pouring time" step:"t" hint:"From the lip"`
	Window  quantity.Opt[quantity.Time] `json:"window" label:"Window" step:"w"`
	Boxes   int                         `json:"boxes" label:"Boxes"`
	Safe    bool                        `json:"fits" label:"Fits"`
	Name    string                      `json:"name" label:"Name"`
	Advice  working.Text                `json:"advice" label:"Advice"`
	Source  source.Ref                  `json:"source" label:"Source"`
	Metal   metal                       `json:"metal"`
	Items   []item                      `json:"items"`
	Notes   []working.Text              `json:"notes" label:"Note"`
	Curve   working.Series              `json:"curve"`
	Curves  []working.Series            `json:"curves"`
	Private quantity.Length             `json:"-"`
	hidden  int
}

type metal struct {
	Liquidus quantity.Temperature `json:"liquidus" label:"Liquidus" step:"T_l"`
}

type item struct {
	Size quantity.Length `json:"size" label:"Size" step:"s"`
	Mass quantity.Mass   `json:"mass" label:"Mass" step:"m"`
}

var (
	book  = source.Rao.Memory("ch. 4")
	curve = working.Series{Label: "Left", X: working.Axis{Label: "Time", Kind: quantity.Time(0).Kind()}, Y: working.Axis{Label: "Mass", Kind: quantity.Mass(0).Kind()},
		Points: []working.Point{{X: 0, Y: 25}, {X: 600, Y: 12.3456789}}}
)

func sample() (answers, *working.Paper) {
	p := &working.Paper{}
	p.Step("t", "first thought", 9, "s", "", book)
	p.Step("t", "time", 7.05, "s", "", book)
	p.Step("T_l", "liquidus", 1190, "degC", "", book)
	p.Step("m", "mass of all", 3, "kg", "", book)
	for i, part := range []string{"items[0]", "items[1]"} {
		p.Sub(part).Step("s", "size", float64(i), "mm", "", book)
	}
	return answers{
		Time: 7.05, Boxes: 3, Safe: true, Name: "Plaque", Advice: working.Say("pour below %v", quantity.Temperature(1653.15)), Source: book,
		Metal: metal{1463.15}, Items: []item{{0.42, 1}, {0.1, 2}}, Notes: []working.Text{working.Say("one"), working.Say("two")},
		Curve: curve, Curves: []working.Series{curve},
	}, p
}

func written(t *testing.T, w *Writer) map[string]any {
	t.Helper()
	var out map[string]any
	require.NoError(t, json.Unmarshal(w.Bytes(), &out), "%s", w.Bytes())
	return out
}

func TestAnswers(t *testing.T) {
	out, paper := sample()
	w := &Writer{System: quantity.US}
	w.Answers(out, paper)
	got := written(t, w)
	require.Equal(t, map[string]any{"label": "Pouring time", "hint": "From the lip", "si": 7.05, "text": "7.05 s", "step": 1.0}, got["time"], "points at the last step of the symbol")
	require.Equal(t, map[string]any{"label": "Window", "text": "not known", "unknown": true}, got["window"])
	require.Equal(t, map[string]any{"label": "Boxes", "value": 3.0, "text": "3"}, got["boxes"])
	require.Equal(t, map[string]any{"label": "Fits", "value": true, "text": "yes"}, got["fits"])
	require.Equal(t, map[string]any{"label": "Name", "text": "Plaque"}, got["name"])
	require.Equal(t, map[string]any{"label": "Advice", "text": "pour below 2516 °F"}, got["advice"])
	require.Equal(t, book.String(), got["source"].(map[string]any)["text"])
	require.Equal(t, map[string]any{"liquidus": map[string]any{"label": "Liquidus", "si": 1463.15, "text": "2174 °F", "step": 2.0}}, got["metal"])
	items := got["items"].([]any)
	require.Equal(t, map[string]any{"label": "Size", "si": 0.42, "text": "16.535 in", "step": 4.0}, items[0].(map[string]any)["size"])
	require.Equal(t, 5.0, items[1].(map[string]any)["size"].(map[string]any)["step"], "each item at its own step")
	require.Equal(t, 3.0, items[1].(map[string]any)["mass"].(map[string]any)["step"], "what has no step of its own points at the common one")
	require.Equal(t, []any{map[string]any{"label": "Note", "text": "one"}, map[string]any{"label": "Note", "text": "two"}}, got["notes"])
	require.NotContains(t, got, "-")
	require.Len(t, got, 12)
}

func TestNoPaperNoStep(t *testing.T) {
	out, _ := sample()
	w := &Writer{}
	w.Answers(out, nil)
	require.NotContains(t, string(w.Bytes()), `"step"`)
}

func TestSeries(t *testing.T) {
	out, _ := sample()
	w := &Writer{System: quantity.US}
	w.Answers(out, nil)
	got := written(t, w)
	want := map[string]any{"label": "Left", "xLabel": "Time", "xUnit": "min", "yLabel": "Mass", "yUnit": "lb",
		"points": []any{[]any{0.0, 55.1156}, []any{10.0, 27.2176}}}
	require.Equal(t, want, got["curve"])
	require.Equal(t, []any{want}, got["curves"])
}

// What is not a number must never leave: the writer panics, and the door calls
// that our bug.
func TestNaNPanics(t *testing.T) {
	for _, v := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
		out, paper := sample()
		out.Time = quantity.Time(v)
		require.Panics(t, func() { (&Writer{}).Answers(out, paper) })
		out, paper = sample()
		out.Items[1].Size = quantity.Length(v)
		require.Panics(t, func() { (&Writer{}).Answers(out, paper) })
		out, paper = sample()
		out.Curve.Points = []working.Point{{X: 1, Y: v}}
		require.Panics(t, func() { (&Writer{}).Answers(out, paper) })
		p := &working.Paper{}
		p.Step("t", "time", v, "s", "", book)
		require.Panics(t, func() { (&Writer{}).Steps(p.Steps) })
		require.Panics(t, func() { (&Writer{}).Findings([]working.Finding{{Text: working.Say("it takes %v", quantity.Time(v))}}) })
	}
	require.Panics(t, func() {
		(&Writer{}).Answers(struct {
			X float64 `json:"x"`
		}{1}, nil)
	}, "a bare float says no unit")
}

func TestFaults(t *testing.T) {
	w := &Writer{System: quantity.US}
	w.Raw(`{"faults":`)
	w.Faults(form.Faults{
		{Field: "width", Label: "Width", Value: "3 m", Why: working.Say("it must be at most %v", 2*quantity.Metre)},
		{Field: "mass", Label: "Mass", Why: working.Say("not filled in yet"), Missing: true},
	})
	w.Raw("}")
	require.Equal(t, []any{
		map[string]any{"field": "width", "label": "Width", "value": "3 m", "text": "it must be at most 78.74 in"},
		map[string]any{"field": "mass", "label": "Mass", "text": "not filled in yet", "missing": true},
	}, written(t, w)["faults"])
}

func TestFindings(t *testing.T) {
	w := &Writer{}
	w.Raw(`{"findings":`)
	w.Findings([]working.Finding{
		{Level: working.Stop, Code: "wall-freezes-first", Text: working.Say("the wall of %v freezes first", 6*quantity.Millimetre), Do: working.Say("pour hotter"), Field: "temperature", Part: "items[0]", Source: book},
		{Level: working.Note, Code: "n", Text: working.Say("“quoted” and \"straight\" <b>")},
	})
	w.Raw("}")
	require.Equal(t, []any{
		map[string]any{"level": "stop", "code": "wall-freezes-first", "text": "the wall of 6 mm freezes first", "do": "pour hotter", "field": "temperature", "part": "items[0]", "source": book.String()},
		map[string]any{"level": "note", "code": "n", "text": "“quoted” and \"straight\" <b>"},
	}, written(t, w)["findings"])
}

func TestSteps(t *testing.T) {
	p := &working.Paper{}
	p.Give("W", "metal poured", 25*quantity.Kilogram, "kg")
	p.Const("k", "coefficient", 1.41, "s/kg^0.5", book)
	p.StepNote("t", "time", 7.05, "s", "k * sqrt(W)", book, "light casting")
	p.Sub("items[0]").Solve("x", "root", 2, "mm", "bisection", []string{"W"}, book)
	w := &Writer{}
	w.Raw(`{"steps":`)
	w.Steps(p.Steps)
	w.Raw("}")
	steps := written(t, w)["steps"].([]any)
	first, second := steps[0].(map[string]any), steps[1].(map[string]any)
	require.Equal(t, map[string]any{"symbol": "t", "mark": []any{"mi", "t"}, "what": "time", "text": "7.05 s", "origin": "result"}, first["result"])
	require.Equal(t, "k * sqrt(W)", first["formula"])
	require.Len(t, first["math"], 3)
	require.Equal(t, map[string]any{"symbol": "k", "mark": []any{"mi", "k"}, "what": "coefficient", "text": "1.41 s/kg½", "origin": "constant", "source": book.String()}, first["inputs"].([]any)[0])
	require.Equal(t, "light casting", first["note"])
	require.NotContains(t, first, "method")
	require.NotContains(t, first, "part")
	require.Equal(t, "bisection", second["method"])
	require.Equal(t, "items[0]", second["part"])
	require.NotContains(t, second, "math")
	require.NotContains(t, second, "formula")
}

func TestASCII(t *testing.T) {
	for _, text := range []string{"", `{"a":1}`, `{"t":"1150 °C ± 20 K"}`, `["“½ in”","𝄞","\\°","\"é\""]`, `{"°":"ends in ñ"}`} {
		got := ASCII(nil, []byte(text))
		for _, c := range got {
			require.Less(t, c, byte(0x80), text)
		}
		if text == "" {
			require.Empty(t, got)
			continue
		}
		require.JSONEq(t, text, string(got))
	}
	require.Equal(t, `"\ud834\udd1e"`, string(ASCII(nil, []byte(`"𝄞"`))))
}

func TestHundredths(t *testing.T) {
	random := rand.New(rand.NewSource(5))
	for i := range 20_000 {
		v := random.NormFloat64() * math.Pow(10, float64(i%8-3))
		w := &Writer{}
		w.Hundredths(v)
		got, err := strconv.ParseFloat(string(w.Bytes()), 64)
		require.NoError(t, err)
		require.InDelta(t, v, got, 0.005+1e-9*math.Abs(v), "%v", v)
		require.Equal(t, strconv.FormatFloat(got, 'f', -1, 64), string(w.Bytes()), "%v", v)
	}
	for _, v := range []float64{math.NaN(), math.Inf(1)} {
		require.Panics(t, func() { new(Writer).Hundredths(v) })
	}
}
