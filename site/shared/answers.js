// The answers of a station: figures on lines, groups and lists of figures,
// curves. Touching a figure folds its working out below it.
import { h } from "./draw.js";
import { Element, idOf } from "./element.js";
import { heading } from "./words.js";
import "./bars.js";
import "./chart.js";
import "./working.js";

export const isLeaf = (node) => typeof node?.text === "string" && (typeof node.label === "string" || "step" in node || "si" in node || Object.keys(node).every((k) => ["text", "value", "hint", "unknown"].includes(k)));
const isSeries = (node) => Array.isArray(node?.points);
const isBars = (node) => Array.isArray(node?.bars);
const isCurves = (node) => isBars(node) || isSeries(node) || (Array.isArray(node) && isSeries(node[0]));

/** Curves that share both axes, a group for each pair of them. */
function alike(curves) {
  const axes = (c) => [c.xLabel, c.xUnit, c.yLabel, c.yUnit].join("|");
  return [...new Set(curves.map(axes))].map((pair) => curves.filter((c) => axes(c) === pair));
}

const few = 3; // answers that are not worth folding away

/** Data: {answers, ruling (those to show first and large, as [key] or [key, columns]), steps, spans (how far answers stray: [{answer, low, high}]), open (path of the answer that is unfolded), station}. */
export class Answers extends Element {
  #more = false; // whether the lesser answers are unfolded

  view({ answers, ruling, open }) {
    const lesser = Object.keys(answers).filter((key) => !ruling.some(([k]) => k === key) && !isCurves(answers[key]));
    if (ruling.length === 0 || lesser.length <= few) return this.group(answers, "");
    const part = (keys) => this.group(Object.fromEntries(keys.map((key) => [key, answers[key]])), "");
    const sought = open && lesser.includes(open.split(/[.[]/)[0]);
    return [
      h("div", { key: "ruling", class: "answers-ruling" }, part(ruling.map(([key]) => key))),
      part(Object.keys(answers).filter((key) => isCurves(answers[key]))),
      h("details", { key: "more", class: "fold answers-more", ".open": this.#more || Boolean(sought), ontoggle: (e) => (this.#more = e.currentTarget.open) }, h("summary", null, "More answers"), part(lesser)),
    ];
  }

  group(node, path) {
    const entries = Object.entries(node).map(([key, value]) => [key, value, path ? `${path}.${key}` : key]);
    const lines = entries.filter(([, v]) => isLeaf(v));
    const rest = entries.filter(([, v]) => !isLeaf(v));
    return [
      lines.length > 0 && h("div", { key: "lines", class: "answer-lines" }, lines.map(([, leaf, at]) => this.line(leaf, at))),
      rest.map(([key, value, at]) => this.block(key, value, at)),
    ];
  }

  block(key, value, at) {
    if (isBars(value)) return value.bars.length > 0 && h("pw-bars", { key, ".data": { picture: value } });
    if (isSeries(value)) return h("pw-chart", { key, ".data": { curves: value.points.length ? [value] : [] } });
    if (Array.isArray(value)) {
      const columns = this.data.ruling.find(([k]) => k === at)?.[1];
      if (value.length === 0) return null;
      if (isSeries(value[0])) return alike(value).map((curves) => h("pw-chart", { key: `${key} ${curves[0].label}`, ".data": { curves } }));
      if (isLeaf(value[0])) return h("section", { key, class: "answer-block" }, h("h4", null, value[0].label ?? heading(key)), h("ul", { class: "answer-words" }, value.map((leaf) => h("li", null, leaf.text))));
      return h(
        "section",
        { key, class: "answer-block" },
        h("h4", null, heading(key)),
        h("ol", { class: "answer-items" }, value.map((item, i) => this.item(item, `${at}[${i}]`, i, columns))),
      );
    }
    if (typeof value !== "object" || value === null) return null;
    return h("section", { key, class: "answer-block" }, h("h4", null, heading(key)), this.group(value, at));
  }

  item(node, at, i, columns) {
    const own = Object.entries(node).filter(([, v]) => isLeaf(v) && !v.unknown); // what was not asked of this item
    const named = own.find(([, v]) => !("si" in v) && !("value" in v) && v.text);
    const deeper = Object.fromEntries(Object.entries(node).filter(([, v]) => !isLeaf(v)));
    const open = own.find(([key]) => `${at}.${key}` === this.data.open);
    const cells = own.filter((e) => e !== named);
    const main = columns ? cells.filter(([key]) => columns.includes(key)) : cells;
    const first = cells.length - main.length <= few ? cells : main;
    const rest = cells.filter((e) => !first.includes(e));
    const draw = (list) => h("div", { class: "answer-cells" }, list.map(([key, leaf]) => this.line(leaf, `${at}.${key}`, true)));
    return h(
      "li",
      { class: "answer-item" },
      h("p", { class: "answer-item-name" }, h("span", { class: "list-number" }, String(i + 1)), named?.[1].text),
      draw(first),
      rest.length > 0 && h("details", { key: "more", class: "fold", ...(rest.includes(open) && { ".open": true }) }, h("summary", null, "More"), draw(rest)),
      open && this.working(open[1], `${at}.${open[0]}`),
      Object.keys(deeper).length > 0 && this.group(deeper, at),
    );
  }

  line(leaf, at, cell) {
    const open = this.data.open === at;
    const canOpen = Number.isInteger(leaf.step);
    const body = [h("span", { class: "answer-label" }, leaf.label ?? ""), h("span", { class: leaf.unknown ? "answer-text answer-unknown" : "answer-text" }, leaf.text)];
    const span = this.data.spans.find((s) => s.answer === at);
    const long = !canOpen && !("si" in leaf) && leaf.text.length > (cell ? 20 : 40);
    return h(
      "div",
      { key: at, class: ["answer", cell && "answer-cell", long && "answer-long"].filter(Boolean).join(" "), "data-answer": at },
      canOpen
        ? h("button", { type: "button", class: "answer-line answer-button", id: idOf(`${this.data.station}.${at}`, "-answer"), "aria-expanded": String(open), onclick: () => this.want("show-working", { answer: open ? "" : at }) }, body, h("span", { class: "answer-how", "aria-hidden": "true" }, open ? "−" : "+"))
        : h("div", { class: "answer-line" }, body),
      span && h("p", { class: "answer-span" }, `${span.low} to ${span.high} likely`),
      leaf.hint && h("p", { class: "answer-hint" }, leaf.hint),
      open && !cell && this.working(leaf, at),
    );
  }

  working(leaf, at) {
    return h("pw-working", { key: "working " + at, class: "working", ".data": { steps: this.data.steps, step: leaf.step } });
  }
}

customElements.define("pw-answers", Answers);
