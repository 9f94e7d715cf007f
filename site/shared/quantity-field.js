// A field for a quantity or a count, typed as people write it: 420, 16 1/2 in,
// 12,5 cm. What is typed is stored with every stroke; when the field is left
// the engine is asked how it reads it.
import { h } from "./draw.js";
import { below, describedBy, fromElsewhere, isMoney, label } from "./field-frame.js";
import { Element, idOf } from "./element.js";
import { unitWord, withArticle } from "./words.js";

export class QuantityField extends Element {
  view(data) {
    const { field, path, text, fault, linked, reading, titles } = data;
    const blank = !text.trim();
    return [
      label(data, unitOf(data)),
      h("input", {
        key: "input",
        id: idOf(path),
        "data-field": path,
        class: "field-input",
        type: "text",
        inputmode: field.sort === "count" ? "numeric" : "text",
        autocomplete: "off",
        autocapitalize: "off",
        spellcheck: "false",
        placeholder: placeholder(field, linked, titles),
        "aria-invalid": fault ? "true" : undefined,
        "aria-describedby": [describedBy(data), blank && linked && idOf(path, "-blank"), reading && idOf(path, "-reading")].filter(Boolean).join(" ") || undefined,
        ".value": text,
        oninput: (e) => this.want("edit", { path, value: e.target.value }),
        onchange: (e) => this.want("commit", { path, field, text: e.target.value }),
        onkeydown: (e) => e.key === "Enter" && this.want("commit", { path, field, text: e.target.value }),
      }),
      below(data, [
        reading && h("p", { key: "reading", class: "field-reading", id: idOf(path, "-reading") }, "Read as " + reading + "."),
        blank && linked && fromElsewhere(data),
      ]),
    ];
  }
}

/** What stands to the right of the name: the unit, led by the reader's currency where it is money. */
function unitOf({ field, currency }) {
  const money = isMoney(field) && currency;
  if (!money && !field.unit) return "";
  return [money || !isMoney(field) ? "in" : "", money, field.unit && unitWord(field.unit)].filter(Boolean).join(" ");
}

function placeholder(field, linked, titles) {
  if (linked) return `${linked.text}, from ${titles[linked.from] ?? linked.from}`;
  if (field.default) return `${field.default}, printed default`;
  if (field.link) return field.optional ? "may stay empty" : "fills itself, or type your own";
  if (field.sort === "count") return field.optional ? "a whole number, if you like" : "a whole number";
  const what = withArticle(field.kind) + (field.unit ? " in " + unitWord(field.unit) : "");
  return field.optional ? "may stay empty" : what;
}

customElements.define("pw-quantity-field", QuantityField);
