package weight

import (
	"fmt"
	"strings"

	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// sections is what the solids say of the casting, in cm and kg.
type sections struct {
	known    bool
	V, A     float64 // all solids together
	mass     float64
	name     string  // of the solid with the largest modulus
	M        float64 // its modulus
	Vg, Ag   float64 // its volume and cooled surface
	hollowed bool    // something is taken away
}

var adding = source.Derived("sum over the solids")

// solids measures each solid and adds them up: volumes with their sign, cooled
// surfaces of those that are metal, and the largest modulus among these.
func (w *weighing) solids() form.Faults {
	in := w.in.Solids
	if len(in) == 0 {
		return nil
	}
	var plus, minus, surfaces, moduli []string
	s := sections{known: true}
	added := 0.0
	for i, solid := range in {
		sub := w.p.Sub(fmt.Sprintf("solids[%d]", i))
		one := solid.Measure(sub)
		V, Ac, M := quantity.In(one.Volume, "cm^3"), quantity.In(one.Cooling, "cm^2"), quantity.In(one.Modulus, "cm")
		n := sub.Number("n", "how many alike", float64(solid.HowMany()), "1")
		Vn := sub.Step("V_n", "volume of all of them", n*V, "cm^3", "n * V", definition)
		mn := sub.Step("m_n", "weight of all of them", w.rho*Vn*1e-6, "kg", "rho * V_n", definition)
		answer := SolidAnswer{Name: solid.Title(), Role: "added", Volume: cm3(Vn), Area: one.Area, Cooling: one.Cooling, Modulus: one.Modulus, Mass: kg(mn)}

		symbol := fmt.Sprintf("V_%d", i+1)
		w.p.Carry(symbol, "volume of "+solid.Title(), Vn, "cm^3")
		if solid.Taken() {
			answer.Role = "taken away"
			s.hollowed = true
			s.V -= Vn
			minus = append(minus, symbol)
		} else {
			s.V += Vn
			added += Vn
			plus = append(plus, symbol)
			surface, modulus := fmt.Sprintf("A_%d", i+1), fmt.Sprintf("M_%d", i+1)
			s.A += w.p.Carry(surface, "cooled surface of "+solid.Title(), sub.Step("A_n", "cooled surface of all of them", n*Ac, "cm^2", "n * A_c", definition), "cm^2")
			w.p.Carry(modulus, "modulus of "+solid.Title(), M, "cm")
			surfaces, moduli = append(surfaces, surface), append(moduli, modulus)
			if M > s.M {
				s.M, s.Vg, s.Ag, s.name = M, V, Ac, solid.Title()
			}
		}
		w.out.Solids = append(w.out.Solids, answer)
	}
	if s.V <= 1e-9*added {
		return form.Faults{{Field: "solids", Label: "Solids",
			Why: working.Say("%v is taken away and only %v is there to take it from; nothing is left to cast", cm3(added-s.V), cm3(added))}}
	}
	volumes := strings.Join(plus, " + ")
	for _, symbol := range minus {
		volumes += " - " + symbol
	}
	w.p.StepNote("V_s", "volume by the solids", s.V, "cm^3", volumes, adding, "solids are added as they stand: where two overlap, the overlap counts twice unless it is taken away")
	s.mass = w.p.Step("m_s", "weight by the solids", w.rho*s.V*1e-6, "kg", "rho * V_s", definition)
	w.p.StepNote("A_s", "cooled surface", s.A, "cm^2", strings.Join(surfaces, " + "), adding, "metal only; the walls of hollows are not counted, so the modulus comes out on the safe side")
	overall := w.p.Step("M_o", "modulus of the casting as a whole", s.V/s.A, "cm", "V_s / A_s", source.Chvorinov.Memory("modulus V/A, cooled surface only"))
	if !w.in.Modulus.Known() {
		largest := strings.Join(moduli, ", ")
		if len(moduli) > 1 {
			largest = "max(" + largest + ")"
		}
		w.p.StepNote("M_g", "modulus to feed", s.M, "cm", largest, source.Wlodawer.Memory("the heaviest section rules"), "ruled by "+s.name)
	}
	w.p.Carry("V_g", "volume of "+s.name, s.Vg, "cm^3")
	w.p.Carry("A_g", "cooled surface of "+s.name, s.Ag, "cm^2")

	w.sections = s
	w.out.Area, w.out.OverallModulus = quantity.Some(cm2(s.A)), quantity.Some(cm(overall))
	w.out.Modulus, w.out.ModulusOf = quantity.Some(cm(s.M)), s.name
	w.out.SolidsMass = quantity.Some(kg(s.mass))
	return nil
}
