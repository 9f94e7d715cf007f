// The section through the mould: the way into the plan. The engine gives the
// shapes to scale; here they are hatched, toned and labelled, and each part is
// a button that opens its sheet. Wide drawings carry labels on leaders; narrow
// ones carry numbers, and the parts list says what they stand for.
import { h } from "../../shared/draw.js";
import { Element } from "../../shared/element.js";
import { shape } from "../../shared/mark.js";
import { stateWords } from "../../shared/words.js";
import { to } from "../../app/route.js";
import { fill, stroke } from "./pen.js";

const leastForLabels = 34; // em of width: below this the drawing carries numbers
const labelWide = 8.6; // em that a label may take
const letter = 0.5; // em that a letter of its name takes, about
const gap = 6; // px between labels
const longest = 36; // letters of a value that a label has room for
let count = 0; // of drawings, so that each has hatches of its own

/** Data: {plan (id), drawing, open (station)}; without a plan it is a picture and nothing more. */
export class MouldDrawing extends Element {
  #size = { width: 0, height: 0, em: 16 };
  #over = ""; // the part under the pointer or focus
  #id = "hatch-" + ++count;

  entered() {
    this.onSize((box) => this.measure(box));
  }

  measure({ width, height }) {
    const em = parseFloat(getComputedStyle(this).fontSize);
    if (width === this.#size.width && height === this.#size.height && em === this.#size.em) return;
    this.#size = { width, height, em };
    this.draw();
  }

  view({ plan, drawing, open }) {
    const { width, height, em } = this.#size;
    if (!drawing) return [];
    const [x0, y0, x1, y1] = drawing.box;
    this.style.setProperty("--aspect", ((y1 - y0) / (x1 - x0)).toFixed(3));
    if (!width) return [];
    const labelled = plan && width / em >= leastForLabels;
    const side = labelled ? labelWide * em + 14 : 8;
    const place = fitted(drawing.box, { left: side, top: 8, right: width - side, bottom: height - 8 });
    const parts = drawing.parts.map((p, i) => ({ ...p, text: p.text.length > longest ? "" : p.text, n: i + 1, key: p.id + "-" + i, px: place(p.at) }));
    const labels = labelled ? laidOut(parts, width, height, em) : plan ? balloons(parts, width, height) : [];
    // The style sheet gives the drawing at least the height that its labels need.
    this.style.setProperty("--need", `${labelled ? Math.ceil(needed(labels)) : 0}px`);
    return [
      h(
        "svg:svg",
        { class: "section", viewBox: `0 0 ${width} ${height}`, width, height, "aria-hidden": "true" },
        h("svg:defs", null, hatches(this.#id)),
        parts.map((p) => this.part(p, place, open)),
        labelled &&
          labels.map((l) =>
            h("svg:g", { key: "leader " + l.key, class: "leader" + (this.lit(l, open) ? " lit" : "") }, h("svg:path", { d: `M${l.edge[0]} ${l.edge[1]}H${l.knee}L${l.px[0].toFixed(1)} ${l.px[1].toFixed(1)}` }), h("svg:circle", { cx: l.px[0].toFixed(1), cy: l.px[1].toFixed(1), r: 2.6 })),
          ),
      ),
      plan && h(
        "ul",
        { class: labelled ? "labels" : "labels balloons", "aria-label": "Parts of the drawing" },
        labels.map((l) =>
          h(
            "li",
            { key: l.key, class: "label-place" + (l.right ? " right" : ""), style: { left: l.left + "px", top: l.top + "px", width: l.width + "px", height: (l.tall ?? 44) + "px" } },
            h(
              "a",
              {
                class: "label" + (this.lit(l, open) ? " lit" : ""),
                href: to.sheet(plan, l.station),
                "data-part": l.id,
                "data-state": l.state,
                onpointerenter: () => this.point(l.key),
                onpointerleave: () => this.point(""),
                onfocus: () => this.point(l.key),
                onblur: () => this.point(""),
              },
              labelled
                ? [h("span", { class: "label-name" }, l.label), " ", h("span", { class: "state state-" + l.state }, shape(l.state), h("span", { class: "state-word" }, l.text || stateWords[l.state])), l.text && h("span", { class: "out-of-sight" }, ", " + stateWords[l.state])]
                : [h("span", { class: "balloon state-" + l.state }, String(l.n)), h("span", { class: "out-of-sight" }, [l.label, l.text, stateWords[l.state]].filter(Boolean).join(", "))],
            ),
          ),
        ),
      ),
    ];
  }

  part(p, place, open) {
    return h(
      "svg:g",
      {
        key: "part " + p.key,
        class: "section-part" + (this.lit(p, open) ? " lit" : ""),
        "data-shape": p.id,
        onclick: () => this.data.plan && (location.hash = to.sheet(this.data.plan, p.station)),
        onpointerenter: () => this.data.plan && this.point(p.key),
        onpointerleave: () => this.point(""),
      },
      p.shapes.map((s) => {
        const points = s.points.map(place);
        return [
          s.closed && h("svg:path", { class: "tone tone-" + s.tone, d: fill(points) }),
          s.closed && texture(p, s) && h("svg:path", { d: fill(points), fill: `url(#${this.#id}-${texture(p, s)})` }),
          h("svg:path", { class: "edge edge-" + s.tone, d: stroke(points, s.closed) }),
        ];
      }),
    );
  }

  lit = (p, open) => this.#over === p.key || (open && open === p.station);

  point(key) {
    if (key === this.#over) return;
    this.#over = key;
    this.draw();
  }
}

/** Maps the engine's millimetres, y up, to px, to one scale and centred. */
function fitted([x0, y0, x1, y1], { left, top, right, bottom }) {
  const scale = Math.min((right - left) / (x1 - x0), (bottom - top) / (y1 - y0));
  const dx = (left + right - scale * (x1 - x0)) / 2;
  const dy = (top + bottom - scale * (y1 - y0)) / 2;
  return ([x, y]) => [dx + (x - x0) * scale, dy + (y1 - y) * scale];
}

/** Labels in two columns, left and right, in the order of what they point to. */
function laidOut(parts, width, height, em) {
  const wide = labelWide * em;
  const middle = (Math.min(...parts.map((p) => p.px[0])) + Math.max(...parts.map((p) => p.px[0]))) / 2;
  const sorted = [...parts].sort((a, b) => a.px[0] - b.px[0]);
  const half = Math.ceil(parts.length / 2);
  // The outer ones go to their side; the rest so that the columns stay even.
  const left = sorted.filter((p, i) => (Math.abs(i - half + 0.5) > 1 ? i < half : p.px[0] < middle && i < half + 1));
  const right = sorted.filter((p) => !left.includes(p));
  const column = (list, isRight) => {
    const labels = [...list].sort((a, b) => a.px[1] - b.px[1]).map((p) => ({ ...p, tall: tallness(p, em) }));
    const knee = isRight ? width - wide - 12 : wide + 12;
    const spare = (height - labels.reduce((sum, l) => sum + l.tall, 0)) / labels.length;
    const space = Math.max(0, Math.min(gap, spare));
    // As near to its point as order and room allow, from the top, then from the bottom.
    const settle = () => {
      let free = 0;
      for (const l of labels) {
        l.top = Math.max(l.px[1] - l.tall / 2, free);
        free = l.top + l.tall + space;
      }
      let floor = height;
      for (const l of labels.toReversed()) {
        l.top = Math.max(0, Math.min(l.top, floor - l.tall));
        floor = l.top - space;
      }
    };
    settle();
    // Neighbours whose leaders cross change places.
    for (let round = 0; round < labels.length; round++) {
      for (let i = 0; i + 1 < labels.length; i++) {
        const [a, b] = [labels[i], labels[i + 1]];
        if (!crossing([knee, a.top + a.tall / 2], a.px, [knee, b.top + b.tall / 2], b.px)) continue;
        labels[i] = b;
        labels[i + 1] = a;
        settle();
      }
    }
    return labels.map((l) => ({
      ...l,
      right: isRight,
      left: isRight ? width - wide : 0,
      width: wide,
      edge: [isRight ? width - wide - 2 : wide + 2, (l.top + l.tall / 2).toFixed(1)],
      knee,
    }));
  };
  return [...column(left, false), ...column(right, true)];
}

/** The height of the taller column of labels. */
const needed = (labels) => Math.max(...[true, false].map((side) => labels.filter((l) => l.right === side).reduce((sum, l) => sum + l.tall + gap, 0)));

const tallness = (p, em) => Math.max(44, (Math.ceil((p.label.length * letter) / (labelWide - 0.75)) + Math.ceil(((p.text.length + 3) * letter * 0.85) / (labelWide - 0.75))) * 1.2 * em + 6);

/** Whether the stretches a–b and c–d cross. */
function crossing(a, b, c, d) {
  const side = (p, q, r) => Math.sign((q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]));
  return side(a, b, c) !== side(a, b, d) && side(c, d, a) !== side(c, d, b);
}

/** Numbers at the parts, pushed apart so that each is a target of its own. */
function balloons(parts, width, height) {
  const size = 44;
  const at = parts.map((p) => [p.px[0], p.px[1]]);
  for (let round = 0; round < 60; round++) {
    for (let i = 0; i < at.length; i++) {
      for (let j = i + 1; j < at.length; j++) {
        const dx = at[j][0] - at[i][0] || 0.1 * (j - i);
        const dy = at[j][1] - at[i][1] || 0.1;
        const d = Math.hypot(dx, dy);
        if (d >= size) continue;
        const push = (size - d) / 2 / d;
        at[i] = [at[i][0] - dx * push, at[i][1] - dy * push];
        at[j] = [at[j][0] + dx * push, at[j][1] + dy * push];
      }
      at[i] = [Math.min(width - size / 2, Math.max(size / 2, at[i][0])), Math.min(height - size / 2, Math.max(size / 2, at[i][1]))];
    }
  }
  return parts.map((p, i) => ({ ...p, left: at[i][0] - size / 2, top: at[i][1] - size / 2, width: size }));
}

/** The hatch of a shape: sand by the half of the mould it lies in. */
function texture(part, { tone }) {
  if (tone === "sand") return part.id.startsWith("drag") ? "drag" : "cope";
  return ["core", "iron", "weight"].includes(tone) && tone;
}

const pattern = (id, size, turn, ...kids) => h("svg:pattern", { key: id, id, width: size, height: size, patternUnits: "userSpaceOnUse", patternTransform: `rotate(${turn})` }, kids);
const line = (name, d) => h("svg:path", { class: "hatch hatch-of-" + name, d });

// Rammed sand: broken strokes with a grain or two between, leaning one way in
// the cope and the other in the drag.
const sand = (id, turn) => pattern(id, 26, turn, line("sand", "M0 4H15M21 4H26M0 17H7M13 17H26"), h("svg:path", { class: "grain", d: "M9 10.4h.1M19 11h.1M4 23h.1M16 24h.1" }));

const hatches = (id) => [
  sand(id + "-cope", -45),
  sand(id + "-drag", 45),
  pattern(id + "-core", 9, 20, line("core", "M0 2H3M5 6.5H8")),
  pattern(id + "-iron", 5, -45, line("iron", "M0 2.5H5")),
  pattern(id + "-weight", 7, 45, line("weight", "M0 3.5H7")),
];

customElements.define("pw-mould-drawing", MouldDrawing);
