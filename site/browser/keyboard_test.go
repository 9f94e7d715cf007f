package browser

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/require"
)

// focused is what the focus is on, and whether that can be seen: an outline of
// its own or of what stands for it, within the window and uncovered.
const focused = `(() => {
	const e = document.activeElement;
	if (!e || e === document.body) return { what: "", ring: true, inSight: true };
	const lined = (x) => {
		if (!x) return false;
		const style = getComputedStyle(x);
		return style.outlineStyle !== "none" && parseFloat(style.outlineWidth) >= 2 && !/, 0\)$|transparent/.test(style.outlineColor);
	};
	const box = (e.closest("label") ?? e).getBoundingClientRect();
	const x = Math.min(Math.max((box.left + box.right) / 2, 1), innerWidth - 1);
	const y = Math.min(Math.max((box.top + box.bottom) / 2, 1), innerHeight - 1);
	const top = document.elementFromPoint(x, y);
	const stands = e.closest("label") ?? e;
	return {
		what: e.outerHTML.slice(0, 200),
		ring: lined(e) || lined(e.nextElementSibling) || lined(e.closest("label")),
		inSight: box.bottom > 0 && box.top < innerHeight && box.right > 0 && box.left < innerWidth && Boolean(top) && (stands.contains(top) || top.contains(stands)),
	};
})()`

type focus struct {
	What          string
	Ring, InSight bool
}

// tabTo presses Tab until the focus is on what a selector finds; at every stop
// the focus must be seen.
func (tab *browserTab) tabTo(selector string) {
	tab.t.Helper()
	for range 250 {
		tab.key("\t")
		f := js[focus](tab, focused)
		require.True(tab.t, f.Ring, "no mark of the focus at %s", f.What)
		require.True(tab.t, f.InSight, "the focus is out of sight or covered at %s", f.What)
		if js[bool](tab, `document.activeElement.matches(%s)`, selector) {
			return
		}
	}
	tab.t.Fatalf("the keyboard does not come to %s", selector)
}

// From the start page to an answer's working and back, without a pointer.
func TestKeyboardAlone(t *testing.T) {
	t.Parallel()
	plan := examples(t)[bracket]
	h := open(t)
	for _, s := range []screen{tablet, upright} {
		t.Run(s.name, func(t *testing.T) {
			t.Parallel()
			tab := h.tab(t)
			tab.size(s)
			tab.still()
			tab.hosted()
			tab.tabTo(`[data-example="bracket.pour.json"]`)
			tab.key(kb.Enter)
			tab.until(`document.querySelector("[data-part]")`)
			tab.quiet()

			tab.tabTo(`[data-station="metal"]`)
			tab.key(kb.Enter)
			tab.until(`document.querySelector("[data-sheet=metal]")`)
			tab.quiet()
			require.True(t, js[bool](tab, `document.activeElement.matches("[data-sheet=metal] h2")`), "a sheet that opens takes the focus")

			tab.tabTo(field("metal.pour_temperature"))
			js[chromedp.Void](tab, `document.activeElement.select()`)
			tab.write("735 C")
			tab.key("\t")
			tab.quiet()
			tab.comes("metric", with(t, plan, "metal.pour_temperature", "735 C"))

			tab.tabTo(`[data-sheet=metal] .answer-button`)
			at := js[string](tab, `document.activeElement.id`)
			tab.key(kb.Enter)
			tab.until(`document.querySelector("pw-working [data-step]")`)
			tab.quiet()
			require.Equal(t, at, js[string](tab, `document.activeElement.id`), "the focus left the answer that was opened")
			require.True(t, js[bool](tab, `document.activeElement.ariaExpanded === "true"`))
			tab.key(" ")
			tab.until(`!document.querySelector("pw-working")`)
			require.Equal(t, at, js[string](tab, `document.activeElement.id`))

			back := func() { tab.key("\t", chromedp.ModifierShift) }
			for range 250 {
				back()
				if js[bool](tab, `document.activeElement.matches("[data-action=close-sheet]")`) {
					break
				}
			}
			require.True(t, js[bool](tab, `document.activeElement.matches("[data-action=close-sheet]")`), "Shift and Tab do not come to Close")
			tab.key(kb.Enter)
			tab.until(`document.querySelector("pw-overview")`)
			tab.quiet()
			require.True(t, js[bool](tab, `document.activeElement.matches("[data-station=metal], [data-part], h1, h2")`), "the focus is lost: %s", js[focus](tab, focused).What)
			// and it goes on from there: the next thing is of the plan
			tab.key("\t")
			require.True(t, js[bool](tab, `document.activeElement.closest("main") !== null`))
		})
	}
}

// The menu opens, is walked through and closes by keys, and gives the focus
// back to its button.
func TestMenuByKeyboard(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.hosted()
	tab.example(bracket)
	tab.tabTo("[data-action=menu]")
	tab.key(kb.Enter)
	tab.until(`document.querySelector("#plan-menu:popover-open")`)
	tab.tabTo("#plan-menu [data-action=save-file]")
	tab.key(kb.Escape)
	tab.until(`!document.querySelector("#plan-menu:popover-open")`)
	require.True(t, js[bool](tab, `document.activeElement.matches("[data-action=menu]")`))
}

// Hold points are answered by keys, and the answer is part of the plan.
func TestHoldPointByKeyboard(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.hosted()
	tab.example(bracket)
	holds := tab.card()["holds"]
	tab.view(tab.planAddress() + "/handling")
	tab.tabTo("[data-hold-answer]")
	code := js[string](tab, `document.activeElement.dataset.holdAnswer.split("=")[0]`)
	tab.key(" ")
	tab.tabTo(`[data-hold-field="` + code + `.by"]`)
	tab.write("E. M.")
	tab.key("\t")
	tab.quiet()
	tab.until(`document.querySelector(%s)?.dataset.state === "answered yes"`, `[data-item="`+code+`"]`)
	require.NotEqual(t, holds, tab.card()["holds"])
	tab.until(`document.querySelector("[data-saved=saved]")`)
	tab.reload()
	tab.until(`document.querySelector(%s)?.dataset.state === "answered yes"`, `[data-item="`+code+`"]`)
	require.Equal(t, "E. M.", js[string](tab, `document.querySelector(%s).value`, `[data-hold-field="`+code+`.by"]`))
}
