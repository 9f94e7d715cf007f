package quantity

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"unicode"
)

// maxText bounds what Parse looks at; nobody types a longer number.
const maxText = 80

// Parse reads a quantity as people type it in a shop: a plain number, taken in
// the kind's entry unit under the system (420), a number with a unit (16.5 in,
// 1380 °C), a fraction (3/8 in, 16 1/2 in), a decimal comma (12,5 cm), or
// several terms of falling units (5' 3 1/2", 2 lb 3 oz, 4 min 20 s).
//
// A comma that could group thousands (1,200) is refused rather than guessed
// at. The error names what was typed and what would be understood.
func Parse[T Of](text string, system System) (T, error) {
	var zero T
	v, err := ParseKind(zero.Kind(), text, system, "")
	return T(v), err
}

// ParseKind is Parse for a kind known only at run time; entry, if not empty,
// is the unit that a bare number is taken in. It returns the SI value.
func ParseKind(k *Kind, text string, system System, entry string) (float64, error) {
	if entry == "" {
		entry = k.Entry(system)
	}
	if len(text) > maxText {
		return 0, refuse(k, strings.ToValidUTF8(text[:maxText], "")+"…", "it is too long")
	}
	rest := text
	if k == moneyKind || k == priceKind {
		rest = strings.Replace(text, Currency, "", 1) // as it is shown
	}
	p := &parser{kind: k, text: text, rest: normalise(rest), entry: entry}
	return p.value()
}

// BareNumber reports whether text parses as a plain number without a unit, so
// that a door can add the unit it was taken in before it keeps the text.
func BareNumber(k *Kind, text string) bool {
	p := &parser{kind: k, text: text, rest: normalise(text)}
	if _, err := p.number(); err != nil {
		return false
	}
	return strings.TrimSpace(p.rest) == ""
}

// refuse quotes the text in curled marks: a straight one may be an inch.
func refuse(k *Kind, text, why string) error {
	wanted := "a plain number"
	if units := k.accepted(); units != "" {
		wanted = "a number with " + units
	}
	return fmt.Errorf("“%s” cannot be read as %s: %s; write %s", strings.TrimSpace(text), k.named(), why, wanted)
}

var vulgar = strings.NewReplacer(
	"½", " 1/2", "¼", " 1/4", "¾", " 3/4", "⅓", " 1/3", "⅔", " 2/3",
	"⅛", " 1/8", "⅜", " 3/8", "⅝", " 5/8", "⅞", " 7/8", "⁄", "/",
	"−", "-", "–", "-", "’", "'", "‘", "'", "”", `"`, "“", `"`, "′", "'", "″", `"`,
	"''", `"`, "\u00a0", " ", "\u202f", " ", "\u2009", " ", "µ", "μ",
)

// normalise folds the typographic variants of a typed number. A half sign in a
// unit (W·s½) is a power, not a fraction.
func normalise(text string) string {
	return strings.TrimSpace(vulgar.Replace(strings.ReplaceAll(text, "s½", "s^0.5")))
}

type parser struct {
	kind        *Kind
	text, rest  string
	entry       string
	lastUnitNum float64
}

func (p *parser) value() (float64, error) {
	if p.rest == "" {
		return 0, fmt.Errorf("%s is wanted here", p.kind.named())
	}
	total, terms := 0.0, 0
	negative := false
	for p.rest != "" {
		x, err := p.number()
		if err != nil {
			return 0, refuse(p.kind, p.text, err.Error())
		}
		p.skipSpace()
		if p.rest != "" && digit(p.rest[0]) {
			return 0, refuse(p.kind, p.text, "two numbers stand side by side")
		}
		name := p.unitName()
		var u Unit
		var ok bool
		switch {
		case name == "" && terms == 0 && p.rest == "":
			u, ok = p.kind.unit(p.entry)
		case name == "":
			return 0, refuse(p.kind, p.text, "a unit is missing")
		default:
			u, ok = p.kind.unit(name)
		}
		if !ok {
			return 0, refuse(p.kind, p.text, fmt.Sprintf("“%s” is not a unit of it", name))
		}
		scale := u.num / u.den
		switch {
		case terms == 0:
			total = u.to(x)
			negative = x < 0
		case u.offset != 0 || x < 0 || negative || scale >= p.lastUnitNum:
			return 0, refuse(p.kind, p.text, "its parts do not go together")
		default:
			total += u.to(x)
		}
		if terms == 0 && u.offset != 0 && p.rest != "" {
			return 0, refuse(p.kind, p.text, "its parts do not go together")
		}
		p.lastUnitNum = scale
		terms++
	}
	if !Finite(total) {
		return 0, refuse(p.kind, p.text, "it is out of all range")
	}
	return total, nil
}

