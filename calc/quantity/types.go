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
		{Symbol: "in", num: 254, den: 10000, names: []string{"\"", "inch", "inches", "″", "''"}},
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
		{Symbol: "lb/in³", num: 453592370000, den: 16387064, names: []string{"lb/in^3", "lb/in3"}},
		{Symbol: "lb/ft³", num: 453592370000, den: 28316846592, names: []string{"lb/ft^3", "lb/ft3"}},
	},
	Metric: "kg/m³", US: "lb/in³", Canonical: "kg/m³",
	metric: []rung{{math.Inf(1), "kg/m³"}},
	us:     []rung{{1000, "lb/ft³"}, {math.Inf(1), "lb/in³"}},
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

// Time is a span of time in seconds.
type Time float64

const (
	// Second is 1 s.
	Second Time = 1
	// Minute is 1 min.
	Minute Time = 60 * Second
	// Hour is 1 h.
	Hour Time = 60 * Minute
)

var timeKind = newKind(Kind{
	Name: "time",
	Units: []Unit{
		{Symbol: "s", num: 1, den: 1, names: []string{"sec", "secs", "second", "seconds"}},
		{Symbol: "min", num: 60, den: 1, names: []string{"mins", "minute", "minutes"}},
		{Symbol: "h", num: 3600, den: 1, names: []string{"hr", "hrs", "hour", "hours"}},
		{Symbol: "d", num: 86400, den: 1, names: []string{"day", "days"}},
	},
	Metric: "s", US: "s", Canonical: "s",
	digits: 3, decimals: 2,
})

// Kind describes time: its units and how it is shown.
func (q Time) Kind() *Kind { return timeKind }

// SI is the bare number in the SI unit.
func (q Time) SI() float64 { return float64(q) }

// String shows the value in metric units.
func (q Time) String() string { return Format(q, Metric) }

// MarshalText writes the value with its unit, so that it reads back exactly.
func (q Time) MarshalText() ([]byte, error) { return marshal(q) }

// UnmarshalText reads what Parse reads, a bare number being metric.
func (q *Time) UnmarshalText(text []byte) (err error) {
	*q, err = Parse[Time](string(text), Metric)
	return err
}

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
	digits: 3, decimals: 1,
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

// Speed is a speed in m/s.
type Speed float64

const (
	// MetrePerSecond is 1 m/s.
	MetrePerSecond Speed = 1
	// MillimetrePerSecond is 1 mm/s.
	MillimetrePerSecond Speed = MetrePerSecond / 1000
)

var speedKind = newKind(Kind{
	Name: "speed",
	Units: []Unit{
		{Symbol: "mm/s", num: 1, den: 1000},
		{Symbol: "cm/s", num: 1, den: 100},
		{Symbol: "m/s", num: 1, den: 1},
		{Symbol: "in/s", num: 254, den: 10000, names: []string{"in/sec"}},
		{Symbol: "ft/s", num: 3048, den: 10000, names: []string{"ft/sec"}},
	},
	Metric: "m/s", US: "ft/s", Canonical: "m/s",
	metric: []rung{{0.09995, "mm/s"}, {math.Inf(1), "m/s"}},
	us:     []rung{{0.03048, "in/s"}, {math.Inf(1), "ft/s"}},
	digits: 3, decimals: 2,
})

// Kind describes speed: its units and how it is shown.
func (q Speed) Kind() *Kind { return speedKind }

// SI is the bare number in the SI unit.
func (q Speed) SI() float64 { return float64(q) }

// String shows the value in metric units.
func (q Speed) String() string { return Format(q, Metric) }

// MarshalText writes the value with its unit, so that it reads back exactly.
func (q Speed) MarshalText() ([]byte, error) { return marshal(q) }

// UnmarshalText reads what Parse reads, a bare number being metric.
func (q *Speed) UnmarshalText(text []byte) (err error) {
	*q, err = Parse[Speed](string(text), Metric)
	return err
}

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

// VolumeFlow is a volume flow in m³/s.
type VolumeFlow float64

const (
	// CubicMetrePerSecond is 1 m³/s.
	CubicMetrePerSecond VolumeFlow = 1
	// LitrePerSecond is 1 L/s.
	LitrePerSecond VolumeFlow = CubicMetrePerSecond / 1000
)

