package feed

import (
	"pourwright/calc/alloy"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
)

// Input is one casting as sections, and its risers.
type Input struct {
	// Alloy is the casting metal.
	Alloy alloy.Code `json:"alloy" label:"Metal" part:"Metal and mould" link:"metal" hint:"What is stamped on the ingot, or the nearest to it"`
	// Shrinkage is the liquid and freezing contraction to be fed.
	Shrinkage quantity.Opt[quantity.Ratio] `json:"shrinkage" label:"Own feed shrinkage" hint:"Liquid and freezing contraction by volume; 0 only for an iron that you know feeds itself" min:"0 %" max:"12 %"`
	// Wall, CarbonEquivalent and PourTemperature decide on graphite expansion.
	Wall             quantity.Opt[Wall]                 `json:"wall" label:"Mould wall" link:"mould" hint:"Matters for irons, which push the mould as they freeze" default:"green"`
	CarbonEquivalent quantity.Opt[quantity.Ratio]       `json:"carbon_equivalent" label:"Carbon equivalent" link:"metal" hint:"C + (Si + P)/3, of irons" min:"2 %" max:"6 %"`
	PourTemperature  quantity.Opt[quantity.Temperature] `json:"pour_temperature" label:"Pouring temperature" link:"metal" hint:"Thermometer in the ladle, less the loss on the way into the mould" min:"30 °C" max:"2000 °C"`

	// Constant of freezing, the shop's own; else it is reckoned from the sand.
	Constant         quantity.Opt[quantity.FreezingConstant] `json:"constant" label:"Own freezing constant" part:"Freezing times" hint:"Time a casting until its riser is solid, divide by modulus squared; the order of freezing needs none" min:"0.01 s/mm²" max:"100 s/mm²"`
	Sand             quantity.Opt[mouldstuff.Sand]           `json:"sand" label:"Mould material" link:"mould" hint:"Against the metal; for freezing times only"`
	MouldTemperature quantity.Opt[quantity.Temperature]      `json:"mould_temperature" label:"Mould temperature" hint:"As it stands before pouring: the shop's air, or a thermometer in the sand" default:"20 °C" min:"-40 °C" max:"1200 °C"`
	Counted          quantity.Opt[quantity.Ratio]            `json:"counted" label:"Superheat counted" hint:"Part of it is lost while the mould fills; the band always runs from none to all" default:"50 %" min:"0 %" max:"100 %"`

	// Sections of one casting.
	Sections []Section `json:"sections" label:"Sections" part:"Casting" hint:"Walls, flanges and bosses of one casting, each a plain body" min:"1" max:"40"`
	// Joints where they touch.
	Joints []Joint `json:"joints" label:"Where sections touch" hint:"A joined face does not cool; name both sections" max:"80"`

	// RiserFactor and NeckFactor are moduli over that of the section.
	RiserFactor quantity.Opt[quantity.Number] `json:"riser_factor" label:"Own modulus factor of the risers" part:"Risers" hint:"Riser over section; usual 1.2, ductile iron 1.1, 1.4 where a section of another thickness lies between" min:"0.6" max:"2"`
	NeckFactor  quantity.Opt[quantity.Number] `json:"neck_factor" label:"Modulus factor of the necks" hint:"Neck over section: 1.1 keeps the neck open longer than the section" default:"1.1" min:"0.5" max:"1.5"`
	// Risers that end the ways of feeding.
	Risers []Riser `json:"risers" label:"Risers" hint:"Name each as the source of the sections on which it stands" max:"20"`
}

