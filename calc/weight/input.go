// Package weight answers what a mould takes: the weight and volume of the
// casting, the risers that feed it, the gating, and from them the metal to
// pour, to melt and to charge.
//
// Risers are sized by two rules at once, each for the section the riser feeds:
// the riser must freeze later than the section (by modulus), and it must hold
// the feed metal (by volume). No simulation stands behind either; feeding
// distance is not looked at here.
//
// Everything in the mould is weighed at the density of the cold metal. The
// cavity is in truth filled with lighter liquid and topped up by the risers,
// so the metal to pour comes out a few per cent on the safe side.
package weight

import (
	"pourwright/calc/alloy"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/shape"
)

// Input is the casting, what feeds it and how the metal is melted.
type Input struct {
	// Alloy is the casting metal.
	Alloy alloy.Code `json:"alloy" label:"Metal" link:"metal" hint:"What is stamped on the ingot, or the nearest to it"`
	// Density is the user's own density of the cold metal.
	Density quantity.Opt[quantity.Density] `json:"density" label:"Own density, solid" link:"metal" hint:"Only if you have weighed a sample of known volume" min:"1500 kg/m³" max:"20000 kg/m³"`
	// Castings is how many the mould holds, all alike.
	Castings quantity.Opt[int] `json:"castings" label:"Castings in the mould" hint:"Count them in the mould; all alike" default:"1" min:"1" max:"500"`

	// Route says how the weight of one casting is found.
	Route quantity.Opt[Route] `json:"route" label:"How its weight is found" part:"Casting" hint:"Drowning is the surest for odd shapes, hollow patterns and printed ones" default:"solids"`
	// Mass of one casting, stated.
	Mass quantity.Mass `json:"mass" label:"Weight of one casting" when:"route=stated" hint:"Weigh one as cast, stock and all, without risers" min:"1 g" max:"20 t"`
	// PatternMass is the weight of the whole pattern.
	PatternMass quantity.Mass `json:"pattern_mass" label:"Weight of the pattern" when:"route=pattern" hint:"On the scale, dry, with its core prints, without loose metal fittings" min:"0.1 g" max:"5 t"`
	// PatternStuff is what the pattern is made of.
	PatternStuff quantity.Opt[mouldstuff.PatternStuff] `json:"pattern_stuff" label:"Pattern material" when:"route=pattern" hint:"What it is cut from; or give the density you measured"`
	// PatternDensity is the density of this pattern, measured.
	PatternDensity quantity.Opt[quantity.Density] `json:"pattern_density" label:"Measured density of the pattern" when:"route=pattern" hint:"Weight of a block of it over the block's volume; of a hollow or printed pattern, its whole weight over the volume it displaces" min:"8 kg/m³" max:"10000 kg/m³"`
	// PatternMake says whether the pattern is the same all through.
	PatternMake quantity.Opt[Make] `json:"pattern_make" label:"Make of the pattern" hint:"Knock on it: solid through, or hollow" when:"route=pattern" default:"solid"`
	// PrintsMass is the part of the pattern's weight that is core prints.
	PrintsMass quantity.Opt[quantity.Mass] `json:"prints_mass" label:"Weight of the core prints in it" when:"route=pattern" hint:"Weigh a loose print, or a block of its size; weight or volume, not both" default:"0 kg" min:"0 kg" max:"1 t"`
	// DisplacedMass and DisplacedVolume are what drowning found; one of them.
	DisplacedMass   quantity.Opt[quantity.Mass]   `json:"displaced_mass" label:"Weight of the water displaced" when:"route=drowned-pattern|drowned-casting" hint:"Caught at the overflow, or the rise on the scale when it is held under without touching; seal wood and plaster first" min:"0.1 g" max:"10 t"`
	DisplacedVolume quantity.Opt[quantity.Volume] `json:"displaced_volume" label:"Or the volume displaced" when:"route=drowned-pattern|drowned-casting" hint:"Caught in a measuring jug; the weight or the volume, not both" min:"0.1 cm³" max:"10 m³"`
	// WaterTemperature sets the density of the water.
	WaterTemperature quantity.Opt[quantity.Temperature] `json:"water_temperature" label:"Water temperature" hint:"A bath thermometer in the water" when:"route=drowned-pattern|drowned-casting" default:"20 °C" min:"1 °C" max:"60 °C"`
	// PrintsVolume is the volume of the pattern's core prints.
	PrintsVolume quantity.Opt[quantity.Volume] `json:"prints_volume" label:"Volume of the core prints" when:"route=pattern|drowned-pattern" hint:"What of the pattern only makes room for the ends of cores; weight or volume, not both" default:"0 cm³" min:"0 cm³" max:"5 m³"`
	// CoresVolume is the volume of the hollows that cores make.
	CoresVolume quantity.Opt[quantity.Volume] `json:"cores_volume" label:"Volume of the cores in the casting" when:"route=pattern|drowned-pattern" hint:"From the core box, without the ends that lie in the prints" default:"0 cm³" min:"0 cm³" max:"5 m³"`
	// Contraction is the pattern maker's allowance that the pattern has in it.
	Contraction quantity.Opt[quantity.Ratio] `json:"contraction" label:"Contraction in the pattern" when:"route=pattern|drowned-pattern" link:"pattern" hint:"The shrink rule it was made by, as it stands on the rule" unit:"%,in/ft" min:"0 %" max:"5 %"`
	// Solids put one casting together, and give its moduli.
	Solids []shape.Solid `json:"solids" label:"Solids" hint:"Plain bodies that make up one casting; on the other routes they are optional, for the moduli and as a check" max:"60"`

	// Modulus is the user's own modulus of the section to feed.
	Modulus quantity.Opt[quantity.Length] `json:"modulus" label:"Own modulus to feed" part:"Risers" hint:"Volume over cooled surface of the heaviest section; left empty, the largest among the solids" min:"0.5 mm" max:"1 m"`
	// Shrinkage is the liquid and freezing contraction to be fed.
	Shrinkage quantity.Opt[quantity.Ratio] `json:"shrinkage" label:"Own feed shrinkage" hint:"Liquid and freezing contraction by volume; 0 only for an iron that you know feeds itself" min:"0 %" max:"12 %"`
	// Wall says whether the mould yields to an expanding iron.
	Wall quantity.Opt[Wall] `json:"wall" label:"Mould wall" link:"mould" hint:"Matters for irons, which push the mould as they freeze" default:"green"`
	// RiserFactor is the riser's modulus over that of the section.
	RiserFactor quantity.Opt[quantity.Number] `json:"riser_factor" label:"Own modulus factor of the risers" hint:"Riser over section; usual 1.2, ductile iron 1.1" min:"0.6" max:"2"`
	// NeckFactor is the neck's modulus over that of the section.
	NeckFactor quantity.Opt[quantity.Number] `json:"neck_factor" label:"Modulus factor of the necks" hint:"Neck over section: 1.1 keeps the neck open longer than the section" default:"1.1" min:"0.5" max:"1.5"`
	// Risers of the whole mould.
	Risers []Riser `json:"risers" label:"Risers" hint:"One entry for risers that are alike; none if the casting needs none" max:"20"`

	// Gating is the metal in cup, sprue, runners and ingates.
	Gating Gating `json:"gating" label:"Gating" part:"Gating"`

	// MeltLoss is the share of the charge lost in melting.
	MeltLoss quantity.Opt[quantity.Ratio] `json:"melt_loss" label:"Own melting loss" part:"Melt" hint:"Dross, slag and fume, share of the charge; left empty, the metal's usual" min:"0 %" max:"50 %"`
	// Spill is what splashes and skims away, a share of the metal poured.
	Spill quantity.Opt[quantity.Ratio] `json:"spill" label:"Spill and skimmings" hint:"Weigh what is swept up and skimmed; share of the metal poured" default:"2 %" min:"0 %" max:"50 %"`
	// Pig is the reserve that ends in the pig mould.
	Pig quantity.Opt[quantity.Ratio] `json:"pig" label:"Reserve for the pig mould" hint:"What you keep back against a short pour; share of the metal poured" default:"5 %" min:"0 %" max:"200 %"`
	// Heel is what stays behind in furnace and ladle.
	Heel quantity.Opt[quantity.Mass] `json:"heel" label:"Heel and skull" hint:"Weigh what stays in crucible and ladle" default:"0 kg" min:"0 kg" max:"10 t"`
}