var volumeFlowKind = newKind(Kind{
	Name: "volume flow",
	Units: []Unit{
		{Symbol: "cm³/s", num: 1, den: 1000000, names: []string{"cm^3/s", "cm3/s", "ml/s"}},
		{Symbol: "L/s", num: 1, den: 1000, names: []string{"l/s"}},
		{Symbol: "m³/s", num: 1, den: 1, names: []string{"m^3/s", "m3/s"}},
		{Symbol: "mm³/s", num: 1, den: 1000000000, names: []string{"mm^3/s", "mm3/s"}},
		{Symbol: "in³/s", num: 16387064, den: 1000000000000, names: []string{"in^3/s", "in3/s"}},
	},
	Metric: "L/s", US: "in³/s", Canonical: "L/s",
	metric: []rung{{9.995e-05, "cm³/s"}, {math.Inf(1), "L/s"}},
	us:     []rung{{math.Inf(1), "in³/s"}},
	digits: 3, decimals: 3,
})

// Kind describes volume flow: its units and how it is shown.
func (q VolumeFlow) Kind() *Kind { return volumeFlowKind }

// SI is the bare number in the SI unit.
func (q VolumeFlow) SI() float64 { return float64(q) }

// String shows the value in metric units.
func (q VolumeFlow) String() string { return Format(q, Metric) }

// MarshalText writes the value with its unit, so that it reads back exactly.
func (q VolumeFlow) MarshalText() ([]byte, error) { return marshal(q) }

// UnmarshalText reads what Parse reads, a bare number being metric.
func (q *VolumeFlow) UnmarshalText(text []byte) (err error) {
	*q, err = Parse[VolumeFlow](string(text), Metric)
	return err
}

// MassFlow is a mass flow in kg/s.
type MassFlow float64

const (
	// KilogramPerSecond is 1 kg/s.
	KilogramPerSecond MassFlow = 1
)

var massFlowKind = newKind(Kind{
	Name: "mass flow",
	Units: []Unit{
		{Symbol: "kg/s", num: 1, den: 1},
		{Symbol: "g/s", num: 1, den: 1000},
		{Symbol: "kg/min", num: 1, den: 60},
		{Symbol: "lb/s", num: 45359237, den: 100000000, names: []string{"lb/sec"}},
	},
	Metric: "kg/s", US: "lb/s", Canonical: "kg/s",
	metric: []rung{{math.Inf(1), "kg/s"}},
	us:     []rung{{math.Inf(1), "lb/s"}},
	digits: 3, decimals: 2,
})

// Kind describes mass flow: its units and how it is shown.
func (q MassFlow) Kind() *Kind { return massFlowKind }

// SI is the bare number in the SI unit.
func (q MassFlow) SI() float64 { return float64(q) }

// String shows the value in metric units.
func (q MassFlow) String() string { return Format(q, Metric) }

// MarshalText writes the value with its unit, so that it reads back exactly.
func (q MassFlow) MarshalText() ([]byte, error) { return marshal(q) }

// UnmarshalText reads what Parse reads, a bare number being metric.
func (q *MassFlow) UnmarshalText(text []byte) (err error) {
	*q, err = Parse[MassFlow](string(text), Metric)
	return err
}

// Energy is an energy in joules.
type Energy float64

const (
	// Joule is 1 J.
	Joule Energy = 1
	// Megajoule is 1 MJ.
	Megajoule Energy = 1e6 * Joule
	// KilowattHour is 1 kWh.
	KilowattHour Energy = 3.6e6 * Joule
)

var energyKind = newKind(Kind{
	Name: "energy",
	Units: []Unit{
		{Symbol: "J", num: 1, den: 1},
		{Symbol: "kJ", num: 1000, den: 1},
		{Symbol: "MJ", num: 1000000, den: 1},
		{Symbol: "GJ", num: 1000000000, den: 1},
		{Symbol: "kWh", num: 3600000, den: 1, names: []string{"kW h", "kW·h"}},
		{Symbol: "Btu", num: 105505585262, den: 100000000, names: []string{"BTU", "btu"}},
	},
	Metric: "MJ", US: "Btu", Canonical: "MJ",
	metric: []rung{{999.5, "J"}, {999500, "kJ"}, {math.Inf(1), "MJ"}},
	us:     []rung{{math.Inf(1), "Btu"}},
	digits: 3, decimals: 2,
})

// Kind describes energy: its units and how it is shown.
func (q Energy) Kind() *Kind { return energyKind }

// SI is the bare number in the SI unit.
func (q Energy) SI() float64 { return float64(q) }

// String shows the value in metric units.
func (q Energy) String() string { return Format(q, Metric) }

// MarshalText writes the value with its unit, so that it reads back exactly.
func (q Energy) MarshalText() ([]byte, error) { return marshal(q) }

