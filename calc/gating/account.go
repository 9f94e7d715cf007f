package gating

import (
	"fmt"
	"math"
	"strings"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// losses takes the toll of the whole way and settles K.
func (z *sizing) losses(p *working.Paper, w *way) {
	in, at := z.in, z.chokeAt()
	t := &toll{p: p, g: z.g}
	p.Const("e_x", "speed head counted once", 1, "1", energy)
	if in.Discharge.Known() {
		C := float64(in.Discharge.V)
		t.take("Lost by your coefficient", 1/(C*C)-1, "1 / pow(C_own, 2) - 1", "v_c", w.vc, source.Own("your own figure"))
		t.take("Speed in the choke", 1, "e_x", "v_c", w.vc, energy)
		w.K = p.Step("K", "losses on the speed of the choke", 1/(C*C), "1", "1 / pow(C_own, 2)", source.Own("your own figure"))
		w.sum, w.losses = t.sum, t.out
		return
	}
	t.take("Entry into the sprue", w.et, "e_t", "v_t", w.vt, mouthpiece)
	if in.Untapered {
		t.take("Friction in the sprue", 4*w.fs*w.Ls/w.Ds, "4 * f_s * L_s / D_s", "v_s", w.vs, fanning)
	} else {
		t.take("Friction in the sprue", 4*w.fs/w.Ds*4/9*w.ht*(1-math.Pow(w.hc/w.ht, 2.25)), "4 * f_s / D_s * 4 / 9 * h_t * (1 - pow(h_c / h_t, 2.25))", "v_s", w.vs, source.Derived("friction along the stream's own taper"))
	}
	t.fittings(in.Fittings, InSprue, "v_s", w.vs)
	if at == atSprue {
		w.sumUp, w.up = t.sum, len(t.names)
	}
	z.foot(p, w, t)
	if at == atOwn {
		w.sumUp, w.up = t.sum, len(t.names)
		t.between("the runner", "A_c", "A_r", w.Ac, w.Ar, "v_c", "v_r", w.vc, w.vr)
	}
	if at == atRunner {
		w.sumUp, w.up = t.sum, len(t.names)
	}
	if in.RunnerLength.Known() {
		L := working.GiveOpt(p, "L_r", "length of one runner", in.RunnerLength, "m")
		t.take("Friction in the runner", 4*w.fr*L/w.Dr, "4 * f_r * L_r / D_r", "v_r", w.vr, fanning)
	}
	t.fittings(in.Fittings, InARunner, "v_r", w.vr)
	if in.Branch.V == Turning {
		p.Const("theta_q", "quarter turn", 90, "deg", source.Derived("a right angle"))
		t.take("Turn into the ingates", elbow(math.Pi/2), "0.9457 * pow(sin(theta_q / 2), 2) + 2.047 * pow(sin(theta_q / 2), 4)", "v_g", w.vg, weisbachElbow)
	}
	t.between("the ingates", "A_r", "A_g", w.Ar, w.Ag, "v_r", "v_g", w.vr, w.vg)
	if in.IngateLength.Known() {
		L := working.GiveOpt(p, "L_g", "length of an ingate", in.IngateLength, "m")
		t.take("Friction in the ingates", 4*w.fg*L/w.Dg, "4 * f_g * L_g / D_g", "v_g", w.vg, fanning)
	}
	t.fittings(in.Fittings, InAnIngate, "v_g", w.vg)
	if at == atGates {
		w.sumUp, w.up = t.sum, len(t.names)
	}
	t.take("Speed into the mould", 1, "e_x", "v_g", w.vg, energy)
	w.sum = t.sum
	w.K = math.Max(1+w.sumUp/(w.vc*w.vc), w.sum/(w.vc*w.vc))
	w.losses, w.names = t.out, t.names
}

// foot takes the way from the sprue's foot into the runner or its choke.
func (z *sizing) foot(p *working.Paper, w *way, t *toll) {
	next, area, speed, v, to := "A_r", w.Ar, "v_r", w.vr, "the runner"
	if z.own {
		next, area, speed, v, to = "A_c", w.Ac, "v_c", w.vc, "the choke"
	}
	if !z.in.Well.V {
		p.Const("theta_q", "quarter turn", 90, "deg", source.Derived("a right angle"))
		t.take("Turn at the foot of the sprue", elbow(math.Pi/2), "0.9457 * pow(sin(theta_q / 2), 2) + 2.047 * pow(sin(theta_q / 2), 4)", speed, v, weisbachElbow)
		t.between(to, "A_s", next, w.As, area, "v_s", speed, w.vs, v)
		return
	}
	p.Const("k_w", "well over the sprue's foot, in area", wellArea, "1", wellSource)
	Aw := putArea(p, "A_w", "area of the well", "k_w * A_s", wellArea*w.As, wellSource)
	vw := putSpeed(p, "v_w", "speed in the well", "Q / A_w", z.Q/Aw, continuity)
	t.between("the well", "A_s", "A_w", w.As, Aw, "v_s", "v_w", w.vs, vw)
	t.between(to, "A_w", next, Aw, area, "v_w", speed, vw, v)
}

// account puts K on the paper: the free jet of the choke or the whole way,
// whichever lets less through, and what is then left over.
func account(p *working.Paper, w *way, g float64) {
	Ku := p.Step("K_u", "losses up to the choke, on its speed", w.sumUp/(w.vc*w.vc), "1", "("+strings.Join(w.names[:w.up], " + ")+") * 2 * g / pow(v_c, 2)", energy)
	Kt := p.Step("K_t", "the whole way run full, on the speed of the choke", w.sum/(w.vc*w.vc), "1", "("+strings.Join(w.names, " + ")+") * 2 * g / pow(v_c, 2)", energy)
	note := "the whole way runs full"
	if 1+Ku > Kt {
		note = "the choke's free jet brings less than the way behind it could carry"
	}
	p.StepNote("K", "losses on the speed of the choke", w.K, "1", "max(1 + K_u, K_t)", energy, note)
	if 1+Ku > Kt {
		sub := p.Sub(fmt.Sprintf("losses[%d]", len(w.losses)))
		rest := sub.Step("h_l", "head of the jet that the way behind the choke does not use up", (1+Ku-Kt)*w.vc*w.vc/(2*g)*1000, "mm", "(1 + K_u - K_t) * pow(v_c, 2) / (2 * g)", energy)
		w.losses = append(w.losses, Loss{Name: "Spent by the free jet behind the choke", Head: quantity.From[quantity.Length](rest, "mm")})
	}
}
