package browser

import (
	"bytes"
	"crypto/sha256"
	"encoding/base64"
	"maps"
	"net/http"
	"net/http/httptest"
	"sync"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"

	"pourwright/site"
)

// After one visit the server is closed, not only declared away: the page still
// comes up, opens an example and answers.
func TestHostedWorksWithTheServerClosed(t *testing.T) {
	t.Parallel()
	plan := examples(t)[bracket]
	h := open(t)
	server := httptest.NewServer(h.files.Handler())
	t.Cleanup(server.Close)
	tab := h.tab(t)
	tab.visit(server.URL)
	tab.until(`navigator.serviceWorker.controller?.state === "activated"`)
	server.CloseClientConnections()
	server.Close()
	_, err := server.Client().Get(server.URL)
	require.Error(t, err, "the server is still there")

	tab.reload()
	tab.example(bracket)
	tab.comes("metric", plan)
	tab.sheet("weight")
	tab.fill("weight.solids[0].length", "190 mm")
	changed := with(t, plan, "weight.solids[0].length", "190 mm")
	tab.comes("metric", changed)
	tab.until(`document.querySelector("[data-saved=saved]")`)

	address := js[string](tab, `location.href`)
	run(tab, chromedp.Navigate("about:blank"))
	tab.visit(address)
	tab.comes("metric", changed)
}

// host is a server whose files can be put in place of others.
type host struct {
	mu sync.Mutex
	http.Handler
}

func (h *host) put(files site.Files) {
	h.mu.Lock()
	defer h.mu.Unlock()
	h.Handler = files.Handler()
}

func (h *host) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	h.mu.Lock()
	now := h.Handler
	h.mu.Unlock()
	now.ServeHTTP(w, r)
}

// released is a built site of which the page says which release it is.
func released(t *testing.T, files site.Files, name string) site.Files {
	t.Helper()
	files = maps.Clone(files)
	was := files["index.html"]
	is := bytes.Replace(was, []byte("<title>"), []byte(`<meta name="release" content="`+name+`"><title>`), 1)
	require.Contains(t, string(files["sw.js"]), sha256Of(was))
	files["index.html"] = is
	files["sw.js"] = bytes.Replace(files["sw.js"], []byte(sha256Of(was)), []byte(sha256Of(is)), 1)
	return files
}

func sha256Of(content []byte) string {
	sum := sha256.Sum256(content)
	return "sha256-" + base64.StdEncoding.EncodeToString(sum[:])
}

// A new release waits until the user wants it; then it takes over and loses
// nothing. One of which a file has not reached the host yet is not taken.
func TestHostedTakesANewReleaseWhenAsked(t *testing.T) {
	t.Parallel()
	plan := examples(t)[bracket]
	h := open(t)
	site := &host{}
	site.put(h.files)
	server := httptest.NewServer(site)
	t.Cleanup(server.Close)
	tab := h.tab(t)
	tab.visit(server.URL)
	tab.until(`navigator.serviceWorker.controller?.state === "activated"`)
	tab.example(bracket)
	tab.sheet("weight")
	tab.fill("weight.solids[0].length", "190 mm")
	changed := with(t, plan, "weight.solids[0].length", "190 mm")
	update := func() {
		js[chromedp.Void](tab, `navigator.serviceWorker.getRegistration().then((r) => r.update())`)
	}

	half := released(t, h.files, "next")
	half["index.html"] = h.files["index.html"]
	site.put(half)
	tab.forgive("integrity", "ServiceWorker")
	update()
	tab.until(`navigator.serviceWorker.getRegistration().then((r) => r.active && !r.installing && !r.waiting)`)
	require.Empty(t, tab.texts("[data-notice=update]"), "half a release was taken")

	site.put(released(t, h.files, "next"))
	update()
	tab.until(`document.querySelector("[data-notice=update] button")`)
	tab.reload()
	tab.comes("metric", changed)
	require.Empty(t, tab.texts("meta[name=release]"), "the new release came unasked")
	tab.until(`document.querySelector("[data-notice=update] button")`)
	tab.click("[data-notice=update] button")
	tab.until(`document.querySelector("meta[name=release]")`)
	tab.comes("metric", changed)
}
