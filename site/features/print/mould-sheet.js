// The mould set-up sheet: the section with its dimensions, and the figures in
// the order of the moulder's work, each with a box to tick.
import { h } from "../../shared/draw.js";
import { cover, numbered, section } from "./section.js";
import { box, heading, known, sheetHead, station, toWrite } from "./words.js";

// What is set up, step by step: [station, answers] in the order of the work;
// "box" are the sizes of the mould that were filled in.
const steps = [
  ["Box and pattern", [["box", ["flask_length", "flask_width", "cope_height", "drag_height", "above", "below"]]]],
  ["Sand", [["mould", ["drag_mass", "cope_mass"]], ["holddown", ["binder_mass", "hardener_mass", "water_mass"]]]],
  ["Sand round the casting", [["mould", ["top", "bottom", "side"]]]],
  ["Sprue and well", [["gating", ["choke", "sprue_length", "sprue_top", "sprue_foot", "well_diameter", "well_depth"]]]],
  ["Runners and ingates", [["gating", ["runners", "runner_width", "runner_height", "ingates", "ingate_width", "ingate_thickness", "ingate_each"]]]],
  ["Basin", [["box", ["basin_height"]], ["gating", ["basin_depth", "basin_length", "basin_width"]]]],
  ["Cores", [["cores", ["to_cope", "cores_mass"]]]],
  ["Holding down", [["holddown", ["surged", "needed", "needed_surge", "closing", "closing_x", "closing_y", "clamps_wanted"]]]],
];

const told = new Set(["drag", "cope", "casting", "riser"]); // parts whose figure helps to set up

const onCope = { lift: "Lift acts, with the surge", weight: "Weight", clamp: "Clamp", closing: "Still wanted" };
const signs = { lift: "+", weight: "□", clamp: "×", closing: "△" };

export function mouldSheet({ reply }) {
  const { drawing } = reply;
  if (!drawing.setting) return null;
  const { setting } = drawing;
  return [
    sheetHead("Mould set-up sheet"),
    {
      key: "section",
      node: h(
        "figure",
        { class: "paper-figure" },
        section(drawing),
        h("figcaption", null, h("ul", { class: "paper-key" }, numbered(drawing).map((p) => h("li", null, h("b", null, String(p.n)), ` ${p.label}${told.has(p.id) && p.text ? ", " + p.text : ""}`)))),
        h("p", { class: "paper-small" }, "Sizes are to scale. How far along the flask the sprue stands, and where the weights lie, the drawing chooses."),
      ),
    },
    heading("h-steps", "In the order of the work"),
    ...steps.map(([title, from]) => step(title, lines(from, reply))).filter(Boolean),
    ...lists(reply),
    setting.marks.length > 0 && heading("h-cope", "On the cope"),
    setting.marks.length > 0 && {
      key: "cover",
      node: h(
        "div",
        { class: "paper-on-cope" },
        cover(setting),
        h(
          "table",
          { class: "paper-table" },
          h("thead", null, h("tr", null, ["", "What", "", "From the left end", "From the near side"].map((t, i) => (t ? h("th", { key: i, scope: "col" }, t) : h("td", { key: i }))))),
          h("tbody", null, setting.marks.map((m) => h("tr", null, h("td", null, signs[m.kind]), h("td", null, onCope[m.kind]), h("td", null, m.text), h("td", null, m.along), h("td", null, m.over)))),
        ),
      ),
    },
    { key: "names", node: toWrite(["Moulded by", "Closed by", "Date and time"], "three") },
  ].filter(Boolean);
}

/** The figures of a step that are known, as [label, text]. */
const lines = (from, reply) =>
  from.flatMap(([key, names]) => {
    if (key === "box") return reply.drawing.setting.box.filter((b) => names.includes(b.key)).map((b) => [b.label, b.text]);
    const answers = station(reply, key)?.answers;
    return names.map((name) => known(answers, name)).filter(Boolean).map((leaf) => [leaf.label, leaf.text]);
  });

function step(title, figures) {
  if (figures.length === 0) return null;
  return {
    key: title,
    half: true,
    items: figures.map(([label, text]) => h("div", { class: "paper-line", "data-row": "" }, h("span", null, label), h("b", null, text))),
    wrap: (kids, again) => h("section", { class: "paper-station" }, h("h4", null, box(false), title, again && ", continued"), kids),
  };
}

/** Risers and cores, one by one. */
function lists(reply) {
  const risers = station(reply, "weight").answers?.risers ?? [];
  const cores = station(reply, "cores").answers?.cores ?? [];
  const table = (key, title, items, columns) => {
    const used = columns.filter((c) => items.some((item) => known(item, c)));
    return (
      items.length > 0 && {
        key,
        items: items.map((item) => h("tr", { "data-row": "" }, h("td", null, box(false)), used.map((c) => h("td", null, known(item, c)?.text ?? "")))),
        wrap: (rows) => h("table", { class: "paper-table" }, h("caption", null, title), h("thead", null, h("tr", null, h("td", null), used.map((c) => h("th", { scope: "col" }, items.find((i) => i[c])[c].label)))), h("tbody", null, rows)),
      }
    );
  };
  return [
    table("risers", "Risers", risers, ["name", "diameter", "height", "neck_diameter", "neck_length", "mass"]),
    table("cores", "Cores", cores, ["name", "mass", "lift", "chaplets", "print_wanted", "vent_diameter"]),
  ];
}
