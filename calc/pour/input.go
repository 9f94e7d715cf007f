package pour

import (
	"pourwright/calc/alloy"
	"pourwright/calc/flow"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
)

// Weigh is which mass the trade's rules are fed with; the texts differ.
type Weigh string

// The masses.
const (
	ByPoured  Weigh = "poured"
	ByCasting Weigh = "casting"
)

// Choices lists the masses for a form.
func (Weigh) Choices() [][2]string {
	return [][2]string{{string(ByPoured), "All the metal poured"}, {string(ByCasting), "The casting alone"}}
}

// Fluidity is how grey iron's fluidity is known.
type Fluidity string

// The ways to know it.
const (
	ByFactor   Fluidity = "factor"
	ByAnalysis Fluidity = "analysis"
)

// Choices lists the ways for a form.
func (Fluidity) Choices() [][2]string {
	return [][2]string{{string(ByFactor), "Factor, from your own spiral or by default"}, {string(ByAnalysis), "Reckoned from the analysis"}}
}

// CopperCase is a row of the list of copper coefficients.
type CopperCase string

// The rows.
const (
	CopperTop       CopperCase = "top"
	CopperBottom    CopperCase = "bottom"
	CopperBrass     CopperCase = "brass"
	CopperTinBronze CopperCase = "tin-bronze"
)

// Choices lists the rows for a form.
func (CopperCase) Choices() [][2]string {
	return [][2]string{
		{string(CopperTop), "Top gated"}, {string(CopperBottom), "Bottom gated"},
		{string(CopperBrass), "Brass"}, {string(CopperTinBronze), "Tin bronze"},
	}
}

