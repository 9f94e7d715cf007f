package weight_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/alloy"
	"pourwright/calc/form"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/shape"
	"pourwright/calc/weight"
	"pourwright/calc/working"
)

// plain is a sound bronze plate with one side riser.
func plain() weight.Input {
	return weight.Input{Alloy: alloy.CodeTinBronze, Solids: []shape.Solid{{Name: "plate", Form: shape.Plate, Length: 200 * mm, Width: 150 * mm, Thickness: 20 * mm}}, Risers: []weight.Riser{{Place: some(weight.Side)}}}
}

func TestFindings(t *testing.T) {
	for _, c := range []struct {
		code  string
		level working.Level
		field string
		text  string
		do    string
		set   func(*weight.Input)
	}{
		{"riser-small-modulus", working.Stop, "risers[0].diameter",
			"The modulus of riser 1 is 5 mm and 9.73 mm is wanted to feed a section of 8.11 mm: it freezes too soon.", "Make it at least 79.1 mm across and 79.1 mm high.",
			func(in *weight.Input) { in.Risers[0].Diameter = some(30 * mm) }},
		{"riser-small-feed", working.Stop, "risers[0].diameter",
			"Riser 1 holds 216 cm³ and 388 cm³ is wanted to feed 600 cm³: its pipe runs into the casting.", "Make it at least 79.1 mm across and 79.1 mm high.",
			func(in *weight.Input) { in.Risers[0].Diameter = some(65 * mm) }},
		{"riser-proportion", working.Mind, "risers[0].ratio",
			"Riser 1 stands 3 times as high as wide; the figures used here are for 0.5 to 2 times.", "Keep between 0.5 and 2 of its height.",
			func(in *weight.Input) { in.Risers[0].Ratio = some(quantity.Number(3)) }},
		{"riser-factor-low", working.Mind, "riser_factor",
			"A factor of 0.9 makes the risers freeze before the section they feed.", "Use 1.2.",
			func(in *weight.Input) { in.RiserFactor = some(quantity.Number(0.9)) }},
		{"blind-vent", working.Note, "risers[0].cover",
			"A blind riser only feeds while air can press on its metal.", "Put a pencil core or a sharp sand wedge through its top, a tenth to a fifth of its diameter, about 7.91 mm to 15.8 mm.",
			func(in *weight.Input) { in.Risers[0].Cover = some(weight.Blind) }},
		{"sleeve-figures", working.Mind, "risers[0].extension",
			"Sleeves differ from maker to maker; a modulus extension of 1.1 and the efficiency shown in the working are only usual.", "Take the figures from the sleeve's own sheet.",
			func(in *weight.Input) { in.Risers[0].Cover = some(weight.Sleeve) }},
		{"seat-not-counted", working.Note, "risers[0].seat",
			"Standing on plate this riser covers up to 49.1 cm² of its surface, and the modulus to feed rises from 8.11 mm to 8.68 mm.", "Give the surface that is covered, 49.1 cm², and size the riser again.",
			func(in *weight.Input) { in.Risers[0].Place = some(weight.Top) }},
		{"feeds-short", working.Mind, "risers[0].feeds",
			"By the shares you give, the risers feed 40 % of the castings in the mould; nothing feeds the rest.", "Raise the shares until they come to 100 %, or add a riser.",
			func(in *weight.Input) { in.Risers[0].Feeds = some(40 * quantity.Percent) }},
		{"long-freezing", working.Note, "",
			"Tin bronze C90300 freezes over 146 °C, so fine porosity stays spread through the casting whatever the riser.", "Chill the heavy sections, pour no hotter than the walls need, and do not expect a pressure-tight heavy wall from risers alone.",
			func(in *weight.Input) {}},
		{"hollow-not-in-modulus", working.Note, "modulus",
			"The modulus to feed, 8.11 mm, is that of plate as if nothing were taken out of it.", "Where a bore or hollow lies in it, build it as a tube or give your own modulus.",
			func(in *weight.Input) {
				in.Solids = append(in.Solids, shape.Solid{Form: shape.Cylinder, Role: some(shape.Take), Diameter: 20 * mm, Height: 20 * mm})
			}},
		{"no-riser", working.Note, "risers",
			"There is no riser, and Tin bronze C90300 shrinks by 5.5 %: each casting wants 33 cm³ of feed metal. Thin even walls get it through the gate; a heavy section pipes.", "Add a riser on the heaviest section, or chill it.",
			func(in *weight.Input) { in.Risers = nil }},
		{"iron-green-sand", working.Mind, "shrinkage",
			"Counting on the iron to feed itself wants a mould that does not yield, and green sand yields: the wall moves and the casting shrinks after all.", "Use hard sand, clamped or weighted, or feed 3 %.",
			func(in *weight.Input) { in.Alloy, in.Shrinkage = alloy.CodeGreyIron, some(quantity.Ratio(0)) }},
		{"iron-expansion", working.Note, "shrinkage",
			"As graphite grows, Grey iron wants anything from -1 % to 3 % of feed. It feeds itself only if all of these hold: a rigid mould, a modulus of 25 mm or more, a pour no hotter than about 1350 °C, a carbon equivalent of 4.2 or more, and gates that freeze early.", "Where one of them fails, feed it; necks of 0.6 to 0.8 of the section's modulus then close as the expansion sets in.",
			func(in *weight.Input) { in.Alloy = alloy.CodeGreyIron }},
		{"yield-unusual", working.Note, "gating",
			"97.1 % of the metal poured becomes casting; usual is 40 % to 85 %.", "Check that cup, sprue and runners are in it; a mould that runs short is lost.",
			func(in *weight.Input) { in.Risers, in.Gating.Share = nil, some(3*quantity.Percent) }},
		{"pattern-density-guess", working.Mind, "pattern_density",
			"Polyurethane tooling board weighs anything from 400 kg/m³ to 750 kg/m³, so the casting may weigh from 4.5 kg to 8.44 kg.", "Weigh a block of it of known size and give its density.",
			func(in *weight.Input) {
				in.Route, in.PatternMass, in.PatternStuff = some(weight.FromPattern), 0.4*kg, some(mouldstuff.Board)
			}},
		{"pattern-hollow", working.Mind, "pattern_density",
			"The pattern is hollow or printed, so 300 kg/m³ must be its whole weight over the volume it displaces, not the density of its stuff.", "If you have not drowned it, do so and give the water instead.",
			func(in *weight.Input) {
				in.Route, in.PatternMass, in.PatternMake, in.PatternDensity = some(weight.FromPattern), 0.2*kg, some(weight.Printed), some(quantity.Density(300))
			}},
		{"mass-check", working.Mind, "solids",
			"By the solids one casting weighs 5.28 kg, by the other way 4 kg: the solids come to 32 % more.", "Look for a solid that is missing or counted twice, for core prints, and for a hollow in the pattern.",
			func(in *weight.Input) { in.Route, in.Mass = some(weight.Stated), 4*kg }},
	} {
		t.Run(c.code, func(t *testing.T) {
			in := plain()
			c.set(&in)
			_, p := weigh(t, in)
			f := finding(t, p, c.code)
			require.Equal(t, c.level, f.Level)
			require.Equal(t, c.field, f.Field)
			require.Equal(t, c.text, f.Text.String())
			require.Equal(t, c.do, f.Do.String())
			require.False(t, f.Source.IsZero())
		})
	}
}

