package feed

import (
	"fmt"
	"math"
	"strings"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

var (
	definition = source.Derived("definition")
	geometry   = source.Derived("solid geometry")
	chvorinov  = source.Chvorinov.Memory("modulus V/A, cooled surface only")
	ownFigure  = source.Own("your own figure goes before the table's")
)

// body is a section on its way, in cm.
type body struct {
	name  string
	n     float64
	V, Ac float64
	M, Mo float64
	p     *working.Paper
	path  string
}

// wall is the thickness that junctions and feeding distances go by; zero for a
// form that has none.
func wall(s Section) quantity.Length {
	switch s.Kind {
	case Plate:
		return s.Thickness
	case Bar:
		return min(s.Breadth, s.Depth)
	case Tube:
		return (s.Diameter - s.Inner) / 2
	case Stated:
		return s.Wall.V
	}
	return 0
}

// sizes are length, width and thickness for a shape factor, the longest first;
// a tube is unrolled. ok is false where the form has none.
func sizes(s Section) (longest, middle, least quantity.Length, ok bool) {
	var a, b, c quantity.Length
	switch s.Kind {
	case Plate:
		a, b, c = s.Length, s.Width, s.Thickness
	case Bar:
		a, b, c = s.Length, s.Breadth, s.Depth
	case Cylinder:
		a, b, c = s.Height, s.Diameter, s.Diameter
	case Sphere:
		a, b, c = s.Diameter, s.Diameter, s.Diameter
	case Tube:
		a, b, c = s.Height, (s.Diameter+s.Inner)/2*math.Pi, (s.Diameter-s.Inner)/2
	default:
		return 0, 0, 0, false
	}
	longest, least = max(a, b, c), min(a, b, c)
	return longest, a + b + c - longest - least, least, true
}

// sections measures every section, with the faces that do not cool taken off.
func (f *feeding) sections() form.Faults {
	var faults form.Faults
	for i, s := range f.in.Sections {
		path := fmt.Sprintf("sections[%d]", i)
		b := &body{name: sectionName(s, i), path: path, p: f.p.Sub(path)}
		b.n = b.p.Number("n", "how many alike in one casting", float64(s.Count.V), "1")
		out := SectionAnswer{Name: b.name}
		if s.Kind == Stated {
			b.M = b.p.Step("M", "modulus", b.p.Give("M_own", "modulus, stated", s.Modulus, "cm"), "cm", "M_own", ownFigure)
			b.V = b.p.Step("V", "volume of one", b.p.Give("V_own", "volume, stated", s.Volume, "cm^3"), "cm^3", "V_own", ownFigure)
			b.Ac = b.p.Step("A_c", "cooled surface of one", b.V/b.M, "cm^2", "V / M", chvorinov)
		} else {
			A := b.measure(s)
			joined := f.joined(b, i)
			if joined > most*A {
				faults = append(faults, form.Fault{Field: path + ".covered", Label: "Surface under risers", Value: quantity.Text(s.Covered.V),
					Why: working.Say("%v of the %v surface of %v is joined or covered; at most %v may be, so look at the areas of contact", cm2(joined), cm2(A), b.name, cm2(most*A))})
				f.bodies = append(f.bodies, b)
				continue
			}
			b.Ac = b.p.Step("A_c", "cooled surface of one", A-joined, "cm^2", "A - A_j", chvorinov)
			b.M = b.p.Step("M", "modulus", b.V/b.Ac, "cm", "V / A_c", chvorinov)
			out.Surface, out.Joined = quantity.Some(cm2(A)), quantity.Some(cm2(joined))
		}
		b.Mo = b.M
		if s.Chilled.Known() {
			own := b.p.Give("M_x", "your own modulus for the order", s.Chilled.V, "cm")
			b.Mo = b.p.Step("M_o", "modulus in the order of freezing", own, "cm", "M_x", ownFigure)
		} else {
			b.p.Step("M_o", "modulus in the order of freezing", b.M, "cm", "M", definition)
		}
		out.Volume, out.Cooling, out.Modulus, out.Freezes = cm3(b.V), cm2(b.Ac), cm(b.M), cm(b.Mo)
		out.Time, out.Low, out.High = f.times(b.p, "M_o", b.Mo)
		f.bodies = append(f.bodies, b)
		f.out.Sections = append(f.out.Sections, out)
	}
	return faults
}

// most is the share of its surface that may be joined or covered.
const most = 0.95

// measure puts volume V and surface A of one section on its paper.
func (b *body) measure(s Section) (A float64) {
	p := b.p
	volume := func(v float64, formula string) { b.V = p.Step("V", "volume of one", v, "cm^3", formula, geometry) }
	surface := func(v float64, formula string) float64 {
		return p.Step("A", "surface of one", v, "cm^2", formula, geometry)
	}
	switch s.Kind {
	case Plate, Bar:
		second, third, w, d := s.Width, s.Thickness, "width", "thickness"
		if s.Kind == Bar {
			second, third, w, d = s.Breadth, s.Depth, "breadth", "depth"
		}
		L, W, T := p.Give("L", "length", s.Length, "cm"), p.Give("w", w, second, "cm"), p.Give("T", d, third, "cm")
		volume(L*W*T, "L * w * T")
		return surface(2*(L*W+L*T+W*T), "2 * (L*w + L*T + w*T)")
	case Cylinder:
		D, H := p.Give("D", "diameter", s.Diameter, "cm"), p.Give("H", "height", s.Height, "cm")
		volume(math.Pi/4*D*D*H, "pi / 4 * pow(D, 2) * H")
		return surface(math.Pi*D*H+math.Pi/2*D*D, "pi * D * H + pi / 2 * pow(D, 2)")
	case Tube:
		D, d, H := p.Give("D", "outside diameter", s.Diameter, "cm"), p.Give("d", "bore", s.Inner, "cm"), p.Give("H", "length", s.Height, "cm")
		fb := working.GiveOpt(p, "f_b", "share of full cooling by the bore", s.Bore, "1")
		volume(math.Pi/4*(D-d)*(D+d)*H, "pi / 4 * (D - d) * (D + d) * H")
		return surface(math.Pi*(D+fb*d)*H+math.Pi/2*(D-d)*(D+d), "pi * (D + f_b * d) * H + pi / 2 * (D - d) * (D + d)")
	case Sphere:
		D := p.Give("D", "diameter", s.Diameter, "cm")
		volume(math.Pi/6*D*D*D, "pi / 6 * pow(D, 3)")
		return surface(math.Pi*D*D, "pi * pow(D, 2)")
	}
	panic("feed: no kind " + string(s.Kind)) // form.Ready has refused it
}

// joined is the surface of one section that does not cool, A_j.
func (f *feeding) joined(b *body, i int) float64 {
	p := b.p
	sum := working.GiveOpt(p, "A_r", "surface under risers", f.in.Sections[i].Covered, "cm^2")
	terms := []string{"A_r"}
	for k, pair := range f.links.joints {
		other := pair[0]
		if pair[0] == i {
			other = pair[1]
		} else if pair[1] != i {
			continue
		}
		a, c := fmt.Sprintf("a_%d", k+1), fmt.Sprintf("c_%d", k+1)
		sum += p.Give(a, "contact with "+sectionName(f.in.Sections[other], other), f.in.Joints[k].Area, "cm^2") *
			p.Number(c, "how many such places", float64(f.in.Joints[k].Count.V), "1") / b.n
		terms = append(terms, a+" * "+c+" / n")
	}
	return p.Step("A_j", "surface that is joined or covered", sum, "cm^2", strings.Join(terms, " + "), chvorinov)
}

// times are the freezing times of a modulus, where the constant is known.
func (f *feeding) times(p *working.Paper, symbol string, M float64) (mid, low, high quantity.Opt[quantity.Time]) {
	if !f.timed {
		return mid, low, high
	}
	rule := source.Chvorinov.Memory("t = C (V/A)²")
	time := func(t, what, c string, C float64) quantity.Opt[quantity.Time] {
		return quantity.Some(quantity.Time(p.Step(t, what, C*M*M*100, "s", c+" * pow("+symbol+", 2)", rule)))
	}
	return time("t_f", "freezing time", "C", f.C), time("t_lo", "freezing time, at least", "C_lo", f.Clow), time("t_hi", "freezing time, at most", "C_hi", f.Chigh)
}

func cm(v float64) quantity.Length   { return quantity.From[quantity.Length](v, "cm") }
func cm2(v float64) quantity.Area    { return quantity.From[quantity.Area](v, "cm^2") }
func cm3(v float64) quantity.Volume  { return quantity.From[quantity.Volume](v, "cm^3") }
func share(v float64) quantity.Ratio { return quantity.From[quantity.Ratio](v, "of 1") }
