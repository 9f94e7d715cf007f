package order

import (
	"math"
	"math/bits"
	"sort"
)

// exactUpTo is the most moulds for which the best order is proved.
const exactUpTo = 12

// cooling is T = T_a + (T_0 − T_a) e^{−t/τ}, in K and s.
type cooling struct{ ambient, start, tau float64 }

func (c cooling) at(t float64) float64 { return c.ambient + (c.start-c.ambient)*math.Exp(-t/c.tau) }

// when is the time at which the metal is at T; below 0 where it starts colder.
func (c cooling) when(T float64) float64 {
	return c.tau * math.Log((c.start-c.ambient)/(T-c.ambient))
}

// pour is a mould on the metal's clock.
type pour struct {
	takes     float64 // pouring time
	low, high float64 // window, K
	mass      float64
}

// line is what has to be poured: the pours, the step between two, the metal.
type line struct {
	pours []pour
	step  float64
	metal cooling
}

// release is the time from which the i-th may be begun.
func (l line) release(i int) float64 { return math.Max(l.metal.when(l.pours[i].high), 0) }

// one pours the i-th after the time before, or first of all, and says when it
// is full and by how much it is too cold; below 0 what it has in hand.
func (l line) one(i int, before float64, first bool) (end, cold float64) {
	begin := before
	if !first {
		begin += l.step
	}
	begin = math.Max(begin, l.release(i))
	end = begin + l.pours[i].takes
	return end, l.pours[i].low - l.metal.at(end)
}

// judge pours in the order and says the worst cold, the cold in all, and the
// end.
func (l line) judge(order []int) (worst, total, end float64) {
	worst = math.Inf(-1)
	for n, i := range order {
		var cold float64
		end, cold = l.one(i, end, n == 0)
		worst = math.Max(worst, cold)
		total += math.Max(cold, 0)
	}
	return worst, total, end
}

// best is the order with the least worst cold and, of those, the least in all;
// proved says that it is the best of all orders, and bound what no order can
// beat.
func (l line) best() (order []int, proved bool, bound float64) {
	if len(l.pours) <= exactUpTo {
		order = l.over(math.Max, math.Inf(1))
		worst, _, _ := l.judge(order)
		if worst > 0 {
			// A little above, so that rounding does not lose the order itself.
			order = l.over(func(sum, cold float64) float64 { return math.Max(sum, 0) + math.Max(cold, 0) }, worst+1e-9)
		}
		return order, true, worst
	}
	order = l.byRule()
	return order, false, l.bound(order)
}

// mark is one way to have poured a set: when it was full, at what cost, which
// was last, and the mark before.
type mark struct {
	time, cost float64
	last       int
	before     *mark
}

// over finds the order of least cost over all sets of moulds, the cost growing
// by join with the cold of each; a mould colder than limit is not poured.
func (l line) over(join func(cost, cold float64) float64, limit float64) []int {
	n := len(l.pours)
	fronts := make([][]*mark, 1<<n)
	fronts[0] = []*mark{{cost: math.Inf(-1)}}
	for set := range fronts {
		for _, m := range fronts[set] {
			for i := range n {
				if set&(1<<i) != 0 {
					continue
				}
				end, cold := l.one(i, m.time, set == 0)
				if cold > limit {
					continue
				}
				fronts[set|1<<i] = keep(fronts[set|1<<i], &mark{end, join(m.cost, cold), i, m})
			}
		}
	}
	least := fronts[len(fronts)-1][0]
	for _, m := range fronts[len(fronts)-1] {
		if m.cost < least.cost {
			least = m
		}
	}
	order := make([]int, n)
	for m := least; m.before != nil; m = m.before {
		n--
		order[n] = m.last
	}
	return order
}

// keep adds m to a front unless another is as early and as cheap, and drops
// what m beats.
func keep(front []*mark, m *mark) []*mark {
	out := front[:0]
	for _, f := range front {
		if f.time <= m.time && f.cost <= m.cost {
			return front
		}
	}
	for _, f := range front {
		if !(m.time <= f.time && m.cost <= f.cost) {
			out = append(out, f)
		}
	}
	return append(out, m)
}

// byRule takes of the moulds that may be begun the one whose coldest is
// hottest, and then exchanges pairs while that makes things better.
func (l line) byRule() []int {
	n := len(l.pours)
	left := map[int]bool{}
	for i := range n {
		left[i] = true
	}
	var order []int
	time := 0.0
	for len(left) > 0 {
		ready := time
		if len(order) > 0 {
			ready += l.step
		}
		earliest := math.Inf(1)
		for i := range left {
			earliest = math.Min(earliest, l.release(i))
		}
		ready = math.Max(ready, earliest)
		next := -1
		for i := range n {
			if left[i] && l.release(i) <= ready && (next < 0 || l.pours[i].low > l.pours[next].low) {
				next = i
			}
		}
		time, _ = l.one(next, time, len(order) == 0)
		order = append(order, next)
		delete(left, next)
	}
	l.exchange(order)
	return order
}

// exchange exchanges pairs of the order while that makes it better.
func (l line) exchange(order []int) {
	worst, total, _ := l.judge(order)
	for better := true; better; {
		better = false
		for a := range order {
			for b := a + 1; b < len(order); b++ {
				order[a], order[b] = order[b], order[a]
				w, t, _ := l.judge(order)
				if w < worst-1e-9 || w <= worst && t < total-1e-9 {
					worst, total, better = w, t, true
				} else {
					order[a], order[b] = order[b], order[a]
				}
			}
		}
	}
}

