// The plan as a whole, shown while no sheet is open: its title and note, what
// wants attention with the worst first, and what in its file nobody understood.
import { h } from "../../shared/draw.js";
import { Element } from "../../shared/element.js";
import { finding } from "../../shared/finding.js";
import { form } from "../../shared/form-view.js";
import { quantities, strays } from "../../shared/document.js";
import { to } from "../../app/route.js";
import "../spread/spread.js";

/** Data: {shop (what the shop's figures are worth here), plan (id), doc, fields (of the plan itself), strange, reply, spread, fresh (whether that is of the plan as it stands), about}. */
export class Overview extends Element {
  view({ shop, plan, doc, fields, strange, reply, spread, fresh, about }) {
    const own = fields.filter((f) => f.sort !== "group" && f.key !== "format");
    const begun = reply?.stations.some((s) => s.state !== "blank");
    const needy = reply?.stations.filter((s) => s.needs.length > 0 && s.state !== "blank") ?? [];
    const notes = reply?.findings.filter((f) => f.level === "note") ?? [];
    const told = (f) => finding(f, h("p", { class: "finding-way" }, h("a", { href: to.sheet(plan, f.station) }, "Open " + (about.titles[f.station] ?? f.station))));
    const faulty = reply?.stations.filter((s) => s.faults.length > 0) ?? [];
    return [
      h("header", { class: "sheet-head" }, h("h2", { class: "sheet-title", tabindex: "-1" }, "The plan")),
      reply && !begun && h("p", { key: "begin", class: "sheet-about" }, "Touch a part of the drawing, or a line of the list, to open its sheet. The metal is a good place to begin: most of the rest follows from it."),
      form(own, doc, "", about),
      begun && h("p", { key: "furnace", class: "sheet-apart" }, h("a", { class: "button", href: to.plan(plan, "furnace") }, pourRuns(doc) ? "The pour is running: back to the furnace" : "To the furnace side")),
      h(
        "section",
        { key: "findings", class: "sheet-part" },
        h("h3", null, "What wants attention"),
        faulty.map((s) => h("p", { key: "fault " + s.key, class: "attention" }, h("a", { href: to.sheet(plan, s.key) }, s.title), s.faults.length === 1 ? " has an entry to put right." : ` has ${s.faults.length} entries to put right.`)),
        (reply?.findings ?? []).filter((f) => f.level !== "note").map(told),
        needy.map((s) => h("p", { key: "needs " + s.key, class: "attention" }, h("a", { href: to.sheet(plan, s.key) }, s.title), " still wants: " + s.needs.map((n) => n.label.toLowerCase()).join(", ") + ".")),
        reply && reply.findings.length === notes.length && needy.length === 0 && faulty.length === 0 && h("p", { key: "none", class: "quiet" }, begun ? "Nothing so far. That covers what you have filled in, and no more." : "Nothing yet."),
        notes.length > 0 && h("details", { key: "notes", class: "fold" }, h("summary", null, notes.length === 1 ? "1 note" : `${notes.length} notes`), notes.map(told)),
      ),
      begun && h("pw-spread", { key: "spread", class: "sheet-part", ".data": { plan, straying: quantities(doc, fields).some((q) => strays(q.text)), reply: spread, fresh, titles: about.titles } }),
      shop && this.own(shop),
      strange.length > 0 &&
        h(
          "section",
          { key: "strange", class: "sheet-part" },
          h("h3", null, "Not understood"),
          h("p", null, "These entries of the file are not known here. They count for nothing in the sums; they are kept, and go back into the file when you save it."),
          h("ul", { class: "strange" }, strange.map((path) => h("li", null, h("code", null, path)))),
        ),
    ];
  }

  // The blanks that the shop's own figures would fill, and its ladles to choose from.
  own({ fills, ladles, stands }) {
    if (fills.length + ladles.length + stands.size === 0) return null;
    const use = (label, list, more) => h("button", { type: "button", class: "button", onclick: () => this.want("use-own", { fills: list }), ...more }, label);
    return h(
      "section",
      { key: "own", class: "sheet-part" },
      h("h3", null, "Your shop's own figures"),
      stands.size > 0 && h("p", { key: "stands" }, stands.size === 1 ? "One entry of this plan is your shop's own." : `${stands.size} entries of this plan are your shop's own.`),
      fills.length > 0 && h("p", { key: "fills" }, "Left blank here, and known to your shop: " + [...new Set(fills.map((f) => f.label.toLowerCase()))].join(", ") + "."),
      fills.length > 0 && h("p", { key: "use" }, use("Use the shop's figures", fills, { "data-action": "use-own" })),
      ladles.length > 0 && h("div", { key: "ladles" }, h("p", null, "A ladle of yours:"), h("p", { class: "own-ladles" }, ladles.map((l, i) => use(l.name, l.fills, { "data-action": "use-ladle", "aria-label": "Take the ladle " + l.name, key: String(i) })))),
    );
  }
}

/** Whether the ladle was full and the record is not closed. */
function pourRuns(doc) {
  const happened = (doc.record?.events ?? []).filter((e) => !e.struck).map((e) => e.what);
  return happened.includes("tapped") && !happened.includes("closed");
}

customElements.define("pw-overview", Overview);
