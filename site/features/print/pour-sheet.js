// The pour sheet for paper, A4 or Letter: ruling numbers, what was entered,
// answers station by station, findings, and the safe-handling list with boxes
// and lines for names. Legible in black and white.
import { h } from "../../shared/draw.js";
import { Element } from "../../shared/element.js";
import { isLeaf, leaves } from "../../shared/answers.js";
import { counts, join, textOf, ticked } from "../../shared/document.js";
import { levelMark, stateMark } from "../../shared/mark.js";
import { caution, heading } from "../../shared/words.js";
import { title } from "../../app/save.js";
import { about } from "../sheet/about.js";
import { handlingList } from "../handling/list.js";

const mostColumns = 8; // of a table that still fits the paper
const longText = 28; // letters beyond which a text gets lines of its own

/** Data: {state, fields}. */
export class PourSheet extends Element {
  view({ state, fields }) {
    const { open, reply } = state;
    const known = about(state);
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
        h("h2", { key: "h-findings" }, "Findings"),
        reply.findings.length === 0
          ? h("p", { key: "findings" }, "None from what was filled in.")
          : h("ul", { key: "findings", class: "paper-findings" }, reply.findings.map((f) => h("li", null, levelMark(f.level), h("div", null, h("p", null, h("b", null, (known.titles[f.station] ?? f.station) + ": "), f.text), f.do && h("p", null, f.do), f.source && h("p", { class: "paper-source" }, f.source))))),
        reply.stations.map((s) => this.station(s, fields.find((f) => f.key === s.key), open.doc[s.key], known)),
        this.handling(state),
        h("p", { key: "caution", class: "caution" }, caution),
      ],
    );
  }

  station(s, field, group, known) {
    if (!field || s.state === "blank") return null;
    const entered = inputs(field.fields.filter((f) => s.key !== "handling" || f.key !== "answers"), group, s.key, known);
    const answered = s.answers ? outputs(s.answers, s.key === "handling" ? ["items"] : []) : { lines: [], tables: [] };
    return h(
      "section",
      { key: s.key, class: "paper-station" },
      h("h2", null, s.title, " ", stateMark(s.state)),
      lines("Entered", entered.lines),
      entered.tables.map(table),
      lines("Answers", answered.lines),
      answered.tables.map(table),
      s.needs.length > 0 && h("p", { key: "needs" }, "Not filled in: " + s.needs.map((n) => n.label.toLowerCase()).join(", ") + "."),
      s.faults.length > 0 && h("p", { key: "faults" }, "To put right: " + s.faults.map((n) => n.label.toLowerCase()).join(", ") + "."),
    );
  }

  handling(state) {
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
}

/** A station's plain figures: [label, text, where it came from]. */
const lines = (caption, rows) =>
  rows.length > 0 && [
    h("h3", { key: "h-" + caption, class: "paper-lead" }, caption),
    h("dl", { key: caption, class: "paper-lines" }, rows.map(([label, text, how]) => h("div", { class: text.length > longText ? "paper-line paper-long" : "paper-line" }, h("dt", null, label, how && h("span", { class: "paper-how" }, ", " + how)), h("dd", null, text)))),
  ];

/** A list, a line for each of its items. */
const table = ({ title, head, rows }) =>
  h("div", { key: title + head.join(), class: "wide-table", tabindex: "0", role: "group", "aria-label": title }, h("table", { class: "paper-list" }, h("caption", null, title), h("thead", null, h("tr", null, h("th", { scope: "col" }, "No."), head.map((t) => h("th", { scope: "col" }, t)))), h("tbody", null, rows.map((row, i) => h("tr", null, h("td", null, String(i + 1)), row.map((text) => h("td", null, text)))))));

/** What was entered, filled from elsewhere or taken as printed. */
function inputs(fields, group, base, known, lead = "") {
  const out = { lines: [], tables: [] };
  for (const field of fields.filter((f) => counts(f, fields, group))) {
    const path = join(base, field.key);
    const value = group?.[field.key];
    if (field.sort === "group") {
      const inner = inputs(field.fields, value, path, known, lead + field.label + ": ");
      out.lines.push(...inner.lines);
      out.tables.push(...inner.tables);
    } else if (field.sort === "list") {
      const items = Array.isArray(value) ? value : [];
      const used = field.fields.filter((f) => f.sort !== "list" && f.sort !== "group" && items.some((item) => item?.[f.key] !== undefined));
      if (items.length > 0 && used.length > 0) out.tables.push({ title: lead + field.label + ", entered", head: used.map((f) => f.label), rows: items.map((item) => used.map((f) => shown(f, item?.[f.key]))) });
    } else if (field.sort === "tick") {
      if (value !== undefined) out.lines.push([lead + field.label, ticked(value) ? "yes" : "no"]);
    } else if (textOf(value)) {
      out.lines.push([lead + field.label, shown(field, value)]);
    } else if (known.linked[path]) {
      const { text, from } = known.linked[path];
      out.lines.push([lead + field.label, shown(field, text), "from " + (known.titles[from] ?? from).toLowerCase()]);
    } else if (field.default) {
      out.lines.push([lead + field.label, shown(field, field.default), "printed default"]);
    }
  }
  return out;
}

const shown = (field, value) => (field.sort === "tick" ? (ticked(value) ? "yes" : "no") : (field.choices?.find((c) => c.value === value)?.label ?? textOf(value)));

/** A wide table as several that fit the paper, each led by the first column. */
function sheets([first, ...rest]) {
  const out = [];
  for (let at = 0; at === 0 || at < rest.length; at += mostColumns - 1) out.push([first, ...rest.slice(at, at + mostColumns - 1)]);
  return out;
}

/** What came out: plain figures, and lists as tables. */
function outputs(node, without, lead = "") {
  const out = { lines: [], tables: [] };
  for (const [key, value] of Object.entries(node)) {
    if (without.includes(key)) continue;
    if (isLeaf(value)) {
      if (value.text && !value.unknown) out.lines.push([lead + (value.label ?? heading(key)), value.text]);
    } else if (Array.isArray(value) && isLeaf(value[0])) {
      out.lines.push([lead + (value[0].label ?? heading(key)), value.map((v) => v.text).join("; ")]);
    } else if (Array.isArray(value) && value.length > 0 && !value[0].points) {
      const rows = value.map((item) => leaves(item));
      const heads = new Map(rows.flat().map(([path, leaf, trail]) => [path, [...trail, leaf.label ?? path].join(": ")]));
      // A column that no item fills, or that only names sources, would cost the others their room.
      const used = [...heads.keys()].filter((path) => heads.get(path) !== "Source" && rows.some((row) => row.some(([p, leaf]) => p === path && leaf.text && !leaf.unknown)));
      for (const columns of sheets(used)) {
        out.tables.push({ title: lead + heading(key) + (columns[1] === used[1] ? "" : ", continued"), head: columns.map((path) => heads.get(path)), rows: rows.map((row) => columns.map((path) => row.find(([p]) => p === path)?.[1].text ?? "")) });
      }
    } else if (value && typeof value === "object" && !Array.isArray(value) && !value.points) {
      const inner = outputs(value, [], lead + heading(key) + ": ");
      out.lines.push(...inner.lines);
      out.tables.push(...inner.tables);
    }
  }
  return out;
}

customElements.define("pw-pour-sheet", PourSheet);
