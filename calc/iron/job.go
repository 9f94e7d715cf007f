package iron

import (
	"fmt"
	"math"

	"pourwright/calc/alloy"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// job is one iron on its way to the answer.
type job struct {
	in  Input
	out Output
	p   *working.Paper

	a       analysis
	CE, CEL float64 // per cent
	Sc      float64
	low     float64 // lowest and highest strength, MPa
	high    float64
	least   float64 // carbon equivalent that keeps the wall grey, per cent
	pour    alloy.Figure[quantity.Temperature]
}

func percent(v float64) quantity.Ratio       { return quantity.From[quantity.Ratio](v, "%") }
func celsius(v float64) quantity.Temperature { return quantity.From[quantity.Temperature](v, "degC") }
func megapascal(v float64) quantity.Pressure { return quantity.From[quantity.Pressure](v, "MPa") }
func inches(v float64) quantity.Length       { return quantity.From[quantity.Length](v, "in") }
func known[T any](v T) quantity.Opt[T]       { return quantity.Some(v) }

// read puts the analysis on the paper.
func (j *job) read() {
	p := j.p
	j.a.C = p.Give("C", "carbon", j.in.Carbon, "%")
	j.a.Si = p.Give("Si", "silicon", j.in.Silicon, "%")
	for _, e := range []struct {
		symbol, what string
		given        quantity.Opt[quantity.Ratio]
		to           *float64
	}{
		{"Mn", "manganese", j.in.Manganese, &j.a.Mn}, {"P", "phosphorus", j.in.Phosphorus, &j.a.P}, {"S", "sulphur", j.in.Sulphur, &j.a.S},
		{"Ni", "nickel", j.in.Nickel, &j.a.Ni}, {"Cr", "chromium", j.in.Chromium, &j.a.Cr},
	} {
		if e.given.Known() {
			*e.to = p.Give(e.symbol, e.what, e.given.V, "%")
		} else {
			p.Const(e.symbol, e.what+", not given", 0, "%", source.Practice("what is not given counts as none"))
		}
	}
}

func (j *job) equivalents() {
	for i, r := range readings {
		v := j.p.Sub(fmt.Sprintf("equivalents[%d]", i)).Step("E", "carbon equivalent", r.of(j.a), "%", r.formula, r.source)
		j.out.Equivalents = append(j.out.Equivalents, Reading{r.name, percent(v)})
	}
	j.CE = j.p.Step("CE", "carbon equivalent", readings[0].of(j.a), "%", "C + (Si + P) / 3", readings[0].source)
	j.CEL = j.p.Step("CEL", "carbon equivalent for the liquidus", readings[1].of(j.a), "%", "C + Si / 4 + P / 2", readings[1].source)
	j.out.CE, j.out.CEL = percent(j.CE), percent(j.CEL)
	switch {
	case j.CE < eutecticLow:
		j.out.Kind = "hypo-eutectic"
	case j.CE <= eutecticHigh:
		j.out.Kind = "eutectic, as near as the sources agree"
	default:
		j.out.Kind = "hyper-eutectic"
	}
}

func (j *job) saturations() {
	for i, d := range degrees {
		p := j.p.Sub(fmt.Sprintf("saturations[%d]", i))
		e := p.Const("C_E", "carbon of the plain eutectic", d.eutectic, "%", d.source)
		v := p.Step("S", "degree of saturation", d.of(j.a, e), "1", d.formula, d.source)
		j.out.Saturations = append(j.out.Saturations, Degree{d.name, quantity.Number(v)})
	}
	d := degrees[0]
	e := j.p.Const("C_E", "carbon of the plain eutectic", d.eutectic, "%", d.source)
	j.Sc = j.p.Step("S_c", "degree of saturation", d.of(j.a, e), "1", "C / (C_E - 0.31 * Si - 0.27 * P)", d.source)
	j.out.Saturation = quantity.Number(j.Sc)
}

// temperatures are liquidus, eutectic and pouring range. The lines of the
// liquidus end at the eutectic; above it the graphite's own liquidus rises
// again, and no formula of the facts in hand has it.
func (j *job) temperatures() {
	p := j.p
	from := source.ASM15.Memory("stable eutectic of iron, carbon and silicon")
	TE0 := p.Const("T_E0", "graphite eutectic without silicon", 1153, "degC", from)
	k := p.Const("k_E", "rise of the graphite eutectic with silicon", 6.7, "K/%", from)
	TE := p.Step("T_E", "graphite eutectic", TE0+k*j.a.Si, "degC", "T_E0 + k_E * Si", from)
	TW := p.Const("T_W0", "white eutectic of iron and carbon", 1147, "degC", source.ASM15.Memory("metastable eutectic, 1145 to 1148 °C"))
	j.out.Eutectic = celsius(TE)
	j.out.WhiteEutectic = celsius(p.Step("T_W", "white eutectic", TW, "degC", "T_W0", source.ASM15.Memory("metastable eutectic, 1145 to 1148 °C; silicon lowers it")))
	iron, ok := alloy.Find(alloy.CodeGreyIron)
	if !ok {
		panic("iron: there is no grey iron among the alloys")
	}
	j.pour = iron.PourFor(j.in.Wall)
	low := p.Lookup("T_1t", "lower end of the usual range", quantity.In(j.pour.Low, "degC"), "degC", j.pour.Source, j.pour.Note)
	high := p.Lookup("T_2t", "upper end of the usual range", quantity.In(j.pour.High, "degC"), "degC", j.pour.Source, j.pour.Note)
	j.out.PourLow = celsius(p.Step("T_1", "usual pouring temperature, from", low, "degC", "T_1t", j.pour.Source))
	j.out.PourHigh = celsius(p.Step("T_2", "usual pouring temperature, to", high, "degC", "T_2t", j.pour.Source))
	if j.CE > eutecticHigh {
		return
	}
	j.liquidus(TE)
}

func (j *job) liquidus(TE float64) {
	p := j.p
	add := func(name string, v float64) { j.out.Liquiduses = append(j.out.Liquiduses, Liquidus{name, celsius(v)}) }
	for i, l := range liquiduses {
		s := j.p.Sub(fmt.Sprintf("liquiduses[%d]", i))
		T0 := s.Const("T_0", "start of the line", l.start, "degC", l.source)
		k := s.Const("k", "fall for each per cent", l.fall, "K/%", l.source)
		add(l.name, s.Step("T_L", "liquidus", T0-k*j.CEL, "degC", "T_0 - k * CEL", l.source))
	}
	s := j.p.Sub(fmt.Sprintf("liquiduses[%d]", len(liquiduses)))
	T0 := s.Const("T_0", "start of the plane", 1625, "degC", koriyama)
	k := s.Const("k", "kelvin for each per cent", 1, "K/%", koriyama)
	add("Koriyama", s.Step("T_L", "liquidus", T0-k*(110*j.a.C+25*j.a.Si-3*j.a.Mn+35*j.a.P+71*j.a.S+2*j.a.Ni+7*j.a.Cr), "degC",
		"T_0 - k * (110 * C + 25 * Si - 3 * Mn + 35 * P + 71 * S + 2 * Ni + 7 * Cr)", koriyama))
	low, high := math.Inf(1), math.Inf(-1)
	for i, l := range j.out.Liquiduses {
		v := p.Carry(fmt.Sprintf("T_L%d", i+1), "liquidus, "+l.Name, quantity.In(l.Value, "degC"), "degC")
		low, high = math.Min(low, v), math.Max(high, v)
	}
	span := source.Derived("the span of the formulas")
	p.Step("T_low", "lowest liquidus", low, "degC", "min(T_L1, T_L2, T_L3, T_L4)", span)
	p.Step("T_high", "highest liquidus", high, "degC", "max(T_L1, T_L2, T_L3, T_L4)", span)
	j.out.LiquidusLow, j.out.LiquidusHigh = known(celsius(low)), known(celsius(high))
	j.out.Range = known(quantity.TempDiff(p.Step("Delta_f", "freezing range", math.Max(high-TE, 0), "K", "max(T_high - T_E, T_E - T_E)", source.Derived("from the liquidus down to the eutectic"))))
	if j.in.PourTemperature.Known() {
		T := p.Give("T_p", "pouring temperature", j.in.PourTemperature.V, "degC")
		j.out.Superheat = known(quantity.TempDiff(p.Step("Delta_T", "superheat", math.Max(T-high, 0), "K", "max(T_p - T_high, T_p - T_p)", source.Derived("over the highest liquidus, never below nothing"))))
	}
}

// balance is the manganese that keeps sulphur from iron sulphide.
func (j *job) balance() {
	if !j.in.Sulphur.Known() {
		return
	}
	p := j.p
	b := p.Const("b", "margin of manganese", margins[j.in.Matrix.V], "%", manganeseRule)
	need := p.Step("Mn_n", "manganese wanted", 1.7*j.a.S+b, "%", "1.7 * S + b", manganeseRule)
	j.out.ManganeseNeeded = known(percent(need))
	if !j.in.Manganese.Known() {
		return
	}
	short := p.Step("Mn_s", "manganese short", math.Max(need-j.a.Mn, 0), "%", "max(Mn_n - Mn, 0)", source.Derived("what is wanted less what is there"))
	j.out.ManganeseShort = known(percent(short))
	if short == 0 {
		return
	}
	x := p.Const("x_F", "manganese in the ferromanganese", 78, "%", ferromanganese)
	r := p.Const("r_F", "recovery of it", 85, "%", ferromanganese)
	j.out.Ferromanganese = known(quantity.Ratio(p.Step("F", "ferromanganese, share of the melt", short/x/r*100, "1", "Mn_s / (x_F * r_F)", source.Derived("mass balance of manganese"))))
}

// spiral is how far the iron runs in the standard spiral of sand. The authors
// write 14.9 CF + 0.05 T − 155 in inches and °F; 155 is 0.05 × 3100 °F, and
// 0.05 in for each °F is 0.09 for each kelvin.
func (j *job) spiral() {
	if !j.in.PourTemperature.Known() {
		return
	}
	p := j.p
	from := source.Porter.Memory("fluidity spiral, as in Heine, Loper and Rosenthal")
	T := p.Give("T_p", "pouring temperature", j.in.PourTemperature.V, "degC")
	k := p.Const("k_C", "inches for each per cent of CEL", 14.9, "in/%", from)
	h := p.Const("k_T", "inches for each kelvin", 0.09, "in/K", from)
	T0 := p.Const("T_F", "temperature at which heat alone makes no length", (3100-32)/1.8, "degC", from)
	L := k*j.CEL + h*(T-T0)
	if L <= 0 || j.CE > eutecticHigh {
		return // outside what the spirals were poured with
	}
	p.Step("L", "length of the spiral", L, "in", "k_C * CEL + k_T * (T_p - T_F)", from)
	j.out.Spiral = known(inches(L))
	L0 := p.Const("L_0", "spiral of fluidity 1", 40, "in", source.Rao.Memory("ch. 4: K is the spiral in inches over 40"))
	j.out.Fluidity = known(quantity.Number(p.Step("K", "fluidity factor", L/L0, "1", "L / L_0", source.Rao.Memory("ch. 4: K is the spiral in inches over 40"))))
}

// strength is that of a bar of 30 mm, below the eutectic.
func (j *job) strength() {
	j.out.Reaches = "none that a formula tells"
	if j.Sc >= 1 {
		return
	}
	p := j.p
	j.low, j.high = math.Inf(1), math.Inf(-1)
	for i, l := range strengths {
		s := j.p.Sub(fmt.Sprintf("strengths[%d]", i))
		R0 := s.Const("R_0", "start of the line", l.start, "MPa", l.source)
		k := s.Const("k", "fall with saturation", l.fall, "MPa", l.source)
		v := s.Step("R_m", "tensile strength, 30 mm bar", R0-k*j.Sc, "MPa", "R_0 - k * S_c", l.source)
		p.Carry(fmt.Sprintf("R_%d", i+1), "strength, "+l.name, v, "MPa")
		j.out.Strengths = append(j.out.Strengths, Strength{l.name, megapascal(v)})
		j.low, j.high = math.Min(j.low, v), math.Max(j.high, v)
	}
	span := source.Derived("the span of the formulas")
	j.out.StrengthLow = known(megapascal(p.Step("R_low", "strength, lowest", j.low, "MPa", "min(R_1, R_2, R_3)", span)))
	j.out.StrengthHigh = known(megapascal(p.Step("R_high", "strength, highest", j.high, "MPa", "max(R_1, R_2, R_3)", span)))
	j.out.Reaches = "less than GJL-150"
	for _, g := range grades {
		if j.low >= g {
			j.out.Reaches = fmt.Sprintf("GJL-%v", g)
		}
	}
	if want := j.wanted(); want > j.low {
		l := strengths[0]
		for _, other := range strengths[1:] { // the one that asks for the least saturation
			if (other.start-want)/other.fall < (l.start-want)/l.fall {
				l = other
			}
		}
		R0 := p.Const("R_0g", "start of the line", l.start, "MPa", l.source)
		k := p.Const("k_g", "fall with saturation", l.fall, "MPa", l.source)
		R := p.Number("R_g", "strength wanted", want, "MPa")
		C := p.Step("C_g", "carbon for the grade wanted", (R0-R)/k*(4.26-0.31*j.a.Si-0.27*j.a.P), "%", "(R_0g - R_g) / k_g * (C_E - 0.31 * Si - 0.27 * P)", source.Derived("the strength and the degree of saturation turned round"))
		j.out.CarbonWanted = known(percent(C))
	}
}

// wanted is the strength of the grade wanted, MPa; 0 where none is.
func (j *job) wanted() float64 {
	for _, g := range grades {
		if j.in.Grade.Known() && fmt.Sprint(g) == j.in.Grade.V {
			return g
		}
	}
	return 0
}

// wall reads what the grades have in the wall, and how much carbon equivalent
// keeps it grey.
func (j *job) wall() {
	row := [5]float64{}
	note := ""
	w := quantity.In(j.in.Wall.V, "mm")
	for _, e := range expected {
		if j.in.Wall.Known() && w > e.over && w <= e.to {
			row, note = e.of, fmt.Sprintf("wall over %v to %v mm", e.over, e.to)
		}
	}
	for i, g := range grades {
		out := Grade{Name: fmt.Sprintf("GJL-%v", g)}
		if row[i] > 0 {
			s := j.p.Sub(fmt.Sprintf("grades[%d]", i))
			t := s.Lookup("R_t", "strength in the table", row[i], "MPa", en1561, note)
			out.Expected = known(megapascal(s.Step("R_w", "expected in the wall", t, "MPa", "R_t", en1561)))
		}
		j.out.Grades = append(j.out.Grades, out)
	}
	if !j.in.Wall.Known() || w > 25 {
		return
	}
	guide := source.Practice("walls to 6 mm want a carbon equivalent of 4.2 and inoculation, 10 to 25 mm 3.9 to 4.1; between, a straight line")
	least := math.Max(math.Min(4.2, 4.2-0.3*(w-6)/4), 3.9)
	t := j.p.Lookup("CE_t", "carbon equivalent of the guide", least, "%", guide, "")
	j.least = j.p.Step("CE_w", "carbon equivalent to keep the wall grey", t, "%", "CE_t", guide)
	j.out.LeastCE = known(percent(j.least))
}
