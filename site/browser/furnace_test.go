package browser

import (
	"context"
	"encoding/json"
	"fmt"
	"maps"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/cdproto/browser"
	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/require"

	"pourwright/calc/catalogue"
)

// press touches something at the furnace, once the page takes touches again
// after the last.
func (tab *browserTab) press(selector string) {
	tab.t.Helper()
	tab.until(`document.querySelector(%s)?.checkVisibility() && !document.querySelector("pw-furnace").hasAttribute("data-settling")`, selector)
	tab.tap(selector)
}

// stage waits for a page of the furnace side.
func (tab *browserTab) stage(name string) {
	tab.t.Helper()
	tab.until(`document.querySelector(".furnace-body")?.dataset.stage === %s`, name)
}

// figure is one of the large figures.
func (tab *browserTab) figure(name string) string {
	tab.t.Helper()
	tab.until(`document.querySelector(%s)`, `[data-figure="`+name+`"]`)
	return tab.texts(`[data-figure="` + name + `"]`)[0]
}

// number is the number that a figure begins with.
func (tab *browserTab) number(figure string) float64 {
	tab.t.Helper()
	text := tab.figure(figure)
	end := strings.IndexFunc(text, func(r rune) bool { return !strings.ContainsRune("0123456789", r) })
	if end < 0 {
		end = len(text)
	}
	n, err := strconv.ParseFloat(text[:end], 64)
	require.NoError(tab.t, err, text)
	return n
}

// moment is the time since tapping that the page goes by, s, and between which
// two times of the test it was asked.
type moment struct {
	at           float64
	asked, heard time.Time
}

func (tab *browserTab) elapsed() moment {
	tab.t.Helper()
	asked := time.Now()
	at := js[float64](tab, `document.querySelector("pw-furnace").clock.now()`)
	return moment{at, asked, time.Now()}
}

// goesOn requires that so many seconds more than have gone by since a moment
// are counted now.
func (tab *browserTab) goesOn(from moment, more float64) {
	tab.t.Helper()
	const slack = 0.3 // s
	now := tab.elapsed()
	require.GreaterOrEqual(tab.t, now.at-from.at-more, now.asked.Sub(from.heard).Seconds()-slack)
	require.LessOrEqual(tab.t, now.at-from.at-more, now.heard.Sub(from.asked).Seconds()+slack)
}

// answered is a plan with every hold point answered but some.
func answered(t testing.TB, plan map[string]any, but ...string) map[string]any {
	t.Helper()
	var answers []any
	for _, s := range natively(t, "metric", plan).Stations {
		if s.Key != "handling" {
			continue
		}
		for _, item := range s.Answers.(map[string]any)["items"].([]any) {
			leaf := func(key string) map[string]any { return item.(map[string]any)[key].(map[string]any) }
			if code := leaf("code")["text"].(string); leaf("hold")["value"] == true && !slices.Contains(but, code) {
				answers = append(answers, map[string]any{"code": code, "answer": "yes"})
			}
		}
	}
	out := maps.Clone(plan)
	handling := maps.Clone(plan["handling"].(map[string]any))
	handling["answers"] = answers
	out["handling"] = handling
	return out
}

// atFurnace opens a plan of one's own at the furnace.
func (tab *browserTab) atFurnace(plan map[string]any) {
	tab.t.Helper()
	tab.hosted()
	content, err := json.Marshal(plan)
	require.NoError(tab.t, err)
	tab.load("own.pour.json", content)
	tab.until(`document.querySelector("[data-part]")`)
	tab.until(`document.querySelector("[data-saved=saved]")`)
	tab.toFurnace()
}

func (tab *browserTab) toFurnace() {
	tab.t.Helper()
	js[string](tab, `location.hash = %s`, tab.planAddress()+"/furnace")
	tab.atWork()
}

// atWork waits until the furnace side has its answers.
func (tab *browserTab) atWork() {
	tab.t.Helper()
	tab.until(`document.querySelector(".furnace-body") && document.querySelector(".furnace-body").dataset.stage !== "wait" && document.querySelector("pw-furnace").data.state.furnace`)
}

// keptPlan is the open plan as the device keeps it.
func (tab *browserTab) keptPlan() map[string]any {
	tab.t.Helper()
	id := strings.TrimPrefix(tab.planAddress(), "#/plan/")
	tab.until(`localStorage.getItem(%s) === null`, "pourwright.unsaved."+id)
	var doc map[string]any
	require.NoError(tab.t, json.Unmarshal([]byte(tab.stored(id)), &doc))
	return doc
}

// record is what was tapped in, a line each, as the device keeps it.
func (tab *browserTab) record() []string {
	tab.t.Helper()
	var all []string
	for _, e := range eventsOf(tab.keptPlan()) {
		line := fmt.Sprint(e["what"])
		for _, key := range []string{"name", "temperature", "note"} {
			if e[key] != nil {
				line += " " + fmt.Sprint(e[key])
			}
		}
		if e["struck"] == true {
			line += ", struck"
		}
		all = append(all, line)
	}
	return all
}

