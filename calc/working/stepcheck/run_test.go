package stepcheck

import (
	"errors"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// double is a calculator that is right.
func double(h quantity.Length, p *working.Paper) (float64, error) {
	m := p.Give("h", "head", h, "m")
	return p.Step("d", "double", 2*m, "m", "2 * h", torricelli), nil
}

// refusing is a test that keeps to itself that it was failed, and ends there.
type refusing struct {
	testing.TB
	failed bool
}

func (r *refusing) Helper()               {}
func (r *refusing) Errorf(string, ...any) { r.failed = true }
func (r *refusing) FailNow()              { panic(r) }

// fails reports whether a check fails the test that it is given.
func fails(t *testing.T, check func(testing.TB)) bool {
	r := &refusing{TB: t}
	func() {
		defer func() {
			if x := recover(); x != nil && x != any(r) {
				panic(x)
			}
		}()
		check(r)
	}()
	return r.failed
}

func TestRun(t *testing.T) {
	type calc = func(quantity.Length, *working.Paper) (float64, error)
	prove := func(c calc) bool { return fails(t, func(t testing.TB) { Prove(t, c, 3) }) }
	run := func(c calc) bool { return fails(t, func(t testing.TB) { Run(t, c, 3) }) }

	out, p := Run(t, double, 3)
	require.Equal(t, 6.0, out)
	require.Len(t, p.Steps, 1)
	require.False(t, run(double))

	refuses := func(quantity.Length, *working.Paper) (float64, error) { return 0, errors.New("no") }
	require.True(t, prove(refuses))
	require.True(t, run(refuses))

	slips := func(h quantity.Length, p *working.Paper) (float64, error) {
		m := p.Give("h", "head", h, "m")
		return p.Step("d", "double", 3*m, "m", "2 * h", torricelli), nil
	}
	require.True(t, prove(slips))
	require.True(t, run(slips))

	leans := func(h quantity.Length, p *working.Paper) (float64, error) {
		d, err := double(h, p)
		if p == nil {
			d++
		}
		return d, err
	}
	require.False(t, prove(leans))
	require.True(t, run(leans))
}

func TestFindings(t *testing.T) {
	p := &working.Paper{}
	require.Empty(t, Codes(p))
	require.Empty(t, Levels(p))
	p.Find(working.Finding{Level: working.Mind, Code: "late", Field: "first"})
	p.Find(working.Finding{Level: working.Stop, Code: "cold"})
	p.Find(working.Finding{Level: working.Note, Code: "late", Field: "second"})
	require.Equal(t, []string{"late", "cold", "late"}, Codes(p))
	require.Equal(t, map[string]working.Level{"late": working.Note, "cold": working.Stop}, Levels(p))
	require.Equal(t, "first", Finding(t, p, "late").Field)
	require.True(t, fails(t, func(t testing.TB) { Finding(t, p, "hot") }))
}
