package filling

import (
	"fmt"

	"pourwright/calc/alloy"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

var (
	torricelli = source.Ghosh.Memory("ch. 2, gating: rise of the metal over the gate")
	geometry   = source.Derived("geometry of the slices")
	continuity = source.Derived("continuity")
	upthrust   = source.Rao.Memory("ch. 4, forces acting on the moulding flasks")
	course     = source.Derived("course of the filling")
)

// filling is one mould being filled.
type filling struct {
	in    Input
	a     *alloy.Alloy
	p     *working.Paper
	out   Output
	m     *model
	order []int // of the ingates, from the lowest up
	rho   float64
	takes float64 // flow that the way takes at the start, basin full
	runs  []run
	track []point
	chill chill
}

// Fill follows the filling; see the package comment.
//
// Refused: a cavity or an ingate that stands higher than the metal in the
// basin, which could not fill; an ingate above the cavity; a basin smaller
// than the choke; metal that is not liquid.
func Fill(in Input, p *working.Paper) (Output, error) {
	in, faults := form.Ready(in)
	if len(faults) == 0 {
		faults = consistent(in)
	}
	if err := faults.Err(); err != nil {
		return Output{}, err
	}
	a, ok := alloy.Find(in.Alloy)
	if !ok {
		panic("filling: the form let an unknown alloy through")
	}
	f := &filling{in: in, a: a, p: p}
	f.build()
	f.runs = f.m.march()
	f.track = f.m.track(f.runs)
	f.totals()
	f.extremes()
	f.lift()
	f.front()
	f.moments()
	f.curves()
	f.find()
	return f.out, nil
}

func height(in Input) quantity.Length {
	sum := quantity.Length(0)
	for _, s := range in.Slices {
		sum += s.Height
	}
	return sum
}

// consistent checks what one field alone cannot tell.
func consistent(in Input) (faults form.Faults) {
	add := func(field, label string, value quantity.Any, why working.Text) {
		faults = append(faults, form.Fault{Field: field, Label: label, Value: quantity.Text(value), Why: why})
	}
	top := height(in)
	if top > in.Level*(1+1e-12) {
		add("basin_level", "Metal level over the bottom of the cavity", in.Level, working.Say("the cavity stands %v high, over the level of the metal; it cannot fill", top))
	}
	for i, g := range in.Ingates {
		path := fmt.Sprintf("ingates[%d].height", i)
		switch {
		case g.Height.V >= in.Level*(1-1e-9):
			add(path, "Height over the bottom of the cavity", g.Height.V, working.Say("no metal runs through an ingate as high as the basin's level of %v; it must be lower", in.Level))
		case g.Height.V > top*(1+1e-12):
			add(path, "Height over the bottom of the cavity", g.Height.V, working.Say("the cavity ends at %v; the ingate must not stand higher", top))
		}
	}
	for i, s := range in.Surfaces {
		if s.Height.V > in.Level {
			add(fmt.Sprintf("surfaces[%d].height", i), "Height over the bottom of the cavity", s.Height.V, working.Say("metal does not rise over the basin's level of %v", in.Level))
		}
	}
	least := narrowest(in)
	if in.BasinArea.Known() && in.BasinArea.V < least {
		add("basin_area", "Area of the basin", in.BasinArea.V, working.Say("the narrowest section under it is %v; a basin is wider", least))
	}
	if in.BasinDepth.Known() && in.BasinDepth.V >= in.Level {
		add("basin_depth", "Depth of metal in the basin", in.BasinDepth.V, working.Say("it is part of the %v over the bottom of the cavity and must be less", in.Level))
	}
	return append(faults, coldFaults(in)...)
}

// narrowest is the choke, or the ingates where they are narrower.
func narrowest(in Input) quantity.Area {
	sum := quantity.Area(0)
	for _, g := range in.Ingates {
		sum += g.Area
	}
	return min(sum, in.Choke.Or(sum))
}
