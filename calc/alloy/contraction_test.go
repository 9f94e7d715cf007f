package alloy_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/alloy"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
)

func TestEveryContractionTable(t *testing.T) {
	for _, a := range alloy.All() {
		require.NotEmpty(t, a.Contractions, a.Code)
		works := map[*source.Work]bool{}
		for _, table := range a.Contractions {
			t.Run(fmt.Sprintf("%s, %s", a.Code, table.Source), func(t *testing.T) {
				require.False(t, works[table.Source.Work], "one table from one work")
				works[table.Source.Work] = true
				require.False(t, table.Source.IsZero())
				require.NotEmpty(t, table.For)
				require.Contains(t, []string{"mm", "in"}, table.Unit)
				require.NotEmpty(t, table.Rows)
				require.Zero(t, table.Rows[len(table.Rows)-1].UpTo, "the last row covers any size")
				for i, row := range table.Rows {
					low, high := row.Span()
					require.LessOrEqual(t, low, row.Restrained)
					require.LessOrEqual(t, row.Restrained, row.Free)
					require.LessOrEqual(t, row.Free, high)
					require.GreaterOrEqual(t, low, quantity.Ratio(0))
					require.LessOrEqual(t, high, 3*quantity.Percent)
					if i > 0 {
						require.LessOrEqual(t, row.Free, table.Rows[i-1].Free, "large castings contract less")
						require.LessOrEqual(t, row.Restrained, table.Rows[i-1].Restrained)
					}
					if i > 0 && i < len(table.Rows)-1 {
						require.Greater(t, row.UpTo, table.Rows[i-1].UpTo)
					}
				}
			})
		}
	}
}

func tableFrom(t *testing.T, code alloy.Code, work *source.Work) alloy.ContractionTable {
	t.Helper()
	for _, table := range metal(t, code).Contractions {
		if table.Source.Work == work {
			return table
		}
	}
	t.Fatalf("%s has no table from %s", code, work.Title)
	return alloy.ContractionTable{}
}

// Cells of P. N. Rao's table 3.1, mm/m, from memory. Where it prints a range,
// both ends are checked.
func TestRaoTable31(t *testing.T) {
	for _, c := range []struct {
		code      alloy.Code
		sizeMM    float64
		low, high float64
	}{
		{alloy.CodeGreyIron, 600, 10.5, 10.5}, {alloy.CodeGreyIron, 601, 8.5, 8.5}, {alloy.CodeGreyIron, 1200, 8.5, 8.5}, {alloy.CodeGreyIron, 1201, 7, 7},
		{alloy.CodeDuctileIron, 500, 8.3, 10.4},
		{alloy.CodeCarbonSteel, 600, 21, 21}, {alloy.CodeCarbonSteel, 1800, 16, 16}, {alloy.CodeCarbonSteel, 1801, 13, 13},
		{alloy.CodeAlSiMg, 300, 13, 13}, {alloy.CodeAluminium, 3000, 13, 13},
		{alloy.CodeAluminiumBronze, 300, 20, 23}, {alloy.CodeYellowBrass, 300, 15.5, 15.5},
		{alloy.CodeSiliconBronze, 300, 15.5, 22}, {alloy.CodeTinBronze, 300, 15.5, 22}, {alloy.CodeGunmetal, 300, 10, 16},
		{alloy.CodePewter, 300, 6, 6}, {alloy.CodeZA12, 300, 24, 24},
	} {
		t.Run(fmt.Sprintf("Rao table 3.1, from memory: %s at %g mm", c.code, c.sizeMM), func(t *testing.T) {
			row, _ := tableFrom(t, c.code, source.Rao).At(quantity.From[quantity.Length](c.sizeMM, "mm"))
			low, high := row.Span()
			require.InDelta(t, c.low, quantity.In(low, "mm/m"), 0.05)
			require.InDelta(t, c.high, quantity.In(high, "mm/m"), 0.05)
		})
	}
}

