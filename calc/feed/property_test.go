package feed_test

import (
	"encoding/json"
	"fmt"
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/alloy"
	"pourwright/calc/feed"
	"pourwright/calc/form"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/reply"
	"pourwright/calc/working"
)

// anyInput draws a sound question: a chain or tree of sections that ends in
// risers, joints along it, and risers of all sorts.
func anyInput(r *rand.Rand) feed.Input {
	long := func(low, high float64) quantity.Length { return quantity.Length(low + (high-low)*r.Float64()) }
	all := alloy.All()
	in := feed.Input{Alloy: all[r.Intn(len(all))].Code, Wall: some([]feed.Wall{feed.Green, feed.Rigid}[r.Intn(2)])}
	switch r.Intn(3) {
	case 0:
		in.Constant = some(quantity.FreezingConstant(2e5 + 5e6*r.Float64()))
	case 1:
		sands := mouldstuff.Sands()
		in.Sand = some(sands[r.Intn(len(sands))].Code)
	}
	n := 1 + r.Intn(5)
	for i := range n {
		s := feed.Section{Count: some(1 + r.Intn(3)), EndChill: r.Intn(3) == 0}
		switch r.Intn(6) {
		case 0, 1:
			s.Kind, s.Length, s.Width, s.Thickness = feed.Plate, long(0.05, 0.5), long(0.05, 0.3), long(0.005, 0.05)
		case 2:
			s.Kind, s.Length, s.Breadth, s.Depth = feed.Bar, long(0.05, 0.5), long(0.01, 0.1), long(0.01, 0.1)
		case 3:
			s.Kind, s.Diameter, s.Height = feed.Cylinder, long(0.02, 0.1), long(0.02, 0.3)
		case 4:
			s.Kind, s.Diameter, s.Inner, s.Height = feed.Tube, long(0.05, 0.1), long(0.01, 0.04), long(0.02, 0.3)
		case 5:
			s.Kind, s.Modulus, s.Volume = feed.Stated, long(0.002, 0.05), quantity.Volume(1e-5+1e-3*r.Float64())
		}
		if r.Intn(2) == 0 {
			s.Reach = some(long(0.02, 0.5))
		}
		if r.Intn(4) == 0 {
			s.Beyond = some(feed.NextRiser)
		}
		if i > 0 && r.Intn(3) > 0 {
			from := r.Intn(i)
			s.FeedsFrom = fmt.Sprintf("section %d", from+1)
			j := feed.Joint{One: s.FeedsFrom, Other: fmt.Sprintf("section %d", i+1), Area: quantity.Area(5e-6 + 1e-4*r.Float64())}
			if plates := in.Sections[from].Kind == feed.Plate && s.Kind == feed.Plate; plates {
				j.Junction, j.Fillet = some([]feed.Junction{feed.Flush, feed.L, feed.T, feed.X}[r.Intn(4)]), some(long(0, 0.02))
			}
			in.Joints = append(in.Joints, j)
		} else if i == 0 || r.Intn(2) == 0 {
			in.Risers = append(in.Risers, anyRiser(r, long))
			s.FeedsFrom = fmt.Sprintf("riser %d", len(in.Risers))
		}
		in.Sections = append(in.Sections, s)
	}
	return in
}

func anyRiser(r *rand.Rand, long func(low, high float64) quantity.Length) feed.Riser {
	one := feed.Riser{Ratio: some(quantity.Number(0.5 + 1.5*r.Float64())), Castings: some(1 + r.Intn(3))}
	one.Place = some([]feed.Place{feed.Top, feed.Side}[r.Intn(2)])
	one.Shape = some([]feed.Shape{feed.Round, feed.Round, feed.Domed, feed.StatedRiser}[r.Intn(4)])
	one.Cover = some([]feed.Cover{feed.Open, feed.Open, feed.Blind, feed.Sleeve, feed.Topped, feed.Both}[r.Intn(6)])
	if one.Shape.V == feed.StatedRiser {
		one.Modulus, one.Volume = long(0.005, 0.06), quantity.Volume(1e-4+1e-2*r.Float64())
	} else if r.Intn(4) == 0 {
		one.Diameter = some(long(0.02, 0.3))
	}
	if r.Intn(3) == 0 {
		one.NeckLength = some(long(0.005, 0.05))
	}
	return one
}

