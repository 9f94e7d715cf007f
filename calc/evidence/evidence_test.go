package evidence

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// atLeast is how many outside checks the project promises.
const atLeast = 150

// TestPublished puts every check of testdata/checks to its calculator. The
// subtest names are the citations.
func TestPublished(t *testing.T) {
	files, err := filepath.Glob("../../testdata/checks/*.json")
	require.NoError(t, err)
	require.NotEmpty(t, files)
	plans := map[string][]byte{}
	names, err := filepath.Glob("../../testdata/published/*.pour.json")
	require.NoError(t, err)
	for _, name := range names {
		plans[filepath.Base(name)], err = os.ReadFile(name)
		require.NoError(t, err)
	}
	count := 0
	for _, name := range files {
		data, err := os.ReadFile(name)
		require.NoError(t, err)
		checks, err := Parse(data, plans)
		require.NoError(t, err, name)
		topic := strings.TrimSuffix(filepath.Base(name), ".json")
		for _, c := range checks {
			count++
			t.Run(topic+"/"+c.Source+"/"+c.Answer, func(t *testing.T) {
				require.NotEmpty(t, c.Source)
				require.Contains(t, []string{"seen", "from memory", "independent program"}, c.Known)
				row := Run(topic, c)
				require.Empty(t, row.Why)
				require.True(t, row.Agrees, "expected %s within %s, got %s", c.Expected, c.Within, row.Got)
			})
		}
	}
	t.Logf("%d checks against published values", count)
	require.GreaterOrEqual(t, count, atLeast)
}

// TestWrongValueIsSeen proves that the comparison can fail.
func TestWrongValueIsSeen(t *testing.T) {
	require.NotEmpty(t, Run("x", Check{Calculator: "no such calculator"}).Why)
	r, err := value("198.1 cm/s")
	require.NoError(t, err)
	require.InDelta(t, 1.981, r.si, 1e-12)
	r, err = value("1100 °C")
	require.NoError(t, err)
	require.InDelta(t, 1373.15, r.si, 1e-9)
	require.InDelta(t, 273.15, r.zero, 1e-9)
}