// Route is a way to find the weight of a casting.
type Route string

// The routes.
const (
	FromSolids     Route = "solids"
	FromPattern    Route = "pattern"
	DrownedPattern Route = "drowned-pattern"
	DrownedCasting Route = "drowned-casting"
	Stated         Route = "stated"
)

// Choices lists the routes for a form.
func (Route) Choices() [][2]string {
	return [][2]string{
		{string(FromSolids), "Put together from solids"},
		{string(FromPattern), "From the pattern's weight"},
		{string(DrownedPattern), "Pattern drowned in water"},
		{string(DrownedCasting), "A like casting drowned in water"},
		{string(Stated), "Known already"},
	}
}

// Make is how a pattern is made.
type Make string

// The makes.
const (
	SolidMake Make = "solid"
	Hollow    Make = "hollow"
	Printed   Make = "printed"
)

// Choices lists the makes for a form.
func (Make) Choices() [][2]string {
	return [][2]string{
		{string(SolidMake), "Solid, one stuff all through"},
		{string(Hollow), "Hollow or boxed"},
		{string(Printed), "Printed with infill"},
	}
}

// Wall is how a mould stands up to an iron that expands.
type Wall string

// The walls.
const (
	Green Wall = "green"
	Rigid Wall = "rigid"
)

// Choices lists the walls for a form.
func (Wall) Choices() [][2]string {
	return [][2]string{{string(Green), "Green sand, yields"}, {string(Rigid), "Hard sand, clamped or weighted"}}
}