func eventsOf(doc map[string]any) (events []map[string]any) {
	record, _ := doc["record"].(map[string]any)
	list, _ := record["events"].([]any)
	for _, e := range list {
		events = append(events, e.(map[string]any))
	}
	return events
}

// side is what the calculators answer to a plan at the furnace, outside the
// browser.
func side(t testing.TB, plan any) map[string]any {
	t.Helper()
	question, err := json.Marshal(plan)
	require.NoError(t, err)
	var reply struct {
		OK      bool
		Furnace struct{ Answers map[string]any }
	}
	require.NoError(t, json.Unmarshal(catalogue.Call("furnace", []byte(`{}`), question), &reply))
	require.True(t, reply.OK)
	return reply.Furnace.Answers
}

// curve is one of its curves.
func curve(tree any) (points [][2]float64) {
	for _, p := range tree.(map[string]any)["points"].([]any) {
		points = append(points, [2]float64{p.([]any)[0].(float64), p.([]any)[1].(float64)})
	}
	return points
}

func along(points [][2]float64, x float64) float64 {
	for i := 1; i < len(points); i++ {
		if a, b := points[i-1], points[i]; x <= b[0] {
			return a[1] + (b[1]-a[1])*(x-a[0])/(b[0]-a[0])
		}
	}
	return points[len(points)-1][1]
}

// The hold points come first, one at a time; none is passed by. Setting one
// aside takes a reason; without one it stays open. Both are kept.
func TestHoldPointsComeFirstAtTheFurnace(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.atFurnace(answered(t, examples(t)[bracket], "crew", "dry-tools", "pigs"))
	tab.stage("hold")
	require.Empty(t, tab.texts("[data-action=tapped], [data-action=start]"))
	require.Contains(t, tab.texts("h1")[0], "of 18")
	tab.press("[data-action=hold-yes]")
	tab.until(`document.querySelector("[data-hold-point=dry-tools]")`)

	// Aside, but no reason after all.
	tab.press("[data-action=hold-aside]")
	tab.stage("aside")
	require.Greater(t, len(tab.texts("[data-reason]")), 2)
	tab.press("[data-action=back]")
	tab.until(`document.querySelector("[data-hold-point=dry-tools]")`)
	require.Empty(t, tab.record())

	reason := "Not done; the person in charge decides to go on"
	point := tab.texts("[data-hold-point]")[0]
	tab.press("[data-action=hold-aside]")
	tab.press(`[data-reason="` + reason + `"]`)
	tab.until(`document.querySelector("[data-hold-point=pigs]")`)
	require.Equal(t, []string{"hold “" + point + "” " + reason}, tab.record())

	// A reload skips nothing.
	tab.reload()
	tab.stage("hold")
	require.Equal(t, "pigs", js[string](tab, `document.querySelector("[data-hold-point]").dataset.holdPoint`))
	tab.press("[data-action=hold-yes]")
	tab.stage("ready")
	require.Contains(t, tab.texts("h1")[0], "1 of them set aside")
	kept := map[string]map[string]any{}
	for _, a := range tab.keptPlan()["handling"].(map[string]any)["answers"].([]any) {
		kept[a.(map[string]any)["code"].(string)] = a.(map[string]any)
	}
	require.Equal(t, "yes", kept["crew"]["answer"])
	require.Equal(t, "no", kept["dry-tools"]["answer"])
	require.Equal(t, reason, kept["dry-tools"]["reason"])

	// The safe-handling list shows the same answers.
	tab.view(tab.planAddress() + "/handling")
	tab.until(`document.querySelector("[data-item=dry-tools]")?.dataset.state === "overridden with reason"`)
	require.Equal(t, "0", js[string](tab, `document.querySelector("[data-card=holds] .card-text")?.textContent.match(/\d+/)?.[0] ?? "0"`))
}

// A touch that bounces answers one hold point, not the next one too.
func TestBouncingTouchCountsOnce(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.atFurnace(answered(t, examples(t)[bracket], "crew", "dry-tools"))
	tab.stage("hold")
	tab.until(`!document.querySelector("pw-furnace").hasAttribute("data-settling")`)
	js[chromedp.Void](tab, `{ document.querySelector("[data-action=hold-yes]").click(); document.querySelector("[data-action=hold-yes]").click(); }`)
	tab.until(`document.querySelector("[data-hold-point=dry-tools]")`)
	js[chromedp.Void](tab, `document.querySelector("[data-action=hold-yes]").click()`)
	tab.until(`!document.querySelector("pw-furnace").hasAttribute("data-settling")`)
	require.NotEmpty(t, tab.texts("[data-hold-point=dry-tools]"))
}

