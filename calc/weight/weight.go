package weight

import (
	"pourwright/calc/alloy"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// heaviest is the most metal in one mould, in kg, that this is meant for; above
// it the shop has a feeding engineer.
const heaviest = 20_000

var (
	definition = source.Derived("definition")
	balance    = source.Derived("mass balance")
	ownFigure  = source.Own("your own figure goes before the table's")
)

// weighing is one question on its way to the answer. Numbers are in kg, cm and
// kg/m^3, as on the paper.
type weighing struct {
	in  Input
	out Output
	p   *working.Paper
	a   *alloy.Alloy

	N                    float64 // castings in the mould
	rho, rhoLow, rhoHigh float64
	V, m, mLow, mHigh    float64 // one casting
	sections             sections
	beta                 float64
	mr                   float64 // all risers
	mg, mgLow, mgHigh    float64
}

// Weigh works out what the mould takes.
//
// Refused: solids that take away more than they add, outlines that cross
// themselves, a pattern whose prints and cores leave no casting, a hollow or
// printed pattern without a measured density, a riser that can give no more
// than it shrinks by itself, and moulds of more than 20 t.
func Weigh(in Input, p *working.Paper) (Output, error) {
	in, faults := form.Ready(in)
	faults = append(faults, missing(in)...)
	if len(faults) == 0 {
		faults = mismatched(in)
	}
	if err := faults.Err(); err != nil {
		return Output{}, err
	}
	a, ok := alloy.Find(in.Alloy)
	if !ok {
		panic("weight: the form let an unknown alloy through")
	}
	w := &weighing{in: in, p: p, a: a, N: p.Number("N", "castings in the mould", float64(in.Castings.V), "1")}
	w.out.Metal = a.Name
	w.density()
	for _, work := range []func() form.Faults{w.solids, w.casting, w.risers, w.gating, w.melt} {
		if err := work().Err(); err != nil {
			return Output{}, err
		}
	}
	w.remarks()
	return w.out, nil
}

// density is that of the cold metal: the user's, or the table's with its range.
func (w *weighing) density() {
	const unit = "kg/m^3"
	table := w.a.DensitySolid
	if own := w.in.Density; own.Known() {
		w.p.Give("rho_own", "your own density", own.V, unit)
		w.rho = w.p.Step("rho", "density of the solid metal", quantity.In(own.V, unit), unit, "rho_own", ownFigure)
		w.rhoLow = w.p.Step("rho_low", "density, lower end", w.rho, unit, "rho", ownFigure)
		w.rhoHigh = w.p.Step("rho_high", "density, upper end", w.rho, unit, "rho", ownFigure)
	} else {
		low, high := table.Span()
		w.p.Lookup("rho_t", "density in the table", quantity.In(table.V, unit), unit, table.Source, table.Note)
		w.rho = w.p.Step("rho", "density of the solid metal", quantity.In(table.V, unit), unit, "rho_t", table.Source)
		w.rhoLow = w.p.Lookup("rho_low", "density, lower end of its range", quantity.In(low, unit), unit, table.Source, table.Note)
		w.rhoHigh = w.p.Lookup("rho_high", "density, upper end of its range", quantity.In(high, unit), unit, table.Source, table.Note)
	}
	w.out.Density = quantity.From[quantity.Density](w.rho, unit)
}

func kg(v float64) quantity.Mass       { return quantity.From[quantity.Mass](v, "kg") }
func cm(v float64) quantity.Length     { return quantity.From[quantity.Length](v, "cm") }
func cm2(v float64) quantity.Area      { return quantity.From[quantity.Area](v, "cm^2") }
func cm3(v float64) quantity.Volume    { return quantity.From[quantity.Volume](v, "cm^3") }
func share(v float64) quantity.Ratio   { return quantity.From[quantity.Ratio](v, "of 1") }
func number(v float64) quantity.Number { return quantity.Number(v) }
