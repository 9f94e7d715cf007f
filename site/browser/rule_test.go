package browser

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"math"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

// trueTo is how far a length on paper may be out: 0.1 mm in 100 mm.
const trueTo = 0.001

// measured is a rule as it lies on a page, mm from its first line; the strips
// in their order.
type measured struct {
	check  float64
	strips [][]float64
}

// inkPath is a path of pdftocairo's SVG.
type inkPath struct {
	D         string `xml:"d,attr"`
	Transform string `xml:"transform,attr"`
	Style     string `xml:"style,attr"`
}

var (
	move   = regexp.MustCompile(`M (\S+) (\S+) L (\S+) (\S+)`)
	matrix = regexp.MustCompile(`matrix\(([^,]+),([^,]+),([^,]+),([^,]+),([^,]+),([^)]+)\)`)
)

// measure takes the lines of a rule off a page of a PDF. The rule runs down the
// page, so its lines lie across; the check length is the one line that runs
// down by itself.
func measure(t *testing.T, pdf []byte, n int) measured {
	t.Helper()
	at := fmt.Sprint(n)
	decoder := xml.NewDecoder(bytes.NewReader(poppler(t, pdf, "pdftocairo", "-svg", "-f", at, "-l", at)))
	var out measured
	lines := map[int][]float64{} // by the edge that they hang from, tenths of a mm
	for {
		token, err := decoder.Token()
		if token == nil || err != nil {
			break
		}
		start, ok := token.(xml.StartElement)
		if !ok || start.Name.Local != "path" {
			continue
		}
		var p inkPath
		require.NoError(t, decoder.DecodeElement(&p, &start))
		m := matrix.FindStringSubmatch(p.Transform)
		if m == nil || !strings.Contains(p.Style, "fill:none") {
			continue
		}
		mm := func(x, y string) (float64, float64) {
			u, v := number(t, x), number(t, y)
			return (number(t, m[1])*u + number(t, m[3])*v + number(t, m[5])) * 25.4 / 72, (number(t, m[2])*u + number(t, m[4])*v + number(t, m[6])) * 25.4 / 72
		}
		down := 0.0
		cut := strings.Contains(p.D, "Z")
		for _, s := range move.FindAllStringSubmatch(p.D, -1) {
			x0, y0 := mm(s[1], s[2])
			x1, y1 := mm(s[3], s[4])
			switch {
			case cut:
			case math.Abs(y1-y0) > 100:
				down = math.Abs(y1 - y0)
			case math.Abs(y1-y0) < 0.01 && math.Abs(x1-x0) > 2 && down == 0:
				edge := int(math.Round(10 * math.Max(x0, x1)))
				lines[edge] = append(lines[edge], (y0+y1)/2)
			}
		}
		if down > 0 {
			out.check = down
		}
	}
	var edges []int
	for edge := range lines {
		edges = append(edges, edge)
	}
	slices.Sort(edges)
	for _, edge := range slices.Backward(edges) {
		places := lines[edge]
		slices.Sort(places)
		if len(places) < 10 {
			continue
		}
		zero := places[0]
		for i := range places {
			places[i] -= zero
		}
		out.strips = append(out.strips, places)
	}
	return out
}

// rule opens the rule's page and sets its fields.
func (tab *browserTab) rule(fields map[string]string) {
	tab.t.Helper()
	tab.view("#/rule")
	tab.until(`document.querySelector("[data-sheet-page=rule]")`)
	for key, value := range fields {
		path := "rule." + key
		if js[bool](tab, `document.querySelector(%s).matches("select")`, field(path)) {
			js[chromedp.Void](tab, `{ const s = document.querySelector(%s); s.value = %s; s.dispatchEvent(new Event("change")); }`, field(path), value)
		} else {
			tab.fill(path, value)
		}
	}
	tab.quiet()
}

