// The plans kept on this device, last changed first: found by title, metal or
// note, copied, deleted, and two of them chosen to be put side by side.
import { h } from "../../shared/draw.js";
import { Element } from "../../shared/element.js";
import { textOf } from "../../shared/document.js";
import { to } from "../../app/route.js";

const few = 3; // plans that are found without a search

/** Data: {plans: [{id, title, changed, doc}], briefs: by id {metal, poured}}. */
export class PlanList extends Element {
  #asking = ""; // the plan that was asked to be deleted
  #first = null; // the plan to compare another with
  #sought = "";

  view({ plans, briefs }) {
    const found = plans.filter((p) => this.finds(p, briefs[p.id]));
    const first = plans.find((p) => p.id === this.#first);
    return [
      h("h2", { key: "head" }, "Your plans"),
      plans.length > few &&
        h(
          "div",
          { key: "search", class: "plan-search", role: "search" },
          h("label", { class: "field-label", for: "plan-search" }, "Find a plan"),
          h("input", { id: "plan-search", class: "field-input", type: "search", autocomplete: "off", placeholder: "title, metal or note", "data-action": "search", ".value": this.#sought, oninput: (e) => ((this.#sought = e.target.value), this.draw()) }),
          h("p", { class: "quiet", role: "status" }, this.#sought.trim() ? `${found.length} of ${plans.length}` : `${plans.length} plans`),
        ),
      first && h("p", { key: "choosing", class: "plan-choosing", role: "status" }, `Compare “${first.title}” with which plan? `, h("button", { type: "button", class: "button button-quiet", "data-action": "compare-none", onclick: () => this.choose(null) }, "None")),
      h("ul", { key: "plans", class: "plans" }, found.map((p) => this.row(p, briefs[p.id], first, plans.length))),
      found.length === 0 && h("p", { key: "none", class: "quiet" }, "No plan has these words in its title, metal or notes."),
    ];
  }

  finds(p, brief) {
    const all = plain([p.title, brief?.metal, textOf(p.doc?.note)].join(" "));
    return plain(this.#sought).split(/\s+/).every((word) => all.includes(word));
  }

  row(p, brief, first, count) {
    const asking = this.#asking === p.id;
    const act = (type, label, action, more) => h("button", { type: "button", class: "button button-quiet", "data-action": type, "aria-label": `${label}: ${p.title}`, onclick: action, ...more }, label);
    const facts = [brief?.metal, brief?.poured && `${brief.poured} to pour`, "changed " + when(p.changed)].filter(Boolean).join(" · ");
    return h(
      "li",
      { key: p.id, class: "plan-row", "data-plan": p.id },
      h("a", { class: "plan-open", href: to.plan(p.id) }, h("span", { class: "plan-name" }, p.title), h("span", { class: "plan-note" }, facts.charAt(0).toUpperCase() + facts.slice(1))),
      asking
        ? h(
            "div",
            { key: "asking", class: "plan-acts", role: "group", "aria-label": `Delete ${p.title}` },
            h("span", { class: "plan-ask" }, "Delete for good?"),
            h("button", { type: "button", class: "button", "data-action": "delete-plan-yes", onclick: () => ((this.#asking = ""), this.want("delete-plan", { id: p.id })) }, "Delete"),
            h("button", { type: "button", class: "button button-quiet", onclick: () => this.ask("") }, "Keep"),
          )
        : first
          ? h("div", { key: "comparing", class: "plan-acts" }, first === p ? h("span", { class: "plan-ask" }, "First plan") : h("a", { class: "button", href: to.compare(first.id, p.id), "data-action": "compare-with", "aria-label": `Compare with it: ${p.title}` }, "Compare with it"))
          : h("div", { key: "acts", class: "plan-acts" }, count > 1 && act("compare", "Compare", () => this.choose(p.id)), act("copy-plan", "Duplicate", () => this.want("copy-plan", { id: p.id })), act("delete-plan", "Delete", () => this.ask(p.id))),
    );
  }

  ask(id) {
    const row = id || this.#asking;
    this.#asking = id;
    this.draw();
    this.querySelector(`[data-plan="${row}"] .plan-acts button`)?.focus();
  }

  choose(id) {
    const row = id ?? this.#first;
    this.#first = id;
    this.draw();
    (id ? this.querySelector("[data-action=compare-with]") : this.querySelector(`[data-plan="${row}"] .plan-acts button`))?.focus();
  }
}

const when = (iso) => new Date(iso).toLocaleString("en-GB", { dateStyle: "medium", timeStyle: "short" });

/** Letters as they are compared: small, and without their accents. */
const plain = (text) => text.normalize("NFD").replaceAll(/\p{M}/gu, "").toLowerCase().trim();

customElements.define("pw-plan-list", PlanList);
