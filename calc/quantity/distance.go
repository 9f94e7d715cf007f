package quantity

import "math"

// Distance is a distance between people and a hazard in metres: a length that
// is paced out, so that it reads in metres or feet, never in millimetres.
type Distance float64

var distanceKind = newKind(Kind{
	Name: "distance",
	Units: []Unit{
		{Symbol: "m", num: 1, den: 1, names: []string{"metre", "metres", "meter", "meters"}},
		{Symbol: "cm", num: 1, den: 100, names: []string{"centimetre", "centimetres", "centimeter", "centimeters"}},
		{Symbol: "mm", num: 1, den: 1000, names: []string{"millimetre", "millimetres", "millimeter", "millimeters"}},
		{Symbol: "ft", num: 3048, den: 10000, names: []string{"'", "foot", "feet", "′"}},
		{Symbol: "in", num: 254, den: 10000, names: []string{"\"", "inch", "inches", "″", "''"}},
	},
	Metric: "m", US: "ft", Canonical: "m",
	metric: []rung{{math.Inf(1), "m"}},
	us:     []rung{{math.Inf(1), "ft"}},
	digits: 3, decimals: 1,
})

// Kind describes distance: its units and how it is shown.
func (q Distance) Kind() *Kind { return distanceKind }

// SI is the bare number in the SI unit.
func (q Distance) SI() float64 { return float64(q) }

// String shows the value in metric units.
func (q Distance) String() string { return Format(q, Metric) }

// MarshalText writes the value with its unit, so that it reads back exactly.
func (q Distance) MarshalText() ([]byte, error) { return marshal(q) }

// UnmarshalText reads what Parse reads, a bare number being metric.
func (q *Distance) UnmarshalText(text []byte) (err error) {
	*q, err = Parse[Distance](string(text), Metric)
	return err
}
