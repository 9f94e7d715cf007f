package freeze

import (
	"pourwright/calc/alloy"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
)

// Basis is where the freezing constant comes from.
type Basis string

// The bases.
const (
	FromLists    Basis = "lists"
	FromFigures  Basis = "figures"
	FromConstant Basis = "constant"
	FromTimed    Basis = "timed"
)

// Choices lists the bases for a form.
func (Basis) Choices() [][2]string {
	return [][2]string{
		{string(FromLists), "Metal and sand from the lists"},
		{string(FromFigures), "Your own heat figures"},
		{string(FromConstant), "Your own freezing constant"},
		{string(FromTimed), "One casting that you timed"},
	}
}

// Shape is the form of the section.
type Shape string

// The shapes.
const (
	Plate    Shape = "plate"
	Block    Shape = "block"
	Bar      Shape = "bar"
	Cylinder Shape = "cylinder"
	Sphere   Shape = "sphere"
	Stated   Shape = "modulus"
)

// Choices lists the shapes for a form.
func (Shape) Choices() [][2]string {
	return [][2]string{
		{string(Plate), "Plate or wall, edges far away"},
		{string(Block), "Block or small plate, all six faces cooling"},
		{string(Bar), "Long bar, square or oblong"},
		{string(Cylinder), "Round bar or cylinder"},
		{string(Sphere), "Sphere"},
		{string(Stated), "Modulus already known"},
	}
}

