// The answers as figures: of one case, or of two side by side with what lies
// between them. Touching a name watches that answer.
import { h } from "../../shared/draw.js";
import { together } from "../../shared/words.js";

const first = 6; // rows in sight

/** Draws the table; watch(path) is told which answer to watch. moved names what differs between the cases. */
export function figureTable({ figures, answer, moved, open }, { watch, unfold }) {
  const two = figures[0]?.texts.length > 1;
  const head = (letter, what) => h("th", { scope: "col" }, h("span", { class: "class-letter" }, letter), what && h("span", { class: "class-moved" }, together(what)));
  const row = (f) =>
    h(
      "tr",
      { key: f.path, class: f.path === answer ? "class-watched" : undefined, "data-figure": f.path },
      h("th", { scope: "row" }, h("button", { type: "button", class: "class-watch", "aria-pressed": String(f.path === answer), onclick: () => watch(f.path) }, f.part ? `${f.part}: ${f.label}` : f.label)),
      f.texts.map((text, i) => h("td", { key: "c" + i }, text)),
      two && h("td", { key: "difference" }, f.difference ?? ""),
      two && h("td", { key: "times" }, f.times ? "× " + f.times : ""),
    );
  const sorted = [...figures.filter((f) => f.path === answer), ...figures.filter((f) => f.path !== answer)];
  const table = (rows, caption) =>
    h(
      "div",
      { class: "wide-table", tabindex: "0", role: "group", "aria-label": caption },
      h(
        "table",
        { class: "figures class-figures" },
        h("caption", { class: "out-of-sight" }, caption),
        h("thead", null, h("tr", null, h("th", { scope: "col" }, "Answer"), two ? [head("A", moved.a), head("B", moved.b), h("th", { scope: "col" }, "Difference"), h("th", { scope: "col" }, "Times")] : h("th", { scope: "col" }, "Now"))),
        h("tbody", null, rows.map(row)),
      ),
    );
  return [
    table(sorted.slice(0, first), "Answers"),
    sorted.length > first &&
      h("details", { key: "more", class: "fold", ".open": open, ontoggle: (e) => unfold(e.currentTarget.open) }, h("summary", null, `All ${sorted.length} answers`), open && table(sorted.slice(first), "More answers")),
  ];
}
