package browser

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// least is what a finger needs, in px, either way.
const least = 44

// smallTargets lists what can be touched and is smaller than a finger needs, and what
// another thing lies over. A control's label counts with it; a link in a line
// of text may be as high as its line.
const smallTargets = `((least) => {
	const odd = [];
	const name = (e) => e.outerHTML.slice(0, 160);
	for (const e of document.querySelectorAll("a[href], button, input, select, textarea, summary, [role=button], [popovertarget]")) {
		if (e.disabled || !e.checkVisibility({ visibilityProperty: true })) continue;
		let box = e.getBoundingClientRect();
		if (box.width === 0 || box.height === 0) continue;
		if (e.matches("a") && getComputedStyle(e).display.startsWith("inline") && [...e.parentElement.childNodes].some((n) => n.nodeType === Node.TEXT_NODE && n.data.trim())) continue;
		const label = e.closest("label");
		if (label) {
			const around = label.getBoundingClientRect();
			if (around.width * around.height > box.width * box.height) box = around;
		}
		if (box.width < least - 0.01 || box.height < least - 0.01) odd.push(box.width.toFixed(1) + " x " + box.height.toFixed(1) + ": " + name(e));
	}
	return odd;
})`

// crossedTargets lists targets of which the middle belongs to another one, or that
// reach into each other by more than a hair.
const crossedTargets = `(() => {
	const targets = [...document.querySelectorAll("a[href], button, select, input, textarea, summary")].filter((e) => !e.disabled && e.checkVisibility({ visibilityProperty: true }) && getComputedStyle(e).display !== "inline");
	const boxes = targets.map((e) => [e, (e.closest("label") ?? e).getBoundingClientRect()]).filter(([, b]) => b.width && b.height);
	const odd = [];
	for (const [i, [e, a]] of boxes.entries()) {
		for (const [f, b] of boxes.slice(i + 1)) {
			if (e.contains(f) || f.contains(e) || (e.closest("label") && e.closest("label") === f.closest("label"))) continue;
			const wide = Math.min(a.right, b.right) - Math.max(a.left, b.left);
			const high = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
			if (round(e) && round(f) && Math.hypot((a.left + a.right - b.left - b.right) / 2, (a.top + a.bottom - b.top - b.bottom) / 2) > (a.width + b.width) / 2 - 3) continue;
			if (wide > 3 && high > 3 && scrolled(e) === scrolled(f)) odd.push(wide.toFixed(1) + " x " + high.toFixed(1) + ": " + e.outerHTML.slice(0, 120) + " over " + f.outerHTML.slice(0, 120));
		}
	}
	function round(e) {
		return /^50\D/.test(getComputedStyle(e).borderTopLeftRadius); // per cent
	}
	// What scrolls by itself may pass under what stands still.
	function scrolled(e) {
		for (let at = e; at; at = at.parentElement) {
			if (at.matches("[popover]")) return at;
			if (/auto|scroll/.test(getComputedStyle(at).overflowY)) return at;
		}
		return null;
	}
	return odd;
})()`

// cutTexts lists texts that are cut off or run over each other, and reports whether
// the page has to be pushed sideways.
const cutTexts = `(() => {
	const odd = [];
	if (document.scrollingElement.scrollWidth > innerWidth + 1) odd.push("the page is " + document.scrollingElement.scrollWidth + " px wide");
	const scrolls = (e) => { for (let at = e; at; at = at.parentElement) if (/auto|scroll/.test(getComputedStyle(at).overflowX) && at.scrollWidth > at.clientWidth + 1) return at; };
	const texts = [];
	const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
	for (let node = walk.nextNode(); node; node = walk.nextNode()) {
		if (!node.data.trim()) continue;
		const parent = node.parentElement;
		if (!parent.checkVisibility({ visibilityProperty: true }) || parent.closest(".out-of-sight, script, style, noscript, option, svg, math, details:not([open]) > :not(summary)")) continue;
		const range = document.createRange();
		range.selectNodeContents(node);
		for (const box of range.getClientRects()) if (box.width > 1 && box.height > 1) texts.push({ box, parent, text: node.data.trim().slice(0, 40) });
	}
	for (const { box, parent, text } of texts) {
		if (!scrolls(parent) && (box.right > innerWidth + 1 || box.left < -1)) odd.push("past the edge: " + text);
		for (let at = parent; at && at !== document.body; at = at.parentElement) {
			const style = getComputedStyle(at);
			if (/auto|scroll/.test(style.overflowX + style.overflowY)) break; // what is beyond can be scrolled to
			if (!/hidden|clip/.test(style.overflowX + style.overflowY)) continue;
			const round = at.getBoundingClientRect();
			if (box.right > round.right + 1.5 || box.left < round.left - 1.5) odd.push("cut off: " + text);
			if (/hidden|clip/.test(style.overflowY) && (box.bottom > round.bottom + 4 || box.top < round.top - 4)) odd.push("cut off: " + text);
		}
	}
	const scroller = (e) => { for (let at = e; at; at = at.parentElement) if (at.matches("[popover]") || /auto|scroll/.test(getComputedStyle(at).overflowY)) return at; return null; };
	texts.sort((a, b) => a.box.top - b.box.top);
	for (let i = 0; i < texts.length; i++) {
		for (let j = i + 1; j < texts.length && texts[j].box.top < texts[i].box.bottom; j++) {
			const [a, b] = [texts[i], texts[j]];
			const wide = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
			const high = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
			if (wide > 2 && high > Math.min(a.box.height, b.box.height) / 2 && scroller(a.parent) === scroller(b.parent)) odd.push("over each other: " + a.text + " / " + b.text);
		}
	}
	return odd;
})()`

// A finger opens a part of the drawing where it is drawn.
func TestDrawingIsTheWayIn(t *testing.T) {
	t.Parallel()
	h := open(t)
	for _, s := range []screen{tablet, phone} { // with labels, and with numbers
		t.Run(s.name, func(t *testing.T) {
			t.Parallel()
			tab := h.tab(t)
			tab.size(s)
			tab.hosted()
			tab.example(relief)
			plan := tab.planAddress()
			for _, part := range js[[]string](tab, `[...new Set([...document.querySelectorAll("[data-part]")].map((a) => a.dataset.part))]`) {
				tab.view(plan)
				tab.tap(`[data-part="` + part + `"]`)
				tab.until(`document.querySelector("pw-sheet[data-sheet]")`)
				require.Equal(t, js[string](tab, `document.querySelector("[data-part=" + %s + "]").getAttribute("href")`, part), js[string](tab, `location.hash`), part)
			}
		})
	}
}
