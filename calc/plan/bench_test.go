package plan

import (
	"os"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/quantity"
	"pourwright/calc/reply"
)

// BenchmarkPlan reads, works through and writes the bronze relief, as one call
// of a door does.
func BenchmarkPlan(b *testing.B) {
	data, err := os.ReadFile("../../testdata/plans/relief.pour.json")
	require.NoError(b, err)
	for _, c := range []struct {
		name    string
		working bool
	}{{"answers", false}, {"with working", true}} {
		b.Run(c.name, func(b *testing.B) {
			b.ReportAllocs()
			size := 0
			for range b.N {
				w := &reply.Writer{System: quantity.Metric, Working: c.working}
				Work(Read(data, quantity.Metric)).Write(w)
				size = len(w.Bytes())
			}
			b.ReportMetric(float64(size), "bytes/reply")
		})
	}
}
