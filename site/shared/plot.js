// Draws curves on one pair of axes: what is shaded behind them, the lines, and
// their names beside them. Every line has a stroke of its own and every shaded
// stretch a word and an edge, so that nothing hangs on colour.
import { h } from "./draw.js";
import { axis, hatch, named, number } from "./scale.js";

export const strokes = ["full line", "dashed", "dotted", "dash and dot", "thin line"]; // as charts.css draws them

const lowest = 0.52; // of its width
const tallest = 20; // em

export const runsOf = (curve) => curve.runs ?? [curve.points];

/** Every point of the curves. */
export const pointsOf = (curves) => curves.flatMap((c) => runsOf(c).flat());

/**
 * The geometry of a plot wide px across with letters of em px. reach fixes the
 * ends of the x axis, rise are values to keep on the y axis, flat is the height
 * over the width; bands are along either axis.
 */
export function layout({ curves, bands = [], reach, rise = [], flat = lowest, wide, em }) {
  const tall = Math.min(flat * wide, tallest * em) + 3.2 * em;
  const room = { left: 3.6 * em, right: 0.9 * em, top: 1.9 * em, bottom: 2.9 * em };
  const all = pointsOf(curves);
  const edges = (upright) => bands.filter((b) => b.upright === upright).flatMap((b) => [b.low, b.high]);
  const roomy = Math.min(6, (wide - room.left) / (4.6 * em));
  const x = axis(reach ?? all.map((p) => p[0]), room.left, wide - room.right, { bands: reach ? [] : edges(false), roomy, exact: Boolean(reach) });
  const air = 0.06 * (Math.max(...rise) - Math.min(...rise)); // over the letters of the marks
  const y = axis([...all.map((p) => p[1]), ...(rise.length > 0 ? [Math.max(...rise) + air] : [])], tall - room.bottom, room.top, { bands: edges(true), roomy: Math.min(6, tall / (2.4 * em)) });
  return { wide, tall, em, room, x, y, left: room.left, right: wide - room.right, top: room.top, bottom: tall - room.bottom };
}

/**
 * Draws the plot. spans are stretches of x that are refused, or that have
 * something to stop for or to mind: {from, to, state, label}; marks are single
 * points: {x, y, label}; at is the x that the cursor stands at.
 */
export function plot(box, { curves, bands = [], spans = [], marks = [], at, label }) {
  const { x, y, em, left, right, top, bottom } = box;
  const [first] = curves;
  const boxes = bands.map((b) => edgesOf(b, box)).filter(Boolean);
  const stretches = spans.map((s) => ({ ...s, x0: within(x.at(s.from), left, right), x1: within(x.at(s.to), left, right) })).filter((s) => s.x1 - s.x0 > 0.5);
  return h(
    "svg:svg",
    { class: "chart-picture", viewBox: `0 0 ${box.wide} ${box.tall}`, width: box.wide, height: box.tall, role: "img", "aria-label": label },
    boxes.map((b, i) => h("svg:path", { key: "band" + i, class: "chart-band", d: `M${b.x0} ${b.y0}H${b.x1}V${b.y1}H${b.x0}Z` })),
    stretches.map((s, i) => span(s, i, box)),
    boxes.map((b, i) => h("svg:path", { key: "edge" + i, class: "chart-edge", d: (b.sides ? `M${b.x0} ${b.y0}V${b.y1}M${b.x1} ${b.y0}V${b.y1}` : "") + (b.upright ? `M${b.x0} ${b.y0}H${b.x1}M${b.x0} ${b.y1}H${b.x1}` : "") })),
    y.ticks.map((t) => h("svg:path", { key: "y" + t, class: "chart-grid", d: `M${left} ${y.at(t)}H${right}` })),
    h("svg:path", { key: "axes", class: "chart-axis", d: `M${left} ${top}V${bottom}H${right}` }),
    y.ticks.map((t) => h("svg:text", { key: "ty" + t, class: "chart-tick", x: left - 0.5 * em, y: y.at(t) + 0.28 * em, "text-anchor": "end" }, number(t))),
    x.ticks.map((t) => h("svg:text", { key: "tx" + t, class: "chart-tick", x: x.at(t), y: bottom + 1.15 * em, "text-anchor": "middle" }, number(t))),
    curves.map((c, i) =>
      h("svg:path", { key: "c" + i, class: "chart-curve chart-curve-" + (i % strokes.length), d: runsOf(c).map((run) => (run.length === 1 ? dot(x.at(run[0][0]), y.at(run[0][1])) : "M" + run.map(([a, b]) => `${x.at(a).toFixed(1)} ${y.at(b).toFixed(1)}`).join("L"))).join("") }),
    ),
    at !== undefined && h("svg:path", { key: "cursor", class: "chart-cursor-line", d: `M${x.at(at)} ${top}V${bottom}` }),
    words(box, curves, boxes, stretches, marks).map((w, i) => h("svg:text", { key: "word" + i, class: w.class, x: w.px, y: w.py, "text-anchor": "middle" }, w.text)),
    marks.map((m, i) => mark(box, m, i)),
    h("svg:text", { key: "ly", class: "chart-name", x: 0.2 * em, y: 1 * em }, named(first.yLabel, first.yUnit)),
    h("svg:text", { key: "lx", class: "chart-name", x: right, y: box.tall - 0.45 * em, "text-anchor": "end" }, named(first.xLabel, first.xUnit)),
  );
}

