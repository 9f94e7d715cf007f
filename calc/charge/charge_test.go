package charge_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/charge"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/reply"
	"pourwright/calc/working"
	"pourwright/calc/working/stepcheck"
)

// read decodes a question as the door does.
func read(t *testing.T, text string) charge.Input {
	t.Helper()
	in, faults := form.Decode[charge.Input]([]byte(text), quantity.Metric)
	require.Empty(t, faults)
	return in
}

// solve answers and proves the working.
func solve(t *testing.T, text string) (charge.Output, *working.Paper) {
	t.Helper()
	return stepcheck.Run(t, charge.Blend, read(t, text))
}

func find(p *working.Paper, code string) []working.Finding {
	var out []working.Finding
	for _, f := range p.Findings {
		if f.Code == code {
			out = append(out, f)
		}
	}
	return out
}

const (
	metalco = `{"melt":"1 lb","materials":[
		{"name":"1","price":"22 per lb","analysis":[{"element":"Sn","amount":"60 %"},{"element":"Zn","amount":"10 %"},{"element":"Pb","amount":"30 %"}]},
		{"name":"2","price":"20 per lb","analysis":[{"element":"Sn","amount":"25 %"},{"element":"Zn","amount":"15 %"},{"element":"Pb","amount":"60 %"}]},
		{"name":"3","price":"25 per lb","analysis":[{"element":"Sn","amount":"45 %"},{"element":"Zn","amount":"45 %"},{"element":"Pb","amount":"10 %"}]},
		{"name":"4","price":"24 per lb","analysis":[{"element":"Sn","amount":"20 %"},{"element":"Zn","amount":"50 %"},{"element":"Pb","amount":"30 %"}]},
		{"name":"5","price":"27 per lb","analysis":[{"element":"Sn","amount":"50 %"},{"element":"Zn","amount":"40 %"},{"element":"Pb","amount":"10 %"}]}],
		"limits":[{"element":"Sn","least":"40 %","most":"40 %"},{"element":"Zn","least":"35 %","most":"35 %"},{"element":"Pb","least":"25 %","most":"25 %"}]}`
	cupola = `{"melt":"100 kg","materials":[
		{"name":"A","least":"40 %","most":"40 %","analysis":[{"element":"C","amount":"3.5 %"},{"element":"Si","amount":"2.5 %"},{"element":"Mn","amount":"0.4 %"},{"element":"S","amount":"0.01 %"},{"element":"P","amount":"0.4 %"}]},
		{"name":"B","least":"35 %","most":"35 %","analysis":[{"element":"C","amount":"3.2 %"},{"element":"Si","amount":"1.5 %"},{"element":"Mn","amount":"1 %"},{"element":"S","amount":"0.02 %"},{"element":"P","amount":"0.6 %"}]},
		{"name":"scrap","least":"25 %","most":"25 %","analysis":[{"element":"C","amount":"3.2 %"},{"element":"Si","amount":"1.2 %"},{"element":"Mn","amount":"0.5 %"},{"element":"S","amount":"0.1 %"},{"element":"P","amount":"0.4 %"}]}],
		"furnace":"cupola","changes":[{"element":"S","pick_up":"0.05 %"}]}`
)

func TestPublished(t *testing.T) {
	t.Run("Hillier and Lieberman, Introduction to Operations Research, ch. 3 (from memory): tin 40, zinc 35, lead 25 %, shares 0.0435, 0.2826, 0.6739, cost 23.46", func(t *testing.T) {
		out, _ := solve(t, metalco)
		require.True(t, out.Kept)
		for i, want := range []float64{0.0435, 0.2826, 0.6739, 0, 0} {
			require.InDelta(t, want, float64(out.Materials[i].Share), 0.00005)
		}
		require.InDelta(t, 23.46, float64(out.Cost.V), 0.005)
	})
	t.Run("course text, Charge Calculations, example 13.1 (statement seen): C 3.47, Si 1.6425, Mn 0.508, P 0.47, S 0.086 %", func(t *testing.T) {
		out, _ := solve(t, cupola)
		for i, want := range []float64{3.47, 1.6425, 0.508, 0.47, 0.086} {
			require.InDelta(t, want, quantity.In(out.Elements[i].Melt, "%"), 0.00005, out.Elements[i].Element)
		}
	})
	t.Run("Navy Foundry Manual (from memory): 2 oz of phosphor copper on 100 lb", func(t *testing.T) {
		out, _ := solve(t, `{"melt":"100 lb","materials":[{"stuff":"ingot-83600"}],"additions":[{"kind":"phosphor-copper"}]}`)
		require.InDelta(t, 2, quantity.In(out.Additions[0].Mass, "oz"), 0.05)
	})
}

