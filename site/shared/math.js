// Formulas as native MathML, built from the engine's tree of
// [element, "text"] and [element, child…].
import { h } from "./draw.js";

const tree = ([name, ...rest]) => h("math:" + name, null, rest.map((r) => (typeof r === "string" ? r : tree(r))));

/** One row of a formula. */
export const formula = (row, label) => h("math:math", { display: "block", "aria-label": label }, tree(row));

/** A symbol in a line of text. */
export const symbol = (value) => (value.mark ? h("math:math", null, tree(value.mark)) : h("var", null, value.symbol));
