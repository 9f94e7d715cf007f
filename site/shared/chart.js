// A curve, or several on the same axes, that can be read: by a finger or the
// arrow keys, at whose place the figures stand below; by a screen reader, as a
// sentence; and in full, as a table.
import { h } from "./draw.js";
import { Element } from "./element.js";
import { layout, plot, pointsOf, runsOf, strokes, valueAt } from "./plot.js";
import { figure, named, number } from "./scale.js";

/**
 * Data: {curves: [{label, xLabel, xUnit, yLabel, yUnit, points or runs, bands?}],
 * and where wanted name (where the page itself says what is drawn), spans, marks, reach, rise and flat, as plot.js has them}.
 */
export class Chart extends Element {
  #wide = 0;
  #em = 16;
  #at; // the place among the stops that the cursor stands at
  #table = false;

  entered() {
    this.onSize(({ width }) => {
      if (Math.abs(width - this.#wide) < 0.5) return;
      this.#wide = width;
      this.#em = parseFloat(getComputedStyle(this).fontSize);
      this.draw();
    });
  }

  view(data) {
    const { curves, spans, marks, reach, rise, flat } = data;
    if (!this.#wide || pointsOf(curves).length < 2) return [];
    const bands = curves.flatMap((c) => c.bands ?? []);
    const box = layout({ curves, bands, reach, rise, flat, wide: this.#wide, em: this.#em });
    const stops = stopsOf(curves);
    const at = this.#at === undefined ? undefined : Math.min(this.#at, stops.length - 1);
    const name = data.name ?? (curves.length > 1 ? curves[0].yLabel : curves[0].label);
    return h(
      "figure",
      { class: "chart" },
      h("figcaption", { class: data.name && "out-of-sight" }, name),
      h("div", { class: "chart-field" }, plot(box, { curves, bands, spans, marks, at: at === undefined ? undefined : stops[at], label: sentence(name, curves, bands, spans ?? []) }), this.cursor(box, curves, stops, at, name)),
      bands.length > 0 && h("p", { key: "bands", class: "chart-strokes" }, "Shaded: " + bands.map((b) => bandSaid(b, curves[0])).join("; ")),
      curves.length > 1 && h("p", { key: "strokes", class: "chart-strokes" }, curves.map((c, i) => `${c.label}: ${strokes[i % strokes.length]}`).join("; ")),
      h(
        "div",
        { key: "foot", class: "chart-foot" },
        h("p", { class: "chart-read", "aria-hidden": "true" }, at === undefined ? "" : this.reading(curves, stops[at])),
        h("details", { class: "fold", ".open": this.#table, ontoggle: (e) => e.currentTarget.open !== this.#table && ((this.#table = e.currentTarget.open), this.draw()) }, h("summary", null, "Figures"), this.#table && table(curves)),
      ),
    );
  }

  cursor(box, curves, stops, at, name) {
    const now = at ?? 0;
    const move = (to) => {
      this.#at = Math.min(Math.max(to, 0), stops.length - 1);
      this.draw();
    };
    const touch = (e) => {
      const x = box.x.back(e.clientX - e.currentTarget.getBoundingClientRect().left + box.left);
      move(stops.reduce((best, s, i) => (Math.abs(s - x) < Math.abs(stops[best] - x) ? i : best), 0));
    };
    const jump = Math.max(1, Math.round(stops.length / 10));
    const keys = { ArrowRight: now + 1, ArrowUp: now + 1, ArrowLeft: now - 1, ArrowDown: now - 1, PageUp: now + jump, PageDown: now - jump, Home: 0, End: stops.length - 1 };
    return h("div", {
      key: "cursor",
      class: "chart-cursor",
      role: "slider",
      tabindex: "0",
      "aria-label": `Read the chart: ${name}`,
      "aria-orientation": "horizontal",
      "aria-valuemin": "0",
      "aria-valuemax": String(stops.length - 1),
      "aria-valuenow": String(now),
      "aria-valuetext": this.reading(curves, stops[now]),
      style: { left: `${box.left}px`, top: `${box.top}px`, width: `${box.right - box.left}px`, height: `${box.bottom - box.top}px` },
      onpointerdown: (e) => {
        e.currentTarget.setPointerCapture(e.pointerId);
        touch(e);
      },
      onpointermove: (e) => (e.buttons > 0 || e.pointerType === "mouse") && touch(e),
      onfocus: () => at === undefined && move(0),
      onkeydown: (e) => {
        if (!(e.key in keys) || e.ctrlKey || e.metaKey || e.altKey) return;
        e.preventDefault();
        move(keys[e.key]);
      },
    });
  }

  /** What the curves come to at x, in words. */
  reading(curves, x) {
    const [c] = curves;
    const each = curves.map((curve) => [curve.label, valueAt(curve, x)]).filter(([, v]) => v !== undefined);
    const told = each.map(([label, v]) => (curves.length > 1 ? `${label} ${figure(v, c.yUnit)}` : figure(v, c.yUnit))).join("; ");
    return `${c.xLabel} ${figure(x, c.xUnit)}: ${told || "no answer"}`;
  }
}

/** The places that the cursor snaps to: where the curves have points, not closer than a screen can tell. */
function stopsOf(curves) {
  const all = pointsOf(curves).map((p) => p[0]).sort((a, b) => a - b);
  const near = (all.at(-1) - all[0]) / 400;
  return all.filter((x, i) => i === 0 || i === all.length - 1 || x - all[i - 1] > near);
}

/** A chart in a sentence: axes, ends, and what is shaded. */
function sentence(name, curves, bands, spans) {
  const [c] = curves;
  const parts = curves.map((curve) => {
    const points = runsOf(curve).flat();
    if (points.length === 0) return `${curve.label}: no answer`;
    const [from, to] = [points[0], points.at(-1)];
    const most = points.reduce((a, b) => (b[1] > a[1] ? b : a));
    const least = points.reduce((a, b) => (b[1] < a[1] ? b : a));
    const said = ([x, y]) => `${figure(y, c.yUnit)} at ${figure(x, c.xUnit)}`;
    const turns = [["most", most], ["least", least]].filter(([, p]) => p[1] !== from[1] && p[1] !== to[1]).map(([w, p]) => `, at the ${w} ${said(p)}`);
    return `${curves.length > 1 ? curve.label + " from " : "from "}${said(from)} to ${said(to)}${turns.join("")}`;
  });
  const shaded = bands.map((b) => bandSaid(b, c));
  const refused = spans.map((s) => `${s.label} ${number(s.from)} to ${figure(s.to, c.xUnit)}`);
  return `${name}. ${c.yLabel} against ${c.xLabel.charAt(0).toLowerCase() + c.xLabel.slice(1)}: ${parts.join("; ")}.${[...shaded, ...refused].length ? ` Shaded: ${[...shaded, ...refused].join("; ")}.` : ""} The figures stand in a table below.`;
}

const bandSaid = (b, c) => `${b.label} ${number(b.low)} to ${figure(b.high, b.upright ? c.yUnit : c.xUnit)}`;

const table = (curves) =>
  h(
    "div",
    { class: "chart-tables" },
    curves.map((c) =>
      h(
        "table",
        { key: c.label, class: "figures" },
        h("caption", null, c.label),
        h("thead", null, h("tr", null, h("th", { scope: "col" }, named(c.xLabel, c.xUnit)), h("th", { scope: "col" }, named(c.yLabel, c.yUnit)))),
        h("tbody", null, thin(runsOf(c).flat()).map(([a, b]) => h("tr", null, h("td", null, number(a)), h("td", null, number(b))))),
      ),
    ),
  );

/** At most about twenty rows of a long run of points, ends kept. */
function thin(points) {
  const every = Math.ceil(points.length / 20);
  return points.filter((_, i) => i % every === 0 || i === points.length - 1);
}

customElements.define("pw-chart", Chart);
