package mouldstuff_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/figure"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
)

func sound[T quantity.Of](t *testing.T, name string, f figure.Of[T], low, high float64) {
	t.Helper()
	l, h := f.Span()
	require.False(t, f.Source.IsZero(), "%s has no source", name)
	require.LessOrEqual(t, l, f.V, name)
	require.LessOrEqual(t, f.V, h, name)
	require.GreaterOrEqual(t, float64(l), low, name)
	require.LessOrEqual(t, float64(h), high, name)
}

func TestEverySand(t *testing.T) {
	for i, s := range mouldstuff.Sands() {
		t.Run(string(s.Code), func(t *testing.T) {
			sound(t, "density", s.Density, 1000, 3000)
			sound(t, "conductivity", s.Conductivity, 0.2, 2)
			sound(t, "specific heat", s.Heat, 600, 1400)
			sound(t, "water", s.Water, 0, 0.06)
			b := s.Effusivity()
			require.True(t, b.Ranged())
			sound(t, "effusivity", b, 500, 2100)
			require.NotEmpty(t, s.Binders)
			for _, code := range s.Binders {
				_, ok := mouldstuff.FindBinder(code)
				require.True(t, ok)
			}
			found, ok := mouldstuff.FindSand(s.Code)
			require.True(t, ok)
			require.Same(t, s, found)
			require.Equal(t, [2]string{string(s.Code), s.Name}, mouldstuff.Sand("").Choices()[i])
		})
	}
	_, ok := mouldstuff.FindSand("sawdust")
	require.False(t, ok)
}

func TestEveryBinder(t *testing.T) {
	for i, b := range mouldstuff.Binders() {
		t.Run(string(b.Code), func(t *testing.T) {
			sound(t, "share", b.Share, 0, 0.12)
			if !b.Hardener.Source.IsZero() {
				sound(t, "hardener", b.Hardener, 0.005, 0.6)
			}
			if !b.GasCm3PerG.Source.IsZero() {
				sound(t, "gas", b.GasCm3PerG, 1, 30)
			}
			if !b.MoistureLimit.Source.IsZero() {
				sound(t, "moisture", b.MoistureLimit, 0, 0.06)
				require.Positive(t, b.MoistureLimit.V)
			}
			require.False(t, b.FumeSource.IsZero())
			require.Equal(t, b.Code == mouldstuff.NoBinder, len(b.Fumes) == 0)
			found, ok := mouldstuff.FindBinder(b.Code)
			require.True(t, ok)
			require.Same(t, b, found)
			require.Equal(t, [2]string{string(b.Code), b.Name}, mouldstuff.Binder("").Choices()[i])
		})
	}
	_, ok := mouldstuff.FindBinder("treacle")
	require.False(t, ok)
}

func TestEveryPatternMaterial(t *testing.T) {
	for i, p := range mouldstuff.Patterns() {
		t.Run(string(p.Code), func(t *testing.T) {
			sound(t, "density", p.Density, 10, 3000)
			found, ok := mouldstuff.FindPattern(p.Code)
			require.True(t, ok)
			require.Same(t, p, found)
			require.Equal(t, [2]string{string(p.Code), p.Name}, mouldstuff.PatternStuff("").Choices()[i])
		})
	}
	_, ok := mouldstuff.FindPattern("butter")
	require.False(t, ok)
}

// Published effusivities, W·s½/(m²·K).
func TestEffusivity(t *testing.T) {
	for _, c := range []struct {
		name      string
		sand      mouldstuff.Sand
		low, high float64
	}{
		{"Flemings ch. 1, from memory: dry silica sand 1017", mouldstuff.SilicateSand, 1016.5, 1017.5},
		{"Poirier and Geiger, from memory: zircon sand 1541", mouldstuff.ZirconSand, 1540.5, 1541.5},
		{"Flemings; Poirier and Geiger, from memory: plaster 568 to 574", mouldstuff.Plaster, 568, 574},
		{"Flemings; Poirier and Geiger, from memory: mullite investment 675 to 736", mouldstuff.Investment, 675, 736},
	} {
		t.Run(c.name, func(t *testing.T) {
			s, ok := mouldstuff.FindSand(c.sand)
			require.True(t, ok)
			b := float64(s.Effusivity().V)
			require.GreaterOrEqual(t, b, c.low)
			require.LessOrEqual(t, b, c.high)
		})
	}
	t.Run("Poirier and Geiger, from memory: silica sand 987 dry to 1273 as a hot mean", func(t *testing.T) {
		s, _ := mouldstuff.FindSand(mouldstuff.SilicateSand)
		b := s.Effusivity()
		require.InDelta(t, math.Sqrt(0.52*1600*1170), float64(b.Low), 0.5)
		require.InDelta(t, math.Sqrt(0.8655*1600*1170), float64(b.High), 0.5)
	})
	t.Run("casting lexicon, seen: diffusivity of olivine and chromite 3 to 4 · 10⁻⁷ m²/s", func(t *testing.T) {
		for _, code := range []mouldstuff.Sand{mouldstuff.OlivineSand, mouldstuff.ChromiteSand} {
			s, _ := mouldstuff.FindSand(code)
			a := float64(s.Conductivity.V) / float64(s.Density.V) / float64(s.Heat.V)
			require.InDelta(t, 3.5e-7, a, 0.5e-7)
		}
	})
}

