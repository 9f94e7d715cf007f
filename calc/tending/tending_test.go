package tending

import (
	"encoding/json"
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/form"
	"pourwright/calc/ladleheat"
	"pourwright/calc/quantity"
	"pourwright/calc/working"
	"pourwright/calc/working/stepcheck"
)

// tend answers a question written as the door takes it, and checks its steps.
func tend(t testing.TB, question string) (Output, *working.Paper) {
	t.Helper()
	in, faults := form.Decode[Input]([]byte(question), quantity.Metric)
	require.NoError(t, faults.Err())
	return run(t, in)
}

func run(t testing.TB, in Input) (Output, *working.Paper) {
	t.Helper()
	return stepcheck.Run(t, Tend, in)
}

func refused(t testing.TB, question string) map[string]form.Fault {
	t.Helper()
	in, faults := form.Decode[Input]([]byte(question), quantity.Metric)
	require.NoError(t, faults.Err())
	_, err := Tend(in, nil)
	out := map[string]form.Fault{}
	if err != nil {
		for _, f := range err.(form.Faults) {
			out[f.Field] = f
		}
	}
	return out
}

func deg(T quantity.Opt[quantity.Temperature]) float64 { return quantity.In(T.V, "degC") }

// J. Stewart, Calculus, Newton's law of cooling, the bottle in the refrigerator
// (from memory): from 72 °F, in 44 °F, k = 0.01663 to the minute; after an hour
// 54.3 °F, and 50 °F after 92.6 min.
func TestStewartCalculusNewtonsLawOfCooling(t *testing.T) {
	out, _ := tend(t, `{"surroundings":"44 °F","time_constant":"3608 s","now":"60 min",
		"events":[{"what":"tapped","at":"0 s"},{"what":"reading","at":"0 s","temperature":"72 °F"}],
		"moulds":[{"low":"50 °F"}]}`)
	require.InDelta(t, 54.3, quantity.In(out.Metal.V, "degF"), 0.05)
	require.InDelta(t, 92.6, float64(out.Moulds[0].FullBy.V)/60, 0.05)
}

// heated is a ladle of the ladle's own calculator, and its course as the plan
// hands it on.
func heated(t testing.TB, question string) (ladleheat.Output, []Point) {
	t.Helper()
	in, faults := form.Decode[ladleheat.Input]([]byte(question), quantity.Metric)
	require.NoError(t, faults.Err())
	heat, err := ladleheat.Lose(in, &working.Paper{})
	require.NoError(t, err)
	var c []Point
	for _, p := range heat.Curves[0].Points {
		c = append(c, Point{At: quantity.Some(quantity.Time(p.X)), Temperature: quantity.Temperature(p.Y)})
	}
	return heat, c
}

// Without a reading the metal is where the ladle's own calculator has it: as
// pouring begins, as the last mould is full, and down to the coldest when that
// says so. Its course has 40 points; straight lines between them err by less
// than 1 K and 3 s.
func TestWithoutReadingsTheLadleModelHolds(t *testing.T) {
	tapped := []Event{{What: "tapped", At: quantity.Some(quantity.Time(0))}}
	for _, question := range []string{
		`{"alloy":"grey-iron","mass":"49 kg","tap":"1430 °C","transfer":"60 s","pouring":"40 s","window_low":"1300 °C","window_high":"1400 °C"}`,
		`{"alloy":"silicon-bronze","mass":"27 kg","tap":"1240 °C","transfer":"45 s","pouring":"10 s","window_low":"1100 °C","window_high":"1190 °C"}`,
		`{"alloy":"al-si-mg","mass":"2 kg","vessel":"crucible","tap":"770 °C","transfer":"20 s","pouring":"12 s","window_low":"700 °C","window_high":"760 °C"}`,
	} {
		heat, c := heated(t, question)
		in := Input{Events: tapped, Course: c, Constant: heat.Constant}
		for moment, want := range map[float64]quantity.Temperature{0: heat.Filled, float64(c[len(c)-1].At.V): heat.End.V} {
			in.Now = quantity.Some(quantity.Time(moment))
			out, _ := run(t, in)
			require.InDelta(t, float64(want), float64(out.Metal.V), 0.1, question) // the curve is drawn in fewer steps
			require.Equal(t, out.Metal, out.Model)
		}
		var asked ladleheat.Input
		asked, _ = form.Decode[ladleheat.Input]([]byte(question), quantity.Metric)
		in.Now = asked.Transfer
		out, _ := run(t, in)
		require.InDelta(t, float64(heat.Start), float64(out.Metal.V), 1, question)
	}
	// Standing metal, none poured.
	heat, c := heated(t, `{"alloy":"grey-iron","mass":"49 kg","tap":"1430 °C","transfer":"60 s","left":"100 %","window_low":"1300 °C","window_high":"1360 °C"}`)
	out, _ := run(t, Input{Events: tapped, Course: c, Moulds: []Mould{{Low: quantity.Some(heat.Low), High: quantity.Some(heat.High)}}})
	require.InDelta(t, float64(heat.Holds.V), float64(out.Moulds[0].FullBy.V), 3)
	require.InDelta(t, float64(heat.Wait.V), float64(out.Moulds[0].Opens.V), 3)
}

