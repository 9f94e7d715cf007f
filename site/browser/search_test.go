package browser

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// The list shows what each plan pours and how much, last changed first, and is
// searched by title, metal and note.
func TestPlanList(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.hosted()
	tab.quiet()
	require.Len(t, tab.texts(".how li"), 3, "the first visit explains itself")
	for name := range examples(t) {
		tab.view("#/")
		tab.example(name)
	}
	tab.view("#/")
	require.Empty(t, tab.texts(".how li"))
	require.Empty(t, tab.texts("[data-action=search]"), "three plans are found without a search")
	tab.click(`[data-plan] [data-action=copy-plan]`)
	tab.until(`document.querySelector("[data-action=search]")`)
	titles := func() []string { t.Helper(); return tab.texts("[data-plan] .plan-name") }
	all := titles()
	require.Len(t, all, 4)
	require.Equal(t, all[1]+", copy", all[0], "the last changed is not first")
	tab.until(`[...document.querySelectorAll("[data-plan] .plan-note")].every((e) => e.textContent.includes(" to pour"))`)
	facts := tab.texts("[data-plan] .plan-note")
	require.Regexp(t, `^\S.* · [\d.]+ k?g to pour · changed \d+ \w+ \d{4}, \d\d:\d\d$`, facts[0])

	look := func(words string) []string {
		t.Helper()
		js[string](tab, `(() => { const input = document.querySelector("[data-action=search]"); input.value = %s; input.dispatchEvent(new Event("input")); return ""; })()`, words)
		tab.quiet()
		return titles()
	}
	require.Len(t, look("BRONZE silicon"), count(all, "Heron panel, silicon bronze relief"))
	require.Equal(t, look("garden wall"), look("héron"))
	require.Len(t, look("grey iron"), count(all, "Bench end, grey iron"))
	require.Len(t, look("a356"), count(all, "Lamp bracket, aluminium"))
	require.Empty(t, look("no such words"))
	require.Contains(t, tab.texts("pw-plan-list")[0], "No plan has these words")
	require.Equal(t, all, look(" "))

	// The words stay while the units change, and so does what is found.
	look("grey")
	tab.click("[data-units=us]")
	tab.until(`document.querySelector("[data-plan] .plan-note").textContent.includes(" lb to pour")`)
	require.Equal(t, titles(), look("grey"))
}

// count is how many titles are a title or its copy.
func count(titles []string, title string) (n int) {
	for _, t := range titles {
		if t == title || t == title+", copy" {
			n++
		}
	}
	return n
}
