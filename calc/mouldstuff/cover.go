package mouldstuff

import (
	"fmt"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
)

// CoverSource is the table that SandAround reads.
var CoverSource = source.Dubitskii.Memory("least sand round the pattern by casting mass, single cells in doubt")

// Cover is the least sand to leave round a casting in its mould.
type Cover struct {
	// Top is between the casting and the top of the cope, Bottom under it to
	// the bottom of the drag, Side to the wall of the flask or a neighbour.
	Top, Bottom, Side quantity.Length
	// Sprue is between the sprue and the wall of the flask.
	Sprue quantity.Length
}

// coverRow is a row of the table: kg, and mm all round.
type coverRow struct {
	upToKg                   float64
	top, bottom, side, sprue float64
}

var coverTable = []coverRow{
	{5, 40, 40, 30, 30},
	{10, 50, 50, 40, 40},
	{25, 60, 60, 40, 50},
	{50, 70, 70, 50, 50},
	{100, 90, 90, 50, 60},
	{250, 100, 100, 60, 70},
	{500, 120, 120, 70, 80},
}

// SandAround is the least sand to leave round a casting of the given mass, and
// words that name the row of the table. The figures are defaults for a planner
// and not limits of safety. ok is false over 500 kg, where the table ends, and
// for a mass that is not positive.
func SandAround(casting quantity.Mass) (cover Cover, note string, ok bool) {
	if !(casting > 0) {
		return Cover{}, "", false
	}
	for i, r := range coverTable {
		if casting > quantity.From[quantity.Mass](r.upToKg, "kg") {
			continue
		}
		note = fmt.Sprintf("row up to %.0f kg", r.upToKg)
		if i > 0 {
			note = fmt.Sprintf("row over %.0f to %.0f kg", coverTable[i-1].upToKg, r.upToKg)
		}
		mm := quantity.From[quantity.Length]
		return Cover{mm(r.top, "mm"), mm(r.bottom, "mm"), mm(r.side, "mm"), mm(r.sprue, "mm")}, note, true
	}
	return Cover{}, "", false
}
