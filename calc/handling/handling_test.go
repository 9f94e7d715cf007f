package handling

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/alloy"
	"pourwright/calc/form"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/working"
	"pourwright/calc/working/stepcheck"
)

// bracket is a small aluminium bracket, poured in a back yard.
func bracket() Input {
	return Input{
		Alloy: alloy.CodeAlSiMg, PourAt: degC(720), Metal: 2, Melt: propane, Charge: "known",
		Mould: mouldstuff.GreenSand, Moisture: quantity.Some(quantity.From[quantity.Ratio](3.5, "%")),
		Place: outdoors, Floor: sandBed, Ground: "dry", Crew: 2, Lead: true,
		Carried: quantity.Some[quantity.Mass](4.5), LadleMouth: quantity.Some(120 * quantity.Millimetre),
	}
}

// relief is a silicon bronze relief in a studio.
func relief() Input {
	return Input{
		Alloy: alloy.CodeSiliconBronze, PourAt: degC(1130), Metal: 26, Melt: propane, Charge: "ingot",
		Mould: mouldstuff.ResinSand, Binder: quantity.Some(mouldstuff.Furan),
		Cores: true, CoreBinder: quantity.Some(mouldstuff.PhenolicUrethane),
		Place: indoors, Extraction: true, Floor: concrete, Ground: "dry", Crew: 3, Lead: true, Cleaning: true,
		Carried: quantity.Some[quantity.Mass](44), LadleMouth: quantity.Some(250 * quantity.Millimetre),
	}
}

// class is a class that pours 40 kg of iron before onlookers.
func class() Input {
	return Input{
		Alloy: alloy.CodeGreyIron, PourAt: degC(1380), Metal: 40, Melt: coke, Charge: "known",
		Mould: mouldstuff.GreenSand, Moisture: quantity.Some(quantity.From[quantity.Ratio](4, "%")),
		Place: outdoors, Floor: sandBed, Ground: "dry", Crew: 6, Lead: true,
		Spectators: true, SpectatorDistance: quantity.Some[quantity.Distance](6),
		Carried: quantity.Some[quantity.Mass](78), LadleMouth: quantity.Some(300 * quantity.Millimetre),
	}
}

func degC(t float64) quantity.Temperature { return quantity.From[quantity.Temperature](t, "°C") }

// list works a case out and holds it to what every list must keep: the
// formulas agree with the code, nothing is NaN, every item has a sentence, a
// reason and a source, no code stands twice, the order is kept.
func list(t *testing.T, in Input) (Output, *working.Paper) {
	t.Helper()
	out, p := stepcheck.Run(t, List, in)
	sound(t, out)
	for _, f := range p.Findings {
		require.False(t, f.Text.IsZero(), f.Code)
		require.False(t, f.Source.IsZero(), f.Code)
		require.NotContains(t, f.Text.String(), "%!", f.Code)
		require.NotContains(t, f.Do.String(), "%!", f.Code)
	}
	return out, p
}

func sound(t *testing.T, out Output) {
	t.Helper()
	for _, q := range []quantity.Any{out.SteamBoiling, out.SteamCold, out.SteamHot, out.Standoff, out.Radiant, out.Surface, out.Filter, out.SpillSand,
		out.AtSpectators.V, out.Mouth.V, out.Each.V, out.ZincHeld.V, out.LeadHeld.V, out.ZincAir.V} {
		require.True(t, quantity.Finite(q.SI()) && q.SI() >= 0, "%v", q)
	}
	require.Equal(t, Standing, out.Standing)
	require.GreaterOrEqual(t, out.Standoff, quantity.Distance(3))
	seen := map[string]bool{}
	place, holds, open := 0, 0, 0
	for _, i := range out.Items {
		require.False(t, seen[i.Code], "%s stands twice", i.Code)
		seen[i.Code] = true
		require.False(t, i.Source.IsZero(), i.Code)
		for _, text := range []string{i.Text.String(), i.Why.String(), i.Text.In(quantity.US)} {
			require.True(t, strings.HasSuffix(text, ".") && len(text) > 12 && len([]rune(text)) < 190, "%s: %q", i.Code, text)
			require.NotContains(t, text, "!", i.Code)
			require.NotContains(t, text, "not known", i.Code)
			require.NotContains(t, strings.ToLower(text), " safe", "%s: the list never calls anything safe", i.Code)
		}
		here := 10*indexOf(groups, i.Group) + indexOf(risks, i.Risk)
		require.GreaterOrEqual(t, here, place, "%s is out of order", i.Code)
		place = here
		if i.Hold {
			holds++
			if i.State == Open {
				open++
			}
		} else {
			require.NotEqual(t, Open, i.State, i.Code)
		}
	}
	require.Equal(t, holds, out.Holds)
	require.Equal(t, open, out.OpenHolds)
	for _, a := range out.Air {
		require.Positive(t, float64(a.Limit), a.Name)
		require.False(t, a.Source.IsZero(), a.Name)
	}
}

