package freeze

import (
	"fmt"
	"math"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// Reckon answers how long a section takes to freeze.
//
// From the lists or from heat figures it gives Chvorinov's time as a band (see
// Constant), the correction for spheres and long round bars, and, where the
// figures allow, Neumann's exact times for a flat wall as deep as the modulus.
// A constant of the shop's own, or one timed casting, takes the place of all
// that. Refused: metal at or below its liquidus, a mould as hot as the metal
// freezes.
func Reckon(in Input, p *working.Paper) (Output, error) {
	in, faults := form.Ready(in)
	if len(faults) == 0 {
		faults = consistent(in)
	}
	if err := faults.Err(); err != nil {
		return Output{}, err
	}
	M := Modulus(in, p)
	out := Output{Modulus: quantity.From[quantity.Length](M, "mm")}
	out.Chilled.Name, out.Moulded.Name, out.Superheated.Name = "Wall held cold, as by water", "Thick mould, no superheat", "Thick mould, superheated melt without end"
	switch in.Basis.V {
	case FromConstant, FromTimed:
		measured(in, &out, M, p)
	default:
		reckonHeat(in, &out, M, p)
	}
	return out, nil
}

// measured applies a constant that the shop has measured. With an exponent
// other than 2 the constant's unit changes with it, so its number is kept in
// minutes and centimetres, as the books print it.
func measured(in Input, out *Output, M float64, p *working.Paper) {
	n := working.GiveOpt(p, "n", "exponent", in.Exponent, "1")
	unit := fmt.Sprintf("min/cm^%g", n)
	Mcm := p.Step("M_c", "modulus, in centimetres", M/10, "cm", "M", source.Derived("unit"))
	chvorinov := source.Chvorinov.Memory("t = C (V/A)^n")
	var C float64
	if in.Basis.V == FromTimed {
		t := p.Give("t_1", "freezing time seen", in.TimedTime, "min")
		m := p.Give("M_1", "modulus of the casting timed", in.TimedModulus, "cm")
		C = p.Step("C", "freezing constant of your shop", t/math.Pow(m, n), unit, "t_1 / pow(M_1, n)", chvorinov)
	} else {
		C = p.Number("C_own", "freezing constant as stated", quantity.In(in.Constant, "min/cm^2"), unit)
		p.Step("C", "freezing constant", C, unit, "C_own", source.Own("your own figure"))
	}
	t := p.Step("t", "freezing time", C*math.Pow(Mcm, n), "min", "C * pow(M_c, n)", chvorinov)
	p.Step("t_lo", "freezing time, at least", t, "min", "t", source.Practice("a measured constant is taken as it is"))
	p.Step("t_hi", "freezing time, at most", t, "min", "t", source.Practice("a measured constant is taken as it is"))
	out.Time = quantity.From[quantity.Time](t, "min")
	out.TimeLow, out.TimeHigh = out.Time, out.Time
	if n == 2 {
		own := quantity.Some(quantity.From[quantity.FreezingConstant](C, "min/cm^2"))
		p.Step("C_lo", "freezing constant, low end", C, unit, "C", source.Practice("a measured constant is taken as it is"))
		p.Step("C_hi", "freezing constant, high end", C, unit, "C", source.Practice("a measured constant is taken as it is"))
		out.Constant, out.ConstantLow, out.ConstantHigh = own, own, own
	}
}

// reckonHeat goes from the heat of metal and mould.
func reckonHeat(in Input, out *Output, M float64, p *working.Paper) {
	d := dataOf(in)
	d.metal.Put(p)
	var b, bLow, bHigh float64
	if in.Basis.V == FromFigures {
		k := look(p, "k_m", "heat conductivity of the mould", d.mouldConductivity, "W/(m*K)")
		rho := p.Give("rho_d", "density of the mould", in.MouldDensity, "kg/m^3")
		c := p.Give("c_d", "specific heat of the mould", in.MouldHeat, "J/(kg*K)")
		def := source.Carslaw.Memory("ch. II")
		b = p.Step("b", "heat effusivity of the mould", math.Sqrt(k*rho*c), effusivityUnit, "sqrt(k_m * rho_d * c_d)", def)
		bLow = p.Step("b_lo", "heat effusivity, low end", b, effusivityUnit, "b", source.Own("your own figures are taken as they are"))
		bHigh = p.Step("b_hi", "heat effusivity, high end", b, effusivityUnit, "b", source.Own("your own figures are taken as they are"))
	} else {
		b, bLow, bHigh = PutEffusivity(p, d.effusivity)
	}
	Te := PutEffective(p, d.metal)
	T0 := working.GiveOpt(p, "T_0", "mould temperature", in.MouldTemperature, "degC")
	u := working.GiveOpt(p, "u", "share of the superheat counted", in.Counted, "1")
	Delta := 0.0
	if in.PourTemperature.Known() {
		Tp := working.GiveOpt(p, "T_p", "pouring temperature", in.PourTemperature, "degC")
		Delta = p.Step("Delta_T", "superheat", Tp-quantity.In(d.metal.Liquidus.V, "degC"), "K", "T_p - T_L", source.Derived("definition"))
		out.Superheat = quantity.Some(quantity.TempDiff(Delta))
	} else {
		p.Number("Delta_T", "superheat, none counted as no pouring temperature is given", 0, "K")
	}
	C := Constant(p, d.metal, Te, T0, Delta, u, b, bLow, bHigh)
	time := func(symbol, what, cSymbol string, c quantity.FreezingConstant) quantity.Time {
		t := p.Step(symbol, what, quantity.In(c, "s/mm^2")*M*M, "s", cSymbol+" * pow(M, 2)", source.Chvorinov.Memory("t = C (V/A)²"))
		return quantity.Time(t)
	}
	out.Time = time("t", "freezing time", "C", C.Mid)
	out.TimeLow = time("t_lo", "freezing time, at least", "C_lo", C.Low)
	out.TimeHigh = time("t_hi", "freezing time, at most", "C_hi", C.High)
	out.Constant, out.ConstantLow, out.ConstantHigh = quantity.Some(C.Mid), quantity.Some(C.Low), quantity.Some(C.High)
	out.Effective = quantity.Some(quantity.From[quantity.Temperature](Te, "degC"))
	out.Effusivity = quantity.Some(quantity.Effusivity(b))
	if R, n, ok := round(in); ok {
		r := p.Step("R", "radius", R, "mm", "D / 2", source.Derived("geometry"))
		p.Number("n", "1 for a long round bar, 2 for a sphere", n, "1")
		km := look(p, "k_m", "heat conductivity of the mould", d.mouldConductivity, "W/(m*K)")
		H := float64(d.metal.Latent.V) + u*float64(d.metal.HeatLiquid.V)*Delta
		out.Rounded = quantity.Some(quantity.Time(Rounded(p, M, r, n, b, km, float64(d.metal.Density.V), H, Te, T0)))
	}
	exact(in, d, out, M, Te, T0, b, p)
	warn(in, d, out, p)
}
