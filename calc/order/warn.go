package order

import (
	"fmt"
	"strings"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// little is a difference of temperature that no thermometer of the shop sees.
const little = quantity.TempDiff(0.01)

// warn says whether the order works, what breaks it, and what to do.
func (j *job) warn() {
	p, out := j.p, &j.out
	if out.Worst > little {
		j.tooCold()
	}
	if j.in.Capacity.Known() && out.Mass > j.in.Capacity.V {
		p.Find(working.Finding{Level: working.Stop, Code: "more-than-the-ladle", Field: "capacity", Source: source.Derived("sum"),
			Text: working.Say("The moulds take %v and the ladle holds %v.", out.Mass, j.in.Capacity.V), Do: j.ladles()})
	}
	for n, m := range out.Moulds {
		const long = 120 * quantity.Second
		if m.Wait > long {
			p.Find(working.Finding{Level: working.Mind, Code: "long-wait", Field: path(m.Listed-1, "high"), Source: rule,
				Text: working.Say("%v has to wait %v until the metal is down to %v.", m.Name, m.Wait, m.High), Do: j.insteadOfWaiting(n)})
		}
	}
	for i, m := range j.in.Moulds {
		quick, slow := m.Shortest.Known() && m.Pouring < m.Shortest.V, m.Longest.Known() && m.Pouring > m.Longest.V
		if !quick && !slow {
			continue
		}
		text := working.Say("%v is to be poured in %v, which is under its shortest, %v.", j.names[i], m.Pouring, m.Shortest.V)
		if slow {
			text = working.Say("%v is to be poured in %v, which is over its longest, %v.", j.names[i], m.Pouring, m.Longest.V)
		}
		p.Find(working.Finding{Level: working.Mind, Code: "outside-its-band", Field: path(i, "pouring"), Source: source.Derived("pouring time against its band"),
			Text: text, Do: working.Say("Plan it with a pouring time between the two, or look them up again.")})
	}
	if !out.Proved {
		p.Find(working.Finding{Level: working.Note, Code: "order-by-rule", Field: "moulds", Source: source.Derived("Jackson's rule with breaks"),
			Text: working.Say("With more than %v moulds the order is found by rule. Its worst mould is %v too cold; no order can do better than %v.", exactUpTo, out.Worst, out.Bound)})
	}
}

// insteadOfWaiting is what spares a wait.
func (j *job) insteadOfWaiting(n int) working.Text {
	if n == 0 && j.out.StartHigh.Known() {
		return working.Say("Begin with the ladle at %v.", j.out.StartHigh.V)
	}
	return working.Say("Add clean cold metal of the same kind to the ladle, or pour it from a second, cooler one.")
}

// tooCold names the mould that breaks the order.
func (j *job) tooCold() {
	p, out := j.p, &j.out
	worst := out.Moulds[0]
	for _, m := range out.Moulds {
		if m.Short > worst.Short {
			worst = m
		}
	}
	do := j.ladles()
	switch {
	case out.StartLow.Known() && out.StartLow.V > out.Start && out.StartLow.V <= mostStart:
		do = working.Say("Begin with the ladle at %v or hotter. If that cannot be: %v", out.StartLow.V, j.ladlesText())
	case !out.StartLow.Known():
		do = working.Say("No temperature is right for all of them. %v", j.ladlesText())
	}
	p.Find(working.Finding{Level: working.Stop, Code: "pours-too-cold", Field: path(worst.Listed-1, "low"), Source: rule,
		Text: working.Say("%v is full only when the metal is at %v, %v colder than the %v it may have, in the best order there is.", worst.Name, worst.Cold, worst.Short, worst.Low), Do: do})
}

// mostStart is the hottest that metal in a ladle is asked to be.
var mostStart = quantity.From[quantity.Temperature](1800, "degC")

func (j *job) ladles() working.Text { return working.Say("%v", j.ladlesText()) }

// ladlesText says how to part the moulds over ladles.
func (j *job) ladlesText() string {
	if !j.out.Ladles.Known() {
		return j.hopeless()
	}
	most := j.out.Ladles.V
	if most == 1 {
		return "One ladle begun at this temperature does it."
	}
	parts := make([]string, most)
	for _, m := range j.out.Moulds {
		k := m.Ladle.V - 1
		if parts[k] != "" {
			parts[k] += ", "
		}
		parts[k] += m.Name
	}
	for k := range parts {
		parts[k] = fmt.Sprintf("%d: %s", k+1, parts[k])
	}
	return fmt.Sprintf("Fill or reheat the ladle %d times (%s).", most, strings.Join(parts, "; "))
}

// hopeless names the mould that no ladle of this temperature can fill.
func (j *job) hopeless() string {
	for n, i := range j.found {
		if j.l.inOrder(j.found[n:n+1]) < -1e-9 {
			return fmt.Sprintf("%s cannot be filled inside its window even alone: begin hotter, or pour it faster.", j.names[i])
		}
	}
	return "One of the moulds takes more metal than the ladle holds."
}