func indexOf[T comparable](all []T, x T) int {
	for i, v := range all {
		if v == x {
			return i
		}
	}
	return -1
}

func codes(out Output) map[string]Item {
	m := map[string]Item{}
	for _, i := range out.Items {
		m[i.Code] = i
	}
	return m
}

func found(p *working.Paper) map[string]working.Level { return stepcheck.Levels(p) }

func agents(out Output) []string {
	var names []string
	for _, a := range out.Air {
		names = append(names, a.Name)
	}
	return names
}

// always stands on every list, whatever is poured.
var always = []string{
	"crew", "lead", "weather", "dry-tools", "mould-dry", "pigs", "crucible", "metal-fire", "fuel", "chlorine",
	"dry-run", "clothes", "floor", "path", "mould-held", "spectators", "spill-sand", "vents", "heat", "respirator", "cold-lift",
	"charge-dry", "scrap", "furnace-watch", "eyes", "ladle-hot", "stop-signs", "ladle-mass", "ladle-full", "pour-low",
	"stand-clear", "run-out", "leftover", "no-quench", "shut-down", "shakeout", "silica",
	"burn-water", "burn-cover", "call", "gassed", "heat-ill",
}

// The three pours that the site shows, and what each must and must not say.
func TestScenes(t *testing.T) {
	for _, c := range []struct {
		name     string
		in       Input
		has      []string
		hasNot   []string
		air      []string
		airNot   []string
		findings map[string]working.Level
	}{
		{"20 kg silicon bronze relief in resin sand, indoors", relief(),
			[]string{"air-indoors", "binder-furan", "binder-urethane", "core-vents", "mould-smoke", "mould-gas", "hoist", "noise"},
			[]string{"zinc", "lead-fume", "rust-flux", "no-glow", "slag", "magnesium", "foam", "wax", "upwind", "aluminised"},
			[]string{"silica, respirable", "copper fume", "carbon monoxide", "sulphur dioxide", "formaldehyde", "phenol", "furfuryl alcohol", "isocyanate (MDI)"},
			[]string{"lead", "zinc oxide fume", "beryllium", "styrene"},
			map[string]working.Level{"floor-bare": working.Mind, "carry-heavy": working.Mind, "holds-open": working.Mind}},
		{"small aluminium bracket, back yard, green sand, propane", bracket(),
			[]string{"rust-flux", "no-glow", "degas", "dross", "upwind", "fuel"},
			[]string{"air-indoors", "hoist", "zinc", "lead-fume", "binder-furan", "core-vents", "noise", "aluminised", "slag"},
			[]string{"silica, respirable", "carbon monoxide"},
			[]string{"copper fume", "formaldehyde", "phenol"},
			map[string]working.Level{"holds-open": working.Mind}},
		{"40 kg grey iron class with spectators", class(),
			[]string{"aluminised", "slag", "spectators", "hoist", "upwind"},
			[]string{"air-indoors", "rust-flux", "zinc", "lead-fume", "core-vents"},
			[]string{"silica, respirable", "carbon monoxide", "sulphur dioxide"},
			[]string{"copper fume", "lead"},
			map[string]working.Level{"carry-heavy": working.Mind, "holds-open": working.Mind}},
	} {
		t.Run(c.name, func(t *testing.T) {
			out, p := list(t, c.in)
			m := codes(out)
			for _, code := range append(append([]string{}, always...), c.has...) {
				require.Contains(t, m, code)
			}
			for _, code := range c.hasNot {
				require.NotContains(t, m, code)
			}
			require.Subset(t, agents(out), c.air)
			for _, name := range c.airNot {
				require.NotContains(t, agents(out), name)
			}
			require.Equal(t, c.findings, found(p))
			require.Equal(t, out.Holds, out.OpenHolds)
		})
	}
}

