package plan

import (
	"bytes"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/quantity"
	"pourwright/calc/reply"
)

// BenchmarkPlan reads, works through and writes the bronze relief, as one call
// of a door does: from nothing, with every step of the working, and after an
// edit that every weight, time and temperature hangs on.
func BenchmarkPlan(b *testing.B) {
	none, every := func(string) bool { return false }, func(string) bool { return true }
	for _, c := range []struct {
		name  string
		steps func(string) bool
		desk  *Desk
	}{{"answers", none, nil}, {"with working", every, nil}, {"after an edit", none, &Desk{}}} {
		b.Run(c.name, func(b *testing.B) {
			data := open(b, "plans/relief.pour.json")
			edited := bytes.Replace(data, []byte(`"thickness": "10 mm"`), []byte(`"thickness": "11 mm"`), 1)
			require.NotEqual(b, data, edited)
			b.ReportAllocs()
			size := 0
			for i := range b.N {
				desk := c.desk
				if desk == nil {
					desk = &Desk{}
				}
				w := &reply.Writer{System: quantity.Metric, Working: c.steps("")}
				doc, faults := desk.Read([][]byte{data, edited}[i%2], quantity.Metric)
				desk.Work(doc, faults, c.steps).Write(w)
				size = len(w.Bytes())
			}
			b.ReportMetric(float64(size), "bytes/reply")
		})
	}
}
