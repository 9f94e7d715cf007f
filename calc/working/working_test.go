package working

import (
	"encoding/json"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
)

var book = source.Rao.Memory("ch. 4")

func TestSymbolsOf(t *testing.T) {
	for formula, want := range map[string][]string{
		"k * sqrt(W)":                   {"k", "W"},
		"rho_m * A_c * (h_1 - h_1 / 2)": {"rho_m", "A_c", "h_1"},
		"1e3 * e + 2.5e-6 * x1":         {"e", "x1"},
		"2 * pi * R":                    {"R"},
		"pow(x, n) + max(x, y_max)":     {"x", "n", "y_max"},
		"sqrt (x)":                      {"sqrt", "x"}, // a function's bracket stands close
		"":                              nil,
		"3 * 4.0":                       nil,
		"erf(sqrt_x)":                   {"sqrt_x"},
	} {
		require.Equal(t, want, symbolsOf(formula), formula)
	}
}

// plainMath writes a tree out flat, to be read in a test.
func plainMath(t *testing.T, tree any) string {
	t.Helper()
	parts := tree.([]any)
	name := parts[0].(string)
	if text, ok := parts[1].(string); ok && len(parts) == 2 {
		return text
	}
	var kids []string
	for _, k := range parts[1:] {
		kids = append(kids, plainMath(t, k))
	}
	switch name {
	case "mrow":
		return strings.Join(kids, " ")
	case "mfrac":
		return "{" + kids[0] + " over " + kids[1] + "}"
	case "msqrt":
		return "√{" + kids[0] + "}"
	case "mroot":
		return kids[1] + "√{" + kids[0] + "}"
	case "msup":
		return "{" + kids[0] + "}^{" + kids[1] + "}"
	case "msub":
		return kids[0] + "_" + kids[1]
	}
	t.Fatalf("element %s", name)
	return ""
}

func TestTypeset(t *testing.T) {
	inputs := []Value{
		{Symbol: "W", Value: 25, Unit: "kg"}, {Symbol: "k", Value: 1.41, Unit: "s/kg^0.5"}, {Symbol: "n", Value: 2}, {Symbol: "d", Value: -3, Unit: "mm"},
		{Symbol: "m", Value: -4}, {Symbol: "rho_m", Value: 7200, Unit: "kg/m^3"}, {Symbol: "Delta_T_s", Value: 90, Unit: "K"}, {Symbol: "E", Value: 3.2e9, Unit: "J"},
	}
	for _, row := range []struct{ formula, symbols, values string }{
		{"k * sqrt(W)", "k × √{W}", "1.41 s/kg½ × √{25 kg}"},
		{"cbrt(W)", "3√{W}", "3√{25 kg}"},
		{"pow(W, n)", "{W}^{n}", "{( 25 kg )}^{2}"},
		{"pow(n, 2)", "{n}^{2}", "{2}^{2}"},
		{"pow(m, 2)", "{m}^{2}", "{( −4 )}^{2}"},
		{"pow(W + n, 2)", "{( W + n )}^{2}", "{( 25 kg + 2 )}^{2}"},
		{"W / n", "{W over n}", "{25 kg over 2}"},
		{"W / n / k", "{{W over n} over k}", "{{25 kg over 2} over 1.41 s/kg½}"},
		{"W / (n * k)", "{W over n × k}", "{25 kg over 2 × 1.41 s/kg½}"},
		{"W * n / k", "{W × n over k}", "{25 kg × 2 over 1.41 s/kg½}"},
		{"(W + n) * k", "( W + n ) × k", "( 25 kg + 2 ) × 1.41 s/kg½"},
		{"W - (n - k)", "W − ( n − k )", "25 kg − ( 2 − 1.41 s/kg½ )"},
		{"W - n * k", "W − n × k", "25 kg − 2 × 1.41 s/kg½"},
		{"W * d", "W × d", "25 kg × ( −3 mm )"},
		{"W - d", "W − d", "25 kg − ( −3 mm )"},
		{"W / d", "{W over d}", "{25 kg over −3 mm}"},
		{"-W * n", "( − W ) × n", "( − 25 kg ) × 2"},
		{"rho_m * pi", "ρ_m × π", "7200 kg/m³ × π"},
		{"Delta_T_s + n", "ΔT_s + n", "90 K + 2"},
		{"exp(-n)", "{e}^{− n}", "{e}^{− 2}"},
		{"abs(d)", "| d |", "| −3 mm |"},
		{"ceil(W)", "⌈ W ⌉", "⌈ 25 kg ⌉"},
		{"log10(n)", "log_10 ( n )", "log_10 ( 2 )"},
		{"max(W, n, k)", "max ( W , n , k )", "max ( 25 kg , 2 , 1.41 s/kg½ )"},
		{"1e-6 * W", "{10}^{−6} × W", "{10}^{−6} × 25 kg"},
		{"2.5e+3 * W", "2.5 × {10}^{3} × W", "2.5 × {10}^{3} × 25 kg"},
		{"E / n", "{E over n}", "{3.2 × 10⁹ J over 2}"},
		{"W ? n", "W ? n", "W ? n"}, // not arithmetic: shown as it stands
		{"sqrt(W", "sqrt(W", "sqrt(W"},
	} {
		text := Typeset(Step{Formula: row.formula, Inputs: inputs, Result: Value{Symbol: "t_f", Value: 7.05, Unit: "s"}})
		var rows []any
		require.NoError(t, json.Unmarshal([]byte(text), &rows), text)
		require.Len(t, rows, 3)
		require.Equal(t, "t_f = "+row.symbols, clean(plainMath(t, rows[0])), row.formula)
		require.Equal(t, "= "+row.values, clean(plainMath(t, rows[1])), row.formula)
		require.Equal(t, "= 7.05 s", clean(plainMath(t, rows[2])))
	}
}

