// Package melting reckons what it takes to melt a charge: the heat that goes
// into the metal, the energy or fuel that the furnace wants for it, and the
// time at a given power.
//
// The heat is known within about 5 %. The furnace is not: a crucible over a
// flame may put a fourteenth of its fuel into the metal or a fifth. So the
// answer is a band, and one melt with the fuel weighed is worth more than all
// of it.
package melting

import (
	"pourwright/calc/alloy"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// Input is the charge, how hot it is to be, and the furnace.
type Input struct {
	// Mass is the metal charged.
	Mass quantity.Mass `json:"mass" label:"Charge" link:"weight" hint:"Weigh all that goes into the furnace" min:"10 g" max:"200 t"`
	// Figures says where the metal's figures come from.
	Figures quantity.Opt[string] `json:"figures" label:"Figures of the metal" hint:"The list's, or a data sheet's" default:"table" choices:"table:Of a metal in the list|own:Your own"`
	// Alloy is the metal.
	Alloy alloy.Code `json:"alloy" label:"Metal" hint:"What is stamped on the ingot, or the nearest to it" when:"figures=table" link:"metal"`
	// MeltingPoint, HeatSolid, HeatLiquid and Latent are the user's own.
	MeltingPoint quantity.Temperature    `json:"melting_point" label:"Melting point" hint:"Liquidus, from the metal's data sheet" when:"figures=own" min:"100 °C" max:"2000 °C"`
	HeatSolid    quantity.SpecificHeat   `json:"heat_solid" label:"Specific heat, solid" hint:"Mean from cold to melting, from the data sheet" when:"figures=own" min:"50 J/(kg·K)" max:"2000 J/(kg·K)"`
	HeatLiquid   quantity.SpecificHeat   `json:"heat_liquid" label:"Specific heat, liquid" hint:"From the data sheet" when:"figures=own" min:"50 J/(kg·K)" max:"2000 J/(kg·K)"`
	Latent       quantity.SpecificEnergy `json:"latent" label:"Latent heat" hint:"Heat of fusion, from the data sheet" when:"figures=own" min:"10 kJ/kg" max:"1000 kJ/kg"`
	// Start is the temperature of the stock as charged.
	Start quantity.Opt[quantity.Temperature] `json:"start" label:"Stock as charged" default:"20 °C" hint:"Preheated stock needs less" min:"-40 °C" max:"800 °C"`
	// Tap is the temperature to melt to; or Superheat over the liquidus.
	Tap       quantity.Opt[quantity.Temperature] `json:"tap" label:"Temperature to melt to" hint:"In the furnace, before tapping; leave empty for the middle of the usual pouring range" min:"100 °C" max:"2000 °C"`
	Superheat quantity.Opt[quantity.TempDiff]    `json:"superheat" label:"Or superheat over the liquidus" hint:"Instead of a temperature: degrees above all molten" min:"1 K" max:"600 K"`

	// Furnace picks the usual efficiency.
	Furnace quantity.Opt[Furnace] `json:"furnace" label:"Furnace" hint:"The one that this is melted in" part:"Furnace" default:"crucible"`
	// Efficiency is the user's own.
	Efficiency quantity.Opt[quantity.Ratio] `json:"efficiency" label:"Own efficiency" hint:"Heat in the metal over energy put in, from a melt with the fuel weighed or the meter read; goes before the usual" min:"1 %" max:"100 %"`
	// Fuel picks the heating value.
	Fuel quantity.Opt[Fuel] `json:"fuel" label:"Fuel" hint:"Leave empty for the furnace's usual" when:"furnace=crucible|reverberatory|cupola"`
	// HeatingValue is the user's own, of a fuel that is weighed.
	HeatingValue quantity.Opt[quantity.SpecificEnergy] `json:"heating_value" label:"Own heating value" hint:"Lower heating value of a fuel that is weighed" when:"furnace=crucible|reverberatory|cupola" min:"5 MJ/kg" max:"60 MJ/kg"`
	// FirstHeat adds what crucible and lining take up.
	FirstHeat bool `json:"first_heat" label:"First melt of the day" hint:"Crucible and lining are cold"`
	// Lining is what they take, over the heat of the metal.
	Lining quantity.Opt[quantity.Ratio] `json:"lining" label:"Heat of crucible and lining" hint:"Over the heat of the metal, usually 20 to 50 %" when:"first_heat=yes" default:"35 %" min:"0 %" max:"300 %"`

	// Power is what goes into the furnace; or FuelRate, of a fuel that is weighed.
	Power    quantity.Opt[quantity.Power]    `json:"power" label:"Burner or electrical power" hint:"From the plate on the burner or the furnace" part:"Time" min:"0.1 kW" max:"100000 kW"`
	FuelRate quantity.Opt[quantity.MassFlow] `json:"fuel_rate" label:"Or fuel burned" hint:"Weigh the bottle before and after a timed run" unit:"kg/h,lb/h" when:"furnace=crucible|reverberatory|cupola" min:"0.05 kg/h" max:"20000 kg/h"`
}

// Output is heat, energy, fuel and time; low is with the better efficiency.
type Output struct {
	Liquidus     quantity.Temperature    `json:"liquidus" label:"Liquidus"`
	Tap          quantity.Temperature    `json:"tap" label:"Melted to" step:"T_t"`
	HeatEach     quantity.SpecificEnergy `json:"heat_each" label:"Heat for each kilogram" step:"q"`
	Heat         quantity.Energy         `json:"heat" label:"Heat in the metal" step:"Q"`
	HeatToGive   quantity.Energy         `json:"heat_to_give" label:"Heat with crucible and lining" step:"Q_t"`
	HeatElectric working.Text            `json:"heat_electric" label:"Heat in the metal, in kilowatt-hours"`

	EfficiencyLow  quantity.Ratio  `json:"efficiency_low" label:"Efficiency, from" step:"eta_1"`
	EfficiencyHigh quantity.Ratio  `json:"efficiency_high" label:"Efficiency, to" step:"eta_2"`
	EnergyLow      quantity.Energy `json:"energy_low" label:"Energy to put in, from" step:"E_1"`
	EnergyHigh     quantity.Energy `json:"energy_high" label:"Energy to put in, to" step:"E_2"`
	Electric       working.Text    `json:"electric" label:"Energy to put in, in kilowatt-hours"`

	Fuel           string                                `json:"fuel" label:"Fuel"`
	FuelLow        quantity.Opt[quantity.Mass]           `json:"fuel_low" label:"Fuel, from" step:"m_1"`
	FuelHigh       quantity.Opt[quantity.Mass]           `json:"fuel_high" label:"Fuel, to" step:"m_2"`
	FuelVolumeLow  quantity.Opt[quantity.Volume]         `json:"fuel_volume_low" label:"Fuel gas, from" step:"V_1"`
	FuelVolumeHigh quantity.Opt[quantity.Volume]         `json:"fuel_volume_high" label:"Fuel gas, to" step:"V_2"`
	PracticeLow    quantity.Opt[quantity.SpecificEnergy] `json:"practice_low" label:"Current in practice, at best" step:"e_1" hint:"Iron in a coreless induction furnace"`
	PracticeHigh   quantity.Opt[quantity.SpecificEnergy] `json:"practice_high" label:"Current in practice, usual at most" step:"e_2"`
	Power          quantity.Opt[quantity.Power]          `json:"power" label:"Power put in" step:"P"`
	TimeLow        quantity.Opt[quantity.Time]           `json:"time_low" label:"Time to melt, from" step:"t_1"`
	TimeHigh       quantity.Opt[quantity.Time]           `json:"time_high" label:"Time to melt, to" step:"t_2" hint:"Without charging, slagging and waiting"`
}

// Heat works it out.
//
// Refused: a temperature to melt to that is not above the liquidus or not
// above that of the stock, one and a superheat both, a power and a fuel rate
// both, and a weighed rate or heating value of a fuel that is measured by
// volume.
func Heat(in Input, p *working.Paper) (Output, error) {
	in, faults := form.Ready(in)
	if len(faults) == 0 {
		faults = check(in)
	}
	if err := faults.Err(); err != nil {
		return Output{}, err
	}
	j := &job{in: in, p: p, metal: figuresOf(in)}
	if err := j.heat().Err(); err != nil {
		return Output{}, err
	}
	j.energy()
	j.fuel()
	j.time()
	j.remark()
	return j.out, nil
}