// A reading is where the metal then is, whatever the course says.
func TestReadingCorrects(t *testing.T) {
	const question = `{"time_constant":"1000 s","now":"%","events":[{"what":"tapped","at":"0 s"},{"what":"reading","at":"50 s","temperature":"1160 °C"}],
		"course":[{"at":"0 s","temperature":"1210 °C"},{"at":"100 s","temperature":"1140 °C"}]}`
	at := func(moment string) Output {
		out, _ := tend(t, replace(question, moment))
		return out
	}
	require.InDelta(t, 1160, deg(at("50 s").Metal), 1e-9)
	require.InDelta(t, 1175, deg(at("50 s").Model), 1e-9)
	require.InDelta(t, -15, float64(at("50 s").Off.V), 1e-9)
	// What it has over 20 °C is scaled by 1140/1155.
	require.InDelta(t, 20+1120*1140/1155.0, deg(at("100 s").Metal), 1e-9)
	// Past the course by its time constant.
	require.InDelta(t, 20+1120*1140/1155.0*math.Exp(-0.5), deg(at("600 s").Metal), 1e-9)
}

func replace(question, moment string) string {
	i := 0
	for question[i] != '%' {
		i++
	}
	return question[:i] + moment + question[i+1:]
}

// An even decay stays one: after a reading it goes on as the same law says from
// there, by hand.
func TestEvenDecayStaysEven(t *testing.T) {
	const tau, ambient = 900.0, 20.0
	in := Input{Constant: quantity.Some(quantity.Time(tau)), Events: []Event{
		{What: "tapped", At: quantity.Some(quantity.Time(0))},
		{What: "reading", At: quantity.Some(quantity.Time(120)), Temperature: quantity.Some(quantity.From[quantity.Temperature](1200, "degC"))},
	}}
	for i := range 2000 {
		s := float64(i)
		in.Course = append(in.Course, Point{At: quantity.Some(quantity.Time(s)), Temperature: quantity.From[quantity.Temperature](ambient+1300*math.Exp(-s/tau), "degC")})
		if len(in.Course) == 200 {
			break
		}
	}
	for _, moment := range []float64{120, 180, 199, 500} {
		in.Now = quantity.Some(quantity.Time(moment))
		out, _ := run(t, in)
		require.InDelta(t, ambient+1180*math.Exp(-(moment-120)/tau), deg(out.Metal), 1e-3)
	}
}

// A second ladleful begins its course anew, and a reading of the first counts
// no more.
func TestLadleFilledAgain(t *testing.T) {
	const question = `{"now":"320 s","events":[{"what":"tapped","at":"0 s"},{"what":"reading","at":"20 s","temperature":"1100 °C"},{"what":"tapped","at":"300 s"}],
		"course":[{"at":"0 s","temperature":"1210 °C"},{"at":"100 s","temperature":"1140 °C"}],
		"moulds":[{"low":"1150 °C","ladle":2}]}`
	out, _ := tend(t, question)
	require.InDelta(t, 1196, deg(out.Metal), 1e-9)
	require.Equal(t, 2, out.Ladles)
	require.InDelta(t, 300+600/7.0, float64(out.Moulds[0].FullBy.V), 1e-9)
}

