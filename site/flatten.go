package site

import (
	"encoding/binary"
	"errors"
	"fmt"
	"slices"
)

// The sections of a WebAssembly module that flattenData has to do with, and the
// opcodes of where a part of the data belongs (WebAssembly core specification
// 2.0, W3C 2022, sections 5.4 and 5.5).
const (
	dataSection      = 11
	dataCountSection = 12
	i32Const         = 0x41
	end              = 0x0b
)

var errNotModule = errors.New("the engine is no WebAssembly module as the Go linker writes it")

// flattenData writes a module's initial data in one piece. The Go linker leaves
// out the zeros between the pieces, which makes a hundred thousand of them: with
// the zeros put back the module is a tenth larger, but as it is sent and kept,
// compressed, it is smaller by a fifteenth.
func flattenData(module []byte) ([]byte, error) {
	all, err := sections(module)
	if err != nil {
		return nil, err
	}
	out := slices.Clone(module[:moduleHeader])
	for _, s := range all {
		switch s.id {
		case dataSection:
			first, image, err := readData(s.content)
			if err != nil {
				return nil, err
			}
			one := append([]byte{1, 0, i32Const}, appendSigned(nil, int64(first))...)
			one = append(binary.AppendUvarint(append(one, end), uint64(len(image))), image...)
			out = append(binary.AppendUvarint(append(out, dataSection), uint64(len(one))), one...)
		case dataCountSection:
			return nil, fmt.Errorf("%w: its code refers to pieces of its data", errNotModule)
		default:
			out = append(out, s.whole...)
		}
	}
	return out, nil
}

// section is one of a module's: its kind, its content, and the whole of it with
// its heading.
type section struct {
	id             byte
	content, whole []byte
}

const moduleHeader = 8

func sections(module []byte) ([]section, error) {
	if len(module) < moduleHeader {
		return nil, errNotModule
	}
	var out []section
	for rest := module[moduleHeader:]; len(rest) > 0; {
		length, n := binary.Uvarint(rest[1:])
		if n <= 0 || length > uint64(len(rest)-1-n) {
			return nil, errNotModule
		}
		size := 1 + n + int(length)
		out = append(out, section{rest[0], rest[1+n : size], rest[:size]})
		rest = rest[size:]
	}
	return out, nil
}

// readData lays the pieces of a data section out as they will lie in memory,
// from the first of them on.
func readData(rest []byte) (first int, image []byte, err error) {
	defer func() {
		if recover() != nil { // it ends in the middle of something
			err = errNotModule
		}
	}()
	unsigned := func() int {
		v, n := binary.Uvarint(rest)
		rest = rest[n:]
		return int(v)
	}
	type piece struct {
		at      int
		content []byte
	}
	var pieces []piece
	last := 0
	for range unsigned() {
		if rest[0] != 0 || rest[1] != i32Const {
			return 0, nil, errNotModule
		}
		rest = rest[2:]
		at, n := signed(rest)
		if rest[n] != end {
			return 0, nil, errNotModule
		}
		rest = rest[n+1:]
		length := unsigned()
		pieces = append(pieces, piece{at, rest[:length]})
		rest = rest[length:]
		last = max(last, at+length)
	}
	if len(pieces) == 0 {
		return 0, nil, nil
	}
	first = pieces[0].at
	for _, p := range pieces {
		first = min(first, p.at)
	}
	image = make([]byte, last-first)
	for _, p := range pieces {
		copy(image[p.at-first:], p.content)
	}
	return first, image, nil
}

// signed reads a number in signed LEB128 and says how many bytes it takes.
func signed(b []byte) (v, n int) {
	for shift := 0; ; shift += 7 {
		c := b[n]
		v |= int(c&0x7f) << shift
		n++
		if c < 0x80 {
			if c&0x40 != 0 {
				v |= -1 << (shift + 7)
			}
			return v, n
		}
	}
}

func appendSigned(b []byte, v int64) []byte {
	for v < -64 || v > 63 {
		b = append(b, byte(v&0x7f|0x80))
		v >>= 7
	}
	return append(b, byte(v&0x7f))
}
