package charge

import (
	"fmt"

	"pourwright/calc/figure"
	"pourwright/calc/form"
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// Addition is what goes into the melt or the ladle after the charge: to raise
// an element by so much, or as a dose on the melt's mass.
type Addition struct {
	// Kind picks the usual content, recovery and dose.
	Kind Kind `json:"kind" label:"Addition" hint:"What stands on the bag"`
	// Name for one of your own.
	Name string `json:"name" label:"Name" hint:"What stands on the bag"`
	// Element that it brings; left out, that of the kind.
	Element quantity.Opt[Element] `json:"element" label:"Element" hint:"Leave empty for that of the addition"`
	// Content is the element's share of the addition.
	Content quantity.Opt[quantity.Ratio] `json:"content" label:"Content of the element" hint:"From the bag; leave empty for the usual" min:"0.1 %" max:"100 %"`
	// Recovery is the share of the element that the melt keeps.
	Recovery quantity.Opt[quantity.Ratio] `json:"recovery" label:"Recovery" hint:"Leave empty for the usual" min:"1 %" max:"100 %"`
	// Raise is by how much the element is to rise, a share of the melt.
	Raise quantity.Opt[quantity.Ratio] `json:"raise" label:"Raise the element by" hint:"In points of the analysis; or give a dose" min:"0 %" max:"5 %"`
	// Dose is the addition as a share of the melt.
	Dose quantity.Opt[quantity.Ratio] `json:"dose" label:"Dose on the melt" hint:"Leave both empty for the usual dose" min:"0 %" max:"10 %"`
}

// Kind names an addition.
type Kind string

// additive is what is usual of an addition.
type additive struct {
	code, name string
	element    Element
	content    figure.Of[quantity.Ratio]
	recovery   figure.Of[quantity.Ratio]
	dose       figure.Of[quantity.Ratio] // zero where there is none
}

func per(v, low, high float64, from source.Ref, note string) figure.Of[quantity.Ratio] {
	return figure.New[quantity.Ratio](v, low, high, "%", from, note)
}

var (
	bag        = source.Practice("usual content, recalled; the bag says better")
	ladleDose  = source.Brown.Memory("ladle inoculation of grey iron")
	phosphor   = source.Navy.Memory("deoxidising copper alloys: 2 oz of 15 % phosphor copper for each 100 lb")
	tabletDose = source.Practice("usual dose of degassing tablets, 0.2 to 0.5 %, recalled; the supplier's sheet goes before it")

	// additives in the order of the form; the own one, without figures, last.
	additives = []additive{
		{"fesi-75", "Ferrosilicon, 75 % Si", "Si", per(75, 72, 78, bag, ""), per(92.5, 90, 95, alloying, ""), figure.Of[quantity.Ratio]{}},
		{"fesi-45", "Ferrosilicon, 45 % Si", "Si", per(45, 42, 47, bag, ""), per(92.5, 90, 95, alloying, ""), figure.Of[quantity.Ratio]{}},
		{"femn", "Ferromanganese", "Mn", per(78, 75, 80, bag, ""), per(85, 80, 90, alloying, ""), figure.Of[quantity.Ratio]{}},
		{"carburiser", "Carburiser, clean graphite", "C", per(98, 95, 99, bag, ""), per(90, 85, 95, alloying, ""), figure.Of[quantity.Ratio]{}},
		{"inoculant", "Inoculant on 75 % ferrosilicon", "Si", per(75, 70, 78, bag, ""), per(92.5, 90, 95, alloying, ""), per(0.2, 0.1, 0.3, ladleDose, "0.3 to 0.8 % after the magnesium in ductile iron")},
		{"phosphor-copper", "Phosphor copper, 15 % P", "P", per(15, 14, 15, phosphor, ""), per(100, 0, 0, source.Practice("what does not burn off stays in the melt"), "what takes up oxygen leaves as slag, so less stays"), per(0.125, 0.06, 0.25, phosphor, "")},
		{"degasser", "Degassing tablet", "", figure.Of[quantity.Ratio]{}, allOfIt, per(0.3, 0.2, 0.5, tabletDose, "")},
		{"own", "Own addition", "", figure.Of[quantity.Ratio]{}, allOfIt, figure.Of[quantity.Ratio]{}},
	}
)

// Choices lists the additions for a form.
func (Kind) Choices() [][2]string {
	out := make([][2]string, len(additives))
	for i, a := range additives {
		out[i] = [2]string{a.code, a.name}
	}
	return out
}

func (k Kind) find() additive {
	for _, a := range additives {
		if a.code == string(k) {
			return a
		}
	}
	panic("charge: the form let an unknown addition through")
}

func (a Addition) label() string {
	if a.Name != "" {
		return a.Name
	}
	return a.Kind.find().name
}

// element is what it brings, empty for none.
func (a Addition) element() Element { return a.Element.Or(a.Kind.find().element) }

// Added is what goes in of one addition.
type Added struct {
	Name    string                       `json:"name" label:"Addition"`
	Mass    quantity.Mass                `json:"mass" label:"To add" step:"m"`
	Dose    quantity.Ratio               `json:"dose" label:"Dose on the melt" step:"d"`
	Element string                       `json:"element" label:"Element"`
	Rise    quantity.Opt[quantity.Ratio] `json:"rise" label:"Raises it by" step:"r"`
}

func checkAdditions(additions []Addition) form.Faults {
	var faults form.Faults
	for i, a := range additions {
		kind := a.Kind.find()
		path, name := fmt.Sprintf("additions[%d]", i), a.label()
		missing := func(field, label string) {
			faults = append(faults, form.Fault{Field: path + field, Label: name + label, Why: working.Say("not filled in yet"), Missing: true})
		}
		brings := a.element() != ""
		switch {
		case a.Raise.Known() && a.Dose.Known():
			faults = append(faults, form.Fault{Field: path + ".dose", Label: name + ", dose on the melt", Value: quantity.Text(a.Dose.V),
				Why: working.Say("a rise of the element and a dose both stand here; give one of the two")})
		case !a.Raise.Known() && !a.Dose.Known() && kind.dose.V == 0:
			missing(".raise", ", raise the element by")
		case a.Raise.Known() && !brings:
			missing(".element", ", element")
		}
		if brings && kind.content.V == 0 && !a.Content.Known() {
			missing(".content", ", content of the element")
		}
	}
	return faults
}

// addition works one out. The addition's own mass is not counted to the melt:
// for a dose of 1 % that puts the rise 1 % of itself too high.
func (j *job) addition(i int, a Addition) {
	p := j.p.Sub(fmt.Sprintf("additions[%d]", i))
	kind := a.Kind.find()
	out := Added{Name: a.label(), Element: a.element().name()}
	brings := a.element() != ""
	if !brings {
		out.Element = "none"
	}
	var x, r float64
	if brings {
		x = figureOr(p, "x", "content of the element", a.Content, kind.content)
		r = figureOr(p, "r_e", "recovery", a.Recovery, kind.recovery)
	}
	from := source.Derived("mass balance of the element; the addition's own mass is not counted to the melt")
	var d float64
	if a.Raise.Known() {
		D := p.Give("D", "rise wanted of the element", a.Raise.V, "1")
		d = p.Step("d", "dose on the melt", D/(x*r), "1", "D / (x * r_e)", from)
	} else {
		t := figureOr(p, "d_u", "dose", a.Dose, kind.dose)
		d = p.Step("d", "dose on the melt", t, "1", "d_u", source.Practice("the dose as given"))
	}
	out.Dose = share(d)
	out.Mass = kg(p.Step("m", "mass to add", d*j.melt, "kg", "d * M", from))
	if brings {
		rise := p.Step("r", "rise of the element", d*x*r, "1", "d * x * r_e", from)
		out.Rise = quantity.Some(share(rise))
		j.rises[a.element()] = append(j.rises[a.element()], rise)
	}
	j.out.Additions = append(j.out.Additions, out)
	j.findAddition(i, a, p)
}

// figureOr puts the user's own figure on the paper, or the usual one.
func figureOr(p *working.Paper, symbol, what string, own quantity.Opt[quantity.Ratio], usual figure.Of[quantity.Ratio]) float64 {
	if own.Known() {
		return p.Give(symbol, what, own.V, "1")
	}
	return p.Lookup(symbol, what, float64(usual.V), "1", usual.Source, usual.Note)
}

func (j *job) findAddition(i int, a Addition, p *working.Paper) {
	field := func(name string) string { return fmt.Sprintf("additions[%d].%s", i, name) }
	switch a.Kind {
	case "degasser":
		p.Find(working.Finding{Level: working.Mind, Code: "tablet-restricted", Field: field("kind"), Source: source.Practice("tablets of hexachloroethane are restricted in the European Union; inert gas is preferred"),
			Text: working.Say("Degassing tablets may hold hexachloroethane, which is restricted in many places, and they give off chlorine and chloride fume."),
			Do:   working.Say("Degas with a lance of dry argon or nitrogen for 5 to 15 min instead; ask the supplier and the local authority before you use tablets.")})
	case "phosphor-copper":
		p.Find(working.Finding{Level: working.Note, Code: "phosphor-where", Field: field("kind"), Source: source.Navy.Memory("deoxidising copper alloys"),
			Text: working.Say("Phosphor copper is for tin bronze and gunmetal; it does nothing good in aluminium bronze or high-zinc brass, and ruins high-conductivity copper."),
			Do:   working.Say("Leave it out of those.")})
	case "inoculant":
		p.Find(working.Finding{Level: working.Note, Code: "inoculant-fades", Field: field("dose"), Source: ladleDose,
			Text: working.Say("Inoculation fades within 8 to 12 min."),
			Do:   working.Say("Put it in the stream as the ladle fills, and pour the last mould before it has faded.")})
	}
	usual := a.Kind.find().dose
	if a.Dose.Known() && usual.Ranged() && (a.Dose.V < usual.Low || a.Dose.V > usual.High) {
		p.Find(working.Finding{Level: working.Mind, Code: "dose-unusual", Field: field("dose"), Source: usual.Source,
			Text: working.Say("A dose of %v of %v is outside what is usual, %v to %v.", a.Dose.V, a.label(), usual.Low, usual.High),
			Do:   working.Say("Take %v unless your own melts show better.", usual.V)})
	}
}
