package feed_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/alloy"
	"pourwright/calc/feed"
	"pourwright/calc/form"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/shape"
	"pourwright/calc/working"
	"pourwright/calc/working/stepcheck"
)

const (
	mm  = quantity.Millimetre
	cm  = quantity.Centimetre
	cm2 = quantity.SquareCentimetre
)

func some[T any](v T) quantity.Opt[T] { return quantity.Some(v) }

// plan runs a question, proves its steps, and checks that the answers do not
// depend on the paper.
func plan(t testing.TB, in feed.Input) (feed.Output, *working.Paper) {
	t.Helper()
	return stepcheck.Run(t, feed.Plan, in)
}

func codes(p *working.Paper) []string { return stepcheck.Codes(p) }

func finding(t testing.TB, p *working.Paper, code string) working.Finding {
	t.Helper()
	return stepcheck.Finding(t, p, code)
}

func plate(name, from string, l, w, T quantity.Length) feed.Section {
	return feed.Section{Name: name, Kind: feed.Plate, Length: l, Width: w, Thickness: T, FeedsFrom: from}
}

func side() []feed.Riser { return []feed.Riser{{Place: some(feed.Side)}} }

// TestPublished are the worked examples of books; more stand in
// testdata/checks/feed.json and run through the door.
func TestPublished(t *testing.T) {
	t.Run("P. N. Rao, riser examples (from memory): steel slab 25 × 25 × 5 cm, side riser 12.86 cm by modulus, 12.32 cm by NRL", func(t *testing.T) {
		out, _ := plan(t, feed.Input{Alloy: alloy.CodeCarbonSteel, Sections: []feed.Section{plate("slab", "riser 1", 25*cm, 25*cm, 5*cm)}, Risers: side()})
		r := out.Risers[0]
		require.InDelta(t, 12.86, quantity.In(r.ByModulus.V, "cm"), 0.005)
		require.InDelta(t, 12.32, quantity.In(r.ByNRL.V, "cm"), 0.005)
		require.Equal(t, "feed volume", r.Governs)
	})
	t.Run("M. P. Groover, riser example (from memory): 1.6 min at 3.26 min/cm²", func(t *testing.T) {
		out, _ := plan(t, feed.Input{Alloy: alloy.CodeCarbonSteel, Constant: some(quantity.From[quantity.FreezingConstant](3.26, "min/cm^2")), Sections: []feed.Section{plate("", "", 125*mm, 75*mm, 20*mm)}})
		require.InDelta(t, 1.6, quantity.In(out.Sections[0].Time.V, "min"), 0.005)
	})
	// Hubs whose bore is dead cool only outside: (OD² − ID²)/(4 OD) for a long
	// one. Wlodawer, from memory.
	t.Run("R. Wlodawer (from memory): long hub with a dead bore", func(t *testing.T) {
		hub := feed.Section{Kind: feed.Tube, Diameter: 100 * mm, Inner: 40 * mm, Height: 20, Bore: some(quantity.Ratio(0))}
		out, _ := plan(t, feed.Input{Alloy: alloy.CodeCarbonSteel, Sections: []feed.Section{hub}})
		require.InEpsilon(t, (0.1*0.1-0.04*0.04)/0.4, float64(out.Sections[0].Modulus), 2.5e-3)
	})
	t.Run("R. Wlodawer (from memory): bar on a heavier body, ab/(2(a + b) − c)", func(t *testing.T) {
		in := feed.Input{Alloy: alloy.CodeCarbonSteel,
			Sections: []feed.Section{{Name: "bar", Kind: feed.Bar, Length: 20, Breadth: 30 * mm, Depth: 40 * mm}, plate("body", "", 19, 1, 0.2)},
			Joints:   []feed.Joint{{One: "body", Other: "bar", Area: 20 * 0.03}}}
		out, _ := plan(t, in)
		require.InEpsilon(t, 0.03*0.04/(0.14-0.03), float64(out.Sections[0].Modulus), 2e-3)
	})
}