// whole is a pour with everything known.
const whole = `{"tap":"1250 °C","liquidus":"1020 °C","time_constant":"1000 s",
	"course":[{"at":"0 s","temperature":"1210 °C"},{"at":"100 s","temperature":"1140 °C"},{"at":"200 s","temperature":"1090 °C"}],
	"moulds":[
		{"name":"Panel","number":2,"low":"1120 °C","high":"1180 °C","target":"10 s","shortest":"6 s","longest":"20 s","utmost":"40 s","lip_tilt":"33°",
		 "tilt":[{"at":"0 s","tilt":"40°"},{"at":"5 s","tilt":"60°"},{"at":"10 s","tilt":"80°"}]},
		{"name":"Feet","number":1,"low":"1090 °C","high":"1180 °C","target":"5 s"}],
	"events":[%]}`

func pour(t testing.TB, events string) (Output, *working.Paper) {
	t.Helper()
	return tend(t, replace(whole, events))
}

// At the end of its window the metal is as cold as the mould bears, and at its
// beginning as hot.
func TestWindows(t *testing.T) {
	out, _ := pour(t, `{"what":"tapped","at":"0 s"}`)
	m := out.Moulds[0]
	require.Equal(t, 2, m.Number)
	require.InDelta(t, 300/7.0, float64(m.Opens.V), 1e-9)
	require.InDelta(t, 140, float64(m.FullBy.V), 1e-9)
	require.InDelta(t, 130, float64(m.BeginBy.V), 1e-9)
	for _, moment := range []quantity.Time{m.Opens.V, m.FullBy.V} {
		at, _ := tend(t, replace(`{"now":"`+quantity.Text(moment)+`",`+whole[1:], `{"what":"tapped","at":"0 s"}`))
		want := 1180.0
		if moment == m.FullBy.V {
			want = 1120
		}
		require.InDelta(t, want, deg(at.Metal), 1e-6)
	}
	require.False(t, out.Moulds[1].Shortest.Known(), "what the plan does not say stays unknown")
	colder, _ := pour(t, `{"what":"tapped","at":"0 s"},{"what":"reading","at":"10 s","temperature":"1150 °C"}`)
	require.Less(t, colder.Moulds[0].FullBy.V, m.FullBy.V)
	cold, _ := pour(t, `{"what":"tapped","at":"0 s"},{"what":"reading","at":"0 s","temperature":"1110 °C"}`)
	require.True(t, cold.Moulds[0].Cold)
}

// The timetable of a whole pour, line by line.
func TestTimetable(t *testing.T) {
	lines := func(events string) []string {
		out, _ := pour(t, events)
		var all []string
		for _, s := range out.Next {
			all = append(all, quantity.Format(s.From, quantity.Metric)+" "+s.Level+": "+s.Do.String())
		}
		return all
	}
	const full = `{"what":"tapped","at":"0 s"},{"what":"reading","at":"10 s","temperature":"1203 °C"}`
	const one = full + `,{"what":"start","at":"50 s","mould":2}`
	const two = one + `,{"what":"stop","at":"59 s","mould":2}`
	require.Equal(t, []string{"0 s note: Tap at 1250 °C. Touch Ladle full as the ladle comes away."}, lines(``))
	require.Equal(t, []string{
		"0 s note: Wait: Panel takes 1180 °C at the most.",
		"42.9 s note: Take a reading, then pour Panel.",
		"2 min 10 s note: Take a reading, then pour Feet.",
		"3 min 15 s stop: Too cold for Panel: it would be under 1120 °C before it is full. Pig the metal, or ask the person in charge.",
	}, lines(`{"what":"tapped","at":"0 s"}`))
	require.Equal(t, []string{
		"50 s note: Keep the basin full.",
		"70 s mind: Over its longest, 20 s. Expect laps.",
		"90 s stop: Over the utmost, 40 s. It will not fill; ask the person in charge.",
		"2 min 20 s mind: The metal is under 1120 °C, its coldest.",
	}, lines(one))
	require.Equal(t, "59 s note: Pour Feet.", lines(two)[0])
	require.Contains(t, lines(two + `,{"what":"start","at":"80 s","mould":1},{"what":"stop","at":"85 s","mould":1}`)[0], "Every mould is poured")
	require.Contains(t, lines(two + `,{"what":"closed","at":"99 s"}`)[0], "closed")
	// What was tapped by mistake does not count.
	require.Equal(t, lines(full), lines(full + `,{"what":"start","at":"50 s","mould":2,"struck":true}`)[0:len(lines(full))])
}

