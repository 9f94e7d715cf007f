package lifting

import "pourwright/calc/source"

// The places of the manual.
var (
	formulas  = source.NIOSHLift.Seen("multipliers and their limits, as transcribed in a public text")
	frequency = source.NIOSHLift.Memory("table 5, frequency multiplier")
	couplings = source.NIOSHLift.Memory("table 7, coupling multiplier")
	gloveNote = source.NIOSHLift.Seen("table 6, note 5")
	scope     = source.NIOSHLift.Seen("p. 6, limitations")
	index     = source.NIOSHLift.Seen("p. 20, lifting index")
	printed   = source.NIOSHLift.Seen("p. 29, two decimals; cells printed otherwise than the formula gives")
)

// frequencyRow is one row of the table: the multipliers for lifts that start
// below 75 cm (30 in) and at or above it, for each duration.
type frequencyRow struct {
	lifts       float64
	low, high   [3]float64
	description string
}

// frequencyTable is the manual's table 5. Columns: up to 1 h, 1 to 2 h, 2 to
// 8 h. From memory; confirmed elsewhere are 0.88 at 3 a minute up to 1 h
// (example 4), 0.13 at 10 a minute from 75 cm over 2 to 8 h, and that the
// column up to 1 h below 75 cm ends after 12.
var frequencyTable = []frequencyRow{
	{0.2, [3]float64{1.00, 0.95, 0.85}, [3]float64{1.00, 0.95, 0.85}, "0.2 or fewer"},
	{0.5, [3]float64{0.97, 0.92, 0.81}, [3]float64{0.97, 0.92, 0.81}, "0.5"},
	{1, [3]float64{0.94, 0.88, 0.75}, [3]float64{0.94, 0.88, 0.75}, "1"},
	{2, [3]float64{0.91, 0.84, 0.65}, [3]float64{0.91, 0.84, 0.65}, "2"},
	{3, [3]float64{0.88, 0.79, 0.55}, [3]float64{0.88, 0.79, 0.55}, "3"},
	{4, [3]float64{0.84, 0.72, 0.45}, [3]float64{0.84, 0.72, 0.45}, "4"},
	{5, [3]float64{0.80, 0.60, 0.35}, [3]float64{0.80, 0.60, 0.35}, "5"},
	{6, [3]float64{0.75, 0.50, 0.27}, [3]float64{0.75, 0.50, 0.27}, "6"},
	{7, [3]float64{0.70, 0.42, 0.22}, [3]float64{0.70, 0.42, 0.22}, "7"},
	{8, [3]float64{0.60, 0.35, 0.18}, [3]float64{0.60, 0.35, 0.18}, "8"},
	{9, [3]float64{0.52, 0.30, 0}, [3]float64{0.52, 0.30, 0.15}, "9"},
	{10, [3]float64{0.45, 0.26, 0}, [3]float64{0.45, 0.26, 0.13}, "10"},
	{11, [3]float64{0.41, 0, 0}, [3]float64{0.41, 0.23, 0}, "11"},
	{12, [3]float64{0.37, 0, 0}, [3]float64{0.37, 0.21, 0}, "12"},
	{13, [3]float64{0, 0, 0}, [3]float64{0.34, 0, 0}, "13"},
	{14, [3]float64{0, 0, 0}, [3]float64{0.31, 0, 0}, "14"},
	{15, [3]float64{0, 0, 0}, [3]float64{0.28, 0, 0}, "15"},
}

// at is the multiplier of a row.
func (r frequencyRow) at(d Duration, high bool) float64 {
	column := map[Duration]int{Short: 0, Moderate: 1, Long: 2}[d]
	if high {
		return r.high[column]
	}
	return r.low[column]
}

// coupling is the manual's table 7: the multiplier for hands below 75 cm
// (30 in) and at or above it.
func coupling(c Coupling, high bool) float64 {
	switch {
	case c == Good:
		return 1
	case c == Poor:
		return 0.90
	case high:
		return 1
	}
	return 0.95
}

// constants are the manual's figures in one of its two forms.
type constants struct {
	length, mass                  string // units
	load, reach, far              float64
	knuckle, perHeight, top       float64
	travel, perTravel             float64
	printedReach, printedDistance map[float64]float64
}

// metricForm and usForm are the manual's two forms. The cells printed otherwise
// than the formula gives: a reach of 22 in (0.46) and 23 in (0.44), a distance
// of 130 cm (0.86).
var (
	metricForm = constants{"cm", "kg", 23, 25, 63, 75, 0.003, 175, 25, 4.5, nil, map[float64]float64{130: 0.86}}
	usForm     = constants{"in", "lb", 51, 10, 25, 30, 0.0075, 70, 10, 1.8, map[float64]float64{22: 0.46, 23: 0.44}, nil}
)
