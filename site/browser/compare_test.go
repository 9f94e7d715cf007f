package browser

import (
	"encoding/json"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/catalogue"
)

// comparison is the part of the engine's reply to "compare" that these tests
// look at.
type comparison struct {
	Sections []struct {
		Key     string
		Inputs  []struct{ A, B struct{ Path, Text string } }
		Answers []struct {
			Gap, Share string
			A, B       struct{ Path, Text string }
		}
		Only [2][]struct{ Code, Text string }
	}
}

func compared(t testing.TB, units string, a, b any) comparison {
	t.Helper()
	question, err := json.Marshal(map[string]any{"a": a, "b": b})
	require.NoError(t, err)
	var out comparison
	require.NoError(t, json.Unmarshal(catalogue.Call("compare", []byte(`{"units":"`+units+`"}`), question), &out))
	return out
}

// Two plans of the list are put side by side: every entry, answer and finding
// that differs, as the same calculators find them natively, in either system;
// a figure leads to its place in its plan.
func TestCompare(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.hosted()
	tab.example(bracket)
	first := tab.entered(bracket)
	original := tab.planAddress()[len("#/plan/"):]
	tab.view("#/")
	tab.click(`[data-plan] [data-action=copy-plan]`)
	tab.until(`document.querySelectorAll("[data-plan]").length === 2`)
	copied := js[string](tab, `[...document.querySelectorAll("[data-plan]")].map((e) => e.dataset.plan).find((id) => id !== %s)`, original)
	tab.view("#/plan/" + copied + "/sheet/mould")
	tab.fill("mould.flask_length", "420 mm")
	second := with(t, with(t, first, "title", first["title"].(string)+", copy"), "mould.flask_length", "420 mm")

	tab.view("#/")
	tab.click(`[data-plan="` + original + `"] [data-action=compare]`)
	tab.click(`[data-plan="` + copied + `"] [data-action=compare-with]`)
	tab.until(`document.querySelector("[data-section]")`)
	require.Equal(t, "#/compare/"+original+"/"+copied, js[string](tab, `location.hash`))
	for _, units := range []string{"metric", "us"} {
		tab.click(`[data-units=` + units + `]`)
		want := compared(t, units, first, second)
		var rows, codes []string
		for _, s := range want.Sections {
			for _, d := range s.Inputs {
				rows = append(rows, d.A.Text+" | "+d.B.Text)
			}
			for _, d := range s.Answers {
				rows = append(rows, d.A.Text+" | "+d.B.Text+" | "+d.Gap+d.Share)
			}
			for _, only := range s.Only {
				for _, f := range only {
					codes = append(codes, f.Code)
				}
			}
		}
		require.Greater(t, len(rows), 10)
		tab.until(`document.querySelector("[data-differs='mould.flask_length'] td")?.textContent.endsWith(%s)`, map[string]string{"metric": "mm", "us": "in"}[units])
		tab.quiet()
		require.ElementsMatch(t, rows, js[[]string](tab, `[...document.querySelectorAll("[data-differs]")].map((row) => [...row.querySelectorAll("td")].map((cell) => {
			const text = cell.cloneNode(true);
			for (const extra of text.querySelectorAll(".compare-origin")) extra.remove();
			const shown = text.textContent;
			return ["not known", "not there", "—"].includes(shown) ? "" : shown;
		}).join(" | "))`))
		require.ElementsMatch(t, codes, js[[]string](tab, `[...document.querySelectorAll("[data-finding]")].map((e) => e.dataset.finding)`))
	}
	tab.click(`[data-units=metric]`)
	tab.until(`document.querySelector("[data-differs='mould.flask_length'] td")?.textContent.endsWith("mm")`)
	tab.click("[data-section=mould] [data-differs=cope_mass] td:nth-of-type(2) a")
	tab.until(`document.querySelector("pw-working [data-step]")`)
	require.Contains(t, js[string](tab, `location.hash`), "#/plan/"+copied+"/sheet/mould/cope_mass")
	tab.view("#/compare/" + original + "/" + copied)
	tab.click("[data-differs='mould.flask_length'] td:nth-of-type(1) a")
	tab.until(`document.activeElement?.dataset.field === "mould.flask_length"`)
	require.Equal(t, "320 mm", tab.value("mould.flask_length"))
}

// A plan beside itself, and beside one that is not there.
func TestCompareNothing(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.hosted()
	tab.example(bracket)
	id := tab.planAddress()[len("#/plan/"):]
	tab.view("#/compare/" + id + "/" + id)
	tab.until(`document.querySelector("pw-compare main").textContent.includes("They are the same")`)
	tab.view("#/compare/" + id + "/none")
	tab.until(`document.querySelector("pw-compare main").textContent.includes("not on this device")`)
}
