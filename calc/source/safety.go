package source

// The works on safe handling. Laws are U.S. federal unless the title says
// otherwise; what is cited of them never stands above a local code.
var (
	NIOSHHeat    = &Work{"NIOSH", "Occupational Exposure to Heat and Hot Environments, Pub. 2016-106", 2016}
	NIOSHFoundry = &Work{"NIOSH", "Occupational Safety and Health Hazards: Foundries, Pub. 85-116", 1985}
	NIOSHControl = &Work{"NIOSH", "foundry control technology, Pub. 81-114", 1981}
	NIOSHZinc    = &Work{"NIOSH", "guidance on zinc oxide fume", 0}
	NIOSHHHE     = &Work{"NIOSH", "Health Hazard Evaluation 75-177-343 (a bronze foundry)", 1976}
	ACGIH        = &Work{"ACGIH", "threshold limit values: heat stress and strain, screening table", 0}
	EN171        = &Work{"CEN", "EN 171:2002 Personal eye-protection: infrared filters", 2002}
	ISO11612     = &Work{"ISO", "11612 Protective clothing against heat and flame", 2015}
	NFPA         = &Work{"NFPA", "codes 54 and 58 (fuel gas), 86 (furnaces), 484 (combustible metals)", 0}
	BurnAid      = &Work{"British Burn Association", "First Aid Clinical Practice Guidelines", 2018}
	MoltenAl     = &Work{"The Aluminum Association", "Guidelines for Handling Molten Aluminum", 0}
	IAPWS        = &Work{"IAPWS", "properties of water and steam (steam tables)", 0}
	OSHABuild    = &Work{"OSHA", "29 CFR 1926 (construction)", 0}
	ViewFactors  = &Work{"J. R. Howell", "A Catalog of Radiation Heat Transfer Configuration Factors", 0}
)
