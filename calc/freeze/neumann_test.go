package freeze

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
)

// The walls of the exact oracles. Phi and the times were found by an
// independent program that solved the same published equations.
var (
	iron   = Wall{Conductivity: 83, Density: 7850, Heat: 670, Latent: 272e3, Melting: 1540, Mould: 28}
	alu    = Wall{Conductivity: 211, Density: 2550, Heat: 1180, Latent: 397e3, Melting: 660.3, Mould: 20, LiquidConductivity: 91, LiquidHeat: 1180}
	copper = math.Sqrt(398 * 8960 * 376)
	sand   = math.Sqrt(0.8655 * 1600 * 1170)
	dry    = math.Sqrt(0.61 * 1500 * 1131)
	chill  = math.Sqrt(40 * 7200 * 540)
)

func against(w Wall, b float64) Wall { w.Effusivity = b; return w }
func hot(w Wall, Tp float64) Wall    { w.Poured = Tp; return w }

func TestNeumann(t *testing.T) {
	for _, c := range []struct {
		name            string
		wall            Wall
		phi, face, N    float64
		depth, seconds  float64
		phiTol, timeTol float64
	}{
		{"independent program, Carslaw & Jaeger ch. XI, iron on a held wall", iron, 0.9753102174, 28, 0, 0.050, 41.635, 5e-11, 5e-4},
		{"independent program, Poirier & Geiger ch. 10, iron on thick copper", against(iron, copper), 0.8162482052, 680.479, 0.57058692, 0.050, 59.443, 5e-11, 5e-4},
		{"independent program, Poirier & Geiger ch. 10, iron in sand", against(iron, sand), 0.1249627253, 1527.188, 16.41439263, 0.050, 2536.211, 5e-11, 5e-4},
		{"independent program, Poirier & Geiger ch. 10, aluminium in sand", against(alu, dry), 0.0431843774, 659.0436, 24.76911400, 0.025, 1194.831, 5e-11, 5e-4},
		{"independent program, superheated aluminium in sand", hot(against(alu, dry), 680.3), 0.0204849055, 659.7031, 24.76911400, 0.025, 5309.967, 5e-11, 5e-4},
		{"independent program, aluminium in an iron mould", against(alu, chill), 0.3817535674, 552.1303, 2.02050160, 0.025, 15.28951, 5e-11, 5e-6},
		{"independent program, superheated aluminium in an iron mould", hot(against(alu, chill), 720.3), 0.3090826627, 568.5453, 2.02050160, 0.025, 23.32440, 5e-11, 5e-6},
	} {
		t.Run(c.name, func(t *testing.T) {
			f, err := Solve(c.wall)
			require.NoError(t, err)
			require.InDelta(t, c.phi, f.Phi, c.phiTol)
			require.InDelta(t, c.face, f.Face, 5e-4)
			require.InDelta(t, c.N, f.N, 5e-9)
			require.InDelta(t, c.seconds, f.Time(c.depth), c.timeTol)
			require.Less(t, f.Bound, 1e-15)
		})
	}
	t.Run("Crank, held wall, Stefan number exactly 1", func(t *testing.T) {
		f, err := Solve(Wall{Conductivity: 1, Density: 1, Heat: 1, Latent: 1, Melting: 1, Mould: 0})
		require.NoError(t, err)
		require.InDelta(t, 0.6200626333, f.Phi, 5e-11)
	})
	t.Run("Ghosh and Mallik, problem 2.6, root 0.98 on a water-cooled wall", func(t *testing.T) {
		f, err := Solve(iron)
		require.NoError(t, err)
		require.InDelta(t, 0.98, f.Phi, 0.005)
	})
}

// TestNeverFreezes holds the limit of superheat at which an endless melt never
// freezes: the contact temperature of melt and mould is the melting point.
func TestNeverFreezes(t *testing.T) {
	w := against(alu, dry)
	melt := math.Sqrt(w.LiquidConductivity * w.Density * w.LiquidHeat)
	limit := (w.Melting - w.Mould) * w.Effusivity / melt
	require.InDelta(t, 39.4, limit, 0.05) // printed beside the equations
	_, err := Solve(hot(w, w.Melting+limit*0.999))
	require.NoError(t, err)
	_, err = Solve(hot(w, w.Melting+limit*1.001))
	require.ErrorIs(t, err, ErrNeverFreezes)
	_, err = Solve(hot(iron, 1600))
	require.Error(t, err) // no data of the melt
	_, err = Solve(Wall{})
	require.Error(t, err)
}

// TestNeumannAgainstSteps freezes a wall by finite differences, another road
// to the same time: enthalpy method, explicit, held wall.
func TestNeumannAgainstSteps(t *testing.T) {
	w := iron
	f, err := Solve(w)
	require.NoError(t, err)
	const n = 200
	dx := 0.05 / n
	alpha := f.Diffusivity
	dt := 0.3 * dx * dx / alpha
	// Enthalpy over the solid at melting, per volume, in units of ρ: h ≤ 0 is
	// solid, 0..L mushy.
	h := make([]float64, n)
	for i := range h {
		h[i] = w.Latent
	}
	temp := func(h float64) float64 { return w.Melting + math.Min(h, 0)/w.Heat }
	seconds := 0.0
	for h[n-1] > 0 {
		prev := make([]float64, n)
		copy(prev, h)
		for i := range h {
			T := temp(prev[i])
			left := 2 * (w.Mould - T) // half a cell to the held wall
			if i > 0 {
				left = temp(prev[i-1]) - T
			}
			right := 0.0
			if i < n-1 {
				right = temp(prev[i+1]) - T
			}
			h[i] = prev[i] + w.Conductivity/w.Density*dt/(dx*dx)*(left+right)
		}
		seconds += dt
	}
	require.InEpsilon(t, f.Time(0.05), seconds, 0.01)
}

func TestErfcx(t *testing.T) {
	require.InDelta(t, 1, erfcx(0), 1e-15)
	require.InDelta(t, 0.4275835762, erfcx(1), 5e-11) // published beside the lumped solution, Carslaw & Jaeger ch. XII
	require.InEpsilon(t, erfcx(24.999999), erfcx(25.000001), 1e-6)
}
