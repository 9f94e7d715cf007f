// The fields of a group, made from their description. Every field gets what
// concerns it: its text, its fault, what fills it while it is blank, and the
// findings that name it.
import { h } from "./draw.js";
import { counts, join, textOf } from "./document.js";
import "./choice-field.js";
import "./list-editor.js";
import "./quantity-field.js";
import "./tick-field.js";
import "./words-field.js";

const tags = {
  quantity: "pw-quantity-field",
  count: "pw-quantity-field",
  choice: "pw-choice-field",
  words: "pw-words-field",
  tick: "pw-tick-field",
};

/**
 * Draws fields of the group at base. about says what is known of each path:
 * {faults, needs, linked, findings, readings, titles, units}, maps by path, and
 * stands, the paths that hold a figure of the shop's own; level, that of the
 * heading of a list, 4 unless it says another.
 */
export function form(fields, group, base, about) {
  const sections = [];
  for (const field of fields) {
    if (!counts(field, fields, group)) continue;
    if (field.part || sections.length === 0) sections.push({ part: field.part, fields: [] });
    sections.at(-1).fields.push(field);
  }
  return sections.map((section) =>
    h(
      "div",
      { key: section.part ?? "first", class: "form-part" },
      section.part && !saidBelow(section) && h("h4", { class: "form-heading" }, section.part),
      h("div", { class: "form-grid" }, section.fields.map((field) => one(field, group?.[field.key], base, about))),
    ),
  );
}

/** Whether what stands first below a part's name says it again: a field of that name, or its one list or group. */
const saidBelow = ({ part, fields: [field, ...more] }) => field.label === part || (more.length === 0 && (field.sort === "list" || field.sort === "group") && field.label.startsWith(part));

function one(field, value, base, about) {
  const path = join(base, field.key);
  if (field.sort === "group") {
    return h("fieldset", { key: field.key, class: "form-group" }, h("legend", null, field.label), form(field.fields, value, path, about));
  }
  if (field.sort === "list") {
    return h("pw-list-editor", { key: field.key, class: "form-wide", ".data": { field, path, items: value, about } });
  }
  const text = textOf(value);
  return h(tags[field.sort], {
    key: field.key,
    class: "field" + (/note|remark/.test(field.key) || base === "" ? " form-wide" : ""),
    ".data": {
      field,
      path,
      text,
      value,
      fault: about.faults[path],
      need: about.needs[path],
      linked: about.linked[path],
      findings: about.findings[path],
      own: about.stands?.has(path),
      reading: field.sort === "quantity" ? about.reading(field, text) : undefined,
      titles: about.titles,
      currency: about.currency,
    },
  });
}
