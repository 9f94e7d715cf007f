// Package rule sets out a contraction rule to be printed on paper: a rule that
// is longer than true by what the metal contracts, so that a pattern measured
// with it is larger than the casting by just that much.
//
// It answers where each line stands on the paper, how the rule is parted into
// strips where it is longer than a page, and a plain true length to measure
// the print by. What that length measures corrects the next print.
//
// Sources: the contraction tables of package alloy; Groover, ch. 10, and Rao,
// ch. 3, for what a contraction is a share of. Limits: paper moves with damp,
// about a tenth of a millimetre in 100 mm; a printed rule is for wood and
// plaster, and no measuring tool of the machine shop.
package rule

import (
	"pourwright/calc/alloy"
	"pourwright/calc/quantity"
)

// Input is the metal, the rule that is wanted and the paper it is printed on.
type Input struct {
	// Alloy is the casting metal; it may be left out where Own is given.
	Alloy quantity.Opt[alloy.Code] `json:"alloy" label:"Metal" part:"Contraction" link:"metal" hint:"It sets the contraction; your own figure goes before it"`
	// Table names the contraction table; left out, the metal's first.
	Table quantity.Opt[alloy.TableName] `json:"table" label:"Contraction table" hint:"The book your shop goes by; left empty, the first that covers the metal"`
	// Size of the castings that the rule is for; left out, the rule's length.
	Size quantity.Opt[quantity.Length] `json:"size" label:"Size of the casting" hint:"Long castings contract less in some tables; leave empty for the length of the rule" min:"5 mm" max:"10 m"`
	// Restraint picks the figure between the table's free and restrained one.
	Restraint quantity.Opt[string] `json:"restraint" label:"Restraint" hint:"How far mould and cores hold the casting as it contracts" default:"free" choices:"free:Free to contract|partly:Partly restrained|full:Fully restrained"`
	// Own is the shop's own contraction.
	Own quantity.Opt[quantity.Ratio] `json:"own" label:"Own contraction" hint:"Pattern less casting, over casting: measure both cold. Goes before every table" unit:"mm/m,in/ft" min:"0 %" max:"6 %"`
	// Convention says what the contraction is a share of.
	Convention quantity.Opt[string] `json:"convention" label:"Contraction is a share of" hint:"How your tables or rules were made; a shrink rule is of the casting" default:"casting" choices:"casting:The casting: pattern = casting × (1 + s)|mould:The mould: pattern = casting ÷ (1 − s)"`

	// Length that the rule measures, on the casting.
	Length quantity.Length `json:"length" label:"Length of the rule" part:"Rule" hint:"What it measures, as sizes of the casting" min:"20 mm" max:"1.25 m"`
	// Division is the smallest one.
	Division quantity.Opt[Division] `json:"division" label:"Divided into" hint:"As you read a rule at the bench" default:"mm"`

	// Paper is the sheet.
	Paper quantity.Opt[Paper] `json:"paper" label:"Paper" hint:"What is in the printer" part:"Paper and printer" default:"a4"`
	// Margin is left white on every side.
	Margin quantity.Opt[quantity.Length] `json:"margin" label:"Margin" hint:"Most printers leave 3 to 6 mm at the edge white" default:"12 mm" min:"6 mm" max:"20 mm"`
	// Measured is what the check length of the last print came to.
	Measured quantity.Opt[quantity.Length] `json:"measured" label:"Check length measured" hint:"What the check length of your last print measures, by a good steel rule; it corrects the next print" min:"100 mm" max:"300 mm"`
	// PrintedWith is the correction of that last print.
	PrintedWith quantity.Opt[quantity.Number] `json:"printed_with" label:"Correction of that print" hint:"It stands beside its check length; 1 where nothing was corrected" default:"1" min:"0.95" max:"1.05"`
}

// Division names the smallest division of a rule.
type Division string

// The divisions.
const (
	Millimetres   Division = "mm"
	Halves        Division = "half-mm"
	Sixteenths    Division = "1/16"
	ThirtySeconds Division = "1/32"
	SixtyFourths  Division = "1/64"
)

// scale is how a rule of a division is lined: the steps between lines in its
// unit from the numbered ones down, each a whole number of the last one.
type scale struct {
	division Division
	label    string
	// unit of the numbers, "mm" or "in", and its size in mm.
	unit string
	mm   float64
	// steps of the ranks, in units.
	steps []float64
	// check is the plain true length to print with it, in units. Those of the
	// two units lie so far apart that one cannot be taken for the other.
	check float64
}

var scales = []scale{
	{Millimetres, "Millimetres", "mm", 1, []float64{10, 5, 1}, 200},
	{Halves, "Half millimetres", "mm", 1, []float64{10, 5, 1, 0.5}, 200},
	{Sixteenths, "Sixteenths of an inch", "in", 25.4, []float64{1, 1. / 2, 1. / 4, 1. / 8, 1. / 16}, 6},
	{ThirtySeconds, "Thirty-seconds of an inch", "in", 25.4, []float64{1, 1. / 2, 1. / 4, 1. / 8, 1. / 16, 1. / 32}, 6},
	{SixtyFourths, "Sixty-fourths of an inch", "in", 25.4, []float64{1, 1. / 2, 1. / 4, 1. / 8, 1. / 16, 1. / 32, 1. / 64}, 6},
}

// fine is the smallest division, in units.
func (s scale) fine() float64 { return s.steps[len(s.steps)-1] }

// Choices lists the divisions for a form.
func (Division) Choices() [][2]string {
	out := make([][2]string, len(scales))
	for i, s := range scales {
		out[i] = [2]string{string(s.division), s.label}
	}
	return out
}

// Paper names a sheet.
type Paper string

// The sheets.
const (
	A4     Paper = "a4"
	Letter Paper = "letter"
)

// sheet is a paper in mm, upright.
type sheet struct{ width, height float64 }

// sheets are ISO 216 A4, and Letter of ANSI/ASME Y14.1, 8 1/2 by 11 in.
var sheets = map[Paper]sheet{A4: {210, 297}, Letter: {215.9, 279.4}}

// Choices lists the sheets for a form.
func (Paper) Choices() [][2]string {
	return [][2]string{{string(A4), "A4, 210 × 297 mm"}, {string(Letter), "Letter, 8 1/2 × 11 in"}}
}
