// The pages that lie over the pour for a moment: a reading, trouble, a remark,
// and what is seldom wanted. A pour that runs can be stopped from each of them.
import { h } from "../../shared/draw.js";
import { to } from "../../app/route.js";
import { degrees, metalNow, running } from "./pour.js";
import { entry } from "./record.js";
import { remarks } from "./words.js";

const steps = [-50, -10, -5, -1, 1, 5, 10, 50];

const head = (words) => h("h1", { key: "h1", class: "furnace-small", tabindex: "-1" }, words);
const back = (f) => h("button", { key: "back", type: "button", class: "far", "data-action": "back", onclick: () => f.open("") }, "Back");

/** What the stepper begins with: the metal as it should be now, else what is nearest to it. */
function begins(furnace, now) {
  const a = furnace?.answers;
  const known = [a?.read, a?.tap, a?.moulds[0]?.high].find((leaf) => leaf && !leaf.unknown);
  return metalNow(furnace, now) ?? (known ? Math.round(parseFloat(known.text)) : 700);
}

export function reading(f, { state, now, pouring }) {
  const { furnace } = state;
  const unit = degrees(furnace) || (state.prefs.units === "us" ? "°F" : "°C");
  f.read ??= begins(furnace, now);
  const leave = () => ((f.read = null), f.open(""));
  return [
    head("What does the thermometer say?"),
    h("div", { key: "figure", class: "furnace-thing" }, h("p", { class: "furnace-figure", "data-figure": "read", "aria-live": "polite" }, String(f.read), h("span", { class: "furnace-unit" }, " " + unit))),
    h("div", { key: "steps", class: "furnace-steps" }, steps.map((n) => h("button", { type: "button", class: "far far-step", "data-step": String(n), onclick: () => ((f.read += n), f.draw()) }, n > 0 ? `+${n}` : `−${-n}`))),
    h("div", { key: "acts", class: "furnace-acts" }, h("button", { type: "button", class: "far far-main", "data-action": "write-reading", onclick: f.once(() => (f.tell("reading", { temperature: `${f.read} ${unit}` }), leave())) }, "Write it down"), h("div", { class: "furnace-row" }, h("button", { type: "button", class: "far", "data-action": "back", onclick: leave }, "Back"))),
    running(f, pouring),
  ];
}

export function cards(f, { state, pouring }) {
  const list = state.furnace?.answers?.trouble ?? [];
  return [head("What goes wrong?"), h("p", { key: "doubt", class: "furnace-more", "data-in-doubt": true }, state.furnace?.answers?.in_doubt.text ?? ""), h("div", { key: "list", class: "furnace-list furnace-two" }, list.map((c) => h("button", { type: "button", class: "far far-words", "data-card-way": c.code.text, onclick: f.once(() => f.open("card", c.code.text)) }, c.title.text))), back(f), running(f, pouring)];
}

export function card(f, { state, moulds, pouring }) {
  const c = state.furnace.answers.trouble.find((t) => t.code.text === f.detail);
  const mould = concerned(f, moulds, pouring);
  return [
    h("h1", { key: "h1", class: "furnace-point", tabindex: "-1" }, c.title.text),
    h("ol", { key: "steps", class: "furnace-numbered", "data-trouble-card": c.code.text }, c.steps.map((s) => h("li", null, s.text))),
    h("p", { key: "law", class: "furnace-more" }, c.law.text),
    h("p", { key: "source", class: "furnace-source" }, c.source.text),
    h("div", { key: "acts", class: "furnace-row" }, f.clock && h("button", { key: "write", type: "button", class: "far", "data-action": "write-trouble", onclick: f.once(() => (f.tell("trouble", { note: c.title.text, ...mould }), f.open(""))) }, "It happened: write it down"), back(f)),
    running(f, pouring),
  ];
}

/** The mould that a remark is about: the one that runs, else the one begun last. */
function concerned(f, moulds, pouring) {
  const begun = moulds.filter((m) => m.begun !== undefined);
  const m = pouring ?? begun.reduce((a, b) => (a && a.begun >= b.begun ? a : b), null);
  return m ? { mould: String(m.number), name: m.name } : {};
}

export function remarking(f, { moulds, pouring }) {
  const mould = concerned(f, moulds, pouring);
  return [head(mould.name ? `Remark on ${mould.name}` : "Remark"), h("div", { key: "list", class: "furnace-list furnace-two" }, remarks.map((r) => h("button", { type: "button", class: "far far-words", "data-remark": r, onclick: f.once(() => (f.tell("remark", { note: r, ...mould }), f.open(""))) }, r))), back(f), running(f, pouring)];
}

export function more(f, { state }) {
  const last = f.standing.filter((e) => e.what !== "clock").at(-1);
  const wanted = state.furnace?.answers?.wanted ?? [];
  return [
    head("More"),
    h(
      "div",
      { key: "list", class: "furnace-list" },
      last && h("button", { key: "strike", type: "button", class: "far far-words", "data-action": "strike", onclick: f.once(() => (f.strike(last), f.open(""))) }, `Strike out the last entry: ${entry(last)}`),
      h("button", { key: "again", type: "button", class: "far far-words", "data-action": "tapped-again", onclick: f.once(() => f.tapped()) }, "Ladle full again"),
      h("button", { key: "close", type: "button", class: "far far-words", "data-action": "close", onclick: f.once(() => f.open("close")) }, "Close the record"),
    ),
    wanted.length > 0 && h("div", { key: "wanted", class: "furnace-wanted" }, h("p", { class: "furnace-more" }, "Not in the plan, and so not shown here:"), wanted.map((w) => h("a", { key: w.text.text, class: "far far-words", "data-wanted": w.station.text, href: to.sheet(state.open.id, w.station.text) }, w.text.text))),
    back(f),
  ];
}

export function closing(f, { moulds }) {
  const left = moulds.filter((m) => m.state !== "full").map((m) => m.name);
  return [
    head("Close the record?"),
    h("div", { key: "say", class: "furnace-say" }, h("p", { class: "furnace-point" }, left.length > 0 ? `Not poured: ${left.join(", ")}.` : "Every mould is poured."), h("p", { class: "furnace-why" }, "It can be opened again.")),
    h("div", { key: "acts", class: "furnace-acts" }, h("button", { type: "button", class: "far far-main", "data-action": "close-yes", onclick: f.once(() => (f.tell("closed"), f.open(""))) }, "Close it"), h("div", { class: "furnace-row" }, back(f))),
  ];
}
