package browser

import (
	"encoding/json"
	"os"
	"slices"
	"testing"
	"time"

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
	slices.Sort(values)
	return values[len(values)/2]
}

// calls is how often a plan is worked out for one figure.
const calls = 250

// callWorker works a plan out in a worker of its own, JSON in and JSON out, and
// returns the time of each call in ms, as whoever asks has to wait.
const callWorker = `new Promise((done, failed) => {
	const worker = new Worker("worker.js");
	const times = [];
	let begun = 0;
	const ask = () => {
		begun = performance.now();
		worker.postMessage({ id: times.length, name: "plan", options: '{"units":"metric"}', input: %s });
	};
	worker.onerror = failed;
	worker.onmessage = ({ data }) => {
		if (!data.ready) {
			times.push(performance.now() - begun);
			if (!data.reply.startsWith('{"ok":true')) return failed(new Error(data.reply));
		}
		if (times.length < %v) return ask();
		worker.terminate();
		done(times);
	};
})`

// A whole plan, every station and the drawing, by the same code in Chromium's
// WASM and natively, in one run.
func BenchmarkBrowserPlan(b *testing.B) {
	h := open(b)
	for name, plan := range examples(b) {
		b.Run(name, func(b *testing.B) {
			question, err := json.Marshal(plan)
			require.NoError(b, err)
			tab := h.tab(b)
			tab.hosted()
			tab.quiet()
			inBrowser := js[[]float64](tab, callWorker, string(question), calls)
			first := inBrowser[0]
			var native []float64
			for range calls {
				begun := time.Now()
				catalogue.Call("plan", []byte(`{"units":"metric"}`), question)
				native = append(native, time.Since(begun).Seconds()*1000)
			}
			here, there := median(inBrowser), median(native)
			report(b, map[string]float64{"browser-ms/plan": here, "browser-first-ms": first, "native-ms/plan": there, "browser/native": here / there})
		})
	}
}

// From opening the one file, over file://, to the first answer on the page: a
// saved plan, in a new tab each time.
func BenchmarkBrowserReady(b *testing.B) {
	h := open(b)
	first := h.tab(b)
	first.carried()
	first.example(bracket)
	first.until(`document.querySelector("[data-saved=saved]")`)
	address := js[string](first, `location.href`)
	var times []float64
	for range 12 {
		tab := first.another()
		tab.before(`new MutationObserver((_, observer) => {
			if (!document.querySelector("[data-card] .card-text")) return;
			window.answered = performance.now();
			observer.disconnect();
		}).observe(document, { subtree: true, childList: true });`)
		tab.visit(address)
		tab.until(`window.answered`)
		times = append(times, js[float64](tab, `window.answered`))
	}
	slowest := slices.Max(times)
	report(b, map[string]float64{"ready-ms": median(times), "ready-slowest-ms": slowest})
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
