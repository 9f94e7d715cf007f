package quantity

import (
	"fmt"
	"strings"
)

// Unit is one way to write a quantity. The SI value of x units is
// (x + offset) × num ÷ den; keeping the two whole numbers apart keeps 420 mm
// exactly 0.42 m.
type Unit struct {
	// Symbol is how the unit is printed.
	Symbol   string
	num, den float64
	offset   float64
	names    []string
	// digits and decimals are how many the unit shows; zero for the kind's own.
	digits, decimals int
}

func (u *Unit) to(x float64) float64    { return (x + u.offset) * u.num / u.den }
func (u *Unit) from(si float64) float64 { return si*u.den/u.num - u.offset }

// Kind is a sort of quantity: what it is called, the units it may be written
// in, and the ones it is shown in.
type Kind struct {
	// Name is the quantity's plain name, such as "length".
	Name string
	// Units are the units that Parse understands.
	Units []Unit
	// Metric and US are the units that a bare number is taken in.
	Metric, US string
	// Canonical is the unit that JSON is written in.
	Canonical string

	metric, us       []rung
	digits, decimals int
	byName           map[string]*Unit
	// entry and ladder are by system, with their units found.
	entry  [2]*Unit
	ladder [2][]foundRung
}

// rung says: below this SI value, show this unit.
type rung struct {
	below float64
	unit  string
}

type foundRung struct {
	below float64
	unit  *Unit
}

func newKind(k Kind) *Kind {
	k.byName = map[string]*Unit{}
	for i := range k.Units {
		u := &k.Units[i]
		k.byName[u.Symbol] = u
		for _, n := range u.names {
			k.byName[n] = u
		}
	}
	for system, ladder := range [2][]rung{Metric: k.metric, US: k.us} {
		for _, r := range ladder {
			k.ladder[system] = append(k.ladder[system], foundRung{r.below, k.mustUnit(r.unit)})
		}
	}
	k.entry = [2]*Unit{Metric: k.mustUnit(k.Metric), US: k.mustUnit(k.US)}
	return &k
}

// unit finds a unit by symbol or other name; letter case is tried as written
// first, then without.
func (k *Kind) unit(name string) (Unit, bool) {
	if u, ok := k.byName[name]; ok {
		return *u, true
	}
	for _, u := range k.Units {
		for _, n := range append([]string{u.Symbol}, u.names...) {
			if strings.EqualFold(n, name) && samePrefix(n, name) {
				return u, true
			}
		}
	}
	return Unit{}, false
}

// samePrefix keeps milli and mega apart: mJ is not read as MJ, while MM is
// still read as mm.
func samePrefix(unit, typed string) bool {
	prefixed := len(unit) > 1 && (unit[0] == 'm' || unit[0] == 'M') && unit[1] >= 'A' && unit[1] <= 'Z'
	return !prefixed || unit[0] == typed[0]
}

func (k *Kind) mustUnit(name string) *Unit {
	u, ok := k.byName[name]
	if !ok {
		panic(fmt.Sprintf("quantity: %s has no unit %q", k.Name, name))
	}
	return u
}

// Entry is the unit that a bare number is taken in, under a system.
func (k *Kind) Entry(s System) string {
	if s == US {
		return k.US
	}
	return k.Metric
}

// named is the name with its article.
func (k *Kind) named() string {
	if strings.ContainsRune("aeiou", rune(k.Name[0])) {
		return "an " + k.Name
	}
	return "a " + k.Name
}

// accepted lists the unit symbols for a message: "mm, cm, m, in or ft".
func (k *Kind) accepted() string {
	var symbols []string
	for _, u := range k.Units {
		if u.Symbol != "" {
			symbols = append(symbols, u.Symbol)
		}
	}
	if len(symbols) < 2 {
		return strings.Join(symbols, "")
	}
	last := len(symbols) - 1
	return strings.Join(symbols[:last], ", ") + " or " + symbols[last]
}
