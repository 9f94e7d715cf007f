package freeze_test

import (
	"fmt"

	"pourwright/calc/freeze"
	"pourwright/calc/quantity"
)

// Groover's plate of 30 × 10 × 2 cm with C = 4.0 min/cm² freezes in 2.49 min.
func ExampleReckon() {
	out, err := freeze.Reckon(freeze.Input{
		Shape: freeze.Block, Length: 30 * quantity.Centimetre, Width: 10 * quantity.Centimetre, Thickness: 2 * quantity.Centimetre,
		Basis: quantity.Some(freeze.FromConstant), Constant: 4 * quantity.MinutePerSquareCentimetre,
	}, nil)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("modulus %.4f cm, %.2f min\n", quantity.In(out.Modulus, "cm"), quantity.In(out.Time, "min"))
	// Output: modulus 0.7895 cm, 2.49 min
}
