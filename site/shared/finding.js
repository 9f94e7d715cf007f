// A finding: its level as word and shape, what is wrong, what to change first,
// and the source of the rule.
import { h } from "./draw.js";
import { levelMark } from "./mark.js";
import { together } from "./words.js";

/** Draws a finding; action is a button or link that leads to its field. */
export const finding = (f, action) =>
  h(
    "div",
    { key: [f.station, f.part, f.code, f.field, f.text].join("|"), class: "finding finding-" + f.level, "data-finding": f.code },
    levelMark(f.level),
    h(
      "div",
      { class: "finding-body" },
      h("p", { class: "finding-text" }, together(f.text)),
      f.do && h("p", { class: "finding-do" }, together(f.do)),
      f.source && h("p", { class: "finding-source" }, f.source),
      action,
    ),
  );
