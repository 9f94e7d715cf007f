// The shop's own figures: a document like a plan, kept on the device and in no
// plan. A plan that uses them has them written into its own fields.

const key = "pourwright.own";

export function readOwn() {
  try {
    const { figures } = JSON.parse(localStorage.getItem(key)) ?? {};
    return typeof figures === "object" && figures !== null ? figures : {};
  } catch {
    return {};
  }
}

/** Whether the figures are on the device now. */
export function keepOwn(figures) {
  try {
    localStorage.setItem(key, JSON.stringify({ format: 1, figures }));
    return true;
  } catch {
    return false;
  }
}

/** Whether there is any figure in a document. */
export const anything = (node) => (typeof node === "object" && node !== null ? Object.values(node).some(anything) : node !== undefined && node !== null && node !== "");