// The rule on paper, measured by a program that knows nothing of it: each line
// stands at n·d·(1 + s) within 0.1 mm in 100 mm, whatever the metal, the
// division and the paper, on each strip; the numbers stand at their lines; and
// the check length is true.
func TestContractionRuleIsTrue(t *testing.T) {
	t.Parallel()
	h := open(t)
	for _, c := range []struct {
		name, paper string
		fields      map[string]string
		s, d, check float64 // contraction; division and check length, mm
		whole       float64 // mm, of the casting
		numbered    float64 // mm between numbers
	}{
		{"grey iron by Heine, 1/8 in per ft, millimetres, A4", "a4", map[string]string{"alloy": "grey-iron", "table": "heine", "length": "300 mm"}, 1.0 / 96, 1, 200, 300, 10},
		{"grey iron by Heine, 1/8 in per ft, sixteenths, Letter", "letter", map[string]string{"alloy": "grey-iron", "table": "heine", "length": "12 in", "division": "1/16"}, 1.0 / 96, 25.4 / 16, 152.4, 304.8, 25.4},
		{"aluminium by Dooley, 7/32 in per ft, sixty-fourths, A4", "a4", map[string]string{"alloy": "aluminium", "table": "dooley", "length": "24 in", "division": "1/64"}, 7.0 / 384, 25.4 / 64, 152.4, 609.6, 25.4},
		{"own figure of 21 mm/m, half millimetres, Letter", "letter", map[string]string{"own": "21 mm/m", "length": "200 mm", "division": "half-mm"}, 0.021, 0.5, 200, 200, 10},
		{"nothing at all, a plain rule", "a4", map[string]string{"own": "0 %", "length": "100 mm"}, 0, 1, 200, 100, 10},
	} {
		t.Run(c.name, func(t *testing.T) {
			t.Parallel()
			tab := h.tab(t)
			tab.hosted()
			tab.rule(c.fields)
			tab.paper(c.paper)
			pdf := tab.pdf(papers[c.paper])
			text, pages := readPDF(t, pdf)
			require.Len(t, pages, 1)
			inside(t, pages, papers[c.paper])
			require.Contains(t, text, "Numbered in")
			m := measure(t, pdf, 1)
			near := func(want, got float64, what ...any) {
				t.Helper()
				require.InDelta(t, want, got, trueTo*want+0.01, what...)
			}
			near(c.check, m.check, "check length")
			from := 0.0 // mm of the casting
			for i, strip := range m.strips {
				worst := 0.0
				for n, at := range strip {
					want := float64(n) * c.d * (1 + c.s)
					near(want, at, "line %d of strip %d", n, i+1)
					worst = max(worst, math.Abs(at-want))
				}
				t.Logf("strip %d: %d lines over %.1f mm, worst out by %.4f mm", i+1, len(strip), strip[len(strip)-1], worst)
				if i+1 == len(m.strips) {
					require.InDelta(t, c.whole, from+float64(len(strip)-1)*c.d, 1e-6, "where the rule ends")
				} else { // the next strip begins where this one has its last number
					from += c.numbered * math.Ceil(math.Round(c.whole/c.numbered)/float64(len(m.strips)))
				}
			}
			numbersStand(t, pages[0], c.numbered*(1+c.s), c.numbered == 25.4)
			grey(t, pdf)
		})
	}
}

// numbersStand holds that consecutive numbers of a strip lie as far apart as
// their lines, as pdftotext sees them.
func numbersStand(t *testing.T, p printed, apart float64, inches bool) {
	t.Helper()
	each := 10
	if inches {
		each = 1
	}
	type place struct{ x, y float64 }
	at := map[string]place{}
	for _, w := range p.Words {
		at[w.Text] = place{(w.XMin + w.XMax) / 2 * 25.4 / 72, (w.YMin + w.YMax) / 2 * 25.4 / 72}
	}
	pairs := 0
	for n := 2 * each; ; n += each {
		a, okA := at[fmt.Sprint(n)]
		b, okB := at[fmt.Sprint(n+each)]
		c, okC := at[fmt.Sprint(n+2*each)]
		if !okA {
			break
		}
		// A number at the end of a strip is set to one side of its line.
		if okB && okC && math.Abs(a.x-b.x) < 0.01 && math.Abs(b.x-c.x) < 0.01 && n > 2*each && math.Abs((c.y-b.y)-(b.y-a.y)) < 0.05 {
			require.InDelta(t, apart, b.y-a.y, 0.12, "from %d to %d", n, n+each)
			pairs++
		}
	}
	require.GreaterOrEqual(t, pairs, 3)
}

