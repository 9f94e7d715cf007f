package plan

import (
	"pourwright/calc/alloy"
	"pourwright/calc/quantity"
)

// Brief is a plan in one line, for a list of plans.
type Brief struct {
	// Metal is its name; empty while none is chosen.
	Metal string
	// Poured is the metal that the mould takes, while it is known.
	Poured quantity.Opt[quantity.Mass]
}

// InBrief works out what a list of plans shows, and no more.
func InBrief(draft Draft) Brief {
	r := start(draft.In, draft.Faults, nil, noPaper)
	r.metal()
	r.pattern()
	r.weight()
	out := Brief{}
	if a, ok := alloy.Find(draft.In.Metal.Alloy); ok {
		out.Metal = a.Name
	}
	if r.got.hasWeight {
		out.Poured = quantity.Some(r.got.weight.Poured)
	}
	return out
}