// A plan without a safe-handling list says so; going on without one takes a
// reason, which is kept.
func TestNoListIsNotSilent(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	plan := maps.Clone(examples(t)[bracket])
	delete(plan, "handling")
	tab.atFurnace(plan)
	tab.stage("no-list")
	require.Contains(t, tab.texts(".furnace-why")[0], "furnace")
	tab.press("[data-action=hold-aside]")
	tab.press("[data-reason]")
	tab.stage("ready")
	require.Len(t, tab.record(), 1)
	require.Contains(t, tab.record()[0], "No safe-handling list: ")
	tab.reload()
	tab.stage("ready")
}

// A whole pour of two moulds by touch alone, on a tablet and a phone: what was
// tapped is in the record, in its order, with its times; the temperatures are
// those of the same calculators outside; the record leaves with the plan and as
// a table, and opens again from the file.
func TestWholePourByTouch(t *testing.T) {
	t.Parallel()
	h := open(t)
	for _, s := range []screen{tablet, phone} {
		t.Run(s.name, func(t *testing.T) {
			t.Parallel()
			tab := h.tab(t)
			tab.size(s)
			tab.atFurnace(answered(t, examples(t)[bracket]))
			tab.stage("ready")
			require.Equal(t, "746 °C", tab.figure("tap"))
			tab.press("[data-action=tapped]")
			tab.stage("pour")
			tab.until(`document.querySelector("[data-figure=metal]").textContent.includes("°C")`)
			tab.press("[data-action=reading]")
			tab.press(`[data-step="-1"]`)
			read := tab.number("read")
			tab.press("[data-action=write-reading]")
			tab.stage("pour")
			require.Contains(t, tab.texts("[data-action=start]")[0], "Bracket")
			tab.press("[data-action=start]")
			tab.until(`document.querySelector("[data-figure=pouring]")`)
			tab.until(`document.querySelector("[data-figure=pouring]").dataset.band === "good"`)
			tab.press("[data-action=stop]")
			tab.until(`document.querySelector("[data-action=start]")?.textContent.includes("Base of the lamp")`)
			tab.press("[data-action=remark]")
			tab.press(`[data-remark="Ran smoothly"]`)
			tab.press("[data-action=start]")
			tab.press("[data-action=trouble]")
			tab.press("[data-card-way=ran-short]")
			require.NotEmpty(t, tab.texts("[data-action=stop]"), "a running pour can be stopped from every page")
			tab.press("[data-action=write-trouble]")
			tab.stage("pour")
			tab.press("[data-action=stop]")
			tab.press("[data-action=close]")
			tab.press("[data-action=close-yes]")
			tab.stage("closed")
			require.Equal(t, []string{
				"tapped", fmt.Sprintf("reading %v °C", read), "start Bracket", "stop Bracket", "remark Bracket Ran smoothly",
				"start Base of the lamp", "trouble Base of the lamp Ran short", "stop Base of the lamp", "closed",
			}, tab.record())

			kept := tab.keptPlan()
			last := 0.0
			for _, e := range eventsOf(kept) {
				at, err := strconv.ParseFloat(strings.TrimSuffix(e["at"].(string), " s"), 64)
				require.NoError(t, err)
				require.GreaterOrEqual(t, at, last)
				last = at
				clock, err := time.Parse(time.RFC3339, e["clock"].(string))
				require.NoError(t, err)
				require.WithinDuration(t, time.Now(), clock, time.Hour)
			}
			tab.quiet()
			for i, m := range side(t, kept)["moulds"].([]any) {
				for _, key := range []string{"took", "hot", "at_end"} {
					want := m.(map[string]any)[key].(map[string]any)["text"].(string)
					require.Contains(t, tab.texts(fmt.Sprintf("[data-poured=%q]", fmt.Sprint(i+1)))[0], want, key)
				}
			}

			name, table := tab.download("[data-action=save-record]", "*.csv")
			require.Equal(t, "lamp-bracket-aluminium.record.csv", name)
			rows := strings.Split(strings.TrimSpace(string(table)), "\r\n")
			require.Len(t, rows, 10)
			require.Contains(t, rows[5], `"Ran smoothly"`)
			_, file := tab.download("[data-action=save-file]", "*.json")
			var saved map[string]any
			require.NoError(t, json.Unmarshal(file, &saved))
			require.Equal(t, kept["record"], saved["record"])
			other := h.tab(t)
			other.hosted()
			other.load("own.pour.json", file)
			other.until(`document.querySelector("[data-part]")`)
			require.Empty(t, other.texts(".strange code"), "the record is understood")
			other.toFurnace()
			other.stage("closed")

			// Pouring again is another plan, without record and answers.
			tab.press("[data-action=pour-again]")
			tab.stage("hold")
			require.Empty(t, tab.record())
			tab.view("#/")
			require.Len(t, tab.texts("[data-plan]"), 2)
		})
	}
}

