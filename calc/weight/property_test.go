package weight_test

import (
	"encoding/json"
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/alloy"
	"pourwright/calc/form"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/reply"
	"pourwright/calc/shape"
	"pourwright/calc/weight"
	"pourwright/calc/working"
)

// anyInput draws a sound question.
func anyInput(r *rand.Rand) weight.Input {
	pick := func(n int) bool { return r.Intn(n) == 0 }
	long := func(low, high float64) quantity.Length { return quantity.Length(low + (high-low)*r.Float64()) }
	all := alloy.All()
	in := weight.Input{Alloy: all[r.Intn(len(all))].Code, Castings: some(1 + r.Intn(8))}
	routes := []weight.Route{weight.FromSolids, weight.FromPattern, weight.DrownedPattern, weight.DrownedCasting, weight.Stated}
	in.Route = some(routes[r.Intn(len(routes))])
	switch in.Route.V {
	case weight.Stated:
		in.Mass = quantity.Mass(0.01 + 200*r.Float64())
	case weight.FromPattern:
		in.PatternMass = quantity.Mass(0.05 + 3*r.Float64())
		stuffs := mouldstuff.Patterns()
		in.PatternStuff = some(stuffs[r.Intn(len(stuffs))].Code)
		in.PrintsMass = some(in.PatternMass / 10)
	default:
		in.DisplacedVolume = some(quantity.Volume(1e-5 + 5e-3*r.Float64()))
	}
	if in.Route.V == weight.DrownedPattern {
		in.PrintsVolume, in.CoresVolume, in.Contraction = some(in.DisplacedVolume.V/8), some(in.DisplacedVolume.V/5), some(quantity.Ratio(0.02*r.Float64()))
	}
	for range 1 + r.Intn(4) {
		in.Solids = append(in.Solids, box(long(0.05, 0.4), long(0.05, 0.3), long(0.005, 0.05)))
	}
	if pick(3) {
		in.Solids = append(in.Solids, shape.Solid{Form: shape.Cylinder, Role: some(shape.Take), Diameter: long(0.005, 0.02), Height: long(0.005, 0.02)})
	}
	if pick(3) {
		in.Density = some(quantity.Density(2000 + 7000*r.Float64()))
	}
	for range r.Intn(4) {
		one := weight.Riser{Count: some(1 + r.Intn(3)), Ratio: some(quantity.Number(0.5 + 2*r.Float64()))}
		if pick(2) {
			one.Place = some(weight.Side)
		}
		if pick(2) {
			one.Shape = some(weight.Domed)
		}
		one.Cover = some([]weight.Cover{weight.Open, weight.Blind, weight.Sleeve}[r.Intn(3)])
		if pick(4) {
			one.Diameter = some(long(0.02, 0.2))
		}
		in.Risers = append(in.Risers, one)
	}
	in.Gating.By = some([]weight.GatingBy{weight.ByShare, weight.BySize, weight.ByWeight}[r.Intn(3)])
	in.Gating.Mass = some(quantity.Mass(r.Float64()))
	in.Gating.SprueTop, in.Gating.SprueBottom, in.Gating.SprueHeight = some(5*quantity.SquareCentimetre), some(3*quantity.SquareCentimetre), some(long(0.1, 0.4))
	in.Gating.RunnerArea, in.Gating.RunnerLength = some(4*quantity.SquareCentimetre), some(long(0.1, 0.6))
	in.Heel = some(quantity.Mass(r.Float64()))
	return in
}

func TestMassBalance(t *testing.T) {
	r := rand.New(rand.NewSource(1))
	for range 400 {
		out, _ := weigh(t, anyInput(r))
		require.InEpsilon(t, float64(out.Charge), float64(out.Lost+out.Melt), 1e-12)
		require.InEpsilon(t, float64(out.Melt), float64(out.Poured+out.Spill+out.Pig+out.Heel), 1e-12)
		require.InEpsilon(t, float64(out.Poured), float64(out.CastingsMass+out.RisersMass+out.GatingMass), 1e-12)
		require.InEpsilon(t, float64(out.CastingsMass), float64(out.Poured)*float64(out.Yield), 1e-12)
		require.InEpsilon(t, float64(out.Mass), float64(out.Density)*float64(out.Volume), 1e-12)
		risers := 0.0
		for _, one := range out.Risers {
			risers += float64(one.MassAll)
			require.Positive(t, float64(one.Diameter))
		}
		require.InDelta(t, float64(out.RisersMass), risers, 1e-9*(1+risers))
		require.LessOrEqual(t, float64(out.MassLow), float64(out.Mass)*(1+1e-12))
		require.GreaterOrEqual(t, float64(out.MassHigh), float64(out.Mass)*(1-1e-12))
		require.LessOrEqual(t, float64(out.PouredLow), float64(out.Poured)*(1+1e-12))
		require.GreaterOrEqual(t, float64(out.PouredHigh), float64(out.Poured)*(1-1e-12))
		require.LessOrEqual(t, float64(out.ChargeLow), float64(out.Charge)*(1+1e-12))
		require.GreaterOrEqual(t, float64(out.ChargeHigh), float64(out.Charge)*(1-1e-12))
	}
}

