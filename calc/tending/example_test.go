package tending_test

import (
	"fmt"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/tending"
)

// A bottle at 72 °F in a refrigerator at 44 °F (Stewart, Calculus): 54.3 °F
// after an hour.
func Example() {
	in, _ := form.Decode[tending.Input]([]byte(`{"surroundings":"44 °F","time_constant":"3608 s","now":"60 min",
		"events":[{"what":"tapped","at":"0 s"},{"what":"reading","at":"0 s","temperature":"72 °F"}]}`), quantity.US)
	out, _ := tending.Tend(in, nil)
	fmt.Printf("%.1f °F\n", quantity.In(out.Metal.V, "degF"))
	// Output: 54.3 °F
}
