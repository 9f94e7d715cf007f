package working

import "strings"

// parseFormula reads a formula (a Go arithmetic expression) into MathML, with
// each name set by sym. It is for show only: the answer was computed by the Go
// code beside the formula, and the tests evaluate the text independently. A
// text that is not such an expression is shown as it stands.
func parseFormula(text string, sym func(string) set) node {
	p := &setter{s: strings.ReplaceAll(text, " ", ""), sym: sym}
	n, ok := p.sum()
	if !ok || p.i != len(p.s) {
		return node{name: "mtext", text: text}
	}
	return n.node
}

// set is a laid-out part and how tightly it binds: 0 sum, 1 product, 2 atom.
type set struct {
	node  node
	binds int
}

type setter struct {
	s   string
	i   int
	sym func(string) set
}

func (p *setter) peek() byte {
	if p.i < len(p.s) {
		return p.s[p.i]
	}
	return 0
}

func (p *setter) sum() (set, bool) {
	left, ok := p.product()
	for ok && (p.peek() == '+' || p.peek() == '-') {
		sign := map[byte]string{'+': "+", '-': "−"}[p.peek()]
		p.i++
		var right set
		right, ok = p.product()
		left = set{row(left.node, op(sign), fence(right, 1)), 0}
	}
	return left, ok
}

func (p *setter) product() (set, bool) {
	left, ok := p.factor()
	for ok && (p.peek() == '*' || p.peek() == '/') {
		divide := p.peek() == '/'
		p.i++
		var right set
		right, ok = p.factor()
		if divide {
			left = set{node{name: "mfrac", kids: []node{left.node, right.node}}, 2}
		} else {
			left = set{row(fence(left, 1), op("×"), fence(right, 1)), 1}
		}
	}
	return left, ok
}

func (p *setter) factor() (set, bool) {
	c := p.peek()
	switch {
	case c == '-':
		p.i++
		x, ok := p.factor()
		return set{row(op("−"), fence(x, 1)), 0}, ok
	case c == '(':
		p.i++
		x, ok := p.sum()
		if !ok || p.peek() != ')' {
			return x, false
		}
		p.i++
		return x, true
	case digit(c) || c == '.':
		start := p.i
		for digit(p.peek()) || p.peek() == '.' || p.peek() == 'e' || (p.peek() == '-' || p.peek() == '+') && p.s[p.i-1] == 'e' {
			p.i++
		}
		return set{number(p.s[start:p.i]), 2}, true
	case letter(c):
		start := p.i
		for letter(p.peek()) || digit(p.peek()) {
			p.i++
		}
		name := p.s[start:p.i]
		if p.peek() == '(' {
			return p.call(name)
		}
		return p.sym(name), true
	}
	return set{}, false
}

func (p *setter) call(name string) (set, bool) {
	p.i++ // the opening bracket
	var args []set
	for {
		x, ok := p.sum()
		if !ok {
			return x, false
		}
		args = append(args, x)
		if p.peek() == ',' {
			p.i++
			continue
		}
		if p.peek() != ')' {
			return x, false
		}
		p.i++
		break
	}
	switch {
	case name == "sqrt" && len(args) == 1:
		return set{node{name: "msqrt", kids: []node{args[0].node}}, 2}, true
	case name == "cbrt" && len(args) == 1:
		return set{node{name: "mroot", kids: []node{args[0].node, {name: "mn", text: "3"}}}, 2}, true
	case name == "pow" && len(args) == 2:
		return set{node{name: "msup", kids: []node{fence(args[0], 2), args[1].node}}, 2}, true
	case name == "exp" && len(args) == 1:
		return set{node{name: "msup", kids: []node{{name: "mi", text: "e"}, args[0].node}}, 2}, true
	case name == "abs" && len(args) == 1:
		return set{row(op("|"), args[0].node, op("|")), 2}, true
	case name == "ceil" && len(args) == 1: // up to the next whole number
		return set{row(op("⌈"), args[0].node, op("⌉")), 2}, true
	}
	fn := node{name: "mi", text: name}
	if name == "log10" {
		fn = node{name: "msub", kids: []node{{name: "mi", text: "log"}, {name: "mn", text: "10"}}}
	}
	inside := []node{op("(")}
	for i, a := range args {
		if i > 0 {
			inside = append(inside, op(","))
		}
		inside = append(inside, a.node)
	}
	inside = append(inside, op(")"))
	return set{row(fn, node{name: "mrow", kids: inside}), 2}, true
}

// number sets 1e-6 as 10 to the power.
func number(text string) node {
	if head, power, ok := strings.Cut(text, "e"); ok {
		ten := node{name: "msup", kids: []node{{name: "mn", text: "10"}, {name: "mn", text: strings.NewReplacer("-", "−", "+", "").Replace(power)}}}
		if head == "1" {
			return ten
		}
		return row(node{name: "mn", text: head}, op("×"), ten)
	}
	return node{name: "mn", text: text}
}

func row(kids ...node) node { return node{name: "mrow", kids: kids} }

// fence puts brackets round a part that binds less tightly than its place.
func fence(x set, place int) node {
	if x.binds >= place {
		return x.node
	}
	return row(op("("), x.node, op(")"))
}
