package freeze

import (
	"math"

	"pourwright/calc/source"
	"pourwright/calc/working"
)

// Stream is metal running through a thin wall.
type Stream struct {
	Metal Metal
	// Thickness of the wall δ, mm.
	Thickness float64
	// Superheat it arrives with, K; Liquidus and Mould temperatures, °C.
	Superheat, Liquidus, Mould float64
}

// Guess is one reading of what is known only within a range, with the symbols
// under which it stands on the paper.
type Guess struct {
	// Share of the latent heat lost when the metal stops, f; see Coherency.
	Share float64
	// Effusivity of the mould, b.
	Effusivity float64
	// Touch is the share of the heat that a wall covered all the time would
	// take, κ: Still for the first metal, Moving for the whole stream.
	Touch float64

	ShareAs, EffusivityAs, TouchAs string
}

// The ends of Guess.Touch.
const (
	Still  = 1.0
	Moving = 2.0 / 3
)

// Life says how long metal in a channel δ thick stays fluid enough to flow.
// It needs on the paper rho_m, L, c_l, T_L, T_0 (as Metal.Put and the caller
// lay them), delta (mm), Delta_T (K), the superheat it arrives with, and what
// the guess names. The result goes there under symbol, in s.
//
// The metal between two mould faces a distance δ apart loses heat through both,
// so a volume V has the cooled area A = 2V/δ. It flows until it has lost its
// superheat and a share f of its latent heat, when the crystals lock into one
// another or meet from the walls. A thick mould whose face jumps from T_0 to
// the liquidus T_L takes up (2/√π) b (T_L − T_0) √t per area, so metal that
// touches the same sand all the time stops after
//
//	t = (π/4) [ρ_m (δ/2)(c_l ΔT + f L) / (κ b (T_L − T_0))]²,   κ = 1.
//
// A running stream covers the sand by and by: after a time t the sand a
// fraction ξ of the way along has been covered for (1 − ξ) t, and the mean of
// √(1 − ξ) over the stream is 2/3. So the stream as a whole loses two thirds
// of that heat, κ = 2/3, and lives 9/4 as long. Its tip, which meets cold sand
// all the way, is colder than the stream; where it is stirred in, the longer
// life holds, where it runs ahead, not even the shorter. Both are given.
//
// Flemings' fluidity length, L_f = ρ a v (H + c ΔT)/(2 h ΔT_m) for a channel of
// radius a and a fixed heat transfer h, is the same balance: a speed times the
// time to lose the heat through the wall. With sand instead of a fixed h the
// time grows with the square of the thickness.
//
// Limits: the face is taken at the liquidus, though superheated metal holds it
// a little above, which with the usual superheats shortens the time by less
// than a tenth. Edges, gas, oxide films and surface tension, which rules in
// walls under some 3 mm, are left out. The mould must be an insulating one,
// thick against √(α t).
func Life(p *working.Paper, symbol, what string, s Stream, g Guess) float64 {
	heat := float64(s.Metal.HeatLiquid.V)*s.Superheat + g.Share*float64(s.Metal.Latent.V)
	t := math.Pi / 4 * math.Pow(float64(s.Metal.Density.V)*s.Thickness/2000*heat/(g.Touch*g.Effusivity*(s.Liquidus-s.Mould)), 2)
	return p.Step(symbol, what, t, "s",
		"pi / 4 * pow(rho_m * delta / 2 * (c_l * Delta_T + "+g.ShareAs+" * L) / ("+g.TouchAs+" * "+g.EffusivityAs+" * (T_L - T_0)), 2)",
		source.Derived("heat balance of a thin stream in a thick mould, after Flemings' fluidity length"))
}

// Coherency is the share of the latent heat that metal loses before it stops
// flowing, by its freezing range: metals that freeze over a short range flow
// on as a channel between smooth walls, those with a long range stiffen as a
// slush. Without a source; what is known is the order: short ranges flow on
// longer (Flemings, from memory).
func Coherency(rangeK float64) (low, mid, high float64) {
	switch {
	case rangeK <= 50:
		return 0.4, 0.5, 0.6
	case rangeK <= 100:
		return 0.3, 0.4, 0.5
	}
	return 0.2, 0.3, 0.4
}

// HeatSpeed turns a shop's measured freezing constant back into the mould's
// effusivity, W·s½/(m²·K), given the share of superheat counted: the rule of
// Constant solved for b. It needs rho_m, L, c_l, T_e, T_0, Delta_T, C_own
// (s/mm²) and the share under the symbol share on the paper.
func HeatSpeed(p *working.Paper, symbol, what, share string, m Metal, Te, T0, superheat, counted, ownC float64) float64 {
	rho, L, cl := float64(m.Density.V), float64(m.Latent.V), float64(m.HeatLiquid.V)
	b := rho * (L + counted*cl*superheat) / (Te - T0) * math.Sqrt(math.Pi/4/(ownC*1e6))
	return p.Step(symbol, what, b, effusivityUnit, "rho_m * (L + "+share+" * c_l * Delta_T) / (T_e - T_0) * sqrt(pi / 4 / C_own)", flemings)
}
