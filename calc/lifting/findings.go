package lifting

import (
	"pourwright/calc/quantity"
	"pourwright/calc/working"
)

// find minds the lifting index and says what the equation leaves out.
func (l *lift) find(out Output) {
	l.findIndex(out)
	if l.in.Gloves && l.in.Coupling != Poor {
		l.p.Find(working.Finding{Level: working.Note, Code: "gloves-poor-hold", Field: "gloves", Source: gloveNote,
			Text: working.Say("Gloves take away from the hold; it counts as poor.")})
	}
	l.p.Find(working.Finding{Level: working.Note, Code: "one-person-cold", Field: "what", Source: scope,
		Text: working.Say("The limit is for one person and a cold load that keeps still. It says nothing of carrying, of lifting in pairs, of heat, or of a back that hurts already."),
		Do:   working.Say("Your local code and the person who lifts have the last word.")})
}

func (l *lift) findIndex(out Output) {
	if !out.Index.Known() {
		l.p.Find(working.Finding{Level: working.Stop, Code: "lifts-too-often", Field: "lifts", Source: frequency,
			Text: working.Say("At %v lifts a minute for so long the limit is nothing: no load is recommended.", l.in.Lifts),
			Do:   working.Say("Lift less often, share the work out, or use a hoist.")})
		return
	}
	if !(out.Index.V > 1) {
		return
	}
	worse, place, path, words := out.Origin, l.in.Origin, "origin", "where the lift starts"
	if out.Destination.Limit < worse.Limit {
		worse, place, path, words = out.Destination, l.in.Destination, "destination", "where the load is set down"
	}
	field, do := "load", working.Say("Lighten the load to %v, or use a hoist.", out.Limit)
	least := quantity.From[quantity.Length](l.c.reach, l.c.length)
	if near := place.Reach / quantity.Length(out.Index.V); place.Reach > least {
		field = path + ".reach"
		if near >= least {
			do = working.Say("Bring the load in to a reach of %v, or lighten it to %v.", near, out.Limit)
		} else {
			do = working.Say("Bring the load in to a reach of %v and lighten it to %v, or use a hoist.", least,
				out.Limit*quantity.Mass(place.Reach/least))
		}
	}
	finding := working.Finding{Level: working.Mind, Code: "lifting-index-over-1", Field: field, Source: index, Do: do,
		Text: working.Say("%v is %v times the recommended limit of %v %v; some who lift it are at a raised risk of hurting their back.", l.in.Load, out.Index.V, worse.Limit, words)}
	if out.Index.V > 3 {
		finding.Level, finding.Code = working.Stop, "lifting-index-over-3"
		finding.Text = working.Say("%v is %v times the recommended limit of %v %v; over 3 times, nearly all who lift it are at a raised risk of hurting their back.", l.in.Load, out.Index.V, worse.Limit, words)
	}
	l.p.Find(finding)
}
