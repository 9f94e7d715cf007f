// The plain list of the stations, each with the parts of the drawing that lead
// to it: the same way in for keyboard and screen reader.
import { h } from "../../shared/draw.js";
import { Element } from "../../shared/element.js";
import { stateMark } from "../../shared/mark.js";
import { to } from "../../app/route.js";

/** Data: {plan (id), stations, parts (of the drawing), open (station)}. */
export class PartsList extends Element {
  view({ plan, stations, parts, open }) {
    return [
      h("h2", { class: "parts-title" }, "Parts"),
      h(
        "ol",
        { class: "parts" },
        stations.map((s) => {
          const own = parts.map((p, i) => [i + 1, p]).filter(([, p]) => p.station === s.key);
          return h(
            "li",
            { key: s.key, class: "part" },
            h(
              "a",
              { class: "part-link", href: to.sheet(plan, s.key), "data-station": s.key, "data-state": s.state, "aria-current": open === s.key ? "true" : undefined },
              h("span", { class: "part-name" }, s.title),
              stateMark(s.state),
              own.length > 0 && h("span", { class: "part-parts" }, own.map(([n, p]) => h("span", { class: "part-part" }, h("span", { class: "part-number", "aria-hidden": "true" }, String(n)), p.label))),
            ),
          );
        }),
      ),
    ];
  }
}

customElements.define("pw-parts-list", PartsList);
