package order

import (
	"fmt"
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/alloy"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/reply"
	"pourwright/calc/working"
	"pourwright/calc/working/stepcheck"
)

func celsius(v float64) quantity.Temperature { return quantity.From[quantity.Temperature](v, "degC") }

func some[T any](v T) quantity.Opt[T] { return quantity.Some(v) }

func run(t *testing.T, in Input) (Output, *working.Paper) {
	t.Helper()
	return stepcheck.Prove(t, Find, in)
}

// machine puts a published case of one machine, in minutes, to the ladle: metal
// that falls so slowly that a minute is a hundredth of a kelvin throughout. A
// mould may be begun at its release and is due at its due time.
func machine(release, takes, due []float64) Input {
	const perMinute = 0.01
	tau := 1380 / perMinute * 60
	T := func(minutes float64) quantity.Temperature {
		return celsius(20 + 1380*math.Exp(-minutes*60/tau))
	}
	in := Input{Start: some(celsius(1400)), Constant: quantity.Time(tau), Step: some(quantity.Time(0))}
	for i := range takes {
		in.Moulds = append(in.Moulds, Mould{Mass: 10, Pouring: quantity.Time(60 * takes[i]), Low: some(T(due[i])), High: some(T(release[i]))})
	}
	return in
}

// late is the greatest lateness in minutes.
func late(out Output) float64 {
	if out.InHand.Known() {
		return -float64(out.InHand.V) / 0.01
	}
	return float64(out.Worst) / 0.01
}

func listed(out Output) (order []int) {
	for _, m := range out.Moulds {
		order = append(order, m.Listed)
	}
	return order
}

func TestPublished(t *testing.T) {
	t.Run("M. L. Pinedo, Scheduling, example 3.2.5: 1, 3, 4, 2 with a lateness of 5", func(t *testing.T) {
		out, _ := run(t, machine([]float64{0, 1, 3, 5}, []float64{4, 2, 6, 5}, []float64{8, 12, 11, 10}))
		require.Equal(t, []int{1, 3, 4, 2}, listed(out))
		require.InDelta(t, 5, late(out), 0.01)
		require.InDelta(t, 17*60, float64(out.Finish), 1e-6)
		require.True(t, out.Proved)
	})
	t.Run("J. Carlier, The one-machine sequencing problem, 1982, seven jobs: 50", func(t *testing.T) {
		due := []float64{-7, -26, -24, -21, -8, -17, 0}
		for i := range due {
			due[i] += 60 // tails as due times
		}
		// The simple rule, without the search, gives 53.
		in := machine([]float64{10, 13, 11, 20, 30, 0, 30}, []float64{5, 6, 7, 4, 3, 6, 2}, due)
		out, _ := run(t, in)
		require.InDelta(t, 50-60, late(out), 0.02)
	})
	t.Run("J. R. Jackson, 1955: without releases, in the order of the due times", func(t *testing.T) {
		out, _ := run(t, machine(make([]float64, 6), []float64{3, 2, 4, 1, 5, 2}, []float64{17, 5, 10, 4, 20, 9}))
		require.Equal(t, []int{4, 2, 6, 3, 1, 5}, listed(out))
	})
}

func randomLine(r *rand.Rand, n int) line {
	l := line{step: 20 * r.Float64(), metal: cooling{ambient: 293, start: 1673, tau: 60 * math.Exp(3+2*r.Float64())}}
	for range n {
		low := 1450 + 200*r.Float64()
		l.pours = append(l.pours, pour{takes: 5 + 60*r.Float64(), low: low, high: low + 10 + 100*r.Float64(), mass: 1 + 20*r.Float64()})
	}
	return l
}

// every goes through all orders.
func every(n int, visit func([]int)) {
	order := make([]int, n)
	for i := range order {
		order[i] = i
	}
	var from func(k int)
	from = func(k int) {
		if k == n {
			visit(order)
			return
		}
		for i := k; i < n; i++ {
			order[k], order[i] = order[i], order[k]
			from(k + 1)
			order[k], order[i] = order[i], order[k]
		}
	}
	from(0)
}

