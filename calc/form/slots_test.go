package form

import (
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/quantity"
)

func TestSlots(t *testing.T) {
	in, faults := read(t, whole, quantity.Metric)
	require.Empty(t, faults)
	raw, _ := Decode[flask]([]byte(whole), quantity.Metric)
	by := map[string]Slot{}
	for _, s := range Slots(&raw) {
		by[s.Field] = s
	}
	require.Contains(t, by, "cores[0].holes[0].bore")
	require.Equal(t, "Bore, Holes 1", by["cores[0].holes[0].bore"].Label)
	require.Equal(t, "Lid thickness, Lid", by["lid.thick"].Label)
	require.NotContains(t, by, "cope", "may stay empty, and is")
	require.NotContains(t, by, "solids[0].size", "does not count")
	require.True(t, by["spill"].Default)
	require.InDelta(t, 0.05, by["spill"].Value, 1e-12)
	require.Equal(t, 2.0, by["boxes"].Value)
	require.True(t, by["boxes"].Whole)
	by["width"].Set(0.3)
	by["spill"].Set(0.1)
	by["boxes"].Set(3.4)
	by["cores[0].holes[0].bore"].Set(0.004)
	require.Equal(t, 0.3, float64(raw.Width))
	require.Equal(t, quantity.Some(quantity.Ratio(0.1)), raw.Spill)
	require.Equal(t, 3, raw.Boxes)
	require.Equal(t, 0.004, float64(raw.Cores[0].Holes[0].Bore))
	require.Equal(t, 420*quantity.Millimetre, in.Width, "a copy that was made ready before stays as it was")
}

// What is written reads back to the same.
func TestEncode(t *testing.T) {
	in, _ := Decode[flask]([]byte(whole), quantity.Metric)
	text := Encode(in)
	back, faults := Decode[flask](text, quantity.US)
	require.Empty(t, faults, "%s", text)
	require.Equal(t, in, back)
	require.Contains(t, string(text), `"width":"420 mm"`)
	require.NotContains(t, string(text), "spares")
}
