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
	// Bands lie behind the curve, and behind the others on the same axes.
	Bands []Band
}

// Axis says what is measured along a side of a chart.
type Axis struct {
	Label string
	Kind  *quantity.Kind
}

// Point is one point of a Series, in SI units.
type Point struct{ X, Y float64 }

// Band is a stretch of an axis that means something, such as a window to stay
// inside: in SI units, along Y where it is upright, else along X. From and To
// bound it along the other axis; where both are 0 it runs all the way.
type Band struct {
	Label     string
	Upright   bool
	Low, High float64
	From, To  float64
}

// Bars is a picture of named stretches along one axis, one below the other,
// such as what freezes when.
type Bars struct {
	// Label names the picture.
	Label string
	// Axis is what is measured.
	Axis Axis
	// Rows from the top down.
	Rows []Bar
	// Bands lie behind the rows, along the axis.
	Bands []Band
}

// Bar is one row: a stretch from From to To in SI units, or a single mark
// where the two are equal. Kind is a word for what it is, such as "riser".
type Bar struct {
	Name, Kind string
	From, To   float64
}
