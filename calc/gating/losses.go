package gating

import (
	"fmt"
	"math"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

var (
	weisbachElbow = source.Hydraulics.Memory("elbows, by J. Weisbach")
	weisbachBend  = source.Hydraulics.Memory("bends of round pipes, by J. Weisbach; for a quarter turn, here in proportion to the angle")
	borda         = source.Hydraulics.Memory("sudden enlargement, by Borda and Carnot")
	narrowing     = source.Hydraulics.Memory("sudden contraction, as hydraulics texts round it")
	mouthpiece    = source.Hydraulics.Memory("entrance of pipes: 0.505 sharp, and 1/0.96² − 1 for a bell mouth with the velocity coefficient 0.96")
	fanning       = source.Rao.Seen("formula sheet: 4 f L/D, f = 16/Re and 0.079 Re^-0.25")
	energy        = source.Derived("energy of the stream from basin to mould")
)

// friction is the larger of the laminar and Blasius' friction factor; the two
// cross near Re 1190, so that it has no jump. Blasius holds to about Re 10⁵
// in smooth channels; beyond, and with rough walls, it is too small.
func friction(re float64) float64 { return math.Max(16/re, 0.079*math.Pow(re, -0.25)) }

// wide and tight are the losses of a sudden enlargement, on the speed before
// it, and of a sudden contraction, on the speed behind it.
func wide(before, behind float64) float64  { return (1 - before/behind) * (1 - before/behind) }
func tight(before, behind float64) float64 { return (1 - behind/before) / 2 }

// elbow is Weisbach's loss of a sharp corner through an angle.
func elbow(angle float64) float64 {
	s := math.Sin(angle / 2)
	return 0.9457*s*s + 2.047*s*s*s*s
}

// bend is Weisbach's loss of a bend, r the half width over its radius.
func bend(r, angle float64) float64 {
	return (0.131 + 1.847*math.Pow(r, 3.5)) * angle / (math.Pi / 2)
}

// toll adds up the losses on the way, each on the paper as an item of the
// list.
type toll struct {
	p   *working.Paper
	g   float64
	out []Loss
	// sum is Σ e v² so far, m²/s²; names are the symbols of the heads.
	sum   float64
	names []string
}

// item is the paper of the next loss.
func (t *toll) item() *working.Paper {
	if !t.p.Draws() {
		return t.p // without the cost of its name
	}
	return t.p.Sub(fmt.Sprintf("losses[%d]", len(t.out)))
}

// take adds a loss with coefficient e (by formula over the paper's symbols) on
// the speed v, whose symbol is speed.
func (t *toll) take(name string, e float64, formula, speed string, v float64, from source.Ref) {
	sub := t.item()
	sub.Step("e", "loss coefficient", e, "1", formula, from)
	t.head(sub, name, e, speed, v)
}

func (t *toll) head(sub *working.Paper, name string, e float64, speed string, v float64) {
	h := sub.Step("h_l", "head that it takes", e*v*v/(2*t.g)*1000, "mm", "e * pow("+speed+", 2) / (2 * g)", energy)
	if t.p.Draws() {
		symbol := fmt.Sprintf("h_%d", len(t.out)+1)
		t.p.Carry(symbol, name, h, "mm")
		t.names = append(t.names, symbol)
	}
	t.sum += e * v * v
	t.out = append(t.out, Loss{Name: name, Coefficient: quantity.Some(quantity.Number(e)), Speed: quantity.Some(quantity.Speed(v)), Head: quantity.From[quantity.Length](h, "mm")})
}

// between takes the change of area from one stretch to the next.
func (t *toll) between(to, before, behind string, a0, a1 float64, speed0, speed1 string, v0, v1 float64) {
	switch {
	case a1 > a0:
		t.take("Widens into "+to, wide(a0, a1), "pow(1 - "+before+" / "+behind+", 2)", speed0, v0, borda)
	case a1 < a0:
		t.take("Narrows into "+to, tight(a0, a1), "(1 - "+behind+" / "+before+") / 2", speed1, v1, narrowing)
	}
}

// fittings takes the user's own fittings in one stretch.
func (t *toll) fittings(list []Fitting, place Place, speed string, v float64) {
	for i, f := range list {
		if f.Place != place {
			continue
		}
		name := f.Name
		if name == "" {
			name = fmt.Sprintf("Further turn %d", i+1)
		}
		sub := t.item()
		n := sub.Number("n_f", "how many", float64(f.Count.V), "1")
		angle := 0.0
		if f.Fit != OwnLoss {
			angle = working.GiveOpt(sub, "theta", "turned through", f.Angle, "rad")
		}
		e := 0.0
		switch f.Fit {
		case Elbow:
			e = sub.Step("e", "loss coefficient", n*elbow(angle), "1", "n_f * (0.9457 * pow(sin(theta / 2), 2) + 2.047 * pow(sin(theta / 2), 4))", weisbachElbow)
		case Bend:
			r := working.GiveOpt(sub, "r_b", "half the width over the bend's radius", f.Radius, "1")
			e = sub.Step("e", "loss coefficient", n*bend(r, angle), "1", "n_f * (0.131 + 1.847 * pow(r_b, 3.5)) * theta / (pi / 2)", weisbachBend)
		default:
			own := sub.Give("e_own", "loss coefficient of one, as stated", f.Loss, "1")
			e = sub.Step("e", "loss coefficient", n*own, "1", "n_f * e_own", source.Own("your own figure"))
		}
		t.head(sub, name, e, speed, v)
	}
}
