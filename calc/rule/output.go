package rule

import (
	"pourwright/calc/quantity"
	"pourwright/calc/source"
)

// Output is the rule, strip by strip.
type Output struct {
	// Name of the metal, or that the figure is one's own.
	Name string `json:"name" label:"Contraction rule for"`
	// Source and Row are where the contraction comes from.
	Source source.Ref `json:"source" label:"Contraction from"`
	Row    string     `json:"row" label:"Read from"`
	// Contraction used; the same in the two ways that the trade writes it.
	Contraction quantity.Ratio `json:"contraction" label:"Contraction" step:"s"`
	PerMetre    string         `json:"per_metre" label:"The same per metre"`
	PerFoot     string         `json:"per_foot" label:"The same per foot, to the nearest 64th"`
	// Longer is how much longer than true the rule is.
	Longer quantity.Ratio `json:"longer" label:"Longer than true by" step:"g"`
	// True is the last line's distance from zero on paper that is printed true.
	True quantity.Length `json:"true" label:"Zero to the last line, on paper" step:"P"`
	// Unit of the numbers.
	Unit string `json:"unit" label:"Numbered in"`
	// Check is the plain true length, Half its half.
	Check quantity.Length `json:"check" label:"Check length, true" step:"N"`
	// CheckSays is the check length in the unit of the numbers.
	CheckSays string `json:"check_says" label:"Check length, as it is marked"`
	// Correction is what every length is multiplied by on its way to the printer.
	Correction quantity.Number `json:"correction" label:"Correction for the printer" step:"c"`
	// CorrectionSays is the correction to the digits that a printer deserves.
	CorrectionSays string `json:"correction_says" label:"Correction, as it is marked"`
	// CheckSent is the check length as it is sent to the printer.
	CheckSent quantity.Length `json:"check_sent" label:"Check length sent to the printer" step:"N_c"`
	// Paper is the sheet, as it was asked for.
	Paper string `json:"paper" label:"Paper"`
	// Margin of the page.
	Margin quantity.Length `json:"margin" label:"Margin"`
	// Run is the room that a page gives a strip, along its long side.
	Run quantity.Length `json:"run" label:"Room for a strip" step:"U"`
	// PerPage is how many strips lie on a page.
	PerPage int `json:"per_page" label:"Strips on a page"`
	// Count of the strips, and of the pages they take.
	Count int `json:"count" label:"Strips"`
	Pages int `json:"pages" label:"Pages"`
	// Strips from zero up.
	Strips []Strip `json:"strips"`
}

// Strip is one stretch of the rule. All places are lengths sent to the
// printer, from the strip's first line.
type Strip struct {
	Number int `json:"number" label:"Strip"`
	Page   int `json:"page" label:"Page"`
	// Place on its page, from 1.
	Place int `json:"place" label:"Place on the page"`
	// From and To are what it measures; To is its join with the next.
	From quantity.Length `json:"from" label:"From"`
	To   quantity.Length `json:"to" label:"To"`
	// Join is the place of To.
	Join quantity.Length `json:"join" label:"Length to the join"`
	// Ends is where the lines end: past the join by the overlap, but for the
	// last strip.
	Ends quantity.Length `json:"ends" label:"Length of the lines"`
	// Lines by rank, the numbered ones first.
	Lines []Lines `json:"lines"`
}

// Lines are the lines of one rank: the lower the rank, the longer the line.
type Lines struct {
	Rank int `json:"rank" label:"Rank"`
	// At is the place of each.
	At []quantity.Length `json:"at" label:"At"`
	// Numbers of the lines; of rank 0 only.
	Numbers []int `json:"numbers" label:"No."`
}
