package quantity

import (
	"encoding/json"
	"math"
	"math/rand"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// anyFinite draws from all finite float64s, by bits, and from shop sizes.
func anyFinite(r *rand.Rand) float64 {
	if r.Intn(2) == 0 {
		return (r.Float64() - 0.2) * math.Pow(10, float64(r.Intn(9)-4))
	}
	for {
		if v := math.Float64frombits(r.Uint64()); Finite(v) {
			return v
		}
	}
}

// What JSON holds reads back as the same value to the last bit, in every kind.
func TestTextIsExact(t *testing.T) {
	r := rand.New(rand.NewSource(1))
	for _, k := range Kinds() {
		for range 3000 {
			v := anyFinite(r)
			text := Text(value{k, v})
			back, err := ParseKind(k, text, Metric, "")
			require.NoError(t, err, "%s %v %q", k.Name, v, text)
			require.Equal(t, v, back, "%s %q", k.Name, text)
			again, err := ParseKind(k, text, US, "")
			require.NoError(t, err)
			require.Equal(t, v, again, "%s %q depends on the system", k.Name, text)
		}
	}
}

// What a person typed is written back as typed: 420 mm stays 420 mm.
func TestTextKeepsRoundNumbers(t *testing.T) {
	for _, k := range Kinds() {
		u := k.mustUnit(k.Canonical)
		for _, x := range []float64{1, 0.1, 12.5, 420, 1380, 33.3, 0.07} {
			require.Equal(t, write(x, *u), Text(value{k, u.to(x)}), k.Name)
		}
	}
}

func TestJSON(t *testing.T) {
	type plan struct {
		Height Length      `json:"height"`
		Tap    Temperature `json:"tap"`
	}
	b, err := json.Marshal(plan{420 * Millimetre, 1653.15})
	require.NoError(t, err)
	require.JSONEq(t, `{"height":"420 mm","tap":"1380 °C"}`, string(b))
	var back plan
	require.NoError(t, json.Unmarshal([]byte(`{"height":"16 1/2 in","tap":"2516 °F"}`), &back))
	require.InDelta(t, 0.4191, float64(back.Height), 1e-12)
	require.InDelta(t, 1653.15, float64(back.Tap), 1e-9)
	require.Error(t, json.Unmarshal([]byte(`{"height":"tall"}`), &back))
	for _, v := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
		_, err := json.Marshal(plan{Height: Length(v)})
		require.Error(t, err)
	}
}

func FuzzParse(f *testing.F) {
	for _, text := range []string{"420", "16 1/2 in", `5' 3 1/2"`, "12,5 cm", "1,200", "½ in", "1380 °C", "1e309", "--1", "5'-3\"", "1/0", "s½", "W·s½/(m²·K)", "﷽", "10.5 mm/m", "4 min 20 s", "01 .", "½", strings.Repeat("\x86", 81)} {
		for i := range kinds {
			f.Add(text, uint8(i), i%2 == 0)
		}
	}
	f.Fuzz(func(t *testing.T, text string, kind uint8, us bool) {
		k := kinds[int(kind)%len(kinds)]
		system := Metric
		if us {
			system = US
		}
		v, err := ParseKind(k, text, system, "")
		if err != nil {
			return
		}
		require.True(t, Finite(v), "%q gave %v", text, v)
		written := Text(value{k, v})
		back, err := ParseKind(k, written, system, "")
		require.NoError(t, err, "%q was written as %q", text, written)
		require.Equal(t, v, back)
		keep, shown, err := Read(k.Name, text, "", system)
		require.NoError(t, err)
		require.NotContains(t, shown, "NaN")
		kept, err := ParseKind(k, keep, 1-system, "")
		require.NoError(t, err, "%q was kept as %q", text, keep)
		require.Equal(t, v, kept, "%q was kept as %q", text, keep)
	})
}

func FuzzTextIsExact(f *testing.F) {
	f.Add(0.42, uint8(0))
	f.Add(5e-324, uint8(3))
	f.Add(-math.MaxFloat64, uint8(8))
	f.Fuzz(func(t *testing.T, v float64, kind uint8) {
		if !Finite(v) {
			return
		}
		k := kinds[int(kind)%len(kinds)]
		back, err := ParseKind(k, Text(value{k, v}), Metric, "")
		require.NoError(t, err)
		require.Equal(t, v, back)
	})
}
