package ladleheat

import (
	"pourwright/calc/alloy"
	"pourwright/calc/figure"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// job is one question being answered.
type job struct {
	in    Input
	metal *alloy.Alloy
	p     *working.Paper
	out   Output

	preheat figure.Of[quantity.Temperature]
	drop    figure.Of[quantity.TempDiff]
}

// Lose answers how the metal in a ladle cools, how long it stays fit to pour,
// and how hot it must be tapped for the last mould.
//
// Refused: metal tapped at or below its liquidus; a window at or below the
// liquidus, or without width; surroundings or a lining not colder than the
// coldest metal; a second reading that is not below the first; a diameter in
// which the metal would lie thinner than a twentieth of it, or deeper than five
// times.
func Lose(in Input, p *working.Paper) (Output, error) {
	in, faults := form.Ready(in)
	if err := faults.Err(); err != nil {
		return Output{}, err
	}
	metal, ok := alloy.Find(in.Alloy)
	if !ok {
		panic("ladleheat: the form let an unknown metal through")
	}
	j := &job{in: in, metal: metal, p: p}
	j.settle()
	if err := j.consistent().Err(); err != nil {
		return Output{}, err
	}
	if j.in.Basis.V == byReadings {
		j.measured()
	} else {
		j.modelled()
	}
	j.warn()
	return j.out, nil
}

// settle takes what is usual for what the user left empty.
func (j *job) settle() {
	stated := source.Own("your own figure")
	j.preheat = usualPreheat(j.metal)
	if j.in.Preheat.Known() {
		j.preheat = figure.Of[quantity.Temperature]{V: j.in.Preheat.V, Source: stated}
	}
	j.drop = usualDrop(j.metal, j.in.Vessel.V, quantity.In(j.preheat.V, "degC"))
	if j.in.Drop.Known() {
		j.drop = figure.Of[quantity.TempDiff]{V: j.in.Drop.V, Source: stated}
	}
	j.out.Low = j.in.WindowLow.Or(j.metal.PourThick.Low)
	j.out.High = j.in.WindowHigh.Or(j.metal.PourThin.High)
}

// consistent checks what one field alone cannot tell.
func (j *job) consistent() form.Faults {
	var faults form.Faults
	in, low, high, liquidus := j.in, j.out.Low, j.out.High, j.metal.Liquidus.V
	add := func(field, label string, q quantity.Any, why working.Text) {
		faults = append(faults, form.Fault{Field: field, Label: label, Value: quantity.Text(q), Why: why})
	}
	if low <= liquidus {
		add("window_low", "Coldest to pour", low, working.Say("%v is not above the liquidus of %v; metal that cold is not liquid", low, liquidus))
	}
	if high <= low {
		field, label, q := "window_high", "Hottest to pour", high
		if !in.WindowHigh.Known() {
			field, label, q = "window_low", "Coldest to pour", low
		}
		add(field, label, q, working.Say("the hottest to pour, %v, must be above the coldest, %v", high, low))
	}
	if in.Tap.Known() && in.Tap.V <= liquidus {
		add("tap", "Tapping temperature", in.Tap.V, working.Say("%v is not above the liquidus of %v; metal that cold is not liquid", in.Tap.V, liquidus))
	}
	const colder = 50
	if in.Surroundings.V > low-colder {
		add("surroundings", "Surroundings", in.Surroundings.V, working.Say("%v is too near to the coldest to pour, %v; it must be %v or below", in.Surroundings.V, low, low-colder))
	}
	if in.Basis.V == byReadings {
		if in.Second >= in.First {
			add("second", "Second reading", in.Second, working.Say("%v is not below the first reading of %v; the metal must have cooled between them", in.Second, in.First))
		}
		if in.Second <= in.Surroundings.V+colder {
			add("second", "Second reading", in.Second, working.Say("%v is too near to the surroundings at %v; it must be above %v", in.Second, in.Surroundings.V, in.Surroundings.V+colder))
		}
		return faults
	}
	if in.Vessel.V == lined && j.preheat.V > low {
		field, label, q := "preheat", "Lining heated to", j.preheat.V
		add(field, label, q, working.Say("a lining at %v would heat the metal; it must be at or below the coldest to pour, %v", q, low))
	}
	if in.Diameter.Known() {
		if depth := deep(in.Mass, j.metal.DensityLiquid.V, in.Diameter.V); depth < in.Diameter.V/20 || depth > 5*in.Diameter.V {
			add("diameter", "Inside diameter", in.Diameter.V, working.Say("in %v across, %v of metal stands %v deep; no ladle is like that. The depth must be between a twentieth of the width and five times it", in.Diameter.V, in.Mass, depth))
		}
	}
	return faults
}

// look puts the value of a figure on the paper with its source.
func look[T quantity.Of](p *working.Paper, symbol, what string, f figure.Of[T], unit string) float64 {
	return p.Lookup(symbol, what, quantity.In(f.V, unit), unit, f.Source, f.Note)
}

// begin puts on the paper what both ways of the loss need: the window T_c and
// T_h, the drop d, the surroundings T_a and the times.
func (j *job) begin() {
	p := j.p
	edge := func(symbol, what string, o quantity.Opt[quantity.Temperature], T quantity.Temperature, from source.Ref) {
		if o.Known() {
			p.Give(symbol+"_own", what+", yours", T, "degC")
			p.Step(symbol, what, quantity.In(T, "degC"), "degC", symbol+"_own", ownFigure)
			return
		}
		p.Lookup(symbol+"_usual", what+", usual", quantity.In(T, "degC"), "degC", from, "")
		p.Step(symbol, what, quantity.In(T, "degC"), "degC", symbol+"_usual", from)
	}
	edge("T_c", "coldest to pour", j.in.WindowLow, j.out.Low, j.metal.PourThick.Source)
	edge("T_h", "hottest to pour", j.in.WindowHigh, j.out.High, j.metal.PourThin.Source)
	low, high := j.drop.Span()
	look(p, "d_usual", "drop in tapping", j.drop, "K")
	p.Step("d", "drop in tapping", float64(j.drop.V), "K", "d_usual", j.drop.Source)
	p.Lookup("d_lo", "drop in tapping, at the least", float64(low), "K", j.drop.Source, j.drop.Note)
	p.Lookup("d_hi", "drop in tapping, at the most", float64(high), "K", j.drop.Source, j.drop.Note)
	working.GiveOpt(p, "T_a", "surroundings", j.in.Surroundings, "degC")
	working.GiveOpt(p, "t_1", "time until pouring begins", j.in.Transfer, "s")
	if j.in.Pouring.Known() {
		working.GiveOpt(p, "t_2", "time from the first stream to the last mould full", j.in.Pouring, "s")
		p.Step("t_x", "time from filled to the last mould full", float64(j.in.Transfer.V+j.in.Pouring.V), "s", "t_1 + t_2", source.Derived("sum"))
	}
	j.out.Drop = j.drop.V
}

// fill settles the temperature in the ladle as it is filled, K: from the tap
// that is stated, else from the one needed, else from the hottest to pour.
func (j *job) fill() float64 {
	p := j.p
	filled := 0.0
	switch {
	case j.in.Tap.Known():
		tap := working.GiveOpt(p, "T_t", "tapping temperature", j.in.Tap, "degC")
		filled = p.Step("T_f", "in the ladle as it is filled", tap-float64(j.drop.V), "degC", "T_t - d", definition)
	case j.out.TapNeeded.Known():
		tap := quantity.In(j.out.TapNeeded.V, "degC")
		filled = p.StepNote("T_f", "in the ladle as it is filled", tap-float64(j.drop.V), "degC", "T_n - d", definition, "no tapping temperature is stated, so the one needed is taken")
	default:
		filled = p.StepNote("T_f", "in the ladle as it is filled", quantity.In(j.out.High, "degC"), "degC", "T_h", definition, "no tapping temperature is stated, so the ladle is taken as filled at the hottest to pour")
	}
	j.out.Filled = quantity.From[quantity.Temperature](filled, "degC")
	return float64(j.out.Filled)
}

// finish is the time from filled to the last mould full, s.
func (j *job) finish() float64 { return float64(j.in.Transfer.V + j.in.Pouring.V) }
