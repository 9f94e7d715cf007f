package tending

import (
	"math"
	"slices"

	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// timetable says what to do from now on, if nothing else happens.
func (j *job) timetable() {
	switch {
	case j.out.Closed:
		j.do(j.now, working.Note, 0, working.Say("The record is closed."))
	case len(j.melts) == 0:
		if j.in.Tap.Known() {
			j.do(j.now, working.Note, 0, working.Say("Tap at %v. Touch Ladle full as the ladle comes away.", j.in.Tap.V))
		} else {
			j.do(j.now, working.Note, 0, working.Say("Touch Ladle full as the ladle comes away."))
		}
	case j.open >= 0:
		j.filling(j.out.Moulds[j.open])
	default:
		j.toPour()
	}
}

// do adds a line; the same line as before is not said twice.
func (j *job) do(from float64, level working.Level, mould int, text working.Text) {
	s := Step{From: quantity.Time(from), Do: text, Level: level.String()}
	if mould > 0 {
		s.Mould = quantity.Some(mould)
	}
	if n := len(j.out.Next); n > 0 {
		last := j.out.Next[n-1]
		if last.Level == s.Level && last.Do.String() == text.String() {
			return
		}
	}
	j.out.Next = append(j.out.Next, s)
}

// filling is the timetable while a mould is being poured: changes of what to
// say come at the ends of its band and as the metal gets too cold.
func (j *job) filling(m Poured) {
	begun := float64(m.Begun.V)
	type change struct {
		at    float64
		level working.Level
		text  working.Text
	}
	list := []change{{j.now, working.Note, working.Say("Keep the basin full.")}}
	if m.Longest.Known() {
		list = append(list, change{begun + float64(m.Longest.V), working.Mind, working.Say("Over its longest, %v. Expect laps.", m.Longest.V)})
	}
	if m.Utmost.Known() {
		list = append(list, change{begun + float64(m.Utmost.V), working.Stop, working.Say("Over the utmost, %v. It will not fill; ask the person in charge.", m.Utmost.V)})
	}
	if m.FullBy.Known() {
		list = append(list, change{float64(m.FullBy.V), working.Mind, working.Say("The metal is under %v, its coldest.", m.Low.V)})
	}
	slices.SortStableFunc(list, func(a, b change) int {
		switch {
		case a.at < b.at:
			return -1
		case a.at > b.at:
			return 1
		}
		return 0
	})
	for _, c := range list {
		j.do(math.Max(c.at, j.now), c.level, m.Number, c.text)
	}
}

// toPour is the timetable between two pours: at every moment, the first mould
// in order that the metal is right for.
func (j *job) toPour() {
	var left []Poured
	moments := []float64{j.now}
	for _, m := range j.out.Moulds {
		if m.State != ahead {
			continue
		}
		left = append(left, m)
		for _, t := range []quantity.Opt[quantity.Time]{m.Opens, m.BeginBy, m.FullBy} {
			if t.Known() && float64(t.V) > j.now {
				moments = append(moments, float64(t.V))
			}
		}
	}
	if len(left) == 0 {
		j.do(j.now, working.Note, 0, working.Say("Every mould is poured. Pig what is left, set the ladle down, and close the record."))
		return
	}
	slices.Sort(moments)
	for _, t := range moments {
		j.turn(t, left)
	}
}

// turn says whose turn it is at a moment.
func (j *job) turn(t float64, left []Poured) {
	first := left[0]
	if first.Ladle > len(j.melts) {
		j.do(t, working.Note, first.Number, working.Say("Fill the ladle again for %v. Touch Ladle full as it comes away.", first.Name))
		return
	}
	for _, m := range left {
		if m.waits(t) && !m.over(t) && m.Ladle <= len(j.melts) {
			j.do(t, working.Note, m.Number, working.Say("Wait: %v takes %v at the most.", m.Name, m.High.V))
			return
		}
		if !m.over(t) && m.Ladle <= len(j.melts) {
			j.do(t, working.Note, m.Number, j.ready(m))
			return
		}
	}
	// Too late for all of them.
	j.do(t, working.Stop, first.Number, working.Say("Too cold for %v: it would be under %v before it is full. Pig the metal, or ask the person in charge.", first.Name, first.Low.V))
}

// ready asks for a reading where there has been none.
func (j *job) ready(m Poured) working.Text {
	if len(j.meltAt(j.now).readings) == 0 {
		return working.Say("Take a reading, then pour %v.", m.Name)
	}
	return working.Say("Pour %v.", m.Name)
}

// waits says that the metal is still too hot for the mould.
func (m Poured) waits(t float64) bool { return m.Opens.Known() && t < float64(m.Opens.V) }

// over says that it is too late to begin the mould.
func (m Poured) over(t float64) bool {
	switch {
	case m.Cold:
		return true
	case m.BeginBy.Known():
		return t >= float64(m.BeginBy.V)
	}
	return m.FullBy.Known() && t >= float64(m.FullBy.V)
}

// wanted lists what the plan does not say.
func (j *job) wanted() {
	want := func(missing bool, text, station string) {
		if missing {
			j.out.Wanted = append(j.out.Wanted, Wanted{text, station})
		}
	}
	some := func(lacks func(Mould) bool) bool { return slices.ContainsFunc(j.in.Moulds, lacks) }
	want(len(j.in.Course) == 0, "how the metal cools in the ladle", "ladleheat")
	want(len(j.in.Moulds) == 0, "the moulds", "order")
	want(some(func(m Mould) bool { return !m.Low.Known() || !m.High.Known() }), "how hot and how cold each mould may be poured", "ladleheat")
	want(some(func(m Mould) bool { return !m.Target.Known() }), "a pouring time to aim for", "pour")
	want(some(func(m Mould) bool { return m.Target.Known() && (!m.Shortest.Known() || !m.Longest.Known()) }), "how short and how long each pour may be", "pour")
	want(some(func(m Mould) bool { return len(m.Tilt) < 2 }), "the tilt of the ladle against time", "ladle")
}
