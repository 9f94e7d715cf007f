// The start page: what this is, the examples, a new plan, a plan file, and the
// plans kept on this device.
import { h } from "../../shared/draw.js";
import { Element } from "../../shared/element.js";
import { caution } from "../../shared/words.js";
import { title } from "../../app/save.js";
import { to } from "../../app/route.js";
import { plainBar } from "../bar/bar.js";
import "../mould/drawing.js";

/** Data: {state, examples}. */
export class Start extends Element {
  #asking = ""; // the plan that was asked to be deleted

  view({ state, examples }) {
    return [
      plainBar(state, "start"),
      h(
        "main",
        { key: "main", class: "start" },
        h(
          "section",
          { class: "start-lead" },
          h("pw-mould-drawing", { key: "sketch", class: "start-sketch", ".data": { drawing: state.sketch } }),
          h("h1", { tabindex: "-1" }, "Plan the pour before the metal is hot"),
          h(
            "p",
            { class: "start-about" },
            "Pourwright plans one sand casting from pattern to shakeout: contraction, weight and risers, pouring time and gating, the lift on the cope, ladle and crew. It shows every formula with its source and says what to change first. It works without a network, and what you enter stays on this device.",
          ),
          h(
            "div",
            { class: "start-ways" },
            h("button", { type: "button", class: "button button-first", "data-action": "new-plan", onclick: () => this.want("new-plan") }, "New plan"),
            h(
              "label",
              { class: "button file-way" },
              h("input", {
                type: "file",
                class: "file-input",
                accept: ".json,application/json",
                "data-action": "open-file",
                onchange: (e) => {
                  const [file] = e.target.files;
                  e.target.value = "";
                  if (file) this.want("open-file", { file });
                },
              }),
              h("span", null, "Open a plan file"),
            ),
            h("a", { class: "button", href: to.rule() }, "Contraction rule"),
          ),
        ),
        examples.length > 0 &&
          h(
            "section",
            { key: "examples", class: "start-list" },
            h("h2", null, "Examples"),
            h("p", { class: "quiet" }, "Each opens as a copy of your own to change."),
            h("ul", { class: "plans" }, examples.map((e, i) => h("li", { key: e.file, class: "plan-row" }, h("button", { type: "button", class: "plan-open", "data-example": e.file, onclick: () => this.want("open-example", { at: i }) }, h("span", { class: "plan-name" }, title(e.plan)), e.plan.note && h("span", { class: "plan-note" }, firstSentence(e.plan.note)))))),
          ),
        h(
          "section",
          { key: "saved", class: "start-list" },
          h("h2", null, "Saved plans"),
          state.plans === null
            ? h("p", { class: "quiet" }, "Looking on this device.")
            : state.plans.length === 0
              ? h("p", { class: "quiet" }, "None yet. A plan saves itself here at every change.")
              : h("ul", { class: "plans" }, state.plans.map((p) => this.saved(p))),
        ),
        h("p", { key: "caution", class: "caution" }, caution),
      ),
    ];
  }

  saved(p) {
    const asking = this.#asking === p.id;
    const act = (type, label, action) => h("button", { type: "button", class: "button button-quiet", "data-action": type, "aria-label": `${label}: ${p.title}`, onclick: action }, label);
    return h(
      "li",
      { key: p.id, class: "plan-row", "data-plan": p.id },
      h("a", { class: "plan-open", href: to.plan(p.id) }, h("span", { class: "plan-name" }, p.title), h("span", { class: "plan-note" }, "Changed " + when(p.changed))),
      asking
        ? h(
            "div",
            { key: "asking", class: "plan-acts", role: "group", "aria-label": `Delete ${p.title}` },
            h("span", { class: "plan-ask" }, "Delete for good?"),
            h("button", { type: "button", class: "button", "data-action": "delete-plan-yes", onclick: () => ((this.#asking = ""), this.want("delete-plan", { id: p.id })) }, "Delete"),
            h("button", { type: "button", class: "button button-quiet", onclick: () => this.ask("") }, "Keep"),
          )
        : h("div", { key: "acts", class: "plan-acts" }, act("copy-plan", "Duplicate", () => this.want("copy-plan", { id: p.id })), act("delete-plan", "Delete", () => this.ask(p.id))),
    );
  }

  ask(id) {
    const row = id || this.#asking;
    this.#asking = id;
    this.draw();
    this.querySelector(`[data-plan="${row}"] .plan-acts button`)?.focus();
  }
}

const when = (iso) => new Date(iso).toLocaleString("en-GB", { dateStyle: "medium", timeStyle: "short" });

const firstSentence = (text) => text.match(/^.*?[.](?=\s|$)/s)?.[0] ?? text;

customElements.define("pw-start", Start);