// Section is one body of the casting, or several alike.
type Section struct {
	// Name by which others refer to it.
	Name string `json:"name" label:"Name" max:"60" hint:"Such as flange, web or boss; left empty, section 1, section 2 and so on"`
	// Kind is its form.
	Kind Kind `json:"kind" label:"Form" hint:"The plain body nearest to it"`
	// Count is how many alike in one casting.
	Count quantity.Opt[int] `json:"count" label:"How many" hint:"Count them in one casting, all alike" default:"1" min:"1" max:"200"`

	// Length, Width and Thickness of a plate; Length, Breadth and Depth of a bar.
	Length    quantity.Length `json:"length" label:"Length" hint:"Longest side: rule or tape" when:"kind=plate|bar" min:"1 mm" max:"20 m"`
	Width     quantity.Length `json:"width" label:"Width" hint:"The side across: rule or calipers" when:"kind=plate" min:"1 mm" max:"20 m"`
	Thickness quantity.Length `json:"thickness" label:"Thickness" when:"kind=plate" hint:"Measure with calipers" min:"0.5 mm" max:"2 m"`
	Breadth   quantity.Length `json:"breadth" label:"Breadth" when:"kind=bar" hint:"Calipers over one side of the cross-section" min:"0.5 mm" max:"5 m"`
	Depth     quantity.Length `json:"depth" label:"Depth" when:"kind=bar" hint:"Calipers over the other side" min:"0.5 mm" max:"5 m"`
	// Diameter, Inner and Height of the round ones.
	Diameter quantity.Length `json:"diameter" label:"Diameter" when:"kind=cylinder|tube|sphere" hint:"Calipers over the outside" min:"1 mm" max:"10 m"`
	Inner    quantity.Length `json:"inner" label:"Bore" hint:"Inside calipers, or the core's diameter" when:"kind=tube" min:"0.5 mm" max:"10 m"`
	Height   quantity.Length `json:"height" label:"Height or length" hint:"Rule along its axis" when:"kind=cylinder|tube" min:"1 mm" max:"20 m"`
	// Bore is the share of full cooling that the bore gives.
	Bore quantity.Opt[quantity.Ratio] `json:"bore" label:"Cooling by the bore" when:"kind=tube" default:"100 %" min:"0 %" max:"100 %" hint:"A small core soon heats through: 0 % for a bore under about a quarter of the outside"`
	// Modulus, Volume and Wall of a section whose modulus is known.
	Modulus quantity.Length               `json:"modulus" label:"Modulus" when:"kind=stated" hint:"Volume over what cools of its surface, joints left out already" min:"0.2 mm" max:"1 m"`
	Volume  quantity.Volume               `json:"volume" label:"Volume" when:"kind=stated" hint:"Of one: from its sizes, or by drowning" min:"0.1 cm³" max:"20 m³"`
	Wall    quantity.Opt[quantity.Length] `json:"wall" label:"Wall thickness" when:"kind=stated" hint:"Only for junctions and the feeding distance" min:"0.5 mm" max:"2 m"`

	// Covered is what else does not cool.
	Covered quantity.Opt[quantity.Area] `json:"covered" label:"Surface under risers" when:"kind=plate|bar|cylinder|tube|sphere" hint:"What a riser, its neck or a sleeve covers of one of them does not cool" default:"0 cm²" min:"0 cm²" max:"20 m²"`
	// Chilled is the user's own modulus for the order of freezing.
	Chilled quantity.Opt[quantity.Length] `json:"chilled" label:"Own modulus in the order of freezing" hint:"For a section against a chill, in another sand or padded; left empty, from its faces" min:"0.2 mm" max:"1 m"`

	// FeedsFrom names the riser or the section that feeds it.
	FeedsFrom string `json:"feeds_from" label:"Fed from" max:"60" hint:"Name of a riser, or of the section through which feed comes"`
	// Reach is how far feed must go in it.
	Reach quantity.Opt[quantity.Length] `json:"reach" label:"Longest way to feed in it" hint:"From the riser's edge, or where feed comes in, to its far end; to the next riser's edge if there is one beyond" min:"1 mm" max:"20 m"`
	// Beyond says what lies at the far end, EndChill that it is chilled.
	Beyond   quantity.Opt[Beyond] `json:"beyond" label:"At the end of that way" hint:"A free end helps to feed; between two risers there is none" default:"end"`
	EndChill bool                 `json:"end_chill" label:"Chill there" hint:"On the far end, or midway between two risers"`
}