// Riser is one riser, or several alike.
type Riser struct {
	// Name is what the user calls it.
	Name string `json:"name" label:"Name" hint:"What you call it, such as riser on the hub" max:"60"`
	// Count is how many alike in the mould.
	Count quantity.Opt[int] `json:"count" label:"How many in the mould" hint:"Count them; of those that are alike" default:"1" min:"1" max:"500"`
	// Place is where it stands.
	Place quantity.Opt[Place] `json:"place" label:"Where" hint:"On top of what it feeds, or beside it" default:"top"`
	// Shape of its body.
	Shape quantity.Opt[RiserShape] `json:"shape" label:"Shape" hint:"By the riser pattern or sleeve you have" default:"cylinder"`
	// Cover is what its top and side are.
	Cover quantity.Opt[Cover] `json:"cover" label:"Cover" hint:"Whether it is open to the air, blind, or sleeved" default:"open"`
	// Ratio is height over diameter.
	Ratio quantity.Opt[quantity.Number] `json:"ratio" label:"Height over diameter" hint:"Of your riser pattern or sleeve; used where no height is given" default:"1" min:"0.25" max:"5"`
	// Feeds is the share of one casting that each of them feeds.
	Feeds quantity.Opt[quantity.Ratio] `json:"feeds" label:"Feeds, of one casting" hint:"Share of one casting's volume that each of them feeds; over 100 % where one riser feeds several castings; left empty, equal shares" min:"0.1 %" max:"50000 %"`
	// Modulus is the user's own modulus of the section it feeds.
	Modulus quantity.Opt[quantity.Length] `json:"modulus" label:"Own modulus of what it feeds" hint:"Volume over cooled surface of that section; left empty, of the whole casting's heaviest" min:"0.5 mm" max:"1 m"`
	// Seat is the surface of the fed section that the risers cover.
	Seat quantity.Opt[quantity.Area] `json:"seat" label:"Casting surface they cover" when:"place=top" hint:"Seen from above: the area where they stand on what they feed, all together; covered surface does not cool" min:"0 cm²" max:"10 m²"`
	// Diameter and Height are the user's own, to be checked.
	Diameter quantity.Opt[quantity.Length] `json:"diameter" label:"Own diameter, to check" hint:"Of the riser pattern you have; left empty, it is sized" min:"1 mm" max:"3 m"`
	Height   quantity.Opt[quantity.Length] `json:"height" label:"Own height, to check" hint:"Of the riser pattern you have; needs the diameter too" min:"1 mm" max:"5 m"`
	// Efficiency is the share of the riser that can be fed out of it.
	Efficiency quantity.Opt[quantity.Ratio] `json:"efficiency" label:"Own feed efficiency" hint:"Share of the riser's volume that it can give: 14 % in sand, 33 % in a sleeve" min:"1 %" max:"80 %"`
	// Extension is what a sleeve multiplies the modulus by.
	Extension quantity.Opt[quantity.Number] `json:"extension" label:"Modulus extension by the sleeve" when:"cover=sleeve" hint:"Sellers print 1.1 to 1.3 for insulating, up to 1.5 for exothermic; measured values were lower" default:"1.1" min:"1" max:"1.6"`
}

// Place is where a riser stands.
type Place string

// The places.
const (
	Top  Place = "top"
	Side Place = "side"
)

