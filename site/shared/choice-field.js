// A field with a few set answers: side by side where they are few and short,
// a list to pick from otherwise.
import { h } from "./draw.js";
import { below, describedBy, fromElsewhere, label } from "./field-frame.js";
import { Element, idOf } from "./element.js";

const fewest = 4; // beyond these, or longer than these, a list is easier to read
const shortest = 48; // letters in all

export class ChoiceField extends Element {
  view(data) {
    const { field, text } = data;
    const letters = field.choices.reduce((n, c) => n + c.label.length, 0);
    const unknown = text && !field.choices.some((c) => c.value === text);
    const few = field.choices.length <= fewest && letters <= shortest && !unknown && !(field.optional && !field.default);
    return few ? this.buttons(data) : this.list(data, unknown);
  }

  buttons(data) {
    const { field, path, text, fault } = data;
    const chosen = text || field.default;
    return [
      h(
        "fieldset",
        { key: "few", class: "choice", "aria-describedby": describedBy(data) },
        h("legend", { class: "field-label" }, field.label),
        h(
          "div",
          { class: "choice-row" },
          field.choices.map((c, i) =>
            h(
              "label",
              { key: c.value, class: "choice-item" },
              h("input", {
                type: "radio",
                name: idOf(path),
                id: i === 0 ? idOf(path) : undefined,
                "data-field": i === 0 ? path : undefined,
                "data-choice": c.value,
                "aria-invalid": fault ? "true" : undefined,
                ".checked": c.value === chosen,
                onchange: () => this.want("edit", { path, value: c.value, done: true }),
              }),
              h("span", null, c.label),
            ),
          ),
        ),
      ),
      below(data, this.blank(data)),
    ];
  }

  list(data, unknown) {
    const { field, path, text, fault, linked, titles } = data;
    const standing = field.choices.find((c) => c.value === field.default)?.label;
    const empty = linked ? `${field.choices.find((c) => c.value === linked.text)?.label ?? linked.text}, from ${titles[linked.from] ?? linked.from}` : standing ? `${standing}, printed default` : field.optional ? "may stay empty" : "Pick one";
    return [
      label(data),
      h(
        "select",
        {
          key: "list",
          id: idOf(path),
          "data-field": path,
          class: "field-input",
          "aria-invalid": fault ? "true" : undefined,
          "aria-describedby": describedBy(data),
          ".value": text,
          onchange: (e) => this.want("edit", { path, value: e.target.value, done: true }),
        },
        h("option", { value: "" }, empty),
        field.choices.map((c) => h("option", { value: c.value }, c.label)),
        unknown && h("option", { value: text }, text),
      ),
      below(data, data.linked && this.blank(data)),
    ];
  }

  blank(data) {
    const { field, text, linked } = data;
    if (text) return null;
    if (linked) return fromElsewhere(data);
    return field.default && h("p", { key: "blank", class: "field-blank" }, "Printed default.");
  }
}

customElements.define("pw-choice-field", ChoiceField);
