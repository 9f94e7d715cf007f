// What the user prefers: the unit system, the theme, the currency, and what goes
// on paper. Kept on the device, never in a plan.

const key = "pourwright.preferences";
const printKey = "pourwright.print";

export const themes = [
  ["", "As the device says"],
  ["paper", "Workshop paper"],
  ["furnace", "Furnace dark"],
  ["contrast", "High contrast"],
];

export function readPrefs() {
  try {
    const { units, theme, currency } = JSON.parse(localStorage.getItem(key)) ?? {};
    return {
      units: units === "us" ? "us" : "metric",
      theme: themes.some(([name]) => name === theme) ? theme : "",
      currency: typeof currency === "string" ? currencyOf(currency) : "",
    };
  } catch {
    return { units: "metric", theme: "", currency: "" };
  }
}

/** A currency's sign or code out of what was typed: letters, signs and a point. */
export const currencyOf = (text) => text.replaceAll(/[^\p{L}\p{Sc}.]/gu, "").slice(0, 4);

export function keepPrefs(prefs) {
  try {
    localStorage.setItem(key, JSON.stringify(prefs));
  } catch {
    // A full or closed store costs the preference, nothing else.
  }
}

/** What goes on paper: {sheets (by name: whether wanted), paper, rule (the fields of a contraction rule)}. */
export function readPrint() {
  const group = (v) => (typeof v === "object" && v !== null && !Array.isArray(v) ? v : {});
  try {
    const { sheets, paper, rule } = group(JSON.parse(localStorage.getItem(printKey)));
    return { sheets: group(sheets), paper: paper === "a4" || paper === "letter" ? paper : "", rule: group(rule) };
  } catch {
    return { sheets: {}, paper: "", rule: {} };
  }
}

export function keepPrint(print) {
  try {
    localStorage.setItem(printKey, JSON.stringify(print));
  } catch {
    // As above.
  }
}

/** The theme to show for a preference. */
export function themeOf(preferred) {
  if (preferred) return preferred;
  if (matchMedia("(prefers-contrast: more)").matches) return "contrast";
  return matchMedia("(prefers-color-scheme: dark)").matches ? "furnace" : "paper";
}