// Input is the pour.
type Input struct {
	// Alloy is the metal.
	Alloy alloy.Code `json:"alloy" label:"Metal" part:"Metal" link:"metal" hint:"What is stamped on the ingot, or the nearest to it"`
	// Density is the user's own density of the liquid metal.
	Density quantity.Opt[quantity.Density] `json:"density" label:"Own density, liquid" link:"metal" hint:"Leave empty to use the metal's own" min:"500 kg/m³" max:"20000 kg/m³"`
	// Poured is the mass through the sprue.
	Poured quantity.Mass `json:"poured_mass" label:"Metal poured" link:"weight" hint:"Castings, risers and runners of one mould together" min:"10 g" max:"50 t"`
	// Casting is the mass of the castings alone.
	Casting quantity.Opt[quantity.Mass] `json:"casting_mass" label:"Castings alone" link:"weight" hint:"Weigh them without risers and runners; all castings of the mould" min:"1 g" max:"50 t"`
	// Weigh is which of the two the rules take.
	Weigh quantity.Opt[Weigh] `json:"weigh" label:"Mass for the rules" hint:"The texts differ; be true to one" default:"poured"`
	// PourTemperature at the lip, and what it falls by on the way to the wall.
	PourTemperature quantity.Temperature            `json:"pour_temperature" label:"Pouring temperature" link:"metal" hint:"Thermometer in the ladle, at the lip" min:"150 °C" max:"1800 °C"`
	Drop            quantity.Opt[quantity.TempDiff] `json:"gating_drop" label:"Loss in sprue and runners" hint:"5 to 30 °C in short sand runners; leave empty for 1 % of what the metal has over the mould" min:"0 K" max:"150 K"`

	// Wall is the mean wall, Thin the thinnest that has to run.
	Wall quantity.Length `json:"wall" label:"Mean wall" part:"Walls" hint:"Measure with calipers, away from bosses and ribs" min:"1 mm" max:"500 mm"`
	Thin quantity.Length `json:"thin_wall" label:"Thinnest wall" hint:"Calipers on the wall that is hardest to fill" min:"0.5 mm" max:"500 mm"`
	// Run is the longest way through the thin wall, from an ingate.
	Run quantity.Opt[quantity.Length] `json:"flow_length" label:"Longest way to its end" hint:"String from the nearest ingate to the far end of the thin wall, as the metal runs" min:"1 mm" max:"20 m"`
	// ThinShare is the share of the pour that goes by while it fills.
	ThinShare quantity.Opt[quantity.Ratio] `json:"thin_share" label:"Share of the pour while it fills" hint:"100 % if the casting is all thin wall; a thin rib on a heavy body fills in a part of the time" default:"100 %" min:"5 %" max:"100 %"`
	// Coherency is the share of latent heat at which the metal stops.
	Coherency quantity.Opt[quantity.Ratio] `json:"coherency" label:"Latent heat lost when it stops" hint:"Leave empty: by the freezing range, 20 to 60 %" min:"5 %" max:"90 %"`

	// Sand is the mould material, with its temperature.
	Sand             mouldstuff.Sand                         `json:"sand" label:"Mould material" part:"Mould" link:"mould" hint:"What the face against the metal is made of"`
	MouldTemperature quantity.Opt[quantity.Temperature]      `json:"mould_temperature" label:"Mould temperature" hint:"As it stands before pouring: the shop's air, or a thermometer in the sand" default:"20 °C" min:"-40 °C" max:"1100 °C"`
	FreezingConstant quantity.Opt[quantity.FreezingConstant] `json:"freezing_constant" label:"Own freezing constant" link:"freeze" hint:"If you have timed a casting; it goes before the data of the sand" min:"0.02 s/mm²" max:"100 s/mm²"`

	// Fluidity of grey iron.
	Fluidity   quantity.Opt[Fluidity]        `json:"fluidity" label:"Fluidity of grey iron" part:"For grey iron and copper alloys" hint:"Counts only for grey iron" default:"factor"`
	Factor     quantity.Opt[quantity.Number] `json:"fluidity_factor" label:"Fluidity factor" when:"fluidity=factor" hint:"Your spiral's length in inches over 40; usually 0.6 to 1" default:"0.8" min:"0.2" max:"1.6"`
	Carbon     quantity.Ratio                `json:"carbon" label:"Carbon" when:"fluidity=analysis" hint:"From the heat's analysis, or the last one's from the same charge" min:"2 %" max:"4.5 %"`
	Silicon    quantity.Ratio                `json:"silicon" label:"Silicon" when:"fluidity=analysis" hint:"From the heat's analysis, or the last one's from the same charge" min:"0.3 %" max:"4 %"`
	Phosphorus quantity.Opt[quantity.Ratio]  `json:"phosphorus" label:"Phosphorus" when:"fluidity=analysis" hint:"From the heat's analysis; little but in old scrap" default:"0.05 %" min:"0 %" max:"1.5 %"`
	// Copper is the row of the list of coefficients; left out, its whole range.
	Copper quantity.Opt[CopperCase] `json:"copper_case" label:"Case of the copper rule" hint:"Counts only for copper alloys; leave empty for the whole range"`

	// Gate is where the ingates meet the cavity.
	Gate   quantity.Opt[flow.Position]   `json:"gate" label:"Ingates at" part:"Gating" hint:"Where the metal enters the cavity" default:"parting"`
	Height quantity.Opt[quantity.Length] `json:"sprue_height" label:"Metal level above the ingates" link:"mould" hint:"Rule from the level in the basin down to the ingates" min:"10 mm" max:"5 m"`
	Cavity quantity.Opt[quantity.Length] `json:"cavity_height" label:"Height of the cavity" link:"mould" hint:"Rule over the casting as it stands in the mould" min:"1 mm" max:"5 m"`
	Cope   quantity.Opt[quantity.Length] `json:"cope_height" label:"Cavity above the ingates" when:"gate=parting" link:"mould" hint:"The part of its height in the cope; 0 if all is in the drag" min:"0 mm" max:"5 m"`
	// Discharge is the coefficient of the choke.
	Discharge quantity.Opt[quantity.Number] `json:"discharge" label:"Discharge coefficient" hint:"0.7 to 0.75 straight sprue, 0.85 to 0.9 tapered; 0.25 to 0.6 in tables that count the mould's back pressure too" default:"0.8" min:"0.2" max:"1"`
	Choke     quantity.Opt[quantity.Area]   `json:"choke_area" label:"Choke, if it is there already" hint:"Calipers on the narrowest section between basin and ingates" min:"0.05 cm²" max:"5000 cm²"`
	Basin     quantity.Opt[quantity.Length] `json:"basin_depth" label:"Depth of metal in the basin" hint:"Metal level down to the top of the sprue" min:"5 mm" max:"1 m"`
	// Ingates in all, and their speed limit.
	Ingates     quantity.Opt[quantity.Area]  `json:"ingate_area" label:"Ingates, all together" hint:"Width times thickness of each, summed" min:"0.05 cm²" max:"20000 cm²"`
	IngateSpeed quantity.Opt[quantity.Speed] `json:"ingate_speed" label:"Own limit of the ingate speed" hint:"Leave empty for the metal's usual limit" min:"0.05 m/s" max:"3 m/s"`
	// Vents in all, and the speed of air in them.
	Vents     quantity.Opt[quantity.Area]  `json:"vent_area" label:"Vents, all together" hint:"Sum of their sections, open risers too: 0.785 diameter squared" min:"0.02 cm²" max:"20000 cm²"`
	VentSpeed quantity.Opt[quantity.Speed] `json:"vent_speed" label:"Most that air may have in the vents" hint:"By custom; 10 m/s takes a back pressure of a few millimetres of iron" default:"10 m/s" min:"0.5 m/s" max:"60 m/s"`
	// Rise is the shop's own least rise of the level.
	Rise quantity.Opt[quantity.Speed] `json:"rise_speed" label:"Own least rise of the level" hint:"Leave empty for the usual, by wall" unit:"mm/s,in/s" min:"0.5 mm/s" max:"500 mm/s"`

	// Surfaces of the cope that the metal presses on.
	Surfaces []Surface                     `json:"surfaces" label:"Cope surfaces" part:"Lift" hint:"One for each level: casting, runners, flanges" min:"0" max:"60"`
	CoreLift quantity.Opt[quantity.Force]  `json:"core_lift" label:"Lift of cores held by the cope" link:"core" hint:"Only what reaches the cope" default:"0 N" min:"0 N" max:"5000 kN"`
	CopeMass quantity.Opt[quantity.Mass]   `json:"cope_mass" label:"Mass of the cope" link:"mould" hint:"Sand and flask" min:"0 kg" max:"50 t"`
	Weights  quantity.Opt[quantity.Mass]   `json:"weights" label:"Weights on the cope" hint:"Weigh what lies on the cope already" default:"0 kg" min:"0 kg" max:"100 t"`
	Clamps   quantity.Opt[quantity.Force]  `json:"clamps" label:"Holding force of the clamps" hint:"All clamps together, only if you know it" default:"0 N" min:"0 N" max:"10000 kN"`
	Surge    quantity.Opt[quantity.Number] `json:"surge" label:"Surge factor" hint:"1.5 by custom, up to 2 for fast and large pours" default:"1.5" min:"1" max:"3"`

	// Chosen is the time that the user means to take.
	Chosen quantity.Opt[quantity.Time] `json:"chosen_time" label:"Time you mean to take" part:"Your own time" hint:"Leave empty to go by the recommended time" min:"0.1 s" max:"1 h"`
}

// Surface is one level of the cope.
type Surface struct {
	Area  quantity.Area   `json:"area" label:"Area seen from above" hint:"Upright walls count for nothing" min:"0.05 cm²" max:"100 m²"`
	Depth quantity.Length `json:"depth" label:"Depth under the metal level" hint:"From the level in the basin down to the surface" min:"1 mm" max:"10 m"`
}
