package catalogue

import (
	"bytes"
	"unicode"
	"unicode/utf8"

	"pourwright/calc/quantity"
)

// inCurrency puts the reader's currency for the mark that amounts carry in a
// reply: a sign close before the figure, letters with a space between. In the
// working, where the currency stands as a unit behind the figure, none is
// called money. What could not stand in a JSON text as it is counts as none.
func inCurrency(reply []byte, currency string) []byte {
	mark := []byte(quantity.Currency)
	if !bytes.Contains(reply, mark) {
		return reply
	}
	for _, r := range currency {
		if !unicode.IsLetter(r) && !unicode.Is(unicode.Sc, r) && r != '.' {
			currency = ""
			break
		}
	}
	before, unit := currency, currency
	if last, _ := utf8.DecodeLastRuneInString(currency); unicode.IsLetter(last) || last == '.' {
		before += "\u00a0"
	}
	if currency == "" {
		unit = "money"
	}
	out := make([]byte, 0, len(reply)+64)
	for {
		head, rest, found := bytes.Cut(reply, mark)
		out = append(out, head...)
		if !found {
			return out
		}
		if len(rest) > 0 && '0' <= rest[0] && rest[0] <= '9' {
			out = append(out, before...)
		} else {
			out = append(out, unit...)
		}
		reply = rest
	}
}