// Cells of the inch table in Heine, Loper and Rosenthal, from memory.
func TestHeineTable(t *testing.T) {
	const in = quantity.Inch
	for _, c := range []struct {
		code        alloy.Code
		size        quantity.Length
		free, cored float64
	}{
		{alloy.CodeGreyIron, 24 * in, 1.0 / 8, 1.0 / 8}, {alloy.CodeGreyIron, 30 * in, 1.0 / 10, 1.0 / 10},
		{alloy.CodeGreyIron, 40 * in, 1.0 / 10, 1.0 / 12}, {alloy.CodeGreyIron, 50 * in, 1.0 / 12, 1.0 / 12},
		{alloy.CodeCarbonSteel, 18 * in, 1.0 / 4, 1.0 / 4}, {alloy.CodeCarbonSteel, 20 * in, 1.0 / 4, 3.0 / 16},
		{alloy.CodeCarbonSteel, 36 * in, 3.0 / 16, 3.0 / 16}, {alloy.CodeCarbonSteel, 60 * in, 3.0 / 16, 5.0 / 32},
		{alloy.CodeCarbonSteel, 70 * in, 3.0 / 16, 1.0 / 8}, {alloy.CodeCarbonSteel, 80 * in, 5.0 / 32, 1.0 / 8},
		{alloy.CodeAlSiMg, 24 * in, 5.0 / 32, 5.0 / 32}, {alloy.CodeAlSiMg, 36 * in, 5.0 / 32, 9.0 / 64},
		{alloy.CodeAlSiMg, 60 * in, 9.0 / 64, 1.0 / 8}, {alloy.CodeAlSiMg, 80 * in, 1.0 / 8, 1.0 / 8},
		{alloy.CodeYellowBrass, 10 * in, 3.0 / 16, 3.0 / 16},
	} {
		t.Run(fmt.Sprintf("Heine, Loper and Rosenthal ch. 2, from memory: %s at %g in", c.code, float64(c.size/in)), func(t *testing.T) {
			row, _ := tableFrom(t, c.code, source.Heine).At(c.size)
			require.InDelta(t, c.free, quantity.In(row.Free, "in/ft"), 1e-9)
			require.InDelta(t, c.cored, quantity.In(row.Restrained, "in/ft"), 1e-9)
		})
	}
	t.Run("Heine, Loper and Rosenthal ch. 2, from memory: bronze 1/8 to 1/4", func(t *testing.T) {
		row, _ := tableFrom(t, alloy.CodeSiliconBronze, source.Heine).At(10 * in)
		low, high := row.Span()
		require.InDelta(t, 1.0/8, quantity.In(low, "in/ft"), 1e-9)
		require.InDelta(t, 1.0/4, quantity.In(high, "in/ft"), 1e-9)
	})
	t.Run("Heine, Loper and Rosenthal ch. 2, from memory: cored aluminium over 48 in down to 1/16", func(t *testing.T) {
		row, _ := tableFrom(t, alloy.CodeAlSiMg, source.Heine).At(80 * in)
		low, _ := row.Span()
		require.InDelta(t, 1.0/16, quantity.In(low, "in/ft"), 1e-9)
	})
}

// The older table, read in a public copy.
func TestDooleyTable(t *testing.T) {
	for code, inPerFt := range map[alloy.Code]float64{
		alloy.CodeGreyIron: 3.0 / 32, alloy.CodeCarbonSteel: 3.0 / 16, alloy.CodeYellowBrass: 7.0 / 32, alloy.CodeTinBronze: 5.0 / 32,
		alloy.CodeAluminium: 7.0 / 32, alloy.CodeZA12: 7.0 / 32, alloy.CodePewter: 3.0 / 16,
	} {
		t.Run(fmt.Sprintf("Dooley art. 426, seen: %s", code), func(t *testing.T) {
			row, _ := tableFrom(t, code, source.Dooley).At(quantity.Metre)
			require.InDelta(t, inPerFt, quantity.In(row.Free, "in/ft"), 1e-9)
		})
	}
}

// Guide values in the style of EN 12890, per cent, from memory.
func TestEuropeanGuideValues(t *testing.T) {
	for code, want := range map[alloy.Code][3]float64{
		alloy.CodeGreyIron: {1.0, 0.5, 1.3}, alloy.CodeDuctileIron: {1.2, 0.8, 2.0}, alloy.CodeCarbonSteel: {2.0, 1.5, 2.5},
		alloy.CodeAlSiMg: {1.2, 0.8, 1.5}, alloy.CodeTinBronze: {1.5, 0.8, 2.0}, alloy.CodeGunmetal: {1.3, 0.8, 1.6},
		alloy.CodeYellowBrass: {1.2, 0.8, 1.8}, alloy.CodeAluminiumBronze: {2.1, 1.9, 2.3}, alloy.CodeZA12: {1.3, 1.1, 1.5}, alloy.CodePewter: {0.5, 0.4, 0.6},
	} {
		t.Run(fmt.Sprintf("EN 12890, from memory: %s", code), func(t *testing.T) {
			row, _ := tableFrom(t, code, source.EN12890).At(quantity.Metre)
			low, high := row.Span()
			require.InDelta(t, want[0], quantity.In(row.Free, "%"), 0.05)
			require.InDelta(t, want[1], quantity.In(low, "%"), 0.05)
			require.InDelta(t, want[2], quantity.In(high, "%"), 0.05)
		})
	}
}

