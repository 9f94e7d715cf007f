// What a class is given: how a lesson begins, by its address, and which of the
// inputs are worth a slider in sight.
import { put } from "../../shared/document.js";

/**
 * Reads the address of a lesson: "" is none; "freeze" a calculator;
 * "show/1-twice-as-thick" a demonstration; "plan/ID/pour" a station of a plan.
 */
export function addressed(lesson) {
  const [kind, id, station] = lesson.split("/");
  if (kind === "show") return { show: id };
  if (kind === "plan") return { plan: id, station };
  return { calculator: kind };
}

export const fileOf = (show) => show + ".json";
export const showOf = (file) => file.replace(/\.json$/, "");

/** Puts texts, by their paths, into an input. */
export const withTexts = (input, texts) => Object.entries(texts ?? {}).reduce((doc, [path, text]) => put(doc, path, text), input);

/**
 * Begins a lesson: {calculator, input, vary, answer, from, to, sliders, show
 * (the demonstration), plan, station}, or {missing} where there is none.
 * class is {lessons, examples, ask, readPlan}.
 */
export async function begin(lesson, units, { lessons, examples, ask, readPlan }) {
  const at = addressed(lesson);
  if (at.plan) {
    const doc = await readPlan(at.plan);
    if (!doc) return { missing: "This plan is not on this device." };
    const section = await stationOf(doc, at.station, units, ask);
    if (!section.ok) return { missing: "The plan has no such sheet." };
    const { vary, answer } = await openingOf(section.calculator, lessons);
    return { ...section, vary, answer, plan: at.plan, station: at.station };
  }
  const named = at.show ? lessons.demonstrations.find((d) => d.file === fileOf(at.show)) : await openingOf(at.calculator, lessons);
  if (!named) return { missing: "There is no such lesson." };
  const doc = named.example ? examples.find((e) => e.file === named.example).plan : named.input;
  const begun = named.station ? await stationOf(doc, named.station, units, ask) : { calculator: named.calculator, input: doc };
  const { vary, answer, from, to, sliders } = named;
  return { ...begun, calculator: at.calculator ?? begun.calculator, input: withTexts(begun.input, named.start), vary, answer, from, to, sliders, show: at.show && named };
}

const stationOf = (doc, station, units, ask) => ask("station", { units }, { plan: doc, station });

/** How a calculator opens: its own record, or the demonstration that it names. */
function openingOf(calculator, { openings, demonstrations }) {
  const own = openings[calculator];
  return own?.demonstration ? demonstrations.find((d) => d.file === own.demonstration) : own;
}

const most = 6; // sliders in sight
const least = 0.02; // of its size that the answer must move for a slider to be worth it

/** The fields of the sliders to show first: those named, or those that the answer hangs on most. */
export function mainOf(sliders, named, vary) {
  if (named) return named;
  const moving = sliders.filter((s) => s.effect >= least).sort((a, b) => Number(a.default ?? false) - Number(b.default ?? false) || b.effect - a.effect);
  const fields = new Set([vary, ...moving.map((s) => s.field)].slice(0, most));
  return sliders.filter((s) => fields.has(s.field)).map((s) => s.field);
}
