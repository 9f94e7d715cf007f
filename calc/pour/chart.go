package pour

import (
	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// chart draws the rules' times over the window, and below them the time
// reckoned with.
func (c *pouring) chart() {
	b := working.Bars{Label: "Pouring time and its window", Axis: working.Axis{Label: "Pouring time", Kind: quantity.Time(0).Kind()}}
	for _, r := range c.out.Rules {
		switch {
		case r.Low.Known() && r.High.Known():
			b.Rows = append(b.Rows, working.Bar{Name: r.Name, Kind: "rule", From: float64(r.Low.V), To: float64(r.High.V)})
		case r.Time.Known():
			b.Rows = append(b.Rows, working.Bar{Name: r.Name, Kind: "rule", From: float64(r.Time.V), To: float64(r.Time.V)})
		}
	}
	if t := c.out.Reckoned; t.Known() {
		b.Rows = append(b.Rows, working.Bar{Name: "Reckoned with", Kind: "time", From: float64(t.V), To: float64(t.V)})
	}
	if c.long > c.short {
		b.Bands = []working.Band{{Label: "Window", Low: c.short, High: c.long}}
	}
	c.out.Chart = b
}
