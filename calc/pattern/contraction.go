package pattern

import (
	"math"
	"strings"

	"pourwright/calc/alloy"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// chooseTable takes the table that was asked for, or the metal's first; for a
// cast working pattern always the first.
func (j *job) chooseTable() {
	if j.in.WorkingAlloy.Known() {
		a, ok := alloy.Find(j.in.WorkingAlloy.V)
		if !ok {
			panic("pattern: the form let an unknown metal through")
		}
		j.second = a.Contractions[0]
	}
	if !j.in.Table.Known() {
		j.table = j.metal.Contractions[0]
		return
	}
	t, others, ok := j.metal.Table(j.in.Table.V)
	if ok {
		j.table = t
		return
	}
	j.faults = append(j.faults, form.Fault{Field: "table", Label: "Contraction table", Value: string(j.in.Table.V),
		Why: working.Say("this source has no table for %v; those that have one: %v", j.metal.Name, strings.Join(others, "; "))})
}

// checkOwn refuses own figures that contradict each other.
func (j *job) checkOwn() {
	if !j.in.OwnRestrained.Known() {
		return
	}
	fault := form.Fault{Field: "own_restrained", Label: "Own contraction, restrained", Value: quantity.Text(j.in.OwnRestrained.V)}
	switch {
	case !j.in.Own.Known():
		fault.Why = working.Say("it stands beside the free figure; fill in your own contraction of a free length as well")
	case j.in.OwnRestrained.V > j.in.Own.V:
		fault.Why = working.Say("%v is more than your own free contraction of %v; a restrained length contracts less, so it must be at most that", j.in.OwnRestrained.V, j.in.Own.V)
	default:
		return
	}
	j.faults = append(j.faults, fault)
}

// figures is the contraction of one length, shares of 1.
type figures struct {
	free, restrained float64
	low, high        float64
	row              string
	source           source.Ref
}

// ownFigure is where a figure of the shop's own stands before the tables.
var ownFigure = source.Own("your own figure goes before every table")

// contractionAt reads the contraction at a casting size in mm. The tables go
// by the size of the single length, not of the whole casting.
func (j *job) contractionAt(size float64) figures {
	if j.in.Own.Known() {
		free := float64(j.in.Own.V)
		restrained := float64(j.in.OwnRestrained.Or(j.in.Own.V))
		return figures{free, restrained, restrained, free, "your own figure", ownFigure}
	}
	return figuresOf(j.table, size)
}

func figuresOf(t alloy.ContractionTable, size float64) figures {
	row, note := t.At(mm(size))
	low, high := row.Span()
	return figures{float64(row.Free), float64(row.Restrained), float64(low), float64(high), note, t.Source}
}

// factor turns a contraction into pattern over casting, in the convention that
// was chosen: 1 + s where s is a share of the casting, 1 ÷ (1 − s) where it is
// a share of the mould. They differ by s².
func (j *job) factor(p *working.Paper, k, s, what string, v float64) float64 {
	if j.in.Convention.V == "mould" {
		return p.Step(k, what, 1/(1-v), "1", "1 / (1 - "+s+")", source.Groover.Memory("ch. 10, contraction rule"))
	}
	return p.Step(k, what, 1+v, "1", "1 + "+s, source.Rao.Memory("ch. 3, contraction allowance"))
}

// nominal puts the contraction of a dimension on the paper. Partly restrained
// is taken halfway.
func (j *job) nominal(d Dimension, f figures, p *working.Paper) float64 {
	free := p.Lookup("s_f", "contraction of a free length", f.free, "1", f.source, f.row)
	held := p.Lookup("s_r", "contraction of a restrained length", f.restrained, "1", f.source, f.row)
	p.Lookup("s_lo", "least contraction of the row", f.low, "1", f.source, f.row)
	p.Lookup("s_hi", "most contraction of the row", f.high, "1", f.source, f.row)
	switch d.Restraint.V {
	case "full":
		return p.StepNote("s", "contraction used", held, "1", "s_r", f.source, "fully restrained; "+f.row)
	case "partly":
		return p.StepNote("s", "contraction used", (free+held)/2, "1", "(s_f + s_r) / 2", source.Practice("partly restrained is taken halfway"), f.row)
	}
	return p.StepNote("s", "contraction used", free, "1", "s_f", f.source, "free to contract; "+f.row)
}

// contraction answers for the casting as a whole, at its largest size, and
// sets the tables side by side there.
func (j *job) contraction(out *Output, p *working.Paper) {
	f := j.contractionAt(j.overall)
	out.Source = f.source
	free := p.Lookup("s_f", "contraction of a free length at the largest size", f.free, "1", f.source, f.row)
	s := p.StepNote("s", "contraction at the largest size, free", free, "1", "s_f", f.source, f.row)
	k := j.factor(p, "k", "s", "pattern over casting", s)
	out.Contraction = share(s)
	out.Rule = share(p.Step("g", "a contraction rule is longer than true by", k-1, "1", "k - 1", source.Derived("a rule drawn larger in the ratio of pattern to casting")))
	out.VolumeGrowth = share(p.Step("g_v", "the pattern's volume is larger by", k*k*k-1, "1", "pow(k, 3) - 1", source.Derived("volume goes with the cube of length")))
	low, high := math.Inf(1), 0.0
	for i, t := range j.metal.Contractions {
		row := j.sideBySide(i, t, p)
		low, high = min(low, float64(row.Low)), max(high, float64(row.High))
		out.Tables = append(out.Tables, row)
	}
	from := source.Derived("over the tables that cover the metal")
	out.Low = share(p.Solve("s_min", "least contraction of all sources", low, "1", "the least of all the tables' figures at the largest size", nil, from))
	out.High = share(p.Solve("s_max", "most contraction of all sources", high, "1", "the most of all the tables' figures at the largest size", nil, from))
	j.findContraction(out, p)
}

func (j *job) sideBySide(i int, t alloy.ContractionTable, p *working.Paper) Table {
	f := figuresOf(t, j.overall)
	item := p.Sub(tablePath(i))
	free := item.Lookup("s_f", "contraction of a free length", f.free, "1", f.source, f.row)
	a := item.Step("a", "added to the largest size", j.overall*free, "mm", "L * s_f", t.Source)
	return Table{Source: t.Source, Row: f.row, Used: !j.in.Own.Known() && t.Source == j.table.Source && t.For == j.table.For,
		Free: share(f.free), Restrained: share(f.restrained), Low: share(f.low), High: share(f.high), Adds: mm(a)}
}

// farOff is how much an own figure may lie outside all tables before it is
// called far: a quarter of them.
const farOff = 0.25

func (j *job) findContraction(out *Output, p *working.Paper) {
	low, high := float64(out.Low), float64(out.High)
	if own := float64(j.in.Own.V); j.in.Own.Known() {
		if own > high*(1+farOff) || own < low*(1-farOff) {
			p.Find(working.Finding{Level: working.Mind, Code: "own-far", Field: "own", Source: source.Practice("an own figure a quarter outside every table is looked at twice"),
				Text: working.Say("Your own contraction of %v is far from every table for %v, %v to %v.", j.in.Own.V, j.metal.Name, out.Low, out.High),
				Do:   working.Say("Look whether the unit is right (per cent, mm/m or in/ft), and measure a casting against its pattern once more.")})
		}
		return
	}
	p.Find(working.Finding{Level: working.Note, Code: "contraction-band", Field: "own", Source: out.Source,
		Text: working.Say("Contraction is a band: for %v the sources run from %v to %v, which is %v on the largest size of %v.", j.metal.Name, out.Low, out.High, mm((high-low)*j.overall), out.Overall),
		Do:   working.Say("Measure a casting of your own against its pattern and put the figure in; it goes before every table.")})
	if j.in.Convention.V == "mould" {
		p.Find(working.Finding{Level: working.Note, Code: "convention-differs", Field: "convention", Source: source.Rao.Memory("ch. 3"),
			Text: working.Say("The tables give contraction as a share of the casting, and you take it as a share of the mould; on the largest size that makes the pattern %v longer.", mm(j.overall*(1/(1-float64(out.Contraction))-1-float64(out.Contraction)))),
			Do:   working.Say("With a table's figure, take it as a share of the casting.")})
	}
}
