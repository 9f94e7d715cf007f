// The pour sheet for paper, A4 or Letter: what is wanted beside the mould and
// no more. The ruling numbers, what is wrong or to be minded, the main answers
// of each station, and the whole safe-handling list with boxes and lines to
// sign. Legible in black and white.
import { h } from "../../shared/draw.js";
import { Element } from "../../shared/element.js";
import { textOf } from "../../shared/document.js";
import { levelMark, stateMark } from "../../shared/mark.js";
import { caution, heading } from "../../shared/words.js";
import { title } from "../../app/save.js";
import { about } from "../sheet/about.js";
import { rulingOf } from "../sheet/ruling.js";
import { handlingList } from "../handling/list.js";

const longText = 28; // letters beyond which a text gets lines of its own

/** Data: {state}. */
export class PourSheet extends Element {
  view({ state }) {
    const { open, reply } = state;
    const { titles } = about(state);
    return h(
      "article",
      { class: "paper" },
      h(
        "header",
        { class: "paper-head" },
        h("h1", { tabindex: "-1" }, title(open.doc)),
        h("p", { class: "paper-date" }, "Printed ", new Date().toLocaleDateString("en-GB", { dateStyle: "long" }), ". Pourwright."),
        h("div", { class: "paper-acts no-print" }, h("button", { type: "button", class: "button button-first", "data-action": "print", onclick: () => window.print() }, "Print"), h("p", { class: "quiet" }, "A4 or Letter. Black and white will do.")),
      ),
      !reply && h("p", null, "Working it out."),
      reply && [
        textOf(open.doc.note) && h("p", { key: "note", class: "paper-note" }, open.doc.note),
        h("h2", { key: "h-card" }, "Ruling numbers"),
        h("dl", { key: "card", class: "paper-card" }, reply.card.map((c) => h("div", null, h("dt", null, c.label), h("dd", null, c.text)))),
        findings(reply.findings.filter((f) => f.level !== "note"), titles),
        h("h2", { key: "h-stations" }, "Station by station"),
        h("div", { key: "stations", class: "paper-stations" }, reply.stations.map(station)),
        handling(state),
        h("p", { key: "caution", class: "caution" }, caution),
      ],
    );
  }
}

const findings = (list, titles) => [
  h("h2", { key: "h-findings" }, "Findings"),
  list.length === 0
    ? h("p", { key: "findings" }, "Nothing to stop for or to mind, from what was filled in.")
    : h("ul", { key: "findings", class: "paper-findings" }, list.map((f) => h("li", null, levelMark(f.level), h("p", null, h("b", null, (titles[f.station] ?? f.station) + ": "), f.text, f.do && " " + f.do)))),
];

function station(s) {
  if (s.state === "blank") return null;
  const ruling = s.answers ? rulingOf(s.key, s.answers) : [];
  const lines = ruling.filter(([, columns]) => !columns).map(([key]) => s.answers[key]);
  return h(
    "section",
    { key: s.key, class: "paper-station" },
    h("h3", null, s.title, " ", stateMark(s.state)),
    lines.length > 0 && h("dl", { key: "lines" }, lines.map(({ label, text }) => h("div", { class: text.length > longText ? "paper-line paper-long" : "paper-line" }, h("dt", null, label), h("dd", null, text)))),
    ruling.map(([key, columns]) => columns && table(heading(key), s.answers[key], columns)),
    s.needs.length > 0 && h("p", { key: "needs" }, "Not filled in: " + s.needs.map((n) => n.label.toLowerCase()).join(", ") + "."),
    s.faults.length > 0 && h("p", { key: "faults" }, "To put right: " + s.faults.map((n) => n.label.toLowerCase()).join(", ") + "."),
  );
}

/** A list, a line for each of its items; a column that no item fills would cost the others their room. */
function table(title, items, columns) {
  const used = columns.filter((c) => items.some((item) => item[c]?.text && !item[c].unknown));
  return h(
    "div",
    { key: title, class: "wide-table", tabindex: "0", role: "group", "aria-label": title },
    h("table", { class: "paper-list" }, h("thead", null, h("tr", null, used.map((c) => h("th", { scope: "col" }, items.find((item) => item[c])[c].label)))), h("tbody", null, items.map((item) => h("tr", null, used.map((c) => h("td", null, item[c]?.unknown ? "" : (item[c]?.text ?? ""))))))),
  );
}

function handling(state) {
  const list = handlingList(state);
  if (!list) return null;
  return h(
    "section",
    { key: "handling-list", class: "paper-handling" },
    h("h2", null, "Safe-handling list"),
    list.sections.map((section) =>
      h(
        "div",
        { key: section.title, class: "paper-section" },
        h("h3", null, section.title),
        h("ol", null, section.items.map((item) => h("li", { class: item.hold ? "paper-hold" : undefined }, h("span", { class: "paper-box", "aria-hidden": "true" }, item.done ? "×" : ""), h("span", { class: "paper-item" }, item.hold && h("b", null, "Hold point. "), item.text, item.why && h("span", { class: "paper-source" }, " " + item.why)), item.hold && h("span", { class: "paper-initials" }, "Initials")))),
      ),
    ),
    h("div", { class: "paper-names" }, ["Leader of the pour", "Second", "Date and time"].map((who) => h("p", null, who))),
  );
}

customElements.define("pw-pour-sheet", PourSheet);