// download touches a button and returns the file that it hands out.
func (tab *browserTab) download(selector, pattern string) (name string, content []byte) {
	tab.t.Helper()
	dir := tab.t.TempDir()
	_, err := chromedp.CallBrowser(tab, browser.SetDownloadBehavior, browser.SetDownloadBehaviorParams{
		Behavior:         browser.SetDownloadBehaviorBehaviorAllow,
		BrowserContextID: chromedp.FromContext(tab).BrowserContextID,
		DownloadPath:     dir,
	})
	require.NoError(tab.t, err)
	tab.press(selector)
	for end := time.Now().Add(patience); time.Now().Before(end); time.Sleep(20 * time.Millisecond) {
		files, err := filepath.Glob(filepath.Join(dir, pattern))
		require.NoError(tab.t, err)
		if len(files) == 1 {
			if content, err := os.ReadFile(files[0]); err == nil && len(content) > 0 {
				return filepath.Base(files[0]), content
			}
		}
	}
	tab.t.Fatal("no file was saved")
	return "", nil
}

// pouringAt has the bracket being poured.
func (tab *browserTab) pouringAt() {
	tab.t.Helper()
	tab.atFurnace(answered(tab.t, examples(tab.t)[bracket]))
	tab.press("[data-action=tapped]")
	tab.stage("pour")
	tab.press("[data-action=start]")
	tab.until(`document.querySelector("[data-figure=tilt]")`)
}

// A reload in the middle of a pour loses nothing and no time.
func TestReloadInMidPour(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.pouringAt()
	before := tab.elapsed()
	run(tab, chromedp.Reload())
	tab.atWork()
	tab.stage("pour")
	require.NotEmpty(t, tab.texts("[data-action=stop]"))
	tab.goesOn(before, 0)
	require.Equal(t, []string{"tapped", "start Bracket"}, tab.record())
	require.Empty(t, tab.texts("[data-warning=clock]"))
	tab.press("[data-action=stop]")
	tab.until(`document.querySelector("[data-action=start]")`)
	require.Equal(t, []string{"tapped", "start Bracket", "stop Bracket"}, tab.record())
}

// The page crashes in the middle of a pour, in the very moment of an entry:
// another that is opened goes on where it was.
func TestCrashInMidPour(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.forgive("crashed")
	tab.pouringAt()
	address := js[string](tab, `location.href`)
	before := tab.elapsed()
	tab.press("[data-action=stop]")
	go func() { _, _ = chromedp.Call(tab, page.Crash, cdp.Empty{}) }() // which is not answered
	for alive := true; alive; {
		ctx, cancel := context.WithTimeout(tab, time.Second)
		_, err := chromedp.Run(ctx, chromedp.Evaluate[int](`1`))
		cancel()
		alive = err == nil
	}
	other := tab.another()
	other.visit(address)
	other.atWork()
	other.stage("pour")
	require.Equal(t, []string{"tapped", "start Bracket", "stop Bracket"}, other.record())
	other.goesOn(before, 0)
}

// clocks lets a test set the two clocks of the device.
const clocks = `
	window.wallBy = 0; window.monoBy = 0; window.wallRate = 0;
	{
		const wall = Date.now, mono = performance.now.bind(performance), from = mono();
		const Real = Date;
		performance.now = () => mono() + monoBy;
		Date = class extends Real {
			constructor(...args) { args.length ? super(...args) : super(Real.now() + wallBy); }
			static now() { return wall() + wallBy + wallRate * (mono() - from); }
		};
	}`

// The clock of the device is set, on and back, in the middle of a pour: the
// time since tapping goes on as it was, it is told, and one touch counts the
// step after all.
func TestClockOfTheDeviceIsSet(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.before(clocks)
	tab.pouringAt()
	before := tab.elapsed()
	js[chromedp.Void](tab, `{ wallBy = 3600e3; }`)
	tab.until(`document.querySelector("[data-warning=clock]")`)
	tab.goesOn(before, 0)
	require.Contains(t, tab.texts("[data-warning=clock] p")[0], "set on by 3600 s")
	tab.press("[data-action=other-way]")
	tab.until(`!document.querySelector("[data-warning=clock]")`)
	tab.goesOn(before, 3600)

	before = tab.elapsed()
	js[chromedp.Void](tab, `{ wallBy = -7200e3; }`)
	tab.until(`document.querySelector("[data-warning=clock]")`)
	tab.goesOn(before, 0)
	require.Contains(t, tab.texts("[data-warning=clock] p")[0], "set back by 10800 s")
	require.Empty(t, tab.texts("[data-action=other-way]"), "time does not go back")
	tab.press("[data-action=clock-right]")
	tab.until(`!document.querySelector("[data-warning=clock]")`)
	require.Len(t, tab.record(), 5, "each step, and what was made of it, is in the record")
}

