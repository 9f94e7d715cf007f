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
	refused, unexplained, aside []int          // indices of answers, for hold points
	items                       []working.Text // what is answered, by index of answer
	whys                        []string       // who gives which reason, by index of answer
	stray                       []string       // answers to items that this pour does not call for
}

// settle writes the answers into the items. A yes answers an item; a no, or a
// does-not-apply, sets it aside if it gives a reason and leaves it open if not.
func settle(items []Item, answers []Answer) said {
	at := map[string]int{}
	for i, item := range items {
		at[item.Code] = i
	}
	out := said{items: make([]working.Text, len(answers)), whys: make([]string, len(answers))}
	for n, a := range answers {
		i, known := at[a.Code]
		if !known {
			out.stray = append(out.stray, a.Code)
			continue
		}
		item := &items[i]
		item.By, item.Reason = a.By, strings.TrimSpace(a.Reason)
		out.items[n], out.whys[n] = item.Text, item.Reason
		if a.By != "" {
			out.whys[n] = a.By + ": " + item.Reason
		}
		switch {
		case !a.Answer.Known():
		case a.Answer.V == yes:
			item.State = Answered
		case item.Reason != "":
			item.State = Overridden
			if item.Hold {
				out.aside = append(out.aside, n)
			}
		case item.Hold && a.Answer.V == no:
			out.refused = append(out.refused, n)
		case item.Hold && a.Answer.V == notApplicable:
			out.unexplained = append(out.unexplained, n)
		}
	}
	return out
}

var holdRule = source.Practice("hold points are answered before the metal moves")

// warn makes findings of what the answers leave undone.
func (s said) warn(open int, p *working.Paper) {
	for _, n := range s.refused {
		p.Find(working.Finding{Level: working.Stop, Code: "hold-refused", Field: fmt.Sprintf("answers[%d].reason", n), Source: holdRule,
			Text: say("Answered no, without a reason: “%v”", s.items[n]),
			Do:   say("Put it right and answer yes, or write down why it is set aside and who says so.")})
	}
	for _, n := range s.unexplained {
		p.Find(working.Finding{Level: working.Mind, Code: "hold-unexplained", Field: fmt.Sprintf("answers[%d].reason", n), Source: holdRule,
			Text: say("Said not to apply, without a reason, so that it stays open: “%v”", s.items[n]),
			Do:   say("Write down why it does not apply.")})
	}
	var aside working.Text
	for i, n := range s.aside {
		one := say("“%v” (%v)", s.items[n], s.whys[n])
		if i > 0 {
			one = say("%v %v", aside, one)
		}
		aside = one
	}
	if len(s.aside) > 0 {
		p.Find(working.Finding{Level: working.Mind, Code: "holds-set-aside", Field: "answers", Source: holdRule,
			Text: say("Hold points set aside: %v", aside),
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
