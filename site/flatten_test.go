package site

import (
	"encoding/binary"
	"testing"

	"github.com/stretchr/testify/require"
)

// written is a section of a WebAssembly module.
func written(id byte, content ...byte) []byte {
	return append(binary.AppendUvarint([]byte{id}, uint64(len(content))), content...)
}

func module(sections ...[]byte) []byte {
	out := []byte("\x00asm\x01\x00\x00\x00")
	for _, s := range sections {
		out = append(out, s...)
	}
	return out
}

// The pieces are laid where they belong, in any order, zeros between them, and
// the other sections stay as they are.
func TestFlattenData(t *testing.T) {
	kind, note := written(1, 0), written(0, 4, 'n', 'o', 't', 'e', 9)
	for name, c := range map[string]struct{ before, after []byte }{
		"no data":     {module(kind, note), module(kind, note)},
		"none in it":  {module(written(11, 0)), module(written(11, 1, 0, 0x41, 0, 0x0b, 0))},
		"one piece":   {module(kind, written(11, 1, 0, 0x41, 5, 0x0b, 2, 'a', 'b')), module(kind, written(11, 1, 0, 0x41, 5, 0x0b, 2, 'a', 'b'))},
		"three":       {module(written(11, 3, 0, 0x41, 0xc8, 0, 0x0b, 1, 'c', 0, 0x41, 0xc0, 0, 0x0b, 2, 'a', 'b', 0, 0x41, 0xc3, 0, 0x0b, 0), note), module(written(11, 1, 0, 0x41, 0xc0, 0, 0x0b, 9, 'a', 'b', 0, 0, 0, 0, 0, 0, 'c'), note)},
		"one on top":  {module(written(11, 2, 0, 0x41, 1, 0x0b, 2, 'a', 'b', 0, 0x41, 2, 0x0b, 1, 'c')), module(written(11, 1, 0, 0x41, 1, 0x0b, 2, 'a', 'c'))},
		"high places": {module(written(11, 1, 0, 0x41, 0x80, 0x80, 0xc0, 0, 0x0b, 1, 'a')), module(written(11, 1, 0, 0x41, 0x80, 0x80, 0xc0, 0, 0x0b, 1, 'a'))},
	} {
		t.Run(name, func(t *testing.T) {
			got, err := flattenData(c.before)
			require.NoError(t, err)
			require.Equal(t, c.after, got)
			next := 8 // where a section ends, so that the module may be cut off there
			for n := range c.before {
				_, err := flattenData(c.before[:n])
				if n < next {
					require.ErrorIs(t, err, errNotModule, "cut off at %d", n)
					continue
				}
				require.NoError(t, err, "cut off at %d", n)
				size, bytes := binary.Uvarint(c.before[n+1:])
				next = n + 1 + bytes + int(size)
			}
		})
	}
	for name, wrong := range map[string][]byte{
		"a piece for when it is asked for": module(written(11, 1, 1, 2, 'a', 'b')),
		"a place from elsewhere":           module(written(11, 1, 0, 0x23, 0, 0x0b, 1, 'a')),
		"a place that is a sum":            module(written(11, 1, 0, 0x41, 1, 0x41, 1, 0x6a, 0x0b, 1, 'a')),
		"pieces that the code counts":      module(written(12, 1), written(11, 1, 0, 0x41, 5, 0x0b, 1, 'a')),
		"fewer than it says":               module(written(11, 2, 0, 0x41, 5, 0x0b, 1, 'a')),
	} {
		_, err := flattenData(wrong)
		require.ErrorIs(t, err, errNotModule, name)
	}
}
