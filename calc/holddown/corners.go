package holddown

import (
	"fmt"
	"math"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// sums are the force left over and its moments about the middle of the flask,
// down positive.
type sums struct{ N, Mx, My float64 }

func (s *sums) add(f force, factor float64) {
	s.N += factor * f.f
	s.Mx += factor * f.f * f.x
	s.My += factor * f.f * f.y
}

// total adds up all forces, the metal's lift with a surge factor on it and the
// clamps to a share of what they may hold.
func (h *holding) total(surge, clamps float64) (s sums) {
	for _, f := range h.lifts {
		if f.surges {
			s.add(f, -surge)
		} else {
			s.add(f, -1)
		}
	}
	for _, f := range h.holds {
		s.add(f, 1)
	}
	for _, f := range h.clamps {
		s.add(f, clamps)
	}
	return s
}

// corners in the order of the answers: their sides along and across.
var corners = [4]struct {
	name         string
	x, y         float64
	signX, signY string
}{
	{"left, near", -1, -1, "-", "-"}, {"right, near", 1, -1, "+", "-"}, {"left, far", -1, 1, "-", "+"}, {"right, far", 1, 1, "+", "+"},
}

// at is what presses a corner, N.
func (s sums) at(i int, L, W float64) float64 {
	return s.N/4 + corners[i].x*s.Mx/(2*L) + corners[i].y*s.My/(2*W)
}

// middle is where the lift acts, metal at rest.
func (h *holding) middle() {
	L, W := float64(h.in.FlaskLength.V), float64(h.in.FlaskWidth.V)
	var s sums
	for _, f := range h.lifts {
		s.add(f, 1)
	}
	if s.N == 0 {
		return
	}
	put := func(symbol, what string, v float64) quantity.Opt[quantity.Length] {
		return quantity.Some(quantity.Length(h.p.Solve(symbol, what, v*1000, "mm", "sum of the lifts times their places over their sum; a lift without a place is taken in the middle", []string{"F_s", "L", "W"}, statics) / 1000))
	}
	h.out.LiftX = put("x_F", "middle of the lift, along the flask", math.Max(L/2+s.Mx/s.N, 0))
	h.out.LiftY = put("y_F", "middle of the lift, across the flask", math.Max(W/2+s.My/s.N, 0))
}

// corners balances the cope corner by corner.
func (h *holding) corners() {
	p, o := h.p, &h.out
	L, W := float64(h.in.FlaskLength.V), float64(h.in.FlaskWidth.V)
	surge := float64(h.in.Surge.V)
	rest, up := h.total(1, 1), h.total(surge, 1)
	put := func(symbol, what string, v float64, unit, how string) {
		p.Solve(symbol, what, v, unit, how, []string{"F_m", "F_c", "k_s", "G", "L", "W"}, statics)
	}
	const of = "sum over all forces on the cope, down positive"
	put("N_r", "force left over, metal at rest", rest.N, "N", of)
	put("M_x", "moment along the flask, metal at rest", rest.Mx, "N*m", of+", times the place from the middle")
	put("M_y", "moment across the flask, metal at rest", rest.My, "N*m", of+", times the place from the middle")
	put("N_u", "force left over, with the surge", up.N, "N", of)
	put("M_ux", "moment along the flask, with the surge", up.Mx, "N*m", of+", times the place from the middle")
	put("M_uy", "moment across the flask, with the surge", up.My, "N*m", of+", times the place from the middle")
	worst, worstUp := 0, 0
	for i, c := range corners {
		sub := p.Sub(fmt.Sprintf("corners[%d]", i))
		r := sub.Step("R", "press of the corner, metal at rest", rest.at(i, L, W), "N", "N_r / 4 "+c.signX+" M_x / (2 * L) "+c.signY+" M_y / (2 * W)", statics)
		u := sub.Step("R_u", "press of the corner, with the surge", up.at(i, L, W), "N", "N_u / 4 "+c.signX+" M_ux / (2 * L) "+c.signY+" M_uy / (2 * W)", statics)
		o.Corners = append(o.Corners, Corner{c.name,
			quantity.Force(sub.Step("R_p", "pressed shut with, metal at rest", math.Max(r, 0), "N", "max(R, 0 * R)", statics)),
			quantity.Force(sub.Step("R_o", "opened with, metal at rest", math.Max(-r, 0), "N", "max(-R, 0 * R)", statics)),
			quantity.Force(sub.Step("R_up", "pressed shut with, during the surge", math.Max(u, 0), "N", "max(R_u, 0 * R_u)", statics)),
			quantity.Force(sub.Step("R_uo", "opened with, during the surge", math.Max(-u, 0), "N", "max(-R_u, 0 * R_u)", statics))})
		if o.Corners[i].Opens > o.Corners[worst].Opens {
			worst = i
		}
		if o.Corners[i].OpensSurge > o.Corners[worstUp].OpensSurge {
			worstUp = i
		}
	}
	h.closing(up, L, W)
	h.clampUse(surge, L, W)
	h.tips(rest, up, worst, worstUp)
}

// closing is the least single weight that closes every corner in the surge,
// and where to lay it.
func (h *holding) closing(s sums, L, W float64) {
	p, o := h.p, &h.out
	a := p.Step("a_x", "twice the moment along over the length", 2*math.Abs(s.Mx)/L, "N", "2 * abs(M_ux) / L", statics)
	b := p.Step("a_y", "twice the moment across over the width", 2*math.Abs(s.My)/W, "N", "2 * abs(M_uy) / W", statics)
	w := p.Step("w_b", "least single force that closes every corner", least(a, b, s.N), "N", "max((a_x + a_y - N_u) / 3, (a_x - N_u) / 2, (a_y - N_u) / 2, -N_u, 0 * N_u)", statics)
	if !(w > 0) {
		o.Closing = quantity.Some(quantity.Mass(p.Step("m_b", "weight that closes every corner, none", 0, "kg", "w_b / g", statics)))
		return
	}
	o.Closing = quantity.Some(quantity.Mass(p.Step("m_b", "weight that closes every corner", w/h.g, "kg", "w_b / g", statics)))
	place := func(symbol, what string, M, end float64, formula string) quantity.Opt[quantity.Length] {
		return quantity.Some(quantity.Length(p.Step(symbol, what, (end/2-math.Max(math.Min(M/w, end/2), -end/2))*1000, "mm", formula, statics) / 1000))
	}
	o.ClosingX = place("x_b", "its place along the flask", s.Mx, L, "L / 2 - max(min(M_ux / w_b, L / 2), -L / 2)")
	o.ClosingY = place("y_b", "its place across the flask", s.My, W, "W / 2 - max(min(M_uy / w_b, W / 2), -W / 2)")
	if h.in.ClampLoad.Known() {
		h.clampsFor(w, "w_b")
	}
}

// least is the smallest w ≥ 0 with max(0, a − w) + max(0, b − w) ≤ N + w.
func least(a, b, N float64) float64 {
	return math.Max(math.Max((a+b-N)/3, math.Max((a-N)/2, (b-N)/2)), math.Max(-N, 0))
}

// clampUse is the share of what the given clamps may hold that closes every
// corner in the surge; unknown where there is none.
func (h *holding) clampUse(surge, L, W float64) {
	if len(h.clamps) == 0 {
		return
	}
	without, with := h.total(surge, 0), h.total(surge, 1)
	lo, hi := 0.0, 1.0
	for i := range corners {
		a := without.at(i, L, W)
		b := with.at(i, L, W) - a
		switch {
		case b > 0:
			lo = math.Max(lo, -a/b)
		case b < 0:
			hi = math.Min(hi, a/-b)
		case a < 0:
			return
		}
	}
	if lo > hi {
		return
	}
	h.out.ClampUse = quantity.Some(quantity.Ratio(h.p.Solve("u_k", "clamps loaded to", lo, "1", "the least share of the clamps' loads at which the press at every corner, which goes in proportion, is not below zero", []string{"N_u", "M_ux", "M_uy"}, statics)))
}

// hair is the share of the lift below which a corner that opens is rounding.
const hair = 1e-5

// tips finds corners that open though the cope is heavy enough as a whole.
func (h *holding) tips(rest, up sums, worst, worstUp int) {
	p, o := h.p, &h.out
	h.placesUnknown()
	gap := o.Surged * hair
	do := func() working.Text {
		return working.Say("Lay %v more on, %v from the left end and %v from the near side of the flask, or clamp it there.", o.Closing.V, o.ClosingX.V, o.ClosingY.V)
	}
	switch {
	case rest.N < 0: // it floats, and that is said already
	case o.Corners[worst].Opens > gap:
		p.Find(working.Finding{Level: working.Stop, Code: "cope-tips", Field: "weights", Source: statics,
			Text: working.Say("The cope is heavy enough as a whole, but the lift acts off the middle of the flask: the corner %s opens with %v, and metal runs out there.", corners[worst].name, o.Corners[worst].Opens), Do: do()})
	case up.N < 0: // the surge lifts it as a whole, and that is said already
	case o.Corners[worstUp].OpensSurge > gap:
		p.Find(working.Finding{Level: working.Mind, Code: "cope-tips", Field: "weights", Source: statics,
			Text: working.Say("During the surge the corner %s of the joint opens with %v, as the lift acts off the middle of the flask.", corners[worstUp].name, o.Corners[worstUp].OpensSurge), Do: do()})
	}
}

// placesUnknown says which forces are taken in the middle for want of a place.
func (h *holding) placesUnknown() {
	n := 0
	for _, s := range h.in.Surfaces {
		if !s.X.Known() || !s.Y.Known() {
			n++
		}
	}
	for _, c := range h.in.Cores {
		if !c.X.Known() || !c.Y.Known() {
			n++
		}
	}
	if n > 0 {
		h.p.Find(working.Finding{Level: working.Note, Code: "places-unknown", Field: "surfaces", Source: source.Practice("what is not placed is taken in the middle"),
			Text: working.Say("Surfaces and cores without a place: %v. They are taken in the middle of the flask, where no corner opens before the others. Give their places to know.", quantity.Number(n))})
	}
}
