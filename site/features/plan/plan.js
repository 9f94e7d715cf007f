// One plan: the bar, the pour card, and below them the mould with the open
// sheet, the safe-handling list, or the sheets for paper.
import { h } from "../../shared/draw.js";
import { Element } from "../../shared/element.js";
import { understood } from "../../shared/document.js";
import { caution } from "../../shared/words.js";
import { title } from "../../app/save.js";
import { spreadQuestion } from "../../app/store.js";
import { to } from "../../app/route.js";
import { about } from "../sheet/about.js";
import { bar } from "../bar/bar.js";
import "../card/card.js";
import "../furnace/furnace.js";
import "../handling/handling.js";
import "../mould/drawing.js";
import "../mould/parts-list.js";
import { paperPages } from "../print/room.js";
import "../share/share.js";
import "../sheet/sheet.js";
import "./overview.js";

/** Data: {state}. */
export class Plan extends Element {
  #standing = ""; // the sheet that was open when last drawn
  #due; // the answer that the address leads to, until it is there to be brought into view
  #sought; // the field that the address led to
  #answered = false; // whether there was a reply then

  view({ state: given }) {
    // A reply that has not come in full serves the mould's page alone: every other
    // shows what stands on several sheets.
    const state = given.whole || given.route.page === "mould" ? given : { ...given, reply: null };
    const { open, reply, route, calculators } = state;
    const fields = calculators.find((c) => c.name === "plan").fields;
    const known = about(state);
    const page = route.page;
    if (page === "furnace") return h("main", { key: "furnace", class: "furnace" }, h("pw-furnace", { ".data": { state } }));
    return [
      bar(state),
      reply && h("pw-pour-card", { key: "card", class: "pour-card", role: "region", "aria-label": "Pour card", "aria-busy": String(state.answered !== open.rev && state.engine !== "failed"), ".data": { plan: open.id, card: reply.card } }),
      page === "handling" && h("main", { key: "handling", class: "page" }, h("pw-handling", { ".data": { state, about: known, fields } })),
      page === "print" && h("main", { key: "print", class: "page" }, h("pw-print-room", { ".data": { state } })),
      page === "share" && h("main", { key: "share", class: "page" }, h("pw-share", { ".data": { state } })),
      page === "mould" && this.mould(state, fields, known),
      page === "mould" && h("div", { key: "paper", class: "only-print" }, this.printing && paperPages(state)),
    ];
  }

  mould(state, fields, known) {
    const { open, reply, route, spread, ownHere } = state;
    const fresh = spread?.question === spreadQuestion(state);
    const field = fields.find((f) => f.sort === "group" && f.key === route.station);
    return h(
      "main",
      { key: "mould", class: "bench" },
      h(
        "section",
        { class: "bench-mould", "aria-labelledby": "plan-title" },
        h("h1", { class: "plan-title", id: "plan-title", tabindex: "-1" }, title(open.doc)),
        reply ? h("pw-mould-drawing", { class: "drawing", ".data": { plan: open.id, drawing: reply.drawing, open: route.station } }) : h("p", { key: "wait", class: "drawing quiet" }, "Working it out."),
        reply?.drawing.scale === false && h("p", { key: "sketch", class: "drawing-sketch" }, "A sketch, not to scale until the mould is filled in."),
        reply && h("nav", { class: "parts-place", "aria-label": "Parts" }, h("pw-parts-list", { ".data": { plan: open.id, stations: reply.stations, parts: reply.drawing.parts, open: route.station } })),
        h("p", { class: "caution" }, caution),
      ),
      h(
        "section",
        { class: "bench-sheet", "aria-label": "Sheet" },
        field
          ? h("pw-sheet", {
              key: field.key,
              class: "sheet",
              "data-sheet": field.key,
              ".data": { plan: open.id, station: reply?.stations.find((s) => s.key === field.key) ?? null, field, group: open.doc[field.key], spans: fresh ? (spread.reply.answers ?? []).filter((a) => a.station === field.key) : [], about: known, answer: route.answer },
            })
          : h("pw-overview", { key: "overview", class: "sheet", "data-sheet": "plan", ".data": { shop: ownHere, plan: open.id, doc: open.doc, fields, strange: strangeOf(open.doc, fields), reply, spread: spread?.reply ?? null, fresh, about: known } }),
      ),
    );
  }

  entered() {
    // Printing from the mould prints the chosen sheets.
    this.listen(window, "beforeprint", () => this.paper(true));
    this.listen(window, "afterprint", () => this.paper(false));
  }

  paper(on) {
    this.printing = on;
    this.draw();
  }

  // A sheet that has just been opened takes the focus, and in a stacked
  // layout comes into view; one that is closed gives the focus back to its
  // line in the list of parts. An answer or a field that the address leads to
  // comes into view last.
  drawn() {
    const { field, station, answer } = this.data.state.route;
    const opened = this.#standing !== station;
    this.settle();
    if (opened) this.#due = answer;
    const at = this.#due && this.querySelector(`[data-answer="${CSS.escape(this.#due)}"]`);
    if (at) {
      at.scrollIntoView({ block: "center" });
      this.#due = undefined;
    }
    if (field && field !== this.#sought) this.querySelector("pw-sheet")?.jump(field);
    this.#sought = field;
  }

  settle() {
    const { route, reply } = this.data.state;
    const now = route.page === "mould" ? (route.station ?? "") : route.page;
    const arrived = !this.#answered && Boolean(reply); // the drawing above a stacked sheet
    this.#answered = Boolean(reply);
    if (arrived && route.station) this.querySelector(".bench-sheet").scrollIntoView({ block: "start" });
    if (now === this.#standing) return;
    const closed = now === "" && this.querySelector(`[data-station="${CSS.escape(this.#standing)}"]`);
    this.#standing = now;
    if (closed) return closed.focus();
    const sheet = this.querySelector(".bench-sheet");
    this.querySelector(route.page === "mould" && now !== "" ? ".sheet-title" : "h1")?.focus({ preventScroll: true });
    (now !== "" && sheet ? sheet : this.querySelector("main")).scrollIntoView({ block: "start" });
    sheet?.scrollTo(0, 0);
  }
}

const strangeOf = (doc, fields) => understood(doc, fields).strange;

customElements.define("pw-plan", Plan);
