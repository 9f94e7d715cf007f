package plan

import (
	"encoding/json"
	"fmt"
	"slices"
	"strings"

	"pourwright/calc/alloy"
	"pourwright/calc/flow"
	"pourwright/calc/form"
	"pourwright/calc/ladle"
	"pourwright/calc/melting"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/reply"
)

// Own are the figures that a shop has measured for itself. They are kept apart
// from every plan; a plan that uses them has them written into its own fields,
// so that it stays whole wherever it goes. Each field is that of a plan by the
// same name and range.
type Own struct {
	Metals  []OwnMetal `json:"metals" label:"Metals" hint:"What you have measured on your own castings, a metal at a time" max:"30"`
	Sand    OwnSand    `json:"sand" label:"Sand"`
	Furnace OwnFurnace `json:"furnace" label:"Furnace"`
	Ladles  []OwnLadle `json:"ladles" label:"Ladles" hint:"Measure each once; a plan then takes its pick" max:"30"`
}

// OwnMetal is what was measured of one metal.
type OwnMetal struct {
	Alloy            alloy.Code                              `json:"alloy" label:"Metal" hint:"What is stamped on the ingot, or the nearest to it"`
	Contraction      quantity.Opt[quantity.Ratio]            `json:"own" label:"Own contraction" hint:"Pattern less casting, over casting: measure both cold" unit:"mm/m,in/ft" min:"0 %" max:"6 %"`
	ContractionHeld  quantity.Opt[quantity.Ratio]            `json:"own_restrained" label:"Own contraction, restrained" hint:"The same between flanges or over a hard core" unit:"mm/m,in/ft" min:"0 %" max:"6 %"`
	FreezingConstant quantity.Opt[quantity.FreezingConstant] `json:"freezing_constant" label:"Own freezing constant" hint:"Time a casting until its open riser is solid; divide by its modulus squared" min:"0.02 s/mm²" max:"100 s/mm²"`
	MeltLoss         quantity.Opt[quantity.Ratio]            `json:"melt_loss" label:"Own melting loss" hint:"Charge weighed less metal tapped, over the charge" min:"0 %" max:"50 %"`
}

// OwnSand is the shop's moulding sand.
type OwnSand struct {
	Sand        quantity.Opt[mouldstuff.Sand]   `json:"sand" label:"Mould material" hint:"What the face against the metal is made of"`
	Binder      quantity.Opt[mouldstuff.Binder] `json:"binder" label:"Binder" hint:"What holds the sand together"`
	Moisture    quantity.Opt[quantity.Ratio]    `json:"moisture" label:"Moisture of the sand" hint:"Weigh 100 g, dry it, weigh it again" min:"0 %" max:"20 %"`
	Density     quantity.Opt[quantity.Density]  `json:"sand_density" label:"Own density of the rammed sand" hint:"Weigh a rammed box of known volume" min:"800 kg/m³" max:"4000 kg/m³"`
	Bearing     quantity.Opt[quantity.Pressure] `json:"bearing" label:"Bearing strength of the mould sand" hint:"Load a rammed block on a known area until it gives" min:"2 kPa" max:"500 kPa"`
	BinderShare quantity.Opt[quantity.Ratio]    `json:"binder_share" label:"Own share of binder" hint:"By weight on the sand, as you mix it" min:"0 %" max:"20 %"`
}

// OwnFurnace is the shop's furnace.
type OwnFurnace struct {
	Furnace      quantity.Opt[melting.Furnace]         `json:"furnace" label:"Furnace" hint:"The one that most melts are made in"`
	Efficiency   quantity.Opt[quantity.Ratio]          `json:"efficiency" label:"Own efficiency" hint:"Heat in the metal over energy put in, from a melt with the fuel weighed or the meter read" min:"1 %" max:"100 %"`
	Fuel         quantity.Opt[melting.Fuel]            `json:"fuel" label:"Fuel" hint:"What stands on the bottle, the tank or the bill" when:"furnace=crucible|reverberatory|cupola"`
	HeatingValue quantity.Opt[quantity.SpecificEnergy] `json:"heating_value" label:"Own heating value" hint:"The lower one, from the seller" when:"furnace=crucible|reverberatory|cupola" min:"5 MJ/kg" max:"60 MJ/kg"`
	Power        quantity.Opt[quantity.Power]          `json:"power" label:"Burner or electrical power" hint:"From the plate on the burner or the furnace" min:"0.1 kW" max:"100000 kW"`
	FuelRate     quantity.Opt[quantity.MassFlow]       `json:"fuel_rate" label:"Or fuel burned" hint:"Weigh the bottle before and after a melt" unit:"kg/h,lb/h" when:"furnace=crucible|reverberatory|cupola" min:"0.05 kg/h" max:"20000 kg/h"`
}

