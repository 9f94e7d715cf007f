package quantity

import "math"

// Force is a force in newtons.
type Force float64

const (
	// Newton is 1 N.
	Newton Force = 1
)

var forceKind = newKind(Kind{
	Name: "force",
	Units: []Unit{
		{Symbol: "N", num: 1, den: 1, names: []string{"newton", "newtons"}},
		{Symbol: "kN", num: 1000, den: 1},
		{Symbol: "kgf", num: 980665, den: 100000, names: []string{"kp"}},
		{Symbol: "lbf", num: 44482216152605, den: 10000000000000, names: []string{"lb force", "lb f"}},
	},
	Metric: "N", US: "lbf", Canonical: "N",
	metric: []rung{{9999.5, "N"}, {math.Inf(1), "kN"}},
	us:     []rung{{math.Inf(1), "lbf"}},
	digits: 3, decimals: 1,
})

// Kind describes force: its units and how it is shown.
func (q Force) Kind() *Kind { return forceKind }

// SI is the bare number in the SI unit.
func (q Force) SI() float64 { return float64(q) }

// String shows the value in metric units.
func (q Force) String() string { return Format(q, Metric) }

// MarshalText writes the value with its unit, so that it reads back exactly.
func (q Force) MarshalText() ([]byte, error) { return marshal(q) }

// UnmarshalText reads what Parse reads, a bare number being metric.
func (q *Force) UnmarshalText(text []byte) (err error) {
	*q, err = Parse[Force](string(text), Metric)
	return err
}

// Pressure is a pressure in pascals.
type Pressure float64

const (
	// Pascal is 1 Pa.
	Pascal Pressure = 1
	// Kilopascal is 1 kPa.
	Kilopascal Pressure = 1000 * Pascal
)

var pressureKind = newKind(Kind{
	Name: "pressure",
	Units: []Unit{
		{Symbol: "Pa", num: 1, den: 1},
		{Symbol: "kPa", num: 1000, den: 1},
		{Symbol: "MPa", num: 1000000, den: 1, names: []string{"N/mm²", "N/mm^2", "N/mm2"}},
		{Symbol: "N/cm²", num: 10000, den: 1, names: []string{"N/cm^2", "N/cm2"}},
		{Symbol: "bar", num: 100000, den: 1},
		{Symbol: "psi", num: 44482216152605, den: 6451600000, names: []string{"lbf/in²", "lbf/in^2"}},
	},
	Metric: "kPa", US: "psi", Canonical: "kPa",
	metric: []rung{{999.5, "Pa"}, {999500, "kPa"}, {math.Inf(1), "MPa"}},
	us:     []rung{{math.Inf(1), "psi"}},
	digits: 3, decimals: 2,
})

// Kind describes pressure: its units and how it is shown.
func (q Pressure) Kind() *Kind { return pressureKind }

// SI is the bare number in the SI unit.
func (q Pressure) SI() float64 { return float64(q) }

// String shows the value in metric units.
func (q Pressure) String() string { return Format(q, Metric) }

// MarshalText writes the value with its unit, so that it reads back exactly.
func (q Pressure) MarshalText() ([]byte, error) { return marshal(q) }

// UnmarshalText reads what Parse reads, a bare number being metric.
func (q *Pressure) UnmarshalText(text []byte) (err error) {
	*q, err = Parse[Pressure](string(text), Metric)
	return err
}

// SurfaceTension is a surface tension in N/m.
type SurfaceTension float64

const (
	// NewtonPerMetre is 1 N/m.
	NewtonPerMetre SurfaceTension = 1
)

var surfaceTensionKind = newKind(Kind{
	Name: "surface tension",
	Units: []Unit{
		{Symbol: "N/m", num: 1, den: 1},
		{Symbol: "mN/m", num: 1, den: 1000},
	},
	Metric: "N/m", US: "N/m", Canonical: "N/m",
	metric: []rung{{math.Inf(1), "N/m"}},
	us:     []rung{{math.Inf(1), "N/m"}},
	digits: 3, decimals: 3,
})

// Kind describes surface tension: its units and how it is shown.
func (q SurfaceTension) Kind() *Kind { return surfaceTensionKind }

// SI is the bare number in the SI unit.
func (q SurfaceTension) SI() float64 { return float64(q) }

// String shows the value in metric units.
func (q SurfaceTension) String() string { return Format(q, Metric) }

// MarshalText writes the value with its unit, so that it reads back exactly.
func (q SurfaceTension) MarshalText() ([]byte, error) { return marshal(q) }

// UnmarshalText reads what Parse reads, a bare number being metric.
func (q *SurfaceTension) UnmarshalText(text []byte) (err error) {
	*q, err = Parse[SurfaceTension](string(text), Metric)
	return err
}