func TestBestOfAllOrders(t *testing.T) {
	r := rand.New(rand.NewSource(3))
	cold := 0
	for trial := range 150 {
		n := 1 + trial%7
		if trial == 149 {
			n = 8
		}
		l := randomLine(r, n)
		worst, total := math.Inf(1), math.Inf(1)
		every(n, func(order []int) {
			w, s, _ := l.judge(order)
			if w < worst-1e-9 || w < worst+1e-9 && s < total {
				worst, total = w, s
			}
		})
		order, proved, bound := l.best()
		require.True(t, proved)
		w, s, _ := l.judge(order)
		require.InDelta(t, worst, w, 1e-8)
		require.InDelta(t, worst, bound, 1e-8)
		if worst > 0 {
			cold++
			require.InDelta(t, total, s, 1e-6)
		}
		// No order beats the bound of the rule, and no broken pour the order.
		require.LessOrEqual(t, l.bound(order), worst+1e-9)
		rule := l.byRule()
		w, _, _ = l.judge(rule)
		require.GreaterOrEqual(t, w, worst-1e-9)

		// The latest beginning: in all orders.
		latest := math.Inf(-1)
		every(n, func(order []int) { latest = math.Max(latest, l.inOrder(order)) })
		all := l.latest()
		require.Equal(t, latest, all[len(all)-1])
		require.Equal(t, latest >= 0, worst <= 1e-9, "%v %v", latest, worst)
	}
	require.Greater(t, cold, 30)
}

// TestFewestLadles compares the parting with all ways to part.
func TestFewestLadles(t *testing.T) {
	r := rand.New(rand.NewSource(5))
	for trial := range 60 {
		n := 1 + trial%6
		l := randomLine(r, n)
		capacity := 20 + 40*r.Float64()
		order, _, _ := l.best()
		least := math.MaxInt
		parts := make([]int, n)
		var part func(i, used int)
		part = func(i, used int) {
			if i < n {
				for k := 1; k <= used+1; k++ {
					parts[i] = k
					part(i+1, max(used, k))
				}
				return
			}
			for k := 1; k <= used; k++ {
				sub, mass := line{step: l.step, metal: l.metal}, 0.0
				for i := range n {
					if parts[i] == k {
						sub.pours = append(sub.pours, l.pours[i])
						mass += l.pours[i].mass
					}
				}
				all := sub.latest()
				if all[len(all)-1] < 0 || mass > capacity {
					return
				}
			}
			least = min(least, used)
		}
		part(0, 0)
		got := l.share(order, capacity)
		if least == math.MaxInt {
			require.Nil(t, got)
			continue
		}
		most := 0
		for _, k := range got {
			most = max(most, k)
		}
		require.Equal(t, least, most)
		if cut := l.cut(order, capacity); cut != nil {
			most = 0
			for _, k := range cut {
				most = max(most, k)
			}
			require.GreaterOrEqual(t, most, least)
		}
	}
}

// three moulds, given in the wrong order.
func three() Input {
	return Input{
		Start: some(celsius(1420)), Constant: 3600, Capacity: some(quantity.Mass(200)),
		Moulds: []Mould{
			{Name: "Anvil", Mass: 60, Pouring: 30, Low: some(celsius(1250)), High: some(celsius(1320))},
			{Name: "Grille", Mass: 20, Pouring: 12, Low: some(celsius(1370)), High: some(celsius(1440))},
			{Name: "Bracket", Mass: 30, Pouring: 15, Low: some(celsius(1310)), High: some(celsius(1390))},
		},
	}
}

func TestThinFirst(t *testing.T) {
	out, p := run(t, three())
	require.Equal(t, []int{2, 3, 1}, listed(out))
	require.Zero(t, out.Worst)
	require.Equal(t, 1, out.Ladles.V)
	for _, m := range out.Moulds {
		require.GreaterOrEqual(t, float64(m.Cold), float64(m.Low)-1e-9)
		require.LessOrEqual(t, float64(m.Hot), float64(m.High)+1e-9)
	}
	require.Equal(t, map[string]working.Level{"long-wait": working.Mind}, codes(p))
}

func codes(p *working.Paper) map[string]working.Level { return stepcheck.Levels(p) }

