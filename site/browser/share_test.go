package browser

import (
	"encoding/json"
	"image"
	"image/color"
	"strings"
	"testing"

	"github.com/makiuchi-d/gozxing"
	"github.com/makiuchi-d/gozxing/qrcode"
	"github.com/stretchr/testify/require"
)

// sharing opens the page that shares the open plan and returns its link.
func (tab *browserTab) sharing() string {
	tab.t.Helper()
	tab.view(tab.planAddress() + "/share")
	tab.until(`document.querySelector("[data-shared=link]")`)
	return js[string](tab, `document.querySelector("[data-shared=link]").value`)
}

// scanned is what an independent reader, gozxing, sees in the code on the page.
func (tab *browserTab) scanned() string {
	tab.t.Helper()
	rows := js[[]string](tab, `(() => {
		const svg = document.querySelector("[data-shared=qr]");
		const side = svg.viewBox.baseVal.width;
		const squares = svg.querySelector(".qr-squares");
		return Array.from({ length: side }, (_, y) => Array.from({ length: side }, (_, x) => Number(squares.isPointInFill(new DOMPoint(x + 0.5, y + 0.5)))).join(""));
	})()`)
	const scale = 3
	picture := image.NewGray(image.Rect(0, 0, scale*len(rows), scale*len(rows)))
	for y := range picture.Rect.Dy() {
		for x := range picture.Rect.Dx() {
			if rows[y/scale][x/scale] == '0' {
				picture.Set(x, y, color.White)
			}
		}
	}
	bits, err := gozxing.NewBinaryBitmapFromImage(picture)
	require.NoError(tab.t, err)
	found, err := qrcode.NewQRCodeReader().Decode(bits, map[gozxing.DecodeHintType]any{gozxing.DecodeHintType_PURE_BARCODE: true})
	require.NoError(tab.t, err)
	return found.GetText()
}

// Every example goes whole through a link to another place, asked before it is
// opened there, and through the QR code that says the same.
func TestShareByLinkAndCode(t *testing.T) {
	t.Parallel()
	h := open(t)
	for name := range examples(t) {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			tab := h.tab(t)
			tab.hosted()
			tab.example(name)
			plan := tab.entered(name)
			link := tab.sharing()
			require.True(t, strings.HasPrefix(link, h.server.URL+"/#/shared/"), link)
			require.Regexp(t, `^[\w-]+$`, link[strings.LastIndex(link, "/")+1:])
			require.Equal(t, link, tab.scanned())

			other := h.tab(t)
			other.visit(link)
			other.until(`document.querySelector("[data-action=take-shared]")`)
			require.Equal(t, []string{plan["title"].(string)}, other.texts("[data-shared=title]"))
			other.view("#/")
			other.quiet()
			require.Empty(t, other.texts("[data-plan]"), "it was opened without asking")
			other.view(link[strings.Index(link, "#"):])
			other.click("[data-action=take-shared]")
			other.until(`document.querySelector("[data-part]")`)
			require.JSONEq(t, asJSON(t, plan), other.kept())
			for _, address := range other.requests() {
				require.NotContains(t, address, link[strings.LastIndex(link, "/")+1:], "the plan went out with a request")
			}
		})
	}
}

// From the one file a link is good where the file lies, and what its code says
// is pasted into another.
func TestShareFromTheFile(t *testing.T) {
	t.Parallel()
	h := open(t)
	tab := h.tab(t)
	tab.carried()
	tab.example(bracket)
	plan := tab.kept()
	link := tab.sharing()
	require.True(t, strings.HasPrefix(link, "file://"), link)
	require.Contains(t, tab.texts("pw-share")[0], "leads to this very file")
	code := tab.scanned()
	require.True(t, strings.HasPrefix(code, "#/shared/"), code)
	require.True(t, strings.HasSuffix(link, code))

	same := h.tab(t)
	same.visit(link)
	same.click("[data-action=take-shared]")
	same.until(`document.querySelector("[data-part]")`)
	require.JSONEq(t, plan, same.kept())

	for _, pasted := range []string{code, link, strings.TrimPrefix(code, "#/shared/")} {
		other := h.tab(t)
		other.hosted()
		other.click(".link-way summary")
		other.click("[data-field=link]")
		other.write(" " + pasted + "\n")
		other.click("[data-action=open-link]")
		other.click("[data-action=take-shared]")
		other.until(`document.querySelector("[data-part]")`)
		require.JSONEq(t, plan, other.kept())
	}
}

// A link that is broken, cut short, too long or carries no plan says so and
// changes nothing.
func TestBrokenLinkIsTold(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.hosted()
	tab.example(bracket)
	link := tab.sharing()
	code := link[strings.LastIndex(link, "/")+1:]
	packed := func(text string) string {
		return js[string](tab, `(async () => {
			const bytes = new Uint8Array(await new Response(new Blob([%s]).stream().pipeThrough(new CompressionStream("gzip"))).arrayBuffer());
			return btoa(String.fromCharCode(...bytes)).replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "");
		})()`, text)
	}
	for bad, says := range map[string]string{
		code[:len(code)/2]:         "cut short",
		strings.Repeat("x", 40):    "changed or cut short",
		"%E0%A4%A":                 "changed or cut short",
		strings.Repeat("A", 17000): "longer than a link",
		packed(`["a list"]`):       "is no plan",
		packed(`"` + strings.Repeat("a", 3_000_000) + `"`): "larger than any plan",
	} {
		tab.view("#/shared/" + bad)
		tab.until(`document.querySelector("[data-shared=wrong]")?.textContent.includes(%s)`, says)
		require.Empty(t, tab.texts("[data-action=take-shared]"))
	}
	tab.view("#/")
	require.Len(t, tab.texts("[data-plan]"), 1)
	tab.click(".link-way summary")
	tab.click("[data-field=link]")
	tab.write("http://example.org/")
	tab.click("[data-action=open-link]")
	tab.until(`document.querySelector("[data-notice=file]")`)
}

// A plan too long for a code, or for a link, says what to do instead.
func TestTooLongToShare(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.hosted()
	long := map[string]any{"title": "Long"}
	fill := func(items int) {
		var solids []any
		for i := range items {
			solids = append(solids, map[string]any{"name": js[string](tab, `crypto.randomUUID() + crypto.randomUUID()`), "form": "plate", "length": "40 mm", "count": i + 1})
		}
		long["weight"] = map[string]any{"solids": solids}
		content, err := json.Marshal(long)
		require.NoError(t, err)
		tab.view("#/")
		tab.load("long.pour.json", content)
		tab.until(`document.querySelector("[data-part]")`)
		tab.view(tab.planAddress() + "/share")
		tab.until(`document.querySelector("[data-shared=too-long]")`)
	}
	fill(45)
	require.Len(t, tab.texts("[data-shared=link]"), 1)
	require.Contains(t, tab.texts("[data-shared=too-long]")[0], "as a file or a link")
	fill(290)
	require.Empty(t, tab.texts("[data-shared=link]"))
	require.Contains(t, tab.texts("pw-share")[0], "too long for a link")
}
