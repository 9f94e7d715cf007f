package gating

import (
	"fmt"
	"math"
	"strings"

	"pourwright/calc/alloy"
	"pourwright/calc/source"
)

// Ratio names a gating ratio, sprue foot : runners : ingates, each all
// together.
type Ratio string

// OwnRatio is one that the user states.
const OwnRatio Ratio = "own"

// Choices lists the ratios of the books with the metals that they print them
// for.
func (Ratio) Choices() [][2]string {
	var out [][2]string
	for _, s := range series {
		var metals []string
		for _, l := range lists {
			if l.has(s.code) {
				metals = append(metals, l.metal)
			}
		}
		kind := "unpressurised"
		if s.pressurised() {
			kind = "pressurised"
		}
		out = append(out, [2]string{string(s.code), fmt.Sprintf("%s (%s; %s)", s.code, strings.Join(metals, ", "), kind)})
	}
	return append(out, [2]string{string(OwnRatio), "Your own"})
}

// shares are the three numbers of a ratio.
type shares struct {
	code                 Ratio
	sprue, runner, gates float64
}

// least is the smallest of them, the choke's.
func (s shares) least() float64 { return math.Min(s.sprue, math.Min(s.runner, s.gates)) }

// pressurised says that the ingates are narrower than the sprue, so that they
// hold the way in front of them full.
func (s shares) pressurised() bool { return s.gates < s.sprue }

// series are the ratios of the lists, by how much the ingates widen.
var series = []shares{
	{"4:3:2", 4, 3, 2}, {"2:1.5:1", 2, 1.5, 1}, {"1.6:1.3:1", 1.6, 1.3, 1}, {"4:8:3", 4, 8, 3}, {"10:9:8", 10, 9, 8},
	{"1.15:1.1:1", 1.15, 1.1, 1}, {"1:0.9:0.8", 1, 0.9, 0.8}, {"1:1:0.7", 1, 1, 0.7}, {"1:1:1", 1, 1, 1}, {"1:2:1", 1, 2, 1},
	{"1:1.3:1.1", 1, 1.3, 1.1}, {"1:2:1.5", 1, 2, 1.5}, {"1:2:2", 1, 2, 2}, {"1:1:3", 1, 1, 3}, {"1:3:3", 1, 3, 3},
	{"1:2:4", 1, 2, 4}, {"1:4:4", 1, 4, 4}, {"1:2.88:4.8", 1, 2.88, 4.8}, {"1:6:6", 1, 6, 6},
}

// list is what the books print for one metal.
type list struct {
	metal  string
	ratios []Ratio
}

func (l list) has(code Ratio) bool {
	for _, r := range l.ratios {
		if r == code {
			return true
		}
	}
	return false
}

// ratioSource is where the lists are from. They disagree between books.
var ratioSource = source.ASM15.Memory("gating ratios; also P. N. Rao and the Navy Foundry Manual. The lists disagree")

var lists = []list{
	{"grey iron", []Ratio{"1:1.3:1.1", "1:4:4", "4:3:2", "2:1.5:1", "1:0.9:0.8"}},
	{"ductile iron", []Ratio{"1.15:1.1:1", "10:9:8", "4:8:3"}},
	{"steel", []Ratio{"1:1:0.7", "1:2:1.5", "1:2:2", "1:3:3"}},
	{"aluminium", []Ratio{"1:2:1", "1:2:4", "1:3:3", "1:4:4", "1:6:6"}},
	{"brass", []Ratio{"1:1:1", "1:1:3", "1.6:1.3:1"}},
	{"aluminium bronze", []Ratio{"1:2.88:4.8"}},
	{"magnesium", []Ratio{"1:2:2", "1:4:4"}},
}

// listFor is the list of a metal; exact is false where the books have none and
// a neighbour's is taken.
func listFor(a *alloy.Alloy) (l list, exact bool) {
	name, exact := "aluminium", false
	switch {
	case a.Family == alloy.GreyIron:
		name, exact = "grey iron", true
	case a.Family == alloy.DuctileIron:
		name, exact = "ductile iron", true
	case a.Family == alloy.Steel:
		name, exact = "steel", true
	case a.Family == alloy.Aluminium:
		exact = true
	case a.Code == alloy.CodeAluminiumBronze:
		name, exact = "aluminium bronze", true
	case a.Family == alloy.Copper:
		name, exact = "brass", a.Code == alloy.CodeYellowBrass
	}
	for _, l = range lists {
		if l.metal == name {
			return l, exact
		}
	}
	panic("gating: no list " + name)
}

func find(code Ratio) shares {
	for _, s := range series {
		if s.code == code {
			return s
		}
	}
	panic("gating: the form let an unknown ratio through")
}

// suggested is the ratio of a metal's list that slows the metal most at the
// ingates, the first of those alike.
func suggested(l list) shares {
	best := find(l.ratios[0])
	for _, code := range l.ratios[1:] {
		if s := find(code); s.gates/s.least() > best.gates/best.least() {
			best = s
		}
	}
	return best
}
