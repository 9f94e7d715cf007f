package pour

import (
	"fmt"
	"math"

	"pourwright/calc/alloy"
	"pourwright/calc/flow"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// Masses at which the trade's rules change.
const (
	greyJump  = 450.0  // kg
	thinMost  = 1000.0 // kg, end of the rule for intricate walls
	steelFrom = 45.0   // kg
	steelTo   = 45000.0
)

// sums works a rule out on its own paper and returns its time and, where the
// rule is a range, its ends; all in s. A time of 0 is not known.
type sums func(p *working.Paper) (t, low, high float64)

func (c *pouring) rule(name, within string, inRange bool, from source.Ref, work sums) {
	sub := c.p.Sub(fmt.Sprintf("rules[%d]", len(c.out.Rules)))
	t, low, high := work(sub)
	r := Rule{Name: name, Within: within, InRange: inRange, Source: from}
	if t > 0 {
		r.Time = quantity.Some(quantity.Time(t))
	}
	if high > 0 {
		r.Low, r.High = quantity.Some(quantity.Time(low)), quantity.Some(quantity.Time(high))
	}
	c.out.Rules = append(c.out.Rules, r)
}

// use makes a rule the one for the recommended time.
func (c *pouring) use(i int) {
	r := &c.out.Rules[i]
	r.Used = true
	c.out.ByRule = r.Time.V
	c.p.Solve("t_r", "time by the metal's rule", float64(r.Time.V), "s", "taken over from: "+r.Name, []string{"W_r", "T"}, r.Source)
	if !r.InRange {
		c.p.Find(working.Finding{Level: working.Mind, Code: "rule-out-of-range", Field: "poured_mass", Source: r.Source,
			Text: working.Say("The rule used, %q, was made for %s; here it is taken for %v of %v with walls of %v.", r.Name, r.Within, quantity.Mass(c.Wr), c.a.Name, c.in.Wall),
			Do:   working.Say("Go by the limits first, and note what your own pours take.")})
	}
}

// rules puts the rules of the metal's family side by side.
func (c *pouring) rules() error {
	switch c.a.Family {
	case alloy.GreyIron:
		return c.greyIron()
	case alloy.DuctileIron:
		c.ductile()
	case alloy.Steel:
		c.steel()
	case alloy.Copper:
		c.copper()
	default:
		c.light()
	}
	return nil
}

// greyIron is the pair of the American texts, in their metric form. In inch
// and pound it reads K (0.95 + T/0.853) √W, or ∛W above 1000 lb, and the
// metric figures are those, converted. The pair does not meet at 450 kg: the
// time falls there to a third.
func (c *pouring) greyIron() error {
	if err := c.fluidity(); err != nil {
		return err
	}
	K, from := float64(c.out.Factor.V), source.Rao.Memory("ch. 4, pouring time; the formula also seen in a course sheet")
	W, T := c.Wr, c.T
	c.rule("Grey iron up to 450 kg", "up to 450 kg", W <= greyJump, from, func(p *working.Paper) (float64, float64, float64) {
		p.Const("a_1", "coefficient", 1.41, "s/kg^0.5", from)
		p.Const("a_2", "coefficient", 14.59, "mm*kg^0.5/s", from)
		return p.Step("t", "pouring time", K*(1.41+T/14.59)*math.Sqrt(W), "s", "K * (a_1 + T / a_2) * sqrt(W_r)", from), 0, 0
	})
	c.rule("Grey iron above 450 kg", "above 450 kg", W > greyJump, from, func(p *working.Paper) (float64, float64, float64) {
		p.Const("a_1", "coefficient", 1.236, "s/kg^(1/3)", from)
		p.Const("a_2", "coefficient", 16.65, "mm*kg^(1/3)/s", from)
		return p.Step("t", "pouring time", K*(1.236+T/16.65)*math.Cbrt(W), "s", "K * (a_1 + T / a_2) * cbrt(W_r)", from), 0, 0
	})
	c.general(1.7, 1.85, 2.0, "grey iron", true)
	c.intricate()
	jump := working.Note
	if W > greyJump/1.5 && W < greyJump*1.5 {
		jump = working.Mind
	}
	if W <= greyJump {
		c.use(0)
	} else {
		c.use(1)
	}
	c.p.Find(working.Finding{Level: jump, Code: "grey-iron-jump", Field: "poured_mass", Source: from,
		Text: working.Say("The two grey iron rules do not meet: at 450 kg the time drops to about a third. They give %v and %v here; the general form gives %v.", c.out.Rules[0].Time.V, c.out.Rules[1].Time.V, c.out.Rules[2].Time.V),
		Do:   working.Say("Near 450 kg trust neither alone; go by the general form and the limits.")})
	return nil
}

// fluidity puts grey iron's fluidity factor K on the paper: the length of the
// standard spiral in inches over 40.
func (c *pouring) fluidity() error {
	p, in := c.p, c.in
	if in.Fluidity.V == ByFactor {
		c.out.Factor = in.Factor
		K := working.GiveOpt(p, "K_own", "fluidity factor as stated", in.Factor, "1")
		p.Step("K", "fluidity factor", K, "1", "K_own", source.Practice("your own spiral, or the middle of the usual 0.6 to 1"))
		return nil
	}
	from := source.Porter.Memory("length of the fluidity spiral")
	C, Si := p.Give("w_C", "carbon", in.Carbon, "%"), p.Give("w_Si", "silicon", in.Silicon, "%")
	P := working.GiveOpt(p, "w_P", "phosphorus", in.Phosphorus, "%")
	CF := p.Step("C_F", "composition factor", C+0.25*Si+0.5*P, "%", "w_C + 0.25 * w_Si + 0.5 * w_P", from)
	Tp := p.Give("T_p", "pouring temperature", in.PourTemperature, "degC")
	zero := p.Const("T_z", "zero of the Fahrenheit scale", (0.0-32)*5/9, "degC", source.BIPM.Memory("definition of the scale"))
	p.Const("a_c", "coefficient of the composition", 14.9, "in/%", from)
	p.Const("a_T", "coefficient of the temperature, 0.05 in for each °F", 0.09, "in/K", from)
	p.Const("a_0", "constant", 155, "in", from)
	Ls := p.Step("L_s", "fluidity spiral", 14.9*CF+0.09*(Tp-zero)-155, "in", "a_c * C_F + a_T * (T_p - T_z) - a_0", from)
	p.Const("L_0", "spiral for which the rule was made", 40, "in", source.Rao.Memory("ch. 4, fluidity factor"))
	const least, most = 8, 64 // a factor of 0.2 to 1.6, as a stated one may have
	if !(Ls >= least && Ls <= most) {
		return form.Faults{{Field: "carbon", Label: "Carbon", Value: quantity.Text(in.Carbon),
			Why: working.Say("with this analysis and pouring temperature the spiral comes out as %v; the rule is good for %v to %v",
				quantity.Length(Ls)*quantity.Inch, least*quantity.Inch, most*quantity.Inch)}}
	}
	K := p.Step("K", "fluidity factor", Ls/40, "1", "L_s / L_0", source.Rao.Memory("ch. 4, fluidity factor"))
	c.out.Factor, c.out.Spiral = quantity.Some(quantity.Number(K)), quantity.Some(quantity.From[quantity.Length](Ls, "in"))
	return nil
}

// general is t = s ∛(δ W), with δ the governing wall in mm and W in kg.
func (c *pouring) general(low, mid, high float64, metals string, inRange bool) {
	from := source.Dubitskii.Memory("t = s ∛(δ W)")
	c.rule("General form by wall and mass", metals, inRange, from, func(p *working.Paper) (t, lo, hi float64) {
		root := math.Cbrt(c.T * c.Wr)
		const unit = "s/(kg^(1/3)*mm^(1/3))"
		p.Const("s_lo", "coefficient, low end", low, unit, from)
		p.Const("s", "coefficient", mid, unit, from)
		p.Const("s_hi", "coefficient, high end", high, unit, from)
		lo = p.Step("t_lo", "pouring time, from", low*root, "s", "s_lo * cbrt(T * W_r)", from)
		hi = p.Step("t_hi", "pouring time, to", high*root, "s", "s_hi * cbrt(T * W_r)", from)
		return p.Step("t", "pouring time", mid*root, "s", "s * cbrt(T * W_r)", from), lo, hi
	})
}

// intricate are the rules for intricate thin-walled iron castings. Up to
// 450 kg the older gating literature takes the square root of the mass, some
// later copies the cube root; both stand here. The mass includes gates and
// risers.
func (c *pouring) intricate() {
	from := source.Dubitskii.Memory("intricate thin walls; repeated by P. N. Rao, ch. 4")
	copied := source.Rao.Memory("ch. 4, intricate thin walls, as some copies print it")
	k3, row := thirdCoefficient(c.T)
	within := "up to 450 kg, walls 1.5 to 15 mm"
	in := c.W <= greyJump && k3 > 0
	c.rule("Intricate thin walls, square root", within, in, from, func(p *working.Paper) (float64, float64, float64) {
		if k3 == 0 {
			return 0, 0, 0
		}
		p.Lookup("K_3", "coefficient", k3, "s/kg^0.5", from, row)
		return p.Step("t", "pouring time", k3*math.Sqrt(c.W), "s", "K_3 * sqrt(W)", from), 0, 0
	})
	c.rule("Intricate thin walls, cube root", within, in, copied, func(p *working.Paper) (float64, float64, float64) {
		if k3 == 0 {
			return 0, 0, 0
		}
		p.Lookup("K_3", "coefficient", k3, "s/kg^(1/3)", copied, row)
		return p.Step("t", "pouring time", k3*math.Cbrt(c.W), "s", "K_3 * cbrt(W)", copied), 0, 0
	})
	k4, row4 := fourthCoefficient(c.T)
	c.rule("Intricate castings from 450 kg", "450 to 1000 kg", c.W > greyJump && c.W <= thinMost, from, func(p *working.Paper) (float64, float64, float64) {
		p.Lookup("K_4", "coefficient", k4, "s/(kg^(1/3)*mm^(1/3))", from, row4)
		return p.Step("t", "pouring time", k4*math.Cbrt(c.W*c.T), "s", "K_4 * cbrt(W * T)", from), 0, 0
	})
}

func thirdCoefficient(T float64) (k float64, row string) {
	switch {
	case T < 1.5 || T > 15:
		return 0, ""
	case T <= 2.5:
		return 1.62, "row 1.5 to 2.5 mm"
	case T <= 3.5:
		return 1.68, "row 2.5 to 3.5 mm; elsewhere 1.63"
	case T <= 8:
		return 1.85, "row 3.5 to 8 mm"
	}
	return 2.2, "row 8 to 15 mm"
}

func fourthCoefficient(T float64) (k float64, row string) {
	switch {
	case T <= 10:
		return 1.00, "row up to 10 mm"
	case T <= 20:
		return 1.35, "row 10 to 20 mm"
	case T <= 40:
		return 1.50, "row 20 to 40 mm"
	}
	return 1.70, "row over 40 mm"
}

// ductile has one printed rule, for shell moulds poured upright; the sands of
// the lists are none, so it is always marked as stretched.
func (c *pouring) ductile() {
	from := source.Rao.Memory("ch. 4, shell-moulded ductile iron")
	k, row := 2.67, "row 10 to 25 mm"
	if c.T < 10 {
		k, row = 2.08, "row under 10 mm"
	} else if c.T > 25 {
		k, row = 2.97, "row over 25 mm"
	}
	c.rule("Ductile iron in shell moulds, poured upright", "shell moulds poured upright", false, from, func(p *working.Paper) (float64, float64, float64) {
		p.Lookup("K_1", "coefficient", k, "s/kg^0.5", from, row)
		return p.Step("t", "pouring time", k*math.Sqrt(c.Wr), "s", "K_1 * sqrt(W_r)", from), 0, 0
	})
	c.general(1.7, 1.85, 2.0, "grey iron", false)
	c.use(0)
}

// steel falls from the printed rule; the same rule in pounds, t = k √W, has k
// from 1.2 at 100 lb to 0.4 at 100 000 lb, which bounds it.
func (c *pouring) steel() {
	from := source.Rao.Memory("ch. 4, steel castings")
	c.rule("Steel", "45 kg to 45 t", c.Wr >= steelFrom && c.Wr <= steelTo, from, func(p *working.Paper) (float64, float64, float64) {
		p.Const("a_1", "coefficient", 2.4335, "s/kg^0.5", from)
		p.Const("a_2", "coefficient", 0.3953, "s/kg^0.5", from)
		p.Const("W_1", "1 kg", 1, "kg", from)
		return p.Step("t", "pouring time", (2.4335-0.3953*math.Log10(c.Wr))*math.Sqrt(c.Wr), "s", "(a_1 - a_2 * log10(W_r / W_1)) * sqrt(W_r)", from), 0, 0
	})
	switch c.in.Gate.V {
	case flow.Bottom:
		c.general(1.3, 1.3, 1.3, "steel, bottom gated", true)
	case flow.Top:
		c.general(1.5, 1.55, 1.6, "steel, top gated", true)
	default:
		c.general(1.4, 1.4, 1.4, "steel, gated at the side", true)
	}
	c.use(0)
}

// copper is t = K₂ ∛W. The printed list mixes places of the gate with alloys,
// so without a chosen row the whole range stands.
func (c *pouring) copper() {
	from := source.Rao.Memory("ch. 4, copper alloys")
	k, row := 2.05, "middle of the whole list, 1.3 to 2.8"
	switch c.in.Copper.V {
	case CopperTop:
		k, row = 1.30, "top gated"
	case CopperBottom:
		k, row = 1.80, "bottom gated"
	case CopperBrass:
		k, row = 1.90, "brass"
	case CopperTinBronze:
		k, row = 2.80, "tin bronze"
	}
	c.rule("Copper alloys", "no range is printed; the list runs from 1.3 to 2.8", true, from, func(p *working.Paper) (t, lo, hi float64) {
		root := math.Cbrt(c.Wr)
		p.Lookup("K_2", "coefficient", k, "s/kg^(1/3)", from, row)
		p.Const("K_lo", "least coefficient of the list", 1.3, "s/kg^(1/3)", from)
		p.Const("K_hi", "greatest coefficient of the list", 2.8, "s/kg^(1/3)", from)
		lo = p.Step("t_lo", "pouring time, from", 1.3*root, "s", "K_lo * cbrt(W_r)", from)
		hi = p.Step("t_hi", "pouring time, to", 2.8*root, "s", "K_hi * cbrt(W_r)", from)
		return p.Step("t", "pouring time", k*root, "s", "K_2 * cbrt(W_r)", from), lo, hi
	})
	c.general(1.8, 1.9, 2.0, "copper alloys", true)
	c.use(0)
}

// light metals have no rule that the trade agrees on.
func (c *pouring) light() {
	if c.a.Family == alloy.Aluminium {
		c.general(1.7, 2.35, 3.0, "aluminium and magnesium", true)
	} else {
		c.general(1.7, 2.35, 3.0, "aluminium and magnesium", false)
	}
	c.use(0)
	c.p.Find(working.Finding{Level: working.Note, Code: "no-rule", Source: source.Practice("no single rule is accepted for light and low-melting metals"),
		Text: working.Say("The trade has no accepted rule of pouring time for this metal; the general form gives %v to %v. The speed at the ingates and the life of the thin wall decide.", c.out.Rules[0].Low.V, c.out.Rules[0].High.V)})
}
