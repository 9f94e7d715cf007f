package pattern_test

import (
	"testing"

	"pourwright/calc/form"
	"pourwright/calc/pattern"
	"pourwright/calc/quantity"
	"pourwright/calc/reply"
	"pourwright/calc/working"
)

// FuzzSize feeds whatever JSON there is: the answer is faults or finite
// numbers, never a panic. The writer panics on a number that is not finite.
func FuzzSize(f *testing.F) {
	f.Add([]byte(`{"alloy":"grey-iron","dimensions":[{"size":"100 mm","machined":"both","rapping":"1 mm","draft_height":"50 mm","measured":"108 mm"}]}`))
	f.Add([]byte(`{"alloy":"pewter","own":"0","convention":"mould","grade":15,"rma_grade":"K","working_own":"6 %","working_stock":"10 mm","dimensions":[{"kind":"inside","size":"0.5 mm","machined":"both","tolerance":"100 mm"},{"kind":"wall","size":"10 m"}]}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		in, _ := form.Decode[pattern.Input](data, quantity.US)
		p := &working.Paper{}
		out, err := pattern.Size(in, p)
		if err != nil {
			return
		}
		w := &reply.Writer{System: quantity.US, Working: true}
		w.Answers(out, p)
		w.Findings(p.Findings)
		w.Steps(p.Steps)
	})
}
