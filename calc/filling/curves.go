package filling

import (
	"fmt"
	"math"
	"sort"

	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// curves draws the course of the filling against the time.
func (f *filling) curves() {
	time := working.Axis{Label: "Time", Kind: quantity.Time(0).Kind()}
	curve := func(label, y string, kind quantity.Any, of func(point) float64) *working.Series {
		s := working.Series{Label: label, X: time, Y: working.Axis{Label: y, Kind: kind.Kind()}, Points: make([]working.Point, 0, len(f.track)+1)}
		for _, k := range f.track {
			s.Points = append(s.Points, working.Point{X: k.t, Y: of(k)})
		}
		f.out.Curves = append(f.out.Curves, s)
		return &f.out.Curves[len(f.out.Curves)-1]
	}
	m := f.m
	curve("Level in the cavity", "Level", quantity.Length(0), func(k point) float64 { return k.y })
	curve("Flow", "Flow", quantity.VolumeFlow(0), func(k point) float64 { return k.q })
	curve("Rise of the level", "Rise", quantity.Speed(0), func(k point) float64 { return k.rise })
	curve("Fastest ingate", "Speed", quantity.Speed(0), func(k point) float64 {
		v := 0.0
		for _, g := range m.gates {
			v = math.Max(v, m.speed(g, k.p, k.y))
		}
		return v
	})
	if f.out.LiftFull.Known() {
		s := curve("Lift on the cope", "Lift", quantity.Force(0), f.liftAt)
		s.Points = append(s.Points, working.Point{X: float64(f.out.FillTime), Y: float64(f.out.LiftFull.V)})
	}
	if m.ladle > 0 {
		curve("Metal in the basin", "Depth", quantity.Length(0), func(k point) float64 { return math.Max(k.b-m.floor, 0) })
	}
	if !f.chill.known {
		return
	}
	for _, c := range []struct {
		label string
		k     float64
	}{{"Front, likely", f.chill.likely}, {"Front, at the worst", f.chill.fast}, {"Front, at best", f.chill.slow}} {
		curve(c.label, "Temperature", quantity.Temperature(0), func(k point) float64 {
			return float64(quantity.From[quantity.Temperature](f.chill.at(c.k, k.t), "degC"))
		})
	}
	first := &f.out.Curves[len(f.out.Curves)-3]
	first.Bands = []working.Band{{Label: "Freezing range", Upright: true, Low: float64(f.a.Solidus.V), High: float64(f.a.Liquidus.V)}}
}

// moments lists what changes on the way, in the order of the time.
func (f *filling) moments() {
	m, o := f.m, &f.out
	o.Moments = []Moment{}
	add := func(t, y float64, what string) {
		o.Moments = append(o.Moments, Moment{quantity.Time(t), what, quantity.Length(y)})
	}
	for i, s := range m.slices[:len(m.slices)-1] {
		name := f.in.Slices[i+1].Name
		if name == "" {
			name = fmt.Sprintf("slice %d", i+2)
		}
		t, _ := f.reaches(s.z1)
		add(t, s.z1, "The metal comes up to "+name)
	}
	for j, g := range m.gates {
		if g.z > 0 && g.z < m.top() {
			t, _ := f.reaches(g.z)
			add(t, g.z, "The level reaches "+f.name(j))
		}
		if r := o.Gates[f.order[j]].Runs; r.Known() && r.V > 0 {
			add(float64(r.V), f.levelAt(float64(r.V)), f.name(j)+" begins to run")
		}
	}
	for i := 1; i < len(f.runs); i++ {
		r, before := f.runs[i], f.runs[i-1].by
		if r.by == before {
			continue
		}
		what := map[mode]string{full: "The basin is full, the way rules", part: "The level in the basin moves", byLadle: "The ladle rules, the basin is empty"}[r.by]
		if r.by == byLadle && m.basin == 0 {
			what = "The ladle rules"
		}
		add(r.t0, m.level(r.x0), what)
	}
	for _, s := range o.Faces {
		if s.Touched.Known() && s.Touched.V > 0 {
			add(float64(s.Touched.V), f.levelAt(float64(s.Touched.V)), "The metal comes to "+s.Name)
		}
	}
	add(float64(o.FillTime), m.top(), "The mould is full")
	sort.SliceStable(o.Moments, func(i, j int) bool { return o.Moments[i].Time < o.Moments[j].Time })
}

// levelAt is the level in the cavity at a time.
func (f *filling) levelAt(t float64) float64 {
	for _, r := range f.runs {
		if t <= r.t1 {
			return math.Min(math.Max(f.m.level(r.at(t)), 0), f.m.top())
		}
	}
	return f.m.top()
}
