// The print room: which sheets, on which paper, how they will look, and the
// button. What stands here as pages is what the printer gets.
import { h } from "../../shared/draw.js";
import { Element } from "../../shared/element.js";
import { title } from "../../app/save.js";
import { to } from "../../app/route.js";
import { fromPlan, kinds, paperOf, wanted } from "./choice.js";
import { handlingSheet } from "./handling-sheet.js";
import { mouldSheet } from "./mould-sheet.js";
import { patternSheet } from "./pattern-sheet.js";
import { pourSheet } from "./pour-sheet.js";
import { ruleFields } from "./rule-fields.js";
import { ruleSheet } from "./rule-sheet.js";
import "./pages.js";

const makers = { pour: pourSheet, handling: handlingSheet, pattern: patternSheet, mould: mouldSheet };

const lacking = {
  handling: "comes with what the list is made from",
  pattern: "comes with the first size",
  mould: "comes when the mould is laid out",
  rule: "comes with the metal",
};

export const today = () => new Date().toLocaleDateString("en-GB", { dateStyle: "long" });

/** A sheet of the plan, or null where there is nothing to put on it yet. */
function sheet(state, key, label) {
  if (key !== "rule") {
    const blocks = makers[key](state);
    return blocks && { key, title: label, blocks };
  }
  const answers = state.rule.reply?.answers;
  return answers ? { key, title: label, ...ruleSheet(answers) } : null;
}

// Pages are measured whenever their sheets change, so the same state gives the
// same sheets.
let made = { of: [], sheets: [] };

export function sheetsOf(state) {
  const of = [state.open, state.reply, state.print, state.rule, state.prefs];
  if (of.some((v, i) => v !== made.of[i])) made = { of, sheets: state.reply ? kinds.filter(([key]) => wanted(state, key)).map(([key, label]) => sheet(state, key, label)).filter(Boolean) : [] };
  return made.sheets;
}

/** The pages; while the answers to the last change are not there, or not in full, only a line that says so. */
export const paperPages = (state) =>
  state.whole && state.answered === state.open.rev && !state.broken
    ? h("pw-pages", { key: "pages", class: "paper-pages", ".data": { sheets: sheetsOf(state), name: title(state.open.doc), date: today(), paper: paperOf(state) } })
    : h("p", { key: "behind", "data-behind": true }, "There is nothing to print yet: the answers to the last change are not there. Print again when they are.");

/** Which paper, and the button that prints. */
export const paperAndPrint = (room, state) => [
  h(
    "fieldset",
    { key: "paper", class: "choice print-paper" },
    h("legend", { class: "field-label" }, "Paper"),
    h(
      "div",
      { class: "choice-row" },
      [
        ["a4", "A4"],
        ["letter", "Letter"],
      ].map(([paper, label]) => h("label", { class: "choice-item" }, h("input", { type: "radio", name: "paper", "data-paper-choice": paper, ".checked": paperOf(state) === paper, onchange: () => room.want("print", { print: { paper } }) }), h("span", null, label))),
    ),
  ),
  h("div", { key: "act", class: "print-act" }, h("button", { type: "button", class: "button button-first", "data-action": "print", onclick: () => window.print() }, "Print"), h("p", { class: "quiet" }, "At 100 %, with nothing fitted to the page. Black and white will do.")),
];

/** Data: {state}. */
export class PrintRoom extends Element {
  view({ state }) {
    const { open, reply, print } = state;
    const turn = (key, on) => this.want("print", { print: { sheets: { ...print.sheets, [key]: on } } });
    return [
      h(
        "div",
        { key: "choice", class: "print-choice no-print" },
        h("h1", { tabindex: "-1" }, "Print"),
        h(
          "fieldset",
          { key: "sheets", class: "print-sheets" },
          h("legend", { class: "field-label" }, "Sheets"),
          kinds.map(([key, label]) => {
            const none = reply && wanted(state, key) && !sheetsOf(state).some((s) => s.key === key);
            return h("label", { key, class: "tick-item" }, h("input", { type: "checkbox", "data-sheet-choice": key, ".checked": wanted(state, key), onchange: (e) => turn(key, e.target.checked) }), h("span", null, label, none && (key !== "rule" || state.rule.reply) && h("span", { class: "print-lacking" }, lacking[key] ?? "")));
          }),
        ),
        paperAndPrint(this, state),
        wanted(state, "rule") && h("section", { key: "rule", class: "print-rule", "aria-label": "The rule" }, h("h2", null, "The rule"), h("p", { class: "quiet" }, "Its contraction is the plan's: ", h("a", { href: to.sheet(open.id, "pattern") }, "pattern and contraction"), ". ", h("a", { href: to.rule() }, "A rule for another metal"), "."), h("h3", { class: "out-of-sight" }, "What you know"), ruleFields(this, state, (f) => !fromPlan.includes(f.key))),
      ),
      reply ? h("section", { key: "preview", class: "print-preview", "aria-label": "The sheets" }, sheetsOf(state).length > 0 ? paperPages(state) : h("p", { key: "none", class: "quiet" }, "No sheet is chosen, or none has anything on it yet.")) : h("p", { key: "wait", class: "quiet" }, "Working it out."),
    ];
  }
}

customElements.define("pw-print-room", PrintRoom);
