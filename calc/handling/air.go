package handling

import (
	"slices"

	"pourwright/calc/alloy"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
)

// Agent is one thing that the pour puts into the air, with its limit.
type Agent struct {
	Name string `json:"name" label:"In the air"`
	// Limit in Unit, as an average over a shift unless Over says otherwise.
	Limit quantity.Number `json:"limit" label:"Limit"`
	Unit  string          `json:"unit" label:"Unit"`
	Over  string          `json:"over" label:"Taken over"`
	// Short is the limit for a quarter of an hour or for any moment.
	Short  quantity.Opt[quantity.Number] `json:"short" label:"Short-time limit, where the rule sets one"`
	Source source.Ref                    `json:"source" label:"Source"`
	Law    string                        `json:"law" label:"Law"`
}

const (
	shift  = "eight hours"
	moment = "any moment"
)

// released is one row of the table of limits and when it counts.
type released struct {
	name  string
	limit float64
	unit  string
	over  string
	short float64 // 0 for none
	from  source.Ref
	when  func(pour) bool
}

var (
	z1 = source.OSHA.Memory("1910.1000 table Z-1")
	z2 = source.OSHA.Memory("1910.1000 table Z-2")
)

// limits are the U.S. federal limits in air, 29 CFR 1910 subpart Z.
var limits = []released{
	{"silica, respirable", 0.05, "mg/m³", shift, 0, source.OSHA.Seen("1910.1053"), func(pour) bool { return true }},
	{"lead", 0.05, "mg/m³", shift, 0, source.OSHA.Memory("1910.1025"), func(w pour) bool { return w.metals.lead.Known() }},
	{"beryllium", 0.0002, "mg/m³", shift, 0.002, source.OSHA.Memory("1910.1024"), func(w pour) bool { return w.Charge == beryllium }},
	{"cadmium", 0.005, "mg/m³", shift, 0, source.OSHA.Memory("1910.1027"), func(w pour) bool { return w.Charge == coated || w.Charge == unknown }},
	{"chromium(VI)", 0.005, "mg/m³", shift, 0, source.OSHA.Memory("1910.1026"), func(w pour) bool { return w.Mould == mouldstuff.ChromiteSand }},
	{"zinc oxide fume", 5, "mg/m³", shift, 0, source.OSHA.Seen("1910.1000 table Z-1"), func(w pour) bool {
		return w.metals.zinc.Known() || w.Charge == coated || w.Charge == unknown
	}},
	{"copper fume", 0.1, "mg/m³", shift, 0, z1, func(w pour) bool { return w.metal.Family == alloy.Copper }},
	{"antimony", 0.5, "mg/m³", shift, 0, z1, func(w pour) bool { return w.metal.Family == alloy.Tin }},
	{"carbon monoxide", 50, "ppm", shift, 0, z1, func(w pour) bool {
		return w.burnsFuel() || w.burnsOut() || w.gives(mouldstuff.CarbonMonoxide)
	}},
	{"carbon dioxide", 5000, "ppm", shift, 0, z1, func(w pour) bool { return w.gives(mouldstuff.CarbonDioxide) }},
	{"sulphur dioxide", 5, "ppm", shift, 0, z1, func(w pour) bool { return w.Melt == coke || w.gives(mouldstuff.SulphurDioxide) }},
	{"formaldehyde", 0.75, "ppm", shift, 2, source.OSHA.Memory("1910.1048"), func(w pour) bool { return w.gives(mouldstuff.Formaldehyde) }},
	{"phenol", 5, "ppm", shift, 0, z1, func(w pour) bool { return w.gives(mouldstuff.Phenol) }},
	{"furfuryl alcohol", 50, "ppm", shift, 0, z1, func(w pour) bool { return w.gives(mouldstuff.FurfurylAlcohol) }},
	{"isocyanate (MDI)", 0.02, "ppm", moment, 0, z1, func(w pour) bool { return w.gives(mouldstuff.Isocyanate) }},
	{"acrolein", 0.1, "ppm", shift, 0, z1, func(w pour) bool { return w.gives(mouldstuff.OilSmoke) }},
	{"styrene", 100, "ppm", shift, 200, z2, func(w pour) bool { return w.Left.V == foam }},
	{"benzene", 1, "ppm", shift, 5, source.OSHA.Memory("1910.1028"), func(w pour) bool { return w.Left.V == foam }},
}

// air lists what this pour puts into the air. It names what the input gives
// reason to expect and is no survey: only a measurement tells what is there.
func (w pour) air() []Agent {
	var out []Agent
	for _, l := range limits {
		if !l.when(w) {
			continue
		}
		a := Agent{Name: l.name, Limit: quantity.Number(l.limit), Unit: l.unit, Over: l.over, Source: l.from, Law: federal}
		if l.short > 0 {
			a.Short = quantity.Some(quantity.Number(l.short))
		}
		out = append(out, a)
	}
	return out
}

func (w pour) burnsFuel() bool { return w.Melt != electric }

func (w pour) burnsOut() bool { return w.Left.V == foam || w.Left.V == wax }

// has says whether a binder is, or may be, in the mould or its cores.
func (w pour) has(codes ...mouldstuff.Binder) bool {
	for _, b := range slices.Concat(w.binders, w.cores) {
		if slices.Contains(codes, b.Code) {
			return true
		}
	}
	return false
}

// gives says whether the mould or its cores give off a fume.
func (w pour) gives(f mouldstuff.Fume) bool { return slices.Contains(w.fumes(), f) }

// fumes lists all that the binders of mould and cores give off, each once.
func (w pour) fumes() []mouldstuff.Fume {
	var out []mouldstuff.Fume
	for _, b := range slices.Concat(w.binders, w.cores) {
		for _, f := range b.Fumes {
			if !slices.Contains(out, f) {
				out = append(out, f)
			}
		}
	}
	return out
}
