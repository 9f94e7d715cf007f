package core

import (
	"math"

	"pourwright/calc/figure"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// # How much gas, and at what pressure
//
// Heat runs into the core as into a thick wall whose face jumps to the metal's
// temperature T_m: by time t the skin is hotter than T_b to the depth
//
//	δ = 2 λ √(α t),   erfc λ = (T_b − T_0)/(T_m − T_0),
//
// (Carslaw and Jaeger, ch. II). What lies above 510 °C is taken to have given
// all its gas, the rest none: below that part of it condenses again. The gas
// figure of the binder, cm³ of cool gas for each gram of sand, makes a volume
// of it, and Charles' law the volume of hot gas that must pass the vents in the
// pouring time. Vent area is that flow over a speed.
//
// To the vent it seeps through the sand, by Darcy's law with the AFS
// permeability, and out through the vent as through a hole. The low end of the
// pressure is that of the mean flow and the binder's lower figure; the high end
// that of the first quarter of the time, whose flow is twice the mean, and the
// upper figure. Cracks, damp and washes are not in it. The
// metal stands against it with ρ_m g times its depth; its surface tension,
// worth a few hundred pascals in the pores of the sand, is left as a reserve.

const (
	gasesAt = 510 // °C, T_b
	coldest = 40  // K by which the metal must be hotter for the rule to hold
)

var (
	penetration = source.Carslaw.Memory("ch. II, half-space whose face jumps in temperature")
	charles     = source.Derived("Charles' law, absolute temperatures")
	darcy       = source.Derived("Darcy's law with the AFS permeability, air taken at 20 °C")
	ventSpeed   = source.VentedAir.Seen("about 1 m/s, at most 1.89 m/s")
)

// vent sizes the vents and compares pressures.
func (w *one) vent() {
	p, c := w.p, w.c
	if c.TopDepth.Known() {
		d := p.Give("d_o", "metal over its highest point", c.TopDepth.V, "mm")
		w.out.Head = quantity.Some(quantity.Pressure(p.Step("p_h", "pressure of the metal over its top", w.rho*w.g*d*1e-3, "Pa", "rho_m * g * d_o", source.Derived("hydrostatics"))))
	}
	gas, ok := w.gasFigure()
	if !ok {
		return
	}
	burnt := w.burnt()
	low, high := gas.Span()
	Q, lo, hi := w.flow("", gas.V, burnt, gas), w.flow("_lo", low, burnt, gas), w.flow("_hi", high, burnt, gas)
	Av := p.Step("A_v", "vent area wanted", Q/w.v/100, "cm^2", "Q / v", ventSpeed)
	Ah := p.Step("A_v_hi", "vent area wanted, high end", hi/w.v/100, "cm^2", "Q_hi / v", ventSpeed)
	D := p.Step("D_v", "as one round hole", math.Sqrt(4*Av/math.Pi)*10, "mm", "sqrt(4 * A_v / pi)", source.Derived("circle"))
	w.out.GasFlow = quantity.Some(quantity.From[quantity.VolumeFlow](Q, "cm^3/s"))
	w.out.VentWanted, w.out.VentHigh = quantity.Some(cm2(Av)), quantity.Some(cm2(Ah))
	w.out.VentDiameter = quantity.Some(quantity.From[quantity.Length](D, "mm"))
	if w.A > 0 && c.Vent == OpenVent {
		w.pressure(lo, hi)
	}
}

// gasFigure is the gas of a gram of core, where one is known that holds here.
func (w *one) gasFigure() (figure.Of[quantity.Number], bool) {
	b := w.binder()
	switch {
	case !w.in.PourTime.Known():
		w.gasWhy = "time"
		return figure.Of[quantity.Number]{}, false
	case w.c.Gas.Known():
		return figure.Of[quantity.Number]{V: w.c.Gas.V, Source: ownFigure}, true
	case b == nil || b.GasCm3PerG.Source.IsZero():
		w.gasWhy = "figure"
		return figure.Of[quantity.Number]{}, false
	case w.Tm < gasesAt+coldest:
		w.gasWhy = "cold"
		return figure.Of[quantity.Number]{}, false
	}
	return b.GasCm3PerG, true
}

// burnt is the mass of one core, in g, that gives its gas in the pouring time.
func (w *one) burnt() float64 {
	p := w.p
	body := p.Step("m_0", "body of one core", w.rhoK*w.V*1e-3, "g", "rho_k * V", definition)
	if w.A == 0 || w.Tm < gasesAt+coldest {
		return p.StepNote("m_g", "sand that gives gas", body, "g", "m_0", source.Practice("the whole core, to be safe"), "surface not known, or metal too cold for the rule of heating")
	}
	Tb := p.Const("T_b", "temperature above which the binder gives its gas", gasesAt, "degC", source.Samuels.Seen("below 510 °C part of the gas condenses again"))
	T0 := p.Const("T_0", "core before the pour", 20, "degC", source.Practice("shop temperature"))
	k := p.Lookup("k_k", "heat conductivity of the core", float64(w.sand.Conductivity.V), "W/(m*K)", w.sand.Conductivity.Source, w.sand.Conductivity.Note)
	ck := p.Lookup("c_k", "specific heat of the core", float64(w.sand.Heat.V), "J/(kg*K)", w.sand.Heat.Source, w.sand.Heat.Note)
	lambda := p.Solve("lambda", "reach of that temperature", reach(Tb, T0, w.Tm), "1", "root of erfc(λ) = (T_b − T_0)/(T_m − T_0), exact to the last digits", []string{"T_b", "T_0", "T_m"}, penetration)
	depth := p.Step("delta", "depth that burns in that time", 2*lambda*math.Sqrt(k/(w.rhoK*ck)*w.t)*1e3, "mm", "2 * lambda * sqrt(k_k / (rho_k * c_k) * t)", penetration)
	w.out.Burnt = quantity.Some(quantity.From[quantity.Length](depth, "mm"))
	return p.Step("m_g", "sand that gives gas", math.Min(w.rhoK*w.A*depth*1e-4, body), "g", "min(rho_k * A * delta, m_0)", source.Derived("skin of that depth, at most the whole core"))
}

// reach is λ of erfc λ = (T_b − T_0)/(T_m − T_0).
func reach(Tb, T0, Tm float64) float64 { return math.Erfcinv((Tb - T0) / (Tm - T0)) }

// flow is the hot gas in cm³/s for one gas figure.
func (w *one) flow(end string, gas quantity.Number, burnt float64, f figure.Of[quantity.Number]) float64 {
	p := w.p
	what := map[string]string{"": "", "_lo": ", low end", "_hi": ", high end"}[end]
	g := p.Lookup("q_g"+end, "cool gas for each gram of core"+what, float64(gas), "cm^3/g", f.Source, f.Note)
	V0 := p.Step("V_0"+end, "gas, cool"+what, g*burnt, "cm^3", "q_g"+end+" * m_g", definition)
	if end == "" {
		w.out.GasVolume = quantity.Some(cm3(V0))
	}
	p.Const("T_n", "cool gas is counted at", 0, "degC", source.Practice("core-gas tests give cool gas; counted at 0 °C, which errs on the safe side"))
	return p.Step("Q"+end, "gas flow, hot"+what, V0*(w.Tg+273.15)/273.15/w.t, "cm^3/s", "V_0"+end+" * T_g / T_n / t", charles)
}

// pressure is what the gas has to build up in the core to get out.
func (w *one) pressure(lo, hi float64) {
	p, c := w.p, w.c
	var L float64
	if c.VentDistance.Known() {
		L = p.Give("L_v", "skin to the nearest vent", c.VentDistance.V, "mm")
	} else {
		L = p.Step("L_v", "skin to the nearest vent", 2*w.V/w.A*10, "mm", "2 * V / A", source.Derived("the radius of a round core, the thickness of a flat one"))
	}
	perm := working.GiveOpt(p, "PN", "AFS permeability", c.Permeability, "1")
	unit := p.Const("K_1", "AFS permeability of 1, cm⁴/(gf·min)", afsUnit, "m^2/(Pa*s)", source.AFSTests.Memory("permeability: air volume × height / (pressure × section × time), in cm, gf and minutes"))
	p.Const("T_r", "air of the permeability test", 20, "degC", source.AFSTests.Memory("permeability is measured with air at room temperature"))
	stick := p.Step("eta", "hot gas against cool air, viscosity", math.Pow((w.Tg+273.15)/293.15, 0.7), "1", "pow(T_g / T_r, 0.7)", source.Poirier.Memory("viscosity of gases grows as the 0.7th power of the absolute temperature, about"))
	R := p.Const("R_g", "gas constant of the core gas, 33.3 g/mol", 8.314462618/0.0333, "J/(kg*K)", source.Samuels.Seen("mean molar mass 33.3 g/mol at 898 °C"))
	p0 := p.Const("p_0", "pressure of the air", 101325, "Pa", source.Derived("standard atmosphere"))
	rhoG := p.Step("rho_g", "density of the hot gas", p0/(R*(w.Tg+273.15)), "kg/m^3", "p_0 / (R_g * T_g)", source.Derived("ideal gas"))
	Cd := p.Const("C_d", "discharge of a plain hole", 0.6, "1", source.Hydraulics.Memory("orifices"))
	var A float64
	if c.VentArea.Known() {
		A = p.Give("A_vo", "section of its vents", c.VentArea.V, "cm^2")
	} else {
		A = p.Step("A_vo", "vents as wanted", quantity.In(w.out.VentWanted.V, "cm^2"), "cm^2", "A_v", definition)
	}
	end := func(symbol, what, flow string, Q float64) quantity.Opt[quantity.Pressure] {
		v := stick*(Q/w.A*1e-2)*(L*1e-3)/(perm*unit) + rhoG/2*math.Pow(Q/(Cd*A)*1e-2, 2)
		return quantity.Some(quantity.Pressure(p.Step(symbol, what, v, "Pa", "eta * ("+flow+" / A) * L_v / (PN * K_1) + rho_g / 2 * pow("+flow+" / (C_d * A_vo), 2)", darcy)))
	}
	first := p.Step("Q_pk", "gas flow in the first quarter of that time, high end", 2*hi, "cm^3/s", "2 * Q_hi", source.Derived("the heated skin grows as √t, so a quarter of the time heats half of it"))
	w.out.GasLow, w.out.GasHigh = end("p_lo", "gas pressure, low end", "Q_lo", lo), end("p_hi", "gas pressure, high end", "Q_pk", first)
}

// afsUnit is 1 cm⁴/(gf·min) in m²/(Pa·s): 10⁻⁸ m⁴ over 9.80665·10⁻³ N × 60 s.
const afsUnit = 1e-8 / (9.80665e-3 * 60)
