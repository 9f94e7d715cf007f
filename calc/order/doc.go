// Package order finds the order in which to pour several moulds from one ladle
// so that each gets metal inside its own window of temperature.
//
// # The question
//
// The metal in the ladle falls by an even decay, T = T_a + (T_0 − T_a) e^{−t/τ}.
// A mould may not be begun before the metal is down to its hottest, and should
// be full before the metal is below its coldest; it takes its own time to pour,
// and a step from mould to mould takes time as well. The ladle waits where the
// metal is still too hot. On the clock of the cooling metal this is the problem
// of one machine with release times and due times: the hottest gives the
// release, the coldest the due time.
//
// Looked for is the order in which the mould that is worst off is least cold,
// or, where all are inside their windows, has the most in hand; and among those
// the one with the least cold in all.
//
// # How it is found
//
// Up to twelve moulds, exactly: over all sets of moulds already poured, keeping
// of each set every pair of time and worst cold that no other pair beats in
// both (Held and Karp's recursion with a front in place of one number). A
// mould's cold depends on what went before only through the time, so a beaten
// pair can never come to be the better, and nothing is lost. The tests compare
// it with all orders.
//
// Over twelve, by rule: of the moulds that may be begun, the one whose coldest
// is hottest; then pairs are exchanged while that helps. Beside it stands a
// bound that no order can beat: the same moulds with pours that may be broken
// off and taken up again, for which the rule is exact (Jackson).
package order
