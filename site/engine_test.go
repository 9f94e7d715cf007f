package site

import (
	"context"
	"encoding/json"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/cdproto/log"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"

	"pourwright/calc/catalogue"
)

// tab is a page of a fresh Chromium and the complaints of its console.
type tab struct {
	context.Context
	t  *testing.T
	mu sync.Mutex
	// wrong lists console errors, uncaught exceptions and refusals of the
	// security policy.
	wrong []string
}

func openTab(t *testing.T) *tab {
	t.Helper()
	flags := append(chromedp.DefaultExecAllocatorOptions[:],
		chromedp.NoSandbox, chromedp.DisableGPU, chromedp.UserDataDir(t.TempDir()),
		chromedp.Flag("disable-quic", true), chromedp.Flag("disable-component-update", true))
	browser, stop := chromedp.NewExecAllocator(context.Background(), flags...)
	t.Cleanup(stop)
	tab := &tab{t: t}
	var cancel context.CancelFunc
	tab.Context, cancel = chromedp.NewContext(browser, chromedp.WithListener(tab.listen))
	t.Cleanup(cancel)
	require.NoError(t, chromedp.Do(tab), "Chromium does not start")
	return tab
}

func (tab *tab) listen(event any) {
	tab.mu.Lock()
	defer tab.mu.Unlock()
	switch e := event.(type) {
	case *runtime.EventExceptionThrown:
		tab.wrong = append(tab.wrong, e.ExceptionDetails.Text)
	case *log.EventEntryAdded:
		if e.Entry.Level == log.EntryLevelError {
			tab.wrong = append(tab.wrong, e.Entry.Text)
		}
	}
}

func (tab *tab) complaints() []string {
	tab.mu.Lock()
	defer tab.mu.Unlock()
	return append([]string(nil), tab.wrong...)
}

func (tab *tab) within(limit time.Duration, steps ...chromedp.Action[chromedp.Void]) {
	tab.t.Helper()
	ctx, cancel := context.WithTimeout(tab, limit)
	defer cancel()
	require.NoError(tab.t, chromedp.Do(ctx, steps...), "console: %v", tab.complaints())
}

// state waits for the bare page to say that the engine is ready, or has failed.
func (tab *tab) state() string {
	tab.t.Helper()
	tab.within(30*time.Second, chromedp.Poll[chromedp.Void](`document.title !== "Pourwright"`))
	title, err := chromedp.Run(tab, chromedp.Title())
	require.NoError(tab.t, err)
	return title
}

// answersLikeHere asks the engine in the browser, and the same Go code here,
// for the list and for the first example plan with its working.
func (tab *tab) answersLikeHere() {
	tab.t.Helper()
	require.Equal(tab.t, "ready", tab.state(), "console: %v", tab.complaints())
	plans, err := examples("..")
	require.NoError(tab.t, err)
	for _, q := range [][3]string{{"list", `{"units":"us"}`, "{}"}, {"plan", `{"working":true}`, string(plans[0].Plan)}, {"no such", "", ""}} {
		ask, err := json.Marshal(q)
		require.NoError(tab.t, err)
		got, err := chromedp.Run(tab, chromedp.Evaluate[string]("ask(..."+string(ask)+")", chromedp.EvalAwaitPromise))
		require.NoError(tab.t, err)
		require.Equal(tab.t, string(catalogue.Call(q[0], []byte(q[1]), []byte(q[2]))), got)
	}
}

// refused is whether the page's policy forbids a request to elsewhere.
const refused = `new Promise((yes) => {
	addEventListener("securitypolicyviolation", (e) => yes(e.effectiveDirective));
	fetch("http://127.0.0.1:9/elsewhere").catch(() => setTimeout(() => yes("not refused"), 2000));
})`

// The real page comes up, hosted and carried, without a complaint.
func TestPageComesUp(t *testing.T) {
	files, err := whole()
	require.NoError(t, err)
	server := httptest.NewServer(files.Handler())
	t.Cleanup(server.Close)
	file := filepath.Join(t.TempDir(), Carried)
	require.NoError(t, os.WriteFile(file, files[Carried], 0o644))
	for _, address := range []string{server.URL, "file://" + file} {
		tab := openTab(t)
		tab.within(30*time.Second, chromedp.Navigate(address),
			chromedp.Poll[chromedp.Void](`document.querySelector("h1")?.textContent.length > 3`), chromedp.Sleep(time.Second))
		require.Empty(t, tab.complaints(), address)
	}
}

func TestEngineRunsHosted(t *testing.T) {
	server := httptest.NewServer(bareFiles(t).Handler())
	t.Cleanup(server.Close)
	tab := openTab(t)
	tab.within(30*time.Second, chromedp.Navigate(server.URL))
	tab.answersLikeHere()
	require.Empty(t, tab.complaints())
	directive, err := chromedp.Run(tab, chromedp.Evaluate[string](refused, chromedp.EvalAwaitPromise))
	require.NoError(t, err)
	require.Equal(t, "connect-src", directive)
}

func TestEngineRunsCarried(t *testing.T) {
	file := filepath.Join(t.TempDir(), "a copy on a stick.html")
	require.NoError(t, os.WriteFile(file, bareFiles(t)[Carried], 0o644))
	tab := openTab(t)
	tab.within(30*time.Second, chromedp.Navigate("file://"+strings.ReplaceAll(file, " ", "%20")))
	tab.answersLikeHere()
	require.Empty(t, tab.complaints())
	directive, err := chromedp.Run(tab, chromedp.Evaluate[string](refused, chromedp.EvalAwaitPromise))
	require.NoError(t, err)
	require.Equal(t, "connect-src", directive)
}

// The server is closed, not only declared away: the next visit must do without.
func TestHostedWorksWithoutServer(t *testing.T) {
	server := httptest.NewServer(bareFiles(t).Handler())
	t.Cleanup(server.Close)
	tab := openTab(t)
	tab.within(30*time.Second, chromedp.Navigate(server.URL))
	tab.answersLikeHere()
	tab.within(30*time.Second, chromedp.Poll[chromedp.Void](`navigator.serviceWorker.controller !== null`))
	server.CloseClientConnections()
	server.Close()
	for _, path := range []string{"/", "/index.html", "/?from=home"} {
		tab.within(30*time.Second, chromedp.Navigate("about:blank"), chromedp.Navigate(server.URL+path))
		tab.answersLikeHere()
	}
	require.Empty(t, tab.complaints())
}

// An engine that cannot be had is told to the page, which would otherwise wait
// for ever.
func TestMissingEngineIsAnError(t *testing.T) {
	files := Files{}
	for name, content := range bareFiles(t) {
		files[name] = content
	}
	delete(files, "pourwright.wasm")
	server := httptest.NewServer(files.Handler())
	t.Cleanup(server.Close)
	tab := openTab(t)
	tab.within(30*time.Second, chromedp.Navigate(server.URL))
	require.Contains(t, tab.state(), "failed:")
}
