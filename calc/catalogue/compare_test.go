package catalogue

import (
	"os"
	"testing"

	"github.com/stretchr/testify/require"
)

// Two examples through the door: sections in the order of the work, each row
// with both sides.
func TestCompare(t *testing.T) {
	read := func(name string) string {
		data, err := os.ReadFile("../../testdata/plans/" + name + ".pour.json")
		require.NoError(t, err)
		return string(data)
	}
	a, b := read("relief"), read("bracket")
	out := asked(t, "compare", `{"units":"us"}`, `{"a":`+a+`,"b":`+b+`}`)
	require.Equal(t, true, out["ok"])
	require.Equal(t, []any{"Heron panel, silicon bronze relief", "Lamp bracket, aluminium"}, out["titles"])
	sections := out["sections"].([]any)
	require.Greater(t, len(sections), 5)
	first := sections[0].(map[string]any)
	require.Equal(t, "plan", first["key"])
	metal := sections[1].(map[string]any)
	require.Equal(t, "metal", metal["key"])
	row := metal["inputs"].([]any)[0].(map[string]any)
	require.Equal(t, "Metal", row["label"])
	require.Equal(t, map[string]any{"path": "metal.alloy", "origin": "given", "text": "Silicon bronze C87300"}, row["a"])
	require.Empty(t, asked(t, "compare", "", `{"a":`+a+`,"b":`+a+`}`)["sections"])
	require.Contains(t, asked(t, "compare", "", `{"c":1}`)["broken"], "unknown field")
}
