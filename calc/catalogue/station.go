package catalogue

import (
	"encoding/json"
	"fmt"

	"pourwright/calc/form"
	"pourwright/calc/plan"
	"pourwright/calc/reply"
)

// StationRequest asks for one station of a plan as an input to its calculator:
// what the station holds, and what the rest of the plan fills in.
type StationRequest struct {
	Plan    json.RawMessage `json:"plan"`
	Station string          `json:"station"`
}

// byAnotherName are the stations whose calculator is not called as they are.
var byAnotherName = map[string]string{"cores": "core", "feeding": "feed"}

// station answers with the calculator's name and the input to hand it. An
// entry of the station that could not be read is left out of that.
func station(w *reply.Writer, input []byte) {
	var q StationRequest
	if err := strictly(input, &q); err != nil {
		panic("the question cannot be read: " + err.Error())
	}
	s := plan.Answer(plan.Read(q.Plan, w.System)).Station(q.Station)
	if s == nil {
		panic(fmt.Sprintf("a plan has no station %q", q.Station))
	}
	name := q.Station
	if other, ok := byAnotherName[name]; ok {
		name = other
	}
	w.Raw(`{"ok":true,"calculator":`)
	w.Text(name)
	w.Pair("title", s.Title)
	w.Key("input")
	w.Raw(string(form.Encode(s.In)))
	w.Raw("}")
}
