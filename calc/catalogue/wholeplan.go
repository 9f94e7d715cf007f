package catalogue

import (
	"encoding/json"
	"reflect"

	"pourwright/calc/form"
	"pourwright/calc/plan"
	"pourwright/calc/quantity"
	"pourwright/calc/reply"
	"pourwright/calc/working"
)

// wholePlan is the entry of the plan itself. It always answers: what is wrong
// or missing stands in its stations.
func wholePlan() Calculator {
	return Calculator{
		Name: "plan", Title: "The whole plan",
		About: "One pour, all stations linked: what each answers, what it still needs, and everything to mind.",
		input: reflect.TypeFor[plan.Document](),
		open:  openPlan,
		run: func(d *Desk, w *reply.Writer, input []byte) []*working.Paper {
			doc, faults := d.plans.Read(input, w.System)
			worked := d.plans.Work(doc, faults, w.StepsOf)
			worked.Write(w)
			var papers []*working.Paper
			for _, s := range worked.Stations {
				papers = append(papers, s.Paper)
			}
			return papers
		},
	}
}

// planSpread is the entry of the plan's spread: how far its ruling answers
// stray with the inputs that carry a plus and minus.
func planSpread() Calculator {
	return Calculator{
		Name: "spread", Title: "Spread of the plan",
		About: "The likely span of each ruling answer of a plan whose inputs carry a plus and minus, and the inputs that drive it.",
		input: reflect.TypeFor[plan.Document](),
		run: func(_ *Desk, w *reply.Writer, input []byte) []*working.Paper {
			doc, inputs, faults := plan.ReadSpread(input, w.System)
			if len(faults) > 0 && faults[0].Field == "" { // no plan at all
				refuse(w, faults)
				return nil
			}
			plan.Spread(doc, faults, inputs).Write(w)
			return nil
		},
	}
}

// furnaceSide is the entry of the furnace side of a plan: its record followed
// with what the stations know of the pour.
func furnaceSide() Calculator {
	return Calculator{
		Name: "furnace", Title: "Furnace side of the plan",
		About: "A plan's pour as it runs, by its record: the metal now, the window left for each mould, the time against its band, the tilt, what to do next, and what to do when it goes wrong.",
		input: reflect.TypeFor[plan.Document](),
		run: func(d *Desk, w *reply.Writer, input []byte) []*working.Paper {
			doc, faults := d.plans.Read(input, w.System)
			if len(faults) > 0 && faults[0].Field == "" { // no plan at all
				refuse(w, faults)
				return nil
			}
			side := d.plans.Furnace(doc, faults, w.StepsOf)
			side.Write(w)
			return []*working.Paper{side.Paper}
		},
	}
}

// CompareRequest asks how two plans differ.
type CompareRequest struct {
	A json.RawMessage `json:"a"`
	B json.RawMessage `json:"b"`
}

// compare answers with what differs; what is wrong in either plan stands in
// its stations' states.
func compare(w *reply.Writer, input []byte) {
	var q CompareRequest
	if err := strictly(input, &q); err != nil {
		panic("the question cannot be read: " + err.Error())
	}
	plan.Compare(plan.ReadDraft(q.A, w.System), plan.ReadDraft(q.B, w.System)).Write(w)
}

// BriefRequest asks for many plans in one line each: every plan with the units
// that a bare number in it was typed in.
type BriefRequest struct {
	Plans []struct {
		Units string          `json:"units"`
		Plan  json.RawMessage `json:"plan"`
	} `json:"plans"`
}

// brief answers with the metal of each plan and what the mould takes of it;
// what is not known is left out.
func brief(w *reply.Writer, input []byte) {
	var q BriefRequest
	if err := strictly(input, &q); err != nil {
		panic("the question cannot be read: " + err.Error())
	}
	w.Raw(`{"ok":true,"plans":[`)
	for _, p := range q.Plans {
		w.Next()
		system, ok := quantity.ParseSystem(p.Units)
		if !ok {
			system = w.System
		}
		b := plan.InBrief(plan.ReadDraft(p.Plan, system))
		w.Raw("{")
		if b.Metal != "" {
			w.Pair("metal", b.Metal)
		}
		if b.Poured.Known() {
			w.Pair("poured", quantity.Format(b.Poured.V, w.System))
		}
		w.Raw("}")
	}
	w.Raw("]}")
}

// OwnRequest asks what a shop's own figures are worth in a plan.
type OwnRequest struct {
	Figures json.RawMessage `json:"figures"`
	Plan    json.RawMessage `json:"plan"`
}

// own answers with the faults of the figures, the plan's blanks that they fill
// and where they stand in it already.
func own(w *reply.Writer, input []byte) {
	var q OwnRequest
	if err := strictly(input, &q); err != nil {
		panic("the question cannot be read: " + err.Error())
	}
	plan.CheckOwn(q.Figures, q.Plan, w.System).Write(w)
}

// ownFields answers with the fields of the figures, as "list" does with those
// of a calculator.
func ownFields(w *reply.Writer, _ []byte) {
	b, err := json.Marshal(map[string]any{"ok": true, "fields": form.Describe(reflect.TypeFor[plan.Own](), w.System)})
	if err != nil {
		panic(err)
	}
	w.Raw(string(b))
}
