package rule

import (
	"fmt"
	"math"
	"strings"

	"pourwright/calc/alloy"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// job is one rule being set out.
type job struct {
	in    Input
	scale scale
	sheet sheet
	metal *alloy.Alloy            // nil where only an own figure is given
	table *alloy.ContractionTable // nil where the own figure rules
	size  float64                 // of the casting, mm
}

// Set sets out a contraction rule. It refuses a rule without a metal or an own
// contraction, and a printer that is out by more than a twentieth: such a
// print is not meant to be at full size.
func Set(in Input, p *working.Paper) (Output, error) {
	in, faults := form.Ready(in)
	if err := faults.Err(); err != nil {
		return Output{}, err
	}
	j := &job{in: in, sheet: sheets[in.Paper.V]}
	for _, s := range scales {
		if s.division == in.Division.V {
			j.scale = s
		}
	}
	if err := j.check().Err(); err != nil {
		return Output{}, err
	}
	var out Output
	L := p.Give("L", "length that the rule measures", in.Length, "mm")
	d := p.Number("d", "smallest division", j.scale.fine()*j.scale.mm, "mm")
	// Everything is counted in whole divisions, so that nothing adds up.
	n := p.Solve("n", "divisions on the rule", math.Floor(L/d+1e-9), "1", "the whole divisions in the length of the rule", []string{"L", "d"}, source.Derived("counted"))
	k := j.contraction(&out, p)
	out.True = mm(p.Step("P", "last line of the rule from zero, on paper", n*d*k, "mm", "n * d * k", source.Derived("every size of the casting is drawn as the size of its pattern")))
	c := j.correction(&out, p)
	p.Step("x_n", "the same, as sent to the printer", n*d*k*c, "mm", "n * d * k * c", asPrinted)
	j.lay(&out, n, k, c, p)
	j.find(&out, p)
	return out, nil
}

// mostOut is how far the check length may be off before the print is taken for
// one that was fitted to the page.
const mostOut = 0.05

// check settles the table and finds what does not go together.
func (j *job) check() form.Faults {
	var faults form.Faults
	add := func(field, label, value string, missing bool, why working.Text) {
		faults = append(faults, form.Fault{Field: field, Label: label, Value: value, Why: why, Missing: missing})
	}
	j.size = quantity.In(j.in.Size.Or(j.in.Length), "mm")
	if j.in.Alloy.Known() {
		var ok bool
		if j.metal, ok = alloy.Find(j.in.Alloy.V); !ok {
			panic("rule: the form let an unknown metal through")
		}
	}
	switch {
	case j.in.Own.Known():
	case j.metal == nil:
		add("alloy", "Metal", "", true, working.Say("not chosen yet; choose a metal, or put in your own contraction"))
	case j.in.Table.Known():
		t, others, ok := j.metal.Table(j.in.Table.V)
		if !ok {
			add("table", "Contraction table", string(j.in.Table.V), false,
				working.Say("this source has no table for %v; those that have one: %v", j.metal.Name, strings.Join(others, "; ")))
		}
		j.table = &t
	default:
		j.table = &j.metal.Contractions[0]
	}
	if j.in.Measured.Known() {
		nominal := quantity.From[quantity.Length](j.scale.check*j.scale.mm, "mm")
		sent := nominal * quantity.Length(j.in.PrintedWith.V)
		low, high := sent/(1+mostOut), sent/(1-mostOut)
		if m := j.in.Measured.V; m < low || m > high {
			add("measured", "Check length measured", quantity.Text(m), false,
				working.Say("%v is too far from %v to be the printer's own error; it must lie from %v to %v. Measure the check length of a rule in the same unit, printed at 100 %% with nothing fitted to the page, from end to end", m, nominal, low, high))
		}
	}
	return faults
}

var (
	ownFigure = source.Own("your own figure goes before every table")
	asPrinted = source.Derived("a print that comes out short is sent longer in the same ratio")
)

// contraction works out how much longer than true the rule is, and answers
// pattern over casting.
func (j *job) contraction(out *Output, p *working.Paper) float64 {
	free, held := 0.0, 0.0
	if j.table == nil {
		out.Name, out.Source, out.Row = "Own contraction", ownFigure, "your own figure"
		if j.metal != nil {
			out.Name = j.metal.Name
		}
		free = p.Const("s_f", "your own contraction", float64(j.in.Own.V), "1", ownFigure)
	} else {
		row, note := j.table.At(quantity.From[quantity.Length](j.size, "mm"))
		out.Name, out.Source, out.Row = j.metal.Name, j.table.Source, note
		free = p.Lookup("s_f", "contraction of a free length", float64(row.Free), "1", j.table.Source, note)
		held = p.Lookup("s_r", "contraction of a restrained length", float64(row.Restrained), "1", j.table.Source, note)
	}
	var s float64
	switch {
	case j.table != nil && j.in.Restraint.V == "full":
		s = p.StepNote("s", "contraction", held, "1", "s_r", out.Source, "fully restrained")
	case j.table != nil && j.in.Restraint.V == "partly":
		s = p.Step("s", "contraction", (free+held)/2, "1", "(s_f + s_r) / 2", source.Practice("partly restrained is taken halfway"))
	default:
		s = p.StepNote("s", "contraction", free, "1", "s_f", out.Source, out.Row)
	}
	var k float64
	if j.in.Convention.V == "mould" {
		k = p.Step("k", "pattern over casting", 1/(1-s), "1", "1 / (1 - s)", source.Groover.Memory("ch. 10, contraction rule"))
	} else {
		k = p.Step("k", "pattern over casting", 1+s, "1", "1 + s", source.Rao.Memory("ch. 3, contraction allowance"))
	}
	out.Contraction = quantity.Ratio(s)
	out.PerMetre = quantity.FormatIn(out.Contraction, "mm/m")
	out.PerFoot = quantity.InchFraction(quantity.Length(s)*12*quantity.Inch, 64) + " per ft"
	out.Longer = quantity.Ratio(p.Step("g", "a contraction rule is longer than true by", k-1, "1", "k - 1", source.Derived("a rule drawn larger in the ratio of pattern to casting")))
	return k
}

// correction works out what a print must be multiplied by to come out true.
func (j *job) correction(out *Output, p *working.Paper) float64 {
	N := p.Number("N", "check length, plain and true", j.scale.check*j.scale.mm, "mm")
	c0 := working.GiveOpt(p, "c_0", "correction of the print that was measured", j.in.PrintedWith, "1")
	c := c0
	if j.in.Measured.Known() {
		m := p.Give("m", "that print's check length measured", j.in.Measured.V, "mm")
		c = p.Step("c", "correction for the printer", c0*N/m, "1", "c_0 * N / m", asPrinted)
	} else {
		c = p.StepNote("c", "correction for the printer", c0, "1", "c_0", asPrinted, "no check length measured")
	}
	out.Check, out.CheckSays, out.Correction = mm(N), quantity.FormatIn(mm(N), j.scale.unit), quantity.Number(c)
	out.CorrectionSays = fmt.Sprintf("%.4f", c)
	out.CheckSent = mm(p.Step("N_c", "check length sent to the printer", N*c, "mm", "N * c", asPrinted))
	return c
}

// mm makes a length of a number of millimetres.
func mm(v float64) quantity.Length { return quantity.From[quantity.Length](v, "mm") }
