package quantity

import (
	"fmt"
	"math"
)

// InchFraction writes a length as the nearest whole part of an inch, in lowest
// terms, the way it is read off a rule: "30 11/64 in". The parts are a power of
// two.
func InchFraction(l Length, parts int) string {
	n := int(math.Round(math.Abs(In(l, "in")) * float64(parts)))
	sign := ""
	if l < 0 && n > 0 {
		sign = "-"
	}
	whole, part := n/parts, n%parts
	for part > 0 && part%2 == 0 {
		part, parts = part/2, parts/2
	}
	switch {
	case part == 0:
		return fmt.Sprintf("%s%d in", sign, whole)
	case whole == 0:
		return fmt.Sprintf("%s%d/%d in", sign, part, parts)
	}
	return fmt.Sprintf("%s%d %d/%d in", sign, whole, part, parts)
}
