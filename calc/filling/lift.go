package filling

import (
	"fmt"
	"math"

	"pourwright/calc/flow"
	"pourwright/calc/quantity"
	"pourwright/calc/solve"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// lift is what presses the cope up. While the mould fills, the metal over a
// face of the cavity is only as deep as its own level stands over it; when it
// is full and the flow stops, the whole head of the basin comes on at once.
func (f *filling) lift() {
	p, m, o := f.p, f.m, &f.out
	o.Faces = []Face{}
	if len(f.in.Surfaces) == 0 {
		return
	}
	full := 0.0
	for i, s := range f.in.Surfaces {
		sub := p.Sub(fmt.Sprintf("surfaces[%d]", i))
		z := float64(s.Height.V)
		sub.Give("z_s", "height of the surface", s.Height.V, "mm")
		A := sub.Give("A", "area seen from above", s.Area, "cm^2")
		d := sub.Step("d", "depth under the level of the full basin", (m.H-z)*1000, "mm", "h_f - z_s", geometry)
		F := flow.SurfaceLift(sub, f.rho, m.g, A, d)
		full += F
		face := Face{Name: s.Name, Lift: quantity.Force(F)}
		if face.Name == "" {
			face.Name = fmt.Sprintf("Surface %d", i+1)
		}
		switch t, touched := f.reaches(z); {
		case s.By.V == ByGating:
			face.Touched = quantity.Some(quantity.Time(0))
		case touched:
			face.Touched = quantity.Some(quantity.Time(sub.Solve("t_s", "when metal comes to it", t, "s", "the time at which the level reaches the surface", []string{"z_s"}, course)))
		}
		o.Faces = append(o.Faces, face)
	}
	last := f.track[len(f.track)-1]
	Ff := p.Solve("F_f", "lift just before the mould is full", f.liftAt(last), "N", "sum over the surfaces of ρ g A and the depth under the cavity's own level, or under the basin's for those of the gating", []string{"rho_m", "g"}, upthrust)
	Fs := p.Solve("F_s", "lift, mould full and at rest", full, "N", "sum over the surfaces of ρ g A d", []string{"rho_m", "g", "h_f"}, upthrust)
	ks := working.GiveOpt(p, "k_s", "surge factor", f.in.Surge, "1")
	Fu := p.Step("F_u", "lift with the surge", ks*Fs, "N", "k_s * F_s", source.Practice("surge factor of 1.3 to 1.5, up to 2 for fast and large pours"))
	o.LiftFilling, o.LiftFull, o.LiftSurged = quantity.Some(quantity.Force(Ff)), quantity.Some(quantity.Force(Fs)), quantity.Some(quantity.Force(Fu))
}

// liftAt is the lift at one instant, N.
func (f *filling) liftAt(k point) float64 {
	sum := 0.0
	for _, s := range f.in.Surfaces {
		level := k.y
		if s.By.V == ByGating {
			level = k.b
		}
		sum += f.rho * f.m.g * float64(s.Area) * math.Max(level-float64(s.Height.V), 0)
	}
	return sum
}

// reaches is when the cavity's level comes to a height; false where it is over
// the cavity's top.
func (f *filling) reaches(z float64) (t float64, ok bool) {
	goal := math.Sqrt(math.Max(f.m.H-z, 0))
	if z > f.m.top() {
		return 0, false
	}
	for _, r := range f.runs {
		if r.x1.s <= goal {
			return solve.Root(func(t float64) float64 { return goal - r.at(t).s }, r.t0, r.t1, 1e-12*r.t1), true
		}
	}
	return f.runs[len(f.runs)-1].t1, true
}
