package holddown

import (
	"pourwright/calc/figure"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

var (
	hydrostatics  = source.Hydraulics.Memory("pressure of a liquid on an upright plane")
	bearingSource = source.Rao.Memory("ch. 3, bearing strength of green sand, 3.5 N/cm²")
)

// bearing is what rammed green sand is reckoned to bear, Pa.
const bearing = 35e3

// side is the push of the metal on an upright face.
func (h *holding) side() {
	in, p, o := h.in, h.p, &h.out
	if !in.WallLength.Known() || !in.WallHeight.Known() {
		return
	}
	b, a := working.GiveOpt(p, "b", "length of the side", in.WallLength, "m"), working.GiveOpt(p, "a", "height of the side", in.WallHeight, "m")
	d := working.GiveOpt(p, "d_1", "depth of its top under the metal level", in.WallTop, "m")
	P := p.Step("p_w", "pressure at its bottom", h.rho*h.g*(d+a)/1000, "kPa", "rho_m * g * (d_1 + a)", hydrostatics)
	F := p.Step("F_w", "push on the side", h.rho*h.g*b*a*(d+a/2), "N", "rho_m * g * b * a * (d_1 + a / 2)", hydrostatics)
	D := p.Step("d_w", "depth at which it acts", (d+a/2+a*a/(12*(d+a/2)))*1000, "mm", "d_1 + a / 2 + pow(a, 2) / (12 * (d_1 + a / 2))", hydrostatics)
	o.WallPressure = quantity.Some(quantity.From[quantity.Pressure](P, "kPa"))
	o.WallThrust, o.WallDepth = quantity.Some(quantity.Force(F)), quantity.Some(quantity.From[quantity.Length](D, "mm"))
	if green := in.Binder.V == mouldstuff.Clay || in.Sand.V == mouldstuff.GreenSand; green && P*1000 > bearing {
		p.Find(working.Finding{Level: working.Mind, Code: "wall-pressure", Field: "wall_height", Source: bearingSource,
			Text: working.Say("At the bottom of that side the metal presses with %v, more than the %v that rammed green sand is reckoned to bear; the mould swells, and the casting with it.", o.WallPressure.V, quantity.Pressure(bearing)),
			Do:   working.Say("Ram it harder and back it up to the flask, use bonded sand, or lay the casting flat.")})
	}
}

// box is the least flask for the casting by the usual sand round it.
func (h *holding) box() {
	in, p, o := h.in, h.p, &h.out
	if !in.CastingLength.Known() || !in.CastingWidth.Known() || !in.CastingMass.Known() {
		return
	}
	c, note, ok := mouldstuff.SandAround(in.CastingMass.V)
	if !ok {
		p.Find(working.Finding{Level: working.Note, Code: "box-no-row", Field: "casting_mass", Source: mouldstuff.CoverSource,
			Text: working.Say("The table of sand round a casting ends at 500 kg; for %v go by your own experience.", in.CastingMass.V)})
		return
	}
	look := func(symbol, what string, v quantity.Length) float64 {
		return p.Lookup(symbol, what, quantity.In(v, "mm"), "mm", mouldstuff.CoverSource, note)
	}
	top, bottom, side, toSprue := look("s_t", "sand over the casting", c.Top), look("s_b", "sand under it", c.Bottom), look("s_s", "sand beside it", c.Side), look("s_e", "sand between sprue and flask", c.Sprue)
	l, w := working.GiveOpt(p, "l_c", "casting length", in.CastingLength, "mm"), working.GiveOpt(p, "w_c", "casting width", in.CastingWidth, "mm")
	up, down := working.GiveOpt(p, "u_c", "casting above the parting", in.Above, "mm"), working.GiveOpt(p, "b_c", "casting below the parting", in.Below, "mm")
	put := func(symbol, what string, v float64, formula string) quantity.Opt[quantity.Length] {
		return quantity.Some(quantity.From[quantity.Length](p.Step(symbol, what, v, "mm", formula, mouldstuff.CoverSource), "mm"))
	}
	if in.SprueWidth.Known() {
		d := working.GiveOpt(p, "d_sp", "width of the sprue", in.SprueWidth, "mm")
		o.BoxLength = put("L_b", "flask length, with the sprue at one end", l+2*side+d+toSprue, "l_c + 2 * s_s + d_sp + s_e")
	} else {
		o.BoxLength = put("L_b", "flask length", l+2*side, "l_c + 2 * s_s")
	}
	o.BoxWidth = put("W_b", "flask width", w+2*side, "w_c + 2 * s_s")
	o.BoxCope = put("h_bc", "cope height", up+top, "u_c + s_t")
	o.BoxDrag = put("h_bd", "drag height", down+bottom, "b_c + s_b")
}

// sand is what has to be mixed and rammed.
func (h *holding) sand() {
	in, p, o := h.in, h.p, &h.out
	rho := h.sandDensity()
	if !boxed(in) || rho == 0 || !in.MetalVolume.Known() {
		return
	}
	V := working.GiveOpt(p, "V_m", "volume of metal in the mould", in.MetalVolume, "m^3")
	box := float64(in.FlaskLength.V) * float64(in.FlaskWidth.V) * float64(in.CopeHeight.V+in.DragHeight.V)
	m := p.Step("m_s", "sand to ram", rho*(box-V), "kg", "rho_s * (L * W * (h_k + h_d) - V_m)", source.Derived("what the metal leaves of the flask"))
	o.SandMass = quantity.Some(quantity.Mass(m))
	if in.MetalMass.Known() {
		mm := working.GiveOpt(p, "m_m", "mass of metal in the mould", in.MetalMass, "kg")
		o.SandToMetal = quantity.Some(quantity.Number(p.Step("r_sm", "sand to metal, by mass", m/mm, "1", "m_s / m_m", source.Derived("definition"))))
	}
	h.water(m)
	if !in.Binder.Known() {
		return
	}
	b, ok := mouldstuff.FindBinder(in.Binder.V)
	if !ok {
		panic("holddown: the form let an unknown binder through")
	}
	share, own := h.share("f_b", "binder on the sand", in.BinderShare, b.Share)
	if own {
		h.outside("binder-share", "binder_share", "binder on the sand", in.BinderShare.V, b.Share)
	}
	mb := p.Step("m_bi", "binder", share*m, "kg", "f_b * m_s", source.Derived("share of the sand"))
	o.BinderMass = quantity.Some(quantity.Mass(mb))
	if b.Hardener.Source.IsZero() {
		return
	}
	share, own = h.share("f_h", "hardener on the binder", in.HardenerShare, b.Hardener)
	if own {
		h.outside("hardener-share", "hardener_share", "hardener on the binder", in.HardenerShare.V, b.Hardener)
	}
	o.HardenerMass = quantity.Some(quantity.Mass(p.Step("m_h", "hardener", share*mb, "kg", "f_h * m_bi", source.Derived("share of the binder"))))
}

func (h *holding) water(sand float64) {
	in, p := h.in, h.p
	f := 0.0
	switch {
	case in.Moisture.Known():
		f = working.GiveOpt(p, "f_w", "moisture of the sand", in.Moisture, "1")
	case in.Sand.Known():
		w := h.stuff().Water
		f = p.Lookup("f_w", "moisture of the sand, as usual", float64(w.V), "1", w.Source, w.Note)
	default:
		return
	}
	h.out.WaterMass = quantity.Some(quantity.Mass(p.Step("m_wa", "water in the sand", f*sand, "kg", "f_w * m_s", source.Derived("share of the sand"))))
}

// share is the user's own share or the table's.
func (h *holding) share(symbol, what string, own quantity.Opt[quantity.Ratio], table figure.Of[quantity.Ratio]) (v float64, isOwn bool) {
	if own.Known() {
		return working.GiveOpt(h.p, symbol, what, own, "1"), true
	}
	return h.p.Lookup(symbol, what, float64(table.V), "1", table.Source, table.Note), false
}

// outside minds a share outside the range of the sources.
func (h *holding) outside(code, field, what string, v quantity.Ratio, usual figure.Of[quantity.Ratio]) {
	low, high := usual.Span()
	if v >= low && v <= high {
		return
	}
	h.p.Find(working.Finding{Level: working.Mind, Code: code, Field: field, Source: usual.Source,
		Text: working.Say("%v of %s is outside the usual %v to %v; too little crumbles, too much gives off gas.", v, what, low, high),
		Do:   working.Say("Take %v, unless you have tried yours.", usual.V)})
}
