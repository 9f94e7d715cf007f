// Package feed answers how a casting freezes and is fed: the casting as
// sections that touch, the modulus of each with only its cooling faces, the
// hot spots where walls join, the order in which all of it freezes, whether
// every section is fed through metal that is still liquid, and the risers that
// end those paths.
//
// # Order of freezing
//
// A section freezes after a time C (V/A)² (Chvorinov), A being only what
// cools: a face joined to another section does not, nor one that a riser
// covers. So sections freeze in the order of their moduli, whatever C is. Round
// and chunky shapes freeze up to a quarter sooner than the rule says; the order
// of sections whose moduli lie within a tenth of each other is open.
//
// # Hot spots
//
// Where walls meet, the largest circle that fits into the corner says how much
// heavier the junction is than the wall (Heuvers): its modulus is taken as that
// of the thicker wall times circle over wall. Sand in a narrow corner heats up
// and makes it worse by perhaps a tenth more.
//
// # Feeding
//
// Each section is fed from a riser, or through another section. It must freeze
// before everything on that way. A riser must outlast what it feeds by a
// margin, hold the feed metal, and, by the older rules of the trade, satisfy
// Caine's curve and, for steel, a shape factor; all stand side by side and the
// largest answer governs. Over what distance a riser feeds along an even wall
// is a matter of trials on steel; for other metals the figures are guidance.
//
// Graphite makes grey and ductile iron grow as they freeze. The growth feeds
// the casting only where the mould cannot yield and all of four conditions
// hold; else an iron is fed like any other metal.
//
// No simulation stands behind any of this.
package feed
