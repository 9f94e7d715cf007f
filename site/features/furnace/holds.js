// Before the pour: the hold points of the safe-handling list, one at a time,
// and what is ready when they are answered. None is passed by without an answer
// or a reason, and both are kept.
import { h } from "../../shared/draw.js";
import { to } from "../../app/route.js";
import { listless, reasons } from "./words.js";

/** The hold points with what the plan's own answers say of them by now. */
function pointsOf(list, doc) {
  const answers = doc.handling?.answers ?? [];
  return list.sections
    .flatMap((s) => s.items)
    .filter((item) => item.hold)
    .map((item) => {
      const a = answers.find((x) => x.code === item.code);
      const settled = a?.answer === "yes" || Boolean(a?.answer && a.reason?.trim());
      return { ...item, settled, aside: settled && a.answer !== "yes", reason: a?.reason?.trim() };
    });
}

/** What stands before the ladle is full: {name, of, view}. */
export function holds(f, { state, moulds, list }) {
  if (!list) return withoutList(f, state) ?? ready(f, state, moulds, []);
  const points = pointsOf(list, state.open.doc);
  const at = points.findIndex((p) => (f.chosenHold ? p.code === f.chosenHold : !p.settled));
  return at < 0 ? ready(f, state, moulds, points) : { name: "hold", of: points[at].code, view: point(f, points, at) };
}

function point(f, points, at) {
  const p = points[at];
  const go = (to) => () => ((f.chosenHold = points[to]?.code ?? null), f.draw());
  const done = () => ((f.chosenHold = null), f.draw());
  return [
    h("h1", { key: "h1", class: "furnace-small", tabindex: "-1" }, `Hold point ${at + 1} of ${points.length}`, p.settled && (p.aside ? ": set aside" : ": answered")),
    h("div", { key: "say", class: "furnace-say" }, h("p", { class: "furnace-point", "data-hold-point": p.code }, p.text), h("p", { class: "furnace-why" }, p.settled && p.reason ? `Reason: ${p.reason}.` : p.why)),
    h(
      "div",
      { key: "acts", class: "furnace-acts" },
      h("button", { type: "button", class: "far far-main", "data-action": "hold-yes", onclick: f.once(() => (f.want("hold", { code: p.code, change: { answer: "yes", reason: undefined }, done: true }), done())) }, "Yes, it is so"),
      h("div", { class: "furnace-row" }, h("button", { type: "button", class: "far", "data-action": "hold-aside", onclick: f.once(() => f.open("aside", p)) }, "No: set it aside"), at > 0 && h("button", { key: "back", type: "button", class: "far", "data-action": "hold-back", onclick: f.once(go(at - 1)) }, "Back"), p.settled && h("button", { key: "on", type: "button", class: "far", "data-action": "hold-on", onclick: f.once(at + 1 < points.length ? go(at + 1) : done) }, "On")),
    ),
  ];
}

/** The reasons to set a hold point aside; without one it stays open. */
export function aside(f) {
  const p = f.detail;
  const list = p ? reasons : listless.map((reason) => ["no", reason]);
  const set = (answer, reason) => {
    if (p) f.want("hold", { code: p.code, change: { answer, reason }, done: true });
    f.tell("hold", { note: p ? `“${p.text}” ${reason}` : `No safe-handling list: ${reason}` });
    f.chosenHold = null;
    f.open("");
  };
  return [
    h("h1", { key: "h1", class: "furnace-small", tabindex: "-1" }, "Why? The reason goes into the record"),
    h("div", { key: "list", class: "furnace-list" }, list.map(([answer, reason]) => h("button", { type: "button", class: "far far-words", "data-reason": reason, onclick: f.once(() => set(answer, reason)) }, reason))),
    h("button", { key: "back", type: "button", class: "far", "data-action": "back", onclick: () => f.open("") }, "Back, leave it open"),
  ];
}

function withoutList(f, state) {
  if (!state.reply || f.standing.some((e) => e.what === "hold" && e.note?.startsWith("No safe-handling list"))) return null;
  const station = state.reply.stations.find((s) => s.key === "handling");
  const missing = [...station.faults, ...station.needs].map((n) => n.label.toLowerCase());
  return {
    name: "no-list",
    view: [
      h("h1", { key: "h1", class: "furnace-small", tabindex: "-1" }, "Hold points first"),
      h("div", { key: "say", class: "furnace-say" }, h("p", { class: "furnace-point" }, "The safe-handling list of this pour is not made yet."), h("p", { class: "furnace-why" }, `It wants: ${missing.join(", ")}.`)),
      h("div", { key: "acts", class: "furnace-acts" }, h("a", { class: "far far-main", href: to.sheet(state.open.id, "handling") }, "Fill it in"), h("div", { class: "furnace-row" }, h("button", { type: "button", class: "far", "data-action": "hold-aside", onclick: f.once(() => f.open("aside", "")) }, "Go on without it"))),
    ],
  };
}

function ready(f, state, moulds, points) {
  const set = points.filter((p) => p.aside).length;
  const { tap } = state.furnace?.answers ?? {};
  const waits = !state.reply || !state.furnace;
  const counted = points.length === 0 ? "No hold points" : `${points.length} hold points answered` + (set > 0 ? `, ${set} of them set aside` : "");
  return {
    name: waits ? "wait" : "ready",
    view: waits
      ? h("h1", { key: "h1", class: "furnace-small", tabindex: "-1" }, "Working it out")
      : [
          h("h1", { key: "h1", class: "furnace-small", tabindex: "-1" }, counted),
          h("div", { key: "tap", class: "furnace-say" }, tap && !tap.unknown ? [h("p", { class: "furnace-label" }, "Tap at"), h("p", { class: "furnace-figure", "data-figure": "tap" }, tap.text)] : h("p", { class: "furnace-point" }, "At what to tap is not known."), moulds.length > 1 && h("p", { class: "furnace-why" }, "Pour in this order: " + moulds.map((m) => m.name).join(", ") + ".")),
          h(
            "div",
            { key: "acts", class: "furnace-acts" },
            h("button", { type: "button", class: "far far-main", "data-action": "tapped", onclick: f.once(() => f.tapped()) }, "Ladle full"),
            h("div", { class: "furnace-row" }, points.length > 0 && h("button", { type: "button", class: "far", "data-action": "holds-again", onclick: f.once(() => ((f.chosenHold = points[0].code), f.draw())) }, "Look through the hold points"), h("button", { type: "button", class: "far", "data-action": "trouble", onclick: f.once(() => f.open("trouble")) }, "Trouble")),
          ),
        ],
  };
}
