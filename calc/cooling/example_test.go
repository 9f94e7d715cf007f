package cooling_test

import (
	"fmt"

	"pourwright/calc/cooling"
	"pourwright/calc/freeze"
	"pourwright/calc/quantity"
)

// A grey-iron plate of 25 mm in green sand.
func ExampleShakeout() {
	out, err := cooling.Shakeout(cooling.Input{
		Shape: freeze.Plate, Thickness: 25 * quantity.Millimetre, Alloy: "grey-iron", Sand: "green-sand",
		PourTemperature: quantity.Some(quantity.From[quantity.Temperature](1350, "degC")),
	}, nil)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("shake out at", out.RecommendedTemperature, "after", quantity.Time(60*int(out.Recommended/60)))
	// Output: shake out at 650 °C after 2 h 1 min
}
