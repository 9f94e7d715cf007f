// A list of like things: solids, cores, dimensions. Each can be moved, copied
// and taken away; a long list folds its items up to a line each.
import { h } from "./draw.js";
import { counts, textOf } from "./document.js";
import { Element, idOf } from "./element.js";
import { form } from "./form-view.js";
import { below } from "./field-frame.js";
import { together } from "./words.js";

const longest = 3; // lists longer than this start folded

export class ListEditor extends Element {
  #open = new Map(); // by item number: what the user chose

  view(data) {
    const { field, path, about } = data;
    const items = Array.isArray(data.items) ? data.items : [];
    const most = Number(field.max) || 1000;
    return [
      h("div", { class: "list-head" }, h(`h${about.level ?? 4}`, { class: "form-heading", id: idOf(path), tabindex: "-1" }, field.label), h("span", { class: "list-count" }, counted(items.length))),
      below({ path, field, fault: about.faults[path], need: about.needs[path], findings: about.findings[path] }),
      h(
        "ol",
        { class: "list-items", "aria-labelledby": idOf(path), "data-field": path },
        items.map((item, i) => this.item(item, i, items.length, data)),
      ),
      h(
        "button",
        {
          key: "add",
          type: "button",
          class: "button",
          "data-action": "add",
          "aria-label": `${items.length === 0 ? "Add one" : "Add another"}: ${field.label}`,
          disabled: items.length >= most,
          onclick: () => {
            this.#open.set(items.length, true);
            this.want("list-add", { path });
            this.focusSoon(`${path}[${items.length}]`);
          },
        },
        items.length === 0 ? "Add one" : "Add another",
      ),
    ];
  }

  item(item, i, count, { field, path, about }) {
    const here = `${path}[${i}]`;
    const open = this.#open.get(i) ?? count <= longest;
    const name = `${field.label}, number ${i + 1}`;
    const act = (action, label, to, off) =>
      h(
        "button",
        {
          type: "button",
          class: "button button-quiet",
          "data-action": action,
          "aria-label": `${label}: ${name}`,
          disabled: off,
          onclick: () => {
            this.#open.clear();
            this.want("list-" + action, { path, at: i, to });
            this.focusSoon(`${path}[${Math.max(0, to)}]`);
          },
        },
        label,
      );
    return h(
      "li",
      { class: "list-item", "data-item": here, tabindex: "-1" },
      h(
        "div",
        { class: "list-item-head" },
        h(
          "button",
          { type: "button", class: "list-fold", "aria-expanded": String(open), onclick: () => (this.#open.set(i, !open), this.draw()) },
          h("span", { class: "list-number" }, String(i + 1)),
          h("span", { class: "list-summary" }, together(summary(item, field.fields)) || "not filled in"),
          troubled(here, about) && h("span", { class: "list-trouble" }, "check entry"),
        ),
      ),
      open && h("div", { key: "body", class: "list-body" },
        form(field.fields, item, here, about),
        h("div", { class: "list-acts" }, act("move", "Up", i - 1, i === 0), act("move", "Down", i + 1, i === count - 1), act("copy", "Duplicate", i + 1, count >= (Number(field.max) || 1000)), act("remove", "Remove", i - 1)),
      ),
    );
  }

  focusSoon(item) {
    queueMicrotask(() => queueMicrotask(() => {
      const at = [...this.querySelectorAll("[data-item]")].find((e) => e.dataset.item === item) ?? this.querySelector(".list-head .form-heading");
      at?.focus();
    }));
  }
}

const counted = (n) => (n === 0 ? "none yet" : n === 1 ? "1 entry" : `${n} entries`);

function summary(item, fields) {
  return fields
    .filter((f) => counts(f, fields, item) && f.sort !== "group" && f.sort !== "list" && f.sort !== "tick")
    .map((f) => (f.sort === "choice" ? f.choices.find((c) => c.value === textOf(item?.[f.key]))?.label : textOf(item?.[f.key])))
    .filter(Boolean)
    .slice(0, 5)
    .join("\u00a0· ");
}

const troubled = (here, about) => Object.keys(about.faults).some((p) => p.startsWith(here + "."));

customElements.define("pw-list-editor", ListEditor);
