package weight

import "pourwright/calc/quantity"

// Output is what the mould takes.
type Output struct {
	Metal   string           `json:"metal" label:"Metal"`
	Density quantity.Density `json:"density" label:"Density, solid" step:"rho"`

	Volume         quantity.Volume               `json:"volume" label:"Volume of one casting" step:"V"`
	Mass           quantity.Mass                 `json:"mass" label:"Weight of one casting" step:"m" hint:"As cast, machining stock and all"`
	MassLow        quantity.Mass                 `json:"mass_low" label:"Weight of one casting, from" step:"m_low" hint:"Over the ranges of the densities that are not your own"`
	MassHigh       quantity.Mass                 `json:"mass_high" label:"Weight of one casting, to" step:"m_high"`
	Area           quantity.Opt[quantity.Area]   `json:"area" label:"Cooled surface of one casting" step:"A_s" hint:"Of the solids that are added, less what is joined; walls of hollows are not counted"`
	OverallModulus quantity.Opt[quantity.Length] `json:"overall_modulus" label:"Modulus of the casting as a whole" step:"M_o"`
	Modulus        quantity.Opt[quantity.Length] `json:"modulus" label:"Modulus to feed" step:"M_g"`
	ModulusOf      string                        `json:"modulus_of" label:"Section that rules"`
	SolidsMass     quantity.Opt[quantity.Mass]   `json:"solids_mass" label:"Weight by the solids" step:"m_s"`
	Contraction    quantity.Opt[quantity.Ratio]  `json:"contraction" label:"Contraction in the pattern"`
	Solids         []SolidAnswer                 `json:"solids"`
	CastingsVolume quantity.Volume               `json:"castings_volume" label:"Volume of all castings" step:"V_all"`
	CastingsMass   quantity.Mass                 `json:"castings_mass" label:"Weight of all castings" step:"m_all"`
	Shrinkage      quantity.Ratio                `json:"shrinkage" label:"Feed shrinkage" step:"beta"`
	Risers         []RiserAnswer                 `json:"risers"`
	RisersMass     quantity.Mass                 `json:"risers_mass" label:"Weight of all risers" step:"m_r"`
	GatingMass     quantity.Mass                 `json:"gating_mass" label:"Weight of the gating" step:"m_g"`
	GatingVolume   quantity.Volume               `json:"gating_volume" label:"Volume of the gating" step:"V_gating"`
	Poured         quantity.Mass                 `json:"poured" label:"Metal to pour" step:"m_pour" hint:"Castings, risers and gating"`
	PouredVolume   quantity.Volume               `json:"poured_volume" label:"Metal to pour, liquid volume" step:"V_l"`
	Yield          quantity.Ratio                `json:"yield" label:"Yield" step:"Y" hint:"Castings over metal to pour"`
	Spill          quantity.Mass                 `json:"spill" label:"Spill and skimmings" step:"m_spill"`
	Pig            quantity.Mass                 `json:"pig" label:"Reserve for the pig mould" step:"m_pig"`
	Heel           quantity.Mass                 `json:"heel" label:"Heel and skull"`
	Melt           quantity.Mass                 `json:"melt" label:"Metal to melt" step:"m_melt" hint:"Liquid in the furnace"`
	Lost           quantity.Mass                 `json:"lost" label:"Melting loss" step:"m_loss"`
	Charge         quantity.Mass                 `json:"charge" label:"Charge to weigh out" step:"m_charge"`
	PouredLow      quantity.Mass                 `json:"poured_low" label:"Metal to pour, from" step:"m_pour_low" hint:"Over the ranges of densities and gating that are not your own"`
	PouredHigh     quantity.Mass                 `json:"poured_high" label:"Metal to pour, to" step:"m_pour_high"`
	ChargeLow      quantity.Mass                 `json:"charge_low" label:"Charge, from" step:"m_charge_low" hint:"Over the ranges of densities, gating and melting loss that are not your own"`
	ChargeHigh     quantity.Mass                 `json:"charge_high" label:"Charge, to" step:"m_charge_high"`
}

// SolidAnswer is one entry of the solids.
type SolidAnswer struct {
	Name    string          `json:"name" label:"Solid"`
	Role    string          `json:"role" label:"Added or taken away"`
	Volume  quantity.Volume `json:"volume" label:"Volume, all alike" step:"V_n"`
	Area    quantity.Area   `json:"area" label:"Whole surface of one" step:"A"`
	Cooling quantity.Area   `json:"cooling" label:"Cooled surface of one" step:"A_c"`
	Modulus quantity.Length `json:"modulus" label:"Modulus" step:"M"`
	Mass    quantity.Mass   `json:"mass" label:"Weight, all alike" step:"m_n"`
}

// RiserAnswer is one entry of the risers; sizes are of one of them.
type RiserAnswer struct {
	Name          string                        `json:"name" label:"Riser"`
	Place         string                        `json:"place" label:"Where"`
	Governs       string                        `json:"governs" label:"Rule that governs"`
	Fed           quantity.Volume               `json:"fed" label:"Volume each one feeds" step:"V_z"`
	ModulusFed    quantity.Length               `json:"modulus_fed" label:"Modulus of what it feeds" step:"M_c"`
	ModulusWanted quantity.Length               `json:"modulus_wanted" label:"Modulus wanted" step:"M_w"`
	VolumeWanted  quantity.Volume               `json:"volume_wanted" label:"Volume wanted for feed metal" step:"V_f"`
	ByModulus     quantity.Length               `json:"by_modulus" label:"Diameter by modulus" step:"D_M"`
	ByVolume      quantity.Length               `json:"by_volume" label:"Diameter by feed volume" step:"D_V"`
	Diameter      quantity.Length               `json:"diameter" label:"Diameter" step:"D"`
	Height        quantity.Length               `json:"height" label:"Height" step:"H"`
	Modulus       quantity.Length               `json:"modulus" label:"Modulus" step:"M_r"`
	Volume        quantity.Volume               `json:"volume" label:"Volume" step:"V_r"`
	Mass          quantity.Mass                 `json:"mass" label:"Weight of one" step:"m_1"`
	MassAll       quantity.Mass                 `json:"mass_all" label:"Weight, all alike" step:"m_n"`
	ModulusMargin quantity.Number               `json:"modulus_margin" label:"Modulus, times what is wanted" step:"g_M"`
	FeedMargin    quantity.Opt[quantity.Number] `json:"feed_margin" label:"Feed metal, times what is wanted" step:"g_V"`
	NeckModulus   quantity.Length               `json:"neck_modulus" label:"Modulus of a neck" step:"M_n"`
	NeckDiameter  quantity.Opt[quantity.Length] `json:"neck_diameter" label:"Diameter of a long round neck" step:"D_n" hint:"A short neck between hot metal may be thinner"`
}
