// One input that can be moved: by hand, by the arrow keys, or by typing.
import { h } from "../../shared/draw.js";
import { idOf } from "../../shared/element.js";

/**
 * Draws a slider. text is what stands there now; moved(text, resting) is told of
 * every move, resting when the hand is off it; typed(text) of what was typed.
 */
export function slider(s, text, { moved, typed }) {
  const id = idOf(s.field, "-slider");
  const said = (value) => (s.unit && !s.whole ? `${value} ${s.unit}` : value);
  return h(
    "div",
    { key: s.field, class: "class-slider", "data-slider": s.field },
    h("label", { class: "class-slider-label", for: id }, s.label, s.default && h("span", { class: "class-default" }, " printed default")),
    h("input", {
      key: "typed",
      class: "class-typed",
      type: "text",
      autocomplete: "off",
      spellcheck: "false",
      "aria-label": `${s.label}, typed`,
      ".value": text,
      onchange: (e) => typed(e.target.value),
    }),
    h("input", {
      key: "range",
      id,
      class: "class-range",
      type: "range",
      min: s.low,
      max: s.high,
      step: s.step,
      "aria-valuetext": text,
      ".value": String(s.value),
      oninput: (e) => moved(said(e.target.value), false),
      onchange: (e) => moved(said(e.target.value), true),
    }),
    h("span", { class: "class-ends", "aria-hidden": "true" }, h("span", null, said(String(s.low))), h("span", null, said(String(s.high)))),
  );
}
