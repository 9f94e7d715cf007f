package ladleheat

import (
	"math"

	"pourwright/calc/figure"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// steps is the number of the finer of two runs; the coarser takes half of it.
const steps = 32

// longest is how far a time is looked for.
const longest = 24 * 3600.0

// deep is the depth of a mass of metal in a round ladle.
func deep(mass quantity.Mass, density quantity.Density, diameter quantity.Length) quantity.Length {
	return quantity.Length(4 * float64(mass) / (float64(density) * math.Pi * float64(diameter) * float64(diameter)))
}

// cases are the pot as it is most likely, and as it loses most and least.
type cases struct{ likely, most, least pot }

// build puts the ladle on the paper and makes the cases of it.
func (j *job) build() cases {
	p, in := j.p, j.in
	W := p.Give("W", "metal in the ladle", in.Mass, "kg")
	rho := look(p, "rho_m", "density of the liquid metal", j.metal.DensityLiquid, "kg/m^3")
	c := look(p, "c_l", "specific heat of the liquid metal", j.metal.HeatLiquid, "J/(kg*K)")
	var D float64
	if in.Diameter.Known() {
		own := working.GiveOpt(p, "D_own", "inside diameter, yours", in.Diameter, "m")
		D = p.Step("D", "inside diameter", own, "m", "D_own", ownFigure)
	} else {
		D = p.StepNote("D", "inside diameter", math.Cbrt(4*W/(math.Pi*rho)), "m", "cbrt(4 * W / (pi * rho_m))", geometry, "no diameter is stated, so the metal is taken to be as deep as it is wide")
	}
	h := p.Step("h", "depth of the metal", 4*W/(rho*math.Pi*D*D), "m", "4 * W / (rho_m * pi * pow(D, 2))", geometry)
	At := p.Step("A_t", "top of the metal", math.Pi/4*D*D, "m^2", "pi / 4 * pow(D, 2)", geometry)
	side := p.Step("A_s", "wetted side", math.Pi*D*h, "m^2", "pi * D * h", geometry)
	j.out.Depth, j.out.Wide = quantity.Some(quantity.Length(h)), quantity.Some(quantity.Length(D))
	s := working.GiveOpt(p, "s", "share of the metal left at the end", in.Left, "1")
	low, eps, high := j.emissivity()
	k := cases{}
	base := pot{mass: W, heat: c, left: s, transfer: float64(in.Transfer.V), pouring: float64(in.Pouring.Or(1)), ambient: float64(in.Surroundings.V), side: side, base: At}
	if !in.Pouring.Known() {
		base.left = 1
	}
	k.likely, k.most, k.least = base, base, base
	k.likely.radiating, k.most.radiating, k.least.radiating = eps*At, high*At, low*At
	if in.Vessel.V == crucible {
		j.crucible(&k, D, h)
	} else {
		j.lining(&k)
	}
	return k
}

// emissivity is the top's, cover counted: least, likely, most.
func (j *job) emissivity() (low, eps, high float64) {
	p, in := j.p, j.in
	bare := j.metal.Emissivity
	if in.Emissivity.Known() {
		bare = figure.Of[quantity.Ratio]{V: in.Emissivity.V, Source: ownFigure}
	}
	e := look(p, "epsilon_b", "emissivity of the bare top", bare, "1")
	l, h := bare.Span()
	p.Lookup("epsilon_lo", "emissivity of the bare top, low end", float64(l), "1", bare.Source, bare.Note)
	p.Lookup("epsilon_hi", "emissivity of the bare top, high end", float64(h), "1", bare.Source, bare.Note)
	switch in.Cover.V {
	case covered:
		most := look(p, "epsilon_c", "effective emissivity under a cover", coveredEmissivity, "1")
		eps = p.Step("epsilon", "emissivity that counts", math.Min(e, most), "1", "min(epsilon_b, epsilon_c)", coveredEmissivity.Source)
		return math.Min(float64(l), most), eps, math.Min(float64(h), most)
	case ownTop:
		share := working.GiveOpt(p, "psi", "share of the loss that the cover leaves", in.CoverShare, "1")
		eps = p.Step("epsilon", "emissivity that counts", e*share, "1", "epsilon_b * psi", ownFigure)
		return float64(l) * share, eps, float64(h) * share
	}
	return float64(l), p.Step("epsilon", "emissivity that counts", e, "1", "epsilon_b", bare.Source), float64(h)
}

// lining puts the lining on the paper.
func (j *job) lining(k *cases) {
	p, in := j.p, j.in
	Tp := look(p, "T_p", "lining heated to", j.preheat, "degC")
	kl := working.GiveOpt(p, "k_r", "heat conductivity of the lining", in.LiningConductivity, "W/(m*K)")
	rho := working.GiveOpt(p, "rho_r", "density of the lining", in.LiningDensity, "kg/m^3")
	c := working.GiveOpt(p, "c_r", "specific heat of the lining", in.LiningHeat, "J/(kg*K)")
	b := p.Step("b", "heat effusivity of the lining", math.Sqrt(kl*rho*c), "W*s^0.5/(m^2*K)", "sqrt(k_r * rho_r * c_r)", source.Carslaw.Memory("ch. II"))
	p.Step("A_w", "wetted lining", k.likely.side+k.likely.base, "m^2", "A_s + A_t", geometry)
	least, most := liningLeast, liningMost
	if in.LiningConductivity.State == quantity.Given {
		least, most = 1, 1
	}
	k.likely.effusivity, k.most.effusivity, k.least.effusivity = b, b*most, b*least
	for _, one := range []*pot{&k.likely, &k.most, &k.least} {
		one.preheat = Tp + 273.15
	}
}

// crucible puts the crucible's wall on the paper.
func (j *job) crucible(k *cases, D, h float64) {
	p, in := j.p, j.in
	w := working.GiveOpt(p, "w", "wall of the crucible", in.Wall, "m")
	kw := look(p, "k_w", "heat conductivity of the crucible", crucibleConductivity, "W/(m*K)")
	e := look(p, "epsilon_o", "emissivity of its outside", crucibleEmissivity, "1")
	c := look(p, "c_c", "specific heat of the crucible", crucibleHeat, "J/(kg*K)")
	var mass float64
	if in.CrucibleMass.Known() {
		own := working.GiveOpt(p, "m_own", "weight of the crucible, yours", in.CrucibleMass, "kg")
		mass = p.Step("m_c", "weight of the crucible", own, "kg", "m_own", ownFigure)
	} else {
		rho := look(p, "rho_c", "density of the crucible", crucibleDensity, "kg/m^3")
		mass = p.Step("m_c", "weight of the crucible, as far as the metal stands", rho*(math.Pi/4*(D+2*w)*(D+2*w)*(h+w)-math.Pi/4*D*D*h), "kg", "rho_c * (pi / 4 * pow(D + 2 * w, 2) * (h + w) - pi / 4 * pow(D, 2) * h)", geometry)
	}
	outSide := p.Step("A_o", "outside of the crucible beside the metal", math.Pi*(D+2*w)*h, "m^2", "pi * (D + 2 * w) * h", geometry)
	outBase := p.Step("A_b", "base of the crucible", math.Pi/4*(D+2*w)*(D+2*w), "m^2", "pi / 4 * pow(D + 2 * w, 2)", geometry)
	for _, one := range []*pot{&k.likely, &k.most, &k.least} {
		one.extra, one.conducts, one.emits, one.outerSide, one.outerBase = mass*c, kw/w, e, outSide, outBase
	}
	// The estimates of the wall are as loose as those of a lining.
	k.most.conducts *= liningMost
	k.least.conducts *= liningLeast
}

// ending is the temperature at a time, K, by Richardson's extrapolation of two
// runs, and the difference of the two as the bound.
func (k *pot) ending(T, t float64) (end, bound float64) { return newTwice().ending(k, T, t) }

// secant is the root of a smooth function that is nearly a straight line, and
// its slope there, from a place a where it is fa and its slope is about known;
// false where the way leads beyond most, or twenty rounds do not bring the
// function within tol. The last step is taken unseen where the parabola through
// the three last places leaves less than tol at its end.
func secant(f func(float64) float64, a, fa, slope, most, tol float64) (root, last float64, ok bool) {
	before := a
	for range 20 {
		b := a - fa/slope
		if !(b <= most) {
			return 0, 0, false
		}
		fb := f(b)
		chord := (fb - fa) / (b - a)
		if math.Abs(fb) <= tol {
			return b, chord, true
		}
		next := b - fb/chord
		bend := (chord - slope) / (b - before)
		if math.Abs(bend*(next-a)*(next-b)) <= tol {
			return next, chord, next <= most
		}
		before, a, fa, slope = a, b, fb, chord
	}
	return 0, 0, false
}

// need is the temperature in the ladle as filled for which it is low at the
// time t, and the bound of the end; unknown above most. The end rises with the
// beginning, nearly in a straight line and ever less, so that where the rule of
// secants leads beyond most there is nothing below.
func (k *pot) need(course twice, low, t, most float64) (T, bound float64, ok bool) {
	over := func(T float64) float64 {
		end, b := course.ending(k, T, t)
		bound = b
		return end - low
	}
	at := over(low)
	if at >= 0 {
		return low, bound, true
	}
	T, _, ok = secant(over, low, at, 1, most, 1e-6)
	return T, bound, ok
}

// holds is the time, standing, after which metal filled at T has come down to
// T1, and the bound of its error; false where it is not there within a day.
func (k *pot) holds(T, T1 float64) (t, bound float64, ok bool) {
	t, ok = k.stand(T, T1, longest, 0.16)
	if !ok || t == 0 {
		return t, 0, ok
	}
	still, course := k.standing(), newTwice()
	over := func(t float64) float64 {
		end, b := course.ending(still, T, t)
		bound = b
		return end - T1
	}
	at := over(t)
	t, slope, ok := secant(over, t, at, course.fine.slope(), math.Inf(1), 1e-6)
	return t, bound / math.Abs(slope), ok
}

const method = "m c dT/dt = −ε σ A_t (T⁴ − T_a⁴) − q A_w, q by Duhamel's sum over the lining's face; mass and wetted wall fall while pouring; " +
	"%d steps, and half as many for comparison, extrapolated; the two differ by %.2g K"

const crucibleMethod = "(m c + m_c c_c) dT/dt = −ε σ A_t (T⁴ − T_a⁴) − (k_w/w) (T − T_o) A_o, where the outside T_o radiates what comes through the wall; mass falls while pouring; " +
	"%d steps, and half as many for comparison, extrapolated; the two differ by %.2g K"

// modelled answers from the ladle's own heat balance.
func (j *job) modelled() {
	p, in := j.p, j.in
	j.begin()
	k := j.build()
	used := []string{"W", "c_l", "epsilon", "A_t", "T_a", "b", "A_w", "T_p"}
	text := method
	if in.Vessel.V == crucible {
		used, text = []string{"W", "c_l", "epsilon", "A_t", "T_a", "A_o", "A_b", "k_w", "w", "m_c", "c_c", "epsilon_o"}, crucibleMethod
	}
	celsius := func(symbol, what string, T, bound float64, more ...string) quantity.Opt[quantity.Temperature] {
		T = p.Solve(symbol, what, T-273.15, "degC", p.Word(text, steps, bound), append(more, used...), duhamel)
		return quantity.Some(quantity.From[quantity.Temperature](T, "degC"))
	}
	course, toStart, toEnd := newTwice(), newTwice(), newTwice()
	low := float64(j.out.Low)
	dropLeast, dropMost := j.drop.Span()
	if in.Pouring.Known() {
		if T, bound, ok := k.likely.need(course, low, j.finish(), float64(mostTap)); ok && T+float64(j.drop.V) <= float64(mostTap) {
			j.out.TapNeeded = celsius("T_n", "tapping temperature needed", T+float64(j.drop.V), bound, "T_c", "t_x", "s", "d")
		}
	}
	if j.out.TapNeeded.Known() {
		if T, bound, ok := k.most.need(course, low, j.finish(), float64(mostTap)); ok && T+float64(dropMost) <= float64(mostTap) {
			j.out.TapNeededHigh = celsius("T_n_hi", "tapping temperature needed, with the worst of drop and losses", T+float64(dropMost), bound, "T_c", "t_x", "s", "d_hi")
		}
	}
	filled := j.fill()
	j.first(k.likely, filled)
	T, bound := toStart.ending(&k.likely, filled, k.likely.transfer)
	j.out.Start = celsius("T_s", "as pouring begins", T, bound, "T_f", "t_1").V
	if in.Pouring.Known() {
		T, bound = toEnd.ending(&k.likely, filled, j.finish())
		j.out.End = celsius("T_e", "as the last mould is full", T, bound, "T_f", "t_x", "s")
		T, bound = course.ending(&k.most, filled-float64(dropMost-j.drop.V), j.finish())
		j.out.EndLow = celsius("T_e_lo", "as the last mould is full, at the least", T, bound, "T_f", "t_x", "s", "d_hi")
		T, bound = course.ending(&k.least, filled+float64(j.drop.V-dropLeast), j.finish())
		j.out.EndHigh = celsius("T_e_hi", "as the last mould is full, at the most", T, bound, "T_f", "t_x", "s", "d_lo")
	}
	j.rate(&k.likely, toStart.fine)
	j.stays(&k, filled, used)
	j.heats(toEnd.fine, used)
	if p.Draws() {
		j.curves(&k, filled, dropLeast, dropMost)
	}
}

// first are the two losses by their own formulas, each alone, so that one can
// see which rules.
func (j *job) first(k pot, filled float64) {
	p := j.p
	p.Const("sigma", "Stefan-Boltzmann constant", sigma, "W/(m^2*K^4)", stefan)
	p.Const("t_m", "one minute", 1, "min", definition)
	epsilon := k.radiating / k.base
	flux := p.Step("j_t", "radiated by the top", epsilon*sigma*(quad(filled)-quad(k.ambient)), "W/m^2", "epsilon * sigma * (pow(T_f, 4) - pow(T_a, 4))", stefan)
	j.out.TopFlux = quantity.Some(quantity.HeatFlux(flux))
	top := p.Step("d_t", "lost in a minute by the top, ladle just filled", flux*k.base*60/(k.mass*k.heat), "K", "j_t * A_t * t_m / (W * c_l)", balance)
	j.out.TopFirst = quantity.Some(quantity.TempDiff(top))
	if j.in.Vessel.V == crucible || filled < k.preheat {
		return
	}
	p.Const("t_5", "five minutes", 5, "min", definition)
	wall := p.Step("d_w", "lost in a minute into the lining, mean of the first five, metal held hot", 2*k.effusivity*(k.side+k.base)*(filled-k.preheat)/math.Sqrt(math.Pi*300)*60/(k.mass*k.heat), "K",
		"2 * b * A_w * (T_f - T_p) / sqrt(pi * t_5) * t_m / (W * c_l)", source.Carslaw.Memory("ch. II, face at one temperature"))
	j.out.WallFirst = quantity.Some(quantity.TempDiff(wall))
}

// rate is the loss as pouring begins, at the end of the course c, and the even
// decay that stands for it.
func (j *job) rate(k *pot, c *course) {
	p := j.p
	Ts, Ta := float64(j.out.Start), k.ambient
	Pt := p.Step("P_t", "power radiated by the top, as pouring begins", k.radiating*sigma*(quad(Ts)-quad(Ta)), "W", "epsilon * sigma * A_t * (pow(T_s, 4) - pow(T_a, 4))", stefan)
	var loss float64
	if j.in.Vessel.V == crucible {
		q, _ := k.shed(Ts)
		q = p.Solve("q_o", "shed by each area of the crucible's outside", q, "W/m^2", "(k_w/w) (T_s − T_o) = ε_o σ (T_o⁴ − T_a⁴), by Newton's rule to 1e-11", []string{"k_w", "w", "T_s", "T_a", "epsilon_o"}, stefan)
		Po := p.Step("P_o", "power shed by the crucible's outside", q*(k.outerSide+k.outerBase), "W", "q_o * (A_o + A_b)", definition)
		loss = p.Step("d_m", "lost in a minute, as pouring begins", (Pt+Po)*60/(k.mass*k.heat+k.extra), "K", "(P_t + P_o) * t_m / (W * c_l + m_c * c_c)", balance)
	} else {
		q := p.Solve("q_w", "taken by each area of the lining, as pouring begins", c.flux(len(c.at)-1), "W/m^2", "q = (b/√π) { (T_f − T_p)/√t + 2 Σ (ΔT/Δt) [√(t − t₁) − √(t − t₂)] } at t_1", []string{"b", "T_f", "T_p", "t_1"}, duhamel)
		Pw := p.Step("P_w", "power taken by the lining", q*(k.side+k.base), "W", "q_w * A_w", definition)
		loss = p.Step("d_m", "lost in a minute, as pouring begins", (Pt+Pw)*60/(k.mass*k.heat), "K", "(P_t + P_w) * t_m / (W * c_l)", balance)
	}
	j.out.PerMinute = quantity.TempDiff(loss)
	const least = 1e-6 // K: below this there is no loss to speak of
	decay := source.Derived("even decay that loses as much")
	// A lining colder than the surroundings can take the metal below them, where
	// no even decay leads.
	switch {
	case j.in.Pouring.Known() && Ts-float64(j.out.End.V) > least && float64(j.out.End.V)-Ta > least:
		tau := p.Step("tau", "time constant of the loss", float64(j.in.Pouring.V)/math.Log((Ts-Ta)/(float64(j.out.End.V)-Ta)), "s", "t_2 / ln((T_s - T_a) / (T_e - T_a))", decay)
		j.out.Constant = quantity.Some(quantity.Time(tau))
	case !j.in.Pouring.Known() && loss > least && Ts-Ta > least:
		tau := p.Step("tau", "time constant of the loss", (Ts-Ta)/loss*60, "s", "(T_s - T_a) / d_m * t_m", decay)
		j.out.Constant = quantity.Some(quantity.Time(tau))
	}
}

// stays is how long the metal is fit to pour, standing.
func (j *job) stays(k *cases, filled float64, used []string) {
	p := j.p
	low, high := float64(j.out.Low), float64(j.out.High)
	time := func(symbol, what string, k *pot, from, to float64, edge string) quantity.Opt[quantity.Time] {
		if from <= to {
			return quantity.Opt[quantity.Time]{}
		}
		t, bound, ok := k.holds(from, to)
		if !ok {
			return quantity.Opt[quantity.Time]{}
		}
		t = p.Solve(symbol, what, t, "s", p.Word("the same balance with nothing poured, until the metal is down to it, by the rule of secants; within %.2g s", bound), append([]string{"T_f", edge}, used...), duhamel)
		return quantity.Some(quantity.Time(t))
	}
	_, dropMost := j.drop.Span()
	j.out.Holds = time("t_h", "stays hot enough for", &k.likely, filled, low, "T_c")
	j.out.HoldsLow = time("t_h_lo", "stays hot enough for, at the least", &k.most, filled-float64(dropMost-j.drop.V), low, "T_c")
	j.out.Wait = time("t_w", "falls to the hottest to pour after", &k.likely, filled, high, "T_h")
}

// heats are where the heat went in the course c until the last mould is full,
// and whether it all went somewhere.
func (j *job) heats(c *course, used []string) {
	if !j.in.Pouring.Known() {
		return
	}
	p := j.p
	used = append([]string{"T_f", "t_x", "s"}, used...)
	energy := func(symbol, what string, v float64) quantity.Opt[quantity.Energy] {
		return quantity.Some(quantity.Energy(p.Solve(symbol, what, v, "J", p.Word("summed over the %d steps of the balance", steps), used, balance)))
	}
	j.out.TopHeat = energy("Q_t", "heat lost by the top", c.top)
	lost := c.top
	if j.in.Vessel.V == crucible {
		j.out.Outside = energy("Q_o", "heat lost from the outside of the crucible", c.outer)
		lost += c.outer
	} else {
		j.out.WallHeat = energy("Q_w", "heat lost into the lining", c.wall)
		lost += c.wall
	}
	if lost > 0 {
		// To nine places: beyond them stands only the rounding of the arithmetic,
		// which is not the same on every machine.
		open := math.Round(math.Abs(c.held-lost)/lost*1e9) / 1e9
		gap := p.Solve("x_u", "heat balance open by", open, "1", "heat given by metal and crucible less heat lost, over the heat lost", used, balance)
		j.out.Unmatched = quantity.Some(quantity.Ratio(gap))
	}
}

// curves are the metal's temperature in the three cases, and the window.
func (j *job) curves(k *cases, filled float64, dropLeast, dropMost quantity.TempDiff) {
	span, poured := j.span(), j.in.Pouring.Known()
	for _, one := range []struct {
		label string
		k     pot
		T     float64
	}{
		{"Most likely", k.likely, filled},
		{"Losing most", k.most, filled - float64(dropMost-j.drop.V)},
		{"Losing least", k.least, filled + float64(j.drop.V-dropLeast)},
	} {
		s := curve(one.label)
		// When the metal is poured the picture ends; a ladle that only stands goes
		// on.
		if poured && one.k.left < 1 {
			span = j.finish()
		}
		c := one.k.run(one.T, span, chartPoints)
		for i, t := range c.at {
			s.Points = append(s.Points, working.Point{X: t, Y: c.temperature[i]})
		}
		j.out.Curves = append(j.out.Curves, s)
	}
	j.out.Curves[0].Bands = j.bands()
}