// TestBlendRegression holds values of our own.
func TestBlendRegression(t *testing.T) {
	out, _ := solve(t, `{"melt":"100 lb","materials":[{"stuff":"ingot-83600"}],"additions":[{"kind":"phosphor-copper"},
		{"kind":"own","element":"Sn","content":"99.9 %","recovery":"98 %","raise":"0.5 %"},{"kind":"degasser","dose":"0.2 %"}]}`)
	require.InDelta(t, 0.01875, quantity.In(out.Additions[0].Rise.V, "%"), 1e-9)
	require.InDelta(t, 100*0.005/0.999/0.98, quantity.In(out.Additions[1].Mass, "lb"), 1e-9)
	require.InDelta(t, 0.2, quantity.In(out.Additions[2].Mass, "lb"), 1e-9)
	require.False(t, out.Additions[2].Rise.Known())
}

func TestImpossible(t *testing.T) {
	const stock = `"materials":[{"name":"Pig","on_hand":"40 kg","analysis":[{"element":"C","amount":"4 %"},{"element":"P","amount":"0.05 %"}]},
		{"name":"Scrap","analysis":[{"element":"C","amount":"3.2 %"},{"element":"P","amount":"0.3 %"}]}]`
	t.Run("the limit, by how much, the most that can be made, and what would help", func(t *testing.T) {
		out, p := solve(t, `{"melt":"100 kg",`+stock+`,"limits":[{"element":"P","most":"0.1 %"}]}`)
		require.False(t, out.Kept)
		// 40 kg of pig and 60 kg of scrap come nearest: 0.2 %.
		require.InDelta(t, 0.2, quantity.In(out.Elements[1].Melt, "%"), 1e-6)
		require.InDelta(t, 0.1, quantity.In(out.Elements[1].Missed.V, "%"), 1e-6)
		// 40 kg of pig carry 10 kg of scrap: 0.05 × 4 + 0.3 × 1 = 0.1 × 5.
		require.InDelta(t, 50, float64(out.Largest.V), 1e-4)
		f := find(p, "limit-missed")
		require.Len(t, f, 1)
		require.Equal(t, "limits[0].most", f[0].Field)
		require.Equal(t, "No blend of this stock keeps every limit. In the one that comes nearest, phosphorus is 0.2 %, which is 0.1 % over its most of 0.1 %.", f[0].Text.String())
		// Of 100 kg, 80 must be pig.
		require.Equal(t, "Melt 50 kg at most, or get more: With 40 kg of pig more on hand, every limit can be kept.", f[0].Do.String())
	})
	t.Run("a typical material helps where no more of the same does", func(t *testing.T) {
		_, p := solve(t, `{"melt":"100 kg",`+stock+`,"limits":[{"element":"C","most":"3 %"}]}`)
		require.Contains(t, find(p, "limit-missed")[0].Do.String(), "of steel scrap more on hand")
	})
	t.Run("nothing helps", func(t *testing.T) {
		_, p := solve(t, `{"melt":"100 kg",`+stock+`,"limits":[{"element":"C","most":"0.05 %"}]}`)
		require.Contains(t, find(p, "limit-missed")[0].Do.String(), "Widen the limit")
	})
	t.Run("one miss rather than two", func(t *testing.T) {
		_, p := solve(t, `{"melt":"100 kg",`+stock+`,"limits":[{"element":"C","least":"3.3 %"},{"element":"P","most":"0.1 %"}]}`)
		require.Len(t, find(p, "limit-missed"), 1)
	})
	t.Run("stock too small", func(t *testing.T) {
		out, p := solve(t, `{"melt":"100 kg","materials":[{"stuff":"steel-scrap","on_hand":"20 kg","yield":"90 %"},{"stuff":"foundry-pig","on_hand":"40 kg"}]}`)
		require.InDelta(t, 58, float64(out.Melt), 1e-6)
		require.Equal(t, "The stock makes only 58 kg of the 100 kg wanted, in the shares asked for: 42 kg short.", find(p, "stock-short")[0].Text.String())
	})
	t.Run("a pick-up that is over the most by itself", func(t *testing.T) {
		out, _ := solve(t, `{"melt":"100 kg",`+stock+`,"limits":[{"element":"S","most":"0.02 %"}],"changes":[{"element":"S","pick_up":"0.05 %"}]}`)
		require.InDelta(t, 0.03, quantity.In(out.Elements[len(out.Elements)-1].Missed.V, "%"), 1e-9)
	})
}

