package gating

import (
	"math"

	"pourwright/calc/source"
	"pourwright/calc/working"
)

// wellArea and wellDepth are the usual well: five times the sprue's foot in
// area, twice the runner in depth.
const (
	wellArea  = 5
	wellDepth = 2
)

var wellSource = source.ASM15.Memory("sprue well; also P. N. Rao. Campbell argues against enlarged wells")

// basinWidths is how many widths of the sprue's top the metal should stand
// over it, so that no whirl draws air in; 2.5 to 4 by custom.
const basinWidths = 3

var basinSource = source.Practice("metal 2.5 to 4 sprue widths deep hinders the whirl")

// way is what follows from one size of the choke.
type way struct {
	Ac, As, Ar, Ag, At        float64
	ds, hc, Ls, ht, et        float64
	vt, vs, vc, vr, vg        float64
	wr, hr, tg, wg            float64
	Ds, Dr, Dg                float64
	Res, Rer, Reg, fs, fr, fg float64
	sumUp, sum                float64 // Σ e v² up to the choke, and in all with the exit
	up                        int     // how many of the losses lie before the choke
	losses                    []Loss
	names                     []string // symbols of their heads
	K                         float64
}

// The shorthands below keep areas in cm² and lengths in mm on the paper and
// hand them on in SI.

func putArea(p *working.Paper, symbol, what, formula string, m2 float64, from source.Ref) float64 {
	p.Step(symbol, what, m2*1e4, "cm^2", formula, from)
	return m2
}

func putLength(p *working.Paper, symbol, what, formula string, m float64, from source.Ref) float64 {
	p.Step(symbol, what, m*1e3, "mm", formula, from)
	return m
}

func putSpeed(p *working.Paper, symbol, what, formula string, v float64, from source.Ref) float64 {
	return p.Step(symbol, what, v, "m/s", formula, from)
}

// lay works out the whole way for one size of the choke. With a nil paper it
// only computes.
func (z *sizing) lay(p *working.Paper, Ac float64) way {
	w := way{Ac: Ac}
	in := z.in
	w.As = putArea(p, "A_s", "sprue, area at its foot", "a_s * A_c", z.s*Ac, ratioOf)
	w.Ar = putArea(p, "A_r", "runners, all together", "a_r * A_c", z.r*Ac, ratioOf)
	w.Ag = putArea(p, "A_g", "ingates, all together", "a_g * A_c", z.gt*Ac, ratioOf)
	z.sprue(p, &w)

	w.vc = putSpeed(p, "v_c", "speed in the choke", "Q / A_c", z.Q/Ac, continuity)
	w.vt = putSpeed(p, "v_t", "speed at the top of the sprue", "Q / A_t", z.Q/w.At, continuity)
	w.vs = putSpeed(p, "v_s", "speed at the foot of the sprue", "Q / A_s", z.Q/w.As, continuity)
	w.vr = putSpeed(p, "v_r", "speed in the runners", "Q / A_r", z.Q/w.Ar, continuity)
	w.vg = putSpeed(p, "v_g", "speed at the ingates", "Q / A_g", z.Q/w.Ag, continuity)

	m := p.Number("m", "runners", float64(in.Runners.V), "1")
	kr := working.GiveOpt(p, "c_r", "height over width of a runner", in.RunnerForm, "1")
	w.wr = putLength(p, "w_r", "runner, width", "sqrt(A_r / (m * c_r))", math.Sqrt(w.Ar/(m*kr)), geometry)
	w.hr = putLength(p, "h_r", "runner, height", "c_r * w_r", kr*w.wr, geometry)
	n := p.Number("n", "ingates", float64(in.Ingates.V*in.Levels.V), "1")
	kg := working.GiveOpt(p, "c_g", "width over thickness of an ingate", in.IngateForm, "1")
	putArea(p, "A_1", "area of one ingate", "A_g / n", w.Ag/n, geometry)
	w.tg = putLength(p, "t_g", "ingate, thickness", "sqrt(A_1 / c_g)", math.Sqrt(w.Ag/n/kg), geometry)
	w.wg = putLength(p, "w_g", "ingate, width", "c_g * t_g", kg*w.tg, geometry)

	bars := source.Derived("four times area over wetted edge")
	w.Ds = putLength(p, "D_s", "sprue, hydraulic diameter at its foot", "d_s", w.ds, source.Derived("of a round or square section its width"))
	w.Dr = putLength(p, "D_r", "runner, hydraulic diameter", "2 * w_r * h_r / (w_r + h_r)", 2*w.wr*w.hr/(w.wr+w.hr), bars)
	w.Dg = putLength(p, "D_g", "ingate, hydraulic diameter", "2 * w_g * t_g / (w_g + t_g)", 2*w.wg*w.tg/(w.wg+w.tg), bars)
	reynolds := source.Rao.Seen("formula sheet")
	w.Res = p.Step("Re_s", "Reynolds number at the foot of the sprue", z.rho*w.vs*w.Ds/z.mu, "1", "rho_m * v_s * D_s / mu_m", reynolds)
	w.Rer = p.Step("Re_r", "Reynolds number in the runners", z.rho*w.vr*w.Dr/z.mu, "1", "rho_m * v_r * D_r / mu_m", reynolds)
	w.Reg = p.Step("Re_g", "Reynolds number at the ingates", z.rho*w.vg*w.Dg/z.mu, "1", "rho_m * v_g * D_g / mu_m", reynolds)
	w.fs = p.Step("f_s", "friction factor in the sprue", friction(w.Res), "1", "max(16 / Re_s, 0.079 * pow(Re_s, -0.25))", fanning)
	w.fr = p.Step("f_r", "friction factor in the runners", friction(w.Rer), "1", "max(16 / Re_r, 0.079 * pow(Re_r, -0.25))", fanning)
	w.fg = p.Step("f_g", "friction factor in the ingates", friction(w.Reg), "1", "max(16 / Re_g, 0.079 * pow(Re_g, -0.25))", fanning)
	z.losses(p, &w)
	return w
}

