package browser

import (
	"io"
	"net/http"
	"net/http/httptest"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

// gate is a proxy that all requests of a browser go through, those of workers
// and to this machine as well. It lets own pass and notes what else is wanted.
type gate struct {
	own string // host and port
	mu  sync.Mutex
	let []string
	// kept lists what was asked of others, and was refused.
	kept []string
}

func (g *gate) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	g.mu.Lock()
	mine := r.Method == http.MethodGet && r.Host == g.own
	if mine {
		g.let = append(g.let, r.URL.Path)
	} else {
		g.kept = append(g.kept, r.Method+" "+r.URL.String()+" for "+r.Host)
	}
	g.mu.Unlock()
	if !mine {
		http.Error(w, "nothing goes out", http.StatusForbidden)
		return
	}
	ask, err := http.NewRequest(http.MethodGet, "http://"+g.own+r.URL.RequestURI(), nil)
	if err != nil {
		http.Error(w, err.Error(), http.StatusBadGateway)
		return
	}
	ask.Header = r.Header.Clone()
	response, err := http.DefaultTransport.RoundTrip(ask)
	if err != nil {
		http.Error(w, err.Error(), http.StatusBadGateway)
		return
	}
	defer response.Body.Close()
	for name, values := range response.Header {
		w.Header()[name] = values
	}
	w.WriteHeader(response.StatusCode)
	io.Copy(w, response.Body)
}

func (g *gate) seen() (let, kept []string) {
	g.mu.Lock()
	defer g.mu.Unlock()
	return append([]string(nil), g.let...), append([]string(nil), g.kept...)
}

// Through a full round, no request goes anywhere but to the page's own files:
// as the page's network events have it, and as a proxy in front of the whole
// browser has it.
func TestNoRequestLeavesThePage(t *testing.T) {
	t.Parallel()
	h := open(t)
	g := &gate{own: strings.TrimPrefix(h.server.URL, "http://")}
	proxy := httptest.NewServer(g)
	t.Cleanup(proxy.Close)
	browser, stop, err := startBrowser(filepath.Join(t.TempDir(), "profile"), chromedp.ProxyServer(proxy.URL), chromedp.Flag("proxy-bypass-list", "<-loopback>"))
	require.NoError(t, err)
	t.Cleanup(stop)

	round := func(tab *browserTab) {
		tab.example(bracket)
		tab.sheet("weight")
		tab.fill("weight.solids[0].length", "190 mm")
		tab.click("[data-sheet] .answer-button")
		tab.until(`document.querySelector("pw-working [data-step]")`)
		tab.click(`[data-units="us"]`)
		tab.quiet()
		tab.view(tab.planAddress() + "/handling")
		tab.view(tab.planAddress() + "/print")
		run(tab, chromedp.PrintToPDF())
		tab.view("#/sources")
		tab.view("#/settings")
		tab.click(`[data-setting="theme=furnace"]`)
		tab.view("#/")
		tab.reload()
	}
	t.Run("carried", func(t *testing.T) {
		tab := h.open(t, browser, chromedp.WithNewBrowserContext())
		tab.carried()
		round(tab)
		for _, url := range tab.requests() {
			require.True(t, url == fileURL(h.file()) || strings.HasPrefix(url, "blob:null/") || strings.HasPrefix(url, "blob:file:") || strings.HasPrefix(url, "data:"), url)
		}
		let, _ := g.seen()
		require.Empty(t, let, "the one file asked for something")
	})
	t.Run("hosted", func(t *testing.T) {
		tab := h.open(t, browser)
		tab.hosted()
		tab.until(`navigator.serviceWorker.controller?.state === "activated"`)
		round(tab)
		let, _ := g.seen()
		require.Contains(t, let, "/pourwright.wasm", "the gate does not see what a worker asks for")
		require.Contains(t, let, "/sw.js")
		for _, url := range tab.requests() {
			require.True(t, strings.HasPrefix(url, h.server.URL+"/") || strings.HasPrefix(url, "blob:"+h.server.URL) || strings.HasPrefix(url, "data:"), url)
		}
	})
	_, kept := g.seen()
	kept = slices.DeleteFunc(kept, housekeeping)
	require.Empty(t, kept, "somebody wanted to go out")
}

// housekeeping is what a Chromium asks of its maker by itself, whatever page is
// open: the time, updates, sign-in. No page could: the policy's own test shows
// that, and the page's events are held to its own files without exception.
func housekeeping(request string) bool {
	host, _, _ := strings.Cut(request[strings.LastIndex(request, " ")+1:], ":")
	return strings.HasSuffix(host, ".google.com") || strings.HasSuffix(host, ".googleapis.com") || strings.HasSuffix(host, ".gvt1.com")
}
