package iron

import (
	"pourwright/calc/quantity"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

// usual bounds a plain grey iron, per cent, for which the formulas were made.
var usual = struct{ cLow, cHigh, siLow, siHigh float64 }{2.5, 4.0, 1.0, 3.5}

// What calls for a word: contents and excess in per cent.
const (
	sulphurLow    = 0.05
	sulphurHigh   = 0.15
	phosphorus    = 0.15
	chromium      = 0.15
	plenty        = 0.5 // of manganese, over what sulphur wants
	chromiumWall  = 25  // mm
	leastSpiral   = 24  // in, K = 0.6
	longestSpiral = 40  // in, K = 1.0
	nearly        = 1   // MPa: less than any bar tells
)

func (j *job) find(level working.Level, code, field string, from source.Ref, text, do working.Text) {
	j.p.Find(working.Finding{Level: level, Code: code, Field: field, Source: from, Text: text, Do: do})
}

func (j *job) remark() {
	j.remarkAnalysis()
	j.remarkEutectic()
	j.remarkManganese()
	j.remarkPouring()
	j.remarkStrength()
	j.remarkChill()
	j.remarkTraces()
}

func (j *job) remarkAnalysis() {
	say := working.Say
	if j.a.C < usual.cLow || j.a.C > usual.cHigh || j.a.Si < usual.siLow || j.a.Si > usual.siHigh {
		j.find(working.Mind, "analysis-unusual", "carbon", source.Practice("plain grey irons hold 2.5 to 4 % carbon and 1 to 3.5 % silicon"),
			say("%v carbon and %v silicon are outside plain grey iron, %v to %v and %v to %v; the formulas were not made for it.", j.in.Carbon, j.in.Silicon, percent(usual.cLow), percent(usual.cHigh), percent(usual.siLow), percent(usual.siHigh)),
			say("Check the analysis; take test bars and a cooling curve before you trust any figure here."))
	}
	missing := ""
	for _, e := range []struct {
		name  string
		given bool
	}{{"phosphorus", j.in.Phosphorus.Known()}, {"manganese", j.in.Manganese.Known()}, {"sulphur", j.in.Sulphur.Known()}} {
		if !e.given && missing != "" {
			missing += ", "
		}
		if !e.given {
			missing += e.name
		}
	}
	if missing != "" {
		j.find(working.Note, "analysis-short", "phosphorus", source.Practice("what is not given counts as none"),
			say("Not given: %v. It counts as none, and what hangs on it is left out or reads low.", missing),
			say("Have it analysed; in scrap of unknown origin phosphorus and sulphur are the ones that spoil a melt."))
	}
}

func (j *job) remarkEutectic() {
	say := working.Say
	if j.CE <= eutecticHigh {
		return
	}
	down := j.CE - eutecticHigh
	j.find(working.Mind, "hyper-eutectic", "carbon", source.Heine.Memory("kish graphite in hyper-eutectic iron"),
		say("A carbon equivalent of %v is %v over the eutectic at %v: graphite grows in the melt and floats, worst in thick walls, and the formulas for liquidus, spiral and strength end here.", percent(j.CE), percent(down), percent(eutecticHigh)),
		say("Take carbon down to %v, or silicon to %v, unless the wall is thin and softness is all that is wanted.", percent(j.a.C-down), percent(max(j.a.Si-3*down, 0))))
}

func (j *job) remarkManganese() {
	say := working.Say
	if short := j.out.ManganeseShort; short.Known() && short.V > 0 {
		j.find(working.Mind, "manganese-short", "manganese", manganeseRule,
			say("%v manganese is %v short of the %v that %v sulphur wants; iron sulphide hardens the iron and makes it brittle.", j.in.Manganese.V, short.V, j.out.ManganeseNeeded.V, j.in.Sulphur.V),
			say("Raise manganese to %v: ferromanganese at %v of the melt; or charge less sulphur.", j.out.ManganeseNeeded.V, j.out.Ferromanganese.V))
	}
	if need := j.out.ManganeseNeeded; need.Known() && j.in.Manganese.Known() && j.a.Mn > quantity.In(need.V, "%")+plenty {
		j.find(working.Note, "manganese-plenty", "manganese", source.Practice("manganese well over what sulphur binds makes pearlite and, in thin walls, carbide"),
			say("%v manganese is %v over what the sulphur wants; it hardens the iron.", j.in.Manganese.V, j.in.Manganese.V-need.V),
			say("Come down toward %v if the castings are hard to cut.", need.V))
	}
}

func (j *job) remarkPouring() {
	say := working.Say
	T := j.in.PourTemperature
	if !T.Known() {
		return
	}
	if high := j.out.LiquidusHigh; high.Known() && T.V <= high.V {
		j.find(working.Stop, "pour-below-liquidus", "pour_temperature", source.Derived("liquidus by the highest of the formulas"),
			say("%v is not above the liquidus of this iron, which lies between %v and %v; it is freezing in the ladle.", T.V, j.out.LiquidusLow.V, high.V),
			say("Heat it to %v at least before you pour.", j.pour.Low))
	} else if T.V < j.pour.Low {
		j.find(working.Mind, "pour-cold", "pour_temperature", j.pour.Source,
			say("%v is colder than grey iron is usually poured for this wall, %v to %v; expect cold laps and walls that do not run.", T.V, j.pour.Low, j.pour.High),
			say("Pour at %v or hotter.", j.pour.Low))
	}
	if T.V > j.pour.High {
		j.find(working.Mind, "pour-hot", "pour_temperature", j.pour.Source,
			say("%v is hotter than grey iron is usually poured for this wall, %v to %v; expect burnt-on sand, gas and more shrinkage.", T.V, j.pour.Low, j.pour.High),
			say("Let it cool to %v or below before you pour.", j.pour.High))
	}
	from := source.Porter.Memory("fluidity spiral")
	switch L := quantity.In(j.out.Spiral.V, "in"); {
	case j.CE > eutecticHigh:
	case !j.out.Spiral.Known():
		j.find(working.Mind, "spiral-none", "pour_temperature", from,
			say("By the spiral's formula this iron does not run at all at %v.", T.V), say("Pour hotter, at %v or above.", j.pour.Low))
	case L < leastSpiral || L > longestSpiral:
		j.find(working.Note, "fluidity-unusual", "pour_temperature", source.Practice("K is usually between 0.6 and 1.0"),
			say("A spiral of %v makes the fluidity factor %v, outside the usual 0.6 to 1.0; the formula is thin there.", j.out.Spiral.V, j.out.Fluidity.V),
			say("Pour a spiral of your own before you set a pouring time by it."))
	}
}

func (j *job) remarkStrength() {
	say := working.Say
	if j.Sc >= 1 {
		if j.in.Grade.Known() {
			j.find(working.Mind, "strength-unknown", "grade", strengths[0].source,
				say("The degree of saturation is %v; the formulas for strength hold only below 1, so nothing says that GJL-%v is reached.", quantity.Number(j.Sc), j.in.Grade.V),
				say("Come down with carbon or silicon, and pull a test bar."))
		}
		return
	}
	if j.Sc < leastSaturation {
		j.find(working.Mind, "strength-beyond", "carbon", strengths[0].source,
			say("The degree of saturation of %v is below %v, where no bars are known to stand behind the strength; such an iron more likely freezes white.", quantity.Number(j.Sc), quantity.Number(leastSaturation)),
			say("Raise carbon or silicon until it is at least %v.", quantity.Number(leastSaturation)))
	}
	want := j.wanted()
	switch {
	case want == 0:
	case want > j.high+nearly:
		j.find(working.Mind, "grade-missed", "carbon", strengths[0].source,
			say("GJL-%v wants %v in the 30 mm bar; this analysis makes %v to %v, at least %v short.", j.in.Grade.V, megapascal(want), megapascal(j.low), megapascal(j.high), megapascal(want-j.high)),
			say("Bring carbon down from %v to %v at the same silicon, or alloy; then prove it with test bars.", j.in.Carbon, j.out.CarbonWanted.V))
	case want > j.low:
		j.find(working.Note, "grade-close", "carbon", strengths[0].source,
			say("GJL-%v wants %v in the 30 mm bar; the formulas put this analysis between %v and %v.", j.in.Grade.V, megapascal(want), megapascal(j.low), megapascal(j.high)),
			say("Bring carbon to %v to be on the safe side.", j.out.CarbonWanted.V))
	}
	if !j.in.Wall.Known() {
		return
	}
	for i, g := range grades {
		if g == want && !j.out.Grades[i].Expected.Known() {
			j.find(working.Note, "wall-outside", "wall", en1561,
				say("The standard's table has no strength for GJL-%v in a wall of %v.", j.in.Grade.V, j.in.Wall.V),
				say("Agree with the customer where a test piece is cut, or cast a bar on."))
		}
	}
}

func (j *job) remarkChill() {
	say := working.Say
	if j.least == 0 {
		return
	}
	from := source.Practice("chill hangs on inoculation, undercooling, traces and mould as much as on the analysis; no formula for it is safe")
	if short := j.least - j.CE; short > 0 {
		j.find(working.Mind, "chill", "carbon", from,
			say("A wall of %v usually wants a carbon equivalent of %v to stay grey; this iron has %v, %v short. Edges and thin ends may freeze white and hard.", j.in.Wall.V, percent(j.least), percent(j.CE), percent(short)),
			say("Raise carbon to %v, or silicon to %v; inoculate with 0.1 to 0.3 %% of ferrosilicon in the ladle and pour within 8 min; break a chill wedge before you pour.", percent(j.a.C+short), percent(j.a.Si+3*short)))
		return
	}
	j.find(working.Note, "chill-wedge", "wall", from,
		say("The carbon equivalent is what a wall of %v usually wants, but no formula promises that it stays grey.", j.in.Wall.V),
		say("Inoculate, and break a chill wedge from the ladle before you pour."))
}

func (j *job) remarkTraces() {
	say := working.Say
	if j.in.Sulphur.Known() && j.a.S > sulphurHigh {
		j.find(working.Mind, "sulphur-high", "sulphur", source.Practice("sulphur over about 0.15 % makes sluggish iron and blowholes with much manganese"),
			say("%v sulphur is high; the iron runs badly and blows.", j.in.Sulphur.V),
			say("Charge cleaner scrap and coke until sulphur is under %v.", percent(sulphurHigh)))
	}
	if j.in.Sulphur.Known() && j.a.S < sulphurLow {
		j.find(working.Note, "sulphur-low", "sulphur", source.Practice("below about 0.05 % sulphur grey iron takes inoculation badly"),
			say("With only %v sulphur the iron takes inoculation badly and chills easily.", j.in.Sulphur.V),
			say("Use an inoculant made for low-sulphur iron."))
	}
	if j.a.P > phosphorus {
		j.find(working.Note, "phosphide", "phosphorus", source.Practice("phosphorus over about 0.15 % leaves phosphide that freezes last, near 950 °C"),
			say("%v phosphorus runs well, but leaves a brittle phosphide that freezes last; walls that must hold pressure may leak.", j.in.Phosphorus.V),
			say("Keep it under %v for tight or tough castings; for plaques and grates it does no harm.", percent(phosphorus)))
	}
	if j.a.Cr >= chromium && j.in.Wall.Known() && quantity.In(j.in.Wall.V, "mm") <= chromiumWall {
		j.find(working.Note, "chromium", "chromium", source.Practice("chromium makes carbide; from about 0.15 % it shows in thin walls"),
			say("%v chromium makes carbide in a wall of %v, whatever the carbon equivalent says.", j.in.Chromium.V, j.in.Wall.V),
			say("Look for plated or alloyed scrap in the charge; inoculate more."))
	}
}
