package rule_test

import (
	"fmt"
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/alloy"
	"pourwright/calc/form"
	"pourwright/calc/pattern"
	"pourwright/calc/quantity"
	"pourwright/calc/reply"
	"pourwright/calc/rule"
	"pourwright/calc/working"
	"pourwright/calc/working/stepcheck"
)

func mm(v float64) quantity.Length { return quantity.From[quantity.Length](v, "mm") }

func some[T any](v T) quantity.Opt[T] { return quantity.Some(v) }

// set answers and proves the working.
func set(t *testing.T, in rule.Input) (rule.Output, *working.Paper) {
	t.Helper()
	return stepcheck.Run(t, rule.Set, in)
}

func TestPublished(t *testing.T) {
	perFoot := func(v float64) quantity.Opt[quantity.Ratio] { return some(quantity.From[quantity.Ratio](v, "in/ft")) }
	t.Run("Shop Practice vol. 2, pattern making (seen): a 2 ft contraction rule is 24 1/4, 24 3/8 or 24 1/2 in long", func(t *testing.T) {
		for each, want := range map[float64]float64{1. / 8: 24.25, 3. / 16: 24.375, 1. / 4: 24.5} {
			out, _ := set(t, rule.Input{Own: perFoot(each), Length: 24 * quantity.Inch, Division: some(rule.Sixteenths)})
			require.InDelta(t, want, quantity.In(out.True, "in"), 1e-9)
		}
	})
	t.Run("Shop Practice vol. 2, pattern making (seen): cast iron 1/8 in per ft, brass 3/16", func(t *testing.T) {
		for code, want := range map[alloy.Code]string{alloy.CodeGreyIron: "1/8 in per ft", alloy.CodeYellowBrass: "3/16 in per ft"} {
			out, _ := set(t, rule.Input{Alloy: some(code), Table: some(alloy.TableName("heine")), Length: 12 * quantity.Inch, Division: some(rule.Sixteenths)})
			require.Equal(t, want, out.PerFoot)
		}
	})
	t.Run("Dooley, ch. XXXI art. 426 (seen): cast iron 3/32 in per ft, aluminium 7/32", func(t *testing.T) {
		for code, want := range map[alloy.Code]string{alloy.CodeGreyIron: "3/32 in per ft", alloy.CodeAluminium: "7/32 in per ft"} {
			out, _ := set(t, rule.Input{Alloy: some(code), Table: some(alloy.TableName("dooley")), Length: 12 * quantity.Inch})
			require.Equal(t, want, out.PerFoot)
		}
	})
	t.Run("textbook problem of the kind in M. P. Groover, ch. 10 (seen): magnesium, 2.1 %, rule factor 1.02145", func(t *testing.T) {
		out, _ := set(t, rule.Input{Own: some(2.1 * quantity.Percent), Convention: some("mould"), Length: mm(100)})
		require.InDelta(t, 1.02145, 1+float64(out.Longer), 0.000005)
	})
}

// every is a rule of each kind.
func every(yield func(string, rule.Input) bool) {
	for _, a := range alloy.All() {
		for _, d := range rule.Division("").Choices() {
			for _, paper := range rule.Paper("").Choices() {
				in := rule.Input{Alloy: some(a.Code), Length: mm(1000), Division: some(rule.Division(d[0])), Paper: some(rule.Paper(paper[0]))}
				if !yield(fmt.Sprint(a.Code, " ", d[0], " ", paper[0]), in) {
					return
				}
			}
		}
	}
}

var fine = map[rule.Division]float64{rule.Millimetres: 1, rule.Halves: 0.5, rule.Sixteenths: 25.4 / 16, rule.ThirtySeconds: 25.4 / 32, rule.SixtyFourths: 25.4 / 64}

