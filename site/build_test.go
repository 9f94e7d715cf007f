package site

import (
	"bytes"
	"compress/gzip"
	"encoding/binary"
	"encoding/json"
	"io"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"
	"unicode/utf16"

	"github.com/stretchr/testify/require"
)

// bare is a build of the smallest page that uses the engine, so that these
// tests speak of the build alone. It is built once for all of them.
var bare = sync.OnceValues(func() (Files, error) {
	dir, err := os.MkdirTemp("", "page")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(dir)
	if err := layBarePage(dir); err != nil {
		return nil, err
	}
	files, err := whole()
	if err != nil {
		return nil, err
	}
	files, carried, err := build("..", dir, files["pourwright.wasm"])
	if err != nil {
		return nil, err
	}
	files[Carried], err = carried()
	return files, err
})

// whole is the build of the real page.
var whole = sync.OnceValues(Build)

func layBarePage(dir string) error {
	from := map[string]string{"app/main.js": "testdata/main.js"}
	for _, name := range []string{"index.html", "icon.svg", "manifest.webmanifest", "notices.txt", "app/data.js", "app/engine-source.js", "app/blocks.js", "app/loader.js", "app/unpack.js", "app/worker.js", "app/sw.js"} {
		from[name] = name
	}
	if err := os.MkdirAll(filepath.Join(dir, "app"), 0o755); err != nil {
		return err
	}
	for name, source := range from {
		content, err := os.ReadFile(source)
		if err != nil {
			return err
		}
		if err := os.WriteFile(filepath.Join(dir, name), content, 0o644); err != nil {
			return err
		}
	}
	return os.WriteFile(filepath.Join(dir, "app", "main.css"), []byte("body { color: #222; }\n"), 0o644)
}

func bareFiles(t *testing.T) Files {
	t.Helper()
	files, err := bare()
	require.NoError(t, err)
	return files
}

// The same tree gives the same bytes, whichever folder it stands in.
func TestBuildRepeats(t *testing.T) {
	first, err := whole()
	require.NoError(t, err)
	second, err := Build()
	require.NoError(t, err)
	require.NotEmpty(t, first)
	require.Len(t, second, len(first))
	for name, content := range first {
		require.Equal(t, digest(content), digest(second[name]), name)
	}
	here, err := os.Getwd()
	require.NoError(t, err)
	for name, content := range first {
		require.False(t, bytes.Contains(content, []byte(filepath.Dir(here)+"/")), "%s names the folder it was built in", name)
	}
}

func TestBuildHoldsAll(t *testing.T) {
	files := bareFiles(t)
	for _, name := range []string{"index.html", "pourwright.js", "pourwright.css", "pourwright.wasm", "worker.js", "sw.js", "proofs.json", "calculators.json", "calculators-us.json", "icon.svg", "manifest.webmanifest", "notices.txt", Carried} {
		require.NotEmpty(t, files[name], name)
	}
	for _, page := range []string{string(files["index.html"]), text(files[Carried])} {
		require.NotContains(t, page, "{{HEAD}}")
		require.NotContains(t, page, "{{TAIL}}")
		require.NotContains(t, page, " style=")
	}
	require.NotContains(t, string(files["index.html"]), "<!--")
	require.Contains(t, string(files["index.html"]), `<meta charset="utf-8">`)
	require.NotContains(t, text(files[Carried]), "<meta charset", "the one file says by its first letter how it is coded")
	require.NotRegexp(t, `(src|href)="[^d]`, text(files[Carried]), "the one file points at a file beside it")
	require.Contains(t, text(files[Carried]), string(files["notices.txt"]))
	for _, name := range []string{"pourwright.js", "pourwright.css", "worker.js", "pourwright.wasm", "proofs.json", "calculators-us.json", "icon.svg", "manifest.webmanifest"} {
		require.Contains(t, string(files["sw.js"]), digest(files[name]), "the service worker does not know %s", name)
	}
	require.Contains(t, string(files["sw.js"]), digest(files["index.html"]))
}

// text is the carried file as a browser reads it.
func text(file []byte) string {
	var units []uint16
	for pair := range slices.Chunk(file, 2) {
		units = append(units, binary.LittleEndian.Uint16(pair))
	}
	return string(utf16.Decode(units))
}

// The page gets the example plans and the checks with what came out.
func TestPageData(t *testing.T) {
	plans, err := examples("..")
	require.NoError(t, err)
	require.NotEmpty(t, plans)
	for _, e := range plans {
		require.True(t, json.Valid(e.Plan), e.File)
	}
	checks, err := proofs("..")
	require.NoError(t, err)
	require.NotEmpty(t, checks)
	for _, c := range checks {
		require.NotEmpty(t, c.Source)
		require.True(t, c.Agrees, "%s: printed %s, got %s", c.Source, c.Expected, c.Got)
	}
}

func TestWrite(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "new", "dist")
	files := Files{"a.txt": []byte("one"), "deep/b.txt": []byte("two")}
	require.NoError(t, files.Write(dir))
	for name, content := range files {
		got, err := os.ReadFile(filepath.Join(dir, filepath.FromSlash(name)))
		require.NoError(t, err)
		require.Equal(t, content, got)
	}
}

