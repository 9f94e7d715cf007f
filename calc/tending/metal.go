package tending

import (
	"fmt"
	"math"
	"sort"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

var (
	decay   = source.Derived("even decay of the ladle's temperature")
	scaled  = source.Derived("what the metal has over the surroundings, scaled to go through the reading")
	course  = source.Derived("straight lines between the points of the ladle's own course")
	elapsed = source.Derived("difference of two times")
	noScale = source.Practice("without a reading the ladle's course is taken as it is")
)

// taken is a temperature that was read, °C, and when.
type taken struct {
	at, T float64
	event int
}

// melt is one ladleful: when it was full, and what was read in it.
type melt struct {
	full     float64
	readings []taken
}

// nearest is the reading nearest in time, the later of two as near; false
// where there is none.
func (m melt) nearest(t float64) (taken, bool) {
	var best taken
	found := false
	for _, r := range m.readings {
		if !found || math.Abs(r.at-t) <= math.Abs(best.at-t) {
			best, found = r, true
		}
	}
	return best, found
}

// cooling is the course of a ladleful, s and °C, by which it is known how the
// metal falls.
type cooling struct {
	at, T   []float64
	ambient float64
	tau     float64 // 0: not known
	freezes float64 // the liquidus, under which nothing is told; 0 where not known
}

// end is the last point of the course.
func (c cooling) end() (at, T float64) {
	n := len(c.at) - 1
	return c.at[n], c.T[n]
}

// place says where a time lies: between the points i-1 and i, or past the
// last; false where the course says nothing of it.
func (c cooling) place(u float64) (i int, past, ok bool) {
	n := len(c.at)
	if n == 0 || u < c.at[0] {
		return 0, false, false
	}
	if u > c.at[n-1] {
		return n, true, c.tau > 0
	}
	return max(1, sort.SearchFloat64s(c.at, u)), false, true
}

// of is the course at a time since the ladle was full.
func (c cooling) of(u float64) (float64, bool) {
	i, past, ok := c.place(u)
	switch {
	case !ok:
		return 0, false
	case past:
		end, T := c.end()
		return c.ambient + (T-c.ambient)*math.Exp(-(u-end)/c.tau), true
	case len(c.at) == 1:
		return c.T[0], true
	}
	return between(u, c.at[i-1], c.at[i], c.T[i-1], c.T[i]), true
}

// when is the first moment at which the course is down to a temperature; 0
// where it is from the first.
func (c cooling) when(T float64) (u float64, past, ok bool) {
	if len(c.at) == 0 {
		return 0, false, false
	}
	if T >= c.T[0] {
		return c.at[0], false, true
	}
	for i := 1; i < len(c.at); i++ {
		if c.T[i] <= T {
			return between(T, c.T[i-1], c.T[i], c.at[i-1], c.at[i]), false, true
		}
	}
	end, last := c.end()
	if c.tau == 0 || T <= c.ambient {
		return 0, true, false
	}
	return end + c.tau*math.Log((last-c.ambient)/(T-c.ambient)), true, true
}

func between(x, x0, x1, y0, y1 float64) float64 { return y0 + (y1-y0)*(x-x0)/(x1-x0) }

// known is a ladleful whose temperature can be told: its course, and by how
// much what it has over the surroundings is scaled.
type known struct {
	cooling
	full float64
	k    float64
	tag  string // of the symbols on the paper
	ok   bool
	// read and model are the reading and the course at its moment, where k comes
	// of the two.
	read, model quantity.Opt[quantity.Temperature]
}

// at is the metal at a time since tapping, °C.
func (m known) temperature(t float64) (float64, bool) {
	if !m.ok {
		return 0, false
	}
	T, ok := m.of(t - m.full)
	return m.ambient + m.k*(T-m.ambient), ok
}

// ladleful settles what is known of the ladleful in hand at a time, on the
// paper: f, the moment it was full, and k, the scale.
func (j *job) ladleful(p *working.Paper, tag string, t float64) known {
	m := j.meltAt(t)
	out := known{cooling: j.cooling, full: m.full, k: 1, tag: tag}
	p.Number("f_"+tag, "ladle full", m.full, "s")
	r, read := m.nearest(t)
	if !read {
		out.ok = len(j.at) > 0
		if out.ok {
			one := p.Const("k_0", "no scale", 1, "1", noScale)
			out.k = p.Step("k_"+tag, "scale of what the metal has over the surroundings", one, "1", "k_0", noScale)
		}
		return out
	}
	out.ok = true
	p.Number("r_"+tag, "read", r.at, "s")
	p.Number("R_"+tag, "reading", r.T, "degC")
	u := p.Step("u_r"+tag, "time of the reading since the ladle was full", r.at-m.full, "s", "r_"+tag+" - f_"+tag, elapsed)
	if T, ok := j.of(u); !ok || T < j.ambient+nearest {
		// Nothing to scale: the reading is where the course begins.
		out.at, out.T = []float64{u}, []float64{r.T}
		one := p.Const("k_0", "no scale", 1, "1", noScale)
		out.k = p.StepNote("k_"+tag, "scale", one, "1", "k_0", decay, "the ladle's course says nothing of this moment, so the metal is followed from the reading")
		return out
	}
	M := out.put(p, "M_r"+tag, "course at the moment of the reading", u, "u_r"+tag)
	out.k = p.Step("k_"+tag, "scale of what the metal has over the surroundings", (r.T-j.ambient)/(M-j.ambient), "1", "(R_"+tag+" - T_a) / (M_r"+tag+" - T_a)", scaled)
	out.read, out.model = celsius(r.T), celsius(M)
	return out
}

// put puts the course at a time on the paper; the time is there as symbol
// timeAs, and the course says something of it.
func (c cooling) put(p *working.Paper, symbol, what string, u float64, timeAs string) float64 {
	i, past, _ := c.place(u)
	T, _ := c.of(u)
	if past {
		end, last := c.end()
		p.Number("u_z", "end of the course", end, "s")
		p.Number("T_z", "course at its end", last, "degC")
		return p.Step(symbol, what, T, "degC", "T_a + (T_z - T_a) * exp(-("+timeAs+" - u_z) / tau)", decay)
	}
	if len(c.at) == 1 {
		return p.Lookup(symbol, what, T, "degC", course, "the one point of the course")
	}
	return p.Lookup(symbol, what, T, "degC", course, fmt.Sprintf("between %.0f °C at %.0f s and %.0f °C at %.0f s", c.T[i-1], c.at[i-1], c.T[i], c.at[i]))
}

// tell puts the metal at a time on the paper, as T_ and the tag; the time is
// there as symbol timeAs.
func (m known) tell(p *working.Paper, tag, what string, t float64, timeAs string) (T, M quantity.Opt[quantity.Temperature]) {
	if !m.ok {
		return T, M
	}
	if v, ok := m.temperature(t); !ok || v < m.freezes {
		return T, M
	}
	u := p.Step("u_"+tag, "time since the ladle was full", t-m.full, "s", timeAs+" - f_"+m.tag, elapsed)
	model := m.put(p, "M_"+tag, what+", by the ladle's course", u, "u_"+tag)
	v := p.Step("T_"+tag, what, m.ambient+m.k*(model-m.ambient), "degC", "T_a + k_"+m.tag+" * (M_"+tag+" - T_a)", scaled)
	return celsius(v), celsius(model)
}

func celsius(v float64) quantity.Opt[quantity.Temperature] {
	return quantity.Some(quantity.From[quantity.Temperature](v, "degC"))
}