// A clock that goes five per cent fast is not followed.
func TestClockThatRunsFast(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.before(clocks)
	tab.pouringAt()
	js[chromedp.Void](tab, `{ wallRate = 0.05; wallBy -= 0.05 * performance.now(); }`)
	from := js[[]float64](tab, `[document.querySelector("pw-furnace").clock.now(), performance.now(), Date.now()]`)
	tab.until(`performance.now() > %v`, from[1]+4000)
	till := js[[]float64](tab, `[document.querySelector("pw-furnace").clock.now(), performance.now(), Date.now()]`)
	require.InDelta(t, (till[1]-from[1])/1000, till[0]-from[0], 0.02)
	require.Greater(t, (till[2]-from[2])/1000-(till[0]-from[0]), 0.15)
	require.Empty(t, tab.texts("[data-warning=clock]"))
}

// The device sleeps, or a call takes the screen, for ten minutes: its own clock
// stands still meanwhile and the time counts all the same.
func TestLongSuspension(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.before(clocks + `
		window.sight = "visible";
		Object.defineProperty(Document.prototype, "visibilityState", { get: () => sight });
		window.turn = (to) => { sight = to; document.dispatchEvent(new Event("visibilitychange")); };`)
	tab.pouringAt()
	before := tab.elapsed()
	js[chromedp.Void](tab, `{ turn("hidden"); wallBy += 600e3; turn("visible"); }`)
	tab.goesOn(before, 600)
	tab.until(`document.querySelector("[data-warning=clock]")`)
	require.Contains(t, tab.texts("[data-warning=clock] p")[0], "slept for 600 s")
	require.NotEmpty(t, tab.texts("[data-action=stop]"))
	require.Equal(t, "late", js[string](tab, `document.querySelector("[data-figure=pouring]").dataset.band`))
	tab.press("[data-action=other-way]")
	tab.until(`!document.querySelector("[data-warning=clock]")`)
	tab.goesOn(before, 0)

	// The same with the page closed meanwhile, and the clock set back under it.
	before = tab.elapsed()
	tab.until(`document.querySelector("pw-furnace")`)
	js[chromedp.Void](tab, `dispatchEvent(new Event("pagehide"))`)
	tab.before(`wallBy = -3600e3;`)
	run(tab, chromedp.Reload())
	tab.atWork()
	tab.until(`document.querySelector("[data-warning=clock]")`)
	require.Contains(t, tab.texts("[data-warning=clock] p")[0], "while this page was closed")
	require.Less(t, tab.elapsed().at, before.at+60)
	require.GreaterOrEqual(t, tab.elapsed().at, before.at)
}

// A reading moves the metal to where the thermometer says, and the window with
// it; both as the calculators say outside. Struck out, it counts no more.
func TestReadingCorrects(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.atFurnace(answered(t, examples(t)[bracket]))
	tab.press("[data-action=tapped]")
	tab.stage("pour")
	tab.press("[data-action=reading]")
	stood := tab.number("read")
	require.InDelta(t, 746, stood, 10)
	for _, step := range []string{"-10", "-5", "1", "-10"} {
		tab.press(`[data-step="` + step + `"]`)
	}
	require.Equal(t, stood-24, tab.number("read"))
	tab.press("[data-action=write-reading]")
	tab.stage("pour")
	tab.until(`document.querySelector("pw-furnace").data.state.furnace.answers.read.text === %s`, fmt.Sprintf("%v °C", stood-24))
	tab.until(`document.querySelector(".furnace-more").textContent.includes("Read ")`)
	answers := side(t, tab.keptPlan())
	require.InDelta(t, along(curve(answers["course"]), tab.elapsed().at), tab.number("metal"), 1.1)
	require.InDelta(t, stood-24, tab.number("metal"), 6)
	m := answers["moulds"].([]any)[0].(map[string]any)
	left := m["begin_by"].(map[string]any)["si"].(float64) - tab.elapsed().at
	shown := strings.SplitN(strings.Fields(tab.figure("left"))[0], ":", 2)
	minutes, _ := strconv.ParseFloat(shown[0], 64)
	seconds, _ := strconv.ParseFloat(shown[1], 64)
	require.InDelta(t, left, 60*minutes+seconds, 1.5)

	tab.press("[data-action=more]")
	tab.press("[data-action=strike]")
	tab.stage("pour")
	tab.until(`document.querySelector("pw-furnace").data.state.furnace.answers.read.unknown`)
	require.Equal(t, []string{"tapped", fmt.Sprintf("reading %v °C, struck", stood-24)}, tab.record())
}

