// Two plans line by line, in the order of the work: what was entered otherwise,
// what follows otherwise and by how much, and the findings of one alone. Every
// figure leads to where it stands in its plan, an answer with its working open.
import { h } from "../../shared/draw.js";
import { Element, idOf } from "../../shared/element.js";
import { finding } from "../../shared/finding.js";
import { stateMark } from "../../shared/mark.js";
import { to } from "../../app/route.js";
import { plainBar } from "../bar/bar.js";
import { rulingOf } from "../sheet/ruling.js";

const few = 3; // lesser answers that are not worth folding away

/** Data: {state}. */
export class Compare extends Element {
  view({ state }) {
    const { compared, route } = state;
    const now = compared?.a === route.a && compared.b === route.b ? compared : null;
    return [
      plainBar(state, "compare"),
      h("main", { key: "main", class: "page compare" }, h("h1", { tabindex: "-1" }, "Two plans side by side"), !now ? h("p", { key: "wait", class: "quiet", role: "status" }, "Comparing them.") : now.plans.every(Boolean) ? this.both(now) : h("p", { key: "gone" }, "One of them is not on this device. ", h("a", { href: to.start() }, "See the saved plans"))),
    ];
  }

  both({ plans: [a, b], reply }) {
    if (!reply?.ok) return h("p", { key: "broken" }, `They could not be compared${reply?.broken ? ` (${reply.broken})` : ""}. Both are untouched.`);
    const { sections } = reply;
    return [
      h(
        "div",
        { key: "who", class: "compare-who" },
        h("dl", null, [["First", a], ["Second", b]].map(([word, p]) => h("div", null, h("dt", null, word), h("dd", null, h("a", { href: to.plan(p.id) }, p.title))))),
        h("a", { class: "button", href: to.compare(b.id, a.id), "data-action": "turn" }, "Change places"),
      ),
      sections.length === 0
        ? h("p", { key: "same", role: "status" }, "They are the same: every entry, every answer, every finding.")
        : h("p", { key: "count", class: "quiet", role: "status" }, counted(sections)),
      sections.map((s) => this.section(s, [a.id, b.id])),
    ];
  }

  section(s, ids) {
    const key = s.key;
    const chief = new Set(rulingOf(key, Object.fromEntries(s.answers.map((d) => [d.key, [d]]))).map(([k]) => k));
    const main = s.answers.filter((d) => chief.has(d.key));
    const lesser = s.answers.filter((d) => !chief.has(d.key));
    const fold = lesser.length > few;
    return h(
      "section",
      { key, class: "compare-section", "data-section": key, "aria-labelledby": idOf(key, "-differs") },
      h("header", { class: "compare-head" }, h("h2", { id: idOf(key, "-differs") }, s.title), s.states && s.states[0] !== s.states[1] && h("p", { class: "compare-states" }, stateMark(s.states[0]), " and ", stateMark(s.states[1]))),
      s.inputs.length > 0 && table("Entered", s.title, ["First", "Second"], s.inputs.map((d) => [d, [entry(d.a, ids[0]), entry(d.b, ids[1])]])),
      (fold ? main : s.answers).length > 0 && answers(s, fold ? main : s.answers, ids),
      fold && h("details", { key: "more", class: "fold" }, h("summary", null, `${lesser.length} more answers`), answers(s, lesser, ids)),
      s.only.map((list, i) => list.length > 0 && h("div", { key: "only" + i, class: "compare-only", "data-only": i === 0 ? "a" : "b" }, h("h3", null, i === 0 ? "Only in the first" : "Only in the second"), list.map((f) => finding(f)))),
    );
  }
}

const answers = (s, list, ids) =>
  table("Follows", s.title, ["First", "Second", "Difference"], list.map((d) => [d, [answer(d.a, ids[0], s.key), answer(d.b, ids[1], s.key), d.gap ? [h("span", null, d.gap), d.share && h("span", { class: "compare-share" }, d.share)] : h("span", { class: "quiet" }, "—")]]));

/** Rows of what differs, under the words of their columns. */
const table = (what, of, columns, rows) =>
  h(
    "table",
    { key: what, class: "compare-table" },
    h("caption", { class: "out-of-sight" }, `${of}: ${what.toLowerCase()}`),
    h("thead", null, h("tr", null, h("th", { scope: "col" }, what), columns.map((c) => h("th", { scope: "col" }, c)))),
    h(
      "tbody",
      null,
      rows.map(([d, cells]) => h("tr", { "data-differs": d.b.path ?? d.a.path }, h("th", { scope: "row" }, d.label, d.place && h("span", { class: "compare-place" }, d.place)), cells.map((cell, i) => h("td", { "data-column": columns[i] }, cell)))),
    ),
  );

const origins = { default: "printed default", linked: "from another sheet", unread: "not understood" };

function entry({ path, origin, text }, id) {
  if (!path) return h("span", { class: "quiet" }, "not there");
  const at = /^(title|note)$/.test(path) ? to.plan(id) : to.field(id, path);
  return [h("a", { href: at }, text || "left blank"), origins[origin] && h("span", { class: "compare-origin" }, origins[origin])];
}

function answer({ path, text }, id, station) {
  if (!path || !text) return h("span", { class: "quiet" }, path ? "not known" : "not there");
  return h("a", { href: to.sheet(id, station, path) }, text);
}

function counted(sections) {
  const sum = (of) => sections.reduce((n, s) => n + of(s), 0);
  const many = (n, one, more) => (n === 1 ? `1 ${one}` : `${n} ${more}`);
  return `${many(sum((s) => s.inputs.length), "entry differs", "entries differ")}, ${many(sum((s) => s.answers.length), "answer", "answers")} and ${many(sum((s) => s.only[0].length + s.only[1].length), "finding", "findings")} with them.`;
}

customElements.define("pw-compare", Compare);