func TestEdges(t *testing.T) {
	t.Run("a limit that the only material meets exactly is kept", func(t *testing.T) {
		out, p := solve(t, `{"melt":"3 kg","materials":[{"analysis":[{"element":"C","amount":"3.3 %"},{"element":"Pb","amount":"0 %"}]}],
			"limits":[{"element":"C","least":"3.3 %","most":"3.3 %"},{"element":"Pb","most":"0 %"}]}`)
		require.True(t, out.Kept)
		require.NotEmpty(t, find(p, "at-the-limit"))
	})
	t.Run("a most of nothing keeps every sliver out", func(t *testing.T) {
		out, _ := solve(t, `{"melt":"3 kg","materials":[{"price":"1","analysis":[{"element":"Pb","amount":"0.01 %"}]},{"price":"9","analysis":[{"element":"Pb","amount":"0 %"}]}],
			"limits":[{"element":"Pb","most":"0 %"}]}`)
		require.Zero(t, out.Materials[0].Mass)
		require.Equal(t, "Left out; a limit leaves it no room.", out.Materials[0].Standing.String())
	})
	t.Run("equal prices take what stands first", func(t *testing.T) {
		out, _ := solve(t, `{"melt":"3 kg","materials":[{"stuff":"foundry-pig","price":"1"},{"stuff":"machinery-scrap","price":"1"}]}`)
		require.EqualValues(t, 3, out.Materials[0].Mass)
		require.Zero(t, out.Materials[1].Mass)
	})
	t.Run("one's own figure goes before the typical one, the rest stays", func(t *testing.T) {
		out, p := solve(t, `{"melt":"3 kg","materials":[{"stuff":"fesi-75","analysis":[{"element":"Si","amount":"72 %"}]}]}`)
		require.InDelta(t, 72*0.925, quantity.In(out.Elements[0].Melt, "%"), 1e-9)
		require.Empty(t, find(p, "typical-analysis"))
	})
	t.Run("a loss cannot make less than nothing", func(t *testing.T) {
		out, _ := solve(t, `{"melt":"3 kg","furnace":"induction","materials":[{"analysis":[{"element":"C","amount":"0.01 %"}]}]}`)
		require.Zero(t, out.Elements[0].Melt)
	})
}

// TestTypicals: every typical material and addition blends, and no typical
// analysis is over the whole.
func TestTypicals(t *testing.T) {
	for _, s := range charge.Stuff("").Choices() {
		out, _ := solve(t, `{"melt":"10 kg","materials":[{"stuff":"`+s[0]+`"}]}`)
		sum := 0.0
		for _, e := range out.Elements {
			require.Positive(t, float64(e.Melt), s[0])
			sum += float64(e.Melt)
		}
		require.LessOrEqual(t, sum, 1.0, s[0])
	}
	for _, k := range charge.Kind("").Choices() {
		out, _ := solve(t, `{"melt":"10 kg","materials":[{"stuff":"steel-scrap"}],"additions":[{"kind":"`+k[0]+`","dose":"0.2 %","element":"Si","content":"50 %"}]}`)
		require.InDelta(t, 0.02, float64(out.Additions[0].Mass), 1e-12)
	}
}