// OwnLadle is one of the shop's ladles.
type OwnLadle struct {
	Name   string                        `json:"name" label:"Name" hint:"What is painted on it"`
	Shape  quantity.Opt[ladle.Shape]     `json:"shape" label:"Inside shape" hint:"Look inside: most widen upwards" default:"cone"`
	Top    quantity.Opt[quantity.Length] `json:"top" label:"Inside diameter at the lip" hint:"Of the lining, not of the shell" min:"40 mm" max:"3 m"`
	Bottom quantity.Opt[quantity.Length] `json:"bottom" label:"Inside diameter at the base" hint:"Of the lining, down at the floor" when:"shape=cone" min:"20 mm" max:"3 m"`
	Depth  quantity.Opt[quantity.Length] `json:"depth" label:"Inside depth to the lip" hint:"From the lowest point of the lip straight down to the base" min:"40 mm" max:"4 m"`
	Lip    flow.Lip                      `json:"lip" label:"Lip"`
	Shell  quantity.Opt[quantity.Mass]   `json:"shell" label:"Shell" hint:"Weigh it empty; lined, if that is how it hangs, and the lining then 0" min:"0 kg" max:"20 t"`
	Lining quantity.Opt[quantity.Mass]   `json:"lining" label:"Lining" hint:"Lined less unlined on the scale" min:"0 kg" max:"20 t"`
	Shank  quantity.Opt[quantity.Mass]   `json:"shank" label:"Shank, bail and tools" hint:"All that hangs on the same hands or hook" min:"0 kg" max:"5 t"`
	Carry  quantity.Opt[ladle.Carry]     `json:"carry" label:"Carried by" hint:"As you use it" default:"hand"`
	Crew   quantity.Opt[int]             `json:"crew" label:"People who carry it" hint:"Only those with their hands on the shank" when:"carry=hand" default:"2" min:"1" max:"8"`
}

// Fill is a blank of a plan that a figure of the shop's fills.
type Fill struct {
	// Path of the field in the plan, and Label its name.
	Path, Label string
	// Value as it was typed: a text, a number or a tick of JSON.
	Value any
}

// OwnChecked is what the shop's own figures come to beside one plan.
type OwnChecked struct {
	// Faults of the figures themselves; what has one fills nothing.
	Faults form.Faults
	// Fills are the plan's blanks that the figures fill, but for the ladle's.
	Fills []Fill
	// Ladles are the shop's, each with the blanks that it would fill; none where
	// the plan has another ladle in it already.
	Ladles []LadleFills
	// Stands are the fields of the plan that hold the shop's figure.
	Stands []string
}

// LadleFills are the blanks of a plan that one ladle would fill.
type LadleFills struct {
	Name  string
	Fills []Fill
}

// target is where a group of the shop's figures goes in a plan.
type target struct {
	// from is a field of the group, to the fields of the plan.
	from string
	to   []string
}

// The places of the figures. A section that stands in sparing is filled only
// where something stands in it already: a figure alone would make it look
// begun.
var (
	metalPlaces = []target{
		{"own", []string{"pattern.own"}}, {"own_restrained", []string{"pattern.own_restrained"}},
		{"freezing_constant", []string{"pour.freezing_constant", "feeding.constant", "cooling.constant"}}, {"melt_loss", []string{"weight.melt_loss"}},
	}
	sandPlaces = append(into("mould", "sand", "binder", "moisture", "sand_density"),
		target{"bearing", []string{"cores.bearing"}}, target{"binder_share", []string{"holddown.binder_share"}})
	furnacePlaces = into("melting", "furnace", "efficiency", "fuel", "heating_value", "power", "fuel_rate")
	ladlePlaces   = into("ladle", "shape", "top", "bottom", "depth", "lip.form", "lip.width", "lip.angle", "lip.radius", "lip.discharge",
		"shell", "lining", "shank", "carry", "crew")
	sparing = []string{"feeding", "cooling", "cores", "holddown"}
)

func into(section string, names ...string) []target {
	var out []target
	for _, n := range names {
		out = append(out, target{n, []string{section + "." + n}})
	}
	return out
}