// clean takes out the thin space before a unit.
func clean(s string) string { return strings.ReplaceAll(s, "\u2009", "") }

func TestValueString(t *testing.T) {
	for _, row := range []struct {
		v    Value
		want string
	}{
		{Value{Value: 1.41, Unit: "s/kg^0.5"}, "1.41 s/kg½"},
		{Value{Value: 1234.5678, Unit: "mm"}, "1235 mm"},
		{Value{Value: 0.00123456, Unit: "m^2"}, "0.001235 m²"},
		{Value{Value: 0.5, Unit: "1"}, "0.5"},
		{Value{Value: 2}, "2"},
		{Value{Value: 800, Unit: "J/(kg*K)"}, "800 J/(kg·K)"},
		{Value{Value: 1380, Unit: "degC"}, "1380 °C"},
		{Value{Value: 30, Unit: "deg"}, "30°"},
		{Value{Value: 3e-9, Unit: "m^3"}, "3 × 10⁻⁹ m³"},
	} {
		require.Equal(t, row.want, row.v.String())
	}
}

func TestPaper(t *testing.T) {
	p := &Paper{}
	W := p.Give("W", "metal poured", 25*quantity.Kilogram, "kg")
	k := p.Const("k", "coefficient", 1.41, "s/kg^0.5", book)
	s := GiveOpt(p, "s", "spill", quantity.Opt[quantity.Ratio]{V: 0.05, State: quantity.Defaulted}, "1")
	b := GiveOpt(p, "b", "heel", quantity.Some(quantity.Ratio(0.1)), "1")
	n := p.Number("n", "castings", 2, "1")
	x := p.Lookup("x", "from the table", 3, "mm", book, "between the rows 25 and 50 mm")
	require.Equal(t, []float64{25, 1.41, 0.05, 0.1, 2, 3}, []float64{W, k, s, b, n, x})
	got := p.StepNote("t", "time", k*5, "s", "k * sqrt(W)", book, "light casting")
	require.InDelta(t, 7.05, got, 1e-12)
	p.Step("u", "twice the time", 2*got, "s", "2 * t", book)
	p.Solve("v", "root", 1, "m/s", "bisection", []string{"x", "n"}, book)
	require.Empty(t, p.Faults)
	require.Len(t, p.Steps, 3)
	require.Equal(t, []Origin{Constant, Given}, origins(p.Steps[0]))
	require.Equal(t, "light casting", p.Steps[0].Note)
	require.Equal(t, []Origin{Result}, origins(p.Steps[1]))
	require.Equal(t, []Origin{Table, Given}, origins(p.Steps[2]))
	require.Equal(t, "between the rows 25 and 50 mm", p.Steps[2].Inputs[0].Note)
	p.Step("w", "from defaults", 0.15, "1", "s + b", book)
	require.Equal(t, []Origin{Default, Given}, origins(p.Steps[3]))
	// A step keeps the values it was made with.
	p.Give("W", "another", 1*quantity.Kilogram, "kg")
	require.Equal(t, 25.0, p.Steps[0].Inputs[1].Value)
}

func origins(s Step) []Origin {
	var out []Origin
	for _, v := range s.Inputs {
		out = append(out, v.Origin)
	}
	return out
}

