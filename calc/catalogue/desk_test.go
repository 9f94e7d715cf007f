package catalogue

import (
	"encoding/json"
	"maps"
	"math/rand"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/quantity"
)

// TestDeskAnswersAsAFreshOne edits one plan again and again at one desk, asks
// in either system with and without steps, and compares with what a desk that
// remembers nothing answers.
func TestDeskAnswersAsAFreshOne(t *testing.T) {
	fields := wholePlan().Fields(quantity.Metric)
	g := generator{rand.New(rand.NewSource(11)), quantity.Metric}
	var desk Desk
	for range 20 {
		tree := maps.Clone(examplePlans(t)[g.Intn(3)])
		for range 8 {
			section := fields[g.Intn(len(fields))].Key
			if edited, ok := g.mutate(tree, fields)[section]; ok {
				tree[section] = edited
			}
			var options Options
			options.Units = []string{"metric", "us"}[g.Intn(2)]
			options.Working = g.Intn(3) == 0
			if options.Working && g.Intn(2) == 0 {
				options.Station = []string{"weight", "filling", "handling"}[g.Intn(3)]
			}
			if g.Intn(2) == 0 {
				options.Full = []string{"weight", "filling"}[:g.Intn(3)]
			}
			asked, err := json.Marshal(options)
			require.NoError(t, err)
			plan := encode(tree)
			require.Equal(t, string(Call("plan", asked, plan)), string(desk.Call("plan", asked, plan)), "%s %s", asked, plan)
		}
	}
}

// TestPlanInParts asks for some stations in full and for the others after that:
// put together, the two replies are the whole one.
func TestPlanInParts(t *testing.T) {
	ask := func(plan []byte, full []string) map[string]any {
		options, err := json.Marshal(Options{Full: full})
		require.NoError(t, err)
		var reply map[string]any
		require.NoError(t, json.Unmarshal(Call("plan", options, plan), &reply))
		return reply
	}
	for _, example := range examplePlans(t) {
		plan := encode(example)
		whole := ask(plan, nil)
		var some, others []string
		for i, s := range whole["stations"].([]any) {
			key := s.(map[string]any)["key"].(string)
			if i%3 == 0 {
				some = append(some, key)
			} else {
				others = append(others, key)
			}
		}
		first, rest := ask(plan, some), ask(plan, others)
		all := first["stations"].([]any)
		for i, s := range rest["stations"].([]any) {
			if i%3 == 0 {
				require.Equal(t, []string{"faults", "key", "needs", "state", "title"}, slices.Sorted(maps.Keys(s.(map[string]any))))
			} else {
				all[i] = s
			}
		}
		require.Equal(t, whole, first)
		for _, s := range ask(plan, []string{})["stations"].([]any) {
			require.NotContains(t, s, "answers")
		}
	}
}