func TestSceneNumbers(t *testing.T) {
	out, _ := list(t, relief())
	m := codes(out)
	require.Contains(t, m["ladle-mass"].Text.String(), "44 kg")
	require.Contains(t, m["pigs"].Text.String(), "26 kg")
	require.Contains(t, m["eyes"].Text.String(), "4-2.5")
	require.Contains(t, m["ladle-hot"].Text.String(), "dull red")
	out, _ = list(t, bracket())
	m = codes(out)
	require.Contains(t, m["no-glow"].Text.String(), "720 °C")
	require.Contains(t, m["no-glow"].Text.In(quantity.US), "1328 °F")
	require.Contains(t, m["mould-dry"].Text.String(), "3.5 %")
	require.Contains(t, m["ladle-hot"].Text.String(), "150 to 200 °C")
	require.Contains(t, m["ladle-mass"].Text.String(), "4.5 kg")
	out, _ = list(t, class())
	m = codes(out)
	require.True(t, m["spectators"].Hold)
	require.Contains(t, m["spectators"].Text.String(), "3 m")
	require.Contains(t, m["spectators"].Text.In(quantity.US), "9.8 ft")
}

// What must stop a pour, and what must not be lost on the way.
func TestFindings(t *testing.T) {
	for code, c := range map[string]struct {
		level  working.Level
		change func(*Input)
	}{
		"alone":               {working.Stop, func(in *Input) { in.Crew = 1 }},
		"no-lead":             {working.Stop, func(in *Input) { in.Lead = false }},
		"wet-ground":          {working.Stop, func(in *Input) { in.Ground = wet }},
		"scrap-unknown":       {working.Stop, func(in *Input) { in.Charge = unknown }},
		"beryllium":           {working.Stop, func(in *Input) { in.Charge = beryllium }},
		"scrap-coated":        {working.Mind, func(in *Input) { in.Charge = coated }},
		"mould-damp":          {working.Stop, func(in *Input) { in.Moisture = quantity.Some(quantity.Ratio(0.051)) }},
		"moisture-unmeasured": {working.Mind, func(in *Input) { in.Moisture = quantity.Opt[quantity.Ratio]{} }},
		"mould-unfired":       {working.Stop, func(in *Input) { in.Mould, in.Moisture = mouldstuff.Plaster, quantity.Opt[quantity.Ratio]{} }},
		"moisture-no-limit":   {working.Mind, func(in *Input) { in.Mould = mouldstuff.SilicateSand }},
		"binder-unsaid":       {working.Mind, func(in *Input) { in.Mould = mouldstuff.SilicateSand }},
		"core-binder-unsaid":  {working.Mind, func(in *Input) { in.Cores = true }},
		"plaster-too-hot":     {working.Mind, func(in *Input) { in.Mould, in.PourAt = mouldstuff.Plaster, degC(1380) }},
		"wood-floor":          {working.Stop, func(in *Input) { in.Floor = wood }},
		"floor-bare":          {working.Mind, func(in *Input) { in.Floor = earth }},
		"fuel-indoors":        {working.Stop, func(in *Input) { in.Place = indoors }},
		"air-still":           {working.Mind, func(in *Input) { in.Place, in.Melt = indoors, electric }},
		"burn-out":            {working.Mind, func(in *Input) { in.Left = quantity.Some(foam) }},
		"lead":                {working.Mind, func(in *Input) { in.Alloy, in.PourAt = alloy.CodeGunmetal, degC(1200) }},
		"lead-indoors":        {working.Stop, func(in *Input) { in.Alloy, in.PourAt, in.Place = alloy.CodeGunmetal, degC(1200), indoors }},
		"zinc":                {working.Mind, func(in *Input) { in.Alloy, in.PourAt = alloy.CodeYellowBrass, degC(1100) }},
		"crew-small":          {working.Mind, func(in *Input) { in.Carried = quantity.Some[quantity.Mass](21) }},
		"carry-heavy":         {working.Mind, func(in *Input) { in.Carried = quantity.Some[quantity.Mass](26) }},
		"ladle-unweighed":     {working.Mind, func(in *Input) { in.Carried = quantity.Opt[quantity.Mass]{} }},
		"mouth-estimated":     {working.Note, func(in *Input) { in.LadleMouth = quantity.Opt[quantity.Length]{} }},
		"lip-high":            {working.Mind, func(in *Input) { in.LipHeight = quantity.Some(1.5 * quantity.Metre) }},
		"spectators-unplaced": {working.Mind, func(in *Input) { in.Spectators = true }},
		"spectators-near": {working.Stop, func(in *Input) {
			in.Spectators, in.SpectatorDistance = true, quantity.Some[quantity.Distance](2.9)
		}},
		"heat-over": {working.Stop, func(in *Input) {
			in.WetBulb, in.Globe, in.Air = quantity.Some(degC(25)), quantity.Some(degC(45)), quantity.Some(degC(33))
		}},
		"heat-new": {working.Mind, func(in *Input) {
			in.WetBulb, in.Globe, in.Air = quantity.Some(degC(19)), quantity.Some(degC(30)), quantity.Some(degC(25))
		}},
		"readings-wanting": {working.Mind, func(in *Input) { in.WetBulb, in.Globe = quantity.Some(degC(25)), quantity.Some(degC(45)) }},
		"readings-swapped": {working.Mind, func(in *Input) {
			in.WetBulb, in.Globe, in.Air = quantity.Some(degC(30)), quantity.Some(degC(20)), quantity.Some(degC(20))
		}},
		"answers-kept": {working.Note, func(in *Input) { in.Answers = []Answer{{Code: "core-vents", Answer: quantity.Some(yes)}} }},
		"hold-refused": {working.Stop, func(in *Input) { in.Answers = []Answer{{Code: "crew", Answer: quantity.Some(no), Reason: "  "}} }},
		"hold-unexplained": {working.Mind, func(in *Input) {
			in.Answers = []Answer{{Code: "crew", Answer: quantity.Some(notApplicable)}}
		}},
		"holds-set-aside": {working.Mind, func(in *Input) {
			in.Answers = []Answer{{Code: "crew", Answer: quantity.Some(no), By: "AB", Reason: "100 % staffed by the shop next door"}}
		}},
	} {
		t.Run(code, func(t *testing.T) {
			in := bracket()
			_, p := list(t, in)
			require.NotContains(t, found(p), code)
			c.change(&in)
			_, p = list(t, in)
			require.Contains(t, found(p), code)
			require.Equal(t, c.level, found(p)[code])
		})
	}
}

