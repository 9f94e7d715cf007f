package mould

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/working/stepcheck"
)

func benchEnd() Input {
	return Input{
		Sand: "green-sand", Binder: "clay", Moisture: quantity.Some(4 * quantity.Percent),
		CopeHeight: 200 * quantity.Millimetre, DragHeight: 200 * quantity.Millimetre,
		FlaskLength: 900 * quantity.Millimetre, FlaskWidth: 700 * quantity.Millimetre,
		Above: quantity.Some(20 * quantity.Millimetre), Below: quantity.Some(60 * quantity.Millimetre),
		CastingLength: 700 * quantity.Millimetre, CastingWidth: 450 * quantity.Millimetre,
	}
}

// TestSandWeightPublished checks the weight of cope sand in two published
// examples on mould lift. Both give the sand's weight density; g as printed.
func TestSandWeightPublished(t *testing.T) {
	for _, c := range []struct {
		source              string
		length, width, cope float64 // mm
		weight, g           float64 // N/m³, m/s²
		want, within        float64 // N
	}{
		{"GATE ME 1991, flask 300 × 200 mm, cope 50 mm, sand 16 kN/m³", 300, 200, 50, 16e3, 9.81, 48, 0.05},
		{"P. N. Rao, cast-iron pipe, flask 200 × 25 × 20 cm, sand 0.0165 N/cm³", 2000, 250, 200, 0.0165e6, 9.81, 1650, 0.5},
	} {
		t.Run(c.source, func(t *testing.T) {
			mm := func(v float64) quantity.Length { return quantity.Length(v / 1000) }
			in := Input{Sand: "green-sand", Binder: "clay", CopeHeight: mm(c.cope), DragHeight: mm(c.cope), FlaskLength: mm(c.length), FlaskWidth: mm(c.width),
				Above: quantity.Some(mm(0)), Below: quantity.Some(mm(c.cope / 2)), CastingLength: mm(c.length / 2), CastingWidth: mm(c.width / 2),
				SandDensity: quantity.Some(quantity.Density(c.weight / c.g))}
			out, _ := stepcheck.Run(t, Lay, in)
			require.InDelta(t, c.want, float64(out.CopeMass)*c.g, c.within)
		})
	}
}

func TestLayout(t *testing.T) {
	in := benchEnd()
	in.CastingVolume, in.CastingMass = quantity.Some(5500*quantity.CubicCentimetre), quantity.Some(40*quantity.Kilogram)
	out, p := stepcheck.Run(t, Lay, in)
	require.Equal(t, 80*quantity.Millimetre, out.CavityHeight)
	require.InDelta(t, 0.180, float64(out.TopHead), 1e-12)
	require.InDelta(t, 0.1, float64(out.Side), 1e-12)
	require.Empty(t, p.Findings)

	in.Moisture = quantity.Some(12 * quantity.Percent)
	in.CopeHeight = 60 * quantity.Millimetre
	_, p = stepcheck.Run(t, Lay, in)
	require.Equal(t, []string{"sand-wet", "sand-over"}, stepcheck.Codes(p))
}

func TestRefusals(t *testing.T) {
	for name, c := range map[string]struct {
		field string
		spoil func(*Input)
	}{
		"casting above the cope":    {"above", func(in *Input) { in.Above = quantity.Some(200 * quantity.Millimetre) }},
		"casting below the drag":    {"below", func(in *Input) { in.Below = quantity.Some(300 * quantity.Millimetre) }},
		"casting longer than flask": {"casting_length", func(in *Input) { in.CastingLength = 900 * quantity.Millimetre }},
		"casting wider than flask":  {"casting_width", func(in *Input) { in.CastingWidth = 2 * quantity.Metre }},
		"no height at all": {"above", func(in *Input) {
			in.Above, in.Below = quantity.Some[quantity.Length](0), quantity.Some[quantity.Length](0)
		}},
		"area beyond the flask": {"projected", func(in *Input) { in.Projected = quantity.Some(1 * quantity.SquareMetre) }},
		"volume beyond its box": {"casting_volume", func(in *Input) { in.CastingVolume = quantity.Some(40 * quantity.Litre) }},
	} {
		t.Run(name, func(t *testing.T) {
			in := benchEnd()
			c.spoil(&in)
			_, err := Lay(in, nil)
			faults, ok := err.(form.Faults)
			require.True(t, ok, "%v", err)
			require.Equal(t, c.field, faults[0].Field)
			require.NotEmpty(t, faults[0].Value)
		})
	}
}

// TestMassBalance: sand and metal together fill the flask, whatever the sizes.
func TestMassBalance(t *testing.T) {
	r := rand.New(rand.NewSource(1))
	for range 2000 {
		in := benchEnd()
		in.FlaskLength = quantity.Length(0.2 + r.Float64())
		in.FlaskWidth = quantity.Length(0.2 + r.Float64())
		in.CastingLength = in.FlaskLength * quantity.Length(0.2+0.7*r.Float64())
		in.CastingWidth = in.FlaskWidth * quantity.Length(0.2+0.7*r.Float64())
		in.Above = quantity.Some(in.CopeHeight * quantity.Length(0.9*r.Float64()))
		box := float64(in.CastingLength) * float64(in.CastingWidth) * float64(in.Above.V+in.Below.V)
		in.CastingVolume = quantity.Some(quantity.Volume(box * (0.05 + 0.9*r.Float64())))
		in.SandDensity = quantity.Some(1600 * quantity.KilogramPerCubicMetre)
		out, err := Lay(in, nil)
		require.NoError(t, err)
		flask := float64(in.FlaskLength) * float64(in.FlaskWidth) * float64(in.CopeHeight+in.DragHeight)
		require.InEpsilon(t, 1600*(flask-float64(in.CastingVolume.V)), float64(out.SandMass), 1e-12)
		require.Positive(t, float64(out.CopeMass))
		require.Positive(t, float64(out.DragMass))
		require.False(t, math.IsNaN(float64(out.Side)))
	}
}
