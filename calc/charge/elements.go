package charge

// Element is the symbol of a chemical element.
type Element string

// elements are those that melts are blended for, with their names, in the
// order of the answers.
var elements = [][2]string{
	{"C", "Carbon"}, {"Si", "Silicon"}, {"Mn", "Manganese"}, {"P", "Phosphorus"}, {"S", "Sulphur"},
	{"Cu", "Copper"}, {"Sn", "Tin"}, {"Zn", "Zinc"}, {"Pb", "Lead"}, {"Al", "Aluminium"}, {"Ni", "Nickel"}, {"Fe", "Iron"},
	{"Mg", "Magnesium"}, {"Cr", "Chromium"}, {"Mo", "Molybdenum"}, {"Ti", "Titanium"}, {"Sb", "Antimony"}, {"Bi", "Bismuth"}, {"As", "Arsenic"}, {"Sr", "Strontium"},
}

// Choices lists the elements for a form.
func (Element) Choices() [][2]string {
	out := make([][2]string, len(elements))
	for i, e := range elements {
		out[i] = [2]string{e[0], e[1] + ", " + e[0]}
	}
	return out
}

// name is the element in words.
func (e Element) name() string {
	for _, known := range elements {
		if known[0] == string(e) {
			return known[1]
		}
	}
	return string(e)
}
