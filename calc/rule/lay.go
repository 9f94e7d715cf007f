package rule

import (
	"math"

	"pourwright/calc/source"
	"pourwright/calc/working"
)

// How a page is used, mm of paper. The strips lie along its long side, one
// beside the other, so that a rule has as few joins as can be.
const (
	furniture = 18 // head and foot of the page, along the long side
	lead      = 6  // from the end of a strip to its first line, and from its last line to its end
	overlap   = 12 // past a join, to paste the next strip on
	across    = 26 // that a strip takes of the short side
	words     = 42 // beside the strips, for the check length and what it says
)

// lay parts a rule of so many divisions into strips, as few as can be and as
// even. A strip ends at a numbered line, where the
// next begins; its lines go on past the join by the overlap, so that the two
// can be laid line on line.
func (j *job) lay(out *Output, last, k, c float64, p *working.Paper) {
	layout := source.Derived("what is left of the page along its long side")
	H := p.Number("H", "long side of the paper", j.sheet.height, "mm")
	e := working.GiveOpt(p, "e", "margin", j.in.Margin, "mm")
	f := p.Number("f", "head and foot of the page, and both ends of a strip", furniture+2*lead, "mm")
	U := p.Step("U", "room for the lines of a strip", H-2*e-f, "mm", "H - 2 * e - f", layout)
	out.Paper = string(j.in.Paper.V)
	out.Margin, out.Run, out.Unit = j.in.Margin.V, mm(U), j.scale.unit
	out.PerPage = int(math.Floor((j.sheet.width - 2*e - words) / across))

	fine := j.scale.fine()
	each := math.Round(j.scale.steps[0] / fine) // divisions between numbers
	sent := func(n float64) float64 { return n * fine * j.scale.mm * k * c }
	most := math.Floor((U-overlap)/sent(each)) * each // on a strip with a join
	count := 1.0
	for sent(last-(count-1)*most) > U {
		count++
	}
	even := math.Ceil(last/each/count) * each
	for from := 0.0; ; {
		to, ends := last, last
		if sent(last-from) > U || from+even < last {
			to = from + even
			ends = math.Min(last, to+math.Floor(overlap/sent(1)))
		}
		i := len(out.Strips)
		out.Strips = append(out.Strips, Strip{Number: i + 1, Page: i/out.PerPage + 1, Place: i%out.PerPage + 1,
			From: mm(from * fine * j.scale.mm), To: mm(to * fine * j.scale.mm), Join: mm(sent(to - from)), Ends: mm(sent(ends - from)),
			Lines: j.lines(from, ends, fine, sent)})
		if to == last {
			break
		}
		from = to
	}
	out.Count = len(out.Strips)
	out.Pages = out.Strips[out.Count-1].Page
}

// lines are those of a strip, by rank. A line has the highest rank whose step
// it falls on.
func (j *job) lines(from, ends, fine float64, sent func(float64) float64) []Lines {
	out := make([]Lines, len(j.scale.steps))
	for n := from; n <= ends; n++ {
		rank := 0
		for math.Mod(n, math.Round(j.scale.steps[rank]/fine)) != 0 {
			rank++
		}
		out[rank].At = append(out[rank].At, mm(sent(n-from)))
		if rank == 0 {
			out[0].Numbers = append(out[0].Numbers, int(math.Round(n*fine)))
		}
	}
	for rank := range out {
		out[rank].Rank = rank
	}
	return out
}
