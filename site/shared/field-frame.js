// What stands round the input of every field: its label, the unit, what is
// wrong with it, where to get the value, and the findings that name it.
import { h } from "./draw.js";
import { idOf } from "./element.js";
import { finding } from "./finding.js";
import { together } from "./words.js";

/** The ids that describe a field to a screen reader, in the order they stand. */
export function describedBy({ path, field, fault, findings }) {
  const ids = [];
  if (fault) ids.push(idOf(path, "-fault"));
  if (field.hint || (!isMoney(field) && (field.min || field.max))) ids.push(idOf(path, "-hint"));
  if (findings?.length) ids.push(idOf(path, "-findings"));
  return ids.join(" ") || undefined;
}

/** The name of a field and, to its right, the unit that a bare number is taken in. */
export const label = ({ path, field }, unit) =>
  h("div", { class: "field-head" }, h("label", { for: idOf(path), class: "field-label" }, field.label), unit && h("span", { class: "field-unit" }, unit));

/** What goes below the input. extra stands first: how it was read, or where a blank gets its value. */
export function below({ path, field, fault, need, findings, own }, extra) {
  const hint = [field.hint && sentence(field.hint), field.sort !== "list" && !isMoney(field) && rangeOf(field)].filter(Boolean).join(" ");
  return [
    fault && h("p", { key: "fault", class: "field-fault", id: idOf(path, "-fault") }, faultText(fault)),
    need && !fault && h("p", { key: "need", class: "field-need" }, "Still wanted."),
    extra,
    own && h("p", { key: "own", class: "field-blank", "data-own": path }, "Your shop's own figure."),
    hint && h("p", { key: "hint", class: "field-hint", id: idOf(path, "-hint") }, together(hint)),
    findings?.length > 0 && h("div", { key: "findings", class: "field-findings", id: idOf(path, "-findings") }, findings.map((f) => finding({ ...f, source: undefined }))),
  ];
}

/** What may stand in a field; of an amount of money nobody needs telling. */
const rangeOf = ({ min, max }) => (min && max ? `${min} to ${max}.` : min ? `${min} or more.` : max ? `Up to ${max}.` : "").replaceAll(" ", "\u00a0");

/** Whether a field holds an amount of money, or one per something. */
export const isMoney = ({ kind }) => kind === "money" || kind === "price";

/** Says which answer of which sheet fills a field that was left blank. */
export const fromElsewhere = ({ path, linked, titles }) =>
  h("p", { key: "blank", class: "field-blank", id: idOf(path, "-blank") }, `${linked.label}, from ${titles[linked.from] ?? linked.from}.`);

const sentence = (text) => text.charAt(0).toUpperCase() + text.slice(1) + (/[.?]$/.test(text) ? "" : ".");

/** Names the field, what stands there and what is allowed. */
export const faultText = (fault) =>
  fault.value && !fault.text.includes(fault.value) ? `${fault.label}: “${fault.value}”. ${fault.text}` : `${fault.label}: ${fault.text}`;