// CheckOwn reads the shop's figures and a plan, both as they are saved, and
// says what the figures would fill. What the plan says is never touched: where
// it names another sand, furnace or ladle, the shop's figures for theirs stay
// out of it.
func CheckOwn(figures, doc []byte, system quantity.System) OwnChecked {
	own, decoded := form.Decode[Own](figures, system)
	_, ready := form.Ready(own)
	var out OwnChecked
	for _, f := range form.Merge(decoded, ready) {
		if !f.Missing {
			out.Faults = append(out.Faults, f)
		}
	}
	var from, to tree
	if json.Unmarshal(figures, &from.root) != nil || json.Unmarshal(doc, &to.root) != nil {
		return out
	}
	c := ownCheck{from: from, to: to, out: &out}
	for i := range own.Metals {
		base := fmt.Sprintf("metals[%d]", i)
		if code := from.at(base + ".alloy"); code != nil && code == to.at("metal.alloy") {
			out.Fills = append(out.Fills, c.group(base, metalPlaces, nil)...)
		}
	}
	out.Fills = append(out.Fills, c.group("sand", sandPlaces, []string{"sand", "binder"})...)
	out.Fills = append(out.Fills, c.group("furnace", furnacePlaces, []string{"furnace"})...)
	for i, l := range own.Ladles {
		name := l.Name
		if name == "" {
			name = fmt.Sprintf("Ladle %d", i+1)
		}
		fills := c.group(fmt.Sprintf("ladles[%d]", i), ladlePlaces, []string{"shape", "top", "bottom", "depth", "lip.form"})
		if len(fills) > 0 {
			out.Ladles = append(out.Ladles, LadleFills{name, fills})
		}
	}
	return out
}

type ownCheck struct {
	from, to tree
	out      *OwnChecked
}

// group finds what one group of figures fills, unless the plan names another of
// its kind in one of the telling fields.
func (c ownCheck) group(base string, places []target, telling []string) []Fill {
	var fills []Fill
	var stands []string
	for _, p := range places {
		value := c.from.at(base + "." + p.from)
		for _, path := range p.to {
			there := c.to.at(path)
			switch {
			case there != nil && there != value && slices.Contains(telling, p.from):
				return nil
			case value == nil || c.faulty(base+"."+p.from):
			case there == value:
				stands = append(stands, path)
			case there == nil && c.wanted(path):
				fills = append(fills, Fill{path, labelOf(base + "." + p.from), value})
			}
		}
	}
	for _, path := range stands {
		if !slices.Contains(c.out.Stands, path) {
			c.out.Stands = append(c.out.Stands, path)
		}
	}
	return fills
}

func (c ownCheck) faulty(path string) bool {
	return slices.ContainsFunc(c.out.Faults, func(f form.Fault) bool { return f.Field == path })
}

// wanted reports whether a section may be filled.
func (c ownCheck) wanted(path string) bool {
	section, _, _ := strings.Cut(path, ".")
	return !slices.Contains(sparing, section) || c.to.at(section) != nil
}

// labelOf is the name of a field of Own.
func labelOf(path string) string {
	label, _ := form.Label[Own](path)
	return label
}

// tree is JSON addressed by paths such as "ladles[2].lip.form".
type tree struct{ root any }

// at is what stands at a path; nil for nothing and for blanks.
func (t tree) at(path string) any {
	here := t.root
	for _, step := range strings.FieldsFunc(path, func(r rune) bool { return r == '.' || r == '[' || r == ']' }) {
		switch node := here.(type) {
		case map[string]any:
			here = node[step]
		case []any:
			n := 0
			if _, err := fmt.Sscan(step, &n); err != nil || n >= len(node) {
				return nil
			}
			here = node[n]
		default:
			return nil
		}
	}
	switch v := here.(type) {
	case string:
		if strings.TrimSpace(v) == "" {
			return nil
		}
	case map[string]any:
		if len(v) == 0 {
			return nil
		}
	}
	return here
}

// Write appends the check as the door's JSON.
func (c OwnChecked) Write(w *reply.Writer) {
	w.Raw(`{"ok":true,"faults":`)
	w.Faults(c.Faults)
	w.Key("fills")
	writeFills(w, c.Fills)
	w.Key("ladles")
	w.Raw("[")
	for _, l := range c.Ladles {
		w.Next()
		w.Raw("{")
		w.Pair("name", l.Name)
		w.Key("fills")
		writeFills(w, l.Fills)
		w.Raw("}")
	}
	w.Raw("]")
	w.Key("stands")
	w.Raw("[")
	for _, path := range c.Stands {
		w.Next()
		w.Text(path)
	}
	w.Raw("]}")
}

func writeFills(w *reply.Writer, fills []Fill) {
	w.Raw("[")
	for _, f := range fills {
		w.Next()
		w.Raw("{")
		w.Pair("path", f.Path)
		w.Pair("label", f.Label)
		w.Key("value")
		switch v := f.Value.(type) {
		case string:
			w.Text(v)
		case float64:
			w.Number(v)
		default:
			w.Text(fmt.Sprint(v))
		}
		w.Raw("}")
	}
	w.Raw("]")
}
