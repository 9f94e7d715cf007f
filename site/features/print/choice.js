// What is to go on paper: which sheets, which paper, and what a contraction
// rule is asked of.
import { textOf } from "../../shared/document.js";

export const kinds = [
  ["pour", "Pour sheet"],
  ["handling", "Safe-handling list"],
  ["pattern", "Pattern dimension list"],
  ["mould", "Mould set-up sheet"],
  ["rule", "Contraction rule"],
];

/** Whether a sheet is wanted: all are but the rule, until somebody says otherwise. */
export const wanted = ({ print }, key) => print.sheets[key] ?? key !== "rule";

export const paperOf = ({ print, prefs }) => print.paper || (prefs.units === "us" ? "letter" : "a4");

/** Whether a contraction rule is shown or may be printed. */
export const ruleWanted = (state) => state.route.view === "rule" || (state.open !== null && wanted(state, "rule"));

/** What a plan says of its contraction, by the rule's own fields. */
export const fromPlan = ["alloy", "table", "own", "convention"];

/** The rule to ask the engine for. In a plan the contraction is the plan's. */
export function ruleQuestion(state) {
  const { open, print, prefs } = state;
  const us = prefs.units === "us";
  const rule = { alloy: "grey-iron", length: us ? "12 in" : "300 mm", division: us ? "1/16" : "mm", ...print.rule, paper: paperOf(state) };
  if (!open) return rule;
  const { pattern, metal } = open.doc;
  for (const key of fromPlan) delete rule[key];
  const alloy = textOf(pattern?.alloy) || textOf(metal?.alloy);
  const { table, own, convention } = pattern ?? {};
  return Object.fromEntries(Object.entries({ ...rule, alloy, table, own, convention }).filter(([, v]) => textOf(v)));
}
