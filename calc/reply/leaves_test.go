package reply

import (
	"encoding/json"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

func TestLeaves(t *testing.T) {
	out, paper := sample()
	got := map[string]Leaf{}
	for _, l := range Leaves(out) {
		got[l.Path] = l
	}
	require.Len(t, got, 8)
	require.Nil(t, got["window"].Value)
	require.Equal(t, quantity.Number(3), got["boxes"].Value)
	require.Equal(t, "Size, items 2", got["items[1].size"].Label)
	// Every number points at the step that the written reply points at.
	w := &Writer{}
	w.Answers(out, paper)
	for path, leaf := range got {
		v, ok := At(out, path)
		require.Equal(t, leaf.Value != nil, ok, path)
		if ok {
			require.Equal(t, leaf.Value, v, path)
		}
	}
	require.Equal(t, 1, StepOf(got["time"], paper))
	require.Equal(t, 5, StepOf(got["items[1].size"], paper))
	require.Equal(t, 3, StepOf(got["items[1].mass"], paper))
	require.Equal(t, -1, StepOf(got["boxes"], paper))
	for _, path := range []string{"", "none", "items", "items[9].size", "items[x].size", "name", "time.deeper", "curve", "window"} {
		_, ok := At(out, path)
		require.False(t, ok, path)
	}
}

func TestPictures(t *testing.T) {
	type pictures struct {
		Bars  working.Bars   `json:"bars"`
		Curve working.Series `json:"curve"`
	}
	c := curve
	c.Bands = []working.Band{{Label: "Window", Low: 60, High: 300}, {Label: "Fit", Upright: true, Low: 10, High: 20, From: 60, To: 120}}
	w := &Writer{}
	w.Answers(pictures{
		Bars: working.Bars{Label: "Order", Axis: working.Axis{Label: "Time", Kind: quantity.Time(0).Kind()}, Rows: []working.Bar{{Name: "rib", Kind: "section", To: 30}, {Name: "rule", From: 12, To: 12}},
			Bands: []working.Band{{Label: "Window", Low: 10, High: 400}}}, Curve: c}, nil)
	var got map[string]any
	require.NoError(t, json.Unmarshal(w.Bytes(), &got))
	require.Equal(t, map[string]any{"label": "Order", "xLabel": "Time", "xUnit": "min",
		"bands": []any{map[string]any{"label": "Window", "upright": false, "low": 0.166667, "high": 6.66667}},
		"bars":  []any{map[string]any{"name": "rib", "kind": "section", "from": 0.0, "to": 0.5}, map[string]any{"name": "rule", "kind": "", "from": 0.2, "to": 0.2}}}, got["bars"])
	require.Equal(t, []any{
		map[string]any{"label": "Window", "upright": false, "low": 1.0, "high": 5.0},
		map[string]any{"label": "Fit", "upright": true, "low": 10.0, "high": 20.0, "from": 1.0, "to": 2.0},
	}, got["curve"].(map[string]any)["bands"])
}
