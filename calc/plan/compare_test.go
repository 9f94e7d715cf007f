package plan

import (
	"encoding/json"
	"fmt"
	"math/rand"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/reply"
)

var examples = []string{"plans/relief.pour.json", "plans/bracket.pour.json", "plans/bench-end.pour.json"}

func compared(t testing.TB, a, b []byte) Comparison {
	return Compare(ReadDraft(a, quantity.Metric), ReadDraft(b, quantity.Metric))
}

func (c Comparison) section(key string) Compared {
	i := slices.IndexFunc(c.Sections, func(s Compared) bool { return s.Key == key })
	if i < 0 {
		return Compared{}
	}
	return c.Sections[i]
}

func rows(s Compared) []string {
	var out []string
	for _, d := range s.Inputs {
		out = append(out, fmt.Sprintf("%v %s: %s | %s", d.Place, d.Label, d.A.Text, d.B.Text))
	}
	return out
}

// A plan does not differ from itself, nor from itself in other units.
func TestCompareWithItself(t *testing.T) {
	for _, name := range examples {
		data := open(t, name)
		require.Empty(t, compared(t, data, data).Sections, name)
	}
	mm := open(t, "plans/bracket.pour.json")
	cm := alter(t, alter(t, mm, "30 cm", "mould", "flask_length"), "300 mm", "mould", "flask_length")
	same := alter(t, mm, "30 cm", "mould", "flask_length")
	require.Empty(t, compared(t, cm, same).Sections)
}

// The two sides change places, and the differences their signs.
func TestCompareIsSymmetric(t *testing.T) {
	for _, a := range examples {
		for _, b := range examples {
			there, back := compared(t, open(t, a), open(t, b)), compared(t, open(t, b), open(t, a))
			require.Equal(t, there.Titles, [2]string{back.Titles[1], back.Titles[0]})
			require.Len(t, back.Sections, len(there.Sections))
			for i, s := range there.Sections {
				o := back.Sections[i]
				require.Equal(t, s.Key, o.Key)
				require.Equal(t, s.States, [2]State{o.States[1], o.States[0]})
				require.Equal(t, len(s.Only[0]), len(o.Only[1]))
				require.ElementsMatch(t, inputSides(s, false), inputSides(o, true))
				require.ElementsMatch(t, answerSides(s, 1), answerSides(o, -1))
			}
		}
	}
}

func inputSides(s Compared, swap bool) []string {
	var out []string
	for _, d := range s.Inputs {
		a, b := d.A, d.B
		if swap {
			a, b = b, a
		}
		out = append(out, fmt.Sprint(d.Label, a.Path, a.Origin, a.Text, "|", b.Path, b.Origin, b.Text))
	}
	return out
}

func answerSides(s Compared, sign float64) []string {
	var out []string
	for _, d := range s.Answers {
		a, b := d.A, d.B
		if sign < 0 {
			a, b = b, a
		}
		gap := ""
		if d.Gap != nil {
			gap = fmt.Sprint(sign * d.Gap.SI())
		}
		out = append(out, fmt.Sprint(d.Label, a, "|", b, gap))
	}
	return out
}

// One change to an input is named, alone among the inputs, with what follows
// from it; a blank shows the default or the link that stood in for it.
func TestCompareNamesTheChange(t *testing.T) {
	bracket := open(t, "plans/bracket.pour.json")
	wide := compared(t, bracket, alter(t, bracket, "480 mm", "mould", "flask_length"))
	var inputs int
	for _, s := range wide.Sections {
		inputs += len(s.Inputs)
	}
	require.Equal(t, 1, inputs)
	mould := wide.section("mould")
	require.Equal(t, []string{"[] Flask length, inside: 320 mm | 480 mm"}, rows(mould))
	i := slices.IndexFunc(mould.Answers, func(d reply.Difference) bool { return d.Key == "cope_mass" })
	require.GreaterOrEqual(t, i, 0)
	require.Greater(t, mould.Answers[i].Gap.SI(), 0.0)
	require.InDelta(t, mould.Answers[i].Gap.SI(), work(t, alter(t, bracket, "480 mm", "mould", "flask_length")).got.mould.CopeMass.SI()-work(t, bracket).got.mould.CopeMass.SI(), 1e-9)

	spill := compared(t, bracket, alter(t, bracket, "9 %", "weight", "spill")).section("weight")
	require.Len(t, spill.Inputs, 1)
	require.Equal(t, form.Default, spill.Inputs[0].A.Origin)
	require.Equal(t, "2 %", spill.Inputs[0].A.Text.String())
	require.Empty(t, compared(t, bracket, alter(t, bracket, "2 %", "weight", "spill")).Sections, "the default, typed")

	own := compared(t, bracket, alter(t, bracket, "3 kg", "ladle", "metal")).section("ladle")
	require.Len(t, own.Inputs, 1)
	require.Equal(t, "weight", own.Inputs[0].Links[0].From)
	require.Equal(t, "3 kg", own.Inputs[0].B.Text.String())
}

