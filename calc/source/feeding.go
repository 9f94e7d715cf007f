package source

// The works on cores, risers and feeding.
var (
	Samuels   = &Work{"G. Samuels and C. Beckermann", "gas evolution of a phenolic urethane no-bake binder, Int. J. Metalcasting", 2012}
	VentedAir = &Work{"", "gas flow measured in the vents of printed furan cores, Materials 16, 4152", 2023}
	AFSTests  = &Work{"American Foundrymen's Society", "Mold and Core Test Handbook", 0}
	Heuvers   = &Work{"E. Heuvers", "circles inscribed in sections, Stahl und Eisen 49", 1929}
	Bishop    = &Work{"H. F. Bishop, E. T. Myskowski and W. S. Pellini", "A simplified method for determining riser dimensions, Trans. AFS 63", 1955}
	Pellini   = &Work{"W. S. Pellini and H. F. Bishop", "feeding range of cast steel, Naval Research Laboratory, Trans. AFS 58 to 61", 1953}
	SFSA      = &Work{"Steel Founders' Society of America", "Feeding and Risering Guidelines for Steel Castings", 2001}
	Karsay    = &Work{"S. I. Karsay", "Ductile Iron: gating and risering, RIT", 2000}
	ASM15Old  = &Work{"ASM Metals Handbook, 9th ed., vol. 15", "Casting", 1988}
)
