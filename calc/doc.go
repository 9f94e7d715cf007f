// Package calc is the map of the packages below it: what each answers, its
// main source, and what it leaves out. It holds no code. The test beside it
// keeps the list whole and holds who may import whom: imports go down this
// list only, and a calculator never imports another.
//
// # Ground
//
//   - quantity: typed SI values; reads what people type, writes what they read.
//   - source: every work cited, declared once, with how we know what it says.
//   - working: the shown sums, their formulas as text, and the findings;
//     working/stepcheck evaluates the formulas with units, in tests only.
//   - form: a question as a struct with tags: decoding, checking, describing.
//   - reply: how answers are written for the doors.
//   - figure: one number of a data table with its range and source.
//   - solve: roots and integrals that no closed expression gives.
//   - soak: heat into a thick wall behind a changing face (Carslaw and Jaeger).
//     Leaves out: walls of finite thickness, contact resistance.
//   - spread: how far answers stray and which inputs drive them (Saltelli; Joe
//     and Kuo). Takes the inputs as independent and normal.
//   - qr: a text as a QR code (ISO/IEC 18004).
//
// # Data
//
//   - alloy: casting metals (ASM Handbook 15, Copper Development Association,
//     contraction tables of the handbooks). Gaps: the heat's own analysis comes
//     before every figure; ranges stand where sources differ.
//   - mouldstuff: sands, binders, pattern materials, draft, sand to leave round
//     a pattern (Flemings, Poirier and Geiger, Rao, common practice). Gaps: most
//     ranges are wide; a shop's own weighed box comes first.
//
// # Physics that several calculators share
//
//   - shape: plain solids, exact geometry. Leaves out overlaps and fillets.
//   - flow: hydraulics of the gating, lips and weirs, lift on the cope
//     (Britannica 1911, Rao, Ghosh and Mallik). Leaves out friction but for the
//     discharge coefficient.
//   - freeze: freezing times by Chvorinov's rule and the exact solutions of
//     Neumann (Carslaw and Jaeger, Flemings, Poirier and Geiger); also a
//     calculator. Leaves out moisture, air gaps, heat in the frozen shell.
//   - curve: at which settings of an input to ask for an answer, and where it is
//     refused. Knows no calculator; may miss what is narrower than a fortieth.
//   - riser: forms, efficiencies and moduli of risers (Wlodawer, Campbell).
//
// # Calculators
//
//   - metal: what is poured and how hot (Copper Development Association, ASM
//     Handbook 15, common practice).
//   - pattern: machining stock, tolerance, contraction, draft (ISO 8062, Heine,
//     Rao, Dooley, EN 12890). Contraction is a band; the shop's own comes first.
//   - rule: a contraction rule set out for paper (the tables of alloy, Groover,
//     Rao). Paper moves with damp, printers scale; its check length is measured
//     first.
//   - weight: casting weight, risers, metal to melt (Wlodawer, Caine, Flinn).
//     Leaves out feeding distance; no simulation stands behind it.
//   - mould: sand in cope and drag, sand round the casting (common practice).
//   - pour: pouring time and its window (Rao, Campbell, freeze). The life of a
//     thin wall is known only within a factor.
//   - gating: basin, sprue, well, runners, ingates and the losses on the way
//     (ASM Handbook 15, Weisbach, Borda, Blasius). Leaves out filters; walls are
//     smooth.
//   - filling: level, flow, rise and lift second by second (Ghosh and Mallik,
//     Dormand and Prince). Leaves out waves, momentum, trapped air; the front's
//     temperature is a trend.
//   - holddown: what keeps the joint shut at every corner, the push on the side
//     of the mould, box, sand and binder (Rao, hydrostatics). The surge factor
//     is custom; sand that gives way is left out.
//   - ladle: tilt, flow and weight of a tipped ladle (exact geometry, weirs).
//     Leaves out teapot spouts, bottom pour, slag, fast tilting.
//   - ladleheat: how a ladle loses its heat (Carslaw and Jaeger, Stefan). Weakly
//     known; two readings of the thermometer take its place.
//   - order: in which order to pour several moulds (Jackson, Held and Karp).
//     Takes the ladle's cooling as an even decay.
//   - tending: the pour as it runs, by its record (straight lines and even decay
//     on the ladle's course, a reading before both). Metal that waits longer
//     than was planned cools a little differently than it says.
//   - lifting: cold lifts by one person (NIOSH Pub. 94-110). Refuses all that is
//     hot, carried or slops.
//   - handling: the safe-handling list (29 CFR 1910, HSE, trade guidance). It
//     never says that a pour is safe; local codes and people on the spot decide.
//   - sprue: speed, filling time and taper (Groover, Rao, Ghosh and Mallik).
//   - lift: what the metal lifts and what holds it down (Rao).
//   - weir: flow over a lip (Britannica 1911, USBR). Steady flow only.
//   - core: lift, prints, chaplets, vents (Archimedes, Rao, common practice).
//     Core gas is known within a factor of about three.
//   - feed: sections, hot spots, order of freezing, risers by every rule
//     (Chvorinov, Heuvers, Caine, NRL, SFSA, Pellini, Adams and Taylor). No
//     simulation; feeding distances beyond steel are guidance.
//   - cooling: when to shake out (Carslaw and Jaeger, common practice). Leaves
//     out water in the sand, the flask's edge, corners.
//   - shop: how many moulds for enough good castings (binomial). Defects that
//     come together are left out.
//   - charge: the cheapest charge inside the analysis limits, a linear
//     programme. Knows nothing of lots that differ from their analysis.
//   - iron: a grey iron from its analysis (BCIRA, Koriyama, Collaud, EN 1561).
//     Chill has no safe formula; inoculation and undercooling are left out.
//   - melting: heat, fuel and time to melt (Groover, US Department of Energy).
//     Furnace efficiency is a wide band; one's own measured melt comes first.
//
// # Whole
//
//   - plan: one pour, all stations linked; findings, pour card, drawing.
//   - catalogue: the list of calculators and the one call of every door.
//   - evidence: runs testdata/checks through that call.
package calc
