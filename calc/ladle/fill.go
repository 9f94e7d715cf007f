package ladle

import (
	"math"

	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

var (
	massOf        = source.Derived("mass of a volume")
	freeboardRule = source.Practice("freeboard of at least a tenth, or 50 to 75 mm")
)

// capacity puts what the ladle holds on the paper, to the brim and with the
// freeboard.
func (j *job) capacity() {
	p, v := j.p, j.vessel
	Vb := p.Step("V_b", "inside volume up to the lip", 1000*v.brim(), "L", "pi * L * (pow(R_b, 2) + R_b * R_t + pow(R_t, 2)) / 3", geometry)
	Mb := p.Step("M_b", "metal up to the lip", j.rho*v.brim(), "kg", "rho_l * V_b", massOf)
	var free float64
	if j.in.Freeboard.Known() {
		f := working.GiveOpt(p, "f_own", "freeboard you want", j.in.Freeboard, "mm")
		free = p.Step("f_w", "freeboard wanted", f, "mm", "f_own", definition) / 1000
	} else {
		free = p.Step("f_w", "freeboard wanted", 100*v.depth, "mm", "L / 10", freeboardRule) / 1000
	}
	z := v.depth - free
	p.Step("r_f", "inside radius at the freeboard", 1000*(v.bottom+v.taper*z), "mm", "R_b + m * (L - f_w)", geometry)
	j.holds = v.upTo(z)
	p.Step("V_f", "volume with the freeboard", 1000*j.holds, "L", "pi * (L - f_w) * (pow(R_b, 2) + R_b * r_f + pow(r_f, 2)) / 3", geometry)
	Mf := p.Step("M_f", "metal with the freeboard", j.rho*j.holds, "kg", "rho_l * V_f", massOf)
	j.out.Brim, j.out.BrimMass = quantity.Volume(Vb/1000), quantity.Mass(Mb)
	j.out.Holds, j.out.HoldsMass = quantity.Volume(j.holds), quantity.Mass(Mf)
}

// fill puts the metal in the ladle on the paper, and what is left of it.
func (j *job) fill() {
	p := j.p
	W := p.Give("W", "metal the mould takes", j.in.Metal, "kg")
	Mf := float64(j.out.HoldsMass)
	var left float64
	perLadle := Mf
	switch j.in.Fill.V {
	case FillForPour:
		heel := working.GiveOpt(p, "M_k", "metal to leave in the ladle", j.in.Heel, "kg")
		j.metal = p.Step("M", "metal in the ladle", W+heel, "kg", "W + M_k", definition)
		left = p.Step("M_h", "metal left after the pour", heel, "kg", "M_k", definition)
		perLadle -= heel
	case FillStated:
		M := p.Give("M_own", "amount in the ladle", j.in.InLadle, "kg")
		j.metal = p.Step("M", "metal in the ladle", M, "kg", "M_own", definition)
	case FillFreeboard:
		j.metal = p.Step("M", "metal in the ladle", Mf, "kg", "M_f", definition)
	}
	if j.in.Fill.V != FillForPour {
		left = p.Step("M_h", "metal left after the pour", j.metal-math.Min(W, j.metal), "kg", "M - min(W, M)", definition)
		if W > j.metal {
			p.Find(working.Finding{Level: working.Stop, Code: "metal-short", Field: "fill", Source: definition,
				Text: working.Say("The ladle has %v and the mould takes %v: %v too little to fill it.", quantity.Mass(j.metal), j.in.Metal, quantity.Mass(W-j.metal)),
				Do:   working.Say("Put at least %v in the ladle, or pour from more than one.", j.in.Metal)})
		}
	}
	j.volume = p.Step("V_m", "volume of the metal", 1000*j.metal/j.rho, "L", "M / rho_l", massOf) / 1000
	j.keep = left / j.rho
	if perLadle > 0 {
		formula := "ceil(W / M_f)"
		if j.in.Fill.V == FillForPour {
			formula = "ceil(W / (M_f - M_k))"
		}
		j.out.Ladles = some(quantity.Number(p.Step("N", "ladles of this size for the mould", math.Ceil(W/perLadle), "1", formula, definition)))
	}
	j.out.Metal, j.out.MetalSpace, j.out.Left = quantity.Mass(j.metal), quantity.Volume(j.volume), quantity.Mass(left)
}

// level puts the level of the standing metal on the paper and says whether the
// ladle holds it at all.
func (j *job) level() bool {
	p, v := j.p, j.vessel
	// A ladle filled to the brim is not overfull by a rounding.
	if j.volume > v.brim()*(1+1e-12) {
		j.findTooSmall()
		return false
	}
	z := math.Min(v.level(j.volume), v.depth)
	if v.taper == 0 {
		p.Step("z_m", "level of the metal above the base", 1000*z, "mm", "min(L, V_m / (pi * pow(R_t, 2)))", geometry)
	} else {
		p.Step("z_m", "level of the metal above the base", 1000*z, "mm", "min(L, (cbrt(pow(R_b, 3) + 3 * m * V_m / pi) - R_b) / m)", geometry)
	}
	free := p.Step("f_b", "freeboard", 1000*(v.depth-z), "mm", "L - z_m", definition) / 1000
	r := v.bottom + v.taper*z
	A := p.Step("A_0", "free surface, upright", 1e4*math.Pi*r*r, "cm^2", "pi * pow(R_b + m * z_m, 2)", geometry)
	j.out.Level, j.out.Freeboard, j.out.Surface = some(quantity.Length(z)), some(quantity.Length(free)), some(quantity.Area(A/1e4))
	// A hair's breadth of rounding is no shortage.
	if over := j.metal - float64(j.out.HoldsMass); over > 1e-9*j.metal {
		field := "metal"
		if j.in.Fill.V == FillStated {
			field = "in_ladle"
		}
		p.Find(working.Finding{Level: working.Mind, Code: "freeboard-short", Field: field, Source: freeboardRule,
			Text: working.Say("Only %v is left between the metal and the lip, where %v is wanted; carrying it will spill.", quantity.Length(free), quantity.Length(v.depth)-j.freeHeight()),
			Do:   working.Say("Take %v less metal, or a ladle that holds %v with its freeboard: of the same shape, %v across at the lip.", quantity.Mass(over), quantity.Mass(j.metal), j.bigger())})
	}
	return true
}

// freeHeight is the level that leaves the freeboard wanted.
func (j *job) freeHeight() quantity.Length { return quantity.Length(j.vessel.level(j.holds)) }

// bigger is the diameter at the lip of a ladle of the same shape that holds
// the metal with its freeboard.
func (j *job) bigger() quantity.Length {
	return j.in.Top * quantity.Length(math.Cbrt(j.volume/j.holds))
}

func (j *job) findTooSmall() {
	over := quantity.Mass(j.metal) - j.out.HoldsMass
	if j.in.Fill.V == FillStated {
		j.p.Find(working.Finding{Level: working.Stop, Code: "overfilled", Field: "in_ladle", Source: geometry,
			Text: working.Say("The ladle holds %v up to the lip; %v does not go into it.", j.out.BrimMass, quantity.Mass(j.metal)),
			Do:   working.Say("Take out %v, down to %v with the freeboard.", over, j.out.HoldsMass)})
		return
	}
	several := working.Say("leave less in the ladle, for this one holds no more than its heel")
	if j.out.Ladles.Known() {
		several = working.Say("pour from %v ladles of this size together", j.out.Ladles.V)
	}
	j.p.Find(working.Finding{Level: working.Stop, Code: "ladle-too-small", Field: "top", Source: geometry,
		Text: working.Say("The ladle holds %v up to the lip and %v with the freeboard; the pour wants %v in it.", j.out.BrimMass, j.out.HoldsMass, quantity.Mass(j.metal)),
		Do:   working.Say("Take a ladle of the same shape, %v across at the lip, or %v.", j.bigger(), several)})
}
