// A field for words: a line, or a few lines where it is a note.
import { h } from "./draw.js";
import { below, describedBy, label } from "./field-frame.js";
import { Element, idOf } from "./element.js";

export class WordsField extends Element {
  view(data) {
    const { field, path, text, fault } = data;
    const lines = /note|remark/.test(field.key);
    return [
      label(data),
      h(lines ? "textarea" : "input", {
        key: "input",
        id: idOf(path),
        "data-field": path,
        class: "field-input",
        type: lines ? undefined : "text",
        rows: lines ? 3 : undefined,
        autocomplete: "off",
        placeholder: field.optional ? "may stay empty" : "a few words",
        "aria-invalid": fault ? "true" : undefined,
        "aria-describedby": describedBy(data),
        ".value": text,
        oninput: (e) => this.want("edit", { path, value: e.target.value }),
        onchange: (e) => this.want("edit", { path, value: e.target.value, done: true }),
      }),
      below(data),
    ];
  }
}

customElements.define("pw-words-field", WordsField);
