package flow

import (
	"math"

	"pourwright/calc/quantity"
	"pourwright/calc/solve"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// LipForm is the cross-section of the edge that a liquid runs over.
type LipForm string

// The forms of a lip.
const (
	FlatLip  LipForm = "flat"
	NotchLip LipForm = "notch"
	RoundLip LipForm = "round"
)

// Choices lists the forms for a form on screen.
func (LipForm) Choices() [][2]string {
	return [][2]string{
		{string(FlatLip), "Flat, with upright sides"},
		{string(NotchLip), "V notch"},
		{string(RoundLip), "Half round"},
	}
}

// Lip is the edge of a ladle, a notch or a weir, seen along the stream.
//
// The three forms are the weirs of hydraulics: the liquid stands a head h over
// the lowest point of the edge, a slice at depth z under the surface runs at
// √(2gz), and a discharge coefficient C_d makes up for the stream's narrowing.
// The half-round lip is a semicircle whose sides go up straight above its
// centre.
//
// C_d is about 0.60 to 0.62 for a sharp edge with water. Over the thick edge of
// a ladle it is little known: fits to pouring trials run from 0.7 to 1.0. The
// speed of the approaching liquid is neglected, as is surface tension.
type Lip struct {
	// Form of the cross-section.
	Form LipForm `json:"form" label:"Form of the lip" hint:"Look at it from in front, where the stream leaves"`
	// Width of a flat lip.
	Width quantity.Length `json:"width" label:"Width of the lip" hint:"Calipers between its sides, at the bottom" when:"form=flat" min:"3 mm" max:"3 m"`
	// Angle between the sides of a notch.
	Angle quantity.Angle `json:"angle" label:"Angle of the notch" hint:"Bevel between its two sides" when:"form=notch" min:"20°" max:"150°"`
	// Radius of a half-round lip.
	Radius quantity.Length `json:"radius" label:"Radius of the lip" hint:"Half its width where it is a half round: calipers" when:"form=round" min:"3 mm" max:"1.5 m"`
	// Discharge is C_d.
	Discharge quantity.Opt[quantity.Number] `json:"discharge" label:"Discharge coefficient" hint:"0.6 for a sharp edge; 0.7 to 1 has been fitted to ladles. Put in your own from a timed pour" default:"0.6" min:"0.4" max:"1"`
}

var (
	flatSource  = source.Hydraulics.Memory("rectangular notch")
	notchSource = source.Hydraulics.Seen("triangular notch")
	roundSource = source.Derived("weir integral over a circular edge")
)

// give puts g, C_d and the lip's own measure on the paper.
func (l Lip) give(p *working.Paper) {
	PutGravity(p)
	working.GiveOpt(p, "C_d", "discharge coefficient of the lip", l.Discharge, "")
	switch l.Form {
	case FlatLip:
		p.Give("b", "width of the lip", l.Width, "m")
	case NotchLip:
		p.Give("alpha", "angle of the notch", l.Angle, "rad")
	default:
		p.Give("r_l", "radius of the lip", l.Radius, "m")
	}
}

// PutFlow puts the lip on the paper and the flow that a head drives over it,
// as q in L/s. It needs h (mm) on the paper.
func (l Lip) PutFlow(p *working.Paper, head quantity.Length) quantity.VolumeFlow {
	l.give(p)
	flow := l.Flow(head)
	q := quantity.In(flow, "L/s")
	switch l.Form {
	case FlatLip:
		p.Step("q", "flow over the lip", q, "L/s", "2 * C_d * b * sqrt(2 * g) * pow(h, 1.5) / 3", flatSource)
	case NotchLip:
		p.Step("q", "flow over the lip", q, "L/s", "8 * C_d * tan(alpha / 2) * sqrt(2 * g) * pow(h, 2.5) / 15", notchSource)
	default:
		p.Solve("q", "flow over the lip", q, "L/s",
			"q = C_d √(2g) ∫ w(z) √(h − z) dz over the depth, w the width of the lip at the height z: 2√(2 r z − z²) up to the radius, 2r above. Gauss-Legendre rule of 16 points after z = h sin²φ; error below 1 in 10^10",
			[]string{"C_d", "g", "r_l", "h"}, roundSource)
	}
	return flow
}

// PutHead puts the lip on the paper and the head that drives a flow over it,
// as h in mm. It needs q (L/s) on the paper.
func (l Lip) PutHead(p *working.Paper, flow quantity.VolumeFlow) quantity.Length {
	l.give(p)
	head := l.Head(flow)
	h := quantity.In(head, "mm")
	switch l.Form {
	case FlatLip:
		p.Step("h", "head over the lip", h, "mm", "cbrt(pow(3 * q / (2 * C_d * b * sqrt(2 * g)), 2))", flatSource)
	case NotchLip:
		p.Step("h", "head over the lip", h, "mm", "pow(15 * q / (8 * C_d * tan(alpha / 2) * sqrt(2 * g)), 0.4)", notchSource)
	default:
		p.Solve("h", "head over the lip", h, "mm",
			"the head whose flow C_d √(2g) ∫ w(z) √(h − z) dz is q, w the width of the lip at the height z: 2√(2 r z − z²) up to the radius, 2r above. Root by bisection and interpolation to 10^-12 m",
			[]string{"C_d", "g", "r_l", "q"}, roundSource)
	}
	return head
}

// Flow is what runs over the lip under a head of zero or more.
func (l Lip) Flow(head quantity.Length) quantity.VolumeFlow {
	h, cd, root := float64(head), float64(l.Discharge.V), math.Sqrt(2*Gravity)
	switch l.Form {
	case FlatLip:
		return quantity.VolumeFlow(2 * cd * float64(l.Width) * root * math.Pow(h, 1.5) / 3)
	case NotchLip:
		return quantity.VolumeFlow(8 * cd * math.Tan(float64(l.Angle)/2) * root * math.Pow(h, 2.5) / 15)
	}
	return quantity.VolumeFlow(cd * root * roundIntegral(float64(l.Radius), h))
}

// roundIntegral is ∫ w(z) √(h − z) dz from 0 to h. With z = h sin²φ the part
// below the centre of the circle is smooth over its whole range; the part
// between the upright sides is that of a flat lip.
func roundIntegral(r, h float64) float64 {
	if !(h > 0) {
		return 0
	}
	end, above := math.Pi/2, 0.0
	if h > r {
		end = math.Asin(math.Sqrt(r / h))
		above = 4 * r * math.Pow(h-r, 1.5) / 3
	}
	return above + solve.Integral(func(phi float64) float64 {
		sin, cos := math.Sincos(phi)
		return 4 * h * h * sin * sin * cos * cos * math.Sqrt(2*r-h*sin*sin)
	}, 0, end)
}

// Head is what drives a flow, above zero, over the lip.
func (l Lip) Head(flow quantity.VolumeFlow) quantity.Length {
	q, cd, root := float64(flow), float64(l.Discharge.V), math.Sqrt(2*Gravity)
	switch l.Form {
	case FlatLip:
		return quantity.Length(math.Cbrt(math.Pow(3*q/(2*cd*float64(l.Width)*root), 2)))
	case NotchLip:
		return quantity.Length(math.Pow(15*q/(8*cd*math.Tan(float64(l.Angle)/2)*root), 0.4))
	}
	// A flat lip of the full width lets more through at every head; one that
	// starts a radius higher lets less through.
	r := float64(l.Radius)
	flat := math.Cbrt(math.Pow(3*q/(4*cd*r*root), 2))
	want := q / (cd * root)
	return quantity.Length(solve.Root(func(h float64) float64 { return roundIntegral(r, h) - want }, flat, flat+r, 1e-12))
}

// Section is the cross-section of the liquid over the lip at a head, and
// surface its width at the top.
func (l Lip) Section(head quantity.Length) (section quantity.Area, surface quantity.Length) {
	h := float64(head)
	switch l.Form {
	case FlatLip:
		return quantity.Area(float64(l.Width) * h), l.Width
	case NotchLip:
		t := math.Tan(float64(l.Angle) / 2)
		return quantity.Area(h * h * t), quantity.Length(2 * h * t)
	}
	r := float64(l.Radius)
	if h >= r {
		return quantity.Area(math.Pi*r*r/2 + 2*r*(h-r)), quantity.Length(2 * r)
	}
	half := math.Sqrt(h * (2*r - h))
	return quantity.Area(r*r*math.Acos((r-h)/r) - (r-h)*half), quantity.Length(2 * half)
}

// PutStream puts the stream at the lip on the paper: its section A_l (cm²),
// the width of its surface w_l (mm) and its mean speed v_0 (m/s). It needs
// what PutFlow or PutHead leaves there, q and h among it.
func (l Lip) PutStream(p *working.Paper, flow quantity.VolumeFlow, head quantity.Length) (quantity.Area, quantity.Length, quantity.Speed) {
	section, surface := l.Section(head)
	area, width := quantity.In(section, "cm^2"), quantity.In(surface, "mm")
	edge := source.Derived("geometry of the lip")
	switch {
	case l.Form == FlatLip:
		p.Step("A_l", "section of the stream at the lip", area, "cm^2", "b * h", edge)
		p.Step("w_l", "width of the surface at the lip", width, "mm", "b", edge)
	case l.Form == NotchLip:
		p.Step("A_l", "section of the stream at the lip", area, "cm^2", "pow(h, 2) * tan(alpha / 2)", edge)
		p.Step("w_l", "width of the surface at the lip", width, "mm", "2 * h * tan(alpha / 2)", edge)
	case head < l.Radius:
		p.StepNote("A_l", "section of the stream at the lip", area, "cm^2", "pow(r_l, 2) * acos((r_l - h) / r_l) - (r_l - h) * sqrt(h * (2 * r_l - h))", edge, "the surface lies within the half round")
		p.StepNote("w_l", "width of the surface at the lip", width, "mm", "2 * sqrt(h * (2 * r_l - h))", edge, "the surface lies within the half round")
	default:
		p.StepNote("A_l", "section of the stream at the lip", area, "cm^2", "pi * pow(r_l, 2) / 2 + 2 * r_l * (h - r_l)", edge, "the surface stands above the half round")
		p.StepNote("w_l", "width of the surface at the lip", width, "mm", "2 * r_l", edge, "the surface stands above the half round")
	}
	v := p.Step("v_0", "mean speed at the lip", float64(flow)/float64(section), "m/s", "q / A_l", source.Derived("continuity"))
	return section, surface, quantity.Speed(v)
}