// TestOrder: the order is by modulus and by time alike, everything stands in
// it once, and a section is cut off just where something on its way freezes
// before it.
func TestOrder(t *testing.T) {
	r := rand.New(rand.NewSource(1))
	for range 400 {
		in := anyInput(r)
		out, p := plan(t, in)
		for i := 1; i < len(out.Order); i++ {
			require.LessOrEqual(t, out.Order[i-1].Modulus, out.Order[i].Modulus)
			require.LessOrEqual(t, out.Order[i-1].Time.V, out.Order[i].Time.V)
			require.Equal(t, i+1, out.Order[i].Rank)
		}
		spots := 0
		for _, j := range out.Joints {
			if j.Modulus.Known() {
				spots++
				require.GreaterOrEqual(t, float64(j.Ratio.V), 1-1e-9)
			}
		}
		require.Len(t, out.Order, len(out.Sections)+len(out.Risers)+spots)
		cut := 0
		for _, s := range out.Sections {
			require.Equal(t, s.Name, out.Order[s.Rank-1].Name)
			if s.Margin.Known() && s.Margin.V < 1-1e-9 {
				cut++
			}
			require.LessOrEqual(t, s.Low.V, s.Time.V)
			require.LessOrEqual(t, s.Time.V, s.High.V)
			require.LessOrEqual(t, s.Reach.V, s.Far.V)
		}
		stops := 0
		for _, f := range p.Findings {
			if f.Code == "path-freezes-first" {
				stops++
				require.Equal(t, working.Stop, f.Level)
			}
		}
		if out.Shrinkage > 0 {
			require.Equal(t, cut, stops)
		}
	}
}

// TestVolumes: what the risers feed and what nothing feeds make up the casting.
func TestVolumes(t *testing.T) {
	r := rand.New(rand.NewSource(2))
	for range 300 {
		in := anyInput(r)
		out, _ := plan(t, in)
		sum, cooling := 0.0, 0.0
		for i, s := range out.Sections {
			n := float64(in.Sections[i].Count.V)
			cooling += n * float64(s.Cooling)
			if len(s.Path) >= 7 && s.Path[len(s.Path)-7:] == "nothing" {
				sum += n * float64(s.Volume)
			}
		}
		risers := 0.0
		for i, one := range out.Risers {
			sum += float64(one.Fed) / float64(in.Risers[i].Castings.V)
			risers += float64(one.Volume)
		}
		require.InEpsilon(t, float64(out.Volume), sum, 1e-9)
		require.InEpsilon(t, float64(out.Cooling), cooling, 1e-9)
		require.InDelta(t, risers, float64(out.Feeders), 1e-9*(1+risers))
	}
}

// TestThickerNeverFreezesEarlier thickens one section.
func TestThickerNeverFreezesEarlier(t *testing.T) {
	r := rand.New(rand.NewSource(3))
	for range 300 {
		in := anyInput(r)
		before, _ := plan(t, in)
		thick := in
		thick.Sections = append([]feed.Section{}, in.Sections...)
		s := &thick.Sections[0]
		s.Thickness, s.Breadth, s.Depth, s.Modulus = 1.2*s.Thickness, 1.2*s.Breadth, 1.2*s.Depth, 1.2*s.Modulus
		if s.Kind == feed.Cylinder || s.Kind == feed.Tube {
			s.Diameter *= 1.2
		}
		after, _ := plan(t, thick)
		require.GreaterOrEqual(t, after.Sections[0].Modulus, before.Sections[0].Modulus)
		require.GreaterOrEqual(t, after.Sections[0].Time.V, before.Sections[0].Time.V)
		require.GreaterOrEqual(t, after.Sections[0].Rank, before.Sections[0].Rank)
	}
}

// TestScale makes everything k times as large: moduli and diameters by k,
// volumes by the cube, times by the square.
func TestScale(t *testing.T) {
	const k = 1.3
	r := rand.New(rand.NewSource(4))
	for range 200 {
		in := anyInput(r)
		a, _ := plan(t, in)
		big := in
		big.Sections, big.Joints, big.Risers = nil, nil, nil
		for _, s := range in.Sections {
			s.Length, s.Width, s.Thickness, s.Breadth, s.Depth, s.Diameter, s.Inner, s.Height = k*s.Length, k*s.Width, k*s.Thickness, k*s.Breadth, k*s.Depth, k*s.Diameter, k*s.Inner, k*s.Height
			s.Modulus, s.Volume, s.Covered.V, s.Chilled.V = k*s.Modulus, k*k*k*s.Volume, k*k*s.Covered.V, k*s.Chilled.V
			big.Sections = append(big.Sections, s)
		}
		for _, j := range in.Joints {
			j.Area, j.Fillet.V = k*k*j.Area, k*j.Fillet.V
			big.Joints = append(big.Joints, j)
		}
		for _, one := range in.Risers {
			one.Modulus, one.Volume, one.Diameter.V = k*one.Modulus, k*k*k*one.Volume, k*one.Diameter.V
			big.Risers = append(big.Risers, one)
		}
		b, _ := plan(t, big)
		require.InEpsilon(t, k*k*k, float64(b.Volume/a.Volume), 1e-9)
		for i := range a.Sections {
			require.InEpsilon(t, k, float64(b.Sections[i].Modulus/a.Sections[i].Modulus), 1e-9)
			if a.Sections[i].Time.Known() {
				require.InEpsilon(t, k*k, float64(b.Sections[i].Time.V/a.Sections[i].Time.V), 1e-9)
			}
			require.InDelta(t, float64(a.Sections[i].Margin.V), float64(b.Sections[i].Margin.V), 1e-9*float64(1+a.Sections[i].Margin.V))
			require.Equal(t, a.Sections[i].Rank, b.Sections[i].Rank)
		}
		for i := range a.Risers {
			require.InEpsilon(t, k*k*k, float64(b.Risers[i].Volume/a.Risers[i].Volume), 1e-9)
			require.Equal(t, a.Risers[i].Governs, b.Risers[i].Governs)
		}
	}
}

