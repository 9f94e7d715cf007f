package form

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/quantity"
)

// flasks has groups to be remembered, one of which may not count.
type flasks struct {
	Name string                      `json:"name" label:"Name"`
	Kind quantity.Opt[string]        `json:"kind" label:"Kind" choices:"one:One|two:Two" default:"one"`
	A    flask                       `json:"a" label:"The first"`
	B    flask                       `json:"b" label:"The second" when:"kind=two"`
	Lids []lid                       `json:"lids" label:"Lids"`
	Heft quantity.Opt[quantity.Mass] `json:"heft" label:"Heft"`
}

// With a memory everything is read as without one, whatever was read before:
// the same values, the same faults in the same order.
func TestDecodeWithMemory(t *testing.T) {
	groups := []string{
		whole, `{}`, `null`, `7`, `{"width":"wide","boxes":2.5,"cores":[{"size":"3 mm"},{"size":"x"}]}`, `{"width":"420"}`, `{"width":"42 cm"}`,
		`{"width":"421 ± 2 mm","zeal":1,"zest":{}}`, ` {"width": "420" } `, `{"width":"420","width":"430"}`, `{"mass":"1e3 kg","lid":{"thick":"1,200"}}`,
	}
	others := []string{`"name":"Plaque"`, `"name":7`, `"kind":"two"`, `"kind":"none"`, `"lids":[{"thick":"9 mm"},{"thick":"?"}]`, `"lids":{}`, `"heft":"3"`, `"heft":null`, `"more":0`, `"a":3`}
	r := rand.New(rand.NewPCG(3, 4))
	pick := func(of []string) string { return of[r.IntN(len(of))] }
	var m Memory
	for range 3000 {
		system := quantity.System(r.IntN(8) / 7)
		text := `{"a":` + pick(groups) + `,"b":` + pick(groups) + `,` + pick(others) + `,` + pick(others) + `}`
		switch r.IntN(20) {
		case 0:
			text = text[:r.IntN(len(text))]
		case 1:
			text += pick([]string{" ", "{}", "x"})
		case 2:
			text = pick(groups)
		}
		want, faults := Decode[flasks]([]byte(text), system)
		got, found := DecodeWith[flasks](&m, []byte(text), system)
		require.Equal(t, want, got, text)
		require.Equal(t, []Fault(faults), []Fault(found), text)
	}
	other, faults := DecodeWith[flask](&m, []byte(whole), quantity.Metric)
	require.NoError(t, faults.Err())
	require.Equal(t, 420*quantity.Millimetre, other.Width, "what was remembered of another form is taken for this one's")
}
