// Package qr draws a text as a QR code (ISO/IEC 18004), so that a plan can be
// taken from one device to another with a camera and without a network.
package qr

import (
	"errors"

	"rsc.io/qr/coding"
)

// Most is how many bytes the largest code holds, at the lowest error
// correction: version 40, level L.
const Most = 2953

// ErrTooLong is the error of a text that no code holds.
var ErrTooLong = errors.New("the text is too long for a QR code")

// Code is the squares of a code, without the quiet margin of four squares that
// it wants all round.
type Code struct {
	// Size is how many squares a side has: 21 to 177.
	Size int
	code *coding.Code
}

// Black reports whether a square is dark: x to the right and y down from the
// top left corner.
func (c Code) Black(x, y int) bool { return c.code.Black(x, y) }

// Encode makes the smallest code that holds a text, with as much error
// correction as goes into that size.
func Encode(text string) (Code, error) {
	in := coding.String(text)
	fits := func(v coding.Version, l coding.Level) bool { return in.Bits(v) <= v.DataBytes(l)*8 }
	version := coding.Version(coding.MinVersion)
	for !fits(version, coding.L) {
		if version++; version > coding.MaxVersion {
			return Code{}, ErrTooLong
		}
	}
	level := coding.L
	for level < coding.H && fits(version, level+1) {
		level++
	}
	plan, err := coding.NewPlan(version, level, 0)
	if err != nil {
		return Code{}, err
	}
	code, err := plan.Encode(in)
	if err != nil {
		return Code{}, err
	}
	return Code{code.Size, code}, nil
}
