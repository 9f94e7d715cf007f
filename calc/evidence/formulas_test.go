package evidence

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestEveryFormulaIsChecked reads testdata/formulas.json, the list of the
// formulas and tables that the calculators stand on: each names the checks of
// testdata/checks and the tests that hold it, which must be there, or says why
// there is none.
func TestEveryFormulaIsChecked(t *testing.T) {
	var formulas []struct {
		Formula string
		// Checks are "topic: beginning of the source".
		Checks []string
		// Tests are "package.TestName" of a calculator.
		Tests []string
		Note  string
	}
	text, err := os.ReadFile("../../testdata/formulas.json")
	require.NoError(t, err)
	require.NoError(t, json.Unmarshal(text, &formulas))
	sources := map[string][]string{}
	topic := func(name string) []string {
		if _, ok := sources[name]; !ok {
			text, err := os.ReadFile("../../testdata/checks/" + name + ".json")
			require.NoError(t, err)
			var checks []Check
			require.NoError(t, json.Unmarshal(text, &checks))
			for _, c := range checks {
				sources[name] = append(sources[name], c.Source)
			}
		}
		return sources[name]
	}
	for _, f := range formulas {
		t.Run(f.Formula, func(t *testing.T) {
			require.False(t, len(f.Checks)+len(f.Tests) == 0 && f.Note == "", "neither a check nor a note why not")
			for _, check := range f.Checks {
				name, source, _ := strings.Cut(check, ": ")
				found := false
				for _, s := range topic(name) {
					found = found || strings.HasPrefix(s, source)
				}
				require.True(t, found, "no check %q", check)
			}
			for _, test := range f.Tests {
				name, fn, _ := strings.Cut(test, ".")
				files, err := filepath.Glob("../" + name + "/*_test.go")
				require.NoError(t, err)
				found := false
				for _, file := range files {
					text, err := os.ReadFile(file)
					require.NoError(t, err)
					found = found || strings.Contains(string(text), "func "+fn+"(")
				}
				require.True(t, found, "no test %s", test)
			}
		})
	}
}
