package holddown

import (
	"fmt"
	"math"

	"pourwright/calc/alloy"
	"pourwright/calc/flow"
	"pourwright/calc/form"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

var (
	upthrust = source.Rao.Memory("ch. 4, forces acting on the moulding flasks")
	statics  = source.Derived("statics of a stiff cope on four like springs")
	geometry = source.Derived("geometry of the flask")
)

// holding is one mould being held together.
type holding struct {
	in     Input
	p      *working.Paper
	out    Output
	rho, g float64
	// forces on the cope, N, down counted as positive, with their places, m, from
	// the middle of the flask.
	lifts, holds, clamps []force
}

// force is one force with its place from the middle of the flask. surges says
// that the surge factor goes on it.
type force struct {
	f, x, y float64
	surges  bool
}

// Hold works out what holds the mould together; see the package comment.
//
// Refused: no metal; nothing that lifts; forces placed outside the flask; more
// metal than the flask holds.
func Hold(in Input, p *working.Paper) (Output, error) {
	in, faults := form.Ready(in)
	faults = append(faults, consistent(in)...)
	if err := faults.Err(); err != nil {
		return Output{}, err
	}
	h := &holding{in: in, p: p, out: Output{Surfaces: []Pushed{}, Cores: []Pushed{}, Corners: []Corner{}}}
	h.density()
	h.g = flow.PutGravity(p)
	h.flask()
	h.lift()
	h.balance()
	h.side()
	h.box()
	h.sand()
	return h.out, nil
}

// consistent checks what one field alone cannot tell.
func consistent(in Input) (faults form.Faults) {
	missing := func(field, label string, why working.Text) {
		faults = append(faults, form.Fault{Field: field, Label: label, Why: why, Missing: true})
	}
	if !in.Alloy.Known() && !in.Density.Known() {
		missing("alloy", "Metal", working.Say("choose the metal, or state the density of the liquid"))
	}
	if len(in.Surfaces)+len(in.Cores) == 0 {
		missing("surfaces", "Cope surfaces", working.Say("at least one surface or core is wanted"))
	}
	if in.WallLength.Known() != in.WallHeight.Known() {
		field, label := "wall_length", "Length of the casting's side"
		if in.WallLength.Known() {
			field, label = "wall_height", "Height of that side"
		}
		missing(field, label, working.Say("length and height of the side are wanted together"))
	}
	place := func(path string, x, y quantity.Opt[quantity.Length]) {
		for _, c := range []struct {
			field, label string
			at, end      quantity.Opt[quantity.Length]
		}{{".x", "Place along the flask", x, in.FlaskLength}, {".y", "Place across the flask", y, in.FlaskWidth}} {
			if c.at.Known() && c.end.Known() && c.at.V > c.end.V {
				faults = append(faults, form.Fault{Field: path + c.field, Label: c.label, Value: quantity.Text(c.at.V),
					Why: working.Say("%v lies outside the flask of %v", c.at.V, c.end.V)})
			}
		}
	}
	for i, s := range in.Surfaces {
		place(fmt.Sprintf("surfaces[%d]", i), s.X, s.Y)
	}
	for i, c := range in.Cores {
		path := fmt.Sprintf("cores[%d]", i)
		place(path, c.X, c.Y)
		if !c.Lift.Known() && !c.Volume.Known() {
			missing(path+".volume", "Volume in the metal", working.Say("give the core's volume, or its lift"))
		}
	}
	for i, w := range in.Weights {
		place(fmt.Sprintf("weights[%d]", i), w.X, w.Y)
	}
	for i, c := range in.Clamps {
		place(fmt.Sprintf("clamps[%d]", i), c.X, c.Y)
	}
	if boxed(in) && in.MetalVolume.Known() {
		room := quantity.Volume(float64(in.FlaskLength.V) * float64(in.FlaskWidth.V) * float64(in.CopeHeight.V+in.DragHeight.V))
		if in.MetalVolume.V >= room {
			faults = append(faults, form.Fault{Field: "metal_volume", Label: "Volume of metal in the mould", Value: quantity.Text(in.MetalVolume.V),
				Why: working.Say("%v is more than the whole flask holds, %v", in.MetalVolume.V, room)})
		}
	}
	return faults
}

// boxed says that the inside of the whole flask is known.
func boxed(in Input) bool {
	return in.FlaskLength.Known() && in.FlaskWidth.Known() && in.CopeHeight.Known() && in.DragHeight.Known()
}

func (h *holding) density() {
	if h.in.Density.Known() {
		h.rho = working.GiveOpt(h.p, "rho_m", "density of the liquid metal", h.in.Density, "kg/m^3")
		return
	}
	a, ok := alloy.Find(h.in.Alloy.V)
	if !ok {
		panic("holddown: the form let an unknown alloy through")
	}
	h.rho = h.p.Lookup("rho_m", "density of the liquid metal", float64(a.DensityLiquid.V), "kg/m^3", a.DensityLiquid.Source, a.DensityLiquid.Note)
}

// flask puts the inside of the flask and the density of its sand on the paper
// as far as they are known.
func (h *holding) flask() {
	in, p := h.in, h.p
	for _, d := range []struct {
		symbol, what string
		v            quantity.Opt[quantity.Length]
	}{{"L", "flask length", in.FlaskLength}, {"W", "flask width", in.FlaskWidth}, {"h_k", "cope height", in.CopeHeight}, {"h_d", "drag height", in.DragHeight}} {
		if d.v.Known() {
			working.GiveOpt(p, d.symbol, d.what, d.v, "m")
		}
	}
	switch {
	case in.SandDensity.Known():
		working.GiveOpt(p, "rho_s", "density of the rammed sand", in.SandDensity, "kg/m^3")
	case in.Sand.Known():
		s := h.stuff()
		p.Lookup("rho_s", "density of the rammed sand", float64(s.Density.V), "kg/m^3", s.Density.Source, s.Density.Note)
	}
}

func (h *holding) stuff() *mouldstuff.SandKind {
	s, ok := mouldstuff.FindSand(h.in.Sand.V)
	if !ok {
		panic("holddown: the form let an unknown sand through")
	}
	return s
}

// sandDensity is that of the rammed sand, kg/m³; 0 where it is not known.
func (h *holding) sandDensity() float64 {
	switch {
	case h.in.SandDensity.Known():
		return float64(h.in.SandDensity.V)
	case h.in.Sand.Known():
		return float64(h.stuff().Density.V)
	}
	return 0
}

// off is how far a place lies from the middle of the flask, m; 0 where place
// or flask is not known.
func off(at, end quantity.Opt[quantity.Length]) float64 {
	if !at.Known() || !end.Known() {
		return 0
	}
	return float64(at.V) - float64(end.V)/2
}

// at makes a force at a place.
func (h *holding) at(f float64, x, y quantity.Opt[quantity.Length], surges bool) force {
	return force{f, off(x, h.in.FlaskLength), off(y, h.in.FlaskWidth), surges}
}

// lift adds up what the metal presses up.
func (h *holding) lift() {
	in, p := h.in, h.p
	metal := 0.0
	for i, s := range in.Surfaces {
		sub := p.Sub(fmt.Sprintf("surfaces[%d]", i))
		A, d := sub.Give("A", "area seen from above", s.Area, "cm^2"), sub.Give("d", "depth under the metal level", s.Depth, "mm")
		F := flow.SurfaceLift(sub, h.rho, h.g, A, d)
		metal += F
		h.lifts = append(h.lifts, h.at(F, s.X, s.Y, true))
		h.out.Surfaces = append(h.out.Surfaces, Pushed{named(s.Name, "Surface", i), quantity.Force(F)})
	}
	p.Solve("F_sum", "sum of the lifts on the surfaces", metal, "N", "sum over the surfaces of ρ g A d", []string{"rho_m", "g"}, upthrust)
	cores := 0.0
	for i, c := range in.Cores {
		sub := p.Sub(fmt.Sprintf("cores[%d]", i))
		F := 0.0
		if c.Lift.Known() {
			own := working.GiveOpt(sub, "F_own", "lift as stated", c.Lift, "N")
			F = sub.Step("F", "lift of the core", own, "N", "F_own", source.Own("your own figure"))
		} else {
			V, rc := working.GiveOpt(sub, "V_c", "volume in the metal", c.Volume, "m^3"), working.GiveOpt(sub, "rho_c", "density of the core", c.Density, "kg/m^3")
			F = sub.Step("F", "lift of the core", V*math.Max(h.rho-rc, 0)*h.g, "N", "V_c * max(rho_m - rho_c, 0 * rho_m) * g", upthrust)
		}
		cores += F
		h.lifts = append(h.lifts, h.at(F, c.X, c.Y, false))
		h.out.Cores = append(h.out.Cores, Pushed{named(c.Name, "Core", i), quantity.Force(F)})
	}
	if more := float64(in.CoreLift.V); more > 0 {
		cores += more
		h.lifts = append(h.lifts, force{f: more})
	}
	h.out.CopeLift, h.out.CoreLift = quantity.Force(metal), quantity.Force(cores)
}

func named(name, sort string, i int) string {
	if name != "" {
		return name
	}
	return fmt.Sprintf("%s %d", sort, i+1)
}

// copeMass is the sand in the cope with its frame; unknown where neither a
// mass nor a flask is given. The hollows of the casting are not taken off, so
// a reckoned cope errs on the heavy side.
func (h *holding) copeMass() quantity.Opt[quantity.Mass] {
	in, p := h.in, h.p
	rho := h.sandDensity()
	from := source.Derived("volume times density")
	sand := 0.0
	switch {
	case in.CopeMass.Known():
		own := working.GiveOpt(p, "m_own", "sand in the cope, as stated", in.CopeMass, "kg")
		sand = p.Step("m_sc", "sand in the cope", own, "kg", "m_own", source.Own("your own figure"))
	case in.FlaskLength.Known() && in.FlaskWidth.Known() && in.CopeHeight.Known() && rho > 0:
		sand = p.Step("m_sc", "sand in the cope", float64(in.FlaskLength.V)*float64(in.FlaskWidth.V)*float64(in.CopeHeight.V)*rho, "kg", "L * W * h_k * rho_s", from)
		p.Find(working.Finding{Level: working.Note, Code: "cope-from-flask", Field: "cope_mass", Source: from,
			Text: working.Say("The cope is taken as %v, a flask full of sand; what casting, risers and sprue take out of it makes it lighter.", quantity.Mass(sand))})
	default:
		return quantity.Opt[quantity.Mass]{}
	}
	h.out.SandInCope = quantity.Some(quantity.Mass(sand))
	frame := working.GiveOpt(p, "m_fr", "frame of the cope", in.FrameMass, "kg")
	m := p.Step("m_kf", "cope with its frame", sand+frame, "kg", "m_sc + m_fr", source.Derived("sum"))
	G := p.Step("G_k", "weight of the cope", m*h.g, "N", "m_kf * g", source.Derived("weight"))
	h.out.CopeWeight = quantity.Some(quantity.Force(G))
	h.holds = append(h.holds, force{f: G})
	return quantity.Some(quantity.Mass(m))
}

// balance holds the lift against what holds the cope down, all together first
// and then corner by corner.
func (h *holding) balance() {
	in, p, o := h.in, h.p, &h.out
	cope := h.copeMass()
	weights, clamps := 0.0, 0.0
	for _, w := range in.Weights {
		weights += float64(w.Mass)
		h.holds = append(h.holds, h.at(float64(w.Mass)*h.g, w.X, w.Y, false))
	}
	for _, c := range in.Clamps {
		F := float64(c.Load) * float64(c.Count.V)
		clamps += F
		h.clamps = append(h.clamps, h.at(F, c.X, c.Y, false))
	}
	held := flow.Hold(p, flow.Lift{Metal: o.CopeLift, Core: o.CoreLift, Surge: in.Surge, Cope: cope,
		Weights: quantity.Some(quantity.Mass(weights)), Clamps: quantity.Some(quantity.Force(clamps))})
	o.Static, o.Surged, o.Together = held.Static, held.Surged, held.Together
	o.Net, o.Needed, o.NeededSurge = held.Net, held.Needed, held.NeededSurge
	if !cope.Known() {
		p.Find(working.Finding{Level: working.Mind, Code: "cope-unknown", Field: "cope_mass", Source: upthrust,
			Text: working.Say("The mass of the cope is not known, so nobody can say whether it holds. Cope, weights and clamps together must come to %v.", held.Together),
			Do:   working.Say("Weigh the cope, or give the inside of its flask and its sand.")})
	}
	if in.FlaskLength.Known() && in.FlaskWidth.Known() {
		h.middle()
		if cope.Known() {
			h.corners()
			return
		}
	}
	if in.ClampLoad.Known() && held.NeededSurge.Known() {
		h.clampsFor(float64(held.NeededSurge.V)*h.g, "m_u * g")
	}
}

// clampsFor is how many clamps a force wants.
func (h *holding) clampsFor(F float64, formula string) {
	load := working.GiveOpt(h.p, "F_a", "load allowed on one clamp", h.in.ClampLoad, "N")
	n := h.p.Step("n_k", "clamps still wanted", math.Ceil(F/load), "1", "ceil("+formula+" / F_a)", source.Derived("force over load"))
	h.out.Clamps = quantity.Some(int(math.Min(n, 1e6)))
}
