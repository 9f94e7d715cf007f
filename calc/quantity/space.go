package quantity

import "math"

// Length is a distance in metres.
type Length float64

const (
	// Metre is 1 m.
	Metre Length = 1
	// Centimetre is 1 cm.
	Centimetre Length = Metre / 100
	// Millimetre is 1 mm.
	Millimetre Length = Metre / 1000
	// Inch is 25.4 mm exactly.
	Inch Length = 0.0254
	// Foot is 12 in exactly.
	Foot Length = 0.3048
)

var lengthKind = newKind(Kind{
	Name: "length",
	Units: []Unit{
		{Symbol: "mm", num: 1, den: 1000, names: []string{"millimetre", "millimetres", "millimeter", "millimeters"}},
		{Symbol: "cm", num: 1, den: 100, names: []string{"centimetre", "centimetres", "centimeter", "centimeters"}},
		{Symbol: "m", num: 1, den: 1, names: []string{"metre", "metres", "meter", "meters"}},
		{Symbol: "in", num: 254, den: 10000, names: []string{"\"", "inch", "inches", "″", "''"}, digits: 5, decimals: 3},
		{Symbol: "ft", num: 3048, den: 10000, names: []string{"'", "foot", "feet", "′"}},
	},
	Metric: "mm", US: "in", Canonical: "mm",
	metric: []rung{{9.9995, "mm"}, {math.Inf(1), "m"}},
	us:     []rung{{3.0479, "in"}, {math.Inf(1), "ft"}},
	digits: 4, decimals: 2,
})

// Kind describes length: its units and how it is shown.
func (q Length) Kind() *Kind { return lengthKind }

// SI is the bare number in the SI unit.
func (q Length) SI() float64 { return float64(q) }

// String shows the value in metric units.
func (q Length) String() string { return Format(q, Metric) }

// MarshalText writes the value with its unit, so that it reads back exactly.
func (q Length) MarshalText() ([]byte, error) { return marshal(q) }

// UnmarshalText reads what Parse reads, a bare number being metric.
func (q *Length) UnmarshalText(text []byte) (err error) {
	*q, err = Parse[Length](string(text), Metric)
	return err
}

// Area is a surface in square metres.
type Area float64

const (
	// SquareMetre is 1 m².
	SquareMetre Area = 1
	// SquareCentimetre is 1 cm².
	SquareCentimetre Area = SquareMetre / 1e4
	// SquareMillimetre is 1 mm².
	SquareMillimetre Area = SquareMetre / 1e6
	// SquareInch is 1 in².
	SquareInch Area = 0.00064516
)

var areaKind = newKind(Kind{
	Name: "area",
	Units: []Unit{
		{Symbol: "mm²", num: 1, den: 1000000, names: []string{"mm^2", "mm2", "sq mm"}},
		{Symbol: "cm²", num: 1, den: 10000, names: []string{"cm^2", "cm2", "sq cm"}},
		{Symbol: "m²", num: 1, den: 1, names: []string{"m^2", "m2", "sq m"}},
		{Symbol: "in²", num: 64516, den: 100000000, names: []string{"in^2", "in2", "sq in"}},
		{Symbol: "ft²", num: 9290304, den: 100000000, names: []string{"ft^2", "ft2", "sq ft"}},
	},
	Metric: "cm²", US: "in²", Canonical: "cm²",
	metric: []rung{{0.001, "mm²"}, {0.9995, "cm²"}, {math.Inf(1), "m²"}},
	us:     []rung{{0.09290304, "in²"}, {math.Inf(1), "ft²"}},
	digits: 3, decimals: 2,
})

// Kind describes area: its units and how it is shown.
func (q Area) Kind() *Kind { return areaKind }

// SI is the bare number in the SI unit.
func (q Area) SI() float64 { return float64(q) }

// String shows the value in metric units.
func (q Area) String() string { return Format(q, Metric) }

// MarshalText writes the value with its unit, so that it reads back exactly.
func (q Area) MarshalText() ([]byte, error) { return marshal(q) }

