package source

// The works on cast iron and its melting.
var (
	EN1561     = &Work{"CEN", "EN 1561 Founding: grey cast irons, anticipated tensile strength in the casting, as tabulated beside DIN 1691", 0}
	BCIRA      = &Work{"BCIRA", "carbon equivalent and liquidus from thermal analysis of cast iron", 0}
	Koriyama   = &Work{"Koriyama and others", "liquidus and carbon equivalent of cast iron, AFS", 2020}
	Stefanescu = &Work{"D. M. Stefanescu", "Science and Engineering of Casting Solidification", 0}
	Collaud    = &Work{"A. Collaud and W. Patterson", "degree of saturation and strength of grey iron, Giesserei", 0}
	Giesserei  = &Work{"", "giesserei-praxis, foundry lexicon: degree of saturation and normal strength", 0}
)
