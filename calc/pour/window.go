package pour

import (
	"math"

	"pourwright/calc/alloy"
	"pourwright/calc/flow"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// pouring is one pour being worked out.
type pouring struct {
	in  Input
	a   *alloy.Alloy
	p   *working.Paper
	out Output

	// W is the mass poured and Wr that for the rules, kg; T the mean wall, mm;
	// rho the liquid density, kg/m³.
	W, Wr, T, rho float64

	// The window, s; zero where a side is not known.
	short, shortUtmost, long, longUtmost float64
	// vIngate and vIngateMost are the ingate limits, m/s.
	vIngate, vIngateMost float64
	// tw is the time reckoned with; zero where there is none.
	tw float64
	// share is the share of latent heat at which the metal stops, middle.
	share float64

	// typicalRise is a rise of the level that is remarked on but is no limit,
	// m/s, with its row and source.
	typicalRise float64
	riseRow     string
	riseFrom    source.Ref

	unknown []string
}

// Window works out the pouring time and its window; see the package comment.
//
// Refused: metal at or below its liquidus, or hotter than anyone pours it; a
// mould nearly as hot as the metal freezes; a cavity that stands above the
// metal in the basin; figures that contradict each other. Limits that need an
// input not given are named as not known, never guessed.
func Window(in Input, p *working.Paper) (Output, error) {
	in, faults := form.Ready(in)
	if len(faults) == 0 {
		faults = consistent(in)
	}
	if err := faults.Err(); err != nil {
		return Output{}, err
	}
	a, _ := alloy.Find(in.Alloy)
	c := &pouring{in: in, a: a, p: p, out: Output{Rules: []Rule{}, Limits: []Limit{}, Surfaces: []Pushed{}}}
	c.W = p.Give("W", "metal poured", in.Poured, "kg")
	c.Wr = c.W
	if in.Weigh.V == ByCasting {
		c.Wr = working.GiveOpt(p, "W_c", "castings alone", in.Casting, "kg")
		p.Step("W_r", "mass for the rules", c.Wr, "kg", "W_c", source.Practice("your choice; the texts differ"))
	} else {
		p.Step("W_r", "mass for the rules", c.Wr, "kg", "W", source.Practice("your choice; the texts differ"))
	}
	c.T = p.Give("T", "mean wall", in.Wall, "mm")
	flow.PutGravity(p)
	if err := c.rules(); err != nil {
		return Output{}, err
	}
	c.longest()
	c.shortest()
	c.recommend()
	c.gating()
	c.lift()
	c.judge()
	c.chart()
	return c.out, nil
}

// recommend moves the rule's time into the window.
func (c *pouring) recommend() {
	p := c.p
	c.out.Longest, c.out.LongestUtmost = quantity.Time(c.long), quantity.Time(c.longUtmost)
	tr := float64(c.out.ByRule)
	if c.shortUtmost > c.longUtmost {
		c.emptyWindow()
		c.choose(0)
		return
	}
	here := source.Derived("the rule's time, moved into the window by as little as will do")
	// Unknown sides do not stand in the formulas.
	switch {
	case c.short == 0:
		p.Step("t_a", "least time to recommend", 0*tr, "s", "0 * t_r", here)
		p.Step("t_b", "longest time to recommend", c.long, "s", "t_l", here)
	case c.shortUtmost == 0:
		p.Step("t_a", "least time to recommend", math.Min(c.short, c.long), "s", "min(t_s, t_l)", here)
		p.Step("t_b", "longest time to recommend", math.Min(math.Max(c.short, c.long), c.longUtmost), "s", "min(max(t_s, t_l), t_l_hi)", here)
	default:
		p.Step("t_a", "least time to recommend", math.Max(math.Min(c.short, c.long), c.shortUtmost), "s", "max(min(t_s, t_l), t_s_lo)", here)
		p.Step("t_b", "longest time to recommend", math.Min(math.Max(c.short, c.long), c.longUtmost), "s", "min(max(t_s, t_l), t_l_hi)", here)
	}
	lo, hi := c.ends()
	t := p.Step("t_rec", "recommended pouring time", math.Min(math.Max(tr, lo), hi), "s", "min(max(t_r, t_a), t_b)", here)
	c.out.Time = quantity.Some(quantity.Time(t))
	switch {
	case t < tr:
		c.out.LimitedBy = c.nameOf(atMost)
		c.moved("shorter", t, tr)
	case t > tr:
		c.out.LimitedBy = c.nameOf(atLeast)
		c.moved("longer", t, tr)
	default:
		c.out.LimitedBy = "The metal's rule"
	}
	if c.short > c.long {
		c.narrow()
	}
	c.choose(t)
}

// ends are t_a and t_b.
func (c *pouring) ends() (lo, hi float64) {
	if c.short == 0 {
		return 0, c.long
	}
	return math.Max(math.Min(c.short, c.long), c.shortUtmost), math.Min(math.Max(c.short, c.long), c.longUtmost)
}

// choose settles the time that flows and speeds are reckoned with.
func (c *pouring) choose(recommended float64) {
	if c.in.Chosen.Known() {
		t := working.GiveOpt(c.p, "t_own", "time you mean to take", c.in.Chosen, "s")
		c.tw = c.p.Step("t_w", "time reckoned with", t, "s", "t_own", source.Own("your own choice"))
	} else if recommended > 0 {
		c.tw = c.p.Step("t_w", "time reckoned with", recommended, "s", "t_rec", source.Practice("the recommended time, until you choose another"))
	}
	if c.tw > 0 {
		c.out.Reckoned = quantity.Some(quantity.Time(c.tw))
	}
}

const (
	atMost  = "at most"
	atLeast = "at least"
)

// nameOf is the name of the limit that decides a side.
func (c *pouring) nameOf(side string) string {
	name, best := "", 0.0
	for _, l := range c.out.Limits {
		v := float64(l.Usual.V)
		if l.Side != side || !l.Usual.Known() {
			continue
		}
		if name == "" || side == atMost && v < best || side == atLeast && v > best {
			name, best = l.Name, v
		}
	}
	return name
}
