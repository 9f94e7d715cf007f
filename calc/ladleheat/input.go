package ladleheat

import (
	"pourwright/calc/alloy"
	"pourwright/calc/quantity"
)

// The ways of the loss, the vessels and the tops.
const (
	byModel    = "model"
	byReadings = "readings"

	lined    = "ladle"
	crucible = "crucible"

	open    = "open"
	covered = "covered"
	ownTop  = "own"
)

// Input is a ladle of metal and what is done with it.
type Input struct {
	// Alloy is the metal.
	Alloy alloy.Code `json:"alloy" label:"Metal" link:"metal" part:"Metal" hint:"What is stamped on the ingot, or the nearest to it"`
	// Tap is the metal's temperature in the furnace.
	Tap quantity.Opt[quantity.Temperature] `json:"tap" label:"Tapping temperature" hint:"Thermometer in the furnace just before tapping; left empty, the temperature that is needed" min:"150 °C" max:"1800 °C"`
	// Drop is the loss in tapping.
	Drop quantity.Opt[quantity.TempDiff] `json:"drop" label:"Drop in tapping" hint:"From furnace to ladle; leave empty for what is usual for the metal" min:"0 K" max:"200 K"`
	// WindowLow and WindowHigh are the least and the most to pour at.
	WindowLow  quantity.Opt[quantity.Temperature] `json:"window_low" label:"Coldest to pour" link:"metal" hint:"At the lip, for the last mould; leave empty for the metal's usual range" min:"150 °C" max:"1750 °C"`
	WindowHigh quantity.Opt[quantity.Temperature] `json:"window_high" label:"Hottest to pour" link:"metal" hint:"At the lip, for the first mould; leave empty for the metal's usual range" min:"150 °C" max:"1750 °C"`

	// Transfer is the time from tapped to pouring.
	Transfer quantity.Opt[quantity.Time] `json:"transfer" label:"Time until pouring begins" part:"Times" hint:"From the ladle filled until the first stream: skim, carry, place" default:"60 s" min:"1 s" max:"4 h"`
	// Pouring is the time from the first stream until the last mould is full.
	Pouring quantity.Opt[quantity.Time] `json:"pouring" label:"Time from the first stream to the last mould full" link:"pour" hint:"All moulds from this ladle and the walks between them" min:"1 s" max:"4 h"`

	// Basis is where the loss comes from.
	Basis quantity.Opt[string] `json:"basis" label:"Loss of heat from" part:"Loss" hint:"Two readings of your own ladle beat every reckoning" default:"model" choices:"model:Ladle, lining and cover|readings:Two thermometer readings"`
	// First and Second are readings of metal standing in this ladle, Between
	// the time between them.
	First   quantity.Temperature `json:"first" label:"First reading" when:"basis=readings" hint:"Thermometer in a full ladle, some time after tapping" min:"150 °C" max:"1800 °C"`
	Second  quantity.Temperature `json:"second" label:"Second reading" when:"basis=readings" hint:"Thermometer in the same ladle, later" min:"150 °C" max:"1800 °C"`
	Between quantity.Time        `json:"between" label:"Time between the readings" when:"basis=readings" hint:"The longer, the better the rate is known" min:"5 s" max:"6 h"`

	// Mass is the metal in the ladle as it is filled.
	Mass quantity.Mass `json:"mass" label:"Metal in the ladle" when:"basis=model" link:"weight" hint:"Weigh it, or count charges; as it is tapped" min:"0.1 kg" max:"30 t"`
	// Left is the share of the metal left at the end.
	Left quantity.Opt[quantity.Ratio] `json:"left" label:"Left in the ladle at the end" when:"basis=model" hint:"The mass falls as it is poured, and less metal cools faster; 100 % for metal that only stands" default:"15 %" min:"5 %" max:"100 %"`
	// Vessel that the metal is poured from.
	Vessel quantity.Opt[string] `json:"vessel" label:"Poured from" hint:"What the metal is in while it is poured" when:"basis=model" default:"ladle" choices:"ladle:A lined ladle|crucible:The crucible, lifted from its furnace"`
	// Diameter inside, as a mean over the height.
	Diameter quantity.Opt[quantity.Length] `json:"diameter" label:"Inside diameter" when:"basis=model" link:"ladle" hint:"Mean over the height of the metal; leave empty for metal as deep as it is wide" min:"20 mm" max:"3 m"`
	// Cover says what lies on the metal.
	Cover quantity.Opt[string] `json:"cover" label:"Top of the metal" hint:"What lies over the metal while it waits" when:"basis=model" default:"open" choices:"open:Open|covered:Under a lid, charcoal or covering powder|own:Own share of the open top's loss"`
	// CoverShare is what the cover lets through.
	CoverShare quantity.Opt[quantity.Ratio] `json:"cover_share" label:"Share of the loss that is left" hint:"Two readings of a timed wait, covered and open" when:"cover=own" default:"25 %" min:"0 %" max:"100 %"`
	// Emissivity of the bare metal.
	Emissivity quantity.Opt[quantity.Ratio] `json:"emissivity" label:"Emissivity of the bare top" when:"basis=model" hint:"Leave empty for the metal's usual figure" min:"1 %" max:"100 %"`
	// Surroundings that the top sees.
	Surroundings quantity.Opt[quantity.Temperature] `json:"surroundings" label:"Surroundings" hint:"What the ladle stands in: the shop's air and walls" default:"20 °C" min:"-40 °C" max:"600 °C"`

	// Preheat of the lining.
	Preheat quantity.Opt[quantity.Temperature] `json:"preheat" label:"Lining heated to" when:"vessel=ladle" part:"Lining" hint:"As it is right through; leave empty for what is usual for the metal" min:"-20 °C" max:"1600 °C"`
	// The lining's heat.
	LiningConductivity quantity.Opt[quantity.Conductivity] `json:"lining_conductivity" label:"Heat conductivity of the lining" when:"vessel=ladle" hint:"Rammed or cast refractory about 1.2 W/(m·K), fibre 0.15 to 0.3; 0 for none" default:"1.2 W/(m·K)" min:"0 W/(m·K)" max:"20 W/(m·K)"`
	LiningDensity      quantity.Opt[quantity.Density]      `json:"lining_density" label:"Density of the lining" when:"vessel=ladle" hint:"Rammed or cast refractory about 2000 kg/m³, fibre 400 to 600" default:"2000 kg/m³" min:"100 kg/m³" max:"4000 kg/m³"`
	LiningHeat         quantity.Opt[quantity.SpecificHeat] `json:"lining_heat" label:"Specific heat of the lining" hint:"From the maker's sheet; most refractories are near 1000" when:"vessel=ladle" default:"1000 J/(kg·K)" min:"300 J/(kg·K)" max:"2000 J/(kg·K)"`

	// The crucible's wall.
	Wall         quantity.Opt[quantity.Length] `json:"wall" label:"Wall of the crucible" hint:"Calipers at the rim" when:"vessel=crucible" part:"Crucible" default:"20 mm" min:"3 mm" max:"150 mm"`
	CrucibleMass quantity.Opt[quantity.Mass]   `json:"crucible_mass" label:"Weight of the crucible" when:"vessel=crucible" hint:"Empty; it keeps heat for the metal. Leave empty to reckon it from its wall" min:"0.1 kg" max:"2 t"`
}