// The n-th line of the whole rule stands n·d·(1 + s) from zero, whichever strip
// it is on; each is there once or, in an overlap, twice, on the same place;
// and the numbers are those of the casting.
func TestEveryLineStandsWhereItShould(t *testing.T) {
	for name, in := range every {
		out, _ := set(t, in)
		d := fine[in.Division.V]
		seen := map[int]int{}
		for _, s := range out.Strips {
			start := int(math.Round(quantity.In(s.From, "mm") / d))
			for _, lines := range s.Lines {
				for i, at := range lines.At {
					x := quantity.In(s.From, "mm")*(1+float64(out.Contraction)) + quantity.In(at, "mm")
					n := int(math.Round(x / d / (1 + float64(out.Contraction))))
					require.InDelta(t, float64(n)*d*(1+float64(out.Contraction)), x, 1e-9, name)
					seen[n]++
					if lines.Rank == 0 {
						require.InDelta(t, float64(n)*d, float64(lines.Numbers[i])*map[string]float64{"mm": 1, "in": 25.4}[out.Unit], 1e-9, name)
					}
					require.GreaterOrEqual(t, n, start)
				}
			}
		}
		last := int(1000/d + 1e-9)
		for n := range last + 1 {
			require.Contains(t, []int{1, 2}, seen[n], "%s: line %d of %d", name, n, last)
		}
		require.Len(t, seen, last+1, name)
		require.InDelta(t, float64(last)*d*(1+float64(out.Contraction)), quantity.In(out.True, "mm"), 1e-9)
	}
}

// Strips follow each other without a gap, each fits the room of its page, and
// all but the last go on past their join.
func TestStripsCover(t *testing.T) {
	for name, in := range every {
		first, _ := set(t, in)
		in.Measured = some(first.Check * 0.99)
		out, _ := set(t, in)
		require.Equal(t, quantity.Length(0), out.Strips[0].From, name)
		for i, s := range out.Strips {
			require.Equal(t, i+1, s.Number)
			require.Equal(t, i, (s.Page-1)*out.PerPage+s.Place-1, name)
			require.LessOrEqual(t, s.Ends, out.Run, name)
			if i+1 < len(out.Strips) {
				require.Equal(t, s.To, out.Strips[i+1].From, name)
				require.Greater(t, quantity.In(s.Ends-s.Join, "mm"), 10.0, name)
			} else {
				require.Equal(t, s.Join, s.Ends, name)
			}
		}
		require.LessOrEqual(t, len(out.Strips), out.Pages*out.PerPage)
	}
}

// A print with a measured check length comes out true: what is sent, times
// what the printer makes of it, is the true place. A second measuring leads to
// the same.
func TestCorrection(t *testing.T) {
	r := rand.New(rand.NewSource(4))
	for range 500 {
		printer := 0.96 + 0.08*r.Float64() // what the printer makes of a length
		in := rule.Input{Alloy: some(alloy.CodeAlSiMg), Length: mm(300)}
		first, p := set(t, in)
		require.Equal(t, "measure-first", p.Findings[0].Code)
		in.Measured = some(first.CheckSent * quantity.Length(printer))
		second, _ := set(t, in)
		require.InDelta(t, quantity.In(second.Check, "mm"), quantity.In(second.CheckSent, "mm")*printer, 1e-9)
		lines := second.Strips[0].Lines[0]
		require.InDelta(t, 100*(1+float64(second.Contraction)), quantity.In(lines.At[10], "mm")*printer, 1e-9)

		in.Measured = some(second.CheckSent * quantity.Length(printer))
		in.PrintedWith = some(quantity.Number(second.Correction))
		third, _ := set(t, in)
		require.InDelta(t, float64(second.Correction), float64(third.Correction), 1e-9)
	}
	_, err := rule.Set(rule.Input{Alloy: some(alloy.CodeAlSiMg), Length: mm(300), Measured: some(mm(188))}, nil)
	require.ErrorContains(t, err, "measured: 188 mm is too far from 200 mm")
	_, p := set(t, rule.Input{Alloy: some(alloy.CodeAlSiMg), Length: mm(300), Measured: some(mm(194))})
	require.Equal(t, "correction-large", p.Findings[1].Code)
}