// The items of a list know what is common, not each other; all that they write
// lands on the one paper, under their own path.
func TestSub(t *testing.T) {
	p := &Paper{}
	p.Number("a", "common", 1, "1")
	first, second := p.Sub("items[0]"), p.Sub("items[1]")
	first.Number("b", "own", 2, "1")
	first.Step("c", "sum", 3, "1", "a + b", book)
	second.Number("b", "own", 5, "1")
	second.Step("c", "sum", 6, "1", "a + b", book)
	deep := second.Sub("items[1].holes[0]")
	deep.Step("d", "more", 7, "1", "a + c", book)
	deep.Find(Finding{Level: Mind, Code: "x"})
	p.Find(Finding{Level: Note, Code: "y"})
	require.Equal(t, []string{"items[0]", "items[1]", "items[1].holes[0]"}, []string{p.Steps[0].Part, p.Steps[1].Part, p.Steps[2].Part})
	require.Equal(t, 5.0, p.Steps[1].Inputs[1].Value)
	require.Equal(t, "items[1].holes[0]", p.Findings[0].Part)
	require.Empty(t, p.Findings[1].Part)
	require.Empty(t, p.Faults)
	second.Step("e", "lost", 1, "1", "z", book)
	p.Step("f", "not above", 1, "1", "b", book)
	require.Equal(t, []string{"z in z", "b in b"}, p.Faults)
}

// Without a paper the same numbers come out and nothing is written.
func TestNilPaper(t *testing.T) {
	var p *Paper
	require.Equal(t, 25.0, p.Give("W", "", 25*quantity.Kilogram, "kg"))
	require.Equal(t, 0.05, GiveOpt(p, "s", "", quantity.Some(quantity.Ratio(0.05)), "1"))
	require.Equal(t, 1.0, p.Number("n", "", 1, ""))
	require.Equal(t, 2.0, p.Const("k", "", 2, "", book))
	require.Equal(t, 3.0, p.Lookup("x", "", 3, "", book, ""))
	require.Equal(t, 4.0, p.Step("t", "", 4, "", "q", book))
	require.Equal(t, 5.0, p.Solve("v", "", 5, "", "m", []string{"q"}, book))
	require.Nil(t, p.Sub("items[0]"))
	p.Find(Finding{})
}

func TestText(t *testing.T) {
	text := Say("the wall of %v freezes in %v; %v", 6*quantity.Millimetre, 12*quantity.Second, Say("pour below %v", quantity.Temperature(1653.15)))
	require.Equal(t, "the wall of 6 mm freezes in 12 s; pour below 1380 °C", text.String())
	require.Equal(t, "the wall of 0.236 in freezes in 12 s; pour below 2516 °F", text.In(quantity.US))
	require.False(t, text.IsZero())
	require.True(t, Text{}.IsZero())
	require.Equal(t, "5 boxes of oak", Say("%v boxes of %v", 5, "oak").String())
}

func TestWorst(t *testing.T) {
	_, any := Worst(nil)
	require.False(t, any)
	worst, any := Worst([]Finding{{Level: Note}, {Level: Stop}, {Level: Mind}})
	require.True(t, any)
	require.Equal(t, Stop, worst)
	require.Equal(t, []string{"note", "mind", "stop"}, []string{Note.String(), Mind.String(), Stop.String()})
}

func FuzzTypeset(f *testing.F) {
	for _, s := range []string{"k * sqrt(W)", "pow(", "((((", "1e", "-", "a_", "_", "f(,)", "1e-", ")", "a b"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, formula string) {
		symbolsOf(formula)
		var rows []any
		text := Typeset(Step{Formula: formula, Result: Value{Symbol: "x"}})
		require.NoError(t, json.Unmarshal([]byte(text), &rows), text)
	})
}

// A bare paper keeps what is to be minded and nothing else.
func TestBarePaper(t *testing.T) {
	p := &Paper{Bare: true}
	require.False(t, p.Draws())
	require.True(t, (&Paper{Brief: true}).Draws())
	require.False(t, (*Paper)(nil).Draws())
	require.Equal(t, 3.0, p.Number("a", "a", 3, "m"))
	require.Equal(t, 9.0, p.Step("b", "b", 9, "m^2", "a * a", source.Practice("x")))
	sub := p.Sub("items[1]")
	require.Equal(t, 2.0, sub.Solve("c", "c", 2, "m", "by trial", []string{"none"}, source.Practice("x")))
	sub.Find(Finding{Level: Mind, Code: "c", Text: Say("c")})
	require.Empty(t, p.Steps)
	require.Empty(t, p.Places)
	require.Empty(t, p.Faults)
	require.Len(t, p.Findings, 1)
	full, brief := &Paper{}, &Paper{Brief: true}
	for _, row := range []struct {
		p, other *Paper
		within   bool
	}{{nil, nil, true}, {nil, full, true}, {p, nil, false}, {p, full, true}, {p, brief, true}, {p, p, true}, {brief, p, false}, {brief, full, true}, {full, p, false}, {full, brief, false}, {full, full, true}} {
		require.Equal(t, row.within, row.p.Within(row.other))
	}
	require.Equal(t, "items[1]", p.Findings[0].Part)
}
