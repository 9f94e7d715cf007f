package melting

import (
	"pourwright/calc/figure"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
)

// Furnace names a kind of furnace.
type Furnace string

// furnace is one kind and the share of the energy that it usually puts into
// the metal.
type furnace struct {
	code, name string
	efficiency figure.Of[quantity.Ratio]
	// fuel is its usual one.
	fuel Fuel
}

func band(low, high float64) figure.Of[quantity.Ratio] {
	return figure.New[quantity.Ratio]((low+high)/2, low, high, "%", source.DOEMelt.Memory("efficiency of melting furnaces"), "")
}

var furnaces = []furnace{
	{"crucible", "Crucible over a gas or oil burner", band(7, 19), "propane"},
	{"reverberatory", "Reverberatory, fired", band(30, 45), "natural-gas"},
	{"cupola", "Cupola", band(40, 50), "coke"},
	{"induction", "Induction", band(50, 76), current},
	{"resistance", "Crucible with resistance elements", band(55, 65), current},
	{"arc", "Electric arc", band(35, 45), current},
}

// Choices lists the furnaces for a form.
func (Furnace) Choices() [][2]string {
	out := make([][2]string, len(furnaces))
	for i, f := range furnaces {
		out[i] = [2]string{f.code, f.name}
	}
	return out
}

func (f Furnace) find() furnace {
	for _, k := range furnaces {
		if k.code == string(f) {
			return k
		}
	}
	panic("melting: the form let an unknown furnace through")
}

// Fuel names a fuel.
type Fuel string

// current is no fuel on the form: the electric furnaces have no other.
const current Fuel = "current"

// fuel is one kind and its lower heating value: by mass, or by volume where it
// is a gas from the main.
type fuel struct {
	code, name string
	mass       figure.Of[quantity.SpecificEnergy]
	volume     float64 // MJ/m³ at 0 °C and 1 atm; 0 where it is weighed
	source     source.Ref
	gas        bool
}

func heating(v, low, high float64) figure.Of[quantity.SpecificEnergy] {
	return figure.New[quantity.SpecificEnergy](v, low, high, "MJ/kg", lower, "")
}

var (
	lower = source.Practice("lower heating value, recalled; suppliers print their own")

	fuels = []fuel{
		{"propane", "Propane", heating(46.35, 0, 0), 0, lower, true},
		{"butane", "Butane", heating(45.8, 0, 0), 0, lower, true},
		{"natural-gas", "Natural gas", figure.Of[quantity.SpecificEnergy]{}, 35, source.Practice("lower heating value 34 to 36 MJ/m³, recalled; it varies by field"), true},
		{"oil", "Diesel or heating oil", heating(42.8, 42.6, 43), 0, lower, false},
		{"vegetable-oil", "Waste vegetable oil", heating(37, 0, 0), 0, lower, false},
		{"coke", "Foundry coke", heating(29.5, 28, 31), 0, lower, false},
		{"charcoal", "Charcoal", heating(29, 28, 30), 0, lower, false},
	}
)

// Choices lists the fuels for a form.
func (Fuel) Choices() [][2]string {
	out := make([][2]string, len(fuels))
	for i, f := range fuels {
		out[i] = [2]string{f.code, f.name}
	}
	return out
}

func (f Fuel) find() fuel {
	for _, k := range fuels {
		if k.code == string(f) {
			return k
		}
	}
	panic("melting: the form let an unknown fuel through")
}

// coreless is what iron takes in a coreless induction furnace: at best, and
// what is usual at most, kWh/t.
var coreless = figure.New[quantity.SpecificEnergy](560, 510, 640, "kWh/t", source.Practice("iron in coreless furnaces, 510 to 540 kWh/t at best and 585 to 640 in practice, seen in a trade text"), "")
