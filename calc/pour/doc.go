// Package pour answers how long to take over pouring a mould: the rules of the
// trade side by side, and the window that physics leaves between pouring so
// slowly that the thinnest wall freezes on the way and so fast that the metal
// sprays, traps air or lifts the cope.
//
// # The longest time
//
// Metal in the thinnest wall flows until it has given up its superheat and a
// share of its latent heat to the sand on both sides (freeze.Life, which
// derives the sum). In a casting that is all thin wall, the first metal must
// still flow when the last arrives: the pouring time is at most that life t_f.
// Where only a share y of the pour goes by while the thin wall fills, the time
// is at most t_f/y. The front must cover the length L of the wall within t_f,
// so it needs the speed L/t_f; where that is more than the ingates may give, no
// pouring time helps.
//
// The life is known only within a factor: the effusivity of the sand, the
// share of latent heat and the touch of the stream have ranges. It is given at
// the worst, as is likely, and at the utmost. The window ends at the likely
// value; beyond it the answer is mind, beyond the utmost it is stop. The trade
// pours much that all the worst figures together would forbid, so time past
// the worst value alone is only remarked on.
//
// The metal's level must also rise fast enough for its skin not to fold into
// laps: the cavity's height over the least rise speed. The table for grey iron
// is remembered, not seen, so this limit is soft: it never stops. For other
// metals only typical figures are known, and a slower rise is only remarked
// on. It says nothing of a flat cavity, which metal crosses rather than rises
// in.
//
// # The shortest time
//
// Metal faster than about 0.5 m/s at the ingates breaks up and folds in its
// skin: the mass over density, ingate area and speed limit, with the usual
// limit and what is got away with at the utmost. The air must leave: the
// mould's volume over vent area and air speed, a soft limit by common
// practice. The lift on the cope does not depend on the time but for the
// surge, which a slow end of the pour softens.
//
// # The recommended time
//
// The family's rule, moved into the window by as little as will do. With t_s
// and t_l the usual ends and t_s,lo and t_l,hi the utmost ones,
//
//	t = min(max(t_rule, t_a), t_b),
//	t_a = max(min(t_s, t_l), t_s,lo),  t_b = min(max(t_s, t_l), t_l,hi),
//
// which is the usual window where there is one, and otherwise what lies
// between its crossed ends inside the utmost one. Where even the utmost ends
// cross there is no time to recommend, and the answer says what to change.
package pour
