package flow

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/quantity"
	"pourwright/calc/working"
	"pourwright/calc/working/stepcheck"
)

func flat(width, cd float64) Lip {
	return Lip{Form: FlatLip, Width: quantity.Length(width), Discharge: quantity.Some(quantity.Number(cd))}
}

func notch(degrees, cd float64) Lip {
	return Lip{Form: NotchLip, Angle: quantity.From[quantity.Angle](degrees, "deg"), Discharge: quantity.Some(quantity.Number(cd))}
}

func round(radius, cd float64) Lip {
	return Lip{Form: RoundLip, Radius: quantity.Length(radius), Discharge: quantity.Some(quantity.Number(cd))}
}

func TestWeir(t *testing.T) {
	t.Run("rectangular notch, 0.5 m wide, head 0.4 m, C_d 0.62, hydraulics text (seen): 231 L/s, decimals cut off", func(t *testing.T) {
		require.Equal(t, 231.0, math.Floor(1000*float64(flat(0.5, 0.62).Flow(0.4))))
	})
	t.Run("V notch of 60°, head 0.22 m, C_d 0.625, hydraulics text (seen): 0.01935 m³/s", func(t *testing.T) {
		require.InDelta(t, 0.01935, float64(notch(60, 0.625).Flow(0.22)), 0.000005)
	})
	t.Run("Francis, suppressed weir (from memory): 3.33 L H^1.5 ft³/s, C_d 0.622", func(t *testing.T) {
		ft := 0.3048
		require.InDelta(t, 3.33, float64(flat(ft, 0.622).Flow(quantity.Length(ft)))/(ft*ft*ft), 0.005)
	})
}

// A slow reference for the half-round lip: slices of the defining integral.
func slices(l Lip, h float64, n int) float64 {
	r := float64(l.Radius)
	sum := 0.0
	for i := range n {
		// Depth under the surface, stretched so that both ends are gentle.
		phi := (float64(i) + 0.5) / float64(n) * math.Pi / 2
		z := h * math.Pow(math.Sin(phi), 2)
		dz := 2 * h * math.Sin(phi) * math.Cos(phi) * math.Pi / 2 / float64(n)
		w := 2 * r
		if z < r {
			w = 2 * math.Sqrt(z*(2*r-z))
		}
		sum += w * math.Sqrt(h-z) * dz
	}
	return float64(l.Discharge.V) * math.Sqrt(2*Gravity) * sum
}

func TestRoundLipAgainstSlices(t *testing.T) {
	for _, r := range []float64{0.01, 0.03, 0.1} {
		for _, share := range []float64{0.01, 0.1, 0.5, 0.99, 1, 1.01, 1.5, 3, 20} {
			l := round(r, 0.6)
			want := slices(l, share*r, 20000)
			require.InEpsilon(t, want, float64(l.Flow(quantity.Length(share*r))), 1e-6, "r %v h/r %v", r, share)
		}
	}
}

// TestRoundLipShallow: a shallow stream in a round lip flows (π/2) C_d √(g r) h².
func TestRoundLipShallow(t *testing.T) {
	l := round(0.05, 0.7)
	h := 1e-5
	require.InEpsilon(t, math.Pi/2*0.7*math.Sqrt(Gravity*0.05)*h*h, float64(l.Flow(quantity.Length(h))), 1e-4)
}

func TestHeadInvertsFlow(t *testing.T) {
	rng := rand.New(rand.NewSource(2))
	for range 500 {
		cd := 0.4 + 0.6*rng.Float64()
		h := 0.001 + 0.3*rng.Float64()*rng.Float64()
		for _, l := range []Lip{flat(0.005+rng.Float64(), cd), notch(20+130*rng.Float64(), cd), round(0.003+0.5*rng.Float64(), cd)} {
			q := l.Flow(quantity.Length(h))
			require.InEpsilon(t, h, float64(l.Head(q)), 1e-8, "%+v", l)
			require.Greater(t, l.Flow(quantity.Length(1.01*h)), q, "more head, more flow")
			section, surface := l.Section(quantity.Length(h))
			require.Positive(t, section)
			require.Positive(t, surface)
			// The mean speed stays under that of free fall through the head.
			require.Less(t, float64(q)/float64(section), math.Sqrt(2*Gravity*h))
			// Section is the integral of the surface's width.
			more, _ := l.Section(quantity.Length(h * 1.0001))
			require.InEpsilon(t, float64(surface), float64(more-section)/(h*0.0001), 1e-3)
			p := &working.Paper{}
			p.Give("q", "flow", q, "m^3/s")
			l.PutHead(p, q)
			p.Give("h", "head", quantity.Length(h), "m")
			l.PutFlow(p, quantity.Length(h))
			require.Empty(t, stepcheck.Paper(p))
		}
	}
}

func TestLipFindings(t *testing.T) {
	codes := func(l Lip, h float64) []string {
		p := &working.Paper{}
		l.Discharge.State = quantity.Defaulted
		l.Find(p, l.Flow(quantity.Length(h)), quantity.Length(h), "lip")
		return stepcheck.Codes(p)
	}
	require.Equal(t, []string{"lip-coefficient"}, codes(flat(0.08, 0.6), 0.02))
	require.Equal(t, []string{"lip-narrow", "lip-coefficient"}, codes(flat(0.05, 0.6), 0.02))
	require.Equal(t, []string{"lip-narrow", "lip-coefficient"}, codes(round(0.015, 0.6), 0.02))
	require.Equal(t, []string{"notch-angle", "lip-coefficient"}, codes(notch(120, 0.6), 0.02))
	require.Equal(t, []string{"head-small", "lip-coefficient"}, codes(flat(0.08, 0.6), 0.005))

	// The width advised puts the matter right: three heads wide.
	p := &working.Paper{}
	l := flat(0.03, 0.6)
	q := l.Flow(0.02)
	l.Find(p, q, 0.02, "lip")
	width := math.Pow(0.03, 0.4) * math.Pow(3*0.02, 0.6)
	require.Contains(t, p.Findings[0].Do.String(), quantity.Length(width).String())
	require.InEpsilon(t, width, 3*float64(flat(width, 0.6).Head(q)), 1e-12)
}
