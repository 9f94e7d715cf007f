// Package handling writes the safe-handling list for one pour: what to make
// sure of, in the order of the work and with the pour's own numbers, and the
// hold points that somebody has to answer before the metal moves.
//
// The list reminds and does arithmetic. It never says that a pour is safe:
// local codes, and a licensed or experienced person on the spot, decide. Its
// legal figures are U.S. federal and give way to the local code. It does not
// know the shop, the people or the state of the gear, and a hazard that the
// input does not name is not on it.
package handling

import (
	"pourwright/calc/alloy"
	"pourwright/calc/form"
	"pourwright/calc/mouldstuff"
	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// The values of the choices, as the form spells them.
const (
	indoors  = "indoors"
	outdoors = "outdoors"

	propane  = "propane"
	oil      = "oil"
	electric = "electric"
	coke     = "coke"

	sandBed  = "sand"
	concrete = "concrete"
	steel    = "steel"
	earth    = "earth"
	wood     = "wood"

	wet = "wet"

	coated    = "coated"
	unknown   = "unknown"
	beryllium = "beryllium"

	foam = "foam"
	wax  = "wax"
)

// Input is the pour as the crew will meet it.
type Input struct {
	// Alloy is the metal poured.
	Alloy alloy.Code `json:"alloy" label:"Metal" hint:"What is stamped on the ingot, or the nearest to it" link:"metal" part:"Metal"`
	// PourAt is the metal's temperature at the lip.
	PourAt quantity.Temperature `json:"pour_at" label:"Pouring temperature" hint:"At the lip of the ladle" link:"metal" min:"150 °C" max:"1750 °C"`
	// Metal is the mass in the ladle.
	Metal quantity.Mass `json:"metal" label:"Metal in the ladle" hint:"Casting, risers, runners and what stays over" link:"weight" min:"10 g" max:"20 t"`
	// Melt says what melts it.
	Melt string `json:"melt" label:"Furnace" hint:"What melts the metal" choices:"propane:Propane or other gas|oil:Oil|electric:Electric|coke:Coke or charcoal"`
	// Charge says what is known of the metal charged.
	Charge string `json:"charge" label:"Charge" hint:"Judge it by the worst piece" choices:"ingot:Ingot and own returns|known:Clean scrap of known alloy|coated:Known scrap, painted, plated or galvanised|unknown:Some scrap of unknown alloy|beryllium:Holds beryllium copper"`

	// Mould is what the mould is made of.
	Mould mouldstuff.Sand `json:"mould" label:"Mould" hint:"What the metal will touch" link:"mould" part:"Mould"`
	// Binder holds the sand together; while it is not said the list covers
	// every binder that goes with the mould.
	Binder quantity.Opt[mouldstuff.Binder] `json:"binder" label:"Binder" hint:"Leave empty to have every binder of this mould covered" link:"mould"`
	// Moisture is the water in the mould by mass, weighed before and after drying.
	Moisture quantity.Opt[quantity.Ratio] `json:"moisture" label:"Water in the mould" hint:"By mass, weighed before and after drying" min:"0 %" max:"60 %"`
	// Fired says that a plaster, investment or oil sand mould has been baked
	// or burnt out right through.
	Fired bool `json:"fired" label:"Fired or baked right through" hint:"Until nothing more leaves the vents" when:"mould=plaster|investment|oil-sand"`
	// Cores says that the mould holds cores.
	Cores bool `json:"cores" label:"Cores in the mould" hint:"Tick if any core is in the mould"`
	// CoreBinder holds the cores together.
	CoreBinder quantity.Opt[mouldstuff.Binder] `json:"core_binder" label:"Binder of the cores" hint:"Leave empty if it is not known" when:"cores=yes"`
	// Left is what stays of the pattern in the mould.
	Left quantity.Opt[string] `json:"left" label:"Pattern left in the mould" hint:"What burns or melts out in the pour" choices:"none:Nothing|foam:Foam|wax:Wax not yet burnt out" default:"none"`

	// Place is indoors or outdoors.
	Place string `json:"place" label:"Place" hint:"Under a roof with walls, or in the open" choices:"indoors:Indoors|outdoors:Outdoors" part:"Place and people"`
	// Extraction says that fume is drawn off at furnace and mould.
	Extraction bool `json:"extraction" label:"Fume drawn off" hint:"A hood or fan that serves the furnace and the mould, not an open window" when:"place=indoors"`
	// Floor is what spilt metal would land on.
	Floor string `json:"floor" label:"Floor under the pour" hint:"Where spilt metal would land" choices:"sand:Dry sand bed|concrete:Bare concrete or stone|steel:Steel plate|earth:Earth|wood:Wood"`
	// Ground says whether water is to be expected.
	Ground string `json:"ground" label:"Ground and weather" hint:"From lighting the furnace to the last shakeout" choices:"dry:Dry, and staying dry|wet:Rain or wet ground expected"`
	// Crew is how many people take part.
	Crew int `json:"crew" label:"Crew" hint:"People who take part, onlookers not counted" min:"1" max:"50"`
	// Lead says that somebody trained leads.
	Lead bool `json:"trained_lead" label:"A trained person leads" hint:"Somebody who has led pours of this metal"`
	// Spectators says that others will look on.
	Spectators bool `json:"spectators" label:"Spectators" hint:"Tick if anybody looks on"`
	// SpectatorDistance is how near they will stand.
	SpectatorDistance quantity.Opt[quantity.Distance] `json:"spectator_distance" label:"Nearest spectator" hint:"Pace it from where the ladle comes nearest" when:"spectators=yes" min:"0.3 m" max:"200 m"`
	// Cleaning says that shakeout or fettling follows on the same day.
	Cleaning bool `json:"cleaning" label:"Shakeout or fettling the same day" hint:"Tick if sand is broken or castings ground that day"`

	// Carried is all that is lifted: shell, lining and metal.
	Carried quantity.Opt[quantity.Mass] `json:"carried" label:"Ladle as carried" hint:"On the crane scale: shell, lining, shank and metal together" link:"ladle" min:"100 g" max:"60 t" part:"Ladle"`
	// Hoist says that the ladle hangs on a hoist, gantry or trolley.
	Hoist bool `json:"hoist" label:"The ladle hangs on a hoist" hint:"Or stands on a trolley; unticked, people carry it" link:"ladle"`
	// LadleMouth is the width of the open metal.
	LadleMouth quantity.Opt[quantity.Length] `json:"ladle_mouth" label:"Ladle mouth" hint:"Across the open metal; leave empty for an estimate" link:"ladle" min:"20 mm" max:"2 m"`
	// LipHeight is the height of the lip over the floor while pouring.
	LipHeight quantity.Opt[quantity.Length] `json:"lip_height" label:"Lip above the floor" hint:"Tape from the floor to the lip, while pouring" min:"0 mm" max:"5 m"`
	// Emissivity of the metal's surface; a skin of oxide or slag comes near 1.
	Emissivity quantity.Opt[quantity.Ratio] `json:"emissivity" label:"Emissivity of the surface" hint:"Leave at the safe side unless you have measured it" default:"90 %" min:"5 %" max:"100 %"`

	// WetBulb, Globe and Air are the readings of a heat-stress meter.
	WetBulb quantity.Opt[quantity.Temperature] `json:"wet_bulb" label:"Natural wet bulb" hint:"From a heat-stress meter where the crew stands; leave empty if you have none" min:"-10 °C" max:"60 °C" part:"Heat of the day"`
	Globe   quantity.Opt[quantity.Temperature] `json:"globe" label:"Globe" hint:"Reading of the meter's black ball" min:"-10 °C" max:"100 °C"`
	Air     quantity.Opt[quantity.Temperature] `json:"air" label:"Air in the shade" hint:"Thermometer in the shade; wanted outdoors" min:"-10 °C" max:"60 °C"`
	// Work is the class of work, for its body heat.
	Work quantity.Opt[string] `json:"work" label:"Work" hint:"Carrying and pouring are heavy work" choices:"light:Light (180 W)|moderate:Moderate (300 W)|heavy:Heavy (415 W)|very-heavy:Very heavy (520 W)" default:"heavy"`
	// Clothing is what the crew wears over its skin.
	Clothing quantity.Opt[string] `json:"clothing" label:"Clothing" hint:"What the crew nearest the metal wears" choices:"work:Ordinary work clothes|double:Two layers of cloth|aluminised:Aluminised coat or suit|vapour:Vapour-tight suit" default:"double"`
	// Acclimatised says that the crew is used to hot work.
	Acclimatised bool `json:"acclimatised" label:"Crew used to hot work" hint:"A week or more of it, just past"`

	// Answers are the hold points answered so far.
	Answers []Answer `json:"answers" label:"Hold points answered" hint:"Answered on the safe-handling page" max:"200"`
}

// Standing stands over and under every list.
const Standing = "This list never says that a pour is safe. Local codes, and a licensed or experienced person on the spot, decide."

// Output is the list with its numbers.
type Output struct {
	// OpenHolds is how many hold points nobody has answered; at nought the
	// list has nothing more to ask, which is not to say that the pour is safe.
	OpenHolds int    `json:"open_holds" label:"Hold points still open"`
	Holds     int    `json:"holds" label:"Hold points in all"`
	Standing  string `json:"standing" label:"Who decides"`

	SteamBoiling quantity.Number `json:"steam_boiling" label:"Steam from boiling water, volumes" step:"X_b"`
	SteamCold    quantity.Number `json:"steam_cold" label:"Steam from cold water at 100 °C, volumes" step:"X_c"`
	SteamHot     quantity.Number `json:"steam_hot" label:"Steam at the metal's temperature, volumes" step:"X_h"`

	Standoff     quantity.Distance               `json:"standoff" label:"Keep spectators back" hint:"At least; heat on bare skin, and never under 3 m for splash" step:"d_s"`
	Radiant      quantity.Distance               `json:"radiant_distance" label:"Bare skin bears the heat from" hint:"2 kW/m² in full view of the open ladle" step:"d_q"`
	Surface      quantity.HeatFlux               `json:"surface_heat" label:"Heat leaving the metal's surface" step:"E"`
	AtSpectators quantity.Opt[quantity.HeatFlux] `json:"spectator_heat" label:"Radiant heat at the spectators" step:"q_s"`
	Mouth        quantity.Opt[quantity.Length]   `json:"mouth_estimate" label:"Ladle mouth, estimated" step:"D"`

	Filter     quantity.Number      `json:"filter" label:"Infrared filter, scale number 4-" hint:"For looking into the metal; walk with the visor up" step:"n_f"`
	FilterUpTo quantity.Temperature `json:"filter_up_to" label:"Good up to" step:"T_f"`

	Each      quantity.Opt[quantity.Mass]   `json:"carried_each" label:"Carried by each of two" step:"m_2"`
	SpillSand quantity.Volume               `json:"spill_sand" label:"Dry sand to keep at hand" step:"V_s"`
	ZincHeld  quantity.Opt[quantity.Mass]   `json:"zinc" label:"Zinc in the ladle, at most" step:"m_Zn"`
	LeadHeld  quantity.Opt[quantity.Mass]   `json:"lead" label:"Lead in the ladle, at most" step:"m_Pb"`
	ZincAir   quantity.Opt[quantity.Volume] `json:"zinc_air" label:"Air that one gram of burnt zinc spoils" hint:"Down to the eight-hour limit for zinc oxide" step:"V_Zn"`

	WBGT      quantity.Opt[quantity.Temperature] `json:"wbgt" label:"Wet-bulb globe temperature" step:"T_w"`
	Clothed   quantity.Opt[quantity.Temperature] `json:"wbgt_clothed" label:"The same, with clothing" step:"T_wc"`
	HeatLimit quantity.Opt[quantity.Temperature] `json:"heat_limit" label:"Limit for this crew" step:"T_lim"`

	// Air lists what this pour puts into the air, with the eight-hour limits.
	Air []Agent `json:"air"`
	// Items is the list, in the order of the work and, within a part of it,
	// the gravest first.
	Items []Item `json:"items"`
}

// pour is the input with what was looked up and worked out for it.
type pour struct {
	Input
	metal   *alloy.Alloy
	sand    *mouldstuff.SandKind
	binders []*mouldstuff.BinderKind // that the mould may hold
	cores   []*mouldstuff.BinderKind // that the cores may hold
	steam   steam
	radiant radiant
	heat    quantity.Opt[stress]
	load    load
	metals  metals
	filter  quantity.Number
	upTo    quantity.Temperature
}

// List writes the safe-handling list of a pour.
//
// It refuses (Faults) what cannot be: a value out of its range, a ladle lighter
// than its metal, one hold point answered twice. Everything else gives a list;
// what should not be poured as it stands is a stop finding.
func List(in Input, p *working.Paper) (Output, error) {
	in, faults := form.Ready(in)
	faults = append(faults, cross(in)...)
	if err := faults.Err(); err != nil {
		return Output{}, err
	}
	w := gather(in, p)
	items := w.items()
	agents := w.air()
	said := settle(items, in.Answers)
	out := Output{
		Standing:     Standing,
		SteamBoiling: w.steam.boiling, SteamCold: w.steam.cold, SteamHot: w.steam.hot,
		Standoff: w.radiant.standoff, Radiant: w.radiant.distance, Surface: w.radiant.surface,
		AtSpectators: w.radiant.at, Mouth: w.radiant.mouth,
		Filter: w.filter, FilterUpTo: w.upTo,
		Each: w.load.each, SpillSand: w.load.spillSand,
		ZincHeld: w.metals.zinc, LeadHeld: w.metals.lead, ZincAir: w.metals.air,
		Air: agents, Items: items,
	}
	if w.heat.Known() {
		h := w.heat.V
		out.WBGT, out.Clothed, out.HeatLimit = quantity.Some(h.wbgt), quantity.Some(h.clothed), quantity.Some(h.limit)
	}
	for _, i := range items {
		if i.Hold {
			out.Holds++
			if i.State == Open {
				out.OpenHolds++
			}
		}
	}
	w.warn(p)
	said.warn(out.OpenHolds, p)
	return out, nil
}

// gather looks up and works out all that the items speak of.
func gather(in Input, p *working.Paper) pour {
	w := pour{Input: in}
	var ok bool
	if w.metal, ok = alloy.Find(in.Alloy); !ok {
		panic("handling: the form let an unknown alloy through")
	}
	if w.sand, ok = mouldstuff.FindSand(in.Mould); !ok {
		panic("handling: the form let an unknown mould through")
	}
	w.binders = kinds(in.Binder, w.sand.Binders)
	if in.Cores {
		w.cores = kinds(in.CoreBinder, coreBinders)
	}
	w.steam = expansion(in.PourAt, p)
	w.radiant = glow(in, w.metal, p)
	w.load = lift(in, w.metal, p)
	w.metals = fumes(in, w.metal, p)
	w.filter, w.upTo = filter(in.PourAt, p)
	if in.WetBulb.Known() && in.Globe.Known() && (in.Place == indoors || in.Air.Known()) {
		w.heat = quantity.Some(heatStress(in, p))
	}
	return w
}

// coreBinders are what cores may be held with while it is not said.
var coreBinders = []mouldstuff.Binder{
	mouldstuff.Furan, mouldstuff.PhenolicUrethane, mouldstuff.AlkalinePhenolic,
	mouldstuff.SilicateCO2, mouldstuff.SilicateEster, mouldstuff.Oil,
}

// kinds is the one binder given, or all that it may be.
func kinds(given quantity.Opt[mouldstuff.Binder], usual []mouldstuff.Binder) []*mouldstuff.BinderKind {
	if given.Known() {
		usual = []mouldstuff.Binder{given.V}
	}
	var out []*mouldstuff.BinderKind
	for _, code := range usual {
		if b, ok := mouldstuff.FindBinder(code); ok {
			out = append(out, b)
		}
	}
	return out
}
