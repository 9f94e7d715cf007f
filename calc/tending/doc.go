// Package tending follows a pour from the ladle full to the last mould full:
// how hot the metal is by now, how long each mould can still be poured, how a
// pour stands against its time, at which tilt the ladle should be, and what to
// do next. It keeps no time itself: it is given what has happened so far, in
// seconds since tapping, and answers for the moment of the latest of it and,
// as curves and a timetable, for what follows if nothing else happens.
//
// # The metal
//
// The ladle's own course (calculator ladleheat) gives a temperature T_m for
// every moment since the ladle was full, straight lines between its points.
// Past its end the metal is taken to go on by the even decay of its time
// constant. A thermometer beats both: where there is a reading R, all that the
// metal has over the surroundings is scaled so that the course goes through it,
//
//	T = T_a + k (T_m − T_a),  k = (R − T_a)/(T_mr − T_a),
//
// T_mr being the course at the moment of the reading. An even decay stays one
// under this, metal never falls below the surroundings, and later is never
// hotter. Of several readings the one nearest in time counts. Without a course
// a reading goes on by the time constant, and without that it stands for its
// own moment alone.
//
// # The windows
//
// A mould may be begun once the metal is down to its hottest, and should be
// full while the metal is above its coldest; from that and its pouring time
// follows the latest moment to begin it.
//
// # What it leaves out
//
// The course was reckoned for the times planned: metal that waits full in the
// ladle cools more slowly than the course says, the last of it faster. Trouble
// cards are reminders; the person in charge and the local code decide.
package tending
