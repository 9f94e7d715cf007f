package feed

import (
	"strings"

	"pourwright/calc/alloy"
	"pourwright/calc/quantity"
	"pourwright/calc/riser"
	"pourwright/calc/source"
	"pourwright/calc/working"
)

var proportions = source.Practice("risers stand between half and twice as high as wide")

// remarks are the findings on one riser.
func (w *one) remarks() {
	w.smallRemarks()
	w.ruleRemarks()
	p, r, o := w.p, w.r, w.out
	if q := quantity.Number(w.h); r.Shape.V != StatedRiser && (q < riser.LowProportion || q > riser.HighProportion) {
		field := w.path + ".ratio"
		if r.Height.Known() {
			field = w.path + ".height"
		}
		p.Find(working.Finding{Level: working.Mind, Code: "riser-proportion", Field: field, Source: proportions,
			Text: working.Say("%v stands %v times as high as wide; the figures used here are for %v to %v times.", working.Capital(o.Name), q, riser.LowProportion, riser.HighProportion),
			Do:   working.Say("Keep its height between %v and %v times its diameter.", riser.LowProportion, riser.HighProportion)})
	}
	if r.Cover.V == Blind {
		do := working.Say("Put a pencil core or a sharp sand wedge through its top, a tenth to a fifth of its diameter.")
		if o.Diameter.Known() {
			do = working.Say("Put a pencil core or a sharp sand wedge through its top, a tenth to a fifth of its diameter, about %v to %v.", o.Diameter.V/10, o.Diameter.V/5)
		}
		p.Find(working.Finding{Level: working.Note, Code: "blind-vent", Field: w.path + ".cover", Source: source.Practice("blind risers need air on the metal, or they do not feed"), Do: do,
			Text: working.Say("A blind riser only feeds while air can press on its metal.")})
	}
	if !r.Cover.V.plain() && !r.Extension.Known() {
		p.Find(working.Finding{Level: working.Mind, Code: "cover-figures", Field: w.path + ".extension", Source: source.Brown.Memory("sleeved feeders"),
			Text: working.Say("Sleeves and covers differ from maker to maker; a modulus extension of %v and an efficiency of %v are only usual.", quantity.Number(w.x), o.Efficiency),
			Do:   working.Say("Take the figures from the maker's own sheet.")})
	}
	if r.NeckLength.Known() && o.NeckLongest.Known() && r.NeckLength.V > o.NeckLongest.V*quantity.Length(1+1e-9) {
		p.Find(working.Finding{Level: working.Mind, Code: "neck-long", Field: w.path + ".neck_length", Source: necks,
			Text: working.Say("The neck of %v is %v long; the rules hold up to %v, and a longer one freezes shut.", o.Name, r.NeckLength.V, o.NeckLongest.V),
			Do:   working.Say("Bring the riser to within %v of the casting.", o.NeckLongest.V)})
	}
}

// smallRemarks stop a riser that cannot do its work.
func (w *one) smallRemarks() {
	p, r, o := w.p, w.r, w.out
	if !r.Diameter.Known() && r.Shape.V != StatedRiser {
		return
	}
	field, do := w.path+".modulus", working.Say("Give it a modulus of %v and a volume of %v or more.", o.ModulusWanted, o.VolumeWanted)
	if r.Shape.V != StatedRiser {
		D := max(o.ByModulus.V, o.ByVolume.V)
		field, do = w.path+".diameter", working.Say("Make it at least %v across and %v high.", D, D*quantity.Length(w.h))
	}
	if float64(o.ModulusMargin) < enough {
		p.Find(working.Finding{Level: working.Stop, Code: "riser-small-modulus", Field: field, Source: riser.ModulusRule, Do: do,
			Text: working.Say("The modulus of %v is %v and %v is wanted to outlast %v of %v: it freezes too soon.", o.Name, o.Modulus, o.ModulusWanted, o.Ruling, o.ModulusFed)})
	}
	if g := o.FeedMargin; g.Known() && float64(g.V) < enough {
		p.Find(working.Finding{Level: working.Stop, Code: "riser-small-feed", Field: field, Source: riser.FeedRule, Do: do,
			Text: working.Say("%v holds %v and %v is wanted to feed %v: its pipe runs into the casting.", working.Capital(o.Name), o.Volume, o.VolumeWanted, o.Fed)})
	}
}

// ruleRemarks compare the user's own riser with the older rules, and say where
// these do not reach.
func (w *one) ruleRemarks() {
	p, r, o := w.p, w.r, w.out
	if r.Shape.V == StatedRiser {
		return
	}
	if S := o.ShapeFactor; w.a.Family == alloy.Steel && S.Known() && !o.ByNRL.Known() {
		p.Find(working.Finding{Level: working.Note, Code: "shape-factor-range", Source: nrlCurve,
			Text: working.Say("The shape factor of %v is %v; the curves for it are known from %v to %v only.", o.Ruling, S.V, quantity.Number(nrl[0].S), quantity.Number(nrl[len(nrl)-1].S))})
	}
	if !r.Diameter.Known() {
		return
	}
	var under []string
	wanted := quantity.Length(0)
	for _, rule := range []struct {
		name string
		D    quantity.Opt[quantity.Length]
	}{{"Caine's curve", o.ByCaine}, {"the NRL shape factor", o.ByNRL}, {"the SFSA shape factor", o.BySFSA}} {
		if rule.D.Known() && float64(r.Diameter.V) < float64(rule.D.V)*enough {
			under = append(under, rule.name)
			wanted = max(wanted, rule.D.V)
		}
	}
	if under != nil {
		p.Find(working.Finding{Level: working.Mind, Code: "riser-under-rules", Field: w.path + ".diameter", Source: raoCaine,
			Text: working.Say("%v is %v across; by %v it should be %v.", working.Capital(o.Name), r.Diameter.V, strings.Join(under, ", by "), wanted),
			Do:   working.Say("Make it %v across, unless castings cut up have shown that yours is enough.", wanted)})
	}
}
