package browser

import (
	"context"
	"encoding/json"
	"fmt"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/css"
	"github.com/chromedp/cdproto/dom"
	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/cdproto/log"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

// patience bounds every wait. It is long because the machine may be busy with
// other packages' tests; nothing waits for it to pass.
const patience = 90 * time.Second

// browserTab is a page of the browser. When its test ends, a complaint of its console
// that was not forgiven fails the test.
type browserTab struct {
	context.Context
	t  testing.TB
	h  *house
	mu sync.Mutex
	// wrong lists console errors, uncaught exceptions and refusals of the
	// security policy; asked every address that was asked for.
	wrong, asked []string
	forgiven     []string
}

// tab opens a page with a storage of its own, empty.
func (h *house) tab(t testing.TB) *browserTab {
	t.Helper()
	return h.open(t, h.browser, chromedp.WithNewBrowserContext())
}

// another opens a page that shares the storage of this one.
func (tab *browserTab) another() *browserTab {
	tab.t.Helper()
	id := chromedp.FromContext(tab).BrowserContextID
	return tab.h.open(tab.t, tab.h.browser, chromedp.WithExistingBrowserContext(id))
}

func (h *house) open(t testing.TB, browser context.Context, options ...chromedp.ContextOption) *browserTab {
	t.Helper()
	tab := &browserTab{t: t, h: h}
	var cancel context.CancelFunc
	tab.Context, cancel = chromedp.NewContext(browser, append(options, chromedp.WithListener(tab.listen))...)
	t.Cleanup(func() {
		cancel()
		tab.mu.Lock()
		defer tab.mu.Unlock()
		if len(tab.wrong) > 0 {
			t.Errorf("the page complained:\n%s", strings.Join(tab.wrong, "\n"))
		}
	})
	require.NoError(t, chromedp.Do(tab))
	// A browser that tells of every change of the page spends more on that than
	// on the page.
	command(tab, css.Disable, cdp.Empty{})
	command(tab, dom.Disable, cdp.Empty{})
	tab.before(watch)
	command(tab, emulation.SetFocusEmulationEnabled, emulation.SetFocusEmulationEnabledParams{Enabled: true})
	tab.size(tablet)
	return tab
}

func (tab *browserTab) listen(event any) {
	tab.mu.Lock()
	defer tab.mu.Unlock()
	complain := func(text string) {
		if !slices.ContainsFunc(tab.forgiven, func(f string) bool { return strings.Contains(text, f) }) {
			tab.wrong = append(tab.wrong, text)
		}
	}
	switch e := event.(type) {
	case *network.EventRequestWillBeSent:
		tab.asked = append(tab.asked, e.Request.URL)
	case *network.EventWebSocketCreated:
		tab.asked = append(tab.asked, e.URL)
	case *runtime.EventExceptionThrown:
		text := e.ExceptionDetails.Text
		if e.ExceptionDetails.Exception != nil {
			text += " " + e.ExceptionDetails.Exception.Description
		}
		complain(text)
	case *runtime.EventConsoleAPICalled:
		if e.Type == "error" || e.Type == "assert" {
			complain(fmt.Sprintf("console.%s", e.Type))
		}
	case *log.EventEntryAdded:
		if e.Entry.Level == log.EntryLevelError {
			complain(e.Entry.Text + " " + e.Entry.URL)
		}
	}
}

// forgive expects complaints that hold a text.
func (tab *browserTab) forgive(texts ...string) {
	tab.mu.Lock()
	defer tab.mu.Unlock()
	tab.forgiven = append(tab.forgiven, texts...)
}

func (tab *browserTab) requests() []string {
	tab.mu.Lock()
	defer tab.mu.Unlock()
	return slices.Clone(tab.asked)
}

// before has a script run in every document before its own.
func (tab *browserTab) before(script string) {
	tab.t.Helper()
	command(tab, page.AddScriptToEvaluateOnNewDocument, page.AddScriptToEvaluateOnNewDocumentParams{Source: script})
}

// watch keeps the calls of the engine that are not answered yet, and what the
// security policy refused.
const watch = `
window.watched = {
	waiting: new Map(), // worker → its calls
	get calls() { return [...this.waiting.values()].reduce((n, ids) => n + ids.size, 0); },
	refused: [],
};
addEventListener("securitypolicyviolation", (e) => watched.refused.push(e.effectiveDirective + " " + e.blockedURI));
{
	const { postMessage, terminate } = Worker.prototype;
	Worker.prototype.postMessage = function (message, ...rest) {
		if (message?.id !== undefined) {
			if (!watched.waiting.has(this)) {
				watched.waiting.set(this, new Set());
				this.addEventListener("message", ({ data }) => watched.waiting.get(this)?.delete(data.id));
				this.addEventListener("error", () => watched.waiting.delete(this));
			}
			watched.waiting.get(this).add(message.id);
		}
		return postMessage.call(this, message, ...rest);
	};
	Worker.prototype.terminate = function () {
		watched.waiting.delete(this);
		return terminate.call(this);
	};
}`

// command sends a protocol command that must succeed.
func command[P, R any](tab *browserTab, c cdp.Command[P, R], params P) R {
	tab.t.Helper()
	ctx, cancel := context.WithTimeout(tab, patience)
	defer cancel()
	result, err := chromedp.Call(ctx, c, params)
	require.NoError(tab.t, err, c.Method)
	return result
}

// run does an action that must succeed in time.
func run[T any](tab *browserTab, action chromedp.Action[T]) T {
	tab.t.Helper()
	ctx, cancel := context.WithTimeout(tab, patience)
	defer cancel()
	result, err := chromedp.Run(ctx, action)
	require.NoError(tab.t, err, "the page: %s", tab.seen())
	return result
}

// js evaluates an expression, or what a promise comes to.
func js[T any](tab *browserTab, format string, args ...any) T {
	tab.t.Helper()
	return run(tab, chromedp.Evaluate[T](script(format, args...), chromedp.EvalAwaitPromise))
}

// script puts JSON of the arguments into a script.
func script(format string, args ...any) string {
	for i, a := range args {
		text, err := json.Marshal(a)
		if err != nil {
			panic(err)
		}
		args[i] = string(text)
	}
	return fmt.Sprintf(format, args...)
}

// until waits for a condition, or for a promise of one, through reloads.
func (tab *browserTab) until(format string, args ...any) {
	tab.t.Helper()
	condition := script(format, args...)
	ctx, cancel := context.WithTimeout(tab, patience)
	defer cancel()
	look := chromedp.Evaluate[chromedp.Void](`new Promise((done) => {
		const look = async () => {
			try {
				if (await (`+condition+`)) return done();
			} catch {} // of something that is not there yet
			setTimeout(look, 10);
		};
		look();
	})`, chromedp.EvalAwaitPromise)
	_, err := chromedp.Run(ctx, look)
	for err != nil && ctx.Err() == nil {
		time.Sleep(10 * time.Millisecond) // the document that was looked at is gone
		_, err = chromedp.Run(ctx, look)
	}
	require.NoError(tab.t, err, "waited in vain for %s\nthe page: %s", condition, tab.seen())
}

// quiet waits until the engine has answered everything, where there is one, and
// the page has stood still for a moment longer than it waits between a stroke and
// a call.
func (tab *browserTab) quiet() {
	tab.t.Helper()
	js[chromedp.Void](tab, `new Promise((done) => {
		let timer;
		const again = () => {
			clearTimeout(timer);
			timer = setTimeout(() => {
				const plan = watched.dead ? null : document.querySelector("pw-plan")?.data.state;
				const behind = plan && !plan.whole && !plan.broken && plan.engine !== "failed";
				if (watched.calls > 0 || behind || (!watched.dead && document.querySelector("pw-spread [role=status], [aria-busy=true]"))) return again();
				observer.disconnect();
				done();
			}, 60);
		};
		const observer = new MutationObserver(again);
		observer.observe(document, { subtree: true, childList: true, attributes: true, characterData: true });
		again();
	})`)
}

// seen is what stands on the page, for a failed test.
func (tab *browserTab) seen() string {
	ctx, cancel := context.WithTimeout(tab, 5*time.Second)
	defer cancel()
	text, err := chromedp.Run(ctx, chromedp.Evaluate[string](`location.href + "\n" + document.body.innerText.slice(0, 1500)`))
	if err != nil {
		return err.Error()
	}
	return text
}

// visit loads an address and waits until the page is drawn.
func (tab *browserTab) visit(address string) {
	tab.t.Helper()
	run(tab, chromedp.Navigate(address))
	tab.until(`document.querySelector("h1")`)
}

func (tab *browserTab) reload() {
	tab.t.Helper()
	run(tab, chromedp.Reload())
	tab.until(`document.querySelector("h1")`)
}

// hosted and carried open the start page of either build.
func (tab *browserTab) hosted()  { tab.t.Helper(); tab.visit(tab.h.server.URL) }
func (tab *browserTab) carried() { tab.t.Helper(); tab.visit(fileURL(tab.h.file())) }

// at brings an element into sight and returns the middle of it.
func (tab *browserTab) at(selector string) (x, y float64) {
	tab.t.Helper()
	tab.until(`document.querySelector(%s)?.checkVisibility()`, selector)
	at := js[[]float64](tab, `(() => {
		const e = document.querySelector(%s);
		const seen = () => {
			const box = e.getBoundingClientRect();
			return [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
		};
		const [x, y] = seen();
		const top = document.elementFromPoint(x, y);
		if (!top || !(e.contains(top) || top.contains(e))) e.scrollIntoView({ block: "center", behavior: "instant" });
		return seen();
	})()`, selector)
	return at[0], at[1]
}

// click presses the mouse on the middle of an element; tap puts a finger there.
func (tab *browserTab) click(selector string) {
	tab.t.Helper()
	run(tab, chromedp.MouseClickXY(tab.at(selector)))
}

func (tab *browserTab) tap(selector string) {
	tab.t.Helper()
	run(tab, chromedp.TapXY(tab.at(selector)))
}

// key presses keys.
func (tab *browserTab) key(keys string, modifiers ...chromedp.Modifier) {
	tab.t.Helper()
	run(tab, chromedp.KeyEvent(keys, chromedp.KeyModifiers(modifiers...)))
}

// write puts text where the caret is.
func (tab *browserTab) write(text string) {
	tab.t.Helper()
	command(tab, input.InsertText, input.InsertTextParams{Text: text})
}

// field is the selector of a field's input.
func field(path string) string { return fmt.Sprintf("[data-field=%q]", path) }

// unfold opens the item of a long list that a field is in.
func (tab *browserTab) unfold(path string) {
	tab.t.Helper()
	end := strings.Index(path, "]")
	if end < 0 {
		return
	}
	item := fmt.Sprintf("[data-item=%q]", path[:end+1])
	tab.until(`document.querySelector(%s)`, item)
	if js[bool](tab, `document.querySelector(%s).querySelector("[aria-expanded]").ariaExpanded === "false"`, item) {
		tab.click(item + " [aria-expanded]")
	}
	tab.until(`document.querySelector(%s)`, field(path))
}

// fill types into a field in place of what stood there, and leaves it.
func (tab *browserTab) fill(path, text string) {
	tab.t.Helper()
	tab.unfold(path)
	tab.until(`document.querySelector(%s)`, field(path))
	js[chromedp.Void](tab, `{ const input = document.querySelector(%s); input.focus(); input.select(); }`, field(path))
	if text == "" {
		tab.key("\b")
	} else {
		tab.write(text)
	}
	tab.key("\t")
	tab.quiet()
}

// value is what stands in a field.
func (tab *browserTab) value(path string) string {
	tab.t.Helper()
	tab.unfold(path)
	tab.until(`document.querySelector(%s)`, field(path))
	return js[string](tab, `document.querySelector(%s).value`, field(path))
}

// texts are those of all elements that a selector finds, white space folded.
func (tab *browserTab) texts(selector string) []string {
	tab.t.Helper()
	return js[[]string](tab, `[...document.querySelectorAll(%s)].map((e) => e.textContent.replace(/\s+/g, " ").trim())`, selector)
}

// screen is a size to look at the page in.
type screen struct {
	name          string
	width, height int64
}

var (
	tablet  = screen{"tablet", 1180, 820}
	upright = screen{"upright", 820, 1180}
	phone   = screen{"phone", 390, 844}
	screens = []screen{tablet, upright, phone}
)

func (tab *browserTab) size(s screen) {
	tab.t.Helper()
	orient := chromedp.EmulatePortrait
	if s.width > s.height {
		orient = chromedp.EmulateLandscape
	}
	run(tab, chromedp.EmulateViewport(s.width, s.height, orient, chromedp.EmulateTouch, chromedp.EmulateMobile))
}