// TestMoreNeverNeedsLess raises one figure at a time.
func TestMoreNeverNeedsLess(t *testing.T) {
	r := rand.New(rand.NewSource(2))
	for range 200 {
		in := anyInput(r)
		before, _ := weigh(t, in)
		for name, more := range map[string]func(*weight.Input){
			"castings": func(in *weight.Input) { in.Castings.V++ },
			"spill":    func(in *weight.Input) { in.Spill = some(3 * quantity.Percent) },
			"pig":      func(in *weight.Input) { in.Pig = some(9 * quantity.Percent) },
			"heel":     func(in *weight.Input) { in.Heel.V += 1 },
			"melting loss": func(in *weight.Input) {
				in.MeltLoss = some(10 * quantity.Percent)
			},
			"density": func(in *weight.Input) { in.Density = some(before.Density * 1.1) },
			"the casting": func(in *weight.Input) {
				in.Mass *= 1.2
				in.PatternMass *= 1.2
				in.DisplacedVolume.V *= 1.2
			},
			"factor": func(in *weight.Input) { in.RiserFactor = some(quantity.Number(1.4)) },
		} {
			changed := in
			changed.Solids = append([]shape.Solid(nil), in.Solids...)
			more(&changed)
			if name == "density" && in.Route.V == weight.Stated {
				continue // the volume shrinks, and with it the feed
			}
			after, _ := weigh(t, changed)
			require.GreaterOrEqual(t, float64(after.Charge), float64(before.Charge)*(1-1e-12), name)
		}
	}
}

// TestScale makes everything k times as large: volumes and masses go by the
// cube, moduli and risers by k itself.
func TestScale(t *testing.T) {
	r := rand.New(rand.NewSource(3))
	for range 100 {
		in := anyInput(r)
		in.Route, in.Heel = some(weight.FromSolids), quantity.Opt[quantity.Mass]{}
		in.Gating = weight.Gating{}
		for i := range in.Risers {
			in.Risers[i].Diameter = quantity.Opt[quantity.Length]{}
		}
		a, _ := weigh(t, in)
		const k = 1.7
		big := in
		big.Solids = nil
		for _, s := range in.Solids {
			s.Length, s.Width, s.Thickness, s.Diameter, s.Height = k*s.Length, k*s.Width, k*s.Thickness, k*s.Diameter, k*s.Height
			big.Solids = append(big.Solids, s)
		}
		b, _ := weigh(t, big)
		require.InEpsilon(t, k*k*k, float64(b.Charge/a.Charge), 1e-9)
		require.InEpsilon(t, k, float64(b.Modulus.V/a.Modulus.V), 1e-9)
		for i := range a.Risers {
			require.InEpsilon(t, k, float64(b.Risers[i].Diameter/a.Risers[i].Diameter), 1e-9)
		}
		require.InEpsilon(t, float64(a.Yield), float64(b.Yield), 1e-9)
	}
}

// TestVolumeIsAdditive splits the solids over the list in another order.
func TestVolumeIsAdditive(t *testing.T) {
	r := rand.New(rand.NewSource(4))
	for range 100 {
		in := anyInput(r)
		in.Route = some(weight.FromSolids)
		a, _ := weigh(t, in)
		sum := 0.0
		for _, s := range a.Solids {
			if s.Role == "taken away" {
				sum -= float64(s.Volume)
			} else {
				sum += float64(s.Volume)
			}
		}
		require.InEpsilon(t, sum, float64(a.Volume), 1e-9)
		r.Shuffle(len(in.Solids), func(i, j int) { in.Solids[i], in.Solids[j] = in.Solids[j], in.Solids[i] })
		b, _ := weigh(t, in)
		require.InEpsilon(t, float64(a.Volume), float64(b.Volume), 1e-9)
		require.InEpsilon(t, float64(a.Modulus.V), float64(b.Modulus.V), 1e-9)
		one := in
		one.Solids = []shape.Solid{in.Solids[0]}
		one.Solids[0].Role = quantity.Opt[shape.Role]{}
		one.Solids[0].Count = some(3)
		three, _ := weigh(t, one)
		one.Solids = append([]shape.Solid{}, in.Solids[0], in.Solids[0], in.Solids[0])
		for i := range one.Solids {
			one.Solids[i].Role, one.Solids[i].Count = quantity.Opt[shape.Role]{}, quantity.Opt[int]{}
		}
		apart, _ := weigh(t, one)
		require.InEpsilon(t, float64(three.Volume), float64(apart.Volume), 1e-12)
	}
}

