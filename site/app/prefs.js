// What the user prefers: the unit system and the theme. Kept on the device,
// never in a plan.

const key = "pourwright.preferences";

export const themes = [
  ["", "As the device says"],
  ["paper", "Workshop paper"],
  ["furnace", "Furnace dark"],
  ["contrast", "High contrast"],
];

export function readPrefs() {
  try {
    const { units, theme } = JSON.parse(localStorage.getItem(key)) ?? {};
    return {
      units: units === "us" ? "us" : "metric",
      theme: themes.some(([name]) => name === theme) ? theme : "",
    };
  } catch {
    return { units: "metric", theme: "" };
  }
}

export function keepPrefs(prefs) {
  try {
    localStorage.setItem(key, JSON.stringify(prefs));
  } catch {
    // A full or closed store costs the preference, nothing else.
  }
}

/** The theme to show for a preference. */
export function themeOf(preferred) {
  if (preferred) return preferred;
  if (matchMedia("(prefers-contrast: more)").matches) return "contrast";
  return matchMedia("(prefers-color-scheme: dark)").matches ? "furnace" : "paper";
}
