package site

import (
	"bytes"
	"encoding/json"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"regexp"
	"strings"

	"github.com/evanw/esbuild/pkg/api"
)

// page is what both builds are made of.
type page struct {
	dir string
	// template is index.html with its places HEAD and TAIL, without the note
	// that explains them.
	template string
	style    []byte
	// fixed files go into the hosted folder as they are.
	fixed Files
	// aside is JSON that stands apart from the script, by its name: it is long,
	// and not every visit wants it.
	aside map[string][]byte
	// data is put into the page for the names in app/data.js.
	data map[string]any
}

const iconFile = "icon.svg"

// The places in index.html that a build fills.
const (
	headPlace = "{{HEAD}}"
	tailPlace = "{{TAIL}}"
)

// readPage reads the page in dir, with the data of the module at root.
func readPage(root, dir string) (*page, error) {
	p := &page{dir: dir, fixed: Files{}, aside: map[string][]byte{}}
	plans, err := examples(root)
	if err != nil {
		return nil, err
	}
	if p.aside["first"], err = firstAnswers(plans); err != nil {
		return nil, err
	}
	checks, err := proofs(root)
	if err != nil {
		return nil, err
	}
	if p.aside["proofs"], err = json.Marshal(checks); err != nil {
		return nil, err
	}
	if p.aside["calculators"], p.aside["calculators-us"], err = bothCalculators(); err != nil {
		return nil, err
	}
	class, err := readLessons(root)
	if err != nil {
		return nil, err
	}
	p.data = map[string]any{"POURWRIGHT_EXAMPLES": plans, "POURWRIGHT_LESSONS": class}
	for _, name := range []string{iconFile, "manifest.webmanifest", "notices.txt"} {
		content, err := os.ReadFile(filepath.Join(dir, name))
		if err != nil {
			return nil, err
		}
		p.fixed[name] = content
	}
	template, err := os.ReadFile(filepath.Join(dir, "index.html"))
	if err != nil {
		return nil, err
	}
	p.template = comment.ReplaceAllString(string(template), "")
	for _, place := range []string{headPlace, tailPlace} {
		if strings.Count(p.template, place) != 1 {
			return nil, fmt.Errorf("index.html must have one %s", place)
		}
	}
	p.style, err = bundle(filepath.Join(dir, "app", "main.css"), api.FormatDefault, nil)
	return p, err
}

var comment = regexp.MustCompile(`(?s)[ \t]*<!--.*?-->\n?`)

// scripts bundles the page's script, in a format, and the worker's for one build,
// which are told which engine they come with.
func (p *page) scripts(build string, format api.Format, engine []byte) (main, worker []byte, err error) {
	constants := maps.Clone(p.data)
	constants["POURWRIGHT_BUILD"] = build
	constants["POURWRIGHT_ENGINE"] = digest(engine)
	main, err = bundle(filepath.Join(p.dir, "app", "main.js"), format, constants)
	if err != nil {
		return nil, nil, err
	}
	worker, err = bundle(filepath.Join(p.dir, "app", "worker.js"), api.FormatIIFE, constants)
	return main, worker, err
}

// fill puts the two parts into the template.
func (p *page) fill(head, tail string) []byte {
	return []byte(strings.NewReplacer(headPlace, head, tailPlace, tail).Replace(p.template))
}

// inline writes an element whose content must stand in the page as it is; an
// end tag inside it would break out.
func inline(open string, content []byte, end string) (string, error) {
	if bytes.Contains(bytes.ToLower(content), []byte(end[:len(end)-1])) {
		return "", fmt.Errorf("a text for the page holds %s", end)
	}
	return open + string(content) + end, nil
}
