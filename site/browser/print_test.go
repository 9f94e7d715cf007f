package browser

import (
	"bytes"
	"encoding/json"
	"encoding/xml"
	"fmt"
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

// papers are the sizes that the sheets are made for.
var papers = map[string]chromedp.PaperSize{"a4": chromedp.PaperA4, "letter": chromedp.PaperLetter}

// mostPages is the most that a sheet of an example may take.
var mostPages = map[string]int{"pour": 3, "handling": 3, "pattern": 1, "mould": 2, "rule": 1}

// margin is the least white that must stay round the print, in pt: 10 mm.
const margin = 28.3

// printed is a page as pdftotext -bbox reads it, in pt.
type printed struct {
	Width  float64 `xml:"width,attr"`
	Height float64 `xml:"height,attr"`
	Words  []struct {
		XMin float64 `xml:"xMin,attr"`
		YMin float64 `xml:"yMin,attr"`
		XMax float64 `xml:"xMax,attr"`
		YMax float64 `xml:"yMax,attr"`
		Text string  `xml:",chardata"`
	} `xml:"word"`
}

// pdf prints the page as the browser's own print command would: with the size
// and the margins of the style sheet.
func (tab *browserTab) pdf(size chromedp.PaperSize) []byte {
	tab.t.Helper()
	return tab.pdfScaled(size, 1)
}

// pdfScaled is pdf on a printer that makes everything larger or smaller.
func (tab *browserTab) pdfScaled(size chromedp.PaperSize, scale float64) []byte {
	tab.t.Helper()
	return run(tab, chromedp.PrintToPDF(chromedp.PDFPaper(size), func(p *page.PrintToPDFParams) {
		p.PreferCSSPageSize = new(true)
		p.Scale = scale
	}))
}

// poppler runs one of its tools on a PDF.
func poppler(t testing.TB, pdf []byte, tool string, args ...string) []byte {
	t.Helper()
	path, err := exec.LookPath(tool)
	if err != nil {
		lacking(t, tool+": install poppler-utils (Debian: apt-get install poppler-utils)")
	}
	file := filepath.Join(t.TempDir(), "sheet.pdf")
	require.NoError(t, os.WriteFile(file, pdf, 0o644))
	args = append(args, file)
	if tool != "pdftoppm" { // which takes a name for its files; without one it writes to the pipe
		args = append(args, "-")
	}
	out, err := exec.Command(path, args...).Output()
	require.NoError(t, err)
	return out
}

func readPDF(t testing.TB, pdf []byte) (text string, pages []printed) {
	t.Helper()
	plain := poppler(t, pdf, "pdftotext", "-layout")
	var doc struct {
		Pages []printed `xml:"body>doc>page"`
	}
	decoder := xml.NewDecoder(bytes.NewReader(poppler(t, pdf, "pdftotext", "-bbox")))
	decoder.Strict = false
	decoder.Entity = xml.HTMLEntity
	require.NoError(t, decoder.Decode(&doc))
	return strings.Join(strings.Fields(string(plain)), " "), doc.Pages
}

// paper chooses one in the print room.
func (tab *browserTab) paper(name string) {
	tab.t.Helper()
	js[chromedp.Void](tab, `document.querySelector("[data-paper-choice=" + %s + "]").click()`, name)
	tab.quiet()
	tab.until(`document.querySelector(".paper-page").dataset.paper === %s`, name)
}

// What was tapped in at the furnace stands on the pour sheet, each entry with
// its time of day and since tapping; one that was struck out says so. Without a
// record there is room to write instead.
func TestRecordOnPaper(t *testing.T) {
	t.Parallel()
	tapped := time.Date(2026, time.March, 14, 10, 0, 0, 0, time.UTC)
	var events []any
	for _, e := range []struct {
		what  string
		after time.Duration
		more  map[string]any
	}{
		{"tapped", 0, nil},
		{"reading", 31 * time.Second, map[string]any{"temperature": "741 °C"}},
		{"start", 95 * time.Second, map[string]any{"mould": "1", "name": "Bracket"}},
		{"stop", 99 * time.Second, map[string]any{"mould": "1", "name": "Bracket"}},
		{"remark", 120 * time.Second, map[string]any{"note": "Ran smoothly", "struck": true}},
	} {
		event := map[string]any{"what": e.what, "at": fmt.Sprintf("%.1f s", e.after.Seconds()), "clock": tapped.Add(e.after).Format(time.RFC3339)}
		maps.Copy(event, e.more)
		events = append(events, event)
	}
	plan := maps.Clone(examples(t)[bracket])
	tab := open(t).tab(t)
	printed := func() string {
		content, err := json.Marshal(plan)
		require.NoError(t, err)
		tab.hosted()
		tab.load("own.pour.json", content)
		tab.until(`document.querySelector("[data-part]")`)
		tab.view(tab.planAddress() + "/print")
		tab.paper("a4")
		text, _ := readPDF(t, tab.pdf(papers["a4"]))
		return text
	}
	require.Contains(t, printed(), "Tapped at")
	plan["record"] = map[string]any{"events": events}
	text := printed()
	require.Contains(t, text, "What happened, "+tapped.Local().Format("2 January 2006"))
	require.NotContains(t, text, "Tapped at")
	for _, line := range []struct {
		after time.Duration
		says  string
	}{
		{0, "0:00 Ladle full"},
		{31 * time.Second, "0:31 Read: 741 °C"},
		{95 * time.Second, "1:35 Begun: Bracket"},
		{99 * time.Second, "1:39 Full: Bracket"},
		{120 * time.Second, "2:00 Remark: Ran smoothly (struck out)"},
	} {
		require.Contains(t, text, tapped.Add(line.after).Local().Format("15:04:05")+" "+line.says)
	}
}

// Every sheet of every example, in both systems and on both papers: it begins
// on a page of its own and takes few, each page says which it is, what must
// stand on it stands there, nothing is cut or comes near the edge, and there is
// no colour.
func TestSheetsOnPaper(t *testing.T) {
	t.Parallel()
	h := open(t)
	for name, plan := range examples(t) {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			tab := h.tab(t)
			tab.hosted()
			tab.example(name)
			address := tab.planAddress()
			tab.view(address + "/print")
			tab.click("[data-sheet-choice=rule]")
			tab.until(`document.querySelector("[data-sheet-page=rule]")`)
			for size, units := range map[string]string{"a4": "metric", "letter": "us"} {
				t.Run(size+", "+units, func(t *testing.T) {
					js[chromedp.Void](tab, `document.querySelector("[data-units=" + %s + "]").click()`, units)
					tab.paper(size)
					pdf := tab.pdf(papers[size])
					text, pages := readPDF(t, pdf)
					require.Contains(t, text, plan["title"])
					onPaper(t, text, pages, natively(t, units, plan))
					inside(t, pages, papers[size])
					inSheets(t, pages, js[[][]string](tab, `[...document.querySelectorAll("[data-sheet-page]")].map((p) => [p.dataset.sheetPage, p.ariaLabel])`))
					grey(t, pdf)
				})
			}
			shown := js[int](tab, `document.querySelectorAll(".paper-page").length`)
			tab.view(address) // printing the drawing prints the same sheets
			_, pages := readPDF(t, tab.pdf(papers["letter"]))
			require.Len(t, pages, shown)
		})
	}
}