func TestFindings(t *testing.T) {
	const pig = `{"melt":"10 kg","materials":[{"stuff":"foundry-pig"}]`
	for _, c := range []struct {
		code  string
		level working.Level
		in    string
	}{
		{"typical-analysis", working.Note, pig + `}`},
		{"no-prices", working.Note, pig + `}`},
		{"price-missing", working.Note, `{"melt":"10 kg","materials":[{"stuff":"foundry-pig","price":"1"},{"stuff":"steel-scrap"}]}`},
		{"content-unknown", working.Mind, `{"melt":"10 kg","materials":[{"analysis":[{"element":"C","amount":"3 %"}]}],"limits":[{"element":"P","most":"0.1 %"}]}`},
		{"addition-over", working.Mind, pig + `,"limits":[{"element":"Si","most":"2.6 %"}],"additions":[{"kind":"inoculant"}]}`},
		{"inoculant-fades", working.Note, pig + `,"additions":[{"kind":"inoculant"}]}`},
		{"dose-unusual", working.Mind, pig + `,"additions":[{"kind":"inoculant","dose":"1 %"}]}`},
		{"phosphor-where", working.Note, pig + `,"additions":[{"kind":"phosphor-copper"}]}`},
		{"tablet-restricted", working.Mind, pig + `,"additions":[{"kind":"degasser"}]}`},
	} {
		t.Run(c.code, func(t *testing.T) {
			_, p := solve(t, c.in)
			f := find(p, c.code)
			require.Len(t, f, 1)
			require.Equal(t, c.level, f[0].Level)
			for _, f := range p.Findings {
				require.NotContains(t, f.Text.In(quantity.US)+f.Do.In(quantity.US), "%!")
			}
		})
	}
}

func TestFaults(t *testing.T) {
	for _, c := range []struct{ name, field, in string }{
		{"no stock", "materials", `{"melt":"1 kg"}`},
		{"no analysis", "materials[0].analysis", `{"melt":"1 kg","materials":[{"name":"pig"}]}`},
		{"no content", "materials[0].analysis[0].amount", `{"melt":"1 kg","materials":[{"analysis":[{"element":"C"}]}]}`},
		{"element twice", "materials[0].analysis[1].element", `{"melt":"1 kg","materials":[{"analysis":[{"element":"C","amount":"1 %"},{"element":"C","amount":"1 %"}]}]}`},
		{"over 100 %", "materials[0].analysis", `{"melt":"1 kg","materials":[{"analysis":[{"element":"Cu","amount":"90 %"},{"element":"Sn","amount":"11 %"}]}]}`},
		{"least over most", "materials[0].least", `{"melt":"1 kg","materials":[{"stuff":"steel-scrap","least":"50 %","most":"40 %"},{"stuff":"steel-scrap"}]}`},
		{"leasts over the whole", "materials", `{"melt":"1 kg","materials":[{"stuff":"steel-scrap","least":"60 %"},{"stuff":"steel-scrap","least":"50 %"}]}`},
		{"mosts under the whole", "materials", `{"melt":"1 kg","materials":[{"stuff":"steel-scrap","most":"60 %"},{"stuff":"steel-scrap","most":"30 %"}]}`},
		{"limit without a figure", "limits[0].most", `{"melt":"1 kg","materials":[{"stuff":"steel-scrap"}],"limits":[{"element":"C"}]}`},
		{"limit the wrong way round", "limits[0].least", `{"melt":"1 kg","materials":[{"stuff":"steel-scrap"}],"limits":[{"element":"C","least":"2 %","most":"1 %"}]}`},
		{"limit twice", "limits[1].element", `{"melt":"1 kg","materials":[{"stuff":"steel-scrap"}],"limits":[{"element":"C","most":"1 %"},{"element":"C","most":"2 %"}]}`},
		{"change twice", "changes[1].element", `{"melt":"1 kg","materials":[{"stuff":"steel-scrap"}],"changes":[{"element":"C"},{"element":"C"}]}`},
		{"nothing on hand", "materials", `{"melt":"1 kg","materials":[{"stuff":"steel-scrap","on_hand":"0 kg"}]}`},
		{"a least share of what is not there", "materials", `{"melt":"1 kg","materials":[{"stuff":"steel-scrap","on_hand":"0 kg","least":"10 %"},{"stuff":"foundry-pig"}]}`},
		{"rise and dose", "additions[0].dose", `{"melt":"1 kg","materials":[{"stuff":"steel-scrap"}],"additions":[{"kind":"fesi-75","raise":"1 %","dose":"1 %"}]}`},
		{"neither rise nor dose", "additions[0].raise", `{"melt":"1 kg","materials":[{"stuff":"steel-scrap"}],"additions":[{"kind":"fesi-75"}]}`},
		{"rise of nothing", "additions[0].element", `{"melt":"1 kg","materials":[{"stuff":"steel-scrap"}],"additions":[{"kind":"own","raise":"1 %"}]}`},
		{"element without content", "additions[0].content", `{"melt":"1 kg","materials":[{"stuff":"steel-scrap"}],"additions":[{"kind":"own","element":"Sn","raise":"1 %"}]}`},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := charge.Blend(read(t, c.in), nil)
			var faults form.Faults
			require.ErrorAs(t, err, &faults)
			require.Equal(t, c.field, faults[0].Field)
			require.NotContains(t, faults.Error(), "%!")
		})
	}
}

