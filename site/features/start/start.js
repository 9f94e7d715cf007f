// The start page: what this is and how it goes, for those who have no plan yet;
// the plans kept on this device, for those who have; the examples.
import { h } from "../../shared/draw.js";
import { Element } from "../../shared/element.js";
import { caution } from "../../shared/words.js";
import { title } from "../../app/save.js";
import { to } from "../../app/route.js";
import { plainBar } from "../bar/bar.js";
import "../mould/drawing.js";
import "./plan-list.js";

const ways = [
  ["Say what you pour.", "Pick the metal, and measure the casting: calipers for the walls, a rule for the length, a scale for the pattern. Each field says where to get its figure."],
  ["Touch the drawing.", "Every part of the mould opens its sheet. What you leave blank follows from the rest, and each answer opens to its sum and its source."],
  ["Read what wants attention.", "It says what is wrong, by how much, and what to change first. Then answer the hold points, print the pour sheet, and pour."],
];

/** Data: {state, examples}. */
export class Start extends Element {
  view({ state, examples }) {
    const { plans, briefs } = state;
    return [
      plainBar(state, "start"),
      h(
        "main",
        { key: "main", class: "start" },
        h(
          "section",
          { key: "lead", class: "start-lead" },
          h("pw-mould-drawing", { key: "sketch", class: "start-sketch", ".data": { drawing: state.sketch } }),
          h("h1", { tabindex: "-1" }, "Plan the pour before the metal is hot"),
          h("p", { class: "start-about" }, "One sand casting, from pattern to shakeout: contraction, risers, gating, pouring time, ladle, weights, crew. Without a network; what you enter stays on this device."),
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
            h("details", { class: "fold link-way" }, h("summary", null, "Open a link"), this.link()),
          ),
        ),
        plans?.length > 0 && h("pw-plan-list", { key: "saved", class: "start-list", ".data": { plans, briefs } }),
        plans?.length === 0 && h("section", { key: "ways", class: "start-list start-how" }, h("h2", null, "How it goes"), h("ol", { class: "how" }, ways.map(([what, how], i) => h("li", null, h("span", { class: "list-number", "aria-hidden": "true" }, String(i + 1)), h("p", null, h("b", null, what), " ", how))))),
        plans && examples.length > 0 && h(
          "section",
          { key: "examples", class: "start-list start-examples" },
          h("h2", null, "Examples"),
          h("p", { class: "quiet" }, "Each opens as a copy of your own to change."),
          h("ul", { class: "plans" }, examples.map((e, i) => h("li", { key: e.file, class: "plan-row" }, h("button", { type: "button", class: "plan-open", "data-example": e.file, onclick: () => this.want("open-example", { at: i }) }, h("span", { class: "plan-name" }, title(e.plan)), e.plan.note && h("span", { class: "plan-note" }, firstSentence(e.plan.note)))))),
        ),
        plans && h("p", { key: "caution", class: "caution" }, caution), // so that nothing is pushed down when the plans come
      ),
    ];
  }

  // For a link or a code that reached this device as a text.
  link() {
    return h(
      "form",
      {
        class: "link-form",
        onsubmit: (e) => {
          e.preventDefault();
          this.want("open-link", { text: e.currentTarget.elements.link.value });
        },
      },
      h("label", { class: "field-label", for: "pasted-link" }, "Paste the link, or what the QR code said"),
      h("input", { id: "pasted-link", name: "link", class: "field-input", type: "text", autocomplete: "off", spellcheck: "false", "data-field": "link" }),
      h("button", { type: "submit", class: "button", "data-action": "open-link" }, "Open it"),
    );
  }
}

export const firstSentence = (text) => text.match(/^.*?[.](?=\s|$)/s)?.[0] ?? text;

customElements.define("pw-start", Start);
