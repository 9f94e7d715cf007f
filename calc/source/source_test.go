package source

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestRefString(t *testing.T) {
	w := &Work{"A. Author", "A Book, 2nd ed.", 1950}
	for _, row := range []struct {
		ref  Ref
		want string
	}{
		{w.Seen("table 3"), "A. Author, A Book, 2nd ed., table 3"},
		{w.Memory("table 3"), "A. Author, A Book, 2nd ed., table 3 (from memory)"},
		{w.Memory(""), "A. Author, A Book, 2nd ed. (from memory)"},
		{(&Work{Title: "A Law"}).Seen("§ 5"), "A Law, § 5"},
		{Practice("a rule"), "a rule (common practice, no source)"},
		{Practice(""), "common practice, no source"},
		{Own("your own figure"), "your own figure"},
		{Derived("from geometry"), "from geometry (derived here)"},
		{Ref{}, ""},
	} {
		require.Equal(t, row.want, row.ref.String())
		require.Equal(t, row.want == "", row.ref.IsZero())
	}
}

// works reads the declarations of this package: every work by its name.
func works(t *testing.T) map[string]string {
	t.Helper()
	out := map[string]string{}
	paths, err := filepath.Glob("*.go")
	require.NoError(t, err)
	for _, path := range paths {
		file, err := parser.ParseFile(token.NewFileSet(), path, nil, 0)
		require.NoError(t, err)
		for _, decl := range file.Decls {
			vars, ok := decl.(*ast.GenDecl)
			if !ok || vars.Tok != token.VAR {
				continue
			}
			for _, spec := range vars.Specs {
				v := spec.(*ast.ValueSpec)
				work := v.Values[0].(*ast.UnaryExpr).X.(*ast.CompositeLit)
				var title strings.Builder
				for _, part := range work.Elts[:2] {
					title.WriteString(part.(*ast.BasicLit).Value)
				}
				out[v.Names[0].Name] = title.String()
			}
		}
	}
	require.NotEmpty(t, out)
	return out
}

func TestWorksAreDeclaredOnce(t *testing.T) {
	seen := map[string]string{}
	for name, title := range works(t) {
		require.Empty(t, seen[title], "%s is declared twice", title)
		seen[title] = name
		require.NotContains(t, title, "  ")
	}
}

// A work that nothing cites any more is taken out.
func TestEveryWorkIsCited(t *testing.T) {
	cited := map[string]bool{}
	err := filepath.WalkDir("..", func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || !strings.HasSuffix(path, ".go") {
			return err
		}
		file, err := parser.ParseFile(token.NewFileSet(), path, nil, 0)
		if err != nil {
			return err
		}
		ast.Inspect(file, func(n ast.Node) bool {
			if sel, ok := n.(*ast.SelectorExpr); ok {
				if x, ok := sel.X.(*ast.Ident); ok && x.Name == "source" {
					cited[sel.Sel.Name] = true
				}
			}
			return true
		})
		return nil
	})
	require.NoError(t, err)
	var idle []string
	for name := range works(t) {
		if !cited[name] {
			idle = append(idle, name)
		}
	}
	require.Empty(t, idle, "works that nothing cites")
}
