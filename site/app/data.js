// What the build puts into the page besides the engine: the example plans of
// testdata/plans, the first answers to them and to an empty plan, and the
// calculators with their fields, so that a page can be drawn while the engine
// still starts; and the checks of testdata/checks with what came out.
import { readAside } from "./engine-source.js";

export const examples = POURWRIGHT_EXAMPLES;

/**
 * What the engine says first of an example in which nothing was changed, as the
 * build has asked the same engine; null of any other plan, or where it is asked
 * for in other units or with a currency.
 */
export async function readFirst(plan, { units, currency }) {
  const text = JSON.stringify(plan);
  const at = units === "metric" && !currency ? examples.findIndex((e) => JSON.stringify(e.plan) === text) : -1;
  return at < 0 ? null : (await readAside("first")).examples[at];
}

/** The drawing of an empty plan. */
export const readSketch = async () => (await readAside("first")).sketch;

/** The class: {demonstrations, openings (by calculator)}, see testdata/demonstrations and testdata/openings.json. */
export const lessons = POURWRIGHT_LESSONS;

/** The checks: [{topic, source, known, expected, within, got, agrees, note}]. */
export const readEvidence = () => readAside("proofs");

const calculators = {}; // by system of units, once read

/** The calculators in a system of units, as the door lists them. */
export const readCalculators = (units) =>
  (calculators[units] ??= unfolded(units).catch((error) => {
    delete calculators[units];
    throw error;
  }));

// The build has left out fields that another calculator has too, and names that
// one ("like"). In US units it gives only what differs from the metric list: each
// value by how many stand before it.
async function unfolded(units) {
  const [list, changes] = await Promise.all([readAside("calculators"), units === "us" ? readAside("calculators-us") : {}]);
  let passed = 0;
  const change = (it) => {
    for (const key in it) {
      if (it[key] && typeof it[key] === "object") change(it[key]);
      else it[key] = changes[passed++] ?? it[key];
    }
  };
  if (units === "us") change(list);
  const filled = ({ like, ...it }) => (like ? { ...it, fields: fieldsOf(like) } : it);
  const fieldsOf = (name) => list.find((c) => c.name === name).fields.map(filled);
  return list.map(({ like, ...c }) => ({ ...c, fields: fieldsOf(like ?? c.name) }));
}