// The drawn ladle tips on as the ladle's own schedule says, with a beat that
// can be heard and put off; without movement it steps from beat to beat.
func TestTiltCueMoves(t *testing.T) {
	t.Parallel()
	h := open(t)
	beats := `
		window.tones = 0;
		const make = AudioContext.prototype.createOscillator;
		AudioContext.prototype.createOscillator = function () { tones++; return make.call(this); };
		Object.defineProperty(AudioContext.prototype, "state", { get: () => "running" });`
	tab := h.tab(t)
	tab.before(beats)
	tab.pouringAt()
	m := side(t, tab.keptPlan())["moulds"].([]any)[0].(map[string]any)
	schedule := curve(m["tilt"])
	begun := m["begun"].(map[string]any)["si"].(float64)
	last := 0.0
	for range 3 {
		seen := js[[]float64](tab, `(() => { const f = document.querySelector("pw-furnace"); f.draw(); return [f.clock.now(), parseFloat(document.querySelector("[data-figure=tilt]").textContent)]; })()`)
		require.InDelta(t, along(schedule, seen[0]-begun), seen[1], 1.5)
		require.Greater(t, seen[1], last)
		last = seen[1]
		tab.until(`document.querySelector("pw-furnace").clock.now() > %v`, seen[0]+0.8)
	}
	tab.until(`document.querySelector("pw-furnace").clock.now() > %v`, begun+schedule[len(schedule)-1][0]+0.5)
	require.Equal(t, len(curve(m["beats"]))+1, js[int](tab, `tones`), "one tone a beat, and a double one at the end")

	quiet := h.tab(t)
	quiet.before(beats)
	quiet.still()
	quiet.atFurnace(answered(t, examples(t)[bracket]))
	quiet.press("[data-action=tapped]")
	quiet.press("[data-action=sound]")
	quiet.press("[data-action=start]")
	quiet.until(`document.querySelector("[data-figure=tilt]")`)
	var steps []float64
	for _, b := range curve(m["beats"]) {
		steps = append(steps, math.Round(b[1]))
	}
	for range 3 {
		require.Contains(t, steps, quiet.number("tilt"))
		at := quiet.number("tilt")
		quiet.until(`parseFloat(document.querySelector("[data-figure=tilt]").textContent) > %v`, at)
	}
	require.Zero(t, js[int](quiet, `tones`))
}

// Each trouble card is one tap from the pour and says what the calculators
// have for it, with its source and who goes before it.
func TestTroubleIsOneTapAway(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.pouringAt()
	tab.press("[data-action=trouble]")
	tab.stage("trouble")
	require.Contains(t, tab.texts("[data-in-doubt]")[0], "call STOP")
	tab.press("[data-action=back]")
	for _, c := range side(t, tab.keptPlan())["trouble"].([]any) {
		leaf := func(key string) string { return c.(map[string]any)[key].(map[string]any)["text"].(string) }
		tab.press("[data-action=trouble]")
		tab.press(`[data-card-way="` + leaf("code") + `"]`)
		tab.stage("card")
		var want []string
		for _, s := range c.(map[string]any)["steps"].([]any) {
			want = append(want, s.(map[string]any)["text"].(string))
		}
		require.Equal(t, want, tab.texts("[data-trouble-card] li"))
		require.Equal(t, leaf("title"), tab.texts("h1")[0])
		require.Equal(t, []string{leaf("source")}, tab.texts(".furnace-source"))
		require.Contains(t, tab.texts(".furnace-body")[0], leaf("law"))
		tab.press("[data-action=back]")
		tab.stage("pour")
	}
}

// The screen is held awake, again after the page was out of sight; where it
// cannot be, that is said.
func TestScreenStaysAwake(t *testing.T) {
	t.Parallel()
	h := open(t)
	tab := h.tab(t)
	tab.before(`
		window.held = 0;
		Object.defineProperty(navigator, "wakeLock", { value: { request: async (what) => {
			held++;
			const lock = new EventTarget();
			lock.release = async () => lock.dispatchEvent(new Event("release"));
			window.lock = lock;
			return lock;
		} } });`)
	tab.atFurnace(answered(t, examples(t)[bracket]))
	tab.until(`held === 1`)
	require.Empty(t, tab.texts("[data-warning=dark]"))
	js[chromedp.Void](tab, `lock.release().then(() => document.dispatchEvent(new Event("visibilitychange")))`)
	tab.until(`held === 2`)
	tab.press("[data-action=leave]")
	tab.until(`document.querySelector("[data-part]")`)

	other := h.tab(t)
	other.before(`Object.defineProperty(navigator, "wakeLock", { value: undefined });`)
	other.atFurnace(answered(t, examples(t)[bracket]))
	other.until(`document.querySelector("[data-warning=dark]")`)
	require.Contains(t, other.texts("[data-warning=dark]")[0], "cannot keep the screen on")
}

// Undo takes back changes of the plan, and leaves the record alone.
func TestUndoLeavesTheRecord(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.atFurnace(answered(t, examples(t)[bracket]))
	tab.view(tab.planAddress())
	tab.sheet("metal")
	tab.fill("metal.pour_temperature", "735 °C")
	tab.toFurnace()
	tab.press("[data-action=tapped]")
	tab.stage("pour")
	tab.press("[data-action=leave]")
	tab.until(`document.querySelector("[data-action=undo]:not([disabled])")`)
	tab.click("[data-action=undo]")
	tab.quiet()
	tab.until(`document.querySelector("[data-saved=saved]")`)
	require.Nil(t, tab.keptPlan()["metal"].(map[string]any)["pour_temperature"])
	require.Equal(t, []string{"tapped"}, tab.record())
	tab.toFurnace()
	tab.stage("pour")
}

