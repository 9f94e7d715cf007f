package browser

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// What the page shows is what the same calculators answer natively, letter for
// letter: every figure of the pour card and of every sheet, for each example in
// both systems of units, hosted and carried.
func TestPageAgreesWithTheSameCodeOutside(t *testing.T) {
	t.Parallel()
	h := open(t)
	for name, plan := range examples(t) {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			tab := h.tab(t)
			if name == relief {
				tab.carried()
			} else {
				tab.hosted()
			}
			tab.example(name)
			address := tab.planAddress()
			for _, units := range []string{"metric", "us"} {
				tab.view(address)
				tab.click(`.bar [data-units="` + units + `"]`)
				tab.quiet()
				tab.comes(units, plan)
				answer := natively(t, units, plan)
				seen, missing := 0, []string(nil)
				for _, s := range answer.Stations {
					tab.view(address + "/sheet/" + s.Key)
					require.Equal(t, s.State, tab.state(s.Key), s.Key)
					shown := js[map[string]string](tab, `Object.fromEntries([...document.querySelectorAll("[data-sheet] [data-answer]")].map((e) => [e.dataset.answer, e.querySelector(".answer-text").textContent]))`)
					want := map[string]string{}
					figures(s.Answers, "", want)
					for path, text := range shown {
						require.Equal(t, want[path], text, "%s: %s", s.Key, path)
					}
					for path, text := range want {
						if _, ok := shown[path]; !ok && text != "" && !strings.HasPrefix(s.Key+"."+path, "handling.items[") {
							missing = append(missing, s.Key+"."+path)
						}
					}
					seen += len(shown)
				}
				require.Empty(t, missing, "answers that the page does not show")
				require.Greater(t, seen, 100)
			}
		})
	}
}

// figures gathers the texts of a tree of answers by path.
func figures(node any, path string, into map[string]string) {
	switch n := node.(type) {
	case map[string]any:
		if text, ok := n["text"].(string); ok {
			into[path] = text
			return
		}
		for key, value := range n {
			figures(value, strings.TrimPrefix(path+"."+key, "."), into)
		}
	case []any:
		for i, value := range n {
			figures(value, fmt.Sprintf("%s[%d]", path, i), into)
		}
	}
}