// The table of Rose and Kent (from memory) multiplies the weight of a pattern
// into that of its casting. Every row of it is metal density over wood density
// within 2 %: our woods, fixed by its iron column, must give one and the same
// density for each of its other metals.
func TestKentMultipliers(t *testing.T) {
	woods := []mouldstuff.PatternStuff{mouldstuff.WhitePine, mouldstuff.YellowPine, mouldstuff.HondurasMahogany}
	for metal, multipliers := range map[string][]float64{
		"cast iron": {16.7, 14.1, 12.9}, "zinc": {16.1, 13.6, 12.7}, "copper": {19.8, 16.7, 15.3}, "yellow brass": {19.0, 16.0, 14.6}, "gunmetal": {19.5, 16.5, 15.0},
	} {
		t.Run("Kent, weight of castings from weight of pattern, from memory: "+metal, func(t *testing.T) {
			var implied []float64
			mean := 0.0
			for i, code := range woods {
				w, ok := mouldstuff.FindPattern(code)
				require.True(t, ok)
				implied = append(implied, multipliers[i]*float64(w.Density.V))
				mean += implied[i] / float64(len(woods))
			}
			for _, rho := range implied {
				require.InEpsilon(t, mean, rho, 0.02)
			}
			if metal == "cast iron" {
				require.InEpsilon(t, 7200, mean, 0.02)
			}
		})
	}
}

// Every cell of P. N. Rao's table 3.2, degrees, from memory; -1 is a blank.
func TestRaoTable32(t *testing.T) {
	for _, row := range []struct {
		heights [2]float64 // mm, both within the row
		want    [4]float64 // wood outside, inside, metal outside, inside
	}{
		{[2]float64{1, 20}, [4]float64{3, 3, 1.5, 3}},
		{[2]float64{21, 50}, [4]float64{1.5, 2.5, 1, 2}},
		{[2]float64{51, 100}, [4]float64{1, 1.5, 0.75, 1}},
		{[2]float64{101, 200}, [4]float64{0.75, 1, 0.5, 0.75}},
		{[2]float64{201, 300}, [4]float64{0.5, 1, 0.5, 0.75}},
		{[2]float64{301, 800}, [4]float64{0.5, 0.75, 0.35, 0.5}},
		{[2]float64{801, 2000}, [4]float64{0.35, 0.5, -1, -1}},
		{[2]float64{2001, 9000}, [4]float64{-1, 0.25, -1, -1}},
	} {
		t.Run(fmt.Sprintf("Rao table 3.2, from memory: heights %g to %g mm", row.heights[0], row.heights[1]), func(t *testing.T) {
			for _, h := range row.heights {
				for i, want := range row.want {
					angle, note, ok := mouldstuff.Draft(quantity.From[quantity.Length](h, "mm"), i >= 2, i%2 == 1)
					require.Equal(t, want >= 0, ok)
					if ok {
						require.InDelta(t, want, quantity.In(angle, "°"), 0.005)
					}
					require.Contains(t, note, "row")
				}
			}
		})
	}
	_, _, ok := mouldstuff.Draft(quantity.Length(math.NaN()), false, false)
	require.False(t, ok)
}

// Rows of the table of least sand round the pattern, from memory.
func TestSandAround(t *testing.T) {
	for kg, want := range map[float64][4]float64{
		1: {40, 40, 30, 30}, 5: {40, 40, 30, 30}, 10: {50, 50, 40, 40}, 25: {60, 60, 40, 50}, 50: {70, 70, 50, 50},
		100: {90, 90, 50, 60}, 250: {100, 100, 60, 70}, 251: {120, 120, 70, 80}, 500: {120, 120, 70, 80},
	} {
		t.Run(fmt.Sprintf("foundry handbooks after Dubitskii and Aksenov, from memory: %g kg", kg), func(t *testing.T) {
			c, note, ok := mouldstuff.SandAround(quantity.From[quantity.Mass](kg, "kg"))
			require.True(t, ok)
			require.Contains(t, note, "row")
			for i, l := range []quantity.Length{c.Top, c.Bottom, c.Side, c.Sprue} {
				require.InDelta(t, want[i], quantity.In(l, "mm"), 1e-9)
			}
		})
	}
	for _, kg := range []float64{0, -1, 500.1, math.NaN(), math.Inf(1)} {
		_, _, ok := mouldstuff.SandAround(quantity.Mass(kg))
		require.False(t, ok, kg)
	}
}

func ExampleSandAround() {
	c, note, _ := mouldstuff.SandAround(18 * quantity.Kilogram)
	fmt.Println(c.Top, "above,", c.Side, "beside:", note)
	// Output: 60 mm above, 40 mm beside: row over 10 to 25 kg
}

func ExampleSandKind_Effusivity() {
	plaster, _ := mouldstuff.FindSand(mouldstuff.Plaster)
	sand, _ := mouldstuff.FindSand(mouldstuff.SilicateSand)
	ratio := float64(sand.Effusivity().V) / float64(plaster.Effusivity().V)
	fmt.Printf("A casting freezes %.1f times as slowly in plaster as in dry silica sand.\n", ratio*ratio)
	// Output: A casting freezes 3.2 times as slowly in plaster as in dry silica sand.
}
