// The section through the mould for paper: black lines, hatches by direction,
// dimension lines, and a number at each part that the list beside it explains.
// And the cope from above, with what lies on it.
import { h } from "../../shared/draw.js";
import { fill, stroke } from "../mould/pen.js";

const shown = new Set(["drag", "cope", "flask", "casting", "riser", "core", "sprue", "ingate", "weights"]);
const wide = 700; // units of the drawing's width; about 1 px at full size
const letter = 6.2; // units that a letter of a dimension takes
let count = 0; // of drawings, so that each has hatches of its own

/** The parts of the mould that are drawn, in the order of their numbers. */
export const numbered = (drawing) => drawing.parts.filter((p) => shown.has(p.id) && p.id !== "flask").map((p, i) => ({ ...p, n: i + 1 }));

export function section(drawing, width = wide) {
  const parts = drawing.parts.filter((p) => shown.has(p.id));
  const { dimensions } = drawing.setting;
  const corners = [...parts.flatMap((p) => p.shapes.flatMap((s) => s.points)), ...dimensions.flatMap((d) => (d.along ? [[d.from[0], d.line], [d.to[0], d.line]] : [[d.line, d.from[1]], [d.line, d.to[1]]]))];
  const [xs, ys] = [corners.map((p) => p[0]), corners.map((p) => p[1])];
  const [left, right, bottom, top] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const edge = 18;
  const scale = (width - 2 * edge) / (right - left);
  const height = (top - bottom) * scale + 2 * edge;
  const at = ([x, y]) => [edge + (x - left) * scale, edge + (top - y) * scale];
  const id = "sheet-hatch-" + ++count;
  return h(
    "svg:svg",
    { class: "paper-section", viewBox: `0 0 ${width} ${height.toFixed(0)}`, role: "img", "aria-label": "Section through the mould, to scale" },
    h("svg:defs", null, hatches(id)),
    parts.map((p) =>
      p.shapes.map((s) => {
        const points = s.points.map(at);
        const hatch = texture(p, s);
        return [
          s.closed && h("svg:path", { class: "ink-" + s.tone, d: fill(points) }),
          s.closed && hatch && h("svg:path", { d: fill(points), fill: `url(#${id}-${hatch})` }),
          h("svg:path", { class: "ink-edge", d: stroke(points, s.closed) }),
        ];
      }),
    ),
    dimensions.map((d) => dimension(d, at)),
    numbered(drawing).map((p) => balloon(p.n, at(p.at))),
  );
}

/** The flask seen from above: where the lift acts, and what holds it. */
export function cover(setting, width = 330) {
  const edge = 26;
  const scale = (width - 2 * edge) / setting.length;
  const height = setting.width * scale + 2 * edge;
  const at = ([x, y]) => [edge + x * scale, height - edge - y * scale];
  const [l, b] = at([0, 0]);
  const [r, t] = at([setting.length, setting.width]);
  const mark = (m, i) => {
    const [x, y] = at([m.x, m.y]);
    const shape = { lift: `M${x - 9} ${y}h18M${x} ${y - 9}v18`, weight: `M${x - 8} ${y - 8}h16v16h-16z`, clamp: `M${x - 7} ${y - 7}l14 14M${x + 7} ${y - 7}l-14 14`, closing: `M${x} ${y - 10}l9 17h-18z` }[m.kind];
    return h("svg:g", { key: i }, h("svg:path", { class: "ink-mark", d: shape }));
  };
  return h(
    "svg:svg",
    { class: "paper-cover", viewBox: `0 0 ${width} ${height.toFixed(0)}`, role: "img", "aria-label": "The cope from above" },
    h("svg:path", { class: "ink-heavy", d: `M${l} ${b}H${r}V${t}H${l}Z` }),
    h("svg:path", { class: "ink-axis", d: `M${(l + r) / 2} ${t}V${b}M${l} ${(t + b) / 2}H${r}` }),
    setting.marks.toSorted((a, b) => (a.kind === "lift") - (b.kind === "lift")).map(mark), // the lift on top
    h("svg:text", { class: "ink-text", x: l, y: b + 16 }, "left, near: measured from here"),
    h("svg:text", { class: "ink-text", x: r, y: t - 8, "text-anchor": "end" }, "right, far"),
  );
}

const tick = 4;

/** A dimension line with its text on white, extension lines from what it measures. */
function dimension(d, at) {
  const [a, b] = [at(d.from), at(d.to)];
  const [ax, ay] = d.along ? [a[0], at([0, d.line])[1]] : [at([d.line, 0])[0], a[1]];
  const [bx, by] = d.along ? [b[0], ay] : [ax, b[1]];
  const [mx, my] = [(ax + bx) / 2, (ay + by) / 2];
  const long = d.text.length * letter + 6;
  const slash = (x, y) => `M${x - tick} ${y + tick}L${x + tick} ${y - tick}`;
  const f = (v) => v.toFixed(1);
  // A text longer than its line stands beside it.
  const tight = Math.abs(d.along ? bx - ax : by - ay) < long + 10;
  const [tx, ty] = tight && !d.along ? [mx + 8 + long / 2, my] : [mx, my];
  const turn = !d.along && !tight ? `rotate(-90 ${f(tx)} ${f(ty)})` : undefined;
  return h(
    "svg:g",
    { class: "dimension" },
    h("svg:path", { class: "ink-extension", d: `M${f(a[0])} ${f(a[1])}L${f(ax)} ${f(ay)}M${f(b[0])} ${f(b[1])}L${f(bx)} ${f(by)}` }),
    h("svg:path", { class: "ink-dimension", d: `M${f(ax)} ${f(ay)}L${f(bx)} ${f(by)}` + slash(ax, ay) + slash(bx, by) }),
    h("svg:rect", { class: "ink-clear", x: f(tx - long / 2), y: f(ty - 8), width: f(long), height: 16, transform: turn }),
    h("svg:text", { class: "ink-text", x: f(tx), y: f(ty + 4), "text-anchor": "middle", transform: turn }, d.text),
  );
}

const balloon = (n, [x, y]) => h("svg:g", { key: "balloon " + n }, h("svg:circle", { class: "ink-balloon", cx: x.toFixed(1), cy: y.toFixed(1), r: 9 }), h("svg:text", { class: "ink-text ink-number", x: x.toFixed(1), y: (y + 4).toFixed(1), "text-anchor": "middle" }, String(n)));

function texture(part, { tone }) {
  if (tone === "sand") return part.id === "drag" ? "drag" : "cope";
  return { core: "core", iron: "iron", weight: "weight", metal: "metal", liquid: "metal" }[tone];
}

const pattern = (id, size, turn, ...kids) => h("svg:pattern", { key: id, id, width: size, height: size, patternUnits: "userSpaceOnUse", patternTransform: `rotate(${turn})` }, kids);
const line = (d) => h("svg:path", { class: "ink-hatch", d });

// Sand sparse and by the half of the mould it lies in, metal dense, as on an
// old foundry drawing.
const hatches = (id) => [
  pattern(id + "-cope", 26, -45, line("M0 4H12M21 4H26M0 17H5M13 17H24")),
  pattern(id + "-drag", 26, 45, line("M0 4H12M21 4H26M0 17H5M13 17H24")),
  pattern(id + "-core", 9, 20, line("M0 2H3M5 6.5H8")),
  pattern(id + "-iron", 4, -45, line("M0 2H4")),
  pattern(id + "-weight", 7, 45, line("M0 3.5H7")),
  pattern(id + "-metal", 3.4, 60, line("M0 1.7H3.4")),
];
