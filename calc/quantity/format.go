package quantity

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// Format shows q for reading, rounded to the digits that its kind deserves, in
// the unit of the system that suits its size: "420 mm", "1.2 m", "23.4 kg",
// "1180 °C", "4 min 20 s". The full value stays in q. What is not a finite
// number, or too large for any unit, is "not known".
func Format(q Any, system System) string {
	if q.Kind() == timeKind && Finite(q.SI()) {
		return formatTime(q.SI())
	}
	return show(q, shownUnit(q.Kind(), q.SI(), system))
}

// FormatIn shows q in one named unit, with the unit's own digits.
func FormatIn(q Any, unit string) string { return show(q, q.Kind().mustUnit(unit)) }

func show(q Any, u Unit) string {
	x := u.from(q.SI())
	if !Finite(x) {
		return "not known"
	}
	digits, decimals := u.digits, u.decimals
	if digits == 0 {
		digits = q.Kind().digits
	}
	if decimals == 0 {
		decimals = q.Kind().decimals
	}
	if u.Symbol == "mm" && math.Abs(x) >= 9.995 {
		decimals = 1 // nobody works sand to a hundredth of a millimetre
	}
	number := FormatNumber(x, digits, decimals)
	if q.Kind() == moneyKind || q.Kind() == priceKind {
		number = formatMoney(x)
	}
	return strings.TrimSpace(number + space(u.Symbol) + u.Symbol)
}

func space(symbol string) string {
	if symbol == "°" {
		return ""
	}
	return " "
}

func shownUnit(k *Kind, v float64, system System) Unit {
	ladder := k.metric
	if system == US {
		ladder = k.us
	}
	size := math.Abs(v)
	if size == 0 {
		return k.mustUnit(k.Entry(system)) // nothing is nothing of the usual unit
	}
	for _, r := range ladder {
		if size < r.below {
			return k.mustUnit(r.unit)
		}
	}
	return k.mustUnit(k.Entry(system))
}

// FormatNumber shows x with about the given significant digits and no more than
// the given decimals, but never with fewer than two significant digits, so
// that 0.014 does not become 0.01. Whole digits are never rounded away; very
// large and very small sizes are written with a power of ten. Trailing zeros
// after the point are dropped. Digits of zero ask for whole numbers.
func FormatNumber(x float64, digits, decimals int) string {
	if x == 0 {
		return "0"
	}
	size := math.Abs(x)
	if size >= 1e7 || size < 1e-4 && digits > 0 {
		head, power, _ := strings.Cut(strconv.FormatFloat(x, 'e', 2, 64), "e")
		n, err := strconv.Atoi(power)
		if err != nil {
			panic(err) // the exponent that strconv has just written
		}
		return dropZeros(head) + " × 10" + superscript.Replace(strconv.Itoa(n))
	}
	places := 0
	if digits > 0 {
		order := int(math.Floor(math.Log10(size)))
		places = max(0, min(digits-1-order, max(decimals, 1-order)))
	}
	s := dropZeros(strconv.FormatFloat(x, 'f', places, 64))
	if s == "-0" {
		return "0"
	}
	return s
}

var superscript = strings.NewReplacer("-", "⁻", "0", "⁰", "1", "¹", "2", "²", "3", "³", "4", "⁴", "5", "⁵", "6", "⁶", "7", "⁷", "8", "⁸", "9", "⁹")

func dropZeros(s string) string {
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	return s
}

func formatTime(seconds float64) string {
	sign := ""
	if seconds < 0 {
		sign, seconds = "-", -seconds
	}
	switch {
	case seconds < 119.5:
		return sign + FormatNumber(seconds, 3, 2) + " s"
	case seconds < 3599.5:
		whole := int(math.Round(seconds))
		return sign + twoTerms(whole/60, "min", whole%60, "s")
	case seconds < 48*3600:
		minutes := int(math.Round(seconds / 60))
		return sign + twoTerms(minutes/60, "h", minutes%60, "min")
	}
	return sign + FormatNumber(seconds/86400, 3, 1) + " days"
}

func twoTerms(a int, unitA string, b int, unitB string) string {
	if b == 0 {
		return fmt.Sprintf("%d %s", a, unitA)
	}
	return fmt.Sprintf("%d %s %d %s", a, unitA, b, unitB)
}

// AxisUnit is the unit for an axis whose largest value is si.
func AxisUnit(k *Kind, si float64, system System) string {
	if k == timeKind {
		switch {
		case si < 300:
			return "s"
		case si < 3*3600:
			return "min"
		}
		return "h"
	}
	return shownUnit(k, si, system).Symbol
}

// InUnit converts an SI value of a kind to a unit named by its symbol.
func InUnit(k *Kind, si float64, unit string) float64 { return k.mustUnit(unit).from(si) }
