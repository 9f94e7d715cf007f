package stepcheck

import (
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/working"
)

// Prove runs a question on a paper of its own, and checks that it is answered
// and that every step holds. It serves the calculators that draw on a paper
// only; the others take Run.
func Prove[In, Out any](t testing.TB, calc func(In, *working.Paper) (Out, error), in In) (Out, *working.Paper) {
	t.Helper()
	p := &working.Paper{}
	out, err := calc(in, p)
	require.NoError(t, err)
	require.Empty(t, Paper(p))
	return out, p
}

// Run proves a question as Prove does, and checks that the answers do not
// depend on the paper.
func Run[In, Out any](t testing.TB, calc func(In, *working.Paper) (Out, error), in In) (Out, *working.Paper) {
	t.Helper()
	out, p := Prove(t, calc, in)
	bare, err := calc(in, nil)
	require.NoError(t, err)
	require.Equal(t, out, bare, "the answers depend on the paper")
	return out, p
}

// Codes are the codes of a paper's findings, in their order.
func Codes(p *working.Paper) []string {
	var out []string
	for _, f := range p.Findings {
		out = append(out, f.Code)
	}
	return out
}

// Levels are the levels of a paper's findings by their codes.
func Levels(p *working.Paper) map[string]working.Level {
	out := map[string]working.Level{}
	for _, f := range p.Findings {
		out[f.Code] = f.Level
	}
	return out
}

// Finding is the first finding of a code, which must be on the paper.
func Finding(t testing.TB, p *working.Paper, code string) working.Finding {
	t.Helper()
	for _, f := range p.Findings {
		if f.Code == code {
			return f
		}
	}
	require.Failf(t, "no such finding", "%s among %v", code, Codes(p))
	return working.Finding{}
}