// UnmarshalText reads what Parse reads, a bare number being metric.
func (q *Energy) UnmarshalText(text []byte) (err error) {
	*q, err = Parse[Energy](string(text), Metric)
	return err
}

// Power is a power in watts.
type Power float64

const (
	// Watt is 1 W.
	Watt Power = 1
	// Kilowatt is 1 kW.
	Kilowatt Power = 1000 * Watt
)

var powerKind = newKind(Kind{
	Name: "power",
	Units: []Unit{
		{Symbol: "W", num: 1, den: 1},
		{Symbol: "kW", num: 1000, den: 1},
		{Symbol: "Btu/h", num: 105505585262, den: 360000000000, names: []string{"BTU/h", "btu/h"}},
	},
	Metric: "kW", US: "Btu/h", Canonical: "kW",
	metric: []rung{{999.5, "W"}, {math.Inf(1), "kW"}},
	us:     []rung{{math.Inf(1), "Btu/h"}},
	digits: 3, decimals: 2,
})

// Kind describes power: its units and how it is shown.
func (q Power) Kind() *Kind { return powerKind }

// SI is the bare number in the SI unit.
func (q Power) SI() float64 { return float64(q) }

// String shows the value in metric units.
func (q Power) String() string { return Format(q, Metric) }

// MarshalText writes the value with its unit, so that it reads back exactly.
func (q Power) MarshalText() ([]byte, error) { return marshal(q) }

// UnmarshalText reads what Parse reads, a bare number being metric.
func (q *Power) UnmarshalText(text []byte) (err error) {
	*q, err = Parse[Power](string(text), Metric)
	return err
}

// SpecificEnergy is a heat per mass in J/kg.
type SpecificEnergy float64

const (
	// JoulePerKilogram is 1 J/kg.
	JoulePerKilogram SpecificEnergy = 1
	// KilojoulePerKilogram is 1 kJ/kg.
	KilojoulePerKilogram SpecificEnergy = 1000 * JoulePerKilogram
)

var specificEnergyKind = newKind(Kind{
	Name: "heat per mass",
	Units: []Unit{
		{Symbol: "J/kg", num: 1, den: 1},
		{Symbol: "kJ/kg", num: 1000, den: 1, names: []string{"J/g"}},
		{Symbol: "MJ/kg", num: 1000000, den: 1},
		{Symbol: "kWh/t", num: 3600, den: 1},
		{Symbol: "Btu/lb", num: 2326, den: 1, names: []string{"BTU/lb"}},
	},
	Metric: "kJ/kg", US: "Btu/lb", Canonical: "kJ/kg",
	metric: []rung{{math.Inf(1), "kJ/kg"}},
	us:     []rung{{math.Inf(1), "Btu/lb"}},
	digits: 3, decimals: 1,
})

// Kind describes heat per mass: its units and how it is shown.
func (q SpecificEnergy) Kind() *Kind { return specificEnergyKind }

// SI is the bare number in the SI unit.
func (q SpecificEnergy) SI() float64 { return float64(q) }

// String shows the value in metric units.
func (q SpecificEnergy) String() string { return Format(q, Metric) }

// MarshalText writes the value with its unit, so that it reads back exactly.
func (q SpecificEnergy) MarshalText() ([]byte, error) { return marshal(q) }

// UnmarshalText reads what Parse reads, a bare number being metric.
func (q *SpecificEnergy) UnmarshalText(text []byte) (err error) {
	*q, err = Parse[SpecificEnergy](string(text), Metric)
	return err
}

// SpecificHeat is a heat per mass and kelvin in J/(kg·K).
type SpecificHeat float64

const (
	// JoulePerKilogramKelvin is 1 J/(kg·K).
	JoulePerKilogramKelvin SpecificHeat = 1
)

var specificHeatKind = newKind(Kind{
	Name: "specific heat",
	Units: []Unit{
		{Symbol: "J/(kg·K)", num: 1, den: 1, names: []string{"J/(kg*K)", "J/kgK", "J/kg/K", "J/(kg K)"}},
		{Symbol: "kJ/(kg·K)", num: 1000, den: 1, names: []string{"kJ/(kg*K)", "kJ/kgK", "J/(g*K)", "J/gK"}},
		{Symbol: "Btu/(lb·°F)", num: 41868, den: 10, names: []string{"Btu/(lb*degF)", "Btu/lbF"}},
	},
	Metric: "J/(kg·K)", US: "Btu/(lb·°F)", Canonical: "J/(kg·K)",
	metric: []rung{{math.Inf(1), "J/(kg·K)"}},
	us:     []rung{{math.Inf(1), "Btu/(lb·°F)"}},
	digits: 3, decimals: 3,
})