const dot = (x, y) => `M${x - 2} ${y}h4`;

const within = (v, low, high) => Math.min(Math.max(v, low), high);

/** A shaded band on the plot; null where none of it is in sight. */
function edgesOf(b, { x, y, left, right, top, bottom }) {
  const sides = !b.upright || b.to > b.from;
  const [x0, x1] = (b.upright ? (sides ? [x.at(b.from), x.at(b.to)] : [left, right]) : [x.at(b.low), x.at(b.high)]).map((v) => within(v, left, right));
  const [y0, y1] = b.upright ? [y.at(b.high), y.at(b.low)].map((v) => within(v, top, bottom)) : [top, bottom];
  return x1 - x0 < 0.5 || y1 - y0 < 0.5 ? null : { ...b, sides, x0, x1, y0, y1 };
}

// A refusal is crossed by close lines, a stop by wide ones, what is to be
// minded is only edged; each says its word.
function span(s, i, { em, top, bottom }) {
  const gap = { refused: 0.5, stop: 1.1 }[s.state];
  return h(
    "svg:g",
    { key: "span" + i, class: "chart-span chart-span-" + s.state, "data-span": s.state },
    h("svg:path", { class: "chart-span-ground", d: `M${s.x0} ${top}H${s.x1}V${bottom}H${s.x0}Z` }),
    gap && h("svg:path", { class: "chart-hatch", d: hatch(s.x0, top, s.x1, bottom, gap * em) }),
    h("svg:path", { class: "chart-edge", d: `M${s.x0} ${top}V${bottom}M${s.x1} ${top}V${bottom}` }),
  );
}

// A mark has a ring, a letter, and thin lines to both axes.
function mark({ x, y, em, left, bottom }, m, i) {
  const [px, py] = [x.at(m.x), y.at(m.y)];
  return h(
    "svg:g",
    { key: "mark" + (m.label || i), class: "chart-mark chart-mark-" + i },
    h("svg:path", { class: "chart-lead", d: `M${left} ${py}H${px}V${bottom}` }),
    h("svg:circle", { class: "chart-ring", cx: px, cy: py, r: 0.42 * em }),
    m.label && h("svg:text", { class: "chart-letter", x: px, y: py - 0.7 * em, "text-anchor": "middle" }, m.label),
  );
}

