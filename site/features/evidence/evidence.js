// What the figures rest on: how the sums are proved, and every check against
// something outside the project with what came out.
import { h } from "../../shared/draw.js";
import { Element } from "../../shared/element.js";
import { caution, heading } from "../../shared/words.js";
import { plainBar } from "../bar/bar.js";

/** Data: {state, readEvidence}. */
export class Evidence extends Element {
  #evidence = null; // the checks, once they are read
  #wrong = ""; // why they could not be read

  async entered() {
    try {
      this.#evidence = await this.data.readEvidence();
    } catch (error) {
      this.#wrong = String(error?.message ?? error);
    }
    this.draw();
  }

  view({ state }) {
    return [
      plainBar(state, "sources"),
      h(
        "main",
        { key: "main", class: "page prose" },
        h("h1", { tabindex: "-1" }, "What the figures rest on"),
        h("p", { class: "caution" }, caution),
        h("p", null, "Every answer in a plan opens to its working: the formula, the values put in, and the book, standard or practice that it comes from. The formula shown is the one that ran; tests take each apart and check its value and its units."),
        h(
          "dl",
          { class: "known" },
          [
            ["seen", "read in a public copy of the work, or in a public text that quotes it"],
            ["from memory", "recalled from the named work and not read again: check it before you lean on it"],
            ["common practice, no source", "a rule of the trade that nobody has signed: your own shop's figure goes before it"],
            ["derived here", "worked out from geometry or physics"],
            ["independent program", "computed by a program that has nothing to do with this one"],
          ].map(([term, what]) => [h("dt", null, term), h("dd", null, what)]),
        ),
        h("h2", null, "Checks"),
        h("p", null, "Each row puts a published example, a cell of a standard's table or another program's result to the same calculators that your plan uses. The allowed difference is half the last printed digit, unless the row says why not."),
        this.#evidence ? this.checks(this.#evidence) : h("p", { key: "wait", class: "quiet", role: "status" }, this.#wrong ? `The checks could not be read (${this.#wrong}). Load the page again.` : "Reading the checks."),
      ),
    ];
  }

  checks(evidence) {
    const topics = [...new Set(evidence.map((r) => r.topic))];
    return [
      h("p", { key: "agreed" }, `${evidence.filter((r) => r.agrees).length} of ${evidence.length} agree.`),
      topics.map((topic) => this.topic(topic, evidence.filter((r) => r.topic === topic))),
    ];
  }

  topic(topic, rows) {
    return h(
      "section",
      { key: topic },
      h("h3", null, heading(topic)),
      h(
        "div",
        { class: "wide-table", tabindex: "0", role: "group", "aria-label": `Checks of ${heading(topic)}` },
        h(
          "table",
          { class: "figures evidence" },
          h("thead", null, h("tr", null, ["Source", "Printed", "Allowed", "Pourwright", "Agrees"].map((t) => h("th", { scope: "col" }, t)))),
          h(
            "tbody",
            null,
            rows.map((r) =>
              h(
                "tr",
                { "data-agrees": String(r.agrees) },
                h("td", { class: "evidence-source" }, r.source, " ", h("span", { class: "evidence-known" }, `(${r.known})`), r.note && h("span", { class: "evidence-note" }, r.note)),
                h("td", null, r.expected),
                h("td", null, "± " + r.within),
                h("td", null, r.got || "no answer"),
                h("td", null, r.agrees ? "yes" : "no"),
              ),
            ),
          ),
        ),
      ),
    );
  }
}

customElements.define("pw-evidence", Evidence);
