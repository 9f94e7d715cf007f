package browser

import (
	"encoding/json"
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/chromedp/cdproto/browser"
	"github.com/chromedp/cdproto/dom"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

// pick chooses from a list, or ticks one of a row of choices.
func (tab *browserTab) pick(path, value string) {
	tab.t.Helper()
	tab.until(`document.querySelector(%s)`, field(path))
	js[chromedp.Void](tab, `(() => {
		const at = document.querySelector(%s);
		if (at.type === "radio") return at.closest("fieldset").querySelector("[data-choice='" + %s + "']").click();
		at.value = %s;
		at.dispatchEvent(new Event("change", { bubbles: true }));
	})()`, field(path), value, value)
	tab.quiet()
}

// ownFigures puts a shop's figures into the settings.
func (tab *browserTab) ownFigures() {
	tab.t.Helper()
	tab.view("#/settings")
	tab.until(`document.querySelector(%s)`, field("sand.sand"))
	tab.pick("sand.sand", "green-sand")
	tab.pick("sand.binder", "clay")
	tab.fill("sand.sand_density", "97 lb/ft³")
	tab.fill("furnace.efficiency", "9")
	tab.click(`[aria-label="Metals"] [data-action=add]`)
	tab.pick("metals[0].alloy", "al-si-mg")
	tab.fill("metals[0].own", "12.5")
	tab.click(`[aria-label="Ladles"] [data-action=add]`)
	tab.fill("ladles[0].name", "Hand ladle")
	tab.fill("ladles[0].top", "120 mm")
	tab.fill("ladles[0].depth", "130 mm")
}

// The shop's figures are kept on the device, checked as a plan is, and go as a
// file from one device to another.
func TestOwnFiguresAreKept(t *testing.T) {
	t.Parallel()
	h := open(t)
	tab := h.tab(t)
	tab.hosted()
	tab.ownFigures()
	require.Equal(t, "9 %", tab.value("furnace.efficiency"), "a bare number has no unit")
	require.Equal(t, "12.5 mm/m", tab.value("metals[0].own"))
	tab.fill("sand.moisture", "90 %")
	tab.until(`document.querySelector(%s)?.ariaInvalid === "true"`, field("sand.moisture"))
	require.Contains(t, tab.texts("pw-own .field-fault")[0], "between 0 % and 20 %")
	tab.fill("sand.moisture", "4 %")
	tab.until(`!document.querySelector("pw-own .field-fault")`)
	tab.reload()
	tab.until(`document.querySelector(%s)?.value === "97 lb/ft³"`, field("sand.sand_density"))
	require.Equal(t, "Hand ladle", tab.value("ladles[0].name"))

	dir := t.TempDir()
	_, err := chromedp.CallBrowser(tab, browser.SetDownloadBehavior, browser.SetDownloadBehaviorParams{
		Behavior: browser.SetDownloadBehaviorBehaviorAllow, BrowserContextID: chromedp.FromContext(tab).BrowserContextID, DownloadPath: dir,
	})
	require.NoError(t, err)
	tab.click("[data-action=save-own]")
	file := filepath.Join(dir, "shop-figures.json")
	var saved map[string]any
	for end := time.Now().Add(patience); time.Now().Before(end) && saved == nil; time.Sleep(20 * time.Millisecond) {
		if content, err := os.ReadFile(file); err == nil {
			_ = json.Unmarshal(content, &saved)
		}
	}
	require.Equal(t, "97 lb/ft³", saved["figures"].(map[string]any)["sand"].(map[string]any)["sand_density"])

	other := h.tab(t)
	other.carried()
	other.view("#/settings")
	other.until(`document.querySelector("[data-action=open-own]")`)
	input := run(other, chromedp.Evaluate[*runtime.RemoteObject](`document.querySelector("[data-action=open-own]")`))
	command(other, dom.SetFileInputFiles, dom.SetFileInputFilesParams{Files: []string{file}, ObjectID: input.ObjectID})
	other.until(`document.querySelector(%s)?.value === "97 lb/ft³"`, field("sand.sand_density"))
	other.view("#/")
	content, err := os.ReadFile(file)
	require.NoError(t, err)
	other.load("shop-figures.json", content)
	other.until(`document.querySelector("[data-notice=file] p")?.textContent.includes("settings")`)
}

// A new plan begins with the shop's figures, each marked as such; a plan with a
// metal takes those of the metal and a ladle where it is blank; one step takes
// them back; what stood in a plan stays.
func TestOwnFiguresFillPlans(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.hosted()
	tab.ownFigures()
	tab.view("#/")
	tab.click("[data-action=new-plan]")
	tab.until(`document.querySelector("[data-station]")`)
	tab.quiet()
	plan := tab.planAddress()
	var doc map[string]map[string]any
	read := func() {
		t.Helper()
		doc = nil
		var whole map[string]any
		require.NoError(t, json.Unmarshal([]byte(tab.kept()), &whole))
		doc = map[string]map[string]any{}
		for key, section := range whole {
			if s, ok := section.(map[string]any); ok {
				doc[key] = s
			}
		}
	}
	read()
	require.Equal(t, map[string]any{"sand": "green-sand", "binder": "clay", "sand_density": "97 lb/ft³"}, doc["mould"])
	require.Equal(t, map[string]any{"efficiency": "9 %"}, doc["melting"])
	tab.sheet("mould")
	tab.until(`document.querySelector("[data-own='mould.sand_density']")`)
	require.Len(t, tab.texts("[data-own]"), 3)
	tab.fill("mould.sand_density", "1600 kg/m³")
	tab.until(`document.querySelectorAll("[data-own]").length === 2`)

	tab.sheet("metal")
	tab.pick("metal.alloy", "al-si-mg")
	tab.view(plan)
	tab.click("[data-action=use-own]")
	tab.until(`!document.querySelector("[data-action=use-own]")`)
	tab.click("[data-action=use-ladle]")
	tab.until(`!document.querySelector("[data-action=use-ladle]")`)
	tab.quiet()
	read()
	require.Equal(t, "12.5 mm/m", doc["pattern"]["own"])
	require.Equal(t, map[string]any{"top": "120 mm", "depth": "130 mm"}, doc["ladle"])
	require.Equal(t, "1600 kg/m³", doc["mould"]["sand_density"], "what the plan said is gone")
	tab.click("[data-action=undo]")
	tab.until(`document.querySelector("[data-action=use-ladle]")`)
	tab.quiet()
	read()
	require.Nil(t, doc["ladle"])

	tab.view("#/")
	tab.example(bracket)
	before := tab.kept()
	require.Empty(t, tab.texts("[data-action=use-ladle]"), "the bracket has its ladle")
	require.Equal(t, before, tab.kept())
}

// Amounts wear the currency of the settings, which is kept; nothing in the plan
// changes.
func TestCurrency(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.hosted()
	tab.example(relief)
	before := tab.kept()
	plan := tab.planAddress()
	cost := func() string {
		t.Helper()
		tab.view(plan + "/sheet/shop")
		tab.until(`document.querySelector("[data-answer=cost] .answer-text")`)
		return tab.texts("[data-answer=cost] .answer-text")[0]
	}
	bare := cost()
	require.Regexp(t, `^\d+\.\d\d$`, bare)
	for typed, shown := range map[string]string{"€": "€", "1 S-E\"K<": "SEK "} {
		tab.view("#/settings")
		js[chromedp.Void](tab, `(() => { const input = document.querySelector("[data-setting=currency]"); input.value = %s; input.dispatchEvent(new Event("change")); })()`, typed)
		require.Equal(t, shown+bare, cost())
		tab.reload()
		require.Equal(t, shown+bare, cost())
		require.Contains(t, tab.texts("pw-sheet .field-unit"), "in "+map[string]string{"€": "€", "SEK ": "SEK"}[shown]+" per kg")
	}
	require.Equal(t, before, tab.kept())
}