// TestModuliMeetTheSolids measures every kind a second way.
func TestModuliMeetTheSolids(t *testing.T) {
	for _, c := range []struct {
		section feed.Section
		solid   shape.Solid
	}{
		{plate("", "", 0.3, 0.2, 0.02), shape.Solid{Form: shape.Plate, Length: 0.3, Width: 0.2, Thickness: 0.02}},
		{feed.Section{Kind: feed.Bar, Length: 0.3, Breadth: 0.05, Depth: 0.04}, shape.Solid{Form: shape.Bar, Length: 0.3, Width: 0.05, Height: 0.04}},
		{feed.Section{Kind: feed.Cylinder, Diameter: 0.05, Height: 0.04}, shape.Solid{Form: shape.Cylinder, Diameter: 0.05, Height: 0.04}},
		{feed.Section{Kind: feed.Tube, Diameter: 0.08, Inner: 0.05, Height: 0.04, Bore: some(quantity.Ratio(0.3))}, shape.Solid{Form: shape.Tube, Diameter: 0.08, Inner: 0.05, Height: 0.04, Bore: some(quantity.Ratio(0.3))}},
		{feed.Section{Kind: feed.Sphere, Diameter: 0.05}, shape.Solid{Form: shape.Sphere, Diameter: 0.05}},
	} {
		t.Run(string(c.section.Kind), func(t *testing.T) {
			solid, faults := form.Ready(c.solid)
			require.Empty(t, faults)
			m := solid.Measure(nil)
			out, _ := plan(t, feed.Input{Alloy: alloy.CodeAlSi, Sections: []feed.Section{c.section}})
			require.InEpsilon(t, float64(m.Modulus), float64(out.Sections[0].Modulus), 1e-12)
			require.InEpsilon(t, float64(m.Volume), float64(out.Sections[0].Volume), 1e-12)
		})
	}
}

// largest finds the largest circle in a junction by trying centres: the second
// road to Heuvers' circles. A place is metal where inside says so; walls are T1
// along x (0 ≤ y ≤ T1, or about y = 0 for an X) and T2 along y.
func largest(j feed.Junction, T1, T2, f float64) float64 {
	free := func(x, y float64) float64 { // distance to the nearest sand
		fillet := func(cx, cy float64) float64 { // of the corner whose fillet is about (cx, cy), seen from (x, y)
			// within the corner's square the arc is the face; beyond it the flat faces are
			if x <= cx && y <= cy {
				return math.Hypot(cx-x, cy-y) - f
			}
			return math.Inf(1)
		}
		switch j {
		case feed.L:
			d := math.Min(x, y)
			if x > T2+f {
				d = math.Min(d, T1-y)
			}
			if y > T1+f {
				d = math.Min(d, T2-x)
			}
			return math.Min(d, fillet(T2+f, T1+f))
		case feed.T:
			d := y
			x = math.Abs(x)
			if x > T2/2+f {
				d = math.Min(d, T1-y)
			}
			if y > T1+f {
				d = math.Min(d, T2/2-x)
			}
			return math.Min(d, fillet(T2/2+f, T1+f))
		}
		x, y = math.Abs(x), math.Abs(y)
		d := math.Inf(1)
		if x > T2/2+f {
			d = T1/2 - y
		}
		if y > T1/2+f {
			d = math.Min(d, T2/2-x)
		}
		return math.Min(d, fillet(T2/2+f, T1/2+f))
	}
	best, bx, by := 0.0, 0.0, 0.0
	span := T1 + T2 + 2*f
	for step := span / 60; step > span*1e-9; step /= 3 {
		cx, cy := bx, by
		r := 6.0
		if step == span/60 {
			r = 130
		}
		for x := cx - r*step; x <= cx+r*step; x += step {
			for y := cy - r*step; y <= cy+r*step; y += step {
				if d := free(x, y); d > best {
					best, bx, by = d, x, y
				}
			}
		}
	}
	return 2 * best
}

func TestCirclesByTrying(t *testing.T) {
	for _, j := range []feed.Junction{feed.L, feed.T, feed.X} {
		for _, c := range [][3]float64{{20, 20, 0}, {20, 20, 10}, {20, 30, 5}, {30, 20, 5}, {20, 60, 4}, {60, 20, 4}, {25, 10, 12}, {10, 80, 0}} {
			t.Run(fmt.Sprint(j, c), func(t *testing.T) {
				length := func(v float64) quantity.Length { return quantity.Length(v / 1000) }
				out, _ := plan(t, feed.Input{Alloy: alloy.CodeCarbonSteel,
					Sections: []feed.Section{plate("one", "", 1, 1, length(c[0])), plate("other", "", 1, 1, length(c[1]))},
					Joints:   []feed.Joint{{One: "one", Other: "other", Area: 100 * cm2, Junction: some(j), Fillet: some(length(c[2]))}}})
				require.InDelta(t, largest(j, c[0], c[1], c[2]), quantity.In(out.Joints[0].Circle.V, "mm"), 0.02)
			})
		}
	}
}

