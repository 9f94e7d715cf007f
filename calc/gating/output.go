package gating

import "pourwright/calc/quantity"

// Output is the way of the metal, with its speeds.
type Output struct {
	Flow      quantity.VolumeFlow `json:"flow" label:"Flow, on average" step:"Q"`
	FlowRate  quantity.MassFlow   `json:"flow_rate" label:"Pouring rate" step:"q_m"`
	StartFlow quantity.VolumeFlow `json:"start_flow" label:"Flow while the mould is empty" step:"Q_0"`
	Head      quantity.Length     `json:"head" label:"Effective head, trade rule" step:"H"`
	ExactHead quantity.Length     `json:"exact_head" label:"Effective head, exact" step:"H_x"`

	Ratio      string          `json:"ratio" label:"Gating ratio" hint:"Sprue foot : runners : ingates"`
	Kind       string          `json:"kind" label:"System"`
	ChokeAt    string          `json:"choke_at" label:"Choke"`
	Choke      quantity.Area   `json:"choke" label:"Area of the choke" step:"A_c"`
	ChokeIdeal quantity.Area   `json:"choke_ideal" label:"The same without losses" step:"A_i"`
	Discharge  quantity.Number `json:"discharge" label:"Discharge coefficient" step:"C"`
	RunsFull   bool            `json:"runs_full" label:"Runs full behind the choke"`

	BasinDepth  quantity.Length `json:"basin_depth" label:"Depth of metal in the basin" step:"h_c"`
	BasinVolume quantity.Volume `json:"basin_volume" label:"Metal in the basin" step:"V_b"`
	BasinLength quantity.Length `json:"basin_length" label:"Basin, length" step:"l_b"`
	BasinWidth  quantity.Length `json:"basin_width" label:"Basin, width" step:"w_b"`

	SprueLength   quantity.Length               `json:"sprue_length" label:"Sprue, length" step:"L_s"`
	SprueTop      quantity.Area                 `json:"sprue_top_area" label:"Sprue, area at its top" step:"A_t"`
	SprueTopSize  quantity.Length               `json:"sprue_top" label:"Sprue, width at its top" step:"d_t" hint:"Diameter of a round sprue, side of a square one"`
	SprueFoot     quantity.Area                 `json:"sprue_foot_area" label:"Sprue, area at its foot" step:"A_s"`
	SprueFootSize quantity.Length               `json:"sprue_foot" label:"Sprue, width at its foot" step:"d_s"`
	Taper         quantity.Number               `json:"taper" label:"Area at the top over area at the foot" step:"r_t"`
	TaperWanted   quantity.Number               `json:"taper_wanted" label:"Taper of the falling stream" step:"r_w"`
	FallFoot      quantity.Opt[quantity.Area]   `json:"foot_for_top" label:"Foot that the stream from your top just fills" step:"A_f"`
	Excess        quantity.Opt[quantity.Ratio]  `json:"sprue_excess" label:"Straight-sided sprue wider than the stream by, at most" step:"x_s"`
	TopPressure   quantity.Opt[quantity.Length] `json:"suction" label:"Suction at the top of the sprue, in metal" step:"h_v"`

	WellDiameter quantity.Opt[quantity.Length] `json:"well_diameter" label:"Well, diameter" step:"d_w"`
	WellDepth    quantity.Opt[quantity.Length] `json:"well_depth" label:"Well, depth" step:"z_w"`

	Runners      int             `json:"runners" label:"Runners"`
	RunnerArea   quantity.Area   `json:"runner_area" label:"Runners, all together" step:"A_r"`
	RunnerWidth  quantity.Length `json:"runner_width" label:"Runner, width" step:"w_r"`
	RunnerHeight quantity.Length `json:"runner_height" label:"Runner, height" step:"h_r"`

	Ingates         int             `json:"ingates" label:"Ingates"`
	IngateArea      quantity.Area   `json:"ingate_area" label:"Ingates, all together" step:"A_g"`
	IngateEach      quantity.Area   `json:"ingate_each" label:"Area of one ingate" step:"A_1"`
	IngateWidth     quantity.Length `json:"ingate_width" label:"Ingate, width" step:"w_g"`
	IngateThickness quantity.Length `json:"ingate_thickness" label:"Ingate, thickness" step:"t_g"`
	IngateSpeed     quantity.Speed  `json:"ingate_speed" label:"Speed at the ingates, on average" step:"v_g"`
	IngateStart     quantity.Speed  `json:"ingate_speed_start" label:"Speed at the ingates, at the start" step:"v_g0" hint:"Of the lowest, in a stepped gate"`
	IngateLimit     quantity.Speed  `json:"ingate_limit" label:"Speed limit at the ingates" step:"v_i"`
	IngatesWanted   quantity.Area   `json:"ingates_wanted" label:"Ingates that keep the limit, all together" step:"A_gw"`

	Viscosity quantity.Viscosity `json:"viscosity" label:"Viscosity of the metal" step:"mu_m"`
	Channels  []Channel          `json:"channels"`
	Losses    []Loss             `json:"losses"`

	Volume quantity.Volume `json:"volume" label:"Metal in the gating" step:"V_way" hint:"Basin, sprue and well, and runners and ingates whose lengths are known"`
	Mass   quantity.Mass   `json:"mass" label:"Its mass" step:"m_way"`
}

// Channel is one stretch of the way.
type Channel struct {
	Name     string          `json:"name" label:"Stretch"`
	Area     quantity.Area   `json:"area" label:"Area, all together" step:"A_k"`
	Speed    quantity.Speed  `json:"speed" label:"Speed, on average" step:"v_k"`
	Start    quantity.Speed  `json:"speed_start" label:"Speed at the start" step:"v_k0"`
	Width    quantity.Length `json:"hydraulic_diameter" label:"Hydraulic diameter" step:"D_k"`
	Reynolds quantity.Number `json:"reynolds" label:"Reynolds number" step:"Re_k"`
	Friction quantity.Number `json:"friction" label:"Friction factor" step:"f_k"`
}

// Loss is one item of the energy's account.
type Loss struct {
	Name        string                        `json:"name" label:"Where the head goes"`
	Coefficient quantity.Opt[quantity.Number] `json:"coefficient" label:"Loss coefficient" step:"e"`
	Speed       quantity.Opt[quantity.Speed]  `json:"speed" label:"On the speed"`
	Head        quantity.Length               `json:"head" label:"Head" step:"h_l"`
}