// A pour is judged against its band, early and late; and by its temperatures.
func TestPoursAreJudged(t *testing.T) {
	codes := func(begin, end string) (Poured, []string) {
		out, p := pour(t, `{"what":"tapped","at":"0 s"},{"what":"start","at":"`+begin+`","mould":2},{"what":"stop","at":"`+end+`","mould":2}`)
		return out.Moulds[0], stepcheck.Codes(p)
	}
	m, found := codes("50 s", "60 s")
	require.Equal(t, good, m.Fits)
	require.Empty(t, found)
	require.InDelta(t, 10, float64(m.Took.V), 1e-12)
	require.InDelta(t, 1175, deg(m.Hot), 1e-9)
	require.InDelta(t, 1168, deg(m.AtEnd), 1e-9)
	m, found = codes("50 s", "55 s")
	require.Equal(t, early, m.Fits)
	require.Equal(t, "1 s under its shortest, 6 s", m.Judged.String())
	require.Equal(t, []string{"poured-early"}, found)
	m, found = codes("50 s", "72 s")
	require.Equal(t, late, m.Fits)
	require.Equal(t, []string{"poured-late"}, found)
	_, found = codes("20 s", "30 s")
	require.Equal(t, []string{"poured-hot"}, found)
	_, found = codes("150 s", "160 s")
	require.Equal(t, []string{"poured-cold"}, found)
	out, p := pour(t, `{"what":"tapped","at":"0 s"},{"what":"start","at":"50 s","mould":2},{"what":"stop","at":"54 s","mould":2},{"what":"start","at":"56 s","mould":2},{"what":"stop","at":"61 s","mould":2},{"what":"start","at":"90 s","mould":7}`)
	require.InDelta(t, 11, float64(out.Moulds[0].Took.V), 1e-12)
	require.Equal(t, "poured-in-goes", p.Findings[0].Code)
	require.Equal(t, "no-such-mould", p.Findings[len(p.Findings)-1].Code)
}

// Two readings that fall apart faster than the course are told.
func TestFallsFaster(t *testing.T) {
	_, p := pour(t, `{"what":"tapped","at":"0 s"},{"what":"reading","at":"20 s","temperature":"1200 °C"},{"what":"reading","at":"40 s","temperature":"1160 °C"}`)
	require.Equal(t, "falls-faster", p.Findings[1].Code)
	require.Contains(t, p.Findings[1].Text.String(), "lost 40 °C; the ladle's course says 14 °C")
}

// Under its liquidus metal freezes, and its temperature is no longer told.
func TestFreezingIsNotTold(t *testing.T) {
	out, _ := tend(t, replace(`{"now":"900 s",`+whole[1:], `{"what":"tapped","at":"0 s"}`))
	require.False(t, out.Metal.Known())
	require.True(t, out.Freezing)
	require.InDelta(t, 200+1000*math.Log(1070/1000.0), float64(out.FreezesAt.V), 1e-9)
	last := out.Course.Points[len(out.Course.Points)-1]
	require.InDelta(t, float64(out.FreezesAt.V), last.X, 1e-9)
	require.InDelta(t, 1020+273.15, last.Y, 1e-9)
}

// Each beat tips the ladle on by the same few degrees, along the schedule.
func TestBeats(t *testing.T) {
	out, _ := pour(t, ``)
	m := out.Moulds[0]
	require.InDelta(t, 3, quantity.In(m.Beat.V, "deg"), 1e-12, "4 °/s, and no more than a hundred beats to the minute")
	require.Len(t, m.Beats.Points, 14)
	for i, b := range m.Beats.Points {
		require.InDelta(t, 0.75*float64(i), b.X, 1e-9)
		require.InDelta(t, 40+3*float64(i), b.Y*180/math.Pi, 1e-9)
	}
	require.Empty(t, out.Moulds[1].Beats.Points)
	require.False(t, out.Moulds[1].Beat.Known())
}

