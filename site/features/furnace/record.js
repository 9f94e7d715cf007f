// The entries of the record, on the screen and on paper.
import { h } from "../../shared/draw.js";
import { span } from "./clock.js";
import { kinds } from "./words.js";

/** An entry of the record in words. */
export const entry = (e) => [kinds[e.what] ?? e.what, [e.name, e.temperature, e.note].filter(Boolean).join(", ")].filter(Boolean).join(": ");

const timeOf = ({ clock }) => new Date(clock ?? "");
const known = (time) => !Number.isNaN(time.getTime());
const clockOf = (e) => (known(timeOf(e)) ? timeOf(e).toLocaleTimeString("en-GB") : "");

/** The day on which the ladle was first full, or nothing. */
export function dayOf(events) {
  const first = events.find((e) => e.what === "tapped" && !e.struck);
  return first && known(timeOf(first)) ? timeOf(first).toLocaleDateString("en-GB", { dateStyle: "long" }) : "";
}

/** The head of a table of the entries, and a row for each. */
export const columns = () => h("thead", null, h("tr", null, ["Clock", "Since tapping", "What"].map((t) => h("th", { scope: "col" }, t))));
export const rows = (events) => events.map((e) => h("tr", { class: e.struck ? "struck" : undefined, "data-row": "" }, h("td", null, clockOf(e)), h("td", null, e.at ? span(parseFloat(e.at)) : ""), h("td", null, entry(e), e.struck && " (struck out)")));
