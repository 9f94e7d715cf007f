package quantity

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// Format shows q for reading, rounded to the digits that its kind deserves, in
// the unit of the system that suits its size: "420 mm", "1.2 m", "23.4 kg",
// "1180 °C", "4 min 20 s". The full value stays in q.
func Format(q Any, system System) string {
	v := q.SI()
	if !Finite(v) {
		return "not known"
	}
	if q.Kind() == timeKind {
		return formatTime(v)
	}
	u := shownUnit(q.Kind(), v, system)
	return strings.TrimSpace(FormatNumber(u.from(v), q.Kind().digits, q.Kind().decimals) + space(u.Symbol) + u.Symbol)
}

// FormatIn shows q in one named unit, with the kind's own digits.
func FormatIn(q Any, unit string) string {
	u := q.Kind().mustUnit(unit)
	return strings.TrimSpace(FormatNumber(u.from(q.SI()), q.Kind().digits, q.Kind().decimals) + space(u.Symbol) + u.Symbol)
}

func space(symbol string) string {
	if symbol == "°" {
		return ""
	}
	return " "
}

// Shown is the unit that Format picks for q, and q's value in it, for axes and
// bars that must agree with the figures beside them.
func Shown(q Any, system System) (value float64, unit string) {
	if q.Kind() == timeKind {
		return q.SI(), "s"
	}
	u := shownUnit(q.Kind(), q.SI(), system)
	return u.from(q.SI()), u.Symbol
}

func shownUnit(k *Kind, v float64, system System) Unit {
	ladder := k.metric
	if system == US {
		ladder = k.us
	}
	size := math.Abs(v)
	for _, r := range ladder {
		if size < r.below {
			return k.mustUnit(r.unit)
		}
	}
	return k.mustUnit(k.Entry(system))
}

// FormatNumber shows x with about the given significant digits, never more
// than the given decimals, and never in exponent form for ordinary sizes.
// Trailing zeros after the point are dropped.
func FormatNumber(x float64, digits, decimals int) string {
	if x == 0 {
		return "0"
	}
	size := math.Abs(x)
	if size >= 1e7 || size < 1e-4 && digits > 0 {
		return strings.Replace(strconv.FormatFloat(x, 'g', 3, 64), "e", " × 10^", 1)
	}
	places := digits - 1 - int(math.Floor(math.Log10(size)))
	if places > decimals && size >= math.Pow(10, -float64(decimals)) {
		places = decimals
	}
	if places < 0 {
		places = 0
	}
	s := strconv.FormatFloat(x, 'f', places, 64)
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	if s == "-0" {
		return "0"
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
		return sign + FormatNumber(seconds, 3, 1) + " s"
	case seconds < 3599.5:
		whole := int(math.Round(seconds))
		return sign + twoTerms(whole/60, "min", whole%60, "s")
	case seconds < 48*3600:
		minutes := int(math.Round(seconds / 60))
		return sign + twoTerms(minutes/60, "h", minutes%60, "min")
	}
	return sign + FormatNumber(seconds/86400, 3, 1) + " d"
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
