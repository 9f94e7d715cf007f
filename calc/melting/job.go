package melting

import (
	"pourwright/calc/alloy"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// figures are those of the metal, with where they are from.
type figures struct {
	name              string
	solidus, liquidus alloy.Figure[quantity.Temperature]
	solid, liquid     alloy.Figure[quantity.SpecificHeat]
	latent            alloy.Figure[quantity.SpecificEnergy]
	alloy             *alloy.Alloy // nil for the user's own
}

var own = source.Own("your own figure")

func figuresOf(in Input) figures {
	if in.Figures.V == "own" {
		melting := alloy.Figure[quantity.Temperature]{V: in.MeltingPoint, Source: own}
		return figures{"the metal", melting, melting, alloy.Figure[quantity.SpecificHeat]{V: in.HeatSolid, Source: own},
			alloy.Figure[quantity.SpecificHeat]{V: in.HeatLiquid, Source: own}, alloy.Figure[quantity.SpecificEnergy]{V: in.Latent, Source: own}, nil}
	}
	a, ok := alloy.Find(in.Alloy)
	if !ok {
		panic("melting: the form let an unknown alloy through")
	}
	return figures{a.Name, a.Solidus, a.Liquidus, a.HeatSolid, a.HeatLiquid, a.Latent, a}
}

// fuelOf is the fuel that is burned, or current.
func fuelOf(in Input) Fuel {
	usual := in.Furnace.V.find().fuel
	if usual == current {
		return current
	}
	return in.Fuel.Or(usual)
}

func check(in Input) form.Faults {
	var faults form.Faults
	add := func(field, label, value string, why working.Text) {
		faults = append(faults, form.Fault{Field: field, Label: label, Value: value, Why: why})
	}
	if in.Tap.Known() && in.Superheat.Known() {
		add("superheat", "Superheat over the liquidus", quantity.Text(in.Superheat.V), working.Say("a temperature to melt to, %v, stands here too; give one of the two", in.Tap.V))
	}
	if !in.Tap.Known() && !in.Superheat.Known() && in.Figures.V == "own" {
		faults = append(faults, form.Fault{Field: "tap", Label: "Temperature to melt to", Why: working.Say("not filled in yet"), Missing: true})
	}
	burns := fuelOf(in)
	if in.Power.Known() && in.FuelRate.Known() && burns != current {
		add("fuel_rate", "Fuel burned", quantity.Text(in.FuelRate.V), working.Say("a power, %v, stands here too; give one of the two", in.Power.V))
	}
	if burns == current || burns.find().volume == 0 {
		return faults
	}
	name := burns.find().name
	if in.FuelRate.Known() {
		add("fuel_rate", "Fuel burned", quantity.Text(in.FuelRate.V), working.Say("%s is measured by volume here; give the burner's power instead", name))
	}
	if in.HeatingValue.Known() {
		add("heating_value", "Own heating value", quantity.Text(in.HeatingValue.V), working.Say("%s is measured by volume here; a heating value by mass does not fit it", name))
	}
	return faults
}

// job is one melt on its way to the answer: J, kg, s and K inside.
type job struct {
	in    Input
	out   Output
	p     *working.Paper
	metal figures

	total, low, high float64 // J
}

var textbook = source.Groover.Memory("ch. 10, heating the metal; its single melting point split into solidus and liquidus")

// heat is the sum of the textbook: the solid to the solidus, the latent heat,
// and the liquid from there on. Between solidus and liquidus the specific heat
// of the liquid, the larger, is taken.
func (j *job) heat() form.Faults {
	p, f := j.p, j.metal
	M := p.Give("M", "charge", j.in.Mass, "kg")
	T0 := working.GiveOpt(p, "T_0", "temperature of the stock", j.in.Start, "K")
	Ts := p.Lookup("T_s", "solidus", float64(f.solidus.V), "K", f.solidus.Source, f.solidus.Note)
	Tl := p.Lookup("T_l", "liquidus", float64(f.liquidus.V), "K", f.liquidus.Source, f.liquidus.Note)
	cs := p.Lookup("c_s", "specific heat, solid", float64(f.solid.V), "J/(kg*K)", f.solid.Source, f.solid.Note)
	cl := p.Lookup("c_l", "specific heat, liquid", float64(f.liquid.V), "J/(kg*K)", f.liquid.Source, f.liquid.Note)
	L := p.Lookup("L", "latent heat", float64(f.latent.V), "J/kg", f.latent.Source, f.latent.Note)
	j.out.Liquidus = f.liquidus.V
	var T float64
	field, value := "tap", quantity.Text(j.in.Tap.V)
	switch {
	case j.in.Tap.Known():
		t := p.Give("T_own", "the temperature that you state", j.in.Tap.V, "K")
		T = p.Step("T_t", "temperature melted to", t, "K", "T_own", own)
	case j.in.Superheat.Known():
		D := p.Give("Delta_T", "superheat", j.in.Superheat.V, "K")
		T = p.Step("T_t", "temperature melted to", Tl+D, "K", "T_l + Delta_T", source.Derived("definition"))
	default:
		usual := f.alloy.PourFor(quantity.Opt[quantity.Length]{})
		t := p.Lookup("T_u", "middle of the usual pouring range", float64(usual.V), "K", usual.Source, usual.Note)
		T = p.Step("T_t", "temperature melted to", t, "K", "T_u", usual.Source)
	}
	if T <= Tl {
		return form.Faults{{Field: field, Label: "Temperature to melt to", Value: value,
			Why: working.Say("%v is not above the liquidus of %s, %v; metal that cold is not liquid", quantity.Temperature(T), f.name, f.liquidus.V)}}
	}
	if T0 >= Ts {
		return form.Faults{{Field: "start", Label: "Stock as charged", Value: quantity.Text(j.in.Start.V),
			Why: working.Say("%v is not below the solidus of %s, %v; stock that hot has begun to melt", j.in.Start.V, f.name, f.solidus.V)}}
	}
	q := p.Step("q", "heat for each kilogram", cs*(Ts-T0)+L+cl*(T-Ts), "J/kg", "c_s * (T_s - T_0) + L + c_l * (T_t - T_s)", textbook)
	Q := p.Step("Q", "heat in the metal", M*q, "J", "M * q", textbook)
	j.out.Tap, j.out.HeatEach, j.out.Heat = quantity.Temperature(T), quantity.SpecificEnergy(q), quantity.Energy(Q)
	j.out.HeatElectric = working.Say("%v, %v", quantity.FormatIn(j.out.Heat, "kWh"), quantity.FormatIn(j.out.HeatEach, "kWh/t"))
	j.total = Q
	if j.in.FirstHeat {
		x := working.GiveOpt(p, "x", "heat of crucible and lining over that of the metal", j.in.Lining, "1")
		j.total = p.Step("Q_t", "heat with crucible and lining", Q*(1+x), "J", "Q * (1 + x)", source.Practice("20 to 50 % more for the first melt of the day"))
	} else {
		p.Step("Q_t", "heat with crucible and lining", Q, "J", "Q", source.Practice("crucible and lining are hot"))
	}
	j.out.HeatToGive = quantity.Energy(j.total)
	return nil
}

// energy is what the furnace wants for it.
func (j *job) energy() {
	p := j.p
	var low, high float64
	from := own
	if j.in.Efficiency.Known() {
		e := p.Give("eta", "your own efficiency", j.in.Efficiency.V, "1")
		low = p.Step("eta_1", "efficiency, from", e, "1", "eta", own)
		high = p.Step("eta_2", "efficiency, to", e, "1", "eta", own)
	} else {
		f := j.in.Furnace.V.find()
		from = f.efficiency.Source
		a := p.Lookup("eta_t1", "efficiency, lower end", float64(f.efficiency.Low), "1", from, f.name)
		b := p.Lookup("eta_t2", "efficiency, upper end", float64(f.efficiency.High), "1", from, f.name)
		low = p.Step("eta_1", "efficiency, from", a, "1", "eta_t1", from)
		high = p.Step("eta_2", "efficiency, to", b, "1", "eta_t2", from)
	}
	j.out.EfficiencyLow, j.out.EfficiencyHigh = quantity.Ratio(low), quantity.Ratio(high)
	definition := source.Derived("efficiency is heat given over energy put in")
	j.low = p.Step("E_1", "energy to put in, from", j.total/high, "J", "Q_t / eta_2", definition)
	j.high = p.Step("E_2", "energy to put in, to", j.total/low, "J", "Q_t / eta_1", definition)
	j.out.EnergyLow, j.out.EnergyHigh = quantity.Energy(j.low), quantity.Energy(j.high)
	each := func(E float64) string {
		return quantity.FormatIn(quantity.SpecificEnergy(E/float64(j.in.Mass)), "kWh/t")
	}
	j.out.Electric = working.Say("%v to %v, %v to %v", quantity.FormatIn(j.out.EnergyLow, "kWh"), quantity.FormatIn(j.out.EnergyHigh, "kWh"), each(j.low), each(j.high))
	if a := j.metal.alloy; a != nil && (a.Family == alloy.GreyIron || a.Family == alloy.DuctileIron) && j.in.Furnace.V == "induction" {
		e1 := p.Lookup("e_t1", "current in practice, at best", float64(coreless.Low), "J/kg", coreless.Source, "")
		e2 := p.Lookup("e_t2", "current in practice, usual at most", float64(coreless.High), "J/kg", coreless.Source, "")
		j.out.PracticeLow = quantity.Some(quantity.SpecificEnergy(p.Step("e_1", "current in practice, at best", e1, "J/kg", "e_t1", coreless.Source)))
		j.out.PracticeHigh = quantity.Some(quantity.SpecificEnergy(p.Step("e_2", "current in practice, usual at most", e2, "J/kg", "e_t2", coreless.Source)))
	}
}

// fuel is what is burned for it.
func (j *job) fuel() {
	burns := fuelOf(j.in)
	if burns == current {
		j.out.Fuel = "Electric current"
		return
	}
	p, f := j.p, burns.find()
	j.out.Fuel = f.name
	from := source.Derived("energy over heating value")
	if f.volume > 0 {
		h := p.Lookup("H_V", "lower heating value, for each cubic metre at 0 °C", f.volume*1e6, "J/m^3", f.source, f.name)
		j.out.FuelVolumeLow = quantity.Some(quantity.Volume(p.Step("V_1", "fuel gas, from", j.low/h, "m^3", "E_1 / H_V", from)))
		j.out.FuelVolumeHigh = quantity.Some(quantity.Volume(p.Step("V_2", "fuel gas, to", j.high/h, "m^3", "E_2 / H_V", from)))
		return
	}
	h := j.heatingValue(f)
	j.out.FuelLow = quantity.Some(quantity.Mass(p.Step("m_1", "fuel, from", j.low/h, "kg", "E_1 / H", from)))
	j.out.FuelHigh = quantity.Some(quantity.Mass(p.Step("m_2", "fuel, to", j.high/h, "kg", "E_2 / H", from)))
}

func (j *job) heatingValue(f fuel) float64 {
	if j.in.HeatingValue.Known() {
		return j.p.Give("H", "your own heating value", j.in.HeatingValue.V, "J/kg")
	}
	return j.p.Lookup("H", "lower heating value", float64(f.mass.V), "J/kg", f.source, f.name)
}

// time is that of the melt alone, all energy going in at one rate.
func (j *job) time() {
	p := j.p
	burns := fuelOf(j.in)
	var P float64
	switch {
	case j.in.Power.Known():
		given := p.Give("P_own", "power", j.in.Power.V, "W")
		P = p.Step("P", "power put in", given, "W", "P_own", own)
	case j.in.FuelRate.Known() && burns != current:
		m := p.Give("m_f", "fuel burned", j.in.FuelRate.V, "kg/s")
		P = p.Step("P", "power put in", m*j.heatingValue(burns.find()), "W", "m_f * H", source.Derived("heat of the fuel"))
	default:
		return
	}
	j.out.Power = quantity.Some(quantity.Power(P))
	from := source.Derived("energy over power")
	j.out.TimeLow = quantity.Some(quantity.Time(p.Step("t_1", "time to melt, from", j.low/P, "s", "E_1 / P", from)))
	j.out.TimeHigh = quantity.Some(quantity.Time(p.Step("t_2", "time to melt, to", j.high/P, "s", "E_2 / P", from)))
}

// longMelt is where a crucible's losses begin to win.
const longMelt = 3 * 3600 // s

func (j *job) remark() {
	say := working.Say
	find := func(level working.Level, code, field string, from source.Ref, text, do working.Text) {
		j.p.Find(working.Finding{Level: level, Code: code, Field: field, Source: from, Text: text, Do: do})
	}
	f := j.in.Furnace.V.find()
	if !j.in.Efficiency.Known() {
		ratio := j.high / j.low
		find(working.Note, "efficiency-band", "efficiency", f.efficiency.Source,
			say("Furnaces of this kind put %v to %v of their energy into the metal, so the need is known only within a factor of %v.", f.efficiency.Low, f.efficiency.High, quantity.Number(ratio)),
			say("Weigh the fuel or read the meter over one melt, and put in your own efficiency."))
	}
	if a := j.metal.alloy; a != nil {
		usual := a.PourFor(quantity.Opt[quantity.Length]{})
		if over := j.out.Tap - usual.High; over > 100 {
			find(working.Mind, "melted-hot", "tap", usual.Source,
				say("%v is %v over the hottest that %s is usually poured, %v: it burns off alloy, takes up gas and eats the lining.", j.out.Tap, quantity.TempDiff(over), j.metal.name, usual.High),
				say("Melt to %v plus what tapping and carrying cost, seldom more than 60 °C.", usual.High))
		}
		if j.out.Tap < usual.Low {
			find(working.Mind, "melted-cold", "tap", usual.Source,
				say("%v is under the coolest that %s is usually poured, %v, before anything is lost in tapping and carrying.", j.out.Tap, j.metal.name, usual.Low),
				say("Melt to %v plus what tapping and carrying cost.", usual.Low))
		}
	}
	if low, high := j.out.TimeLow, j.out.TimeHigh; high.Known() && low.V > longMelt {
		find(working.Mind, "melt-long", "power", source.Practice("a furnace that takes hours over a melt spends its heat on the room"),
			say("At %v this melt takes %v at best. So slow a furnace may never reach the temperature: what it loses to the room grows with every hour, and no band holds here.", j.out.Power.V, low.V),
			say("Melt less, or bring in at least %v.", quantity.Power(j.low/longMelt)))
	}
	if e := j.out.PracticeLow; e.Known() {
		low, high := quantity.SpecificEnergy(j.low/float64(j.in.Mass)), quantity.SpecificEnergy(j.high/float64(j.in.Mass))
		if high < e.V || low > j.out.PracticeHigh.V {
			find(working.Mind, "practice-differs", "efficiency", coreless.Source,
				say("This comes to %s to %s; coreless furnaces in practice take %s to %s for iron.", kWh(low), kWh(high), kWh(e.V), kWh(j.out.PracticeHigh.V)),
				say("Check the efficiency and the temperature that you put in."))
		}
	}
	if burns := fuelOf(j.in); burns != current && burns.find().gas {
		find(working.Note, "fuel-gas", "fuel", source.NFPA.Memory("54 and 58"),
			say("%s is a fuel gas.", burns.find().name),
			say("Have piping, regulator and flame safeguard set up by a licensed fitter to the local code; burn it only with air in and flue gas out."))
	}
}

func kWh(q quantity.SpecificEnergy) string { return quantity.FormatIn(q, "kWh/t") }
