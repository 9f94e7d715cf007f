package freeze

import (
	"errors"
	"fmt"
	"math"
)

// Wall is the data of a flat wall of melt that freezes against a mould, for
// the exact solutions. SI units; temperatures in °C or K alike, as only their
// differences count.
type Wall struct {
	// Conductivity k_s, Density ρ_s and Heat c_s of the solid metal, and its
	// latent heat.
	Conductivity, Density, Heat, Latent float64
	// Melting is the melting point T_m, Mould the mould's temperature T_0.
	Melting, Mould float64
	// Effusivity of the mould; 0 for a wall held at T_0 (a chill with water).
	Effusivity float64
	// Poured is the temperature T_p of a superheated melt; at or below Melting
	// for none.
	Poured float64
	// LiquidConductivity and LiquidHeat of the melt, needed with superheat.
	// Its density is taken as that of the solid, so that nothing flows.
	LiquidConductivity, LiquidHeat float64
}

// Front is an exact solution: the frozen thickness is s = 2φ√(α_s t).
type Front struct {
	// Phi is the root φ, Bound the width of the interval it was caught in.
	Phi, Bound float64
	// N is √((kρc) of the solid over that of the mould), 0 for a held wall.
	N float64
	// Face is the temperature of the mould's face, constant in time.
	Face float64
	// Diffusivity α_s of the solid, m²/s.
	Diffusivity float64
}

// Time is how long the front takes to a depth s (m): t = s²/(4 φ² α_s).
func (f Front) Time(depth float64) float64 {
	return depth * depth / (4 * f.Phi * f.Phi * f.Diffusivity)
}

// ErrNeverFreezes says that a melt without end, hotter than the mould can draw
// down to its melting point, never begins to freeze.
var ErrNeverFreezes = errors.New("the superheat of an endless melt is more than this mould can draw off; it never begins to freeze")

// Solve finds Neumann's similarity solution for a flat front, by bisection of
// a monotone function.
//
// With St = c_s (T_m − T_0)/L: a wall held at T_0 has
//
//	φ e^{φ²} erf φ = St/√π
//
// (Carslaw and Jaeger, ch. XI; Crank, eq. 3.14); a thick mould replaces erf φ
// by erf φ + N (Poirier and Geiger, ch. 10); a melt poured at T_p takes off
// what it brings,
//
//	St/√π · e^{−φ²}/(erf φ + N) − (k_l/k_s) g c_s (T_p − T_m)/(L√π) · e^{−φ²g²}/erfc(φ g) = φ,
//
// with g = √(α_s/α_l). The left side falls with φ, so there is one root, or
// none: at φ = 0 it must be above 0, that is T_p − T_m < (T_m − T_0) b_m/b_l.
// Beyond, the contact temperature of melt and mould lies above T_m and nothing
// freezes; Solve returns ErrNeverFreezes. A casting is not endless and does
// freeze, but this solution cannot say when.
//
// It holds for one melting temperature, flat walls, mould and melt thick
// against √(α t), and perfect contact.
func Solve(w Wall) (Front, error) {
	for _, v := range []float64{w.Conductivity, w.Density, w.Heat, w.Latent, w.Melting - w.Mould} {
		if !(v > 0) {
			return Front{}, fmt.Errorf("the wall's figures must be above zero and the mould colder than the melting point")
		}
	}
	f := Front{Diffusivity: w.Conductivity / (w.Density * w.Heat), Face: w.Mould}
	if w.Effusivity > 0 {
		f.N = math.Sqrt(w.Conductivity*w.Density*w.Heat) / w.Effusivity
	}
	st := w.Heat * (w.Melting - w.Mould) / w.Latent / math.Sqrt(math.Pi)
	f.Phi, f.Bound = bisect(0, 10, func(phi float64) float64 {
		return phi*math.Exp(phi*phi)*(math.Erf(phi)+f.N) - st
	})
	if w.Poured > w.Melting {
		if !(w.LiquidConductivity > 0) || !(w.LiquidHeat > 0) {
			return Front{}, fmt.Errorf("the melt's conductivity and heat must be above zero")
		}
		alphaL := w.LiquidConductivity / (w.Density * w.LiquidHeat)
		g := math.Sqrt(f.Diffusivity / alphaL)
		brought := w.LiquidConductivity / w.Conductivity * g * w.Heat * (w.Poured - w.Melting) / w.Latent / math.Sqrt(math.Pi)
		if f.N > 0 && !(st/f.N > brought) {
			return Front{}, ErrNeverFreezes
		}
		// Superheat slows the front, so the root lies below that without it.
		f.Phi, f.Bound = bisect(0, f.Phi, func(phi float64) float64 {
			return phi + brought/erfcx(phi*g) - st*math.Exp(-phi*phi)/(math.Erf(phi)+f.N)
		})
	}
	if f.N > 0 {
		f.Face = w.Melting - (w.Melting-w.Mould)*math.Erf(f.Phi)/(math.Erf(f.Phi)+f.N)
	}
	return f, nil
}

// erfcx is e^{x²} erfc x for x ≥ 0, which stays a number where erfc has long
// underflowed.
func erfcx(x float64) float64 {
	if x < 25 {
		return math.Exp(x*x) * math.Erfc(x)
	}
	// Asymptotic series; at x = 25 the next term is below 1e-8.
	y := 1 / (2 * x * x)
	return (1 - y + 3*y*y) / (x * math.Sqrt(math.Pi))
}

// bisect finds where the rising function f crosses zero between lo and hi, to
// the last bit that halving can give.
func bisect(lo, hi float64, f func(float64) float64) (root, bound float64) {
	for range 200 {
		mid := lo + (hi-lo)/2
		if mid <= lo || mid >= hi {
			break
		}
		if f(mid) < 0 {
			lo = mid
		} else {
			hi = mid
		}
	}
	return lo + (hi-lo)/2, hi - lo
}
