// Named stretches along one axis, one below the other, such as what freezes
// when. Each row says its name and its figure, so that nothing has to be read
// off the axis.
import { h } from "./draw.js";
import { Element } from "./element.js";
import { axis, figure, hatch, named, number } from "./scale.js";

const row = 2.7; // em: a line for the name, and the bar below it
const letter = 0.42; // em of the widest letters, on average

/** Data: {picture: {label, xLabel, xUnit, bars: [{name, kind, from, to}], bands?}}. */
export class Bars extends Element {
  #wide = 0;
  #em = 16;

  entered() {
    this.onSize(({ width }) => {
      if (Math.abs(width - this.#wide) < 0.5) return;
      this.#wide = width;
      this.#em = parseFloat(getComputedStyle(this).fontSize);
      this.draw();
    });
  }

  view({ picture }) {
    const { bars, bands = [] } = picture;
    if (!this.#wide || bars.length === 0) return [];
    const em = this.#em;
    const wide = this.#wide;
    const told = (b) => (b.from > 0 && b.to > b.from ? `${number(b.from)} to ${figure(b.to, picture.xUnit)}` : figure(b.to, picture.xUnit));
    const room = { left: 0.6 * em, right: (1 + letter * Math.max(...bars.map((b) => told(b).length))) * em, top: bands.length > 0 ? 1.6 * em : 0.4 * em, bottom: 2.7 * em };
    const high = room.top + bars.length * row * em + room.bottom;
    const x = axis([0, ...bars.flatMap((b) => [b.from, b.to])], room.left, wide - room.right, { bands: bands.flatMap((b) => [b.low, b.high]), roomy: Math.min(6, wide / (6 * em)) });
    const end = (v) => Math.min(Math.max(x.at(v), room.left), wide - room.right);
    const spanned = (b) => `${b.label} ${number(b.low)} to ${figure(b.high, picture.xUnit)}`;
    const say = [...bars.map((b) => `${b.name} ${told(b)}`), ...bands.map(spanned)].join("; ");
    return h(
      "figure",
      { class: "chart" },
      h("figcaption", null, picture.label),
      h(
        "svg:svg",
        { class: "chart-picture", viewBox: `0 0 ${wide} ${high}`, width: wide, height: high, role: "img", "aria-label": `${picture.label}, ${named(picture.xLabel, picture.xUnit)}: ${say}.` },
        bands.map((b) => h("svg:g", { key: "band " + b.label }, h("svg:path", { class: "chart-band", d: `M${end(b.low)} ${room.top}H${end(b.high)}V${high - room.bottom}H${end(b.low)}Z` }), h("svg:path", { class: "chart-edge", d: `M${end(b.low)} ${room.top}V${high - room.bottom}M${end(b.high)} ${room.top}V${high - room.bottom}` }), h("svg:text", { class: "chart-word", x: Math.min(end(b.low), wide - letter * em * spanned(b).length), y: room.top - 0.4 * em }, spanned(b)))),
        x.ticks.map((t) => h("svg:path", { key: "g" + t, class: "chart-grid", d: `M${x.at(t)} ${room.top}V${high - room.bottom}` })),
        h("svg:path", { key: "axis", class: "chart-axis", d: `M${room.left} ${high - room.bottom}H${wide - room.right}` }),
        x.ticks.map((t) => h("svg:text", { key: "t" + t, class: "chart-tick", x: x.at(t), y: high - room.bottom + 1.1 * em, "text-anchor": "middle" }, number(t))),
        bars.map((b, i) => this.row(b, i, { x, em, top: room.top + i * row * em, left: room.left, told: told(b) })),
        h("svg:text", { key: "lx", class: "chart-name", x: wide - room.right, y: high - 0.4 * em, "text-anchor": "end" }, named(picture.xLabel, picture.xUnit)),
      ),
    );
  }

  row(b, i, { x, em, top, left, told }) {
    const [from, to] = [x.at(b.from), x.at(b.to)];
    const [y0, y1] = [top + 1.35 * em, top + 2.35 * em];
    const middle = (y0 + y1) / 2;
    const single = b.from === b.to;
    return h(
      "svg:g",
      { key: "row" + i, class: "bars-row bars-" + (b.kind || "plain") },
      h("svg:text", { class: "bars-name", x: left, y: top + 1.05 * em }, b.kind === "riser" || b.kind === "junction" ? `${b.name} (${b.kind})` : b.name),
      single
        ? h("svg:path", { class: "bars-mark", d: `M${to} ${y0}L${to + 0.5 * em} ${middle}L${to} ${y1}L${to - 0.5 * em} ${middle}Z` })
        : [h("svg:path", { class: "bars-bar", d: `M${from} ${y0}H${to}V${y1}H${from}Z` }), b.kind === "riser" && h("svg:path", { class: "chart-hatch", d: hatch(from, y0, to, y1, 0.4 * em) })],
      h("svg:text", { class: "bars-figure", x: to + 0.75 * em, y: middle + 0.33 * em }, told),
    );
  }
}

customElements.define("pw-bars", Bars);