// Input is a section and what it freezes in.
type Input struct {
	// Shape of the section.
	Shape Shape `json:"shape" label:"Shape of the section" part:"Section" hint:"The simple shape nearest to the part you ask about"`
	// Thickness of a plate or block.
	Thickness quantity.Length `json:"thickness" label:"Thickness" when:"shape=plate|block" hint:"Measure with calipers" min:"0.5 mm" max:"2 m"`
	// Length and Width of a block; Breadth and Depth of a bar.
	Length  quantity.Length `json:"length" label:"Length" when:"shape=block" hint:"Longest side: rule or tape" min:"0.5 mm" max:"20 m"`
	Width   quantity.Length `json:"width" label:"Width" when:"shape=block" hint:"Middle side: rule or calipers" min:"0.5 mm" max:"20 m"`
	Breadth quantity.Length `json:"breadth" label:"Breadth of the bar" when:"shape=bar" hint:"Calipers over one side of the cross-section" min:"0.5 mm" max:"2 m"`
	Depth   quantity.Length `json:"depth" label:"Depth of the bar" when:"shape=bar" hint:"Calipers over the other side" min:"0.5 mm" max:"2 m"`
	// Diameter of a cylinder or sphere; Height of a cylinder, left out for a long one.
	Diameter quantity.Length               `json:"diameter" label:"Diameter" when:"shape=cylinder|sphere" hint:"Measure with calipers" min:"0.5 mm" max:"4 m"`
	Height   quantity.Opt[quantity.Length] `json:"height" label:"Height" when:"shape=cylinder" hint:"Leave empty for a long bar whose ends do not matter" min:"0.5 mm" max:"20 m"`
	// Modulus is V/A when it is already known.
	Modulus quantity.Length `json:"modulus" label:"Modulus" when:"shape=modulus" hint:"From the feeding sheet, or volume over cooled surface" min:"0.1 mm" max:"1 m"`

	// Basis of the constant.
	Basis quantity.Opt[Basis] `json:"basis" label:"Freezing constant from" part:"Freezing constant" hint:"A casting that you timed beats every table" default:"lists"`
	// Alloy and Sand from the lists.
	Alloy alloy.Code      `json:"alloy" label:"Metal" when:"basis=lists" link:"metal" hint:"What is stamped on the ingot, or the nearest to it"`
	Sand  mouldstuff.Sand `json:"sand" label:"Mould material" when:"basis=lists" link:"mould" hint:"What the face against the metal is made of"`

	// The user's own figures of the metal.
	Density           quantity.Density                    `json:"density" label:"Density of the metal" when:"basis=figures" hint:"Of the liquid, from the metal's data sheet" min:"500 kg/m³" max:"25000 kg/m³"`
	Latent            quantity.SpecificEnergy             `json:"latent" label:"Latent heat" when:"basis=figures" hint:"Heat of fusion, from the metal's data sheet" min:"10 kJ/kg" max:"2000 kJ/kg"`
	Solidus           quantity.Temperature                `json:"solidus" label:"Solidus" when:"basis=figures" hint:"All solid below this; the melting point of a pure metal" min:"30 °C" max:"2500 °C"`
	Liquidus          quantity.Opt[quantity.Temperature]  `json:"liquidus" label:"Liquidus" when:"basis=figures" hint:"All liquid above this; leave empty for a pure metal" min:"30 °C" max:"2500 °C"`
	HeatLiquid        quantity.Opt[quantity.SpecificHeat] `json:"heat_liquid" label:"Specific heat of the melt" when:"basis=figures" hint:"From the data sheet; needed only with superheat" min:"50 J/(kg·K)" max:"5000 J/(kg·K)"`
	HeatSolid         quantity.Opt[quantity.SpecificHeat] `json:"heat_solid" label:"Specific heat of the hot solid" when:"basis=figures" hint:"From the data sheet; only for the exact solution" min:"50 J/(kg·K)" max:"5000 J/(kg·K)"`
	Conductivity      quantity.Opt[quantity.Conductivity] `json:"conductivity" label:"Heat conductivity of the hot solid" when:"basis=figures" hint:"From the data sheet; only for the exact solution" min:"1 W/(m·K)" max:"1000 W/(m·K)"`
	MeltConductivity  quantity.Opt[quantity.Conductivity] `json:"melt_conductivity" label:"Heat conductivity of the melt" when:"basis=figures" hint:"From the data sheet; only for the exact solution with superheat" min:"1 W/(m·K)" max:"1000 W/(m·K)"`
	MouldConductivity quantity.Conductivity               `json:"mould_conductivity" label:"Heat conductivity of the mould" when:"basis=figures" hint:"Silica sand is 0.5 to 0.9 W/(m·K)" min:"0.05 W/(m·K)" max:"1000 W/(m·K)"`
	MouldDensity      quantity.Density                    `json:"mould_density" label:"Density of the mould" when:"basis=figures" hint:"Weigh a rammed box of known volume" min:"100 kg/m³" max:"12000 kg/m³"`
	MouldHeat         quantity.SpecificHeat               `json:"mould_heat" label:"Specific heat of the mould" when:"basis=figures" hint:"Silica sand is about 1150 J/(kg·K)" min:"100 J/(kg·K)" max:"4000 J/(kg·K)"`

	// PourTemperature is the metal's temperature as the mould is full.
	PourTemperature quantity.Opt[quantity.Temperature] `json:"pour_temperature" label:"Pouring temperature" when:"basis=lists|figures" link:"metal" hint:"In the mould; leave empty to count no superheat" min:"30 °C" max:"3000 °C"`
	// MouldTemperature before pouring.
	MouldTemperature quantity.Opt[quantity.Temperature] `json:"mould_temperature" label:"Mould temperature" when:"basis=lists|figures" hint:"As it stands before pouring: the shop's air, or a thermometer in the sand" default:"20 °C" min:"-40 °C" max:"1200 °C"`
	// Counted is the share of the superheat in the middle value.
	Counted quantity.Opt[quantity.Ratio] `json:"counted" label:"Superheat counted" when:"basis=lists|figures" hint:"Part of it is lost while the mould fills; the band always runs from none to all" default:"50 %" min:"0 %" max:"100 %"`

	// Constant is the shop's own.
	Constant quantity.FreezingConstant `json:"constant" label:"Own freezing constant" when:"basis=constant" hint:"For an exponent other than 2 its number is taken in minutes and centimetres" min:"0.001 s/mm²" max:"1000 s/mm²"`
	// TimedTime and TimedModulus are one casting that was watched.
	TimedTime    quantity.Time   `json:"timed_time" label:"Freezing time seen" when:"basis=timed" hint:"From mould full until the riser or a probe is solid" min:"0.1 s" max:"7 d"`
	TimedModulus quantity.Length `json:"timed_modulus" label:"Modulus of that casting" when:"basis=timed" hint:"Volume over cooled surface of what you timed" min:"0.1 mm" max:"1 m"`
	// Exponent n of the rule.
	Exponent quantity.Opt[quantity.Number] `json:"exponent" label:"Exponent" when:"basis=constant|timed" hint:"2 for sand, plaster and investment; less where the gap at a metal mould rules" default:"2" min:"1" max:"2"`
}
