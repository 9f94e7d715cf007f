// The pour as it runs. Between two moulds: the metal, the window that is left,
// and Start. While one is poured: its time against its band, the tilt, and Stop.
import { h } from "../../shared/draw.js";
import { along, span } from "./clock.js";
import { drawnLadle } from "./ladle.js";

/** The metal as the engine's curve has it at this moment: in whole degrees, or null. */
export function metalNow(furnace, now) {
  const T = along(furnace?.answers?.course.points, now);
  return T === null ? null : Math.round(T);
}

/** A name as a heading has it. */
export const capital = (name) => name.charAt(0).toUpperCase() + name.slice(1);

export const degrees = (furnace) => furnace?.answers?.course.yUnit ?? "";

export function pour(f, { state, now, moulds, pouring }) {
  const { furnace } = state;
  const next = pouring ?? moulds.find((m) => m.number === f.chosen) ?? proposed(furnace, now, moulds) ?? null;
  return [
    h("h1", { key: "h1", class: "out-of-sight", tabindex: "-1" }, "The pour"),
    pouring ? time(pouring, now) : metal(f, furnace, now),
    pouring ? tilt(pouring, now, furnace) : windows(f, moulds, next, now),
    h("p", { key: "do", class: "furnace-do", "data-do": step(furnace, now)?.level.text }, step(furnace, now)?.do.text ?? ""),
    furnace || pouring ? act(f, next, pouring) : h("p", { key: "wait", class: "furnace-point" }, "Working it out"),
    foot(f, pouring),
  ];
}

/** The line of the engine's timetable that holds now. */
const step = (furnace, now) => furnace?.answers?.next.findLast((s) => s.from.si <= now + 0.5) ?? furnace?.answers?.next[0];

/** The mould that the timetable names now, else the first that is not poured. */
function proposed(furnace, now, moulds) {
  const named = step(furnace, now)?.mould?.value;
  return moulds.find((m) => m.number === named && m.state === "ahead") ?? moulds.find((m) => m.state === "ahead");
}

/** The one big button: start, stop, and at the end the closing. */
function act(f, next, pouring) {
  const big = (action, label, does, stop) => h("button", { key: "act", type: "button", class: "far far-main" + (stop ? " far-stop" : ""), "data-action": action, onclick: f.once(does) }, label);
  if (pouring) return big("stop", `Stop ${pouring.name}`, () => f.turn("stop", pouring), true);
  if (next) return big("start", `Start ${next.name}`, () => f.turn("start", next));
  return big("close", "Close the record", () => f.open("close"));
}

function foot(f, pouring) {
  const way = (page, label) => h("button", { key: page, type: "button", class: "far", "data-action": page, onclick: () => f.open(page) }, label);
  return h("div", { key: "foot", class: "furnace-row furnace-foot" }, way("reading", "Reading"), way("trouble", "Trouble"), way("remark", "Remark"), !pouring && way("more", "More"));
}

/** The stop of a running pour, for the pages that lie over it. */
export const running = (f, pouring) => pouring && act(f, null, pouring);

function metal(f, furnace, now) {
  const a = furnace?.answers;
  const T = metalNow(furnace, now);
  const read = a && !a.read.unknown && `read ${a.read.text} ${span(now - a.read_at.si)} ago`;
  const falls = a && T !== null && !a.per_minute.unknown && `falls ${a.per_minute.text} in a minute`;
  const freezes = T === null && a && !a.freezes_at.unknown && now >= a.freezes_at.si;
  const words = [read, falls].filter(Boolean).join(", ") || (a?.wanted.length > 0 && T === null ? `Not in the plan: ${a.wanted[0].text.text}.` : "");
  return h(
    "div",
    { key: "metal", class: "furnace-thing" },
    h("p", { class: "furnace-label" }, "Metal now", h("span", { class: "furnace-since" }, `${span(now)} since tapping`)),
    h("p", { class: "furnace-figure", "data-figure": "metal" }, T !== null ? [String(T), unit(" " + degrees(furnace))] : freezes ? "freezing" : a && !a.read.unknown ? a.read.text : "not known"),
    h("p", { class: "furnace-more" }, a?.read.unknown && T !== null ? `Not read yet: by the ladle's course. ${capital(words)}` : capital(words)),
  );
}

/** The words behind a figure. */
const unit = (words) => h("span", { class: "furnace-unit" }, words);

/** What is left to begin a mould in: [words, figure, level]. */
function left(m, now) {
  if (m.state === "full") return [`poured in ${span(m.ended - m.begun)}`, "full", "done"];
  if (m.cold) return ["too cold for it", "cold", "stop"];
  if (m.opens !== undefined && now < m.opens) return ["still too hot for it", "wait " + span(m.opens - now), "wait"];
  const end = m.beginBy ?? m.fullBy;
  if (end === undefined) return ["its window is not known", "–", "unknown"];
  if (now >= end) return [`too late by ${span(now - end)}`, "late", "stop"];
  return [m.beginBy !== undefined ? "left to begin" : "left to be full", span(end - now), "go"];
}

