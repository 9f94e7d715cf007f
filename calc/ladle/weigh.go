package ladle

import (
	"math"
	"strings"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// steel is the density of the shell, kg/m³.
const steel = 7850

// frustum is the volume of a truncated cone.
func frustum(top, bottom, depth float64) float64 {
	return math.Pi * depth * (bottom*bottom + bottom*top + top*top) / 3
}

// weigh puts the carried weight on the paper and minds it.
func (j *job) weigh() {
	p := j.p
	sum := []string{"M"}
	total := j.metal
	var missing []string
	add := func(symbol, what string, mass quantity.Opt[quantity.Mass], name string) {
		if !mass.Known() {
			missing = append(missing, name)
			return
		}
		p.Give(symbol+"_own", what, mass.V, "kg")
		p.Step(symbol, what, float64(mass.V), "kg", symbol+"_own", definition)
		sum, total = append(sum, symbol), total+float64(mass.V)
	}
	if j.in.Tare.V == TareThickness {
		j.weighWalls()
		sum = append(sum, "M_r", "M_s")
		total += float64(j.out.Lining.V)
		total += float64(j.out.Shell.V)
	} else {
		add("M_s", "mass of the shell", j.in.Shell, "the shell")
		add("M_r", "mass of the lining", j.in.Lining, "the lining")
		j.out.Shell, j.out.Lining = j.in.Shell, j.in.Lining
	}
	add("M_t", "mass of shank, bail and tools", j.in.Shank, "shank and tools")
	what := "carried weight"
	if missing != nil {
		what = "carried weight, as far as it is known"
	}
	p.Step("M_c", what, total, "kg", strings.Join(sum, " + "), definition)
	j.out.AtLeast = quantity.Mass(total)
	if missing == nil {
		j.out.Carried = some(quantity.Mass(total))
	} else {
		p.Find(working.Finding{Level: working.Mind, Code: "tare-unknown", Field: "shell", Source: source.Practice("the tare of a ladle is easily forgotten"),
			Text: working.Say("The weight of %v is not stated: %v is the least that there is to carry, not the most.", strings.Join(missing, ", "), j.out.AtLeast),
			Do:   working.Say("Weigh the empty ladle with its lining and tools, and fill it in.")})
	}
	if j.in.Carry.V == ByHoist {
		p.Find(working.Finding{Level: working.Note, Code: "hoist-rating", Field: "carry", Source: source.OSHA.Memory("1910.179 and 1910.184"),
			Text: working.Say("Hoist, hook, bail and trunnions all carry at least %v.", j.out.AtLeast),
			Do:   working.Say("See that each is rated for more than that and has been inspected; your local code governs. Nobody stands under it.")})
		return
	}
	j.byHand(total)
}

// weighWalls works the lining and the shell out from their thicknesses: each a
// truncated cone with the thickness added to the radii and the depth, less the
// one inside it.
func (j *job) weighWalls() {
	p, v := j.p, j.vessel
	tr := p.Give("t_r", "thickness of the lining", j.in.LiningThickness, "mm") / 1000
	rhoR := p.Give("rho_r", "density of the lining", j.in.LiningDensity, "kg/m^3")
	ts := p.Give("t_s", "thickness of the shell", j.in.ShellThickness, "mm") / 1000
	rhoS := p.Const("rho_s", "density of steel", steel, "kg/m^3", source.Practice("plain steel plate, as any handbook gives it"))
	inside := frustum(v.top, v.bottom, v.depth)
	lined := frustum(v.top+tr, v.bottom+tr, v.depth+tr)
	outer := frustum(v.top+tr+ts, v.bottom+tr+ts, v.depth+tr+ts)
	p.Step("V_r", "volume of ladle and lining", 1000*lined, "L", "pi * (L + t_r) * (pow(R_b + t_r, 2) + (R_b + t_r) * (R_t + t_r) + pow(R_t + t_r, 2)) / 3", geometry)
	p.Step("V_o", "volume of ladle, lining and shell", 1000*outer, "L",
		"pi * (L + t_r + t_s) * (pow(R_b + t_r + t_s, 2) + (R_b + t_r + t_s) * (R_t + t_r + t_s) + pow(R_t + t_r + t_s, 2)) / 3", geometry)
	Mr := p.Step("M_r", "mass of the lining", rhoR*(lined-inside), "kg", "rho_r * (V_r - V_b)", massOf)
	Ms := p.Step("M_s", "mass of the shell", rhoS*(outer-lined), "kg", "rho_s * (V_o - V_r)", massOf)
	j.out.Lining, j.out.Shell = some(quantity.Mass(Mr)), some(quantity.Mass(Ms))
}

var (
	teams     = source.HSELift.Memory("two people carry two thirds of the sum of their guideline figures, three carry half")
	carryRule = source.Practice("a crane or gantry over 20 to 25 kg for each pair")
)

// The guideline figures for one person lifting a cold load at the waist, close
// to the body, kg.
const (
	guideMan   = 25
	guideWoman = 16
)

// The common practice for filled ladles, kg for each pair of carriers.
const (
	mindPair = 20
	stopPair = 25
)

// byHand compares the weight with what people may carry.
func (j *job) byHand(total float64) {
	p := j.p
	crew := j.in.Crew.V
	n := p.Number("n_p", "people who carry", float64(crew), "")
	j.out.PerPerson = some(quantity.Mass(p.Step("M_p", "weight for each person", total/n, "kg", "M_c / n_p", definition)))
	if share := [...]float64{0, 1, 2.0 / 3, 0.5}; crew < len(share) {
		p.Const("w_m", "guideline figure, a man", guideMan, "kg", teams)
		p.Const("w_w", "guideline figure, a woman", guideWoman, "kg", teams)
		p.Lookup("s_p", "share of the sum that a team carries", share[crew], "1", teams, "by the number of people")
		j.out.GuideMen = some(quantity.Mass(p.Step("G_m", "guideline for a cold load, men", share[crew]*n*guideMan, "kg", "s_p * n_p * w_m", teams)))
		j.out.GuideWomen = some(quantity.Mass(p.Step("G_w", "guideline for a cold load, women", share[crew]*n*guideWoman, "kg", "s_p * n_p * w_w", teams)))
	}
	p.Find(working.Finding{Level: working.Note, Code: "guidance-is-cold", Field: "crew", Source: teams,
		Text: working.Say("The guideline figures are for cold, steady loads held close to the body. A filled ladle of hot metal is outside all guidance on manual handling: heat, long arms and heavy clothing all take away from them."),
		Do:   working.Say("Let your local code and an experienced person decide, and walk the way with the empty ladle first.")})
	if crew < 2 {
		p.Find(working.Finding{Level: working.Stop, Code: "carried-alone", Field: "crew", Source: source.Practice("never alone with molten metal"),
			Text: working.Say("One person alone is to carry %v of ladle and metal.", j.out.AtLeast),
			Do:   working.Say("Carry it with at least two, or hang it from a hoist.")})
		return
	}
	pairs := float64(crew / 2)
	level := working.Mind
	switch {
	case total > stopPair*pairs:
		level = working.Stop
	case !(total > mindPair*pairs):
		return
	}
	do := working.Say("Hang the ladle from a gantry or hoist.")
	if room := mindPair*pairs - (total - j.metal); room > 0 {
		do = working.Say("Hang the ladle from a gantry or hoist, or put no more than %v of metal in it.", quantity.Mass(room))
	}
	p.Find(working.Finding{Level: level, Code: "heavy-to-carry", Field: "carry", Source: carryRule,
		Text: working.Say("Ladle and metal weigh at least %v, %v for each of %v people; the common practice is a gantry or hoist over %v to %v for each pair.",
			j.out.AtLeast, j.out.PerPerson.V, crew, quantity.Mass(mindPair), quantity.Mass(stopPair)),
		Do: do})
}
