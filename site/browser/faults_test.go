package browser

import (
	"regexp"
	"testing"

	"github.com/stretchr/testify/require"
)

// A value that cannot be used says so at its field, with the field, the value
// and what is allowed; everything else stays as it was entered, through a
// reload too; put right, the answers come back.
func TestBadValueSaysSoAndKeepsTheRest(t *testing.T) {
	t.Parallel()
	plan := examples(t)[relief]
	tab := open(t).tab(t)
	tab.hosted()
	tab.example(relief)
	tab.sheet("mould")
	const path = "mould.cope_height"
	entered := func() map[string]string {
		return js[map[string]string](tab, `Object.fromEntries([...document.querySelectorAll("[data-sheet] input:not([type=radio]), [data-sheet] select")].map((i) => [i.dataset.field, i.type === "checkbox" ? String(i.checked) : i.value]))`)
	}
	others := entered()
	require.Equal(t, "150 mm", others[path])
	delete(others, path)
	require.Greater(t, len(others), 8)

	for _, c := range []struct{ text, allowed string }{
		{"12 blah", `blah.*(mm|length)`},
		{"9 km", `km.*mm, cm, m, in or ft`},
		{"90 m", `\d+ (mm|m) (to|and) \d+(\.\d+)? m`},
		{"1,200", `1200|1\.200|1\.2`},
	} {
		tab.fill(path, c.text)
		check := func() {
			t.Helper()
			tab.until(`document.querySelector(%s)?.ariaInvalid === "true"`, field(path))
			require.Equal(t, c.text, tab.value(path), "what was typed is gone")
			told := tab.told(path)
			require.Contains(t, told, "Cope height", "the field is not named")
			require.Contains(t, told, c.text, "the value is not named")
			require.Regexp(t, regexp.MustCompile(c.allowed), told, "what is allowed is not said")
			require.Equal(t, "fault", tab.state("mould"))
			require.Empty(t, tab.texts("[data-sheet] [data-answer]"), "answers stand beside a fault")
			now := entered()
			delete(now, path)
			require.Equal(t, others, now)
		}
		check()
		tab.until(`document.querySelector("[data-saved=saved]")`)
		tab.reload()
		tab.until(`document.querySelector("[data-card]")`)
		tab.quiet()
		check()
	}

	tab.fill(path, "15 cm")
	tab.until(`!document.querySelector("[aria-invalid]")`)
	tab.comes("metric", with(t, plan, path, "15 cm"))
	require.NotEqual(t, "fault", tab.state("mould"))
	require.Empty(t, tab.told(path))
	require.NotEmpty(t, tab.texts("[data-sheet] [data-answer]"))
}

// told is what the field's fault says, from where the field's description
// points to.
func (tab *browserTab) told(path string) string {
	tab.t.Helper()
	return js[string](tab, `(document.querySelector(%s).getAttribute("aria-describedby") ?? "").split(" ").filter((id) => id.endsWith("-fault")).map((id) => document.getElementById(id).textContent).join(" ")`, field(path))
}

// state is how a station stands in the list of parts.
func (tab *browserTab) state(station string) string {
	tab.t.Helper()
	return js[string](tab, `document.querySelector(%s).dataset.state`, `[data-station="`+station+`"]`)
}

// raw is what a program's own values look like when they slip into a text.
const raw = `\b(NaN|Infinity|undefined|null)\b|^(true|false)$|\[object|\[\{|\{\{|%!`

// No text of any view is a program's own value: those of every example in both
// systems of units, on the page and in what is said to a screen reader.
func TestTextsAreForPeople(t *testing.T) {
	t.Parallel()
	h := open(t)
	for name := range examples(t) {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			tab := h.tab(t)
			tab.hosted()
			tab.example(name)
			plan := tab.planAddress()
			for _, units := range []string{"metric", "us"} {
				tab.view(plan)
				tab.click(`.bar [data-units="` + units + `"]`)
				tab.quiet()
				for _, v := range append(tab.views(), tab.workings()...) {
					v.show(tab)
					odd := js[[]string](tab, `(() => {
						const texts = [...document.body.innerText.split("\n")];
						for (const e of document.querySelectorAll("*")) {
							for (const name of ["placeholder", "aria-label", "title", "alt", "value"]) texts.push(e.getAttribute(name) ?? "");
							if ("value" in e && typeof e.value === "string") texts.push(e.value);
						}
						return texts.filter((text) => new RegExp(%s).test(text));
					})()`, raw)
					require.Empty(t, odd, "%s, %s", v.name, units)
				}
			}
		})
	}
}

// workings opens one answer of each station.
func (tab *browserTab) workings() []view {
	tab.t.Helper()
	plan := tab.planAddress()
	var out []view
	for _, station := range tab.stations() {
		out = append(out, view{"working of " + station, func(tab *browserTab) {
			tab.view(plan + "/sheet/" + station)
			if js[bool](tab, `document.querySelector("[data-sheet] .answer-button") !== null`) {
				tab.click("[data-sheet] .answer-button")
				tab.until(`document.querySelector("pw-working [data-step]")`)
				tab.quiet()
			}
		}})
	}
	return out
}
