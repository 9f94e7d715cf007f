package catalogue

import (
	"encoding/json"
	"fmt"
	"math/rand"
	"os"
	"path/filepath"
	"reflect"
	"runtime"
	"strconv"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/form"
	"pourwright/calc/plan"
	"pourwright/calc/quantity"
)

// howManyPlans is how many random plans are worked through: a hundred thousand
// in CI, a handful where somebody waits for the answer. RANDOM_PLANS sets
// another number.
func howManyPlans() int {
	if n, err := strconv.Atoi(os.Getenv("RANDOM_PLANS")); err == nil && n > 0 {
		return n
	}
	if os.Getenv("CI") != "" {
		return 100_000
	}
	return 3_000
}

// neverNegative are the kinds of which less than nothing cannot be: masses,
// times and sizes.
var neverNegative = map[string]bool{
	"mass": true, "time": true, "length": true, "area": true, "volume": true, "distance": true, "speed": true,
	"mass flow": true, "volume flow": true, "density": true,
}

// TestRandomPlans works through plans drawn from the form alone and plans that
// are the examples with anything changed, and looks at every number that came
// out: finite, and no mass, time or size below nothing.
func TestRandomPlans(t *testing.T) {
	examples := examplePlans(t)
	fields := wholePlan().Fields(quantity.Metric)
	randomPlans, workers := howManyPlans(), runtime.NumCPU()
	var group sync.WaitGroup
	var answered [64]int
	for w := range workers {
		group.Go(func() {
			g := generator{rand.New(rand.NewSource(int64(100 + w))), quantity.Metric}
			for i := w; i < randomPlans; i += workers {
				var tree map[string]any
				if i%4 == 0 {
					tree = g.group(fields)
				} else {
					tree = g.mutate(examples[g.Intn(len(examples))], fields)
				}
				how := plan.Answer
				if i%10 == 0 {
					how = plan.Work // with the working, which costs most of the time
				}
				answered[w%64] += lookOver(t, encode(tree), how)
				if t.Failed() {
					return
				}
			}
		})
	}
	group.Wait()
	total := 0
	for _, n := range answered {
		total += n
	}
	t.Logf("%d random plans, %d stations answered", randomPlans, total)
	require.Greater(t, total, randomPlans, "too few stations answer for this test to mean anything")
}

// lookOver works one plan through and reports how many stations answered.
func lookOver(t *testing.T, input []byte, how func(plan.Document, form.Faults) *plan.Result) int {
	defer func() {
		if r := recover(); r != nil {
			t.Errorf("panic %v\non %s", r, input)
		}
	}()
	result := how(plan.Read(input, quantity.Metric))
	n := 0
	for _, s := range result.Stations {
		if s.Out == nil {
			continue
		}
		n++
		if bad := unsound(reflect.ValueOf(s.Out), s.Key); bad != "" {
			t.Errorf("%s\non %s", bad, input)
		}
	}
	return n
}

// unsound finds the first number of an output that cannot be.
func unsound(v reflect.Value, path string) string {
	if q, ok := v.Interface().(quantity.Any); ok && v.Kind() == reflect.Float64 {
		switch {
		case !quantity.Finite(q.SI()):
			return fmt.Sprintf("%s is %v", path, q.SI())
		case q.SI() < 0 && neverNegative[q.Kind().Name]:
			return fmt.Sprintf("%s is %v", path, q)
		}
		return ""
	}
	switch v.Kind() {
	case reflect.Struct:
		for i := range v.NumField() {
			if !v.Type().Field(i).IsExported() {
				continue
			}
			if bad := unsound(v.Field(i), path+"."+v.Type().Field(i).Name); bad != "" {
				return bad
			}
		}
	case reflect.Slice:
		for i := range v.Len() {
			if bad := unsound(v.Index(i), fmt.Sprintf("%s[%d]", path, i)); bad != "" {
				return bad
			}
		}
	case reflect.Float64:
		if !quantity.Finite(v.Float()) {
			return fmt.Sprintf("%s is %v", path, v.Float())
		}
	}
	return ""
}

