package working

import "pourwright/calc/quantity"

// Series is a run of points for a chart: one quantity against another.
type Series struct {
	// Label names the curve.
	Label string
	// X and Y are the quantities' kinds and labels.
	X, Y Axis
	// Points in SI units, in order of X.
	Points []Point
}

// Axis says what is measured along a side of a chart.
type Axis struct {
	Label string
	Kind  *quantity.Kind
}

// Point is one point of a Series, in SI units.
type Point struct{ X, Y float64 }
