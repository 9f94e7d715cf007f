package quantity

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestMoney(t *testing.T) {
	for x, want := range map[Money]string{0: "¤0", 0.05: "¤0.05", 0.5: "¤0.50", 12.5: "¤12.50", 1234.567: "¤1234.57", -3: "-¤3.00", 0.0042: "¤0.0042", 2e7: "¤20000000.00"} {
		require.Equal(t, want, Format(x, Metric))
		require.Equal(t, want, Format(x, US))
	}
	for text, want := range map[string]float64{"0.35/kg": 0.35, "0,35 per kg": 0.35, "350 per t": 0.35, "350/t": 0.35, "1 per lb": 1 / 0.45359237, "0.2": 0.2} {
		p, err := Parse[Price](text, Metric)
		require.NoError(t, err, text)
		require.InEpsilon(t, want, float64(p), 1e-12, text)
	}
	require.Equal(t, "¤0.35 per kg", Price(0.35).String())
	require.Equal(t, "¤0.16 per lb", Format(Price(0.35), US))
	half, err := Parse[Price]("1/2", US)
	require.NoError(t, err)
	require.InEpsilon(t, 0.5/0.45359237, float64(half), 1e-12)
}