// onPaper looks for what must stand on the sheets.
func onPaper(t *testing.T, text string, pages []printed, answer answer) {
	t.Helper()
	for _, c := range answer.Card {
		require.Contains(t, text, c.Label)
		require.Contains(t, text, c.Text, c.Label)
	}
	words := strings.Join(strings.Fields(strings.Join(wordsOf(pages), " ")), " ")
	for _, s := range answer.Stations {
		if s.State == "blank" {
			continue
		}
		require.Contains(t, text, s.Title)
		answers, _ := s.Answers.(map[string]any)
		switch s.Key {
		case "pattern":
			for _, d := range answers["dimensions"].([]any) {
				leaf := func(key string) map[string]any { return d.(map[string]any)[key].(map[string]any) }
				for _, key := range []string{"finished", "raw", "allowance", "pattern"} {
					if leaf(key)["unknown"] == true {
						continue
					}
					if fraction, ok := leaf(key)["fraction"].(string); ok {
						require.Contains(t, words, strings.TrimSuffix(fraction, " in"), key)
						require.Contains(t, words, leaf(key)["text"], key)
					} else {
						require.Contains(t, words, strings.TrimSuffix(leaf(key)["text"].(string), " mm"), key)
					}
				}
			}
		case "mould":
			for _, key := range []string{"top", "bottom", "side", "cope_mass", "drag_mass"} {
				require.Contains(t, text, answers[key].(map[string]any)["text"], key)
			}
		}
	}
	holds := answer.holds()
	require.NotEmpty(t, holds)
	require.Equal(t, len(holds), strings.Count(text, "Hold point."), "hold points")
	for _, hold := range holds {
		require.Contains(t, words, hold)
	}
	for _, name := range []string{"Leader of the pour", "Initials", "Pattern made by", "Moulded by", "Contraction rule", "measure this line"} {
		require.Contains(t, words, name)
	}
}

