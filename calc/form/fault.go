package form

import (
	"strings"

	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// Fault is one thing wrong with an input: the field, what stands there, and
// what is allowed.
type Fault struct {
	// Field is the JSON path, such as "dimensions[2].size".
	Field string
	// Label is the field's name on screen.
	Label string
	// Value is what stands there, as typed; empty where nothing does.
	Value string
	// Why says what is wrong and what is allowed.
	Why working.Text
	// Missing is set where the field is only not filled in yet.
	Missing bool
}

// Section is the first name of the field's path.
func (f Fault) Section() string {
	if i := strings.IndexAny(f.Field, ".["); i >= 0 {
		return f.Field[:i]
	}
	return f.Field
}

// In writes the fault out as one sentence in a unit system.
func (f Fault) In(system quantity.System) string {
	return f.Label + ": " + f.Why.In(system)
}

// Faults is every fault of an input; it is the error a calculator returns.
type Faults []Fault

// Error lists the faults in metric units, a line each.
func (fs Faults) Error() string {
	lines := make([]string, len(fs))
	for i, f := range fs {
		lines[i] = f.Field + ": " + f.Why.String()
	}
	return strings.Join(lines, "\n")
}

// Err is fs as an error, or nil where there is no fault.
func (fs Faults) Err() error {
	if len(fs) == 0 {
		return nil
	}
	return fs
}

// Missing reports whether all that is wrong is that fields are not filled in.
func (fs Faults) Missing() bool {
	for _, f := range fs {
		if !f.Missing {
			return false
		}
	}
	return len(fs) > 0
}
