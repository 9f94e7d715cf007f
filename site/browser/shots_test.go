//go:build shots

package browser

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

// Pictures of every view and state of every example's plan, in every theme and
// size, and the printed sheets, go to the folder that SHOTS names, for people
// to look at. It proves nothing by itself, so it is built only when asked for:
// SHOTS=dir go test -tags shots -run Shots ./site/browser
func TestShots(t *testing.T) {
	dir := os.Getenv("SHOTS")
	require.NotEmpty(t, dir, "SHOTS names no folder")
	require.NoError(t, os.MkdirAll(dir, 0o755))
	h := open(t)
	keep := func(content []byte, names ...string) {
		name := strings.ReplaceAll(strings.Join(names, "-"), " ", "-")
		require.NoError(t, os.WriteFile(filepath.Join(dir, name), content, 0o644))
	}
	for name := range examples(t) {
		plan := strings.TrimSuffix(name, ".pour.json")
		tab := h.tab(t)
		tab.still()
		tab.hosted()
		tab.example(name)
		tab.view(tab.planAddress() + "/print")
		for size, paper := range papers {
			tab.paper(size)
			keep(tab.pdf(paper), plan, size+".pdf")
		}
		for _, v := range append(tab.views(), tab.states()...) {
			v.show(tab)
			for _, s := range append(slices.Clone(screens), wide) {
				tab.size(s)
				tab.quiet()
				if strings.HasPrefix(v.name, "sheet ") { // where a narrow screen stands once a sheet is opened
					js[chromedp.Void](tab, `document.querySelector("[data-sheet]").scrollIntoView()`)
				}
				for _, theme := range themes {
					tab.wear(theme)
					keep(run(tab, chromedp.CaptureScreenshot()), plan, v.name, theme, s.name+".png")
				}
			}
			tab.size(tablet)
		}
	}
}
