// The pour card: the plan's few ruling numbers, always in sight. Each leads to
// the sheet it comes from, with its working open.
import { h } from "../../shared/draw.js";
import { Element } from "../../shared/element.js";
import { shape } from "../../shared/mark.js";
import { stateWords, together } from "../../shared/words.js";
import { to } from "../../app/route.js";

/** Data: {plan (id), card (the reply's)}. */
export class PourCard extends Element {
  view({ plan, card }) {
    return h(
      "ul",
      { class: "card", style: { "--count": String(card.length) } },
      card.map((c) => {
        const troubled = c.state === "stop" || c.state === "mind" || c.state === "fault";
        return h(
          "li",
          { key: c.key, class: "card-item", "data-card": c.key },
          h(
            "a",
            { class: "card-link", href: to.sheet(plan, c.station, c.unknown ? "" : c.answer) },
            h("span", { class: "card-label" }, c.label),
            h("span", { class: c.unknown ? "card-text card-unknown" : "card-text" }, together(c.text), troubled && [" ", shape(c.state), h("span", { class: "out-of-sight" }, ", " + stateWords[c.state])]),
          ),
        );
      }),
    );
  }
}

customElements.define("pw-pour-card", PourCard);