// sprue sizes basin and sprue by the foot.
func (z *sizing) sprue(p *working.Paper, w *way) {
	in := z.in
	w.et = z.entry(p)
	if in.Form.V == Square {
		w.ds = putLength(p, "d_s", "sprue, side at its foot", "sqrt(A_s)", math.Sqrt(w.As), geometry)
	} else {
		w.ds = putLength(p, "d_s", "sprue, diameter at its foot", "sqrt(4 * A_s / pi)", math.Sqrt(4*w.As/math.Pi), geometry)
	}
	switch {
	case in.BasinDepth.Known():
		p.Give("h_own", "depth of metal in the basin, as stated", in.BasinDepth.V, "mm")
		w.hc = putLength(p, "h_c", "depth of metal in the basin", "h_own", float64(in.BasinDepth.V), source.Own("your own figure"))
	case in.Untapered:
		w.hc = putLength(p, "h_c", "depth of metal in the basin", "min(3 * d_s, h / 2)", math.Min(basinWidths*w.ds, z.h/2), basinSource)
	default:
		// h_c = 3 d_t with d_t = d_s (h/h_c)^¼ by the stream's own taper.
		w.hc = putLength(p, "h_c", "depth of metal in the basin", "min(pow(3 * d_s, 0.8) * pow(h, 0.2), h / 2)", math.Min(math.Pow(basinWidths*w.ds, 0.8)*math.Pow(z.h, 0.2), z.h/2), basinSource)
	}
	if in.SprueLength.Known() {
		p.Give("L_own", "length of the sprue, as stated", in.SprueLength.V, "mm")
		w.Ls = putLength(p, "L_s", "length of the sprue", "L_own", float64(in.SprueLength.V), source.Own("your own figure"))
	} else {
		w.Ls = putLength(p, "L_s", "length of the sprue", "h - h_c", z.h-w.hc, source.Derived("its foot taken level with the ingates"))
	}
	w.ht = putLength(p, "h_t", "metal level above the sprue's foot", "h_c + L_s", w.hc+w.Ls, geometry)
	r := p.Step("r_w", "taper of the falling stream, areas top over foot", math.Sqrt(w.ht/w.hc), "1", "sqrt(h_t / h_c)", source.Groover.Memory("ch. 10, continuity"))
	switch {
	case in.Untapered:
		w.At = putArea(p, "A_t", "sprue, area at its top", "A_s", w.As, source.Derived("no taper"))
	case in.SprueTop.Known():
		p.Give("A_own", "area at the top of the sprue, as stated", in.SprueTop.V, "cm^2")
		w.At = putArea(p, "A_t", "sprue, area at its top", "A_own", float64(in.SprueTop.V), source.Own("your own figure"))
	default:
		Aq := putArea(p, "A_q", "top of the sprue that the entry does not make suck", "Q_0 * sqrt((1 + e_t) / (2 * g * h_c))", float64(z.out.StartFlow)*math.Sqrt((1+w.et)/(2*z.g*w.hc)), energy)
		w.At = putArea(p, "A_t", "sprue, area at its top", "max(r_w * A_s, A_q)", math.Max(r*w.As, Aq), source.Groover.Memory("ch. 10, continuity; wider where the loss at the entry wants it"))
	}
}

// entry puts the loss at the entry on the paper.
func (z *sizing) entry(p *working.Paper) float64 {
	switch {
	case z.in.Discharge.Known():
		return p.Number("e_t", "loss at the entry, in your coefficient", 0, "1")
	case z.in.Entry.V == Sharp:
		return p.Const("e_t", "loss of a sharp entry", 0.505, "1", mouthpiece)
	}
	c := p.Const("c_v", "velocity coefficient of a bell mouth", 0.96, "1", mouthpiece)
	return p.Step("e_t", "loss of a rounded entry", 1/(c*c)-1, "1", "1 / pow(c_v, 2) - 1", mouthpiece)
}
