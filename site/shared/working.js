// The working behind an answer: the formula, the values put in, the result and
// the source; and, opened one by one, the steps that the values came from.
import { h } from "./draw.js";
import { Element } from "./element.js";
import { fit } from "./fit.js";
import { formula, symbol } from "./math.js";
import { originWords } from "./words.js";

/** Data: {steps, step, from (titles of stations), linked}. */
export class Working extends Element {
  #open = new Set(); // the trail of symbols that leads to each open step

  entered() {
    this.onSize(() => this.drawn());
  }

  drawn() {
    fit([...this.querySelectorAll(".working-math")]);
  }

  view({ steps, step }) {
    if (!steps) return h("p", { class: "working-wait" }, "Writing the working out.");
    return this.step(steps, step, "");
  }

  step(steps, n, trail) {
    const s = steps[n];
    if (!s) return h("p", null, "This answer was looked up and has no sum behind it.");
    return h(
      "div",
      { key: "step-" + n, class: "working-step", "data-step": s.result.symbol },
      h("p", { class: "working-what" }, h("span", null, symbol(s.result)), " ", s.result.what),
      s.math && h("div", { class: "working-math", tabindex: "0", role: "group", "aria-label": `Formula for ${s.result.what}` }, s.math.map((row) => formula(row))),
      s.formula && !s.math && h("p", { class: "working-math" }, s.formula),
      s.method && h("p", { class: "working-method" }, s.method),
      !s.math && h("p", { class: "working-result" }, symbol(s.result), " = ", s.result.text),
      s.note && h("p", { class: "working-note" }, s.note),
      s.inputs.length > 0 && h("ul", { class: "working-inputs", "aria-label": "Values put in" }, s.inputs.map((v) => this.value(steps, n, v, trail))),
      s.source && h("p", { class: "working-source" }, h("span", { class: "working-source-word" }, "Source"), " ", s.source),
    );
  }

  value(steps, n, v, trail) {
    const at = v.origin === "result" ? before(steps, n, v.symbol) : -1;
    const here = trail + "/" + v.symbol;
    const open = this.#open.has(here);
    const line = [h("span", { class: "value-symbol" }, symbol(v)), h("span", { class: "value-what" }, v.what), h("span", { class: "value-text" }, v.text), h("span", { class: "value-origin" }, at >= 0 ? (open ? "fold" : "worked out, show") : (originWords[v.origin] ?? v.origin))];
    return h(
      "li",
      { key: v.symbol, class: "value" },
      at >= 0
        ? h("button", { type: "button", class: "value-line value-button", "aria-expanded": String(open), "data-opens": v.symbol, onclick: () => this.turn(here) }, line)
        : h("div", { class: "value-line" }, line),
      (v.source || v.note) && h("p", { class: "value-source" }, [v.source, v.note].filter(Boolean).join("; ")),
      open && h("div", { class: "working-inner" }, this.step(steps, at, here)),
    );
  }

  turn(here) {
    if (!this.#open.delete(here)) this.#open.add(here);
    this.draw();
  }
}

/** The step that gave a symbol its value before step n: the same list item's, or the calculator's own. */
export function before(steps, n, symbol) {
  const part = steps[n].part ?? "";
  for (let i = n - 1; i >= 0; i--) {
    const from = steps[i].part ?? "";
    if (steps[i].result.symbol === symbol && (from === part || part.startsWith(from + ".") || from === "")) return i;
  }
  return -1;
}

customElements.define("pw-working", Working);
