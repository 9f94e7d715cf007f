package quantity

import "math"

// Viscosity is the dynamic viscosity of a liquid in Pa·s.
type Viscosity float64

const (
	// PascalSecond is 1 Pa·s.
	PascalSecond Viscosity = 1
	// MillipascalSecond is 1 mPa·s, about that of water at 20 °C.
	MillipascalSecond Viscosity = PascalSecond / 1000
)

var viscosityKind = newKind(Kind{
	Name: "viscosity",
	Units: []Unit{
		{Symbol: "mPa·s", num: 1, den: 1000, names: []string{"mPa*s", "mPa s", "cP"}},
		{Symbol: "Pa·s", num: 1, den: 1, names: []string{"Pa*s", "Pa s"}},
	},
	Metric: "mPa·s", US: "mPa·s", Canonical: "mPa·s",
	metric: []rung{{math.Inf(1), "mPa·s"}},
	us:     []rung{{math.Inf(1), "mPa·s"}},
	digits: 3, decimals: 3,
})

// Kind describes viscosity: its units and how it is shown.
func (q Viscosity) Kind() *Kind { return viscosityKind }

// SI is the bare number in the SI unit.
func (q Viscosity) SI() float64 { return float64(q) }

// String shows the value in metric units.
func (q Viscosity) String() string { return Format(q, Metric) }

// MarshalText writes the value with its unit, so that it reads back exactly.
func (q Viscosity) MarshalText() ([]byte, error) { return marshal(q) }

// UnmarshalText reads what Parse reads, a bare number being metric.
func (q *Viscosity) UnmarshalText(text []byte) (err error) {
	*q, err = Parse[Viscosity](string(text), Metric)
	return err
}