// TestSizedRisersPass: a riser of the size it is given satisfies every rule,
// one of them just so; a smaller one does not.
func TestSizedRisersPass(t *testing.T) {
	r := rand.New(rand.NewSource(5))
	for range 200 {
		in := anyInput(r)
		for i := range in.Risers {
			in.Risers[i].Diameter = quantity.Opt[quantity.Length]{}
		}
		sized, _ := plan(t, in)
		own := in
		own.Risers = append([]feed.Riser{}, in.Risers...)
		for i, one := range sized.Risers {
			if !one.Diameter.Known() {
				continue
			}
			D := one.Diameter.V
			best := max(one.ByModulus.V, one.ByVolume.V, one.ByCaine.V, one.ByNRL.V, one.BySFSA.V)
			require.InEpsilon(t, float64(best), float64(D), 1e-12)
			require.GreaterOrEqual(t, float64(one.ModulusMargin), 1-1e-9)
			require.GreaterOrEqual(t, float64(one.FeedMargin.Or(1)), 1-1e-9)
			own.Risers[i].Diameter = some(D * (1 + 1e-12))
		}
		_, p := plan(t, own)
		for _, code := range codes(p) {
			if sound := !hasStated(in); sound {
				require.NotContains(t, []string{"riser-small-modulus", "riser-small-feed", "riser-under-rules"}, code)
			}
		}
	}
}

func hasStated(in feed.Input) bool {
	for _, r := range in.Risers {
		if r.Shape.V == feed.StatedRiser {
			return true
		}
	}
	return false
}

// TestCaineFalls: along Caine's curve the freezing ratio falls as the volume
// ratio grows, and every answer lies on the curve.
func TestCaineFalls(t *testing.T) {
	for _, code := range []alloy.Code{alloy.CodeCarbonSteel, alloy.CodeAluminium, alloy.CodeGreyIron, alloy.CodeYellowBrass, alloy.CodeSiliconBronze} {
		t.Run(string(code), func(t *testing.T) {
			lastX, lastY := math.Inf(1), 0.0
			for _, T := range []quantity.Length{10 * mm, 15 * mm, 20 * mm, 40 * mm, 80 * mm, 150 * mm} { // from flat to chunky
				out, _ := plan(t, feed.Input{Alloy: code, Sections: []feed.Section{plate("s", "riser 1", 200*mm, 200*mm, T)}, Risers: side()})
				c := out.Risers[0].Caine[0]
				x, y := float64(c.X.V), float64(c.Y.V)
				require.InEpsilon(t, float64(c.A), (x-float64(c.C))*(y-float64(c.B)), 1e-9)
				require.Greater(t, y, lastY, "a chunkier casting wants more")
				require.Less(t, x, lastX)
				lastX, lastY = x, y
			}
		})
	}
}

// FuzzPlan feeds whatever JSON there is: the answer is faults or finite
// numbers, never a panic. The writer panics on a number that is not finite.
func FuzzPlan(f *testing.F) {
	f.Add([]byte(`{"alloy":"carbon-steel","sand":"silicate-sand","sections":[{"kind":"plate","length":"300","width":"200","thickness":"20","feeds_from":"riser 1"},{"kind":"plate","length":"300","width":"100","thickness":"20","feeds_from":"section 1"}],"joints":[{"one":"section 1","other":"section 2","area":"60 cm2","junction":"t","fillet":"5"}],"risers":[{"place":"side","neck_length":"20"}]}`))
	f.Add([]byte(`{"alloy":"ductile-iron","constant":"0.01 s/mm²","wall":"rigid","carbon_equivalent":"4.4 %","pour_temperature":"1300 °C","sections":[{"kind":"stated","modulus":"1 m","volume":"0.1 cm3","wall":"2 m","feeds_from":"riser 1"}],"risers":[{"cover":"both","shape":"domed","ratio":"5"}]}`))
	f.Add([]byte(`{"alloy":"grey-iron","sections":[{"name":"a","kind":"tube","diameter":"100","inner":"20","height":"50","feeds_from":"b"},{"name":"b","kind":"sphere","diameter":"1 mm","feeds_from":"c","covered":"0.02 cm2"}],"joints":[{"one":"a","other":"b","area":"0.05 cm2"}],"risers":[{"name":"c","shape":"stated","modulus":"1 m","volume":"20 m3"}]}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		in, _ := form.Decode[feed.Input](data, quantity.US)
		p := &working.Paper{}
		out, err := feed.Plan(in, p)
		if err != nil {
			require.IsType(t, form.Faults{}, err)
			return
		}
		w := &reply.Writer{System: quantity.US, Working: true}
		w.Answers(out, p)
		if !json.Valid(w.Bytes()) {
			t.Fatal("not JSON")
		}
		w.Findings(p.Findings)
		w.Steps(p.Steps)
	})
}
