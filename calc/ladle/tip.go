package ladle

import (
	"math"

	"pourwright/calc/alloy"
	"pourwright/calc/flow"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// The grounds of the sums.
var (
	geometry   = source.Derived("geometry of a cylinder or truncated cone; checked by slices")
	definition = source.Derived("definition")
	ownFigure  = source.Own("your own figure goes before the table's")
)

// job is one ladle being worked through. Bare floats are SI.
type job struct {
	in     Input
	p      *working.Paper
	out    Output
	vessel vessel
	rho    float64
	// metal and volume are what is in the ladle, keep the volume to be left.
	metal, volume, keep float64
	// holds is the volume with the freeboard wanted.
	holds float64
	// flow by volume, and the head it needs over the lip.
	flow, head float64
}

// Tip works out a ladle.
func Tip(in Input, p *working.Paper) (Output, error) {
	in, faults := form.Ready(in)
	faults = append(faults, cross(in)...)
	if err := faults.Err(); err != nil {
		return Output{}, err
	}
	j := &job{in: in, p: p}
	j.density()
	j.shape()
	j.capacity()
	j.fill()
	j.stream()
	fits := j.level()
	j.look()
	if fits {
		j.pour()
	}
	j.leftChart(fits)
	j.weigh()
	return j.out, nil
}

// cross checks the fields against each other.
func cross(in Input) form.Faults {
	var faults form.Faults
	add := func(field, label string, value quantity.Any, why working.Text) {
		faults = append(faults, form.Fault{Field: field, Label: label, Value: quantity.Text(value), Why: why})
	}
	if !in.Alloy.Known() && !in.Density.Known() {
		faults = append(faults, form.Fault{Field: "alloy", Label: "Metal", Why: working.Say("not chosen yet; choose the metal or fill in its liquid density"), Missing: true})
	}
	if in.Freeboard.Known() && in.Depth > 0 && in.Freeboard.V >= in.Depth {
		add("freeboard", "Freeboard wanted", in.Freeboard.V, working.Say("%v is not less than the inside depth of %v; it must be less", in.Freeboard.V, in.Depth))
	}
	if in.Shape.V == Cone && in.Top > 0 && in.Bottom > 2*in.Top {
		add("bottom", "Inside diameter at the base", in.Bottom, working.Say("%v is more than twice the diameter at the lip; it must be at most %v", in.Bottom, 2*in.Top))
	}
	if in.Lip.Form == flow.FlatLip && in.Top > 0 && in.Lip.Width > in.Top {
		add("lip.width", "Width of the lip", in.Lip.Width, working.Say("%v is wider than the ladle's mouth; it must be at most %v", in.Lip.Width, in.Top))
	}
	if in.Lip.Form == flow.RoundLip && in.Top > 0 && 2*in.Lip.Radius > in.Top {
		add("lip.radius", "Radius of the lip", in.Lip.Radius, working.Say("a lip of %v radius is wider than the ladle's mouth; it must be at most %v", in.Lip.Radius, in.Top/2))
	}
	return faults
}

// density takes the shop's own figure, else the metal's.
func (j *job) density() {
	if j.in.Density.Known() {
		j.p.Give("rho_own", "your own density of the liquid metal", j.in.Density.V, "kg/m^3")
		j.rho = j.p.Step("rho_l", "density of the liquid metal", float64(j.in.Density.V), "kg/m^3", "rho_own", ownFigure)
	} else {
		metal, ok := alloy.Find(j.in.Alloy.V)
		if !ok {
			panic("ladle: the form let an unknown alloy through")
		}
		j.p.Lookup("rho_t", "liquid density in the table", float64(metal.DensityLiquid.V), "kg/m^3", metal.DensityLiquid.Source, metal.Name)
		j.rho = j.p.Step("rho_l", "density of the liquid metal", float64(metal.DensityLiquid.V), "kg/m^3", "rho_t", metal.DensityLiquid.Source)
	}
	j.out.Density = quantity.Density(j.rho)
}

// shape puts the inside of the ladle on the paper: R_t, R_b, L in mm, and the
// taper m.
func (j *job) shape() {
	top := float64(j.in.Top)
	bottom := top
	j.p.Give("D_t", "inside diameter at the lip", j.in.Top, "mm")
	j.p.Give("L", "inside depth to the lip", j.in.Depth, "mm")
	if j.in.Shape.V == Cone {
		bottom = float64(j.in.Bottom)
		j.p.Give("D_b", "inside diameter at the base", j.in.Bottom, "mm")
	}
	j.vessel = shaped(top, bottom, float64(j.in.Depth))
	v := j.vessel
	switch {
	case v.taper != 0:
		j.p.Step("R_t", "inside radius at the lip", 1000*v.top, "mm", "D_t / 2", definition)
		j.p.Step("R_b", "inside radius at the base", 1000*v.bottom, "mm", "D_b / 2", definition)
	case bottom != top:
		const why = "the two diameters are so nearly equal that the ladle is reckoned as a cylinder"
		j.p.StepNote("R_t", "inside radius at the lip", 1000*v.top, "mm", "(D_t + D_b) / 4", definition, why)
		j.p.StepNote("R_b", "inside radius at the base", 1000*v.bottom, "mm", "(D_t + D_b) / 4", definition, why)
	default:
		j.p.Step("R_t", "inside radius at the lip", 1000*v.top, "mm", "D_t / 2", definition)
		j.p.Step("R_b", "inside radius at the base", 1000*v.bottom, "mm", "R_t", definition)
	}
	j.p.Step("m", "taper of the wall", v.taper, "1", "(R_t - R_b) / L", definition)
	j.p.Step("theta_b", "tilt at which the base begins to show", degrees(v.shows), "deg", "atan(L / (R_t + R_b))", geometry)
	j.out.BaseTilt, j.out.EmptyTilt = quantity.Angle(v.shows), quantity.Angle(v.empties)
	if v.taper > 0 {
		j.p.StepNote("theta_x", "tilt at which the ladle is empty", degrees(v.empties), "deg", "pi / 2 - atan(m)", geometry, "when the wall under the lip lies level")
	} else {
		j.p.StepNote("theta_x", "tilt at which the ladle is empty", degrees(v.empties), "deg", "pi / 2", geometry, "the wall does not widen upwards, so it lies level or falls inwards at 90°")
	}
}

// stream puts the wanted flow, its head over the lip, and the speed of the
// stream on the paper.
func (j *job) stream() {
	W := float64(j.in.Metal)
	var qm float64
	if j.in.Pace.V == PaceByFlow {
		j.p.Give("q_own", "flow wanted", j.in.Flow, "kg/s")
		qm = j.p.Step("q_m", "flow wanted", float64(j.in.Flow), "kg/s", "q_own", definition)
	} else {
		t := j.p.Give("t_p", "pouring time", j.in.PourTime, "s")
		qm = j.p.Step("q_m", "flow wanted", W/t, "kg/s", "W / t_p", source.Derived("an even flow over the pouring time"))
	}
	q := j.p.Step("q", "flow wanted, by volume", 1000*qm/j.rho, "L/s", "q_m / rho_l", source.Derived("mass of a volume"))
	j.flow = q / 1000
	flow := quantity.VolumeFlow(j.flow)
	head := j.in.Lip.PutHead(j.p, flow)
	j.head = float64(head)
	_, surface, speed := j.in.Lip.PutStream(j.p, flow, head)
	j.out.Flow, j.out.VolumeFlow, j.out.Head, j.out.LipSpeed = quantity.MassFlow(qm), flow, head, speed
	j.in.Lip.Find(j.p, flow, head, "lip")
	if surface > j.in.Top {
		j.p.Find(working.Finding{Level: working.Mind, Code: "lip-narrow", Field: "lip", Source: geometry,
			Text: working.Say("The stream in the notch is %v wide at its surface, wider than the ladle's mouth of %v; metal runs over the rim beside the lip.", surface, j.in.Top),
			Do:   working.Say("Pour more slowly, or open the notch.")})
	}
	if j.in.LipHeight.Known() {
		H := working.GiveOpt(j.p, "H", "lip above the basin", j.in.LipHeight, "m")
		v0 := float64(speed)
		vb := j.p.Step("v_b", "speed of the stream at the basin", math.Sqrt(v0*v0+2*gravity*H), "m/s", "sqrt(pow(v_0, 2) + 2 * g * H)", source.Derived("free fall"))
		j.out.StreamSpeed = quantity.Some(quantity.Speed(vb))
		if j.in.LipHeight.V > highDrop {
			j.p.Find(working.Finding{Level: working.Mind, Code: "stream-drop", Field: "lip_height", Source: source.Practice("keep the lip 50 to 100 mm above the basin"),
				Text: working.Say("The stream falls %v and lands at %v; it drags air and dross into the basin and splashes.", j.in.LipHeight.V, quantity.Speed(vb)),
				Do:   working.Say("Lower the lip to %v above the basin or less.", highDrop)})
		}
	}
}

const (
	gravity  = flow.Gravity
	highDrop = 100 * quantity.Millimetre
)

func degrees(radians float64) float64         { return radians * 180 / math.Pi }
func turning(x float64) quantity.AngularSpeed { return quantity.AngularSpeed(x * math.Pi / 180) }
func some[T any](v T) quantity.Opt[T]         { return quantity.Some(v) }
