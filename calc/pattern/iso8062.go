package pattern

import (
	"fmt"
	"math"

	"pourwright/calc/source"
)

// Grades of ISO 8062-3: dimensional casting tolerance (DCTG) and required
// machining allowance (RMAG).
const (
	coarsestGrade = 16
	rmaGrades     = "ABCDEFGHJK"
)

// toleranceRow is a bracket of sizes with the tolerance of each grade.
type toleranceRow struct {
	upTo   float64 // mm, inclusive
	grades [coarsestGrade]float64
}

// hair is the rounding of units that a size at the end of a row is allowed.
const hair = 1e-9

// no marks a cell that the table leaves blank.
const no = 0

// tolerances is ISO 8062-3:2007 table 2: total tolerance, mm, of DCTG 1 to 16,
// by the basic dimension of the raw casting. Rows to 400 mm, the beginning of
// the next and the column of DCTG 9 were seen; the rest is from memory (the
// grades CT of ISO 8062:1994 have the same numbers).
var tolerances = []toleranceRow{
	{10, [...]float64{.09, .13, .18, .26, .36, .52, .74, 1, 1.5, 2, 2.8, 4.2, no, no, no, no}},
	{16, [...]float64{.10, .14, .20, .28, .38, .54, .78, 1.1, 1.6, 2.2, 3, 4.4, no, no, no, no}},
	{25, [...]float64{.11, .15, .22, .30, .42, .58, .82, 1.2, 1.7, 2.4, 3.2, 4.6, 6, 8, 10, 12}},
	{40, [...]float64{.12, .17, .24, .32, .46, .64, .90, 1.3, 1.8, 2.6, 3.6, 5, 7, 9, 11, 14}},
	{63, [...]float64{.13, .18, .26, .36, .50, .70, 1, 1.4, 2, 2.8, 4, 5.6, 8, 10, 12, 16}},
	{100, [...]float64{.14, .20, .28, .40, .56, .78, 1.1, 1.6, 2.2, 3.2, 4.4, 6, 9, 11, 14, 18}},
	{160, [...]float64{.15, .22, .30, .44, .62, .88, 1.2, 1.8, 2.5, 3.6, 5, 7, 10, 12, 16, 20}},
	{250, [...]float64{no, .24, .34, .50, .70, 1, 1.4, 2, 2.8, 4, 5.6, 8, 11, 14, 18, 22}},
	{400, [...]float64{no, no, .40, .56, .78, 1.1, 1.6, 2.2, 3.2, 4.4, 6.2, 9, 12, 16, 20, 25}},
	{630, [...]float64{no, no, no, .64, .90, 1.2, 1.8, 2.6, 3.6, 5, 7, 10, 14, 18, 22, 28}},
	{1000, [...]float64{no, no, no, no, 1, 1.4, 2, 2.8, 4, 6, 8, 11, 16, 20, 25, 32}},
	{1600, [...]float64{no, no, no, no, no, 1.6, 2.2, 3.2, 4.6, 7, 9, 13, 18, 23, 29, 37}},
	{2500, [...]float64{no, no, no, no, no, no, 2.6, 3.8, 5.4, 8, 10, 15, 21, 26, 33, 42}},
	{4000, [...]float64{no, no, no, no, no, no, no, 4.4, 6.2, 9, 12, 17, 24, 30, 38, 49}},
	{6300, [...]float64{no, no, no, no, no, no, no, no, 7, 10, 14, 20, 28, 35, 44, 56}},
	{10000, [...]float64{no, no, no, no, no, no, no, no, no, 11, 16, 23, 32, 40, 50, 64}},
}

// cell is a value of one of the tables with the place it was read at.
type cell struct {
	v      float64 // mm
	grade  int
	note   string
	source source.Ref
}

