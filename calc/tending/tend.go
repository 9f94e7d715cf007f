package tending

import (
	"math"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// job is one pour being followed.
type job struct {
	cooling
	in  Input
	p   *working.Paper
	out Output

	now   float64
	melts []melt
	metal known // of the ladleful in hand
	// open is the mould that is being poured, an index, or -1.
	open int
}

// Tend answers how a pour stands.
//
// Refused: a course that rises or turns back; a window without width, or not
// above the surroundings; entries of the record that are not in the order of
// their times; a reading that is not above the surroundings. What the plan does
// not say is not refused: it is listed as wanted, and what hangs on it is not
// known.
func Tend(in Input, p *working.Paper) (Output, error) {
	in, faults := form.Ready(in)
	if len(faults) == 0 {
		faults = consistent(in)
	}
	if err := faults.Err(); err != nil {
		return Output{}, err
	}
	j := &job{in: in, p: p, open: -1}
	j.out = Output{Moulds: []Poured{}, Next: []Step{}, Wanted: []Wanted{}, Trouble: cards(), InDoubt: inDoubt, Tap: in.Tap}
	j.read()
	j.settle()
	j.moulds()
	j.timetable()
	j.wanted()
	j.draw()
	j.judge()
	return j.out, nil
}

// read goes through the record: ladlefuls, readings, the moment now.
func (j *job) read() {
	p, in := j.p, j.in
	j.ambient = working.GiveOpt(p, "T_a", "surroundings", in.Surroundings, "degC")
	if in.Constant.Known() {
		j.tau = working.GiveOpt(p, "tau", "time constant of the loss", in.Constant, "s")
	}
	if in.Liquidus.Known() {
		j.freezes = working.GiveOpt(p, "T_l", "liquidus", in.Liquidus, "degC")
	}
	for _, c := range in.Course {
		j.at, j.T = append(j.at, float64(c.At.V)), append(j.T, quantity.In(c.Temperature, "degC"))
	}
	for i, e := range in.Events {
		if e.Struck {
			continue
		}
		if e.At.Known() {
			j.now = math.Max(j.now, float64(e.At.V))
		}
		switch e.What {
		case tapped:
			j.melts = append(j.melts, melt{full: float64(e.At.V)})
		case reading:
			if n := len(j.melts); n > 0 { // before the ladle is full there is nothing to correct
				j.melts[n-1].readings = append(j.melts[n-1].readings, taken{float64(e.At.V), quantity.In(e.Temperature.V, "degC"), i})
			}
		case closed:
			j.out.Closed = true
		}
	}
	if in.Now.Known() {
		j.now = float64(in.Now.V)
	}
	j.out.Ladles = len(j.melts)
}

// meltAt is the ladleful in hand at a time; before the first is full, that.
func (j *job) meltAt(t float64) melt {
	var out melt
	for i, m := range j.melts {
		if i == 0 || m.full <= t {
			out = m
		}
	}
	return out
}

// settle answers how hot the metal is.
func (j *job) settle() {
	p := j.p
	p.Number("t_n", "moment looked at", j.now, "s")
	j.out.Now = quantity.Time(j.now)
	j.metal = j.ladleful(p, "n", j.now)
	if len(j.melts) == 0 {
		return
	}
	m := j.meltAt(j.now)
	j.out.FullAt = quantity.Some(quantity.Time(m.full))
	j.out.Metal, j.out.Model = j.metal.tell(p, "n", "metal now", j.now, "t_n")
	if n := len(m.readings); n > 0 {
		last := m.readings[n-1]
		j.out.Read, j.out.ReadAt = celsius(last.T), quantity.Some(quantity.Time(last.at))
	}
	if r := j.metal.read; r.Known() {
		j.out.Off = quantity.Some(quantity.TempDiff(p.Step("d_r", "reading over the ladle's course", float64(r.V-j.metal.model.V), "K", "R_n - M_rn", scaled)))
	}
	if j.in.Liquidus.Known() {
		if t, ok := j.reaches(p, "l", "t_z", "begins to freeze in the ladle", j.freezes); ok {
			j.out.FreezesAt, j.out.Freezing = quantity.Some(quantity.Time(t)), t < j.now
		}
	}
	if !j.out.Metal.Known() {
		return
	}
	minute := p.Const("t_m", "one minute", 60, "s", elapsed)
	v := p.Step("t_v", "a minute on", j.now+minute, "s", "t_n + t_m", elapsed)
	if later, _ := j.metal.tell(p, "v", "metal a minute on", v, "t_v"); later.Known() {
		lost := p.Step("d_m", "lost in the next minute", float64(j.out.Metal.V-later.V), "K", "T_n - T_v", elapsed)
		j.out.PerMinute = quantity.Some(quantity.TempDiff(math.Max(lost, 0)))
	}
}

// draw is the metal from the ladle last full, against seconds since tapping.
func (j *job) draw() {
	j.out.Course = series("Metal", "Temperature of the metal", quantity.Temperature(0).Kind())
	m := j.metal
	if !m.ok {
		return
	}
	add := func(u float64) {
		if T, ok := m.temperature(m.full + u); ok && T >= m.freezes {
			j.out.Course.Points = append(j.out.Course.Points, working.Point{X: m.full + u, Y: T + 273.15})
		}
	}
	for _, u := range m.at {
		add(u)
	}
	const step, last = 30, 3600
	if end, _ := m.end(); m.tau > 0 {
		for s := step; s <= last; s += step {
			add(end + float64(s))
		}
	}
	if z := j.out.FreezesAt; z.Known() && len(j.out.Course.Points) > 0 && float64(z.V) > j.out.Course.Points[len(j.out.Course.Points)-1].X {
		j.out.Course.Points = append(j.out.Course.Points, working.Point{X: float64(z.V), Y: j.freezes + 273.15})
	}
}

// series is a curve against seconds since a beginning, as a bare number: what
// follows it keeps time in seconds.
func series(label, what string, kind *quantity.Kind) working.Series {
	return working.Series{Label: label, X: working.Axis{Label: "Seconds", Kind: quantity.Number(0).Kind()}, Y: working.Axis{Label: what, Kind: kind}}
}
