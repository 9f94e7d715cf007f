// What the build puts into the page besides the engine: the example plans of
// testdata/plans, and the checks of testdata/checks with what came out. The
// checks are long and read by few, so they are fetched when they are wanted.
import { readProofs } from "./engine-source.js";

export const examples = POURWRIGHT_EXAMPLES;

/** The checks: [{topic, source, known, expected, within, got, agrees, note}]. */
export const readEvidence = async () => JSON.parse(await readProofs());
