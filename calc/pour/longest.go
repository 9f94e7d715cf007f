package pour

import (
	"fmt"
	"math"

	"pourwright/calc/alloy"
	"pourwright/calc/flow"
	"pourwright/calc/freeze"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// The names of the limits on the long side.
const (
	wallLimit = "Thinnest wall freezes on the way"
	riseLimit = "Metal rises too slowly"
)

// longest works out how slowly the mould may be filled.
func (c *pouring) longest() {
	p := c.p
	c.life()
	y := working.GiveOpt(p, "y", "share of the pour while the thin wall fills", c.in.ThinShare, "1")
	freezes := source.Derived("the thin wall must be full while its metal still flows")
	worst := p.Step("t_n_lo", "longest for the thin wall, at the worst", float64(c.out.LifeLow)/y, "s", "t_f_lo / y", freezes)
	likely := p.Step("t_n", "longest for the thin wall, likely", float64(c.out.Life)/y, "s", "t_f / y", freezes)
	utmost := p.Step("t_n_hi", "longest for the thin wall, at the utmost", float64(c.out.LifeHigh)/y, "s", "t_f_hi / y", freezes)
	c.out.LongestWorst = quantity.Time(worst)
	c.limit(wallLimit, atMost, "t_n", likely, "t_n_hi", utmost, freezes, "")
	rise, why := c.rise()
	if rise > 0 {
		c.limit(riseLimit, atMost, "t_u", rise, "", 0, source.Derived("cavity height over rise speed"), "no utmost end is known; slower than this, expect laps")
		c.long = p.Step("t_l", "longest", math.Min(likely, rise), "s", "min(t_n, t_u)", freezes)
	} else {
		c.limit(riseLimit, atMost, "", 0, "", 0, source.Ref{}, why)
		c.long = p.Step("t_l", "longest", likely, "s", "t_n", freezes)
	}
	c.longUtmost = p.Step("t_l_hi", "longest, at the utmost", utmost, "s", "t_n_hi", freezes)
}

// limit lists one end of the window; a value of 0 is not known.
func (c *pouring) limit(name, side, usual string, v1 float64, utmost string, v2 float64, from source.Ref, why string) {
	sub := c.p.Sub(fmt.Sprintf("limits[%d]", len(c.out.Limits)))
	l := Limit{Name: name, Side: side, Why: why}
	if v1 > 0 {
		l.Usual = quantity.Some(quantity.Time(sub.Step("t_1", "the limit", v1, "s", usual, from)))
	}
	if v2 > 0 {
		l.Utmost = quantity.Some(quantity.Time(sub.Step("t_2", "the limit, at the utmost", v2, "s", utmost, from)))
	}
	c.out.Limits = append(c.out.Limits, l)
}

// life is how long metal stays fluid in the thinnest wall, with what it
// arrives with.
func (c *pouring) life() {
	p, in := c.p, c.in
	m := freeze.MetalOf(c.a)
	if in.Density.Known() {
		m.Density.V, m.Density.Low, m.Density.High = in.Density.V, 0, 0
		m.Density.Source = source.Own("your own figure goes before the table's")
	}
	m.Put(p)
	c.rho = float64(m.Density.V)
	Tl := quantity.In(m.Liquidus.V, "degC")
	T0 := working.GiveOpt(p, "T_0", "mould temperature", in.MouldTemperature, "degC")
	Tp := p.Give("T_p", "pouring temperature", in.PourTemperature, "degC")
	Tg := flow.PutDrop(p, in.Drop, Tp, T0)
	dT := p.Step("Delta_T", "superheat at the wall", math.Max(Tp-Tg-Tl, 0), "K", "max(T_p - T_g - T_L, 0 * T_g)", source.Derived("definition"))
	c.out.Superheat = quantity.TempDiff(dT)
	b, bLo, bHi := c.effusivity(m, dT, T0)
	f, fLo, fHi := c.coherency(m)
	c.share = f
	still := source.Derived("the first metal touches sand all the time, the stream as a whole two thirds of it")
	kHi, k, kLo := p.Const("k_hi", "touch of the first metal", freeze.Still, "1", still), p.Const("k_t", "touch, middle", (freeze.Still+freeze.Moving)/2, "1", still), p.Const("k_lo", "touch of the stream as a whole", freeze.Moving, "1", still)
	s := freeze.Stream{Metal: m, Thickness: p.Give("delta", "thinnest wall", in.Thin, "mm"), Superheat: dT, Liquidus: Tl, Mould: T0}
	c.out.LifeLow = quantity.Time(freeze.Life(p, "t_f_lo", "thin wall stays fluid, at least", s, freeze.Guess{Share: fLo, Effusivity: bHi, Touch: kHi, ShareAs: "f_lo", EffusivityAs: "b_hi", TouchAs: "k_hi"}))
	c.out.Life = quantity.Time(freeze.Life(p, "t_f", "thin wall stays fluid, likely", s, freeze.Guess{Share: f, Effusivity: b, Touch: k, ShareAs: "f", EffusivityAs: "b", TouchAs: "k_t"}))
	c.out.LifeHigh = quantity.Time(freeze.Life(p, "t_f_hi", "thin wall stays fluid, at most", s, freeze.Guess{Share: fHi, Effusivity: bLo, Touch: kLo, ShareAs: "f_hi", EffusivityAs: "b_lo", TouchAs: "k_lo"}))
}

// effusivity is that of the sand, or what the shop's own freezing constant
// says it is. How much superheat that constant had in it is not known, so it
// gives a range from none to all.
func (c *pouring) effusivity(m freeze.Metal, dT, T0 float64) (mid, low, high float64) {
	p := c.p
	if !c.in.FreezingConstant.Known() {
		s, ok := mouldstuff.FindSand(c.in.Sand)
		if !ok {
			panic("pour: the form let an unknown sand through")
		}
		return freeze.PutEffusivity(p, s.Effusivity())
	}
	Te := freeze.PutEffective(p, m)
	C := working.GiveOpt(p, "C_own", "your own freezing constant", c.in.FreezingConstant, "s/mm^2")
	guess := source.Practice("how much superheat your constant had in it is not known")
	u := func(symbol string, share float64) {
		p.Const(symbol, "share of the superheat in your constant", share, "1", guess)
	}
	u("u_lo", 0)
	u("u", 0.5)
	u("u_hi", 1)
	low = freeze.HeatSpeed(p, "b_lo", "heat effusivity from your constant, low end", "u_lo", m, Te, T0, dT, 0, C)
	mid = freeze.HeatSpeed(p, "b", "heat effusivity from your constant", "u", m, Te, T0, dT, 0.5, C)
	high = freeze.HeatSpeed(p, "b_hi", "heat effusivity from your constant, high end", "u_hi", m, Te, T0, dT, 1, C)
	return mid, low, high
}

// coherency is the share of latent heat lost when the metal stops.
func (c *pouring) coherency(m freeze.Metal) (mid, low, high float64) {
	if c.in.Coherency.Known() {
		f := working.GiveOpt(c.p, "f", "share of latent heat lost when it stops, as stated", c.in.Coherency, "1")
		c.p.Step("f_lo", "the same, low end", f, "1", "f", source.Own("your own figure"))
		c.p.Step("f_hi", "the same, high end", f, "1", "f", source.Own("your own figure"))
		return f, f, f
	}
	span := float64(m.Liquidus.V - m.Solidus.V)
	low, mid, high = freeze.Coherency(span)
	from := source.Practice("short freezing ranges flow on longer")
	note := fmt.Sprintf("for a freezing range of %.0f °C", span)
	c.p.Lookup("f", "share of latent heat lost when it stops", mid, "1", from, note)
	c.p.Lookup("f_lo", "the same, low end", low, "1", from, note)
	c.p.Lookup("f_hi", "the same, high end", high, "1", from, note)
	return mid, low, high
}

// rise is the longest time by the least rise of the level, s; or 0 and why not.
func (c *pouring) rise() (t float64, why string) {
	p := c.p
	if !c.in.Cavity.Known() {
		c.unknown = append(c.unknown, "the rise of the level (height of the cavity)")
		return 0, "not known: the height of the cavity is wanted"
	}
	h := working.GiveOpt(p, "c", "height of the cavity", c.in.Cavity, "mm")
	if h < flow.Flatness*c.T {
		return 0, "does not count: metal runs across a flat cavity rather than rises in it"
	}
	var v float64
	if c.in.Rise.Known() {
		v = working.GiveOpt(p, "v_r", "least rise of the level", c.in.Rise, "mm/s")
	} else {
		least, row, from := flow.LeastRise(c.a, c.T)
		if c.a.Family != alloy.GreyIron {
			c.typicalRise, c.riseRow, c.riseFrom = least/1000, row, from
			return 0, "does not count: " + row + " is typical, too weakly known to be a limit; your own figure counts"
		}
		v = p.Lookup("v_r", "least rise of the level", least, "mm/s", from, row)
	}
	return p.Step("t_u", "longest by the rise of the level", h/v, "s", "c / v_r", source.Derived("cavity height over rise speed")), ""
}
