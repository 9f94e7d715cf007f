package catalogue

import (
	"pourwright/calc/qr"
	"pourwright/calc/reply"
)

// CodeRequest asks for a text as a QR code.
type CodeRequest struct {
	Text string `json:"text"`
}

// scanCode answers with the rows of the code's squares, from the top, 1 for a
// dark one; or that the text is too long.
func scanCode(w *reply.Writer, input []byte) {
	var q CodeRequest
	if err := strictly(input, &q); err != nil {
		panic("the question cannot be read: " + err.Error())
	}
	code, err := qr.Encode(q.Text)
	if err != nil {
		w.Raw(`{"ok":false,"faults":[{"field":"text","label":"","text":`)
		w.Text(err.Error())
		w.Raw("}]}")
		return
	}
	w.Raw(`{"ok":true,"rows":[`)
	row := make([]byte, code.Size)
	for y := range code.Size {
		for x := range row {
			row[x] = '0'
			if code.Black(x, y) {
				row[x] = '1'
			}
		}
		if y > 0 {
			w.Raw(",")
		}
		w.Text(string(row))
	}
	w.Raw("]}")
}
