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

// The figures of these benchmarks are medians, and what a tenth of the runs keep
// below where other guests of a shared machine may slow the rest down; ns/op would
// be that of an empty loop and is left out.
func report(b *testing.B, figures map[string]float64) {
	for b.Loop() {
	}
	b.ReportMetric(0, "ns/op")
	for unit, value := range figures {
		b.ReportMetric(value, unit)
	}
}

func median(values []float64) float64 { return below(values, 2) }

// below is what one in so many of the values keeps below.
func below(values []float64, oneIn int) float64 {
	return slices.Sorted(slices.Values(values))[len(values)/oneIn]
}

// calls is how often a plan is worked out for one figure, early how many calls
// before that are left out of it: so many it takes the browser to compile what is
// called often once more, and better. spreads is how often a spread is worked out.
const (
	calls   = 250
	early   = 120
	spreads = 24
)

// question is what a calculator is asked: options and input, in JSON.
type question struct {
	Options string `json:"options"`
	Input   string `json:"input"`
}

// callWorker asks a calculator in a worker of its own, JSON in and JSON out, the
// questions in turn, and returns the time of each call in ms: of the engine alone,
// and there and back with the answer parsed, as whoever asks has to wait.
const callWorker = `new Promise((done, failed) => {
	const worker = new Worker("timed.js");
	const name = %s, questions = %s, calls = %v;
	const times = [];
	let begun = 0;
	const ask = () => {
		begun = performance.now();
		worker.postMessage({ id: times.length, name, ...questions[times.length %% questions.length] });
	};
	worker.onerror = failed;
	worker.onmessage = ({ data }) => {
		if (!data.ready) {
			const { ok } = JSON.parse(data.reply);
			times.push([data.took, performance.now() - begun]);
			if (!ok) return failed(new Error(data.reply));
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

// took is what a call took, in ms: the engine alone, and there and back, of that
// also what a tenth of the calls kept below.
type took struct{ engine, answer, tenth float64 }

// inBrowser asks the questions in turn in Chromium. Where a round of calls is
// one of several parts, it returns for each part the median of what it took, once
// those early rounds are over, and of the first part before they were; and what
// the first call of all took.
func inBrowser(b *testing.B, h *house, name string, questions []question, parts, early, rounds int) (first, before float64, each []took) {
	h.files["timed.js"] = append([]byte(timed), h.files["worker.js"]...)
	tab := h.tab(b)
	tab.hosted()
	tab.quiet()
	times := js[[][2]float64](tab, callWorker, name, questions, parts*(early+rounds))
	of := func(part, from, to int) took {
		var engine, answer []float64
		for round := from; round < to; round++ {
			t := times[round*parts+part]
			engine, answer = append(engine, t[0]), append(answer, t[1])
		}
		return took{median(engine), median(answer), below(answer, 10)}
	}
	for part := range parts {
		each = append(each, of(part, early, early+rounds))
	}
	if early > 0 {
		before = of(0, 0, early).answer
	}
	return times[0][1], before, each
}

// native is what the first part takes here, at one desk.
func native(name string, questions []question, parts, rounds int) float64 {
	var desk catalogue.Desk
	var times []float64
	for i := range parts * rounds {
		q := questions[i%len(questions)]
		begun := time.Now()
		desk.Call(name, []byte(q.Options), []byte(q.Input))
		if i%parts == 0 {
			times = append(times, time.Since(begun).Seconds()*1000)
		}
	}
	return median(times)
}

// bothParts are the two questions that the page asks of a plan: with the open
// sheet alone in full, and right behind it with the others.
func bothParts(b *testing.B, plan, sheet string) []question {
	var reply struct {
		Stations []struct{ Key string }
	}
	require.NoError(b, json.Unmarshal(catalogue.Call("plan", nil, []byte(plan)), &reply))
	var others []string
	for _, s := range reply.Stations {
		if s.Key != sheet {
			others = append(others, s.Key)
		}
	}
	options := func(full ...string) string { return written(b, catalogue.Options{Units: "metric", Full: full}) }
	return []question{{options(sheet), plan}, {options(others...), plan}}
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
// where the other stations answer as far as they can from those. The page asks in
// two parts: ms/plan and ms/answer are until card, drawing, findings and the open
// sheet are there, by the engine alone and there and back, ms/rest what the other
// sheets take after that.
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
		name, sheet string
		plans       [2]string
	}{
		{"whole", "weight", [2]string{plan(same), written(b, examples(b)[bracket])}},
		{"thickness edited", "weight", [2]string{plan(same), plan(thicker)}},
		{"weights edited", "pour", [2]string{plan(same), plan(lighter)}},
		{"thickness edited in five sections", "weight", [2]string{plan(same, five...), plan(thicker, five...)}},
	} {
		b.Run(c.name, func(b *testing.B) {
			questions := append(bothParts(b, c.plans[0], c.sheet), bothParts(b, c.plans[1], c.sheet)...)
			first, before, each := inBrowser(b, h, "plan", questions, 2, early, calls)
			here := native("plan", questions, 2, calls)
			report(b, map[string]float64{"browser-early-ms": before, "browser-ms/plan": each[0].engine, "browser-ms/answer": each[0].answer, "browser-ms/answer-tenth": each[0].tenth, "browser-ms/rest": each[1].answer, "browser-first-ms": first, "native-ms/plan": here, "browser/native": each[0].engine / here})
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
			questions := []question{{`{"units":"metric"}`, text}}
			first, _, each := inBrowser(b, h, "spread", questions, 1, 0, spreads)
			here := native("spread", questions, 1, spreads)
			report(b, map[string]float64{"browser-ms/spread": each[0].answer, "browser-first-ms": first, "native-ms/spread": here, "browser/native": each[0].answer / here})
		})
	}
}

// From opening the one file, over file://, to the first answer on the page: of
// an example on a device that never saw it, touched on the start page as soon as
// it stands there; of a plan of one's own as it is opened again, with the last
// answers kept on the device; and of one where none are kept, so that the engine
// has to be ready first. A tab is ended before the next is opened: its engine
// would go on working beside it.
func BenchmarkBrowserReady(b *testing.B) {
	h := open(b)
	own := h.tab(b)
	own.carried()
	start := js[string](own, `location.href`)
	own.example(bracket)
	own.sheet("weight")
	own.fill("weight.solids[0].length", "150 mm")
	own.view(own.planAddress())
	own.keepsAnswers("plan")
	own.until(`document.querySelector("[data-saved=saved]")`)
	address := js[string](own, `location.href`)
	none := `{ const open = indexedDB.open; indexedDB.open = function (name, version) { if (name === "pourwright.answers") throw new Error("none is kept"); return open.call(this, name, version); }; }`
	touch := `new MutationObserver((_, observer) => {
		const example = document.querySelector('[data-example="` + relief + `"]');
		if (!example) return;
		observer.disconnect();
		example.click();
	}).observe(document, { subtree: true, childList: true });`
	fresh := func() *browserTab { return h.tab(b) }
	for _, c := range []struct {
		name, address, before string
		tab                   func() *browserTab
	}{
		{"an example", start, touch, fresh},
		{"opened again", address, "", own.another},
		{"none kept", address, none, own.another},
	} {
		b.Run(c.name, func(b *testing.B) {
			var times []float64
			for range 12 {
				tab := c.tab()
				command(tab, network.Disable, cdp.Empty{}) // which would copy the whole file
				tab.before(c.before)
				tab.before(`new MutationObserver((_, observer) => {
					if (!document.querySelector("[data-card] .card-text")) return;
					window.answered = performance.now();
					observer.disconnect();
				}).observe(document, { subtree: true, childList: true });`)
				tab.visit(c.address)
				tab.until(`window.answered`)
				times = append(times, js[float64](tab, `window.answered`))
				run(tab, chromedp.Navigate("about:blank"))
			}
			report(b, map[string]float64{"ready-ms": median(times), "ready-tenth-ms": below(times, 10), "ready-slowest-ms": slices.Max(times)})
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