// Nothing known: everything is wanted, nothing is invented, and the cards are
// there all the same.
func TestUnknownStaysUnknown(t *testing.T) {
	out, _ := tend(t, `{"moulds":[{}],"events":[{"what":"tapped","at":"0 s"},{"what":"start","at":"5 s","mould":1},{"what":"stop","at":"15 s","mould":1}]}`)
	require.False(t, out.Metal.Known())
	require.False(t, out.Moulds[0].FullBy.Known())
	require.InDelta(t, 10, float64(out.Moulds[0].Took.V), 1e-12)
	require.Empty(t, out.Moulds[0].Fits)
	require.Empty(t, out.Course.Points)
	var stations []string
	for _, w := range out.Wanted {
		stations = append(stations, w.Station)
	}
	require.Equal(t, []string{"ladleheat", "ladleheat", "pour", "ladle"}, stations)
	// A reading alone stands for its moment.
	at := func(now string) Output {
		out, _ := tend(t, `{"now":"`+now+`","events":[{"what":"tapped","at":"0 s"},{"what":"reading","at":"9 s","temperature":"700 °C"}]}`)
		return out
	}
	require.InDelta(t, 700, deg(at("9 s").Metal), 1e-9)
	require.False(t, at("10 s").Metal.Known())
	require.InDelta(t, 700, deg(at("10 s").Read), 1e-9)
}

// Every card has steps in their order, says who goes before it, and has a
// source or says that it is common practice.
func TestCards(t *testing.T) {
	seen := map[string]bool{}
	for _, c := range cards() {
		require.False(t, seen[c.Code])
		seen[c.Code] = true
		require.GreaterOrEqual(t, len(c.Steps), 3)
		require.LessOrEqual(t, len(c.Steps), 4, "no more than can be taken in beside a ladle")
		require.False(t, c.Source.IsZero())
		require.Contains(t, c.Law, "person in charge")
		for _, s := range c.Steps {
			require.NotContains(t, s, "!")
			require.LessOrEqual(t, len(s), 110)
		}
	}
	for _, code := range []string{"ran-short", "run-out", "boil", "cold-metal", "slag", "stop"} {
		require.True(t, seen[code], code)
	}
}

func TestRefused(t *testing.T) {
	for question, field := range map[string]string{
		`{"events":[{"what":"tapped"}]}`: "events[0].at",
		`{"events":[{"what":"tapped","at":"9 s"},{"what":"reading","at":"8 s","temperature":"700 °C"}]}`: "events[1].at",
		`{"events":[{"what":"start","at":"9 s"}]}`:                                                       "events[0].mould",
		`{"events":[{"what":"reading","at":"9 s"}]}`:                                                     "events[0].temperature",
		`{"events":[{"what":"reading","at":"9 s","temperature":"15 °C"}]}`:                               "events[0].temperature",
		`{"course":[{"at":"0 s","temperature":"700 °C"},{"at":"0 s","temperature":"690 °C"}]}`:           "course[1].at",
		`{"course":[{"at":"0 s","temperature":"700 °C"},{"at":"5 s","temperature":"701 °C"}]}`:           "course[1].temperature",
		`{"course":[{"temperature":"700 °C"}]}`:                                                          "course[0].at",
		`{"course":[{"at":"0 s","temperature":"20 °C"}]}`:                                                "course[0].temperature",
		`{"moulds":[{"low":"700 °C","high":"690 °C"}]}`:                                                  "moulds[0].high",
		`{"moulds":[{"low":"10 °C"}]}`:                                                                   "moulds[0].low",
		`{"moulds":[{"high":"10 °C"}]}`:                                                                  "moulds[0].high",
		`{"moulds":[{"number":2},{"name":"the second"}]}`:                                                "moulds[1].number",
		`{"moulds":[{"shortest":"9 s","longest":"8 s"}]}`:                                                "moulds[0].longest",
		`{"moulds":[{"tilt":[{"tilt":"3°"}]}]}`:                                                          "moulds[0].tilt[0].at",
		`{"moulds":[{"tilt":[{"at":"3 s"}]}]}`:                                                           "moulds[0].tilt[0].tilt",
		`{"moulds":[{"tilt":[{"at":"1 s","tilt":"3°"},{"at":"1 s","tilt":"4°"}]}]}`:                      "moulds[0].tilt[1].at",
		`{"moulds":[{"tilt":[{"at":"1 s","tilt":"3°"},{"at":"2 s","tilt":"2°"}]}]}`:                      "moulds[0].tilt[1].tilt",
	} {
		require.Contains(t, refused(t, question), field, question)
	}
	require.Empty(t, refused(t, `{"events":[{"what":"start","at":"9 s","struck":true},{"what":"remark","note":"smooth"}]}`))
}

