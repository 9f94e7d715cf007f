package catalogue

import (
	"encoding/json"
	"fmt"
	"maps"
	"math"
	"math/rand"
	"strconv"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
)

// A generator makes inputs from a form's own description: every value lies
// inside the field's range, every choice is one of the list, what may be left
// out sometimes is. Whether the fields go together is for the calculator to
// say.
type generator struct {
	*rand.Rand
	system quantity.System
}

// group makes an object for the fields. Fields whose condition does not hold
// are mostly left out, and sometimes not: they must not matter.
func (g generator) group(fields []form.Field) map[string]any {
	out := map[string]any{}
	for _, f := range fields {
		if f.Optional && g.Intn(2) == 0 || g.irrelevant(f, fields, out) && g.Intn(20) > 0 {
			continue
		}
		out[f.Key] = g.value(f)
	}
	return out
}

func (g generator) irrelevant(f form.Field, fields []form.Field, out map[string]any) bool {
	if f.When == nil {
		return false
	}
	is, ok := out[f.When.Key].(string)
	if tick, isTick := out[f.When.Key].(bool); isTick {
		is, ok = map[bool]string{true: "yes", false: "no"}[tick], true
	}
	for _, other := range fields {
		if other.Key == f.When.Key && !ok {
			is = other.Default
		}
	}
	for _, want := range f.When.Values {
		if is == want {
			return false
		}
	}
	return true
}

func (g generator) value(f form.Field) any {
	switch f.Sort {
	case form.Quantity:
		return g.quantity(f)
	case form.Count:
		low, high := bounds(f, 1, 9)
		return low + float64(g.Intn(int(math.Min(high-low, 9))+1))
	case form.Choice:
		return f.Choices[g.Intn(len(f.Choices))].Value
	case form.Words:
		return []string{"Plaque", "Bracket, left", "12"}[g.Intn(3)]
	case form.Tick:
		return g.Intn(2) == 0
	case form.Group:
		return g.group(f.Fields)
	}
	low, high := bounds(f, 0, 3)
	items := []any{}
	for range int(low) + g.Intn(int(math.Min(high-low, 3))+1) {
		items = append(items, g.group(f.Fields))
	}
	return items
}

// quantity draws a size of any order that the range allows. A range is shown
// rounded, so its very ends are kept away from.
func (g generator) quantity(f form.Field) string {
	k := kindOf(f)
	shown := quantity.InUnit(k, 1, k.Metric) // one SI unit, in the unit of the trade
	low, high := math.Inf(-1), math.Inf(1)
	if f.Min != "" {
		low = parse(k, f.Min)
	}
	if f.Max != "" {
		high = parse(k, f.Max)
	}
	var v float64
	switch {
	case low > 0 && high < math.Inf(1):
		v = low * 1.01 * math.Pow(high/low/1.0201, g.Float64())
	case low > 0:
		v = low * 1.01 * math.Pow(1e4, g.Float64())
	case high < math.Inf(1):
		v = math.Max(low, -high) + g.Float64()*g.Float64()*(high-math.Max(low, -high))*0.99
	default:
		v = math.Pow(10, 4*g.Float64()-1) / shown
	}
	return quantity.Text(quantity.Value(k, v))
}

func bounds(f form.Field, low, high float64) (float64, float64) {
	if f.Min != "" {
		low = number(f.Min)
		high = math.Max(high, low+3)
	}
	if f.Max != "" {
		high = number(f.Max)
	}
	return low, high
}

// mutate changes an input here and there: sizes by a factor, choices, items of
// lists, fields left out and put in.
func (g generator) mutate(tree map[string]any, fields []form.Field) map[string]any {
	out := maps.Clone(tree)
	for _, f := range fields {
		old, there := out[f.Key]
		switch {
		case !there:
			if g.Intn(10) == 0 && !g.irrelevant(f, fields, out) {
				out[f.Key] = g.value(f)
			}
		case f.Sort == form.Group:
			if group, ok := old.(map[string]any); ok {
				out[f.Key] = g.mutate(group, f.Fields)
			}
		case f.Sort == form.List:
			if list, ok := old.([]any); ok {
				out[f.Key] = g.mutateList(list, f)
			}
		case g.Intn(4) > 0:
		case f.Optional && g.Intn(3) == 0:
			delete(out, f.Key)
		case f.Sort == form.Quantity:
			k := kindOf(f)
			v, err := quantity.ParseKind(k, fmt.Sprint(old), g.system, f.Unit)
			if err != nil || g.Intn(10) == 0 {
				out[f.Key] = g.quantity(f)
				break
			}
			out[f.Key] = quantity.Text(quantity.Value(k, v*math.Exp(0.4*g.NormFloat64())))
		default:
			out[f.Key] = g.value(f)
		}
	}
	return out
}

func (g generator) mutateList(list []any, f form.Field) []any {
	out := []any{}
	for _, item := range list {
		group, ok := item.(map[string]any)
		switch {
		case !ok:
		case g.Intn(8) == 0:
			out = append(out, g.group(f.Fields))
			fallthrough
		case g.Intn(10) > 0:
			out = append(out, g.mutate(group, f.Fields))
		}
	}
	return out
}

func kindOf(f form.Field) *quantity.Kind {
	for _, k := range quantity.Kinds() {
		if k.Name == f.Kind {
			return k
		}
	}
	panic("no kind " + f.Kind)
}

func parse(k *quantity.Kind, text string) float64 {
	v, err := quantity.ParseKind(k, text, quantity.Metric, "")
	if err != nil {
		panic(err)
	}
	return v
}

func number(text string) float64 {
	v, err := strconv.ParseFloat(text, 64)
	if err != nil {
		panic(err)
	}
	return v
}

func encode(tree any) []byte {
	b, err := json.Marshal(tree)
	if err != nil {
		panic(err)
	}
	return b
}
