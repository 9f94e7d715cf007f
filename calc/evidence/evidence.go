// Package evidence runs the checks of testdata/checks: published examples,
// table cells of standards and results of independent programs, each put to a
// calculator through the same door that the screen uses. The same rows make
// the site's page of sources.
package evidence

import (
	"encoding/json"
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"

	"pourwright/calc/catalogue"
	"pourwright/calc/quantity"
)

// Check is one comparison with something outside the project.
type Check struct {
	// Source names author, title, year and place.
	Source string `json:"source"`
	// Known says how we know it: "seen", "from memory", "independent program".
	Known string `json:"known"`
	// Calculator is the name the door knows.
	Calculator string `json:"calculator"`
	// Input is the door's input.
	Input json.RawMessage `json:"input,omitempty"`
	// Plan, instead of an input, names a plan file of testdata/published.
	Plan string `json:"plan,omitempty"`
	// Answer is the path of the compared answer: "dimensions[0].pattern".
	Answer string `json:"answer"`
	// Expected is the published value with its unit.
	Expected string `json:"expected"`
	// Within is the allowed difference: half the last printed digit.
	Within string `json:"within"`
	// Note says more, such as a slip in the book.
	Note string `json:"note,omitempty"`
}

// Row is a check with what came out.
type Row struct {
	Check
	// Topic is the name of the file the check stands in.
	Topic string
	// Got is the answer, in the unit of Expected.
	Got string
	// Difference is Got less Expected, in the same unit.
	Difference string
	// Agrees is whether the difference is within the allowance.
	Agrees bool
	// Why says what went wrong where there is no answer to compare.
	Why string
}

// Parse reads one file of checks. plans are the plan files that checks may
// name, by file name.
func Parse(data []byte, plans map[string][]byte) ([]Check, error) {
	d := json.NewDecoder(strings.NewReader(string(data)))
	d.DisallowUnknownFields()
	var checks []Check
	if err := d.Decode(&checks); err != nil {
		return nil, err
	}
	for i, c := range checks {
		if c.Plan == "" {
			continue
		}
		document, ok := plans[c.Plan]
		if !ok {
			return nil, fmt.Errorf("%s: there is no plan file %q", c.Source, c.Plan)
		}
		checks[i].Calculator, checks[i].Input = "plan", document
	}
	return checks, nil
}

// Run puts the check to its calculator.
func Run(topic string, c Check) Row {
	row := Row{Check: c, Topic: topic}
	reply := catalogue.Call(c.Calculator, nil, c.Input)
	var tree map[string]any
	if err := json.Unmarshal(reply, &tree); err != nil {
		row.Why = err.Error()
		return row
	}
	if tree["ok"] != true {
		row.Why = string(reply)
		return row
	}
	answers := tree["answers"]
	if stations, ok := tree["stations"].([]any); ok {
		answers = byStation(stations)
	}
	leaf, err := find(answers, c.Answer)
	if err != nil {
		row.Why = err.Error()
		return row
	}
	got, ok := number(leaf)
	if !ok {
		row.Why = fmt.Sprintf("%s is not a number: %v", c.Answer, leaf)
		return row
	}
	unit := unitOf(c.Expected)
	want, err := value(c.Expected)
	if err != nil {
		row.Why = "expected: " + err.Error()
		return row
	}
	within, err := value(c.Within)
	if err != nil {
		row.Why = "within: " + err.Error()
		return row
	}
	diff := got - want.si
	// A temperature's allowance is a difference of temperatures.
	allowed := math.Abs(within.si - within.zero)
	row.Agrees = math.Abs(diff) <= allowed*(1+1e-9)
	scale := want.scale
	row.Got = strings.TrimSpace(strconv.FormatFloat(got/scale-want.offset, 'g', 6, 64) + " " + unit)
	row.Difference = strings.TrimSpace(strconv.FormatFloat(diff/scale, 'g', 2, 64) + " " + unit)
	return row
}

// byStation puts a plan's answers under the keys of their stations.
func byStation(stations []any) map[string]any {
	out := map[string]any{}
	for _, s := range stations {
		if s, ok := s.(map[string]any); ok {
			out[fmt.Sprint(s["key"])] = s["answers"]
		}
	}
	return out
}

var step = regexp.MustCompile(`^([^.\[\]]+)|^\[(\d+)\]|^\.`)

// find walks an answers tree along a path such as "risers[0].diameter".
func find(tree any, path string) (any, error) {
	rest := path
	for rest != "" {
		m := step.FindStringSubmatch(rest)
		if m == nil {
			return nil, fmt.Errorf("the path %q cannot be read", path)
		}
		rest = rest[len(m[0]):]
		switch {
		case m[1] != "":
			object, ok := tree.(map[string]any)
			if !ok || object[m[1]] == nil {
				return nil, fmt.Errorf("no answer %q in %q", m[1], path)
			}
			tree = object[m[1]]
		case m[2] != "":
			list, ok := tree.([]any)
			n, err := strconv.Atoi(m[2])
			if !ok || err != nil || n >= len(list) {
				return nil, fmt.Errorf("no item %s in %q", m[2], path)
			}
			tree = list[n]
		}
	}
	return tree, nil
}

func number(leaf any) (float64, bool) {
	object, ok := leaf.(map[string]any)
	if !ok {
		return 0, false
	}
	for _, key := range []string{"si", "value"} {
		if v, ok := object[key].(float64); ok {
			return v, true
		}
	}
	return 0, false
}

type reading struct {
	si, zero, scale, offset float64
}

// unitOf is what stands behind the number.
func unitOf(text string) string {
	_, unit, _ := strings.Cut(strings.TrimSpace(text), " ")
	return strings.TrimSpace(unit)
}

// value reads "198.1 cm/s" with whichever kind of quantity has that unit, and
// the scale that leads back to it.
func value(text string) (reading, error) {
	unit := unitOf(text)
	for _, k := range quantity.Kinds() {
		if unit == "" && k.Name != "number" {
			continue
		}
		si, err := quantity.ParseKind(k, text, quantity.Metric, "")
		if err != nil {
			continue
		}
		zero, err := quantity.ParseKind(k, strings.TrimSpace("0 "+unit), quantity.Metric, "")
		if err != nil {
			return reading{}, err
		}
		one, err := quantity.ParseKind(k, strings.TrimSpace("1 "+unit), quantity.Metric, "")
		if err != nil {
			return reading{}, err
		}
		return reading{si, zero, one - zero, zero / (one - zero)}, nil
	}
	return reading{}, fmt.Errorf("%q has no unit that is known here", text)
}
