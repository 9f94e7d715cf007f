// Package alloy holds what the calculators need to know of each casting metal,
// every figure with its source and, where sources differ, its range.
//
// The figures are those of the metal named, not of the heat in the furnace:
// a shop's own analysis, test bar or thermometer comes before all of them.
package alloy

import (
	"pourwright/calc/figure"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
)

// Figure is a value with its range and its source.
type Figure[T quantity.Of] = figure.Of[T]

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

// The codes. Copper alloys carry their UNS number, aluminium alloys that of
// the Aluminum Association, in the name.
const (
	CodeGreyIron        Code = "grey-iron"
	CodeDuctileIron     Code = "ductile-iron"
	CodeCarbonSteel     Code = "carbon-steel"
	CodeSiliconBronze   Code = "silicon-bronze"
	CodeTinBronze       Code = "tin-bronze"
	CodeTinBronze905    Code = "tin-bronze-905"
	CodeGunmetal        Code = "gunmetal"
	CodeAluminiumBronze Code = "aluminium-bronze"
	CodeYellowBrass     Code = "yellow-brass"
	CodeAlSiMg          Code = "al-si-mg"
	CodeAlSiCu          Code = "al-si-cu"
	CodeAlSi            Code = "al-si"
	CodeAluminium       Code = "aluminium"
	CodeZA12            Code = "zinc-za12"
	CodePewter          Code = "pewter"
)

// Choices lists the codes and names for a form.
func (Code) Choices() [][2]string {
	out := make([][2]string, len(all))
	for i, a := range all {
		out[i] = [2]string{string(a.Code), a.Name}
	}
	return out
}

// Hazards are the traits of a metal that the safe-handling list asks about.
type Hazards struct {
	// Zinc and Lead are the most that the specification of the alloy lets
	// stand in it, shares by mass; zero where it is kept out.
	Zinc, Lead quantity.Ratio
	// Magnesium says that the melt is treated with magnesium, as ductile iron
	// is. The third of a per cent in a heat-treatable aluminium does not count.
	Magnesium bool
	// Aluminium family: hydrogen, rust and damp flux, no colour to warn of heat.
	Aluminium bool
	// Iron and steel heat: glare, slag.
	Iron bool
	// Source of the shares.
	Source source.Ref
}

// Alloy is one casting metal.
type Alloy struct {
	// Code in a plan, Name on a screen, Family in the mould.
	Code   Code
	Name   string
	Family Family

	// DensitySolid is at 20 °C, DensityLiquid near the liquidus.
	DensitySolid, DensityLiquid Figure[quantity.Density]
	// Solidus and Liquidus of the alloy as named; of iron they move with the
	// analysis.
	Solidus, Liquidus Figure[quantity.Temperature]
	// Latent heat of fusion.
	Latent Figure[quantity.SpecificEnergy]
	// HeatSolid is the specific heat of the solid on the hot side of its
	// cooling, HeatLiquid that of the melt.
	HeatSolid, HeatLiquid Figure[quantity.SpecificHeat]
	// Conductivity of the hot solid.
	Conductivity Figure[quantity.Conductivity]
	// SurfaceTension is that of the clean base metal at its melting point;
	// sulphur, oxygen and oxide skins change it.
	SurfaceTension Figure[quantity.SurfaceTension]
	// Viscosity of the clean melt near its liquidus; oxide skins, dross and the
	// first crystals make it far stiffer.
	Viscosity Figure[quantity.Viscosity]
	// Emissivity of the melt's surface as usually met.
	Emissivity Figure[quantity.Ratio]

	// PourThin and PourThick are the usual pouring temperatures for light and
	// heavy sections; V is the middle, Low and High the range.
	PourThin, PourThick Figure[quantity.Temperature]
	// MinWall is the least wall that usually runs in sand.
	MinWall Figure[quantity.Length]
	// IngateSpeed is the most that the metal should have at the ingate; Low is
	// the limit for a careful job, High what is got away with.
	IngateSpeed Figure[quantity.Speed]
	// FeedShrinkage is the liquid and freezing contraction to be fed, a share
	// of volume. Negative low ends mean an expanding iron.
	FeedShrinkage Figure[quantity.Ratio]
	// MeltLoss is the usual share of the charge lost in melting.
	MeltLoss Figure[quantity.Ratio]

	// Contractions are the tables that cover the metal, the one to use first.
	Contractions []ContractionTable

	// Hazards the safe-handling list asks about.
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
