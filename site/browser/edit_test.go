package browser

import (
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

// Every change can be taken back and made again, one at a time, by button and
// by key.
func TestUndoAndRedo(t *testing.T) {
	t.Parallel()
	plan := examples(t)[bracket]
	tab := open(t).tab(t)
	tab.hosted()
	tab.example(bracket)
	require.True(t, js[bool](tab, `document.querySelector(".bar [data-action=undo]").disabled`))
	tab.sheet("mould")
	const path = "mould.cope_height"
	tab.fill(path, "91 mm")
	once := with(t, plan, path, "91 mm")
	tab.fill(path, "92 mm")
	twice := with(t, plan, path, "92 mm")
	tab.comes("metric", twice)

	tab.click(".bar [data-action=undo]")
	tab.comes("metric", once)
	require.Equal(t, "91 mm", tab.value(path))
	js[chromedp.Void](tab, `document.activeElement.blur()`)
	tab.key("z", chromedp.ModifierCtrl)
	tab.comes("metric", plan)
	require.Equal(t, "90 mm", tab.value(path))
	tab.key("z", chromedp.ModifierCtrl, chromedp.ModifierShift)
	tab.comes("metric", once)
	tab.click(".bar [data-action=redo]")
	tab.comes("metric", twice)
	require.True(t, js[bool](tab, `document.querySelector(".bar [data-action=redo]").disabled`))

	// A line added to a list and taken away again.
	tab.sheet("weight")
	lines := len(tab.texts(`[data-item^="weight.solids["]`))
	tab.click(`[data-field="weight.solids"] ~ [data-action=add]`)
	tab.until(`document.querySelectorAll('[data-item^="weight.solids["]').length === %v`, lines+1)
	tab.click(".bar [data-action=undo]")
	tab.comes("metric", twice)
	require.Len(t, tab.texts(`[data-item^="weight.solids["]`), lines)
}

// The units change what is shown, never what was entered.
func TestUnitsChangeTextsAndNotValues(t *testing.T) {
	t.Parallel()
	plan := examples(t)[bracket]
	tab := open(t).tab(t)
	tab.hosted()
	tab.example(bracket)
	tab.sheet("mould")
	tab.fill("mould.cope_height", "90")
	require.Equal(t, "90 mm", tab.value("mould.cope_height"))
	tab.comes("metric", plan)
	tab.click(`.bar [data-units="us"]`)
	tab.quiet()
	tab.comes("us", plan)
	require.Equal(t, "90 mm", tab.value("mould.cope_height"), "the units changed an entry")
	require.Contains(t, tab.card()["charge"], "lb")

	// A bare number now stands for the other unit, and keeps it.
	tab.fill("mould.cope_height", "6")
	require.Equal(t, "6 in", tab.value("mould.cope_height"))
	changed := with(t, plan, "mould.cope_height", "6 in")
	tab.comes("us", changed)
	tab.click(`.bar [data-units="metric"]`)
	tab.quiet()
	tab.comes("metric", changed)
	require.Equal(t, "6 in", tab.value("mould.cope_height"))

	tab.click(`.bar [data-units="us"]`)
	tab.quiet()
	tab.reload()
	tab.comes("us", changed)
}

// The themes change at once and are there again after a reload; without a
// choice the page goes by the device.
func TestThemesSwitchAndStay(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	device := func(name, value string) {
		command(tab, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Features: []*emulation.MediaFeature{{Name: name, Value: value}}})
	}
	device("prefers-color-scheme", "light")
	tab.hosted()
	theme := func() string { return js[string](tab, `document.documentElement.dataset.theme`) }
	ground := func() string { return js[string](tab, `getComputedStyle(document.documentElement).backgroundColor`) }
	require.Equal(t, "paper", theme())
	device("prefers-color-scheme", "dark")
	tab.until(`document.documentElement.dataset.theme === "furnace"`)
	device("prefers-contrast", "more")
	tab.until(`document.documentElement.dataset.theme === "contrast"`)
	device("prefers-color-scheme", "light")
	tab.until(`document.documentElement.dataset.theme === "paper"`)

	grounds := map[string]bool{}
	for _, name := range []string{"furnace", "contrast", "paper"} {
		tab.view("#/settings")
		tab.click(`[data-setting="theme=` + name + `"]`)
		require.Equal(t, name, theme())
		grounds[ground()] = true
		tab.reload()
		require.Equal(t, name, theme())
	}
	require.Len(t, grounds, 3, "themes look alike")
}