/** Where a curve stands at x, read off its straight pieces; undefined where it has none. */
export function valueAt(curve, x) {
  for (const run of runsOf(curve)) {
    for (let i = 0; i < run.length; i++) {
      const [a, ya] = run[i];
      if (Math.abs(a - x) < 1e-9 * Math.max(1, Math.abs(x))) return ya;
      const next = run[i + 1];
      if (next && a < x && x < next[0]) return ya + ((next[1] - ya) * (x - a)) / (next[0] - a);
    }
  }
  return undefined;
}

// The words on the field: the names of the curves, each by its line, and what
// the shaded stretches are. Every word takes the place where it is clearest of
// lines and of the words before it; one that has no clear place stays away, for
// the lines below the chart say it too.
function words({ x, y, em, left, right, top, bottom }, curves, boxes, stretches, marks) {
  const placed = marks.map((m) => ({ px: x.at(m.x), py: y.at(m.y) - 0.4 * em, half: 0.6 * em }));
  const clear = (px, py, half, own) => {
    let least = 2 * em;
    let [mine, nearest] = [2 * em, 2 * em]; // how near its own line and the others are
    curves.forEach((c, j) => {
      for (let k = -4; k <= 4; k++) {
        const v = valueAt(c, x.back(px + (k * half) / 4));
        if (v === undefined) continue;
        const w = y.at(v);
        const off = w < py - 0.85 * em ? py - 0.85 * em - w : w > py + 0.25 * em ? w - py - 0.25 * em : -em;
        least = Math.min(least, off + (j === own && off >= 0 ? em : 0)); // its own line may be near
        if (j === own) mine = Math.min(mine, off);
        else nearest = Math.min(nearest, off);
      }
    });
    if (own >= 0 && mine > nearest) return -1; // it would be taken for another's
    for (const o of placed) if (Math.abs(o.px - px) < o.half + half + 0.4 * em) least = Math.min(least, Math.abs(o.py - py) - 1.2 * em);
    return least;
  };
  const put = (text, kind, own, candidates) => {
    const half = 0.22 * em * text.length;
    let best;
    for (const [cx, cy, wish] of candidates) {
      const [px, py] = [within(cx, left + half + 2, right - half - 2), within(cy, top + 0.95 * em, bottom - 0.35 * em)];
      const c = clear(px, py, half, own);
      if (c >= 0 && (!best || c + (wish ?? 0) > best.c)) best = { px, py, half, text, class: kind, c: c + (wish ?? 0) };
    }
    if (best) placed.push(best);
  };
  stretches.forEach((s) => {
    if (s.x1 - s.x0 > 0.5 * em * s.label.length) put(s.label, "chart-word", -1, [1.05, 2.3, 3.5].map((d, i) => [(s.x0 + s.x1) / 2, top + d * em, -i * em]));
  });
  if (curves.length > 1) {
    curves.forEach((c, i) => {
      const at = [];
      for (let f = 0.06; f < 0.97; f += 0.06) {
        const px = left + f * (right - left);
        const half = 0.22 * em * c.label.length;
        const heights = [px - half, px, px + half].map((q) => valueAt(c, x.back(within(q, left, right)))).filter((v) => v !== undefined).map(y.at);
        if (heights.length === 3) at.push([px, Math.min(...heights) - 0.45 * em], [px, Math.max(...heights) + 1.05 * em]);
      }
      put(c.label, "chart-word chart-curve-name", i, at);
    });
  }
  boxes.forEach((b) => {
    const half = 0.22 * em * b.label.length;
    const across = b.sides ? [(b.x0 + b.x1) / 2, b.x1 - half] : [b.x1 - half - 0.5 * em, b.x0 + half + 0.5 * em, (b.x0 + b.x1) / 2];
    put(b.label, "chart-word", -1, across.flatMap((px) => [[px, b.y0 + 1.05 * em, 0.2 * em], [px, b.y1 - 0.5 * em, 0.1 * em], [px, (b.y0 + b.y1) / 2 + 0.3 * em]]));
  });
  return placed.slice(marks.length);
}
