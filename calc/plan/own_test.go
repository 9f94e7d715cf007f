package plan

import (
	"encoding/json"
	"reflect"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/reply"
)

const shopOwn = `{
	"metals": [
		{"alloy": "grey-iron", "own": "10 mm/m"},
		{"alloy": "al-si-mg", "own": "12.5 mm/m", "freezing_constant": "1.1 min/cm²", "melt_loss": "4 %"}
	],
	"sand": {"sand": "green-sand", "binder": "clay", "moisture": "4 %", "sand_density": "1550 kg/m³", "bearing": "40 kPa"},
	"furnace": {"furnace": "crucible", "efficiency": "9 %", "fuel": "propane", "fuel_rate": "5 kg/h"},
	"ladles": [
		{"name": "Hand", "top": "120 mm", "bottom": "100 mm", "depth": "130 mm", "lip": {"form": "flat", "width": "30 mm"}, "crew": 1},
		{"top": "220 mm", "bottom": "180 mm", "depth": "240 mm", "lip": {"form": "round", "radius": "30 mm"}}
	]
}`

func byPath(fills []Fill) map[string]any {
	out := map[string]any{}
	for _, f := range fills {
		out[f.Path] = f.Value
	}
	return out
}

// apply writes fills into a plan, as the page does.
func apply(t testing.TB, doc []byte, fills []Fill) []byte {
	for _, f := range fills {
		var tree map[string]any
		require.NoError(t, json.Unmarshal(doc, &tree))
		at := tree
		steps := strings.Split(f.Path, ".")
		for _, s := range steps[:len(steps)-1] {
			if at[s] == nil {
				at[s] = map[string]any{}
			}
			at = at[s].(map[string]any)
		}
		at[steps[len(steps)-1]] = f.Value
		var err error
		doc, err = json.Marshal(tree)
		require.NoError(t, err)
	}
	return doc
}

// A new plan gets sand and furnace, and a metal's own figures once it has that
// metal; sections that nobody has begun stay blank.
func TestOwnFillsBlanks(t *testing.T) {
	none := CheckOwn([]byte(shopOwn), []byte(`{}`), quantity.Metric)
	require.Empty(t, none.Faults)
	require.Equal(t, map[string]any{
		"mould.sand": "green-sand", "mould.binder": "clay", "mould.moisture": "4 %", "mould.sand_density": "1550 kg/m³",
		"melting.furnace": "crucible", "melting.efficiency": "9 %", "melting.fuel": "propane", "melting.fuel_rate": "5 kg/h",
	}, byPath(none.Fills))
	require.Len(t, none.Ladles, 2)
	require.Equal(t, "Hand", none.Ladles[0].Name)
	require.Equal(t, "Ladle 2", none.Ladles[1].Name)
	require.Equal(t, map[string]any{"ladle.top": "120 mm", "ladle.bottom": "100 mm", "ladle.depth": "130 mm", "ladle.lip.form": "flat", "ladle.lip.width": "30 mm", "ladle.crew": 1.0}, byPath(none.Ladles[0].Fills))
	require.Empty(t, none.Stands)

	metal := byPath(CheckOwn([]byte(shopOwn), []byte(`{"metal":{"alloy":"al-si-mg"},"cooling":{"shape":"plate"},"cores":{"cores":[{}]}}`), quantity.Metric).Fills)
	require.Equal(t, "12.5 mm/m", metal["pattern.own"])
	require.Equal(t, "1.1 min/cm²", metal["pour.freezing_constant"])
	require.Equal(t, "1.1 min/cm²", metal["cooling.constant"])
	require.Equal(t, "4 %", metal["weight.melt_loss"])
	require.Equal(t, "40 kPa", metal["cores.bearing"])
	require.NotContains(t, metal, "feeding.constant")
}

