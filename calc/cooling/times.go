package cooling

import (
	"fmt"
	"math"

	"pourwright/calc/quantity"
	"pourwright/calc/soak"
	"pourwright/calc/solve"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// fineStep is the step of the finer of two runs; the coarser takes twice that.
// The difference of the two is the bound that is shown.
const fineStep = 0.04

// temperatures settles what the casting is to come down to: T_x for the
// recommended time, T_y for the earliest.
func (j *job) temperatures() (sure, most float64) {
	p := j.p
	if j.in.Shakeout.Known() {
		own := working.GiveOpt(p, "T_own", "your shakeout temperature", j.in.Shakeout, "degC")
		stated := source.Own("your own figure")
		sure = p.Step("T_x", "shakeout temperature", own, "degC", "T_own", stated)
		most = p.Step("T_y", "most at shakeout", own, "degC", "T_own", stated)
	} else {
		mostOf, sureOf := habits[j.d.family].temperatures(j.in.Stress.V == "prone")
		s, m := quantity.In(sureOf.V, "degC"), quantity.In(mostOf.V, "degC")
		p.Lookup("T_sure", "usual shakeout temperature, low end", s, "degC", sureOf.Source, "")
		p.Lookup("T_most", "usual shakeout temperature, high end", m, "degC", mostOf.Source, "")
		sure = p.Step("T_x", "shakeout temperature", s, "degC", "T_sure", sureOf.Source)
		most = p.Step("T_y", "most at shakeout", m, "degC", "T_most", mostOf.Source)
	}
	j.out.RecommendedTemperature = quantity.From[quantity.Temperature](sure, "degC")
	j.out.EarliestTemperature = quantity.From[quantity.Temperature](most, "degC")
	return sure, most
}

// theta is a temperature in °C as a share of the way from mould to freezing.
func (j *job) theta(T float64) float64 { return (T - j.T0) / (j.Te - j.T0) }

// prepare lays out the three reckonings and runs them down to T.
//
// With figures of the lists the low one has sand that draws heat readily and
// no superheat. With a constant of the shop's own the freezing time is settled,
// and what is left open is how much heat froze with it: the more, the less
// there is to lose in proportion, and the shorter the cooling.
func (j *job) prepare(T float64) {
	p, d := j.p, j.d
	L := float64(d.metal.Latent.V)
	csLow, csHigh := d.heatSolid.Span()
	eLow, eHigh := d.change.Span()
	look(p, "c_s", "specific heat of the solid", d.heatSolid, "J/(kg*K)")
	p.Lookup("c_s_lo", "specific heat of the solid, low end", float64(csLow), "J/(kg*K)", d.heatSolid.Source, "low end of the range")
	p.Lookup("c_s_hi", "specific heat of the solid, high end", float64(csHigh), "J/(kg*K)", d.heatSolid.Source, "high end of the range")
	if d.change.V > 0 {
		look(p, "L_c", "heat of the change near 730 °C", d.change, "J/kg")
	}
	heatLow, heatHigh := L, j.Hhi
	if j.in.Constant.Known() {
		heatLow, heatHigh = j.Hhi, L
	}
	j.reckonings = [3]reckoning{
		{freezing: float64(j.out.FreezingLow), heat: heatLow, cs: float64(csLow)},
		{freezing: float64(j.out.Freezing), heat: j.H, cs: float64(d.heatSolid.V)},
		{freezing: float64(j.out.FreezingHigh), heat: heatHigh, cs: float64(csHigh)},
	}
	change := [3]float64{float64(eLow), float64(d.change.V), float64(eHigh)}
	for i := range j.reckonings {
		r := &j.reckonings[i]
		m := body{
			stefan: r.cs * (j.Te - j.T0) / r.heat, change: change[i] / r.heat,
			upper: j.theta(changeUpper), lower: j.theta(changeLower),
		}
		if m.lower <= 0 {
			m.change = 0 // the casting never comes down to the change
		}
		r.fine = march(m, j.theta(T), math.Inf(1), fineStep)
		r.coarse = march(m, j.theta(T), math.Inf(1), 2*fineStep)
	}
}

// time is when the metal is down to T, and how far the steps may be out:
// Richardson's extrapolation of two runs, bounded by their difference.
func (r reckoning) time(theta float64) (seconds, bound float64) {
	a, b := r.coarse.when(theta), r.fine.when(theta)
	return r.freezing * (b + (b-a)/3), r.freezing * math.Abs(b-a)
}

const method = "ρ_m M [H + h(T_e) − h(T)] = (2 b/√π) { (T_e − T_0) √t + ⅔ Σ (ΔT/Δt) [(t − t₁)^1.5 − (t − t₂)^1.5] }, " +
	"h with c_s and the heat of the change near 730 °C; %d straight runs, and half as many for comparison; the two differ by %.2g %%"

// cooling works out the times in the sand.
func (j *job) cooling() {
	p := j.p
	Tx, Ty := j.temperatures()
	j.prepare(Tx)
	j.biot()
	used := []string{"M", "T_e", "T_0", "rho_m", "H", "c_s", "b", "t_f"}
	if j.d.change.V > 0 {
		used = append(used, "L_c")
	}
	solved := func(symbol, what string, r reckoning, T float64, target string, used []string) quantity.Time {
		t, bound := r.time(j.theta(T))
		m := fmt.Sprintf(method, len(r.fine.at)-1, 100*bound/t)
		return quantity.Time(p.Solve(symbol, what, t, "s", m, append(used, target), duhamel))
	}
	j.out.Time = solved("t", "most likely time to the shakeout temperature", j.reckonings[middle], Tx, "T_x", used)
	j.out.TimeLow = solved("t_lo", "time to the shakeout temperature, at least", j.reckonings[low], Tx, "T_x", []string{"M", "T_e", "T_0", "c_s_lo", "t_f_lo"})
	j.out.TimeHigh = solved("t_hi", "time to the shakeout temperature, at most", j.reckonings[high], Tx, "T_x", []string{"M", "T_e", "T_0", "c_s_hi", "H_hi", "t_f_hi"})
	j.out.Earliest = solved("t_e", "most likely time to the most that is usual at shakeout", j.reckonings[middle], Ty, "T_y", used)
	j.out.Recommended = j.out.TimeHigh
	j.fresh(Tx)
	j.opened()
	j.sand()
	if p.Draws() {
		j.curves()
	}
}

// biot checks that the casting is alike in temperature all through. The sand
// draws h = b/√(π t) per degree, most as the metal has just frozen; since t_f
// grows as M², the number is the same for every size.
func (j *job) biot() {
	k := look(j.p, "k_s", "heat conductivity of the hot solid", j.d.conductivity, "W/(m*K)")
	Bi := j.p.Step("Bi", "Biot number as the metal has just frozen", j.b*j.M/1000/(k*math.Sqrt(math.Pi*float64(j.out.Freezing))), "1",
		"b * M / (k_s * sqrt(pi * t_f))", source.Carslaw.Memory("surface conductance b/√(πt) of a thick wall"))
	j.out.Biot = quantity.Number(Bi)
}

// fresh is the formula for a casting put hot into fresh sand.
func (j *job) fresh(Tx float64) {
	rho, cs := float64(j.d.metal.Density.V), float64(j.d.heatSolid.V)
	y := j.p.Step("y", "share of the way from mould to freezing", j.theta(Tx), "1", "(T_x - T_0) / (T_e - T_0)", source.Derived("definition"))
	// Stirred falls from 1 at 0; by x = 1/(y √π) it is below y.
	x := solve.Root(func(x float64) float64 { return y - soak.Stirred(x) }, 0, 1/(y*math.SqrtPi), 1e-13)
	j.p.Solve("x", "root of the formula for fresh sand", x, "1", "e^(x²) erfc x = y, by bracketing to 1e-13", []string{"y"}, source.Carslaw.Memory("ch. XII, stirred body in a thick wall"))
	t := j.p.Step("t_n", "time by the formula for fresh sand", math.Pow(x*rho*cs*j.M/1000/j.b, 2), "s", "pow(x * rho_m * c_s * M / b, 2)", source.Carslaw.Memory("ch. XII, stirred body in a thick wall"))
	j.out.Fresh = quantity.Time(t)
}

// opened is how hot the casting is when the mould is opened at a set time.
func (j *job) opened() {
	if !j.in.OpenAfter.Known() {
		return
	}
	t := working.GiveOpt(j.p, "t_o", "time at which the mould is opened", j.in.OpenAfter, "s")
	at := func(symbol, what, freezing string, r reckoning) quantity.Opt[quantity.Temperature] {
		T := j.Te
		if z := t / r.freezing; z > 1 {
			long := march(r.fine.body, 0, z, fineStep)
			T = j.T0 + (j.Te-j.T0)*long.heat(z)
		}
		return quantity.Some(quantity.From[quantity.Temperature](j.p.Solve(symbol, what, T, "degC", "the same balance at the time t_o; the freezing temperature until it is solid", []string{"t_o", freezing, "T_e", "T_0"}, duhamel), "degC"))
	}
	j.out.Open = at("T_o", "casting when the mould is opened", "t_f", j.reckonings[middle])
	j.out.OpenHigh = at("T_o_hi", "casting when the mould is opened, at most", "t_f_hi", j.reckonings[high])
}

// sand asks whether the sand that the casting has to itself is enough.
func (j *job) sand() {
	if !j.in.SandThickness.Known() {
		return
	}
	p, d := j.p, j.d
	w := working.GiveOpt(p, "w", "sand round the casting", j.in.SandThickness, "mm")
	k := look(p, "k_m", "heat conductivity of the mould", d.mouldConductivity, "W/(m*K)")
	rhoD := look(p, "rho_d", "density of the mould", d.mouldDensity, "kg/m^3")
	cD := look(p, "c_d", "specific heat of the mould", d.mouldHeat, "J/(kg*K)")
	t := float64(j.out.Time)
	alpha := p.Step("alpha_m", "heat diffusivity of the mould", k/(rhoD*cD), "m^2/s", "k_m / (rho_d * c_d)", source.Derived("definition"))
	ws := p.Step("w_s", "share of the heat at the face that is felt at the end of the sand", math.Erfc(w/1000/(2*math.Sqrt(alpha*t))), "1",
		"erfc(w / (2 * sqrt(alpha_m * t)))", source.Carslaw.Memory("ch. II, face at one temperature"))
	j.out.Warmed = quantity.Some(quantity.Ratio(ws))
	rho, cs := float64(d.metal.Density.V), float64(d.heatSolid.V)
	m := p.Step("m_a", "metal over each area of mould", rho*j.M/1000, "kg/m^2", "rho_m * M", source.Derived("definition"))
	s := p.Step("s_a", "sand over each area of mould", rhoD*w/1000, "kg/m^2", "rho_d * w", source.Derived("a flat layer"))
	formula, change := "T_0 + m_a * (H + c_s * (T_e - T_0)) / (m_a * c_s + s_a * c_d)", 0.0
	if d.change.V > 0 {
		formula, change = "T_0 + m_a * (H + L_c + c_s * (T_e - T_0)) / (m_a * c_s + s_a * c_d)", float64(d.change.V)
	}
	Tq := p.Step("T_q", "temperature that casting and its sand come to, if nothing were lost", j.T0+m*(j.H+change+cs*(j.Te-j.T0))/(m*cs+s*cD), "degC", formula, source.Derived("balance of heat"))
	j.out.Mixed = quantity.Some(quantity.From[quantity.Temperature](Tq, "degC"))
}

// mostPoints is how many points a curve has at the most.
const mostPoints = 60

// curves are the cooling curves of the three reckonings.
func (j *job) curves() {
	for i, label := range []string{"Cooling soonest", "Most likely", "Cooling latest"} {
		r := j.reckonings[i]
		s := working.Series{Label: label, X: working.Axis{Label: "Time from the end of the pour", Kind: j.out.Time.Kind()}, Y: working.Axis{Label: "Temperature of the casting", Kind: j.out.Effective.Kind()}}
		point := func(z, theta float64) {
			s.Points = append(s.Points, working.Point{X: z * r.freezing, Y: quantity.From[quantity.Temperature](j.T0+(j.Te-j.T0)*theta, "degC").SI()})
		}
		point(0, 1)
		every := len(r.fine.at)/mostPoints + 1
		for n := 0; n < len(r.fine.at); n += every {
			point(r.fine.at[n], r.fine.theta[n])
		}
		j.out.Curves = append(j.out.Curves, s)
	}
}