// UnmarshalText reads what Parse reads, a bare number being metric.
func (q *Area) UnmarshalText(text []byte) (err error) {
	*q, err = Parse[Area](string(text), Metric)
	return err
}

// Volume is a volume in cubic metres.
type Volume float64

const (
	// CubicMetre is 1 m³.
	CubicMetre Volume = 1
	// Litre is 1 L.
	Litre Volume = CubicMetre / 1000
	// CubicCentimetre is 1 cm³.
	CubicCentimetre Volume = CubicMetre / 1e6
	// CubicInch is 1 in³.
	CubicInch Volume = 0.000016387064
)

var volumeKind = newKind(Kind{
	Name: "volume",
	Units: []Unit{
		{Symbol: "mm³", num: 1, den: 1000000000, names: []string{"mm^3", "mm3"}},
		{Symbol: "cm³", num: 1, den: 1000000, names: []string{"cm^3", "cm3", "cc", "ml", "mL"}},
		{Symbol: "L", num: 1, den: 1000, names: []string{"l", "litre", "litres", "liter", "liters", "dm³", "dm^3", "dm3"}},
		{Symbol: "m³", num: 1, den: 1, names: []string{"m^3", "m3"}},
		{Symbol: "in³", num: 16387064, den: 1000000000000, names: []string{"in^3", "in3", "cu in"}},
		{Symbol: "ft³", num: 28316846592, den: 1000000000000, names: []string{"ft^3", "ft3", "cu ft"}},
		{Symbol: "gal", num: 3785411784, den: 1000000000000, names: []string{"gallon", "gallons"}},
	},
	Metric: "cm³", US: "in³", Canonical: "cm³",
	metric: []rung{{1e-06, "mm³"}, {0.0009995, "cm³"}, {0.9995, "L"}, {math.Inf(1), "m³"}},
	us:     []rung{{0.028316846592, "in³"}, {math.Inf(1), "ft³"}},
	digits: 3, decimals: 2,
})

// Kind describes volume: its units and how it is shown.
func (q Volume) Kind() *Kind { return volumeKind }

// SI is the bare number in the SI unit.
func (q Volume) SI() float64 { return float64(q) }

// String shows the value in metric units.
func (q Volume) String() string { return Format(q, Metric) }

// MarshalText writes the value with its unit, so that it reads back exactly.
func (q Volume) MarshalText() ([]byte, error) { return marshal(q) }

// UnmarshalText reads what Parse reads, a bare number being metric.
func (q *Volume) UnmarshalText(text []byte) (err error) {
	*q, err = Parse[Volume](string(text), Metric)
	return err
}

// Angle is an angle in radians.
type Angle float64

const (
	// Radian is 1 rad.
	Radian Angle = 1
	// Degree is 1°.
	Degree Angle = math.Pi / 180
)

var angleKind = newKind(Kind{
	Name: "angle",
	Units: []Unit{
		{Symbol: "°", num: math.Pi, den: 180, names: []string{"deg", "degree", "degrees"}},
		{Symbol: "rad", num: 1, den: 1, names: []string{"radian", "radians"}},
	},
	Metric: "°", US: "°", Canonical: "°",
	metric: []rung{{math.Inf(1), "°"}},
	us:     []rung{{math.Inf(1), "°"}},
	digits: 3, decimals: 2,
})

// Kind describes angle: its units and how it is shown.
func (q Angle) Kind() *Kind { return angleKind }

// SI is the bare number in the SI unit.
func (q Angle) SI() float64 { return float64(q) }

// String shows the value in metric units.
func (q Angle) String() string { return Format(q, Metric) }

// MarshalText writes the value with its unit, so that it reads back exactly.
func (q Angle) MarshalText() ([]byte, error) { return marshal(q) }

// UnmarshalText reads what Parse reads, a bare number being metric.
func (q *Angle) UnmarshalText(text []byte) (err error) {
	*q, err = Parse[Angle](string(text), Metric)
	return err
}
