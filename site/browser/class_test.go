package browser

import (
	"encoding/json"
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/require"

	"pourwright/calc/catalogue"
)

// lesson opens a lesson by its address and waits until it stands still.
func (tab *browserTab) lesson(address string) {
	tab.t.Helper()
	js[string](tab, `location.hash = %s`, "#/class/"+address)
	tab.until(`document.querySelector("[data-lesson=" + CSS.escape(%s) + "][data-at-rest=true]")`, address)
	tab.quiet()
}

// rests waits for the working after a change.
func (tab *browserTab) rests() {
	tab.t.Helper()
	tab.quiet()
	tab.until(`document.querySelector("[data-lesson][data-at-rest=true]")`)
	tab.quiet()
}

func (tab *browserTab) now() string {
	tab.t.Helper()
	return js[string](tab, `document.querySelector("[data-now]").textContent`)
}

// Every calculator opens in class: a figure, its formula or its method, sliders
// and a curve, each with a name.
func TestEveryCalculatorInClass(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.hosted()
	tab.view("#/class")
	offered := js[[]string](tab, `[...document.querySelectorAll(".class-calculators [data-lesson]")].map((a) => a.dataset.lesson)`)
	var want []string
	for _, c := range catalogue.All() {
		if c.Name != "plan" && c.Name != "spread" && c.Name != "furnace" {
			want = append(want, c.Name)
		}
	}
	require.Equal(t, want, offered)
	for _, name := range offered {
		tab.lesson(name)
		require.NotEqual(t, "no answer here", tab.now(), name)
		require.True(t, js[bool](tab, `document.querySelectorAll(".class-formula math, .class-formula .class-method").length > 0`), name)
		require.True(t, js[bool](tab, `document.querySelectorAll(".class-sliders .class-slider").length > 0`), name)
		require.True(t, js[bool](tab, `document.querySelector("pw-chart .chart-curve").getAttribute("d").length > 30`), name)
		require.Empty(t, js[[]string](tab, `[...document.querySelectorAll("main input, main select, main [role=slider], main [role=img]")].filter((e) => !(e.labels?.length || e.ariaLabel)).map((e) => e.outerHTML)`), name)
	}
}

// A slider is moved by the arrow keys: the figure, the mark on the curve, the
// formula and the words for a screen reader follow; a value can be typed.
func TestSliderByKeyboard(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.hosted()
	tab.lesson("freeze")
	const slider = `document.querySelector("[data-slider=thickness] [type=range]")`
	mark := func() string {
		return js[string](tab, `document.querySelector(".chart-mark .chart-ring").getAttribute("cx")`)
	}
	require.Equal(t, "97.3 s", tab.now())
	require.Equal(t, "20 mm", js[string](tab, slider+`.getAttribute("aria-valuetext")`))
	was := mark()
	js[chromedp.Void](tab, slider+`.focus()`)
	tab.key(strings.Repeat(kb.ArrowRight, 4))
	tab.rests()
	text := js[string](tab, slider+`.getAttribute("aria-valuetext")`)
	require.NotEqual(t, "20 mm", text)
	var reply struct {
		Answers struct{ Time struct{ Text string } }
	}
	require.NoError(t, json.Unmarshal(catalogue.Call("freeze", nil, []byte(`{"shape":"plate","thickness":"`+text+`","alloy":"grey-iron","sand":"green-sand"}`)), &reply))
	require.Equal(t, reply.Answers.Time.Text, tab.now(), "the page shows what the calculator answers")
	require.NotEqual(t, was, mark())
	require.Contains(t, js[string](tab, `document.querySelector(".class-formula").textContent`), "mm")
	require.True(t, js[bool](tab, slider+` === document.activeElement`), "the hand stays on the slider")

	// Typed, in whatever unit; beyond its stretch, which is then laid anew.
	js[chromedp.Void](tab, `{ const typed = document.querySelector("[data-slider=thickness] .class-typed"); typed.focus(); typed.select(); }`)
	tab.write("4 in")
	tab.key("\t")
	tab.rests()
	require.Equal(t, "101.6 mm", js[string](tab, slider+`.getAttribute("aria-valuetext")`))
	require.Greater(t, js[float64](tab, `Number(`+slider+`.max)`), 101.0)
	// Put back, everything is as it was.
	tab.click(`[data-action=put-back]`)
	tab.rests()
	require.Equal(t, "97.3 s", tab.now())
}

