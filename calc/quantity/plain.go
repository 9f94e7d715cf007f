package quantity

import "math"

// Ratio is a dimensionless share, 1 being the whole; typed in per cent, or as a contraction in mm/m or in/ft.
type Ratio float64

const (
	// Percent is 1 %.
	Percent Ratio = 0.01
)

var ratioKind = newKind(Kind{
	Name: "share",
	Units: []Unit{
		{Symbol: "%", num: 1, den: 100, names: []string{"percent", "per cent", "pct"}},
		{Symbol: "mm/m", num: 1, den: 1000},
		{Symbol: "in/ft", num: 1, den: 12},
		{Symbol: "of 1", num: 1, den: 1, names: []string{"1", "fraction"}},
	},
	Metric: "%", US: "%", Canonical: "%",
	metric: []rung{{math.Inf(1), "%"}},
	us:     []rung{{math.Inf(1), "%"}},
	digits: 3, decimals: 2,
})

// Kind describes share: its units and how it is shown.
func (q Ratio) Kind() *Kind { return ratioKind }

// SI is the bare number in the SI unit.
func (q Ratio) SI() float64 { return float64(q) }

// String shows the value in metric units.
func (q Ratio) String() string { return Format(q, Metric) }

// MarshalText writes the value with its unit, so that it reads back exactly.
func (q Ratio) MarshalText() ([]byte, error) { return marshal(q) }

// UnmarshalText reads what Parse reads, a bare number being metric.
func (q *Ratio) UnmarshalText(text []byte) (err error) {
	*q, err = Parse[Ratio](string(text), Metric)
	return err
}

// Number is a plain number without a unit.
type Number float64

var numberKind = newKind(Kind{
	Name: "number",
	Units: []Unit{
		{Symbol: "", num: 1, den: 1, names: []string{"1", "×"}},
	},
	Metric: "", US: "", Canonical: "",
	metric: []rung{{math.Inf(1), ""}},
	us:     []rung{{math.Inf(1), ""}},
	digits: 3, decimals: 3,
})

// Kind describes number: its units and how it is shown.
func (q Number) Kind() *Kind { return numberKind }

// SI is the bare number in the SI unit.
func (q Number) SI() float64 { return float64(q) }

// String shows the value in metric units.
func (q Number) String() string { return Format(q, Metric) }

// MarshalText writes the value with its unit, so that it reads back exactly.
func (q Number) MarshalText() ([]byte, error) { return marshal(q) }

// UnmarshalText reads what Parse reads, a bare number being metric.
func (q *Number) UnmarshalText(text []byte) (err error) {
	*q, err = Parse[Number](string(text), Metric)
	return err
}
