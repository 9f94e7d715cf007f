package figure_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/figure"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
)

func TestNew(t *testing.T) {
	bare := figure.New[quantity.Temperature](660.3, 0, 0, "°C", source.ASM15.Memory(""), "fixed point")
	require.False(t, bare.Ranged(), "0 and 0 are no range, even in °C")
	low, high := bare.Span()
	require.Equal(t, bare.V, low)
	require.Equal(t, bare.V, high)
	require.InDelta(t, 933.45, float64(bare.V), 1e-9)

	ranged := figure.New[quantity.Ratio](1, -1, 3, "%", source.ASM15.Memory(""), "")
	require.True(t, ranged.Ranged())
	l, h := ranged.Span()
	require.Equal(t, -1*quantity.Percent, l)
	require.Equal(t, 3*quantity.Percent, h)

	fromNought := figure.New[quantity.Ratio](0.5, 0, 1, "%", source.ASM15.Memory(""), "")
	require.True(t, fromNought.Ranged())
}
