package weight

import (
	"math"

	"pourwright/calc/form"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

var (
	patternRule = source.Kent.Memory("weight of castings from weight of pattern: a ratio of densities, less prints and cores")
	shrinkRule  = source.Rao.Memory("ch. 3: pattern = casting × (1 + s), here on three axes")
	drowning    = source.Derived("Archimedes' principle: what is drowned displaces its own volume")
)

// casting finds volume and mass of one casting, and the range of the mass.
func (w *weighing) casting() form.Faults {
	var faults form.Faults
	Vlow, Vhigh := "V", "V"
	low, high := 0.0, 0.0
	switch w.in.Route.V {
	case Stated:
		w.stated()
		return nil
	case FromSolids:
		w.V = w.p.Step("V", "volume of one casting", w.sections.V, "cm^3", "V_s", adding)
		low, high = w.V, w.V
	case FromPattern:
		low, high, faults = w.fromPattern()
		Vlow, Vhigh = "V_low", "V_high"
	case DrownedPattern:
		faults = w.drownedPattern()
		low, high = w.V, w.V
	case DrownedCasting:
		w.V = w.p.Step("V", "volume of one casting", w.displaced(), "cm^3", "V_d", drowning)
		low, high = w.V, w.V
	}
	if len(faults) > 0 {
		return faults
	}
	w.m = w.p.Step("m", "weight of one casting", w.rho*w.V*1e-6, "kg", "rho * V", definition)
	w.mLow = w.p.Step("m_low", "weight of one casting, from", w.rhoLow*low*1e-6, "kg", "rho_low * "+Vlow, definition)
	w.mHigh = w.p.Step("m_high", "weight of one casting, to", w.rhoHigh*high*1e-6, "kg", "rho_high * "+Vhigh, definition)
	w.settle()
	return nil
}

// stated takes the user's mass; its volume follows, and it has no range.
func (w *weighing) stated() {
	const words = "as you state it"
	m := w.p.Give("m_own", "weight of one casting, stated", w.in.Mass, "kg")
	w.m = w.p.Step("m", "weight of one casting", m, "kg", "m_own", source.Practice(words))
	w.mLow = w.p.Step("m_low", "weight of one casting, from", m, "kg", "m_own", source.Practice(words))
	w.mHigh = w.p.Step("m_high", "weight of one casting, to", m, "kg", "m_own", source.Practice(words))
	w.V = w.p.Step("V", "volume of one casting", m/w.rho*1e6, "cm^3", "m / rho", definition)
	w.settle()
}

func (w *weighing) settle() {
	Vall := w.p.Step("V_all", "volume of all castings", w.N*w.V, "cm^3", "N * V", definition)
	mall := w.p.Step("m_all", "weight of all castings", w.N*w.m, "kg", "N * m", definition)
	w.out.Volume, w.out.CastingsVolume = cm3(w.V), cm3(Vall)
	w.out.Mass, w.out.MassLow, w.out.MassHigh, w.out.CastingsMass = kg(w.m), kg(w.mLow), kg(w.mHigh), kg(mall)
}

// fromPattern divides the pattern's weight by its density.
func (w *weighing) fromPattern() (low, high float64, faults form.Faults) {
	const unit = "kg/m^3"
	mp := w.p.Give("m_p", "weight of the pattern", w.in.PatternMass, "kg")
	mi := working.GiveOpt(w.p, "m_i", "weight of the core prints", w.in.PrintsMass, "kg")
	var rho, rhoLow, rhoHigh float64
	if own := w.in.PatternDensity; own.Known() {
		rho = w.p.Give("rho_p", "measured density of the pattern", own.V, unit)
		rhoLow = w.p.Give("rho_p_low", "density of the pattern, lower end", own.V, unit)
		rhoHigh = w.p.Give("rho_p_high", "density of the pattern, upper end", own.V, unit)
	} else {
		kind, ok := mouldstuff.FindPattern(w.in.PatternStuff.V)
		if !ok {
			panic("weight: the form let an unknown pattern material through")
		}
		d := kind.Density
		least, most := d.Span()
		rho = w.p.Lookup("rho_p", "density of "+kind.Name, quantity.In(d.V, unit), unit, d.Source, d.Note)
		rhoLow = w.p.Lookup("rho_p_low", "density of "+kind.Name+", lower end", quantity.In(least, unit), unit, d.Source, d.Note)
		rhoHigh = w.p.Lookup("rho_p_high", "density of "+kind.Name+", upper end", quantity.In(most, unit), unit, d.Source, d.Note)
	}
	Vi := working.GiveOpt(w.p, "V_i", "volume of the core prints", w.in.PrintsVolume, "cm^3")
	Vk := working.GiveOpt(w.p, "V_k", "volume of the cores in the casting", w.in.CoresVolume, "cm^3")
	s := w.contraction()
	// The heaviest the stuff may be makes the smallest pattern.
	if least := (mp-mi)/rhoHigh*1e6 - Vi - Vk; !(least > 0) {
		return 0, 0, form.Faults{{Field: "cores_volume", Label: "Volume of the cores in the casting", Value: quantity.Text(w.in.CoresVolume.V),
			Why: working.Say("the pattern without its weighed prints has %v, or %v at the upper end of its density; %v of prints and %v of cores leave no casting", cm3((mp-mi)/rho*1e6), cm3((mp-mi)/rhoHigh*1e6), cm3(Vi), cm3(Vk))}}
	}
	w.p.Step("V_p", "pattern without prints and cores", (mp-mi)/rho*1e6-Vi-Vk, "cm^3", "(m_p - m_i) / rho_p - V_i - V_k", patternRule)
	w.V = w.p.Step("V", "volume of one casting", ((mp-mi)/rho*1e6-Vi-Vk)/cube(1+s), "cm^3", "V_p / pow(1 + s, 3)", shrinkRule)
	low = w.p.Step("V_low", "volume of one casting, from", ((mp-mi)/rhoHigh*1e6-Vi-Vk)/cube(1+s), "cm^3", "((m_p - m_i) / rho_p_high - V_i - V_k) / pow(1 + s, 3)", patternRule)
	high = w.p.Step("V_high", "volume of one casting, to", ((mp-mi)/rhoLow*1e6-Vi-Vk)/cube(1+s), "cm^3", "((m_p - m_i) / rho_p_low - V_i - V_k) / pow(1 + s, 3)", patternRule)
	return low, high, nil
}

func (w *weighing) drownedPattern() form.Faults {
	Vd := w.displaced()
	Vi := working.GiveOpt(w.p, "V_i", "volume of the core prints", w.in.PrintsVolume, "cm^3")
	Vk := working.GiveOpt(w.p, "V_k", "volume of the cores in the casting", w.in.CoresVolume, "cm^3")
	s := w.contraction()
	if !(Vd-Vi-Vk > 0) {
		return form.Faults{{Field: "cores_volume", Label: "Volume of the cores in the casting", Value: quantity.Text(w.in.CoresVolume.V),
			Why: working.Say("the pattern displaces %v; %v of prints and %v of cores leave no casting", cm3(Vd), cm3(Vi), cm3(Vk))}}
	}
	w.p.Step("V_p", "pattern without prints and cores", Vd-Vi-Vk, "cm^3", "V_d - V_i - V_k", drowning)
	w.V = w.p.Step("V", "volume of one casting", (Vd-Vi-Vk)/cube(1+s), "cm^3", "V_p / pow(1 + s, 3)", shrinkRule)
	return nil
}

// displaced is the volume that drowning found, in cm³.
func (w *weighing) displaced() float64 {
	if v := w.in.DisplacedVolume; v.Known() {
		w.p.Give("V_own", "volume displaced, measured", v.V, "cm^3")
		return w.p.Step("V_d", "volume displaced", quantity.In(v.V, "cm^3"), "cm^3", "V_own", drowning)
	}
	m := w.p.Give("m_w", "weight of the water displaced", w.in.DisplacedMass.V, "kg")
	rho := waterDensity(w.p, w.in.WaterTemperature.V)
	return w.p.Step("V_d", "volume displaced", m/rho*1e6, "cm^3", "m_w / rho_w", drowning)
}

// waterDensity is Kell's formula, for 0 to 150 °C at one atmosphere; good to a
// few parts in a million, tap water to a few in ten thousand.
func waterDensity(p *working.Paper, T quantity.Temperature) float64 {
	t := p.Number("t_w", "water temperature in °C", quantity.In(T, "degC"), "1")
	one := p.Const("rho_1", "unit of density", 1, "kg/m^3", definition)
	return p.Step("rho_w", "density of the water",
		one*(999.83952+16.945176*t-0.0079870401*math.Pow(t, 2)-46.170461e-6*math.Pow(t, 3)+105.56302e-9*math.Pow(t, 4)-280.54253e-12*math.Pow(t, 5))/(1+0.01687985*t),
		"kg/m^3",
		"rho_1 * (999.83952 + 16.945176*t_w - 0.0079870401*pow(t_w, 2) - 46.170461e-6*pow(t_w, 3) + 105.56302e-9*pow(t_w, 4) - 280.54253e-12*pow(t_w, 5)) / (1 + 0.01687985*t_w)",
		source.Kell.Memory("equation for the density at one atmosphere"))
}

// contraction is what the pattern has in it: the user's figure, or the first
// row of the metal's first table.
func (w *weighing) contraction() float64 {
	s := w.in.Contraction
	if s.Known() {
		w.out.Contraction = s
		return w.p.Give("s", "contraction in the pattern", s.V, "1")
	}
	table := w.a.Contractions[0]
	row, note := table.At(0)
	w.out.Contraction = quantity.Opt[quantity.Ratio]{V: row.Free, State: quantity.Defaulted}
	return w.p.Lookup("s", "contraction in the pattern", quantity.In(row.Free, "of 1"), "1", table.Source, note)
}

func cube(x float64) float64 { return math.Pow(x, 3) }
