package cooling

import (
	"math"

	"pourwright/calc/soak"
	"pourwright/calc/solve"
)

// body is the metal in the measures in which its cooling is the same for every
// size: temperature θ over the mould's, 1 at freezing and 0 at the mould's own;
// time z in freezing times; heat in those of freezing.
//
// The mould's face is held at θ = 1 until z = 1 and is then as hot as the metal.
// The heat that the metal has given since it was full is that which the mould
// has taken, at every time:
//
//	1 + G(θ(z)) = √z + ⅔ Σ s_j [ (z − z_{j−1})^{3/2} − (z − z_j)^{3/2} ],
//
// with G the heat given below the freezing temperature and s_j the slopes of
// θ(z), drawn in straight runs. So the heat balance closes by construction, and
// the only error is that of the straight runs.
type body struct {
	// stefan is c_s (T_e − T_0)/H.
	stefan float64
	// A change in the solid gives the heat change, shared out evenly from θ =
	// upper down to lower.
	change, upper, lower float64
}

// given is G, the heat given between freezing and θ.
func (m body) given(theta float64) float64 {
	g := m.stefan * (1 - theta)
	if m.change > 0 {
		g += m.change * math.Min(math.Max((m.upper-theta)/(m.upper-m.lower), 0), 1)
	}
	return g
}

// perTaken turns Taken of a face that stepped by 1 into heats of freezing: the
// heat of freezing is what such a face takes by z = 1.
const perTaken = math.SqrtPi / 2

// track is the course of the metal's temperature. at[i] and theta[i] are the
// ends of the straight runs, the first at z = 1.
type track struct {
	body  body
	face  *soak.Face
	at    []float64
	theta []float64
}

// march runs the metal down to the temperature lowest, or on to the time last
// if that comes first, in steps on which the times stand at
// z = 1 + sinh²(n·step): fine where the face leaves its plateau with a root of
// time, ever longer where all runs out slowly.
func march(m body, lowest, last, step float64) track {
	t := track{m, soak.Step(1, 1), []float64{1}, []float64{1}}
	for n := 1; t.face.Theta() > lowest && t.face.Time() < last; n++ {
		sinh := math.Sinh(float64(n) * step)
		z := 1 + sinh*sinh
		theta := m.balance(z, t.face)
		t.face.To(z, theta)
		t.at, t.theta = append(t.at, z), append(t.theta, theta)
	}
	return t
}

// balance is the θ at z for which the heat given is the heat taken. Heat given
// less heat taken falls with θ along straight pieces, so the root lies on the
// piece between two of its corners.
func (m body) balance(z float64, face *soak.Face) float64 {
	taken := perTaken * face.Taken(z, face.Runs())
	each := perTaken * soak.Next(face.Time(), z)
	left := func(theta float64) float64 {
		return 1 + m.given(theta) - taken - (theta-face.Theta())*each
	}
	high := face.Theta()
	for _, corner := range []float64{m.upper, m.lower} {
		if m.change == 0 || corner >= high {
			continue
		}
		if left(corner) >= 0 {
			return between(left, corner, high)
		}
		high = corner
	}
	return between(left, 0, high)
}

// between is the root of a straight line from its values at two places.
func between(f func(float64) float64, a, b float64) float64 {
	fa, fb := f(a), f(b)
	return math.Min(a+(b-a)*fa/(fa-fb), b)
}

// when is the time at which the metal has come down to theta, which must not
// lie below what march ran to.
func (t track) when(theta float64) float64 {
	for i := 1; i < len(t.at); i++ {
		if t.theta[i] > theta {
			continue
		}
		before := t.at[i-1]
		left := func(z float64) float64 {
			taken := t.face.Taken(z, i-1) + (theta-t.theta[i-1])*soak.Next(before, z)
			return perTaken*taken - 1 - t.body.given(theta)
		}
		return solve.Root(left, before, t.at[i], 1e-12*t.at[i])
	}
	return t.at[len(t.at)-1]
}

// heat is how hot the metal is at z, between 1 and the end of the track, from
// the balance at that time.
func (t track) heat(z float64) float64 {
	short := soak.Step(1, 1)
	for i := 1; i < len(t.at) && t.at[i] < z; i++ {
		short.To(t.at[i], t.theta[i])
	}
	if z <= short.Time() {
		return short.Theta()
	}
	return t.body.balance(z, short)
}
