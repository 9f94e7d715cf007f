package quantity

import "math"

// Mass is a mass in kilograms.
type Mass float64

const (
	// Kilogram is 1 kg.
	Kilogram Mass = 1
	// Gram is 1 g.
	Gram Mass = Kilogram / 1000
	// Tonne is 1000 kg.
	Tonne Mass = 1000 * Kilogram
	// Pound is 1 lb avoirdupois exactly.
	Pound Mass = 0.45359237
	// Ounce is 1 oz avoirdupois.
	Ounce Mass = Pound / 16
)

var massKind = newKind(Kind{
	Name: "mass",
	Units: []Unit{
		{Symbol: "g", num: 1, den: 1000, names: []string{"gram", "grams"}},
		{Symbol: "kg", num: 1, den: 1, names: []string{"kilogram", "kilograms", "kgs"}},
		{Symbol: "t", num: 1000, den: 1, names: []string{"tonne", "tonnes"}},
		{Symbol: "lb", num: 45359237, den: 100000000, names: []string{"lbs", "pound", "pounds"}},
		{Symbol: "oz", num: 45359237, den: 1600000000, names: []string{"ounce", "ounces"}},
	},
	Metric: "kg", US: "lb", Canonical: "kg",
	metric: []rung{{0.9995, "g"}, {9999.5, "kg"}, {math.Inf(1), "t"}},
	us:     []rung{{0.45359237, "oz"}, {math.Inf(1), "lb"}},
	digits: 3, decimals: 2,
})

// Kind describes mass: its units and how it is shown.
func (q Mass) Kind() *Kind { return massKind }

// SI is the bare number in the SI unit.
func (q Mass) SI() float64 { return float64(q) }

// String shows the value in metric units.
func (q Mass) String() string { return Format(q, Metric) }

// MarshalText writes the value with its unit, so that it reads back exactly.
func (q Mass) MarshalText() ([]byte, error) { return marshal(q) }

// UnmarshalText reads what Parse reads, a bare number being metric.
func (q *Mass) UnmarshalText(text []byte) (err error) {
	*q, err = Parse[Mass](string(text), Metric)
	return err
}

// Density is a mass per volume in kg/m³.
type Density float64

const (
	// KilogramPerCubicMetre is 1 kg/m³.
	KilogramPerCubicMetre Density = 1
	// GramPerCubicCentimetre is 1 g/cm³.
	GramPerCubicCentimetre Density = 1000
)

var densityKind = newKind(Kind{
	Name: "density",
	Units: []Unit{
		{Symbol: "kg/m³", num: 1, den: 1, names: []string{"kg/m^3", "kg/m3"}},
		{Symbol: "g/cm³", num: 1000, den: 1, names: []string{"g/cm^3", "g/cm3", "g/cc", "kg/L", "kg/dm^3"}},
		{Symbol: "lb/in³", num: 453592370000, den: 16387064, names: []string{"lb/in^3", "lb/in3"}, decimals: 4},
		{Symbol: "lb/ft³", num: 453592370000, den: 28316846592, names: []string{"lb/ft^3", "lb/ft3"}},
	},
	Metric: "kg/m³", US: "lb/in³", Canonical: "kg/m³",
	metric: []rung{{math.Inf(1), "kg/m³"}},
	us:     []rung{{2200, "lb/ft³"}, {math.Inf(1), "lb/in³"}}, // sand and wood by the cubic foot, metal by the inch
	digits: 4, decimals: 3,
})

// Kind describes density: its units and how it is shown.
func (q Density) Kind() *Kind { return densityKind }

// SI is the bare number in the SI unit.
func (q Density) SI() float64 { return float64(q) }

// String shows the value in metric units.
func (q Density) String() string { return Format(q, Metric) }

// MarshalText writes the value with its unit, so that it reads back exactly.
func (q Density) MarshalText() ([]byte, error) { return marshal(q) }

// UnmarshalText reads what Parse reads, a bare number being metric.
func (q *Density) UnmarshalText(text []byte) (err error) {
	*q, err = Parse[Density](string(text), Metric)
	return err
}
