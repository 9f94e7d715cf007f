package pattern

import (
	"strings"

	"pourwright/calc/alloy"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// band is a run of grades that is usual for a metal and a mould.
type band struct {
	low, high int
	source    source.Ref
}

// middle is the grade to suggest: the middle one, the coarser where there are
// two, because a grade too coarse costs chips and one too fine costs castings.
func (b band) middle() int { return (b.low + b.high + 1) / 2 }

func (b band) holds(grade int) bool { return grade >= b.low && grade <= b.high }

// toleranceBand is the run of DCTG usual for hand-moulded single castings and
// short series, basic dimension over 25 mm: ISO/CD 8062-2 table A.2. The draft
// has no row for zinc, which ISO 8062:1994 puts with the copper alloys, nor
// for tin, which is put there too for want of anything better.
func toleranceBand(f alloy.Family, sand string) band {
	from := source.ISO8062CD.Seen("table A.2")
	switch {
	case f == alloy.Zinc:
		from = source.ISO8062Old.Memory("annex A, zinc alloys as copper alloys")
	case f == alloy.Tin:
		from = source.Practice("tin alloys taken as copper alloys")
	}
	light, steel, iron := f == alloy.Aluminium, f == alloy.Steel, f == alloy.GreyIron || f == alloy.DuctileIron
	switch {
	case sand == "clay" && light:
		return band{11, 13, from}
	case sand == "clay":
		return band{13, 15, from}
	case steel:
		return band{12, 14, from}
	case iron:
		return band{11, 14, from}
	}
	return band{10, 13, from}
}

// finer is how many grades finer the suggestion is for a small size, mm: one
// over 16 to 25 mm, two over 10 to 16, three below (ISO/CD 8062-2 table A.2).
func finer(size float64) int {
	switch {
	case size > 25:
		return 0
	case size > 16:
		return 1
	case size > 10:
		return 2
	}
	return 3
}

// allowanceBand is the run of RMAG usual for hand-moulded sand castings, as
// places among A to K.
func allowanceBand(f alloy.Family) band {
	at := func(grade string) int { return strings.Index(rmaGrades, grade) }
	switch f {
	case alloy.Steel:
		return band{at("G"), at("K"), source.GBT6414.Seen("annex B")}
	case alloy.GreyIron, alloy.DuctileIron, alloy.Copper:
		return band{at("F"), at("H"), source.GBT6414.Seen("annex B")}
	case alloy.Tin:
		return band{at("F"), at("H"), source.Practice("tin alloys taken as copper alloys")}
	}
	return band{at("F"), at("H"), source.ISO8062Old.Memory("annex B")}
}

// grades settles the two grades and says how they stand to what is usual.
func (j *job) grades(out *Output, p *working.Paper) {
	tol, rma := toleranceBand(j.metal.Family, j.in.Sand.V), allowanceBand(j.metal.Family)
	bond := map[string]string{"clay": "clay-bonded", "chemical": "chemically bonded"}[j.in.Sand.V]
	out.Grade = j.in.Grade.Or(tol.middle())
	out.GradeBand = working.Say("DCTG %v to %v for %v moulded by hand in %v sand, sizes over 25 mm, %v", tol.low, tol.high, j.metal.Family, bond, tol.source)
	grade := rma.middle()
	if j.in.RMAGrade.Known() {
		grade = strings.Index(rmaGrades, j.in.RMAGrade.V)
	}
	out.RMAGrade = rmaGrades[grade : grade+1]
	out.RMABand = working.Say("RMAG %c to %c for %v moulded by hand in sand, %v", rmaGrades[rma.low], rmaGrades[rma.high], j.metal.Family, rma.source)

	c := allowanceAt(grade, j.overall)
	table := p.Lookup("RMA", "required machining allowance in the table", c.v, "mm", c.source, c.note)
	j.q = p.StepNote("q", "required machining allowance, per face", table, "mm", "RMA", c.source, c.note)
	out.RMA = mm(j.q)
	j.findGrades(tol, rma, grade, out, p)
}

func (j *job) findGrades(tol, rma band, grade int, out *Output, p *working.Paper) {
	if !j.in.Grade.Known() || !j.in.RMAGrade.Known() {
		p.Find(working.Finding{Level: working.Note, Code: "grades-suggested", Field: "grade", Source: tol.source,
			Text: working.Say("DCTG %v and RMAG %v are in use; where you left a grade empty it is a suggestion from the middle of the usual band, and no promise of what this shop holds.", out.Grade, out.RMAGrade),
			Do:   working.Say("Put in the grades that you have agreed with whoever machines the casting.")})
	}
	if j.in.Grade.Known() && !tol.holds(j.in.Grade.V) {
		finer := map[bool]string{true: "finer", false: "coarser"}[j.in.Grade.V < tol.low]
		p.Find(working.Finding{Level: working.Note, Code: "grade-outside", Field: "grade", Source: tol.source,
			Text: working.Say("DCTG %v is %v than is usual for this metal and sand, %v to %v.", j.in.Grade.V, finer, tol.low, tol.high),
			Do:   working.Say("Take DCTG %v unless your own castings show better.", tol.middle())})
	}
	if j.in.RMAGrade.Known() && !rma.holds(grade) {
		p.Find(working.Finding{Level: working.Note, Code: "rma-outside", Field: "rma_grade", Source: rma.source,
			Text: working.Say("RMAG %v is outside what is usual for this metal, %c to %c.", out.RMAGrade, rmaGrades[rma.low], rmaGrades[rma.high]),
			Do:   working.Say("Take RMAG %c unless it was agreed otherwise.", rmaGrades[rma.middle()])})
	}
}

// leastIronStock is the stock that machine shops want on iron so that the
// tool gets under the skin.
const leastIronStock = 2.5 // mm

// findThinStock warns of a skin of iron too thin to get the tool under.
func (j *job) findThinStock(i int, stock float64, p *working.Paper) {
	if j.metal.Family != alloy.GreyIron && j.metal.Family != alloy.DuctileIron || stock >= leastIronStock {
		return
	}
	p.Find(working.Finding{Level: working.Note, Code: "stock-thin", Field: path(i, "machined"), Source: source.Practice("iron is left about 2.5 mm to cut, so that the tool gets under the skin"),
		Text: working.Say("The cut face has %v of stock; in iron the tool may rub on sand and chill.", mm(stock)),
		Do:   working.Say("Take a coarser machining allowance grade, until about %v stands on the face.", mm(leastIronStock))})
}
