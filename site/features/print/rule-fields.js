// The fields of a contraction rule. They are no part of a plan: what they hold
// is kept on the device, with what the printer was found to do.
import { h } from "../../shared/draw.js";
import { form } from "../../shared/form-view.js";
import { levelMark } from "../../shared/mark.js";
import { ruleQuestion } from "./choice.js";

const base = "rule";

/** The fields that pass, and what is to be minded of the rule. The room raises what they want. */
export function ruleFields(room, state, passes) {
  const fields = state.calculators?.find((c) => c.name === "rule").fields.filter((f) => f.key !== "paper" && passes(f));
  const { reply } = state.rule;
  if (!fields) return null;
  const at = (list) => Object.fromEntries((list ?? []).filter((f) => f.field).map((f) => [`${base}.${f.field}`, f]));
  const faults = (reply?.faults ?? []).filter((f) => !f.missing);
  const asked = ruleQuestion(state);
  const shown = { ...state.print.rule, alloy: asked.alloy, length: asked.length, division: asked.division };
  const about = { faults: at(faults), needs: at(reply?.faults?.filter((f) => f.missing)), linked: {}, findings: {}, titles: {}, reading: () => undefined };
  const elsewhere = faults.filter((f) => !fields.some((field) => field.key === f.field));
  return [
    h("div", { key: "fields", class: "rule-fields", "onpw-want": (e) => raise(e, room) }, form(fields, shown, base, about)),
    elsewhere.map((f) => h("p", { key: "fault " + f.field, class: "field-fault" }, `${f.label}: ${f.text}.`)),
    reply?.broken && h("p", { key: "broken", class: "field-fault" }, `The engine came upon a mistake of ours (${reply.broken}).`),
    reply?.findings && h("ul", { key: "findings", class: "rule-findings" }, reply.findings.map((f) => h("li", { key: f.code, class: "finding", "data-finding": f.code }, levelMark(f.level), h("div", null, h("p", null, f.text), f.do && h("p", { class: "finding-do" }, f.do))))),
  ];
}

// A field speaks of the plan; here it means the rule.
function raise(e, room) {
  const { type, ...detail } = e.detail;
  if (type !== "edit" && type !== "commit") return;
  e.stopPropagation();
  room.want("rule-" + type, detail);
}