// Kind describes specific heat: its units and how it is shown.
func (q SpecificHeat) Kind() *Kind { return specificHeatKind }

// SI is the bare number in the SI unit.
func (q SpecificHeat) SI() float64 { return float64(q) }

// String shows the value in metric units.
func (q SpecificHeat) String() string { return Format(q, Metric) }

// MarshalText writes the value with its unit, so that it reads back exactly.
func (q SpecificHeat) MarshalText() ([]byte, error) { return marshal(q) }

// UnmarshalText reads what Parse reads, a bare number being metric.
func (q *SpecificHeat) UnmarshalText(text []byte) (err error) {
	*q, err = Parse[SpecificHeat](string(text), Metric)
	return err
}

// Conductivity is a heat flow per length and kelvin in W/(m·K).
type Conductivity float64

const (
	// WattPerMetreKelvin is 1 W/(m·K).
	WattPerMetreKelvin Conductivity = 1
)

var conductivityKind = newKind(Kind{
	Name: "thermal conductivity",
	Units: []Unit{
		{Symbol: "W/(m·K)", num: 1, den: 1, names: []string{"W/(m*K)", "W/mK", "W/m/K", "W/(m K)"}},
	},
	Metric: "W/(m·K)", US: "W/(m·K)", Canonical: "W/(m·K)",
	metric: []rung{{math.Inf(1), "W/(m·K)"}},
	us:     []rung{{math.Inf(1), "W/(m·K)"}},
	digits: 3, decimals: 3,
})

// Kind describes thermal conductivity: its units and how it is shown.
func (q Conductivity) Kind() *Kind { return conductivityKind }

// SI is the bare number in the SI unit.
func (q Conductivity) SI() float64 { return float64(q) }

// String shows the value in metric units.
func (q Conductivity) String() string { return Format(q, Metric) }

// MarshalText writes the value with its unit, so that it reads back exactly.
func (q Conductivity) MarshalText() ([]byte, error) { return marshal(q) }

// UnmarshalText reads what Parse reads, a bare number being metric.
func (q *Conductivity) UnmarshalText(text []byte) (err error) {
	*q, err = Parse[Conductivity](string(text), Metric)
	return err
}

// Effusivity is the heat a mould wall can take up, sqrt(k ρ c), in W·s^½/(m²·K).
type Effusivity float64

const (
	// SIEffusivity is 1 W·s^½/(m²·K).
	SIEffusivity Effusivity = 1
)

var effusivityKind = newKind(Kind{
	Name: "heat effusivity",
	Units: []Unit{
		{Symbol: "W·s½/(m²·K)", num: 1, den: 1, names: []string{"W*s^0.5/(m^2*K)", "J/(m²·K·s½)"}},
	},
	Metric: "W·s½/(m²·K)", US: "W·s½/(m²·K)", Canonical: "W·s½/(m²·K)",
	metric: []rung{{math.Inf(1), "W·s½/(m²·K)"}},
	us:     []rung{{math.Inf(1), "W·s½/(m²·K)"}},
	digits: 4, decimals: 0,
})

// Kind describes heat effusivity: its units and how it is shown.
func (q Effusivity) Kind() *Kind { return effusivityKind }

// SI is the bare number in the SI unit.
func (q Effusivity) SI() float64 { return float64(q) }

// String shows the value in metric units.
func (q Effusivity) String() string { return Format(q, Metric) }

// MarshalText writes the value with its unit, so that it reads back exactly.
func (q Effusivity) MarshalText() ([]byte, error) { return marshal(q) }

// UnmarshalText reads what Parse reads, a bare number being metric.
func (q *Effusivity) UnmarshalText(text []byte) (err error) {
	*q, err = Parse[Effusivity](string(text), Metric)
	return err
}

// FreezingConstant is Chvorinov's constant, a time per modulus squared, in s/m².
type FreezingConstant float64

const (
	// SecondPerSquareMetre is 1 s/m².
	SecondPerSquareMetre FreezingConstant = 1
	// SecondPerSquareMillimetre is 1 s/mm².
	SecondPerSquareMillimetre FreezingConstant = 1e6 * SecondPerSquareMetre
	// MinutePerSquareCentimetre is 1 min/cm².
	MinutePerSquareCentimetre FreezingConstant = 60e4 * SecondPerSquareMetre
)

