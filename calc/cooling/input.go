package cooling

import (
	"pourwright/calc/alloy"
	"pourwright/calc/freeze"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
)

// The bases of the heat figures.
const (
	fromLists   = "lists"
	fromFigures = "figures"
)

// Input is a casting, the sand it stands in, and how cold it is to be.
type Input struct {
	// Shape of the heaviest section, and its sizes as in freeze.Input.
	Shape     freeze.Shape                  `json:"shape" label:"Shape of the heaviest section" part:"Section" hint:"The part that cools last rules"`
	Thickness quantity.Length               `json:"thickness" label:"Thickness" when:"shape=plate|block" hint:"Measure with calipers" min:"0.5 mm" max:"1 m"`
	Length    quantity.Length               `json:"length" label:"Length" when:"shape=block" hint:"Longest side: rule or tape" min:"0.5 mm" max:"20 m"`
	Width     quantity.Length               `json:"width" label:"Width" when:"shape=block" hint:"Middle side: rule or calipers" min:"0.5 mm" max:"20 m"`
	Breadth   quantity.Length               `json:"breadth" label:"Breadth of the bar" when:"shape=bar" hint:"Calipers over one side of the cross-section" min:"0.5 mm" max:"1 m"`
	Depth     quantity.Length               `json:"depth" label:"Depth of the bar" when:"shape=bar" hint:"Calipers over the other side" min:"0.5 mm" max:"1 m"`
	Diameter  quantity.Length               `json:"diameter" label:"Diameter" when:"shape=cylinder|sphere" hint:"Measure with calipers" min:"0.5 mm" max:"2 m"`
	Height    quantity.Opt[quantity.Length] `json:"height" label:"Height" when:"shape=cylinder" hint:"Leave empty for a long bar whose ends do not matter" min:"0.5 mm" max:"20 m"`
	Modulus   quantity.Length               `json:"modulus" label:"Modulus" when:"shape=modulus" link:"feed" hint:"Volume over cooled surface of the heaviest section, from the feeding sheet" min:"0.1 mm" max:"0.5 m"`

	// Basis of the heat figures.
	Basis quantity.Opt[string] `json:"basis" label:"Heat figures from" hint:"The lists, or a data sheet of your own" part:"Metal and mould" default:"lists" choices:"lists:Metal and sand from the lists|figures:Your own heat figures"`
	// Alloy and Sand from the lists.
	Alloy alloy.Code      `json:"alloy" label:"Metal" when:"basis=lists" link:"metal" hint:"What is stamped on the ingot, or the nearest to it"`
	Sand  mouldstuff.Sand `json:"sand" label:"Mould material" when:"basis=lists" link:"mould" hint:"What the face against the metal is made of"`

	// The user's own figures.
	Density           quantity.Density                    `json:"density" label:"Density of the metal" when:"basis=figures" hint:"Of the liquid, from the metal's data sheet" min:"500 kg/m³" max:"25000 kg/m³"`
	Latent            quantity.SpecificEnergy             `json:"latent" label:"Latent heat" when:"basis=figures" hint:"Heat of fusion, from the metal's data sheet" min:"10 kJ/kg" max:"2000 kJ/kg"`
	Solidus           quantity.Temperature                `json:"solidus" label:"Solidus" when:"basis=figures" hint:"All solid below this; the melting point of a pure metal" min:"130 °C" max:"2500 °C"`
	Liquidus          quantity.Opt[quantity.Temperature]  `json:"liquidus" label:"Liquidus" when:"basis=figures" hint:"All liquid above this; leave empty for a pure metal" min:"130 °C" max:"2500 °C"`
	HeatSolid         quantity.SpecificHeat               `json:"heat_solid" label:"Specific heat of the solid" when:"basis=figures" hint:"Mean over its cooling, from the data sheet" min:"50 J/(kg·K)" max:"5000 J/(kg·K)"`
	HeatLiquid        quantity.Opt[quantity.SpecificHeat] `json:"heat_liquid" label:"Specific heat of the melt" when:"basis=figures" hint:"From the data sheet; needed only with superheat" min:"50 J/(kg·K)" max:"5000 J/(kg·K)"`
	Conductivity      quantity.Conductivity               `json:"conductivity" label:"Heat conductivity of the hot solid" when:"basis=figures" hint:"To check that the casting is alike in temperature all through" min:"1 W/(m·K)" max:"1000 W/(m·K)"`
	MouldConductivity quantity.Conductivity               `json:"mould_conductivity" label:"Heat conductivity of the mould" when:"basis=figures" hint:"Silica sand is 0.5 to 0.9 W/(m·K)" min:"0.05 W/(m·K)" max:"5 W/(m·K)"`
	MouldDensity      quantity.Density                    `json:"mould_density" label:"Density of the mould" when:"basis=figures" hint:"Weigh a rammed box of known volume" min:"100 kg/m³" max:"5000 kg/m³"`
	MouldHeat         quantity.SpecificHeat               `json:"mould_heat" label:"Specific heat of the mould" when:"basis=figures" hint:"Silica sand is about 1150 J/(kg·K)" min:"100 J/(kg·K)" max:"4000 J/(kg·K)"`

	// PourTemperature is the metal's temperature as the mould is full.
	PourTemperature quantity.Opt[quantity.Temperature] `json:"pour_temperature" label:"Pouring temperature" link:"metal" hint:"In the mould; leave empty to count no superheat" min:"130 °C" max:"3000 °C"`
	// MouldTemperature before pouring.
	MouldTemperature quantity.Opt[quantity.Temperature] `json:"mould_temperature" label:"Mould temperature" hint:"As it stands before pouring: the shop's air, or a thermometer in the sand" default:"20 °C" min:"-40 °C" max:"1000 °C"`
	// Counted is the share of the superheat in the middle value.
	Counted quantity.Opt[quantity.Ratio] `json:"counted" label:"Superheat counted" hint:"Part of it is lost while the mould fills; the band always runs from none to all" default:"50 %" min:"0 %" max:"100 %"`
	// Constant is the shop's own freezing constant, which stands for the sand.
	Constant quantity.Opt[quantity.FreezingConstant] `json:"constant" label:"Own freezing constant" hint:"From a casting that you timed in this sand; it goes before the lists" min:"0.01 s/mm²" max:"100 s/mm²"`
	// ChangeHeat is the heat of a change in the solid near 730 °C.
	ChangeHeat quantity.Opt[quantity.SpecificEnergy] `json:"change_heat" label:"Heat of the change near 730 °C" hint:"Leave empty for the usual figure of iron and steel, and none in other metals" min:"0 kJ/kg" max:"200 kJ/kg"`
	// SandThickness is the sand that the casting has to itself.
	SandThickness quantity.Opt[quantity.Length] `json:"sand_thickness" label:"Sand round the casting" link:"mould" hint:"Least thickness to the flask, or half of it to a neighbour" min:"5 mm" max:"5 m"`

	// Stress says how much the casting fears uneven cooling.
	Stress quantity.Opt[string] `json:"stress" label:"Casting" hint:"Look for thick beside thin" part:"Shaking out" default:"simple" choices:"simple:Simple, of even section|prone:Prone to stress: thick beside thin, frames, wheels, long beds"`
	// Shakeout is the temperature to shake out at.
	Shakeout quantity.Opt[quantity.Temperature] `json:"shakeout" label:"Own shakeout temperature" hint:"Leave empty for what is usual for the metal" min:"30 °C" max:"1400 °C"`
	// OpenAfter is a time to look at.
	OpenAfter quantity.Opt[quantity.Time] `json:"open_after" label:"Mould to be opened after" hint:"Counted from the end of the pour; leave empty if it can wait" min:"1 s" max:"60 d"`
}