// table is a flanged casting that is fed as it should be.
func table() feed.Input {
	return feed.Input{
		Alloy: alloy.CodeCarbonSteel, Sand: some(mouldstuff.SilicateSand), PourTemperature: some(quantity.From[quantity.Temperature](1600, "degC")),
		Sections: []feed.Section{
			{Name: "hub", Kind: feed.Cylinder, Diameter: 90 * mm, Height: 90 * mm, FeedsFrom: "head", Covered: some(60 * cm2)},
			{Name: "web", Kind: feed.Plate, Length: 120 * mm, Width: 100 * mm, Thickness: 20 * mm, FeedsFrom: "Hub ", Count: some(3), Reach: some(60 * mm)},
		},
		Joints: []feed.Joint{{One: "hub", Other: "web", Area: 18 * cm2, Count: some(3)}},
		Risers: []feed.Riser{{Name: "head", NeckLength: some(20 * mm)}},
	}
}

func TestOrderAndWays(t *testing.T) {
	out, p := plan(t, table())
	require.Empty(t, codes(p), "a casting that is well fed has nothing to say")
	require.Equal(t, []string{"web", "hub", "head"}, []string{out.Order[0].Name, out.Order[1].Name, out.Order[2].Name})
	require.Equal(t, "hub, then head", out.Sections[1].Path)
	require.Equal(t, "head", out.Sections[0].Path)
	require.Equal(t, "hub, web", out.Risers[0].Feeds)
	require.Equal(t, "hub", out.Risers[0].Ruling)
	require.InEpsilon(t, float64(out.Volume), float64(out.Risers[0].Fed), 1e-12)
	require.Len(t, out.Chart.Rows, 3)
	require.Equal(t, working.Bar{Name: "head", Kind: "riser", To: out.Chart.Rows[2].To}, out.Chart.Rows[2], "what freezes last stands last")
	for i, turn := range out.Order {
		require.InEpsilon(t, float64(turn.Time.Or(quantity.Time(turn.Modulus))), out.Chart.Rows[i].To, 1e-12)
	}
	require.Greater(t, float64(out.Sections[1].Margin.V), 1.1)
	in := table()
	in.Risers[0].Castings = some(2)
	shared, _ := plan(t, in)
	require.InEpsilon(t, 2*float64(out.Volume), float64(shared.Risers[0].Fed), 1e-12)
	require.Greater(t, shared.Risers[0].ByVolume.V, out.Risers[0].ByVolume.V)
	require.Equal(t, out.Risers[0].ByModulus, shared.Risers[0].ByModulus)
}

func TestFindings(t *testing.T) {
	for code, change := range map[string]func(*feed.Input){
		"not-fed":            func(in *feed.Input) { in.Sections[1].FeedsFrom = "" },
		"path-freezes-first": func(in *feed.Input) { in.Sections[0].FeedsFrom, in.Sections[1].FeedsFrom = "web", "head" },
		"path-even": func(in *feed.Input) {
			in.Sections[1].Chilled = some(18 * mm)
			in.Sections[0].Chilled = some(19 * mm)
		},
		"contact-missing":  func(in *feed.Input) { in.Joints = nil },
		"seat-not-counted": func(in *feed.Input) { in.Sections[0].Covered = some(quantity.Area(0)) },
		"reach-far":        func(in *feed.Input) { in.Sections[1].Reach = some(120 * mm) },
		"reach-doubtful": func(in *feed.Input) {
			in.Alloy, in.PourTemperature = alloy.CodeAlSiMg, quantity.Opt[quantity.Temperature]{}
		},
		"reach-unknown": func(in *feed.Input) {
			in.Alloy, in.PourTemperature = alloy.CodePewter, quantity.Opt[quantity.Temperature]{}
		},
		"long-freezing":       func(in *feed.Input) { in.Alloy = alloy.CodeTinBronze },
		"shrinkage-zero":      func(in *feed.Input) { in.Shrinkage = some(quantity.Ratio(0)) },
		"iron-fed":            func(in *feed.Input) { in.Alloy = alloy.CodeGreyIron },
		"iron-unproven":       func(in *feed.Input) { in.Alloy, in.Shrinkage = alloy.CodeGreyIron, some(quantity.Ratio(0)) },
		"junction-hot":        func(in *feed.Input) { wallsMeet(in, feed.T, 20*mm) },
		"riser-small-modulus": func(in *feed.Input) { in.Risers[0].Diameter = some(40 * mm) },
		"riser-small-feed":    func(in *feed.Input) { in.Risers[0].Diameter = some(40 * mm) },
		"riser-under-rules":   func(in *feed.Input) { in.Risers[0].Diameter = some(60 * mm) },
		"riser-proportion":    func(in *feed.Input) { in.Risers[0].Ratio = some(quantity.Number(3)) },
		"blind-vent":          func(in *feed.Input) { in.Risers[0].Cover = some(feed.Blind) },
		"cover-figures":       func(in *feed.Input) { in.Risers[0].Cover = some(feed.Both) },
		"neck-long":           func(in *feed.Input) { in.Risers[0].NeckLength = some(100 * mm) },
		"shape-factor-range": func(in *feed.Input) {
			in.Sections[0] = feed.Section{Name: "hub", Kind: feed.Bar, Length: 5, Breadth: 90 * mm, Depth: 90 * mm, FeedsFrom: "head"}
		},
	} {
		t.Run(code, func(t *testing.T) {
			in := table()
			change(&in)
			_, p := plan(t, in)
			f := finding(t, p, code)
			require.NotContains(t, f.Text.String()+f.Do.String(), "%!")
			require.False(t, f.Source.IsZero())
		})
	}
}

