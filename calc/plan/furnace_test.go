package plan

import (
	"encoding/json"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/quantity"
	"pourwright/calc/reply"
	"pourwright/calc/tending"
	"pourwright/calc/working/stepcheck"
)

// furnace follows a plan file with a record put into it.
func furnace(t testing.TB, data []byte, events string) (Side, tending.Output) {
	t.Helper()
	if events != "" {
		var list any
		require.NoError(t, json.Unmarshal([]byte("["+events+"]"), &list))
		data = alter(t, data, map[string]any{"events": list}, "record")
	}
	doc, faults := Read(data, quantity.Metric)
	s := new(Desk).Furnace(doc, faults, func(string) bool { return true })
	require.Empty(t, s.Faults)
	require.Empty(t, stepcheck.Paper(s.Paper))
	w := &reply.Writer{Working: true}
	s.Write(w)
	require.True(t, json.Valid(w.Bytes()))
	return s, s.Out.(tending.Output)
}

// The furnace side has its figures from the stations.
func TestFurnaceSideIsLinked(t *testing.T) {
	data := open(t, "plans/relief.pour.json")
	r := work(t, data)
	s, out := furnace(t, data, `{"what":"tapped","at":"0 s"}`)
	require.Equal(t, r.got.heat.TapNeeded, out.Tap)
	require.InDelta(t, float64(r.got.heat.Filled), float64(out.Metal.V), 0.01, "as the ladle is filled")
	m := out.Moulds[0]
	require.Equal(t, r.got.heat.Low, m.Low.V)
	require.Equal(t, r.got.heat.High, m.High.V)
	require.Equal(t, r.got.pour.Reckoned, m.Target)
	require.Equal(t, r.got.pour.Shortest, m.Shortest)
	require.Equal(t, r.got.pour.Longest, m.Longest.V)
	require.Equal(t, r.got.ladle.LipTilt, m.Lip)
	require.InDelta(t, float64(r.got.ladle.StartTilt.V), m.Tilt.Points[0].Y, 1e-9)
	require.InDelta(t, float64(r.got.ladle.EndTilt.V), m.Tilt.Points[len(m.Tilt.Points)-1].Y, 1e-9)
	require.Empty(t, out.Wanted)
	from := map[string]string{}
	for _, l := range s.Linked {
		from[l.Field] = l.From
	}
	require.Equal(t, map[string]string{"record.tap": "ladleheat", "record.time_constant": "ladleheat", "record.course": "ladleheat", "record.liquidus": "metal"}, from)
}

// Several moulds stand in the order of pouring, each with its own window and
// band, the plan's for the mould that it is made for; the ladle is tipped on from
// where the mould before left it.
func TestFurnaceSideInOrder(t *testing.T) {
	data := alter(t, open(t, "plans/bracket.pour.json"), []any{
		map[string]any{"name": "Base", "mass": "0.7 kg", "pouring": "4 s", "longest": "9 s", "low": "690 °C", "high": "760 °C"},
		map[string]any{"name": "Bracket", "mass": "0.94 kg", "pouring": "5 s", "low": "715 °C", "high": "760 °C"},
	}, "order", "moulds")
	r := work(t, data)
	_, out := furnace(t, data, `{"what":"tapped","at":"0 s"},{"what":"start","at":"20 s","mould":2},{"what":"stop","at":"25 s","mould":2}`)
	require.Len(t, out.Moulds, 2)
	bracket, base := out.Moulds[0], out.Moulds[1]
	require.Equal(t, "Bracket", bracket.Name)
	require.Equal(t, 2, bracket.Number, "as the plan lists it")
	require.Equal(t, r.got.order.Moulds[0].Low, bracket.Low.V)
	require.Equal(t, "full", bracket.State)
	require.Equal(t, r.got.pour.Longest, bracket.Longest.V)
	require.Equal(t, quantity.Time(9), base.Longest.V)
	require.False(t, base.Shortest.Known())
	require.Equal(t, "ahead", base.State)
	require.Less(t, bracket.FullBy.V, base.FullBy.V)
	last := bracket.Tilt.Points[len(bracket.Tilt.Points)-1].Y
	require.InDelta(t, last, base.Tilt.Points[0].Y, 0.1)
	require.Greater(t, base.Tilt.Points[0].Y, bracket.Tilt.Points[0].Y)
	require.Contains(t, out.Next[0].Do.String(), "pour Base")
}

// An empty plan has a furnace side without figures: all that it would want is
// named, with the station that would have it.
func TestFurnaceSideOfAnEmptyPlan(t *testing.T) {
	s, out := furnace(t, []byte(`{}`), "")
	require.Empty(t, s.Linked)
	require.False(t, out.Metal.Known())
	require.Len(t, out.Moulds, 1)
	require.NotEmpty(t, out.Trouble)
	stations := map[string]bool{}
	for _, w := range out.Wanted {
		stations[w.Station] = true
		require.NotNil(t, work(t, []byte(`{}`)).Station(w.Station), w.Station)
	}
	require.Equal(t, map[string]bool{"ladleheat": true, "pour": true, "ladle": true}, stations)
}

// The record changes nothing in the plan, and a fault in it silences no station.
func TestRecordLeavesThePlanAlone(t *testing.T) {
	data := open(t, "plans/bench-end.pour.json")
	card := func(data []byte) (out []string) {
		for _, c := range work(t, data).Card() {
			out = append(out, c.Text.String())
		}
		return out
	}
	recorded := alter(t, data, map[string]any{"events": []any{map[string]any{"what": "tapped", "at": "0 s"}, map[string]any{"what": "nonsense"}}}, "record")
	require.Equal(t, card(data), card(recorded))
	unread := alter(t, data, map[string]any{"events": []any{map[string]any{"what": "tapped", "at": "soon"}}}, "record")
	require.Equal(t, card(data), card(unread))
	doc, faults := Read(unread, quantity.Metric)
	s := new(Desk).Furnace(doc, faults, func(string) bool { return false })
	require.Equal(t, Fault, s.State)
	require.True(t, strings.HasPrefix(s.Faults[0].Field, "record.events[0]"))
}
