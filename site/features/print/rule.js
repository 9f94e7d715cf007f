// A contraction rule without a plan: the metal, the rule, the paper; how it
// will look, and the working behind it.
import { h } from "../../shared/draw.js";
import { Element } from "../../shared/element.js";
import { plainBar } from "../bar/bar.js";
import { paperOf } from "./choice.js";
import { paperAndPrint, today } from "./room.js";
import { ruleFields } from "./rule-fields.js";
import { ruleSheet } from "./rule-sheet.js";
import "../../shared/working.js";
import "./pages.js";

const answers = ["contraction", "per_metre", "per_foot", "longer", "true", "correction", "count", "pages"];

/** Data: {state}. */
export class Rule extends Element {
  #open = ""; // the answer whose working is unfolded
  #made = { of: null, sheets: [] };

  view({ state }) {
    const { reply } = state.rule;
    return [
      plainBar(state),
      h(
        "main",
        { key: "main", class: "page" },
        h(
          "div",
          { class: "print-room" },
          h(
            "div",
            { key: "choice", class: "print-choice no-print" },
            h("h1", { tabindex: "-1" }, "Contraction rule"),
            h("p", { class: "quiet" }, "A rule longer than true by what the metal contracts. Lay off the sizes of the casting with it, and the pattern is right."),
            paperAndPrint(this, state),
            h("section", { key: "fields", class: "print-rule", "aria-label": "What you know" }, h("h2", { class: "out-of-sight" }, "The rule"), h("h3", { class: "out-of-sight" }, "What you know"), ruleFields(this, state, () => true)),
            reply?.answers && this.told(reply),
          ),
          h("section", { key: "preview", class: "print-preview", "aria-label": "The rule" }, reply?.answers ? h("pw-pages", { class: "paper-pages", ".data": { sheets: this.sheets(state), name: reply.answers.name.text, date: today(), paper: paperOf(state) } }) : h("p", { class: "quiet" }, reply ? "The rule stands here as soon as the entries are right." : "Working it out.")),
        ),
      ),
    ];
  }

  sheets({ rule }) {
    if (this.#made.of !== rule.reply) this.#made = { of: rule.reply, sheets: [{ key: "rule", title: "Contraction rule", ...ruleSheet(rule.reply.answers) }] };
    return this.#made.sheets;
  }

  told({ answers: all, steps }) {
    return h(
      "section",
      { key: "told", class: "rule-told" },
      h("h2", null, "What follows"),
      h(
        "div",
        { class: "answer-lines" },
        answers.map((key) => {
          const leaf = all[key];
          const open = this.#open === key;
          const body = [h("span", { class: "answer-label" }, leaf.label), h("span", { class: "answer-text" }, key === "correction" ? all.correction_says.text : leaf.text)];
          return h(
            "div",
            { key, class: "answer", "data-answer": key },
            Number.isInteger(leaf.step)
              ? h("button", { type: "button", class: "answer-line answer-button", "aria-expanded": String(open), onclick: () => this.unfold(open ? "" : key) }, body, h("span", { class: "answer-how", "aria-hidden": "true" }, open ? "−" : "+"))
              : h("div", { class: "answer-line" }, body),
            open && h("pw-working", { class: "working", ".data": { steps, step: leaf.step } }),
          );
        }),
      ),
    );
  }

  unfold(key) {
    this.#open = key;
    this.draw();
  }
}

customElements.define("pw-rule", Rule);
