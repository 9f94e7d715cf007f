// Package shape measures the plain solids that a casting can be put together
// from: volume, surface, the part of the surface that cools, and the outline
// of a section for drawing. A Solid stands in a calculator's Input as a list
// item; form.Ready checks its single fields, Faults what they must be to each
// other, and only then may Measure be asked.
//
// Solids are measured one by one. Where two of them overlap, or share a face,
// nothing here knows it: the overlap counts twice, and the shared face counts
// as cooled unless the user says what share of a surface is joined.
package shape

import "pourwright/calc/quantity"

// Form says which solid a Solid is; it is a choice on every form.
type Form string

// The forms.
const (
	Plate    Form = "plate"
	Bar      Form = "bar"
	Cylinder Form = "cylinder"
	Tube     Form = "tube"
	Frustum  Form = "frustum"
	Sphere   Form = "sphere"
	Cap      Form = "cap"
	Torus    Form = "torus"
	Wedge    Form = "wedge"
	Prism    Form = "prism"
	Outline  Form = "outline"
	Turned   Form = "turned"
)

// Choices lists the forms and their names for a screen.
func (Form) Choices() [][2]string {
	return [][2]string{
		{string(Plate), "Plate"},
		{string(Bar), "Rectangular bar"},
		{string(Cylinder), "Cylinder"},
		{string(Tube), "Tube or ring"},
		{string(Frustum), "Cone or tapered round"},
		{string(Sphere), "Ball"},
		{string(Cap), "Cap of a ball"},
		{string(Torus), "Round ring of round section"},
		{string(Wedge), "Wedge"},
		{string(Prism), "Regular prism (hexagon bar and the like)"},
		{string(Outline), "Own outline, one thickness"},
		{string(Turned), "Turned profile"},
	}
}

// Name is the form's name on screen, or the bare text of an unknown one.
func (f Form) Name() string {
	for _, c := range f.Choices() {
		if c[0] == string(f) {
			return c[1]
		}
	}
	return string(f)
}

// Role says whether a solid is metal or a hollow.
type Role string

// The roles.
const (
	Add  Role = "add"
	Take Role = "take"
)

// Choices lists the roles for a form.
func (Role) Choices() [][2]string {
	return [][2]string{{string(Add), "Add"}, {string(Take), "Take away"}}
}

// Point is one corner of an outline or a turned profile.
type Point struct {
	// X is the distance across; for a turned profile the radius.
	X quantity.Opt[quantity.Length] `json:"x" label:"Across, or radius" default:"0 mm" min:"-10 m" max:"10 m" hint:"for a turned profile the distance from the axis"`
	// Y is the distance up; for a turned profile along the axis.
	Y quantity.Opt[quantity.Length] `json:"y" label:"Up, or along the axis" hint:"Rule along the axis, from any one end" default:"0 mm" min:"-10 m" max:"10 m"`
}

// Solid is one plain body, or several alike. Which dimensions count depends on
// Form; the others are ignored.
type Solid struct {
	// Name is what the user calls it.
	Name string `json:"name" label:"Name" max:"60" hint:"such as flange, web, boss"`
	// Form picks the solid.
	Form Form `json:"form" label:"Shape" hint:"The plain body nearest to it"`
	// Role says metal or hollow.
	Role quantity.Opt[Role] `json:"role" label:"Add or take away" default:"add" hint:"a bore or a cored hollow is taken away; an overlap of two solids counts twice unless you take it away once"`
	// Count is how many alike.
	Count quantity.Opt[int] `json:"count" label:"How many" hint:"In one casting, all alike" default:"1" min:"1" max:"1000"`

	// Length of a plate, bar or wedge.
	Length quantity.Length `json:"length" label:"Length" hint:"Longest side: rule or tape" when:"form=plate|bar|wedge" min:"0.1 mm" max:"20 m"`
	// Width of a plate, bar or wedge.
	Width quantity.Length `json:"width" label:"Width" hint:"The side across: rule or calipers" when:"form=plate|bar|wedge" min:"0.1 mm" max:"20 m"`
	// Thickness of a plate.
	Thickness quantity.Length `json:"thickness" label:"Thickness" hint:"Measure with calipers" when:"form=plate" min:"0.1 mm" max:"20 m"`
	// Diameter: outside of a cylinder, tube or ball; larger end of a frustum;
	// foot of a cap; of a torus, the ring's own circle through the middle of
	// its section.
	Diameter quantity.Length `json:"diameter" label:"Diameter" when:"form=cylinder|tube|frustum|sphere|cap|torus" min:"0.1 mm" max:"20 m" hint:"outside; of a cone the foot, of a cap its flat face, of a round ring the circle through the middle of the section"`
	// Inner is the bore of a tube.
	Inner quantity.Length `json:"inner" label:"Bore" hint:"Inside calipers, or the core's diameter" when:"form=tube" min:"0.1 mm" max:"20 m"`
	// TopDiameter is the other end of a frustum; zero for a cone.
	TopDiameter quantity.Opt[quantity.Length] `json:"top_diameter" label:"Diameter at the other end" when:"form=frustum" default:"0 mm" min:"0 mm" max:"20 m" hint:"0 for a full cone"`
	// Section is the diameter of a torus's section.
	Section quantity.Length `json:"section" label:"Diameter of the section" hint:"Calipers across the ring's section" when:"form=torus" min:"0.1 mm" max:"20 m"`
	// Sides is the number of sides of a regular prism.
	Sides int `json:"sides" label:"Sides" hint:"Count them" when:"form=prism" min:"3" max:"60"`
	// Flats is the circle that fits inside a regular prism.
	Flats quantity.Length `json:"flats" label:"Across flats" when:"form=prism" min:"0.1 mm" max:"20 m" hint:"Calipers across two flats: the circle that fits inside"`
	// Height of everything that has one; the thick end of a wedge, the one
	// thickness of an outline.
	Height quantity.Length `json:"height" label:"Height or length" when:"form=bar|cylinder|tube|frustum|cap|wedge|prism|outline" min:"0.1 mm" max:"20 m" hint:"of a wedge the thick end; of an own outline its one thickness"`
	// ThinEnd of a wedge; zero for a sharp edge.
	ThinEnd quantity.Opt[quantity.Length] `json:"thin_end" label:"Height at the thin end" when:"form=wedge" default:"0 mm" min:"0 mm" max:"20 m" hint:"0 for a sharp edge"`
	// Points are the corners of an outline or a turned profile, in order
	// round it; the last joins the first.
	Points []Point `json:"points" label:"Corners in order" when:"form=outline|turned" min:"3" max:"200" hint:"go round once; a turned profile is the half section, its axis at 0 across"`

	// Bore is the share of full cooling that the bore of a tube gives.
	Bore quantity.Opt[quantity.Ratio] `json:"bore" label:"Cooling by the bore" when:"form=tube" default:"100 %" min:"0 %" max:"100 %" hint:"a small core soon heats through: 0 % for a bore under about a quarter of the outside"`
	// Joined is the share of the surface that does not cool because it is
	// joined to other metal.
	Joined quantity.Opt[quantity.Ratio] `json:"joined" label:"Surface that does not cool" default:"0 %" min:"0 %" max:"95 %" hint:"share of its surface joined to a neighbour"`
}

// Title is what to call the solid on paper: its name, or its form.
func (s Solid) Title() string {
	if s.Name != "" {
		return s.Name
	}
	return s.Form.Name()
}

// Taken reports whether the solid is a hollow.
func (s Solid) Taken() bool { return s.Role.Or(Add) == Take }

// HowMany is the count, one where none is given.
func (s Solid) HowMany() int { return s.Count.Or(1) }
