package freeze

import (
	"errors"
	"fmt"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// exact solves the flat wall as deep as the modulus, where the figures for it
// are known.
func exact(in Input, d data, out *Output, M, Te, T0, b float64, p *working.Paper) {
	if d.conductivity.V == 0 || d.solidHeat.V == 0 {
		return
	}
	look(p, "k_s", "heat conductivity of the hot solid", d.conductivity, "W/(m*K)")
	look(p, "c_s", "specific heat of the hot solid", d.solidHeat, "J/(kg*K)")
	w := Wall{
		Conductivity: float64(d.conductivity.V), Density: float64(d.metal.Density.V), Heat: float64(d.solidHeat.V), Latent: float64(d.metal.Latent.V),
		Melting: Te, Mould: T0,
	}
	used := []string{"k_s", "rho_m", "c_s", "L", "T_e", "T_0"}
	out.Chilled = front(out.Chilled.Name, w, M, p.Sub("chilled"), "φ e^(φ²) erf φ = c_s (T_e − T_0)/(L √π)", used, source.Carslaw.Memory("ch. XI, Neumann"))
	w.Effusivity = b
	out.Moulded = front(out.Moulded.Name, w, M, p.Sub("moulded"), "φ e^(φ²) (erf φ + N) = c_s (T_e − T_0)/(L √π), N = √(k_s ρ_m c_s)/b", append(used, "b"), source.Poirier.Memory("ch. 10"))
	insulating(out, Te, T0, p)
	if d.meltConductivity.V == 0 || !in.PourTemperature.Known() {
		return
	}
	look(p, "k_l", "heat conductivity of the melt", d.meltConductivity, "W/(m*K)")
	w.Poured, w.LiquidConductivity, w.LiquidHeat = quantity.In(in.PourTemperature.V, "degC"), float64(d.meltConductivity.V), float64(d.metal.HeatLiquid.V)
	sub := p.Sub("superheated")
	out.Superheated = front(out.Superheated.Name, w, M, sub,
		"c_s (T_e − T_0)/(L √π) · e^(−φ²)/(erf φ + N) − (k_l/k_s) g c_s (T_p − T_e)/(L √π) · e^(−φ²g²)/erfc(φ g) = φ, g = √(α_s/α_l)",
		append(used, "b", "k_l", "c_l", "T_p"), source.Carslaw.Memory("sect. 11.2, extended by the melt"))
}

// front puts one exact solution on the paper.
func front(name string, w Wall, M float64, p *working.Paper, equation string, used []string, from source.Ref) Exact {
	f, err := Solve(w)
	if errors.Is(err, ErrNeverFreezes) {
		p.Find(working.Finding{Level: working.Note, Code: "never-freezes", Field: "pour_temperature", Source: source.Derived("contact temperature of melt and mould above the melting point"),
			Text: working.Say("With this superheat a melt without end would never begin to freeze in this mould, so there is no exact solution. A casting is not endless; the rule above holds for it.")})
		return Exact{Name: name}
	}
	if err != nil {
		panic(err) // the form and consistent have bounded the figures
	}
	method := fmt.Sprintf("%s, by bisection; φ lies within %.0e", equation, max(f.Bound, 1e-16))
	phi := p.Solve("phi", "root of the front's equation", f.Phi, "1", method, used, from)
	face := p.Solve("T_i", "temperature of the mould face", f.Face, "degC", "T_i = T_e − (T_e − T_0) erf φ/(erf φ + N); T_0 where the wall is held", append(used, "phi"), from)
	t := p.Step("t_x", "freezing time of a flat wall as deep as the modulus", f.Time(M/1000), "s", "pow(M, 2) * rho_m * c_s / (4 * pow(phi, 2) * k_s)", from)
	return Exact{
		Name: name,
		Root: quantity.Some(quantity.Number(phi)),
		Face: quantity.Some(quantity.From[quantity.Temperature](face, "degC")),
		Time: quantity.Some(quantity.Time(t)),
	}
}

// insulating warns where the mould draws its face well below the freezing
// temperature, which the rule takes it never to do.
func insulating(out *Output, Te, T0 float64, p *working.Paper) {
	drop := (Te - quantity.In(out.Moulded.Face.V, "degC")) / (Te - T0)
	if drop > 0.2 {
		p.Find(working.Finding{Level: working.Mind, Code: "mould-not-insulating", Field: "mould_conductivity", Source: flemings,
			Text: working.Say("This mould takes heat so readily that its face settles at %v, not near the freezing temperature; the plain rule makes the time too short. The gap that opens at a metal mould is not counted either.", out.Moulded.Face.V),
			Do:   working.Say("Use the exact time of %v for a flat wall, and time a casting of your own.", out.Moulded.Time.V)})
	}
}

// warn says how far the answer may be trusted.
func warn(in Input, d data, out *Output, p *working.Paper) {
	p.Find(working.Finding{Level: working.Note, Code: "freezing-band", Field: "basis", Source: source.Practice("handbook data of metal and sand differ"),
		Text: working.Say("The freezing time lies somewhere between %v and %v; metal and sand are not known better than that.", out.TimeLow, out.TimeHigh),
		Do:   working.Say("Time one casting of your own and enter it in place of the data.")})
	if !in.PourTemperature.Known() {
		p.Find(working.Finding{Level: working.Note, Code: "superheat-left-out", Field: "pour_temperature", Source: flemings,
			Text: working.Say("No pouring temperature is given, so no superheat is counted; the casting takes longer than this.")})
	}
	if out.Rounded.Known() && out.Rounded.V < out.Time {
		share := quantity.Ratio(1 - out.Rounded.V.SI()/out.Time.SI())
		p.Find(working.Finding{Level: working.Note, Code: "round-freezes-sooner", Source: source.Adams.Seen("the plain rule compares only like shapes"),
			Text: working.Say("A round shape freezes %v sooner than the plain rule says: in %v.", share, out.Rounded.V)})
	}
}
