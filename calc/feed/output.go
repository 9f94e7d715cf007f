package feed

import (
	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// Output is how the casting freezes and is fed.
type Output struct {
	Metal        string                                  `json:"metal" label:"Metal"`
	Shrinkage    quantity.Ratio                          `json:"shrinkage" label:"Feed shrinkage" step:"beta"`
	SelfFeeding  bool                                    `json:"self_feeding" label:"Feeds itself by graphite" hint:"Only where all the conditions hold"`
	Conditions   []Condition                             `json:"conditions"`
	Constant     quantity.Opt[quantity.FreezingConstant] `json:"constant" label:"Freezing constant" step:"C"`
	ConstantLow  quantity.Opt[quantity.FreezingConstant] `json:"constant_low" label:"Freezing constant, low end" step:"C_lo"`
	ConstantHigh quantity.Opt[quantity.FreezingConstant] `json:"constant_high" label:"Freezing constant, high end" step:"C_hi"`

	Volume   quantity.Volume `json:"volume" label:"Volume of one casting" step:"V_all"`
	Cooling  quantity.Area   `json:"cooling" label:"Cooled surface of one casting" step:"A_all"`
	Sections []SectionAnswer `json:"sections"`
	Joints   []JointAnswer   `json:"joints"`
	Order    []Turn          `json:"order"`
	Chart    working.Bars    `json:"chart"`
	Risers   []RiserAnswer   `json:"risers"`
	Feeders  quantity.Volume `json:"risers_volume" label:"Volume of all risers" step:"V_R"`
}

// Condition is one of the conditions for graphite to feed an iron.
type Condition struct {
	Name  working.Text `json:"name" label:"Condition"`
	State string       `json:"state" label:"Holds" hint:"yes, no, or not known"`
	Is    working.Text `json:"is" label:"It is"`
}

// SectionAnswer is one section.
type SectionAnswer struct {
	Name    string                        `json:"name" label:"Section"`
	Volume  quantity.Volume               `json:"volume" label:"Volume of one" step:"V"`
	Surface quantity.Opt[quantity.Area]   `json:"surface" label:"Surface of one" step:"A"`
	Joined  quantity.Opt[quantity.Area]   `json:"joined" label:"Joined or covered" step:"A_j"`
	Cooling quantity.Area                 `json:"cooling" label:"Cooled surface of one" step:"A_c"`
	Modulus quantity.Length               `json:"modulus" label:"Modulus" step:"M"`
	Freezes quantity.Length               `json:"freezes_as" label:"Modulus in the order of freezing" step:"M_o"`
	Rank    int                           `json:"rank" label:"Freezes as number"`
	Time    quantity.Opt[quantity.Time]   `json:"time" label:"Freezing time" step:"t_f"`
	Low     quantity.Opt[quantity.Time]   `json:"time_low" label:"Freezing time, at least" step:"t_lo"`
	High    quantity.Opt[quantity.Time]   `json:"time_high" label:"Freezing time, at most" step:"t_hi"`
	Path    string                        `json:"path" label:"Fed by way of"`
	Margin  quantity.Opt[quantity.Number] `json:"path_margin" label:"Way of feeding over section" step:"g_P" hint:"Modulus of the first on its way to freeze, over its own; under 1 it is cut off"`
	Reach   quantity.Opt[quantity.Length] `json:"feeds_to" label:"Feeding distance" step:"x_f"`
	Far     quantity.Opt[quantity.Length] `json:"feeds_at_most" label:"Feeding distance, at most" step:"x_hi"`
}

// JointAnswer is one place where sections touch.
type JointAnswer struct {
	Name    string                        `json:"name" label:"Junction"`
	Circle  quantity.Opt[quantity.Length] `json:"circle" label:"Largest circle in it" step:"d_c"`
	Ratio   quantity.Opt[quantity.Number] `json:"ratio" label:"Circle over the thicker wall" step:"r_c"`
	Modulus quantity.Opt[quantity.Length] `json:"modulus" label:"Modulus of the hot spot" step:"M"`
	Time    quantity.Opt[quantity.Time]   `json:"time" label:"Freezing time" step:"t_f"`
	Rank    int                           `json:"rank" label:"Freezes as number" hint:"0 where there is no hot spot"`
	From    string                        `json:"from" label:"Fed from"`
}

// Turn is one place in the order of freezing.
type Turn struct {
	Rank    int                         `json:"rank" label:"Number"`
	Name    string                      `json:"name" label:"What"`
	What    string                      `json:"what" label:"Section, junction or riser"`
	Modulus quantity.Length             `json:"modulus" label:"Modulus"`
	Time    quantity.Opt[quantity.Time] `json:"time" label:"Freezing time"`
}

// RiserAnswer is one riser.
type RiserAnswer struct {
	Name    string          `json:"name" label:"Riser"`
	Feeds   string          `json:"feeds" label:"Feeds"`
	Fed     quantity.Volume `json:"fed" label:"Volume that it feeds" step:"V_z"`
	Cooling quantity.Area   `json:"fed_cooling" label:"Cooled surface of that" step:"A_z"`
	Ruling  string          `json:"ruling" label:"Section that rules"`

	ModulusFed    quantity.Length               `json:"modulus_fed" label:"Modulus to outlast" step:"M_c"`
	ModulusWanted quantity.Length               `json:"modulus_wanted" label:"Modulus wanted" step:"M_w"`
	Efficiency    quantity.Ratio                `json:"efficiency" label:"Feed efficiency" step:"eta"`
	VolumeWanted  quantity.Volume               `json:"volume_wanted" label:"Volume wanted for feed" step:"V_f"`
	ByModulus     quantity.Opt[quantity.Length] `json:"by_modulus" label:"Diameter by modulus" step:"D_M"`
	ByVolume      quantity.Opt[quantity.Length] `json:"by_volume" label:"Diameter by feed volume" step:"D_V"`
	Caine         []CaineAnswer                 `json:"caine"`
	ByCaine       quantity.Opt[quantity.Length] `json:"by_caine" label:"Diameter by Caine's curve" step:"D_C"`
	ShapeFactor   quantity.Opt[quantity.Number] `json:"shape_factor" label:"Shape factor" step:"S" hint:"Length and width over thickness, of the section that rules"`
	NRLRatio      quantity.Opt[quantity.Number] `json:"nrl_ratio" label:"Riser over casting, NRL curve" step:"y_N"`
	ByNRL         quantity.Opt[quantity.Length] `json:"by_nrl" label:"Diameter by the NRL curve" step:"D_N"`
	SFSARatio     quantity.Opt[quantity.Number] `json:"sfsa_ratio" label:"Riser over casting, SFSA 2001" step:"y_S"`
	BySFSA        quantity.Opt[quantity.Length] `json:"by_sfsa" label:"Diameter by SFSA 2001" step:"D_S"`
	Governs       string                        `json:"governs" label:"Governed by"`

	Diameter      quantity.Opt[quantity.Length] `json:"diameter" label:"Diameter" step:"D"`
	Height        quantity.Opt[quantity.Length] `json:"height" label:"Height" step:"H"`
	Volume        quantity.Volume               `json:"volume" label:"Volume" step:"V_r"`
	Modulus       quantity.Length               `json:"modulus" label:"Modulus" step:"M_r"`
	Time          quantity.Opt[quantity.Time]   `json:"time" label:"Freezing time" step:"t_f"`
	ModulusMargin quantity.Number               `json:"modulus_margin" label:"Modulus, times what is wanted" step:"g_M"`
	FeedMargin    quantity.Opt[quantity.Number] `json:"feed_margin" label:"Feed metal, times what is wanted" step:"g_V"`

	NeckModulus  quantity.Length               `json:"neck_modulus" label:"Modulus of the neck" step:"M_n"`
	NeckLongest  quantity.Opt[quantity.Length] `json:"neck_longest" label:"Neck, longest" step:"L_max"`
	NeckDiameter quantity.Opt[quantity.Length] `json:"neck_diameter" label:"Neck, round, diameter" step:"D_n"`
	NeckHeight   quantity.Opt[quantity.Length] `json:"neck_height" label:"Neck, flat, height" step:"H_n"`
	NeckWidth    quantity.Opt[quantity.Length] `json:"neck_width" label:"Neck, flat, width" step:"W_n"`

	SeenTime      quantity.Opt[quantity.Time]   `json:"seen_time" label:"A riser of 4 in so covered froze in" step:"t_s" hint:"Adams and Taylor, 4 in across and 4 in high"`
	SeenExtension quantity.Opt[quantity.Number] `json:"seen_extension" label:"Modulus extension seen there" step:"x_s" hint:"Square root of the times, covered over open"`
}

// CaineAnswer is one set of Caine's constants.
type CaineAnswer struct {
	Constants string                        `json:"constants" label:"Constants for"`
	A         quantity.Number               `json:"a" label:"a"`
	B         quantity.Number               `json:"b" label:"b"`
	C         quantity.Number               `json:"c" label:"c"`
	Diameter  quantity.Opt[quantity.Length] `json:"diameter" label:"Diameter" step:"D"`
	X         quantity.Opt[quantity.Number] `json:"x" label:"Freezing ratio there" step:"X"`
	Y         quantity.Opt[quantity.Number] `json:"y" label:"Volume ratio there" step:"Y"`
}
