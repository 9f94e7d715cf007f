package main

import (
	"bytes"
	"encoding/json"
	"flag"
	"fmt"
	"io"
	"strings"

	"pourwright/calc/catalogue"
	"pourwright/calc/form"
)

// reply is what eval needs to know of the door's answer (see catalogue.Call).
type reply struct {
	OK       bool    `json:"ok"`
	Broken   string  `json:"broken"`
	Faults   []fault `json:"faults"`
	Stations []struct {
		Faults []fault `json:"faults"`
	} `json:"stations"`
}

type fault struct{ Field, Label, Text string }

// eval runs one call of the door: JSON in, the whole answer out, every bad
// field named on the error stream. A plan with bad fields still answers what
// it can.
func eval(args []string, in io.Reader, out, wrong io.Writer) int {
	flags := flag.NewFlagSet("eval", flag.ContinueOnError)
	units := flags.String("units", "metric", "`system` to show answers in and to take bare numbers in: metric or us")
	working := flags.Bool("working", false, "add the steps of the sums")
	list := flags.Bool("list", false, "list the calculators and their fields")
	name := ""
	if len(args) > 0 && !strings.HasPrefix(args[0], "-") {
		name, args = args[0], args[1:]
	}
	if status, end := parse(flags, args, wrong); end {
		return status
	}
	options, err := json.Marshal(catalogue.Options{Units: *units, Working: *working})
	if err != nil {
		return fail(wrong, err)
	}
	if *list {
		return listAll(options, out, wrong)
	}
	if name == "" {
		fmt.Fprintln(wrong, "name a calculator: eval NAME < in.json; eval -list names them all")
		return misuse
	}
	input, err := io.ReadAll(in)
	if err != nil {
		return fail(wrong, err)
	}
	answer := catalogue.Call(name, options, input)
	var r reply
	if err := json.Unmarshal(answer, &r); err != nil {
		return fail(wrong, err)
	}
	if r.Broken != "" {
		fmt.Fprintln(wrong, r.Broken)
		return misuse
	}
	if r.OK {
		var pretty bytes.Buffer
		if err := json.Indent(&pretty, answer, "", "  "); err != nil {
			return fail(wrong, err)
		}
		fmt.Fprintln(out, pretty.String())
	}
	faults := r.Faults
	for _, s := range r.Stations {
		faults = append(faults, s.Faults...)
	}
	for _, f := range faults {
		if f.Field == "" { // the input as a whole
			fmt.Fprintf(wrong, "%s: %s\n", f.Label, f.Text)
			continue
		}
		fmt.Fprintf(wrong, "%s (%s): %s\n", f.Field, f.Label, f.Text)
	}
	if len(faults) > 0 {
		return faulty
	}
	return fine
}

func listAll(options []byte, out, wrong io.Writer) int {
	var l struct {
		Broken      string
		Calculators []struct {
			Name, Title, About string
			Fields             []form.Field
		}
	}
	if err := json.Unmarshal(catalogue.Call("list", options, nil), &l); err != nil {
		return fail(wrong, err)
	}
	if l.Broken != "" {
		fmt.Fprintln(wrong, l.Broken)
		return misuse
	}
	for _, c := range l.Calculators {
		fmt.Fprintf(out, "%s: %s. %s\n", c.Name, c.Title, c.About)
		listFields(out, c.Fields, "    ")
		fmt.Fprintln(out)
	}
	return fine
}

func listFields(out io.Writer, fields []form.Field, indent string) {
	for _, f := range fields {
		fmt.Fprintf(out, "%s%s: %s\n", indent, f.Key, strings.Join(about(f), "; "))
		listFields(out, f.Fields, indent+"    ")
	}
}

// about says in a few words what a field takes.
func about(f form.Field) []string {
	words := []string{f.Label}
	switch f.Sort {
	case form.Quantity:
		words = append(words, strings.TrimSpace(f.Kind+" "+bracket(f.Unit)))
	case form.Choice:
		var values []string
		for _, c := range f.Choices {
			values = append(values, c.Value)
		}
		words = append(words, "one of "+strings.Join(values, ", "))
	default:
		words = append(words, string(f.Sort))
	}
	switch {
	case f.Min != "" && f.Max != "":
		words = append(words, f.Min+" to "+f.Max)
	case f.Min != "":
		words = append(words, "at least "+f.Min)
	case f.Max != "":
		words = append(words, "at most "+f.Max)
	}
	switch {
	case f.Default != "":
		words = append(words, "else "+f.Default)
	case f.Optional:
		words = append(words, "may be left out")
	}
	if f.When != nil {
		words = append(words, "only with "+f.When.Key+" "+strings.Join(f.When.Values, " or "))
	}
	return words
}

func bracket(unit string) string {
	if unit == "" {
		return ""
	}
	return "(" + unit + ")"
}
