package tending

import (
	"fmt"
	"math"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

var window = source.Derived("begun at the hottest or below, full at the coldest or above")

// moulds answers for every mould: its window, and how it was poured.
func (j *job) moulds() {
	for i, m := range j.in.Moulds {
		out := Poured{
			Name: m.Name, Number: m.Number.Or(i + 1), Ladle: m.Ladle.V, State: ahead,
			Low: m.Low, High: m.High, Target: m.Target, Shortest: m.Shortest, Longest: m.Longest, Utmost: m.Utmost, Lip: m.Lip,
		}
		if out.Name == "" {
			out.Name = fmt.Sprintf("Mould %d", out.Number)
		}
		p := j.p.Sub(fmt.Sprintf("moulds[%d]", i))
		give(p, "t_p", "pouring time to aim for", m.Target)
		give(p, "t_s", "shortest", m.Shortest)
		give(p, "t_l", "longest", m.Longest)
		j.opening(p, &out)
		j.poured(p, &out)
		out.tip(m.Tilt)
		if out.State == pouring {
			j.open = i
		}
		j.out.Moulds = append(j.out.Moulds, out)
	}
}

func give(p *working.Paper, symbol, what string, t quantity.Opt[quantity.Time]) {
	if t.Known() {
		working.GiveOpt(p, symbol, what, t, "s")
	}
}

// opening is when the mould may be begun, and by when it must be begun and full.
func (j *job) opening(p *working.Paper, out *Poured) {
	if out.High.Known() {
		p.Give("T_h", "hottest to pour", out.High.V, "degC")
		if t, ok := j.reaches(p, "h", "t_o", "metal down to the hottest to pour", quantity.In(out.High.V, "degC")); ok {
			out.Opens = quantity.Some(quantity.Time(t))
		}
	}
	if !out.Low.Known() {
		return
	}
	p.Give("T_c", "coldest to pour", out.Low.V, "degC")
	t, ok := j.reaches(p, "c", "t_c", "metal down to the coldest to pour", quantity.In(out.Low.V, "degC"))
	if !ok {
		return
	}
	out.FullBy = quantity.Some(quantity.Time(t))
	out.Cold = t <= j.metal.full
	if !out.Target.Known() {
		return
	}
	begin := p.Step("t_x", "latest to begin", math.Max(t-float64(out.Target.V), j.metal.full), "s", "max(t_c - t_p, f_n)", window)
	out.BeginBy = quantity.Some(quantity.Time(begin))
	out.Cold = out.Cold || begin <= j.metal.full
}

// reaches is when the metal in hand is down to T, °C, in s since tapping; the
// moment the ladle was full, where it was from the first. T is on the paper as
// T_ and the tag.
func (j *job) reaches(p *working.Paper, tag, symbol, what string, T float64) (float64, bool) {
	m := j.metal
	if !m.ok || T <= m.ambient {
		return 0, false
	}
	X := m.ambient + (T-m.ambient)/m.k
	u, past, ok := m.when(X)
	if !ok {
		return 0, false
	}
	p.Step("X_"+tag, "the same on the ladle's course", X, "degC", "T_a + (T_"+tag+" - T_a) / k_n", scaled)
	if past {
		end, last := m.end()
		p.Number("u_z", "end of the course", end, "s")
		p.Number("T_z", "course at its end", last, "degC")
		u = p.Step("u_"+tag, "time until then, since the ladle was full", u, "s", "u_z + tau * ln((T_z - T_a) / (X_"+tag+" - T_a))", decay)
	} else {
		u = p.Solve("u_"+tag, "time until then, since the ladle was full", u, "s", "read back from the ladle's course, straight lines between its points; its beginning, where it is below from the first", []string{"X_" + tag}, course)
	}
	return p.Step(symbol, what, m.full+u, "s", "f_n + u_"+tag, elapsed), true
}

// poured is how the mould was poured, as far as it was. Of several goes the
// first beginning and the last end count.
func (j *job) poured(p *working.Paper, out *Poured) {
	begun, ended := -1.0, -1.0
	for _, e := range j.in.Events {
		if e.Struck || e.Mould.V != out.Number || !e.Mould.Known() {
			continue
		}
		switch e.What {
		case start:
			if begun < 0 {
				begun = float64(e.At.V)
			}
			ended, out.State = -1, pouring
		case stop:
			if begun >= 0 {
				ended, out.State = float64(e.At.V), full
			}
		}
	}
	if begun < 0 {
		return
	}
	p.Number("t_b", "begun", begun, "s")
	out.Begun = quantity.Some(quantity.Time(begun))
	out.Hot, _ = j.ladleful(p, "b", begun).tell(p, "b", "metal as it was begun", begun, "t_b")
	if ended < 0 {
		return
	}
	p.Number("t_e", "full", ended, "s")
	out.Ended = quantity.Some(quantity.Time(ended))
	out.AtEnd, _ = j.ladleful(p, "e", ended).tell(p, "e", "metal as it was full", ended, "t_e")
	took := p.Step("t_w", "poured in", ended-begun, "s", "t_e - t_b", elapsed)
	out.Took = quantity.Some(quantity.Time(took))
	out.fit()
}

// The words for a pour against its band.
const (
	early = "early"
	good  = "good"
	late  = "late"
)

// fit judges the time of a pour against its band.
func (m *Poured) fit() {
	took := m.Took.V
	switch {
	case m.Shortest.Known() && took < m.Shortest.V:
		m.Fits, m.Judged = early, working.Say("%v under its shortest, %v", m.Shortest.V-took, m.Shortest.V)
	case m.Longest.Known() && took > m.Longest.V:
		m.Fits, m.Judged = late, working.Say("%v over its longest, %v", took-m.Longest.V, m.Longest.V)
	case m.Shortest.Known() && m.Longest.Known():
		m.Fits, m.Judged = good, working.Say("between its shortest, %v, and its longest, %v", m.Shortest.V, m.Longest.V)
	case m.Longest.Known():
		m.Fits, m.Judged = good, working.Say("under its longest, %v; its shortest is not known", m.Longest.V)
	case m.Target.Known():
		m.Judged = working.Say("the time to aim for was %v; how far it may stray is not known", m.Target.V)
	}
}
