package quantity

import (
	"math"
	"strconv"
	"strings"
)

// Format shows q for reading, rounded to the digits that its kind deserves, in
// the unit of the system that suits its size: "420 mm", "1.2 m", "23.4 kg",
// "1180 °C", "4 min 20 s". The full value stays in q. What is not a finite
// number, or too large for any unit, is "not known".
func Format(q Any, system System) string {
	return string(Append(make([]byte, 0, 24), q.Kind(), q.SI(), system))
}

// Append appends to a text what Format shows of a quantity of a kind, by its SI
// value.
func Append(to []byte, k *Kind, si float64, system System) []byte {
	if k == timeKind && Finite(si) {
		return appendTime(to, si)
	}
	return appendIn(to, k, si, shownUnit(k, si, system))
}

// FormatIn shows q in one named unit, with the unit's own digits.
func FormatIn(q Any, unit string) string {
	return string(appendIn(nil, q.Kind(), q.SI(), q.Kind().mustUnit(unit)))
}

func appendIn(to []byte, k *Kind, si float64, u *Unit) []byte {
	x := u.from(si)
	if !Finite(x) {
		return append(to, "not known"...)
	}
	digits, decimals := u.digits, u.decimals
	if digits == 0 {
		digits = k.digits
	}
	if decimals == 0 {
		decimals = k.decimals
	}
	if u.Symbol == "mm" && math.Abs(x) >= 9.995 {
		decimals = 1 // nobody works sand to a hundredth of a millimetre
	}
	if k == moneyKind || k == priceKind {
		to = appendMoney(to, x)
	} else {
		to = appendNumber(to, x, digits, decimals)
	}
	if u.Symbol != "" && u.Symbol != "°" {
		to = append(to, ' ')
	}
	return append(to, u.Symbol...)
}

func shownUnit(k *Kind, v float64, system System) *Unit {
	size := math.Abs(v)
	if size == 0 {
		return k.entry[system] // nothing is nothing of the usual unit
	}
	for _, r := range k.ladder[system] {
		if size < r.below {
			return r.unit
		}
	}
	return k.entry[system]
}

// FormatNumber shows x with about the given significant digits and no more than
// the given decimals, but never with fewer than two significant digits, so
// that 0.014 does not become 0.01. Whole digits are never rounded away; very
// large and very small sizes are written with a power of ten. Trailing zeros
// after the point are dropped. Digits of zero ask for whole numbers.
func FormatNumber(x float64, digits, decimals int) string {
	return string(appendNumber(nil, x, digits, decimals))
}

func appendNumber(to []byte, x float64, digits, decimals int) []byte {
	if x == 0 {
		return append(to, '0')
	}
	size := math.Abs(x)
	if size >= 1e7 || size < 1e-4 && digits > 0 {
		head, power, _ := strings.Cut(strconv.FormatFloat(x, 'e', 2, 64), "e")
		n, err := strconv.Atoi(power)
		if err != nil {
			panic(err) // the exponent that strconv has just written
		}
		to = dropZeros(append(to, head...))
		return append(append(to, " × 10"...), superscript.Replace(strconv.Itoa(n))...)
	}
	places := 0
	if digits > 0 {
		order := orderOf(size)
		places = max(0, min(digits-1-order, max(decimals, 1-order)))
	}
	start := len(to)
	to = strconv.AppendFloat(to, x, 'f', places, 64)
	if places > 0 {
		to = dropZeros(to)
	}
	if string(to[start:]) == "-0" {
		return append(to[:start], '0')
	}
	return to
}

// orderOf is the power of ten of a size's first digit, from -4 to 6.
func orderOf(size float64) int {
	order := -4
	for order < 6 && size >= powers[order+5] {
		order++
	}
	return order
}

var powers = [...]float64{1e-4, 1e-3, 1e-2, 1e-1, 1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6}

var superscript = strings.NewReplacer("-", "⁻", "0", "⁰", "1", "¹", "2", "²", "3", "³", "4", "⁴", "5", "⁵", "6", "⁶", "7", "⁷", "8", "⁸", "9", "⁹")

// dropZeros drops the zeros that end a text with a decimal point, and then the
// point.
func dropZeros(text []byte) []byte {
	n := len(text)
	for text[n-1] == '0' {
		n--
	}
	if text[n-1] == '.' {
		n--
	}
	return text[:n]
}

func appendTime(to []byte, seconds float64) []byte {
	if seconds < 0 {
		to, seconds = append(to, '-'), -seconds
	}
	switch {
	case seconds < 119.5:
		return append(appendNumber(to, seconds, 3, 2), " s"...)
	case seconds < 3599.5:
		whole := int(math.Round(seconds))
		return appendTwo(to, whole/60, " min", whole%60, " s")
	case seconds < 48*3600:
		minutes := int(math.Round(seconds / 60))
		return appendTwo(to, minutes/60, " h", minutes%60, " min")
	}
	return append(appendNumber(to, seconds/86400, 3, 1), " days"...)
}

func appendTwo(to []byte, a int, unitA string, b int, unitB string) []byte {
	to = append(strconv.AppendInt(to, int64(a), 10), unitA...)
	if b == 0 {
		return to
	}
	return append(strconv.AppendInt(append(to, ' '), int64(b), 10), unitB...)
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

// Scale is InUnit for many values.
func Scale(k *Kind, unit string) func(si float64) float64 { return k.mustUnit(unit).from }