func TestFindings(t *testing.T) {
	in := three()
	in.Start = some(celsius(1372))
	out, p := run(t, in)
	require.Equal(t, working.Stop, codes(p)["pours-too-cold"])
	require.Greater(t, out.StartLow.V, in.Start.V)
	in.Start, in.Before = out.StartLow, some(quantity.TempDiff(60))
	out, p = run(t, in)
	require.NotContains(t, codes(p), "pours-too-cold")
	require.InDelta(t, float64(out.StartLow.V)+60, float64(out.TapLow.V), 1e-9)

	in = three()
	in.Capacity = some(quantity.Mass(90))
	out, p = run(t, in)
	require.Equal(t, working.Stop, codes(p)["more-than-the-ladle"])
	require.Equal(t, 2, out.Ladles.V)
	in.Capacity = some(quantity.Mass(50))
	out, p = run(t, in)
	require.False(t, out.Ladles.Known())
	require.Contains(t, codes(p), "more-than-the-ladle")

	// Two moulds that want the same narrow window for a long time.
	in = three()
	in.Constant = 600
	for i := range in.Moulds {
		in.Moulds[i].Low, in.Moulds[i].High, in.Moulds[i].Pouring = some(celsius(1350)), some(celsius(1400)), 20
	}
	out, p = run(t, in)
	require.False(t, out.StartLow.Known())
	require.Equal(t, working.Stop, codes(p)["pours-too-cold"])
	require.Equal(t, 3, out.Ladles.V)

	in = three()
	in.Moulds[0].Shortest, in.Moulds[0].Longest = some(in.Moulds[0].Pouring), some(2*in.Moulds[0].Pouring)
	_, p = run(t, in)
	require.NotContains(t, codes(p), "outside-its-band")
	in.Moulds[1].Shortest = some(in.Moulds[1].Pouring + 1)
	_, p = run(t, in)
	require.Equal(t, working.Mind, codes(p)["outside-its-band"])
	in.Moulds[1].Shortest, in.Moulds[1].Longest = quantity.Opt[quantity.Time]{}, some(in.Moulds[1].Pouring-1)
	_, p = run(t, in)
	require.Contains(t, codes(p), "outside-its-band")

	in = Input{Start: some(celsius(1400)), Constant: 3600}
	for range 14 {
		in.Moulds = append(in.Moulds, Mould{Mass: 5, Pouring: 10, Low: some(celsius(1250)), High: some(celsius(1400))})
	}
	out, p = run(t, in)
	require.False(t, out.Proved)
	require.Contains(t, codes(p), "order-by-rule")
}

func TestFaults(t *testing.T) {
	bad := func(in Input, field string) {
		t.Helper()
		_, err := Find(in, nil)
		var faults form.Faults
		require.ErrorAs(t, err, &faults)
		require.Equal(t, field, faults[0].Field)
	}
	bad(Input{}, "moulds")
	in := three()
	in.Moulds[1].Low = quantity.Opt[quantity.Temperature]{}
	bad(in, "moulds[1].low")
	in = three()
	in.Moulds[1].High = quantity.Opt[quantity.Temperature]{}
	bad(in, "moulds[1].high")
	in.Alloy = some(alloy.CodeGreyIron)
	_, err := Find(in, nil)
	require.NoError(t, err)
	in = three()
	in.Moulds[2].High = some(celsius(1300))
	bad(in, "moulds[2].high")
	in = three()
	in.Moulds[2].Shortest, in.Moulds[2].Longest = some(quantity.Time(9)), some(quantity.Time(9))
	bad(in, "moulds[2].longest")
	in = three()
	in.Moulds[0].Low, in.Surroundings = some(celsius(300)), some(celsius(280))
	bad(in, "moulds[0].low")
	in = three()
	in.Start = some(celsius(160))
	in.Surroundings = some(celsius(150))
	bad(in, "start")
	in = three()
	in.Basis, in.First, in.Second, in.Between = some(byReadings), celsius(1400), celsius(1401), 60
	bad(in, "second")
	in.Second, in.Surroundings = celsius(180), some(celsius(150))
	bad(in, "second")
}

