package alloy

import (
	"fmt"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
)

// Contraction is one row of a contraction table: the allowance for castings
// up to a size, free or cored, from one source.
type Contraction struct {
	// UpTo is the largest dimension the row covers; zero for any size.
	UpTo quantity.Length
	// Free and Restrained are shares of the casting size, to be added to it:
	// pattern = casting × (1 + share). Equal where the source does not
	// distinguish. Where the source prints a range only, both are its middle.
	Free, Restrained quantity.Ratio
	// Low and High are the range that the source prints for the row; both zero
	// where it prints single values.
	Low, High quantity.Ratio
}

// Span is the least and the most that the row lets the allowance be.
func (c Contraction) Span() (low, high quantity.Ratio) {
	if c.Low != 0 || c.High != 0 {
		return c.Low, c.High
	}
	return min(c.Free, c.Restrained), max(c.Free, c.Restrained)
}

// ContractionTable is one source's rows, in order of size.
type ContractionTable struct {
	// For is what the source calls the metal; where it is wider or other than
	// the alloy, the words say so.
	For string
	// Unit is the unit that the source prints its sizes in, "mm" or "in".
	Unit string
	// Rows in order of size; the last one covers any size.
	Rows []Contraction
	// Source of the rows.
	Source source.Ref
}

// At returns the row that covers a casting dimension, and words that name the
// row and its neighbours, for the working. A size that ends a row belongs to
// it. The rows are steps in the source, so nothing is interpolated.
func (t ContractionTable) At(size quantity.Length) (row Contraction, note string) {
	i := 0
	for i < len(t.Rows)-1 && size > t.Rows[i].UpTo {
		i++
	}
	row = t.Rows[i]
	switch {
	case len(t.Rows) == 1:
		note = "row any size"
	case i == 0:
		note = fmt.Sprintf("row up to %s; above it %s", t.size(row.UpTo), t.share(t.Rows[1]))
	case i == len(t.Rows)-1:
		note = fmt.Sprintf("row over %s; below it %s", t.size(t.Rows[i-1].UpTo), t.share(t.Rows[i-1]))
	default:
		note = fmt.Sprintf("row over %s to %s; below it %s, above it %s",
			t.size(t.Rows[i-1].UpTo), t.size(row.UpTo), t.share(t.Rows[i-1]), t.share(t.Rows[i+1]))
	}
	return row, t.For + ", " + note
}

func (t ContractionTable) size(l quantity.Length) string { return quantity.FormatIn(l, t.Unit) }

// share writes a row's allowance, "1.04 %", or "1.3 % free, 1.17 % cored".
func (t ContractionTable) share(c Contraction) string {
	if c.Free == c.Restrained {
		return quantity.FormatIn(c.Free, "%")
	}
	return quantity.FormatIn(c.Free, "%") + " free, " + quantity.FormatIn(c.Restrained, "%") + " cored"
}
