package charge

import (
	"pourwright/calc/figure"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
)

// Stuff names a typical charge material.
type Stuff string

// part is an element of a material: how much of it there is, and how much of
// that reaches the melt.
type part struct {
	element  Element
	content  figure.Of[quantity.Ratio]
	recovery figure.Of[quantity.Ratio]
}

// typical is a charge material as it is usually met. The lot in the yard
// differs: an analysis of one's own goes before all of this.
type typical struct {
	code, name string
	// family is the melt that it belongs to.
	family string
	// most is how much of a charge it is usually made: little, of what is there
	// to correct the rest.
	most  float64
	parts []part
}

// correction is the most of a charge that ferroalloys and the like are taken
// for when stock is suggested.
const correction = 0.03

// The melts that materials belong to.
const (
	irons     = "iron"
	coppers   = "copper"
	aluminium = "aluminium"
)

var (
	yard      = source.Practice("typical analysis of the trade, recalled; every lot differs")
	cdaIngot  = source.CDA.Memory("nominal composition of the alloy")
	alIngot   = source.AluAssoc.Memory("nominal composition of the alloy")
	alloying  = source.Practice("usual recovery in a clean bath, recalled; dirty, wet or fine stuff gives less")
	allOfIt   = figure.New[quantity.Ratio](100, 0, 0, "%", source.Practice("all of it is taken to reach the melt"), "")
	zincLoss  = figure.New[quantity.Ratio](97, 95, 99, "%", source.Practice("1 to 5 % of the zinc is lost at each melting, more where it is overheated"), "")
	magnesium = figure.New[quantity.Ratio](92, 90, 95, "%", source.Practice("5 to 10 % of the magnesium is lost at each melting"), "")
)

// holds is a content without a range; between is one with it. All of the
// element reaches the melt.
func holds(e Element, v float64, from source.Ref) part {
	return part{e, figure.New[quantity.Ratio](v, 0, 0, "%", from, ""), allOfIt}
}

func between(e Element, v, low, high float64) part {
	return part{e, figure.New[quantity.Ratio](v, low, high, "%", yard, ""), allOfIt}
}

// yields gives a part its own recovery, per cent.
func (p part) yields(v, low, high float64) part {
	p.recovery = figure.New[quantity.Ratio](v, low, high, "%", alloying, "")
	return p
}

func (p part) with(recovery figure.Of[quantity.Ratio]) part {
	p.recovery = recovery
	return p
}

