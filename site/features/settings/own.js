// The shop's own figures: what it has measured for itself, edited with the same
// fields as a plan and written into the plans that want them.
import { h } from "../../shared/draw.js";
import { Element } from "../../shared/element.js";
import { form } from "../../shared/form-view.js";
import { readingIn } from "../sheet/about.js";

const ours = new Set(["edit", "commit", "list-add", "list-remove", "list-copy", "list-move"]);

/** Data: {state}. */
export class Own extends Element {
  view({ state }) {
    const { own, ownFields, ownFaults } = state;
    const faults = {};
    for (const f of ownFaults) if (f.field !== own.typing) faults[f.field] ??= f;
    const about = { faults, needs: {}, linked: {}, findings: {}, titles: {}, reading: readingIn(state) };
    return [
      h("h2", { key: "head" }, "Your shop's own figures"),
      h("p", { key: "about" }, "A new plan begins with them, and any plan takes them where it is blank. They are written into the plan, so that it stays whole wherever it goes; what a plan says already is never changed."),
      ownFields ? ownFields.map((field) => h("section", { key: field.key, class: "own-part", "aria-label": field.label }, field.sort === "group" ? [h("h3", null, field.label), form(field.fields, own.doc[field.key], field.key, about)] : form([field], own.doc, "", { ...about, level: 3 }))) : h("p", { key: "wait", class: "quiet", role: "status" }, "Asking for the fields."),
      h(
        "p",
        { key: "acts", class: "start-ways own-acts" },
        h("button", { type: "button", class: "button", "data-action": "save-own", onclick: () => this.want("save-own") }, "Save them as a file"),
        h(
          "label",
          { class: "button file-way" },
          h("input", {
            type: "file",
            class: "file-input",
            accept: ".json,application/json",
            "data-action": "open-own",
            onchange: (e) => {
              const [file] = e.target.files;
              e.target.value = "";
              if (file) this.want("open-own", { file });
            },
          }),
          h("span", null, "Open a file of them"),
        ),
      ),
    ];
  }

  // What the fields want is wanted of the figures, not of a plan.
  entered() {
    this.listen(this, "pw-want", (e) => {
      if (!ours.has(e.detail.type)) return;
      e.stopPropagation();
      this.want("own", { action: e.detail });
    });
  }
}

customElements.define("pw-own", Own);