// number takes a number off the front: sign, digits with a point or a decimal
// comma, an exponent, and a fraction (3/8), alone or after a whole number
// (16 1/2, 16-1/2).
func (p *parser) number() (float64, error) {
	p.skipSpace()
	sign := 1.0
	if strings.HasPrefix(p.rest, "-") || strings.HasPrefix(p.rest, "+") {
		if p.rest[0] == '-' {
			sign = -1
		}
		p.rest = p.rest[1:]
		p.skipSpace()
	}
	word := p.digits()
	if word == "" {
		return 0, fmt.Errorf("no number where one should stand")
	}
	x, err := plain(word)
	if err != nil {
		return 0, err
	}
	if strings.HasPrefix(p.rest, "/") && !(len(p.rest) > 1 && unicode.IsLetter(rune(p.rest[1]))) { // 3/8, but not 1.20/kg
		p.rest = p.rest[1:]
		den := p.digits()
		x, err = fraction(word, den)
		if err != nil {
			return 0, err
		}
		return sign * x, nil
	}
	if whole(word) {
		if f, n, ok := followingFraction(p.rest); ok {
			p.rest = p.rest[n:]
			return sign * (x + f), nil
		}
	}
	return sign * x, nil
}

// followingFraction recognises " 1/2" or "-1/2" after a whole number.
func followingFraction(s string) (value float64, length int, ok bool) {
	t := strings.TrimLeft(s, " ")
	if t == s && !strings.HasPrefix(s, "-") {
		return 0, 0, false
	}
	t = strings.TrimLeft(strings.TrimPrefix(t, "-"), " ")
	q := &parser{rest: t}
	num := q.digits()
	if num == "" || !strings.HasPrefix(q.rest, "/") {
		return 0, 0, false
	}
	q.rest = q.rest[1:]
	f, err := fraction(num, q.digits())
	if err != nil || f >= 1 {
		return 0, 0, false
	}
	return f, len(s) - len(q.rest), true
}

func (p *parser) skipSpace() { p.rest = strings.TrimLeft(p.rest, " \t") }

// digits takes the longest run that can be a number without sign: digits,
// points, commas, and an exponent where a digit follows the e.
func (p *parser) digits() string {
	i := 0
	for i < len(p.rest) {
		c := p.rest[i]
		if digit(c) || c == '.' || c == ',' {
			i++
			continue
		}
		if (c == 'e' || c == 'E') && i > 0 {
			j := i + 1
			if j < len(p.rest) && (p.rest[j] == '-' || p.rest[j] == '+') {
				j++
			}
			if j < len(p.rest) && digit(p.rest[j]) {
				i = j + 1
				for i < len(p.rest) && digit(p.rest[i]) {
					i++
				}
			}
		}
		break
	}
	word := p.rest[:i]
	p.rest = p.rest[i:]
	return word
}

func digit(c byte) bool { return c >= '0' && c <= '9' }

func whole(word string) bool {
	return strings.IndexFunc(word, func(r rune) bool { return r < '0' || r > '9' }) < 0
}

func plain(word string) (float64, error) {
	if n := strings.Count(word, ","); n > 0 {
		if n > 1 || strings.Contains(word, ".") {
			return 0, fmt.Errorf("commas cannot group thousands here")
		}
		before, after, _ := strings.Cut(word, ",")
		if len(after) == 3 && len(before) > 0 && len(before) <= 3 && before[0] != '0' {
			return 0, fmt.Errorf("%s could mean %s.%s or %s%s", word, before, after, before, after)
		}
		word = before + "." + after
	}
	x, err := strconv.ParseFloat(word, 64)
	if err != nil || !Finite(x) {
		return 0, fmt.Errorf("%s is not a number", word)
	}
	return x, nil
}

