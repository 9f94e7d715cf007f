package browser

import (
	"encoding/json"
	"maps"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"pourwright/calc/catalogue"
)

// answer is the part of the engine's reply to a plan that these tests compare.
type answer struct {
	OK   bool `json:"ok"`
	Card []struct {
		Key, Label, Text, Station string
		Unknown                   bool
	} `json:"card"`
	Stations []struct {
		Key, Title, State string
		Answers           any
	} `json:"stations"`
}

// natively is what the same calculators answer to a plan outside the browser.
func natively(t testing.TB, units string, plan any) answer {
	t.Helper()
	question, err := json.Marshal(plan)
	require.NoError(t, err)
	options, err := json.Marshal(map[string]string{"units": units})
	require.NoError(t, err)
	var a answer
	reply := catalogue.Call("plan", options, question)
	require.NoError(t, json.Unmarshal(reply, &a))
	require.True(t, a.OK, "%s", reply)
	return a
}

// card is the pour card by its keys.
func (a answer) card() map[string]string {
	out := map[string]string{}
	for _, c := range a.Card {
		out[c.Key] = c.Text
	}
	return out
}

// card is the pour card as it stands on the page.
func (tab *browserTab) card() map[string]string {
	tab.t.Helper()
	return js[map[string]string](tab, `Object.fromEntries([...document.querySelectorAll("[data-card]")].map((item) => {
		const text = item.querySelector(".card-text").cloneNode(true);
		for (const extra of text.querySelectorAll(".out-of-sight, svg")) extra.remove();
		return [item.dataset.card, text.textContent.replace(/\s+/g, " ").trim()];
	}))`)
}

// comes waits until the card shows what the calculators answer natively, and
// the page has come to rest.
func (tab *browserTab) comes(units string, plan any) {
	tab.t.Helper()
	want := natively(tab.t, units, plan).card()
	tab.until(`document.querySelector("[data-card]")`)
	for end := time.Now().Add(patience); time.Now().Before(end) && !maps.Equal(want, tab.card()); {
		time.Sleep(20 * time.Millisecond)
	}
	tab.quiet()
	require.Equal(tab.t, want, tab.card())
}

// examples are the plans of the start page by file name.
func examples(t testing.TB) map[string]map[string]any {
	t.Helper()
	files, err := filepath.Glob("../../testdata/plans/*.json")
	require.NoError(t, err)
	require.NotEmpty(t, files)
	out := map[string]map[string]any{}
	for _, file := range files {
		content, err := os.ReadFile(file)
		require.NoError(t, err)
		var plan map[string]any
		require.NoError(t, json.Unmarshal(content, &plan))
		out[filepath.Base(file)] = plan
	}
	return out
}

// Of the examples, the bracket has no ± in it and is soon worked out; the
// relief shows most.
const (
	bracket = "bracket.pour.json"
	relief  = "relief.pour.json"
)

// example opens one from the start page and waits for its answers.
func (tab *browserTab) example(name string) {
	tab.t.Helper()
	tab.click(`[data-example="` + name + `"]`)
	tab.until(`document.querySelector("[data-card]")`)
	tab.quiet()
}

// sheet opens a station's sheet from the list of parts.
func (tab *browserTab) sheet(station string) {
	tab.t.Helper()
	tab.click(`[data-station="` + station + `"]`)
	tab.until(`document.querySelector(%s)`, `[data-sheet="`+station+`"]`)
	tab.quiet()
}

// planAddress is the part of the address that names the open plan.
func (tab *browserTab) planAddress() string {
	tab.t.Helper()
	return regexp.MustCompile(`^#/plan/[^/]+`).FindString(js[string](tab, `location.hash`))
}

// view goes to a page of the open plan, or of the site.
func (tab *browserTab) view(hash string) {
	tab.t.Helper()
	js[string](tab, `location.hash = %s`, hash)
	tab.until(`document.querySelector("h1")`)
	tab.quiet()
}

// with is a copy of a plan with one entry changed.
func with(t testing.TB, plan map[string]any, path, text string) map[string]any {
	t.Helper()
	content, err := json.Marshal(plan)
	require.NoError(t, err)
	var out any
	require.NoError(t, json.Unmarshal(content, &out))
	steps := strings.FieldsFunc(path, func(r rune) bool { return strings.ContainsRune(".[]", r) })
	at := out
	for i, step := range steps {
		last := i == len(steps)-1
		switch here := at.(type) {
		case map[string]any:
			if last {
				here[step] = text
			}
			at = here[step]
		case []any:
			n, err := strconv.Atoi(step)
			require.NoError(t, err)
			at = here[n]
		default:
			t.Fatalf("there is no %s in the plan", path)
		}
	}
	return out.(map[string]any)
}