// Choices lists the places for a form.
func (Place) Choices() [][2]string {
	return [][2]string{{string(Top), "On top of the casting"}, {string(Side), "Beside it, with a neck"}}
}

// RiserShape is the body of a riser.
type RiserShape string

// The shapes.
const (
	RoundRiser RiserShape = "cylinder"
	Domed      RiserShape = "domed"
)

// Choices lists the shapes for a form.
func (RiserShape) Choices() [][2]string {
	return [][2]string{{string(RoundRiser), "Cylinder"}, {string(Domed), "Cylinder with one end a half ball"}}
}

// Cover is what stands between a riser and the air.
type Cover string

// The covers.
const (
	Open   Cover = "open"
	Blind  Cover = "blind"
	Sleeve Cover = "sleeve"
)

// Choices lists the covers for a form.
func (Cover) Choices() [][2]string {
	return [][2]string{{string(Open), "Open at the top"}, {string(Blind), "Blind, under sand"}, {string(Sleeve), "In an insulating sleeve"}}
}

// Gating is the metal in the running system.
type Gating struct {
	// By says how its weight is found.
	By quantity.Opt[GatingBy] `json:"by" label:"How its weight is found" hint:"By a share, by the scale, or from its sizes" default:"share"`
	// Share of the castings' weight.
	Share quantity.Opt[quantity.Ratio] `json:"share" label:"Own allowance" when:"by=share" hint:"Your own weighed average, of the castings' weight; left empty, the usual for the metal. Small castings take more" min:"0 %" max:"500 %"`
	// Mass stated.
	Mass quantity.Opt[quantity.Mass] `json:"mass" label:"Weight of the gating" when:"by=stated" hint:"Weigh what you cut off" min:"0 kg" max:"10 t"`
	// The sprue, at the top, at the foot, and between.
	SprueTop    quantity.Opt[quantity.Area]   `json:"sprue_top" label:"Sprue, area at the top" hint:"Of the sprue pattern: width times breadth, or 0.785 diameter squared" when:"by=sized" default:"0 cm²" min:"0 cm²" max:"1 m²"`
	SprueBottom quantity.Opt[quantity.Area]   `json:"sprue_bottom" label:"Sprue, area at the foot" hint:"The same at its foot" when:"by=sized" default:"0 cm²" min:"0 cm²" max:"1 m²"`
	SprueHeight quantity.Opt[quantity.Length] `json:"sprue_height" label:"Sprue, height" hint:"Rule along the sprue pattern" when:"by=sized" default:"0 mm" min:"0 mm" max:"5 m"`
	// The runners together.
	RunnerArea   quantity.Opt[quantity.Area]   `json:"runner_area" label:"Runner, cross-section" hint:"Width times height of the runner pattern" when:"by=sized" default:"0 cm²" min:"0 cm²" max:"1 m²"`
	RunnerLength quantity.Opt[quantity.Length] `json:"runner_length" label:"Runners, length together" hint:"Rule along all runners in the mould" when:"by=sized" default:"0 mm" min:"0 mm" max:"50 m"`
	// One ingate, and how many.
	GateArea   quantity.Opt[quantity.Area]   `json:"gate_area" label:"Ingate, cross-section of one" hint:"Width times thickness of the ingate pattern" when:"by=sized" default:"0 cm²" min:"0 cm²" max:"1 m²"`
	GateLength quantity.Opt[quantity.Length] `json:"gate_length" label:"Ingate, length of one" hint:"From runner to casting" when:"by=sized" default:"0 mm" min:"0 mm" max:"5 m"`
	GateCount  quantity.Opt[int]             `json:"gate_count" label:"Ingates" hint:"Count them in the mould" when:"by=sized" default:"1" min:"1" max:"500"`
	// Rest is the basin, the well and whatever else.
	Rest quantity.Opt[quantity.Volume] `json:"rest" label:"Basin, well and the rest" hint:"Fill them with sand from a measuring jug" when:"by=sized" default:"0 cm³" min:"0 cm³" max:"1 m³"`
}

// GatingBy is a way to find the weight of the gating.
type GatingBy string

// The ways.
const (
	ByShare  GatingBy = "share"
	BySize   GatingBy = "sized"
	ByWeight GatingBy = "stated"
)

// Choices lists the ways for a form.
func (GatingBy) Choices() [][2]string {
	return [][2]string{{string(ByShare), "Allowance on the castings"}, {string(BySize), "From its sizes"}, {string(ByWeight), "Known already"}}
}