// A pattern made to a rule is the pattern that package pattern asks for.
func TestAgreesWithPattern(t *testing.T) {
	for _, a := range alloy.All() {
		for _, convention := range []string{"casting", "mould"} {
			for _, restraint := range []string{"free", "partly", "full"} {
				size := mm(400)
				sized, err := pattern.Size(pattern.Input{Alloy: a.Code, Convention: some(convention), Dimensions: []pattern.Dimension{{Size: size, Restraint: some(restraint)}}}, nil)
				require.NoError(t, err)
				out, _ := set(t, rule.Input{Alloy: some(a.Code), Convention: some(convention), Restraint: some(restraint), Length: size})
				require.InDelta(t, quantity.In(sized.Dimensions[0].Pattern.V, "mm"), quantity.In(out.True, "mm"), 1e-9, a.Code)
			}
		}
	}
}

func TestRefuses(t *testing.T) {
	for want, in := range map[string]rule.Input{
		"alloy: not chosen yet":                     {Length: mm(300)},
		"length: not filled in yet":                 {Alloy: some(alloy.CodeGreyIron)},
		"table: this source has no table for":       {Alloy: some(alloy.CodePewter), Table: some(alloy.TableName("heine")), Length: mm(300)},
		"measured: 200 mm is too far from 152.4 mm": {Alloy: some(alloy.CodeGreyIron), Length: mm(300), Division: some(rule.Sixteenths), Measured: some(mm(200))},
		"own: 8 % is out of range":                  {Own: some(8 * quantity.Percent), Length: mm(300)},
		"length: 3000 mm is out of range":           {Alloy: some(alloy.CodeGreyIron), Length: mm(3000)},
		"length: this is not a finite number":       {Alloy: some(alloy.CodeGreyIron), Length: quantity.Length(math.NaN())},
	} {
		_, err := rule.Set(in, nil)
		require.ErrorContains(t, err, want)
	}
}

// A table that changes with the size says for which sizes the rule is good.
func TestSizesOfTheRow(t *testing.T) {
	for size, want := range map[float64]string{300: "up to 609.6 mm", 800: "over 609.6 mm and up to 914.4 mm", 5000: "over 1219 mm"} {
		_, p := set(t, rule.Input{Alloy: some(alloy.CodeGreyIron), Table: some(alloy.TableName("heine")), Length: mm(300), Size: some(mm(size))})
		var said string
		for _, f := range p.Findings {
			if f.Code == "sizes" {
				said = f.Text.String()
			}
		}
		require.Contains(t, said, want)
	}
}

func FuzzSet(f *testing.F) {
	f.Add([]byte(`{"alloy":"grey-iron","length":"300 mm","measured":"199 mm","printed_with":"1.002"}`))
	f.Add([]byte(`{"own":"6 %","convention":"mould","length":"1.25 m","division":"1/64","paper":"letter","margin":"20 mm"}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		in, _ := form.Decode[rule.Input](data, quantity.US)
		p := &working.Paper{}
		out, err := rule.Set(in, p)
		if err != nil {
			return
		}
		w := &reply.Writer{System: quantity.US, Working: true}
		w.Answers(out, p)
		w.Findings(p.Findings)
		w.Steps(p.Steps)
	})
}

func ExampleSet() {
	// "Shop Practice" has a two-foot rule for brass 24 3/8 in long.
	out, err := rule.Set(rule.Input{Own: some(quantity.From[quantity.Ratio](3.0/16, "in/ft")), Length: 24 * quantity.Inch, Division: some(rule.Sixteenths)}, nil)
	fmt.Println(quantity.InchFraction(out.True, 64), err)
	// Output: 24 3/8 in <nil>
}
