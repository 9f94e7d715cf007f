package holddown

import "pourwright/calc/quantity"

// Output is what holds the mould together.
type Output struct {
	Surfaces []Pushed       `json:"surfaces"`
	Cores    []Pushed       `json:"cores"`
	CopeLift quantity.Force `json:"cope_lift" label:"Lift on the cope's surfaces" step:"F_m"`
	CoreLift quantity.Force `json:"core_lift" label:"Lift of the cores" step:"F_c"`
	Static   quantity.Force `json:"static" label:"Lift, mould full and at rest" step:"F_s"`
	Surged   quantity.Force `json:"surged" label:"Lift with the surge" step:"F_u"`
	Together quantity.Mass  `json:"together" label:"Cope, weights and clamps together, at least" step:"m_t"`

	SandInCope  quantity.Opt[quantity.Mass]  `json:"cope_sand" label:"Sand in the cope" step:"m_sc"`
	CopeWeight  quantity.Opt[quantity.Force] `json:"cope_weight" label:"Weight of the cope" step:"G_k"`
	Net         quantity.Opt[quantity.Force] `json:"net" label:"Lift left over, metal at rest" step:"F_n"`
	Needed      quantity.Opt[quantity.Mass]  `json:"needed" label:"Weights still wanted, metal at rest" step:"m_n"`
	NeededSurge quantity.Opt[quantity.Mass]  `json:"needed_surge" label:"Weights still wanted, with the surge" step:"m_u"`

	LiftX   quantity.Opt[quantity.Length] `json:"lift_x" label:"Middle of the lift, along the flask" step:"x_F"`
	LiftY   quantity.Opt[quantity.Length] `json:"lift_y" label:"Middle of the lift, across the flask" step:"y_F"`
	Corners []Corner                      `json:"corners"`
	// The one weight that closes every corner.
	Closing  quantity.Opt[quantity.Mass]   `json:"closing" label:"One weight that keeps every corner shut" step:"m_b" hint:"At this place, with the surge; a least, not an aim"`
	ClosingX quantity.Opt[quantity.Length] `json:"closing_x" label:"Its place, along the flask" step:"x_b"`
	ClosingY quantity.Opt[quantity.Length] `json:"closing_y" label:"Its place, across the flask" step:"y_b"`
	Clamps   quantity.Opt[int]             `json:"clamps_wanted" label:"Clamps still wanted" step:"n_k" hint:"Set evenly about that place"`
	ClampUse quantity.Opt[quantity.Ratio]  `json:"clamp_use" label:"Clamps loaded to" step:"u_k" hint:"Of what they may hold, with the surge"`

	WallPressure quantity.Opt[quantity.Pressure] `json:"wall_pressure" label:"Pressure at the bottom of the side" step:"p_w"`
	WallThrust   quantity.Opt[quantity.Force]    `json:"wall_thrust" label:"Push on the side" step:"F_w"`
	WallDepth    quantity.Opt[quantity.Length]   `json:"wall_depth" label:"Depth at which it acts" step:"d_w"`

	BoxLength quantity.Opt[quantity.Length] `json:"box_length" label:"Flask length, at least" step:"L_b"`
	BoxWidth  quantity.Opt[quantity.Length] `json:"box_width" label:"Flask width, at least" step:"W_b"`
	BoxCope   quantity.Opt[quantity.Length] `json:"box_cope" label:"Cope height, at least" step:"h_bc"`
	BoxDrag   quantity.Opt[quantity.Length] `json:"box_drag" label:"Drag height, at least" step:"h_bd"`

	SandMass     quantity.Opt[quantity.Mass]   `json:"sand_mass" label:"Sand to ram" step:"m_s"`
	BinderMass   quantity.Opt[quantity.Mass]   `json:"binder_mass" label:"Binder" step:"m_bi"`
	HardenerMass quantity.Opt[quantity.Mass]   `json:"hardener_mass" label:"Hardener" step:"m_h"`
	WaterMass    quantity.Opt[quantity.Mass]   `json:"water_mass" label:"Water in the sand" step:"m_wa"`
	SandToMetal  quantity.Opt[quantity.Number] `json:"sand_to_metal" label:"Sand to metal, by mass" step:"r_sm"`
}

// Pushed is the push on one surface or core.
type Pushed struct {
	Name string         `json:"name" label:"Name"`
	Lift quantity.Force `json:"lift" label:"Lift" step:"F"`
}

// Corner is one corner of the joint between cope and drag.
type Corner struct {
	Name         string         `json:"name" label:"Corner"`
	Pressed      quantity.Force `json:"pressed" label:"Pressed shut with, metal at rest" step:"R_p"`
	Opens        quantity.Force `json:"opens" label:"Opened with, metal at rest" step:"R_o"`
	PressedSurge quantity.Force `json:"pressed_surge" label:"Pressed shut with, during the surge" step:"R_up"`
	OpensSurge   quantity.Force `json:"opens_surge" label:"Opened with, during the surge" step:"R_uo"`
}