// wallsMeet makes the casting two walls that join.
func wallsMeet(in *feed.Input, j feed.Junction, second quantity.Length) {
	in.Sections = []feed.Section{plate("floor", "head", 300*mm, 300*mm, 20*mm), plate("rib", "floor", 300*mm, 100*mm, second)}
	in.Joints = []feed.Joint{{One: "floor", Other: "rib", Area: 60 * cm2, Junction: some(j), Fillet: some(5 * mm)}}
}

func TestJunctions(t *testing.T) {
	in := table()
	wallsMeet(&in, feed.T, 20*mm)
	_, p := plan(t, in)
	require.Equal(t, "The junction of floor and rib holds a circle of 27.5 mm, 1.38 times the heavier wall, and freezes after floor, through which it is fed: expect a shrinkage hole or a sink there.", finding(t, p, "junction-hot").Text.String())
	require.Equal(t, working.Mind, finding(t, p, "junction-hot").Level)
	// J. Campbell, from memory: a wall of half the thickness cools like a fin.
	wallsMeet(&in, feed.T, 10*mm)
	_, p = plan(t, in)
	require.NotContains(t, codes(p), "junction-hot")
	// A riser on the junction feeds it, and must outlast it.
	wallsMeet(&in, feed.X, 20*mm)
	before, _ := plan(t, in)
	in.Joints[0].Riser = "head"
	out, p := plan(t, in)
	require.NotContains(t, codes(p), "junction-hot")
	require.Equal(t, out.Joints[0].Modulus.V, out.Risers[0].ModulusFed)
	require.Greater(t, out.Risers[0].ByModulus.V, before.Risers[0].ByModulus.V)
}

func TestStops(t *testing.T) {
	in := table()
	in.Sections[0].FeedsFrom, in.Sections[1].FeedsFrom = "web", "head"
	_, p := plan(t, in)
	f := finding(t, p, "path-freezes-first")
	require.Equal(t, working.Stop, f.Level)
	require.Contains(t, f.Text.String(), "Hub freezes after web, through which it is fed: about ")
	require.Equal(t, "Bring the modulus of web up to 21.4 mm; or chill or lighten hub until its modulus is under 7.74 mm; or set a riser on it.", f.Do.String())
	// What it says to do is enough.
	in.Sections[1].Length, in.Sections[1].Width = 400*mm, 400*mm
	_, p = plan(t, in)
	do := finding(t, p, "path-freezes-first").Do.String()
	require.Contains(t, do, "Thicken web from 20 mm to about 54.1 mm,")
	in.Sections[1].Thickness = 55 * mm
	_, p = plan(t, in)
	require.NotContains(t, codes(p), "path-freezes-first")
	in.Sections[1].Thickness = 53 * mm
	_, p = plan(t, in)
	require.Contains(t, codes(p), "path-freezes-first")
}

