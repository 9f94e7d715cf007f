package catalogue

import (
	"os"
	"strings"
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

// Many plans in a line each, every one in its own units.
func TestBrief(t *testing.T) {
	relief, err := os.ReadFile("../../testdata/plans/relief.pour.json")
	require.NoError(t, err)
	ask := `{"plans":[{"units":"metric","plan":` + string(relief) + `},{"units":"us","plan":{"metal":{"alloy":"grey-iron"},"weight":{"route":"stated","mass":"10"}}},{"plan":{}}]}`
	require.Equal(t, map[string]any{"ok": true, "plans": []any{
		map[string]any{"metal": "Silicon bronze C87300", "poured": asked(t, "plan", "", string(relief))["stations"].([]any)[4].(map[string]any)["answers"].(map[string]any)["poured"].(map[string]any)["text"]},
		map[string]any{"metal": "Grey iron", "poured": asked(t, "plan", "", `{"metal":{"alloy":"grey-iron"},"weight":{"route":"stated","mass":"10 lb"}}`)["stations"].([]any)[4].(map[string]any)["answers"].(map[string]any)["poured"].(map[string]any)["text"]},
		map[string]any{},
	}}, asked(t, "brief", "", ask))
}

func TestScanCode(t *testing.T) {
	out := asked(t, "qr", "", `{"text":"https://example.org/#/shared/abc"}`)
	rows := out["rows"].([]any)
	require.Len(t, rows, 25)
	require.Equal(t, "1111111", rows[0].(string)[:7])
	tooLong := asked(t, "qr", "", `{"text":"`+strings.Repeat("a", 2954)+`"}`)
	require.Equal(t, false, tooLong["ok"])
}