// inside holds that no word comes near the edge of the paper.
func inside(t *testing.T, pages []printed, paper chromedp.PaperSize) {
	t.Helper()
	for n, p := range pages {
		require.InDelta(t, paper.Width*72, p.Width, 1.5)
		require.InDelta(t, paper.Height*72, p.Height, 1.5)
		require.NotEmpty(t, p.Words, "page %d is empty", n+1)
		foot := p.Height - margin - 15 // the line at the foot of a page begins there
		for _, w := range p.Words {
			require.True(t, w.XMin >= margin && w.XMax <= p.Width-margin && w.YMin >= margin && w.YMax <= p.Height-margin,
				"%q lies at %.0f to %.0f pt, %.0f to %.0f pt of page %d", w.Text, w.XMin, w.XMax, w.YMin, w.YMax, n+1)
			require.False(t, w.YMin < foot-4 && w.YMax > foot, "%q runs into the foot of page %d", w.Text, n+1)
		}
	}
}

// inSheets holds that the printed pages are those of the preview, in its order,
// each with its own line at the foot.
func inSheets(t *testing.T, pages []printed, shown [][]string) {
	t.Helper()
	require.Len(t, pages, len(shown))
	count := map[string]int{}
	for i, sheet := range shown {
		count[sheet[0]]++
		require.Contains(t, strings.Join(wordsOf(pages[i:i+1]), " "), sheet[1])
	}
	require.Len(t, count, len(mostPages))
	for key, n := range count {
		require.LessOrEqual(t, n, mostPages[key], key)
	}
}

// grey looks at every pixel: black, white and what lies between.
func grey(t *testing.T, pdf []byte) {
	t.Helper()
	picture := poppler(t, pdf, "pdftoppm", "-r", "40")
	for len(picture) > 0 {
		var width, height int
		n, err := fmt.Sscanf(string(picture[:min(20, len(picture))]), "P6\n%d %d\n255\n", &width, &height)
		require.NoError(t, err)
		require.Equal(t, 2, n)
		head := len(fmt.Sprintf("P6\n%d %d\n255\n", width, height))
		pixels := picture[head : head+3*width*height]
		dark := 0
		for i := 0; i < len(pixels); i += 3 {
			r, g, b := int(pixels[i]), int(pixels[i+1]), int(pixels[i+2])
			if r-g > 3 || g-r > 3 || r-b > 3 || b-r > 3 {
				t.Fatalf("colour on paper: %d %d %d", r, g, b)
			}
			if r < 128 {
				dark++
			}
		}
		require.Less(t, dark, width*height/5, "a page is mostly black")
		picture = picture[head+3*width*height:]
	}
}

// wordsOf are all words in their order.
func wordsOf(pages []printed) []string {
	var out []string
	for _, p := range pages {
		for _, w := range p.Words {
			out = append(out, w.Text)
		}
	}
	return out
}

// holds are the texts of the hold points.
func (a answer) holds() []string {
	var out []string
	for _, s := range a.Stations {
		if s.Key != "handling" {
			continue
		}
		items, _ := s.Answers.(map[string]any)["items"].([]any)
		for _, item := range items {
			leaf := func(key string) map[string]any { return item.(map[string]any)[key].(map[string]any) }
			if leaf("hold")["value"] == true {
				out = append(out, strings.Join(strings.Fields(leaf("text")["text"].(string)), " "))
			}
		}
	}
	return out
}

// Which sheets, and on which paper, is remembered on the device; a sheet that
// nobody wants is not printed, and one with nothing on it says so.
func TestChoiceOfSheets(t *testing.T) {
	t.Parallel()
	tab := open(t).tab(t)
	tab.hosted()
	tab.example(bracket)
	tab.view(tab.planAddress() + "/print")
	sheets := func() []string {
		return js[[]string](tab, `[...new Set([...document.querySelectorAll("[data-sheet-page]")].map((p) => p.dataset.sheetPage))]`)
	}
	require.Equal(t, []string{"pour", "handling", "pattern", "mould"}, sheets())
	tab.click("[data-sheet-choice=pour]")
	tab.click("[data-sheet-choice=pattern]")
	tab.paper("letter")
	require.Equal(t, []string{"handling", "mould"}, sheets())
	tab.reload()
	tab.until(`document.querySelector("[data-sheet-page]")`)
	require.Equal(t, []string{"handling", "mould"}, sheets())
	require.Equal(t, "letter", js[string](tab, `document.querySelector(".paper-page").dataset.paper`))
	text, _ := readPDF(t, tab.pdf(papers["letter"]))
	require.NotContains(t, text, "Pattern dimension list")

	tab.view("#/")
	tab.click("[data-action=new-plan]")
	tab.until(`document.querySelector("[data-station]")`)
	tab.view(tab.planAddress() + "/print")
	tab.until(`document.querySelector(".print-preview").textContent.includes("No sheet is chosen")`)
	require.Contains(t, strings.Join(tab.texts(".print-lacking"), " "), "comes when the mould is laid out")
}

// number reads one that must be there.
func number(t *testing.T, text string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(text, 64)
	require.NoError(t, err)
	return v
}
