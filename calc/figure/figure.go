// Package figure holds the one shape in which the data tables keep a number:
// the value to use, the range where sources or the stuff itself differ, and
// where it comes from.
package figure

import (
	"pourwright/calc/quantity"
	"pourwright/calc/source"
)

// Of is a value of one kind of quantity with its range and its source.
type Of[T quantity.Of] struct {
	// V is the value to use where the user has no better one.
	V T
	// Low and High bound V where sources differ or the stuff varies; both are
	// zero where no range is known.
	Low, High T
	// Source of V.
	Source source.Ref
	// Note says why the range is wide, or what V was chosen between; may be
	// empty.
	Note string
}

// New makes a figure of numbers in the named unit of the kind. Low and high
// both 0 mean that no range is known.
func New[T quantity.Of](v, low, high float64, unit string, from source.Ref, note string) Of[T] {
	f := Of[T]{V: quantity.From[T](v, unit), Source: from, Note: note}
	if low != 0 || high != 0 {
		f.Low, f.High = quantity.From[T](low, unit), quantity.From[T](high, unit)
	}
	return f
}

// Ranged reports whether a range is known.
func (f Of[T]) Ranged() bool { return f.Low != 0 || f.High != 0 }

// Span is the range, or V twice where none is known.
func (f Of[T]) Span() (low, high T) {
	if f.Ranged() {
		return f.Low, f.High
	}
	return f.V, f.V
}
