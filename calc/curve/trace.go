package curve

import (
	"math"
	"slices"

	"pourwright/calc/working"
)

// Sample is what one setting of the input came to.
type Sample struct {
	// X is the setting and Y the answer, both in SI.
	X, Y float64
	// Known says that there is an answer.
	Known bool
	// Refused says why the calculator would not answer at all; empty where it
	// did.
	Refused working.Text
	// Findings to mind there.
	Findings []working.Finding
}

// The most points of a curve, and the fewest.
const (
	Most   = 240
	Fewest = 5
)

// finest is the narrowest gap between two points, as a share of the stretch.
const finest = 1.0 / 1024

// Trace looks at n settings from low to high, ends included, n being kept
// between Fewest and Most. A third of them stand evenly; the others go where
// the answer bends most and where its state changes. With whole, only whole
// numbers are looked at.
func Trace(look func(x float64) Sample, low, high float64, n int, whole bool) []Sample {
	n = min(max(n, Fewest), Most)
	if whole {
		return wholes(look, low, high, n)
	}
	even := max(n/3, Fewest)
	samples := make([]Sample, 0, n)
	for i := range even {
		f := float64(i) / float64(even-1)
		samples = append(samples, look(low*(1-f)+high*f))
	}
	for len(samples) < n {
		at := widest(samples, high-low)
		if at < 0 {
			break
		}
		x := (samples[at].X + samples[at+1].X) / 2
		samples = slices.Insert(samples, at+1, look(x))
	}
	return samples
}

func wholes(look func(x float64) Sample, low, high float64, n int) []Sample {
	var samples []Sample
	low, high = math.Ceil(low), math.Floor(high)
	step := math.Max(1, math.Ceil((high-low)/float64(n-1)))
	for x := low; x <= high; x += step {
		samples = append(samples, look(x))
	}
	return samples
}

// widest is the gap that most wants a point; -1 where none does.
func widest(samples []Sample, stretch float64) int {
	low, high := math.Inf(1), math.Inf(-1)
	for _, s := range samples {
		if s.Known {
			low, high = math.Min(low, s.Y), math.Max(high, s.Y)
		}
	}
	best, most := -1, 0.0
	for i := range len(samples) - 1 {
		a, b := samples[i], samples[i+1]
		width := (b.X - a.X) / stretch
		if width <= finest {
			continue
		}
		want := 0.02 * width // else evenly
		switch {
		case !alike(a, b):
			want = 1 + width
		case a.Known && high > low:
			want += math.Max(bend(samples, i), bend(samples, i+1)) / (high - low)
		}
		if want > most {
			best, most = i, want
		}
	}
	return best
}

// bend is how far a point stands off the straight line between its neighbours.
func bend(samples []Sample, i int) float64 {
	if i == 0 || i == len(samples)-1 {
		return 0
	}
	a, s, b := samples[i-1], samples[i], samples[i+1]
	if !a.Known || !s.Known || !b.Known {
		return 0
	}
	f := (s.X - a.X) / (b.X - a.X)
	return math.Abs(s.Y - (a.Y*(1-f) + b.Y*f))
}

// alike reports whether two settings have the same state: both answered or
// not, and the same to mind.
func alike(a, b Sample) bool {
	if a.Known != b.Known || a.Refused.IsZero() != b.Refused.IsZero() || len(a.Findings) != len(b.Findings) {
		return false
	}
	for i := range a.Findings {
		if !same(a.Findings[i], b.Findings[i]) {
			return false
		}
	}
	return true
}

func same(a, b working.Finding) bool {
	return a.Code == b.Code && a.Part == b.Part && a.Level == b.Level
}

// Runs cuts a curve where it breaks off: each run is answered all through.
func Runs(samples []Sample) [][]Sample {
	var runs [][]Sample
	open := false
	for _, s := range samples {
		switch {
		case !s.Known:
			open = false
		case open:
			runs[len(runs)-1] = append(runs[len(runs)-1], s)
		default:
			runs, open = append(runs, []Sample{s}), true
		}
	}
	return runs
}
