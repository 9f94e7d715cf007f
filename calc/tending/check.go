package tending

import (
	"fmt"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// nearest is how near to the surroundings a temperature may come.
const nearest = 1

// consistent checks what one field alone cannot tell.
func consistent(in Input) form.Faults {
	faults := eventFaults(in)
	add := func(field, label string, q quantity.Any, why working.Text) {
		faults = append(faults, form.Fault{Field: field, Label: label, Value: quantity.Text(q), Why: why})
	}
	wanted := func(field, label string) {
		faults = append(faults, form.Fault{Field: field, Label: label, Missing: true, Why: working.Say("not filled in yet")})
	}
	cold := in.Surroundings.V + nearest
	for i, c := range in.Course {
		at := fmt.Sprintf("course[%d].", i)
		switch {
		case !c.At.Known():
			wanted(at+"at", "Since the ladle was full")
		case i > 0 && c.At.V <= in.Course[i-1].At.V:
			add(at+"at", "Since the ladle was full", c.At.V, working.Say("%v does not come after the point before it, at %v", c.At.V, in.Course[i-1].At.V))
		case i > 0 && c.Temperature > in.Course[i-1].Temperature:
			add(at+"temperature", "Temperature of the metal", c.Temperature, working.Say("%v is hotter than the point before it, %v; metal in a ladle only cools", c.Temperature, in.Course[i-1].Temperature))
		case c.Temperature < cold:
			add(at+"temperature", "Temperature of the metal", c.Temperature, working.Say("%v is not above the surroundings at %v", c.Temperature, in.Surroundings.V))
		}
	}
	numbers := map[int]bool{}
	for i, m := range in.Moulds {
		at := fmt.Sprintf("moulds[%d].", i)
		n := m.Number.Or(i + 1)
		if numbers[n] {
			faults = append(faults, form.Fault{Field: at + "number", Label: "Number", Value: fmt.Sprint(n), Why: working.Say("two moulds have the number %v", n)})
		}
		numbers[n] = true
		if m.Low.Known() && m.Low.V < cold {
			add(at+"low", "Coldest to pour", m.Low.V, working.Say("%v is not above the surroundings at %v", m.Low.V, in.Surroundings.V))
		}
		if m.High.Known() && m.High.V < cold {
			add(at+"high", "Hottest to pour", m.High.V, working.Say("%v is not above the surroundings at %v", m.High.V, in.Surroundings.V))
		}
		if m.Low.Known() && m.High.Known() && m.High.V <= m.Low.V {
			add(at+"high", "Hottest to pour", m.High.V, working.Say("the hottest to pour, %v, must be above the coldest, %v", m.High.V, m.Low.V))
		}
		if m.Shortest.Known() && m.Longest.Known() && m.Longest.V <= m.Shortest.V {
			add(at+"longest", "Longest", m.Longest.V, working.Say("the longest, %v, must be over the shortest, %v", m.Longest.V, m.Shortest.V))
		}
		for k, s := range m.Tilt {
			here := fmt.Sprintf("%stilt[%d].", at, k)
			switch {
			case !s.At.Known():
				wanted(here+"at", "Since the flow began")
			case !s.Tilt.Known():
				wanted(here+"tilt", "Tilt")
			case k > 0 && s.At.V <= m.Tilt[k-1].At.V:
				add(here+"at", "Since the flow began", s.At.V, working.Say("%v does not come after the point before it, at %v", s.At.V, m.Tilt[k-1].At.V))
			case k > 0 && s.Tilt.V < m.Tilt[k-1].Tilt.V:
				add(here+"tilt", "Tilt", s.Tilt.V, working.Say("%v is less than the point before it, %v; a ladle is not tipped back while it pours", s.Tilt.V, m.Tilt[k-1].Tilt.V))
			}
		}
	}
	return faults
}

// eventFaults checks the record: times that are wanted, in their order.
func eventFaults(in Input) form.Faults {
	var faults form.Faults
	add := func(i int, field, label string, q quantity.Any, why working.Text) {
		faults = append(faults, form.Fault{Field: fmt.Sprintf("events[%d].%s", i, field), Label: label, Value: quantity.Text(q), Why: why})
	}
	wanted := func(i int, field, label string) {
		faults = append(faults, form.Fault{Field: fmt.Sprintf("events[%d].%s", i, field), Label: label, Missing: true, Why: working.Say("not filled in yet")})
	}
	last := quantity.Time(0)
	for i, e := range in.Events {
		if e.Struck || e.What != tapped && e.What != reading && e.What != start && e.What != stop {
			continue
		}
		if !e.At.Known() {
			wanted(i, "at", "Since tapping")
			continue
		}
		if e.At.V < last {
			add(i, "at", "Since tapping", e.At.V, working.Say("%v is before the entry above it, at %v", e.At.V, last))
		}
		last = e.At.V
		if (e.What == start || e.What == stop) && !e.Mould.Known() {
			wanted(i, "mould", "Mould")
		}
		if e.What != reading {
			continue
		}
		switch {
		case !e.Temperature.Known():
			wanted(i, "temperature", "Temperature")
		case e.Temperature.V < in.Surroundings.V+nearest:
			add(i, "temperature", "Temperature", e.Temperature.V, working.Say("%v is not above the surroundings at %v", e.Temperature.V, in.Surroundings.V))
		}
	}
	return faults
}
