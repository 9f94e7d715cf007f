// The pour sheet: what is wanted beside the mould and no more. The ruling
// numbers, what is wrong or to be minded, the main answers of each station, and
// room to write down what happened.
import { h } from "../../shared/draw.js";
import { textOf } from "../../shared/document.js";
import { levelMark, stateMark } from "../../shared/mark.js";
import { heading as spoken, together } from "../../shared/words.js";
import { columns, dayOf, rows } from "../furnace/record.js";
import { about } from "../sheet/about.js";
import { rulingOf } from "../sheet/ruling.js";
import { heading, sheetHead, toWrite } from "./words.js";

const longText = 28; // letters beyond which a text gets lines of its own
const told = new Set(["handling"]); // stations that have a sheet of their own

export function pourSheet(state) {
  const { open, reply } = state;
  const { titles } = about(state);
  const findings = reply.findings.filter((f) => f.level !== "note");
  return [
    sheetHead("Pour sheet", textOf(open.doc.note)),
    { key: "card", node: h("dl", { class: "paper-card" }, reply.card.map((c) => h("div", null, h("dt", null, c.label), h("dd", null, c.text)))) },
    heading("h-findings", "Stop and mind"),
    findings.length === 0
      ? { key: "findings", node: h("p", null, "Nothing to stop for or to mind, from what was filled in.") }
      : { key: "findings", wrap: (items) => h("ul", { class: "paper-findings" }, items), items: findings.map((f) => h("li", { "data-row": "" }, levelMark(f.level), h("p", null, h("b", null, (titles[f.station] ?? f.station) + ". "), together(f.text), f.do && " " + together(f.do)))) },
    ...happened(open.doc.record?.events ?? []),
    heading("h-stations", "Station by station"),
    ...reply.stations.filter((s) => s.state !== "blank").map(station),
  ];
}

/** What was tapped in at the furnace, or room to write it down. */
function happened(events) {
  if (events.length === 0) return [{ key: "record", node: h("div", { class: "paper-record" }, h("h3", { class: "paper-heading" }, "What happened"), toWrite(["Tapped at", "Poured at", "Pour began", "Pour took", "Shaken out", "Poured by"], "six"), toWrite(["Remarks"], "one")) }];
  const day = dayOf(events);
  return [
    heading("h-record", "What happened" + (day && ", " + day)),
    { key: "record", half: true, items: rows(events), wrap: (kids) => h("table", { class: "paper-table paper-log", "aria-label": "What happened" }, columns(), h("tbody", null, kids)) },
    { key: "record-more", node: h("div", { class: "paper-record" }, toWrite(["Shaken out", "Poured by", "Remarks"], "three")) },
  ];
}

function station(s) {
  const ruling = s.answers && !told.has(s.key) ? rulingOf(s.key, s.answers) : [];
  const line = (label, text) => h("div", { class: text.length > longText ? "paper-line paper-long" : "paper-line", "data-row": "" }, h("span", null, label), h("b", null, text));
  const items = [
    ...ruling.filter(([, columns]) => !columns).map(([key]) => line(s.answers[key].label, s.answers[key].text)),
    ...ruling.filter(([, columns]) => columns).map(([key, columns]) => h("div", { "data-row": "" }, table(spoken(key), s.answers[key], columns))),
    s.needs.length > 0 && h("p", { "data-row": "" }, "Not filled in: " + s.needs.map((n) => n.label.toLowerCase()).join(", ") + "."),
    s.faults.length > 0 && h("p", { "data-row": "" }, "To put right: " + s.faults.map((n) => n.label.toLowerCase()).join(", ") + "."),
    told.has(s.key) && h("p", { "data-row": "" }, "On its own sheet."),
  ].filter(Boolean);
  if (items.length === 0) items.push(h("p", { "data-row": "" }, "No answers yet."));
  return { key: s.key, half: true, items, wrap: (kids, again) => h("section", { class: "paper-station" }, h("h4", null, s.title, again ? ", continued" : [" ", stateMark(s.state)]), kids) };
}

/** A list, a line for each of its items; a column that no item fills would cost the others their room. */
function table(title, items, columns) {
  const used = columns.filter((c) => items.some((item) => item[c]?.text && !item[c].unknown));
  return h(
    "table",
    { class: "paper-table", "aria-label": title },
    h("thead", null, h("tr", null, used.map((c) => h("th", { scope: "col" }, items.find((item) => item[c])[c].label)))),
    h("tbody", null, items.map((item) => h("tr", null, used.map((c) => h("td", null, item[c]?.unknown ? "" : together(item[c]?.text ?? "")))))),
  );
}