// Another answer, and another input to draw it against, are picked by keyboard.
func TestPickingAnswerAndInput(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.hosted()
	tab.lesson("sprue")
	pick := func(what, value string) {
		js[chromedp.Void](tab, `{ const s = document.querySelector("[data-pick=" + %s + "]"); s.value = %s; s.dispatchEvent(new Event("change", { bubbles: true })); }`, what, value)
		tab.rests()
	}
	pick("answer", "time")
	require.Equal(t, "time", js[string](tab, `document.querySelector("[data-now]").dataset.now`))
	pick("vary", "volume")
	require.Contains(t, js[string](tab, `document.querySelector("pw-chart [role=img]").ariaLabel`), "against volume of the mould")
	tab.click(`[data-figure=flow] button`)
	tab.rests()
	require.Equal(t, "flow", js[string](tab, `document.querySelector("[data-pick=answer]").value`))
	require.True(t, js[bool](tab, `document.querySelector(".class-working, .class-fold-working") !== null`))
	tab.click(`.class-fold-working summary`)
	tab.until(`document.querySelector("pw-working [data-step]")`)
}

// Where the calculator refuses, or says stop or mind, the curve is shaded and
// the stretch is spelled out.
func TestRefusedStretchesAreShaded(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.hosted()
	tab.lesson("pour")
	require.True(t, js[bool](tab, `document.querySelector("[data-span=refused] .chart-hatch") !== null && document.querySelector("[data-span=stop]") !== null`))
	require.Contains(t, strings.Join(tab.texts(".class-span-line[data-state=refused]"), " "), "Above 10 mm")
	require.Contains(t, js[string](tab, `document.querySelector("pw-chart [role=img]").ariaLabel`), "Refused 10 to 20 mm")
	// Moved into the stretch, the page says what is wrong and keeps the sliders.
	js[chromedp.Void](tab, `{ const r = document.querySelector("[data-slider=thin_wall] [type=range]"); r.value = 15; r.dispatchEvent(new Event("input", { bubbles: true })); r.dispatchEvent(new Event("change", { bubbles: true })); }`)
	tab.rests()
	require.Equal(t, "no answer here", tab.now())
	require.Contains(t, strings.Join(tab.texts("main .field-fault"), " "), "mean wall")
	require.True(t, js[bool](tab, `document.querySelectorAll(".class-slider").length > 1`))
}

// A case is held beside the live one: two marks, two columns, the difference.
func TestTwoCasesSideBySide(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.hosted()
	tab.lesson("freeze")
	tab.click(`[data-action=hold]`)
	tab.rests()
	js[chromedp.Void](tab, `{ const typed = document.querySelector("[data-slider=thickness] .class-typed"); typed.focus(); typed.select(); }`)
	tab.write("40")
	tab.key("\t")
	tab.rests()
	require.Equal(t, []string{"Freezing time", "97.3 s", "6 min 29 s", "+4 min 52 s", "× 4"}, tab.texts(`[data-figure=time] th, [data-figure=time] td`))
	require.Equal(t, []string{"A", "B"}, slices.Sorted(slices.Values(tab.texts(`.chart-letter`))))
	require.Contains(t, strings.Join(tab.texts(`.class-moved`), "|"), "Thickness 20 mm|Thickness 40 mm")
	tab.click(`[data-action=let-go]`)
	tab.rests()
	require.Empty(t, tab.texts(`.chart-letter`))
}

// Every demonstration asks, and answers when it is asked to: the case before is
// held, the other stands beside it.
func TestEveryDemonstration(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.hosted()
	tab.view("#/class")
	shows := js[[]string](tab, `[...document.querySelectorAll("[data-lesson]")].map((a) => a.dataset.lesson).filter((l) => /^\d/.test(l))`)
	require.GreaterOrEqual(t, len(shows), 5)
	for _, show := range shows {
		tab.lesson("show/" + show)
		require.True(t, js[bool](tab, `document.querySelector(".class-ask").textContent.endsWith("?")`), show)
		require.False(t, js[bool](tab, `document.querySelector(".class-told") !== null`), "%s: the answer waits to be asked for", show)
		before := tab.now()
		tab.click(`[data-action=tell]`)
		tab.rests()
		require.Contains(t, tab.texts(".class-told")[0], "Source: ", show)
		require.NotEqual(t, before, tab.now(), show)
		require.Equal(t, before, tab.texts(".class-watched td")[0], "%s: the case before is held", show)
		tab.click(`[data-action=tell]`)
		tab.rests()
		require.Equal(t, before, tab.now(), show)
	}
}

