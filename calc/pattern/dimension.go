package pattern

import (
	"fmt"
	"math"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

func tablePath(i int) string { return fmt.Sprintf("tables[%d]", i) }

// giveLength puts a length that has a default on the paper and returns its mm.
func giveLength(p *working.Paper, symbol, what string, o quantity.Opt[quantity.Length]) float64 {
	return working.GiveOpt(p, symbol, what, o, "mm")
}

// checkOverall settles the largest overall size, which no single size may
// exceed. Where it is not given it is the largest size in the list.
func (j *job) checkOverall() {
	for _, d := range j.in.Dimensions {
		if size := quantity.In(d.Size, "mm"); size > j.overall {
			j.overall, j.outer = size, d.Kind.V == outside
		}
	}
	if !j.in.Overall.Known() {
		return
	}
	given := quantity.In(j.in.Overall.V, "mm")
	if given < j.overall*(1-1e-9) {
		j.faults = append(j.faults, form.Fault{Field: "overall", Label: "Largest overall size", Value: quantity.Text(j.in.Overall.V),
			Why: working.Say("%v is smaller than a size in the list, %v; it must be at least that", j.in.Overall.V, mm(j.overall))})
	}
	j.overall = given
}

// checkRapping refuses rapping that is no small correction.
func (j *job) checkRapping(i int, d Dimension) {
	if d.Kind.V == step {
		return
	}
	least, what := d.Size, "finished size"
	if d.Measured.Known() && d.Measured.V < least {
		least, what = d.Measured.V, "pattern at hand"
	}
	if d.Rapping.V > least/2 {
		j.faults = append(j.faults, form.Fault{Field: path(i, "rapping"), Label: labelled(i, d) + ", rapping", Value: quantity.Text(d.Rapping.V),
			Why: working.Say("%v is out of all proportion to the %v of %v; it must be at most half of that", d.Rapping.V, what, least)})
	}
}

// whole answers for the casting as a whole.
func (j *job) whole(out *Output, p *working.Paper) {
	p.Number("L", "largest overall size", j.overall, "mm")
	out.Overall = mm(j.overall)
	if !j.in.Overall.Known() && !j.outer {
		p.Find(working.Finding{Level: working.Note, Code: "overall-guessed", Field: "overall", Source: source.ISO8062.Memory("table of required machining allowances"),
			Text: working.Say("The largest overall size is not given and the largest size in the list, %v, is no outside size; the machining allowance was read there.", out.Overall),
			Do:   working.Say("Put in the largest overall size of the finished casting.")})
	}
	j.contraction(out, p)
	j.grades(out, p)
}

var kindNames = map[string]string{outside: "outside size", inside: "inside size or bore", step: "step or centre distance", wall: "wall thickness"}

// one answers for one dimension.
func (j *job) one(i int, d Dimension, root *working.Paper) Sized {
	p := root.Sub(fmt.Sprintf("dimensions[%d]", i))
	out := Sized{Name: labelled(i, d), Kind: kindNames[d.Kind.V], Finished: d.Size, Ends: "no drawn faces"}
	R, T, ok := j.raw(i, d, p)
	if !ok {
		j.noTolerance(i, d, R, p)
		if d.Machined.V != "none" {
			return out // the fault that was just named is the answer
		}
	}
	if R <= 0 {
		p.Find(working.Finding{Level: working.Stop, Code: "bore-gone", Field: path(i, "machined"), Source: iso,
			Text: working.Say("%v of %v has no room for its machining stock and tolerance: %v too small to cast a hole at all.", labelled(i, d), d.Size, mm(-R)),
			Do:   working.Say("Cast it solid and drill it, or take finer grades.")})
		return out
	}
	out.Raw = known(R)
	if ok {
		half := p.Step("t", "casting tolerance, plus or minus", T.v/2, "mm", "T / 2", T.source)
		out.Tolerance, out.Half = known(T.v), known(half)
		if T.grade > 0 {
			out.Grade = quantity.Some(T.grade)
		}
	}
	j.stock(i, d, R, &out, p)
	f := j.contractionAt(R)
	s := j.nominal(d, f, p)
	out.Contraction, out.Row = quantity.Some(share(s)), f.row
	k := j.factor(p, "k", "s", "pattern over casting", s)
	kLow := j.factor(p, "k_lo", "s_lo", "pattern over casting, fully restrained", f.low)
	kHigh := j.factor(p, "k_hi", "s_hi", "pattern over casting, free", f.high)
	out.Allowance = known(p.Step("a", "contraction allowance", R*(k-1), "mm", "R * (k - 1)", source.Derived("pattern less casting")))
	r := 0.0
	if d.Kind.V != step {
		r = giveLength(p, "r", "rapping", d.Rapping)
	}
	P := fromCasting(d, p, "P", "k", "pattern", k, R, r)
	low := fromCasting(d, p, "P_lo", "k_lo", "pattern, fully restrained", kLow, R, r)
	high := fromCasting(d, p, "P_hi", "k_hi", "pattern, free", kHigh, R, r)
	out.Pattern, out.PatternLow, out.PatternHigh = known(P), known(low), known(high)
	j.draft(i, d, P, &out, p)
	j.master(i, d, P, &out, p)
	j.atHand(i, d, k, kLow, kHigh, r, &out, p)
	j.findSize(i, d, R, T.v, &out, p)
	return out
}

// rapped is where the sign of rapping comes from: it drives every face of the
// mould away from the pattern, so that outside sizes and walls come out larger
// and hollows smaller. Distances between two faces that look the same way, and
// between centres, stay.
var rapped = source.Derived("rapping moves each face of the mould away from the pattern")

// fromCasting is the pattern size for a raw casting of R, mm.
func fromCasting(d Dimension, p *working.Paper, P, k, what string, kv, R, r float64) float64 {
	switch d.Kind.V {
	case step:
		return p.Step(P, what, kv*R, "mm", k+" * R", source.Rao.Memory("ch. 3, contraction allowance"))
	case inside:
		return p.Step(P, what, kv*R+r, "mm", k+" * R + r", rapped)
	}
	return p.Step(P, what, kv*R-r, "mm", k+" * R - r", rapped)
}

// fromPattern is the raw casting that a pattern of size Pm gives, mm.
func fromPattern(d Dimension, p *working.Paper, C, k, what string, kv, Pm, r float64) float64 {
	switch d.Kind.V {
	case step:
		return p.Step(C, what, Pm/kv, "mm", "P_m / "+k, source.Derived("the pattern sum turned round"))
	case inside:
		return p.Step(C, what, (Pm-r)/kv, "mm", "(P_m - r) / "+k, source.Derived("the pattern sum turned round"))
	}
	return p.Step(C, what, (Pm+r)/kv, "mm", "(P_m + r) / "+k, source.Derived("the pattern sum turned round"))
}

// stock is what stands on each cut face of a casting of nominal size.
func (j *job) stock(i int, d Dimension, R float64, out *Sized, p *working.Paper) {
	from := source.Derived("what the raw casting has over the finished size, shared by its cut faces")
	F, E := quantity.In(d.Size, "mm"), quantity.In(d.CopeExtra.V, "mm")
	var m float64
	switch {
	case d.Machined.V == "none":
		return
	case d.Kind.V == step && d.Machined.V == "both":
		m = p.StepNote("m", "machining stock per face", j.q, "mm", "q", stepFaces, "each face has its own stock; what stands over it comes from the sizes that place the faces")
	case d.Machined.V == "both":
		m = p.Step("m", "machining stock per face", (math.Abs(R-F)-E)/2, "mm", "(abs(R - F) - E_c) / 2", from)
	default:
		m = p.Step("m", "machining stock per face", math.Abs(R-F)-E, "mm", "abs(R - F) - E_c", from)
	}
	out.Stock = known(m)
	if E > 0 {
		out.StockCope = known(p.Step("m_c", "machining stock, cope face", m+E, "mm", "m + E_c", source.Practice("dirt and gas rise to the cope; such a face gets more stock")))
	}
	j.findThinStock(i, m, p)
}

// master is the size of the master for a working pattern that is itself cast.
// Stock for dressing the working pattern is added before its own contraction.
func (j *job) master(i int, d Dimension, P float64, out *Sized, p *working.Paper) {
	if !j.in.WorkingAlloy.Known() && !j.in.WorkingOwn.Known() {
		return
	}
	w := giveLength(p, "w", "dressing stock per face", j.in.WorkingStock)
	from := source.Derived("two contractions in turn: each factor on the size before it")
	if d.Kind.V == inside && P <= 2*w {
		j.faults = append(j.faults, form.Fault{Field: "working_stock", Label: "Dressing stock on the working pattern", Value: quantity.Text(j.in.WorkingStock.V),
			Why: working.Say("%v on each face leaves nothing of %v, which is %v on the working pattern; it must be less than half of that", j.in.WorkingStock.V, labelled(i, d), mm(P))})
		return
	}
	v := 0.0
	if j.in.WorkingOwn.Known() {
		v = p.Const("s_w", "contraction of the working pattern", float64(j.in.WorkingOwn.V), "1", ownFigure)
	} else {
		f := figuresOf(j.second, P)
		v = p.Lookup("s_w", "contraction of the working pattern", f.free, "1", f.source, f.row)
	}
	k := j.factor(p, "k_w", "s_w", "master over working pattern", v)
	var M float64
	switch d.Kind.V {
	case step:
		M = p.Step("M", "master pattern", k*P, "mm", "k_w * P", from)
	case inside:
		M = p.Step("M", "master pattern", k*(P-2*w), "mm", "k_w * (P - 2 * w)", from)
	default:
		M = p.Step("M", "master pattern", k*(P+2*w), "mm", "k_w * (P + 2 * w)", from)
	}
	out.Master = known(M)
}

// atHand answers what an existing pattern will give, with the contraction of
// this size's own row.
func (j *job) atHand(i int, d Dimension, k, kLow, kHigh, r float64, out *Sized, p *working.Paper) {
	if !d.Measured.Known() {
		return
	}
	Pm := p.Give("P_m", "pattern at hand", d.Measured.V, "mm")
	C := fromPattern(d, p, "C", "k", "raw casting from the pattern at hand", k, Pm, r)
	low := fromPattern(d, p, "C_lo", "k_hi", "raw casting from the pattern at hand, free", kHigh, Pm, r)
	high := fromPattern(d, p, "C_hi", "k_lo", "raw casting from the pattern at hand, fully restrained", kLow, Pm, r)
	out.Gives, out.GivesLow, out.GivesHigh = known(C), known(low), known(high)
	if !out.Half.Known() {
		return
	}
	R, t := quantity.In(out.Raw.V, "mm"), quantity.In(out.Half.V, "mm")
	small, large := low < R-t-1e-9, high > R+t+1e-9
	if !small && !large {
		return
	}
	which := "small or too large"
	switch {
	case !large:
		which = "small"
	case !small:
		which = "large"
	}
	p.Find(working.Finding{Level: working.Mind, Code: "pattern-off", Field: path(i, "measured"), Source: source.Derived("the raw casting should lie inside its tolerance whatever the restraint"),
		Text: working.Say("%v: the pattern at hand may give %v to %v, which is too %v for a raw casting of %v ± %v.", labelled(i, d), mm(low), mm(high), which, out.Raw.V, out.Half.V),
		Do:   working.Say("Bring the pattern from %v to %v.", d.Measured.V, out.Pattern.V)})
}

// leastBore is the raw hole, mm, under which coring for a machined bore is not
// worth it.
const leastBore = 10

// findSize looks at what came out for one size.
func (j *job) findSize(i int, d Dimension, R, T float64, out *Sized, p *working.Paper) {
	P, lo, hi := quantity.In(out.Pattern.V, "mm"), quantity.In(out.PatternLow.V, "mm"), quantity.In(out.PatternHigh.V, "mm")
	if d.Kind.V != inside && P < R {
		p.Find(working.Finding{Level: working.Note, Code: "pattern-smaller", Field: path(i, "rapping"), Source: source.Practice("on small patterns rapping about makes up for contraction"),
			Text: working.Say("%v: rapping of %v outweighs contraction of %v, so the pattern is smaller than the raw casting.", labelled(i, d), d.Rapping.V, out.Allowance.V),
			Do:   working.Say("Leave it so only if the pattern is rapped that hard every time; for a plate or a machine put rapping at 0.")})
	}
	if out.Half.Known() && hi-lo > T/2 {
		p.Find(working.Finding{Level: working.Mind, Code: "restraint-spread", Field: path(i, "restraint"), Source: source.Derived("span of the contraction against half the tolerance"),
			Text: working.Say("%v: between fully restrained and free the pattern differs by %v, more than the tolerance of ± %v.", labelled(i, d), mm(hi-lo), out.Half.V),
			Do:   working.Say("Pour one casting, measure this size, and put your own contraction in before you make more.")})
	}
	if d.Kind.V == inside && d.Machined.V != "none" && R < leastBore {
		p.Find(working.Finding{Level: working.Mind, Code: "bore-small", Field: path(i, "machined"), Source: source.Practice("holes under about 10 mm in the raw are left to the drill"),
			Text: working.Say("%v: only %v of hole is left in the raw casting; a core that thin bends, breaks or burns in.", labelled(i, d), mm(R)),
			Do:   working.Say("Cast it solid and drill it, unless at least %v of hole is left.", mm(leastBore))})
	}
	if f := j.contractionAt(R); d.Restraint.V != "free" && f.free == f.restrained {
		p.Find(working.Finding{Level: working.Note, Code: "restraint-not-in-table", Field: path(i, "restraint"), Source: f.source,
			Text: working.Say("%v: this source has one figure for free and restrained lengths, so the restraint moves nothing here.", labelled(i, d)),
			Do:   working.Say("Expect the casting on the large side; take a table that tells the two apart, or put in your own two figures.")})
	}
	if least := j.metal.MinWall; d.Kind.V == wall && mm(R) < least.V {
		p.Find(working.Finding{Level: working.Mind, Code: "wall-thin", Field: path(i, "size"), Source: least.Source,
			Text: working.Say("%v: a wall of %v is thinner than usually runs in sand with %v, %v.", labelled(i, d), mm(R), j.metal.Name, least.V),
			Do:   working.Say("Thicken the wall to %v, or expect misruns.", least.V)})
	}
}
