package plan

import (
	"math"
	"strconv"

	"pourwright/calc/form"
	"pourwright/calc/ladle"
	"pourwright/calc/ladleheat"
	"pourwright/calc/order"
	"pourwright/calc/quantity"
	"pourwright/calc/reply"
	"pourwright/calc/tending"
)

// Side is the furnace side of a plan: its record followed with what the
// stations know of the pour.
type Side struct {
	*Station
	// Read are the faults of the whole document.
	Read form.Faults
}

// Furnace works a plan through and follows its record, with its steps if
// steps says so of "record". What the stations do not answer stays unknown
// there too, and is listed as wanted.
func (d *Desk) Furnace(doc Document, decoded form.Faults, steps func(station string) bool) Side {
	r := d.start(doc, decoded, steps)
	r.work()
	return Side{r.record(), decoded}
}

// record fills the calculator of the furnace side from the stations. It is no
// station of the plan: nothing else hangs on it.
func (r *run) record() *Station {
	s := &Station{Key: "record", Title: "Record of the pour", Faults: r.decoded["record"], Paper: r.paper("record"), memory: r.memory, linked: true}
	in := tending.Input{Events: r.doc.Record.Events}
	if heat := r.got.heat; r.got.hasHeat {
		fillOpt(s, &in.Tap, "tap", heat.TapNeeded.V, heat.TapNeeded.Known(), "ladleheat", "Tap at")
		fillOpt(s, &in.Constant, "time_constant", heat.Constant.V, heat.Constant.Known() && heat.Constant.V >= 60 && heat.Constant.V <= 36e6, "ladleheat", "Time constant of the loss")
		around := r.doc.LadleHeat.Surroundings
		fillOpt(s, &in.Surroundings, "surroundings", around.V, around.Known(), "ladleheat", "Surroundings")
		in.Course = courseOf(heat)
		link(s, "course", heat.Filled, "ladleheat", "Most likely course of the metal")
	}
	fillOpt(s, &in.Liquidus, "liquidus", r.got.metal.Liquidus, r.got.hasMetal, "metal", "Liquidus")
	in.Moulds = r.tended(s)
	calculate(s, true, in, tending.Tend)
	return s
}

// courseOf is the likeliest course of the ladle. Metal that loses next to
// nothing must not seem to gain by a rounding, nor fall below the air.
func courseOf(heat ladleheat.Output) []tending.Point {
	var out []tending.Point
	if len(heat.Curves) == 0 {
		return nil
	}
	coldest := math.Inf(1)
	for _, c := range heat.Curves[0].Points {
		if n := len(out); n > 0 && c.X <= float64(out[n-1].At.V) {
			continue
		}
		coldest = math.Min(coldest, c.Y)
		out = append(out, tending.Point{At: quantity.Some(quantity.Time(c.X)), Temperature: quantity.Temperature(coldest)})
	}
	return out
}

// tended are the moulds in the order of pouring; a plan without an order has
// the one. Of a mould in the order that the plan is made for, the plan knows how
// quickly and how slowly it may be poured where the order does not say.
func (r *run) tended(s *Station) []tending.Mould {
	var out []tending.Mould
	if r.got.hasOrder {
		own := -1
		for i, m := range r.got.order.Moulds {
			listed := r.doc.Order.Moulds[m.Listed-1]
			out = append(out, tending.Mould{Name: m.Name, Number: quantity.Some(m.Listed), Ladle: m.Ladle,
				Low: quantity.Some(m.Low), High: quantity.Some(m.High), Target: quantity.Some(listed.Pouring),
				Shortest: listed.Shortest, Longest: listed.Longest})
			if own < 0 && r.planned(listed) && !listed.Shortest.Known() && !listed.Longest.Known() {
				own = i
			}
		}
		s.Linked = append(s.Linked, Linked{"record.moulds", "order", "Moulds in their order", strconv.Itoa(len(out))})
		if own >= 0 {
			r.band(&out[own])
		}
	} else {
		m := tending.Mould{Name: "the mould"}
		switch {
		case r.got.hasHeat:
			m.Low, m.High = quantity.Some(r.got.heat.Low), quantity.Some(r.got.heat.High)
		case r.got.hasMetal && r.got.metal.PourHigh > r.got.metal.PourTemperature:
			m.Low, m.High = quantity.Some(r.got.metal.PourTemperature), quantity.Some(r.got.metal.PourHigh)
		}
		if r.got.hasPour {
			m.Target = r.got.pour.Reckoned
		}
		r.band(&m)
		out = []tending.Mould{m}
	}
	r.tips(out)
	return out
}

