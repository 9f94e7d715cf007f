package tending

import (
	"fmt"
	"math"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

var band = source.Derived("time of the pour against its window")

// judge says what the record shows.
func (j *job) judge() {
	j.readings()
	numbers := map[int]bool{}
	for _, m := range j.out.Moulds {
		numbers[m.Number] = true
		j.judgePour(m)
	}
	for i, e := range j.in.Events {
		if !e.Struck && e.Mould.Known() && !numbers[e.Mould.V] {
			j.p.Find(working.Finding{Level: working.Note, Code: "no-such-mould", Field: fmt.Sprintf("events[%d].mould", i), Source: band,
				Text: working.Say("The record names mould %v, which the plan no longer has; the entry stays, and counts for nothing.", e.Mould.V)})
		}
	}
}

// much is a loss between two readings that no longer looks like the course's.
const much = 1.5

// readings compares the latest reading with the course, and the fall between
// the last two with what the course says.
func (j *job) readings() {
	if j.out.Off.Known() {
		way := "below"
		off := j.out.Off.V
		if off >= 0 {
			way = "above"
		}
		j.p.Find(working.Finding{Level: working.Note, Code: "reading-moves-course", Field: "events", Source: scaled,
			Text: working.Say("The reading lies %v %s the ladle's course; what follows goes by the reading.", quantity.TempDiff(math.Abs(float64(off))), way)})
	}
	m := j.meltAt(j.now)
	n := len(m.readings)
	if n < 2 {
		return
	}
	a, b := m.readings[n-2], m.readings[n-1]
	from, okA := j.of(a.at - m.full)
	to, okB := j.of(b.at - m.full)
	const least = 5 // K: less is within what a thermometer of the shop errs by
	if lost, reckoned := a.T-b.T, from-to; okA && okB && lost > much*reckoned && lost > reckoned+least {
		j.p.Find(working.Finding{Level: working.Mind, Code: "falls-faster", Field: fmt.Sprintf("events[%d].temperature", b.event), Source: scaled,
			Text: working.Say("Between the last two readings the metal lost %v; the ladle's course says %v.", quantity.TempDiff(lost), quantity.TempDiff(reckoned)),
			Do:   working.Say("Take the windows as shorter than shown, and read again before each mould.")})
	}
}

func (j *job) judgePour(m Poured) {
	find := func(code string, text, do working.Text) {
		j.p.Find(working.Finding{Level: working.Mind, Code: code, Field: "events", Source: band, Text: text, Do: do})
	}
	goes := 0
	for _, e := range j.in.Events {
		if !e.Struck && e.What == start && e.Mould.Known() && e.Mould.V == m.Number {
			goes++
		}
	}
	if goes > 1 {
		find("poured-in-goes", working.Say("%v was poured in %v goes.", working.Capital(m.Name), goes), working.Say("Look for cold shuts where the stream broke."))
	}
	switch m.Fits {
	case early:
		find("poured-early", working.Say("%v was full in %v, %v.", working.Capital(m.Name), m.Took.V, m.Judged), working.Say("Look for sand washed in, and for entrained oxide or gas."))
	case late:
		find("poured-late", working.Say("%v took %v, %v.", working.Capital(m.Name), m.Took.V, m.Judged), working.Say("Look for laps and misruns in the thin walls."))
	}
	if m.Hot.Known() && m.High.Known() && m.Hot.V > m.High.V+1 {
		find("poured-hot", working.Say("%v was begun at %v, over its hottest of %v.", working.Capital(m.Name), m.Hot.V, m.High.V), working.Say("Look for penetration, shrinkage and coarse grain; next time let it stand."))
	}
	if m.AtEnd.Known() && m.Low.Known() && m.AtEnd.V < m.Low.V-1 {
		find("poured-cold", working.Say("%v was full at %v, under its coldest of %v.", working.Capital(m.Name), m.AtEnd.V, m.Low.V), working.Say("Look for misruns and laps; next time tap hotter or begin sooner."))
	}
}