// A sheet is shown in class with the plan's own values; what is moved there
// stays there until it is taken into the plan, where it can be taken back.
func TestSheetInClass(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.hosted()
	tab.example(relief)
	plan := tab.planAddress()
	tab.view(plan + "/sheet/pour")
	longest := tab.texts(`[data-answer=longest] .answer-text`)[0]
	tab.click(`[data-action=show-in-class]`)
	tab.until(`document.querySelector("[data-lesson][data-at-rest=true]")`)
	tab.quiet()
	require.Equal(t, longest, tab.now())
	move := func(to string) {
		js[chromedp.Void](tab, `{ const t = document.querySelector("[data-slider=thin_wall] .class-typed"); t.focus(); t.select(); }`)
		tab.write(to)
		tab.key("\t")
		tab.rests()
	}
	move("7 mm")
	moved := tab.now()
	require.NotEqual(t, longest, moved)
	tab.click(`[data-action=back-to-sheet]`)
	tab.until(`document.querySelector("[data-answer=longest] .answer-text")?.textContent === %s`, longest)
	tab.quiet()
	tab.click(`[data-action=show-in-class]`)
	tab.until(`document.querySelector("[data-lesson][data-at-rest=true]")`)
	tab.quiet()
	move("7 mm")
	tab.click(`[data-action=take]`)
	tab.until(`document.querySelector("[data-answer=longest] .answer-text")?.textContent === %s`, moved)
	tab.quiet()
	require.Equal(t, "7 mm", tab.value("pour.thin_wall"))
	tab.click(`[data-action=undo]`)
	tab.quiet()
	require.Equal(t, "8 mm ± 1 mm", tab.value("pour.thin_wall"))
}

// A chart is read by the arrow keys and by a finger: the cursor snaps to the
// points, the words say what stands there.
func TestChartIsRead(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.hosted()
	tab.example(relief)
	tab.view(tab.planAddress() + "/sheet/ladleheat")
	const cursor = `document.querySelector("pw-sheet pw-chart [role=slider]")`
	require.GreaterOrEqual(t, js[float64](tab, cursor+`.getBoundingClientRect().height`), float64(least))
	label := js[string](tab, `document.querySelector("pw-sheet pw-chart [role=img]").ariaLabel`)
	for _, word := range []string{"Temperature of the metal", "Most likely from", "°C at", "Fit to pour", "Pouring"} {
		require.Contains(t, label, word)
	}
	js[chromedp.Void](tab, cursor+`.focus()`)
	first := js[string](tab, cursor+`.getAttribute("aria-valuetext")`)
	tab.key(kb.ArrowRight)
	second := js[string](tab, cursor+`.getAttribute("aria-valuetext")`)
	require.NotEqual(t, first, second)
	require.Regexp(t, `^Time from the ladle filled [\d.]+ s: Most likely \d+ °C; Losing most \d+ °C; Losing least \d+ °C$`, second)
	require.Equal(t, second, js[string](tab, `document.querySelector("pw-sheet pw-chart .chart-read").textContent`))
	tab.key(kb.End)
	require.Equal(t, js[string](tab, cursor+`.getAttribute("aria-valuemax")`), js[string](tab, cursor+`.getAttribute("aria-valuenow")`))
	tab.tap(`pw-sheet pw-chart [role=slider]`)
	middle := js[float64](tab, `Number(`+cursor+`.getAttribute("aria-valuenow")) / Number(`+cursor+`.getAttribute("aria-valuemax"))`)
	require.InDelta(t, 0.5, middle, 0.2)
	tab.click(`pw-sheet pw-chart .chart-foot summary`)
	tab.until(`document.querySelectorAll("pw-sheet pw-chart table").length === 3`)
}

// The pictures: the window of temperature and the time of pouring shaded, tilt
// and flow, level and lift, what freezes when, the rules' times over the window.
func TestPictures(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.hosted()
	tab.example(relief)
	plan := tab.planAddress()
	for station, words := range map[string][]string{
		"ladleheat": {"Temperature of the metal"}, "ladle": {"Tilt", "Flow"}, "filling": {"Level in the cavity", "Lift on the cope", "Temperature"},
		"feeding": {"Order of freezing"}, "pour": {"Pouring time and its window"},
	} {
		tab.view(plan + "/sheet/" + station)
		captions := tab.texts("pw-sheet figcaption")
		for _, w := range words {
			require.Contains(t, captions, w, station)
		}
		require.Empty(t, js[[]string](tab, `[...document.querySelectorAll("pw-sheet figure svg")].filter((s) => s.getAttribute("role") !== "img" || s.ariaLabel.length < 30).map((s) => s.outerHTML)`), station)
	}
	// The order of freezing has a bar for each section, and the riser's is the last.
	tab.view(plan + "/sheet/feeding")
	require.Equal(t, 4, js[int](tab, `document.querySelectorAll("pw-bars .bars-row").length`))
	require.Contains(t, tab.texts("pw-bars .bars-row:last-of-type")[0], "riser")
	// On paper the lines keep their strokes and the window its edge.
	tab.view(plan + "/sheet/ladleheat")
	require.Equal(t, 3, js[int](tab, `new Set([...document.querySelectorAll("pw-chart .chart-curve")].map((c) => getComputedStyle(c).strokeDasharray)).size`), "no two lines are drawn alike")
	require.True(t, js[bool](tab, `document.querySelectorAll("pw-chart .chart-edge").length >= 2`))
}