// The check length by dots: at 600 dots to the inch the line runs over as many
// as its length asks for.
func TestCheckLengthByDots(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.hosted()
	tab.rule(map[string]string{"alloy": "al-si-mg"})
	tab.paper("a4")
	const dots = 600
	picture := poppler(t, tab.pdf(papers["a4"]), "pdftoppm", "-r", fmt.Sprint(dots), "-gray")
	var width, height int
	_, err := fmt.Sscanf(string(picture[:20]), "P5\n%d %d\n255\n", &width, &height)
	require.NoError(t, err)
	pixels := picture[len(fmt.Sprintf("P5\n%d %d\n255\n", width, height)):]
	longest := 0.0
	for x := width * 3 / 4; x < width*7/8; x++ {
		length := 0
		for y := range height {
			if pixels[y*width+x] < 200 {
				length++
				longest = max(longest, float64(length))
			} else {
				length = 0
			}
		}
	}
	// The ends stand half a line's width over it on either side.
	require.InDelta(t, 200, longest/dots*25.4-0.22, 0.1)
}

// A printer that is out by a fiftieth shows it on the check length; what that
// measures corrects the next print, which comes out true on the same printer.
// It is kept on the device; what no printer would do is refused.
func TestCheckLengthCorrects(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.hosted()
	tab.rule(map[string]string{"own": "10 mm/m", "length": "200 mm"})
	tab.paper("a4")
	const out = 0.98
	m := measure(t, tab.pdfScaled(papers["a4"], out), 1)
	require.InDelta(t, 200*out, m.check, 0.2)
	require.InDelta(t, 101*out, m.strips[0][100], 0.1)

	tab.fill("rule.measured", fmt.Sprintf("%.2f mm", m.check))
	pdf := tab.pdfScaled(papers["a4"], out)
	again := measure(t, pdf, 1)
	require.InDelta(t, 200, again.check, 0.02)
	require.InDelta(t, 101, again.strips[0][100], 0.02)
	text, _ := readPDF(t, pdf)
	require.Contains(t, text, fmt.Sprintf("Correction of this print: %.4f", 200/m.check))

	tab.reload()
	tab.until(`document.querySelector("[data-sheet-page=rule]")`)
	require.Equal(t, fmt.Sprintf("%.2f mm", m.check), tab.value("rule.measured"))

	tab.fill("rule.measured", "180 mm")
	tab.until(`document.querySelector(".field-fault")`)
	require.Contains(t, tab.texts(".field-fault")[0], "it must lie from 190.5 mm to 210.5 mm")
	require.False(t, js[bool](tab, `Boolean(document.querySelector(".paper-page"))`), "a rule is shown that was refused")
}

// In a plan the rule's contraction is the plan's, and its working opens on the
// rule's own page.
func TestRuleOfThePlan(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.hosted()
	tab.rule(map[string]string{"alloy": "pewter"})
	tab.click("[data-answer=longer] button")
	tab.until(`document.querySelector("pw-working [data-step=g] math")`)
	tab.view("#/")
	tab.example(relief)
	plan := tab.planAddress()
	tab.view(plan + "/print")
	tab.click("[data-sheet-choice=rule]")
	tab.until(`document.querySelector(".rule-title")?.textContent.includes("Silicon bronze")`)
	tab.view(plan + "/sheet/pattern")
	tab.fill("pattern.own", "15 mm/m")
	tab.view(plan + "/print")
	tab.until(`document.querySelector(".rule")?.textContent.includes("15 mm/m")`)
}
