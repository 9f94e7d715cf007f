// A curve, or several on the same axes, with the figures behind it in a table
// for those who read rather than look.
import { h } from "./draw.js";
import { Element } from "./element.js";

const lowest = 0.52; // of its width
const strokes = ["full line", "dashed", "dotted", "dash and dot", "thin line"]; // as answers.css draws them

/** Data: {curves: [{label, xLabel, xUnit, yLabel, yUnit, points}]}. */
export class Chart extends Element {
  #wide = 0;
  #em = 16;

  entered() {
    this.onSize(({ width }) => {
      if (width === this.#wide) return;
      this.#wide = width;
      this.#em = parseFloat(getComputedStyle(this).fontSize);
      this.draw();
    });
  }

  view({ curves }) {
    if (!this.#wide) return [];
    const em = this.#em;
    const wide = this.#wide;
    const high = Math.min(lowest * wide, 20 * em) + 2 * em;
    const room = { left: 3.4 * em, right: 0.75 * em, top: 0.75 * em, bottom: 2.9 * em };
    const all = curves.flatMap((c) => c.points);
    if (all.length < 2) return [];
    const [first] = curves;
    const x = axis(all.map((p) => p[0]), room.left, wide - room.right);
    const y = axis(all.map((p) => p[1]), high - room.bottom, room.top);
    const name = curves.length > 1 ? `${first.yLabel}: ${curves.map((c) => c.label.toLowerCase()).join(", ")}` : first.label;
    const unit = (label, u) => (u ? `${label}, ${u}` : label);
    return h(
      "figure",
      { class: "chart" },
      h("figcaption", null, name),
      h(
        "svg:svg",
        { viewBox: `0 0 ${wide} ${high}`, width: wide, height: high, role: "img", "aria-label": `${name}: ${unit(first.yLabel, first.yUnit)} against ${unit(first.xLabel, first.xUnit)}, from ${said(all[0])} to ${said(all.at(-1))}. The figures stand in the table below.` },
        y.ticks.map((t) => h("svg:path", { key: "y" + t, class: "chart-grid", d: `M${room.left} ${y.at(t)}H${wide - room.right}` })),
        h("svg:path", { key: "axes", class: "chart-axis", d: `M${room.left} ${room.top}V${high - room.bottom}H${wide - room.right}` }),
        y.ticks.map((t) => h("svg:text", { key: "ty" + t, class: "chart-tick", x: room.left - 0.5 * em, y: y.at(t) + 0.28 * em, "text-anchor": "end" }, number(t))),
        x.ticks.map((t) => h("svg:text", { key: "tx" + t, class: "chart-tick", x: x.at(t), y: high - room.bottom + 1.15 * em, "text-anchor": "middle" }, number(t))),
        curves.map((c, i) => h("svg:path", { key: "c" + i, class: "chart-curve chart-curve-" + (i % strokes.length), d: "M" + c.points.map(([a, b]) => `${x.at(a).toFixed(1)} ${y.at(b).toFixed(1)}`).join("L") })),
        h("svg:text", { key: "lx", class: "chart-name", x: wide - room.right, y: high - 0.45 * em, "text-anchor": "end" }, unit(first.xLabel, first.xUnit)),
      ),
      h("p", { class: "chart-y" }, "Upright: " + unit(first.yLabel, first.yUnit) + (curves.length > 1 ? ". " + curves.map((c, i) => `${c.label}: ${strokes[i % strokes.length]}`).join("; ") : "")),
      h(
        "details",
        { class: "fold" },
        h("summary", null, "Figures"),
        curves.map((c) =>
          h(
            "table",
            { key: c.label, class: "figures" },
            h("caption", null, c.label),
            h("thead", null, h("tr", null, h("th", { scope: "col" }, unit(c.xLabel, c.xUnit)), h("th", { scope: "col" }, unit(c.yLabel, c.yUnit)))),
            h("tbody", null, thin(c.points).map(([a, b]) => h("tr", null, h("td", null, number(a)), h("td", null, number(b))))),
          ),
        ),
      ),
    );
  }
}

/** A scale from values to places, with round ticks. */
function axis(values, from, to) {
  let low = Math.min(...values);
  let high = Math.max(...values);
  if (low > 0 && low < high / 2) low = 0;
  if (low === high) [low, high] = [low - 1, high + 1];
  const rough = (high - low) / 5;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].find((m) => m * power >= rough) * power;
  const ticks = [];
  for (let t = Math.ceil(low / step - 1e-9) * step; t <= high + step * 1e-9; t += step) ticks.push(Number(t.toPrecision(12)));
  return { ticks, at: (v) => from + ((v - low) / (high - low)) * (to - from) };
}

const number = (v) => String(Number(v.toPrecision(4)));
const said = ([x, y]) => `${number(x)}: ${number(y)}`;

/** At most about twenty rows of a long run of points, ends kept. */
function thin(points) {
  const every = Math.ceil(points.length / 20);
  return points.filter((_, i) => i % every === 0 || i === points.length - 1);
}

customElements.define("pw-chart", Chart);
