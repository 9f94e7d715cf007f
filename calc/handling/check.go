package handling

import (
	"fmt"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// cross finds what is wrong between fields.
func cross(in Input) form.Faults {
	var out form.Faults
	if in.Carried.Known() && in.Metal > 0 && in.Carried.V < in.Metal {
		out = append(out, form.Fault{Field: "carried", Label: "Ladle as carried", Value: quantity.Text(in.Carried.V),
			Why: working.Say("%v is less than the metal alone, %v; shell and lining come on top", in.Carried.V, in.Metal)})
	}
	first := map[string]int{}
	for i, a := range in.Answers {
		if j, twice := first[a.Code]; twice && a.Code != "" {
			out = append(out, form.Fault{Field: fmt.Sprintf("answers[%d].code", i), Label: "Item", Value: a.Code,
				Why: working.Say("%v is answered twice, here and in answer %v; keep one of them", a.Code, j+1)})
			continue
		}
		first[a.Code] = i
	}
	return out
}
