package browser

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// keepsAnswers waits until the device keeps the engine's answers to calls about
// the plan in hand.
func (tab *browserTab) keepsAnswers(names ...string) {
	tab.t.Helper()
	tab.until(records+`("pourwright.answers", "answers").then((all) => {
		const kept = all.filter((r) => location.hash.includes(r.plan)).map((r) => r.name);
		return %s.every((name) => kept.includes(name));
	})`, names)
}

// withoutEngine opens another page at an address, whose engine never answers.
func (tab *browserTab) withoutEngine(address string) *browserTab {
	tab.t.Helper()
	other := tab.another()
	other.before(`watched.dead = true; window.Worker = class extends EventTarget { postMessage() {} terminate() {} };`)
	other.visit(address)
	return other
}

// A plan that is opened again shows what the engine last answered, spans and all,
// before the engine has started; but an answer to another question never.
func TestLastAnswersStandBeforeTheEngine(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.carried()
	tab.example(relief)
	tab.until(`document.querySelector("pw-spread [data-span]")`)
	tab.keepsAnswers("plan", "spread")
	tab.until(`document.querySelector("[data-saved=saved]")`)
	address := js[string](tab, `location.href`)
	card, spans := tab.card(), tab.texts("pw-spread [data-span]")
	require.NotEmpty(t, card)
	require.NotEmpty(t, spans)

	early := tab.withoutEngine(address)
	early.until(`document.querySelector("[data-card] .card-text")`)
	require.Equal(t, card, early.card())
	require.Equal(t, spans, early.texts("pw-spread [data-span]"))

	// The plan is changed where no engine answers: its old answers are no longer
	// those of what stands in it.
	early.sheet("weight")
	require.Equal(t, "false", js[string](early, `document.querySelector("pw-pour-card").ariaBusy`))
	early.fill("weight.solids[0].length", "190 mm")
	require.Equal(t, "true", js[string](early, `document.querySelector("pw-pour-card").ariaBusy`), "old answers stand beside the change as if they were its own")
	early.until(`document.querySelector("[data-saved=saved]")`)
	again := tab.withoutEngine(address)
	again.until(`document.querySelector("pw-plan")`)
	again.quiet()
	require.Empty(t, again.texts("[data-card] .card-text"))
}

// In the middle of a pour the furnace side comes back as it was.
func TestPourStandsBeforeTheEngine(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.pouringAt()
	tab.keepsAnswers("plan")
	// The furnace side's, to the record with the start of the pour in it.
	tab.until(records + `("pourwright.answers", "answers").then((all) => {
		const kept = all.find((r) => r.name === "furnace");
		return kept && JSON.stringify(JSON.parse(kept.question)[3]) === JSON.stringify(document.querySelector("pw-furnace").data.state.open.doc.record);
	})`)
	before := tab.elapsed()
	early := tab.withoutEngine(js[string](tab, `location.href`))
	early.atWork()
	early.stage("pour")
	require.NotEmpty(t, early.texts("[data-action=stop]"))
	early.goesOn(before, 0)
}

// A plan that is deleted takes its answers with it.
func TestAnswersGoWithTheirPlan(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.hosted()
	tab.example(bracket)
	tab.keepsAnswers("plan")
	tab.view("#/")
	tab.click("[data-action=delete-plan]")
	tab.click("[data-action=delete-plan-yes]")
	tab.until(`!document.querySelector("[data-plan]")`)
	tab.until(records + `("pourwright.answers", "answers").then((all) => all.length === 0)`)
}

// An example that the device has never seen is answered before the engine has
// started: by what the build has asked it. Changed, it is not.
func TestExamplesAreAnsweredBeforeTheEngine(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.carried()
	start := js[string](tab, `location.href`)
	tab.example(relief)
	card := tab.card()
	require.NotEmpty(t, card)

	early := tab.withoutEngine(start)
	early.click(`[data-example="` + relief + `"]`)
	early.until(`document.querySelector("[data-card] .card-text")`)
	require.Equal(t, card, early.card())
	require.Equal(t, tab.texts("pw-mould-drawing"), early.texts("pw-mould-drawing"))

	// What has not come yet is not shown as if it were nothing, or nothing needed.
	early.sheet("weight")
	require.Equal(t, []string{"Working it out."}, early.texts("[data-behind]"))
	early.view(early.planAddress() + "/handling")
	require.Contains(t, early.texts("pw-handling p"), "Working it out.")
	early.view(early.planAddress() + "/furnace")
	require.Equal(t, []string{"Working it out"}, early.texts("pw-furnace h1"))
	early.view(early.planAddress() + "/print")
	require.Contains(t, early.texts("pw-print-room p"), "Working it out.")

	early.view(early.planAddress())
	early.sheet("weight")
	early.fill("weight.solids[0].length", "190 mm")
	early.until(`document.querySelector("[data-saved=saved]")`)
	again := tab.withoutEngine(js[string](early, `location.href`))
	again.until(`document.querySelector("pw-plan")`)
	again.quiet()
	require.Empty(t, again.texts("[data-card] .card-text"))
}
