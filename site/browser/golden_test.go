package browser

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// raw is what a program's own values look like when they slip into a text.
const raw = `\b(NaN|Infinity|undefined|null)\b|^(true|false)$|\[object|\[\{|\{\{|%!`

// oddTexts lists the texts that are a program's own values: on the page, in its
// entries, and in what is said to a screen reader.
const oddTexts = `((raw) => {
	const texts = document.body.innerText.split("\n");
	for (const e of document.querySelectorAll("*")) {
		for (const name of ["placeholder", "aria-label", "title", "alt", "value"]) texts.push(e.getAttribute(name) ?? "");
		if (typeof e.value === "string") texts.push(e.value);
	}
	return texts.filter((text) => new RegExp(raw).test(text.trim()));
})`

// shownFigures are the answers of the open sheet by path, and all its text.
const shownFigures = `({
	figures: Object.fromEntries([...document.querySelectorAll("[data-sheet] [data-answer]")].map((e) => [e.dataset.answer, e.querySelector(".answer-text").textContent])),
	text: document.querySelector("[data-sheet]").textContent.replace(/\s+/g, " "),
})`

// What the page shows is what the same calculators answer natively, letter for
// letter: every figure of the pour card and of every sheet, for each example in
// both systems of units. No text of any view is a program's own value, with an
// answer's working open in each sheet; and no view, of the hosted page or of the
// one file, does what the security policy refuses.
func TestPageAgreesWithTheSameCodeOutside(t *testing.T) {
	t.Parallel()
	h := open(t)
	for name, plan := range examples(t) {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			tab := h.tab(t)
			if name == bracket {
				tab.carried()
			} else {
				tab.hosted()
			}
			tab.example(name)
			address := tab.planAddress()
			var differing, missing, odd, refused []string
			look := func(view string) {
				for _, text := range js[[]string](tab, oddTexts+`(%s)`, raw) {
					odd = append(odd, view+": "+text)
				}
				for _, what := range js[[]string](tab, `watched.refused.splice(0)`) {
					refused = append(refused, view+": "+what)
				}
			}
			for _, units := range []string{"metric", "us"} {
				tab.view(address)
				tab.click(`.bar [data-units="` + units + `"]`)
				tab.comes(units, plan)
				answer := natively(t, units, plan)
				for _, v := range tab.views() {
					if strings.HasPrefix(v.name, "sheet ") {
						continue
					}
					v.show(tab)
					look(v.name + ", " + units)
				}
				tab.view(address)
				figures := 0
				for _, s := range answer.Stations {
					tab.view(address + "/sheet/" + s.Key)
					look(s.Key + ", " + units)
					require.Equal(t, s.State, tab.state(s.Key), s.Key)
					shown := js[struct {
						Figures map[string]string
						Text    string
					}](tab, shownFigures)
					want := map[string]string{}
					gather(s.Answers, "", want)
					for path, text := range shown.Figures {
						if want[path] != text && text != "not known" {
							differing = append(differing, fmt.Sprintf("%s.%s, %s: %q here, %q there", s.Key, path, units, text, want[path]))
						}
					}
					for path, text := range want {
						if !strings.Contains(shown.Text, strings.Join(strings.Fields(text), " ")) && !(s.Key == "handling" && strings.HasPrefix(path, "items[")) {
							missing = append(missing, fmt.Sprintf("%s.%s, %s: %q", s.Key, path, units, text))
						}
					}
					figures += len(shown.Figures)
					if js[bool](tab, `document.querySelector("[data-sheet] [data-answer] button") !== null`) {
						tab.click("[data-sheet] [data-answer] button")
						tab.until(`document.querySelector("pw-working [data-step]")`)
						tab.quiet()
						look("working of " + s.Key + ", " + units)
					}
				}
				require.Greater(t, figures, 100)
			}
			t.Run("figures agree", func(t *testing.T) {
				require.Empty(t, lines(differing))
				require.Empty(t, lines(missing), "answers that the page does not show")
			})
			t.Run("the security policy holds", func(t *testing.T) { require.Empty(t, lines(refused)) })
			t.Run("texts are for people", func(t *testing.T) { require.Empty(t, lines(odd)) })
		})
	}
}

// gather collects the texts of a tree of answers that are known, by path.
func gather(node any, path string, into map[string]string) {
	switch n := node.(type) {
	case map[string]any:
		if text, ok := n["text"].(string); ok {
			// A row of a list leaves out what is not known of it.
			if n["unknown"] != true || !strings.Contains(path, "[") {
				into[path] = text
			}
			return
		}
		for key, value := range n {
			gather(value, strings.TrimPrefix(path+"."+key, "."), into)
		}
	case []any:
		for i, value := range n {
			gather(value, fmt.Sprintf("%s[%d]", path, i), into)
		}
	}
}