func TestBurnOutIndoorsStops(t *testing.T) {
	in := bracket()
	in.Place, in.Melt, in.Left = indoors, electric, quantity.Some(wax)
	_, p := list(t, in)
	require.Equal(t, working.Stop, found(p)["burn-out"])
	in.Extraction = true
	_, p = list(t, in)
	require.Equal(t, working.Mind, found(p)["burn-out"])
}

func TestAnswers(t *testing.T) {
	in := relief()
	out, _ := list(t, in)
	for i, item := range out.Items {
		if !item.Hold {
			continue
		}
		a := Answer{Code: item.Code, Answer: quantity.Some(yes), By: "AB"}
		if i%3 == 0 {
			a.Answer, a.Reason = quantity.Some(notApplicable), "done by the neighbour's shop"
		}
		in.Answers = append(in.Answers, a)
	}
	all, p := list(t, in)
	require.Zero(t, all.OpenHolds)
	require.Equal(t, out.Holds, all.Holds)
	require.NotContains(t, found(p), "holds-open")
	require.Equal(t, working.Mind, found(p)["floor-bare"], "no answer takes a finding of the plan away")
	require.Equal(t, Answered, codes(all)["lead"].State)
	require.Equal(t, "AB", codes(all)["lead"].By)

	// One more open answer opens one hold point again.
	in.Answers[0].Answer = quantity.Opt[string]{}
	once, _ := list(t, in)
	require.Equal(t, 1, once.OpenHolds)

	// A reminder may be ticked off; it counts for nothing.
	in.Answers = []Answer{{Code: "silica", Answer: quantity.Some(yes)}}
	tick, _ := list(t, in)
	require.Equal(t, out.OpenHolds, tick.OpenHolds)
	require.Equal(t, Answered, codes(tick)["silica"].State)
}

func TestFaults(t *testing.T) {
	_, err := List(Input{}, nil)
	var faults form.Faults
	require.ErrorAs(t, err, &faults)
	require.True(t, faults.Missing())
	for field, change := range map[string]func(*Input){
		"carried":         func(in *Input) { in.Carried = quantity.Some[quantity.Mass](1.9) },
		"pour_at":         func(in *Input) { in.PourAt = degC(1751) },
		"metal":           func(in *Input) { in.Metal = quantity.Mass(math.NaN()) },
		"alloy":           func(in *Input) { in.Alloy = "unobtainium" },
		"crew":            func(in *Input) { in.Crew = 51 },
		"answers[1].code": func(in *Input) { in.Answers = []Answer{{Code: "crew"}, {Code: "crew"}} },
		"answers[0].code": func(in *Input) { in.Answers = []Answer{{}} },
	} {
		in := bracket()
		change(&in)
		_, err := List(in, nil)
		require.ErrorAs(t, err, &faults, field)
		require.Len(t, faults, 1, field)
		require.Equal(t, field, faults[0].Field)
	}
}
