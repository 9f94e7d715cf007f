// The pattern dimension list: from the finished size to the size on the
// pattern, with a box to write down what the pattern measures.
import { h } from "../../shared/draw.js";
import { known, sheetHead, sized, station, toWrite } from "./words.js";

export function patternSheet({ reply }) {
  const answers = station(reply, "pattern").answers;
  if (!answers) return null;
  const sizes = answers.dimensions;
  const any = (key) => sizes.some((d) => known(d, key));
  const metal = station(reply, "metal").answers?.name?.text;
  const columns = [
    ["Finished size", (d) => size(d.finished)],
    any("stock") && ["Stock per face", (d) => [size(known(d, "stock")), known(d, "stock_cope") && h("small", null, "cope " + sized(d.stock_cope))]],
    ["Raw casting", (d) => [size(known(d, "raw")), known(d, "half") && h("small", null, "± " + sized(d.half))]],
    ["Contraction", (d) => [size(known(d, "allowance")), known(d, "contraction") && h("small", null, d.contraction.text)]],
    ["Pattern", (d) => size(known(d, "pattern")), "paper-main"],
    any("taper") && ["Taper per side", (d) => [size(known(d, "taper")), known(d, "draft") && h("small", null, d.draft.text)]],
    any("far_end") && ["Other end", (d) => size(known(d, "far_end")), "paper-main"],
    any("master") && ["Master", (d) => size(known(d, "master")), "paper-main"],
    ["Measured", () => "", "paper-blank"],
  ].filter(Boolean);
  const head = h("thead", null, h("tr", null, h("th", { scope: "col", class: "paper-what" }, "Size"), columns.map(([title, , name]) => h("th", { scope: "col", class: name }, title))));
  const row = (d, i) =>
    h(
      "tr",
      { "data-row": "" },
      h("th", { scope: "row", class: "paper-what" }, `${i + 1}  ${d.name.text}`, h("small", null, d.kind.text + (known(d, "far_end") ? `; ${d.ends.text}` : ""))),
      columns.map(([, cell, name]) => h("td", { class: name }, cell(d))),
    );
  const read = [...new Set(sizes.map((d) => d.row.text).filter(Boolean))];
  return [
    sheetHead("Pattern dimension list", [metal, `contraction ${answers.contraction.text} at the largest size of ${answers.overall.text}`, `a rule longer than true by ${answers.rule.text}`, `castings to DCTG ${answers.grade.text}`, any("stock") && `machining to RMAG ${answers.rma_grade.text}`].filter(Boolean).join("; ") + "."),
    { key: "sizes", items: sizes.map(row), wrap: (rows) => h("table", { class: "paper-table paper-sizes" }, head, h("tbody", null, rows)) },
    {
      key: "notes",
      node: h(
        "div",
        { class: "paper-notes" },
        h("p", null, "Pattern sizes are true sizes: measure them with a true rule. With a contraction rule, lay off the raw casting instead. All sizes in ", sizes[0]?.finished.fraction ? "inches, to the nearest sixty-fourth, with the decimal below." : "millimetres unless a unit stands by."),
        h("p", null, `Contraction: ${answers.source.text}.`),
        read.map((text) => h("p", null, "Read from " + text + ".")),
        h("p", null, answers.grade_band.text + "."),
      ),
    },
    { key: "names", node: toWrite(["Pattern made by", "Checked by", "Date"], "three") },
  ];
}

/** A size; where it is written as a part of an inch, the decimal below. */
const size = (leaf) => leaf && (leaf.fraction ? [h("span", { class: "paper-size" }, leaf.fraction.replace(/ in$/, "")), h("small", null, leaf.text)] : h("span", { class: "paper-size" }, leaf.text.replace(/ mm$/, "")));
