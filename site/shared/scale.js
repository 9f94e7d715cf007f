// What charts have in common: scales with round ticks, numbers, hatching.

/**
 * A scale from values to places, with round ticks. values are what must be on
 * it; bands are edges that are nice to have on it, and are left off where they
 * would squeeze the rest. roomy is how many ticks there is room for.
 */
export function axis(values, from, to, { bands = [], roomy = 6, exact = false } = {}) {
  let low = Math.min(...values);
  let high = Math.max(...values);
  if (!exact) {
    const most = 2.5 * (high - low || Math.abs(high) || 1);
    const away = (v) => Math.max(low - v, v - high);
    for (const edge of [...bands].sort((a, b) => away(a) - away(b))) {
      const [l, h] = [Math.min(low, edge), Math.max(high, edge)];
      if (h - l <= most) [low, high] = [l, h];
    }
    if (low > 0 && low < high / 2) low = 0;
  }
  if (low === high) [low, high] = [low - 1, high + 1];
  const rough = (high - low) / Math.max(2, roomy);
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].find((m) => m * power >= rough * 0.999) * power;
  const ticks = [];
  for (let t = Math.ceil(low / step - 1e-9) * step; t <= high + step * 1e-9; t += step) ticks.push(Number(t.toPrecision(12)));
  return { low, high, ticks, at: (v) => from + ((v - low) / (high - low)) * (to - from), back: (p) => low + ((p - from) / (to - from)) * (high - low) };
}

/** A number as a chart shows it: three digits, whole thousands in full. */
export const number = (v) => String(Number(v.toPrecision(Math.abs(v) >= 1000 ? 4 : 3))).replace("-", "−");

/** A number with its unit. */
export const figure = (v, unit) => (unit ? `${number(v)}${unit === "°" ? "" : " "}${unit}` : number(v));

/** "Temperature, °C". */
export const named = (label, unit) => (unit ? `${label}, ${unit}` : label);

/** Slanted lines over a box, as a path; gap is how far they stand apart. */
export function hatch(left, top, right, bottom, gap) {
  const lines = [];
  const high = bottom - top;
  for (let x = left - high + gap / 2; x < right; x += gap) {
    const a = Math.max(x, left);
    const b = Math.min(x + high, right);
    if (b > a) lines.push(`M${a.toFixed(1)} ${(bottom - (a - x)).toFixed(1)}L${b.toFixed(1)} ${(bottom - (b - x)).toFixed(1)}`);
  }
  return lines.join("");
}
