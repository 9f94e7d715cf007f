package plan

import (
	"encoding/json"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/quantity"
	"pourwright/calc/reply"
)

// straying is the relief with a plus and minus on four of its inputs.
func straying(t testing.TB) []byte {
	data := alter(t, steady(t), "8 mm ± 1.5 mm", "pour", "thin_wall")
	data = alter(t, data, "1150 ± 15 °C", "metal", "pour_temperature")
	data = alter(t, data, "12 cm² ± 10 %", "pour", "ingate_area")
	return alter(t, data, "680 mm ± 2 mm", "mould", "flask_length")
}

// steady is the relief with every plus and minus taken off.
func steady(t testing.TB) []byte {
	data := alter(t, open(t, "plans/relief.pour.json"), "8 mm", "pour", "thin_wall")
	return alter(t, data, "1150 °C", "metal", "pour_temperature")
}

func TestSpread(t *testing.T) {
	doc, inputs, faults := ReadSpread(straying(t), quantity.Metric)
	require.Empty(t, faults)
	require.Len(t, inputs, 4)
	out := Spread(doc, faults, inputs)
	require.Len(t, out.Inputs, 4)
	byName := map[string]Spanned{}
	for _, a := range out.Answers {
		byName[a.Answer] = a
		require.LessOrEqual(t, a.Low.SI(), a.Middle.SI())
		require.LessOrEqual(t, a.Middle.SI(), a.High.SI())
		require.NotEmpty(t, a.Label)
		require.LessOrEqual(t, len(a.Drivers), drivers)
	}
	// How long the metal may take hangs on the thin wall most of all; how fast it
	// may come, on the ingates alone.
	require.Equal(t, "pour.thin_wall", byName["longest"].Drivers[0].Field)
	require.Equal(t, "pour.ingate_area", byName["shortest"].Drivers[0].Field)
	require.Greater(t, float64(byName["shortest"].Drivers[0].Share), 0.9)
	// What no straying input touches does not stray.
	require.NotContains(t, byName, "mass")

	// The middle is the plan's own answer, near enough, and the plan itself is
	// as if the plus and minus were not written.
	plain := work(t, steady(t))
	q, _, ok := answer(plain.Station("pour").Out, "longest")
	require.True(t, ok)
	require.InEpsilon(t, q.SI(), byName["longest"].Middle.SI(), 0.1)
	require.Equal(t, plain.got.pour.Longest, work(t, straying(t)).got.pour.Longest)

	again := Spread(doc, faults, inputs)
	require.Equal(t, out, again, "the same plan gives the same spread")
}

func TestSpreadWithoutAny(t *testing.T) {
	doc, inputs, faults := ReadSpread(steady(t), quantity.Metric)
	out := Spread(doc, faults, inputs)
	require.Empty(t, out.Inputs)
	require.Empty(t, out.Answers)
	w := &reply.Writer{}
	out.Write(w)
	require.True(t, json.Valid(w.Bytes()), "%s", w.Bytes())
}

// TestSpreadInAList: a plus and minus inside a list reaches its own item.
func TestSpreadInAList(t *testing.T) {
	solids := strings.SplitAfterN(string(steady(t)), `"solids":`, 2)
	data := solids[0] + strings.Replace(solids[1], `"thickness":"10 mm"`, `"thickness":"10 mm ± 0.8 mm"`, 1)
	doc, inputs, faults := ReadSpread([]byte(data), quantity.Metric)
	require.Equal(t, "weight.solids[0].thickness", inputs[0].Field)
	out := Spread(doc, faults, inputs)
	require.NotEmpty(t, out.Answers)
	for _, a := range out.Answers {
		if a.Answer == "mass" {
			// ±0.8 mm on 480 × 330 mm of ground is ±1.06 kg at two standard deviations.
			require.InEpsilon(t, 2*1.6449*0.4e-3*0.48*0.33*8360, a.High.SI()-a.Low.SI(), 0.05)
		}
	}
}

func BenchmarkSpread(b *testing.B) {
	doc, inputs, faults := ReadSpread(straying(b), quantity.Metric)
	for range b.N {
		Spread(doc, faults, inputs)
	}
}

// The stations that a spread leaves out change none of the ruling answers.
func TestRulingAnswersAlone(t *testing.T) {
	for _, name := range []string{"relief", "bracket", "bench-end"} {
		doc, faults := Read(open(t, "plans/"+name+".pour.json"), quantity.Metric)
		whole, part := Answer(doc, faults), rulingAgain(doc, faults, memory{})
		require.Less(t, len(part.Stations), len(whole.Stations))
		for _, where := range ruling {
			require.Equal(t, whole.Station(where[0]).Out, part.Station(where[0]).Out, "%s %v", name, where)
		}
	}
}
