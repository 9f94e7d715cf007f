package site

import (
	"bytes"
	"cmp"
	"net/http"
	"path"
	"strings"
	"sync"
	"time"
)

// mimeTypes are by the end of a file's name, or by the whole of it.
var mimeTypes = map[string]string{
	Carried:        "text/html; charset=utf-16le",
	".html":        "text/html; charset=utf-8",
	".js":          "text/javascript; charset=utf-8",
	".css":         "text/css; charset=utf-8",
	".json":        "application/json",
	".svg":         "image/svg+xml",
	".txt":         "text/plain; charset=utf-8",
	".wasm":        "application/wasm",
	".webmanifest": "application/manifest+json",
}

// Handler builds the site and serves it. Few ask for the one file: it is packed
// while the rest is being served already.
func Handler() (http.Handler, error) {
	files, carried, err := buildModule()
	if err != nil {
		return nil, err
	}
	go carried()
	return files.handler(carried), nil
}

// Handler serves the files.
func (f Files) Handler() http.Handler {
	return f.handler(func() ([]byte, error) { return f[Carried], nil })
}

// handler serves the files, each with its type and the security policy, to be
// asked for again by its digest, and packed for who takes gzip; but the one file,
// whose content is packed already, as carried has it. It answers GET and HEAD.
func (f Files) handler(carried func() ([]byte, error)) http.Handler {
	packed := map[string]func() ([]byte, error){}
	for name, content := range f {
		packed[name] = sync.OnceValues(func() ([]byte, error) { return zip(content) })
	}
	delete(packed, Carried)
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if r.Method != http.MethodGet && r.Method != http.MethodHead {
			w.Header().Set("Allow", "GET, HEAD")
			http.Error(w, "only GET and HEAD are answered", http.StatusMethodNotAllowed)
			return
		}
		name := strings.TrimPrefix(r.URL.Path, "/")
		if name == "" {
			name = "index.html"
		}
		content, ok := f[name]
		if name == Carried {
			var err error
			if content, err = carried(); err != nil {
				http.Error(w, err.Error(), http.StatusInternalServerError)
				return
			}
			ok = content != nil
		}
		if !ok {
			http.NotFound(w, r)
			return
		}
		h := w.Header()
		h.Set("Content-Type", cmp.Or(mimeTypes[name], mimeTypes[path.Ext(name)]))
		h.Set("X-Content-Type-Options", "nosniff")
		h.Set("Cache-Control", "no-cache")
		tag := digest(content)
		if pack, ok := packed[name]; ok {
			h.Set("Vary", "Accept-Encoding")
			if strings.Contains(r.Header.Get("Accept-Encoding"), "gzip") && r.Header.Get("Range") == "" {
				zipped, err := pack()
				if err != nil {
					http.Error(w, err.Error(), http.StatusInternalServerError)
					return
				}
				content, tag = zipped, tag+"-gzip"
				h.Set("Content-Encoding", "gzip")
			}
		}
		h.Set("ETag", `"`+tag+`"`)
		if name != Carried { // which has its own in the page, and no file beside it
			h.Set("Content-Security-Policy", Policy+"; frame-ancestors 'none'")
		}
		http.ServeContent(w, r, name, time.Time{}, bytes.NewReader(content))
	})
}
