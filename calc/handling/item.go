package handling

import (
	"slices"

	"pourwright/calc/source"
	"pourwright/calc/working"
)

// Group is the part of the work that an item belongs to.
type Group string

// The parts of the work, in order.
const (
	Before   Group = "Before melting"
	Charging Group = "Charging"
	Furnace  Group = "At the furnace"
	Pouring  Group = "Carrying and pouring"
	After    Group = "After the pour"
	FirstAid Group = "First aid"
)

var groups = []Group{Before, Charging, Furnace, Pouring, After, FirstAid}

// Risk is what an item guards against, the gravest first.
type Risk string

// The risks.
const (
	Life   Risk = "life"   // explosion, gas, deep burns
	Injury Risk = "injury" // burns, falls, strain
	Health Risk = "health" // harm that shows later
)

var risks = []Risk{Life, Injury, Health}

// State is how an item stands.
type State string

// The states of an item.
const (
	Open       State = "open"                   // a hold point that nobody has answered
	Answered   State = "answered yes"           // somebody says that it is so
	Overridden State = "overridden with reason" // set aside, with the reason on the sheet
	Reminder   State = "reminder"               // asks for no answer
)

// Item is one line of the list.
type Item struct {
	// Code names the item for answers and links.
	Code  string `json:"code"`
	Group Group  `json:"group" label:"Part of the work"`
	Risk  Risk   `json:"risk" label:"Guards against harm to"`
	// Text says what to do.
	Text working.Text `json:"text" label:"Do"`
	// Why says what happens otherwise.
	Why working.Text `json:"why" label:"Why"`
	// Source of the item.
	Source source.Ref `json:"source" label:"Source"`
	// Law says where a local code goes before the item; empty for plain physics.
	Law string `json:"law" label:"Law"`
	// Hold says that it must be answered before the pour.
	Hold bool `json:"hold" label:"Hold point"`
	// State, By and Reason say how it was answered.
	State  State  `json:"state" label:"State"`
	By     string `json:"by" label:"Answered by"`
	Reason string `json:"reason" label:"Reason"`
}

const (
	local   = "Your local code governs."
	federal = "U.S. federal figure; your local code governs."
)

// say is Say under a shorter name: the list is mostly sentences.
var say = working.Say

// items is the whole list: parts of the work in order, the gravest risk first
// in each, hold points before reminders of the same risk.
func (w pour) items() []Item {
	all := slices.Concat(w.people(), w.water(), w.placeItems(), w.mouldItems(), w.charging(), w.furnace(), w.pouring(), w.after(), w.firstAid())
	slices.SortStableFunc(all, func(a, b Item) int {
		if d := slices.Index(groups, a.Group) - slices.Index(groups, b.Group); d != 0 {
			return d
		}
		if d := slices.Index(risks, a.Risk) - slices.Index(risks, b.Risk); d != 0 {
			return d
		}
		if a.Hold == b.Hold {
			return 0
		}
		if a.Hold {
			return -1
		}
		return 1
	})
	for i := range all {
		all[i].State = Reminder
		if all[i].Hold {
			all[i].State = Open
		}
	}
	return all
}
