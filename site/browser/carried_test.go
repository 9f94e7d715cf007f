package browser

import (
	"os"
	"path/filepath"
	"slices"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"

	"pourwright/site"
)

// The one file, opened from a folder: an example opens, a changed entry changes
// the answers, and a reload brings both back.
func TestCarriedFileKeepsWhatIsEntered(t *testing.T) {
	t.Parallel()
	plan := examples(t)[bracket]
	tab := open(t).tab(t)
	tab.carried()
	tab.example(bracket)
	tab.comes("metric", plan)

	before := tab.card()
	tab.sheet("weight")
	tab.fill("weight.solids[0].length", "190")
	changed := with(t, plan, "weight.solids[0].length", "190 mm")
	tab.comes("metric", changed)
	require.NotEqual(t, before["charge"], tab.card()["charge"], "10 mm more base must take more metal")
	require.Equal(t, "190 mm", tab.value("weight.solids[0].length"), "a bare number keeps the unit it was typed in")
	tab.sheet("metal")
	tab.fill("metal.pour_temperature", "735 C")
	changed = with(t, changed, "metal.pour_temperature", "735 C")
	tab.comes("metric", changed)
	require.Equal(t, "735 °C", tab.card()["temperature"])

	tab.until(`document.querySelector("[data-saved=saved]")`)
	tab.reload()
	tab.comes("metric", changed)
	require.Equal(t, "735 C", tab.value("metal.pour_temperature"))
	tab.view("#/")
	require.Len(t, tab.texts("[data-plan]"), 1)
	require.Contains(t, tab.texts("[data-plan]")[0], plan["title"])
	tab.click("[data-plan] a")
	tab.comes("metric", changed)
	tab.sheet("weight")
	require.Equal(t, "190 mm", tab.value("weight.solids[0].length"))
}

// The same after the whole browser was closed and started again.
func TestCarriedFileOutlastsTheBrowser(t *testing.T) {
	t.Parallel()
	plan := examples(t)[bracket]
	h := open(t)
	profile := filepath.Join(t.TempDir(), "profile")
	browser, stop, err := startBrowser(profile)
	require.NoError(t, err)
	t.Cleanup(func() { stop() })
	tab := h.open(t, browser)
	tab.carried()
	tab.example(bracket)
	tab.sheet("weight")
	tab.fill("weight.solids[0].length", "7 1/2 in")
	changed := with(t, plan, "weight.solids[0].length", "7 1/2 in")
	tab.comes("metric", changed)
	tab.until(`document.querySelector("[data-saved=saved]")`)
	address := js[string](tab, `location.href`)
	require.NoError(t, chromedp.Cancel(tab))
	stop()

	browser, stop, err = startBrowser(profile)
	require.NoError(t, err)
	tab = h.open(t, browser)
	tab.visit(address)
	tab.comes("metric", changed)
	require.Equal(t, "7 1/2 in", tab.value("weight.solids[0].length"))
}

// A browser that cannot unpack the file is told so, and a file whose engine was
// damaged on its way still opens, and says that there is no engine.
func TestCarriedFileSaysWhyItCannotStart(t *testing.T) {
	t.Parallel()
	h := open(t)
	tab := h.tab(t)
	tab.before(`delete globalThis.DecompressionStream;`)
	run(tab, chromedp.Navigate(fileURL(h.file())))
	tab.until(`document.body?.textContent.includes("Pourwright cannot start here")`)

	damaged := slices.Clone(h.files[site.Carried])
	for at := len(damaged) * 3 / 4; at < len(damaged)*3/4+1000; at += 2 {
		damaged[at] ^= 0x10 // which leaves no letter a surrogate that was none
	}
	file := filepath.Join(t.TempDir(), "damaged.html")
	require.NoError(t, os.WriteFile(file, damaged, 0o644))
	tab = h.tab(t)
	tab.forgive("WebAssembly", "the engine")
	tab.visit(fileURL(file))
	tab.until(`document.querySelector("[data-notice=engine]")`)
}
