package handling

import (
	"fmt"
	"strings"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

const (
	yes           = "yes"
	no            = "no"
	notApplicable = "not-applicable"
)

// Answer is what somebody says to one item.
type Answer struct {
	// Code of the item.
	Code string `json:"code" label:"Item" hint:"Set by the list" need:"yes" max:"60"`
	// Answer is yes, no or not-applicable; until it is given the item stays
	// open, whoever has begun to sign.
	Answer quantity.Opt[string] `json:"answer" label:"Answer" hint:"Only after looking" choices:"yes:Yes|no:No|not-applicable:Does not apply"`
	// By is a name or initials.
	By string `json:"by" label:"By" hint:"Name or initials" max:"60"`
	// Reason says why the item is set aside; without one it stays open.
	Reason string `json:"reason" label:"Reason" hint:"Wanted with no and with does not apply" max:"300"`
}

// said is what the answers come to.
type said struct {
	refused, unexplained []int    // indices of answers, for hold points
	codes                []string // by index of answer
	aside                []string // the hold points set aside, with reasons
	stray                []string // answers to items that this pour does not call for
}

// settle writes the answers into the items. A yes answers an item; a no, or a
// does-not-apply, sets it aside if it gives a reason and leaves it open if not.
func settle(items []Item, answers []Answer) said {
	at := map[string]int{}
	for i, item := range items {
		at[item.Code] = i
	}
	var out said
	for n, a := range answers {
		out.codes = append(out.codes, a.Code)
		i, known := at[a.Code]
		if !known {
			out.stray = append(out.stray, a.Code)
			continue
		}
		item := &items[i]
		item.By, item.Reason = a.By, strings.TrimSpace(a.Reason)
		switch {
		case !a.Answer.Known():
		case a.Answer.V == yes:
			item.State = Answered
		case item.Reason != "":
			item.State = Overridden
			if item.Hold {
				out.aside = append(out.aside, aside(a, item.Reason))
			}
		case item.Hold && a.Answer.V == no:
			out.refused = append(out.refused, n)
		case item.Hold && a.Answer.V == notApplicable:
			out.unexplained = append(out.unexplained, n)
		}
	}
	return out
}

func aside(a Answer, reason string) string {
	if a.By == "" {
		return fmt.Sprintf("%s (%s)", a.Code, reason)
	}
	return fmt.Sprintf("%s (%s: %s)", a.Code, a.By, reason)
}

var holdRule = source.Practice("hold points are answered before the metal moves")

// warn makes findings of what the answers leave undone.
func (s said) warn(open int, p *working.Paper) {
	for _, n := range s.refused {
		p.Find(working.Finding{Level: working.Stop, Code: "hold-refused", Field: fmt.Sprintf("answers[%d].reason", n), Source: holdRule,
			Text: say("Hold point %v is answered no, without a reason.", s.codes[n]),
			Do:   say("Put it right and answer yes, or write down why it is set aside and who says so.")})
	}
	for _, n := range s.unexplained {
		p.Find(working.Finding{Level: working.Mind, Code: "hold-unexplained", Field: fmt.Sprintf("answers[%d].reason", n), Source: holdRule,
			Text: say("Hold point %v is said not to apply, without a reason; it stays open.", s.codes[n]),
			Do:   say("Write down why it does not apply.")})
	}
	if len(s.aside) > 0 {
		p.Find(working.Finding{Level: working.Mind, Code: "holds-set-aside", Field: "answers", Source: holdRule,
			Text: say("Hold points set aside: %v.", strings.Join(s.aside, "; ")),
			Do:   say("Read the reasons out to the crew before the lift.")})
	}
	if open > 0 {
		p.Find(working.Finding{Level: working.Mind, Code: "holds-open", Field: "answers", Source: holdRule,
			Text: say("Hold points still open: %v.", open),
			Do:   say("Answer each before the metal moves.")})
	}
	if len(s.stray) > 0 {
		p.Find(working.Finding{Level: working.Note, Code: "answers-kept", Field: "answers", Source: holdRule,
			Text: say("This pour does not call for %v; the answers are kept in case it does again.", strings.Join(s.stray, ", "))})
	}
}
