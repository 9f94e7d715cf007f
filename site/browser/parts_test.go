package browser

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

// holdRest keeps back, until letGo() is called, what the page asks right behind
// the first answer to a plan: the sheets that are not looked at.
const holdRest = `{
	const held = [];
	const { postMessage } = Worker.prototype;
	Worker.prototype.postMessage = function (message, ...more) {
		if (window.holding && message.name === "plan" && (JSON.parse(message.options).full?.length ?? 0) > 1) held.push(() => postMessage.call(this, message, ...more));
		else postMessage.call(this, message, ...more);
	};
	window.letGo = () => {
		window.holding = false;
		for (const go of held.splice(0)) go();
	};
}`

// What is looked at is answered first. Until the rest has come, a sheet that is
// opened and a print that is begun say that they wait, and show no old figure.
func TestWhatIsLookedAtComesFirst(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.before(holdRest)
	tab.hosted()
	tab.example(relief)
	tab.sheet("weight")
	before := tab.card()
	poured := tab.texts(`.sheet-figure[data-figure=poured]`)
	require.NotEmpty(t, poured)

	js[bool](tab, `window.holding = watched.dead = true`) // what is held back is not waited for
	tab.fill("weight.solids[0].length", "190 mm")
	tab.until(`document.querySelector(".sheet-figure[data-figure=poured]")?.textContent.trim() !== %s`, poured[0])
	tab.until(`document.querySelector("pw-pour-card").ariaBusy === "false"`)
	require.NotEqual(t, before, tab.card())
	require.Empty(t, tab.texts("[data-behind]"))

	js[chromedp.Void](tab, `document.querySelector('[data-station="ladle"]').click()`)
	tab.until(`document.querySelector("[data-sheet=ladle] [data-behind]")`)
	require.Equal(t, []string{"Working it out."}, tab.texts("[data-behind]"))
	require.Empty(t, tab.texts(".sheet-figure"))
	paper := tab.onPaper()
	require.Contains(t, paper, "There is nothing to print yet")
	require.NotContains(t, paper, "kg")

	js[chromedp.Void](tab, `watched.dead = false; letGo()`)
	tab.quiet()
	require.Empty(t, tab.texts("[data-behind]"))
	require.NotEmpty(t, tab.texts(".sheet-figure"))
	require.Contains(t, tab.onPaper(), "Pour sheet")
}

// onPaper is the text that the browser's own print command puts on paper.
func (tab *browserTab) onPaper() string {
	tab.t.Helper()
	text, _ := readPDF(tab.t, tab.pdf(chromedp.PaperA4))
	return text
}