// What the plan says is never touched, and what it names otherwise keeps the
// shop's figures for the like of it out.
func TestOwnNeverOverwrites(t *testing.T) {
	for _, name := range examples {
		doc := open(t, name)
		var was, is map[string]any
		require.NoError(t, json.Unmarshal(doc, &was))
		c := CheckOwn([]byte(shopOwn), doc, quantity.Metric)
		for _, fills := range append([][]Fill{c.Fills}, ladleFills(c)...) {
			require.NoError(t, json.Unmarshal(apply(t, doc, fills), &is))
			requireKept(t, was, is, name)
		}
	}
	other := CheckOwn([]byte(shopOwn), []byte(`{"mould":{"sand":"resin-sand"},"melting":{"furnace":"induction"},"ladle":{"top":"300 mm"}}`), quantity.Metric)
	require.Empty(t, other.Fills)
	require.Empty(t, other.Ladles)
}

func ladleFills(c OwnChecked) (out [][]Fill) {
	for _, l := range c.Ladles {
		out = append(out, l.Fills)
	}
	return out
}

func requireKept(t *testing.T, was, is any, path string) {
	switch w := was.(type) {
	case map[string]any:
		for key := range w {
			requireKept(t, w[key], is.(map[string]any)[key], path+"."+key)
		}
	default:
		require.Equal(t, was, is, path)
	}
}

// Once filled, the same figures fill nothing more, and stand in the plan; the
// plan then answers by itself with them.
func TestOwnStands(t *testing.T) {
	doc := []byte(`{"metal":{"alloy":"al-si-mg"}}`)
	first := CheckOwn([]byte(shopOwn), doc, quantity.Metric)
	all := append(slices.Clone(first.Fills), first.Ladles[1].Fills...)
	full := apply(t, doc, all)
	second := CheckOwn([]byte(shopOwn), full, quantity.Metric)
	require.Empty(t, second.Fills)
	require.Empty(t, second.Ladles)
	var paths []string
	for _, f := range all {
		paths = append(paths, f.Path)
	}
	require.ElementsMatch(t, paths, second.Stands)
	_, faults := Read(full, quantity.Metric)
	require.Empty(t, faults, "the plan understands them")
}

// A figure with a fault is named, and fills nothing.
func TestOwnFaults(t *testing.T) {
	c := CheckOwn([]byte(`{"sand":{"sand_density":"12 blah","moisture":"90 %","sand":"green-sand"},"metals":[{"own":"1 %"}]}`), []byte(`{}`), quantity.Metric)
	require.Len(t, c.Faults, 2)
	require.Equal(t, map[string]any{"mould.sand": "green-sand"}, byPath(c.Fills))
	require.Len(t, CheckOwn([]byte(`nonsense`), []byte(`{}`), quantity.Metric).Faults, 1)
	var w reply.Writer
	c.Write(&w)
	require.True(t, json.Valid(w.Bytes()))
}

// Every figure of the shop is a field of the plan, with the same name, kind,
// choices, and no wider range.
func TestOwnFieldsAreThePlans(t *testing.T) {
	own, doc := form.Describe(reflect.TypeFor[Own](), quantity.Metric), form.Describe(reflect.TypeFor[Document](), quantity.Metric)
	for group, places := range map[string][]target{"metals": metalPlaces, "sand": sandPlaces, "furnace": furnacePlaces, "ladles": ladlePlaces} {
		for _, p := range places {
			from := find(t, own, group+"."+p.from)
			for _, path := range p.to {
				to := find(t, doc, path)
				require.Equal(t, []any{from.Label, from.Sort, from.Kind, from.Unit, from.Choices}, []any{to.Label, to.Sort, to.Kind, to.Unit, to.Choices}, path)
				if path == p.to[0] {
					require.Equal(t, []string{from.Min, from.Max}, []string{to.Min, to.Max}, path)
				}
			}
		}
	}
}

func find(t *testing.T, fields []form.Field, path string) form.Field {
	key, rest, deeper := strings.Cut(path, ".")
	i := slices.IndexFunc(fields, func(f form.Field) bool { return f.Key == key })
	require.GreaterOrEqual(t, i, 0, path)
	if deeper {
		return find(t, fields[i].Fields, rest)
	}
	return fields[i]
}
