// Package mouldstuff holds what moulds and patterns are made of: mould
// materials and binders, pattern materials, the sand to leave round a pattern
// and the draft to give it, every figure with its source and its range.
//
// Sand differs from heap to heap more than metal does: most ranges are wide,
// and a shop's own weighed box or timed casting comes before all of them.
package mouldstuff

import (
	"math"

	"pourwright/calc/figure"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
)

// Sand names a mould or core material in a plan; it is a choice on forms.
type Sand string

// The mould and core materials. A thin ceramic shell is not among them: it
// warms through before the metal has frozen, so that figures for a thick mould
// would mislead.
const (
	GreenSand    Sand = "green-sand"
	ResinSand    Sand = "resin-sand"
	SilicateSand Sand = "silicate-sand"
	OilSand      Sand = "oil-sand"
	OlivineSand  Sand = "olivine-sand"
	ChromiteSand Sand = "chromite-sand"
	ZirconSand   Sand = "zircon-sand"
	Plaster      Sand = "plaster"
	Investment   Sand = "investment"
)

// Choices lists the codes and names for a form.
func (Sand) Choices() [][2]string {
	out := make([][2]string, len(sands))
	for i, s := range sands {
		out[i] = [2]string{string(s.Code), s.Name}
	}
	return out
}

// SandKind is one mould or core material.
type SandKind struct {
	// Code in a plan and Name on a screen.
	Code Sand
	Name string
	// Density is that of the rammed, tamped or cast material, ready to pour;
	// it serves for weights and for heat.
	Density figure.Of[quantity.Density]
	// Conductivity is the mean over the heating by the metal.
	Conductivity figure.Of[quantity.Conductivity]
	// Heat is the specific heat, as a mean over the heating.
	Heat figure.Of[quantity.SpecificHeat]
	// Water is what it usually holds when the metal comes, by mass; zero where
	// it must be dry.
	Water figure.Of[quantity.Ratio]
	// Binders that hold it together, the usual one first.
	Binders []Binder

	// bLow and bHigh are the range of the effusivity that the sources give.
	bLow, bHigh float64
}

// Effusivity is √(k ρ c), the power of the mould to draw heat, with the range
// that the sources give for it. Moulds of a square of the effusivity compare
// as the times that a casting takes to freeze in them, the other way round.
func (s *SandKind) Effusivity() figure.Of[quantity.Effusivity] {
	b := math.Sqrt(float64(s.Conductivity.V) * float64(s.Density.V) * float64(s.Heat.V))
	return figure.Of[quantity.Effusivity]{
		V: quantity.Effusivity(b), Low: quantity.Effusivity(s.bLow), High: quantity.Effusivity(s.bHigh),
		Source: s.Conductivity.Source, Note: "square root of conductivity × density × specific heat",
	}
}

// Sands lists the mould materials in the order of the forms.
func Sands() []*SandKind { return append([]*SandKind(nil), sands...) }

// FindSand returns the mould material with the code.
func FindSand(code Sand) (*SandKind, bool) {
	for _, s := range sands {
		if s.Code == code {
			return s, true
		}
	}
	return nil, false
}

func density(v, low, high float64, from source.Ref, note string) figure.Of[quantity.Density] {
	return figure.New[quantity.Density](v, low, high, "kg/m^3", from, note)
}

func conductivity(v, low, high float64, from source.Ref, note string) figure.Of[quantity.Conductivity] {
	return figure.New[quantity.Conductivity](v, low, high, "W/(m*K)", from, note)
}

func heat(v, low, high float64, from source.Ref) figure.Of[quantity.SpecificHeat] {
	return figure.New[quantity.SpecificHeat](v, low, high, "J/(kg*K)", from, "")
}

func percent(v, low, high float64, from source.Ref, note string) figure.Of[quantity.Ratio] {
	return figure.New[quantity.Ratio](v, low, high, "%", from, note)
}
