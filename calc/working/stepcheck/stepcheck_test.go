package stepcheck

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

var torricelli = source.Hydraulics.Memory("orifices")

// fall is a step that is right: the speed after a fall of 20 cm.
func fall() working.Step {
	return working.Step{
		Result:  working.Value{Symbol: "v", What: "speed", Value: math.Sqrt(2 * 981 * 20), Unit: "cm/s", Origin: working.Result},
		Formula: "sqrt(2 * g * h)",
		Inputs: []working.Value{
			{Symbol: "g", What: "gravity", Value: 9.81, Unit: "m/s^2", Origin: working.Constant, Source: source.Practice("rounded")},
			{Symbol: "h", What: "head", Value: 20, Unit: "cm", Origin: working.Given},
		},
		Source: torricelli,
	}
}

func TestRightStepPasses(t *testing.T) { require.NoError(t, Step(fall())) }

// Everything that can be wrong with a step is caught and named.
func TestCatches(t *testing.T) {
	for says, spoil := range map[string]func(s *working.Step){
		"evaluates to":                             func(s *working.Step) { s.Result.Value *= 1 + 1e-8 },
		"evaluates to 1.98":                        func(s *working.Step) { s.Result.Value = -s.Result.Value },
		"recorded as 1.98":                         func(s *working.Step) { s.Formula = "sqrt(2 * g * h) * 3" },
		"dimension m^1 s^-1, recorded as m^1 s^-2": func(s *working.Step) { s.Result.Unit = "cm/s^2" },
		"dimension m^1 s^-1, recorded as none":     func(s *working.Step) { s.Result.Unit = "" },
		"evaluates to 19.8":                        func(s *working.Step) { s.Inputs[1].Unit = "m" },
		"x has no value":                           func(s *working.Step) { s.Formula = "sqrt(2 * g * x)" },
		"no source":                                func(s *working.Step) { s.Source = source.Ref{} },
		"g has no source":                          func(s *working.Step) { s.Inputs[0].Source = source.Ref{} },
		"h has no source":                          func(s *working.Step) { s.Inputs[1].Origin = working.Table },
		"h is not named":                           func(s *working.Step) { s.Inputs[1].What = "" },
		"the result is not named":                  func(s *working.Step) { s.Result.What = "" },
		"result is not named":                      func(s *working.Step) { s.Result.Symbol = "" },
		"the result is not finite":                 func(s *working.Step) { s.Result.Value = math.NaN() },
		"result is not finite":                     func(s *working.Step) { s.Result.Value = math.Inf(1) },
		"evaluates to NaN":                         func(s *working.Step) { s.Formula = "sqrt(-2 * g * h)" },
		`"furlong" is not known`:                   func(s *working.Step) { s.Result.Unit = "furlong/s" },
		`h: unit "ell"`:                            func(s *working.Step) { s.Inputs[1].Unit = "ell" },
		"neither a formula nor a method":           func(s *working.Step) { s.Formula = "" },
		"missing ','":                              func(s *working.Step) { s.Formula = "sqrt(2 * g" },
		"adds m^1 to none":                         func(s *working.Step) { s.Formula = "h + 1" },
		"adds none to m^1":                         func(s *working.Step) { s.Formula = "1 - h" },
		"sin of something with dimension":          func(s *working.Step) { s.Formula = "sin(h)" },
		"an exponent has dimension":                func(s *working.Step) { s.Formula = "pow(2, h)" },
		"max of m^1 and none":                      func(s *working.Step) { s.Formula = "max(h, 1)" },
		"no function sinh":                         func(s *working.Step) { s.Formula = "sinh(1)" },
		"sqrt does not take 2 values":              func(s *working.Step) { s.Formula = "sqrt(g, h)" },
		"sqrt does not take 0 values":              func(s *working.Step) { s.Formula = "sqrt()" },
		"pow does not take 1 values":               func(s *working.Step) { s.Formula = "pow(h)" },
		"min does not take 0 values":               func(s *working.Step) { s.Formula = "min()" },
		"operator %":                               func(s *working.Step) { s.Formula = "h % g" },
		"operator !":                               func(s *working.Step) { s.Formula = "!h" },
		"not a function":                           func(s *working.Step) { s.Formula = "h.v(2)" },
		"is not arithmetic":                        func(s *working.Step) { s.Formula = "h[2]" },
		"invalid syntax":                           func(s *working.Step) { s.Formula = `"two"` },
	} {
		t.Run(says, func(t *testing.T) {
			s := fall()
			spoil(&s)
			require.ErrorContains(t, Step(s), says)
		})
	}
}

// A formula that uses a symbol that nobody gave is caught where it was written.
func TestPaperCatchesUnknownSymbols(t *testing.T) {
	p := &working.Paper{}
	p.Give("h", "head", 0.2*quantity.Metre, "m")
	p.Step("v", "speed", 1, "m/s", "sqrt(2 * g * h)", torricelli)
	wrong := Paper(p)
	require.NotEmpty(t, wrong)
	require.Contains(t, wrong[0], "g in sqrt(2 * g * h)")

	p = &working.Paper{}
	p.Solve("v", "speed", 1, "m/s", "by trial", []string{"x"}, torricelli)
	require.Contains(t, Paper(p)[0], "x in by trial")
}

