package pattern

import (
	"fmt"
	"math"

	"pourwright/calc/form"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// rule is one way that stock and tolerance turn a finished size F into the raw
// casting size R: q the required machining allowance, E_c the extra on a cope
// face, T the full casting tolerance.
type rule struct {
	formula string
	raw     func(F, q, E, T float64) float64
	source  source.Ref
	note    string
}

// The rules for outside and inside sizes are those of ISO 8062:1994. Half the
// tolerance is added once whether one face is cut or two: it brings the
// smallest casting of the tolerance (the largest, for a bore) to where each cut
// face still has the required allowance.
//
// A step lies between two faces that look the same way. Where both are cut,
// each gets the same stock on the same side and the step stays as it is; so
// does a centre distance, which the machine sets. Where only the high face is
// cut, its stock lengthens the step; where only the low face is cut, its stock
// shortens it. Half the tolerance goes with the stock for the same reason as
// before. The standard's figure for steps was not at hand; this is derived.
var (
	iso       = source.ISO8062Old.Memory("clause 4, figures 3 to 5")
	stepFaces = source.Derived("stock follows the face that is cut; equal stock on two faces that look the same way cancels")

	asCast  = rule{"F", func(F, q, E, T float64) float64 { return F }, iso, "as cast: no machining, no stock"}
	oneOut  = rule{"F + q + E_c + T / 2", func(F, q, E, T float64) float64 { return F + q + E + T/2 }, iso, "one outside face is cut"}
	bothOut = rule{"F + 2 * q + E_c + T / 2", func(F, q, E, T float64) float64 { return F + 2*q + E + T/2 }, iso, "both outside faces are cut"}
	oneIn   = rule{"F - q - E_c - T / 2", func(F, q, E, T float64) float64 { return F - q - E - T/2 }, iso, "one inside face is cut"}
	bothIn  = rule{"F - 2 * q - E_c - T / 2", func(F, q, E, T float64) float64 { return F - 2*q - E - T/2 }, iso, "both inside faces are cut"}
	cutHigh = rule{"F + q + E_c + T / 2", func(F, q, E, T float64) float64 { return F + q + E + T/2 }, stepFaces, "the high face is cut: its stock lengthens the step"}
	cutLow  = rule{"F - q - E_c - T / 2", func(F, q, E, T float64) float64 { return F - q - E - T/2 }, stepFaces, "the low face is cut: its stock shortens the step"}
	cancel  = rule{"F", func(F, q, E, T float64) float64 { return F }, stepFaces, "both faces look the same way: their stock cancels"}
)

func ruleFor(d Dimension) rule {
	switch cut := d.Machined.V; {
	case cut == "none":
		return asCast
	case d.Kind.V == step && cut == "both":
		return cancel
	case d.Kind.V == step && d.CutFace.V == "low":
		return cutLow
	case d.Kind.V == step:
		return cutHigh
	case d.Kind.V == inside && cut == "both":
		return bothIn
	case d.Kind.V == inside:
		return oneIn
	case cut == "both":
		return bothOut
	}
	return oneOut
}

// gradeFor is the tolerance grade of a dimension at a raw size: the one that
// was put in, or the suggested one made finer for small sizes; for the
// thickness of a wall one grade coarser (ISO 8062-3 table 2, footnote, from
// memory).
func (j *job) gradeFor(d Dimension, size float64) int {
	g := j.in.Grade.V
	if !j.in.Grade.Known() {
		g = toleranceBand(j.metal.Family, j.in.Sand.V).middle() - finer(size)
	}
	if d.Kind.V == wall {
		g++
	}
	return g
}

// toleranceFor reads the dimension's tolerance at a raw size in mm, or takes
// the dimension's own.
func (j *job) toleranceFor(d Dimension, size float64) (cell, bool) {
	if d.Tolerance.Known() {
		return cell{v: float64(d.Tolerance.V) * 1000, note: "your own tolerance", source: source.Own("your own figure goes before the table's")}, true
	}
	return toleranceAt(j.gradeFor(d, size), size)
}

// raw finds the raw casting size and the tolerance there, mm; where the table
// has no tolerance it is not ok, and R is the size that was looked for. The tolerance
// depends on the size and the size on the tolerance: it is read at the
// finished size first and again at each raw size that comes out, until it
// stays. Sizes that grow with the tolerance settle because each pass can only
// go up the rows; a bore may go to and fro between two rows for ever, and then
// the larger tolerance is taken, which leaves the more stock.
func (j *job) raw(i int, d Dimension, p *working.Paper) (R float64, T cell, ok bool) {
	r := ruleFor(d)
	F := p.Give("F", "finished size", d.Size, "mm")
	E := 0.0
	if d.Machined.V != "none" {
		E = giveLength(p, "E_c", "extra stock on the cope face", d.CopeExtra)
	}
	if r.formula == "F" {
		R = p.StepNote("R", "raw casting size", r.raw(F, j.q, E, 0), "mm", r.formula, r.source, r.note)
		T, ok = j.toleranceFor(d, R)
		if ok {
			p.Lookup("T", "casting tolerance, full width", T.v, "mm", T.source, T.note)
		}
		return R, T, ok
	}
	R = F
	T, ok = j.toleranceFor(d, F)
	before := math.NaN()
	for pass := 1; ok; pass++ {
		p.Lookup("T", "casting tolerance, full width", T.v, "mm", T.source, T.note)
		R = p.StepNote("R", "raw casting size", r.raw(F, j.q, E, T.v), "mm", r.formula, r.source, fmt.Sprintf("%s; pass %d", r.note, pass))
		if R <= 0 { // a bore that stock and tolerance have closed
			break
		}
		var again cell
		again, ok = j.toleranceFor(d, R)
		switch {
		case !ok || again.v == T.v:
			return R, again, ok
		case again.v == before:
			return j.larger(i, d, r, F, E, T, again, p)
		}
		before, T = T.v, again
	}
	return R, T, ok
}

// larger ends a bore's going to and fro between two rows of the table.
func (j *job) larger(i int, d Dimension, r rule, F, E float64, T, other cell, p *working.Paper) (float64, cell, bool) {
	if other.v > T.v {
		T, other = other, T
	}
	p.Lookup("T", "casting tolerance, full width", T.v, "mm", T.source, T.note)
	R := p.StepNote("R", "raw casting size", r.raw(F, j.q, E, T.v), "mm", r.formula, r.source, r.note+"; the size goes to and fro between two rows, and the larger tolerance is taken")
	p.Find(working.Finding{Level: working.Note, Code: "tolerance-edge", Field: path(i, "size"), Source: T.source,
		Text: working.Say("The raw size of %v stands at the edge of two rows of the tolerance table, %v and %v; the larger is taken, which leaves the more stock.", labelled(i, d), mm(other.v), mm(T.v))})
	return R, T, true
}

// noTolerance is said where the table has no cell: a fault where stock hangs
// on it, a finding where the casting stays as cast.
func (j *job) noTolerance(i int, d Dimension, R float64, p *working.Paper) {
	finest, coarsest := gradesAt(R)
	why := working.Say("the standard's table has no tolerance of DCTG %v at %v, only DCTG %v to %v; choose one of those, or give this size its own tolerance", j.gradeFor(d, R), mm(R), finest, coarsest)
	if d.Kind.V == wall {
		why = working.Say("%v (a wall takes one grade coarser than the casting)", why)
	}
	if finest == 0 {
		why = working.Say("the standard's table ends at %v, and the raw casting would be %v; give this size its own tolerance", mm(tolerances[len(tolerances)-1].upTo), mm(R))
	}
	if d.Machined.V != "none" {
		j.faults = append(j.faults, form.Fault{Field: path(i, "tolerance"), Label: labelled(i, d) + ", casting tolerance", Why: why})
		return
	}
	p.Find(working.Finding{Level: working.Mind, Code: "tolerance-blank", Field: path(i, "tolerance"), Source: source.ISO8062.Memory("table 2"),
		Text: working.Say("%v: %v.", labelled(i, d), why),
		Do:   working.Say("Agree a tolerance for this size before the pattern is made.")})
}