// toleranceAt reads the tolerance of a grade at a size in mm. It is not ok
// where the table has no such cell.
func toleranceAt(grade int, size float64) (cell, bool) {
	over := 0.0
	for _, row := range tolerances {
		if size > row.upTo*(1+hair) {
			over = row.upTo
			continue
		}
		c := cell{v: row.grades[grade-1], grade: grade, source: source.ISO8062.Memory("table 2"),
			note: fmt.Sprintf("DCTG %d, %s, read at %.5g mm", grade, bracket(over, row.upTo), math.Max(size, 0))}
		if row.upTo <= 400 || row.upTo == 630 && grade <= 13 || grade == 9 {
			c.source = source.ISO8062.Seen("table 2")
		}
		return c, c.v != no
	}
	return cell{}, false
}

// gradesAt is the finest and coarsest grade with a tolerance at a size in mm;
// both 0 beyond the table.
func gradesAt(size float64) (finest, coarsest int) {
	for g := 1; g <= coarsestGrade; g++ {
		if _, ok := toleranceAt(g, size); ok {
			coarsest = g
			if finest == 0 {
				finest = g
			}
		}
	}
	return finest, coarsest
}

func bracket(over, upTo float64) string {
	if over == 0 {
		return fmt.Sprintf("sizes up to %g mm", upTo)
	}
	return fmt.Sprintf("sizes over %g to %g mm", over, upTo)
}

// allowanceRow is a bracket of largest sizes with the allowance of each grade.
type allowanceRow struct {
	upTo   float64
	grades [len(rmaGrades)]float64
}

// allowances is the table of required machining allowance of ISO 8062:1994 and
// ISO 8062-3:2007, from memory: mm on each machined face, grades A to K, by
// the largest overall dimension of the machined casting. The casting tolerance
// is not in it and is added on top.
var allowances = []allowanceRow{
	{40, [...]float64{.1, .1, .2, .3, .4, .5, .5, .7, 1, 1.4}},
	{63, [...]float64{.1, .2, .3, .3, .4, .5, .7, 1, 1.4, 2}},
	{100, [...]float64{.2, .3, .4, .5, .7, 1, 1.4, 2, 2.8, 4}},
	{160, [...]float64{.3, .4, .5, .8, 1.1, 1.5, 2.2, 3, 4, 6}},
	{250, [...]float64{.3, .5, .7, 1, 1.4, 2, 2.8, 4, 5.5, 8}},
	{400, [...]float64{.4, .7, .9, 1.3, 1.8, 2.5, 3.5, 5, 7, 10}},
	{630, [...]float64{.5, .8, 1.1, 1.5, 2.2, 3, 4, 6, 9, 12}},
	{1000, [...]float64{.6, .9, 1.2, 1.8, 2.5, 3.5, 5, 7, 10, 14}},
	{1600, [...]float64{.7, 1, 1.4, 2, 2.8, 4, 5.5, 8, 11, 16}},
	{2500, [...]float64{.8, 1.1, 1.6, 2.2, 3.2, 4.5, 6, 9, 13, 18}},
	{4000, [...]float64{.9, 1.3, 1.8, 2.5, 3.5, 5, 7, 10, 14, 20}},
	{6300, [...]float64{1, 1.4, 2, 2.8, 4, 5.5, 8, 11, 16, 22}},
	{10000, [...]float64{1.1, 1.5, 2.2, 3, 4.5, 6, 9, 12, 17, 24}},
}

// allowanceAt reads the machining allowance of a grade (its place among A to
// K) for a largest overall size in mm; sizes over 10 m do not get here, the
// form refuses them.
func allowanceAt(grade int, overall float64) cell {
	over := 0.0
	for _, row := range allowances {
		if overall <= row.upTo*(1+hair) {
			return cell{v: row.grades[grade], source: source.ISO8062.Memory("table of required machining allowances"),
				note: fmt.Sprintf("RMAG %c, largest %s", rmaGrades[grade], bracket(over, row.upTo))}
		}
		over = row.upTo
	}
	panic("pattern: no row of machining allowances")
}
