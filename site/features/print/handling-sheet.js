// The safe-handling list for paper: a box for each item, initials for each hold
// point, and names to sign.
import { h } from "../../shared/draw.js";
import { together } from "../../shared/words.js";
import { handlingList } from "../handling/list.js";
import { box, heading, sheetHead, toWrite } from "./words.js";

export function handlingSheet(state) {
  const list = handlingList(state);
  if (!list) return null;
  return [
    sheetHead("Safe-handling list", list.standing),
    { key: "holds", node: h("p", { class: "paper-holds" }, list.open === 0 ? `All ${list.holds} hold points were answered in the plan.` : `${list.open} of ${list.holds} hold points are open. The metal does not move before each of them is answered.`) },
    ...list.sections.flatMap((section, n) => [heading(`h-${n}`, section.title), { key: `items-${n}`, wrap: (items) => h("ol", { class: "paper-items" }, items), items: section.items.map(item) }]),
    { key: "names", node: h("div", { class: "paper-names" }, h("p", null, "Gone through before the pour, with everybody who takes part:"), toWrite(["Leader of the pour", "Second", "Date and time"], "three"), toWrite(["Furnace", "Ladle", "Ladle"], "three")) },
  ];
}

const item = (i) =>
  h(
    "li",
    { class: i.hold ? "paper-hold" : undefined, "data-row": "" },
    box(i.done),
    h("p", { class: "paper-item" }, i.hold && h("b", null, "Hold point. "), together(i.text), i.why && h("span", { class: "paper-why" }, " " + together(i.why)), i.hold && !i.done && i.state !== "open" && h("span", { class: "paper-why" }, ` In the plan: ${i.state}${i.reason ? `, ${i.reason}` : ""}.`)),
    i.hold && h("p", { class: "paper-initials" }, h("span", null, i.by || ""), h("span", null, "Initials")),
  );
