package cooling

import (
	"math"

	"pourwright/calc/figure"
	"pourwright/calc/form"
	"pourwright/calc/freeze"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

var (
	duhamel   = source.Carslaw.Memory("ch. II and XII: Duhamel's sum for a stirred body against a thick wall")
	chvorinov = source.Chvorinov.Memory("t = C (V/A)²")
	flemings  = source.Flemings.Memory("ch. 1, freezing in an insulating mould")
	measured  = source.Practice("a measured constant is taken as it is")
)

// job is one question being answered.
type job struct {
	in  Input
	d   data
	p   *working.Paper
	out Output

	M, Te, T0  float64 // mm, °C
	b, bLow    float64
	H, Hhi     float64 // J/kg
	reckonings [3]reckoning
}

// reckoning is one of the three cases of the band: low, middle, high.
type reckoning struct {
	freezing     float64 // s
	coarse, fine track
	heat, cs     float64 // J/kg, J/(kg·K)
}

// The three reckonings.
const (
	low = iota
	middle
	high
)

// Shakeout answers how long a casting has to stay in the sand.
//
// The times are a band: metal and sand are known no better, unless a freezing
// constant of the shop's own is given. The recommended time is the high end of
// the band to the lower of the usual temperatures; the earliest, the most
// likely time to the higher of them.
//
// Refused: metal at or below its liquidus; a mould within 50 °C of the solidus;
// a shakeout temperature within 100 °C of the solidus, since the heart may
// still run, or within 30 °C of the mould's own; a metal without a usual
// shakeout temperature where none is stated.
func Shakeout(in Input, p *working.Paper) (Output, error) {
	in, faults := form.Ready(in)
	if err := faults.Err(); err != nil {
		return Output{}, err
	}
	d := dataOf(in)
	if err := consistent(in, d).Err(); err != nil {
		return Output{}, err
	}
	j := &job{in: in, d: d, p: p}
	j.freezing()
	j.cooling()
	j.warn()
	return j.out, nil
}

// look puts the value of a figure on the paper with its source.
func look[T quantity.Of](p *working.Paper, symbol, what string, f figure.Of[T], unit string) float64 {
	return p.Lookup(symbol, what, quantity.In(f.V, unit), unit, f.Source, f.Note)
}

// freezing works out modulus, freezing constant and freezing time.
func (j *job) freezing() {
	in, d, p := j.in, j.d, j.p
	j.M = freeze.Modulus(freeze.Input{
		Shape: in.Shape, Thickness: in.Thickness, Length: in.Length, Width: in.Width, Breadth: in.Breadth, Depth: in.Depth,
		Diameter: in.Diameter, Height: in.Height, Modulus: in.Modulus,
	}, p)
	j.out.Modulus = quantity.From[quantity.Length](j.M, "mm")
	d.metal.Put(p)
	j.Te = freeze.PutEffective(p, d.metal)
	j.T0 = working.GiveOpt(p, "T_0", "mould temperature", in.MouldTemperature, "degC")
	u := working.GiveOpt(p, "u", "share of the superheat counted", in.Counted, "1")
	superheat := 0.0
	if in.PourTemperature.Known() {
		Tp := working.GiveOpt(p, "T_p", "pouring temperature", in.PourTemperature, "degC")
		superheat = p.Step("Delta_T", "superheat", Tp-quantity.In(d.metal.Liquidus.V, "degC"), "K", "T_p - T_L", source.Derived("definition"))
	} else {
		p.Number("Delta_T", "superheat, none counted as no pouring temperature is given", 0, "K")
	}
	L, cl := float64(d.metal.Latent.V), float64(d.metal.HeatLiquid.V)
	j.H, j.Hhi = L+u*cl*superheat, L+cl*superheat
	b, bLow, bHigh := freeze.PutEffusivity(p, d.effusivity)
	var C freeze.Band[quantity.FreezingConstant]
	if in.Constant.Known() {
		C = j.ownConstant(superheat, u, b, bLow, bHigh)
	} else {
		C = freeze.Constant(p, d.metal, j.Te, j.T0, superheat, u, b, bLow, bHigh)
		j.b = b
	}
	time := func(symbol, what, cSymbol string, c quantity.FreezingConstant) quantity.Time {
		return quantity.Time(p.Step(symbol, what, quantity.In(c, "s/mm^2")*j.M*j.M, "s", cSymbol+" * pow(M, 2)", chvorinov))
	}
	j.out.Freezing = time("t_f", "freezing time", "C", C.Mid)
	j.out.FreezingLow = time("t_f_lo", "freezing time, at least", "C_lo", C.Low)
	j.out.FreezingHigh = time("t_f_hi", "freezing time, at most", "C_hi", C.High)
	j.out.Constant = C.Mid
	j.out.Effective = quantity.From[quantity.Temperature](j.Te, "degC")
	j.out.Effusivity = quantity.Effusivity(j.b)
}

// ownConstant takes the shop's constant, and the effusivity that it tells of.
func (j *job) ownConstant(superheat, u, b, bLow, bHigh float64) freeze.Band[quantity.FreezingConstant] {
	p := j.p
	rho := float64(j.d.metal.Density.V)
	own := working.GiveOpt(p, "C_own", "your own freezing constant", j.in.Constant, "s/mm^2")
	for _, end := range []struct{ symbol, what string }{{"C", "freezing constant"}, {"C_lo", "freezing constant, low end"}, {"C_hi", "freezing constant, high end"}} {
		p.Step(end.symbol, end.what, own, "s/mm^2", "C_own", measured)
	}
	H := p.Step("H", "heat to lose, part of the superheat counted", j.H, "J/kg", "L + u * c_l * Delta_T", flemings)
	p.Step("H_hi", "heat to lose, all the superheat counted", j.Hhi, "J/kg", "L + c_l * Delta_T", flemings)
	j.b = p.Step("b", "heat effusivity that your constant tells of", math.SqrtPi/2*rho*H/(j.Te-j.T0)/math.Sqrt(own*1e6), "W*s^0.5/(m^2*K)",
		"sqrt(pi) / 2 * rho_m * H / (T_e - T_0) / sqrt(C_own)", flemings)
	// What the lists would have said, for comparison only.
	if listed := freeze.Constant(nil, j.d.metal, j.Te, j.T0, superheat, u, b, bLow, bHigh); j.in.Constant.V < listed.Low || j.in.Constant.V > listed.High {
		p.Find(working.Finding{Level: working.Mind, Code: "constant-outside-band", Field: "constant", Source: flemings,
			Text: working.Say("Your freezing constant of %v lies outside the %v to %v that metal and sand allow.", j.in.Constant.V, listed.Low, listed.High),
			Do:   working.Say("Check its unit, and the modulus of the casting that you timed.")})
	}
	return freeze.Band[quantity.FreezingConstant]{Low: j.in.Constant.V, Mid: j.in.Constant.V, High: j.in.Constant.V}
}
