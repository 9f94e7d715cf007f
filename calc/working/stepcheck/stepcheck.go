// Package stepcheck proves, in tests, that what a calculator shows is what it
// computed: every recorded formula is parsed as a Go expression, evaluated
// with units from its recorded inputs, and compared with the recorded answer
// in value and in dimension. It cannot catch a source that was misread on both
// sides; only the published examples do that.
package stepcheck

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"math"
	"strconv"

	"pourwright/calc/working"
)

// tolerance is relative, on values recomputed along another road. Where a
// formula takes nearly equal values from each other, the rounding that is left
// over counts too, slack times what this road's own came to.
const (
	tolerance = 1e-9
	slack     = 100
)

// Paper checks every step of a paper and returns what is wrong, a line each.
func Paper(p *working.Paper) []string {
	wrong := append([]string{}, p.Faults...)
	for _, s := range p.Steps {
		if err := Step(s); err != nil {
			wrong = append(wrong, fmt.Sprintf("%s: %s = %s: %v", s.Part, s.Result.Symbol, s.Formula, err))
		}
	}
	return wrong
}

// Step checks one step. A step with a method instead of a formula must say
// its method, name a source and have a finite result.
func Step(s working.Step) error {
	if s.Source.IsZero() {
		return fmt.Errorf("no source")
	}
	if s.Result.What == "" || s.Result.Symbol == "" {
		return fmt.Errorf("the result is not named")
	}
	for _, in := range s.Inputs {
		if in.What == "" {
			return fmt.Errorf("%s is not named", in.Symbol)
		}
		if (in.Origin == working.Constant || in.Origin == working.Table) && in.Source.IsZero() {
			return fmt.Errorf("%s has no source", in.Symbol)
		}
	}
	unit, err := parseUnit(s.Result.Unit)
	if err != nil {
		return err
	}
	if math.IsNaN(s.Result.Value) || math.IsInf(s.Result.Value, 0) {
		return fmt.Errorf("the result is not finite")
	}
	if s.Formula == "" {
		if s.Method == "" {
			return fmt.Errorf("neither a formula nor a method")
		}
		return nil
	}
	expr, err := parser.ParseExpr(s.Formula)
	if err != nil {
		return err
	}
	env := map[string]amount{"pi": rounded(math.Pi, 0, dims{})}
	for _, in := range s.Inputs {
		u, err := parseUnit(in.Unit)
		if err != nil {
			return fmt.Errorf("%s: %v", in.Symbol, err)
		}
		env[in.Symbol] = u.amount(in.Value)
	}
	got, err := eval(expr, env)
	if err != nil {
		return err
	}
	want := unit.amount(s.Result.Value)
	if !got.dims.same(want.dims) {
		return fmt.Errorf("dimension %v, recorded as %v", got.dims, want.dims)
	}
	if diff := math.Abs(got.v - want.v); !(diff <= tolerance*math.Abs(want.v)+slack*got.off) { // so that NaN fails
		return fmt.Errorf("evaluates to %v, recorded as %v (SI)", got.v, want.v)
	}
	return nil
}

// amount is a value in SI, how far rounding can have put it off, and its
// dimension.
type amount struct {
	v, off float64
	dims   dims
}

// rounded is a value that came out of an operation with the error off, and was
// rounded once more.
func rounded(v, off float64, d dims) amount { return amount{v, off + 0x1p-52*math.Abs(v), d} }

func eval(e ast.Expr, env map[string]amount) (amount, error) {
	switch e := e.(type) {
	case *ast.ParenExpr:
		return eval(e.X, env)
	case *ast.BasicLit:
		v, err := strconv.ParseFloat(e.Value, 64)
		return rounded(v, 0, dims{}), err
	case *ast.Ident:
		a, ok := env[e.Name]
		if !ok {
			return amount{}, fmt.Errorf("%s has no value", e.Name)
		}
		return a, nil
	case *ast.UnaryExpr:
		x, err := eval(e.X, env)
		if e.Op != token.SUB {
			return x, fmt.Errorf("operator %s", e.Op)
		}
		x.v = -x.v
		return x, err
	case *ast.BinaryExpr:
		return binary(e, env)
	case *ast.CallExpr:
		return call(e, env)
	}
	return amount{}, fmt.Errorf("%T is not arithmetic", e)
}

