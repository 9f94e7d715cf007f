package site

import (
	"bytes"
	"compress/gzip"
	"encoding/base64"
	"encoding/binary"
	"maps"
	"path/filepath"
	"slices"
	"strings"
	"unicode/utf16"

	"github.com/evanw/esbuild/pkg/api"
	"github.com/kjk/lzma"
)

// blockLetters is how many letters of the data go into one block, so that the
// browser can turn to other things between them.
const blockLetters = 1 << 14

// carried builds the one file: page, style, worker, engine and checks, with a
// policy that allows exactly these and no request at all. All but a loader is
// packed and stands in data blocks, which app/blocks.js reads back. What the
// page is drawn from comes first and the engine last, so that the page is seen
// and used while the engine is still being read.
func (p *page) carried(engine []byte) ([]byte, error) {
	main, worker, err := p.scripts("carried", api.FormatIIFE, engine)
	if err != nil {
		return nil, err
	}
	loader, err := bundle(filepath.Join(p.dir, "app", "loader.js"), api.FormatIIFE, nil)
	if err != nil {
		return nil, err
	}
	notices, err := inline("<!--\n", p.fixed["notices.txt"], "-->")
	if err != nil {
		return nil, err
	}
	load, err := inline("<script>", loader, "</script>")
	if err != nil {
		return nil, err
	}
	policy := "default-src 'none'; script-src '" + digest(loader) + "' '" + digest(main) + "' 'wasm-unsafe-eval'; style-src '" + digest(p.style) + "'; " +
		"img-src data: blob:; worker-src blob:; form-action 'none'; base-uri 'none'"
	frame := p.fill(
		`<meta http-equiv="Content-Security-Policy" content="`+policy+`">
    <link rel="icon" href="data:image/svg+xml;base64,`+base64.StdEncoding.EncodeToString(p.fixed[iconFile])+`">
    `+notices,
		tailPlace)
	before, after, _ := strings.Cut(string(frame), tailPlace)

	out := utf16.Encode([]rune("\ufeff" + before))
	say := func(text string) { out = append(out, utf16.Encode([]rune(text))...) }
	block := func(name string, packed []byte) {
		for part := range slices.Chunk(letters(packed), blockLetters) {
			say(`<script type="application/x-` + name + `">`)
			out = append(out, part...)
			say("</script>\n")
		}
	}
	zipped := maps.Clone(p.aside)
	zipped["style"], zipped["worker"], zipped["page"] = p.style, worker, main
	for _, name := range slices.Sorted(maps.Keys(zipped)) {
		packed, err := zip(zipped[name])
		if err != nil {
			return nil, err
		}
		block(name, packed)
	}
	say(load + "\n")
	packed, err := squeeze(engine)
	if err != nil {
		return nil, err
	}
	block("engine", packed)
	say(after)
	file := make([]byte, 0, 2*len(out))
	for _, letter := range out {
		file = binary.LittleEndian.AppendUint16(file, letter)
	}
	return file, nil
}

// zip packs content as small as gzip can, which every browser unpacks itself;
// the writer stamps no time.
func zip(content []byte) ([]byte, error) {
	var b bytes.Buffer
	w, err := gzip.NewWriterLevel(&b, gzip.BestCompression)
	if err != nil {
		return nil, err
	}
	if _, err := w.Write(content); err != nil {
		return nil, err
	}
	err = w.Close()
	return b.Bytes(), err
}

// squeeze packs content as LZMA, a third smaller than gzip; app/unpack.js
// unpacks it.
func squeeze(content []byte) ([]byte, error) {
	var b bytes.Buffer
	const level = 6 // its window, 16 MB, holds the whole engine
	w := lzma.NewWriterSizeLevel(&b, int64(len(content)), level)
	if _, err := w.Write(content); err != nil {
		return nil, err
	}
	err := w.Close()
	return b.Bytes(), err
}

// letters writes bytes as text that an HTML page in UTF-16 can hold in a data
// block: two bytes to a letter, the first of them low. The letter before them all
// is 1 where the last byte was put in to make the number even, else 0. Letters
// that stand for nothing alone, or that a parser would change or end the block
// at, are written as a mark and the letter with its highest bit the other way,
// which makes the text 3 % larger than the bytes. app/blocks.js reads it back.
func letters(content []byte) []uint16 {
	const mark = 1
	odd := len(content) % 2
	out := make([]uint16, 1, len(content)*8/15+1)
	out[0] = '0' + uint16(odd)
	content = append(content[:len(content):len(content)], make([]byte, odd)...)
	for pair := range slices.Chunk(content, 2) {
		switch letter := binary.LittleEndian.Uint16(pair); {
		case letter == 0, letter == mark, letter == '\r', letter == '<',
			0xd800 <= letter && letter <= 0xdfff, letter == 0xfffe, letter == 0xffff:
			out = append(out, mark, letter^0x8000)
		default:
			out = append(out, letter)
		}
	}
	return out
}
