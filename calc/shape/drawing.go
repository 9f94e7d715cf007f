package shape

import (
	"math"

	"pourwright/calc/quantity"
)

// Spot is a place on a drawing.
type Spot struct{ X, Y quantity.Length }

// arcSteps is how many chords a half circle is drawn with: they then miss it by
// a thousandth of the diameter.
const arcSteps = 24

// Box is the block that one solid just fits in, as it stands for its section:
// across, back to front, and up.
func (s Solid) Box() (across, depth, up quantity.Length) {
	switch s.Form {
	case Plate:
		return s.Length, s.Width, s.Thickness
	case Bar:
		return s.Length, s.Width, s.Height
	case Wedge:
		return s.Length, s.Width, max(s.Height, s.ThinEnd.V)
	case Outline:
		low, high := s.extent()
		return high.X - low.X, s.Height, high.Y - low.Y
	}
	low, high := Spot{}, Spot{}
	for _, loop := range s.SectionOutlines() {
		for _, p := range loop {
			low = Spot{min(low.X, p.X), min(low.Y, p.Y)}
			high = Spot{max(high.X, p.X), max(high.Y, p.Y)}
		}
	}
	return high.X - low.X, high.X - low.X, high.Y - low.Y
}

// SectionOutlines are the closed lines of an upright section through the
// middle of one solid, standing on Y = 0 with its middle at X = 0; of an
// outline of one thickness, the outline itself. A tube, a round ring and a
// turned profile are cut twice.
func (s Solid) SectionOutlines() [][]Spot {
	switch s.Form {
	case Plate:
		return [][]Spot{rectangle(-s.Length/2, s.Length/2, s.Thickness)}
	case Bar:
		return [][]Spot{rectangle(-s.Length/2, s.Length/2, s.Height)}
	case Cylinder:
		return [][]Spot{rectangle(-s.Diameter/2, s.Diameter/2, s.Height)}
	case Tube:
		r, b := s.Diameter/2, s.Inner/2
		return [][]Spot{rectangle(-r, -b, s.Height), rectangle(b, r, s.Height)}
	case Frustum:
		r, t := s.Diameter/2, s.TopDiameter.V/2
		return [][]Spot{{{-r, 0}, {r, 0}, {t, s.Height}, {-t, s.Height}}}
	case Sphere:
		return [][]Spot{circle(0, s.Diameter/2, s.Diameter/2)}
	case Cap:
		return [][]Spot{capOutline(s.Diameter/2, s.Height)}
	case Torus:
		return [][]Spot{circle(-s.Diameter/2, s.Section/2, s.Section/2), circle(s.Diameter/2, s.Section/2, s.Section/2)}
	case Wedge:
		a := s.Length / 2
		return [][]Spot{{{-a, 0}, {a, 0}, {a, s.ThinEnd.V}, {-a, s.Height}}}
	case Prism:
		r := s.Flats / 2 / quantity.Length(math.Cos(math.Pi/float64(s.Sides)))
		return [][]Spot{rectangle(-r, r, s.Height)}
	case Outline:
		low, high := s.extent()
		return [][]Spot{s.placed((low.X+high.X)/2, low.Y, 1)}
	case Turned:
		low, _ := s.extent()
		return [][]Spot{s.placed(0, low.Y, -1), s.placed(0, low.Y, 1)}
	}
	return nil
}

func rectangle(left, right, up quantity.Length) []Spot {
	return []Spot{{left, 0}, {right, 0}, {right, up}, {left, up}}
}

func circle(x, y, r quantity.Length) []Spot {
	out := make([]Spot, 2*arcSteps)
	for i := range out {
		sin, cos := math.Sincos(math.Pi * float64(i) / arcSteps)
		out[i] = Spot{x + r*quantity.Length(cos), y + r*quantity.Length(sin)}
	}
	return out
}

// capOutline runs from the right end of the foot over the crown to the left.
func capOutline(foot, up quantity.Length) []Spot {
	a, h := float64(foot), float64(up)
	R := (a*a + h*h) / (2 * h)
	start := math.Atan2(R-h, a) // of the foot's right end, seen from the centre; negative past half a ball
	out := make([]Spot, arcSteps+1)
	for i := range out {
		sin, cos := math.Sincos(start + (math.Pi-2*start)*float64(i)/arcSteps)
		out[i] = Spot{quantity.Length(R * cos), quantity.Length(h - R + R*sin)}
	}
	return out
}

func (s Solid) extent() (low, high Spot) {
	low, high = Spot{s.Points[0].X.V, s.Points[0].Y.V}, Spot{s.Points[0].X.V, s.Points[0].Y.V}
	for _, p := range s.Points {
		low = Spot{min(low.X, p.X.V), min(low.Y, p.Y.V)}
		high = Spot{max(high.X, p.X.V), max(high.Y, p.Y.V)}
	}
	return low, high
}

// placed shifts the corners, and turns them over to the other side of the axis
// where side is -1.
func (s Solid) placed(x, y quantity.Length, side quantity.Length) []Spot {
	out := make([]Spot, len(s.Points))
	for i, p := range s.Points {
		out[i] = Spot{side * (p.X.V - x), p.Y.V - y}
	}
	return out
}
