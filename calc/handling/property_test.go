package handling

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/alloy"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// some is a random pour that passes the form's checks.
func some(r *rand.Rand) Input {
	pick := func(values ...string) string { return values[r.Intn(len(values))] }
	between := func(a, b float64) float64 { return a + (b-a)*r.Float64() }
	metals, moulds, binders := alloy.All(), mouldstuff.Sands(), mouldstuff.Binders()
	in := Input{
		Alloy: metals[r.Intn(len(metals))].Code, PourAt: degC(between(150, 1750)),
		Metal: quantity.Mass(math.Exp(between(math.Log(0.01), math.Log(20000)))),
		Melt:  pick(propane, oil, electric, coke), Charge: pick("ingot", "known", coated, unknown, beryllium),
		Mould: moulds[r.Intn(len(moulds))].Code, Fired: r.Intn(2) == 0,
		Cores: r.Intn(2) == 0, Left: quantity.Some(pick("none", foam, wax)),
		Place: pick(indoors, outdoors), Extraction: r.Intn(2) == 0, Floor: pick(sandBed, concrete, steel, earth, wood),
		Ground: pick("dry", wet), Crew: 1 + r.Intn(50), Lead: r.Intn(2) == 0, Spectators: r.Intn(2) == 0, Cleaning: r.Intn(2) == 0,
		Emissivity: quantity.Some(quantity.Ratio(between(0.05, 1))),
		Work:       quantity.Some(pick("light", "moderate", "heavy", "very-heavy")), Clothing: quantity.Some(pick("work", "double", "aluminised", "vapour")),
		Acclimatised: r.Intn(2) == 0,
	}
	if r.Intn(2) == 0 {
		in.Binder = quantity.Some(binders[r.Intn(len(binders))].Code)
	}
	if r.Intn(2) == 0 {
		in.CoreBinder = quantity.Some(binders[r.Intn(len(binders))].Code)
	}
	if r.Intn(2) == 0 {
		in.Moisture = quantity.Some(quantity.Ratio(between(0, 0.6)))
	}
	if r.Intn(2) == 0 {
		in.SpectatorDistance = quantity.Some(quantity.Distance(between(0.3, 200)))
	}
	if r.Intn(2) == 0 {
		in.Carried = quantity.Some(in.Metal * quantity.Mass(between(1, 3)))
		if in.Carried.V < 0.1 {
			in.Carried.V = 0.1
		}
	}
	if r.Intn(2) == 0 {
		in.LadleMouth = quantity.Some(quantity.Length(between(0.02, 2)))
	}
	if r.Intn(2) == 0 {
		in.LipHeight = quantity.Some(quantity.Length(between(0, 5)))
	}
	for _, t := range []*quantity.Opt[quantity.Temperature]{&in.WetBulb, &in.Globe, &in.Air} {
		if r.Intn(3) > 0 {
			*t = quantity.Some(degC(between(-10, 60)))
		}
	}
	return in
}

func TestEveryListIsSound(t *testing.T) {
	r := rand.New(rand.NewSource(1))
	for range 400 {
		list(t, some(r))
	}
}

// Every metal in every mould with every binder, indoors and out.
func TestEveryCombination(t *testing.T) {
	for _, a := range alloy.All() {
		for _, m := range mouldstuff.Sands() {
			for _, b := range mouldstuff.Binders() {
				for _, place := range []string{indoors, outdoors} {
					in := bracket()
					in.Alloy, in.Mould, in.Binder, in.Place = a.Code, m.Code, quantity.Some(b.Code), place
					in.PourAt, in.Moisture = a.PourThin.V, quantity.Opt[quantity.Ratio]{}
					out, err := List(in, nil)
					require.NoError(t, err)
					sound(t, out)
					have := codes(out)
					for _, code := range always {
						require.Contains(t, have, code, "%s %s %s", a.Code, m.Code, b.Code)
					}
					for _, f := range b.Fumes {
						if f == mouldstuff.Amines || f == mouldstuff.OilSmoke {
							continue // no limit of that name
						}
						require.Contains(t, agents(out), string(f))
					}
					require.Equal(t, a.Hazards.Aluminium, has(have, "rust-flux"))
					require.Equal(t, a.Hazards.Lead > 0.001, has(have, "lead-fume"))
					require.Equal(t, a.Hazards.Zinc >= 0.01, has(have, "zinc"))
					require.Equal(t, a.Hazards.Magnesium, has(have, "magnesium"))
					require.Equal(t, a.Hazards.Iron, has(have, "slag"))
				}
			}
		}
	}
}

