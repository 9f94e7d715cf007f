package flow

import (
	"pourwright/calc/alloy"
	"pourwright/calc/source"
)

// LeastRise is how fast the level in a mould should rise at the least, mm/s,
// by the mean wall T in mm, so that the skin of the metal does not fold into
// laps: the low end of the range that the tables print, with their row.
//
// Only the rows of grey iron are remembered well enough to be a limit; those
// of the other metals are typical figures, and metals without a table of their
// own take the rows of grey iron. It says nothing of a flat cavity, which
// metal crosses rather than rises in.
func LeastRise(a *alloy.Alloy, T float64) (v float64, row string, from source.Ref) {
	switch {
	case a.Family == alloy.Steel:
		return 10, "10 to 25 mm/s for steel", source.Dubitskii.Memory("rise of the level, steel, weakly remembered")
	case a.Family == alloy.Aluminium:
		return 20, "20 to 60 mm/s for aluminium", source.Dubitskii.Memory("rise of the level, aluminium, weakly remembered")
	case a.Code == alloy.CodeAluminiumBronze:
		return 30, "30 to 60 mm/s for metals that form a film", source.Campbell.Memory("laps in film-forming metals, weakly remembered")
	}
	from = source.Dubitskii.Memory("least rise of grey iron by wall; also P. N. Rao")
	switch {
	case T < 4:
		return 30, "30 to 100 mm/s for grey iron under 4 mm", from
	case T < 10:
		return 20, "20 to 30 mm/s for grey iron of 4 to 10 mm", from
	case T <= 40:
		return 10, "10 to 20 mm/s for grey iron of 10 to 40 mm", from
	}
	return 8, "8 to 10 mm/s for grey iron over 40 mm", from
}

// Flatness is how many walls high a cavity must stand before metal can be said
// to rise in it rather than run across. Our own choice; without it every flat
// plate would be told to fill in a moment.
const Flatness = 3
