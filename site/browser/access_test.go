package browser

import (
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

var themes = []string{"paper", "furnace", "contrast"}

// wear puts a theme on, as the settings do.
func (tab *browserTab) wear(theme string) {
	tab.t.Helper()
	js[chromedp.Void](tab, `document.documentElement.dataset.theme = %s`, theme)
}

// still is a style that takes away all movement, so that colours are the final
// ones when they are measured.
func (tab *browserTab) still() {
	tab.t.Helper()
	command(tab, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Features: []*emulation.MediaFeature{{Name: "prefers-reduced-motion", Value: "reduce"}}})
}

// violation is what axe-core finds.
type violation struct {
	ID, Help string
	Nodes    []struct {
		HTML           string
		FailureSummary string
	}
}

func (v violation) String() string {
	lines := []string{v.ID + ": " + v.Help}
	for i, n := range v.Nodes {
		if i == 3 {
			lines = append(lines, "  and others")
			break
		}
		lines = append(lines, "  "+n.HTML, "  "+n.FailureSummary)
	}
	return strings.Join(lines, "\n")
}

// everyRule is WCAG 2.0, 2.1 and 2.2 at levels A and AA, and axe-core's best
// practices; colourRules are those of them that look at colours, which is all
// that a change of theme can upset.
var (
	everyRule   = rules{"tag", []string{"wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"}}
	colourRules = rules{"rule", []string{"color-contrast", "link-in-text-block"}}
)

type rules struct {
	Type   string   `json:"type"`
	Values []string `json:"values"`
}

// violations has axe-core look at the page as it is.
func (tab *browserTab) violations(source string, of rules) []violation {
	tab.t.Helper()
	if !js[bool](tab, `"axe" in window`) {
		run(tab, chromedp.Evaluate[chromedp.Void](source))
	}
	return js[[]violation](tab, `axe.run(document, {
		runOnly: %s,
		resultTypes: ["violations"],
		preload: false,
		iframes: false,
	}).then(({ violations }) => violations.map(({ id, help, nodes }) => ({ id, help, nodes: nodes.map(({ html, failureSummary }) => ({ html, failureSummary })) })))`, of)
}

// Every view in every size, touch on, and the same with an entry gone wrong, a
// working open, the menu open, a question asked: axe-core finds nothing in any
// theme; everything that can be touched is large enough for a finger and apart
// from its neighbours; and with letters at twice their size nothing is cut off
// or covered, and the page need not be pushed sideways.
func TestEveryViewInEverySize(t *testing.T) {
	t.Parallel()
	source := axe(t)
	h := open(t)
	for _, s := range screens {
		t.Run(s.name, func(t *testing.T) {
			t.Parallel()
			tab := h.tab(t)
			tab.size(s)
			tab.still()
			tab.hosted()
			tab.example(relief)
			require.Empty(t, tab.violations(source, everyRule))
			js[chromedp.Void](tab, `document.body.append(Object.assign(new Image(), { src: "data:," }))`)
			require.NotEmpty(t, tab.violations(source, everyRule), "axe-core does not see a picture without a text")
			tab.reload()

			var unfit, small, cut []string
			for _, v := range append(tab.views(), tab.states()...) {
				v.show(tab)
				note := func(list *[]string, what string, found []string) {
					for _, f := range found {
						*list = append(*list, v.name+", "+what+": "+f)
					}
				}
				for _, size := range []string{"200%", "100%"} {
					js[chromedp.Void](tab, `document.documentElement.style.setProperty("font-size", %s)`, size)
					tab.quiet()
					note(&cut, "letters at "+size, js[[]string](tab, cutTexts))
				}
				note(&small, "side by side", js[[]string](tab, crossedTargets))
				if s != phone && js[bool](tab, `Boolean(document.querySelector("pw-plan")) && document.documentElement.scrollHeight > innerHeight`) {
					note(&cut, "at 100%", []string{"the page scrolls behind the bar"})
				}
				if v.name == "sources" && s != tablet {
					// Hundreds of rows of one kind take axe-core long: once is enough.
					js[chromedp.Void](tab, `document.querySelectorAll("tr:nth-child(n + 3)").forEach((row) => row.remove())`)
				}
				for i, theme := range themes {
					tab.wear(theme)
					of := everyRule
					if i > 0 {
						of = colourRules
					}
					note(&small, theme, js[[]string](tab, smallTargets+`(%v)`, least)) // hairlines differ
					for _, wrong := range tab.violations(source, of) {
						note(&unfit, theme, []string{wrong.String()})
					}
				}
				if v.name == "sources" {
					tab.reload()
				}
			}
			t.Run("axe-core finds nothing", func(t *testing.T) { require.Empty(t, lines(unfit)) })
			t.Run("touch targets are large enough", func(t *testing.T) { require.Empty(t, lines(small)) })
			t.Run("large text is not cut", func(t *testing.T) { require.Empty(t, lines(cut)) })
		})
	}
}

// lines writes findings for a failed test, each once.
func lines(found []string) string {
	slices.Sort(found)
	return strings.Join(slices.Compact(found), "\n")
}

// What is printed has the same rules where they apply to paper: names and
// structure, and black enough on white, whatever theme is worn.
func TestPrintedPageIsBlackOnWhite(t *testing.T) {
	t.Parallel()
	source := axe(t)
	tab := open(t).tab(t)
	tab.hosted()
	tab.example(relief)
	tab.view(tab.planAddress() + "/print")
	command(tab, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Media: "print"})
	for _, theme := range themes {
		tab.wear(theme)
		require.Equal(t, "rgb(255, 255, 255)", js[string](tab, `getComputedStyle(document.documentElement).backgroundColor`), theme)
		require.Equal(t, "rgb(0, 0, 0)", js[string](tab, `getComputedStyle(document.querySelector(".paper-page td")).color`), theme)
		for _, wrong := range tab.violations(source, everyRule) {
			t.Errorf("%s: %v", theme, wrong)
		}
	}
}