// What is wrong with the page's source is said with its place.
func TestBuildSaysWhatIsWrong(t *testing.T) {
	lay := func(t *testing.T, change func(dir string) error) error {
		dir := t.TempDir()
		require.NoError(t, layBarePage(dir))
		require.NoError(t, change(dir))
		p, err := readPage("..", dir)
		if err == nil {
			_, err = p.hosted(nil)
		}
		return err
	}
	write := func(name, text string) func(string) error {
		return func(dir string) error { return os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644) }
	}
	require.NoError(t, lay(t, func(string) error { return nil }))
	require.ErrorContains(t, lay(t, write("app/main.js", "const = 1;\n")), "main.js:1:6")
	require.ErrorContains(t, lay(t, write("app/main.css", "@import './gone.css';\n")), "gone.css")
	require.ErrorContains(t, lay(t, write("index.html", "<!doctype html>{{HEAD}}")), "{{TAIL}}")
	require.ErrorContains(t, lay(t, func(dir string) error { return os.Remove(filepath.Join(dir, "icon.svg")) }), "icon.svg")
}

func TestInlineKeepsTheEndTagOut(t *testing.T) {
	got, err := inline("<style>", []byte("a{}"), "</style>")
	require.NoError(t, err)
	require.Equal(t, "<style>a{}</style>", got)
	for _, text := range []string{"x</style>", "x</STYLE >", "x</style\n>"} {
		_, err := inline("<style>", []byte(text), "</style>")
		require.Error(t, err, text)
	}
}

func TestHandler(t *testing.T) {
	files := bareFiles(t)
	get := func(method, path string, header ...string) *http.Response {
		r := httptest.NewRequest(method, path, nil)
		for i := 0; i < len(header); i += 2 {
			r.Header.Set(header[i], header[i+1])
		}
		w := httptest.NewRecorder()
		files.Handler().ServeHTTP(w, r)
		return w.Result()
	}
	for path, kind := range map[string]string{
		"/":                     "text/html; charset=utf-8",
		"/index.html":           "text/html; charset=utf-8",
		"/pourwright.html":      "text/html; charset=utf-16le",
		"/pourwright.js":        "text/javascript; charset=utf-8",
		"/worker.js":            "text/javascript; charset=utf-8",
		"/pourwright.css":       "text/css; charset=utf-8",
		"/pourwright.wasm":      "application/wasm",
		"/proofs.json":          "application/json",
		"/icon.svg":             "image/svg+xml",
		"/manifest.webmanifest": "application/manifest+json",
		"/notices.txt":          "text/plain; charset=utf-8",
	} {
		r := get("GET", path)
		require.Equal(t, 200, r.StatusCode, path)
		require.Equal(t, kind, r.Header.Get("Content-Type"), path)
		require.Equal(t, "nosniff", r.Header.Get("X-Content-Type-Options"), path)
		policy := r.Header.Get("Content-Security-Policy")
		if path == "/pourwright.html" {
			require.Empty(t, policy)
			continue
		}
		require.True(t, strings.HasPrefix(policy, "default-src 'none'; "), path)
		require.NotContains(t, policy, "unsafe-inline")
		again := get("GET", path, "If-None-Match", r.Header.Get("ETag"))
		require.Equal(t, http.StatusNotModified, again.StatusCode, path)
	}
	for _, name := range []string{"pourwright.wasm", "index.html"} {
		r := get("GET", "/"+name, "Accept-Encoding", "br, gzip")
		require.Equal(t, "gzip", r.Header.Get("Content-Encoding"))
		unzipped, err := gzip.NewReader(r.Body)
		require.NoError(t, err)
		content, err := io.ReadAll(unzipped)
		require.NoError(t, err)
		require.Equal(t, files[name], content)
		again := get("GET", "/"+name, "Accept-Encoding", "gzip", "If-None-Match", r.Header.Get("ETag"))
		require.Equal(t, http.StatusNotModified, again.StatusCode)
		require.NotEqual(t, r.Header.Get("ETag"), get("GET", "/"+name).Header.Get("ETag"))
	}
	require.Empty(t, get("GET", "/"+Carried, "Accept-Encoding", "gzip").Header.Get("Content-Encoding"))
	require.Equal(t, 404, get("GET", "/go.mod").StatusCode)
	require.Equal(t, 404, get("GET", "/../go.mod").StatusCode)
	require.Equal(t, 405, get("POST", "/").StatusCode)
	require.Equal(t, 200, get("HEAD", "/").StatusCode)
}

// The sizes that the carried file and a first visit cost.
func BenchmarkSize(b *testing.B) {
	files, err := whole()
	require.NoError(b, err)
	zipped, err := zip(files["pourwright.wasm"])
	require.NoError(b, err)
	squeezed, err := squeeze(files["pourwright.wasm"])
	require.NoError(b, err)
	for b.Loop() {
	}
	b.ReportMetric(float64(len(files["pourwright.wasm"])), "wasm-bytes")
	b.ReportMetric(float64(len(zipped)), "wasm-gzip-bytes")
	b.ReportMetric(float64(len(squeezed)), "wasm-lzma-bytes")
	b.ReportMetric(float64(len(files["pourwright.js"])), "page-js-bytes")
	b.ReportMetric(float64(len(files[Carried])), "carried-bytes")
}
