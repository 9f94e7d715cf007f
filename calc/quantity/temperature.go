package quantity

import "math"

// Temperature is a temperature in kelvin; its zero value, 0 K, means not given.
type Temperature float64

const (
	// Kelvin is 1 K.
	Kelvin Temperature = 1
)

var temperatureKind = newKind(Kind{
	Name: "temperature",
	Units: []Unit{
		{Symbol: "°C", num: 1, den: 1, offset: 273.15, names: []string{"degC", "C", "° C", "deg C", "℃", "celsius"}},
		{Symbol: "°F", num: 5, den: 9, offset: 459.67, names: []string{"degF", "F", "° F", "deg F", "℉", "fahrenheit"}},
		{Symbol: "K", num: 1, den: 1, names: []string{"kelvin"}},
	},
	Metric: "°C", US: "°F", Canonical: "°C",
	metric: []rung{{math.Inf(1), "°C"}},
	us:     []rung{{math.Inf(1), "°F"}},
	digits: 0, decimals: 0,
})

// Kind describes temperature: its units and how it is shown.
func (q Temperature) Kind() *Kind { return temperatureKind }

// SI is the bare number in the SI unit.
func (q Temperature) SI() float64 { return float64(q) }

// String shows the value in metric units.
func (q Temperature) String() string { return Format(q, Metric) }

// MarshalText writes the value with its unit, so that it reads back exactly.
func (q Temperature) MarshalText() ([]byte, error) { return marshal(q) }

// UnmarshalText reads what Parse reads, a bare number being metric.
func (q *Temperature) UnmarshalText(text []byte) (err error) {
	*q, err = Parse[Temperature](string(text), Metric)
	return err
}

// TempDiff is a difference of two temperatures in kelvin.
type TempDiff float64

const (
	// KelvinDiff is a difference of 1 K.
	KelvinDiff TempDiff = 1
)

var tempDiffKind = newKind(Kind{
	Name: "temperature difference",
	Units: []Unit{
		{Symbol: "K", num: 1, den: 1, names: []string{"kelvin"}},
		{Symbol: "°C", num: 1, den: 1, names: []string{"degC", "C", "° C", "deg C", "℃"}},
		{Symbol: "°F", num: 5, den: 9, names: []string{"degF", "F", "° F", "deg F", "℉"}},
	},
	Metric: "°C", US: "°F", Canonical: "K",
	metric: []rung{{math.Inf(1), "°C"}},
	us:     []rung{{math.Inf(1), "°F"}},
	digits: 3, decimals: 1,
})

// Kind describes temperature difference: its units and how it is shown.
func (q TempDiff) Kind() *Kind { return tempDiffKind }

// SI is the bare number in the SI unit.
func (q TempDiff) SI() float64 { return float64(q) }

// String shows the value in metric units.
func (q TempDiff) String() string { return Format(q, Metric) }

// MarshalText writes the value with its unit, so that it reads back exactly.
func (q TempDiff) MarshalText() ([]byte, error) { return marshal(q) }

// UnmarshalText reads what Parse reads, a bare number being metric.
func (q *TempDiff) UnmarshalText(text []byte) (err error) {
	*q, err = Parse[TempDiff](string(text), Metric)
	return err
}
