package pattern

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// TestToleranceTableHasNoSlips: along a row each grade is coarser than the one
// before, down a column each size has at least the tolerance of the one before,
// and a column's blanks stand only at its ends. A slip of a digit breaks it.
func TestToleranceTableHasNoSlips(t *testing.T) {
	for i, row := range tolerances {
		before := 0.0
		for g, v := range row.grades {
			if v == no {
				continue
			}
			require.Greater(t, v, before, "row to %g, grade %d", row.upTo, g+1)
			// Neighbouring grades differ by a step of the series, 1.2 to 1.6.
			if before != 0 {
				require.InDelta(t, 1.38, v/before, 0.24, "row to %g, grade %d", row.upTo, g+1)
			}
			before = v
			if i > 0 && tolerances[i-1].grades[g] != no {
				require.InDelta(t, 1.15, v/tolerances[i-1].grades[g], 0.2, "row to %g, grade %d", row.upTo, g+1)
			}
		}
	}
}

func TestAllowanceTableHasNoSlips(t *testing.T) {
	for i, row := range allowances {
		for g, v := range row.grades {
			require.Positive(t, v)
			if g > 0 {
				require.GreaterOrEqual(t, v, row.grades[g-1], "row to %g, grade %c", row.upTo, rmaGrades[g])
			}
			if i > 0 {
				require.GreaterOrEqual(t, v, allowances[i-1].grades[g], "row to %g, grade %c", row.upTo, rmaGrades[g])
			}
		}
	}
}

// TestEndOfRow: a size that ends a row belongs to it.
func TestEndOfRow(t *testing.T) {
	for i, row := range tolerances {
		c, ok := toleranceAt(9, row.upTo)
		require.Equal(t, row.grades[8] != no, ok)
		require.Equal(t, row.grades[8], c.v)
		if i+1 < len(tolerances) {
			c, _ := toleranceAt(9, row.upTo*1.0001)
			require.Equal(t, tolerances[i+1].grades[8], c.v)
		}
	}
	_, ok := toleranceAt(12, 10001)
	require.False(t, ok)
	finest, coarsest := gradesAt(12)
	require.Equal(t, []int{1, 12}, []int{finest, coarsest})
	for i, row := range allowances {
		require.Equal(t, row.grades[3], allowanceAt(3, row.upTo).v)
		if i+1 < len(allowances) {
			require.Equal(t, allowances[i+1].grades[3], allowanceAt(3, row.upTo*1.0001).v)
		}
	}
}
