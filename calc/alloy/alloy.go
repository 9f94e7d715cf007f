// Package alloy holds what the calculators need to know of each casting metal,
// every figure with its source and, where sources differ, its range.
package alloy

import (
	"pourwright/calc/quantity"
	"pourwright/calc/source"
)

// Figure is a value with its source, and its range where sources differ or the
// metal varies; Low and High are zero where no range is known.
type Figure[T quantity.Of] struct {
	V         T
	Low, High T
	Source    source.Ref
}

// Family groups metals that behave alike in the mould.
type Family string

// The families.
const (
	GreyIron    Family = "grey iron"
	DuctileIron Family = "ductile iron"
	Steel       Family = "steel"
	Copper      Family = "copper alloy"
	Aluminium   Family = "aluminium alloy"
	Zinc        Family = "zinc alloy"
	Tin         Family = "tin alloy"
)

// Code names an alloy in a plan; it is a choice on every form.
type Code string

// Choices lists the codes and names for a form.
func (Code) Choices() [][2]string {
	out := make([][2]string, len(all))
	for i, a := range all {
		out[i] = [2]string{string(a.Code), a.Name}
	}
	return out
}

// Contraction is one row of a contraction table: the allowance for castings
// up to a size, free or cored, from one source.
type Contraction struct {
	// UpTo is the largest dimension the row covers; zero for any size.
	UpTo quantity.Length
	// Free and Restrained are shares of the casting size, to be added to it.
	// Equal where the source does not distinguish.
	Free, Restrained quantity.Ratio
}

// ContractionTable is one source's rows, in order of size.
type ContractionTable struct {
	Rows   []Contraction
	Source source.Ref
}

// Hazards are the traits of a metal that the safe-handling list asks about.
type Hazards struct {
	Zinc, Lead quantity.Ratio // typical share by mass
	Magnesium  bool           // enough to matter
	Aluminium  bool           // aluminium family: hydrogen, rust, invisible red heat
	Iron       bool           // iron and steel heat: glare, slag
}

// Alloy is one casting metal.
type Alloy struct {
	Code   Code
	Name   string
	Family Family

	DensitySolid, DensityLiquid Figure[quantity.Density]
	Solidus, Liquidus           Figure[quantity.Temperature]
	Latent                      Figure[quantity.SpecificEnergy]
	HeatSolid, HeatLiquid       Figure[quantity.SpecificHeat]
	Conductivity                Figure[quantity.Conductivity] // of the hot solid
	SurfaceTension              Figure[quantity.SurfaceTension]
	Emissivity                  Figure[quantity.Ratio] // of the melt's surface as usually met

	// PourThin and PourThick are the usual pouring temperatures for light and
	// heavy sections; V is the middle, Low and High the range.
	PourThin, PourThick Figure[quantity.Temperature]
	// MinWall is the least wall that usually runs in sand.
	MinWall Figure[quantity.Length]
	// IngateSpeed is the most that the metal should have at the ingate.
	IngateSpeed Figure[quantity.Speed]
	// FeedShrinkage is the liquid and freezing contraction to be fed, a share
	// of volume. Negative low ends mean an expanding iron.
	FeedShrinkage Figure[quantity.Ratio]
	// MeltLoss is the usual share of the charge lost in melting.
	MeltLoss Figure[quantity.Ratio]

	// Contractions are the tables that cover the metal, the one to use first.
	Contractions []ContractionTable

	Hazards Hazards
}

// All lists the metals in the order of the forms.
func All() []*Alloy { return append([]*Alloy(nil), all...) }

// Find returns the metal with the code.
func Find(code Code) (*Alloy, bool) {
	for _, a := range all {
		if a.Code == code {
			return a, true
		}
	}
	return nil, false
}
