package shop

import (
	"math"
	"strings"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

var (
	binomial = source.Derived("binomial chance, each casting by itself")
	sums     = source.Derived("sum")
	defined  = source.Derived("definition")
)

const binomialMethod = "least n with Σ C(n, k) (1 − s)^k s^(n − k) over k from N to n at or above the certainty, summed exactly"

// Plan answers how many moulds to pour, what they take and what a good casting
// costs.
//
// Refused: castings that together weigh more than the metal poured into their
// mould. Missing: the scrap rate, which may be 0 but must be said.
func Plan(in Input, p *working.Paper) (Output, error) {
	in, faults := form.Ready(in)
	if !in.Scrap.Known() {
		faults = append(faults, form.Fault{Field: "scrap", Label: "Scrap rate", Missing: true, Why: working.Say("not filled in yet; 0 if there is none")})
	}
	if heavy := quantity.Mass(in.PerMould.V) * in.Casting.V; in.Casting.Known() && in.Metal.Known() && heavy > in.Metal.V {
		faults = append(faults, form.Fault{Field: "casting", Label: "Weight of a casting", Value: quantity.Text(in.Casting.V),
			Why: working.Say("the castings of a mould weigh %v together, more than the %v poured into it", heavy, in.Metal.V)})
	}
	if err := faults.Err(); err != nil {
		return Output{}, err
	}
	j := &job{in: in, p: p}
	j.count()
	j.materials()
	j.cost()
	j.warn()
	return j.out, nil
}

// job is one question being answered.
type job struct {
	in  Input
	p   *working.Paper
	out Output
}

// count works out the moulds.
func (j *job) count() {
	p, in, out := j.p, j.in, &j.out
	N := p.Number("N", "good castings wanted", float64(in.Good), "1")
	c := p.Number("c", "castings in a mould", float64(in.PerMould.V), "1")
	s := working.GiveOpt(p, "s", "scrap rate", in.Scrap, "1")
	working.GiveOpt(p, "alpha", "certainty wanted", in.Certainty, "1")
	n0 := p.Step("n_0", "castings by plain division", N/(1-s), "1", "N / (1 - s)", defined)
	out.Even = quantity.Number(n0)

	n, _, _ := enough(in.Good, 1-s, float64(in.Certainty.V))
	least := p.Solve("n", "least castings for the certainty", float64(n), "1", binomialMethod, []string{"N", "s", "alpha"}, binomial)
	out.Least = n
	moulds := p.Step("n_m", "moulds to pour", math.Ceil(least/c), "1", "ceil(n / c)", defined)
	castings := p.Step("n_c", "castings poured", moulds*c, "1", "n_m * c", defined)
	out.Moulds, out.Castings = int(moulds), int(castings)
	out.Reached = quantity.Ratio(p.Solve("P", "certainty with these", chance(in.Good, out.Castings, 1-s), "1", "Σ C(n_c, k) (1 − s)^k s^(n_c − k) over k from N to n_c", []string{"N", "s", "n_c"}, binomial))
	if fewer := out.Castings - in.PerMould.V; fewer >= in.Good {
		out.Fewer = quantity.Some(quantity.Ratio(p.Solve("P_1", "certainty with one mould less", chance(in.Good, fewer, 1-s), "1", "the same sum for one mould less", []string{"N", "s", "n_c", "c"}, binomial)))
	}
	out.Expected = quantity.Number(p.Step("g", "good ones to be expected", castings*(1-s), "1", "n_c * (1 - s)", defined))

	whole := p.Step("N_t", "whole moulds that must be good", math.Ceil(N/c), "1", "ceil(N / c)", defined)
	together, _, _ := enough(int(whole), 1-s, float64(in.Certainty.V))
	out.Together = int(p.Solve("n_t", "moulds, if each is good or bad as a whole", float64(together), "1", "the same for N_t good moulds", []string{"N_t", "s", "alpha"}, binomial))
}

// materials are the metal and the sand for the moulds.
func (j *job) materials() {
	p, in, out := j.p, j.in, &j.out
	moulds := float64(out.Moulds)
	if in.Metal.Known() {
		W := working.GiveOpt(p, "W", "metal poured per mould", in.Metal, "kg")
		l := working.GiveOpt(p, "l", "melting loss", in.Loss, "1")
		poured := p.Step("m_p", "metal to pour", moulds*W, "kg", "n_m * W", sums)
		charge := p.Step("m_c", "metal to charge", poured/(1-l), "kg", "m_p / (1 - l)", defined)
		out.Metal, out.Charge = quantity.Some(quantity.Mass(poured)), quantity.Some(quantity.Mass(charge))
		if in.Casting.Known() {
			w := working.GiveOpt(p, "w", "weight of a casting", in.Casting, "kg")
			back := p.Step("m_b", "coming back as returns", poured-float64(in.Good)*w, "kg", "m_p - N * w", source.Derived("what is not sold comes back"))
			out.Back = quantity.Some(quantity.Mass(back))
		}
	}
	if in.Sand.Known() {
		S := working.GiveOpt(p, "S", "sand per mould", in.Sand, "kg")
		r := working.GiveOpt(p, "r", "share of the sand used again", in.Reused, "1")
		sand := p.Step("m_s", "sand to prepare", moulds*S, "kg", "n_m * S", sums)
		fresh := p.Step("m_n", "new sand", sand*(1-r), "kg", "m_s * (1 - r)", defined)
		out.Sand, out.NewSand = quantity.Some(quantity.Mass(sand)), quantity.Some(quantity.Mass(fresh))
	}
}

// item is one line of the cost, as a formula and as a number, for the moulds
// that are poured and for those of a shop without scrap.
type item struct {
	formula, clean string
	poured, least  float64
}

// cost adds up what the prices that are given come to.
func (j *job) cost() {
	p, in, out := j.p, j.in, &j.out
	var items []item
	moulds := float64(out.Moulds)
	whole := math.Ceil(float64(in.Good) / float64(in.PerMould.V))
	if in.MetalPrice.Known() && in.Metal.Known() {
		price := working.GiveOpt(p, "p_m", "price of the metal", in.MetalPrice, "money/kg")
		W, l := float64(in.Metal.V), float64(in.Loss.V)
		one := item{"m_c * p_m", "N_t * W / (1 - l) * p_m", moulds * W / (1 - l) * price, whole * W / (1 - l) * price}
		if in.Casting.Known() && in.Returns.V > 0 {
			v := working.GiveOpt(p, "v", "worth of returns, as a share of the price", in.Returns, "1")
			N, w := float64(in.Good), float64(in.Casting.V)
			one.formula += " - m_b * v * p_m"
			one.clean += " - (N_t * W - N * w) * v * p_m"
			one.poured -= (moulds*W - N*w) * v * price
			one.least -= (whole*W - N*w) * v * price
		}
		items = append(items, one)
	}
	if in.SandPrice.Known() && in.Sand.Known() {
		price := working.GiveOpt(p, "p_s", "price of the sand", in.SandPrice, "money/kg")
		S, r := float64(in.Sand.V), float64(in.Reused.V)
		items = append(items, item{"m_n * p_s", "N_t * S * (1 - r) * p_s", moulds * S * (1 - r) * price, whole * S * (1 - r) * price})
	}
	money := func(symbol, what string, o quantity.Opt[quantity.Money]) float64 {
		return p.Number(symbol, what, float64(o.V), "money")
	}
	if in.MouldCost.Known() {
		each := money("K_m", "other cost of each mould", in.MouldCost)
		items = append(items, item{"n_m * K_m", "N_t * K_m", moulds * each, whole * each})
	}
	if in.HeatCost.Known() {
		all := money("K_h", "cost of the whole pour", in.HeatCost)
		items = append(items, item{"K_h", "K_h", all, all})
	}
	if in.PatternCost.Known() {
		all := money("K_p", "pattern", in.PatternCost)
		items = append(items, item{"K_p", "K_p", all, all})
	}
	if len(items) == 0 {
		return
	}
	var formulas, clean []string
	total, least := 0.0, 0.0
	for _, one := range items {
		formulas, clean = append(formulas, one.formula), append(clean, one.clean)
		total, least = total+one.poured, least+one.least
	}
	K := p.Step("K", "cost of it all", total, "money", strings.Join(formulas, " + "), sums)
	k := p.Step("k", "cost of a good casting", K/float64(in.Good), "money", "K / N", defined)
	none := p.Step("k_0", "cost of a casting if there were no scrap", least/float64(in.Good), "money", "("+strings.Join(clean, " + ")+") / N", defined)
	extra := p.Step("k_s", "of it paid for scrap and certainty", k-none, "money", "k - k_0", defined)
	out.Cost, out.PerGood, out.ScrapFor = quantity.Some(quantity.Money(K)), quantity.Some(quantity.Money(k)), quantity.Some(quantity.Money(extra))
}

// warn says what the count leaves out.
func (j *job) warn() {
	p, in, out := j.p, j.in, &j.out
	s := in.Scrap.V
	if s == 0 {
		p.Find(working.Finding{Level: working.Note, Code: "no-scrap", Field: "scrap", Source: defined,
			Text: working.Say("No scrap is reckoned with, so every mould must come out good."),
			Do:   working.Say("Enter what share of such castings your shop has lost before.")})
		return
	}
	together := working.Say("Castings of one heat, one heap of sand or one core box often fail together; this reckons that each fails by itself, which is hopeful.")
	do := working.Say("Pour them in two heats, and look at the first castings before you pour the rest.")
	if in.PerMould.V > 1 && out.Together > out.Moulds {
		together = working.Say("Castings of one mould, heat or core box often fail together; this reckons that each fails by itself, which is hopeful. If each mould is good or bad as a whole it takes %v moulds, not %v.", out.Together, out.Moulds)
	}
	p.Find(working.Finding{Level: working.Note, Code: "defects-come-together", Field: "scrap", Source: source.Practice("castings of a heat are alike"), Text: together, Do: do})
	if s >= 0.25 {
		text := working.Say("At %v scrap, more than one casting in four is lost.", s)
		if out.ScrapFor.Known() {
			text = working.Say("At %v scrap, more than one casting in four is lost; %v of the %v that a good casting costs is paid for it.", s, out.ScrapFor.V, out.PerGood.V)
		}
		if s == 0.25 {
			text = working.Say("At %v scrap, one casting in four is lost.", s)
		}
		p.Find(working.Finding{Level: working.Mind, Code: "much-scrap", Field: "scrap", Source: source.Practice("find the cause before pouring more"),
			Text: text, Do: working.Say("Find what spoils them and change that first; cut a bad one up and look.")})
	}
}