// typicals are the charge materials in the order of the form.
var typicals = []typical{
	{"foundry-pig", "Foundry pig iron", irons, 1, []part{between("C", 3.9, 3.5, 4.3), between("Si", 2.5, 1.5, 3.5), between("Mn", 0.7, 0.4, 1.0), between("P", 0.3, 0.1, 1.0), between("S", 0.03, 0, 0.05)}},
	{"low-phosphorus-pig", "Low-phosphorus pig iron", irons, 1, []part{between("C", 4.15, 4.0, 4.3), between("Si", 0.75, 0.5, 1.0), between("Mn", 0.1, 0, 0.2), between("P", 0.04, 0.02, 0.06), between("S", 0.015, 0, 0.03)}},
	{"steel-scrap", "Steel scrap", irons, 1, []part{between("C", 0.2, 0.1, 0.3), between("Si", 0.3, 0.2, 0.4), between("Mn", 0.65, 0.5, 0.8), between("P", 0.03, 0, 0.05), between("S", 0.03, 0, 0.05)}},
	{"machinery-scrap", "Cast iron machinery scrap", irons, 1, []part{between("C", 3.3, 3.2, 3.4), between("Si", 1.9, 1.6, 2.2), between("Mn", 0.7, 0.6, 0.8), between("P", 0.2, 0.1, 0.6), between("S", 0.1, 0.08, 0.12)}},
	{"fesi-75", "Ferrosilicon, 75 % Si", irons, correction, []part{between("Si", 75, 72, 78).yields(92.5, 90, 95)}},
	{"fesi-45", "Ferrosilicon, 45 % Si", irons, correction, []part{between("Si", 45, 42, 47).yields(92.5, 90, 95)}},
	{"femn", "Ferromanganese, high carbon", irons, correction, []part{between("Mn", 78, 75, 80).yields(85, 80, 90), between("C", 6.5, 6, 7)}},
	{"carburiser", "Carburiser, clean graphite", irons, correction, []part{between("C", 98, 95, 99).yields(90, 85, 95)}},

	{"copper-scrap", "Copper, clean bright scrap", coppers, 1, []part{holds("Cu", 99.9, yard)}},
	{"tin-ingot", "Tin ingot", coppers, 1, []part{holds("Sn", 99.9, yard)}},
	{"zinc-ingot", "Zinc ingot", coppers, 1, []part{holds("Zn", 99.9, yard).with(zincLoss)}},
	{"lead-ingot", "Lead ingot", coppers, 1, []part{holds("Pb", 99.9, yard)}},
	{"ingot-83600", "Gunmetal ingot C83600", coppers, 1, []part{holds("Cu", 85, cdaIngot), holds("Sn", 5, cdaIngot), holds("Pb", 5, cdaIngot), holds("Zn", 5, cdaIngot).with(zincLoss)}},
	{"ingot-90300", "Tin bronze ingot C90300", coppers, 1, []part{holds("Cu", 88, cdaIngot), holds("Sn", 8, cdaIngot), holds("Zn", 4, cdaIngot).with(zincLoss)}},
	{"ingot-87300", "Silicon bronze ingot C87300", coppers, 1, []part{holds("Cu", 95, cdaIngot), holds("Si", 4, cdaIngot), holds("Mn", 1, cdaIngot)}},
	{"ingot-95400", "Aluminium bronze ingot C95400", coppers, 1, []part{holds("Cu", 85, cdaIngot), holds("Al", 11, cdaIngot), holds("Fe", 4, cdaIngot)}},
	{"ingot-85700", "Yellow brass ingot C85700", coppers, 1, []part{holds("Cu", 63, cdaIngot), holds("Zn", 34.7, cdaIngot).with(zincLoss), holds("Sn", 1, cdaIngot), holds("Pb", 1, cdaIngot), holds("Al", 0.3, cdaIngot)}},

	{"aluminium-ingot", "Aluminium ingot, 99.7 %", aluminium, 1, []part{holds("Al", 99.7, alIngot), holds("Fe", 0.15, alIngot), holds("Si", 0.1, alIngot)}},
	{"ingot-356", "A356 ingot", aluminium, 1, []part{holds("Si", 7, alIngot), holds("Mg", 0.35, alIngot).with(magnesium), holds("Fe", 0.12, alIngot), holds("Al", 92.5, alIngot)}},
	{"ingot-319", "319 ingot", aluminium, 1, []part{holds("Si", 6, alIngot), holds("Cu", 3.5, alIngot), holds("Fe", 0.8, alIngot), holds("Al", 89, alIngot)}},
	{"ingot-413", "413 ingot", aluminium, 1, []part{holds("Si", 12, alIngot), holds("Fe", 0.8, alIngot), holds("Al", 86.5, alIngot)}},
	{"extrusion-scrap", "Extrusion scrap, 6063", aluminium, 1, []part{holds("Al", 98.5, alIngot), holds("Si", 0.4, alIngot), holds("Mg", 0.7, alIngot).with(magnesium), holds("Fe", 0.25, alIngot)}},
	{"silicon-master", "Aluminium-silicon master alloy, 50 % Si", aluminium, 1, []part{holds("Si", 50, yard), holds("Fe", 0.4, yard), holds("Al", 49.5, yard)}},
	{"magnesium-ingot", "Magnesium ingot", aluminium, correction, []part{holds("Mg", 99.8, yard).with(magnesium)}},
}

// Choices lists the typical materials for a form.
func (Stuff) Choices() [][2]string {
	out := make([][2]string, len(typicals))
	for i, t := range typicals {
		out[i] = [2]string{t.code, t.name}
	}
	return out
}

func (s Stuff) find() typical {
	for _, t := range typicals {
		if t.code == string(s) {
			return t
		}
	}
	panic("charge: the form let an unknown material through")
}
