package mould

import (
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// sand works out what has to be rammed and what the cope weighs.
func sand(in Input, out *Output, plan float64, p *working.Paper) {
	stuff, ok := mouldstuff.FindSand(in.Sand)
	if !ok {
		panic("mould: the form let an unknown sand through")
	}
	var rho float64
	if in.SandDensity.Known() {
		rho = working.GiveOpt(p, "rho_s", "your own rammed density", in.SandDensity, "kg/m^3")
	} else {
		rho = p.Lookup("rho_s", "rammed density of the mould material", float64(stuff.Density.V), "kg/m^3", stuff.Density.Source, "")
	}
	p.Number("A_f", "inside of the flask from above", plan, "m^2")
	hc, hd := float64(in.CopeHeight), float64(in.DragHeight)
	above, below := float64(in.Above.V), float64(in.Below.V)
	geometry := source.Derived("volume times density")
	if in.CastingVolume.Known() {
		V := working.GiveOpt(p, "V", "volume of the castings", in.CastingVolume, "m^3")
		up := p.Step("V_up", "casting volume in the cope, shared by height", V*above/(above+below), "m^3", "V * p / (p + d)", source.Practice("shared between cope and drag by height"))
		down := p.Step("V_down", "casting volume in the drag", V-up, "m^3", "V - V_up", geometry)
		out.CopeMass = quantity.Mass(p.Step("m_cope", "sand in the cope", rho*(plan*hc-up), "kg", "rho_s * (A_f * h_c - V_up)", geometry))
		out.DragMass = quantity.Mass(p.Step("m_drag", "sand in the drag", rho*(plan*hd-down), "kg", "rho_s * (A_f * h_d - V_down)", geometry))
	} else {
		cut := p.StepNote("V_up", "most that the casting can take out of the cope", float64(out.Area)*above, "m^3", "A_p * p", geometry, "its volume is not known yet, so the box round it is taken off, which makes the cope lighter than it is")
		down := p.Step("V_down", "most that the casting can take out of the drag", float64(out.Area)*below, "m^3", "A_p * d", geometry)
		out.CopeMass = quantity.Mass(p.Step("m_cope", "sand in the cope, at least", rho*(plan*hc-cut), "kg", "rho_s * (A_f * h_c - V_up)", geometry))
		out.DragMass = quantity.Mass(p.Step("m_drag", "sand in the drag, at least", rho*(plan*hd-down), "kg", "rho_s * (A_f * h_d - V_down)", geometry))
	}
	m := p.Step("m_sand", "sand to ram", float64(out.CopeMass+out.DragMass), "kg", "m_cope + m_drag", source.Derived("sum"))
	out.SandMass = quantity.Mass(m)
	if in.CastingMass.Known() && in.CastingMass.V > 0 {
		mc := working.GiveOpt(p, "m_c", "mass of the castings", in.CastingMass, "kg")
		out.SandToMetal = quantity.Some(quantity.Number(p.Step("r_sm", "sand to metal, by mass", m/mc, "1", "m_sand / m_c", source.Derived("definition"))))
	}
}

// cover compares the sand round the casting with the usual least.
func cover(in Input, out Output, p *working.Paper) {
	if in.Moisture.Known() {
		moisture(in, p)
	}
	if !in.CastingMass.Known() {
		return
	}
	least, note, ok := mouldstuff.SandAround(in.CastingMass.V)
	if !ok {
		return
	}
	for _, side := range []struct {
		code, name, field string
		have, want        quantity.Length
	}{
		{"sand-over", "over the casting", "cope_height", out.Top, least.Top},
		{"sand-under", "under the casting", "drag_height", out.Bottom, least.Bottom},
		{"sand-beside", "beside the casting", "flask_width", out.Side, least.Side},
	} {
		if side.have < side.want {
			p.Find(working.Finding{Level: working.Mind, Code: side.code, Field: side.field, Source: mouldstuff.CoverSource,
				Text: working.Say("%v of sand %v is thin for %v of casting; %v is usual (%v). Thin sand bursts or lets metal run out.", side.have, side.name, in.CastingMass.V, side.want, note),
				Do:   working.Say("Take a larger flask, or back the mould up.")})
		}
	}
}

func moisture(in Input, p *working.Paper) {
	b, ok := mouldstuff.FindBinder(in.Binder)
	if !ok {
		panic("mould: the form let an unknown binder through")
	}
	limit := b.MoistureLimit
	if !limit.Source.IsZero() && in.Moisture.V > limit.V {
		p.Find(working.Finding{Level: working.Stop, Code: "sand-wet", Field: "moisture", Source: limit.Source,
			Text: working.Say("%v of water is too much for this mould; the limit is %v. Wet sand boils and throws metal.", in.Moisture.V, limit.V),
			Do:   working.Say("Dry the sand to %v or below before you pour.", limit.V)})
	}
}
