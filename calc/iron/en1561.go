package iron

import "pourwright/calc/source"

// grades are those of EN 1561, the number being the strength of a bar of
// 30 mm in N/mm².
var grades = [5]float64{150, 200, 250, 300, 350}

var en1561 = source.EN1561.Seen("table of anticipated strength in the casting")

// expected is what the wall of a casting may be expected to have, N/mm², over
// one thickness and up to the next; a dash is 0.
var expected = []struct {
	over, to float64 // mm
	of       [5]float64
}{
	{2.5, 5, [5]float64{180, 230, 0, 0, 0}},
	{5, 10, [5]float64{155, 205, 250, 0, 0}},
	{10, 20, [5]float64{130, 180, 225, 270, 315}},
	{20, 40, [5]float64{110, 155, 195, 240, 280}},
	{40, 80, [5]float64{95, 130, 170, 210, 250}},
	{80, 150, [5]float64{80, 115, 155, 195, 225}},
}
