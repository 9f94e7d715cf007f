package pour

import (
	"math"
	"strings"

	"pourwright/calc/flow"
	"pourwright/calc/freeze"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

var window = source.Derived("window of the pouring time")

// emptyWindow says which input to change first, and to what.
func (c *pouring) emptyWindow() {
	p := c.p
	from := source.Derived("continuity")
	A := p.Step("A_gw", "ingates wanted, all together", c.W/(c.rho*c.vIngate*c.long)*1e4, "cm^2", "W / (rho_m * v_i * t_l)", from)
	c.out.IngatesFor = quantity.Some(quantity.From[quantity.Area](A, "cm^2"))
	do := working.Say("Enlarge the ingates to %v in all, spread over more of them.", c.out.IngatesFor.V)
	if T, ok := c.hotEnough(); ok {
		do = working.Say("Enlarge the ingates to %v in all, spread over more of them; or pour at %v.", c.out.IngatesFor.V, T)
	}
	c.p.Find(working.Finding{Level: working.Stop, Code: "window-empty", Field: "ingate_area", Source: window,
		Text: working.Say("No pouring time will do: the ingates may not fill the mould in less than %v, and the thinnest wall stops running after %v at the utmost.", quantity.Time(c.shortUtmost), quantity.Time(c.longUtmost)),
		Do:   do})
	c.out.LimitedBy = "No time is left between the limits"
}

// hotEnough is the pouring temperature at which the thin wall lives, by its
// middle figures, as long as the ingates take with care; false where that is
// hotter than the metal is usually poured. The life grows as the square of the
// heat c ΔT + f L that the metal arrives with.
func (c *pouring) hotEnough() (quantity.Temperature, bool) {
	m := freeze.MetalOf(c.a)
	cl, fL := float64(m.HeatLiquid.V), c.share*float64(m.Latent.V)
	wants := math.Sqrt(c.short*float64(c.in.ThinShare.V)/float64(c.out.Life)) * (cl*float64(c.out.Superheat) + fL)
	arrives := quantity.In(m.Liquidus.V, "degC") + (wants-fL)/cl
	// The loss on the way is either stated or a share of what the metal has
	// over the mould, and so grows with the temperature.
	T, formula := arrives+float64(c.in.Drop.V), "T_n + T_g"
	if !c.in.Drop.Known() {
		T, formula = (arrives-flow.DropShare*quantity.In(c.in.MouldTemperature.V, "degC"))/(1-flow.DropShare), "(T_n - r_g * T_0) / (1 - r_g)"
	}
	if hot := quantity.From[quantity.Temperature](T, "degC"); hot <= c.in.PourTemperature || hot > c.a.PourThin.High {
		return 0, false
	}
	solved := source.Derived("the life of the thin wall solved for the superheat")
	c.p.Step("T_n", "temperature at which the metal must come to the wall", arrives, "degC", "T_L + (sqrt(t_s * y / t_f) * (c_l * Delta_T + f * L) - f * L) / c_l", solved)
	c.p.Step("T_pn", "pouring temperature for it", T, "degC", formula, solved)
	return quantity.From[quantity.Temperature](T, "degC"), true
}

// narrow says that no time is inside all the usual limits.
func (c *pouring) narrow() {
	c.p.Find(working.Finding{Level: working.Mind, Code: "window-narrow", Field: "ingate_area", Source: window,
		Text: working.Say("No time keeps all the usual limits: %q wants at least %v, %q at most %v. The time recommended lies between them and keeps neither.",
			c.nameOf(atLeast), quantity.Time(c.short), c.nameOf(atMost), quantity.Time(c.long)),
		Do: c.widen()})
}

// widen says what would open the usual window.
func (c *pouring) widen() working.Text {
	from := source.Derived("the shortest time goes as one over the area")
	if c.nameOf(atLeast) == ventLimit {
		A := c.p.Step("A_vn", "vents wanted, all together", float64(c.in.Vents.V)*1e4*c.short/c.long, "cm^2", "A_v * t_s / t_l", from)
		return working.Say("Enlarge the vents to %v in all.", quantity.From[quantity.Area](A, "cm^2"))
	}
	A := c.p.Step("A_gn", "ingates wanted, all together", float64(c.in.Ingates.V)*1e4*c.short/c.long, "cm^2", "A_g * t_s / t_l", from)
	return working.Say("Enlarge the ingates to %v in all, spread over more of them.", quantity.From[quantity.Area](A, "cm^2"))
}

// moved says by which limit the rule's time was moved.
func (c *pouring) moved(way string, t, rule float64) {
	c.p.Find(working.Finding{Level: working.Note, Code: "rule-moved", Source: window,
		Text: working.Say("The metal's rule says %v; the recommended time is %s, %v, because of: %s.", quantity.Time(rule), way, quantity.Time(t), lower(c.out.LimitedBy))})
}

// judge finds what is wrong with the pour as planned.
func (c *pouring) judge() {
	if c.in.Chosen.Known() {
		do := working.Say("Change the ingates or the pouring temperature first; then choose a time inside the window.")
		if c.out.Time.Known() {
			do = working.Say("Plan for %v.", c.out.Time.V)
		}
		c.against(c.in.Chosen.V, 0, "time", "chosen_time", "The time you mean to take, %v,", do)
	}
	c.chokeTime()
	c.wall()
	c.metal()
	c.margins()
	c.slowRise()
	if len(c.unknown) > 0 {
		c.p.Find(working.Finding{Level: working.Note, Code: "limits-not-known", Source: window,
			Text: working.Say("Not known yet, and so not counted: %s.", strings.Join(c.unknown, "; ")),
			Do:   working.Say("Fill in what stands in brackets.")})
	}
}

// against holds a time against the window, give or take a share of it, and says
// whether it lies inside.
func (c *pouring) against(t quantity.Time, slack float64, code, field, what string, do working.Text) (inside bool) {
	level := working.Mind
	v := float64(t)
	// Where the usual ends have crossed, their finding has been made already.
	lo, hi := c.short, c.long
	if c.out.Time.Known() {
		lo, hi = c.ends()
	}
	switch {
	case v > hi*(1+slack):
		text := working.Say(what+" is longer than the %v that the limits allow: %s.", t, quantity.Time(hi), lower(c.nameOf(atMost)))
		if v > c.longUtmost {
			level = working.Stop
			text = working.Say(what+" is too long: the thinnest wall stops running after %v at the utmost, and the mould will not fill.", t, quantity.Time(c.longUtmost))
		}
		c.p.Find(working.Finding{Level: level, Code: code + "-too-long", Field: field, Source: window, Text: text, Do: do})
	case v < lo*(1-slack):
		text := working.Say(what+" is shorter than the %v that the limits allow: %s.", t, quantity.Time(lo), lower(c.nameOf(atLeast)))
		if v < c.shortUtmost {
			level = working.Stop
			text = working.Say(what+" is too short: the metal would be faster than %v at the ingates.", t, quantity.Speed(c.vIngateMost))
		}
		c.p.Find(working.Finding{Level: level, Code: code + "-too-short", Field: field, Source: window, Text: text, Do: do})
	default:
		return true
	}
	return false
}

func lower(s string) string {
	if s == "" {
		return s
	}
	return strings.ToLower(s[:1]) + s[1:]
}

// chokeSlack is less than the discharge coefficient leaves open in the time of
// a choke; a choke cut as recommended must not be faulted for its rounding.
const chokeSlack = 0.05

// chokeTime holds the time of a given choke against the window and against
// the time reckoned with.
func (c *pouring) chokeTime() {
	if !c.out.ChokeTime.Known() {
		return
	}
	t := c.out.ChokeTime.V
	do := working.Say("Change the choke, once there is a time to aim for.")
	if c.tw > 0 {
		do = working.Say("Make the choke %v for the %v reckoned with.", c.out.ExactChoke.V, quantity.Time(c.tw))
	}
	if !c.against(t, chokeSlack, "choke", "choke_area", "The choke lets the metal in over %v, which", do) || c.tw == 0 {
		return
	}
	// A quarter is more than the discharge coefficient leaves open.
	if r := float64(t) / c.tw; r > 1.25 || r < 0.8 {
		c.p.Find(working.Finding{Level: working.Mind, Code: "choke-other-time", Field: "choke_area", Source: window,
			Text: working.Say("The choke gives %v, not the %v reckoned with; the choke decides, not the ladle.", t, quantity.Time(c.tw)), Do: do})
	}
}

// wall says whether the thin wall can be reached at all.
func (c *pouring) wall() {
	from := source.Derived("speed times the time it stays fluid")
	if !c.in.Run.Known() {
		c.unknown = append(c.unknown, "whether the thin wall runs to its end (the longest way to it)")
	} else {
		L := c.in.Run.V
		do := working.Say("Place ingates so that no metal runs further than %v through the thin wall, or pour hotter.", c.out.Runs)
		switch {
		case L > c.out.RunHigh:
			c.p.Find(working.Finding{Level: working.Stop, Code: "wall-too-long", Field: "flow_length", Source: from,
				Text: working.Say("The thin wall of %v will not run %v: even at %v the metal stops after %v at the utmost.", c.in.Thin, L, quantity.Speed(c.vIngateMost), c.out.RunHigh), Do: do})
		case L > c.out.Runs:
			c.p.Find(working.Finding{Level: working.Mind, Code: "wall-too-long", Field: "flow_length", Source: from,
				Text: working.Say("The thin wall of %v may not run %v: at %v the metal likely stops after %v, at the utmost after %v.", c.in.Thin, L, quantity.Speed(c.vIngate), c.out.Runs, c.out.RunHigh), Do: do})
		}
	}
	if c.in.Thin < c.a.MinWall.V {
		c.p.Find(working.Finding{Level: working.Mind, Code: "wall-thin", Field: "thin_wall", Source: c.a.MinWall.Source,
			Text: working.Say("A wall of %v is thinner than usually runs in sand with %v, %v.", c.in.Thin, c.a.Name, c.a.MinWall.V),
			Do:   working.Say("Thicken the wall to %v, or expect misruns.", c.a.MinWall.V)})
	}
	c.p.Find(working.Finding{Level: working.Note, Code: "life-band", Field: "freezing_constant", Source: from,
		Text: working.Say("The thin wall likely stays fluid for %v; with every doubtful figure at its worst it is %v, at its best %v.", c.out.Life, c.out.LifeLow, c.out.LifeHigh),
		Do:   working.Say("Time one casting of your own and enter its freezing constant, and note what your thin walls do.")})
}

// metal minds the pouring temperature.
func (c *pouring) metal() {
	if c.out.Superheat == 0 {
		c.p.Find(working.Finding{Level: working.Mind, Code: "arrives-cold", Field: "pour_temperature", Source: source.Derived("definition"),
			Text: working.Say("With %v lost in sprue and runners the metal comes to the wall at or below its liquidus of %v; it is freezing before it gets there.", c.in.Drop.V, c.a.Liquidus.V),
			Do:   working.Say("Pour at %v or above, the usual for light sections.", c.a.PourThin.Low)})
		return
	}
	low, high := min(c.a.PourThin.Low, c.a.PourThick.Low), max(c.a.PourThin.High, c.a.PourThick.High)
	if c.in.PourTemperature < low || c.in.PourTemperature > high {
		c.p.Find(working.Finding{Level: working.Mind, Code: "pour-temperature", Field: "pour_temperature", Source: c.a.PourThin.Source,
			Text: working.Say("%v is outside the %v to %v that %v is usually poured at.", c.in.PourTemperature, low, high, c.a.Name),
			Do:   working.Say("Pour inside that range, nearer its upper end for thin walls.")})
	}
}

// margins minds heads and coefficients that the choke leans on.
func (c *pouring) margins() {
	if c.out.Head.Known() {
		short := math.Sqrt(float64(c.out.Head.V)/float64(c.out.ExactHead.V)) - 1
		if short > 0.05 {
			c.p.Find(working.Finding{Level: working.Mind, Code: "head-low", Field: "sprue_height", Source: source.Derived("equal filling time of an even cavity"),
				Text: working.Say("The cavity reaches so near to the metal level that the last of it fills slowly: the trade's head makes the time %v too short.", quantity.Ratio(short)),
				Do:   working.Say("Raise the basin, and take the choke by the exact head.")})
		}
	}
	if c.out.Head.Known() && c.in.Discharge.V < 0.65 {
		c.p.Find(working.Finding{Level: working.Note, Code: "discharge-family", Field: "discharge", Source: source.Dubitskii.Memory("coefficients with back pressure, weakly remembered"),
			Text: working.Say("A discharge coefficient of %v comes from the tables that count the back pressure of the mould; those of 0.7 to 0.9 count sprue and runners only. Do not mix the two.", c.in.Discharge.V)})
	}
}

// slowRise remarks on a rise slower than is typical, where that figure is too
// weakly known to be a limit.
func (c *pouring) slowRise() {
	if c.typicalRise == 0 || !c.out.RiseSpeed.Known() || float64(c.out.RiseSpeed.V) >= c.typicalRise {
		return
	}
	c.p.Find(working.Finding{Level: working.Note, Code: "rise-slow", Field: "rise_speed", Source: c.riseFrom,
		Text: working.Say("The level rises at %v; %v or more is typical (%s). The figure is too weakly known to count as a limit.", c.out.RiseSpeed.V, quantity.Speed(c.typicalRise), c.riseRow),
		Do:   working.Say("If your castings show laps, pour faster; enter the rise that your own castings need.")})
}
