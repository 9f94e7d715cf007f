package site

import (
	"bytes"
	"compress/gzip"
	"encoding/base64"
)

// carried builds the one file: page, style, worker and engine, with a policy
// that allows exactly these and no request at all. app/engine-source.js reads
// the two data blocks back.
func (p *page) carried(engine []byte) ([]byte, error) {
	main, worker, err := p.scripts("carried")
	if err != nil {
		return nil, err
	}
	packed, err := zip(engine)
	if err != nil {
		return nil, err
	}
	icon := base64.StdEncoding.EncodeToString(p.fixed[iconFile])
	policy := "default-src 'none'; script-src '" + digest(main) + "' 'wasm-unsafe-eval'; style-src '" + digest(p.style) + "'; " +
		"img-src data: blob:; worker-src blob:; form-action 'none'; base-uri 'none'"

	var parts []string
	for _, e := range []struct {
		open    string
		content []byte
		end     string
	}{
		{"<style>", p.style, "</style>"},
		{"<!--\n", p.fixed["notices.txt"], "-->"},
		{`<script type="text/x-worker">`, worker, "</script>"},
		{`<script type="application/x-engine">`, []byte(base64.StdEncoding.EncodeToString(packed)), "</script>"},
		{`<script type="module">`, main, "</script>"},
	} {
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
		parts[2]+"\n    "+parts[3]+"\n    "+parts[4]), nil
}

// zip packs the engine as small as gzip can; the writer stamps no time.
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
