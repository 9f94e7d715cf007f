package source

// The works on tipping and carrying ladles.
var (
	Tilting = &Work{"Y. Noda, K. Terashima and others", "papers on automatic pouring with tilting ladles", 0}
	HSELift = &Work{"UK Health and Safety Executive", "Manual Handling: guidance on regulations L23 and leaflet INDG143", 0}
)
