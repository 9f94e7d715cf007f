package site

import (
	"maps"
	"path/filepath"
	"slices"

	"github.com/evanw/esbuild/pkg/api"
)

// Policy is the content security policy of the hosted build: nothing from
// anywhere else, no inline script or style. Every file is to be served with it
// (a worker's script brings its own); the page carries it as well, for a host
// that sends no header.
const Policy = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self' data: blob:; " +
	"connect-src 'self'; worker-src 'self'; manifest-src 'self'; form-action 'none'; base-uri 'none'"

// hosted builds the static folder. The service worker is told every file with
// its digest, so that it keeps a whole release or none of it.
func (p *page) hosted(engine []byte) (Files, error) {
	main, worker, err := p.scripts("hosted", api.FormatESModule, engine)
	if err != nil {
		return nil, err
	}
	files := maps.Clone(p.fixed)
	files["pourwright.wasm"] = engine
	files["pourwright.js"] = main
	files["pourwright.css"] = p.style
	files["worker.js"] = worker
	for name, content := range p.aside {
		files[name+".json"] = content
	}
	files["index.html"] = p.fill(
		`<meta charset="utf-8">
    <meta http-equiv="Content-Security-Policy" content="`+Policy+`">
    <link rel="icon" href="icon.svg" type="image/svg+xml">
    <link rel="manifest" href="manifest.webmanifest">
    <link rel="stylesheet" href="pourwright.css">`,
		`<script type="module" src="pourwright.js"></script>`)

	var keep [][2]string
	for _, name := range slices.Sorted(maps.Keys(files)) {
		url := name
		if name == "index.html" {
			url = "./"
		}
		keep = append(keep, [2]string{url, digest(files[name])})
	}
	files["sw.js"], err = bundle(filepath.Join(p.dir, "app", "sw.js"), api.FormatIIFE, map[string]any{"POURWRIGHT_FILES": keep})
	return files, err
}
