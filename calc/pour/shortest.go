package pour

import (
	"math"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// The names of the limits on the short side.
const (
	ingateLimit = "Speed at the ingates"
	ventLimit   = "Air out of the vents"
)

// shortest works out how fast the mould may be filled, as far as ingates and
// vents are known.
func (c *pouring) shortest() {
	c.speedLimit()
	g, gLo := c.ingateTimes()
	v := c.ventTime()
	p := c.p
	from := source.Derived("the slowest of what lets metal in and air out")
	switch {
	case g > 0 && v > 0:
		c.short = p.Step("t_s", "shortest", math.Max(g, v), "s", "max(t_g, t_v)", from)
	case g > 0:
		c.short = p.Step("t_s", "shortest", g, "s", "t_g", from)
	case v > 0:
		c.short = p.Step("t_s", "shortest", v, "s", "t_v", from)
	}
	if c.short > 0 {
		c.out.Shortest = quantity.Some(quantity.Time(c.short))
	}
	if gLo > 0 {
		c.shortUtmost = p.Step("t_s_lo", "shortest, at the utmost", gLo, "s", "t_g_lo", from)
		c.out.ShortestUtmost = quantity.Some(quantity.Time(c.shortUtmost))
	}
}

// speedLimit puts the speed limits of the ingates on the paper, and how far
// the thin wall runs at them.
func (c *pouring) speedLimit() {
	p := c.p
	if c.in.IngateSpeed.Known() {
		c.vIngate = working.GiveOpt(p, "v_i", "own limit of the ingate speed", c.in.IngateSpeed, "m/s")
		c.vIngateMost = p.Step("v_i_hi", "most at the ingates", c.vIngate, "m/s", "v_i", source.Own("your own figure"))
	} else {
		s := c.a.IngateSpeed
		_, most := s.Span()
		c.vIngate = p.Lookup("v_i", "speed limit at the ingates", float64(s.V), "m/s", s.Source, s.Note)
		c.vIngateMost = p.Lookup("v_i_hi", "most at the ingates", max(float64(most), float64(s.V)), "m/s", s.Source, "what is got away with")
	}
	run := source.Derived("speed times the time it stays fluid")
	lo := p.Step("L_lo", "how far the thin wall runs, at the worst", c.vIngate*float64(c.out.LifeLow)*1000, "mm", "v_i * t_f_lo", run)
	mid := p.Step("L_r", "how far the thin wall runs, likely", c.vIngate*float64(c.out.Life)*1000, "mm", "v_i * t_f", run)
	hi := p.Step("L_hi", "how far the thin wall runs, at the utmost", c.vIngateMost*float64(c.out.LifeHigh)*1000, "mm", "v_i_hi * t_f_hi", run)
	c.out.Runs = quantity.From[quantity.Length](mid, "mm")
	c.out.RunLow, c.out.RunHigh = quantity.From[quantity.Length](lo, "mm"), quantity.From[quantity.Length](hi, "mm")
}

// ingateTimes are the usual and the utmost shortest times by the ingates, s.
func (c *pouring) ingateTimes() (usual, utmost float64) {
	if !c.in.Ingates.Known() {
		c.unknown = append(c.unknown, "the speed at the ingates (their area)")
		c.limit(ingateLimit, atLeast, "", 0, "", 0, source.Ref{}, "not known: the area of the ingates is wanted")
		return 0, 0
	}
	p := c.p
	A := working.GiveOpt(p, "A_g", "ingates, all together", c.in.Ingates, "cm^2")
	from := source.Derived("continuity")
	usual = p.Step("t_g", "shortest by the ingates", c.W/(c.rho*A*1e-4*c.vIngate), "s", "W / (rho_m * A_g * v_i)", from)
	utmost = p.Step("t_g_lo", "shortest by the ingates, at the utmost", c.W/(c.rho*A*1e-4*c.vIngateMost), "s", "W / (rho_m * A_g * v_i_hi)", from)
	c.limit(ingateLimit, atLeast, "t_g", usual, "t_g_lo", utmost, from, "")
	return usual, utmost
}

// ventTime is the shortest time by the vents, s; 0 where they are not known.
// The air is taken as cold and none of it as leaving through the sand: it
// swells as it heats and the sand lets much of it through, and the two work
// against each other.
func (c *pouring) ventTime() float64 {
	if !c.in.Vents.Known() {
		c.unknown = append(c.unknown, "the air (area of the vents)")
		c.limit(ventLimit, atLeast, "", 0, "", 0, source.Ref{}, "not known: the area of the vents is wanted")
		return 0
	}
	p := c.p
	V := p.Step("V", "volume that the metal fills", c.W/c.rho, "m^3", "W / rho_m", source.Derived("definition of density"))
	A := working.GiveOpt(p, "A_v", "vents, all together", c.in.Vents, "cm^2")
	va := working.GiveOpt(p, "v_a", "most that air may have in the vents", c.in.VentSpeed, "m/s")
	rhoAir := p.Const("rho_a", "density of cold air", 1.2, "kg/m^3", source.Hydraulics.Memory("air at 20 °C"))
	Ca := p.Const("C_a", "discharge coefficient of a vent", 0.6, "1", source.Hydraulics.Memory("sharp-edged orifice"))
	back := p.Step("p_a", "back pressure of the air", rhoAir*(va/Ca)*(va/Ca)/2, "Pa", "rho_a * pow(v_a / C_a, 2) / 2", source.Hydraulics.Memory("orifice"))
	p.Step("h_a", "metal that stands against it", back/(c.rho*gravity)*1000, "mm", "p_a / (rho_m * g)", source.Derived("hydrostatics"))
	t := p.Step("t_v", "shortest by the vents", V/(A*1e-4*va), "s", "V / (A_v * v_a)", source.Practice("speed of the air that the metal drives out"))
	c.limit(ventLimit, atLeast, "t_v", t, "", 0, source.Practice("speed of the air that the metal drives out"), "no utmost end is known; sand lets air through as well")
	return t
}
