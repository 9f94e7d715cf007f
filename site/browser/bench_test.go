package browser

import (
	"encoding/json"
	"os"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"

	"pourwright/calc/catalogue"
	"pourwright/site"
)

// The figures of these benchmarks are medians; ns/op would be that of an empty
// loop and is left out.
func report(b *testing.B, figures map[string]float64) {
	for b.Loop() {
	}
	b.ReportMetric(0, "ns/op")
	for unit, value := range figures {
		b.ReportMetric(value, unit)
	}
}

func median(values []float64) float64 {
	return slices.Sorted(slices.Values(values))[len(values)/2]
}

// calls is how often a plan is worked out for one figure, spreads how often a
// spread.
const (
	calls   = 250
	spreads = 24
)

// callWorker asks a calculator in a worker of its own, JSON in and JSON out,
// with the inputs in turn, and returns the time of each call in ms: of the engine
// alone, and there and back, as whoever asks has to wait.
const callWorker = `new Promise((done, failed) => {
	const worker = new Worker("timed.js");
	const name = %s, inputs = %s, calls = %v;
	const times = [];
	let begun = 0;
	const ask = () => {
		begun = performance.now();
		worker.postMessage({ id: times.length, name, options: '{"units":"metric"}', input: inputs[times.length %% inputs.length] });
	};
	worker.onerror = failed;
	worker.onmessage = ({ data }) => {
		if (!data.ready) {
			times.push([data.took, performance.now() - begun]);
			if (!data.reply.startsWith('{"ok":true')) return failed(new Error(data.reply));
		}
		if (times.length < calls) return ask();
		worker.terminate();
		done(times);
	};
})`

// timed goes before the worker's script and has it say what each call took.
const timed = `
let call, took;
Object.defineProperty(globalThis, "pourwrightCall", { set: (real) => (call = real), get: () => (...question) => {
	const begun = performance.now();
	const reply = call(...question);
	took = performance.now() - begun;
	return reply;
} });
const post = postMessage;
globalThis.postMessage = (message) => post({ ...message, took });
`

// figures are what inBrowser measured, in ms: the first call of all, and the
// median ones of the engine alone and there and back.
type figures struct{ first, engine, answer float64 }

func inBrowser(b *testing.B, h *house, name string, inputs []string, calls int) figures {
	h.files["timed.js"] = append([]byte(timed), h.files["worker.js"]...)
	tab := h.tab(b)
	tab.hosted()
	tab.quiet()
	times := js[[][2]float64](tab, callWorker, name, inputs, calls)
	var engine, answer []float64
	for _, t := range times {
		engine, answer = append(engine, t[0]), append(answer, t[1])
	}
	return figures{answer[0], median(engine), median(answer)}
}

// native is the same here, at one desk.
func native(name string, inputs []string, calls int) float64 {
	var desk catalogue.Desk
	var times []float64
	for i := range calls {
		begun := time.Now()
		desk.Call(name, []byte(`{"units":"metric"}`), []byte(inputs[i%len(inputs)]))
		times = append(times, time.Since(begun).Seconds()*1000)
	}
	return median(times)
}

func written(b *testing.B, plan any) string {
	text, err := json.Marshal(plan)
	require.NoError(b, err)
	return string(text)
}

// A whole plan by the same code in Chromium's WASM and natively, in one run:
// every station of two plans in turn, so that nothing can be remembered; one
// plan with its casting's thickness changed to and fro, on which nearly every
// station hangs, and with the weights on the cope changed, on which few do; and
// with the thickness changed in a plan of the five first calculators' sections
// alone (pattern, weight, pouring time, ladle, handling, with metal and mould),
// where the other stations answer as far as they can from those.
func BenchmarkBrowserPlan(b *testing.B) {
	h := open(b)
	plan := func(change func(section func(key string) map[string]any), keep ...string) string {
		p := examples(b)[relief]
		for key := range p {
			if len(keep) > 0 && !slices.Contains(keep, key) {
				delete(p, key)
			}
		}
		change(func(key string) map[string]any { return p[key].(map[string]any) })
		return written(b, p)
	}
	same := func(func(string) map[string]any) {}
	thicker := func(section func(string) map[string]any) {
		section("weight")["solids"].([]any)[0].(map[string]any)["thickness"] = "11 mm"
	}
	lighter := func(section func(string) map[string]any) { section("pour")["weights"] = "250 kg" }
	five := []string{"format", "title", "metal", "pattern", "weight", "mould", "pour", "ladle", "handling"}
	for _, c := range []struct {
		name   string
		inputs []string
	}{
		{"whole", []string{plan(same), written(b, examples(b)[bracket])}},
		{"thickness edited", []string{plan(same), plan(thicker)}},
		{"weights edited", []string{plan(same), plan(lighter)}},
		{"thickness edited in five sections", []string{plan(same, five...), plan(thicker, five...)}},
	} {
		b.Run(c.name, func(b *testing.B) {
			there := inBrowser(b, h, "plan", c.inputs, calls)
			here := native("plan", c.inputs, calls)
			report(b, map[string]float64{"browser-ms/plan": there.engine, "browser-ms/answer": there.answer, "browser-first-ms": there.first, "native-ms/plan": here, "browser/native": there.engine / here})
		})
	}
}

