// Package lift answers what the metal lifts: the push on each cope surface, on
// each core, and the weights that hold the cope down.
package lift

import (
	"fmt"
	"math"

	"pourwright/calc/alloy"
	"pourwright/calc/flow"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// Input is the mould as the metal sees it from below.
type Input struct {
	// Alloy gives the liquid density, unless Density does.
	Alloy   quantity.Opt[alloy.Code]       `json:"alloy" label:"Metal" part:"Metal" link:"metal" hint:"Leave empty if you state a density"`
	Density quantity.Opt[quantity.Density] `json:"density" label:"Density of the liquid metal" hint:"Only to go before the list; the solid's density errs on the safe side" min:"1000 kg/m³" max:"20000 kg/m³"`
	// Surfaces of the cope that metal presses on.
	Surfaces []Surface `json:"surfaces" label:"Cope surfaces" part:"What the metal presses on" hint:"One for each level: casting, runners, flanges" min:"0" max:"60"`
	// Cores that the metal drowns.
	Cores []Core `json:"cores" label:"Cores" hint:"Those whose lift the cope has to hold" min:"0" max:"60"`

	// Cope is the mass of the cope with its flask; or else its sand is
	// reckoned from its box.
	Cope       quantity.Opt[quantity.Mass]    `json:"cope" label:"Mass of the cope" part:"What holds it down" hint:"Weigh sand and flask on the crane; left empty, the sand is reckoned from the box" min:"0 kg" max:"50 t"`
	BoxLength  quantity.Opt[quantity.Length]  `json:"box_length" label:"Cope length, inside" hint:"Measure inside the flask" min:"10 mm" max:"20 m"`
	BoxWidth   quantity.Opt[quantity.Length]  `json:"box_width" label:"Cope width, inside" hint:"Measure inside the flask" min:"10 mm" max:"20 m"`
	BoxHeight  quantity.Opt[quantity.Length]  `json:"box_height" label:"Cope height" hint:"Parting line to the top of the sand" min:"10 mm" max:"5 m"`
	BoxDensity quantity.Opt[quantity.Density] `json:"box_density" label:"Density of the rammed sand" hint:"Weigh a rammed box of known volume" default:"1600 kg/m³" min:"500 kg/m³" max:"4000 kg/m³"`
	// Weights and Clamps besides the cope itself.
	Weights quantity.Opt[quantity.Mass]  `json:"weights" label:"Weights on the cope" hint:"Weigh what lies on the cope already" default:"0 kg" min:"0 kg" max:"100 t"`
	Clamps  quantity.Opt[quantity.Force] `json:"clamps" label:"Holding force of the clamps" hint:"All clamps together, only if you know it" default:"0 N" min:"0 N" max:"10000 kN"`
	// Surge while the mould fills.
	Surge quantity.Opt[quantity.Number] `json:"surge" label:"Surge factor" hint:"1.5 by custom, up to 2 for fast and large pours" default:"1.5" min:"1" max:"3"`
}

// Surface is one level of the cope.
type Surface struct {
	Name  string          `json:"name" label:"Name" hint:"Such as flange, runner"`
	Area  quantity.Area   `json:"area" label:"Area seen from above" hint:"Upright walls count for nothing" min:"0.05 cm²" max:"100 m²"`
	Depth quantity.Length `json:"depth" label:"Depth under the metal level" hint:"From the level in the basin, or in the open riser if that is higher, down to the surface" min:"1 mm" max:"10 m"`
}

// Core is one drowned core.
type Core struct {
	Name    string                         `json:"name" label:"Name" hint:"What is written on it, or its place"`
	Volume  quantity.Volume                `json:"volume" label:"Volume in the metal" hint:"From the core box with a jug, without the prints" min:"0.1 cm³" max:"20 m³"`
	Density quantity.Opt[quantity.Density] `json:"density" label:"Density of the core" hint:"Silica sand cores 1600 to 1650 kg/m³" default:"1600 kg/m³" min:"200 kg/m³" max:"8000 kg/m³"`
}

// Output is the balance.
type Output struct {
	Surfaces []Pushed `json:"surfaces"`
	Cores    []Pushed `json:"cores"`

	CopeLift quantity.Force `json:"cope_lift" label:"Lift on the cope's surfaces" step:"F_m"`
	CoreLift quantity.Force `json:"core_lift" label:"Lift of the cores" step:"F_c"`
	Static   quantity.Force `json:"static" label:"Lift, mould full and at rest" step:"F_s"`
	Surged   quantity.Force `json:"surged" label:"Lift with the surge" step:"F_u"`
	Together quantity.Mass  `json:"together" label:"Cope and weights together, at least" step:"m_t"`

	SandMass    quantity.Opt[quantity.Mass]  `json:"sand_mass" label:"Sand in the cope" step:"m_sand"`
	SandWeight  quantity.Opt[quantity.Force] `json:"sand_weight" label:"Weight of the sand in the cope" step:"G_sand"`
	Net         quantity.Opt[quantity.Force] `json:"net" label:"Lift left over, metal at rest" step:"F_n"`
	Needed      quantity.Opt[quantity.Mass]  `json:"needed" label:"Weights still wanted, metal at rest" step:"m_n"`
	NeededSurge quantity.Opt[quantity.Mass]  `json:"needed_surge" label:"Weights still wanted, with the surge" step:"m_u"`
}

// Pushed is the push on one surface or core.
type Pushed struct {
	Name string         `json:"name" label:"Name"`
	Lift quantity.Force `json:"lift" label:"Lift" step:"F"`
}

// Balance sums the lifts and holds the cope down (see flow.Hold). A core is
// lifted by the weight of metal it drowns less its own; a core heavier than
// the metal lifts nothing.
func Balance(in Input, p *working.Paper) (Output, error) {
	in, faults := form.Ready(in)
	faults = append(faults, consistent(in)...)
	if err := faults.Err(); err != nil {
		return Output{}, err
	}
	rho := density(in, p)
	g := flow.PutGravity(p)
	out := Output{Surfaces: []Pushed{}, Cores: []Pushed{}}
	upthrust := source.Rao.Memory("ch. 4, forces acting on the moulding flasks")
	metal := 0.0
	for i, s := range in.Surfaces {
		sub := p.Sub(fmt.Sprintf("surfaces[%d]", i))
		A, d := sub.Give("A", "area seen from above", s.Area, "cm^2"), sub.Give("d", "depth under the metal level", s.Depth, "mm")
		F := flow.SurfaceLift(sub, rho, g, A, d)
		metal += F
		out.Surfaces = append(out.Surfaces, Pushed{s.Name, quantity.Force(F)})
	}
	cores := 0.0
	for i, c := range in.Cores {
		sub := p.Sub(fmt.Sprintf("cores[%d]", i))
		V, rc := sub.Give("V_c", "volume in the metal", c.Volume, "m^3"), working.GiveOpt(sub, "rho_c", "density of the core", c.Density, "kg/m^3")
		F := sub.Step("F", "lift of the core", V*math.Max(rho-rc, 0)*g, "N", "V_c * max(rho_m - rho_c, 0 * rho_m) * g", upthrust)
		cores += F
		out.Cores = append(out.Cores, Pushed{c.Name, quantity.Force(F)})
	}
	p.Solve("F_sum", "sum of the lifts on the surfaces", metal, "N", "sum over the surfaces of ρ g A d", []string{"rho_m", "g"}, upthrust)
	cope := in.Cope
	if !cope.Known() && in.BoxLength.Known() {
		cope = sand(in, &out, g, p)
	}
	h := flow.Hold(p, flow.Lift{Metal: quantity.Force(metal), Core: quantity.Force(cores), Surge: in.Surge, Cope: cope, Weights: in.Weights, Clamps: in.Clamps})
	out.CopeLift, out.CoreLift, out.Static, out.Surged, out.Together = quantity.Force(metal), quantity.Force(cores), h.Static, h.Surged, h.Together
	out.Net, out.Needed, out.NeededSurge = h.Net, h.Needed, h.NeededSurge
	if !cope.Known() {
		p.Find(working.Finding{Level: working.Mind, Code: "cope-unknown", Field: "cope", Source: upthrust,
			Text: working.Say("The mass of the cope is not known, so nobody can say whether it holds. Cope, weights and clamps together must come to %v.", h.Together),
			Do:   working.Say("Weigh the cope, or give the inside of its flask.")})
	}
	return out, nil
}

func density(in Input, p *working.Paper) float64 {
	if in.Density.Known() {
		return working.GiveOpt(p, "rho_m", "density of the liquid metal", in.Density, "kg/m^3")
	}
	a, ok := alloy.Find(in.Alloy.V)
	if !ok {
		panic("lift: the form let an unknown alloy through")
	}
	return p.Lookup("rho_m", "density of the liquid metal", float64(a.DensityLiquid.V), "kg/m^3", a.DensityLiquid.Source, a.DensityLiquid.Note)
}

// sand is the mass of a cope full of sand; the hollows of the casting in it
// are not taken off, so it errs on the heavy side.
func sand(in Input, out *Output, g float64, p *working.Paper) quantity.Opt[quantity.Mass] {
	l, w, h := working.GiveOpt(p, "l_k", "cope length", in.BoxLength, "m"), working.GiveOpt(p, "w_k", "cope width", in.BoxWidth, "m"), working.GiveOpt(p, "h_k", "cope height", in.BoxHeight, "m")
	rho := working.GiveOpt(p, "rho_k", "density of the rammed sand", in.BoxDensity, "kg/m^3")
	m := p.Step("m_sand", "sand in the cope", l*w*h*rho, "kg", "l_k * w_k * h_k * rho_k", source.Derived("volume times density"))
	out.SandMass = quantity.Some(quantity.Mass(m))
	out.SandWeight = quantity.Some(quantity.Force(p.Step("G_sand", "weight of the sand in the cope", m*g, "N", "m_sand * g", source.Derived("weight"))))
	p.Find(working.Finding{Level: working.Note, Code: "cope-from-box", Field: "cope", Source: source.Derived("volume times density"),
		Text: working.Say("The cope is taken as %v, a flask full of sand; what the casting and sprue take out of it makes it lighter, the flask itself makes it heavier.", out.SandMass.V)})
	return out.SandMass
}

func consistent(in Input) (faults form.Faults) {
	if !in.Alloy.Known() && !in.Density.Known() {
		faults = append(faults, form.Fault{Field: "alloy", Label: "Metal", Why: working.Say("choose the metal, or state the density of the liquid"), Missing: true})
	}
	if len(in.Surfaces)+len(in.Cores) == 0 {
		faults = append(faults, form.Fault{Field: "surfaces", Label: "Cope surfaces", Why: working.Say("at least one surface or core is wanted"), Missing: true})
	}
	known := 0
	for _, b := range []quantity.Opt[quantity.Length]{in.BoxLength, in.BoxWidth, in.BoxHeight} {
		if b.Known() {
			known++
		}
	}
	if known > 0 && known < 3 && !in.Cope.Known() {
		faults = append(faults, form.Fault{Field: "box_length", Label: "Cope length, inside", Why: working.Say("length, width and height of the cope are wanted together"), Missing: true})
	}
	return faults
}
