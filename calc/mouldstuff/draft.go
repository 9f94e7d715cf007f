package mouldstuff

import (
	"fmt"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
)

// DraftSource is the table that Draft reads.
var DraftSource = source.Rao.Memory("table 3.2, draft angles for hand moulding")

// draftRow is a row of the table, angles in degrees on an outside and on an
// inside face; 0 where none is printed.
type draftRow struct {
	upToMM       float64
	wood, smooth [2]float64
}

// draftTable is P. N. Rao's table 3.2 by height of the face.
var draftTable = []draftRow{
	{20, [2]float64{3, 3}, [2]float64{1.5, 3}},
	{50, [2]float64{1.5, 2.5}, [2]float64{1, 2}},
	{100, [2]float64{1, 1.5}, [2]float64{0.75, 1}},
	{200, [2]float64{0.75, 1}, [2]float64{0.5, 0.75}},
	{300, [2]float64{0.5, 1}, [2]float64{0.5, 0.75}},
	{800, [2]float64{0.5, 0.75}, [2]float64{0.35, 0.5}},
	{2000, [2]float64{0.35, 0.5}, [2]float64{}},
	{0, [2]float64{0, 0.25}, [2]float64{}},
}

// Draft is the usual draft angle of a face of the given height, drawn by hand:
// of a wooden pattern, or of a smooth one of metal or plastic; on an outside
// face, or an inside one that the sand grips as it shrinks. The note names the
// row. ok is false where the table has no figure: smooth patterns over 800 mm,
// wooden outside faces over 2 m, and a height that is not positive.
func Draft(height quantity.Length, smooth, inside bool) (angle quantity.Angle, note string, ok bool) {
	if !(height > 0) {
		return 0, "", false
	}
	i := 0
	for i < len(draftTable)-1 && height > quantity.From[quantity.Length](draftTable[i].upToMM, "mm") {
		i++
	}
	r := draftTable[i]
	angles := r.wood
	if smooth {
		angles = r.smooth
	}
	degrees := angles[0]
	if inside {
		degrees = angles[1]
	}
	switch {
	case i == 0:
		note = fmt.Sprintf("row up to %.0f mm", r.upToMM)
	case i == len(draftTable)-1:
		note = fmt.Sprintf("row over %.0f mm", draftTable[i-1].upToMM)
	default:
		note = fmt.Sprintf("row over %.0f to %.0f mm", draftTable[i-1].upToMM, r.upToMM)
	}
	return quantity.From[quantity.Angle](degrees, "deg"), note, degrees > 0
}