var freezingConstantKind = newKind(Kind{
	Name: "freezing constant",
	Units: []Unit{
		{Symbol: "s/mm²", num: 1000000, den: 1, names: []string{"s/mm^2", "s/mm2"}},
		{Symbol: "min/cm²", num: 600000, den: 1, names: []string{"min/cm^2", "min/cm2"}},
		{Symbol: "min/mm²", num: 60000000, den: 1, names: []string{"min/mm^2", "min/mm2"}},
		{Symbol: "min/in²", num: 6000000000, den: 64516, names: []string{"min/in^2", "min/in2"}},
		{Symbol: "s/m²", num: 1, den: 1, names: []string{"s/m^2", "s/m2"}},
	},
	Metric: "s/mm²", US: "min/in²", Canonical: "s/mm²",
	metric: []rung{{math.Inf(1), "s/mm²"}},
	us:     []rung{{math.Inf(1), "min/in²"}},
	digits: 3, decimals: 3,
})

// Kind describes freezing constant: its units and how it is shown.
func (q FreezingConstant) Kind() *Kind { return freezingConstantKind }

// SI is the bare number in the SI unit.
func (q FreezingConstant) SI() float64 { return float64(q) }

// String shows the value in metric units.
func (q FreezingConstant) String() string { return Format(q, Metric) }

// MarshalText writes the value with its unit, so that it reads back exactly.
func (q FreezingConstant) MarshalText() ([]byte, error) { return marshal(q) }

// UnmarshalText reads what Parse reads, a bare number being metric.
func (q *FreezingConstant) UnmarshalText(text []byte) (err error) {
	*q, err = Parse[FreezingConstant](string(text), Metric)
	return err
}

// AngularSpeed is an angular speed in rad/s.
type AngularSpeed float64

const (
	// RadianPerSecond is 1 rad/s.
	RadianPerSecond AngularSpeed = 1
)

var angularSpeedKind = newKind(Kind{
	Name: "turning speed",
	Units: []Unit{
		{Symbol: "°/s", num: math.Pi, den: 180, names: []string{"deg/s"}},
		{Symbol: "rad/s", num: 1, den: 1},
	},
	Metric: "°/s", US: "°/s", Canonical: "°/s",
	metric: []rung{{math.Inf(1), "°/s"}},
	us:     []rung{{math.Inf(1), "°/s"}},
	digits: 3, decimals: 2,
})

// Kind describes turning speed: its units and how it is shown.
func (q AngularSpeed) Kind() *Kind { return angularSpeedKind }

// SI is the bare number in the SI unit.
func (q AngularSpeed) SI() float64 { return float64(q) }

// String shows the value in metric units.
func (q AngularSpeed) String() string { return Format(q, Metric) }

// MarshalText writes the value with its unit, so that it reads back exactly.
func (q AngularSpeed) MarshalText() ([]byte, error) { return marshal(q) }

// UnmarshalText reads what Parse reads, a bare number being metric.
func (q *AngularSpeed) UnmarshalText(text []byte) (err error) {
	*q, err = Parse[AngularSpeed](string(text), Metric)
	return err
}

// HeatFlux is a heat flow per area in W/m².
type HeatFlux float64

const (
	// WattPerSquareMetre is 1 W/m².
	WattPerSquareMetre HeatFlux = 1
)

var heatFluxKind = newKind(Kind{
	Name: "heat flux",
	Units: []Unit{
		{Symbol: "kW/m²", num: 1000, den: 1, names: []string{"kW/m^2", "kW/m2"}},
		{Symbol: "W/m²", num: 1, den: 1, names: []string{"W/m^2", "W/m2"}},
	},
	Metric: "kW/m²", US: "kW/m²", Canonical: "kW/m²",
	metric: []rung{{math.Inf(1), "kW/m²"}},
	us:     []rung{{math.Inf(1), "kW/m²"}},
	digits: 3, decimals: 2,
})

// Kind describes heat flux: its units and how it is shown.
func (q HeatFlux) Kind() *Kind { return heatFluxKind }

// SI is the bare number in the SI unit.
func (q HeatFlux) SI() float64 { return float64(q) }

// String shows the value in metric units.
func (q HeatFlux) String() string { return Format(q, Metric) }

// MarshalText writes the value with its unit, so that it reads back exactly.
func (q HeatFlux) MarshalText() ([]byte, error) { return marshal(q) }

// UnmarshalText reads what Parse reads, a bare number being metric.
func (q *HeatFlux) UnmarshalText(text []byte) (err error) {
	*q, err = Parse[HeatFlux](string(text), Metric)
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