func binary(e *ast.BinaryExpr, env map[string]amount) (amount, error) {
	x, err := eval(e.X, env)
	if err != nil {
		return x, err
	}
	y, err := eval(e.Y, env)
	if err != nil {
		return y, err
	}
	switch e.Op {
	case token.MUL:
		return rounded(x.v*y.v, math.Abs(x.v)*y.off+math.Abs(y.v)*x.off, x.dims.plus(y.dims, 1)), nil
	case token.QUO:
		return rounded(x.v/y.v, (x.off+math.Abs(x.v/y.v)*y.off)/math.Abs(y.v), x.dims.plus(y.dims, -1)), nil
	case token.ADD, token.SUB:
		if !x.dims.same(y.dims) {
			return x, fmt.Errorf("adds %v to %v", x.dims, y.dims)
		}
		if e.Op == token.SUB {
			y.v = -y.v
		}
		return rounded(x.v+y.v, x.off+y.off, x.dims), nil
	}
	return x, fmt.Errorf("operator %s", e.Op)
}

var plainFuncs = map[string]func(float64) float64{
	"sin": math.Sin, "cos": math.Cos, "tan": math.Tan, "asin": math.Asin, "acos": math.Acos, "atan": math.Atan,
	"exp": math.Exp, "ln": math.Log, "log10": math.Log10, "erf": math.Erf, "erfc": math.Erfc, "ceil": math.Ceil, "floor": math.Floor,
}

func call(e *ast.CallExpr, env map[string]amount) (amount, error) {
	name, ok := e.Fun.(*ast.Ident)
	if !ok {
		return amount{}, fmt.Errorf("calls something that is not a function")
	}
	args := make([]amount, len(e.Args))
	for i, a := range e.Args {
		var err error
		if args[i], err = eval(a, env); err != nil {
			return args[i], err
		}
	}
	fits := len(args) == 1
	switch name.Name {
	case "pow":
		fits = len(args) == 2
	case "min", "max":
		fits = len(args) > 0
	}
	if !fits {
		return amount{}, fmt.Errorf("%s does not take %d values", name.Name, len(args))
	}
	switch name.Name {
	case "sqrt":
		return through(math.Sqrt, args[0], args[0].dims.times(0.5)), nil
	case "cbrt":
		return through(math.Cbrt, args[0], args[0].dims.times(1.0/3)), nil
	case "abs":
		return through(math.Abs, args[0], args[0].dims), nil
	case "pow":
		if !args[1].dims.same(dims{}) {
			return amount{}, fmt.Errorf("an exponent has dimension %v", args[1].dims)
		}
		power := func(x float64) float64 { return math.Pow(x, args[1].v) }
		return through(power, args[0], args[0].dims.times(args[1].v)), nil
	case "min", "max":
		out := args[0]
		for _, a := range args[1:] {
			if !a.dims.same(out.dims) {
				return out, fmt.Errorf("%s of %v and %v", name.Name, out.dims, a.dims)
			}
			if name.Name == "min" && a.v < out.v || name.Name == "max" && a.v > out.v {
				out = a
			}
		}
		return out, nil
	}
	f, ok := plainFuncs[name.Name]
	if !ok {
		return amount{}, fmt.Errorf("no function %s", name.Name)
	}
	if !args[0].dims.same(dims{}) {
		return amount{}, fmt.Errorf("%s of something with dimension %v", name.Name, args[0].dims)
	}
	return through(f, args[0], dims{}), nil
}

// through puts a value through a function of one argument.
func through(f func(float64) float64, x amount, d dims) amount {
	v := f(x.v)
	off := 0.0
	for _, beside := range []float64{f(x.v - x.off), f(x.v + x.off)} {
		if !math.IsNaN(beside) { // as the root beside zero is
			off = math.Max(off, math.Abs(beside-v))
		}
	}
	return rounded(v, off, d)
}
