// Package quantity holds the typed SI values that every calculator speaks:
// lengths in metres, masses in kilograms, temperatures in kelvin and so on,
// each a defined float64 in the manner of time.Duration, with the constants to
// write one down (3 * quantity.Inch), the parser for what people type in a
// shop (Parse), and the formatter for what they read (Format).
//
// Types guard the edges of the calculators. Inside a body, convert to plain
// float64 with In, compute under the source's own symbols, and convert back:
// the product of two typed values compiles and lies.
package quantity

import "math"

// Any is a value of one of the types of this package.
type Any interface {
	// Kind describes the quantity: its name and its units.
	Kind() *Kind
	// SI is the bare number in the kind's SI unit.
	SI() float64
}

// Of constrains a type parameter to one of the types of this package.
type Of interface {
	~float64
	Any
}

// In returns q as a bare number in the named unit of its kind, for use on the
// first lines of a calculation. It panics where the kind has no such unit,
// which is a fault of the program, never of the caller's data.
func In(q Any, unit string) float64 {
	u := q.Kind().mustUnit(unit)
	return u.from(q.SI())
}

// From returns the quantity that v is in the named unit: the way back from a
// calculation to a typed value. It panics where the kind has no such unit.
func From[T Of](v float64, unit string) T {
	var zero T
	return T(zero.Kind().mustUnit(unit).to(v))
}

// Finite reports whether v is an ordinary number: neither NaN nor infinite.
func Finite(v float64) bool { return !math.IsNaN(v) && !math.IsInf(v, 0) }

// System is the set of units a reader wants to see.
type System int

const (
	// Metric shows millimetres, kilograms and degrees Celsius.
	Metric System = iota
	// US shows inches, pounds and degrees Fahrenheit.
	US
)

// String gives the system's name as the doors spell it: "metric" or "us".
func (s System) String() string {
	if s == US {
		return "us"
	}
	return "metric"
}

// ParseSystem reads "metric" or "us"; the empty string is metric.
func ParseSystem(text string) (System, bool) {
	switch text {
	case "", "metric":
		return Metric, true
	case "us":
		return US, true
	}
	return Metric, false
}