func TestGraphite(t *testing.T) {
	in := feed.Input{
		Alloy: alloy.CodeDuctileIron, Wall: some(feed.Rigid), CarbonEquivalent: some(4.35 * quantity.Percent), PourTemperature: some(quantity.From[quantity.Temperature](1340, "degC")),
		Sections: []feed.Section{{Name: "block", Kind: feed.Bar, Length: 0.3, Breadth: 0.2, Depth: 0.15}},
	}
	out, p := plan(t, in)
	require.True(t, out.SelfFeeding)
	require.Equal(t, []string{"iron-feeds-itself"}, codes(p))
	for name, spoil := range map[string]func(*feed.Input){
		"mould":   func(in *feed.Input) { in.Wall = some(feed.Green) },
		"modulus": func(in *feed.Input) { in.Sections = append(in.Sections, plate("fin", "block", 0.1, 0.1, 0.02)) },
		"heat":    func(in *feed.Input) { in.PourTemperature = some(quantity.From[quantity.Temperature](1360, "degC")) },
		"carbon":  func(in *feed.Input) { in.CarbonEquivalent = some(4.2 * quantity.Percent) },
		"unknown": func(in *feed.Input) { in.CarbonEquivalent = quantity.Opt[quantity.Ratio]{} },
	} {
		t.Run(name, func(t *testing.T) {
			bad := in
			spoil(&bad)
			out, p := plan(t, bad)
			require.False(t, out.SelfFeeding)
			require.Equal(t, working.Stop, finding(t, p, "not-fed").Level)
			require.Positive(t, float64(out.Shrinkage))
			held := 0
			for _, c := range out.Conditions {
				if c.State == "yes" {
					held++
				}
			}
			require.Equal(t, 3, held)
		})
	}
}

func TestFaults(t *testing.T) {
	for field, change := range map[string]func(*feed.Input){
		"sections[1].name":       func(in *feed.Input) { in.Sections[1].Name = "HUB" },
		"risers[0].name":         func(in *feed.Input) { in.Risers[0].Name = "hub" },
		"sections[1].feeds_from": func(in *feed.Input) { in.Sections[1].FeedsFrom = "flange" },
		"sections[0].feeds_from": func(in *feed.Input) { in.Sections[0].FeedsFrom = "web" },
		"joints[0].other":        func(in *feed.Input) { in.Joints[0].Other = "hub" },
		"joints[0].one":          func(in *feed.Input) { in.Joints[0].One = "head" },
		"joints[0].junction":     func(in *feed.Input) { in.Joints[0].Junction = some(feed.T) },
		"sections[0].covered":    func(in *feed.Input) { in.Sections[0].Covered = some(400 * cm2) },
		"sections[1].inner": func(in *feed.Input) {
			in.Sections[1] = feed.Section{Name: "web", Kind: feed.Tube, Diameter: 0.1, Inner: 0.1, Height: 0.1}
		},
		"risers[0].efficiency": func(in *feed.Input) { in.Risers[0].Efficiency = some(4 * quantity.Percent) },
		"risers[0].diameter":   func(in *feed.Input) { in.Risers[0].Height = some(0.1 * quantity.Metre) },
		"risers[0].ratio": func(in *feed.Input) {
			in.Risers[0].Shape, in.Risers[0].Ratio = some(feed.Domed), some(quantity.Number(0.4))
		},
		"risers[1].name":   func(in *feed.Input) { in.Risers = append(in.Risers, feed.Riser{}) },
		"pour_temperature": func(in *feed.Input) { in.PourTemperature = some(quantity.From[quantity.Temperature](1500, "degC")) },
		"mould_temperature": func(in *feed.Input) {
			in.Alloy, in.PourTemperature, in.MouldTemperature = alloy.CodePewter, quantity.Opt[quantity.Temperature]{}, some(quantity.From[quantity.Temperature](230, "degC"))
		},
		"sections[0].kind": func(in *feed.Input) { in.Sections[0].Kind = "" },
	} {
		t.Run(field, func(t *testing.T) {
			in := table()
			change(&in)
			_, err := feed.Plan(in, nil)
			var faults form.Faults
			require.ErrorAs(t, err, &faults)
			require.Equal(t, field, faults[0].Field, err)
		})
	}
}

// P. N. Rao's steel slab of 25 × 25 × 5 cm with a riser beside it, by modulus
// and by the NRL curve: 12.86 and 12.32 cm.
func ExamplePlan() {
	out, err := feed.Plan(feed.Input{
		Alloy:    alloy.CodeCarbonSteel,
		Sections: []feed.Section{{Name: "slab", Kind: feed.Plate, Length: 25 * cm, Width: 25 * cm, Thickness: 5 * cm, FeedsFrom: "riser 1"}},
		Risers:   []feed.Riser{{Place: some(feed.Side)}},
	}, nil)
	if err != nil {
		fmt.Println(err)
		return
	}
	r := out.Risers[0]
	fmt.Printf("by modulus %.2f cm, by the NRL curve %.2f cm\n", quantity.In(r.ByModulus.V, "cm"), quantity.In(r.ByNRL.V, "cm"))
	fmt.Println("governed by", r.Governs)
	// Output:
	// by modulus 12.86 cm, by the NRL curve 12.32 cm
	// governed by feed volume
}
