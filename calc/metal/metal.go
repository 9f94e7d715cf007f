// Package metal answers what metal is being poured: its densities, freezing
// range and heat as the other calculators will use them, each with its source
// and range, and the temperature it is usually poured at for a wall.
package metal

import (
	"pourwright/calc/alloy"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// Input is the metal and the temperature it will be poured at.
type Input struct {
	// Alloy is the casting metal.
	Alloy alloy.Code `json:"alloy" label:"Metal" hint:"What is stamped on the ingot, or the nearest to it"`
	// Wall is the wall that the casting mostly has.
	Wall quantity.Opt[quantity.Length] `json:"wall" label:"Usual wall" hint:"Measure with calipers, away from bosses and ribs" min:"1 mm" max:"500 mm"`
	// PourTemperature is the metal's temperature as it leaves the lip.
	PourTemperature quantity.Opt[quantity.Temperature] `json:"pour_temperature" label:"Pouring temperature" hint:"Thermometer at the lip of the ladle; left empty, the middle of the usual range" min:"150 °C" max:"1750 °C"`
	// Density is the user's own density of the solid metal.
	Density quantity.Opt[quantity.Density] `json:"density" label:"Own density, solid" hint:"Only if you have weighed a sample of known volume" part:"Your own figures" min:"1500 kg/m³" max:"20000 kg/m³"`
	// DensityLiquid is the user's own density of the liquid metal.
	DensityLiquid quantity.Opt[quantity.Density] `json:"density_liquid" label:"Own density, liquid" hint:"From the metal's data sheet, if you trust it more than the list; a few per cent lighter than the solid" min:"1500 kg/m³" max:"20000 kg/m³"`
}

// Output is what the other calculators use.
type Output struct {
	Name            string                  `json:"name" label:"Metal"`
	DensitySolid    quantity.Density        `json:"density_solid" label:"Density, solid" step:"rho_s"`
	DensityLiquid   quantity.Density        `json:"density_liquid" label:"Density, liquid" step:"rho_l"`
	Solidus         quantity.Temperature    `json:"solidus" label:"Solidus" hint:"All solid below this"`
	Liquidus        quantity.Temperature    `json:"liquidus" label:"Liquidus" hint:"All liquid above this"`
	PourLow         quantity.Temperature    `json:"pour_low" label:"Usual pouring temperature, from"`
	PourHigh        quantity.Temperature    `json:"pour_high" label:"Usual pouring temperature, to"`
	PourTemperature quantity.Temperature    `json:"pour_temperature" label:"Pouring temperature" step:"T_p"`
	Superheat       quantity.TempDiff       `json:"superheat" label:"Superheat over liquidus" step:"Delta_T"`
	MinWall         quantity.Length         `json:"min_wall" label:"Least wall that usually runs in sand"`
	Heat            quantity.SpecificEnergy `json:"heat" label:"Heat to melt and superheat" step:"q" hint:"From 25 °C, without furnace losses; a few per cent high, since the heat of the hot solid is taken all the way"`
	Figures         []Figure                `json:"figures"`
}

// Figure is one of the metal's properties as the page of sources shows it.
type Figure struct {
	Name   string       `json:"name" label:"Property"`
	Value  working.Text `json:"value" label:"Value"`
	Source source.Ref   `json:"source" label:"Source"`
}

var ownFigure = source.Own("your own figure goes before the table's")

// ambient is the temperature that stock is taken to start at, 25 °C, as in
// the handbook sums of heat to melt.
const ambient = 298.15

// Describe looks the metal up and works out its pouring temperature.
//
// The usual range is that for light sections at walls up to 10 mm, that for
// heavy sections from 40 mm, and both together in between or while the wall is
// not known. A pouring temperature at or under the liquidus is refused: such
// metal is not liquid.
func Describe(in Input, p *working.Paper) (Output, error) {
	in, faults := form.Ready(in)
	if err := faults.Err(); err != nil {
		return Output{}, err
	}
	a, ok := alloy.Find(in.Alloy)
	if !ok {
		panic("metal: the form let an unknown alloy through")
	}
	out := Output{Name: a.Name, Solidus: a.Solidus.V, Liquidus: a.Liquidus.V, MinWall: a.MinWall.V}
	out.DensitySolid = a.DensitySolid.V
	if in.Density.Known() {
		p.Give("rho_own", "your own density", in.Density.V, "kg/m^3")
		out.DensitySolid = in.Density.V
		p.Step("rho_s", "density of the solid metal", float64(in.Density.V), "kg/m^3", "rho_own", ownFigure)
	} else {
		p.Lookup("rho_t", "density in the table", float64(a.DensitySolid.V), "kg/m^3", a.DensitySolid.Source, "")
		p.Step("rho_s", "density of the solid metal", float64(a.DensitySolid.V), "kg/m^3", "rho_t", a.DensitySolid.Source)
	}
	if in.DensityLiquid.Known() {
		own := p.Give("rho_lown", "your own liquid density", in.DensityLiquid.V, "kg/m^3")
		out.DensityLiquid = quantity.Density(p.Step("rho_l", "density of the liquid metal", own, "kg/m^3", "rho_lown", ownFigure))
	} else {
		table := p.Lookup("rho_lt", "liquid density in the table", float64(a.DensityLiquid.V), "kg/m^3", a.DensityLiquid.Source, "")
		out.DensityLiquid = quantity.Density(p.Step("rho_l", "density of the liquid metal", table, "kg/m^3", "rho_lt", a.DensityLiquid.Source))
	}

	pour := a.PourFor(in.Wall)
	out.PourLow, out.PourHigh = pour.Low, pour.High
	if in.PourTemperature.Known() {
		T := p.Give("T_own", "the temperature you state", in.PourTemperature.V, "K")
		p.Step("T_p", "pouring temperature", T, "K", "T_own", ownFigure)
		out.PourTemperature = in.PourTemperature.V
	} else {
		low := p.Lookup("T_1", "lower end of the usual range", float64(pour.Low), "K", pour.Source, "")
		high := p.Lookup("T_2", "upper end of the usual range", float64(pour.High), "K", pour.Source, "")
		out.PourTemperature = quantity.Temperature(p.Step("T_p", "pouring temperature", (low+high)/2, "K", "(T_1 + T_2) / 2", source.Practice("middle of the usual range, until you state your own")))
	}
	if out.PourTemperature <= a.Liquidus.V {
		return Output{}, form.Faults{{Field: "pour_temperature", Label: "Pouring temperature", Value: quantity.Text(out.PourTemperature),
			Why: working.Say("%v is not above the liquidus of %v, %v; metal that cold is not liquid. Usual is %v to %v", out.PourTemperature, a.Name, a.Liquidus.V, pour.Low, pour.High)}}
	}
	heat(&out, a, p)
	warn(&out, a, in, pour, p)
	out.Figures = figures(a)
	return out, nil
}

// heat is the textbook sum of heat to melt and superheat a kilogram. Between
// solidus and liquidus the metal is part solid and part liquid; the specific
// heat of the liquid, the larger, is taken for it. The heat of the hot solid
// is taken from cold on, so the sum errs on the high side by a few per cent.
func heat(out *Output, a *alloy.Alloy, p *working.Paper) {
	T0 := p.Const("T_0", "temperature of the cold stock", ambient, "K", source.Groover.Memory("example 10.1"))
	Ts := p.Lookup("T_s", "solidus", float64(a.Solidus.V), "K", a.Solidus.Source, "")
	Tl := p.Lookup("T_l", "liquidus", float64(a.Liquidus.V), "K", a.Liquidus.Source, "")
	cs := p.Lookup("c_s", "specific heat of the solid", float64(a.HeatSolid.V), "J/(kg*K)", a.HeatSolid.Source, "")
	cl := p.Lookup("c_l", "specific heat of the liquid", float64(a.HeatLiquid.V), "J/(kg*K)", a.HeatLiquid.Source, "")
	L := p.Lookup("L", "latent heat", float64(a.Latent.V), "J/kg", a.Latent.Source, "")
	Tp := float64(out.PourTemperature)
	out.Superheat = quantity.TempDiff(p.Step("Delta_T", "superheat", Tp-Tl, "K", "T_p - T_l", source.Derived("definition")))
	out.Heat = quantity.SpecificEnergy(p.Step("q", "heat per kilogram poured", cs*(Ts-T0)+L+cl*(Tp-Ts), "J/kg", "c_s * (T_s - T_0) + L + c_l * (T_p - T_s)", source.Groover.Memory("ch. 10, heating the metal; its single melting point split into solidus and liquidus")))
}

func warn(out *Output, a *alloy.Alloy, in Input, pour alloy.Figure[quantity.Temperature], p *working.Paper) {
	if in.PourTemperature.Known() && out.PourTemperature < pour.Low {
		p.Find(working.Finding{Level: working.Mind, Code: "pour-cold", Field: "pour_temperature", Source: pour.Source,
			Text: working.Say("%v is colder than %v is usually poured, %v to %v; expect cold laps and walls that do not run.", out.PourTemperature, a.Name, pour.Low, pour.High),
			Do:   working.Say("Pour at %v or hotter.", pour.Low)})
	}
	if in.PourTemperature.Known() && out.PourTemperature > pour.High {
		p.Find(working.Finding{Level: working.Mind, Code: "pour-hot", Field: "pour_temperature", Source: pour.Source,
			Text: working.Say("%v is hotter than %v is usually poured, %v to %v; expect gas, burnt-on sand and more shrinkage.", out.PourTemperature, a.Name, pour.Low, pour.High),
			Do:   working.Say("Let it cool to %v or below before you pour.", pour.High)})
	}
	if in.Wall.Known() && in.Wall.V < a.MinWall.V {
		p.Find(working.Finding{Level: working.Mind, Code: "wall-thin", Field: "wall", Source: a.MinWall.Source,
			Text: working.Say("A wall of %v is thinner than usually runs in sand with %v, %v.", in.Wall.V, a.Name, a.MinWall.V),
			Do:   working.Say("Thicken the wall to %v, or expect misruns.", a.MinWall.V)})
	}
}

func figures(a *alloy.Alloy) []Figure {
	return []Figure{
		row("Density, solid", a.DensitySolid),
		row("Density, liquid", a.DensityLiquid),
		row("Solidus", a.Solidus),
		row("Liquidus", a.Liquidus),
		row("Latent heat", a.Latent),
		row("Specific heat, solid", a.HeatSolid),
		row("Specific heat, liquid", a.HeatLiquid),
		row("Conductivity, hot solid", a.Conductivity),
		row("Viscosity, liquid", a.Viscosity),
		row("Feeding shrinkage", a.FeedShrinkage),
		row("Melting loss", a.MeltLoss),
	}
}

func row[T quantity.Of](name string, f alloy.Figure[T]) Figure {
	text := working.Say("%v", f.V)
	if f.Low != 0 || f.High != 0 {
		text = working.Say("%v (%v to %v)", f.V, f.Low, f.High)
	}
	return Figure{name, text, f.Source}
}