// The inch fractions, the decimals of the NPTEL sand-casting lecture and Rao's
// millimetres were printed apart from each other and mean the same rule.
func TestTablesAgree(t *testing.T) {
	for _, c := range []struct {
		name    string
		code    alloy.Code
		sizes   []quantity.Length
		decimal []float64 // in/ft
	}{
		{"grey iron, NPTEL decimals from memory", alloy.CodeGreyIron, []quantity.Length{0.5, 1, 1.5}, []float64{0.125, 0.105, 0.083}},
		{"steel, NPTEL decimals from memory", alloy.CodeCarbonSteel, []quantity.Length{0.4, 1.5, 2}, []float64{0.251, 0.191, 0.155}},
		{"aluminium, NPTEL decimals from memory", alloy.CodeAluminium, []quantity.Length{0.5, 1.5, 2}, []float64{0.155, 0.143, 0.125}},
	} {
		t.Run(c.name, func(t *testing.T) {
			for i, size := range c.sizes {
				row, _ := tableFrom(t, c.code, source.Heine).At(size)
				require.InDelta(t, c.decimal[i], quantity.In(row.Free, "in/ft"), 0.0051)
			}
		})
	}
	t.Run("Heine's inches are Rao's millimetres, within 0.5 mm/m", func(t *testing.T) {
		for code, sizes := range map[alloy.Code][]quantity.Length{alloy.CodeGreyIron: {0.5, 1, 1.5}, alloy.CodeCarbonSteel: {0.4, 1.5, 2}, alloy.CodeAluminium: {0.5}, alloy.CodeYellowBrass: {0.5}} {
			for _, size := range sizes {
				inch, _ := tableFrom(t, code, source.Heine).At(size)
				metric, _ := tableFrom(t, code, source.Rao).At(size)
				require.InDelta(t, quantity.In(metric.Free, "mm/m"), quantity.In(inch.Free, "mm/m"), 0.5)
			}
		}
	})
}

// 1/8 in/ft is 10.4 mm/m or 1.04 %, by definition of the inch and the foot.
func TestInchesPerFoot(t *testing.T) {
	for _, c := range []struct{ fraction, mmPerM, percent float64 }{
		{1.0 / 8, 10.4, 1.04}, {5.0 / 32, 13.0, 1.30}, {3.0 / 16, 15.6, 1.56}, {1.0 / 4, 20.8, 2.08}, {3.0 / 32, 7.8, 0.78}, {7.0 / 32, 18.2, 1.82},
	} {
		s := quantity.From[quantity.Ratio](c.fraction, "in/ft")
		require.InDelta(t, c.mmPerM, quantity.In(s, "mm/m"), 0.05)
		require.InDelta(t, c.percent, quantity.In(s, "%"), 0.005)
	}
}

func TestAtNamesItsRow(t *testing.T) {
	iron := tableFrom(t, alloy.CodeGreyIron, source.Rao)
	for size, want := range map[quantity.Length]string{
		0.6:  "grey iron, row up to 600 mm; above it 0.85 %",
		0.61: "grey iron, row over 600 mm to 1200 mm; below it 1.05 %, above it 0.7 %",
		2:    "grey iron, row over 1200 mm; below it 0.85 %",
	} {
		_, note := iron.At(size)
		require.Equal(t, want, note)
	}
	_, note := tableFrom(t, alloy.CodeYellowBrass, source.Heine).At(1)
	require.Equal(t, "brass, row any size", note)
}

func FuzzAt(f *testing.F) {
	for _, size := range []float64{0, 0.6096, 1, 10, -1, math.NaN(), math.Inf(1)} {
		f.Add(size)
	}
	f.Fuzz(func(t *testing.T, size float64) {
		for _, a := range alloy.All() {
			for _, table := range a.Contractions {
				row, note := table.At(quantity.Length(size))
				require.NotEmpty(t, note)
				require.True(t, quantity.Finite(float64(row.Free)))
			}
		}
	})
}
