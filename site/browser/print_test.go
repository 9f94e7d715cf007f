package browser

import (
	"encoding/xml"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

// paper is a sheet size with the most pages that a pour sheet may take.
var papers = map[string]chromedp.PaperSize{"A4": chromedp.PaperA4, "Letter": chromedp.PaperLetter}

const mostPages = 12

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

// pdf prints the page as the browser's own print command would: with the
// margins of the style sheet.
func (tab *browserTab) pdf(size chromedp.PaperSize) []byte {
	tab.t.Helper()
	return run(tab, chromedp.PrintToPDF(chromedp.PDFPaper(size), func(p *page.PrintToPDFParams) { p.PreferCSSPageSize = new(true) }))
}

func readPDF(t *testing.T, pdf []byte) (text string, pages []printed) {
	t.Helper()
	tool, err := exec.LookPath("pdftotext")
	if err != nil {
		lacking(t, "pdftotext: install poppler-utils (Debian: apt-get install poppler-utils)")
	}
	file := filepath.Join(t.TempDir(), "sheet.pdf")
	require.NoError(t, os.WriteFile(file, pdf, 0o644))
	plain, err := exec.Command(tool, "-layout", file, "-").Output()
	require.NoError(t, err)
	boxes, err := exec.Command(tool, "-bbox", file, "-").Output()
	require.NoError(t, err)
	var doc struct {
		Pages []printed `xml:"body>doc>page"`
	}
	decoder := xml.NewDecoder(strings.NewReader(string(boxes)))
	decoder.Strict = false
	decoder.Entity = xml.HTMLEntity
	require.NoError(t, decoder.Decode(&doc))
	return strings.Join(strings.Fields(string(plain)), " "), doc.Pages
}

// On paper stand the title, every ruling number, every station and every hold
// point, on few pages, all of it inside the margins.
func TestPourSheetOnPaper(t *testing.T) {
	t.Parallel()
	h := open(t)
	for name, plan := range examples(t) {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			tab := h.tab(t)
			tab.hosted()
			tab.example(name)
			address := tab.planAddress()
			answer := natively(t, "metric", plan)
			check := func(size string) {
				paper := papers[size]
				text, pages := readPDF(t, tab.pdf(paper))
				require.Contains(t, text, plan["title"], size)
				for _, c := range answer.Card {
					require.Contains(t, text, c.Label, size)
					require.Contains(t, text, c.Text, "%s: %s", size, c.Label)
				}
				for _, s := range answer.Stations {
					if s.State != "blank" {
						require.Contains(t, text, s.Title, size)
					}
				}
				holds := answer.holds()
				require.NotEmpty(t, holds)
				require.Equal(t, len(holds), strings.Count(text, "Hold point."), "hold points on %s", size)
				words := strings.Join(strings.Fields(strings.Join(wordsOf(pages), " ")), " ")
				for _, hold := range holds {
					require.Contains(t, words, hold, size)
				}
				require.LessOrEqual(t, len(pages), mostPages, "pages of %s", size)
				for n, p := range pages {
					require.InDelta(t, paper.Width*72, p.Width, 1.5)
					require.InDelta(t, paper.Height*72, p.Height, 1.5)
					require.NotEmpty(t, p.Words, "page %d of %s is empty", n+1, size)
					for _, w := range p.Words {
						require.True(t, w.XMin >= margin && w.XMax <= p.Width-margin && w.YMin >= margin && w.YMax <= p.Height-margin,
							"%q lies at %.0f to %.0f pt, %.0f to %.0f pt of page %d, %s", w.Text, w.XMin, w.XMax, w.YMin, w.YMax, n+1, size)
					}
				}
			}
			tab.view(address + "/print")
			check("A4")
			check("Letter")
			tab.view(address) // printing the drawing prints the sheet as well
			check("A4")
		})
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
