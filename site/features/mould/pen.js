// The draughtsman's hand: lines that bow a hair and run on a little past their
// corners. The wobble hangs on the place of the line alone, so that the same
// drawing always comes out the same.

const bow = 0.9; // px a line may swell to one side
const over = 2.2; // px that a line runs on past a sharp corner
const short = 18; // px: edges shorter than this belong to a curve

/** The path of an outline through points (px), drawn edge by edge. */
export function stroke(points, closed) {
  const edges = points.map((p, i) => [p, points[(i + 1) % points.length]]).slice(0, closed ? undefined : -1);
  const lengths = edges.map(([a, b]) => Math.hypot(b[0] - a[0], b[1] - a[1]));
  if (edges.length > 10 && lengths.every((l) => l < short * 4)) return curve(points, closed);
  return edges
    .map(([a, b], i) => {
      const l = lengths[i];
      if (l < 0.01) return "";
      const [ux, uy] = [(b[0] - a[0]) / l, (b[1] - a[1]) / l];
      const run = l < short ? 0 : over;
      const swell = Math.min(bow, l / 60) * noise(a[0] + 3 * a[1] + 7 * b[0] + 13 * b[1]);
      const mid = [(a[0] + b[0]) / 2 - uy * swell * 2, (a[1] + b[1]) / 2 + ux * swell * 2];
      return `M${f(a[0] - ux * run)} ${f(a[1] - uy * run)}Q${f(mid[0])} ${f(mid[1])} ${f(b[0] + ux * run)} ${f(b[1] + uy * run)}`;
    })
    .join("");
}

/** The path of an outline to fill: exact. */
export const fill = (points) => "M" + points.map((p) => `${f(p[0])} ${f(p[1])}`).join("L") + "Z";

const curve = (points, closed) => "M" + points.map((p) => `${f(p[0])} ${f(p[1])}`).join("L") + (closed ? "Z" : "");

const f = (v) => v.toFixed(1);

/** A number in −1…1 that hangs on x alone: steps by the golden section never settle. */
const noise = (x) => {
  const s = (x * (Math.sqrt(5) - 1)) / 2;
  return 2 * (s - Math.floor(s)) - 1;
};
