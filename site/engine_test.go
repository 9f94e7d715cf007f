package site

import (
	"context"
	"encoding/json"
	"maps"
	"net/http"
	"net/http/httptest"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"pourwright/calc/catalogue"
	"pourwright/calc/reply"
)

// chromium starts a browser. The whole page is tested in package browser; here
// it is only the ways in which the engine gets to a worker.
func chromium(t *testing.T) context.Context {
	t.Helper()
	if _, err := exec.LookPath("chromium"); err != nil {
		if os.Getenv("CI") != "" {
			t.Fatal("Chromium is missing: apt-get install chromium")
		}
		t.Skip("NOT CHECKED: the engine was run in no browser, for Chromium is missing: apt-get install chromium")
	}
	flags := append(chromedp.DefaultExecAllocatorOptions[:],
		chromedp.ExecPath("chromium"), chromedp.NoSandbox, chromedp.DisableGPU, chromedp.UserDataDir(t.TempDir()),
		chromedp.Flag("disable-quic", true), chromedp.Flag("disable-component-update", true))
	allocator, stop := chromedp.NewExecAllocator(context.Background(), flags...)
	t.Cleanup(stop)
	browser, cancel := chromedp.NewContext(allocator)
	t.Cleanup(cancel)
	require.NoError(t, chromedp.Do(browser), "Chromium does not start")
	return browser
}

// visit opens the bare page and waits for it to say that the engine is ready,
// or has failed.
func visit(t *testing.T, browser context.Context, address string) (context.Context, string) {
	t.Helper()
	tab, cancel := chromedp.NewContext(browser)
	t.Cleanup(cancel)
	require.NoError(t, chromedp.Do(tab))
	bounded, stop := context.WithTimeout(tab, time.Minute)
	defer stop()
	require.NoError(t, chromedp.Do(bounded, chromedp.Navigate(address), chromedp.Poll[chromedp.Void](`document.title !== "Pourwright"`)), address)
	title, err := chromedp.Run(bounded, chromedp.Title())
	require.NoError(t, err)
	return tab, title
}

var number = regexp.MustCompile(`-?\d+\.\d+(e[+-]\d+)?`)

// requireSame compares two replies byte for byte, but for the last digits of
// unrounded numbers: mathematical functions that this machine has in assembly
// round otherwise than the same functions in Go.
func requireSame(t *testing.T, want, got string) {
	t.Helper()
	require.Equal(t, number.ReplaceAllString(want, "n"), number.ReplaceAllString(got, "n"))
	theirs := number.FindAllString(got, -1)
	for i, text := range number.FindAllString(want, -1) {
		if text == theirs[i] {
			continue
		}
		a, err := strconv.ParseFloat(text, 64)
		require.NoError(t, err)
		b, err := strconv.ParseFloat(theirs[i], 64)
		require.NoError(t, err)
		require.InEpsilon(t, a, b, 1e-9)
	}
}

// The engine in a worker of the hosted and of the carried page answers what
// the same Go code answers here, in ASCII, and the checks arrive whole. An engine
// that cannot be had is told to the page, which would otherwise wait for ever.
func TestEngine(t *testing.T) {
	browser := chromium(t)
	files := bareFiles(t)
	file := filepath.Join(t.TempDir(), "a copy on a stick.html")
	require.NoError(t, os.WriteFile(file, files[Carried], 0o644))
	server := httptest.NewServer(files.Handler())
	t.Cleanup(server.Close)
	mistaken := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		_, err := w.Write(files[Carried])
		assert.NoError(t, err)
	}))
	t.Cleanup(mistaken.Close)
	plans, err := examples("..")
	require.NoError(t, err)
	for name, address := range map[string]string{
		"hosted": server.URL, "carried": "file://" + file,
		"carried, from a host": server.URL + "/" + Carried, "carried, from a host that calls it UTF-8": mistaken.URL,
	} {
		t.Run(name, func(t *testing.T) {
			tab, state := visit(t, browser, address)
			require.Equal(t, "ready", state)
			for _, q := range [][3]string{{"list", `{"units":"us"}`, "{}"}, {"plan", `{"working":true}`, string(plans[0].Plan)}, {"no such", "", ""}} {
				ask, err := json.Marshal(q)
				require.NoError(t, err)
				got, err := chromedp.Run(tab, chromedp.Evaluate[string]("ask(..."+string(ask)+")", chromedp.EvalAwaitPromise))
				require.NoError(t, err)
				requireSame(t, string(reply.ASCII(nil, catalogue.Call(q[0], []byte(q[1]), []byte(q[2])))), got)
			}
			got, err := chromedp.Run(tab, chromedp.Evaluate[string](`aside("proofs")`, chromedp.EvalAwaitPromise))
			require.NoError(t, err)
			require.JSONEq(t, string(files["proofs.json"]), got)
			for _, units := range []string{"metric", "us"} {
				got, err := chromedp.Run(tab, chromedp.Evaluate[string](`calculators("`+units+`")`, chromedp.EvalAwaitPromise))
				require.NoError(t, err)
				list := string(catalogue.Call("list", []byte(`{"units":"`+units+`"}`), nil))
				require.JSONEq(t, list, `{"ok":true,"calculators":`+got+`}`)
			}
		})
	}
	t.Run("missing", func(t *testing.T) {
		without := maps.Clone(files)
		delete(without, "pourwright.wasm")
		server := httptest.NewServer(without.Handler())
		t.Cleanup(server.Close)
		_, state := visit(t, browser, server.URL)
		require.Contains(t, state, "failed:")
	})
}