// TestQuiet: what does not apply is not said.
func TestQuiet(t *testing.T) {
	in := plain()
	in.Alloy = alloy.CodeAlSi
	_, p := weigh(t, in)
	require.Empty(t, codes(p))
}

func TestFaults(t *testing.T) {
	for name, c := range map[string]struct {
		field   string
		missing bool
		why     string
		set     func(*weight.Input)
	}{
		"no solids": {"solids", true, "nothing here yet; put the casting together from plain solids, or choose another way to find its weight", func(in *weight.Input) { *in = weight.Input{Alloy: in.Alloy} }},
		"no stuff":  {"pattern_stuff", true, "not chosen yet; choose one, or give the density you measured", func(in *weight.Input) { in.Route, in.PatternMass = some(weight.FromPattern), 1*kg }},
		"printed, not drowned": {"pattern_density", true, "the weight of a hollow or printed pattern does not tell its size; give its whole weight over the volume it displaces, or drown it instead of weighing it", func(in *weight.Input) {
			in.Route, in.PatternMass, in.PatternMake, in.PatternStuff = some(weight.FromPattern), 1*kg, some(weight.Printed), some(mouldstuff.PLA)
		}},
		"no water": {"displaced_mass", true, "not filled in yet; give it, or the volume displaced", func(in *weight.Input) { in.Route = some(weight.DrownedPattern) }},
		"water twice": {"displaced_volume", false, "the weight of the water, 1 kg, is given too; leave one of the two empty", func(in *weight.Input) {
			in.Route, in.DisplacedMass, in.DisplacedVolume = some(weight.DrownedCasting), some(1*kg), some(quantity.Litre)
		}},
		"all prints": {"prints_mass", false, "1 kg is the whole weight of the pattern, 1 kg, or more; give only the part that is prints", func(in *weight.Input) {
			in.Route, in.PatternMass, in.PatternStuff, in.PrintsMass = some(weight.FromPattern), 1*kg, some(mouldstuff.MDF), some(1*kg)
		}},
		"all cores": {"cores_volume", false, "the pattern without its weighed prints has 1.33 L, or 1.25 L at the upper end of its density; 0 cm³ of prints and 1.3 L of cores leave no casting", func(in *weight.Input) {
			in.Route, in.PatternMass, in.PatternStuff, in.CoresVolume = some(weight.FromPattern), 1*kg, some(mouldstuff.MDF), some(1.3*quantity.Litre)
		}},
		"all cores, drowned": {"cores_volume", false, "the pattern displaces 1 L; 500 cm³ of prints and 500 cm³ of cores leave no casting", func(in *weight.Input) {
			in.Route, in.DisplacedVolume, in.PrintsVolume, in.CoresVolume = some(weight.DrownedPattern), some(quantity.Litre), some(0.5*quantity.Litre), some(0.5*quantity.Litre)
		}},
		"nothing left": {"solids", false, "600 cm³ is taken away and only 600 cm³ is there to take it from; nothing is left to cast", func(in *weight.Input) {
			take := in.Solids[0]
			take.Role = some(shape.Take)
			in.Solids = append(in.Solids, take)
		}},
		"only hollows": {"solids", false, "600 cm³ is taken away and only 0 cm³ is there to take it from; nothing is left to cast", func(in *weight.Input) { in.Solids[0].Role = some(shape.Take) }},
		"crossing outline": {"solids[0].points[0]", false, "the edge from corner 1 to corner 2 meets the edge from corner 3 to corner 4; give the corners in order round the outline, so that no edges cross or touch", func(in *weight.Input) {
			in.Solids = []shape.Solid{{Form: shape.Outline, Height: 10 * mm, Points: corners(0, 0, 10, 10, 10, 0, 0, 10)}}
		}},
		"no modulus":    {"risers[0].modulus", true, "not known; give it, or the solids that make up the casting", func(in *weight.Input) { in.Route, in.Mass, in.Solids = some(weight.Stated), 1*kg, nil }},
		"height alone":  {"risers[0].diameter", true, "a height was given without a diameter; give both, or leave both to be sized", func(in *weight.Input) { in.Risers[0].Height = some(50 * mm) }},
		"thirsty metal": {"risers[0].efficiency", false, "a riser that gives 5 % of itself while the metal shrinks by 5.5 % cannot even feed itself, however large; use a sleeve, whose efficiency is higher", func(in *weight.Input) { in.Risers[0].Efficiency = some(5 * quantity.Percent) }},
		"seat too large": {"risers[0].seat", false, "700 cm² is most of the cooled surface of plate, 740 cm²; it must be at most 666 cm²", func(in *weight.Input) {
			in.Risers[0].Place, in.Risers[0].Seat = some(weight.Top), some(700*quantity.SquareCentimetre)
		}},
		"seat of own modulus": {"risers[0].seat", false, "it can only be taken off the solids, and your own modulus stands in their place; leave it empty, and let your modulus allow for it", func(in *weight.Input) {
			in.Risers[0].Place, in.Risers[0].Seat, in.Modulus = some(weight.Top), some(7*quantity.SquareCentimetre), some(9*mm)
		}},
		"flat dome": {"risers[0].ratio", false, "0.4 is less than the half ball alone; it must be at least 0.5 for this shape", func(in *weight.Input) {
			in.Risers[0].Shape, in.Risers[0].Ratio = some(weight.Domed), some(quantity.Number(0.4))
		}},
		"flat own dome": {"risers[0].height", false, "20 mm is less than the half ball alone, which is half the diameter; it must be at least 25 mm", func(in *weight.Input) {
			in.Risers[0].Shape, in.Risers[0].Diameter, in.Risers[0].Height = some(weight.Domed), some(50*mm), some(20*mm)
		}},
		"already fed": {"risers[1].feeds", true, "the other risers already feed all of 1 casting; say what share of a casting this one feeds", func(in *weight.Input) {
			in.Risers[0].Feeds = some(quantity.Ratio(1))
			in.Risers = append(in.Risers, weight.Riser{})
		}},
		"too heavy": {"solids", false, "the mould would take 47.4 t: 26.4 t in castings, 17.1 t in risers, 3960 kg in gating. This is meant for moulds up to 20 t", func(in *weight.Input) {
			in.Castings, in.Solids[0].Count = some(10), some(500)
			in.Risers[0].Count = some(1)
		}},
		"no gating weight": {"gating.mass", true, "not filled in yet", func(in *weight.Input) { in.Gating.By = some(weight.ByWeight) }},
		"no gating sizes": {"gating.sprue_bottom", true, "no part of the gating has both an area and a length yet", func(in *weight.Input) {
			in.Gating.By, in.Gating.SprueTop = some(weight.BySize), some(quantity.SquareCentimetre)
		}},
	} {
		t.Run(name, func(t *testing.T) {
			in := plain()
			c.set(&in)
			out, err := weight.Weigh(in, nil)
			require.Error(t, err)
			faults := err.(form.Faults)
			require.Len(t, faults, 1)
			require.Equal(t, c.field, faults[0].Field)
			require.Equal(t, c.missing, faults[0].Missing)
			require.Equal(t, c.why, faults[0].Why.String())
			require.Empty(t, out)
		})
	}
}

func corners(xy ...float64) []shape.Point {
	var out []shape.Point
	for i := 0; i+1 < len(xy); i += 2 {
		out = append(out, shape.Point{X: some(quantity.Length(xy[i]) * mm), Y: some(quantity.Length(xy[i+1]) * mm)})
	}
	return out
}

func TestAllMissingAtOnce(t *testing.T) {
	_, err := weight.Weigh(weight.Input{}, nil)
	faults := err.(form.Faults)
	require.True(t, faults.Missing())
	require.Len(t, faults, 2)
}