// What cannot be read is shown as it stands, and the station that falls silent
// for it says so.
func TestCompareShowsWhatIsNotUnderstood(t *testing.T) {
	bracket := open(t, "plans/bracket.pour.json")
	c := compared(t, bracket, alter(t, bracket, "1,200", "mould", "flask_length"))
	mould := c.section("mould")
	require.Equal(t, form.Unread, mould.Inputs[0].B.Origin)
	require.Equal(t, "1,200", mould.Inputs[0].B.Text.String())
	require.Equal(t, Fault, mould.States[1])
	for _, d := range mould.Answers {
		require.NotEmpty(t, d.A.Text.String())
		require.Empty(t, d.B.Text.String())
		require.Nil(t, d.Gap)
	}
}

// Items of lists are told apart by their names, so that one put in between does
// not make all that follow look changed.
func TestComparePairsItemsByName(t *testing.T) {
	relief := open(t, "plans/relief.pour.json")
	var tree map[string]any
	require.NoError(t, json.Unmarshal(relief, &tree))
	solids := tree["weight"].(map[string]any)["solids"].([]any)
	between := append([]any{map[string]any{"name": "Boss", "form": "plate", "length": "40 mm", "width": "20 mm", "thickness": "5 mm"}}, solids...)
	c := compared(t, relief, alter(t, relief, between, "weight", "solids"))
	require.Equal(t, []string{"[Solids] Boss:  | Plate, 40 mm, 20 mm, 5 mm"}, rows(c.section("weight")))
	require.Empty(t, c.section("weight").Inputs[0].A.Path)
	require.Equal(t, "weight.solids[0]", c.section("weight").Inputs[0].B.Path)
	emptied := compared(t, relief, alter(t, relief, append(slices.Clone(solids), map[string]any{}), "weight", "solids"))
	require.Len(t, emptied.section("weight").Inputs, 1, "an empty item is named too")
}

// Findings are those that one plan has and the other has not.
func TestCompareFindings(t *testing.T) {
	bracket := open(t, "plans/bracket.pour.json")
	light := alter(t, bracket, "0 kg", "pour", "weights")
	count := func(r *Result) (n int) {
		for _, s := range r.Stations {
			n += len(s.Paper.Findings)
		}
		return n
	}
	c := compared(t, bracket, light)
	var only [2]int
	for _, s := range c.Sections {
		for i := range only {
			only[i] += len(s.Only[i])
		}
	}
	require.Equal(t, count(work(t, light))-count(work(t, bracket)), only[1]-only[0])
}

// Random changes of the examples: never a crash, never a NaN, and what is left
// alone is never named.
func TestCompareRandom(t *testing.T) {
	random := rand.New(rand.NewSource(7))
	fields := []struct {
		section, key, unit string
		low, high          float64
	}{
		{"mould", "flask_length", "mm", 300, 900}, {"mould", "cope_height", "mm", 60, 300}, {"pour", "thin_wall", "mm", 2, 30},
		{"weight", "spill", "%", 0, 20}, {"metal", "wall", "mm", 3, 40}, {"ladle", "top", "mm", 100, 400}, {"shop", "scrap", "%", 0, 50},
	}
	for range 60 {
		a := open(t, examples[random.Intn(len(examples))])
		b := a
		want := map[string]bool{}
		for range random.Intn(4) {
			f := fields[random.Intn(len(fields))]
			b = alter(t, b, fmt.Sprintf("%.2f %s", f.low+random.Float64()*(f.high-f.low), f.unit), f.section, f.key)
			want[f.section+"."+f.key] = true
		}
		c := compared(t, a, b)
		for _, s := range c.Sections {
			for _, d := range s.Inputs {
				require.True(t, want[d.B.Path], "%s was left alone", d.B.Path)
			}
		}
		var w reply.Writer
		c.Write(&w)
		require.True(t, json.Valid(w.Bytes()))
	}
}

func TestSignsAndPoints(t *testing.T) {
	require.Equal(t, "−3 mm", signed(gapText(quantity.Length(-0.003), quantity.Metric)))
	require.Equal(t, "+2.5 points", signed(gapText(quantity.Ratio(0.025), quantity.Metric)))
	require.Equal(t, "+30 °C", signed(gapText(quantity.Gap(quantity.Temperature(0).Kind(), 30), quantity.Metric)))
	require.Equal(t, "+54 °F", signed(gapText(quantity.Gap(quantity.Temperature(0).Kind(), 30), quantity.US)))
}
