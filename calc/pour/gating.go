package pour

import (
	"fmt"

	"pourwright/calc/flow"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

const gravity = flow.Gravity

// gating works out flows and speeds at the time reckoned with, and the choke.
func (c *pouring) gating() {
	c.flows()
	c.sprue()
	c.choke()
}

func (c *pouring) flows() {
	if c.tw == 0 {
		return
	}
	p, in, from := c.p, c.in, source.Derived("continuity")
	q := p.Step("q_m", "pouring rate", c.W/c.tw, "kg/s", "W / t_w", from)
	Q := p.Step("Q", "flow", c.W/c.rho/c.tw*1000, "L/s", "W / rho_m / t_w", from)
	c.out.FlowRate, c.out.VolumeFlow = quantity.Some(quantity.MassFlow(q)), quantity.Some(quantity.From[quantity.VolumeFlow](Q, "L/s"))
	A := p.Step("A_gw", "ingates wanted, all together", Q/1000/c.vIngate*1e4, "cm^2", "Q / v_i", from)
	c.out.IngatesFor = quantity.Some(quantity.From[quantity.Area](A, "cm^2"))
	if in.Ingates.Known() {
		c.out.IngateSpeed = quantity.Some(quantity.Speed(p.Step("v_g", "speed at the ingates", Q/1000/float64(in.Ingates.V), "m/s", "Q / A_g", from)))
	}
	if in.Cavity.Known() {
		v := p.Step("v_u", "rise of the level, on average", float64(in.Cavity.V)*1000/c.tw, "mm/s", "c / t_w", from)
		c.out.RiseSpeed = quantity.Some(quantity.From[quantity.Speed](v, "mm/s"))
	}
	if in.Vents.Known() {
		c.out.VentSpeed = quantity.Some(quantity.Speed(p.Step("v_v", "air in the vents", Q/1000/float64(in.Vents.V), "m/s", "Q / A_v", from)))
	}
	if in.Run.Known() {
		L := working.GiveOpt(p, "L_f", "longest way through the thin wall", in.Run, "mm")
		v := p.Step("v_f", "front in the thin wall, at least", L/1000/(float64(in.ThinShare.V)*c.tw), "m/s", "L_f / (y * t_w)", from)
		c.out.FrontSpeed = quantity.Some(quantity.Speed(v))
	}
}

// sprue is what the height of the metal above the ingates gives.
func (c *pouring) sprue() {
	p, in := c.p, c.in
	if !in.Height.Known() {
		c.unknown = append(c.unknown, "the choke (metal level above the ingates)")
		return
	}
	h := working.GiveOpt(p, "h", "metal level above the ingates", in.Height, "mm")
	c.out.SprueSpeed = quantity.Some(quantity.Speed(flow.Speed(p, h, gravity)))
	if in.Basin.Known() {
		hc := working.GiveOpt(p, "h_c", "depth of metal in the basin", in.Basin, "mm")
		p.Step("h_t", "height of the metal above the foot", h, "mm", "h", source.Derived("the foot taken level with the ingates"))
		c.out.Taper = quantity.Some(quantity.Number(flow.TaperByHeads(p, h, hc)))
	}
}

// choke is the narrowest section by the trade's head and by the exact one, and
// what time a choke that is there already gives.
func (c *pouring) choke() {
	p, in := c.p, c.in
	if !in.Height.Known() {
		return
	}
	if !headKnown(in) {
		c.unknown = append(c.unknown, "the choke (height of the cavity, and its part above the ingates)")
		return
	}
	h := quantity.In(in.Height.V, "mm")
	var rule, exact float64
	if in.Gate.V == flow.Top {
		rule = p.Step("H", "effective head of a top gate", h, "mm", "h", source.Rao.Memory("ch. 4, effective sprue height"))
		exact = p.Step("H_x", "effective head, exact", h, "mm", "h", source.Derived("a top gate keeps its full head"))
	} else {
		cav := working.GiveOpt(p, "c", "height of the cavity", in.Cavity, "mm")
		cp := p.Number("c_p", "height of cavity above the ingates", in.Gate.V.CopePart(cav, quantity.In(in.Cope.V, "mm")), "mm")
		rule, exact = flow.Heads(p, h, cav, cp)
	}
	c.out.Head, c.out.ExactHead = quantity.Some(quantity.From[quantity.Length](rule, "mm")), quantity.Some(quantity.From[quantity.Length](exact, "mm"))
	cd := working.GiveOpt(p, "C_d", "discharge coefficient", in.Discharge, "1")
	if c.tw > 0 {
		A := flow.ChokeArea(p, "A_cr", "choke by the trade's head", "H", c.W, c.rho, c.tw, cd, gravity, rule)
		Ax := flow.ChokeArea(p, "A_cx", "choke by the exact head", "H_x", c.W, c.rho, c.tw, cd, gravity, exact)
		c.out.Choke, c.out.ExactChoke = quantity.Some(quantity.From[quantity.Area](A, "cm^2")), quantity.Some(quantity.From[quantity.Area](Ax, "cm^2"))
	}
	if in.Choke.Known() {
		A := working.GiveOpt(p, "A_c", "choke that is there", in.Choke, "cm^2")
		c.out.ChokeRule = quantity.Some(quantity.Time(flow.ChokeTime(p, "t_cr", "time of your choke by the trade's head", "H", c.W, c.rho, A, cd, gravity, rule)))
		c.out.ChokeTime = quantity.Some(quantity.Time(flow.ChokeTime(p, "t_cx", "time of your choke by the exact head", "H_x", c.W, c.rho, A, cd, gravity, exact)))
	}
}

// headKnown says whether the effective head can be worked out.
func headKnown(in Input) bool {
	switch in.Gate.V {
	case flow.Top:
		return in.Height.Known()
	case flow.Bottom:
		return in.Height.Known() && in.Cavity.Known()
	}
	return in.Height.Known() && in.Cavity.Known() && in.Cope.Known()
}

// lift holds the cope down.
func (c *pouring) lift() {
	in, p := c.in, c.p
	if len(in.Surfaces) == 0 {
		c.unknown = append(c.unknown, "the lift (surfaces of the cope)")
		return
	}
	sum := 0.0
	for i, s := range in.Surfaces {
		sub := p.Sub(fmt.Sprintf("surfaces[%d]", i))
		A, d := sub.Give("A", "area seen from above", s.Area, "cm^2"), sub.Give("d", "depth under the metal level", s.Depth, "mm")
		F := flow.SurfaceLift(sub, c.rho, gravity, A, d)
		sum += F
		c.out.Surfaces = append(c.out.Surfaces, Pushed{quantity.Force(F)})
	}
	p.Solve("F_sum", "sum of the lifts on the surfaces", sum, "N", "sum over the surfaces of ρ g A d", []string{"rho_m", "g"}, source.Rao.Memory("ch. 4, forces acting on the moulding flasks"))
	h := flow.Hold(p, flow.Lift{Metal: quantity.Force(sum), Core: in.CoreLift.V, Surge: in.Surge, Cope: in.CopeMass, Weights: in.Weights, Clamps: in.Clamps})
	c.out.LiftStatic, c.out.LiftSurged, c.out.Together = quantity.Some(h.Static), quantity.Some(h.Surged), quantity.Some(h.Together)
	c.out.WeightsStatic, c.out.WeightsSurged = h.Needed, h.NeededSurge
	if !in.CopeMass.Known() {
		c.unknown = append(c.unknown, "whether the cope holds (its mass)")
	}
}
