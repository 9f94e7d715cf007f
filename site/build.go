// Package site builds Pourwright for the browser and serves it: a static
// folder that works without a network after the first visit (hosted), and the
// same in one HTML file (carried). The same tree always builds to the same
// bytes with the same toolchain.
//
// The page itself lives in app/, features/ and shared/ beside these files: ES
// modules and style sheets, bundled here. There are no formulas in it; they
// are in calc/, and come along as the engine, pourwright.wasm.
package site

import (
	"crypto/sha256"
	"encoding/base64"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
)

// Carried is the name of the one file that holds everything.
const Carried = "pourwright.html"

// Files is a built site: each file's content by its path in the folder.
type Files map[string][]byte

// Build builds the site from the module that the working directory is in. It
// needs the Go toolchain, and nothing from the network.
func Build() (Files, error) {
	files, carried, err := buildModule()
	if err != nil {
		return nil, err
	}
	files[Carried], err = carried()
	return files, err
}

// buildModule compiles the engine of the module and builds the page with it.
func buildModule() (hosted Files, carried func() ([]byte, error), err error) {
	root, err := moduleRoot()
	if err != nil {
		return nil, nil, err
	}
	engine, err := compileEngine(root)
	if err != nil {
		return nil, nil, err
	}
	if engine, err = flattenData(engine); err != nil {
		return nil, nil, err
	}
	return build(root, filepath.Join(root, "site"), engine)
}

// build builds the page in dir with an engine and the data of the module at
// root: the hosted files, and the one file when it is asked for, which takes
// seconds.
func build(root, dir string, engine []byte) (hosted Files, carried func() ([]byte, error), err error) {
	p, err := readPage(root, dir)
	if err != nil {
		return nil, nil, err
	}
	hosted, err = p.hosted(engine)
	return hosted, sync.OnceValues(func() ([]byte, error) { return p.carried(engine) }), err
}

// Write puts the files into a folder, which is made where it is missing. Other
// files in it are left alone.
func (f Files) Write(dir string) error {
	for name, content := range f {
		path := filepath.Join(dir, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
			return err
		}
		if err := os.WriteFile(path, content, 0o644); err != nil {
			return err
		}
	}
	return nil
}

func moduleRoot() (string, error) {
	mod, err := goCommand("", "env", "GOMOD")
	if err != nil {
		return "", err
	}
	if mod == "" || mod == os.DevNull {
		return "", fmt.Errorf("run this inside the Pourwright source folder: its go.mod is not to be found from here")
	}
	return filepath.Dir(mod), nil
}

// compileEngine compiles wasm/ for the browser. Version-control stamps and
// build paths are left out: they would make every commit's engine differ.
func compileEngine(root string) ([]byte, error) {
	temp, err := os.MkdirTemp("", "pourwright")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(temp)
	out := filepath.Join(temp, "pourwright.wasm")
	args := []string{"build", "-trimpath", "-buildvcs=false", "-ldflags=-s -w -buildid=", "-gcflags=pourwright/...=-l"}
	for _, name := range inlined {
		args = append(args, "-gcflags=pourwright/calc/"+name+"=")
	}
	if _, err := goCommand(root, append(args, "-o", out, "./wasm")...); err != nil {
		return nil, err
	}
	return os.ReadFile(out)
}

// inlined are those of our own packages that are compiled with inlining, where a
// spread spends its time. In all of them it would make the engine an eighth
// larger for hardly more speed, and a tablet waits for the bytes.
var inlined = []string{"alloy", "filling", "flow", "form", "ladleheat", "quantity", "reply", "soak", "solve", "working"}

// goCommand runs the go command for the browser's platform and returns what it
// prints, trimmed.
func goCommand(dir string, args ...string) (string, error) {
	cmd := exec.Command("go", args...)
	cmd.Dir = dir
	cmd.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm", "CGO_ENABLED=0", "GOFLAGS=", "GOWASM=")
	var wrong strings.Builder
	cmd.Stderr = &wrong
	out, err := cmd.Output()
	if err != nil {
		return "", fmt.Errorf("go %s: %w\n%s", args[0], err, wrong.String())
	}
	return strings.TrimSpace(string(out)), nil
}

// digest is content's sha256 as security policies and integrity checks write it.
func digest(content []byte) string {
	sum := sha256.Sum256(content)
	return "sha256-" + base64.StdEncoding.EncodeToString(sum[:])
}
