// The plain list of the stations, by when in the work they are wanted, each
// with the parts of the drawing that lead to it: the same way in for keyboard
// and screen reader.
import { h } from "../../shared/draw.js";
import { Element, idOf } from "../../shared/element.js";
import { shape, stateMark } from "../../shared/mark.js";
import { stateWords } from "../../shared/words.js";
import { to } from "../../app/route.js";

const groups = [
  ["Planning the casting", ["metal", "iron", "pattern", "cores", "weight", "feeding"]],
  ["Mould and pour", ["mould", "pour", "gating", "filling", "holddown"]],
  ["Melting", ["charge", "melting"]],
  ["At the ladle", ["ladle", "ladleheat", "order"]],
  ["Afterwards", ["cooling", "shop"]],
  ["People", ["lifting", "handling"]],
];
const placed = new Set(groups.flatMap(([, keys]) => keys));

/** Data: {plan (id), stations, parts (of the drawing), open (station)}. */
export class PartsList extends Element {
  view(data) {
    const more = data.stations.map((s) => s.key).filter((key) => !placed.has(key));
    return [
      h("h2", { class: "out-of-sight" }, "Parts"),
      h("div", { class: "parts" }, [...groups, ["More", more]].map(([title, keys]) => this.group(title, data.stations.filter((s) => keys.includes(s.key)), data))),
    ];
  }

  group(title, stations, data) {
    if (stations.length === 0) return null;
    const id = idOf(title, "-parts");
    return h("section", { key: title, class: "parts-group" }, h("h3", { class: "parts-when", id }, title), h("ol", { "aria-labelledby": id }, stations.map((s) => this.part(s, data))));
  }

  part(s, { plan, parts, open }) {
    const own = parts.map((p, i) => [i + 1, p]).filter(([, p]) => p.station === s.key);
    const blank = s.state === "blank";
    return h(
      "li",
      { key: s.key, class: "part" },
      h(
        "a",
        { class: blank ? "part-link part-blank" : "part-link", href: to.sheet(plan, s.key), "data-station": s.key, "data-state": s.state, "aria-current": open === s.key ? "true" : undefined },
        h("span", { class: "part-name" }, s.title),
        blank || s.state === "fine" ? h("span", { key: s.state, class: "state state-" + s.state }, shape(s.state), h("span", { class: "out-of-sight" }, stateWords[s.state])) : stateMark(s.state),
        own.length > 0 && h("span", { class: "part-parts" }, own.map(([n, p]) => h("span", { class: "part-part" }, h("span", { class: "part-number", "aria-hidden": "true" }, String(n)), p.label))),
      ),
    );
  }
}

customElements.define("pw-parts-list", PartsList);