// Taking nearly equal values from each other leaves rounding behind, which is
// no fault; a slip of a millionth part of either is.
func TestCancellation(t *testing.T) {
	s := working.Step{Source: torricelli, Formula: "a * a - b * b",
		Result: working.Value{Symbol: "x", What: "x", Value: 0},
		Inputs: []working.Value{{Symbol: "a", What: "a", Value: 1e3 / 3.0}, {Symbol: "b", What: "b", Value: math.Nextafter(1e3/3.0, 0)}}}
	require.NoError(t, Step(s))
	s.Inputs[1].Value *= 1 - 1e-6
	require.Error(t, Step(s))
}

func TestMethodStep(t *testing.T) {
	s := fall()
	s.Formula, s.Method = "", "bisection of the energy balance to 1e-9"
	require.NoError(t, Step(s))
	s.Source = source.Ref{}
	require.ErrorContains(t, Step(s), "no source")
}

// Each operator and function, against Go's own arithmetic.
func TestArithmetic(t *testing.T) {
	a, b := 0.3, 1.7
	for formula, want := range map[string]float64{
		"a + b": a + b, "a - b": a - b, "a * b": a * b, "a / b": a / b, "-a": -a, "(a + b) * a": (a + b) * a,
		"a - b - a": -b, "a / b / a": 1 / b, "2.5e-1 * a": 0.25 * a,
		"sqrt(a)": math.Sqrt(a), "cbrt(a)": math.Cbrt(a), "abs(a - b)": b - a, "pow(a, b)": math.Pow(a, b),
		"min(b, a, 1)": a, "max(a, b, 1)": b, "pi": math.Pi,
		"sin(a)": math.Sin(a), "cos(a)": math.Cos(a), "tan(a)": math.Tan(a), "asin(a)": math.Asin(a), "acos(a)": math.Acos(a), "atan(a)": math.Atan(a),
		"exp(a)": math.Exp(a), "ln(a)": math.Log(a), "log10(a)": math.Log10(a), "erf(a)": math.Erf(a), "erfc(a)": math.Erfc(a), "ceil(b)": 2,
	} {
		s := working.Step{Source: torricelli, Formula: formula,
			Result: working.Value{Symbol: "x", What: "x", Value: want},
			Inputs: []working.Value{{Symbol: "a", What: "a", Value: a}, {Symbol: "b", What: "b", Value: b, Unit: "1"}}}
		require.NoError(t, Step(s), formula)
		s.Result.Value += 1e-6
		require.Error(t, Step(s), formula)
	}
}

// Units as the sources write them, against the exact legal conversions (BIPM,
// The International System of Units, and 1 lb = 0.45359237 kg).
func TestUnits(t *testing.T) {
	for text, want := range map[string]amount{
		"":                {1, 0, dims{}},
		"%":               {0.01, 0, dims{}},
		"kg/m^3":          {1, 0, dims{-3, 1}},
		"g/cm^3":          {1000, 0, dims{-3, 1}},
		"lb/in^3":         {0.45359237 / (0.0254 * 0.0254 * 0.0254), 0, dims{-3, 1}},
		"J/(kg*K)":        {1, 0, dims{2, 0, -2, -1}},
		"kJ/kg/K":         {1000, 0, dims{2, 0, -2, -1}},
		"W/(m*K)":         {1, 0, dims{1, 1, -3, -1}},
		"W*s^0.5/(m^2*K)": {1, 0, dims{0, 1, -2.5, -1}},
		"s/kg^0.5":        {1, 0, dims{0, -0.5, 1}},
		"min/cm^2":        {6e5, 0, dims{-2, 0, 1}},
		"deg":             {math.Pi / 180, 0, dims{}},
		"degF":            {(1 + 459.67) * 5 / 9, 0, dims{0, 0, 0, 1}},
		"degC":            {274.15, 0, dims{0, 0, 0, 1}},
		"N/(m*s)*s":       {1, 0, dims{0, 1, -2}},
		"money/kg":        {1, 0, dims{0, -1, 0, 0, 1}},
	} {
		u, err := parseUnit(text)
		require.NoError(t, err, text)
		got := u.amount(1)
		require.InEpsilon(t, want.v, got.v, 1e-12, text)
		require.True(t, want.dims.same(got.dims), "%s: %v", text, got.dims)
	}
	for _, text := range []string{"furlong", "kg/furlong", "degC/s", "kg^x", "kg m"} {
		_, err := parseUnit(text)
		require.Error(t, err, text)
	}
}

// The two unit tables, kept apart on purpose, agree: every unit of package
// quantity that can be written on a paper has the same size here.
func TestAgreesWithQuantity(t *testing.T) {
	for _, k := range quantity.Kinds() {
		for _, u := range k.Units {
			unit, err := parseUnit(u.Symbol)
			if err != nil {
				continue // a symbol for people, such as mm²
			}
			for _, x := range []float64{1, 20, 1380} {
				si := quantity.InUnit(k, unit.amount(x).v, u.Symbol)
				require.InEpsilon(t, x, si, 1e-12, "%s %s", k.Name, u.Symbol)
			}
		}
	}
}
