package quantity

import "math"

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
		{Symbol: "W·s½/(m²·K)", num: 1, den: 1, names: []string{"W·s^0.5/(m²·K)", "W*s^0.5/(m^2*K)", "J/(m²·K·s^0.5)"}},
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
	Metric: "min/cm²", US: "min/in²", Canonical: "min/cm²",
	metric: []rung{{math.Inf(1), "min/cm²"}},
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
