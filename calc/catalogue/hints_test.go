package catalogue

import (
	"regexp"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/require"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
)

// Every field that a person fills in says where to get its figure, or what to
// enter, in a few words of its own: measure with calipers, weigh the pattern.
// What the page itself writes down while a pour runs has nobody to tell.
func TestHints(t *testing.T) {
	for _, c := range All() {
		if c.Name == "tending" {
			continue
		}
		checkHints(t, c.Name, c.Fields(quantity.Metric))
	}
}

func checkHints(t *testing.T, path string, fields []form.Field) {
	for _, f := range fields {
		at := path + "." + f.Key
		if f.Key == "record" {
			continue
		}
		checkHints(t, at, f.Fields)
		if f.Sort == form.Group {
			continue
		}
		require.NotEmpty(t, f.Hint, "%s (%s) does not say where to get its figure", at, f.Label)
		require.LessOrEqual(t, utf8.RuneCountInString(f.Hint), 200, at)
		said := words(f.Label)
		more := 0
		for word := range words(f.Hint) {
			if !said[word] {
				more++
			}
		}
		require.GreaterOrEqual(t, more, 2, "%s: “%s” says no more than its label “%s”", at, f.Hint, f.Label)
	}
}

var letters = regexp.MustCompile(`[\p{L}\d]+`)

func words(text string) map[string]bool {
	out := map[string]bool{}
	for _, w := range letters.FindAllString(strings.ToLower(text), -1) {
		out[w] = true
	}
	return out
}
