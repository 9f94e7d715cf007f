package browser

import (
	"context"
	"fmt"
	"net/http/httptest"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/chromedp/chromedp"

	"pourwright/site"
)

// house is what all tests of the package share: one build, one server, one
// browser.
type house struct {
	files   site.Files
	server  *httptest.Server
	dir     string // of the carried file
	browser context.Context
}

// leave undoes what raise did, last thing first.
var leave []func()

// raise builds the site and starts the browser, once.
var raise = sync.OnceValues(func() (*house, error) {
	files, err := site.Build()
	if err != nil {
		return nil, err
	}
	h := &house{files: files}
	h.dir, err = os.MkdirTemp("", "pourwright-browser")
	if err != nil {
		return nil, err
	}
	leave = append(leave, func() { os.RemoveAll(h.dir) })
	if err := os.WriteFile(h.file(), files[site.Carried], 0o644); err != nil {
		return nil, err
	}
	h.server = httptest.NewServer(files.Handler())
	leave = append(leave, h.server.Close)
	browser, stop, err := startBrowser(filepath.Join(h.dir, "profile"))
	if err != nil {
		return nil, err
	}
	h.browser = browser
	leave = append(leave, stop)
	return h, nil
})

func (h *house) file() string { return filepath.Join(h.dir, site.Carried) }

// startBrowser starts a Chromium of its own, keeping its data in profile.
func startBrowser(profile string, more ...chromedp.ExecAllocatorOption) (context.Context, func(), error) {
	flags := append(chromedp.DefaultExecAllocatorOptions[:],
		chromedp.ExecPath(chromium()), chromedp.UserDataDir(profile), chromedp.NoSandbox, chromedp.DisableGPU,
		chromedp.Flag("disable-quic", true), chromedp.Flag("disable-component-update", true),
		chromedp.Flag("disable-features", "Translate,AutofillServerCommunication,OptimizationHints"))
	allocator, stop := chromedp.NewExecAllocator(context.Background(), append(flags, more...)...)
	browser, cancel := chromedp.NewContext(allocator)
	if err := chromedp.Do(browser); err != nil {
		cancel()
		stop()
		return nil, nil, fmt.Errorf("Chromium does not start: %w", err)
	}
	return browser, func() {
		chromedp.Cancel(browser) // asks it to close, so that it writes its profile
		cancel()
		stop()
	}, nil
}

var chromium = sync.OnceValue(func() string {
	for _, name := range []string{"chromium", "chromium-browser", "google-chrome"} {
		if path, err := exec.LookPath(name); err == nil {
			return path
		}
	}
	return ""
})

// open raises the house, or skips the test for want of a browser.
func open(t testing.TB) *house {
	t.Helper()
	if chromium() == "" {
		lacking(t, "a browser: install chromium (Debian: apt-get install chromium)")
	}
	h, err := raise()
	if err != nil {
		t.Fatal(err)
	}
	return h
}

// lacking skips a test for a tool that is not installed; where CI is set
// nothing may be skipped.
func lacking(t testing.TB, what string) {
	t.Helper()
	if os.Getenv("CI") != "" {
		t.Fatalf("this test needs %s", what)
	}
	t.Skipf("NOT TESTED, this test needs %s", what)
}

// axe is the source of axe-core, from site/node_modules.
func axe(t testing.TB) string {
	t.Helper()
	source, err := os.ReadFile(filepath.Join("..", "node_modules", "axe-core", "axe.min.js"))
	if err != nil {
		lacking(t, "axe-core: run npm ci in site/")
	}
	return string(source)
}

func TestMain(m *testing.M) {
	status := m.Run()
	for _, undo := range slices.Backward(leave) {
		undo()
	}
	os.Exit(status)
}

// fileURL is the address of a file on this machine.
func fileURL(path string) string { return "file://" + strings.ReplaceAll(path, " ", "%20") }
