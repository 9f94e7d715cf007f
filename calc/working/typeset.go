package working

import (
	"encoding/json"
	"strings"

	"pourwright/calc/quantity"
)

// String shows the value with its unit, rounded for reading.
func (v Value) String() string {
	unit := PrettyUnit(v.Unit)
	if unit != "" && unit != "°" {
		unit = " " + unit
	}
	return quantity.FormatNumber(v.Value, 4, 6) + unit
}

var pretty = strings.NewReplacer("^0.5", "½", "^(1/3)", "⅓", "^2", "²", "^3", "³", "*", "·", "degC", "°C", "degF", "°F", "deg", "°", "money", quantity.Currency)

// PrettyUnit writes an ASCII unit as print does: "kg/m^3" as "kg/m³".
func PrettyUnit(unit string) string {
	if unit == "1" {
		return ""
	}
	return pretty.Replace(unit)
}

// node is one MathML element: its name, and either text or children.
type node struct {
	name string
	text string
	kids []node
}

// Typeset lays out a step as Presentation MathML in three rows: the formula in
// symbols, the formula with the values put in, and the result. They come as a
// JSON array of three trees of [element, child…] and [element, "text"], for a
// screen that builds elements and never parses markup. The step must have a
// formula.
func Typeset(s Step) string {
	lhs := symbolNode(s.Result.Symbol)
	symbols := parseFormula(s.Formula, func(name string) set { return set{symbolNode(name), 2} })
	values := map[string]string{}
	for _, v := range s.Inputs {
		values[v.Symbol] = v.String()
	}
	numbers := parseFormula(s.Formula, func(name string) set {
		t, ok := values[name]
		switch {
		case !ok:
			return set{symbolNode(name), 2}
		case strings.HasPrefix(t, "-"):
			return set{valueNode(t), 0} // a sign: bracketed after another
		case strings.Contains(t, " "):
			return set{valueNode(t), 1} // a unit: bracketed under a power
		}
		return set{valueNode(t), 2}
	})
	eq := op("=")
	row := node{name: "mrow", kids: []node{lhs, eq, symbols}}
	put := node{name: "mrow", kids: []node{eq, numbers}}
	end := node{name: "mrow", kids: []node{eq, valueNode(s.Result.String())}}
	var b strings.Builder
	b.WriteByte('[')
	for i, n := range []node{row, put, end} {
		if i > 0 {
			b.WriteByte(',')
		}
		n.write(&b)
	}
	b.WriteByte(']')
	return b.String()
}

func (n node) write(b *strings.Builder) {
	b.WriteString(`["` + n.name + `"`)
	if n.text != "" {
		t, err := json.Marshal(n.text)
		if err != nil {
			panic(err) // a string always marshals
		}
		b.WriteByte(',')
		b.Write(t)
	}
	for _, k := range n.kids {
		b.WriteByte(',')
		k.write(b)
	}
	b.WriteByte(']')
}

func op(s string) node { return node{name: "mo", text: s} }

var greek = map[string]string{
	"alpha": "α", "beta": "β", "gamma": "γ", "delta": "δ", "epsilon": "ε", "zeta": "ζ", "eta": "η", "theta": "θ", "kappa": "κ", "lambda": "λ",
	"mu": "μ", "nu": "ν", "xi": "ξ", "pi": "π", "rho": "ρ", "sigma": "σ", "tau": "τ", "phi": "φ", "chi": "χ", "psi": "ψ", "omega": "ω",
	"Delta": "Δ", "Theta": "Θ", "Sigma": "Σ", "Phi": "Φ", "Omega": "Ω",
}

// TypesetSymbol lays out one symbol as Typeset does, for the lines that say
// what each symbol stands for: rho_m as ρ with the subscript m.
func TypesetSymbol(symbol string) string {
	var b strings.Builder
	symbolNode(symbol).write(&b)
	return b.String()
}

// symbolNode sets rho_m as ρ with the subscript m, and Delta_T as ΔT.
func symbolNode(name string) node {
	head, sub, has := strings.Cut(name, "_")
	if head == "Delta" && has {
		what, rest, more := strings.Cut(sub, "_")
		head, sub, has = "Δ"+what, rest, more
	} else if g, ok := greek[head]; ok {
		head = g
	}
	base := node{name: "mi", text: head}
	if !has {
		return base
	}
	if g, ok := greek[sub]; ok {
		sub = g
	}
	return node{name: "msub", kids: []node{base, {name: "mtext", text: strings.ReplaceAll(sub, "_", ",")}}}
}

// valueNode sets a number with its unit.
func valueNode(text string) node {
	text = strings.Replace(text, "-", "−", 1)
	num, unit, has := strings.Cut(text, " ")
	if strings.HasPrefix(unit, "× 10") {
		return node{name: "mn", text: text}
	}
	if !has {
		return node{name: "mn", text: num}
	}
	return node{name: "mrow", kids: []node{{name: "mn", text: num}, {name: "mtext", text: "\u2009" + unit}}}
}
