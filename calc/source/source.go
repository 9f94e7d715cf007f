// Package source declares, once, every work that a constant or a formula of
// Pourwright rests on, and how the figure in hand was come by: seen in a
// public copy, recalled from memory, worked out here, or trade practice that
// no one has signed.
package source

// Known says how we know what a reference says.
type Known int

const (
	// Seen in a public copy of the work, or in a public text that quotes it.
	Seen Known = iota
	// FromMemory: recalled from the named work and not read again.
	FromMemory
	// CommonPractice: a rule of the trade without a source.
	CommonPractice
	// DerivedHere: worked out from geometry or physics, in the doc comment
	// beside it.
	DerivedHere
	// UsersOwn: what the user has put in, which needs no source.
	UsersOwn
)

// String gives the words that stand beside the citation.
func (k Known) String() string {
	return [...]string{"seen", "from memory", "common practice, no source", "derived here", "your own"}[k]
}

// Work is a book, standard, report or law.
type Work struct {
	// Author is the person or body; empty where the title says it.
	Author string
	// Title with edition, year and number.
	Title string
	// Year of the edition meant; 0 where several agree.
	Year int
}

// Ref is a place in a work.
type Ref struct {
	// Work cited; nil for practice and derivations.
	Work *Work
	// Place in it (chapter, table, example), or the practice or derivation in
	// a few words.
	Place string
	// Known says how we know.
	Known Known
}

// Seen cites a place that was read in a public copy.
func (w *Work) Seen(place string) Ref { return Ref{w, place, Seen} }

// Memory cites a place from memory.
func (w *Work) Memory(place string) Ref { return Ref{w, place, FromMemory} }

// Practice cites a rule of the trade that has no source.
func Practice(what string) Ref { return Ref{nil, what, CommonPractice} }

// Derived cites our own derivation, said in a few words.
func Derived(how string) Ref { return Ref{nil, how, DerivedHere} }

// Own marks a figure that the user has put in, said in a few words.
func Own(what string) Ref { return Ref{nil, what, UsersOwn} }

// IsZero reports whether nothing is cited.
func (r Ref) IsZero() bool { return r == Ref{} }

// String writes the citation as the screen shows it.
func (r Ref) String() string {
	if r.IsZero() {
		return ""
	}
	if r.Known == UsersOwn {
		return r.Place
	}
	if r.Work == nil {
		if r.Place == "" {
			return r.Known.String()
		}
		return r.Place + " (" + r.Known.String() + ")"
	}
	s := r.Work.Title
	if r.Work.Author != "" {
		s = r.Work.Author + ", " + s
	}
	if r.Place != "" {
		s += ", " + r.Place
	}
	if r.Known == FromMemory {
		s += " (from memory)"
	}
	return s
}
