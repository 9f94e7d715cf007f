package source

// The works cited. A page or table stands at the place of use, not here.
var (
	Rao        = &Work{"P. N. Rao", "Manufacturing Technology: Foundry, Forming and Welding", 0}
	Groover    = &Work{"M. P. Groover", "Fundamentals of Modern Manufacturing", 0}
	Ghosh      = &Work{"A. Ghosh and A. K. Mallik", "Manufacturing Science", 0}
	Heine      = &Work{"R. W. Heine, C. R. Loper and P. C. Rosenthal", "Principles of Metal Casting", 1967}
	Flemings   = &Work{"M. C. Flemings", "Solidification Processing", 1974}
	Poirier    = &Work{"D. R. Poirier and G. H. Geiger", "Transport Phenomena in Materials Processing", 1994}
	Carslaw    = &Work{"H. S. Carslaw and J. C. Jaeger", "Conduction of Heat in Solids, 2nd ed.", 1959}
	Chvorinov  = &Work{"N. Chvorinov", "Theorie der Erstarrung von Gussstücken, Giesserei 27", 1940}
	Adams      = &Work{"C. M. Adams", "ScD thesis, MIT (abstract)", 1953}
	AdamsTay   = &Work{"C. M. Adams and H. F. Taylor", "Trans. AFS 61", 1953}
	Campbell   = &Work{"J. Campbell", "Complete Casting Handbook", 2015}
	Wlodawer   = &Work{"R. Wlodawer", "Directional Solidification of Steel Castings", 1966}
	ASM15      = &Work{"ASM Handbook vol. 15", "Casting", 2008}
	Navy       = &Work{"U.S. Navy Bureau of Ships", "Foundry Manual, NAVSHIPS 250-0334", 1958}
	CDA        = &Work{"Copper Development Association", "alloy data sheets", 0}
	ISO8062    = &Work{"ISO", "8062-3:2007 Dimensional and geometrical tolerances for moulded parts", 2007}
	ISO8062Old = &Work{"ISO", "8062:1994 Castings: system of dimensional tolerances and machining allowances", 1994}
	ISO8062CD  = &Work{"ISO", "committee draft CD 8062-2", 0}
	GBT6414    = &Work{"SAC", "GB/T 6414-1999 (equivalent to ISO 8062:1994), as quoted in a handbook", 1999}
	EN12890    = &Work{"CEN", "EN 12890:2000 Founding: patterns, pattern equipment and coreboxes", 2000}
	Dooley     = &Work{"W. H. Dooley", "Applied Science for Metal Workers", 1919}
	Kent       = &Work{"W. Kent", "Mechanical Engineers' Pocket-Book", 1916}
	Porter     = &Work{"L. F. Porter and P. C. Rosenthal", "Factors affecting fluidity of cast iron, Trans. AFS 60", 1952}
	Dubitskii  = &Work{"G. M. Dubitskii and P. N. Aksenov", "gating literature of the 1950s, as repeated in later handbooks", 0}
	Caine      = &Work{"J. B. Caine", "Trans. AFS 56", 1948}
	Archimedes = &Work{"Archimedes", "The Method, proposition 11 (the hoof)", 0}
	Hydraulics = &Work{"Encyclopaedia Britannica, 11th ed.", "Hydraulics", 1911}
	USBR       = &Work{"U.S. Bureau of Reclamation", "Water Measurement Manual", 2001}
	BIPM       = &Work{"BIPM", "The International System of Units, 9th ed.", 2019}
	NIOSHLift  = &Work{"NIOSH", "Applications Manual for the Revised NIOSH Lifting Equation, Pub. 94-110", 2021}
	Assael     = &Work{"M. J. Assael et al.", "Reference data for the density and viscosity of liquid metals, J. Phys. Chem. Ref. Data 35", 2006}
	OSHA       = &Work{"OSHA", "29 CFR 1910", 0}
	HSE        = &Work{"UK Health and Safety Executive", "molten metal guidance", 0}
	Mills      = &Work{"K. C. Mills", "Recommended Values of Thermophysical Properties for Selected Commercial Alloys", 2002}
	Iida       = &Work{"T. Iida and R. I. L. Guthrie", "The Physical Properties of Liquid Metals", 1988}
	MakeItFrom = &Work{"", "MakeItFrom.com material properties database", 0}
	MatWeb     = &Work{"", "MatWeb material property data", 0}
	ASTMB560   = &Work{"ASTM", "B560 Standard specification for modern pewter alloys", 0}
	ASTMB86    = &Work{"ASTM", "B86 Standard specification for zinc and zinc-aluminium foundry and die castings", 0}
	AluAssoc   = &Work{"Aluminum Association", "Designations and chemical composition limits for aluminum alloys in the form of castings and ingot", 0}
	DOEMelt    = &Work{"US Department of Energy", "Advanced Melting Technologies", 2005}
	Brown      = &Work{"J. R. Brown (ed.)", "Foseco Ferrous Foundryman's Handbook, 11th ed.", 2000}
	DeGarmo    = &Work{"E. P. DeGarmo, J. T. Black and R. A. Kohser", "Materials and Processes in Manufacturing", 0}
	Kell       = &Work{"G. S. Kell", "Density, thermal expansivity and compressibility of liquid water, J. Chem. Eng. Data 20", 1975}
	SFPE       = &Work{"SFPE", "Handbook of Fire Protection Engineering", 0}
)
