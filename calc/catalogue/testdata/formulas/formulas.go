// Package formulas is read, never run, by the test that finds formulas.
package formulas

type paper interface {
	Step(symbol, what string, value float64, unit, formula, from string)
	StepNote(symbol, what string, value float64, unit, formula, from, note string)
}

func plain(p paper, symbol string, of func() string) {
	p.Step("x", "", 1, "", "a * b", "")
	p.StepNote("x", "", 1, "", "sqrt("+symbol+") / 2", "", "")
	p.Step("x", "", 1, "", of(), "")
}

func chosen(p paper, large bool) {
	formula := "y"
	if large {
		formula = "z / 2"
	}
	p.Step("x", "", 1, "", formula, "")
}

func grown(p paper, symbols []string) {
	formula := "0"
	for _, s := range symbols {
		formula += " + " + s
	}
	p.Step("x", "", 1, "", formula, "")
}

func helper(p paper, formula string) { p.Step("x", "", 1, "", formula+" + 1", "") }

func other(p paper, formula string) { p.Step("x", "", 1, "", formula, "") }

func caller(p paper) {
	helper(p, "x_1")
	other(p, "x_1")
}
