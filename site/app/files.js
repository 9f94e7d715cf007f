// Plan files: readable JSON, named NAME.pour.json; and the shop's own figures.
import { title } from "./save.js";

/** Hands a plan to the user as a file. */
export const saveFile = (doc) => handJSON({ format: 1, ...doc }, fileName(title(doc)));

/** Hands the shop's own figures to the user as a file. */
export const saveFigures = (figures) => handJSON({ format: 1, figures }, "shop-figures.json");

const handJSON = (content, name) => hand(JSON.stringify(content, null, 2) + "\n", "application/json", name);

function hand(text, type, name) {
  const url = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement("a");
  link.href = url;
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(url), 60_000); // some browsers read it late
}

const fileName = (title) => (title.toLowerCase().replaceAll(/[^\p{L}\p{N}]+/gu, "-").replaceAll(/^-+|-+$/g, "").slice(0, 60) || "plan") + ".pour.json";

/** Hands the record of a plan's pour to the user as a table, for a spreadsheet. */
export function saveRecord(doc) {
  const rows = (doc.record?.events ?? []).map((e) => [e.clock, e.at, e.what, e.mould, e.name, e.temperature, e.note, e.struck ? "struck out" : ""]);
  const line = (cells) => cells.map((c) => `"${String(c ?? "").replaceAll('"', '""')}"`).join(",");
  hand([["time of day", "since tapping", "what", "mould", "name", "temperature", "note", "struck"], ...rows].map(line).join("\r\n") + "\r\n", "text/csv", fileName(title(doc)).replace(/\.pour\.json$/, ".record.csv"));
}

/** Reads a plan file; throws an Error whose message can be shown. */
export async function readFile(file) {
  let doc;
  try {
    doc = JSON.parse(await file.text());
  } catch {
    throw new Error(`“${file.name}” is not a plan file: it cannot be read as JSON. Nothing was changed.`);
  }
  if (typeof doc !== "object" || doc === null || Array.isArray(doc)) {
    throw new Error(`“${file.name}” is not a plan file: a plan is written between { and }. Nothing was changed.`);
  }
  return doc;
}

export const newest = 1; // the format that this page writes
