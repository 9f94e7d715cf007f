package catalogue

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// An amount wears the reader's currency, in answers, findings, faults and
// working alike, and is never converted; without one it stands bare.
func TestCurrency(t *testing.T) {
	shop := `{"good":8,"scrap":"30 %","metal":"4 kg","metal_price":"2.50 per kg","mould_cost":"5"}`
	for currency, shown := range map[string][2]string{
		"":     {"", "money"},
		"€":    {"€", "€"},
		"SEK":  {"SEK\u00a0", "SEK"},
		"kr.":  {"kr.\u00a0", "kr."},
		`"},{`: {"", "money"},
		"1":    {"", "money"},
	} {
		out := asked(t, "shop", `{"working":true,"currency":`+quoted(currency)+`}`, shop)
		answers := out["answers"].(map[string]any)
		cost := answers["cost"].(map[string]any)["text"].(string)
		require.Regexp(t, `^`+shown[0]+`\d+\.\d\d$`, cost, currency)
		text := string(Call("shop", []byte(`{"working":true,"currency":`+quoted(currency)+`}`), []byte(shop)))
		require.NotContains(t, text, "¤")
		require.Contains(t, text, " "+shown[1]+"/kg", "a price in the working")
		if shown[0] != "" {
			require.Contains(t, text, "of the "+shown[0], "a finding")
		}
		require.Equal(t, asked(t, "shop", "", shop)["answers"].(map[string]any)["cost"].(map[string]any)["si"], answers["cost"].(map[string]any)["si"])
	}
	read := asked(t, "read", `{"currency":"€","units":"us"}`, `{"kind":"price","text":"1"}`)
	require.Equal(t, map[string]any{"ok": true, "keep": "1 per lb", "shown": "€1.00 per lb"}, read)
}

func quoted(s string) string { return `"` + strings.ReplaceAll(s, `"`, `\"`) + `"` }
