package curve

import (
	"math"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
)

// Reach is the stretch over which an input is moved, in a unit fit to read.
type Reach struct {
	// Unit is the symbol that the rest is in.
	Unit string
	// Low, High and Step are round numbers of it.
	Low, High, Step float64
}

// Either way an input is moved to this times its value; a temperature by this
// share of its degrees Celsius, and by at least so many kelvins.
const (
	times       = 2.5
	shareOfHot  = 0.2
	leastKelvin = 20
)

// overhang is how far beyond the field's own range the stretch may go, as a
// share of what lies inside, so that one sees where the calculator refuses.
const overhang = 0.06

// ReachOf is the stretch for an input: round its value, inside the field's
// range or a little over its ends, in round numbers of the system's unit.
func ReachOf(s form.Slot, system quantity.System) Reach {
	low, high := ends(s)
	r := Reach{Unit: unitOf(s, math.Max(math.Abs(low), math.Abs(high)), system)}
	low, high = quantity.InUnit(s.Kind, low, r.Unit), quantity.InUnit(s.Kind, high, r.Unit)
	if !(high > low) {
		high = low + math.Max(1, math.Abs(low)/2)
	}
	r.Step = round(high - low)
	if s.Whole {
		r.Step = 1
	}
	r.Low, r.High = math.Floor(low/r.Step+1e-9)*r.Step, math.Ceil(high/r.Step-1e-9)*r.Step
	if r.Low <= 0 && low > 0 {
		r.Low = r.Step
	}
	if r.High <= r.Low {
		r.High = r.Low + r.Step
	}
	return r
}

// ends are low and high in SI, before they are rounded.
func ends(s form.Slot) (low, high float64) {
	v := s.Value
	switch {
	case s.Kind == quantity.Temperature(0).Kind():
		by := math.Max(shareOfHot*math.Abs(v-273.15), leastKelvin)
		low, high = v-by, v+by
	case v > 0:
		low, high = v/times, v*times
	case v < 0:
		low, high = v*times, v/times
	default:
		low, high = 0, 1
		if s.Min != nil {
			low = *s.Min
		}
		if s.Max != nil {
			high = *s.Max
		}
	}
	if s.Whole {
		low, high = math.Max(math.Floor(low), 0), math.Max(high, v+5)
	}
	// A small overhang shows where the field's range ends; below nothing, or
	// between whole numbers, there is none.
	if s.Max != nil {
		over := overhang * (*s.Max - low)
		if s.Whole {
			over = 0
		}
		high = math.Max(math.Min(high, *s.Max+over), v)
	}
	if s.Min != nil {
		under := overhang * (high - *s.Min)
		if s.Whole {
			under = 0
		}
		least := *s.Min - under
		if *s.Min >= 0 {
			least = math.Max(least, *s.Min/2)
		}
		low = math.Min(math.Max(low, least), v)
	}
	return low, high
}

// unitOf is the unit for a stretch: the one that the field is typed in where
// it has its own, else the one that suits the size.
func unitOf(s form.Slot, size float64, system quantity.System) string {
	if own := s.Entry[system]; own != "" {
		return own
	}
	return quantity.AxisUnit(s.Kind, size, system)
}

// round is about a hundredth of a stretch, as 1, 2 or 5 times a power of ten.
func round(stretch float64) float64 {
	power := math.Pow(10, math.Floor(math.Log10(stretch/100)))
	for _, m := range []float64{1, 2, 5} {
		if m*power >= stretch/100*0.999 {
			return m * power
		}
	}
	return 10 * power
}
