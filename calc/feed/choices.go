package feed

// Wall is how a mould stands up to an iron that expands.
type Wall string

// The walls.
const (
	Green Wall = "green"
	Rigid Wall = "rigid"
)

// Choices lists the walls for a form.
func (Wall) Choices() [][2]string {
	return [][2]string{{string(Green), "Green sand, yields"}, {string(Rigid), "Hard sand, clamped or weighted"}}
}

// Kind is the form of a section.
type Kind string

// The kinds.
const (
	Plate    Kind = "plate"
	Bar      Kind = "bar"
	Cylinder Kind = "cylinder"
	Tube     Kind = "tube"
	Sphere   Kind = "sphere"
	Stated   Kind = "stated"
)

// Choices lists the kinds for a form.
func (Kind) Choices() [][2]string {
	return [][2]string{
		{string(Plate), "Plate or wall"},
		{string(Bar), "Bar or block"},
		{string(Cylinder), "Round bar or boss"},
		{string(Tube), "Tube, ring or hub"},
		{string(Sphere), "Ball"},
		{string(Stated), "Modulus already known"},
	}
}

// Beyond is what lies at the far end of a way to feed.
type Beyond string

// The ends.
const (
	FreeEnd   Beyond = "end"
	NextRiser Beyond = "riser"
)

// Choices lists the ends for a form.
func (Beyond) Choices() [][2]string {
	return [][2]string{{string(FreeEnd), "A free end or edge"}, {string(NextRiser), "Another riser"}}
}

// Junction is how two walls meet.
type Junction string

// The junctions.
const (
	Flush Junction = "none"
	L     Junction = "l"
	T     Junction = "t"
	X     Junction = "x"
)

// Choices lists the junctions for a form.
func (Junction) Choices() [][2]string {
	return [][2]string{
		{string(Flush), "None, or no corner between walls"},
		{string(L), "L: two walls end in a corner"},
		{string(T), "T: the second wall ends on the first"},
		{string(X), "X: two walls cross"},
	}
}

// Place is where a riser stands.
type Place string

// The places.
const (
	Top  Place = "top"
	Side Place = "side"
)

// Choices lists the places for a form.
func (Place) Choices() [][2]string {
	return [][2]string{{string(Top), "On top of the casting"}, {string(Side), "Beside it, with a neck"}}
}

// Shape is the body of a riser.
type Shape string

// The shapes.
const (
	Round       Shape = "cylinder"
	Domed       Shape = "domed"
	StatedRiser Shape = "stated"
)

// Choices lists the shapes for a form.
func (Shape) Choices() [][2]string {
	return [][2]string{
		{string(Round), "Cylinder"},
		{string(Domed), "Cylinder with one end a half ball"},
		{string(StatedRiser), "Any other feeder, modulus and volume known"},
	}
}

// Cover is what stands between a riser and the air.
type Cover string

// The covers.
const (
	Open   Cover = "open"
	Blind  Cover = "blind"
	Sleeve Cover = "sleeve"
	Topped Cover = "topped"
	Both   Cover = "both"
)

// Choices lists the covers for a form.
func (Cover) Choices() [][2]string {
	return [][2]string{
		{string(Open), "Open at the top"},
		{string(Blind), "Blind, under sand"},
		{string(Sleeve), "In an insulating sleeve, top open"},
		{string(Topped), "In sand, top covered with an insulator"},
		{string(Both), "In a sleeve, top covered with an insulator"},
	}
}

// plain says that the riser has sand round it and nothing on it, as the trials
// behind Caine's curve and the shape factors had.
func (c Cover) plain() bool { return c == Open || c == Blind }

// sleeved says that it stands in a sleeve.
func (c Cover) sleeved() bool { return c == Sleeve || c == Both }
