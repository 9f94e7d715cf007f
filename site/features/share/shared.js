// A plan that the address carries: what it is, and whether to take it.
import { h } from "../../shared/draw.js";
import { Element } from "../../shared/element.js";
import { textOf } from "../../shared/document.js";
import { title } from "../../app/save.js";
import { to } from "../../app/route.js";
import { plainBar } from "../bar/bar.js";

/** Data: {state}. */
export class Shared extends Element {
  view({ state }) {
    const { shared, route } = state;
    const now = shared?.code === route.code ? shared : null;
    return [plainBar(state, "shared"), h("main", { key: "main", class: "page prose" }, !now ? h("h1", { key: "wait", tabindex: "-1" }, "Reading the link") : now.wrong ? this.wrong(now.wrong) : this.ask(now))];
  }

  wrong(why) {
    return [h("h1", { key: "wrong", tabindex: "-1" }, "This link cannot be read"), h("p", { "data-shared": "wrong" }, why), h("p", null, h("a", { class: "button", href: to.start() }, "See your own plans"))];
  }

  ask({ doc, brief }) {
    const facts = [brief?.metal, brief?.poured && `${brief.poured} to pour`].filter(Boolean).join(" · ");
    return [
      h("p", { key: "what", class: "quiet" }, "A plan that somebody shared"),
      h("h1", { key: "title", tabindex: "-1", "data-shared": "title" }, title(doc)),
      facts && h("p", { key: "facts" }, facts),
      textOf(doc.note) && h("p", { key: "note" }, doc.note),
      h("p", { key: "how" }, "It opens as a new plan on this device. None of yours is touched. Its hold points may have been answered for another pour: go through them again."),
      h("p", { key: "acts", class: "share-acts" }, h("button", { type: "button", class: "button button-first", "data-action": "take-shared", onclick: () => this.want("take-shared") }, "Open as a new plan"), h("a", { class: "button button-quiet", href: to.start() }, "Leave it")),
    ];
  }
}

customElements.define("pw-shared", Shared);
