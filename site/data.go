package site

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"

	"pourwright/calc/catalogue"
	"pourwright/calc/evidence"
)

// example is a plan of testdata/plans, offered on the start page.
type example struct {
	File string          `json:"file"`
	Plan json.RawMessage `json:"plan"`
}

func examples(root string) ([]example, error) {
	plans, err := readFolder(root, "plans")
	out := []example{}
	for _, name := range slices.Sorted(maps.Keys(plans)) {
		out = append(out, example{name, plans[name]})
	}
	return out, err
}

// firstAnswers are what the engine says first of each example in metric units, as
// the page asks for it when the mould is opened without a sheet; and the drawing
// of an empty plan.
func firstAnswers(plans []example) ([]byte, error) {
	options, err := json.Marshal(catalogue.Options{Units: "metric", Full: []string{}})
	if err != nil {
		return nil, err
	}
	var out struct {
		Sketch   json.RawMessage   `json:"sketch"`
		Examples []json.RawMessage `json:"examples"`
	}
	for _, p := range plans {
		out.Examples = append(out.Examples, catalogue.Call("plan", options, p.Plan))
	}
	var empty struct{ Drawing json.RawMessage }
	if err := json.Unmarshal(catalogue.Call("plan", options, []byte("{}")), &empty); err != nil {
		return nil, err
	}
	out.Sketch = empty.Drawing
	return json.Marshal(out)
}

// demonstration is one of testdata/demonstrations, for the class; what it claims
// is for the tests alone.
type demonstration struct {
	File       string            `json:"file"`
	Title      string            `json:"title"`
	Question   string            `json:"question"`
	Told       string            `json:"told"`
	Source     string            `json:"source"`
	Calculator string            `json:"calculator"`
	Input      json.RawMessage   `json:"input,omitempty"`
	Example    string            `json:"example,omitempty"`
	Vary       string            `json:"vary"`
	Answer     string            `json:"answer"`
	From       string            `json:"from"`
	To         string            `json:"to"`
	Sliders    []string          `json:"sliders,omitempty"`
	Start      map[string]string `json:"start,omitempty"`
	Then       map[string]string `json:"then"`
}

// lessons are the demonstrations, and how each calculator opens in class.
type lessons struct {
	Demonstrations []demonstration `json:"demonstrations"`
	Openings       json.RawMessage `json:"openings"`
}

func readLessons(root string) (lessons, error) {
	files, err := readFolder(root, "demonstrations")
	if err != nil {
		return lessons{}, err
	}
	var out lessons
	for _, name := range slices.Sorted(maps.Keys(files)) {
		d := demonstration{File: name}
		if err := json.Unmarshal(files[name], &d); err != nil {
			return out, fmt.Errorf("%s: %w", name, err)
		}
		out.Demonstrations = append(out.Demonstrations, d)
	}
	out.Openings, err = os.ReadFile(filepath.Join(root, "testdata", "openings.json"))
	return out, err
}

// proof is a check of testdata/checks with what came out, for the page of
// sources.
type proof struct {
	Topic    string `json:"topic"`
	Source   string `json:"source"`
	Known    string `json:"known"`
	Expected string `json:"expected"`
	Within   string `json:"within"`
	Got      string `json:"got"`
	Agrees   bool   `json:"agrees"`
	Note     string `json:"note,omitempty"`
}

// proofs runs every check there is. One that fails is shown as failed; the
// tests of package evidence are what refuses it.
func proofs(root string) ([]proof, error) {
	files, err := readFolder(root, "checks")
	if err != nil {
		return nil, err
	}
	published, err := readFolder(root, "published")
	if err != nil {
		return nil, err
	}
	out := []proof{}
	for _, name := range slices.Sorted(maps.Keys(files)) {
		checks, err := evidence.Parse(files[name], published)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
		for _, c := range checks {
			row := evidence.Run(strings.TrimSuffix(name, ".json"), c)
			out = append(out, proof{row.Topic, row.Source, row.Known, row.Expected, row.Within, row.Got, row.Agrees, row.Note})
		}
	}
	return out, nil
}

