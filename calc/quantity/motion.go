package quantity

import "math"

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
	us:     []rung{{0.3048, "in/s"}, {math.Inf(1), "ft/s"}},
	digits: 3, decimals: 3,
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
		{Symbol: "kg/h", num: 1, den: 3600},
		{Symbol: "lb/s", num: 45359237, den: 100000000, names: []string{"lb/sec"}},
		{Symbol: "lb/h", num: 45359237, den: 360000000000},
	},
	Metric: "kg/s", US: "lb/s", Canonical: "kg/s",
	metric: []rung{{0.09995, "g/s"}, {math.Inf(1), "kg/s"}},
	us:     []rung{{math.Inf(1), "lb/s"}},
	digits: 3, decimals: 3,
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
