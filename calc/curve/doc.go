// Package curve follows one answer of a calculator as one input moves: over
// what stretch to move it, at which settings to ask, where the answer breaks
// off, and where it is refused or carries something to mind. It knows no
// calculator; whoever asks hands it a way of looking.
//
// The points stand closest where the answer bends or its state changes. What
// happens wholly between two points that are both alike is not seen: with the
// 80 points that a screen asks for, anything narrower than about a fortieth of
// the stretch may be missed.
package curve
