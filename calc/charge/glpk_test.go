package charge_test

import (
	"bytes"
	"fmt"
	"math/rand"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"pourwright/calc/charge"
)

// forGLPK writes a question in the CPLEX LP format, straight from its fields:
// x0, x1 … are the masses charged, in kg, and nothing is shared with the code
// under test.
func forGLPK(in charge.Input) string {
	var b strings.Builder
	W := float64(in.Melt)
	term := func(v float64, j int) { fmt.Fprintf(&b, " %+.17g x%d", v, j) }
	b.WriteString("Minimize\n cost:")
	for j, m := range in.Materials {
		term(float64(m.Price.V), j)
	}
	b.WriteString("\nSubject To\n melt:")
	for j, m := range in.Materials {
		term(m.Yield.Or(1).SI(), j)
	}
	fmt.Fprintf(&b, " = %.17g\n", W)
	for i, l := range in.Limits {
		gain, pickUp := 0.0, 0.0
		for _, c := range in.Changes {
			if c.Element == l.Element {
				gain, pickUp = c.Gain.V.SI(), c.PickUp.V.SI()
			}
		}
		brings := func() {
			for j, m := range in.Materials {
				v := 0.0
				for _, a := range m.Analysis {
					if a.Element == l.Element {
						v = a.Amount.V.SI() * a.Recovery.Or(1).SI() * m.Yield.Or(1).SI() * (1 + gain)
					}
				}
				term(v, j)
			}
		}
		if l.Least.Known() {
			fmt.Fprintf(&b, " low%d:", i)
			brings()
			fmt.Fprintf(&b, " >= %.17g\n", (l.Least.V.SI()-pickUp)*W)
		}
		if l.Most.Known() {
			fmt.Fprintf(&b, " high%d:", i)
			brings()
			fmt.Fprintf(&b, " <= %.17g\n", (l.Most.V.SI()-pickUp)*W)
		}
	}
	for j, m := range in.Materials {
		of := func(name, sense string, s float64) {
			fmt.Fprintf(&b, " %s%d:", name, j)
			for k := range in.Materials {
				if k == j {
					term(1-s, k)
				} else {
					term(-s, k)
				}
			}
			fmt.Fprintf(&b, " %s 0\n", sense)
		}
		if m.Least.Known() {
			of("least", ">=", m.Least.V.SI())
		}
		if m.Most.Known() {
			of("most", "<=", m.Most.V.SI())
		}
	}
	b.WriteString("Bounds\n")
	for j, m := range in.Materials {
		if m.OnHand.Known() {
			fmt.Fprintf(&b, " 0 <= x%d <= %.17g\n", j, float64(m.OnHand.V))
		}
	}
	b.WriteString("End\n")
	return b.String()
}

// glpsol asks GLPK, and gives the cost, or false where it finds no blend.
func glpsol(t *testing.T, programme string) (float64, bool) {
	t.Helper()
	dir := t.TempDir()
	in, out := filepath.Join(dir, "charge.lp"), filepath.Join(dir, "charge.txt")
	require.NoError(t, os.WriteFile(in, []byte(programme), 0o600))
	log, err := exec.Command("glpsol", "--lp", in, "--write", out).CombinedOutput()
	require.NoError(t, err, string(log))
	text, err := os.ReadFile(out)
	require.NoError(t, err)
	for line := range strings.Lines(string(bytes.TrimSpace(text))) {
		var rows, columns int
		var primal, dual string
		var cost float64
		if n, _ := fmt.Sscanf(line, "s bas %d %d %1s %1s %g", &rows, &columns, &primal, &dual, &cost); n == 5 {
			return cost, primal == "f" && dual == "f"
		}
	}
	t.Fatalf("GLPK gave no answer: %s", log)
	return 0, false
}

// TestAgainstGLPK puts random charges to an independent program: GNU GLPK
// (Debian package glpk-utils).
func TestAgainstGLPK(t *testing.T) {
	if _, err := exec.LookPath("glpsol"); err != nil {
		if os.Getenv("CI") != "" {
			t.Fatal("the program glpsol of GNU GLPK is missing: apt-get install glpk-utils")
		}
		t.Skip("NOT CHECKED: no charge was compared with GNU GLPK, which is missing: apt-get install glpk-utils")
	}
	r := rand.New(rand.NewSource(5))
	kept, missed := 0, 0
	for range 160 {
		in := question(r)
		out, err := charge.Blend(in, nil)
		if err != nil {
			continue
		}
		programme := forGLPK(in)
		cost, possible := glpsol(t, programme)
		full := float64(out.Melt) >= float64(in.Melt)*(1-1e-6)
		require.Equal(t, possible, out.Kept && full, programme)
		if !possible {
			missed++
			continue
		}
		kept++
		require.InDelta(t, cost, float64(out.Cost.V), 1e-6*(1+cost), programme)
	}
	t.Logf("%d charges cost the same, %d are impossible for both", kept, missed)
	require.Greater(t, kept, 60)
	require.Greater(t, missed, 20)
}
