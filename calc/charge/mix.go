package charge

import "math"

// mix is the charge as a linear programme: kilograms of each material for each
// kilogram of melt that is wanted.
type mix struct {
	yield       []float64
	price       []float64
	held        []float64 // on hand; +Inf without end
	least, most []float64 // shares of the charge
	bounds      []bound
	// slack is how far, of the limit, a melt may be outside and still keep it:
	// a limit that is met exactly must not be lost by rounding.
	slack float64
}

// bound is one side of an element's limit.
type bound struct {
	limit  int       // its place in the input
	high   bool      // whether it is the most, not the least
	brings []float64 // kg of the element in the melt for each kg charged
	share  float64   // the limit less the pick-up, a share of the melt
	scale  float64   // the limit itself, for the size of what rounding may do
}

// Of the slack there are two sizes: what rounding does, and what nobody would
// call a miss.
const (
	rounding = 1e-9
	trifle   = 1e-6
)

// allowed is the slack of a limit as a share of the melt; limits of less than
// 0.1 % have that of 0.1 %.
func allowed(slack, limit float64) float64 { return slack * math.Max(limit, 0.001) }

// lines are the rows of a programme with the places of those that have a
// meaning later.
type lines struct {
	rows   []row
	held   []int // of each material, or -1
	bounds []int // of each bound, or -1
}

// wide puts coefficients of the materials in a row of the programme's width.
func wide(width int, of func(j int) float64, n int, b float64) row {
	a := make([]float64, width)
	for j := range n {
		a[j] = of(j)
	}
	return row{a, b}
}

// stock are the rows that no blend may break: the melt's mass t, the shares
// and what is on hand. The mass is asked for as "at least": every other row
// stays true when a blend is scaled down, so none that costs anything is
// larger than it must be.
func (m mix) stock(width int, t float64) lines {
	n := len(m.yield)
	l := lines{held: make([]int, n), bounds: make([]int, len(m.bounds))}
	l.rows = append(l.rows, wide(width, func(j int) float64 { return m.yield[j] }, n, t))
	for j := range n {
		l.held[j] = -1
		only := func(v, rest float64) row {
			return wide(width, func(k int) float64 {
				if k == j {
					return v + rest
				}
				return rest
			}, n, 0)
		}
		if least := m.least[j] * (1 - rounding); least > 0 {
			l.rows = append(l.rows, only(1, -least))
		}
		if most := m.most[j] * (1 + rounding); most < 1 {
			l.rows = append(l.rows, only(-1, most))
		}
		if !math.IsInf(m.held[j], 1) {
			l.held[j] = len(l.rows)
			r := only(-1, 0)
			r.b = -m.held[j]
			l.rows = append(l.rows, r)
		}
	}
	for b := range l.bounds {
		l.bounds[b] = -1
	}
	return l
}

// within adds the rows of the limits: what a blend brings of the element less
// what its mass may hold. miss, where not nil, is the column that takes up what
// a bound is missed by.
func (m mix) within(l *lines, width int, miss func(b int) int) {
	for b, lim := range m.bounds {
		sign, share := 1.0, lim.share-allowed(m.slack, lim.scale)
		if lim.high {
			sign, share = -1, lim.share+allowed(m.slack, lim.scale)
		}
		r := wide(width, func(j int) float64 { return sign * (lim.brings[j] - share*m.yield[j]) }, len(m.yield), 0)
		if miss != nil {
			r.a[miss(b)] = 1
		}
		l.bounds[b] = len(l.rows)
		l.rows = append(l.rows, r)
	}
}

// cheapest is the blend of least cost for t kg of melt that keeps every limit;
// false where it finds none.
func (m mix) cheapest(t float64) (optimum, lines, bool) {
	n := len(m.yield)
	l := m.stock(n, t)
	m.within(&l, n, nil)
	o, ok := minimise(m.price, l.rows)
	return o, l, ok
}

// little makes a cost that only chooses between blends that are equal in what
// matters more.
const little = 1e-6

// lightly is the prices brought down to that.
func (m mix) lightly(width int) []float64 {
	largest := 0.0
	for _, p := range m.price {
		largest = math.Max(largest, p)
	}
	cost := make([]float64, width)
	for j, p := range m.price {
		cost[j] = little
		if largest > 0 {
			cost[j] = little * p / largest
		}
	}
	return cost
}

// reach is how much of t kg of melt the stock can make, within the limits or
// without them.
func (m mix) reach(t float64, inLimits bool) float64 {
	n := len(m.yield)
	l := m.stock(n+1, t)
	if inLimits {
		m.within(&l, n+1, nil)
	}
	l.rows[0].a[n] = 1
	cost := m.lightly(n + 1)
	cost[n] = 1
	o, ok := minimise(cost, l.rows)
	if !ok {
		panic("charge: even an empty charge was refused")
	}
	return math.Max(t-o.x[n], 0)
}

// closest is the blend for t kg of melt with the least sum of misses, each
// counted in kilograms of the element, and those of limits over 1 % in parts
// of the limit. Missing mass counts far more than any of them; so there always
// is such a blend, even where rounding has made t a hair too large.
func (m mix) closest(t float64) []float64 {
	n, k := len(m.yield), len(m.bounds)
	width := n + k + 1
	l := m.stock(width, t)
	m.within(&l, width, func(b int) int { return n + b })
	l.rows[0].a[n+k] = 1
	cost := m.lightly(width)
	for b, lim := range m.bounds {
		cost[n+b] = 0.01 / math.Max(0.01, lim.scale)
	}
	cost[n+k] = 100
	o, ok := minimise(cost, l.rows)
	if !ok {
		panic("charge: no blend comes nearest")
	}
	return o.x[:n]
}

// more is the least further stock with which a kilogram of melt keeps every
// limit: more of the materials in the list that run out, and of others. It is
// false where no amount of them helps.
func (m mix) more(others mix) (own, other []float64, ok bool) {
	n, k := len(m.yield), len(others.yield)
	// The charge may hold the further stock too, so the columns are the
	// materials as charged, the others, and of each material what is bought.
	all := mix{
		yield: append(append([]float64(nil), m.yield...), others.yield...),
		least: append(append([]float64(nil), m.least...), make([]float64, k)...),
		most:  append(append([]float64(nil), m.most...), others.most...),
		held:  make([]float64, n+k),
		slack: m.slack,
	}
	for j := range all.held {
		all.held[j] = math.Inf(1)
	}
	for b, lim := range m.bounds {
		lim.brings = append(append([]float64(nil), lim.brings...), others.bounds[b].brings...)
		all.bounds = append(all.bounds, lim)
	}
	width := 2*n + k
	l := all.stock(width, 1)
	all.within(&l, width, nil)
	cost := make([]float64, width)
	for j := range n {
		cost[j] = little
		cost[n+k+j] = 1
		if !math.IsInf(m.held[j], 1) { // charged ≤ held + bought
			r := row{make([]float64, width), -m.held[j]}
			r.a[j], r.a[n+k+j] = -1, 1
			l.rows = append(l.rows, r)
		}
	}
	for j := range k {
		cost[n+j] = 1
	}
	o, ok := minimise(cost, l.rows)
	if !ok {
		return nil, nil, false
	}
	return o.x[n+k:], o.x[n : n+k], true
}