func fraction(num, den string) (float64, error) {
	if num == "" || den == "" || !whole(num) || !whole(den) {
		return 0, fmt.Errorf("a fraction needs whole numbers")
	}
	n, err := plain(num)
	if err != nil {
		return 0, err
	}
	d, err := plain(den)
	if err != nil {
		return 0, err
	}
	if !(d > 0) {
		return 0, fmt.Errorf("a fraction cannot divide by zero")
	}
	return n / d, nil
}

// unitName takes the unit off the front: everything up to the next number that
// starts a new term.
func (p *parser) unitName() string {
	p.skipSpace()
	s := p.rest
	end := len(s)
	for i, r := range s {
		if i > 0 && unicode.IsDigit(r) && termStart(s, i) {
			end = i
			break
		}
		if r == '-' && i+1 < len(s) && digit(s[i+1]) && p.known(s[:i]) { // 5'-3"
			p.rest = s[i+1:]
			return s[:i]
		}
	}
	// The longest known name wins, so that 2in3 of nonsense is refused whole
	// while mm2 and in^3 keep their figures.
	name := strings.TrimSpace(s[:end])
	if short := strings.TrimRight(name, " ."); short != "" && p.known(short) {
		name = short // "in." is "in"
	} else {
		name, end = strings.TrimSpace(s), len(s)
	}
	p.rest = strings.TrimLeft(s[end:], " \t")
	return name
}

func (p *parser) known(name string) bool {
	_, ok := p.kind.unit(name)
	return ok
}

// termStart reports whether the digit at s[i] begins a new term: after a space
// or an inch or foot mark, or right after letters where a longer name is
// not a unit (5ft3in).
func termStart(s string, i int) bool {
	switch s[i-1] {
	case ' ', '\t', '\'', '"':
		return true
	case '^', '-', '.', ',', '/':
		return false
	}
	// A letter before the digit: mm2, cm3, m2 and the like end in the figure.
	rest := s[i:]
	j := 0
	for j < len(rest) && digit(rest[j]) {
		j++
	}
	return strings.TrimSpace(rest[j:]) != "" && rest[j] != '/' && rest[j] != ')' && rest[j] != '*'
}

// marshal writes q in its kind's canonical unit with the fewest digits that
// read back as exactly the same value, or in the SI unit where none do.
func marshal(q Any) ([]byte, error) {
	if !Finite(q.SI()) {
		return nil, fmt.Errorf("quantity: a %s that is not a finite number cannot be written", q.Kind().Name)
	}
	return []byte(Text(q)), nil
}

// Text is the exact text form of q, as JSON holds it: it reads back by Parse
// as the same value to the last bit.
func Text(q Any) string {
	k := q.Kind()
	units := append([]Unit{*k.mustUnit(k.Canonical)}, k.Units...)
	for _, u := range units {
		x := u.from(q.SI())
		for _, y := range []float64{round(x, 12), round(x, 14)} {
			if u.to(y) == q.SI() {
				return write(y, u)
			}
		}
	}
	for _, u := range units {
		x := u.from(q.SI())
		for _, y := range []float64{x, math.Nextafter(x, math.Inf(1)), math.Nextafter(x, math.Inf(-1))} {
			if u.to(y) == q.SI() {
				return write(y, u)
			}
		}
	}
	return write(units[0].from(q.SI()), units[0])
}

func write(x float64, u Unit) string {
	return strings.TrimSpace(strconv.FormatFloat(x, 'g', -1, 64) + " " + u.Symbol)
}

// round keeps n significant digits of x.
func round(x float64, n int) float64 {
	y, err := strconv.ParseFloat(strconv.FormatFloat(x, 'g', n, 64), 64)
	if err != nil {
		return x
	}
	return y
}
