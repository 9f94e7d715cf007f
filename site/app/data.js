// What the build puts into the page besides the engine: the example plans of
// testdata/plans, and the checks of testdata/checks with what came out.

export const examples = POURWRIGHT_EXAMPLES;
export const evidence = POURWRIGHT_EVIDENCE;
