// The sheet of one station: what is still wanted, its fields, its answers with
// their working, its curves.
import { h } from "../../shared/draw.js";
import { Element, idOf } from "../../shared/element.js";
import { finding } from "../../shared/finding.js";
import { faultText } from "../../shared/field-frame.js";
import { form } from "../../shared/form-view.js";
import { counts } from "../../shared/document.js";
import { stateMark } from "../../shared/mark.js";
import { to } from "../../app/route.js";
import { inFull } from "../../app/store.js";
import { rulingOf } from "./ruling.js";
import "../../shared/answers.js";

// The safe-handling list and its hold points have a page of their own.
const apart = { handling: { field: "answers", answer: "items", label: "Open the safe-handling list" } };

/** Data: {plan (id), station (the reply's, or null), field (the group's description), group (of the document), spans (of the answers that stray), about, answer}. */
export class Sheet extends Element {
  view({ plan, station, field: whole, group, spans, about, answer }) {
    const out = apart[whole.key];
    const field = out ? { ...whole, fields: whole.fields.filter((f) => f.key !== out.field) } : whole;
    const answers = station?.answers && out ? Object.fromEntries(Object.entries(station.answers).filter(([key]) => key !== out.answer)) : station?.answers;
    const shown = visible(field.fields, group, field.key);
    const findings = station?.findings ?? []; // which come with the answers
    const elsewhere = findings.filter((f) => !f.field || !shown.has(`${field.key}.${f.field}`));
    const pressing = elsewhere.filter((f) => f.level !== "note");
    const notes = elsewhere.filter((f) => f.level === "note");
    const placed = findings.filter((f) => f.field && shown.has(`${field.key}.${f.field}`));
    const faults = station?.faults.filter((f) => about.faults[f.field] === f) ?? [];
    return [
      h(
        "header",
        { class: "sheet-head" },
        h("h2", { class: "sheet-title", tabindex: "-1", id: idOf(field.key, "-sheet") }, station?.title ?? field.label),
        station && stateMark(station.state),
        h("a", { class: "button button-quiet sheet-close", href: to.plan(plan), "data-action": "close-sheet" }, "Close"),
      ),
      field.hint && h("p", { class: "sheet-about" }, field.hint),
      answers && head(plan, field.key, answers),
      station && !inFull(station) && h("p", { key: "figures", class: "quiet", role: "status" }, "Working it out, and what the rest of the plan fills in here."),
      station && this.wanted(faults, station.needs, placed, shown),
      pressing.length > 0 && h("div", { key: "findings", class: "sheet-findings" }, pressing.map((f) => finding(f))),
      h("section", { key: "inputs", class: "sheet-part", "aria-labelledby": idOf(field.key, "-in") }, h("h3", { id: idOf(field.key, "-in") }, "What you know"), form(field.fields, group, field.key, about)),
      h(
        "section",
        { key: "answers", class: "sheet-part", "aria-labelledby": idOf(field.key, "-out"), "aria-live": "off" },
        h("h3", { id: idOf(field.key, "-out") }, "What follows"),
        field.key === "pattern" && answers && h("p", { key: "paper", class: "sheet-apart" }, h("a", { class: "button", href: to.plan(plan, "print") }, "Print the list, or a contraction rule")),
        out && answers && h("p", { key: "apart", class: "sheet-apart" }, h("a", { class: "button", href: to.plan(plan, whole.key) }, out.label)),
        answers
          ? h("pw-answers", { key: "answers", ".data": { answers, ruling: rulingOf(field.key, answers), steps: station.steps, spans, open: answer, station: field.key } })
          : h("p", { key: "none", class: "quiet", "data-behind": station && !inFull(station) }, none(station)),
      ),
      answers && h("p", { key: "class", class: "sheet-apart" }, h("a", { class: "button", href: to.lesson(`plan/${plan}/${whole.key}`), "data-action": "show-in-class" }, "Show in class")),
      notes.length > 0 && h("section", { key: "notes", class: "sheet-part", "aria-labelledby": idOf(field.key, "-notes") }, h("h3", { id: idOf(field.key, "-notes") }, "Notes"), notes.map((f) => finding(f))),
    ];
  }