func examplePlans(t testing.TB) []map[string]any {
	files, err := filepath.Glob("../../testdata/plans/*.pour.json")
	require.NoError(t, err)
	require.NotEmpty(t, files)
	var out []map[string]any
	for _, f := range files {
		data, err := os.ReadFile(f)
		require.NoError(t, err)
		var tree map[string]any
		require.NoError(t, json.Unmarshal(data, &tree))
		out = append(out, tree)
	}
	return out
}

// TestMonotonePlans changes one thing of a random plan in the direction that
// physics is sure of, and sees that the answers do not go the other way.
func TestMonotonePlans(t *testing.T) {
	examples := examplePlans(t)
	fields := wholePlan().Fields(quantity.Metric)
	g := generator{rand.New(rand.NewSource(7)), quantity.Metric}
	for _, rule := range []struct {
		name    string
		section string
		prepare func(section map[string]any)
		field   string
		less    string
		more    string
		station string
		answer  string
		rises   bool
	}{
		{"more casting never needs less metal", "weight", func(s map[string]any) { s["route"] = "stated"; delete(s, "solids") }, "mass", "11 kg", "13 kg", "weight", "Charge", true},
		{"more casting never pours less", "weight", func(s map[string]any) { s["route"] = "stated"; delete(s, "solids") }, "mass", "11 kg", "13 kg", "weight", "Poured", true},
		{"more melting loss never needs a smaller charge", "weight", nil, "melt_loss", "1 %", "7 %", "weight", "Charge", true},
		{"more head never slows a choke", "pour", func(s map[string]any) { s["choke_area"] = "4 cm²"; delete(s, "gate") }, "sprue_height", "0.6 m", "0.8 m", "pour", "ChokeTime", false},
		{"hotter metal never shortens the life of the thin wall", "pour", nil, "pour_temperature", "1200 °C", "1260 °C", "pour", "Life", true},
		{"more weights never want more weights", "pour", nil, "weights", "10 kg", "50 kg", "pour", "WeightsSurged", false},
		{"a wider basin of vents never lengthens the shortest time", "pour", nil, "vent_area", "2 cm²", "6 cm²", "pour", "Shortest", false},
		{"a deeper ladle never holds less", "ladle", nil, "depth", "300 mm", "400 mm", "ladle", "BrimMass", true},
		{"a heavier shank is never lighter to carry", "ladle", nil, "shank", "3 kg", "9 kg", "ladle", "AtLeast", true},
		{"a higher cope is never lighter", "mould", nil, "cope_height", "250 mm", "300 mm", "mould", "CopeMass", true},
	} {
		t.Run(rule.name, func(t *testing.T) {
			compared := 0
			for range 600 {
				tree := g.mutate(examples[g.Intn(len(examples))], fields)
				section, ok := tree[rule.section].(map[string]any)
				if !ok {
					continue
				}
				if rule.prepare != nil {
					rule.prepare(section)
				}
				at := func(value string) (float64, bool) {
					section[rule.field] = value
					result := plan.Answer(plan.Read(encode(tree), quantity.Metric))
					return answerOf(result, rule.station, rule.answer)
				}
				less, ok1 := at(rule.less)
				more, ok2 := at(rule.more)
				if !ok1 || !ok2 {
					continue
				}
				compared++
				if !rule.rises {
					less, more = more, less
				}
				require.GreaterOrEqual(t, more, less*(1-1e-9), "%s", encode(tree))
			}
			require.Greater(t, compared, 10, "too few plans answer for this test to mean anything")
		})
	}
}

func answerOf(r *plan.Result, station, name string) (float64, bool) {
	s := r.Station(station)
	if s.Out == nil {
		return 0, false
	}
	f := reflect.ValueOf(s.Out).FieldByName(name)
	if _, ok := quantity.OptOf(f.Type()); ok {
		v, known := quantity.OptValue(f)
		if !known {
			return 0, false
		}
		f = v
	}
	return f.Float(), true
}
