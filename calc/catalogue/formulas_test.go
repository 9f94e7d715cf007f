package catalogue

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// formula is the formula text of one call of Step or StepNote in the code, as
// the pattern of what it can be when the program runs.
type formula struct {
	where string
	text  *regexp.Regexp
}

func (f formula) String() string { return f.where + " " + f.text.String() }

func (f formula) reached(texts []string) bool {
	for _, t := range texts {
		if f.text.MatchString(t) {
			return true
		}
	}
	return false
}

// formulaAt is the place of the formula among the arguments of Step and
// StepNote.
const formulaAt = 4

// formulasInCode finds every formula in a folder of code and in the folders
// that it imports, tests excepted. Where the text is put together, the parts
// that are not literals may be anything; where it is a variable or a parameter,
// it is every text that the package gives it.
func formulasInCode(t *testing.T, dir string) []formula {
	t.Helper()
	var out []formula
	done := map[string]bool{}
	var visit func(dir string)
	visit = func(dir string) {
		if done[dir] {
			return
		}
		done[dir] = true
		p := readCode(t, dir)
		out = append(out, p.formulas()...)
		for _, path := range p.imports() {
			visit(path)
		}
	}
	visit(dir)
	require.NotEmpty(t, out)
	return out
}

func readCode(t *testing.T, dir string) *code {
	t.Helper()
	paths, err := filepath.Glob(filepath.Join(dir, "*.go"))
	require.NoError(t, err)
	p := &code{fset: token.NewFileSet()}
	for _, path := range paths {
		if strings.HasSuffix(path, "_test.go") {
			continue
		}
		f, err := parser.ParseFile(p.fset, path, nil, 0)
		require.NoError(t, err)
		p.files = append(p.files, f)
	}
	return p
}

// code is that of one package.
type code struct {
	fset  *token.FileSet
	files []*ast.File
}

// imports are the folders of our own packages that the code imports.
func (s *code) imports() []string {
	var out []string
	for _, f := range s.files {
		for _, i := range f.Imports {
			if name, ours := strings.CutPrefix(strings.Trim(i.Path.Value, `"`), "pourwright/calc/"); ours {
				out = append(out, filepath.Join("..", name))
			}
		}
	}
	return out
}

func (s *code) formulas() []formula {
	var out []formula
	for _, file := range s.files {
		for _, decl := range file.Decls {
			fn, ok := decl.(*ast.FuncDecl)
			if !ok || fn.Body == nil {
				continue
			}
			ast.Inspect(fn, func(n ast.Node) bool {
				call, ok := n.(*ast.CallExpr)
				if !ok || len(call.Args) <= formulaAt {
					return true
				}
				if sel, ok := call.Fun.(*ast.SelectorExpr); !ok || sel.Sel.Name != "Step" && sel.Sel.Name != "StepNote" {
					return true
				}
				at := s.fset.Position(call.Args[formulaAt].Pos())
				for _, text := range s.texts(call.Args[formulaAt], fn, 0) {
					out = append(out, formula{fmt.Sprintf("%s:%d", at.Filename, at.Line), regexp.MustCompile("^" + text + "$")})
				}
				return true
			})
		}
	}
	return out
}

const anything = ".+"

// texts are the patterns of what an expression can be.
func (s *code) texts(e ast.Expr, fn *ast.FuncDecl, depth int) []string {
	switch e := e.(type) {
	case *ast.ParenExpr:
		return s.texts(e.X, fn, depth)
	case *ast.BasicLit:
		text, err := strconv.Unquote(e.Value)
		if err != nil {
			return []string{anything}
		}
		return []string{regexp.QuoteMeta(text)}
	case *ast.BinaryExpr:
		return []string{s.part(e.X) + s.part(e.Y)}
	case *ast.Ident:
		if depth < 3 {
			if given := s.given(e.Name, fn, depth); given != nil {
				return given
			}
		}
	}
	return []string{anything}
}

// part is the pattern of one side of a text that is put together.
func (s *code) part(e ast.Expr) string {
	switch e := e.(type) {
	case *ast.BasicLit, *ast.ParenExpr, *ast.BinaryExpr:
		return s.texts(e, nil, 0)[0]
	}
	return anything
}

// given are the texts that a variable or a parameter of fn is given.
func (s *code) given(name string, fn *ast.FuncDecl, depth int) []string {
	var out []string
	grows := false
	ast.Inspect(fn, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.AssignStmt:
			for i, left := range n.Lhs {
				id, ok := left.(*ast.Ident)
				switch {
				case !ok || id.Name != name || len(n.Rhs) != len(n.Lhs):
				case n.Tok == token.ADD_ASSIGN:
					grows = true
				default:
					out = append(out, s.texts(n.Rhs[i], fn, depth+1)...)
				}
			}
		case *ast.ValueSpec:
			for i, id := range n.Names {
				if id.Name == name && i < len(n.Values) {
					out = append(out, s.texts(n.Values[i], fn, depth+1)...)
				}
			}
		}
		return true
	})
	if grows {
		return []string{anything}
	}
	if at := parameter(fn, name); at >= 0 {
		for _, file := range s.files {
			for _, decl := range file.Decls {
				caller, ok := decl.(*ast.FuncDecl)
				if !ok {
					continue
				}
				ast.Inspect(caller, func(n ast.Node) bool {
					if call, ok := n.(*ast.CallExpr); ok && calls(call, fn.Name.Name) && at < len(call.Args) {
						out = append(out, s.texts(call.Args[at], caller, depth+1)...)
					}
					return true
				})
			}
		}
	}
	return out
}

// parameter is the place of a parameter, or -1.
func parameter(fn *ast.FuncDecl, name string) int {
	at := 0
	for _, field := range fn.Type.Params.List {
		for _, id := range field.Names {
			if id.Name == name {
				return at
			}
			at++
		}
	}
	return -1
}

func calls(call *ast.CallExpr, name string) bool {
	switch f := call.Fun.(type) {
	case *ast.Ident:
		return f.Name == name
	case *ast.SelectorExpr:
		return f.Sel.Name == name
	}
	return false
}

func TestFormulaPatterns(t *testing.T) {
	found := formulasInCode(t, "testdata/formulas")
	var texts []string
	for _, f := range found {
		texts = append(texts, f.text.String())
	}
	require.ElementsMatch(t, []string{`^a \* b$`, `^sqrt\(.+\) / 2$`, `^.+ \+ 1$`, `^x_1$`, `^y$`, `^z / 2$`, `^.+$`, `^.+$`}, texts)
	require.True(t, found[0].reached([]string{"nothing", "a * b", "sqrt(q) / 2", "x_1 + 1", "y", "z / 2"}))
}
