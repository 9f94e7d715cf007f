package site

import (
	"bytes"
	"compress/gzip"
	"encoding/base64"
	"maps"
	"slices"
	"strings"
	"unicode/utf8"

	"github.com/evanw/esbuild/pkg/api"
)

// blockBytes is how much of the data goes into one block, so that the browser can
// turn to other things between them. A multiple of seven leaves no odd bits.
const blockBytes = 7 << 12

// carried builds the one file: page, style, worker, engine and checks, with a
// policy that allows exactly these and no request at all. app/engine-source.js
// reads the data blocks back. The page's script runs where it stands (a module
// would wait for the end of the page): behind the data that it draws from, and
// before the engine, so that the page is seen and used while the engine is still
// being read.
func (p *page) carried(engine []byte) ([]byte, error) {
	main, worker, err := p.scripts("carried", api.FormatIIFE, engine)
	if err != nil {
		return nil, err
	}
	icon := base64.StdEncoding.EncodeToString(p.fixed[iconFile])
	policy := "default-src 'none'; script-src '" + digest(main) + "' 'wasm-unsafe-eval'; style-src '" + digest(p.style) + "'; " +
		"img-src data: blob:; worker-src blob:; form-action 'none'; base-uri 'none'"

	type element struct {
		open    string
		content []byte
		end     string
	}
	elements := []element{
		{"<style>", p.style, "</style>"},
		{"<!--\n", p.fixed["notices.txt"], "-->"},
		{`<script type="text/x-worker">`, worker, "</script>"},
	}
	pack := func(name string, content []byte) error {
		packed, err := zip(content)
		for part := range slices.Chunk(packed, blockBytes) {
			elements = append(elements, element{`<script type="application/x-` + name + `">`, sevenBits(part), "</script>"})
		}
		return err
	}
	for _, name := range slices.Sorted(maps.Keys(p.aside)) {
		if err := pack(name, p.aside[name]); err != nil {
			return nil, err
		}
	}
	elements = append(elements, element{"<script>", main, "</script>"})
	if err := pack("engine", engine); err != nil {
		return nil, err
	}
	var parts []string
	for _, e := range elements {
		part, err := inline(e.open, e.content, e.end)
		if err != nil {
			return nil, err
		}
		parts = append(parts, part)
	}
	return p.fill(
		`<meta http-equiv="Content-Security-Policy" content="`+policy+`">
    <link rel="icon" href="data:image/svg+xml;base64,`+icon+`">
    `+parts[0]+"\n    "+parts[1],
		strings.Join(parts[2:], "\n    ")), nil
}

// zip packs content as small as gzip can; the writer stamps no time.
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

// sevenBits writes bytes as text that an HTML page can hold in a data block:
// seven bits to a character, which UTF-8 stores in one byte, so that the text
// is 17 % larger than the bytes where base64 is 33 %. The three characters that
// a parser would change or end the block at (NUL, carriage return, <) are
// written 128 higher, as letters of two bytes; no higher, for a browser keeps a
// text whose letters are all below 256 in half the room and reads it sooner.
// app/engine-source.js reads it back.
func sevenBits(content []byte) []byte {
	out := make([]byte, 0, len(content)*6/5)
	bits, have := 0, 0
	put := func(v int) {
		switch v {
		case 0, '\r', '<':
			out = utf8.AppendRune(out, rune(128+v))
		default:
			out = append(out, byte(v))
		}
	}
	for _, b := range content {
		bits, have = bits<<8|int(b), have+8
		for have >= 7 {
			have -= 7
			put(bits >> have)
			bits &= 1<<have - 1
		}
	}
	if have > 0 {
		put(bits << (7 - have))
	}
	return out
}
