package filling

import "math"

// point is one instant of the filling, SI.
type point struct {
	t, y, b, q, p float64
	rise          float64
	flat          bool // in a slice so low that metal crosses it
}

// aboutPoints is how many points the curves have between their corners.
const aboutPoints = 120

// track is the filling as it is drawn: every smooth piece from its first
// instant to its last, so that jumps stand upright.
func (m *model) track(runs []run) []point {
	end := runs[len(runs)-1].t1
	var out []point
	for i := 0; i < len(runs); {
		j := i
		for j < len(runs) && runs[j].piece == runs[i].piece {
			j++
		}
		t0, t1 := runs[i].t0, runs[j-1].t1
		n := max(1, int(math.Round(aboutPoints*(t1-t0)/end)))
		for k, at := 0, i; k <= n; k++ {
			t := t0 + (t1-t0)*float64(k)/float64(n)
			if k == n {
				t = t1 // which the sum may miss by its rounding
			}
			for at < j-1 && t > runs[at].t1 {
				at++
			}
			out = append(out, m.look(runs[at], t))
		}
		i = j
	}
	return out
}

// look is one instant inside a step.
func (m *model) look(r run, t float64) point {
	x := r.at(t)
	y := math.Min(math.Max(m.level(x), 0), m.top())
	at := point{t: t, y: y, b: math.Min(m.head(x, r.by), m.H)}
	if r.by == byLadle {
		at.q = m.ladle
		at.p = m.stands(at.q, y)
		at.b = math.Min(math.Max(m.needs(at.q, at.p), 0), m.H)
	} else {
		at.q, at.p = m.flow(at.b, y)
	}
	at.rise = at.q / r.in.area(y)
	return at
}

// needs is the level that the basin would have to stand at to drive a flow to
// the runner standing at p.
func (m *model) needs(q, p float64) float64 { return p + m.before*q*q/(2*m.g) }

// speed is that of metal in a gate while the runner stands at p.
func (m *model) speed(g gate, p, y float64) float64 {
	d := p - math.Max(y, g.z)
	if d <= 0 {
		return 0
	}
	return g.ca / g.a * math.Sqrt(2*m.g*d)
}