// What the plan does not know stays unknown, and leads to where it is filled in.
func TestFurnaceSideOfABarePlan(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.atFurnace(map[string]any{"format": 1, "title": "Bare"})
	tab.stage("no-list")
	tab.press("[data-action=hold-aside]")
	tab.press("[data-reason]")
	tab.stage("ready")
	require.Contains(t, tab.texts(".furnace-body")[0], "not known")
	tab.press("[data-action=tapped]")
	tab.stage("pour")
	require.Equal(t, "not known", tab.figure("metal"))
	tab.press("[data-action=start]")
	tab.until(`document.querySelector("[data-figure=pouring]")?.dataset.band === "unknown"`)
	require.Contains(t, tab.figure("tilt"), "not known")
	tab.press("[data-action=stop]")
	tab.press("[data-action=more]")
	require.ElementsMatch(t, []string{"ladleheat", "ladleheat", "pour", "ladle"}, js[[]string](tab, `[...document.querySelectorAll("[data-wanted]")].map((a) => a.dataset.wanted)`))
	tab.press("[data-wanted=ladle]")
	tab.until(`document.querySelector("[data-sheet=ladle]")`)
}

// A record with an entry that cannot be used says so; the pour goes on by its
// times, and can be stopped.
func TestFaultyRecordStopsNothing(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	plan := answered(t, examples(t)[bracket])
	clock := time.Now().UTC().Format(time.RFC3339)
	plan["record"] = map[string]any{"events": []any{
		map[string]any{"what": "tapped", "at": "0 s", "clock": clock},
		map[string]any{"what": "reading", "at": "soon", "temperature": "740 °C"},
		map[string]any{"what": "start", "at": "5 s", "mould": "1", "name": "Bracket", "clock": clock},
	}}
	tab.atFurnace(plan)
	tab.stage("pour")
	require.Contains(t, tab.texts("[data-warning=fault]")[0], "soon")
	tab.press("[data-action=stop]")
	tab.until(`document.querySelector("[data-action=start], [data-action=close]")`)
	require.Equal(t, "stop Bracket", tab.record()[3])
}

// The whole by keys: from a hold point to the record.
func TestFurnaceByKeyboard(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.atFurnace(answered(t, examples(t)[relief], "crew"))
	do := func(selector string) {
		t.Helper()
		tab.until(`document.querySelector(%s) && !document.querySelector("pw-furnace").hasAttribute("data-settling")`, selector)
		tab.tabTo(selector)
		tab.key(kb.Enter)
	}
	do("[data-action=hold-yes]")
	tab.stage("ready")
	require.True(t, js[bool](tab, `document.activeElement.matches("h1")`), "what comes up takes the focus")
	do("[data-action=tapped]")
	tab.stage("pour")
	do("[data-action=reading]")
	do(`[data-step="-1"]`)
	do("[data-action=write-reading]")
	do("[data-action=start]")
	tab.until(`document.querySelector("[data-action=stop]")`)
	require.True(t, js[bool](tab, `document.activeElement.matches("[data-action=stop]")`), "Stop lies where Start was")
	do("[data-action=trouble]")
	do("[data-card-way=slag]")
	do("[data-action=back]")
	do("[data-action=stop]")
	do("[data-action=remark]")
	do("[data-remark]")
	do("[data-action=close]")
	do("[data-action=close-yes]")
	tab.stage("closed")
	require.Len(t, tab.record(), 6)
}

// wide is a projector or a shop's television.
var wide = screen{"wide", 1920, 1080}

// faint lists the texts of the furnace side that stand out from what is behind
// them by less than 7 to 1.
const faint = `(() => {
	const rgb = (text) => text.match(/[\d.]+/g).map(Number);
	const bright = (c) => c.slice(0, 3).map((v) => (v /= 255) <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4).reduce((n, v, i) => n + v * [0.2126, 0.7152, 0.0722][i], 0);
	const behind = (e) => { for (; e; e = e.parentElement) { const c = rgb(getComputedStyle(e).backgroundColor); if ((c[3] ?? 1) === 1) return c; } return [255, 255, 255]; };
	const odd = [];
	let texts = 0;
	const walk = document.createTreeWalker(document.querySelector("pw-furnace"), NodeFilter.SHOW_TEXT);
	for (let n = walk.nextNode(); n; n = walk.nextNode()) {
		const e = n.parentElement;
		if (!n.data.trim() || !e.checkVisibility() || e.closest(".out-of-sight")) continue;
		texts++;
		if (getComputedStyle(e).opacity !== "1") odd.push("see-through: " + n.data);
		const [a, b] = [bright(rgb(getComputedStyle(e).color)), bright(behind(e))].sort((x, y) => y - x);
		const ratio = (a + 0.05) / (b + 0.05);
		if (ratio < 7) odd.push(ratio.toFixed(2) + ": " + n.data);
	}
	if (texts < 3) odd.push("only " + texts + " texts were looked at");
	return odd;
})()`