// planned says that a mould of the order is the one that the plan is made for:
// it takes as much metal, within a twentieth.
func (r *run) planned(m order.Mould) bool {
	return r.got.hasWeight && math.Abs(float64(m.Mass-r.got.weight.Poured)) <= float64(r.got.weight.Poured)/20
}

// band is the window of the pouring time, where it is one.
func (r *run) band(m *tending.Mould) {
	p := r.got.pour
	if !r.got.hasPour || p.Shortest.Known() && p.Longest <= p.Shortest.V {
		return
	}
	m.Shortest, m.Longest = p.Shortest, quantity.Some(p.Longest)
	if p.LongestUtmost > p.Longest {
		m.Utmost = quantity.Some(p.LongestUtmost)
	}
}

// tips works out how the ladle is tipped for each mould, one after the other
// from the same ladleful: what the ladle's own sheet says of one mould, asked
// again with what is left in the ladle.
func (r *run) tips(moulds []tending.Mould) {
	if !r.got.hasLadle {
		return
	}
	if !r.got.hasOrder {
		tip(&moulds[0], r.got.ladle)
		return
	}
	in := r.ladleInput(&Station{Key: "ladle"})
	last, left := 0, quantity.Mass(0)
	for i := range moulds {
		if l := moulds[i].Ladle.Or(1); l != last {
			last, left = l, r.ladleful(in, l, moulds)
		}
		m := r.doc.Order.Moulds[moulds[i].Number.V-1]
		in.Fill, in.InLadle = quantity.Some(ladle.FillStated), left
		in.Metal, in.Pace, in.PourTime = m.Mass, quantity.Some(ladle.PaceByTime), m.Pouring
		if out, err := ladle.Tip(in, nil); err == nil {
			tip(&moulds[i], out)
		}
		left -= m.Mass
	}
}

// ladleful is what goes into the ladle: what was stated, or what its moulds
// take and the heel.
func (r *run) ladleful(in ladle.Input, l int, moulds []tending.Mould) quantity.Mass {
	if in.Fill.Or(ladle.FillForPour) != ladle.FillForPour {
		return r.got.ladle.Metal
	}
	sum := in.Heel.Or(0)
	for _, m := range moulds {
		if m.Ladle.Or(1) == l {
			sum += r.doc.Order.Moulds[m.Number.V-1].Mass
		}
	}
	return sum
}

// tip takes the tilt against time over, as far as the ladle pours it.
func tip(m *tending.Mould, out ladle.Output) {
	m.Lip = out.LipTilt
	if len(out.TiltChart) == 0 {
		return
	}
	for _, c := range out.TiltChart[0].Points {
		if n := len(m.Tilt); n > 0 && c.X <= float64(m.Tilt[n-1].At.V) {
			continue
		}
		m.Tilt = append(m.Tilt, tending.Tilt{At: quantity.Some(quantity.Time(c.X)), Tilt: quantity.Some(quantity.Angle(c.Y))})
	}
}

// Write appends the furnace side as the door's JSON: a station as in a plan.
func (s Side) Write(w *reply.Writer) {
	w.Raw(`{"ok":true,"faults":`)
	w.Faults(s.Read)
	w.Key("furnace")
	s.write(w)
	w.Raw("}")
}
