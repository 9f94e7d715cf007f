// A field that is ticked or not.
import { h } from "./draw.js";
import { below, describedBy } from "./field-frame.js";
import { Element, idOf } from "./element.js";
import { ticked } from "./document.js";

export class TickField extends Element {
  view(data) {
    const { field, path, value, fault } = data;
    return [
      h(
        "label",
        { key: "tick", class: "tick" },
        h("input", {
          type: "checkbox",
          id: idOf(path),
          "data-field": path,
          "aria-invalid": fault ? "true" : undefined,
          "aria-describedby": describedBy(data),
          ".checked": ticked(value ?? field.default),
          onchange: (e) => this.want("edit", { path, value: e.target.checked, done: true }),
        }),
        h("span", null, field.label),
      ),
      below(data),
    ];
  }
}

customElements.define("pw-tick-field", TickField);