// Joint is where two sections touch.
type Joint struct {
	// One and Other are the sections.
	One   string `json:"one" label:"Section" need:"yes" max:"60" hint:"Its name in the list above; of a T, the wall that runs through"`
	Other string `json:"other" label:"Touches" need:"yes" max:"60" hint:"Its name in the list above; of a T, the wall that ends there"`
	// Area of one contact, Count of such contacts in one casting.
	Area  quantity.Area     `json:"area" label:"Area of contact" hint:"Length times breadth of one such place; it cools on neither side" min:"0.05 cm²" max:"20 m²"`
	Count quantity.Opt[int] `json:"count" label:"How many such places" hint:"Count them in one casting" default:"1" min:"1" max:"1000"`
	// Junction and Fillet give the hot spot.
	Junction quantity.Opt[Junction]        `json:"junction" label:"Junction of walls" hint:"For the hot spot in the corner" default:"none"`
	Fillet   quantity.Opt[quantity.Length] `json:"fillet" label:"Fillet radius" when:"junction=l|t|x" hint:"Of the inner corners; the larger, the hotter the spot" default:"0 mm" min:"0 mm" max:"1 m"`
	// Riser that stands on the junction.
	Riser string `json:"riser" label:"Riser on the junction" when:"junction=l|t|x" max:"60" hint:"Its name in the list of risers, if one stands there"`
}

// Riser is one riser.
type Riser struct {
	// Name by which sections refer to it.
	Name string `json:"name" label:"Name" max:"60" hint:"Left empty, riser 1, riser 2 and so on"`
	// Place is where it stands, Shape its body, Cover what is between it and
	// the air.
	Place quantity.Opt[Place] `json:"place" label:"Where" hint:"On top of what it feeds, or beside it" default:"top"`
	Shape quantity.Opt[Shape] `json:"shape" label:"Shape" hint:"By the riser pattern or sleeve you have" default:"cylinder"`
	Cover quantity.Opt[Cover] `json:"cover" label:"Cover" hint:"Whether it is open to the air, blind, or sleeved" default:"open"`
	// Ratio is height over diameter.
	Ratio quantity.Opt[quantity.Number] `json:"ratio" label:"Height over diameter" when:"shape=cylinder|domed" hint:"Of your riser pattern or sleeve; used where no height is given" default:"1" min:"0.25" max:"5"`
	// Diameter and Height are the user's own, to be checked.
	Diameter quantity.Opt[quantity.Length] `json:"diameter" label:"Own diameter, to check" when:"shape=cylinder|domed" hint:"Of the riser pattern you have; left empty, it is sized" min:"1 mm" max:"5 m"`
	Height   quantity.Opt[quantity.Length] `json:"height" label:"Own height, to check" when:"shape=cylinder|domed" hint:"Of the riser pattern you have; needs the diameter too" min:"1 mm" max:"10 m"`
	// Modulus and Volume of a feeder of any other form.
	Modulus quantity.Length `json:"modulus" label:"Modulus" when:"shape=stated" hint:"Volume over what cools of it; of a gate that feeds, that of the gate" min:"0.5 mm" max:"1 m"`
	Volume  quantity.Volume `json:"volume" label:"Volume" when:"shape=stated" hint:"What it can be drawn from, basin and sprue with it where they feed" min:"0.1 cm³" max:"20 m³"`
	// Castings is how many castings share it.
	Castings quantity.Opt[int] `json:"castings" label:"Castings it feeds" hint:"Alike, and fed the same way" default:"1" min:"1" max:"50"`
	// Efficiency is the share of it that can be fed out of it.
	Efficiency quantity.Opt[quantity.Ratio] `json:"efficiency" label:"Own feed efficiency" hint:"Share of the riser's volume that it can give: 14 % in sand, 33 % in a sleeve" min:"1 %" max:"80 %"`
	// Extension is what its cover multiplies the modulus by.
	Extension quantity.Opt[quantity.Number] `json:"extension" label:"Own modulus extension" when:"cover=sleeve|topped|both" hint:"Sellers print 1.1 to 1.3 for insulating sleeves, up to 1.5 for exothermic ones; measured values were lower" min:"1" max:"2"`
	// NeckLength is from riser to casting.
	NeckLength quantity.Opt[quantity.Length] `json:"neck_length" label:"Length of the neck" hint:"From riser to casting; keep it as short as you can" min:"1 mm" max:"1 m"`
}