// calculators is the door's list in a system of units, as the page reads it: a
// section of the plan that is another calculator's input only names it ("like").
func calculators(units string) ([]byte, error) {
	type calculator struct {
		Name   string                       `json:"name"`
		Title  string                       `json:"title"`
		About  string                       `json:"about"`
		Like   string                       `json:"like,omitempty"`
		Fields []map[string]json.RawMessage `json:"fields,omitempty"`
	}
	var list struct {
		Calculators []calculator `json:"calculators"`
	}
	if err := json.Unmarshal(catalogue.Call("list", []byte(`{"units":"`+units+`"}`), nil), &list); err != nil {
		return nil, err
	}
	known := map[string]string{} // fields → the calculator that has them
	text := func(fields []map[string]json.RawMessage) (string, error) {
		t, err := json.Marshal(fields)
		return string(t), err
	}
	for i := range list.Calculators {
		c := &list.Calculators[i]
		t, err := text(c.Fields)
		if err != nil {
			return nil, err
		}
		if like, ok := known[t]; ok {
			c.Like, c.Fields = like, nil
		} else {
			known[t] = c.Name
		}
	}
	for _, c := range list.Calculators {
		for _, section := range c.Fields {
			var fields []map[string]json.RawMessage
			if len(section["fields"]) == 0 {
				continue
			}
			if err := json.Unmarshal(section["fields"], &fields); err != nil {
				return nil, err
			}
			t, err := text(fields)
			if err != nil {
				return nil, err
			}
			if like, ok := known[t]; ok {
				delete(section, "fields")
				section["like"] = json.RawMessage(strconv.Quote(like))
			}
		}
	}
	return json.Marshal(list.Calculators)
}

// bothCalculators are the calculators in metric units, and what differs from
// those in US units.
func bothCalculators() (metric, changed []byte, err error) {
	if metric, err = calculators("metric"); err != nil {
		return nil, nil, err
	}
	us, err := calculators("us")
	if err != nil {
		return nil, nil, err
	}
	differ, err := changes(metric, us)
	if err != nil {
		return nil, nil, err
	}
	changed, err = json.Marshal(differ)
	return metric, changed, err
}

// changes are the values of one JSON text that differ from those of another of
// the same shape, each by how many values of any kind stand before it.
func changes(from, to []byte) (map[int]any, error) {
	before, err := values(from)
	if err != nil {
		return nil, err
	}
	after, err := values(to)
	if err != nil {
		return nil, err
	}
	if len(before) != len(after) {
		return nil, errors.New("the calculators have other fields in other units")
	}
	out := map[int]any{}
	for i, v := range after {
		if v != before[i] {
			out[i] = v
		}
	}
	return out, nil
}

// values are the strings, numbers and truths of a JSON text, in their order.
func values(text []byte) ([]any, error) {
	d := json.NewDecoder(bytes.NewReader(text))
	var out []any
	var read func() error
	read = func() error {
		t, err := d.Token()
		if t != json.Delim('{') && t != json.Delim('[') {
			out = append(out, t)
			return err
		}
		for d.More() {
			if t == json.Delim('{') {
				if _, err := d.Token(); err != nil {
					return err
				}
			}
			if err := read(); err != nil {
				return err
			}
		}
		_, err = d.Token()
		return err
	}
	return out, read()
}

// readFolder reads the JSON files of a folder of testdata, by name.
func readFolder(root, name string) (map[string][]byte, error) {
	paths, err := filepath.Glob(filepath.Join(root, "testdata", name, "*.json"))
	out := map[string][]byte{}
	for _, path := range paths {
		text, err := os.ReadFile(path)
		if err != nil {
			return nil, err
		}
		out[filepath.Base(path)] = text
	}
	return out, err
}
