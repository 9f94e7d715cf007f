package filling

import (
	"math"
	"strings"

	"pourwright/calc/alloy"
	"pourwright/calc/flow"
	"pourwright/calc/form"
	"pourwright/calc/freeze"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// hotter is how far above the usual pouring range metal is still reckoned
// with, K; colder is how far below the solidus the mould must be.
const (
	hotter = 150
	colder = 50
)

func coldFaults(in Input) (faults form.Faults) {
	a, ok := alloy.Find(in.Alloy)
	if !ok || !in.PourTemperature.Known() {
		return nil
	}
	add := func(field, label string, value quantity.Temperature, why working.Text) {
		faults = append(faults, form.Fault{Field: field, Label: label, Value: quantity.Text(value), Why: why})
	}
	T := in.PourTemperature.V
	most := max(a.PourThin.High, a.PourThick.High) + hotter
	switch {
	case T <= a.Liquidus.V:
		add("pour_temperature", "Pouring temperature", T, working.Say("%v is not above the liquidus of %v, %v; metal that cold is not liquid", T, a.Name, a.Liquidus.V))
	case T > most:
		add("pour_temperature", "Pouring temperature", T, working.Say("%v is far hotter than %v is ever poured; it must be %v or below", T, a.Name, most))
	}
	if coldest := a.Solidus.V - colder; in.MouldTemperature.V > coldest {
		add("mould_temperature", "Mould temperature", in.MouldTemperature.V, working.Say("%v is too near to the solidus of %v for the mould to freeze the metal; it must be %v or below", in.MouldTemperature.V, a.Solidus.V, coldest))
	}
	return faults
}

// chill is how the front loses heat: T = T_a − k √t down to the liquidus.
type chill struct {
	known              bool
	arrives, liquidus  float64 // °C
	slow, likely, fast float64 // K/√s
	// gone are the shares of its latent heat that the front has lost when the
	// mould is full, at best, likely and at the worst; stops the shares at which
	// it stops.
	gone, stops [3]float64
}

// at is the front's temperature after a time, by one of the three slopes.
func (c chill) at(k, t float64) float64 { return math.Max(c.arrives-k*math.Sqrt(t), c.liquidus) }

// front is the trend of the front's temperature. A wall δ thick loses heat
// through both faces; a thick mould whose face jumps to the liquidus takes up
// (2/√π) b (T_L − T_0) √t per area, so that metal loses
//
//	ΔT = κ (2/√π) b (T_L − T_0) √t / (ρ (δ/2) c_l)
//
// while it still has superheat, κ = 1 for metal that touches sand all the
// time, 2/3 for a stream as a whole (see freeze.Life). The front is taken as in
// that wall from the first to the last second, and as held at the liquidus
// when its superheat is gone, while the latent heat goes. Stirring with hotter
// metal, heavy parts on the way and radiation are left out.
func (f *filling) front() {
	in, p, o := f.in, f.p, &f.out
	if !in.PourTemperature.Known() || !in.Thin.Known() || !in.Sand.Known() {
		return
	}
	s, ok := mouldstuff.FindSand(in.Sand.V)
	if !ok {
		panic("filling: the form let an unknown sand through")
	}
	a := f.a
	c := p.Lookup("c_l", "specific heat of the liquid metal", float64(a.HeatLiquid.V), "J/(kg*K)", a.HeatLiquid.Source, a.HeatLiquid.Note)
	TL := p.Lookup("T_L", "liquidus", quantity.In(a.Liquidus.V, "degC"), "degC", a.Liquidus.Source, a.Liquidus.Note)
	T0 := working.GiveOpt(p, "T_0", "mould temperature", in.MouldTemperature, "degC")
	Tp := working.GiveOpt(p, "T_p", "pouring temperature", in.PourTemperature, "degC")
	Tg := flow.PutDrop(p, in.Drop, Tp, T0)
	delta := working.GiveOpt(p, "delta", "thinnest wall", in.Thin, "mm")
	from := source.Derived("superheat of a thin stream lost to a thick mould, after Flemings' fluidity length")
	Ta := p.Step("T_a", "metal comes to the wall at", math.Max(Tp-Tg, TL), "degC", "max(T_p - T_g, T_L)", from)
	b, bLo, bHi := freeze.PutEffusivity(p, s.Effusivity())
	touch := source.Derived("the first metal touches sand all the time, the stream as a whole two thirds of it")
	kHi, k, kLo := p.Const("k_hi", "touch of the first metal", freeze.Still, "1", touch), p.Const("k_t", "touch, middle", (freeze.Still+freeze.Moving)/2, "1", touch), p.Const("k_lo", "touch of the stream as a whole", freeze.Moving, "1", touch)
	slope := func(k, b float64) float64 {
		return k * 2 / math.SqrtPi * b * (TL - T0) / (f.rho * delta / 2000 * c)
	}
	f.chill = chill{known: true, arrives: Ta, liquidus: TL, slow: slope(kLo, bLo), likely: slope(k, b), fast: slope(kHi, bHi)}
	t := float64(o.FillTime)
	end := func(symbol, what, touch, b string, k float64) quantity.Opt[quantity.Temperature] {
		T := p.Step(symbol, what, f.chill.at(k, t), "degC", "max(T_a - "+touch+" * 2 / sqrt(pi) * "+b+" * (T_L - T_0) * sqrt(t_fill) / (rho_m * delta / 2 * c_l), T_L)", from)
		return quantity.Some(quantity.From[quantity.Temperature](T, "degC"))
	}
	o.FrontArrives = quantity.Some(quantity.From[quantity.Temperature](Ta, "degC"))
	o.FrontEnd = end("T_e", "front when the mould is full, likely", "k_t", "b", f.chill.likely)
	o.FrontWorst = end("T_e_lo", "front when the mould is full, at the worst", "k_hi", "b_hi", f.chill.fast)
	o.FrontBest = end("T_e_hi", "front when the mould is full, at best", "k_lo", "b_lo", f.chill.slow)
	f.stiffens(t, from)
	o.FrontFreezes = quantity.Some(quantity.Time(p.Step("t_liq", "when the front comes to its liquidus, likely", sq((Ta-TL)/f.chill.likely), "s",
		"pi / 4 * pow(rho_m * delta / 2 * c_l * (T_a - T_L) / (k_t * b * (T_L - T_0)), 2)", from)))
}

// stiffens is how much of its latent heat the front has lost when the mould is
// full, and how much it can lose before it stops (freeze.Coherency).
func (f *filling) stiffens(t float64, from source.Ref) {
	p, a := f.p, f.a
	L := p.Lookup("L", "latent heat", float64(a.Latent.V), "J/kg", a.Latent.Source, a.Latent.Note)
	c, dT := float64(a.HeatLiquid.V), f.chill.arrives-f.chill.liquidus
	low, mid, high := freeze.Coherency(float64(a.Liquidus.V - a.Solidus.V))
	f.chill.stops = [3]float64{high, mid, low}
	gone := func(symbol, what, touch, b string, k float64) float64 {
		x := math.Min(math.Max(c*(k*math.Sqrt(t)-dT)/L, 0), 1)
		return p.Step(symbol, what, x, "1", "min(max(c_l / L * ("+touch+" * 2 / sqrt(pi) * "+b+" * (T_L - T_0) * sqrt(t_fill) / (rho_m * delta / 2 * c_l) - (T_a - T_L)), 0), 1)", from)
	}
	f.chill.gone = [3]float64{
		gone("x_L_lo", "latent heat gone from the front, at best", "k_lo", "b_lo", f.chill.slow),
		gone("x_L", "latent heat gone from the front, likely", "k_t", "b", f.chill.likely),
		gone("x_L_hi", "latent heat gone from the front, at the worst", "k_hi", "b_hi", f.chill.fast),
	}
	f.out.FrontLatent = quantity.Some(quantity.Ratio(f.chill.gone[1]))
}

// frontFindings says what the trend means for the mould.
func (f *filling) frontFindings() {
	in, p, o := f.in, f.p, &f.out
	from := source.Derived("superheat of a thin stream lost to a thick mould, after Flemings' fluidity length")
	if !f.chill.known {
		var wanted []string
		for _, w := range []struct {
			known bool
			name  string
		}{{in.PourTemperature.Known(), "the pouring temperature"}, {in.Thin.Known(), "the thinnest wall"}, {in.Sand.Known(), "the mould material"}} {
			if !w.known {
				wanted = append(wanted, w.name)
			}
		}
		if len(wanted) < 3 {
			p.Find(working.Finding{Level: working.Note, Code: "front-unknown", Source: from,
				Text: working.Say("The front's temperature is not known: wanted for it: %s.", strings.Join(wanted, ", "))})
		}
		return
	}
	p.Find(working.Finding{Level: working.Note, Code: "front-trend", Source: from,
		Text: working.Say("The temperature of the front is a trend for metal that runs in the thinnest wall all the time, not a simulation: from %v to between %v and %v when the mould is full, likely with %v of its latent heat gone.", o.FrontArrives.V, o.FrontWorst.V, o.FrontBest.V, o.FrontLatent.V)})
	do := working.Say("Fill the mould faster, pour hotter, or bring metal to that wall through an ingate of its own.")
	switch c := f.chill; {
	case c.arrives <= c.liquidus:
		p.Find(working.Finding{Level: working.Mind, Code: "arrives-cold", Field: "pour_temperature", Source: from,
			Text: working.Say("The metal comes to the wall at or below its liquidus of %v; it is freezing before it gets there.", f.a.Liquidus.V),
			Do:   working.Say("Pour at %v or above, the usual for light sections.", f.a.PourThin.Low)})
	case c.gone[0] >= c.stops[0]:
		p.Find(working.Finding{Level: working.Mind, Code: "front-stops", Field: "pour_temperature", Source: from,
			Text: working.Say("Metal that runs in the thinnest wall until the mould is full, %v, has lost %v of its latent heat even at best, and stops at about %v.", o.FillTime, quantity.Ratio(c.gone[0]), quantity.Ratio(c.stops[0])), Do: do})
	case c.gone[1] >= c.stops[1]:
		p.Find(working.Finding{Level: working.Mind, Code: "front-stops", Field: "pour_temperature", Source: from,
			Text: working.Say("Metal that runs in the thinnest wall until the mould is full, %v, has likely lost %v of its latent heat, and stops at about %v.", o.FillTime, quantity.Ratio(c.gone[1]), quantity.Ratio(c.stops[1])), Do: do})
	}
}
