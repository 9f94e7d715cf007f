package quantity

import (
	"fmt"
	"math"
	"strings"
)

// cutSpread takes "420 mm ± 5 mm" apart; ok is false where there is no ±.
func cutSpread(text string) (middle, half string, ok bool) {
	for _, mark := range []string{"±", "+/-", "+-"} {
		if middle, half, ok = strings.Cut(text, mark); ok {
			return strings.TrimSpace(middle), strings.TrimSpace(half), true
		}
	}
	return strings.TrimSpace(text), "", false
}

// ParseSpread is ParseKind for a text that may carry a plus and minus:
// 420 mm ± 5 mm, 420 ± 5 mm, 12 kg ± 3 %. It returns the value and the half
// width, both in SI; the half width is 0 where none is written. A per cent
// behind ± is a share of the value, but points where the value is itself in
// per cent; a half width without a unit has the value's.
func ParseSpread(k *Kind, text string, system System, entry string) (si, half float64, err error) {
	if entry == "" {
		entry = k.Entry(system)
	}
	middle, width, ok := cutSpread(text)
	if !ok {
		si, err = ParseKind(k, text, system, entry)
		return si, 0, err
	}
	if len(text) > maxText {
		return 0, 0, refuse(k, strings.ToValidUTF8(text[:maxText], "")+"…", "it is too long")
	}
	p := &parser{kind: k, text: text, rest: normalise(width)}
	x, err := p.number()
	if err != nil || x < 0 {
		return 0, 0, refuse(k, text, "a plus and minus wants a number behind it")
	}
	unit := p.unitName()
	share := unit == "%" && k != ratioKind
	if p.rest != "" {
		return 0, 0, refuse(k, text, "there is something behind the plus and minus")
	}
	if BareNumber(k, middle) && unit != "" && !share {
		entry = unit
	}
	if _, known := k.unit(entry); !known {
		return 0, 0, refuse(k, text, fmt.Sprintf("“%s” is not a unit of it", entry))
	}
	if si, err = ParseKind(k, middle, system, entry); err != nil {
		return 0, 0, err
	}
	switch {
	case share:
		half = math.Abs(si) * x / 100
	default:
		if unit == "" {
			unit = unitOf(k, middle, entry)
		}
		u, known := k.unit(unit)
		if !known {
			return 0, 0, refuse(k, text, fmt.Sprintf("“%s” is not a unit of it", unit))
		}
		half = x * u.num / u.den // a difference: no offset
	}
	if !Finite(half) {
		return 0, 0, refuse(k, text, "it is out of all range")
	}
	return si, half, nil
}

// unitOf is the unit that a text ends in, or entry.
func unitOf(k *Kind, text, entry string) string {
	p := &parser{kind: k, text: text, rest: normalise(text)}
	if _, err := p.number(); err != nil {
		return entry
	}
	if name := p.unitName(); name != "" {
		return name
	}
	return entry
}

// FormatHalf shows the half width of a spread of a kind: a temperature's as a
// difference.
func FormatHalf(k *Kind, half float64, system System) string {
	if k == temperatureKind {
		k = tempDiffKind
	}
	return Format(value{k, half}, system)
}
