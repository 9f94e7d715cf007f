package alloy

import "pourwright/calc/quantity"

// The sections that count as thin and thick in the tables of pouring ranges.
const (
	thinWall  = 10 * quantity.Millimetre
	thickWall = 40 * quantity.Millimetre
)

// PourFor is the usual range of pouring temperatures for a wall: that of light
// sections up to 10 mm, that of heavy ones from 40 mm, and both together in
// between or where the wall is not known.
func (a *Alloy) PourFor(wall quantity.Opt[quantity.Length]) Figure[quantity.Temperature] {
	switch {
	case wall.Known() && wall.V <= thinWall:
		return a.PourThin
	case wall.Known() && wall.V >= thickWall:
		return a.PourThick
	}
	low, high := min(a.PourThin.Low, a.PourThick.Low), max(a.PourThin.High, a.PourThick.High)
	return Figure[quantity.Temperature]{V: (low + high) / 2, Low: low, High: high, Source: a.PourThin.Source, Note: "light and heavy sections together"}
}