// bound is a worst cold that no order can beat: with pours that may be broken
// off, and no steps between them, it is reached by pouring at every time the
// ready mould that is due first. Halved to a thousandth of a kelvin, rounded
// down; never above what the order at hand reaches.
func (l line) bound(order []int) float64 {
	hi, _, _ := l.judge(order)
	lo := hi - 1
	for l.broken(lo) {
		hi, lo = lo, lo-(hi-lo)*2
		if hi-lo > 4000 {
			return lo
		}
	}
	for hi-lo > 1e-3 {
		if mid := (lo + hi) / 2; l.broken(mid) {
			hi = mid
		} else {
			lo = mid
		}
	}
	return lo
}

// broken reports whether, with pours that may be broken off, none need be
// colder than its coldest by more than cold.
func (l line) broken(cold float64) bool {
	n := len(l.pours)
	release, due, left := make([]float64, n), make([]float64, n), make([]float64, n)
	var times []float64
	for i, p := range l.pours {
		T := p.low - cold
		if T <= l.metal.ambient {
			due[i] = math.Inf(1)
		} else {
			due[i] = l.metal.when(T)
		}
		release[i], left[i] = l.release(i), p.takes
		times = append(times, release[i])
	}
	sort.Float64s(times)
	now := 0.0
	for done := 0; done < n; {
		next, coming := -1, math.Inf(1)
		for i := range n {
			switch {
			case left[i] <= 0:
			case release[i] > now:
				coming = math.Min(coming, release[i])
			case next < 0 || due[i] < due[next]:
				next = i
			}
		}
		if next < 0 {
			now = coming
			continue
		}
		while := math.Min(left[next], coming-now)
		now += while
		left[next] -= while
		if left[next] <= 1e-12 {
			left[next] = 0
			done++
			if now > due[next] {
				return false
			}
		}
	}
	return true
}

// latest is the latest time, on the metal's clock, at which the set may be
// begun with every mould inside its window; −∞ where no time will do. It works
// from the last mould back.
func (l line) latest() []float64 {
	n := len(l.pours)
	out := make([]float64, 1<<n)
	out[0] = math.Inf(1)
	for set := 1; set < len(out); set++ {
		out[set] = math.Inf(-1)
		for i := range n {
			if set&(1<<i) == 0 {
				continue
			}
			rest := set &^ (1 << i)
			out[set] = math.Max(out[set], l.begin(i, out[rest]))
		}
	}
	return out
}

// begin is the latest that the i-th may be begun so that what follows begins
// by next.
func (l line) begin(i int, next float64) float64 {
	p := l.pours[i]
	begin := math.Min(l.metal.when(p.low), next-l.step) - p.takes
	if begin < l.metal.when(p.high) {
		return math.Inf(-1)
	}
	return begin
}

// inOrder is latest for the one order.
func (l line) inOrder(order []int) float64 {
	next := math.Inf(1)
	for n := len(order) - 1; n >= 0; n-- {
		next = l.begin(order[n], next)
	}
	return next
}

// share parts the moulds over as few ladles as will do, each begun at the
// metal's start and holding no more than capacity; nil where a mould cannot be
// poured from any. Exact up to exactUpTo; above, the order is cut where it must
// be.
func (l line) share(order []int, capacity float64) []int {
	if len(l.pours) > exactUpTo {
		return l.cut(order, capacity)
	}
	n := len(l.pours)
	latest := l.latest()
	fits := make([]bool, 1<<n)
	for set := range fits {
		mass := 0.0
		for i := range n {
			if set&(1<<i) != 0 {
				mass += l.pours[i].mass
			}
		}
		fits[set] = latest[set] >= -1e-9 && mass <= capacity*(1+1e-12)
	}
	const none = math.MaxInt32
	count, took := make([]int, 1<<n), make([]int, 1<<n)
	for set := 1; set < len(count); set++ {
		count[set] = none
		first := 1 << bits.TrailingZeros(uint(set))
		rest := set &^ first
		for sub := rest; ; sub = (sub - 1) & rest {
			if part := sub | first; fits[part] && count[set&^part] < none && count[set&^part]+1 < count[set] {
				count[set], took[set] = count[set&^part]+1, part
			}
			if sub == 0 {
				break
			}
		}
	}
	if count[len(count)-1] == none {
		return nil
	}
	out := make([]int, n)
	for set, ladle := len(count)-1, 1; set != 0; set, ladle = set&^took[set], ladle+1 {
		for i := range n {
			if took[set]&(1<<i) != 0 {
				out[i] = ladle
			}
		}
	}
	return out
}

// cut goes along the order and begins a new ladle where the next mould no
// longer fits.
func (l line) cut(order []int, capacity float64) []int {
	out := make([]int, len(l.pours))
	ladle, from, mass := 1, 0, 0.0
	for n, i := range order {
		mass += l.pours[i].mass
		if n > from && (l.inOrder(order[from:n+1]) < -1e-9 || mass > capacity) {
			ladle, from, mass = ladle+1, n, l.pours[i].mass
		}
		if l.inOrder(order[n:n+1]) < -1e-9 || l.pours[i].mass > capacity {
			return nil
		}
		out[i] = ladle
	}
	return out
}
