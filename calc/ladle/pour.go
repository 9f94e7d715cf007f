package ladle

import (
	"fmt"
	"math"

	"pourwright/calc/quantity"
	"pourwright/calc/solve"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// balance is where the tilt against time comes from: Noda, Terashima and
// others wrote the balance of a tilting ladle as
//
//	A dh/dt = −q − h (dA/dθ) ω − (dV/dθ) ω
//
// for a layer of depth h over the lip, a free surface A and a volume V below
// the level of the lip. With the head held even, dh/dt is nothing, and the
// tilt rate is ω = q/(−dV/dθ − h dA/dθ): no more is poured than V + A h falls.
var balance = source.Tilting.Memory("quasi-steady balance of a tilting ladle")

// exact says how the roots are found.
const exact = " V from the closed forms for a tipped cylinder or cone; root by bisection and interpolation to 10^-12 rad"

// total is the metal in a ladle at a tilt while the wanted flow runs: what lies
// below the level of the lip, and the layer over it.
func (j *job) total(tilt float64) float64 {
	return j.vessel.left(tilt) + j.head*j.vessel.surface(tilt)
}

// tiltOf is the tilt between two others at which a falling volume reaches a
// value.
func tiltOf(volume func(float64) float64, value, from, to float64) float64 {
	return solve.Root(func(tilt float64) float64 { return volume(tilt) - value }, from, to, 1e-12)
}

// rate is the tilt rate that the wanted flow needs at a tilt.
func (j *job) rate(tilt float64) float64 {
	return j.flow / (j.vessel.sweep(tilt) - j.head*j.vessel.slope(tilt))
}

// mostHead is the head up to which V + A h falls at every tilt, so that a
// schedule exists: half the radius at the lip, found by trial over ladles of
// all proportions; in a shallow one that narrows upwards the free surface grows
// so fast that it is a tenth.
func (j *job) mostHead() float64 {
	if v := j.vessel; v.taper < 0 && v.depth < v.top {
		return 0.1 * v.top
	}
	return 0.5 * j.vessel.top
}

// thickLayer is the head, as a share of the radius at the lip, over which the
// layer is no longer thin and the tilts are rough.
const thickLayer = 0.25

var thin = source.Derived("the layer over the lip is taken as thin beside the ladle")

// pour puts the angles of the pour and its schedule on the paper.
func (j *job) pour() {
	p, v := j.p, j.vessel
	if most := j.mostHead(); j.head > most {
		p.Find(working.Finding{Level: working.Stop, Code: "flow-too-much", Field: "lip", Source: thin,
			Text: working.Say("The flow of %v needs a head of %v over this lip; this ladle pours steadily only up to %v.", j.out.Flow, quantity.Length(j.head), quantity.Length(most)),
			Do:   working.Say("Widen the lip, or pour no more than %v.", j.massFlow(most))})
		return
	}
	if j.head > thickLayer*v.top {
		p.Find(working.Finding{Level: working.Mind, Code: "layer-thick", Field: "lip", Source: thin,
			Text: working.Say("The head of %v over the lip is more than a quarter of the ladle's radius; the tilts worked out are rough.", quantity.Length(j.head)),
			Do:   working.Say("Widen the lip, or pour no more than %v.", j.massFlow(thickLayer*v.top))})
	}
	last := v.empties
	if stays := v.left(last); j.keep < stays*(1-1e-9) {
		p.Find(working.Finding{Level: working.Stop, Code: "traps-metal", Field: "bottom", Source: geometry,
			Text: working.Say("The ladle narrows upwards and keeps %v when it lies flat at 90°; it cannot be poured down to %v.", quantity.Mass(j.rho*stays), j.out.Left),
			Do:   working.Say("Put %v more in it, or take a ladle that widens upwards.", quantity.Mass(j.rho*(stays-j.keep)))})
	}
	end := math.Max(j.keep, j.total(last))
	if end > j.keep && j.keep >= v.left(last) {
		p.Find(working.Finding{Level: working.Mind, Code: "flow-dwindles", Field: "bottom", Source: balance,
			Text: working.Say("The ladle narrows upwards: the flow of %v can be held until it lies at 90° with %v still in it; the rest runs off ever more slowly.", j.out.Flow, quantity.Mass(j.rho*end)),
			Do:   working.Say("Put %v more in it, or take a ladle that widens upwards.", quantity.Mass(j.rho*(end-j.keep)))})
	}
	if !(end < j.volume*(1-1e-9)) {
		p.Find(working.Finding{Level: working.Stop, Code: "flow-too-much", Field: "lip", Source: balance,
			Text: working.Say("The layer that the flow of %v wants over the lip, %v deep, is all that there is to pour.", j.out.Flow, quantity.Length(j.head)),
			Do:   working.Say("Widen the lip, pour more slowly, or put more metal in the ladle.")})
		return
	}
	p.Step("V_h", "volume to be left", 1000*j.keep, "L", "M_h / rho_l", massOf)
	if end == j.keep {
		p.Step("V_e", "volume at the end of the pour", 1000*end, "L", "V_h", definition)
	} else {
		p.Solve("V_e", "volume at the end of the pour", 1000*end, "L", "what stays at 90°, with the layer over the lip: V(90°) + h A(90°)", []string{"V_h", "h"}, geometry)
	}
	lip := tiltOf(v.left, j.volume, 0, last)
	start := tiltOf(j.total, j.volume, lip, last)
	stop := tiltOf(j.total, end, start, last)
	shape := []string{"R_t", "R_b", "L", "m", "V_m"}
	p.Solve("theta_0", "tilt at which metal reaches the lip", degrees(lip), "deg", "V(θ) = V_m."+exact, shape, geometry)
	p.Solve("theta_1", "tilt at which the flow wanted runs", degrees(start), "deg", "V(θ) + h A(θ) = V_m: the metal below the lip and the layer over it. Tip briskly from the tilt where metal reaches the lip to this one; time counts from here."+exact, append(shape, "h"), balance)
	p.Solve("theta_e", "tilt at the end of the pour", degrees(stop), "deg", "V(θ) + h A(θ) = V_e."+exact, append(shape, "h", "V_e"), balance)
	t := p.Step("t_e", "time of the pour", (j.volume-end)/j.flow, "s", "(V_m - V_e) / q", source.Derived("an even flow"))
	j.out.LipTilt, j.out.StartTilt, j.out.EndTilt = angleOf(lip), angleOf(start), angleOf(stop)
	j.out.PourTime = some(quantity.Time(t))
	j.schedule(start, stop, end)
	j.even(lip, end, t)
	j.marks(start, stop, end)
}

// massFlow is what a head drives over the lip.
func (j *job) massFlow(head float64) quantity.MassFlow {
	return quantity.MassFlow(j.rho * float64(j.in.Lip.Flow(quantity.Length(head))))
}

func angleOf(radians float64) quantity.Opt[quantity.Angle] { return some(quantity.Angle(radians)) }

// steady is the share of the pour over which tilt rates and flows are
// compared; the last of a ladle is poured by eye.
const steady = 0.95

// schedule draws the tilt against time for the wanted flow. The volume at each
// tilt is exact, so the time at which it is reached is too.
func (j *job) schedule(start, stop, end float64) {
	const points = 80
	s := working.Series{Label: "Flow held even", X: timeAxis, Y: tiltAxis}
	slow, fast := math.Inf(1), 0.0
	for i := range points + 1 {
		tilt := start + (stop-start)*float64(i)/points
		poured := j.volume - j.total(tilt)
		if i == 0 {
			poured = 0
		}
		s.Points = append(s.Points, working.Point{X: poured / j.flow, Y: tilt})
		if poured <= steady*(j.volume-end) {
			w := j.rate(tilt)
			slow, fast = math.Min(slow, w), math.Max(fast, w)
		}
	}
	j.out.TiltChart = []working.Series{s}
	const how = "ω = q/(−dV/dθ − h dA/dθ) at 81 tilts from θ₁ to θₑ, as far as 95 % is poured; −dV/dθ is the free surface times the distance of its centre from the lip, exact; dA/dθ by a difference over 0.0002 rad"
	used := []string{"q", "h", "R_t", "R_b", "L", "m", "theta_1", "theta_e"}
	j.out.RateSlow = some(turning(j.p.Solve("omega_s", "slowest tilt rate", degrees(slow), "deg/s", "the least of "+how, used, balance)))
	j.out.RateFast = some(turning(j.p.Solve("omega_f", "fastest tilt rate", degrees(fast), "deg/s", "the most of "+how, used, balance)))
}

// even compares a pour of the same length at an even tilt rate: the flow is the
// sweep of the surface times the rate, and is anything but even. The layer
// over the lip is left out here.
func (j *job) even(lip, end, t float64) {
	const points = 60
	p, v := j.p, j.vessel
	stop := tiltOf(v.left, end, lip, v.empties)
	p.Solve("theta_f", "tilt at the end, without the layer over the lip", degrees(stop), "deg", "V(θ) = V_e."+exact, []string{"R_t", "R_b", "L", "m", "V_e"}, geometry)
	rate := p.Step("omega_c", "even tilt rate for the same time", degrees(stop-lip)/t, "deg/s", "(theta_f - theta_0) / t_e", definition) * math.Pi / 180
	s := working.Series{Label: "Tilt rate held even", X: timeAxis, Y: flowAxis}
	least, most := math.Inf(1), 0.0
	for i := range points + 1 {
		share := float64(i) / points
		tilt := lip + (stop-lip)*share
		q := j.rho * v.sweep(tilt) * rate
		s.Points = append(s.Points, working.Point{X: t * share, Y: q})
		if j.volume-v.left(tilt) <= steady*(j.volume-end) {
			least, most = math.Min(least, q), math.Max(most, q)
		}
	}
	const how = "ρ ω (−dV/dθ) at 61 tilts from θ₀ on, as far as 95 % is poured"
	used := []string{"rho_l", "omega_c", "R_t", "R_b", "L", "m", "theta_0", "theta_f"}
	j.out.EvenRate = some(turning(degrees(rate)))
	j.out.EvenLeast = some(quantity.MassFlow(p.Solve("q_1", "least flow at the even rate", least, "kg/s", "the least of "+how, used, geometry)))
	j.out.EvenMost = some(quantity.MassFlow(p.Solve("q_2", "most flow at the even rate", most, "kg/s", "the most of "+how, used, geometry)))
	wanted := working.Series{Label: "Flow held even", X: timeAxis, Y: flowAxis,
		Points: []working.Point{{X: 0, Y: float64(j.out.Flow)}, {X: t, Y: float64(j.out.Flow)}}}
	j.out.FlowChart = []working.Series{wanted, s}
	j.out.TiltChart = append(j.out.TiltChart, working.Series{Label: "Tilt rate held even", X: timeAxis, Y: tiltAxis,
		Points: []working.Point{{X: 0, Y: lip}, {X: t, Y: stop}}})
	if most > 1.25*least {
		first, slow, fast := turning(degrees(j.rate(float64(j.out.StartTilt.V)))), j.out.RateSlow.V, j.out.RateFast.V
		do := working.Say("Follow the tilt against time: start at %v, slow down to %v where the flow wants to run away, then speed up.", first, slow)
		if !(first > 1.05*slow) {
			do = working.Say("Follow the tilt against time: start at %v and speed up to %v as the ladle empties.", first, fast)
		}
		p.Find(working.Finding{Level: working.Note, Code: "even-tilt-uneven-flow", Field: "tilt", Source: geometry,
			Text: working.Say("Tipped at an even %v the same ladle would give between %v and %v: an even tilt is not an even flow.", turning(degrees(rate)), quantity.MassFlow(least), quantity.MassFlow(most)),
			Do:   do})
	}
}

var (
	timeAxis = working.Axis{Label: "Time", Kind: quantity.Time(0).Kind()}
	tiltAxis = working.Axis{Label: "Tilt", Kind: quantity.Angle(0).Kind()}
	flowAxis = working.Axis{Label: "Flow", Kind: quantity.MassFlow(0).Kind()}
)

// marks works the pour out at every fifth of it.
func (j *job) marks(start, stop, end float64) {
	const parts = 5
	from := start
	for i := range parts + 1 {
		p := j.p.Sub(fmt.Sprintf("marks[%d]", i))
		p.Number("i", "part of the pour", float64(i), "")
		p.Number("n_i", "parts of the pour", parts, "")
		share := p.Step("s", "share poured", float64(i)/parts, "1", "i / n_i", definition)
		t := p.Step("t", "time since the flow began", share*float64(j.out.PourTime.V), "s", "s * t_e", definition)
		volume := j.volume - share*(j.volume-end)
		p.Step("V_i", "volume in the ladle", 1000*volume, "L", "V_m - s * (V_m - V_e)", definition)
		mass := p.Step("M_i", "metal in the ladle", j.rho*volume, "kg", "rho_l * V_i", massOf)
		tilt := stop
		if i < parts {
			tilt = tiltOf(j.total, volume, from, stop)
		}
		from = tilt
		p.Solve("theta", "tilt", degrees(tilt), "deg", "V(θ) + h A(θ) = V_i."+exact, []string{"R_t", "R_b", "L", "m", "h", "V_i"}, balance)
		mark := Mark{Poured: quantity.Ratio(share), Time: quantity.Time(t), Tilt: quantity.Angle(tilt), Left: quantity.Mass(mass)}
		j.putLeft(p, tilt)
		// The last of the metal runs off a surface that shrinks to nothing.
		if volume > 1e-6*j.volume && tilt < j.vessel.empties-1e-6 {
			mark.Rate = some(j.putRate(p, tilt))
		}
		j.out.Marks = append(j.out.Marks, mark)
	}
}

// putRate puts the tilt rate at a tilt on the paper.
func (j *job) putRate(p *working.Paper, tilt float64) quantity.AngularSpeed {
	v := j.vessel
	shape := []string{"R_t", "R_b", "L", "m", "theta"}
	sweep := p.Solve("S", "volume let go for each radian", 1000*v.sweep(tilt), "L",
		"S = −dV/dθ: the free surface times the distance of its centre from the lip, exact", shape, geometry)
	slope := p.Solve("A_1", "growth of the surface for each radian", 1e4*v.slope(tilt), "cm^2", "dA/dθ by a difference over 0.0002 rad, good to about 1 in 10^6", shape, geometry)
	h := 1000 * j.head
	return turning(p.Step("omega", "tilt rate", degrees(j.flow/(sweep/1000-h/1000*slope/1e4)), "deg/s", "q / (S - h * A_1)", balance))
}