func has(m map[string]Item, code string) bool { _, ok := m[code]; return ok }

// Adding a hazard never takes an item, a hold point or an agent away.
func TestAddingAHazardRemovesNothing(t *testing.T) {
	hazards := map[string]func(*Input){
		"rain":          func(in *Input) { in.Ground = wet },
		"cores":         func(in *Input) { in.Cores = true },
		"spectators":    func(in *Input) { in.Spectators = true },
		"cleaning":      func(in *Input) { in.Cleaning = true },
		"no lead":       func(in *Input) { in.Lead = false },
		"alone":         func(in *Input) { in.Crew = 1 },
		"no extraction": func(in *Input) { in.Extraction = false },
		"not fired":     func(in *Input) { in.Fired = false },
		"coated":        func(in *Input) { in.Charge = coated },
		"unknown":       func(in *Input) { in.Charge = unknown },
		"hotter":        func(in *Input) { in.PourAt = max(in.PourAt, degC(1700)) },
		"heavier":       func(in *Input) { in.Carried = quantity.Some(in.Carried.V + in.Metal + 30) },
		"high lip":      func(in *Input) { in.LipHeight = quantity.Some(2 * quantity.Metre) },
		"bare floor":    func(in *Input) { in.Floor = concrete },
		"binder unsaid": func(in *Input) {
			if s, _ := mouldstuff.FindSand(in.Mould); in.Binder.Known() && !contains(s.Binders, in.Binder.V) {
				return // not a binder of this mould: leaving it out is no added hazard
			}
			in.Binder = quantity.Opt[mouldstuff.Binder]{}
		},
		"heat": func(in *Input) {
			in.WetBulb, in.Globe, in.Air = quantity.Some(degC(30)), quantity.Some(degC(50)), quantity.Some(degC(40))
		},
	}
	r := rand.New(rand.NewSource(2))
	for range 40 {
		in := some(r)
		if in.Charge == beryllium {
			in.Charge = coated
		}
		in.Left = quantity.Some("none")
		before, err := List(in, nil)
		require.NoError(t, err)
		for name, add := range hazards {
			if name == "coated" && in.Charge == unknown {
				continue
			}
			worse := in
			add(&worse)
			after, err := List(worse, nil)
			require.NoError(t, err, name)
			have := codes(after)
			for _, i := range before.Items {
				require.Contains(t, have, i.Code, name)
				require.False(t, i.Hold && !have[i.Code].Hold, "%s: %s", name, i.Code)
			}
			require.Subset(t, agents(after), agents(before), name)
		}
		for _, left := range []string{foam, wax} {
			worse := in
			worse.Left = quantity.Some(left)
			after, err := List(worse, nil)
			require.NoError(t, err)
			for _, i := range before.Items {
				require.Contains(t, codes(after), i.Code, left)
			}
		}
	}
}

func contains(all []mouldstuff.Binder, b mouldstuff.Binder) bool { return indexOf(all, b) >= 0 }

