package rule

import (
	"math"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// largeOut is the correction beyond which the print settings are to be looked
// at before it is believed.
const largeOut = 0.02

var damp = source.Practice("printers scale, and paper moves with damp, about a tenth of a millimetre in 100 mm")

func (j *job) find(out *Output, p *working.Paper) {
	if !j.in.Measured.Known() {
		p.Find(working.Finding{Level: working.Mind, Code: "measure-first", Field: "measured", Source: damp,
			Text: working.Say("Nobody has measured yet what your printer makes of %v.", out.Check),
			Do:   working.Say("Print at full size, 100 %%, and measure the check length before you use the rule. If it is not %v, put in what it measures and print again.", out.Check)})
	} else {
		p.Find(working.Finding{Level: working.Note, Code: "measure-again", Field: "measured", Source: damp,
			Text: working.Say("The print is corrected by %.4f. Its check length should now measure %v.", float64(out.Correction), out.Check),
			Do:   working.Say("Measure it again. If it is something else, put that in, and %.4f as the correction of that print.", float64(out.Correction))})
	}
	if off := math.Abs(float64(out.Correction) - 1); off > largeOut {
		p.Find(working.Finding{Level: working.Mind, Code: "correction-large", Field: "measured", Source: source.Practice("a sound printer at full size is true within a per cent"),
			Text: working.Say("A correction of %v is more than a printer at full size is usually out.", quantity.Ratio(off)),
			Do:   working.Say("See first that the print is at 100 %%, with nothing fitted to the page.")})
	}
	if out.Count > 1 {
		p.Find(working.Finding{Level: working.Note, Code: "joined", Field: "length", Source: source.Practice("a pasted join is seldom truer than two tenths of a millimetre"),
			Text: working.Say("The rule comes in %v strips. Each join can put it out by a few tenths of a millimetre.", out.Count),
			Do:   working.Say("Lay line on line at the joins, and measure the whole against %v when it is pasted.", out.True)})
	}
	j.findContraction(out, p)
}

func (j *job) findContraction(out *Output, p *working.Paper) {
	if j.metal == nil {
		return
	}
	low, high := math.Inf(1), 0.0
	for _, t := range j.metal.Contractions {
		row, _ := t.At(mm(j.size))
		l, h := row.Span()
		low, high = math.Min(low, float64(l)), math.Max(high, float64(h))
	}
	from, to := quantity.Ratio(low), quantity.Ratio(high)
	if j.table == nil {
		// A quarter outside every table, as for the pattern's own figure.
		if own := float64(j.in.Own.V); own > 1.25*high || own < 0.75*low {
			p.Find(working.Finding{Level: working.Mind, Code: "own-far", Field: "own", Source: source.Practice("an own figure a quarter outside every table is looked at twice"),
				Text: working.Say("Your own contraction of %v is far from every table for %v, %v to %v.", j.in.Own.V, j.metal.Name, from, to),
				Do:   working.Say("Look whether the unit is right (per cent, mm/m or in/ft), and measure a casting against its pattern once more.")})
		}
		return
	}
	p.Find(working.Finding{Level: working.Note, Code: "contraction-band", Field: "own", Source: out.Source,
		Text: working.Say("For %v the sources run from %v to %v, which is %v over the length of this rule.", j.metal.Name, from, to, mm((high-low)*quantity.In(j.in.Length, "mm"))),
		Do:   working.Say("Measure a casting of your own against its pattern and put the figure in; it goes before every table.")})
	if rows := j.table.Rows; len(rows) > 1 {
		low, high := quantity.Length(0), quantity.Length(0)
		for _, r := range rows[:len(rows)-1] {
			if mm(j.size) > r.UpTo {
				low = r.UpTo
			} else {
				high = r.UpTo
				break
			}
		}
		sizes := working.Say("over %v", low)
		switch {
		case low == 0:
			sizes = working.Say("up to %v", high)
		case high > 0:
			sizes = working.Say("over %v and up to %v", low, high)
		}
		p.Find(working.Finding{Level: working.Note, Code: "sizes", Field: "size", Source: out.Source,
			Text: working.Say("By this table the rule is for castings %v; for other sizes the table has another figure.", sizes)})
	}
}
