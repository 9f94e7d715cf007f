package weight

import "pourwright/calc/working"

// proportion is height over diameter: of the user's own sizes, or as asked for.
func proportion(p *working.Paper, r Riser) float64 {
	if !r.Height.Known() {
		return working.GiveOpt(p, "h", "height over diameter", r.Ratio, "1")
	}
	H := p.Give("H_own", "your own height", r.Height.V, "cm")
	D := p.Give("D_own", "your own diameter", r.Diameter.V, "cm")
	return p.Step("h", "height over diameter", H/D, "1", "H_own / D_own", definition)
}
