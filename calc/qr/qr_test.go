package qr

import (
	"fmt"
	"image"
	"image/color"
	"math/rand"
	"strings"
	"testing"

	"github.com/makiuchi-d/gozxing"
	"github.com/makiuchi-d/gozxing/qrcode"
	"github.com/stretchr/testify/require"
)

// picture is the code as it stands on a screen: three pixels to a square and
// the quiet margin round it.
func picture(c Code) image.Image {
	const scale, margin = 3, 4
	side := (c.Size + 2*margin) * scale
	out := image.NewGray(image.Rect(0, 0, side, side))
	for y := range side {
		for x := range side {
			i, j := x/scale-margin, y/scale-margin
			black := i >= 0 && j >= 0 && i < c.Size && j < c.Size && c.Black(i, j)
			if !black {
				out.Set(x, y, color.White)
			}
		}
	}
	return out
}

// read has an independent reader look at the picture: gozxing, a port of ZXing.
func read(t *testing.T, c Code) string {
	t.Helper()
	bits, err := gozxing.NewBinaryBitmapFromImage(picture(c))
	require.NoError(t, err)
	found, err := qrcode.NewQRCodeReader().Decode(bits, map[gozxing.DecodeHintType]any{gozxing.DecodeHintType_PURE_BARCODE: true})
	require.NoError(t, err, "%d squares", c.Size)
	return found.GetText()
}

const base64url = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_"

func link(random *rand.Rand, length int) string {
	text := "https://example.org/pourwright/#/shared/"
	for len(text) < length {
		text += string(base64url[random.Intn(len(base64url))])
	}
	return text[:length]
}

// What is encoded is what another program reads, from the smallest code to the
// fullest of the largest.
func TestReadBackByZXing(t *testing.T) {
	random := rand.New(rand.NewSource(3))
	lengths := []int{1, 14, 40, Most - 1, Most}
	for range 25 {
		lengths = append(lengths, 1+random.Intn(Most))
	}
	for _, n := range lengths {
		text := link(random, n)
		code, err := Encode(text)
		require.NoError(t, err)
		require.Equal(t, text, read(t, code))
	}
}

// Capacities printed in table 7 of ISO/IEC 18004 (2015), byte mode, level L;
// from memory.
func TestCapacity(t *testing.T) {
	for version, bytes := range map[int]int{1: 17, 2: 32, 5: 106, 10: 271, 20: 858, 25: 1273, 30: 1732, 40: Most} {
		t.Run(fmt.Sprint("version ", version), func(t *testing.T) {
			full, err := Encode(strings.Repeat("a", bytes))
			require.NoError(t, err)
			require.Equal(t, 17+4*version, full.Size)
			more, err := Encode(strings.Repeat("a", bytes+1))
			if version == 40 {
				require.ErrorIs(t, err, ErrTooLong)
				return
			}
			require.NoError(t, err)
			require.Greater(t, more.Size, full.Size)
		})
	}
}

func ExampleEncode() {
	code, err := Encode("pour")
	if err != nil {
		panic(err)
	}
	for x := range 8 {
		fmt.Print(map[bool]string{true: "#", false: "."}[code.Black(x, 0)])
	}
	fmt.Println(code.Size)
	// Output: #######.21
}