// TestSizedRisersPassTheirOwnCheck sizes risers, then states the answer.
func TestSizedRisersPassTheirOwnCheck(t *testing.T) {
	r := rand.New(rand.NewSource(5))
	for range 200 {
		in := anyInput(r)
		for i := range in.Risers {
			in.Risers[i].Diameter = quantity.Opt[quantity.Length]{}
		}
		sized, _ := weigh(t, in)
		for i := range in.Risers {
			one := sized.Risers[i]
			require.GreaterOrEqual(t, float64(one.ModulusMargin), 1-1e-9)
			require.GreaterOrEqual(t, float64(one.FeedMargin.Or(1)), 1-1e-9)
			require.InDelta(t, 1, math.Min(float64(one.ModulusMargin), float64(one.FeedMargin.Or(1e9))), 1e-9, "one of the two rules is met exactly")
			in.Risers[i].Diameter, in.Risers[i].Height = some(one.Diameter*(1+1e-12)), some(one.Height*(1+1e-12))
		}
		stated, p := weigh(t, in)
		require.NotContains(t, codes(p), "riser-small-modulus")
		require.NotContains(t, codes(p), "riser-small-feed")
		require.InDelta(t, float64(sized.Charge), float64(stated.Charge), 1e-6*float64(sized.Charge))
		for i := range in.Risers {
			in.Risers[i].Diameter.V *= 0.99
			in.Risers[i].Height.V *= 0.99
		}
		if _, p = weigh(t, in); len(in.Risers) > 0 {
			small := 0
			for _, c := range codes(p) {
				if c == "riser-small-modulus" || c == "riser-small-feed" {
					small++
				}
			}
			require.GreaterOrEqual(t, small, len(in.Risers))
		}
	}
}

// TestPatternAndWaterMeetTheSolids takes a block by four roads.
func TestPatternAndWaterMeetTheSolids(t *testing.T) {
	base := weight.Input{Alloy: alloy.CodeGreyIron, Solids: []shape.Solid{box(200*mm, 100*mm, 30*mm)}}
	bySolids, _ := weigh(t, base)
	const s = 0.0104
	size := quantity.Volume(600e-6 * math.Pow(1+s, 3))
	for name, set := range map[string]func(*weight.Input){
		"weighed": func(in *weight.Input) {
			in.Route, in.PatternMass, in.PatternDensity = some(weight.FromPattern), quantity.Mass(float64(size)*520)+0.05, some(quantity.Density(520))
			in.PrintsMass, in.Contraction = some(quantity.Mass(0.05)), some(quantity.Ratio(s))
		},
		"drowned": func(in *weight.Input) {
			in.Route, in.DisplacedVolume, in.PrintsVolume = some(weight.DrownedPattern), some(size+80e-6), some(quantity.Volume(30e-6))
			in.CoresVolume, in.Contraction = some(quantity.Volume(50e-6)), some(quantity.Ratio(s))
		},
		"casting drowned": func(in *weight.Input) {
			in.Route, in.DisplacedVolume = some(weight.DrownedCasting), some(quantity.Volume(600e-6))
		},
		"stated": func(in *weight.Input) { in.Route, in.Mass = some(weight.Stated), bySolids.Mass },
	} {
		in := base
		set(&in)
		out, p := weigh(t, in)
		require.InEpsilon(t, float64(bySolids.Mass), float64(out.Mass), 1e-9, name)
		require.InEpsilon(t, float64(bySolids.Charge), float64(out.Charge), 1e-9, name)
		require.NotContains(t, codes(p), "mass-check", name)
	}
}

// FuzzWeigh feeds whatever JSON there is: the answer is faults or finite
// numbers, never a panic. The writer panics on a number that is not finite.
func FuzzWeigh(f *testing.F) {
	f.Add([]byte(`{"alloy":"grey-iron","solids":[{"form":"plate","length":"100 mm","width":"50 mm","thickness":"20 mm"},{"form":"cylinder","role":"take","diameter":"10 mm","height":"20 mm"}],"risers":[{"place":"side","cover":"sleeve","shape":"domed"}],"gating":{"by":"sized","rest":"10 cm³"}}`))
	f.Add([]byte(`{"alloy":"pewter","route":"pattern","pattern_mass":"1 kg","pattern_stuff":"pla","castings":3,"risers":[{"modulus":"5 mm","diameter":"10 mm","height":"50 mm","feeds":"20000 %"}]}`))
	f.Add([]byte(`{"alloy":"al-si","route":"drowned-pattern","displaced_mass":"1 lb","cores_volume":"1 in3","solids":[{"form":"turned","points":[{"x":"0","y":"0"},{"x":"30","y":"0"},{"x":"10","y":"40"}]}],"risers":[{"seat":"1 cm2"}]}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		in, _ := form.Decode[weight.Input](data, quantity.US)
		p := &working.Paper{}
		out, err := weight.Weigh(in, p)
		if err != nil {
			return
		}
		w := &reply.Writer{System: quantity.US, Working: true}
		w.Answers(out, p)
		if !json.Valid(w.Bytes()) {
			t.Fatal("not JSON")
		}
		w.Findings(p.Findings)
		w.Steps(p.Steps)
		for _, v := range []float64{float64(out.Charge), float64(out.Yield), float64(out.Volume), float64(out.PouredVolume)} {
			if !(v > 0) {
				t.Fatalf("%+v", out)
			}
		}
	})
}
