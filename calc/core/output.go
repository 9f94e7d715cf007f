package core

import "pourwright/calc/quantity"

// Output is what the cores of the mould come to.
type Output struct {
	Cores []CoreAnswer `json:"cores"`

	Lift   quantity.Force `json:"lift" label:"Lift of all cores" step:"F_all"`
	ToCope quantity.Force `json:"to_cope" label:"Of it, passed to the cope" step:"F_cope" hint:"To be added to the lift on the cope"`

	CoresVolume  quantity.Volume `json:"cores_volume" label:"Volume of all cores in the casting" step:"V_all" hint:"Without prints"`
	CoresMass    quantity.Mass   `json:"cores_mass" label:"Weight of all cores" step:"m_all" hint:"With prints"`
	SandMass     quantity.Mass   `json:"sand_mass" label:"Core sand" step:"m_sand"`
	BinderMass   quantity.Mass   `json:"binder_mass" label:"Binder" step:"m_binder" hint:"Without hardener or gas"`
	HollowVolume quantity.Volume `json:"hollow_volume" label:"Closed hollows left in the casting" step:"V_hollow"`
	FillerMass   quantity.Mass   `json:"filler_mass" label:"Filling in them" step:"m_filler"`
}

// CoreAnswer is one entry of the cores. Forces, areas and gas are those of one
// core; masses of all alike.
type CoreAnswer struct {
	Name    string           `json:"name" label:"Core"`
	Volume  quantity.Volume  `json:"volume" label:"Volume in the casting" step:"V"`
	Density quantity.Density `json:"density" label:"Density" step:"rho_k"`
	Mass    quantity.Mass    `json:"mass" label:"Weight of one, with prints" step:"m_1"`
	MassAll quantity.Mass    `json:"mass_all" label:"Weight of all alike" step:"m_n"`
	Binder  quantity.Mass    `json:"binder_mass" label:"Binder in all alike" step:"m_b"`

	Push        quantity.Force                `json:"push" label:"Upward push of the metal" step:"F_B"`
	Weight      quantity.Force                `json:"weight" label:"Weight as a force" step:"G"`
	Lift        quantity.Force                `json:"lift" label:"Lift of one core" step:"F_L" hint:"Push less weight"`
	Sink        quantity.Force                `json:"sink" label:"Load downward, mould full" step:"F_D" hint:"Where the core is heavier than the push"`
	PrintArea   quantity.Area                 `json:"print_area" label:"Print area that bears the lift" step:"A_up"`
	PrintHold   quantity.Force                `json:"print_hold" label:"What these prints bear" step:"P"`
	PrintWanted quantity.Area                 `json:"print_wanted" label:"Print area wanted" step:"A_w"`
	Unsupported quantity.Force                `json:"unsupported" label:"Lift left over" step:"U"`
	RestArea    quantity.Area                 `json:"rest_area" label:"Print area that carries its weight" step:"A_dn"`
	RestWanted  quantity.Area                 `json:"rest_wanted" label:"Area wanted to carry its weight" step:"A_r"`
	Passes      quantity.Force                `json:"passes" label:"Passed to the cope" step:"F_k"`
	ChapletArea quantity.Area                 `json:"chaplet_area" label:"Chaplet area wanted" step:"A_ch" hint:"29 mm² for each newton left over"`
	Chaplets    quantity.Opt[quantity.Number] `json:"chaplets" label:"Chaplets wanted" step:"n_ch"`

	Burnt        quantity.Opt[quantity.Length]     `json:"burnt" label:"Depth that burns in that time" step:"delta"`
	GasVolume    quantity.Opt[quantity.Volume]     `json:"gas_volume" label:"Gas, cool" step:"V_0" hint:"Of one core, in the pouring time"`
	GasFlow      quantity.Opt[quantity.VolumeFlow] `json:"gas_flow" label:"Gas flow, hot" step:"Q"`
	VentWanted   quantity.Opt[quantity.Area]       `json:"vent_wanted" label:"Vent area wanted" step:"A_v" hint:"To plan by; nobody can promise that a core does not blow"`
	VentHigh     quantity.Opt[quantity.Area]       `json:"vent_high" label:"Vent area wanted, high end" step:"A_v_hi"`
	VentDiameter quantity.Opt[quantity.Length]     `json:"vent_diameter" label:"As one round hole" step:"D_v"`
	GasLow       quantity.Opt[quantity.Pressure]   `json:"gas_pressure_low" label:"Gas pressure, low end" step:"p_lo"`
	GasHigh      quantity.Opt[quantity.Pressure]   `json:"gas_pressure_high" label:"Gas pressure, high end" step:"p_hi"`
	Head         quantity.Opt[quantity.Pressure]   `json:"head_pressure" label:"Pressure of the metal over its top" step:"p_h"`

	Hollow quantity.Volume `json:"hollow_volume" label:"Closed hollow, all alike" step:"V_h"`
	Filler quantity.Mass   `json:"filler_mass" label:"Filling in it, all alike" step:"m_f"`
}
