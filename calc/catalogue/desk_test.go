package catalogue

import (
	"encoding/json"
	"maps"
	"math/rand"
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
			asked, err := json.Marshal(options)
			require.NoError(t, err)
			plan := encode(tree)
			require.Equal(t, string(Call("plan", asked, plan)), string(desk.Call("plan", asked, plan)), "%s %s", asked, plan)
		}
	}
}