// random is a pour that hangs together, by chance.
func random(r *rand.Rand) Input {
	celsius := quantity.From[quantity.Temperature]
	in := Input{}
	T := 600 + 900*r.Float64()
	for u := 0.0; len(in.Course) < 2+r.Intn(30); u += 0.5 + 60*r.Float64() {
		in.Course = append(in.Course, Point{At: quantity.Some(quantity.Time(u)), Temperature: celsius(T, "degC")})
		T -= (T - 100) * 0.1 * r.Float64()
	}
	if r.Intn(3) > 0 {
		in.Constant = quantity.Some(quantity.Time(60 + 5000*r.Float64()))
	}
	at := 0.0
	add := func(e Event) {
		e.At = quantity.Some(quantity.Time(at))
		in.Events = append(in.Events, e)
		at += 100 * r.Float64()
	}
	add(Event{What: tapped})
	for range r.Intn(4) {
		add(Event{What: reading, Temperature: quantity.Some(celsius(200+1400*r.Float64(), "degC"))})
		if r.Intn(3) == 0 {
			add(Event{What: tapped})
		}
	}
	low := 200 + 1000*r.Float64()
	in.Moulds = []Mould{{Low: quantity.Some(celsius(low, "degC")), High: quantity.Some(celsius(low+100*r.Float64()+1, "degC")), Target: quantity.Some(quantity.Time(1 + 60*r.Float64()))}}
	in.Now = quantity.Some(quantity.Time(at))
	return in
}

// Later is never hotter; nothing is below the surroundings; hotter readings
// never make a window shorter; the window is where the metal is.
func TestProperties(t *testing.T) {
	r := rand.New(rand.NewSource(1))
	for range 400 {
		in := random(r)
		out, _ := run(t, in)
		last := math.Inf(1)
		for i, p := range out.Course.Points {
			require.LessOrEqual(t, p.Y, last+1e-9)
			require.GreaterOrEqual(t, p.Y, 273.15+20-1e-9)
			require.True(t, i == 0 || p.X > out.Course.Points[i-1].X)
			last = p.Y
		}
		if out.Metal.Known() && out.PerMinute.Known() {
			in.Now.V += 60
			later, _ := run(t, in)
			if later.Metal.Known() {
				require.InDelta(t, float64(out.PerMinute.V), float64(out.Metal.V-later.Metal.V), 1e-6)
			}
			in.Now.V -= 60
		}
		m := out.Moulds[0]
		if m.Opens.Known() && m.FullBy.Known() {
			require.LessOrEqual(t, m.Opens.V, m.FullBy.V)
		}
		for i, s := range out.Next {
			require.True(t, i == 0 || s.From > out.Next[i-1].From, "the timetable turns back")
			require.GreaterOrEqual(t, s.From, out.Now)
		}
		n := len(in.Events)
		if in.Events[n-1].What == reading && m.FullBy.Known() {
			in.Events = append([]Event(nil), in.Events...)
			in.Events[n-1].Temperature.V += 10
			hotter, _ := run(t, in)
			if by := hotter.Moulds[0].FullBy; by.Known() {
				require.GreaterOrEqual(t, by.V, m.FullBy.V)
			}
		}
	}
}

func FuzzTend(f *testing.F) {
	f.Add([]byte(replace(whole, `{"what":"tapped","at":"0 s"},{"what":"start","at":"50 s","mould":2}`)))
	f.Add([]byte(`{"time_constant":"60 s","events":[{"what":"tapped","at":"0 s"},{"what":"reading","at":"24 h","temperature":"1900 °C"}],"course":[{"at":"0 s","temperature":"21 °C"}],"moulds":[{"low":"22 °C","target":"1 h"}]}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		in, faults := form.Decode[Input](data, quantity.Metric)
		if len(faults) > 0 {
			return
		}
		p := &working.Paper{}
		out, err := Tend(in, p)
		if err != nil {
			return
		}
		for _, s := range p.Steps {
			require.True(t, quantity.Finite(s.Result.Value), s.Result.Symbol)
		}
		_, err = json.Marshal(out.Course.Points)
		require.NoError(t, err)
	})
}