// FuzzBlend feeds whatever JSON there is: the answer is faults or finite
// numbers, never a panic. The writer panics on a number that is not finite.
func FuzzBlend(f *testing.F) {
	f.Add([]byte(metalco))
	f.Add([]byte(cupola))
	f.Add([]byte(`{"melt":"50 t","materials":[{"stuff":"foundry-pig","price":"1e5","on_hand":"1e-9 kg"},{"stuff":"magnesium-ingot","yield":"10 %","least":"99.999 %"}],"limits":[{"element":"C","least":"100 %"},{"element":"Mg","most":"0 %"}],"additions":[{"kind":"own","element":"C","content":"0.1 %","recovery":"1 %","raise":"5 %"}]}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		in, _ := form.Decode[charge.Input](data, quantity.US)
		p := &working.Paper{}
		out, err := charge.Blend(in, p)
		if err != nil {
			return
		}
		w := &reply.Writer{System: quantity.US, Working: true}
		w.Answers(out, p)
		w.Findings(p.Findings)
		w.Steps(p.Steps)
	})
}

// ExampleBlend is the alloy of 40 % tin, 35 % zinc and 25 % lead of the
// textbooks, blended of three of its alloys.
func ExampleBlend() {
	alloy := func(name string, price quantity.Price, tin, zinc, lead quantity.Ratio) charge.Material {
		part := func(e charge.Element, v quantity.Ratio) charge.Part {
			return charge.Part{Element: e, Amount: quantity.Some(v * quantity.Percent)}
		}
		return charge.Material{Name: name, Price: quantity.Some(price), Analysis: []charge.Part{part("Sn", tin), part("Zn", zinc), part("Pb", lead)}}
	}
	limit := func(e charge.Element, v quantity.Ratio) charge.Limit {
		return charge.Limit{Element: e, Least: quantity.Some(v * quantity.Percent), Most: quantity.Some(v * quantity.Percent)}
	}
	out, err := charge.Blend(charge.Input{
		Melt:      100 * quantity.Kilogram,
		Materials: []charge.Material{alloy("alloy 1", 22, 60, 10, 30), alloy("alloy 2", 20, 25, 15, 60), alloy("alloy 3", 25, 45, 45, 10)},
		Limits:    []charge.Limit{limit("Sn", 40), limit("Zn", 35), limit("Pb", 25)},
	}, nil)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, m := range out.Materials {
		fmt.Println(m.Name, m.Mass)
	}
	fmt.Println("cost", out.CostPerKilogram.V)
	// Output:
	// alloy 1 4.35 kg
	// alloy 2 28.3 kg
	// alloy 3 67.4 kg
	// cost ¤23.46 per kg
}
