// The mark of a state or level: a shape of its own for each, beside its word,
// so that nothing hangs on colour.
import { h } from "./draw.js";
import { levelWords, stateWords } from "./words.js";

// All drawn on a field of 20 × 20.
const shapes = {
  blank: [["circle", { cx: 10, cy: 10, r: 7, class: "dashed" }]],
  needs: [
    ["circle", { cx: 10, cy: 10, r: 7 }],
    ["path", { d: "M10 3a7 7 0 0 1 0 14z", class: "full" }],
  ],
  fault: [["path", { d: "M10 2l8 8-8 8-8-8zM7.5 7.5l5 5M12.5 7.5l-5 5" }]],
  stop: [
    ["path", { d: "M6.7 2h6.6L18 6.7v6.6L13.3 18H6.7L2 13.3V6.7z", class: "full" }],
    ["path", { d: "M6 10h8", class: "cut" }],
  ],
  mind: [["path", { d: "M10 2.5l8.3 14.7H1.7zM10 8v5M10 14.6v.4" }]],
  fine: [["path", { d: "M10 3a7 7 0 1 0 .01 0zM6.6 10.2l2.4 2.4 4.4-5" }]],
  note: [["path", { d: "M10 3a7 7 0 1 0 .01 0zM10 9v5M10 6.2v.4" }]],
};

/** The shape alone, for where the word stands beside it. */
export const shape = (name) =>
  h("svg:svg", { class: "mark mark-" + name, viewBox: "0 0 20 20", "aria-hidden": "true" }, shapes[name].map(([tag, props]) => h("svg:" + tag, props)));

/** A station's state: shape and word. */
export const stateMark = (state) => h("span", { class: "state state-" + state }, shape(state), h("span", { class: "state-word" }, stateWords[state]));

/** A finding's level: shape and word. */
export const levelMark = (level) => h("span", { class: "state state-" + level }, shape(level), h("span", { class: "state-word" }, levelWords[level]));
