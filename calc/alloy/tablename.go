package alloy

import "pourwright/calc/source"

// TableName names a contraction table by the work it stands in.
type TableName string

// works are the sources that contraction tables come from.
var works = []struct {
	name  TableName
	label string
	work  *source.Work
}{
	{"rao", "Rao, Manufacturing Technology (metric table by size)", source.Rao},
	{"heine", "Heine, Loper and Rosenthal (inch table, plain and cored)", source.Heine},
	{"en12890", "Guide values in the manner of EN 12890", source.EN12890},
	{"dooley", "Dooley, Applied Science for Metal Workers (1919)", source.Dooley},
	{"practice", "Working figure of the trade, between the tables", nil},
}

// Choices lists the tables for a form.
func (TableName) Choices() [][2]string {
	out := make([][2]string, len(works))
	for i, w := range works {
		out[i] = [2]string{string(w.name), w.label}
	}
	return out
}

// Table finds the metal's contraction table of a name. Where the named work
// has none for the metal, others are the labels of those that have one.
func (a *Alloy) Table(name TableName) (table ContractionTable, others []string, ok bool) {
	for _, w := range works {
		for _, t := range a.Contractions {
			if t.Source.Work != w.work {
				continue
			}
			if w.name == name {
				return t, nil, true
			}
			others = append(others, w.label)
		}
	}
	return ContractionTable{}, others, false
}
