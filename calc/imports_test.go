package calc

import (
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// rooms are the packages by what they are for, from the ground up, with the
// rooms that each may import from.
var rooms = []struct {
	name     string
	packages []string
	from     []string
}{
	{"bare", []string{"quantity", "source", "solve", "soak", "spread", "qr"}, nil},
	{"paper", []string{"working", "figure"}, []string{"bare"}},
	{"form", []string{"form"}, []string{"bare", "paper"}},
	{"reply", []string{"reply"}, []string{"bare", "paper", "form"}},
	{"data", []string{"alloy", "mouldstuff"}, []string{"bare", "paper"}},
	{"shared", []string{"shape", "flow", "freeze", "riser", "curve"}, []string{"bare", "paper", "form", "data"}},
	{"calculators", []string{"metal", "pattern", "rule", "weight", "mould", "pour", "ladle", "ladleheat", "lifting", "handling", "sprue", "lift", "weir", "core", "feed", "cooling", "order", "shop", "charge", "iron", "melting", "gating", "filling", "holddown", "tending"},
		[]string{"bare", "paper", "form", "data", "shared"}},
	{"plan", []string{"plan"}, []string{"bare", "paper", "form", "reply", "data", "shared", "calculators"}},
	{"catalogue", []string{"catalogue"}, []string{"bare", "paper", "form", "reply", "data", "shared", "calculators", "plan"}},
	{"evidence", []string{"evidence"}, []string{"bare", "catalogue"}},
	{"tests only", []string{"working/stepcheck"}, []string{"paper"}},
}

// Nothing under calc knows a file, a clock, a network, chance or JavaScript:
// the same question has the same answer on any machine.
var worldly = regexp.MustCompile(`^(os|time|net|syscall|log|math/rand|crypto|embed|io/fs|unsafe|plugin|testing)(/|$)`)

func TestImports(t *testing.T) {
	roomOf := map[string]int{}
	for i, r := range rooms {
		for _, p := range r.packages {
			require.NotContains(t, roomOf, p)
			roomOf[p] = i
		}
	}
	found := map[string]bool{}
	err := filepath.WalkDir(".", func(path string, d fs.DirEntry, err error) error {
		if d != nil && d.IsDir() && d.Name() == "testdata" {
			return fs.SkipDir
		}
		name := filepath.ToSlash(filepath.Dir(path))
		if err != nil || d.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") || name == "." {
			return err
		}
		found[name] = true
		room, ok := roomOf[name]
		require.True(t, ok, "package %s has no room in this test; say what it may import", name)
		file, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.ImportsOnly)
		require.NoError(t, err)
		for _, spec := range file.Imports {
			imported := strings.Trim(spec.Path.Value, `"`)
			ours, isOurs := strings.CutPrefix(imported, "pourwright/")
			if !isOurs {
				if imported != "testing" || rooms[room].name != "tests only" {
					require.NotRegexp(t, worldly, imported, path)
				}
				continue
			}
			ours, inCalc := strings.CutPrefix(ours, "calc/")
			require.True(t, inCalc, "%s imports %s, which is not under calc", path, imported)
			from, ok := roomOf[ours]
			require.True(t, ok, "%s imports %s", path, imported)
			require.Contains(t, rooms[room].from, rooms[from].name, "%s, of %s, imports %s", path, rooms[room].name, imported)
		}
		return nil
	})
	require.NoError(t, err)
	for p := range roomOf {
		require.True(t, found[p], "there is no package %s any more", p)
	}
}

// Outside calc too, only tests import stepcheck.
func TestOnlyTestsProveSteps(t *testing.T) {
	read := 0
	err := filepath.WalkDir("..", func(path string, d fs.DirEntry, err error) error {
		if d != nil && d.IsDir() && (d.Name() == "testdata" || d.Name() == ".git") {
			return fs.SkipDir
		}
		if err != nil || d.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
			return err
		}
		read++
		file, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.ImportsOnly)
		require.NoError(t, err)
		for _, spec := range file.Imports {
			require.NotEqual(t, `"pourwright/calc/working/stepcheck"`, spec.Path.Value, path)
		}
		return nil
	})
	require.NoError(t, err)
	require.Greater(t, read, len(rooms))
}

// The map names every package once, and no other.
func TestMap(t *testing.T) {
	file, err := parser.ParseFile(token.NewFileSet(), "doc.go", nil, parser.ParseComments)
	require.NoError(t, err)
	var named []string
	for _, m := range regexp.MustCompile(`(?m)^  - ([a-z]+): `).FindAllStringSubmatch(file.Doc.Text(), -1) {
		named = append(named, m[1])
	}
	var want []string
	for _, r := range rooms {
		if r.name != "tests only" {
			want = append(want, r.packages...)
		}
	}
	slices.Sort(named)
	slices.Sort(want)
	require.Equal(t, want, named)
}
