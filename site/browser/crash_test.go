package browser

import (
	"testing"
	"time"

	"github.com/chromedp/cdproto/storage"
	"github.com/chromedp/cdproto/target"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

// worker attaches to the engine's worker of this page, which has to be the only
// page of its browser.
func (tab *browserTab) worker(not target.ID) (*browserTab, target.ID) {
	tab.t.Helper()
	for end := time.Now().Add(patience); time.Now().Before(end); time.Sleep(20 * time.Millisecond) {
		infos, err := chromedp.Targets(tab)
		require.NoError(tab.t, err)
		for _, info := range infos {
			if info.Type == "worker" && info.TargetID != not && info.BrowserContextID == chromedp.FromContext(tab).BrowserContextID {
				ctx, cancel := chromedp.NewContext(tab, chromedp.WithTargetID(info.TargetID), chromedp.WithDetachOnCancel())
				tab.t.Cleanup(cancel)
				return &browserTab{Context: ctx, t: tab.t, h: tab.h}, info.TargetID
			}
		}
	}
	tab.t.Fatal("the page has no worker")
	return nil, ""
}

// The engine dies of an error of its own, at rest and in the middle of a call:
// the page starts it again and answers, and nothing that was entered is lost.
func TestEngineCrashIsSurvived(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.forgive("the roof fell in")
	tab.hosted()
	tab.example(bracket)
	plan := tab.entered(bracket)
	tab.sheet("weight")
	const path = "weight.solids[0].length"

	worker, first := tab.worker("")
	js[chromedp.Void](worker, `setTimeout(() => { throw new Error("the roof fell in"); })`)
	worker, second := tab.worker(first)
	tab.fill(path, "190 mm")
	changed := with(t, plan, path, "190 mm")
	tab.comes("metric", changed)

	// The next call finds the engine falling over it.
	tab.until(`watched.calls === 0`)
	js[chromedp.Void](worker, `{ const answer = onmessage; onmessage = (event) => { onmessage = answer; throw new Error("the roof fell in"); }; }`)
	tab.fill(path, "200 mm")
	tab.worker(second)
	changed = with(t, plan, path, "200 mm")
	tab.comes("metric", changed)
	require.Equal(t, "200 mm", tab.value(path))
	require.Empty(t, tab.texts("[data-notice]"))
	require.JSONEq(t, asJSON(t, changed), tab.kept())
}

// An engine that will not start is told; the plan can be read, saved as a file
// and changed all the same, and one more try brings the answers.
func TestEngineThatWillNotStart(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.before(`
		const Whole = Worker;
		window.dead = sessionStorage.dead === "yes";
		window.Worker = function (url, options) {
			return new Whole(dead ? "broken-worker.js" : url, options);
		};
		window.Worker.prototype = Whole.prototype;`)
	tab.hosted()
	tab.example(bracket)
	plan := tab.entered(bracket)
	tab.sheet("weight")
	tab.until(`document.querySelector("[data-saved=saved]")`)

	// It dies for good while the page is open.
	tab.forgive("broken-worker.js", "the roof fell in", "404")
	js[chromedp.Void](tab, `{ dead = true; }`)
	worker, _ := tab.worker("")
	js[chromedp.Void](worker, `setTimeout(() => { throw new Error("the roof fell in"); })`)
	tab.until(`document.querySelector("[data-notice=engine]")`)
	tab.fill("weight.solids[0].length", "190 mm")
	changed := with(t, plan, "weight.solids[0].length", "190 mm")
	require.Equal(t, "190 mm", tab.value("weight.solids[0].length"))
	require.JSONEq(t, asJSON(t, changed), tab.kept())
	_, file := tab.save()
	require.JSONEq(t, asJSON(t, changed), string(file))

	js[chromedp.Void](tab, `{ dead = false; }`)
	tab.click("[data-notice=engine] [data-action=engine-again]")
	tab.until(`!document.querySelector("[data-notice=engine]")`)
	tab.comes("metric", changed)
	require.Empty(t, tab.texts("[data-notice]"))

	// It is dead when the page is loaded.
	js[chromedp.Void](tab, `{ sessionStorage.dead = "yes"; }`)
	tab.reload()
	tab.until(`document.querySelector("[data-notice=engine]")`)
	js[chromedp.Void](tab, `{ dead = false; }`)
	tab.click("[data-notice=engine] [data-action=engine-again]")
	tab.comes("metric", changed)
}

// A device without room says so, keeps what was entered in hand, and saves it
// when there is room again.
func TestFullDeviceIsTold(t *testing.T) {
	t.Parallel()
	h := open(t)
	tab := h.tab(t)
	tab.forgive("quota", "Quota") // of the service worker, which cannot keep the page
	room := func(bytes *float64) {
		command(tab, storage.OverrideQuotaForOrigin, storage.OverrideQuotaForOriginParams{Origin: h.server.URL, QuotaSize: bytes})
	}
	room(new(1.0))
	tab.hosted()
	tab.example(bracket)
	tab.until(`document.querySelector("[data-notice=saving]")`)
	require.Contains(t, tab.texts("[data-notice=saving] p")[0], "no room")
	require.Equal(t, []string{"Not saved"}, tab.texts("[data-saved=failed]"))
	plan := tab.entered(bracket)
	tab.sheet("weight")
	tab.fill("weight.solids[0].length", "190 mm")
	changed := with(t, plan, "weight.solids[0].length", "190 mm")
	tab.comes("metric", changed)
	_, file := tab.save()
	require.JSONEq(t, asJSON(t, changed), string(file), "the way out does not work")

	// Gone to the start page and back, it is still in hand.
	address := tab.planAddress()
	tab.view("#/")
	require.Len(t, tab.texts("[data-plan]"), 1)
	require.NotEmpty(t, tab.texts("[data-notice=saving]"))
	tab.view(address)
	tab.comes("metric", changed)

	room(nil)
	tab.click("[data-notice=saving] [data-action=save-again]")
	tab.until(`!document.querySelector("[data-notice=saving]")`)
	require.JSONEq(t, asJSON(t, changed), tab.kept())
	tab.reload()
	tab.comes("metric", changed)
}

// A browser that gives no large store is made do with; one that gives none at
// all is told to the user, and the plan goes on in hand.
func TestRefusedStorage(t *testing.T) {
	t.Parallel()
	h := open(t)
	t.Run("no large store", func(t *testing.T) {
		tab := h.tab(t)
		tab.before(`IDBFactory.prototype.open = () => { throw new DOMException("not here", "SecurityError"); };`)
		tab.hosted()
		tab.example(bracket)
		plan := tab.entered(bracket)
		tab.sheet("weight")
		tab.fill("weight.solids[0].length", "190 mm")
		changed := with(t, plan, "weight.solids[0].length", "190 mm")
		tab.until(`document.querySelector("[data-saved=kept]")`)
		tab.reload()
		tab.comes("metric", changed)
	})
	t.Run("no store at all", func(t *testing.T) {
		tab := h.tab(t)
		tab.before(`
			IDBFactory.prototype.open = () => { throw new DOMException("not here", "SecurityError"); };
			Storage.prototype.setItem = () => { throw new DOMException("not here", "QuotaExceededError"); };`)
		tab.hosted()
		tab.example(bracket)
		tab.until(`document.querySelector("[data-notice=saving]")`)
		plan := tab.entered(bracket)
		tab.sheet("weight")
		tab.fill("weight.solids[0].length", "190 mm")
		changed := with(t, plan, "weight.solids[0].length", "190 mm")
		tab.comes("metric", changed)
		_, file := tab.save()
		require.JSONEq(t, asJSON(t, changed), string(file))
	})
}

// Two windows on one plan: the second to write goes on as a copy, and both are
// kept.
func TestTwoWindowsLoseNothing(t *testing.T) {
	t.Parallel()
	plan := examples(t)[bracket]
	h := open(t)
	one := h.tab(t)
	one.hosted()
	one.example(bracket)
	one.until(`document.querySelector("[data-saved=saved]")`)
	two := one.another()
	two.visit(js[string](one, `location.href`))
	two.until(`document.querySelector("[data-part]")`)
	for tab, text := range map[*browserTab]string{one: "190 mm", two: "200 mm"} {
		tab.sheet("weight")
		tab.fill("weight.solids[0].length", text)
	}
	one.comes("metric", with(t, plan, "weight.solids[0].length", "190 mm"))
	two.comes("metric", with(t, plan, "weight.solids[0].length", "200 mm"))
	require.NotEqual(t, one.planAddress(), two.planAddress())
	one.until(`document.querySelector("[data-saved=saved]")`)
	two.until(`document.querySelector("[data-saved=saved]")`)
	one.reload()
	two.reload()
	one.comes("metric", with(t, plan, "weight.solids[0].length", "190 mm"))
	two.comes("metric", with(t, plan, "weight.solids[0].length", "200 mm"))
	one.view("#/")
	require.Len(t, one.texts("[data-plan]"), 2)
}