const range = ({ low, high }) => (low.unknown || high.unknown ? "" : `${low.text} to ${high.text}`);

function windows(f, moulds, next, now) {
  const [words, figure, level] = next ? left(next, now) : ["every mould is poured", "", "done"];
  const others = moulds.filter((m) => m !== next);
  return h(
    "div",
    { key: "windows", class: "furnace-thing" },
    next && h("p", { key: "name", class: "furnace-label" }, capital(next.name), h("span", { class: "furnace-since" }, range(next.answers))),
    h("p", { key: "left", class: "furnace-figure furnace-second", "data-figure": "left", "data-level": level }, figure, figure && unit(" " + words)),
    others.length > 0 &&
      h(
        "ol",
        { key: "others", class: "furnace-others", "aria-label": "The other moulds, in order" },
        others.map((m) => {
          const [what, time] = left(m, now);
          return h("li", { key: m.number }, h("button", { type: "button", class: "far far-other", "data-mould": String(m.number), "data-state": m.state, onclick: () => ((f.chosen = m.number), f.draw()) }, h("b", null, capital(m.name)), h("span", null, m.state === "full" ? what : `${time} ${what}`)));
        }),
      ),
  );
}

/** Where a running pour stands in its band. */
function where(m, since) {
  if (m.shortest !== undefined && since < m.shortest) return ["early", "too early to stop"];
  if (m.longest !== undefined && since > m.longest) return ["late", "late"];
  if (m.shortest === undefined || m.longest === undefined) return ["unknown", m.target === undefined ? "its time is not known" : "its band is not known"];
  return ["good", "in time"];
}

function time(m, now) {
  const since = Math.max(now - m.begun, 0);
  const [band, words] = where(m, since);
  return h(
    "div",
    { key: "time", class: "furnace-thing" },
    h("p", { class: "furnace-label" }, capital(m.name), h("span", { class: "furnace-since" }, m.target === undefined ? "" : `aim for ${m.answers.target.text}`)),
    h("p", { class: "furnace-figure", "data-figure": "pouring", "data-band": band }, since < 60 ? String(Math.floor(since)) : span(since), unit(` ${since < 60 ? "s, " : ""}${words}`)),
    strip(m, since),
  );
}

/** The band drawn: early, in time, late, the time to aim for, and where it stands. */
function strip(m, since) {
  if (m.target === undefined) return null;
  const end = Math.max(Math.min(m.longest ?? m.target * 1.6, m.target * 2.5) * 1.2, since * 1.02, m.target * 1.3);
  const x = (t) => Math.min((t / end) * 1000, 1000);
  const [from, till] = [x(m.shortest ?? 0), x(m.longest ?? end)];
  const known = m.shortest !== undefined && m.longest !== undefined;
  return h(
    "svg:svg",
    { key: "strip", class: "strip", viewBox: "0 0 1000 70", preserveAspectRatio: "none", "aria-hidden": "true" },
    h("svg:path", { class: "strip-all", d: "M0 14H1000V56H0Z" }),
    known && h("svg:path", { class: "strip-good", d: `M${from} 14H${till}V56H${from}Z` }),
    h("svg:path", { class: "strip-aim", d: `M${x(m.target)} 4V66` }),
    h("svg:path", { class: "strip-now", d: `M0 24H${x(since)}V46H0Z` }),
  );
}

function tilt(m, now, furnace) {
  const since = Math.max(now - m.begun, 0);
  const { tilt, beats, beat } = m.answers;
  const T = metalNow(furnace, now);
  const small = h("p", { class: "furnace-more" }, T === null ? "" : `Metal ${T} ${degrees(furnace)}`);
  if (tilt.points.length === 0) {
    return h("div", { key: "tilt", class: "furnace-thing" }, h("p", { class: "furnace-point", "data-figure": "tilt" }, "The tilt is not known."), h("p", { class: "furnace-more" }, "The beat counts the seconds."), small);
  }
  const next = beats.points.find(([t]) => t > since)?.[1] ?? null;
  // Without movement the ladle steps from beat to beat.
  const calm = matchMedia("(prefers-reduced-motion: reduce)").matches;
  const due = calm ? beats.points.findLast(([t]) => t <= since)?.[1] : along(tilt.points, since);
  const angle = due ?? tilt.points.at(-1)[1];
  const whole = Math.round(angle);
  return h(
    "div",
    { key: "tilt", class: "furnace-thing furnace-tilt" },
    drawnLadle(angle, next, `The ladle at ${whole} degrees`),
    h("div", { class: "furnace-tilt-words" }, h("p", { class: "furnace-figure furnace-second", "data-figure": "tilt" }, `${whole}°`), h("p", { class: "furnace-more" }, beat.unknown ? "" : `each beat ${beat.text} more`), small),
  );
}
