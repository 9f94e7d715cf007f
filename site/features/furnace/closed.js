// The record of the pour: each mould with its times and temperatures, and all
// that was tapped in, in its order.
import { h } from "../../shared/draw.js";
import { capital } from "./pour.js";
import { columns, dayOf, rows } from "./record.js";

export function closed(f, { state, moulds }) {
  const { furnace } = state;
  const shutting = f.standing.findLast((e) => e.what === "closed");
  const findings = (furnace?.findings ?? []).filter((x) => x.level !== "note");
  const act = (action, label, does) => h("button", { key: action, type: "button", class: "far", "data-action": action, onclick: f.once(does) }, label);
  return [
    h("h1", { key: "h1", class: "furnace-point", tabindex: "-1" }, "Record of the pour"),
    h("p", { key: "day", class: "furnace-more" }, dayOf(f.events)),
    h("div", { key: "moulds", class: "furnace-pours" }, moulds.map((m) => mould(m))),
    findings.length > 0 && h("ul", { key: "findings", class: "furnace-findings" }, findings.map((x) => h("li", { "data-finding": x.code }, h("p", null, x.text), h("p", null, x.do)))),
    h(
      "div",
      { key: "acts", class: "furnace-list furnace-two" },
      act("save-file", "Save the plan with its record", () => f.want("save-file")),
      act("save-record", "Save the record as a table", () => f.want("save-record")),
      act("remark", "Add a remark", () => f.open("remark")),
      act("open-again", "Open it again", () => f.strike(shutting)),
      act("pour-again", "Pour again from this plan", () => f.want("pour-again")),
    ),
    h(
      "div",
      { key: "log", class: "wide-table", tabindex: "0", role: "group", "aria-label": "All entries" },
      h("table", { class: "furnace-log" }, columns(), h("tbody", null, rows(f.events))),
    ),
  ];
}

function mould(m) {
  const a = m.answers;
  const line = (label, text) => text && h("div", { key: label }, h("dt", null, label), h("dd", null, text));
  const told = (leaf) => (leaf.unknown ? null : leaf.text);
  return h(
    "section",
    { key: m.number, class: "furnace-pour", "data-poured": String(m.number) },
    h("h2", null, capital(m.name)),
    m.state === "ahead"
      ? h("p", null, "Not poured.")
      : h("dl", null, line("Poured in", told(a.took)), line("Against its time", a.judged.text), line("Metal as it was begun", told(a.hot)), line("Metal as it was full", told(a.at_end)), line("Begun after tapping", told(a.begun)), line("Full after tapping", told(a.ended))),
  );
}
