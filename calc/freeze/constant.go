package freeze

import (
	"math"

	"pourwright/calc/alloy"
	"pourwright/calc/figure"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// Metal is what freezing asks of a metal.
type Metal struct {
	// Density of the metal that fills the mould, liquid.
	Density figure.Of[quantity.Density]
	// Latent heat of fusion.
	Latent figure.Of[quantity.SpecificEnergy]
	// HeatLiquid is the specific heat of the melt.
	HeatLiquid figure.Of[quantity.SpecificHeat]
	// Solidus and Liquidus; equal for a metal that freezes at one temperature.
	Solidus, Liquidus figure.Of[quantity.Temperature]
}

// MetalOf takes what freezing asks from an alloy.
func MetalOf(a *alloy.Alloy) Metal {
	return Metal{Density: a.DensityLiquid, Latent: a.Latent, HeatLiquid: a.HeatLiquid, Solidus: a.Solidus, Liquidus: a.Liquidus}
}

// Put lays the metal's figures on the paper: rho_m (kg/m³), L (J/kg), c_l
// (J/(kg·K)), T_S and T_L (°C).
func (m Metal) Put(p *working.Paper) {
	look(p, "rho_m", "density of the liquid metal", m.Density, "kg/m^3")
	look(p, "L", "latent heat", m.Latent, "J/kg")
	look(p, "c_l", "specific heat of the liquid metal", m.HeatLiquid, "J/(kg*K)")
	look(p, "T_S", "solidus", m.Solidus, "degC")
	look(p, "T_L", "liquidus", m.Liquidus, "degC")
}

// look puts the value of a figure on the paper with its source and range.
func look[T quantity.Of](p *working.Paper, symbol, what string, f figure.Of[T], unit string) float64 {
	return p.Lookup(symbol, what, quantity.In(f.V, unit), unit, f.Source, f.Note)
}

const effusivityUnit = "W*s^0.5/(m^2*K)"

// PutEffusivity lays the mould's effusivity on the paper: b, and the ends of
// its range b_lo and b_hi, in W·s½/(m²·K).
func PutEffusivity(p *working.Paper, b figure.Of[quantity.Effusivity]) (mid, low, high float64) {
	l, h := b.Span()
	mid = look(p, "b", "heat effusivity of the mould", b, effusivityUnit)
	low = p.Lookup("b_lo", "heat effusivity, low end", quantity.In(l, effusivityUnit), effusivityUnit, b.Source, "low end of the range")
	high = p.Lookup("b_hi", "heat effusivity, high end", quantity.In(h, effusivityUnit), effusivityUnit, b.Source, "high end of the range")
	return mid, low, high
}

// Band is a figure known only within a factor.
type Band[T quantity.Of] struct {
	Low, Mid, High T
}

// PutEffective puts the temperature T_e (°C) on the paper at which the alloy
// behaves as if it froze. It needs T_S and T_L there.
func PutEffective(p *working.Paper, m Metal) float64 {
	Ts, Tl := quantity.In(m.Solidus.V, "degC"), quantity.In(m.Liquidus.V, "degC")
	return p.Step("T_e", "effective freezing temperature", Ts+0.2*(Tl-Ts), "degC", "T_S + 0.2 * (T_L - T_S)", source.Adams.Seen("effective freezing temperature"))
}

var flemings = source.Flemings.Memory("ch. 1, freezing in an insulating mould")

// Constant works out the freezing constant C of t = C (V/A)², from Metal.Put,
// PutEffusivity and PutEffective, and with T_0 (°C), the mould's temperature,
// Delta_T (K), the superheat, and u, the share of it counted for the middle
// value, on the paper. It puts C_lo, C and C_hi there, in s/mm².
//
// The band runs from no superheat in the sand that takes heat most readily to
// all the superheat in the sand that takes it least; the middle counts the
// share u and the middle effusivity. T_0 must be below T_e; the caller checks.
func Constant(p *working.Paper, m Metal, Te, T0, superheat, counted, b, bLow, bHigh float64) Band[quantity.FreezingConstant] {
	rho, L, cl := float64(m.Density.V), float64(m.Latent.V), float64(m.HeatLiquid.V)
	ofHeat := func(symbol, what, bSymbol string, H, b float64, hSymbol string) quantity.FreezingConstant {
		C := math.Pi / 4 * math.Pow(rho*H/(Te-T0)/b, 2) / 1e6
		p.Step(symbol, what, C, "s/mm^2", "pi / 4 * pow(rho_m * "+hSymbol+" / (T_e - T_0) / "+bSymbol+", 2)", flemings)
		return quantity.From[quantity.FreezingConstant](C, "s/mm^2")
	}
	H := p.Step("H", "heat to lose, part of the superheat counted", L+counted*cl*superheat, "J/kg", "L + u * c_l * Delta_T", flemings)
	Hhi := p.Step("H_hi", "heat to lose, all the superheat counted", L+cl*superheat, "J/kg", "L + c_l * Delta_T", flemings)
	return Band[quantity.FreezingConstant]{
		Low:  ofHeat("C_lo", "freezing constant, low end", "b_hi", L, bHigh, "L"),
		Mid:  ofHeat("C", "freezing constant", "b", H, b, "H"),
		High: ofHeat("C_hi", "freezing constant, high end", "b_lo", Hhi, bLow, "H_hi"),
	}
}
