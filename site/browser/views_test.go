package browser

import "strings"

// view is a state of the page that a user can bring about, with an example open.
type view struct {
	name string
	show func(*browserTab)
}

// stations are those of the open plan, in their order.
func (tab *browserTab) stations() []string {
	tab.t.Helper()
	return js[[]string](tab, `[...document.querySelectorAll("[data-station]")].map((link) => link.dataset.station)`)
}

// views are all there are of the site and of the open plan.
func (tab *browserTab) views() []view {
	tab.t.Helper()
	plan := tab.planAddress()
	at := func(hash string) func(*browserTab) { return func(tab *browserTab) { tab.view(hash) } }
	views := []view{
		{"start", at("#/")},
		{"settings", at("#/settings")},
		{"sources", at("#/sources")},
		{"no such plan", at("#/plan/none")},
		{"class", at("#/class")},
		{"class none", at("#/class/none")},
		{"plan", at(plan)},
		{"handling", at(plan + "/handling")},
		{"print", at(plan + "/print")},
		{"rule", at("#/rule")},
		{"furnace", at(plan + "/furnace")},
		{"share", func(tab *browserTab) {
			tab.view(plan + "/share")
			tab.until(`document.querySelector("[data-shared=qr]")`)
		}},
		{"broken link", at("#/shared/none")},
	}
	tab.view(plan)
	for _, station := range tab.stations() {
		views = append(views, view{"sheet " + station, at(plan + "/sheet/" + station)})
	}
	return views
}

// states are views with something opened or gone wrong in them.
func (tab *browserTab) states() []view {
	tab.t.Helper()
	plan := tab.planAddress()
	return []view{
		{"working", func(tab *browserTab) {
			tab.view(plan + "/sheet/weight/poured")
			tab.until(`document.querySelector("pw-working [data-step]")`)
			tab.click("pw-working [data-opens]")
			tab.quiet()
		}},
		{"print with a rule", func(tab *browserTab) {
			tab.view(plan + "/print")
			tab.until(`document.querySelector("[data-sheet-choice=rule]")`)
			if !js[bool](tab, `document.querySelector("[data-sheet-choice=rule]").checked`) {
				tab.click("[data-sheet-choice=rule]")
			}
			tab.until(`document.querySelector(".rule")`)
		}},
		{"menu", func(tab *browserTab) {
			tab.view(plan)
			tab.click("[data-action=menu]")
			tab.until(`document.querySelector(".menu:popover-open")`)
		}},
		{"in class", func(tab *browserTab) { tab.lesson("pour") }},
		{"in class from a plan", func(tab *browserTab) { tab.lesson(strings.TrimPrefix(plan, "#/") + "/gating") }},
		{"demonstration told", func(tab *browserTab) {
			tab.lesson("show/1-twice-as-thick")
			tab.click("[data-action=tell]")
			tab.rests()
		}},
		{"chart read", func(tab *browserTab) {
			tab.view(plan + "/sheet/ladleheat")
			tab.click("pw-chart [role=slider]")
			tab.click("pw-chart .chart-foot summary")
			tab.quiet()
		}},
		{"bad values", func(tab *browserTab) {
			tab.view(plan + "/sheet/weight")
			tab.fill("weight.solids[0].length", "12 blah")
			tab.view(plan + "/sheet/pour")
			tab.fill("pour.chosen_time", "1,200")
			tab.until(`document.querySelector("[aria-invalid]")`)
		}},
		{"plan with bad values", func(tab *browserTab) { tab.view(plan) }},
		{"asked to delete", func(tab *browserTab) {
			tab.view("#/")
			tab.click("[data-action=delete-plan]")
			tab.until(`document.querySelector("[data-action=delete-plan-yes]")`)
		}},
		{"compare", func(tab *browserTab) {
			tab.view("#/settings") // which forgets the question
			tab.view("#/")
			tab.click("[data-action=copy-plan]")
			tab.until(`document.querySelectorAll("[data-plan]").length > 1`)
			tab.click("[data-action=compare]")
			tab.until(`document.querySelector("[data-action=compare-with]")`)
		}},
		{"compared", func(tab *browserTab) {
			tab.click("[data-action=compare-with]")
			tab.until(`document.querySelector("[data-section]")`)
			tab.quiet()
		}},
		{"shared", func(tab *browserTab) {
			tab.view(plan + "/share")
			tab.until(`document.querySelector("[data-shared=link]")`)
			tab.view(js[string](tab, `new URL(document.querySelector("[data-shared=link]").value).hash`))
			tab.until(`document.querySelector("[data-action=take-shared]")`)
		}},
		{"shop's figures", func(tab *browserTab) {
			tab.ownFigures()
			tab.fill("sand.moisture", "90 %")
		}},
		{"new plan", func(tab *browserTab) {
			tab.view("#/")
			tab.click("[data-action=new-plan]")
			tab.until(`document.querySelector("[data-station]")`)
			tab.quiet()
		}},
	}
}
