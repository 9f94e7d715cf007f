package plan

import (
	"math"

	"pourwright/calc/flow"
	"pourwright/calc/handling"
	"pourwright/calc/quantity"
	"pourwright/calc/shape"
	"pourwright/calc/working"
)

// say writes one answer of a station for the card or a leader of the drawing;
// empty where the station has none.
func (r *Result) say(station, name string) working.Text {
	s := r.Station(station)
	if s == nil || s.Out == nil {
		return working.Text{}
	}
	if q, _, ok := answer(s.Out, name); ok {
		return working.Say("%v", q)
	}
	return working.Text{}
}

// Shapes of the usual ladle, for one whose sizes are not filled in.
const (
	usualSprue = 30 * quantity.Millimetre
	tapered    = 0.75 // foot over top, where the plan does not say
)

// scene gathers what the drawing needs.
func (r *Result) scene() scene {
	s := sketch
	doc := r.doc
	if r.got.hasMould {
		m := doc.Mould
		s.known = true
		s.flask, s.cope, s.drag = float64(m.FlaskLength), float64(m.CopeHeight), float64(m.DragHeight)
		s.castLength, s.above, s.below = float64(m.CastingLength), float64(m.Above.V), float64(m.Below.V)
		s.basin = math.Max(float64(m.BasinHeight.V), 0.02*s.flask)
		scale := s.flask / sketch.flask
		s.ladleTop, s.ladleFoot, s.ladleH, s.lip = sketch.ladleTop*scale, sketch.ladleFoot*scale, sketch.ladleH*scale, sketch.lip*scale
		s.sprueTop, s.sprueFoot = float64(usualSprue), float64(usualSprue)*tapered
	}
	switch doc.Pour.Gate.Or(flow.Parting) {
	case flow.Bottom:
		s.gate = "bottom"
	case flow.Top:
		s.gate = "top"
	}
	if r.got.hasPour {
		p := r.got.pour
		if choke := p.ExactChoke; choke.Known() {
			// A round sprue of the choke's area.
			s.sprueFoot = 2 * math.Sqrt(float64(choke.V)/math.Pi)
			s.sprueTop = s.sprueFoot / tapered
			if p.Taper.Known() {
				s.sprueTop = s.sprueFoot * math.Sqrt(float64(p.Taper.V))
			}
			s.sprueTop = math.Min(s.sprueTop, 0.12*s.flask)
		}
		s.weights = doc.Pour.Weights.V > 0 || p.WeightsSurged.V > 0
	}
	if r.got.hasLadle {
		l := doc.Ladle
		s.ladleTop, s.ladleH = float64(l.Top), float64(l.Depth)
		s.ladleFoot = s.ladleTop
		if l.Bottom > 0 {
			s.ladleFoot = float64(l.Bottom)
		}
		if l.LipHeight.Known() {
			s.lip = float64(l.LipHeight.V)
		}
	}
	if r.got.hasWeight {
		for i, b := range r.got.weight.Risers {
			s.risers = append(s.risers, riserBox{float64(b.Diameter), float64(b.Height), doc.Weight.Risers[i].Place.V == "side"})
		}
		s.outline = section(doc.Weight.Solids)
	}
	if r.got.hasCores {
		for _, c := range r.got.cores.Cores {
			s.cores = append(s.cores, math.Cbrt(0.75*float64(c.Volume)/math.Pi))
		}
	}
	return s
}

// section is the outline of the largest solid that is added, as the casting's
// likeness in the drawing.
func section(solids []shape.Solid) [][2]float64 {
	var best [][]shape.Spot
	largest := quantity.Volume(0)
	for _, s := range solids {
		if s.Taken() {
			continue
		}
		if v := s.Volume() * quantity.Volume(s.HowMany()); v > largest {
			largest, best = v, s.SectionOutlines()
		}
	}
	if len(best) != 1 {
		return nil
	}
	var out [][2]float64
	for _, p := range best[0] {
		out = append(out, [2]float64{float64(p.X), float64(p.Y)})
	}
	return out
}

// Card is the ruling numbers of the pour, in the order they are wanted.
func (r *Result) Card() []Ruling {
	one := func(key, label, station, answer string, text working.Text) Ruling {
		return Ruling{key, label, station, answer, text, r.Station(station).State}
	}
	window := working.Text{}
	if r.got.hasPour {
		p := r.got.pour
		if p.Shortest.Known() {
			window = working.Say("%v to %v", p.Shortest.V, p.Longest)
		} else {
			window = working.Say("up to %v", p.Longest)
		}
	}
	return []Ruling{
		one("charge", "Charge to weigh out", "weight", "charge", r.say("weight", "charge")),
		one("tap", "Tap at", "ladleheat", "tap_needed", r.say("ladleheat", "tap_needed")),
		one("temperature", "Pouring temperature", "metal", "pour_temperature", r.say("metal", "pour_temperature")),
		one("window", "Window of the pour", "pour", "longest", window),
		one("time", "Pouring time", "pour", "reckoned", r.say("pour", "reckoned")),
		one("weights", "Weights still wanted", "pour", "weights_surged", r.say("pour", "weights_surged")),
		one("shakeout", "Shake out after", "cooling", "recommended", r.say("cooling", "recommended")),
		one("holds", "Hold points open", "handling", "open_holds", r.holds()),
	}
}

// holds is the number of hold points still open, once there is a list.
func (r *Result) holds() working.Text {
	out, ok := r.Station("handling").Out.(handling.Output)
	if !ok {
		return working.Text{}
	}
	return working.Say("%v", out.OpenHolds)
}