// The stand-off grows with temperature, emissivity, ladle mouth and mass; the
// radiant part of it is a straight multiple of the mouth.
func TestStandoffGrows(t *testing.T) {
	r := rand.New(rand.NewSource(3))
	for range 500 {
		in := some(r)
		before, err := List(in, nil)
		require.NoError(t, err)
		for _, grow := range []func(*Input){
			func(in *Input) { in.PourAt = min(in.PourAt+50, degC(1750)) },
			func(in *Input) { in.Emissivity.V = min(in.Emissivity.V*1.1, 1) },
			func(in *Input) {
				if in.LadleMouth.Known() {
					in.LadleMouth.V = min(in.LadleMouth.V*1.2, 2)
				}
			},
			func(in *Input) {
				if in.Metal < 15000 && !in.Carried.Known() {
					in.Metal *= 1.2
				}
			},
		} {
			more := in
			grow(&more)
			after, err := List(more, nil)
			require.NoError(t, err)
			require.GreaterOrEqual(t, float64(after.Radiant), float64(before.Radiant)*(1-1e-12))
			require.GreaterOrEqual(t, float64(after.Standoff), float64(before.Standoff)*(1-1e-12))
			require.GreaterOrEqual(t, after.SteamHot, before.SteamHot)
			require.GreaterOrEqual(t, after.Filter, before.Filter)
		}
		if in.LadleMouth.Known() && in.LadleMouth.V <= 1 {
			twice := in
			twice.LadleMouth.V *= 2
			after, err := List(twice, nil)
			require.NoError(t, err)
			require.InEpsilon(t, 1+2*float64(before.Radiant), 1+float64(after.Radiant), 1e-12)
		}
	}
}

// At the radiant distance the heat is just what bare skin bears.
func TestStandoffIsTheInverse(t *testing.T) {
	in := class()
	in.LadleMouth = quantity.Some(quantity.Metre)
	out, _ := list(t, in)
	in.SpectatorDistance = quantity.Some(out.Radiant)
	out, _ = list(t, in)
	require.InEpsilon(t, 2000, float64(out.AtSpectators.V), 1e-9)
}

// A second road to the disc: the sum over rings of cos² over the square of
// the distance, instead of the closed form.
func TestDiscByRings(t *testing.T) {
	const r, d, n = 0.15, 1.7, 20000
	sum := 0.0
	for i := range n {
		a := r * (float64(i) + 0.5) / n
		s2 := a*a + d*d
		sum += 2 * math.Pi * a * (r / n) * (d * d / s2) / (math.Pi * s2)
	}
	in := class()
	in.LadleMouth, in.SpectatorDistance = quantity.Some(quantity.Length(2*r)), quantity.Some[quantity.Distance](d)
	out, _ := list(t, in)
	require.InEpsilon(t, sum, float64(out.AtSpectators.V)/float64(out.Surface), 1e-7)
}

// Three equal readings are their own mean, in the sun and out of it.
func TestEqualReadings(t *testing.T) {
	in := bracket()
	in.WetBulb, in.Globe, in.Air = quantity.Some(degC(27)), quantity.Some(degC(27)), quantity.Some(degC(27))
	for _, in.Place = range []string{indoors, outdoors} {
		out, _ := list(t, in)
		require.InDelta(t, 27, quantity.In(out.WBGT.V, "°C"), 1e-9)
	}
}

func FuzzList(f *testing.F) {
	for n := range int64(8) {
		f.Add(n, 1130.0, 26.0, 0.25, 3.0, 25.0)
	}
	f.Fuzz(func(t *testing.T, n int64, at, mass, mouth, distance, bulb float64) {
		in := some(rand.New(rand.NewSource(n)))
		in.PourAt, in.Metal = degC(at), quantity.Mass(mass)
		in.LadleMouth, in.SpectatorDistance = quantity.Some(quantity.Length(mouth)), quantity.Some(quantity.Distance(distance))
		in.WetBulb = quantity.Some(degC(bulb))
		out, err := List(in, &working.Paper{})
		if err == nil {
			sound(t, out)
		}
	})
}

// TestRadiantRegression keeps our own figures, which are no evidence: the
// distance to 2 kW/m² from ladles of four metals.
func TestRadiantRegression(t *testing.T) {
	for _, c := range []struct{ mm, at, emissivity, want float64 }{
		{300, 1400, 0.9, 2.12}, {300, 1400, 0.35, 1.31}, {250, 1150, 0.5, 0.94}, {300, 720, 0.3, 0.40},
	} {
		in := class()
		in.LadleMouth, in.PourAt, in.Emissivity = quantity.Some(quantity.Length(c.mm/1000)), degC(c.at), quantity.Some(quantity.Ratio(c.emissivity))
		out, _ := list(t, in)
		require.InDelta(t, c.want, float64(out.Radiant), 0.005)
		require.Equal(t, quantity.Distance(3), out.Standoff)
	}
}
