// Package pattern sizes a pattern or core box for a sand casting: machining
// stock and casting tolerance give the raw casting, contraction gives the
// pattern, rapping and draft correct it, and where the working pattern is
// itself a casting, its master follows. It also answers the question the other
// way round: what a pattern that is already there will give.
//
// Contraction is a band, never a number: it moves with the restraint of mould
// and cores, with the section and with the heat. The tables stand side by side
// with their sources, and the shop's own figure goes before all of them.
package pattern

import (
	"fmt"

	"pourwright/calc/alloy"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// Input is the casting's metal and mould, and the sizes to be made.
type Input struct {
	// Alloy is the casting metal.
	Alloy alloy.Code `json:"alloy" label:"Metal" link:"metal" hint:"It sets the contraction tables and the grades that are suggested"`
	// Overall is the largest overall dimension of the finished casting, by
	// which the standard picks the machining allowance.
	Overall quantity.Opt[quantity.Length] `json:"overall" label:"Largest overall size" hint:"Longest size of the finished casting, on the drawing; left empty, the largest outside size below" min:"5 mm" max:"10 m"`
	// Dimensions are the sizes on the drawing.
	Dimensions []Dimension `json:"dimensions" label:"Sizes" hint:"One entry for each size of the drawing that you cut the pattern to" min:"1" max:"60"`

	// Table names the contraction table; left out, the metal's first.
	Table quantity.Opt[alloy.TableName] `json:"table" label:"Contraction table" part:"Contraction" hint:"The book your shop goes by; left empty, the first that covers the metal"`
	// Own is the shop's own contraction of a free length.
	Own quantity.Opt[quantity.Ratio] `json:"own" label:"Own contraction" hint:"Pattern less casting, over casting: measure both cold. Goes before every table" unit:"mm/m,in/ft" min:"0 %" max:"6 %"`
	// OwnRestrained is the shop's own contraction of a restrained length; left
	// out, the same as Own.
	OwnRestrained quantity.Opt[quantity.Ratio] `json:"own_restrained" label:"Own contraction, restrained" hint:"The same, measured between cores or flanges" unit:"mm/m,in/ft" min:"0 %" max:"6 %"`
	// Convention says what the contraction is a share of.
	Convention quantity.Opt[string] `json:"convention" label:"Contraction is a share of" hint:"How your tables or rules were made; a shrink rule is of the casting" default:"casting" choices:"casting:The casting: pattern = casting × (1 + s)|mould:The mould: pattern = casting ÷ (1 − s)"`

	// Sand is the mould's bond, for the grades that are suggested.
	Sand quantity.Opt[string] `json:"sand" label:"Sand" hint:"How the sand is bonded: clay gives way, chemical bond holds" part:"Mould and pattern" default:"clay" choices:"clay:Clay-bonded|chemical:Chemically bonded"`
	// Stuff is what the pattern is made of, for the draft.
	Stuff quantity.Opt[string] `json:"stuff" label:"Pattern stuff" hint:"What the pattern is made of; metal and plastic keep closer grades" default:"wood" choices:"wood:Wood|metal:Metal or plastic"`
	// DraftWay says whether draft adds metal to the casting or takes it off.
	DraftWay quantity.Opt[string] `json:"draft_way" label:"Draft" hint:"Where the drawing shows no draft: ask who machines it" default:"add" choices:"add:Adds metal to the casting|take:Takes metal off the casting"`

	// Grade is the dimensional casting tolerance grade, DCTG 1 to 15.
	Grade quantity.Opt[int] `json:"grade" label:"Casting tolerance grade (DCTG)" part:"Tolerance and machining" hint:"From the drawing or the order; left empty, that suggested for metal and sand" min:"1" max:"15"`
	// RMAGrade is the required machining allowance grade, A to K.
	RMAGrade quantity.Opt[string] `json:"rma_grade" label:"Machining allowance grade (RMAG)" hint:"From the drawing or the order; left empty, that suggested for the metal" choices:"A:A|B:B|C:C|D:D|E:E|F:F|G:G|H:H|J:J|K:K"`

	// WorkingAlloy is the metal of a working pattern that is itself cast.
	WorkingAlloy quantity.Opt[alloy.Code] `json:"working_alloy" label:"Metal of the working pattern" part:"Master pattern" hint:"Only where the pattern is itself a casting and needs a master"`
	// WorkingOwn is the shop's own contraction of the working pattern's metal.
	WorkingOwn quantity.Opt[quantity.Ratio] `json:"working_own" label:"Own contraction of the working pattern" hint:"From castings of that metal made off your own masters" unit:"mm/m,in/ft" min:"0 %" max:"6 %"`
	// WorkingStock is what is dressed off each face of the working pattern.
	WorkingStock quantity.Opt[quantity.Length] `json:"working_stock" label:"Dressing stock on the working pattern, per face" hint:"What filing and polishing the metal pattern takes off each face" default:"0 mm" min:"0 mm" max:"10 mm"`
}

// The kinds of a dimension.
const (
	outside = "outside"
	inside  = "inside"
	step    = "step"
	wall    = "wall"
)

// Dimension is one size on the drawing.
type Dimension struct {
	// Name as on the drawing.
	Name string `json:"name" label:"Name" hint:"As on the drawing: flange diameter, bore, height of boss" max:"60"`
	// Kind tells which way stock and rapping work.
	Kind quantity.Opt[string] `json:"kind" label:"Kind" hint:"How calipers take it: over the metal, inside it, or from place to place" default:"outside" choices:"outside:Outside size|inside:Inside size or bore|step:Step or centre distance|wall:Wall thickness"`
	// Size is the finished size.
	Size quantity.Length `json:"size" label:"Finished size" hint:"From the drawing, as it leaves the shop after any machining" min:"0.5 mm" max:"10 m"`
	// Restraint says how far mould and cores hold the length as it contracts.
	Restraint quantity.Opt[string] `json:"restraint" label:"Restraint" hint:"A plain bar is free; a length between two flanges or over a hard core is held" default:"free" choices:"free:Free to contract|partly:Partly restrained|full:Fully restrained"`
	// Machined says how many of its two faces are cut.
	Machined quantity.Opt[string] `json:"machined" label:"Machined" hint:"A turned diameter or a bore is cut on both faces" default:"none" choices:"none:As cast|one:On one face|both:On both faces"`
	// CutFace says which face of a step is cut where only one is.
	CutFace quantity.Opt[string] `json:"cut_face" label:"Face that is cut" when:"kind=step" hint:"Look how it lies in the mould; counts where one face of the step is machined" default:"high" choices:"high:The high face: stock lengthens the step|low:The low face: stock shortens the step"`
	// CopeExtra is stock added to one face that lies uppermost in the mould.
	CopeExtra quantity.Opt[quantity.Length] `json:"cope_extra" label:"Extra stock, cope face" hint:"Dirt and gas rise; a face uppermost in the mould often gets half as much again" when:"machined=one|both" default:"0 mm" min:"0 mm" max:"50 mm"`
	// Tolerance is the size's own tolerance, full width.
	Tolerance quantity.Opt[quantity.Length] `json:"tolerance" label:"Own casting tolerance, full width" hint:"From the drawing or the order; left empty, from the standard's table" min:"0.01 mm" max:"100 mm"`
	// Rapping is how much rapping opens the mould on this size.
	Rapping quantity.Opt[quantity.Length] `json:"rapping" label:"Rapping" hint:"How much rapping opens the mould on a size parallel to the parting: 0.5 to 1.5 mm for a wooden pattern rapped by hand, common practice; 0 along the draw, on core boxes and for machine moulding" when:"kind=outside|inside|wall" default:"0 mm" min:"0 mm" max:"10 mm"`
	// DraftHeight is the height of the drawn face.
	DraftHeight quantity.Opt[quantity.Length] `json:"draft_height" label:"Height of the drawn faces" hint:"How deep the face stands in the sand; left empty where nothing is drawn" when:"kind=outside|inside|wall" min:"1 mm" max:"10 m"`
	// DraftFace says whether the drawn faces of a wall are outside or inside
	// ones; those of other sizes follow their kind.
	DraftFace quantity.Opt[string] `json:"draft_face" label:"Drawn faces of the wall are" hint:"Which way the two faces of the wall are drawn" when:"kind=wall" default:"outside" choices:"outside:Both outside: a rib|inside:Both inside: between two pockets"`
	// Measured is the size of a pattern that is already there.
	Measured quantity.Opt[quantity.Length] `json:"measured" label:"Pattern at hand measures" hint:"Calipers on the pattern you have, to see what it will give" min:"0.5 mm" max:"11 m"`
}

// Output is the pattern, size by size, and what it rests on.
type Output struct {
	// Overall is the largest overall size of the finished casting.
	Overall quantity.Length `json:"overall" label:"Largest overall size"`
	// Source of the contraction.
	Source source.Ref `json:"source" label:"Contraction from"`
	// Contraction of a free length at the overall size.
	Contraction quantity.Ratio `json:"contraction" label:"Contraction at the largest size, free" step:"s"`
	// Low and High are the least and most of all the sources at that size.
	Low  quantity.Ratio `json:"low" label:"Least of all sources" step:"s_min"`
	High quantity.Ratio `json:"high" label:"Most of all sources" step:"s_max"`
	// Rule is how much longer than true a contraction rule is.
	Rule quantity.Ratio `json:"rule" label:"Contraction rule is longer by" step:"g"`
	// VolumeGrowth is how much larger the pattern's volume is than the
	// casting's, before stock and draft.
	VolumeGrowth quantity.Ratio `json:"volume_growth" label:"Pattern larger in volume by" step:"g_v" hint:"From contraction alone"`
	// Grade is the tolerance grade used over 25 mm.
	Grade int `json:"grade" label:"Casting tolerance grade (DCTG)"`
	// GradeBand says what is usual.
	GradeBand working.Text `json:"grade_band" label:"Usual tolerance grades"`
	// RMAGrade is the machining allowance grade used, and RMA its allowance.
	RMAGrade string          `json:"rma_grade" label:"Machining allowance grade (RMAG)"`
	RMABand  working.Text    `json:"rma_band" label:"Usual machining allowance grades"`
	RMA      quantity.Length `json:"rma" label:"Required machining allowance, per face" step:"q"`

	Dimensions []Sized `json:"dimensions"`
	Tables     []Table `json:"tables"`
}

// Sized is the answer for one dimension.
type Sized struct {
	Name string `json:"name" label:"Name"`
	Kind string `json:"kind" label:"Kind"`
	// Finished is the size that was asked for.
	Finished quantity.Length `json:"finished" label:"Finished size" inches:"64"`
	// Raw is the size of the raw casting.
	Raw quantity.Opt[quantity.Length] `json:"raw" label:"Raw casting" step:"R" inches:"64"`
	// Tolerance is the casting tolerance, full width; Half is half of it.
	Tolerance quantity.Opt[quantity.Length] `json:"tolerance" label:"Casting tolerance, full width"`
	Half      quantity.Opt[quantity.Length] `json:"half" label:"Casting tolerance, plus or minus" step:"t" inches:"64"`
	Grade     quantity.Opt[int]             `json:"grade" label:"Tolerance grade (DCTG)"`
	// Stock is what the machinist finds on each cut face of a casting of
	// nominal size; StockCope on the cope face.
	Stock     quantity.Opt[quantity.Length] `json:"stock" label:"Machining stock per face" step:"m" inches:"64" hint:"On a casting of nominal size; the least is the required allowance"`
	StockCope quantity.Opt[quantity.Length] `json:"stock_cope" label:"Machining stock, cope face" step:"m_c" inches:"64"`
	// Contraction used, and its place in the source.
	Contraction quantity.Opt[quantity.Ratio] `json:"contraction" label:"Contraction used" step:"s"`
	Row         string                       `json:"row" label:"Read from"`
	// Allowance is what contraction adds to the size.
	Allowance quantity.Opt[quantity.Length] `json:"allowance" label:"Contraction allowance" step:"a" inches:"64"`
	// Pattern is the size to make.
	Pattern quantity.Opt[quantity.Length] `json:"pattern" label:"Pattern" step:"P" inches:"64"`
	// PatternLow and PatternHigh are the pattern at the least and the most
	// contraction of the table's row.
	PatternLow  quantity.Opt[quantity.Length] `json:"pattern_low" label:"Pattern at the least contraction, held fast" step:"P_lo"`
	PatternHigh quantity.Opt[quantity.Length] `json:"pattern_high" label:"Pattern at the most contraction, free" step:"P_hi"`
	// Draft is the angle a side, Taper what it comes to over the height, FarEnd
	// the pattern size at the end that is not the nominal one.
	Draft  quantity.Opt[quantity.Angle]  `json:"draft" label:"Draft, per side"`
	Taper  quantity.Opt[quantity.Length] `json:"taper" label:"Taper, per side" step:"y" inches:"64"`
	FarEnd quantity.Opt[quantity.Length] `json:"far_end" label:"Pattern at the other end" step:"P_e" inches:"64"`
	Ends   string                        `json:"ends" label:"Where the sizes are held"`
	// Master is the size of the master for a cast working pattern.
	Master quantity.Opt[quantity.Length] `json:"master" label:"Master pattern" step:"M" inches:"64"`
	// Gives is the raw casting that the pattern at hand will give.
	Gives     quantity.Opt[quantity.Length] `json:"gives" label:"Pattern at hand gives" step:"C"`
	GivesLow  quantity.Opt[quantity.Length] `json:"gives_low" label:"Pattern at hand gives at least" step:"C_lo"`
	GivesHigh quantity.Opt[quantity.Length] `json:"gives_high" label:"Pattern at hand gives at most" step:"C_hi"`
}

// Table is one contraction table at the largest overall size.
type Table struct {
	Source source.Ref `json:"source" label:"Source"`
	Row    string     `json:"row" label:"Row"`
	Used   bool       `json:"used" label:"Used here"`
	// Free and Restrained are the source's figures, Low and High its range.
	Free       quantity.Ratio `json:"free" label:"Free"`
	Restrained quantity.Ratio `json:"restrained" label:"Restrained"`
	Low        quantity.Ratio `json:"low" label:"Least"`
	High       quantity.Ratio `json:"high" label:"Most"`
	// Adds is what the free figure adds to the largest size.
	Adds quantity.Length `json:"adds" label:"Adds to the largest size" step:"a"`
}

// job is one question being answered.
type job struct {
	in      Input
	metal   *alloy.Alloy
	table   alloy.ContractionTable
	second  alloy.ContractionTable // of a cast working pattern
	overall float64                // largest overall size, mm
	outer   bool                   // whether that is an outside size of the list
	q       float64                // required machining allowance, mm
	faults  form.Faults
}

// Size works out the pattern for every dimension. It refuses sizes over 10 m,
// and a machined size for which the standard's table has no tolerance; an
// as-cast size without one is answered with its tolerance left open.
func Size(in Input, p *working.Paper) (Output, error) {
	in, faults := form.Ready(in)
	if err := faults.Err(); err != nil {
		return Output{}, err
	}
	metal, ok := alloy.Find(in.Alloy)
	if !ok {
		panic("pattern: the form let an unknown metal through")
	}
	j := &job{in: in, metal: metal}
	j.chooseTable()
	j.checkOverall()
	j.checkOwn()
	for i, d := range in.Dimensions {
		j.checkRapping(i, d)
	}
	if err := j.faults.Err(); err != nil {
		return Output{}, err
	}
	var out Output
	j.whole(&out, p)
	for i, d := range in.Dimensions {
		out.Dimensions = append(out.Dimensions, j.one(i, d, p))
	}
	return out, j.faults.Err()
}

// path is the JSON path of a field of a dimension.
func path(i int, field string) string { return fmt.Sprintf("dimensions[%d].%s", i, field) }

// labelled is the dimension's name, or its place in the list.
func labelled(i int, d Dimension) string {
	if d.Name != "" {
		return d.Name
	}
	return fmt.Sprintf("Size %d", i+1)
}

// mm makes a length of a number of millimetres.
func mm(v float64) quantity.Length { return quantity.From[quantity.Length](v, "mm") }

// known makes a known length of a number of millimetres.
func known(v float64) quantity.Opt[quantity.Length] { return quantity.Some(mm(v)) }

// share makes a ratio of a share of 1.
func share(v float64) quantity.Ratio { return quantity.Ratio(v) }
