package plan

import (
	"math"

	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// scene is what the drawing needs of a plan, in metres. Fields that the plan
// does not know yet are filled from sketch, and known is false: the drawing is
// then a sketch of the usual arrangement, not to scale.
type scene struct {
	known                       bool
	flask, cope, drag           float64
	castLength, above, below    float64
	basin                       float64
	sprueTop, sprueFoot         float64 // widths
	gate                        string  // top, parting or bottom
	risers                      []riserBox
	cores                       []float64 // radii
	weights                     bool
	ladleTop, ladleFoot, ladleH float64
	lip                         float64 // above the basin
	outline                     [][2]float64
}

type riserBox struct {
	width, height float64
	side          bool
}

// sketch is the usual arrangement, drawn while the plan does not know better.
var sketch = scene{
	flask: 0.42, cope: 0.13, drag: 0.12, castLength: 0.2, above: 0.03, below: 0.05, basin: 0.02,
	sprueTop: 0.03, sprueFoot: 0.018, gate: "parting", ladleTop: 0.16, ladleFoot: 0.13, ladleH: 0.17, lip: 0.06,
}

// Shares of the flask by which the parts that no input places are set out.
const (
	sprueAt    = 0.12 // centre of the sprue from the left wall, at most
	minSection = 0.035
)

// drawing sets the plan out as a section through the mould. Everything with a
// size in the plan is to scale; where along the flask the sprue stands, and
// how high the runner is, no input says, and the drawing chooses.
func (r *Result) drawing() Drawing {
	s := r.scene()
	unit := s.flask
	left, right := 0.0, s.flask
	// Two thirds of the free sand stand on the side of the sprue.
	castLeft := (s.flask - s.castLength) * 2 / 3
	castRight := castLeft + s.castLength
	sprueX := math.Min(castLeft/2, sprueAt*unit)
	wallT := minSection * unit

	d := Drawing{Scale: s.known, Setting: r.setting(s, castLeft, castRight)}
	add := func(id, label, station string, at [2]float64, text working.Text, shapes ...Shape) {
		state := Blank
		if st := r.Station(station); st != nil {
			state = st.State
		}
		d.Parts = append(d.Parts, Part{id, label, station, state, shapes, at, text})
	}
	// Sand first, so that everything else lies on it.
	add("drag", "Drag", "mould", [2]float64{right - 0.04*unit, -0.8 * s.drag}, r.say("mould", "drag_mass"),
		Shape{"sand", box(left, -s.drag, right, 0), true})
	add("cope", "Cope", "mould", [2]float64{right - 0.04*unit, 0.75 * s.cope}, r.say("mould", "cope_mass"),
		Shape{"sand", box(left, 0, right, s.cope), true},
		Shape{"line", [][2]float64{{left - 0.03*unit, 0}, {right + 0.03*unit, 0}}, false})
	// The flask: iron walls either side of each half.
	add("flask", "Flask", "mould", [2]float64{right + wallT/2, 0.4 * s.cope}, working.Text{},
		Shape{"iron", box(left-wallT/2, 0.004*unit, left, s.cope), true}, Shape{"iron", box(right, 0.004*unit, right+wallT/2, s.cope), true},
		Shape{"iron", box(left-wallT/2, -s.drag, left, -0.004*unit), true}, Shape{"iron", box(right, -s.drag, right+wallT/2, -0.004*unit), true})

	casting := s.outline
	if casting == nil {
		casting = box(castLeft, -s.below, castRight, s.above)
	} else {
		casting = fit(casting, castLeft, -s.below, castRight, s.above)
	}
	add("casting", "Casting", "weight", [2]float64{(castLeft + castRight) / 2, (s.above - s.below) / 2}, r.say("weight", "castings_mass"),
		Shape{"metal", casting, true})
	for i, b := range s.risers {
		x0 := castLeft + (castRight-castLeft)*(0.5+0.3*float64(i)) - b.width/2
		y0 := s.above
		if b.side {
			x0, y0 = castRight+0.015*unit, -s.below/2
		}
		top := math.Min(y0+b.height, s.cope)
		add("riser", "Riser", "weight", [2]float64{x0 + b.width/2, (y0 + top) / 2}, working.Say("%v", quantity.Length(b.width)),
			Shape{"liquid", box(x0, y0, x0+b.width, top), true})
	}
	for i, w := range s.cores {
		// A core is drawn as a round one of its volume, one after the other in the casting.
		at := castLeft + (castRight-castLeft)*float64(i+1)/float64(len(s.cores)+1)
		radius := math.Min(w, 0.45*(s.above+s.below))
		add("core", "Core", "cores", [2]float64{at, (s.above - s.below) / 2}, r.say("cores", "lift"),
			Shape{"core", disc(at, (s.above-s.below)/2, radius), true})
	}
	r.drawGating(s, add, sprueX, castLeft, unit)
	r.drawTop(add, s, sprueX, right, unit)
	r.drawBeside(add, s, left, right, unit)
	d.Box = bounds(d.Parts, 0.02*unit)
	return d
}

type adder func(id, label, station string, at [2]float64, text working.Text, shapes ...Shape)

// drawGating draws basin, sprue, runner and ingate.
func (r *Result) drawGating(s scene, add adder, x, castLeft, unit float64) {
	foot := -0.02 * unit
	gateY := 0.0
	switch s.gate {
	case "bottom":
		gateY = -s.below
	case "top":
		gateY = s.above
	}
	if s.gate == "bottom" {
		foot = gateY - 0.01*unit
	}
	t, f := s.sprueTop/2, s.sprueFoot/2
	rim := s.cope + s.basin
	add("sprue", "Sprue and basin", "pour", [2]float64{x, 0.55 * s.cope}, r.say("pour", "head"),
		Shape{"liquid", [][2]float64{{x - 3*t, rim}, {x - 2*t, s.cope}, {x - t, s.cope}, {x - f, foot}, {x + f, foot}, {x + t, s.cope}, {x + 2*t, s.cope}, {x + 3*t, rim}}, true})
	h := math.Max(0.6*s.sprueFoot, 0.012*unit)
	y := math.Min(gateY, s.cope-h)
	add("ingate", "Runner and ingate", "pour", [2]float64{(x + castLeft) / 2, y + h/2}, r.say("pour", "ingate_speed"),
		Shape{"liquid", box(x+f, y, castLeft, y+h), true})
}

// drawTop draws the weights on the cope and the ladle over the basin.
func (r *Result) drawTop(add adder, s scene, x, right, unit float64) {
	if s.weights {
		w := 0.1 * unit
		x0 := x + 0.3*unit
		add("weights", "Weights on the cope", "pour", [2]float64{x0 + w, s.cope + 0.04*unit}, r.say("pour", "weights"),
			Shape{"weight", box(x0, s.cope, x0+2.2*w, s.cope+0.07*unit), true},
			Shape{"weight", box(x0+2.6*w, s.cope, x0+4.8*w, s.cope+0.07*unit), true})
	}
	// The ladle is tilted so that its lip stands over the basin.
	tilt := 35 * math.Pi / 180
	lipX, lipY := x-0.01*unit, s.cope+s.basin+s.lip
	place := func(u, v float64) [2]float64 { // u to the left of the lip, v down into the ladle
		return [2]float64{lipX - u*math.Cos(tilt) + v*math.Sin(tilt)*-1, lipY + u*math.Sin(tilt) - v*math.Cos(tilt)}
	}
	in := (s.ladleTop - s.ladleFoot) / 2
	body := [][2]float64{place(0, 0), place(s.ladleTop, 0), place(s.ladleTop-in, s.ladleH), place(in, s.ladleH)}
	thick := 0.025 * unit
	shell := [][2]float64{place(-thick, -thick/2), place(s.ladleTop+thick, -thick/2), place(s.ladleTop-in+thick, s.ladleH+thick), place(in-thick, s.ladleH+thick)}
	add("ladle", "Ladle", "ladle", place(s.ladleTop/2, s.ladleH*0.6), r.say("ladle", "metal"),
		Shape{"iron", shell, true}, Shape{"liquid", belowLevel(body, lipY), true},
		Shape{"liquid", [][2]float64{{lipX, lipY}, {x - 0.006*unit, s.cope + s.basin}, {x + 0.006*unit, s.cope + s.basin}, {lipX + 0.012*unit, lipY}}, true})
}

// drawBeside draws what stands beside the mould: the contraction rule, the
// thermometer and the board with the safe-handling list.
func (r *Result) drawBeside(add adder, s scene, left, right, unit float64) {
	y := -s.drag - 0.09*unit
	var ticks []Shape
	n := 10
	for i := range n + 1 {
		x := left + (right-left)*float64(i)/float64(n)
		ticks = append(ticks, Shape{"line", [][2]float64{{x, y}, {x, y + 0.02*unit}}, false})
	}
	add("pattern", "Pattern and contraction", "pattern", [2]float64{left + 0.3*(right-left), y - 0.01*unit}, r.say("pattern", "contraction"),
		append([]Shape{{"weight", box(left, y-0.035*unit, right, y), true}}, ticks...)...)
	tx := right + 0.14*unit
	bottom, top := -0.4*s.drag, s.cope+0.1*unit
	add("metal", "Metal and temperature", "metal", [2]float64{tx, (bottom + top) / 2}, r.say("metal", "pour_temperature"),
		Shape{"air", box(tx-0.012*unit, bottom, tx+0.012*unit, top), true},
		Shape{"liquid", box(tx-0.005*unit, bottom, tx+0.005*unit, bottom+0.7*(top-bottom)), true},
		Shape{"liquid", disc(tx, bottom, 0.024*unit), true})
	bx := right + 0.3*unit
	board := []Shape{{"air", box(bx-0.08*unit, -0.4*s.drag, bx+0.08*unit, -0.4*s.drag+0.22*unit), true}}
	for i := range 4 {
		yy := -0.4*s.drag + 0.04*unit + 0.045*unit*float64(i)
		board = append(board, Shape{"line", [][2]float64{{bx - 0.06*unit, yy}, {bx + 0.06*unit, yy}}, false})
	}
	// The furnace stands under the ladle.
	fx, fw, fy := left-0.2*unit, 0.09*unit, -s.drag
	add("furnace", "Furnace", "melting", [2]float64{fx, fy + 0.1*unit}, r.say("melting", "fuel_high"),
		Shape{"iron", box(fx-fw, fy, fx+fw, fy+0.16*unit), true},
		Shape{"liquid", box(fx-0.6*fw, fy+0.05*unit, fx+0.6*fw, fy+0.15*unit), true})
	add("handling", "Safe handling", "handling", [2]float64{bx, -0.4*s.drag + 0.11*unit}, r.holds(), board...)
	mx := bx
	my := -s.drag - 0.06*unit
	add("lifting", "Cold lifts", "lifting", [2]float64{mx, my}, r.say("lifting", "index"),
		Shape{"weight", box(mx-0.06*unit, my-0.03*unit, mx+0.06*unit, my+0.03*unit), true},
		Shape{"line", [][2]float64{{mx, my + 0.03*unit}, {mx, my + 0.07*unit}}, false})
}

func box(x0, y0, x1, y1 float64) [][2]float64 {
	return [][2]float64{{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}}
}

func disc(x, y, r float64) [][2]float64 {
	var out [][2]float64
	for i := range 24 {
		a := 2 * math.Pi * float64(i) / 24
		out = append(out, [2]float64{x + r*math.Cos(a), y + r*math.Sin(a)})
	}
	return out
}

// fit stretches an outline into a box: the casting's section is known in shape
// and its box in the mould from the moulder.
func fit(outline [][2]float64, x0, y0, x1, y1 float64) [][2]float64 {
	lo, hi := [2]float64{math.Inf(1), math.Inf(1)}, [2]float64{math.Inf(-1), math.Inf(-1)}
	for _, p := range outline {
		for k := range 2 {
			lo[k], hi[k] = math.Min(lo[k], p[k]), math.Max(hi[k], p[k])
		}
	}
	if !(hi[0] > lo[0]) || !(hi[1] > lo[1]) {
		return box(x0, y0, x1, y1)
	}
	out := make([][2]float64, len(outline))
	for i, p := range outline {
		out[i] = [2]float64{x0 + (p[0]-lo[0])/(hi[0]-lo[0])*(x1-x0), y0 + (p[1]-lo[1])/(hi[1]-lo[1])*(y1-y0)}
	}
	return out
}

// belowLevel is the part of a convex outline under a level: the metal left in
// a tilted ladle.
func belowLevel(outline [][2]float64, level float64) [][2]float64 {
	var out [][2]float64
	for i, a := range outline {
		b := outline[(i+1)%len(outline)]
		if a[1] <= level {
			out = append(out, a)
		}
		if (a[1] < level && b[1] > level) || (a[1] > level && b[1] < level) {
			t := (level - a[1]) / (b[1] - a[1])
			out = append(out, [2]float64{a[0] + t*(b[0]-a[0]), level})
		}
	}
	return out
}

func bounds(parts []Part, margin float64) [4]float64 {
	b := [4]float64{math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)}
	for _, p := range parts {
		for _, s := range p.Shapes {
			for _, q := range s.Points {
				b[0], b[1] = math.Min(b[0], q[0]), math.Min(b[1], q[1])
				b[2], b[3] = math.Max(b[2], q[0]), math.Max(b[3], q[1])
			}
		}
	}
	return [4]float64{b[0] - margin, b[1] - margin, b[2] + margin, b[3] + margin}
}