func TestAnyQuestion(t *testing.T) {
	r := rand.New(rand.NewSource(9))
	for trial := range 120 {
		in := Input{Constant: quantity.Time(60 * math.Exp(3+3*r.Float64())), Alloy: some(alloy.CodeGreyIron)}
		if r.Intn(2) == 0 {
			in.Start = some(celsius(1250 + 300*r.Float64()))
		}
		for range 1 + trial%15 {
			m := Mould{Mass: quantity.Mass(1 + 50*r.Float64()), Pouring: quantity.Time(2 + 60*r.Float64())}
			if r.Intn(2) == 0 {
				m.Low = some(celsius(1200 + 150*r.Float64()))
				m.High = some(m.Low.V + quantity.Temperature(5+150*r.Float64()))
			}
			m.Wall = some(quantity.Length(0.05 * (0.1 + r.Float64())))
			in.Moulds = append(in.Moulds, m)
		}
		out, _ := run(t, in)
		seen := map[int]bool{}
		worst := 0.0
		for k, m := range out.Moulds {
			seen[m.Listed] = true
			require.LessOrEqual(t, float64(m.Hot), math.Max(float64(m.High), 0)+1e-6, "never poured too hot")
			require.GreaterOrEqual(t, float64(m.Wait), 0.0)
			worst = math.Max(worst, float64(m.Short))
			if k > 0 {
				require.GreaterOrEqual(t, float64(m.Begin), float64(out.Moulds[k-1].End))
			}
		}
		require.Len(t, seen, len(in.Moulds))
		require.InDelta(t, worst, float64(out.Worst), 1e-6)
		require.LessOrEqual(t, float64(out.Bound), float64(out.Worst)+1e-6)
		blank, err := Find(in, nil)
		require.NoError(t, err)
		blank.Curves = out.Curves
		require.Equal(t, out, blank, "no answer hangs on the paper")

		// A hotter ladle never makes the worst mould colder.
		hotter := in
		hotter.Start = some(out.Start + 15)
		same := in
		same.Start = some(out.Start)
		a, _ := run(t, same)
		b, _ := run(t, hotter)
		if a.Proved {
			require.LessOrEqual(t, float64(b.Worst), float64(a.Worst)+1e-6)
		}
		// Begun at the least that works, it works; a little colder it does not.
		if out.StartLow.Known() && out.StartLow.V < celsius(1799) && a.Proved {
			at := in
			at.Start = some(out.StartLow.V + 1e-6)
			c, _ := run(t, at)
			require.LessOrEqual(t, float64(c.Worst), 1e-4)
			at.Start = some(out.StartLow.V - 0.5)
			c, _ = run(t, at)
			require.Greater(t, float64(c.Worst), 1e-4)
		}
	}
}

// FuzzFind feeds whatever JSON there is: the answer is faults or finite
// numbers, never a panic. The writer panics on a number that is not finite.
func FuzzFind(f *testing.F) {
	f.Add([]byte(`{"start":"1400 °C","time_constant":"1 h","moulds":[{"name":"a","mass":"20 kg","pouring":"15 s","low":"1300 °C","high":"1400 °C"},{"mass":"50 kg","pouring":"30 s","low":"1250 °C","high":"1320 °C"}]}`))
	f.Add([]byte(`{"alloy":"pewter","basis":"readings","first":"340 °C","second":"300 °C","between":"5 s","step":"1 h","capacity":"1 kg","before":"3 K","moulds":[{"mass":"20 kg","pouring":"1 h"},{"mass":"1 g","pouring":"0.5 s","wall":"3 mm"}]}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		in, _ := form.Decode[Input](data, quantity.US)
		p := &working.Paper{}
		out, err := Find(in, p)
		if err != nil {
			return
		}
		w := &reply.Writer{System: quantity.US, Working: true}
		w.Answers(out, p)
		w.Findings(p.Findings)
		w.Steps(p.Steps)
	})
}

func BenchmarkFindTwelve(b *testing.B) {
	r := rand.New(rand.NewSource(1))
	in := Input{Start: some(celsius(1400)), Constant: 3600}
	for range exactUpTo {
		low := celsius(1200 + 180*r.Float64())
		in.Moulds = append(in.Moulds, Mould{Mass: 10, Pouring: quantity.Time(5 + 20*r.Float64()), Low: some(low), High: some(low + 60)})
	}
	for b.Loop() {
		if _, err := Find(in, nil); err != nil {
			b.Fatal(err)
		}
	}
}

func ExampleFind() {
	out, err := Find(three(), nil)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, m := range out.Moulds {
		fmt.Println(m.Place, m.Name)
	}
	// Output:
	// 1 Grille
	// 2 Bracket
	// 3 Anvil
}