  // Short ways to the fields that need something.
  wanted(faults, needs, placed, shown) {
    const jump = (path, label) =>
      h("li", null, h("button", { type: "button", class: "jump", "data-jump": path, onclick: () => this.jump(path) }, label));
    const groups = [
      ["To put right", faults.map((f) => ({ path: f.field, label: f.label, f })), "fault"],
      ["Still wanted", needs.map((f) => ({ path: f.field, label: labelOf(this.data.field, f.field.slice(this.data.field.key.length + 1)) })), "needs"],
      ["Findings stand at", unique(placed).map((f) => ({ path: `${this.data.field.key}.${f.field}`, label: labelOf(this.data.field, f.field) })), "mind"],
    ].filter(([, list]) => list.length > 0);
    const lost = faults.filter((f) => !shown.has(f.field));
    return [
      groups.length > 0 && h("div", { key: "wanted", class: "sheet-wanted" }, groups.map(([title, list, kind]) => h("div", { key: kind, class: "wanted wanted-" + kind }, h("span", { class: "wanted-title" }, title), h("ul", null, list.map((w) => jump(w.path, w.label)))))),
      lost.map((f) => h("p", { key: f.field, class: "field-fault" }, faultText(f))),
    ];
  }

  jump(path) {
    // Of a list that is folded, the item unfolds first.
    const item = this.querySelector(`[data-item="${CSS.escape(path.replace(/\].*/, "]"))}"]`);
    item?.querySelector(".list-fold[aria-expanded=false]")?.click();
    const at = this.querySelector(`[data-field="${CSS.escape(path)}"]`) ?? this.querySelector(`[data-item="${CSS.escape(path)}"]`) ?? this.querySelector(`[data-field^="${CSS.escape(path.replace(/\.[^.]*$/, ""))}"]`);
    at?.scrollIntoView({ block: "center", behavior: matchMedia("(prefers-reduced-motion: reduce)").matches ? "auto" : "smooth" });
    (at?.matches("ol") ? at.closest("pw-list-editor").querySelector(".form-heading") : at)?.focus({ preventScroll: true });
  }
}

const foremost = 3;

// The first of the ruling answers, at the head of the sheet: each leads to its
// working below the fields.
function head(plan, station, answers) {
  const first = rulingOf(station, answers).filter(([, columns]) => !columns).slice(0, foremost);
  if (first.length === 0) return null;
  const line = ([key]) => h("li", null, h("a", { class: "sheet-figure", href: to.sheet(plan, station, key), "data-figure": key }, h("span", { class: "sheet-figure-label" }, answers[key].label), " ", h("b", null, answers[key].text)));
  return h("ul", { key: "figures", class: "sheet-figures" }, first.map(line));
}

const unique = (findings) => findings.filter((f, i) => findings.findIndex((g) => g.field === f.field) === i);

const none = (station) => {
  if (station && !inFull(station)) return "Working it out.";
  if (!station || station.state === "blank") return "Fill in what you know above, and the answers stand here.";
  if (station.state === "fault") return "The answers come back as soon as the entries above are put right.";
  return "The answers come as soon as the rest is filled in.";
};

/** The paths of all fields that can be seen. */
function visible(fields, group, base, out = new Set()) {
  for (const field of fields) {
    if (!counts(field, fields, group)) continue;
    const path = `${base}.${field.key}`;
    out.add(path);
    if (field.sort === "group") visible(field.fields, group?.[field.key], path, out);
    if (field.sort === "list") (Array.isArray(group?.[field.key]) ? group[field.key] : []).forEach((item, i) => visible(field.fields, item, `${path}[${i}]`, out));
  }
  return out;
}

/** What a field is called: with the number of its item, and after its group, for groups may have fields alike. */
function labelOf(field, path) {
  let at = field;
  let number = "";
  let group = "";
  for (const step of path.split(/[.[\]]+/).filter(Boolean)) {
    if (at !== field && at.sort === "group") group = `, ${at.label.toLowerCase()}`;
    if (/^\d+$/.test(step)) number = ` ${Number(step) + 1}`;
    else at = at.fields?.find((f) => f.key === step) ?? at;
  }
  return at.label + number + group;
}

customElements.define("pw-sheet", Sheet);
