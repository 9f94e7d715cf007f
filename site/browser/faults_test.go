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
	plan := examples(t)[bracket]
	tab := open(t).tab(t)
	tab.hosted()
	tab.example(bracket)
	tab.sheet("mould")
	const path = "mould.cope_height"
	entered := func() map[string]string {
		return js[map[string]string](tab, `Object.fromEntries([...document.querySelectorAll("[data-sheet] input:not([type=radio]), [data-sheet] select")].map((i) => [i.dataset.field, i.type === "checkbox" ? String(i.checked) : i.value]))`)
	}
	others := entered()
	require.Equal(t, "90 mm", others[path])
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

	tab.fill(path, "9 cm")
	tab.until(`!document.querySelector("[aria-invalid]")`)
	tab.comes("metric", with(t, plan, path, "9 cm"))
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