// The spread of a plan with inputs that stray.
func BenchmarkBrowserSpread(b *testing.B) {
	h := open(b)
	for name, plan := range examples(b) {
		text := written(b, plan)
		if !strings.Contains(text, "±") {
			continue
		}
		b.Run(name, func(b *testing.B) {
			there := inBrowser(b, h, "spread", []string{text}, spreads)
			here := native("spread", []string{text}, spreads)
			report(b, map[string]float64{"browser-ms/spread": there.answer, "browser-first-ms": there.first, "native-ms/spread": here, "browser/native": there.answer / here})
		})
	}
}

// From opening the one file, over file://, to the first answer on the page, of a
// saved plan: as it is opened again, with the last answers kept on the device;
// and where none are kept, so that the engine has to be ready first. A tab is
// ended before the next is opened: its engine would go on working beside it.
func BenchmarkBrowserReady(b *testing.B) {
	h := open(b)
	first := h.tab(b)
	first.carried()
	first.example(bracket)
	first.keepsAnswers("plan")
	first.until(`document.querySelector("[data-saved=saved]")`)
	address := js[string](first, `location.href`)
	for name, before := range map[string]string{
		"opened again":  ``,
		"opened afresh": `{ const open = indexedDB.open; indexedDB.open = function (name, version) { if (name === "pourwright.answers") throw new Error("none is kept"); return open.call(this, name, version); }; }`,
	} {
		b.Run(name, func(b *testing.B) {
			var times []float64
			for range 12 {
				tab := first.another()
				command(tab, network.Disable, cdp.Empty{}) // which would copy the whole file
				tab.before(before)
				tab.before(`new MutationObserver((_, observer) => {
					if (!document.querySelector("[data-card] .card-text")) return;
					window.answered = performance.now();
					observer.disconnect();
				}).observe(document, { subtree: true, childList: true });`)
				tab.visit(address)
				tab.until(`window.answered`)
				times = append(times, js[float64](tab, `window.answered`))
				run(tab, chromedp.Navigate("about:blank"))
			}
			report(b, map[string]float64{"ready-ms": median(times), "ready-slowest-ms": slices.Max(times)})
		})
	}
}

// From the touch that opens an example on the start page, two seconds after that
// was drawn, to its first answer.
func BenchmarkBrowserExample(b *testing.B) {
	h := open(b)
	var times []float64
	for range 8 {
		tab := h.tab(b)
		tab.carried()
		tab.until(`document.querySelector("[data-example]")`)
		time.Sleep(2 * time.Second)
		times = append(times, js[float64](tab, `new Promise((done) => {
			const begun = performance.now();
			new MutationObserver(() => document.querySelector("[data-card] .card-text") && done(performance.now() - begun)).observe(document, { subtree: true, childList: true });
			document.querySelector(%s).click();
		})`, `[data-example="`+relief+`"]`))
		run(tab, chromedp.Navigate("about:blank"))
	}
	report(b, map[string]float64{"answer-ms": median(times), "answer-slowest-ms": slices.Max(times)})
}

// What a first visit and the one file weigh.
func BenchmarkBrowserSize(b *testing.B) {
	h := open(b)
	content, err := os.ReadFile(h.file())
	require.NoError(b, err)
	report(b, map[string]float64{
		"file-MB": float64(len(content)) / 1e6,
		"wasm-MB": float64(len(h.files["pourwright.wasm"])) / 1e6,
		"js-kB":   float64(len(h.files["pourwright.js"])) / 1e3,
		"css-kB":  float64(len(h.files["pourwright.css"])) / 1e3,
	})
	require.Equal(b, h.files[site.Carried], content)
}

// How soon the page has drawn a slider's next place: what the page itself needs,
// and the engine, over a run of moves.
func BenchmarkBrowserSlider(b *testing.B) {
	h := open(b)
	for _, lesson := range []string{"freeze", "pour", "ladleheat", "filling", "show/2-tall-sprue"} {
		b.Run(lesson, func(b *testing.B) {
			tab := h.tab(b)
			tab.hosted()
			tab.lesson(lesson)
			times := js[[]float64](tab, `(async () => {
				const range = document.querySelector(".class-slider [type=range]");
				const curve = () => document.querySelector("[data-now]").textContent + document.querySelector(".class-slider .class-typed").value + document.querySelector(".chart-picture").outerHTML;
				const times = [];
				const step = (range.max - range.min) / 40;
				for (let i = 0; i < 12; i++) {
					const was = curve();
					const since = performance.now();
					range.value = Number(range.min) + step * (10 + i);
					range.dispatchEvent(new Event("input", { bubbles: true }));
					while (curve() === was && performance.now() - since < 5000) await new Promise((done) => setTimeout(done, 1));
					times.push(performance.now() - since);
				}
				return times;
			})()`)
			report(b, map[string]float64{"redrawn-ms": median(times)})
		})
	}
}
