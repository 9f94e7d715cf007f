package mouldstuff

import (
	"pourwright/calc/figure"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
)

// PatternStuff names what a pattern is made of; it is a choice on forms.
type PatternStuff string

// The pattern materials.
const (
	WhitePine        PatternStuff = "white-pine"
	YellowPine       PatternStuff = "yellow-pine"
	Basswood         PatternStuff = "basswood"
	HondurasMahogany PatternStuff = "honduras-mahogany"
	BirchPly         PatternStuff = "birch-ply"
	SoftwoodPly      PatternStuff = "softwood-ply"
	MDF              PatternStuff = "mdf"
	PlasterPattern   PatternStuff = "plaster"
	Plasticine       PatternStuff = "plasticine"
	Wax              PatternStuff = "wax"
	Foam             PatternStuff = "eps-foam"
	Board            PatternStuff = "pu-board"
	PLA              PatternStuff = "pla"
	ABS              PatternStuff = "abs"
	AluminiumPattern PatternStuff = "aluminium"
	CastResin        PatternStuff = "resin"
)

// Choices lists the codes and names for a form.
func (PatternStuff) Choices() [][2]string {
	out := make([][2]string, len(patterns))
	for i, p := range patterns {
		out[i] = [2]string{string(p.Code), p.Name}
	}
	return out
}

// PatternKind is one pattern material.
type PatternKind struct {
	// Code in a plan and Name on a screen.
	Code PatternStuff
	Name string
	// Density of the solid stuff; a hollow, boxed or printed pattern with
	// infill has to be weighed against its displaced volume instead.
	Density figure.Of[quantity.Density]
	// Smooth says that it draws like metal or plastic in the draft table, not
	// like wood.
	Smooth bool
	// Lost says that it is melted or burnt out of the mould and not drawn.
	Lost bool
}

// Patterns lists the pattern materials in the order of the forms.
func Patterns() []*PatternKind { return append([]*PatternKind(nil), patterns...) }

// FindPattern returns the pattern material with the code.
func FindPattern(code PatternStuff) (*PatternKind, bool) {
	for _, p := range patterns {
		if p.Code == code {
			return p, true
		}
	}
	return nil, false
}

// woodNote warns of the spread that every old text on pattern weights warns of.
const woodNote = "wood varies from board to board; weigh a block of yours"

var (
	kent  = source.Kent.Memory("weight of castings from weight of pattern: cast iron of 7200 kg/m³ over the multiplier")
	woods = source.Practice("wood handbooks agree within the range")
	stuff = source.Practice("as sellers print it")
)

var patterns = []*PatternKind{
	{Code: WhitePine, Name: "White pine", Density: density(430, 370, 450, kent, woodNote)},
	{Code: YellowPine, Name: "Yellow pine", Density: density(510, 500, 600, kent, woodNote)},
	{Code: Basswood, Name: "Basswood (lime)", Density: density(400, 0, 0, woods, woodNote)},
	{Code: HondurasMahogany, Name: "Mahogany, Honduras", Density: density(560, 500, 700, kent, woodNote)},
	{Code: BirchPly, Name: "Birch plywood", Density: density(675, 650, 700, woods, "")},
	{Code: SoftwoodPly, Name: "Softwood plywood", Density: density(525, 500, 550, woods, "")},
	{Code: MDF, Name: "MDF", Density: density(750, 700, 800, stuff, "")},
	{Code: PlasterPattern, Name: "Plaster, dry", Density: density(1100, 900, 1300, stuff, "by the water it was mixed with")},
	{Code: Plasticine, Name: "Plasticine", Density: density(1750, 1600, 1900, stuff, "")},
	{Code: Wax, Name: "Casting wax", Density: density(935, 900, 970, stuff, ""), Lost: true},
	{Code: Foam, Name: "EPS foam", Density: density(20, 16, 30, stuff, ""), Lost: true},
	{Code: Board, Name: "Polyurethane tooling board", Density: density(600, 400, 750, stuff, "its grade is its density"), Smooth: true},
	{Code: PLA, Name: "PLA, printed solid", Density: density(1240, 0, 0, stuff, "with infill, weigh it"), Smooth: true},
	{Code: ABS, Name: "ABS, solid", Density: density(1050, 0, 0, stuff, "with infill, weigh it"), Smooth: true},
	{Code: AluminiumPattern, Name: "Aluminium", Density: density(2700, 0, 0, stuff, ""), Smooth: true},
	{Code: CastResin, Name: "Cast resin (epoxy)", Density: density(1150, 0, 0, stuff, "unfilled"), Smooth: true},
}
