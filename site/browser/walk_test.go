package browser

import (
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

// choose takes one of a field's choices, as a click on it or a pick from its
// list does.
func (tab *browserTab) choose(path, value string) {
	tab.t.Helper()
	tab.unfold(path)
	tab.until(`document.querySelector(%s)`, field(path))
	if js[bool](tab, `document.querySelector(%s).tagName === "SELECT"`, field(path)) {
		js[chromedp.Void](tab, `{
			const list = document.querySelector(%s);
			list.value = %s;
			list.dispatchEvent(new Event("input", { bubbles: true }));
			list.dispatchEvent(new Event("change", { bubbles: true }));
		}`, field(path), value)
	} else {
		js[chromedp.Void](tab, `document.querySelector(%s).closest("fieldset").querySelector("[data-choice=" + CSS.escape(%s) + "]").click()`, field(path), value)
	}
	tab.quiet()
}

// Somebody who has never seen the page plans a casting of his own, a small
// hinge in aluminium, by following what each sheet still wants, answers the
// hold points, and prints the pour sheet.
func TestNewcomerPlansACastingOfHisOwn(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.hosted()
	tab.click("[data-action=new-plan]")
	tab.until(`document.querySelector("[data-station]")`)
	plan := tab.planAddress()
	sheet := func(station string) {
		t.Helper()
		tab.view(plan)
		tab.click(`a[data-station="` + station + `"]`)
		tab.until(`document.querySelector("pw-sheet[data-sheet=" + %s + "]")`, station)
		tab.quiet()
	}
	tab.fill("title", "Gate hinge")

	sheet("metal")
	tab.choose("metal.alloy", "al-si-mg")
	tab.fill("metal.wall", "10")

	sheet("weight")
	tab.click("[data-action=add]")
	tab.choose("weight.solids[0].form", "plate")
	tab.fill("weight.solids[0].length", "220")
	tab.fill("weight.solids[0].width", "80")
	tab.fill("weight.solids[0].thickness", "10")

	sheet("mould")
	tab.choose("mould.sand", "green-sand")
	tab.choose("mould.binder", "clay")
	for _, entry := range [][2]string{
		{"cope_height", "100"}, {"drag_height", "80"}, {"flask_length", "350"}, {"flask_width", "250"},
		{"casting_length", "220"}, {"casting_width", "80"}, {"above", "10"}, {"below", "0"},
	} {
		tab.fill("mould."+entry[0], entry[1])
	}

	sheet("pour")
	tab.fill("pour.thin_wall", "8")
	tab.fill("pour.flow_length", "250")
	tab.fill("pour.ingate_area", "3")

	sheet("ladle")
	for _, entry := range [][2]string{{"top", "90"}, {"bottom", "75"}, {"depth", "120"}} {
		tab.fill("ladle."+entry[0], entry[1])
	}
	tab.choose("ladle.lip.form", "round")
	tab.fill("ladle.lip.radius", "20")

	tab.view(plan)
	card := tab.card()
	for _, key := range []string{"charge", "temperature", "window", "time"} {
		require.NotEqual(t, "not yet", card[key], key)
	}
	require.Empty(t, js[[]string](tab, `[...document.querySelectorAll("[data-state=fault]")].map((e) => e.dataset.station)`))

	tab.view(plan + "/print")
	text, _ := readPDF(t, tab.pdf(chromedp.PaperA4))
	require.Contains(t, text, "Gate hinge")
	for _, key := range []string{"charge", "temperature", "time"} {
		require.Contains(t, strings.ReplaceAll(text, "\u00a0", " "), strings.ReplaceAll(card[key], "\u00a0", " "), key)
	}
}
