package site

import (
	"bytes"
	"encoding/base64"
	"encoding/binary"
	"math/rand/v2"
	"net/http/httptest"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

// No letter of the data can be taken for anything else by a reader of UTF-16 or
// of HTML. That the bytes come back, TestEngine shows in a browser.
func TestLettersAreSafe(t *testing.T) {
	every := []byte{}
	for letter := range 1 << 16 {
		every = binary.LittleEndian.AppendUint16(every, uint16(letter))
	}
	for _, content := range [][]byte{{}, {0}, {'<'}, {'<', 0, '\r', 0, 1, 0, 0}, every, every[1:]} {
		got := letters(content)
		require.Equal(t, uint16('0'+len(content)%2), got[0])
		back := []byte{}
		for rest := got[1:]; len(rest) > 0; rest = rest[1:] {
			letter := rest[0]
			require.NotContains(t, []uint16{0, '\r', '<', 0xfffe, 0xffff}, letter)
			require.False(t, 0xd800 <= letter && letter <= 0xdfff, "half of a pair")
			if letter == 1 {
				rest = rest[1:]
				letter = rest[0] ^ 0x8000
				require.NotContains(t, []uint16{0, '\r', '<', 0xfffe, 0xffff}, rest[0])
				require.False(t, 0xd800 <= rest[0] && rest[0] <= 0xdfff, "half of a pair")
			}
			back = binary.LittleEndian.AppendUint16(back, letter)
		}
		require.Equal(t, content, back[:len(content)])
	}
}

// What squeeze packs, with a well-tried library, the page's own script unpacks.
func TestUnpack(t *testing.T) {
	server := httptest.NewServer(bareFiles(t).Handler())
	t.Cleanup(server.Close)
	tab, state := visit(t, chromium(t), server.URL)
	require.Equal(t, "ready", state)
	r := rand.New(rand.NewPCG(1, 2))
	noise := func(n int) []byte {
		out := make([]byte, n)
		for i := range out {
			out[i] = byte(r.Uint32())
		}
		return out
	}
	// Runs, near and far copies of random lengths among noise: every kind of
	// match, of all the distances that the engine can have.
	mixed := noise(1000)
	for len(mixed) < 3<<20 {
		switch r.IntN(4) {
		case 0:
			mixed = append(mixed, noise(r.IntN(40))...)
		case 1:
			mixed = append(mixed, bytes.Repeat(noise(1), r.IntN(600))...)
		default:
			from := len(mixed) - 1 - int(float64(len(mixed)-1)*r.Float64()*r.Float64()*r.Float64())
			mixed = append(mixed, mixed[from:min(len(mixed), from+r.IntN(400))]...)
		}
	}
	for name, content := range map[string][]byte{
		"nothing": {}, "one byte": {7}, "text": []byte(strings.Repeat("cope and drag, ", 99)), "noise": noise(70_000), "a run": make([]byte, 1_100_000),
		"mixed": mixed,
	} {
		packed, err := squeeze(content)
		require.NoError(t, err)
		got, err := chromedp.Run(tab, chromedp.Evaluate[string](`unpacked("`+base64.StdEncoding.EncodeToString(packed)+`")`, chromedp.EvalAwaitPromise))
		require.NoError(t, err, name)
		require.True(t, base64.StdEncoding.EncodeToString(content) == got, "%s does not come back as it was", name)
	}
}