// crowded lists targets of the furnace side that lie nearer than so many px.
const crowded = `((least) => {
	const boxes = [...document.querySelectorAll("pw-furnace :is(a, button)")].filter((e) => e.checkVisibility()).map((e) => [e, e.getBoundingClientRect()]);
	const odd = [];
	boxes.forEach(([e, a], i) => boxes.slice(i + 1).forEach(([f, b]) => {
		const wide = Math.max(a.left, b.left) - Math.min(a.right, b.right);
		const high = Math.max(a.top, b.top) - Math.min(a.bottom, b.bottom);
		if (Math.max(wide, high) < least - 0.01) odd.push(Math.max(wide, high).toFixed(1) + ": " + e.textContent + " / " + f.textContent);
	}));
	return odd;
})`

// walkFurnace shows every page of the furnace side, one after the other.
func (tab *browserTab) walkFurnace(look func(name string)) {
	tab.t.Helper()
	tab.atFurnace(answered(tab.t, examples(tab.t)[bracket], "crew", "dry-tools"))
	tab.stage("hold")
	look("hold")
	tab.press("[data-action=hold-yes]")
	tab.until(`document.querySelector("[data-hold-point=dry-tools]")`)
	tab.press("[data-action=hold-aside]")
	look("aside")
	tab.press("[data-reason]")
	tab.stage("ready")
	look("ready")
	tab.press("[data-action=tapped]")
	tab.stage("pour")
	look("metal")
	tab.press("[data-action=reading]")
	look("reading")
	tab.press("[data-action=write-reading]")
	tab.stage("pour")
	tab.press("[data-action=start]")
	tab.until(`document.querySelector("[data-figure=tilt]")`)
	look("pouring")
	tab.press("[data-action=trouble]")
	look("trouble")
	tab.press("[data-card-way=run-out]")
	look("card")
	tab.press("[data-action=back]")
	tab.press("[data-action=stop]")
	tab.press("[data-action=remark]")
	look("remark")
	tab.press("[data-action=back]")
	tab.press("[data-action=more]")
	look("more")
	tab.press("[data-action=close]")
	look("close")
	tab.press("[data-action=close-yes]")
	tab.stage("closed")
	look("closed")
}

// Every page of the furnace side in every size: texts stand out by 7 to 1 in
// each theme; what can be touched is 64 px or more and 8 px or more apart; the
// ruling figures are 96 px high or more on a tablet; Start and Stop lie within
// the window; nothing is typed; large letters are not cut; axe-core finds
// nothing.
func TestFurnaceIsReadFromAfar(t *testing.T) {
	t.Parallel()
	source := axe(t)
	h := open(t)
	for _, s := range append(slices.Clone(screens), wide) {
		t.Run(s.name, func(t *testing.T) {
			t.Parallel()
			tab := h.tab(t)
			tab.size(s)
			tab.still()
			var odd []string
			note := func(what string, found []string) {
				for _, f := range found {
					odd = append(odd, what+": "+f)
				}
			}
			tab.walkFurnace(func(name string) {
				tab.quiet()
				note(name+", small", js[[]string](tab, smallTargets+`(64)`))
				note(name+", crowded", js[[]string](tab, crowded+`(8)`))
				note(name+", over each other", js[[]string](tab, crossedTargets))
				note(name+", typed", js[[]string](tab, `[...document.querySelectorAll("pw-furnace :is(input, textarea, select, [contenteditable])")].map((e) => e.outerHTML)`))
				if name == "metal" || name == "pouring" {
					if s != phone {
						require.GreaterOrEqual(t, js[float64](tab, `parseFloat(getComputedStyle(document.querySelector("[data-figure]")).fontSize)`), 96.0, name)
					}
					require.True(t, js[bool](tab, `(() => { const box = document.querySelector(".far-main").getBoundingClientRect(); return box.top >= 0 && box.bottom <= innerHeight; })()`), "%s: the big button is out of sight", name)
				}
				note(name, js[[]string](tab, cutTexts))
				js[chromedp.Void](tab, `document.documentElement.style.setProperty("font-size", "200%%")`)
				tab.quiet()
				note(name+", large letters", js[[]string](tab, cutTexts))
				js[chromedp.Void](tab, `document.documentElement.style.removeProperty("font-size")`)
				for i, theme := range themes {
					tab.wear(theme)
					note(name+", faint, "+theme, js[[]string](tab, faint))
					of := colourRules
					if i == 0 {
						of = everyRule
					}
					for _, v := range tab.violations(source, of) {
						note(name+", "+theme, []string{v.String()})
					}
				}
			})
			require.Empty(t, lines(odd))
		})
	}
}
