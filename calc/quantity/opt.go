package quantity

import "reflect"

// State says where the value of an Opt came from.
type State int

const (
	// Unknown: nobody has given a value. The zero value of an Opt.
	Unknown State = iota
	// Given: the user, or the caller, gave the value.
	Given
	// Defaulted: the field's printed default was put in, and is shown as one.
	Defaulted
)

// Opt is a value that may be left out: because it has a default, or because
// the answer is worth having without it, or because zero is an answer and so
// cannot mean "not given". The zero Opt is unknown.
type Opt[T any] struct {
	// V is the value; meaningless while State is Unknown.
	V T
	// State says whether V was given, is a default, or is not known.
	State State
}

// Some returns a given value.
func Some[T any](v T) Opt[T] { return Opt[T]{V: v, State: Given} }

// Known reports whether there is a value, given or default.
func (o Opt[T]) Known() bool { return o.State != Unknown }

// IsZero reports whether the value is unknown; encoding/json's omitzero uses it.
func (o Opt[T]) IsZero() bool { return o.State == Unknown }

// Or returns the value, or v where none is known.
func (o Opt[T]) Or(v T) T {
	if o.Known() {
		return o.V
	}
	return v
}

func (o Opt[T]) isOpt() {}

var optType = reflect.TypeFor[interface{ isOpt() }]()

// OptOf is the type of what an Opt type holds; ok is false for any other type.
func OptOf(t reflect.Type) (inner reflect.Type, ok bool) {
	if !t.Implements(optType) {
		return nil, false
	}
	return t.Field(0).Type, true
}

// OptValue is an Opt's value, to be set where the Opt can be, and whether it is
// known.
func OptValue(opt reflect.Value) (v reflect.Value, known bool) {
	return opt.Field(0), State(opt.Field(1).Int()) != Unknown
}

// SetOptState says where the value of an Opt came from.
func SetOptState(opt reflect.Value, s State) { opt.Field(1).SetInt(int64(s)) }
