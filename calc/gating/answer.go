package gating

import (
	"fmt"
	"math"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// answer hands out what the way came to.
func (z *sizing) answer() {
	p, in, w, o := z.p, z.in, z.way, &z.out
	o.Choke = quantity.Area(w.Ac)
	o.Discharge = quantity.Number(p.Step("C", "discharge coefficient", 1/math.Sqrt(w.K), "1", "1 / sqrt(K)", energy))
	o.RunsFull = in.Discharge.Known() || w.sum >= w.vc*w.vc+w.sumUp
	o.Losses = w.losses
	z.basin()
	z.taper()

	o.SprueFoot, o.SprueFootSize = quantity.Area(w.As), quantity.Length(w.ds)
	o.Runners = in.Runners.V
	o.RunnerArea, o.RunnerWidth, o.RunnerHeight = quantity.Area(w.Ar), quantity.Length(w.wr), quantity.Length(w.hr)
	o.Ingates = in.Ingates.V * in.Levels.V
	o.IngateArea, o.IngateEach = quantity.Area(w.Ag), quantity.Area(w.Ag/float64(o.Ingates))
	o.IngateWidth, o.IngateThickness = quantity.Length(w.wg), quantity.Length(w.tg)
	o.IngateSpeed = quantity.Speed(w.vg)

	levels := p.Number("n_l", "levels of ingates", float64(in.Levels.V), "1")
	Q0 := float64(o.StartFlow)
	o.IngateStart = quantity.Speed(p.Step("v_g0", "speed at the lowest ingates, at the start", Q0*levels/w.Ag, "m/s", "Q_0 * n_l / A_g", continuity))
	limit := 0.0
	if in.IngateSpeed.Known() {
		limit = working.GiveOpt(p, "v_own", "own limit of the ingate speed", in.IngateSpeed, "m/s")
		p.Step("v_i", "speed limit at the ingates", limit, "m/s", "v_own", source.Own("your own figure"))
	} else {
		s := z.a.IngateSpeed
		limit = p.Lookup("v_tab", "usual speed limit at the ingates", float64(s.V), "m/s", s.Source, s.Note)
		p.Step("v_i", "speed limit at the ingates", limit, "m/s", "v_tab", s.Source)
	}
	o.IngateLimit = quantity.Speed(limit)
	o.IngatesWanted = quantity.Area(putArea(p, "A_gw", "ingates that keep the limit, all together", "Q_0 * n_l / v_i", Q0*levels/limit, continuity))
	z.channels()
	z.metalInWay()
}

// basin sizes the basin to hold the flow of a while.
func (z *sizing) basin() {
	p, w, o := z.p, z.way, &z.out
	t := working.GiveOpt(p, "t_b", "flow that the basin holds", z.in.BasinTime, "s")
	custom := source.Practice("the basin holds 1 to 2 s of the flow; twice as long as wide")
	V := p.Step("V_b", "metal in the basin", z.Q*t*1e6, "cm^3", "Q * t_b", custom) / 1e6
	o.BasinVolume = quantity.Volume(V)
	wb := putLength(p, "w_b", "basin, width", "sqrt(V_b / (2 * h_c))", math.Sqrt(V/(2*w.hc)), custom)
	o.BasinWidth, o.BasinDepth = quantity.Length(wb), quantity.Length(w.hc)
	o.BasinLength = quantity.Length(putLength(p, "l_b", "basin, length", "2 * w_b", 2*wb, custom))
	if !z.in.Well.V {
		return
	}
	Aw := putArea(p, "A_w", "area of the well", "k_w * A_s", p.Const("k_w", "well over the sprue's foot, in area", wellArea, "1", wellSource)*w.As, wellSource)
	o.WellDiameter = quantity.Some(quantity.Length(putLength(p, "d_w", "well, diameter", "sqrt(4 * A_w / pi)", math.Sqrt(4*Aw/math.Pi), geometry)))
	p.Const("k_z", "well over the runner, in depth", wellDepth, "1", wellSource)
	o.WellDepth = quantity.Some(quantity.Length(putLength(p, "z_w", "well, depth", "k_z * h_r", wellDepth*w.hr, wellSource)))
}

// taper works out the sprue's top, the pressure there, and how far a straight
// side stands off the stream.
//
// The stream of free fall has the width d_s (h_t/z)^¼ at the depth z under the
// metal level. A straight side between its ends, α + β z, is wider in between;
// the ratio of the areas is greatest where its slope vanishes, at z = −α/(5 β).
func (z *sizing) taper() {
	p, in, w, o := z.p, z.in, z.way, &z.out
	o.SprueLength, o.SprueTop = quantity.Length(w.Ls), quantity.Area(w.At)
	form := "sqrt(4 * A_t / pi)"
	dt := math.Sqrt(4 * w.At / math.Pi)
	if in.Form.V == Square {
		form, dt = "sqrt(A_t)", math.Sqrt(w.At)
	}
	o.SprueTopSize = quantity.Length(putLength(p, "d_t", "sprue, width at its top", form, dt, geometry))
	o.Taper = quantity.Number(p.Step("r_t", "area at the top of the sprue over its foot", w.At/w.As, "1", "A_t / A_s", geometry))
	o.TaperWanted = quantity.Number(math.Sqrt(w.ht / w.hc))
	bernoulli := source.Groover.Memory("ch. 10, Bernoulli and continuity")
	switch {
	case in.SprueTop.Known() && !in.Untapered:
		vf := putSpeed(p, "v_f", "speed that the stream from your top falls to", "sqrt(pow(v_t, 2) + 2 * g * L_s)", math.Sqrt(w.vt*w.vt+2*z.g*w.Ls), bernoulli)
		o.FallFoot = quantity.Some(quantity.Area(putArea(p, "A_f", "foot that the stream from your top just fills", "Q / v_f", z.Q/vf, bernoulli)))
	case !in.Untapered && w.At <= w.As*float64(o.TaperWanted):
		beta := p.Step("beta", "slope of the sprue's side", (w.ds-dt)/w.Ls, "1", "(d_s - d_t) / L_s", geometry)
		alpha := putLength(p, "alpha", "width of the sprue's side run on to the metal level", "d_t - beta * h_c", dt-beta*w.hc, geometry)
		zx := putLength(p, "z_x", "depth at which the side stands off most", "-alpha / (5 * beta)", -alpha/(5*beta), source.Derived("greatest ratio of a straight side to the stream of free fall"))
		side := (alpha + beta*zx) / w.ds
		o.Excess = quantity.Some(quantity.Ratio(p.Step("x_s", "straight side wider than the stream, in area", side*side*math.Sqrt(zx/w.ht)-1, "1",
			"pow((alpha + beta * z_x) / d_s, 2) * sqrt(z_x / h_t) - 1", source.Derived("greatest ratio of a straight side to the stream of free fall"))))
	}
	z.suction()
}

// suction is by how much the pressure at the top of the sprue lies under the
// air's at the start, as a height of metal.
func (z *sizing) suction() {
	p, w := z.p, z.way
	v0 := putSpeed(p, "v_t0", "speed at the top of the sprue, at the start", "Q_0 / A_t", float64(z.out.StartFlow)/w.At, continuity)
	hv := putLength(p, "h_v", "suction at the top of the sprue, in metal; below zero it is pressed", "(1 + e_t) * pow(v_t0, 2) / (2 * g) - h_c", (1+w.et)*v0*v0/(2*z.g)-w.hc, energy)
	if hv > 1e-9*w.hc { // a top sized to that end leaves rounding behind
		z.out.TopPressure = quantity.Some(quantity.Length(hv))
	}
}

// channels lists the stretches with their speeds.
func (z *sizing) channels() {
	w := z.way
	z.channel("Sprue, top", "A_t", "v_t", "d_t", w.At, w.vt, float64(z.out.SprueTopSize))
	z.channel("Sprue, foot", "A_s", "v_s", "D_s", w.As, w.vs, w.Ds)
	if z.own {
		Dc := putLength(z.p, "D_c", "choke, hydraulic diameter", "D_r * sqrt(A_c / A_r)", w.Dr*math.Sqrt(w.Ac/w.Ar), source.Derived("of the same form as the runner"))
		z.channel("Choke", "A_c", "v_c", "D_c", w.Ac, w.vc, Dc)
	}
	z.channel("Runner", "A_r", "v_r", "D_r", w.Ar, w.vr, w.Dr)
	z.channel("Ingate", "A_g", "v_g", "D_g", w.Ag, w.vg, w.Dg)
}

func (z *sizing) channel(name, area, speed, width string, A, v, D float64) {
	sub := z.p.Sub(fmt.Sprintf("channels[%d]", len(z.out.Channels)))
	putArea(sub, "A_k", "area, all together", area, A, geometry)
	putSpeed(sub, "v_k", "speed, on average", speed, v, continuity)
	v0 := putSpeed(sub, "v_k0", "speed at the start", "v_k * sqrt(h / H_x)", v*math.Sqrt(z.h/z.H), source.Derived("flow goes as the root of the head"))
	putLength(sub, "D_k", "hydraulic diameter", width, D, geometry)
	re := sub.Step("Re_k", "Reynolds number", z.rho*v*D/z.mu, "1", "rho_m * v_k * D_k / mu_m", source.Rao.Seen("formula sheet"))
	f := sub.Step("f_k", "friction factor", friction(re), "1", "max(16 / Re_k, 0.079 * pow(Re_k, -0.25))", fanning)
	z.out.Channels = append(z.out.Channels, Channel{name, quantity.Area(A), quantity.Speed(v), quantity.Speed(v0), quantity.Length(D), quantity.Number(re), quantity.Number(f)})
}

// metalInWay adds up the metal in the gating as far as its lengths are known.
func (z *sizing) metalInWay() {
	p, in, w, o := z.p, z.in, z.way, &z.out
	frustum := source.Derived("a tapered sprue is a frustum, the rest are bars")
	V := w.Ls / 3 * (w.At + w.As + math.Sqrt(w.At*w.As))
	p.Step("V_s", "metal in the sprue", V*1e6, "cm^3", "L_s / 3 * (A_t + A_s + sqrt(A_t * A_s))", frustum)
	formula := "V_b + V_s"
	sum := float64(o.BasinVolume) + V
	part := func(symbol, what, how string, m3 float64) {
		p.Step(symbol, what, m3*1e6, "cm^3", how, frustum)
		formula += " + " + symbol
		sum += m3
	}
	if in.Well.V {
		part("V_w", "metal in the well", "A_w * z_w", wellArea*w.As*wellDepth*w.hr)
	}
	if in.RunnerLength.Known() {
		working.GiveOpt(p, "L_r", "length of one runner", in.RunnerLength, "m")
		part("V_r", "metal in the runners", "A_r * L_r", w.Ar*float64(in.RunnerLength.V))
	}
	if in.IngateLength.Known() {
		working.GiveOpt(p, "L_g", "length of an ingate", in.IngateLength, "m")
		part("V_g", "metal in the ingates", "A_g * L_g", w.Ag*float64(in.IngateLength.V))
	}
	o.Volume = quantity.Volume(p.Step("V_way", "metal in the gating", sum*1e6, "cm^3", formula, source.Derived("sum")) / 1e6)
	o.Mass = quantity.Mass(p.Step("m_way", "its mass", sum*z.rho, "kg", "V_way * rho_m", source.Derived("definition of density")))
}
